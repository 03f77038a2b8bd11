/* SPDX-License-Identifier: MIT */
/*
 * The probability that a rule is met, counted: lengths drawn from their budgets, and judged by the
 * finding's own formula. Whole numbers up to the count itself, so that it is the same everywhere.
 */
#ifndef INGLE_UNCERTAINTY_MONTE_CARLO_H
#define INGLE_UNCERTAINTY_MONTE_CARLO_H

#include "uncertainty/propagation.h"

struct monte_carlo {
    uint64_t trials; /* 0 where there was no run */
    uint64_t met;
    uint64_t outside;
    double u; /* of the margin, over the trials that have one */
};

struct monte_carlo monte_carlo_run(const struct propagation *propagation, bool separate,
                                   uint64_t trials, uint64_t seed);

double monte_carlo_probability(const struct monte_carlo *run);

#endif
