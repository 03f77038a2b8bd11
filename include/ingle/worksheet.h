/* SPDX-License-Identifier: MIT */
/**
 * @file
 * What has to be measured and observed at a fireplace, for a visit.
 */
#ifndef INGLE_WORKSHEET_H
#define INGLE_WORKSHEET_H

#include <ingle/api.h>
#include <ingle/check.h>
#include <ingle/memory.h>
#include <ingle/page.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What is still to be measured, in the order of the visit. One thread at a time may use it. */
typedef struct ingle_worksheet ingle_worksheet;

/** Makes an empty worksheet; give it back with ingle_worksheet_free(). */
INGLE_API ingle_status ingle_worksheet_new(const ingle_allocator *allocator,
                                           ingle_worksheet **worksheet);

/** Gives a worksheet back. NULL is allowed. */
INGLE_API void ingle_worksheet_free(ingle_worksheet *worksheet);

/**
 * Finds what the rules still need.
 *
 * A survey of the appliance's kind alone gives the worksheet for the whole visit; one that is half
 * filled gives what is missing. Of a repeating group that nobody has looked at, what one item needs
 * is listed. What a rule asks about only when something else was found comes with the next
 * worksheet, made from what has been found.
 *
 * @param survey what was measured and observed so far
 * @param standards the standards adopted
 * @param standard_count how many; at least 1
 * @param check how to check: amendments and readings; NULL for none
 * @param[out] worksheet receives what is missing; what it held before is gone. It keeps nothing of
 *                       the survey
 * @returns INGLE_OK, or what ingle_check() refuses; ingle_worksheet_error_text() tells more.
 */
INGLE_API ingle_status ingle_worksheet_make(const ingle_survey *survey,
                                            const ingle_standard *const *standards,
                                            size_t standard_count,
                                            const ingle_check_options *check,
                                            ingle_worksheet *worksheet);

/** What was wrong with the last call that failed, in a sentence; "" before one. */
INGLE_API const char *ingle_worksheet_error_text(const ingle_worksheet *worksheet);

/** How many quantities are missing. */
INGLE_API size_t ingle_worksheet_count(const ingle_worksheet *worksheet);

/** One of the missing quantities, from 0, in the order of the visit; NULL past the end. */
INGLE_API const ingle_quantity *ingle_worksheet_quantity_at(const ingle_worksheet *worksheet,
                                                            size_t index);

/**
 * The item that it is missing of, where its group repeats and has items; SIZE_MAX where nobody has
 * looked at the group, or past the end; else 0.
 */
INGLE_API size_t ingle_worksheet_item_at(const ingle_worksheet *worksheet, size_t index);

/** How many rules it would settle, alone or with others that are missing. */
INGLE_API size_t ingle_worksheet_rule_count(const ingle_worksheet *worksheet, size_t index);

/** The id of one of these rules, from 0, each once; NULL past the ends. */
INGLE_API const char *ingle_worksheet_rule_at(const ingle_worksheet *worksheet, size_t index,
                                              size_t rule);

/** How many quantities are taken for granted that decide whether rules apply. */
INGLE_API size_t ingle_worksheet_assumed_count(const ingle_worksheet *worksheet);

/** One of these, from 0, in the order of the visit; see ingle_quantity_assumed(). */
INGLE_API const ingle_quantity *ingle_worksheet_assumed_at(const ingle_worksheet *worksheet,
                                                           size_t index);

/**
 * Writes the worksheet as a page to print and carry: stop by stop, how each thing is measured, a
 * line to write on, and the rules that need it.
 *
 * @param worksheet a worksheet
 * @param page how it looks; NULL for plain text
 * @param write receives it
 * @param context handed to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT,
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_worksheet_page(const ingle_worksheet *worksheet,
                                            const ingle_page *page, ingle_write write,
                                            void *context);

#ifdef __cplusplus
}
#endif

#endif
