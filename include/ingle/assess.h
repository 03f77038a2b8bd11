/* SPDX-License-Identifier: MIT */
/**
 * @file
 * How sure the findings are, as a page to read.
 */
#ifndef INGLE_ASSESS_H
#define INGLE_ASSESS_H

#include <ingle/api.h>
#include <ingle/page.h>
#include <ingle/uncertainty.h>

#ifdef __cplusplus
extern "C" {
#endif

/**
 * Writes an assessment as a page: what the tape is and how uncertain each length is, and for each
 * finding that has a probability how that was found and what is decided by it.
 *
 * @param assessment an assessment that was made
 * @param page how it looks; NULL for plain text
 * @param rule only this rule, `hearth-front`; NULL for all
 * @param write receives it
 * @param context handed to `write`
 * @returns INGLE_OK; INGLE_ERROR_UNKNOWN_RULE, with nothing written, if none of the report's
 *          standards has `rule`; INGLE_ERROR_IO, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT,
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_assessment_page(const ingle_assessment *assessment,
                                             const ingle_page *page, const char *rule,
                                             ingle_write write, void *context);

#ifdef __cplusplus
}
#endif

#endif
