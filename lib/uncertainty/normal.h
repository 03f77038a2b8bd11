/* SPDX-License-Identifier: MIT */
/*
 * The normal distribution.
 */
#ifndef INGLE_UNCERTAINTY_NORMAL_H
#define INGLE_UNCERTAINTY_NORMAL_H

/* Φ(z): the probability of no more than z, exact far into both tails; 0 and 1 at infinity. */
double normal_below(double z);

#endif
