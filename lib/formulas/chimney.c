/* SPDX-License-Identifier: MIT */
/*
 * The chimney in the roof.
 */
#include "formulas/formula.h"

static enum outcome rise_by_slope_required(struct calculation *calculation, int64_t *required)
{
    int64_t width = 0;
    int64_t slope = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &width);
    enum outcome other = calculation_quantity(calculation, calculation->inputs[1], &slope);
    if (outcome != OUTCOME_DONE || other != OUTCOME_DONE) {
        return outcome != OUTCOME_DONE ? outcome : other;
    }
    uint64_t divisor = (uint64_t)calculation->numbers[0];
    if (divisor == 0 || !wide_multiply_divide((uint64_t)width, (uint64_t)slope, divisor,
                                              calculation->rounding, required, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required", .expression = "{0} × {1} ÷ {2}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], width),
                             operand_quantity(calculation, calculation->inputs[1], slope),
                             operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_rise_by_slope = {
    .name = "rise-by-slope",
    .text = "What is required is how far a roof of the slope that is the rule's second input rises "
            "along the rule's first input, divided by `divisor`.",
    .numbers = {{"divisor", INGLE_RATIO, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}, {SECOND_INPUT, 1}},
    .driver_count = 2,
    .required = rise_by_slope_required,
};
