/* SPDX-License-Identifier: MIT */
/*
 * Quantities that follow from others where they were not recorded themselves: an area from two
 * lengths, the hearth left in front of an insert, the net area of a flue.
 */
#ifndef INGLE_FORMULAS_DERIVED_H
#define INGLE_FORMULAS_DERIVED_H

#include "formulas/calculation.h"

/* Computes a quantity from those it follows from, or notes what is missing. */
enum outcome derive(struct calculation *calculation, enum quantity_id quantity, int64_t *value);

/*
 * The largest value of `quantity` at which `derived`, all else as the calculation has it, is not
 * more than `value`; false where it does not follow from it.
 */
bool derive_inverse(const struct calculation *calculation, enum quantity_id derived,
                    enum quantity_id quantity, int64_t value, int64_t *at);

/* A recorded quantity, or the sum of layers, behind a result; its way: +1, -1, 0 for either. */
struct dependence {
    enum quantity_id quantity;
    int8_t direction;
};

enum { DEPENDENCES = 8 };

struct dependences {
    struct dependence list[DEPENDENCES];
    size_t count;
};

/*
 * Adds the recorded quantities behind `quantity`, which works in `direction`. One that is added
 * with two directions works in either.
 */
void dependences_add(struct dependences *dependences, const struct calculation *calculation,
                     enum quantity_id quantity, int8_t direction);

#endif
