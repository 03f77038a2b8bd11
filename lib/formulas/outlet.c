/* SPDX-License-Identifier: MIT */
/*
 * The flue's outlet: a limit within a radius that grows with the heat of the fire below.
 */
#include "formulas/formula.h"

/*
 * What is asked, and within which radius; up to which heat the radius holds, by how much it grows
 * for each further step of heat that is begun, and where it stops.
 */
enum { LIMIT, WITHIN, UP_TO, EVERY, MORE, MOST };

static int64_t steps_begun(const int64_t *numbers, int64_t heat)
{
    int64_t every = numbers[EVERY] > 0 ? numbers[EVERY] : 1;
    int64_t above = heat - numbers[UP_TO];
    return above > 0 ? above / every + (above % every != 0) : 0;
}

static bool radius_after(const int64_t *numbers, int64_t steps, int64_t *radius)
{
    int64_t growth;
    if (!wide_multiply(steps, numbers[MORE], &growth) ||
        !wide_add(numbers[WITHIN], growth, radius)) {
        return false;
    }
    if (*radius > numbers[MOST]) {
        *radius = numbers[MOST];
    }
    return true;
}

/* The radius, and its step. */
static enum outcome radius_by_heat(struct calculation *calculation, int64_t *radius)
{
    int64_t heat = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[1], &heat);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    int64_t steps = steps_begun(calculation->numbers, heat);
    if (!radius_after(calculation->numbers, steps, radius)) {
        return OUTCOME_OVERFLOW;
    }
    ingle_amount count = {steps, INGLE_COUNT, INGLE_SCALE_USUAL};
    ingle_amount reach = {*radius, INGLE_LENGTH, INGLE_SCALE_USUAL};
    RECORD_STEP(calculation, .label = "steps of heat begun",
                .expression = steps > 0 ? "({0} − {1}) / {2}, rounded up" : "{0} ≤ {1}, so none",
                .operands = {operand_quantity(calculation, calculation->inputs[1], heat),
                             operand_number(calculation, UP_TO),
                             operand_number(calculation, EVERY)},
                .result = count, .has_result = true);
    RECORD_STEP(calculation, .label = "radius", .expression = "{0} + {1} × {2}, at most {3}",
                .operands = {operand_number(calculation, WITHIN), operand_amount("steps", count),
                             operand_number(calculation, MORE), operand_number(calculation, MOST)},
                .result = reach, .has_result = true);
    return OUTCOME_DONE;
}

static enum outcome within_by_heat_required(struct calculation *calculation, int64_t *required)
{
    int64_t distance = 0;
    int64_t radius = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &distance);
    enum outcome by_heat = radius_by_heat(calculation, &radius);
    if (outcome != OUTCOME_DONE || by_heat != OUTCOME_DONE) {
        return outcome != OUTCOME_DONE ? outcome : by_heat;
    }
    bool near = distance <= radius;
    ingle_amount reach = {radius, INGLE_LENGTH, INGLE_SCALE_USUAL};
    *required = calculation->numbers[LIMIT];
    RECORD_STEP(calculation, .label = "required",
                .expression = near ? "{0} ≤ {1}, so {2}" : "{0} > {1}, so nothing",
                .operands = {operand_quantity(calculation, calculation->inputs[0], distance),
                             operand_amount("radius", reach), operand_number(calculation, LIMIT)},
                .result = calculation_judged_amount(calculation, *required), .has_result = near);
    return near ? OUTCOME_DONE : OUTCOME_UNLIMITED;
}

/* Every radius there can be, or the heats at which it grows. */
static size_t within_by_heat_breakpoints(struct calculation *calculation,
                                         enum quantity_id quantity, int64_t *values)
{
    const int64_t *numbers = calculation->numbers;
    bool distance = quantity == calculation->inputs[0];
    int64_t radius = numbers[WITHIN];
    int64_t heat = numbers[UP_TO];
    size_t count = 0;
    for (int64_t steps = 1; count + 2 <= BREAKPOINTS; steps++) {
        values[count++] = distance ? radius : heat;
        values[count++] = (distance ? radius : heat) + 1;
        if (radius == numbers[MOST] || !radius_after(numbers, steps, &radius) ||
            !wide_add(heat, numbers[EVERY], &heat)) {
            break;
        }
    }
    return count;
}

const struct formula formula_within_by_heat = {
    .name = "within-by-heat",
    .text = "What is required is `limit` where the rule's first input is `within` or less; the "
            "radius grows by `more` for each `every` begun by which the rule's second input is "
            "more than `up-to`, and is never more than `most`. Beyond it this rule asks nothing.",
    .numbers = {{"limit", AS_JUDGED, INGLE_SCALE_USUAL},
                {"within", INGLE_LENGTH, INGLE_SCALE_USUAL},
                {"up-to", INGLE_POWER, INGLE_SCALE_USUAL},
                {"every", INGLE_POWER, INGLE_SCALE_USUAL},
                {"more", INGLE_LENGTH, INGLE_SCALE_USUAL},
                {"most", INGLE_LENGTH, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 0}, {SECOND_INPUT, 0}},
    .driver_count = 2,
    .required = within_by_heat_required,
    .breakpoints = within_by_heat_breakpoints,
};
