/* SPDX-License-Identifier: MIT */
/**
 * @file
 * The values that one quantity is led through, for asking what would happen if it were another.
 */
#ifndef INGLE_RANGE_H
#define INGLE_RANGE_H

#include <ingle/api.h>
#include <ingle/measure.h>
#include <ingle/status.h>
#include <ingle/survey.h>

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** The most values a range may have. */
#define INGLE_RANGE_MOST 1000000

/**
 * Which quantity takes which values: the multiples of `step` from `from` to `to`, so that each is a
 * graduation of the tape. A choice takes all its choices, a flag no and yes, whatever the bounds.
 * Start from zeroed bytes, set `size` and `quantity`.
 */
typedef struct ingle_range {
    /** sizeof(ingle_range). */
    size_t size;
    /** The quantity; see ingle_survey_find(). */
    const ingle_quantity *quantity;
    /** The item where its group repeats, else 0. */
    size_t item;
    /** The least value, in base units. */
    int64_t from;
    /** The greatest value; 0 with `from` 0 takes the quantity's whole plausible range. */
    int64_t to;
    /**
     * From one value to the next; 0 takes what is usual for the dimension: 1/16 in for a length, or
     * 1 mm; 1 in² or 1 cm²; 1°; 1/2 in 12; 1/100; 1000 Btu/h or 1/2 kW; 10 ft³ or 1 m³; 1. Where
     * that is more than INGLE_RANGE_MOST values, twice as much and more, or ten times.
     */
    int64_t step;
    /** 1 takes the metric steps where `step` is 0. */
    int32_t metric;
    /** Zero. */
    int32_t reserved;
} ingle_range;

/**
 * Fills in what a range leaves to this library, and moves its bounds to its first and last value.
 *
 * @param range a range
 * @param[out] count receives how many values there are; may be NULL
 * @returns INGLE_OK; INGLE_ERROR_UNKNOWN_QUANTITY without a quantity; INGLE_ERROR_RANGE if it is
 *          reversed or has no value, or more than INGLE_RANGE_MOST, or a step below zero;
 *          INGLE_ERROR_IMPLAUSIBLE if it leaves the quantity's plausible range;
 *          INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER. On error the
 *          range is as it was.
 */
INGLE_API ingle_status ingle_range_settle(ingle_range *range, size_t *count);

#ifdef __cplusplus
}
#endif

#endif
