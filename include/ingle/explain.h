/* SPDX-License-Identifier: MIT */
/**
 * @file
 * A report as a worked solution that a person can follow.
 */
#ifndef INGLE_EXPLAIN_H
#define INGLE_EXPLAIN_H

#include <ingle/api.h>
#include <ingle/check.h>
#include <ingle/page.h>

#ifdef __cplusplus
extern "C" {
#endif

/** How much is said of each finding. */
typedef int32_t ingle_explain_form;

enum {
    /** All of it, worked out. */
    INGLE_EXPLAIN_WORKED = 0,
    /**
     * What is not met or not settled, worked out; a line for what is met. For whoever has to read
     * no row of a standard: titles in place of ids, numbers in place of their names, and what to
     * do said once where several findings say the same of it.
     */
    INGLE_EXPLAIN_REPORT = 1,
    /** A line for each finding. */
    INGLE_EXPLAIN_BRIEF = 2
};

/** What is explained. Start from zeroed bytes and set `size`. */
typedef struct ingle_explain_options {
    /** sizeof(ingle_explain_options). */
    size_t size;
    /** How much is said of each finding. */
    ingle_explain_form form;
    /** Findings milder than this verdict are left out; 0 for none. */
    ingle_verdict least;
    /** Only this rule, `hearth-front`; NULL for all. */
    const char *rule;
} ingle_explain_options;

/**
 * Writes a report as a page, in the order of the visit: for each finding what was measured, the
 * rule with its source and how its numbers are known, the calculation with the numbers put in, the
 * verdict, what would put it right, and what is dangerous meanwhile. What was not measured and the
 * cautions of the whole report follow.
 *
 * Nothing is computed here: steps and remedies are shown where the report has them.
 *
 * @param report a report on a survey
 * @param page how it looks; NULL for plain text
 * @param options what is explained; NULL for all of it, worked out
 * @param write receives it
 * @param context handed to `write`
 * @returns INGLE_OK; INGLE_ERROR_UNKNOWN_RULE, with nothing written, if none of the report's
 *          standards has the rule of the options; INGLE_ERROR_IO, INGLE_ERROR_MEMORY,
 *          INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER. A rule that
 *          a standard has and that gave no finding is no error.
 */
INGLE_API ingle_status ingle_explain(const ingle_report *report, const ingle_page *page,
                                     const ingle_explain_options *options, ingle_write write,
                                     void *context);

#ifdef __cplusplus
}
#endif

#endif
