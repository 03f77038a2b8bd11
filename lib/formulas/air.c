/* SPDX-License-Identifier: MIT */
/*
 * Air: an area of vents or a volume of room by the heat of appliances, a duct as wide as a round
 * one, a flow by the size of the opening.
 */
#include "formulas/formula.h"
#include "formulas/round.h"
#include "measure/circle.h"
#include "measure/amounts.h"

enum { UP_TO_OUTPUT, FIRST_AREA, MORE_AREA };

static bool area_for(const struct calculation *calculation, unsigned number, int64_t heat,
                     int64_t *area)
{
    return wide_multiply_divide((uint64_t)heat, (uint64_t)calculation->numbers[number],
                                (uint64_t)KILOWATTS(1), calculation->rounding, area, NULL);
}

static enum outcome by_heat_required(struct calculation *calculation, int64_t *required)
{
    int64_t heat = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &heat);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    int64_t up_to = calculation->numbers[UP_TO_OUTPUT];
    int64_t first;
    int64_t more;
    if (!area_for(calculation, FIRST_AREA, heat < up_to ? heat : up_to, &first) ||
        !area_for(calculation, MORE_AREA, heat > up_to ? heat - up_to : 0, &more) ||
        !wide_add(first, more, required)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required",
                .expression = heat > up_to
                                  ? "{1} for each kW up to {2}, {3} for each kW of {0} above"
                                  : "{1} for each kW of {0}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], heat),
                             operand_number(calculation, FIRST_AREA),
                             operand_number(calculation, UP_TO_OUTPUT),
                             operand_number(calculation, MORE_AREA)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_area_by_heat = {
    .name = "area-by-heat",
    .text = "What is required is `first` for each kilowatt of the rule's input up to `up-to`, and "
            "`more` for each kilowatt above it.",
    .numbers = {{"up-to", INGLE_POWER, INGLE_SCALE_USUAL},
                {"first", INGLE_AREA, INGLE_SCALE_USUAL},
                {"more", INGLE_AREA, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = by_heat_required,
};

enum { VOLUME, FOR_HEAT };

static enum outcome volume_required(struct calculation *calculation, int64_t *required)
{
    int64_t heat = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &heat);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    if (!wide_multiply_divide((uint64_t)heat, (uint64_t)calculation->numbers[VOLUME],
                              (uint64_t)calculation->numbers[FOR_HEAT], calculation->rounding,
                              required, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required", .expression = "{1} for each {2} of {0}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], heat),
                             operand_number(calculation, VOLUME),
                             operand_number(calculation, FOR_HEAT)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_volume_by_heat = {
    .name = "volume-by-heat",
    .text = "What is required is `volume` for each `heat` of the rule's input, and in proportion.",
    .numbers = {{"volume", INGLE_VOLUME, INGLE_SCALE_USUAL},
                {"heat", INGLE_POWER, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = volume_required,
};

static enum outcome circle_required(struct calculation *calculation, int64_t *required)
{
    if (!circle_area(calculation->numbers[0], round_beside_judged(calculation), required)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required", .expression = "π/4 × {0} × {0}",
                .operands = {operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_circle = {
    .name = "circle",
    .text = "What is required is the area of a circle of `diameter`.",
    .numbers = {{"diameter", INGLE_LENGTH, INGLE_SCALE_USUAL}},
    .required = circle_required,
};

/* Numbers of `area-above-heat`. */
enum { ABOVE_UP_TO, ABOVE_AREA, ABOVE_MORE };

static enum outcome above_heat_required(struct calculation *calculation, int64_t *required)
{
    int64_t heat = 0;
    int64_t more;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &heat);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    int64_t up_to = calculation->numbers[ABOVE_UP_TO];
    if (!area_for(calculation, ABOVE_MORE, heat > up_to ? heat - up_to : 0, &more) ||
        !wide_add(calculation->numbers[ABOVE_AREA], more, required)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required",
                .expression = heat > up_to ? "{1}, and {3} for each kW of {0} above {2}"
                                           : "{0} ≤ {2}, so {1}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], heat),
                             operand_number(calculation, ABOVE_AREA),
                             operand_number(calculation, ABOVE_UP_TO),
                             operand_number(calculation, ABOVE_MORE)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_area_above_heat = {
    .name = "area-above-heat",
    .text = "What is required is `area` where the rule's input is no more than `up-to`, and `more` "
            "on top for each kilowatt above it.",
    .numbers = {{"up-to", INGLE_POWER, INGLE_SCALE_USUAL},
                {"area", INGLE_AREA, INGLE_SCALE_USUAL},
                {"more", INGLE_AREA, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = above_heat_required,
};

/* ---- a flow of air -------------------------------------------------------------------------- */

static enum outcome flow_by_area_required(struct calculation *calculation, int64_t *required)
{
    int64_t area = 0;
    calculation->area_scale = INGLE_SCALE_LARGE;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &area);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    if (!wide_multiply_divide((uint64_t)area, (uint64_t)calculation->numbers[0],
                              (uint64_t)SQUARE_METRES(1), calculation->rounding, required, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required", .expression = "{1} for each m2 of {0}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], area),
                             operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_flow_by_area = {
    .name = "flow-by-area",
    .text = "What is required is `each`, in m3 in the hour, for each square metre of the rule's "
            "input, parts counted.",
    .numbers = {{"each", INGLE_RATIO, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = flow_by_area_required,
};
