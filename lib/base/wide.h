/* SPDX-License-Identifier: MIT */
/*
 * Products and quotients of 64-bit numbers that are exact or refused.
 */
#ifndef INGLE_BASE_WIDE_H
#define INGLE_BASE_WIDE_H

#include <stdbool.h>
#include <stdint.h>

enum rounding { ROUND_DOWN, ROUND_NEAREST, ROUND_UP };

/*
 * a × b / c, through a product of 128 bits, all three not negative and c > 0. ROUND_NEAREST takes
 * halves upward. Returns false where the result needs more than 63 bits. `exact`, which may be
 * NULL, tells whether nothing was rounded.
 */
bool wide_multiply_divide(uint64_t a, uint64_t b, uint64_t c, enum rounding rounding,
                          int64_t *result, bool *exact);

/* a × b, a + b and a - b, or false on overflow. */
bool wide_multiply(int64_t a, int64_t b, int64_t *result);
bool wide_add(int64_t a, int64_t b, int64_t *result);
bool wide_subtract(int64_t a, int64_t b, int64_t *result);

#endif
