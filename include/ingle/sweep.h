/* SPDX-License-Identifier: MIT */
/**
 * @file
 * What each rule says while one quantity is led through its values, all else as surveyed.
 */
#ifndef INGLE_SWEEP_H
#define INGLE_SWEEP_H

#include <ingle/api.h>
#include <ingle/check.h>
#include <ingle/memory.h>
#include <ingle/page.h>
#include <ingle/range.h>

#ifdef __cplusplus
extern "C" {
#endif

/** The findings at every value of a quantity. One thread at a time may use it. */
typedef struct ingle_sweep ingle_sweep;

/** What is asked. Start from zeroed bytes and set `size`. */
typedef struct ingle_sweep_options {
    /** sizeof(ingle_sweep_options). */
    size_t size;
    /** Only this rule, `hearth-front`; NULL for all. */
    const char *rule;
    /** 1 keeps the lines that are the same at every value, too. */
    int32_t with_unchanged;
    /** Zero. */
    int32_t reserved;
} ingle_sweep_options;

/** Makes an empty sweep; give it back with ingle_sweep_free(). See ingle_solution_new(). */
INGLE_API ingle_status ingle_sweep_new(const ingle_allocator *allocator, ingle_sweep **sweep);

/** Gives a sweep back. NULL is allowed. */
INGLE_API void ingle_sweep_free(ingle_sweep *sweep);

/**
 * Judges a survey at every value of a range.
 *
 * @param survey what was measured and observed; the quantity need not be recorded
 * @param standards the standards adopted
 * @param standard_count how many; at least 1
 * @param check how to check: amendments and readings; NULL for none. No steps or remedies are made
 * @param range which values
 * @param options what is asked, or NULL for every rule that changes
 * @param[out] sweep receives the findings; what it held before is gone
 * @returns as ingle_solve(). On error ingle_sweep_error_text() tells more.
 */
INGLE_API ingle_status ingle_sweep_run(const ingle_survey *survey,
                                       const ingle_standard *const *standards,
                                       size_t standard_count, const ingle_check_options *check,
                                       const ingle_range *range,
                                       const ingle_sweep_options *options, ingle_sweep *sweep);

/** What was wrong with the last call that failed, in a sentence; "" before one. */
INGLE_API const char *ingle_sweep_error_text(const ingle_sweep *sweep);

/** The range as it was gone through; `size` is 0 before ingle_sweep_run(). */
INGLE_API void ingle_sweep_range(const ingle_sweep *sweep, ingle_range *range);

/** How many values were gone through. */
INGLE_API size_t ingle_sweep_value_count(const ingle_sweep *sweep);

/** One of the values, from 0, rising; INGLE_ERROR_ARGUMENT past the end. */
INGLE_API ingle_status ingle_sweep_value_at(const ingle_sweep *sweep, size_t value,
                                            ingle_amount *amount);

/**
 * How many lines there are. A line is one rule id of one standard judging one quantity, whichever
 * row of the standard holds at a value.
 */
INGLE_API size_t ingle_sweep_line_count(const ingle_sweep *sweep);

/** The standard of a line, from 0; NULL past the end. */
INGLE_API const ingle_standard *ingle_sweep_line_standard(const ingle_sweep *sweep, size_t line);

/** The first row of the standard met on a line, for its id and label; NULL past the end. */
INGLE_API const ingle_rule *ingle_sweep_line_rule(const ingle_sweep *sweep, size_t line);

/** The quantity that a line judges; NULL past the end. */
INGLE_API const ingle_quantity *ingle_sweep_line_quantity(const ingle_sweep *sweep, size_t line);

/**
 * The item that a line judges, where its group repeats; SIZE_MAX where nobody has looked at the
 * group, or past the end; else 0.
 */
INGLE_API size_t ingle_sweep_line_item(const ingle_sweep *sweep, size_t line);

/** A finding at one value. */
typedef struct ingle_sweep_cell {
    /** The row of the standard that holds at this value; NULL where the line has no finding. */
    const ingle_rule *rule;
    /** What it comes to; INGLE_NOT_APPLICABLE where the line has no finding. */
    ingle_verdict verdict;
    /** How measured stands to required; 0 where the line has no finding. */
    ingle_relation relation;
    /** 1 if `required`, `measured` and `margin` are known. */
    int32_t has_required, has_measured, has_margin;
    /** What is required. */
    ingle_amount required;
    /** What is measured, or follows from what is. */
    ingle_amount measured;
    /** By how much it is met; negative is by how much it is missed. */
    ingle_amount margin;
} ingle_sweep_cell;

/**
 * What a line says at a value.
 *
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past an end or for NULL.
 */
INGLE_API ingle_status ingle_sweep_cell_at(const ingle_sweep *sweep, size_t value, size_t line,
                                           ingle_sweep_cell *cell);

/**
 * Writes all cells as CSV (RFC 4180): a header, then a record for each value and line.
 *
 * @param sweep a sweep
 * @param format the unit of lengths, and of what follows from them; NULL for inches
 * @param write receives it
 * @param context handed to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_sweep_csv(const ingle_sweep *sweep, const ingle_format *format,
                                       ingle_write write, void *context);

#ifdef __cplusplus
}
#endif

#endif
