/* SPDX-License-Identifier: MIT */
#include "formulas/steps.h"

#include "base/memory.h"

void step_list_add(struct step_list *list, const struct ingle_step *step)
{
    if (list->failed || !array_reserve(&list->allocator, (void **)&list->steps, &list->capacity,
                                       list->count, sizeof *list->steps)) {
        list->failed = true;
        return;
    }
    list->steps[list->count++] = *step;
}
