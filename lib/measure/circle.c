/* SPDX-License-Identifier: MIT */
#include "measure/circle.h"

#include <stddef.h>

/*
 * Two fractions that enclose pi, convergents and their like of its continued fraction, which begins
 * 3; 7, 15, 1, 292, 1, ... (On-Line Encyclopedia of Integer Sequences, A001203). They are the
 * nearest whose parts fit 64 bits with a factor of 4: off by less than 2e-38 and 9e-36, so that the
 * area of a circle is right to one base unit wherever it is held at all.
 */
static const struct {
    uint64_t numerator;
    uint64_t denominator;
} pi_below = {UINT64_C(2646693125139304345), UINT64_C(842468587426513207)},
  pi_above = {UINT64_C(430010946591069243), UINT64_C(136876735467187340)};

bool circle_area(int64_t diameter, enum rounding rounding, int64_t *area)
{
    if (diameter < 0 || diameter > UINT32_MAX) {
        return false;
    }
    /* The square needs 64 bits at most, and more than any area that fits has. */
    uint64_t square = (uint64_t)diameter * (uint64_t)diameter;
    if (rounding == ROUND_UP) {
        return wide_multiply_divide(square, pi_above.numerator, 4 * pi_above.denominator, ROUND_UP,
                                    area, NULL);
    }
    return wide_multiply_divide(square, pi_below.numerator, 4 * pi_below.denominator, rounding,
                                area, NULL);
}
