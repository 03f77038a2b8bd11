/* SPDX-License-Identifier: MIT */
/*
 * The yardstick of the benchmark: the comparisons that one check of the demo's living room makes,
 * written straight down for one edition of one code, with nothing recorded and nothing explained.
 */
#ifndef INGLE_BENCHMARK_CHECK_BY_HAND_H
#define INGLE_BENCHMARK_CHECK_BY_HAND_H

#include <stdint.h>

struct hand_trim {
    int abutting;
    int combustible;
    int64_t distance;
    int64_t projection;
    int64_t lining_distance;
};

struct hand_survey {
    int64_t width, height, depth, throat_height, throat_above_lintel, throat_depth, throat_width;
    int64_t damper_area, lintel_left, lintel_right, chamber_height, chamber_slope, chamber_area;
    int64_t front, left, right, thickness, extension, raise, flue_area;
    int corbeled;
    int square_flue;
    int trim_count;
    struct hand_trim trim[8];
};

/* The number of comparisons that are not met. */
int check_by_hand(const struct hand_survey *survey);

#endif
