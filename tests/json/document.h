/* SPDX-License-Identifier: MIT */
/*
 * What the tests of documents share: one reader and writer, and what it leaves.
 *
 * Documents are written with ` in place of " to be legible in C.
 */
#ifndef INGLE_TESTS_JSON_DOCUMENT_H
#define INGLE_TESTS_JSON_DOCUMENT_H

#include <ingle-json.h>

#include <json-c/json.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

extern ingle_json *json;

/* Before and after all tests of a group. */
int document_make(void **state);
int document_unmake(void **state);

ingle_status check_with(const char *legible, const ingle_json_options *options);
ingle_status read_with(const char *legible, const ingle_json_options *options);
ingle_status amend_with(const char *legible);

/* The document that was left, which has to be JSON and end as the header says. */
struct json_object *left(void);

/* A member, or NULL; and its text, or "(absent)". */
struct json_object *member(struct json_object *around, const char *name);
const char *text_of(struct json_object *around, const char *name);

/* The first finding of a rule in a report, which has to have one. */
struct json_object *finding(struct json_object *report, const char *rule);

/* A survey with an opening of 36 in x 24 in: 6 ft2, so that R1001.10 asks for 20 in in front. */
#define SURVEY_START                                                                             \
    "`survey`: {`appliance`: {`kind`: `masonry-fireplace`, `fuel`: `wood`}, "                    \
    "`opening`: {`width`: `36 in`, `height`: `24 in`}, `hearth`: {`front`: "
#define SURVEY(front) SURVEY_START front "}}"
#define DOCUMENT(members, front) "{`standards`: [`irc-2021`], " members SURVEY(front) "}"

#endif
