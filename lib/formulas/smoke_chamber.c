/* SPDX-License-Identifier: MIT */
/*
 * The smoke chamber: how far its walls may lean, by how they are built.
 */
#include "formulas/formula.h"

enum { SMOOTH_LIMIT, CORBELED_LIMIT };

static enum outcome by_walls_required(struct calculation *calculation, int64_t *required)
{
    int64_t walls = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &walls);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    unsigned chosen = walls == CHOICE_SMOKE_CHAMBER_WALLS_CORBELED ? CORBELED_LIMIT : SMOOTH_LIMIT;
    *required = calculation->numbers[chosen];
    RECORD_STEP(calculation, .label = "required", .expression = "{0}, so {1}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], walls),
                             operand_number(calculation, chosen)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_by_smoke_chamber_walls = {
    .name = "by-smoke-chamber-walls",
    .text = "What is required is `smooth` for a prefabricated lining and for rolled or sloped "
            "walls, and `corbeled` for corbeled walls.",
    .numbers = {{"smooth", AS_JUDGED, INGLE_SCALE_USUAL},
                {"corbeled", AS_JUDGED, INGLE_SCALE_USUAL}},
    .required = by_walls_required,
};
