/* SPDX-License-Identifier: MIT */
/*
 * What the files that explain a report share.
 */
#ifndef INGLE_TEACHING_EXPLAIN_H
#define INGLE_TEACHING_EXPLAIN_H

#include "pages/page.h"

#include <ingle/explain.h>

/* How amounts by a standard are shown on a page. */
ingle_format explain_format(const struct page *page, const ingle_standard *standard);

/* A text of a finding; it stays as it is until the next text of the page. */
const char *explain_text(struct page *page, const ingle_finding *finding,
                         ingle_finding_part part);

/* What is required in a few words, `at least 20 in`; empty if it is not known. */
void explain_required(const ingle_finding *finding, const ingle_format *format, char *words,
                      size_t size);

/* What was measured, `18 in`, with its tolerance; empty if it was not. */
void explain_measured(const ingle_finding *finding, const ingle_format *format, char *words,
                      size_t size);

/*
 * Whether a finding is on something seen, of which its sentence says all: it has no amounts, and
 * nothing is worked out.
 */
bool explain_is_seen(const ingle_finding *finding);

/* Whether a rule is one of those that a report was judged by; NULL, which is for all, is. */
bool explain_knows_rule(const ingle_report *report, const char *rule);

/* A heading that names a finding, whole. */
void explain_heading(struct page *page, const ingle_finding *finding);

/* The whole of a finding, worked out. */
void explain_finding(struct page *page, const ingle_finding *finding);

enum { EXPLAIN_WORDS = 200 };

#endif
