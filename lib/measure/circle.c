/* SPDX-License-Identifier: MIT */
#include "measure/circle.h"

#include <stddef.h>

/*
 * pi = 3.14159 26535 89793 23846 26433 ... (On-Line Encyclopedia of Integer Sequences, A000796),
 * so that 3.141592653589793238 < pi < 3.141592653589793239.
 */
#define PI_BELOW UINT64_C(3141592653589793238)
#define PI_ABOVE UINT64_C(3141592653589793239)
#define PI_SCALE UINT64_C(1000000000000000000)

bool circle_area(int64_t diameter, enum rounding rounding, int64_t *area)
{
    if (diameter < 0 || diameter > UINT32_MAX) {
        return false;
    }
    /* The square needs 64 bits at most, and more than any area that fits has. */
    uint64_t square = (uint64_t)diameter * (uint64_t)diameter;
    uint64_t pi = rounding == ROUND_UP ? PI_ABOVE : PI_BELOW;
    return wide_multiply_divide(square, pi, 4 * PI_SCALE, rounding, area, NULL);
}
