/* SPDX-License-Identifier: MIT */
/*
 * What is seen rather than measured: a state that has to be so, or must not be.
 */
#include "formulas/formula.h"

static enum outcome observed_required(struct calculation *calculation, int64_t *required)
{
    *required = calculation->numbers[0];
    RECORD_STEP(calculation, .label = "required",
                .expression = calculation->relation == RELATION_IS ? "{0}" : "not {0}",
                .operands = {{calculation->formula->numbers[0].name,
                              calculation_judged_amount(calculation, *required),
                              calculation->judged}});
    return OUTCOME_DONE;
}

const struct formula formula_observed = {
    .name = "observed",
    .text = "What is seen has to be `state`, or must not be.",
    .numbers = {{"state", AS_JUDGED, INGLE_SCALE_USUAL}},
    .required = observed_required,
};
