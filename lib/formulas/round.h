/* SPDX-License-Identifier: MIT */
/*
 * Areas of what is round: a collar, a connector.
 */
#ifndef INGLE_FORMULAS_ROUND_H
#define INGLE_FORMULAS_ROUND_H

#include "formulas/calculation.h"

/* The diameter that an area follows from, or QUANTITY_NONE. */
enum quantity_id round_diameter(enum quantity_id area);

/* The area by its diameter, and its step. */
enum outcome round_area(struct calculation *calculation, enum quantity_id area, int64_t *value);

/* The least diameter of a circle that has an area, for where a rule steps along a diameter. */
bool round_inverse(int64_t area, int64_t *diameter);

/*
 * How a circle's area is rounded that is required: as the judged area, where that is a circle known
 * by its diameter, so that they compare as their diameters do.
 */
enum rounding round_beside_judged(const struct calculation *calculation);

/*
 * A ratio of any quantity's value. Of a circle's area, known by its diameter, it is the ratio of
 * the area itself and not of the whole number that stands for it. False on overflow.
 */
bool round_share(const struct calculation *calculation, enum quantity_id quantity, int64_t value,
                 int64_t ratio, int64_t *share);

#endif
