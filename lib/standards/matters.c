/* SPDX-License-Identifier: MIT */
#include "standards/matters.h"

const struct matter matters[MATTER_COUNT] = {
#define MATTER(name, id_text, ...) {.id = id_text, __VA_ARGS__},
#include "standards/matters.def"
#undef MATTER
};

static size_t list_length(const enum quantity_id *list, size_t most)
{
    size_t length = 0;
    while (length < most && list[length] != QUANTITY_APPLIANCE_KIND) {
        length++;
    }
    return length;
}

size_t matter_judged_count(enum matter_id matter)
{
    return list_length(matters[matter].judged, MATTER_JUDGED);
}

size_t matter_change_count(enum matter_id matter)
{
    return list_length(matters[matter].changes, MATTER_CHANGES);
}

const struct matter *matter_as(enum matter_id matter, int64_t state)
{
    const struct matter *words = &matters[matter];
    for (size_t i = 0; i < MATTER_AS && words->as[i].words != 0; i++) {
        if (words->as[i].state == state) {
            return &matters[words->as[i].words];
        }
    }
    return words;
}
