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

/*
 * The area is a whole part and a rest below 1, each times the ratio: what both leave over, in
 * parts of the denominator, is put together before anything is rounded. Pi is enclosed on the
 * rounding's side, so the result is too.
 */
bool circle_area_share(int64_t diameter, int64_t numerator, int64_t denominator,
                       enum rounding rounding, int64_t *area)
{
    bool up = rounding == ROUND_UP;
    uint64_t times = up ? pi_above.numerator : pi_below.numerator;
    uint64_t over = 4 * (up ? pi_above.denominator : pi_below.denominator);
    int64_t whole;
    int64_t rest;
    int64_t share;
    if (diameter < 0 || diameter > UINT32_MAX || numerator < 0 || denominator <= 0) {
        return false;
    }
    uint64_t square = (uint64_t)diameter * (uint64_t)diameter;
    if (!wide_multiply_divide(square, times, over, ROUND_DOWN, &whole, NULL)) {
        return false;
    }
    uint64_t left = square * times - (uint64_t)whole * over; /* exact, modulo 2^64 */
    if (!wide_multiply_divide(left, (uint64_t)numerator, over, ROUND_DOWN, &rest, NULL) ||
        !wide_multiply_divide((uint64_t)whole, (uint64_t)numerator, (uint64_t)denominator,
                              ROUND_DOWN, &share, NULL)) {
        return false;
    }
    uint64_t parts = (uint64_t)whole * (uint64_t)numerator -
                     (uint64_t)share * (uint64_t)denominator + (uint64_t)rest;
    int64_t more = (int64_t)(parts / (uint64_t)denominator);
    /* A circle's area is no fraction: beyond its whole part there is always something. */
    more += up && diameter > 0 && numerator > 0 ? 1 : 0;
    return wide_add(share, more, area);
}
