/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Which values of a quantity would do: all else as it was surveyed, the rules are asked at every
 * graduation of the tape. Nothing is computed a second time; every answer is that of ingle_check().
 */
#ifndef INGLE_SOLVE_H
#define INGLE_SOLVE_H

#include <ingle/api.h>
#include <ingle/check.h>
#include <ingle/memory.h>
#include <ingle/page.h>
#include <ingle/range.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What is asked. Start from zeroed bytes and set `size`. */
typedef struct ingle_solve_options {
    /** sizeof(ingle_solve_options). */
    size_t size;
    /** Only this rule has to be met, `hearth-front`; NULL for all. */
    const char *rule;
    /** 1 takes a finding that is too close to call for one that fails. */
    int32_t strict;
    /** Zero. */
    int32_t reserved;
} ingle_solve_options;

/** The values that would do. One thread at a time may use it. */
typedef struct ingle_solution ingle_solution;

/**
 * Makes an empty solution.
 *
 * @param allocator where its memory comes from; NULL for the C library
 * @param[out] solution receives it; give it back with ingle_solution_free()
 * @returns INGLE_OK, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or
 *          INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_solution_new(const ingle_allocator *allocator,
                                          ingle_solution **solution);

/** Gives a solution back. NULL is allowed. */
INGLE_API void ingle_solution_free(ingle_solution *solution);

/**
 * Finds the values of a quantity at which no rule fails that depends on it.
 *
 * Findings that fail alike at every value are none of this quantity's doing: they are left aside
 * and can be asked for. A value that contradicts what else is recorded does not do, nor does one
 * too large to reckon with.
 *
 * @param survey what was measured and observed; the quantity need not be recorded
 * @param standards the standards adopted
 * @param standard_count how many; at least 1
 * @param check how to check: amendments and readings; NULL for none. No steps or remedies are made
 * @param range which values
 * @param options what is asked, or NULL for all rules
 * @param[out] solution receives the values; what it held before is gone. It keeps nothing of the
 *                      survey
 * @returns INGLE_OK, also where no value does; what ingle_range_settle() refuses;
 *          INGLE_ERROR_UNKNOWN_RULE if no standard has `rule`; or what ingle_check() refuses of the
 *          survey as it is. On error ingle_solution_error_text() tells more.
 */
INGLE_API ingle_status ingle_solve(const ingle_survey *survey,
                                   const ingle_standard *const *standards, size_t standard_count,
                                   const ingle_check_options *check, const ingle_range *range,
                                   const ingle_solve_options *options, ingle_solution *solution);

/** What was wrong with the last call that failed, in a sentence; "" before one. */
INGLE_API const char *ingle_solution_error_text(const ingle_solution *solution);

/** The range as it was gone through; `size` is 0 before ingle_solve(). */
INGLE_API void ingle_solution_range(const ingle_solution *solution, ingle_range *range);

/** How many intervals of values do. */
INGLE_API size_t ingle_solution_interval_count(const ingle_solution *solution);

/** Values in a row that do. Borrowed from its solution. */
typedef struct ingle_interval {
    /** The least value that does. */
    ingle_amount least;
    /** The greatest value that does; all of the range between the two do as well. */
    ingle_amount most;
    /** A rule that fails one step below, and its standard; NULL at the range's beginning. */
    const ingle_rule *below;
    const ingle_standard *below_standard;
    /** A rule that fails one step above, and its standard; NULL at the range's end. */
    const ingle_rule *above;
    const ingle_standard *above_standard;
} ingle_interval;

/**
 * One of the intervals, from 0, by rising values.
 *
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past the end or for NULL.
 */
INGLE_API ingle_status ingle_solution_interval_at(const ingle_solution *solution, size_t index,
                                                  ingle_interval *interval);

/** Gets the value as surveyed. @returns 1, or 0 if it is not recorded. */
INGLE_API int ingle_solution_now(const ingle_solution *solution, ingle_amount *amount);

/** 1 if the value as surveyed, on a graduation or not, does; else 0. */
INGLE_API int ingle_solution_does_now(const ingle_solution *solution);

/**
 * Gets the value that does nearest to the one as surveyed, itself excepted, below or above it.
 *
 * @param solution a solution
 * @param direction -1 for below, 1 for above
 * @param[out] amount receives it
 * @returns 1, or 0 where there is none or the quantity is not recorded.
 */
INGLE_API int ingle_solution_nearest(const ingle_solution *solution, int32_t direction,
                                     ingle_amount *amount);

/** How many findings fail whatever the value, being none of this quantity's doing. */
INGLE_API size_t ingle_solution_aside_count(const ingle_solution *solution);

/** The rule of one of the findings left aside, from 0; NULL past the end. */
INGLE_API const ingle_rule *ingle_solution_aside_at(const ingle_solution *solution, size_t index);

/** The standard of that rule; NULL past the end. */
INGLE_API const ingle_standard *ingle_solution_aside_standard(const ingle_solution *solution,
                                                              size_t index);

/**
 * What a finding that was left aside judges.
 *
 * @param solution a solution
 * @param index from 0
 * @param[out] item receives the item, where the group repeats, else 0; may be NULL
 * @returns the quantity; NULL past the end.
 */
INGLE_API const ingle_quantity *ingle_solution_aside_quantity(const ingle_solution *solution,
                                                              size_t index, size_t *item);

/**
 * Writes a solution as a page: what would do and what stops it, how far it is from what was
 * surveyed, and which rules fail whatever the value.
 *
 * @param solution a solution
 * @param page how it looks; NULL for plain text
 * @param write receives it
 * @param context handed to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT,
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_solution_page(const ingle_solution *solution, const ingle_page *page,
                                           ingle_write write, void *context);

/* ---- two quantities ------------------------------------------------------------------------- */

/** For each value of one quantity, the values of another that would do. */
typedef struct ingle_frontier ingle_frontier;

/** Makes an empty frontier; see ingle_solution_new(). */
INGLE_API ingle_status ingle_frontier_new(const ingle_allocator *allocator,
                                          ingle_frontier **frontier);

/** Gives a frontier back. NULL is allowed. */
INGLE_API void ingle_frontier_free(ingle_frontier *frontier);

/**
 * Solves for one quantity at every value of another.
 *
 * A step of 0 in `with` parts its range into forty at most.
 *
 * @param with the other quantity and its values
 * @returns as ingle_solve(), which has the other parameters; INGLE_ERROR_RANGE if both are one
 *          quantity. On error the frontier is empty, and ingle_frontier_error_text() tells more.
 */
INGLE_API ingle_status ingle_solve_with(const ingle_survey *survey,
                                        const ingle_standard *const *standards,
                                        size_t standard_count, const ingle_check_options *check,
                                        const ingle_range *range, const ingle_range *with,
                                        const ingle_solve_options *options,
                                        ingle_frontier *frontier);

/** What was wrong with the last call that failed, in a sentence; "" before one. */
INGLE_API const char *ingle_frontier_error_text(const ingle_frontier *frontier);

/** How many values the other quantity took. */
INGLE_API size_t ingle_frontier_count(const ingle_frontier *frontier);

/** One of the values of the other quantity, from 0; INGLE_ERROR_ARGUMENT past the end. */
INGLE_API ingle_status ingle_frontier_value_at(const ingle_frontier *frontier, size_t index,
                                               ingle_amount *amount);

/** The other quantity and its values; `size` is 0 before ingle_solve_with(). */
INGLE_API void ingle_frontier_with(const ingle_frontier *frontier, ingle_range *with);

/** Writes a frontier as a page; see ingle_solution_page(). */
INGLE_API ingle_status ingle_frontier_page(const ingle_frontier *frontier, const ingle_page *page,
                                           ingle_write write, void *context);

/** The solution at that value; NULL past the end. */
INGLE_API const ingle_solution *ingle_frontier_solution_at(const ingle_frontier *frontier,
                                                           size_t index);

#ifdef __cplusplus
}
#endif

#endif
