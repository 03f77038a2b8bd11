/* SPDX-License-Identifier: MIT */
/*
 * What the files that explain a report share.
 */
#ifndef INGLE_TEACHING_EXPLAIN_H
#define INGLE_TEACHING_EXPLAIN_H

#include "base/text.h"
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

/* How a finding is told. */
struct explain_manner {
    bool in_report; /* for whoever has to read no row: titles for ids, numbers for their names */
    const ingle_finding *above; /* one told before it that says the same of what to do, or NULL */
};

/* A heading that names a finding, whole. */
void explain_heading(struct page *page, const ingle_finding *finding,
                     const struct explain_manner *manner);

/* The whole of a finding, worked out; what was told above is not told again. */
void explain_finding(struct page *page, const ingle_finding *finding,
                     const struct explain_manner *manner);

/* explain_rest.c: what was not measured, what was not judged, and the notices. */
void explain_rest(struct page *page, const ingle_report *report,
                  const ingle_explain_options *options);

/* explain_words.c: `International Residential Code 2021`, `Common practice, United States` */
void explain_add_title(struct text *text, const ingle_standard *standard, bool dated);

/* The sentence of a rule's formula with the numbers and the inputs put in. */
void explain_add_formula(struct text *text, const ingle_finding *finding,
                         const ingle_format *format);

enum { EXPLAIN_WORDS = 240, EXPLAIN_PROSE = 1000 };

#endif
