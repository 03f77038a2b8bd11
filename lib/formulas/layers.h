/* SPDX-License-Identifier: MIT */
/*
 * Floor protection in layers: the R-value of each, and of all together.
 */
#ifndef INGLE_FORMULAS_LAYERS_H
#define INGLE_FORMULAS_LAYERS_H

#include "formulas/calculation.h"

/* The R-value of the layer that the calculation is at, where it was not stated, and its step. */
enum outcome layer_r_value(struct calculation *calculation, int64_t *value);

/* The sum over all layers, and its steps; missing where one of them cannot be told. */
enum outcome layers_r_value(struct calculation *calculation, int64_t *value);

#endif
