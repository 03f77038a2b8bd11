/* SPDX-License-Identifier: MIT */
/*
 * The steps of a calculation: what was put together, from which amounts, and what came out. Texts
 * are made from them only when somebody asks.
 */
#ifndef INGLE_FORMULAS_STEPS_H
#define INGLE_FORMULAS_STEPS_H

#include "survey/quantity.h"

#include <ingle/memory.h>

enum { STEP_OPERANDS = 4 };

/* One thing that goes into a step, by the name it has in the expression. */
struct operand {
    const char *name;
    ingle_amount amount;
    enum quantity_id quantity; /* whose choices give the text; QUANTITY_NONE for amounts */
};

struct ingle_step {
    const char *label;
    const char *expression; /* {0} to {3} stand for the operands */
    const char *remark;     /* more to say of it; NULL for nothing */
    struct operand operands[STEP_OPERANDS];
    ingle_amount result;
    bool has_result;
};

/* The steps of all findings of a report, one after the other. */
struct step_list {
    ingle_allocator allocator;
    struct ingle_step *steps;
    size_t count;
    size_t capacity;
    bool failed; /* for want of memory */
};

void step_list_add(struct step_list *list, const struct ingle_step *step);

#endif
