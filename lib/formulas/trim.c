/* SPDX-License-Identifier: MIT */
/*
 * Combustible trim: how far a piece may project at its distance from the opening, and how far away
 * it has to be for its projection.
 */
#include "formulas/formula.h"

enum { ZONE, WITHIN, RATIO_OF_DISTANCE };

static enum outcome no_projection(struct calculation *calculation, struct operand distance,
                                  int64_t *allowed)
{
    *allowed = 0;
    RECORD_STEP(calculation, .label = "allowed projection", .expression = "{0} < {1}, so none",
                .operands = {distance, operand_number(calculation, ZONE)},
                .result = calculation_judged_amount(calculation, 0), .has_result = true);
    return OUTCOME_DONE;
}

static enum outcome unlimited(struct calculation *calculation, struct operand distance)
{
    RECORD_STEP(calculation, .label = "allowed projection",
                .expression = "{0} > {1}, so no limit in this rule",
                .operands = {distance, operand_number(calculation, WITHIN)});
    return OUTCOME_UNLIMITED;
}

static enum outcome projection_required(struct calculation *calculation, int64_t *allowed)
{
    int64_t distance = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &distance);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    struct operand operand = operand_quantity(calculation, calculation->inputs[0], distance);
    if (distance < calculation->numbers[ZONE]) {
        return no_projection(calculation, operand, allowed);
    }
    if (distance > calculation->numbers[WITHIN]) {
        return unlimited(calculation, operand);
    }
    if (!wide_multiply_divide((uint64_t)distance, (uint64_t)calculation->numbers[RATIO_OF_DISTANCE],
                              INGLE_RATIO_ONE, calculation->rounding, allowed, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "allowed projection", .expression = "{0} × {1}",
                .operands = {operand, operand_number(calculation, RATIO_OF_DISTANCE)},
                .result = calculation_judged_amount(calculation, *allowed), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_projection_by_distance = {
    .name = "projection-by-distance",
    .text = "Nearer to the opening than `zone` nothing may project. From there to `within`, that "
            "distance included, a piece may project its distance times `ratio`. Beyond, this rule "
            "sets no limit.",
    .numbers = {{"zone", INGLE_LENGTH, INGLE_SCALE_USUAL},
                {"within", INGLE_LENGTH, INGLE_SCALE_USUAL},
                {"ratio", INGLE_RATIO, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = projection_required,
};

/* ---- the distance that a projection asks for ------------------------------------------------ */

enum { PROJECTING, NEAREST };

static enum outcome limit_and_projection_required(struct calculation *calculation,
                                                  int64_t *required)
{
    int64_t projection = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &projection);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    bool more = projection > calculation->numbers[PROJECTING];
    if (!wide_add(calculation->numbers[NEAREST], more ? projection : 0, required)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required",
                .expression = more ? "{0} > {1}, so {2} + {0}" : "{0} ≤ {1}, so {2}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], projection),
                             operand_number(calculation, PROJECTING),
                             operand_number(calculation, NEAREST)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_limit_and_projection = {
    .name = "limit-and-projection",
    .text = "What is required is `limit`, and the whole projection on top of it where that is more "
            "than `projecting`.",
    .numbers = {{"projecting", INGLE_LENGTH, INGLE_SCALE_USUAL},
                {"limit", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = limit_and_projection_required,
};
