/* SPDX-License-Identifier: MIT */
/*
 * Formulas of any topic: a fixed limit, and a share of another quantity.
 */
#include "formulas/formula.h"

static enum outcome fixed_required(struct calculation *calculation, int64_t *required)
{
    *required = calculation->numbers[0];
    RECORD_STEP(calculation, .label = "required", .expression = "{0}",
                .operands = {operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_fixed = {
    .name = "fixed",
    .text = "What is required is `limit`, whatever the rest.",
    .numbers = {{"limit", AS_JUDGED, INGLE_SCALE_USUAL}},
    .required = fixed_required,
};

/* The input times the ratio that is the rule's first number. */
static enum outcome share_of_input(struct calculation *calculation, const char *label,
                                   int64_t *share)
{
    int64_t input = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->input, &input);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    if (!wide_multiply_divide((uint64_t)input, (uint64_t)calculation->numbers[0], INGLE_RATIO_ONE,
                              calculation->rounding, share, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = label, .expression = "{0} × {1}",
                .operands = {operand_quantity(calculation, calculation->input, input),
                             operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *share), .has_result = true);
    return OUTCOME_DONE;
}

static enum outcome share_required(struct calculation *calculation, int64_t *required)
{
    return share_of_input(calculation, "required", required);
}

const struct formula formula_share = {
    .name = "share",
    .text = "What is required is the rule's input times `ratio`.",
    .numbers = {{"ratio", INGLE_RATIO, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = share_required,
};

static enum outcome share_or_least_required(struct calculation *calculation, int64_t *required)
{
    int64_t share = 0;
    enum outcome outcome = share_of_input(calculation, "share", &share);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    int64_t least = calculation->numbers[1];
    *required = share > least ? share : least;
    RECORD_STEP(calculation, .label = "required", .expression = "the greater of {0} and {1}",
                .operands = {operand_amount("share", calculation_judged_amount(calculation, share)),
                             operand_number(calculation, 1)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_share_or_least = {
    .name = "share-or-least",
    .text = "What is required is the rule's input times `ratio`, and never less than `least`.",
    .numbers = {{"ratio", INGLE_RATIO, INGLE_SCALE_USUAL}, {"least", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = share_or_least_required,
};
