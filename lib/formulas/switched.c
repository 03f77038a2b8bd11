/* SPDX-License-Identifier: MIT */
/*
 * A limit that another thing switches: whether something is there, or of what kind it is.
 */
#include "formulas/formula.h"

enum { WITH_IT, WITHOUT_IT };

static enum outcome with_or_without_required(struct calculation *calculation, int64_t *required)
{
    int64_t input = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &input);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    unsigned chosen = input != 0 ? WITH_IT : WITHOUT_IT;
    *required = calculation->numbers[chosen];
    RECORD_STEP(calculation, .label = "required", .expression = "{0}, so {1}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], input),
                             operand_number(calculation, chosen)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_with_or_without = {
    .name = "with-or-without",
    .text = "What is required is `without` where the rule's input is no, none or the first of its "
            "choices, and `with` where it is anything else.",
    .numbers = {{"with", AS_JUDGED, INGLE_SCALE_USUAL}, {"without", AS_JUDGED, INGLE_SCALE_USUAL}},
    .required = with_or_without_required,
};
