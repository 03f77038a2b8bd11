/* SPDX-License-Identifier: MIT */
#include "uncertainty/propagation.h"

#include <math.h>

/*
 * So many standard uncertainties around the measured lengths the margin has to be a straight line,
 * with one length off or with all of them.
 */
#define STRAIGHT_WITHIN 3.0
/* How far it may be off that line, as a share of its standard uncertainty. */
#define STRAIGHT_ENOUGH 0.2

enum margin_kind propagation_margin(struct calculation *calculation, int64_t *margin)
{
    struct evaluation evaluation;
    evaluate(calculation, &evaluation);
    switch (evaluation.required_outcome) {
    case OUTCOME_UNLIMITED:
        return MARGIN_NO_LIMIT;
    case OUTCOME_OUTSIDE:
        return MARGIN_NO_VALUE;
    case OUTCOME_DONE:
        break;
    case OUTCOME_MISSING:
    case OUTCOME_LISTING:
    case OUTCOME_OVERFLOW:
    case OUTCOME_CONTRADICTION:
        return MARGIN_NONE;
    }
    return evaluation.measured_outcome == OUTCOME_DONE &&
                   evaluation_margin(calculation, &evaluation, margin)
               ? MARGIN_KNOWN
               : MARGIN_NONE;
}

/* Puts one length on trial, so many standard uncertainties off; none is less than nothing. */
static void move(struct calculation *calculation, const struct share *share, double by)
{
    int64_t moved = share->budget->length + (int64_t)llround(by * share->budget->u);
    calculation_try(calculation, share->budget->quantity, moved < 0 ? 0 : moved);
}

/* ---- sensitivities -------------------------------------------------------------------------- */

/* Half the difference of the margins one standard uncertainty to both sides; false without. */
static bool find_change(const struct propagation *propagation, struct share *share)
{
    int64_t more = 0;
    int64_t less = 0;
    struct calculation trial = propagation->calculation;
    move(&trial, share, 1);
    bool known = propagation_margin(&trial, &more) == MARGIN_KNOWN;
    move(&trial, share, -1);
    known = known && propagation_margin(&trial, &less) == MARGIN_KNOWN;
    share->change = known ? ((double)more - (double)less) / 2 : 0;
    return known;
}

/* ---- whether it is a straight line ---------------------------------------------------------- */

/* The margin with lengths moved against what the straight line has there. */
static bool is_on_line(const struct propagation *propagation, struct calculation *trial,
                       double expected)
{
    int64_t margin = 0;
    return propagation_margin(trial, &margin) == MARGIN_KNOWN &&
           fabs((double)margin - expected) <= STRAIGHT_ENOUGH * propagation->u + 1;
}

static bool is_straight_along(const struct propagation *propagation, const struct share *share)
{
    for (double by = -STRAIGHT_WITHIN; by <= STRAIGHT_WITHIN; by += 1) {
        struct calculation trial = propagation->calculation;
        move(&trial, share, by);
        if (!is_on_line(propagation, &trial, (double)propagation->margin + by * share->change)) {
            return false;
        }
    }
    return true;
}

static bool is_straight_at_corners(const struct propagation *propagation)
{
    for (unsigned corner = 0; corner < 1u << propagation->count; corner++) {
        struct calculation trial = propagation->calculation;
        double expected = (double)propagation->margin;
        for (size_t i = 0; i < propagation->count; i++) {
            double by = (corner >> i & 1) != 0 ? STRAIGHT_WITHIN : -STRAIGHT_WITHIN;
            move(&trial, &propagation->shares[i], by);
            expected += by * propagation->shares[i].change;
        }
        if (!is_on_line(propagation, &trial, expected)) {
            return false;
        }
    }
    return true;
}

static bool is_straight(const struct propagation *propagation)
{
    for (size_t i = 0; i < propagation->count; i++) {
        if (!is_straight_along(propagation, &propagation->shares[i])) {
            return false;
        }
    }
    return is_straight_at_corners(propagation);
}

/* ---- combining ------------------------------------------------------------------------------ */

static double root_of_sum(double first, double second)
{
    return sqrt(first * first + second * second);
}

/* What a part of a length's budget, by its half-width, makes of the margin. */
static double part_of(const struct share *share, double half_width)
{
    return share->change / share->budget->u * rectangular(half_width);
}

static void combine(struct propagation *propagation, bool separate)
{
    for (size_t i = 0; i < propagation->count; i++) {
        const struct share *share = &propagation->shares[i];
        const struct ingle_length_budget *budget = share->budget;
        propagation->tape_scale += part_of(share, budget->scale);
        propagation->tape_rest += part_of(share, (double)budget->tape - budget->scale);
        propagation->tape =
            root_of_sum(propagation->tape, part_of(share, (double)budget->tape));
        propagation->reading =
            root_of_sum(propagation->reading, part_of(share, (double)budget->graduation / 2));
        propagation->masonry =
            root_of_sum(propagation->masonry, part_of(share, (double)budget->masonry));
    }
    if (!separate) {
        propagation->tape = fabs(propagation->tape_scale + propagation->tape_rest);
    }
    propagation->u =
        root_of_sum(propagation->tape, root_of_sum(propagation->reading, propagation->masonry));
}

void propagate(struct propagation *propagation, bool separate)
{
    struct calculation measured = propagation->calculation;
    enum margin_kind kind = propagation_margin(&measured, &propagation->margin);
    bool smooth = kind == MARGIN_KNOWN;
    for (size_t i = 0; i < propagation->count; i++) {
        smooth = find_change(propagation, &propagation->shares[i]) && smooth;
    }
    if (kind != MARGIN_KNOWN) {
        propagation->margin = MARGIN_UNLIMITED;
    }
    combine(propagation, separate);
    propagation->stepped = !smooth || !is_straight(propagation);
}
