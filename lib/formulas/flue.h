/* SPDX-License-Identifier: MIT */
/*
 * The flue: its net area and its shape, from a stated area, inside measures or a named liner.
 */
#ifndef INGLE_FORMULAS_FLUE_H
#define INGLE_FORMULAS_FLUE_H

#include "formulas/calculation.h"

/* What a flue's inside is known from. */
enum flue_source {
    FLUE_FROM_DIAMETER,
    FLUE_FROM_SIDES,
    FLUE_FROM_LINER,
    FLUE_FROM_SHAPE, /* nothing but its shape is known */
    FLUE_FROM_NOTHING
};

enum flue_source flue_source(const struct calculation *calculation);

/* Whether the flue is oval, for which no code prints a share of the opening. */
bool flue_is_oval(const struct calculation *calculation);

/* Whether a named liner is round, in whatever table it stands. */
bool flue_liner_is_round(int64_t liner);

/* The row of a liner, or NULL where the standard prints none for it. */
const struct liner *flue_liner(const struct calculation *calculation, int64_t liner);

/* The net area, where it was not stated, and its step. */
enum outcome flue_net_area(struct calculation *calculation, int64_t *area);

/* What is recorded of the flue cannot all be so: then notes it and returns true. */
bool flue_contradicts(struct calculation *calculation);

#endif
