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

#endif
