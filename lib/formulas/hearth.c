/* SPDX-License-Identifier: MIT */
/*
 * The hearth: requirements that step at a size of the opening, or step or grow with the height of
 * the firebox.
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

/* ---- a hearth below a raised fire chamber --------------------------------------------------- */

/*
 * Numbers of all four: where the raise begins to count, what is required up to there and above it,
 * and from where on it grows, by how much for every how much.
 */
enum { TRIGGER, LEVEL, RAISED, GROWS_FROM, FOR_EVERY, GROWS_BY };

/* What is required grows in steps; one that is only begun counts as a whole one, or not at all. */
static enum outcome growing_required(struct calculation *calculation, int64_t raise, bool begun,
                                     int64_t *required)
{
    const int64_t *numbers = calculation->numbers;
    int64_t every = numbers[FOR_EVERY] > 0 ? numbers[FOR_EVERY] : 1;
    int64_t above = raise - numbers[GROWS_FROM];
    int64_t steps = above / every + (begun && above % every != 0);
    int64_t growth;
    if (!wide_multiply(steps, numbers[GROWS_BY], &growth) ||
        !wide_add(numbers[RAISED], growth, required)) {
        return OUTCOME_OVERFLOW;
    }
    ingle_amount count = {steps, INGLE_COUNT, INGLE_SCALE_USUAL};
    RECORD_STEP(calculation, .label = "steps above the raise at which the hearth begins to grow",
                .expression = begun ? "({0} − {1}) / {2}, rounded up"
                                    : "({0} − {1}) / {2}, whole steps only",
                .operands = {operand_quantity(calculation, calculation->inputs[0], raise),
                             operand_number(calculation, GROWS_FROM),
                             operand_number(calculation, FOR_EVERY)},
                .result = count, .has_result = true);
    RECORD_STEP(calculation, .label = "required", .expression = "{0} + {1} × {2}",
                .operands = {operand_number(calculation, RAISED), operand_amount("steps", count),
                             operand_number(calculation, GROWS_BY)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

/* `at_trigger`: a raise of just the trigger counts already. */
static enum outcome by_raise_required(struct calculation *calculation, bool at_trigger, bool begun,
                                      int64_t *required)
{
    const int64_t *numbers = calculation->numbers;
    int64_t raise = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &raise);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    bool raised = at_trigger ? raise >= numbers[TRIGGER] : raise > numbers[TRIGGER];
    if (raised && raise > numbers[GROWS_FROM]) {
        return growing_required(calculation, raise, begun, required);
    }
    unsigned chosen = raised ? RAISED : LEVEL;
    *required = numbers[chosen];
    RECORD_STEP(calculation, .label = "required",
                .expression = at_trigger ? (raised ? "{0} ≥ {1}, so {2}" : "{0} < {1}, so {2}")
                                         : (raised ? "{0} > {1}, so {2}" : "{0} ≤ {1}, so {2}"),
                .operands = {operand_quantity(calculation, calculation->inputs[0], raise),
                             operand_number(calculation, TRIGGER),
                             operand_number(calculation, chosen)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

static enum outcome above_begun(struct calculation *calculation, int64_t *required)
{
    return by_raise_required(calculation, false, true, required);
}

static enum outcome above_whole(struct calculation *calculation, int64_t *required)
{
    return by_raise_required(calculation, false, false, required);
}

static enum outcome from_begun(struct calculation *calculation, int64_t *required)
{
    return by_raise_required(calculation, true, true, required);
}

static enum outcome from_whole(struct calculation *calculation, int64_t *required)
{
    return by_raise_required(calculation, true, false, required);
}

#define RAISE_NUMBERS                                                                       \
    {{"trigger", INGLE_LENGTH, INGLE_SCALE_USUAL}, {"level", AS_JUDGED, INGLE_SCALE_USUAL}, \
     {"raised", AS_JUDGED, INGLE_SCALE_USUAL}, {"from", INGLE_LENGTH, INGLE_SCALE_USUAL},   \
     {"every", INGLE_LENGTH, INGLE_SCALE_USUAL}, {"more", AS_JUDGED, INGLE_SCALE_USUAL}}

#define RAISE_FORMULA(its_name, when_raised, counting, function)                                \
    {                                                                                           \
        .name = its_name,                                                                       \
        .text = "What is required is `level`, and `raised` where the fire chamber stands "      \
                when_raised " the hearth; above `from` it is `more` for every `every` on top: " \
                counting,                                                                       \
        .numbers = RAISE_NUMBERS, .drivers = {{THE_INPUT, 1}}, .driver_count = 1,               \
        .required = function,                                                                   \
    }

const struct formula formula_raised_above_begun_steps =
    RAISE_FORMULA("raised-above-begun-steps", "more than `trigger` above",
                  "a step that is begun counts.", above_begun);
const struct formula formula_raised_above_whole_steps =
    RAISE_FORMULA("raised-above-whole-steps", "more than `trigger` above",
                  "only whole steps count.", above_whole);
const struct formula formula_raised_from_begun_steps =
    RAISE_FORMULA("raised-from-begun-steps", "`trigger` or more above",
                  "a step that is begun counts.", from_begun);
const struct formula formula_raised_from_whole_steps =
    RAISE_FORMULA("raised-from-whole-steps", "`trigger` or more above",
                  "only whole steps count.", from_whole);
