/* SPDX-License-Identifier: MIT */
#include "check/evaluation.h"

#include "formulas/layers.h"

void evaluate(struct calculation *calculation, struct evaluation *evaluation)
{
    calculation_restart(calculation);
    bool at_most = calculation->relation == RELATION_AT_MOST ||
                   calculation->relation == RELATION_LESS_THAN;
    calculation->rounding = at_most ? ROUND_DOWN : ROUND_UP;
    evaluation->required_outcome =
        calculation->formula->required(calculation, &evaluation->required);
    calculation->rounding = at_most ? ROUND_UP : ROUND_DOWN;
    evaluation->measured_outcome =
        calculation_quantity(calculation, calculation->judged, &evaluation->measured);
}

bool evaluation_margin(const struct calculation *calculation, const struct evaluation *evaluation,
                       int64_t *margin)
{
    bool same = evaluation->measured == evaluation->required;
    switch (calculation->relation) {
    case RELATION_AT_LEAST:
        return wide_subtract(evaluation->measured, evaluation->required, margin);
    case RELATION_AT_MOST:
        return wide_subtract(evaluation->required, evaluation->measured, margin);
    case RELATION_LESS_THAN:
        return wide_subtract(evaluation->required, evaluation->measured, margin) &&
               wide_subtract(*margin, MARGIN_OF_LIMIT, margin);
    case RELATION_IS:
        *margin = same ? 0 : -1;
        return true;
    case RELATION_IS_NOT:
        *margin = same ? -1 : 0;
        return true;
    }
    return false;
}

/* ---- what the margin depends on ------------------------------------------------------------- */

static enum quantity_id driving_quantity(const struct calculation *calculation,
                                         enum quantity_id quantity)
{
    return quantity < THE_INPUT ? quantity : calculation->inputs[quantity - THE_INPUT];
}

void margin_dependences(const struct calculation *calculation, struct dependences *dependences)
{
    const struct formula *formula = calculation->formula;
    bool at_most = calculation->relation == RELATION_AT_MOST ||
                   calculation->relation == RELATION_LESS_THAN;
    int8_t sense = at_most ? -1 : 1;
    dependences->count = 0;
    dependences_add(dependences, calculation, calculation->judged, sense);
    for (size_t i = 0; i < formula->driver_count; i++) {
        enum quantity_id quantity = driving_quantity(calculation, formula->drivers[i].quantity);
        if (quantity == QUANTITY_NONE) {
            continue;
        }
        dependences_add(dependences, calculation, quantity,
                        (int8_t)(-sense * formula->drivers[i].direction));
    }
}

int margin_direction(const struct calculation *calculation, enum quantity_id quantity)
{
    struct dependences dependences;
    margin_dependences(calculation, &dependences);
    for (size_t i = 0; i < dependences.count; i++) {
        if (dependences.list[i].quantity == quantity) {
            return dependences.list[i].direction;
        }
    }
    return 0;
}

/* ---- the box of tolerances ------------------------------------------------------------------ */

struct axis {
    enum quantity_id quantity;
    int8_t direction;
    int64_t low;
    int64_t high;
};

struct box {
    struct axis axes[DEPENDENCES];
    size_t count;
    size_t free_count; /* the first axes are those that go either way */
};

/*
 * Layers are items, which no trial can tell apart: their sum goes from all least to all most. Where
 * a tolerance reaches down to no conductivity at all there is no most.
 */
static bool layers_axis(const struct calculation *calculation, struct dependence dependence,
                        struct axis *axis)
{
    struct calculation end = *calculation;
    end.steps = NULL;
    end.rounding = ROUND_DOWN;
    *axis = (struct axis){dependence.quantity, dependence.direction, 0, 0};
    end.layers_side = -1;
    if (layers_r_value(&end, &axis->low) != OUTCOME_DONE) {
        return false;
    }
    end.layers_side = 1;
    if (layers_r_value(&end, &axis->high) != OUTCOME_DONE) {
        axis->high = INT64_MAX;
    }
    return axis->high > axis->low;
}

static bool make_axis(const struct calculation *calculation, struct dependence dependence,
                      struct axis *axis)
{
    int64_t value;
    size_t item =
        groups[quantities[dependence.quantity].group].repeats ? calculation->item : 0;
    const struct record *record = survey_record(calculation->survey, dependence.quantity, item);
    if (dependence.quantity == QUANTITY_FLOOR_R_VALUE && record != NULL && !record->recorded) {
        return layers_axis(calculation, dependence, axis);
    }
    if (record == NULL || record->tolerance == 0 ||
        !calculation_recorded(calculation, dependence.quantity, &value)) {
        return false;
    }
    int64_t low = value - record->tolerance;
    *axis = (struct axis){dependence.quantity, dependence.direction, low < 0 ? 0 : low, 0};
    return wide_add(value, record->tolerance, &axis->high);
}

bool evaluation_spread(const struct calculation *calculation, enum quantity_id quantity)
{
    struct dependences dependences = {.count = 0};
    struct axis axis;
    dependences_add(&dependences, calculation, quantity, 1);
    for (size_t i = 0; i < dependences.count; i++) {
        if (make_axis(calculation, dependences.list[i], &axis)) {
            return true;
        }
    }
    return false;
}

static void make_box(const struct calculation *calculation, struct box *box)
{
    struct dependences dependences;
    struct axis axis;
    box->count = 0;
    box->free_count = 0;
    margin_dependences(calculation, &dependences);
    for (size_t i = 0; i < dependences.count; i++) {
        if (!make_axis(calculation, dependences.list[i], &axis)) {
            continue;
        }
        box->axes[box->count++] = axis;
        if (axis.direction == 0) {
            struct axis *first_bound = &box->axes[box->free_count++];
            box->axes[box->count - 1] = *first_bound;
            *first_bound = axis;
        }
    }
}

/* ---- its extremes --------------------------------------------------------------------------- */

/* Takes the margin at the calculation's trial values into the bounds. */
static void consider(struct calculation *calculation, struct bounds *bounds)
{
    struct evaluation evaluation;
    int64_t margin = MARGIN_UNLIMITED;
    evaluate(calculation, &evaluation);
    if (evaluation.required_outcome != OUTCOME_UNLIMITED &&
        evaluation.required_outcome != OUTCOME_OUTSIDE) {
        if (evaluation.required_outcome != OUTCOME_DONE) {
            bounds->outcome = evaluation.required_outcome;
            return;
        }
        if (evaluation.measured_outcome != OUTCOME_DONE) {
            bounds->outcome = evaluation.measured_outcome;
            return;
        }
        if (!evaluation_margin(calculation, &evaluation, &margin)) {
            bounds->outcome = OUTCOME_OVERFLOW;
            return;
        }
    }
    bounds->worst = margin < bounds->worst ? margin : bounds->worst;
    bounds->best = margin > bounds->best ? margin : bounds->best;
}

static void consider_along(struct calculation *calculation, const struct axis *axis,
                           struct bounds *bounds)
{
    int64_t values[BREAKPOINTS + 2] = {axis->low, axis->high};
    size_t count = 2;
    if (calculation->formula->breakpoints != NULL) {
        count += calculation->formula->breakpoints(calculation, axis->quantity, values + 2);
    }
    for (size_t i = 0; i < count; i++) {
        if (values[i] >= axis->low && values[i] <= axis->high) {
            calculation_try(calculation, axis->quantity, values[i]);
            consider(calculation, bounds);
        }
    }
}

/* All edges of the part of the box in which the margin may go either way. */
static void consider_edges(struct calculation *calculation, const struct box *box,
                           struct bounds *bounds)
{
    for (size_t along = 0; along < box->free_count; along++) {
        for (unsigned corner = 0; corner < 1u << box->free_count; corner++) {
            if ((corner >> along & 1) != 0) {
                continue;
            }
            for (size_t i = 0; i < box->free_count; i++) {
                const struct axis *axis = &box->axes[i];
                calculation_try(calculation, axis->quantity,
                                (corner >> i & 1) != 0 ? axis->high : axis->low);
            }
            consider_along(calculation, &box->axes[along], bounds);
        }
    }
}

static void consider_side(const struct calculation *calculation, const struct box *box, int side,
                          struct bounds *bounds)
{
    struct calculation corner = *calculation;
    corner.steps = NULL;
    for (size_t i = box->free_count; i < box->count; i++) {
        const struct axis *axis = &box->axes[i];
        calculation_try(&corner, axis->quantity, axis->direction == side ? axis->high : axis->low);
    }
    if (box->free_count > 0) {
        consider_edges(&corner, box, bounds);
    } else {
        consider(&corner, bounds);
    }
}

static struct bounds box_bounds(const struct calculation *calculation, const struct box *box)
{
    struct bounds bounds = {OUTCOME_DONE, box->count > 0, INT64_MAX, INT64_MIN};
    consider_side(calculation, box, -1, &bounds);
    if (bounds.spread) {
        consider_side(calculation, box, 1, &bounds);
    }
    return bounds;
}

struct bounds evaluation_bounds(const struct calculation *calculation)
{
    struct box box;
    make_box(calculation, &box);
    return box_bounds(calculation, &box);
}

struct bounds evaluation_bounds_around(const struct calculation *calculation, int64_t margin)
{
    struct box box;
    struct bounds known = {OUTCOME_DONE, false, margin, margin};
    make_box(calculation, &box);
    return box.count == 0 ? known : box_bounds(calculation, &box);
}
