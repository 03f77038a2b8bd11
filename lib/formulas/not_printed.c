/* SPDX-License-Identifier: MIT */
/*
 * What a publication leaves out between the lines that it prints.
 */
#include "formulas/formula.h"

static enum outcome not_printed_required(struct calculation *calculation, int64_t *required)
{
    (void)required;
    RECORD_STEP(calculation, .label = "required", .expression = "no value is printed for this");
    return OUTCOME_OUTSIDE;
}

const struct formula formula_not_printed = {
    .name = "not-printed",
    .text = "The publication prints no value where this row applies, and none is made up.",
    .required = not_printed_required,
};
