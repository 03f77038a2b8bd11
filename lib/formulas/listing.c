/* SPDX-License-Identifier: MIT */
/*
 * What the appliance's own label or manual says.
 */
#include "formulas/formula.h"

static enum outcome by_listing_required(struct calculation *calculation, int64_t *required)
{
    if (!calculation_recorded(calculation, calculation->inputs[0], required)) {
        calculation_miss(calculation, calculation->inputs[0]);
        return OUTCOME_LISTING;
    }
    RECORD_STEP(calculation, .label = "required", .expression = "{0}",
                .remark = "By the appliance's own listing.",
                .operands = {operand_quantity(calculation, calculation->inputs[0], *required)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_by_listing = {
    .name = "by-listing",
    .text = "What is required is what the appliance's own label or manual says.",
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = by_listing_required,
};
