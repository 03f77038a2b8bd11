/* SPDX-License-Identifier: MIT */
/**
 * @file
 * One survey under many standards, side by side.
 */
#ifndef INGLE_COMPARE_H
#define INGLE_COMPARE_H

#include <ingle/api.h>
#include <ingle/check.h>
#include <ingle/memory.h>
#include <ingle/page.h>

#ifdef __cplusplus
extern "C" {
#endif

/** A report laid out rule by standard. One thread at a time may use it. */
typedef struct ingle_comparison ingle_comparison;

/** Makes an empty comparison; give it back with ingle_comparison_free(). */
INGLE_API ingle_status ingle_comparison_new(const ingle_allocator *allocator,
                                            ingle_comparison **comparison);

/** Gives a comparison back. NULL is allowed. */
INGLE_API void ingle_comparison_free(ingle_comparison *comparison);

/**
 * Lays a report out. Where the survey was judged by one standard alone there is one column.
 *
 * @param report a report on several standards, without findings that do not apply; it has to stay
 *               as it is while the comparison is read
 * @param[out] comparison receives the layout; what it held before is gone
 * @returns INGLE_OK, INGLE_ERROR_MEMORY or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_compare(const ingle_report *report, ingle_comparison *comparison);

/** How many standards there are: those of the report, though one may have no finding. */
INGLE_API size_t ingle_comparison_standard_count(const ingle_comparison *comparison);

/** One of the standards, from 0; NULL past the end. */
INGLE_API const ingle_standard *ingle_comparison_standard_at(const ingle_comparison *comparison,
                                                             size_t column);

/** The gravest verdict by one standard; INGLE_NOT_APPLICABLE past the end or if no rule applied. */
INGLE_API ingle_verdict ingle_comparison_verdict(const ingle_comparison *comparison,
                                                 size_t column);

/** How many lines there are: one for each rule id on each thing that it judges. */
INGLE_API size_t ingle_comparison_line_count(const ingle_comparison *comparison);

/**
 * The finding in a line and column, from 0; NULL where that standard has none, and past the ends.
 * Where one standard has several on the same thing, the gravest.
 */
INGLE_API const ingle_finding *ingle_comparison_finding_at(const ingle_comparison *comparison,
                                                           size_t line, size_t column);

/** The first finding of a line, for its rule id, label and subject; NULL past the end. */
INGLE_API const ingle_finding *ingle_comparison_line_at(const ingle_comparison *comparison,
                                                        size_t line);

/** What changed from one column to the next. */
typedef int32_t ingle_change;

enum {
    /** Nothing: both have the same requirement and verdict, or neither has a finding. */
    INGLE_CHANGE_NONE = 0,
    /** The later column has a finding and the earlier none. */
    INGLE_CHANGE_ADDED = 1,
    /** The earlier column has a finding and the later none. */
    INGLE_CHANGE_DROPPED = 2,
    /** What is required differs, the verdict does not. */
    INGLE_CHANGE_REQUIRED = 3,
    /** The verdict differs. */
    INGLE_CHANGE_VERDICT = 4
};

/** The name of a change: `required`; NULL for a number that is none. */
INGLE_API const char *ingle_change_name(ingle_change change);

/** What changed in a line from column `column` - 1 to `column`; NONE for column 0. */
INGLE_API ingle_change ingle_comparison_change_at(const ingle_comparison *comparison, size_t line,
                                                  size_t column);

/**
 * Writes the comparison as a page: the matrix, what changed between which standards, and which of
 * them are met as a whole.
 *
 * @param comparison a comparison
 * @param page how it looks; NULL for plain text
 * @param write receives it
 * @param context handed to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT,
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_comparison_page(const ingle_comparison *comparison,
                                             const ingle_page *page, ingle_write write,
                                             void *context);

#ifdef __cplusplus
}
#endif

#endif
