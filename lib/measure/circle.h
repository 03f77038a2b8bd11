/* SPDX-License-Identifier: MIT */
/*
 * The area of a circle, which is never a whole number of base units and so is enclosed.
 */
#ifndef INGLE_MEASURE_CIRCLE_H
#define INGLE_MEASURE_CIRCLE_H

#include "base/wide.h"

/*
 * The area in nm² of a circle by its diameter in nm. ROUND_DOWN gives no more than the true area,
 * ROUND_UP no less, and the two are 1 nm² apart; ROUND_NEAREST is one of them. Returns
 * false for a negative diameter and for an area beyond 63 bits (some 3.4 m across).
 */
bool circle_area(int64_t diameter, enum rounding rounding, int64_t *area);

/*
 * The same times numerator / denominator, not negative and not 0, rounded once: ROUND_DOWN gives no
 * more than the true product, ROUND_UP no less. ROUND_NEAREST is ROUND_DOWN here.
 */
bool circle_area_share(int64_t diameter, int64_t numerator, int64_t denominator,
                       enum rounding rounding, int64_t *area);

#endif
