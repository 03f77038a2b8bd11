/* SPDX-License-Identifier: MIT */
/*
 * A number as people write it (`36.5`, `15 15/16`, `12½`), and its exact product with a unit.
 */
#ifndef INGLE_MEASURE_NUMBER_H
#define INGLE_MEASURE_NUMBER_H

#include "measure/scan.h"

#include <ingle/status.h>

#include <stdint.h>

/*
 * A number, still in its text: a decimal of any length, a fraction, or a whole number and a
 * fraction. Its size is (digits × 10^exponent) + numerator / denominator.
 */
struct number {
    size_t start; /* where it starts in the text, its sign included */
    bool negative;
    const char *whole; /* the digits before the point */
    size_t whole_length;
    const char *places; /* the digits after the point */
    size_t places_length;
    int64_t exponent;
    bool has_fraction;
    uint64_t numerator; /* 0 / 1 if it has none */
    uint64_t denominator;
};

/*
 * Reads a number. On error `scan->at` is the place where something else was due. With `sign` it
 * may have a minus.
 */
ingle_status number_read(struct scan *scan, bool sign, struct number *number);

/*
 * The number's size, without its sign, times numerator / denominator, a power of ten or 1; to the
 * nearest, halves upward. Gives INGLE_OK, INGLE_ROUNDED or INGLE_ERROR_OVERFLOW.
 */
ingle_status number_times(const struct number *number, int64_t numerator, int64_t denominator,
                          int64_t *result);

/*
 * The quotient of two numbers' sizes times `scale`, in the same way; the second is not zero. Each
 * is taken as a fraction of whole numbers, and what 63 bits do not hold on the way is refused as an
 * overflow: that never happens while these whole numbers have no more than nine digits.
 */
ingle_status number_quotient(const struct number *above, const struct number *below, int64_t scale,
                             int64_t *result);

bool number_is_zero(const struct number *number);

#endif
