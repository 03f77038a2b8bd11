/* SPDX-License-Identifier: MIT */
#include "draft/numbers.h"

#include <string.h>

#define KNOWN_FROM_MEMORY INGLE_BASIS_FROM_MEMORY
#define KNOWN_CITED INGLE_BASIS_CITED
#define KNOWN_COMMON_PRACTICE INGLE_BASIS_COMMON_PRACTICE
#define KNOWN_DERIVED BASIS_DERIVED
#define KNOWN_ASSUMPTION BASIS_ASSUMPTION

const struct ingle_draft_number draft_numbers[NUMBER_COUNT] = {
#define NUMBER(name, number_id, number_group, known, number_value, number_unit, words, from, ...) \
    [NUMBER_##name] = {.id = number_id, .group = number_group, .basis = KNOWN_##known,           \
                       .value = number_value, .unit = number_unit, .label = words,               \
                       .source = from, __VA_ARGS__},
#include "draft/numbers.def"
#undef NUMBER
};

double number_of(enum number_id id)
{
    return draft_numbers[id].value;
}

size_t ingle_draft_number_count(void)
{
    return NUMBER_COUNT;
}

const ingle_draft_number *ingle_draft_number_at(size_t index)
{
    return index < NUMBER_COUNT ? &draft_numbers[index] : NULL;
}

const ingle_draft_number *ingle_draft_number_find(const char *id)
{
    for (size_t i = 0; id != NULL && i < NUMBER_COUNT; i++) {
        if (strcmp(draft_numbers[i].id, id) == 0) {
            return &draft_numbers[i];
        }
    }
    return NULL;
}

const char *ingle_draft_number_id(const ingle_draft_number *number)
{
    return number->id;
}

const char *ingle_draft_number_group(const ingle_draft_number *number)
{
    return number->group;
}

const char *ingle_draft_number_label(const ingle_draft_number *number)
{
    return number->label;
}

double ingle_draft_number_value(const ingle_draft_number *number)
{
    return number->value;
}

const char *ingle_draft_number_unit(const ingle_draft_number *number)
{
    return number->unit;
}

int ingle_draft_number_range(const ingle_draft_number *number, double *least, double *most)
{
    if (number->ranged && least != NULL) {
        *least = number->least;
    }
    if (number->ranged && most != NULL) {
        *most = number->most;
    }
    return number->ranged;
}

const char *ingle_draft_number_source(const ingle_draft_number *number)
{
    return number->source;
}

const char *ingle_draft_number_basis(const ingle_draft_number *number)
{
    switch (number->basis) {
    case BASIS_DERIVED:
        return "derived";
    case BASIS_ASSUMPTION:
        return "assumption";
    default:
        return ingle_basis_name(number->basis);
    }
}
