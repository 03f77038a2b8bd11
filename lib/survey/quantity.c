/* SPDX-License-Identifier: MIT */
#include "survey/quantity.h"

#include "measure/amounts.h"

#include <string.h>

#define CHOICES(list) static const struct choice choices_##list[] = {
#define CHOICE(list, name, id_text, ...) {.id = id_text, .label = __VA_ARGS__},
#define CHOICES_END(list) };
#define GROUP(name, id, ...)
#define QUANTITY(group, name, id, dimension, ...)
#include "survey/quantities.def"
#undef CHOICES
#undef CHOICE
#undef CHOICES_END
#undef GROUP
#undef QUANTITY

#define CHOICES(list)
#define CHOICE(list, name, ...)
#define CHOICES_END(list)
#define CHOICES_OF(list) choices_##list, .choice_count = CHOICE_##list##_COUNT

const struct ingle_quantity quantities[QUANTITY_COUNT] = {
#define GROUP(name, id, ...)
#define QUANTITY(group_name, name, id_text, dimension_code, ...) \
    {.id = id_text, .dimension = dimension_code, .group = GROUP_##group_name, __VA_ARGS__},
#include "survey/quantities.def"
#undef GROUP
#undef QUANTITY
};

const struct group groups[GROUP_COUNT] = {
#define GROUP(name_part, id_text, ...) \
    {.id = id_text, .first = GROUP_##name_part##_FIRST, __VA_ARGS__},
#define QUANTITY(group, name, id, dimension, ...)
#include "survey/quantities.def"
};

enum quantity_id quantity_id(const ingle_quantity *quantity)
{
    return (enum quantity_id)(quantity - quantities);
}

ingle_amount quantity_amount(enum quantity_id id, int64_t value)
{
    ingle_amount amount = {value, quantities[id].dimension, quantities[id].scale};
    return amount;
}

enum group_id group_find(const char *id)
{
    for (size_t i = 0; id != NULL && i < GROUP_COUNT; i++) {
        if (strcmp(groups[i].id, id) == 0) {
            return (enum group_id)i;
        }
    }
    return GROUP_COUNT;
}

size_t group_size(enum group_id group)
{
    size_t end = group + 1 < GROUP_COUNT ? groups[group + 1].first : QUANTITY_COUNT;
    return end - groups[group].first;
}

size_t ingle_quantity_count(void)
{
    return QUANTITY_COUNT;
}

const ingle_quantity *ingle_quantity_at(size_t index)
{
    return index < QUANTITY_COUNT ? &quantities[index] : NULL;
}

const ingle_quantity *ingle_quantity_find(const char *id)
{
    for (size_t i = 0; id != NULL && i < QUANTITY_COUNT; i++) {
        if (strcmp(quantities[i].id, id) == 0) {
            return &quantities[i];
        }
    }
    return NULL;
}

const char *ingle_quantity_id(const ingle_quantity *quantity)
{
    return quantity->id;
}

const char *ingle_quantity_group(const ingle_quantity *quantity)
{
    return groups[quantity->group].id;
}

const char *ingle_quantity_name(const ingle_quantity *quantity)
{
    return quantity->id + strlen(groups[quantity->group].id) + 1;
}

const char *ingle_quantity_label(const ingle_quantity *quantity)
{
    return quantity->label;
}

const char *ingle_quantity_how(const ingle_quantity *quantity)
{
    return quantity->how;
}

ingle_dimension ingle_quantity_dimension(const ingle_quantity *quantity)
{
    return quantity->dimension;
}

int ingle_quantity_repeats(const ingle_quantity *quantity)
{
    return groups[quantity->group].repeats;
}

static int64_t most_of(const ingle_quantity *quantity)
{
    switch (quantity->dimension) {
    case INGLE_CHOICE:
        return quantity->choice_count - 1;
    case INGLE_FLAG:
        return 1;
    default:
        return quantity->most;
    }
}

void ingle_quantity_range(const ingle_quantity *quantity, ingle_amount *least, ingle_amount *most)
{
    if (least != NULL) {
        *least = quantity_amount(quantity_id(quantity), quantity->least);
    }
    if (most != NULL) {
        *most = quantity_amount(quantity_id(quantity), most_of(quantity));
    }
}

size_t ingle_quantity_choice_count(const ingle_quantity *quantity)
{
    return quantity->choice_count;
}

const char *ingle_quantity_choice_at(const ingle_quantity *quantity, size_t index)
{
    return index < quantity->choice_count ? quantity->choices[index].id : NULL;
}

const char *ingle_quantity_choice_label(const ingle_quantity *quantity, size_t index)
{
    return index < quantity->choice_count ? quantity->choices[index].label : NULL;
}

int ingle_quantity_assumed(const ingle_quantity *quantity, ingle_amount *assumed)
{
    if (quantity->assumes && assumed != NULL) {
        *assumed = quantity_amount(quantity_id(quantity), quantity->assumed);
    }
    return quantity->assumes;
}
