/* SPDX-License-Identifier: MIT */
/*
 * Formulas of any topic that put two other quantities together.
 */
#include "formulas/formula.h"
#include "formulas/round.h"

static enum outcome both_inputs(struct calculation *calculation, int64_t *first, int64_t *second)
{
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], first);
    enum outcome other = calculation_quantity(calculation, calculation->inputs[1], second);
    return outcome != OUTCOME_DONE ? outcome : other;
}

/* ---- one, and a share of the other ---------------------------------------------------------- */

static enum outcome input_and_share_required(struct calculation *calculation, int64_t *required)
{
    int64_t first = 0;
    int64_t second = 0;
    int64_t share;
    enum outcome outcome = both_inputs(calculation, &first, &second);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    if (!round_share(calculation, calculation->inputs[1], second, calculation->numbers[0],
                     &share) ||
        !wide_add(first, share, required)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required", .expression = "{0} + {1} × {2}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], first),
                             operand_quantity(calculation, calculation->inputs[1], second),
                             operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_input_and_share = {
    .name = "input-and-share",
    .text = "What is required is the rule's first input, and `ratio` of the rule's second input.",
    .numbers = {{"ratio", INGLE_RATIO, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}, {SECOND_INPUT, 1}},
    .driver_count = 2,
    .required = input_and_share_required,
};

/* ---- the lesser of two shares --------------------------------------------------------------- */

static enum outcome lesser_share_required(struct calculation *calculation, int64_t *required)
{
    int64_t inputs[2] = {0, 0};
    int64_t shares[2];
    enum outcome outcome = both_inputs(calculation, &inputs[0], &inputs[1]);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    for (unsigned i = 0; i < 2; i++) {
        if (!round_share(calculation, calculation->inputs[i], inputs[i], calculation->numbers[i],
                         &shares[i])) {
            return OUTCOME_OVERFLOW;
        }
    }
    *required = shares[0] < shares[1] ? shares[0] : shares[1];
    RECORD_STEP(calculation, .label = "required",
                .expression = "the lesser of {0} × {1} and {2} × {3}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], inputs[0]),
                             operand_number(calculation, 0),
                             operand_quantity(calculation, calculation->inputs[1], inputs[1]),
                             operand_number(calculation, 1)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_lesser_share = {
    .name = "lesser-share",
    .text = "What is required is the lesser of the rule's first input times `first` and the rule's "
            "second input times `second`.",
    .numbers = {{"first", INGLE_RATIO, INGLE_SCALE_USUAL},
                {"second", INGLE_RATIO, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}, {SECOND_INPUT, 1}},
    .driver_count = 2,
    .required = lesser_share_required,
};
