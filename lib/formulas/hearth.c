/* SPDX-License-Identifier: MIT */
/*
 * The hearth: requirements that step at a size of the opening or a height of the firebox.
 */
#include "formulas/formula.h"

/* Numbers of both formulas: where the step is, what holds below it, and what holds from it on. */
enum { STEP_AT, BELOW_STEP, FROM_STEP };

static enum outcome step_required(struct calculation *calculation, int64_t input, int64_t *required)
{
    unsigned chosen = input >= calculation->numbers[STEP_AT] ? FROM_STEP : BELOW_STEP;
    *required = calculation->numbers[chosen];
    RECORD_STEP(calculation, .label = "required",
                .expression = chosen == FROM_STEP ? "{0} ≥ {1}, so {2}" : "{0} < {1}, so {2}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], input),
                             operand_number(calculation, STEP_AT),
                             operand_number(calculation, chosen)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

static enum outcome by_opening_area_required(struct calculation *calculation, int64_t *required)
{
    int64_t area = 0;
    calculation->area_scale = INGLE_SCALE_LARGE;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &area);
    return outcome == OUTCOME_DONE ? step_required(calculation, area, required) : outcome;
}

const struct formula formula_by_opening_area = {
    .name = "by-opening-area",
    .text = "What is required is `small` for an opening smaller than `threshold`, and `large` for "
            "one of `threshold` or larger.",
    .numbers = {{"threshold", INGLE_AREA, INGLE_SCALE_LARGE},
                {"small", AS_JUDGED, INGLE_SCALE_USUAL},
                {"large", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = by_opening_area_required,
};

/* The exception has to be shown: a raise that was not recorded is not used. */
static enum outcome by_firebox_raise_required(struct calculation *calculation, int64_t *required)
{
    int64_t raise;
    if (calculation_recorded(calculation, calculation->inputs[0], &raise)) {
        return step_required(calculation, raise, required);
    }
    *required = calculation->numbers[BELOW_STEP];
    RECORD_STEP(calculation, .label = "required", .expression = "{0}",
                .remark = "The raise of the firebox is not recorded, so the exception "
                          "for a raised firebox is not used.",
                .operands = {operand_number(calculation, BELOW_STEP)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_by_firebox_raise = {
    .name = "by-firebox-raise",
    .text = "What is required is `ordinary`, but only `raised` where the firebox opening stands "
            "`raise` or more above the hearth extension.",
    .numbers = {{"raise", INGLE_LENGTH, INGLE_SCALE_USUAL},
                {"ordinary", AS_JUDGED, INGLE_SCALE_USUAL},
                {"raised", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, -1}},
    .driver_count = 1,
    .required = by_firebox_raise_required,
};
