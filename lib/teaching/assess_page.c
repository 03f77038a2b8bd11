/* SPDX-License-Identifier: MIT */
/*
 * How sure the findings are, worked out.
 */
#include "teaching/explain.h"

#include "check/report.h"

#include <ingle/assess.h>

#include <string.h>

/* ---- steps ---------------------------------------------------------------------------------- */

static ingle_status step_text(const void *step, int32_t part, const ingle_format *format,
                              char *buffer, size_t capacity, size_t *length)
{
    return ingle_uncertainty_step_text(step, part, format, buffer, capacity, length);
}

static void put_step(struct page *page, const ingle_uncertainty_step *step,
                     const ingle_format *format)
{
    page_line(page, PAGE_WORKING,
              page_text_of(page, step_text, step, INGLE_STEP_SENTENCE, format));
}

/* ---- the budgets of lengths ----------------------------------------------------------------- */

static void put_length(struct page *page, const ingle_length_budget *budget,
                       const ingle_format *format)
{
    ingle_figure figure;
    char words[EXPLAIN_WORDS] = "none is published for a length like this";
    if (ingle_length_budget_uncertainty(budget, &figure)) {
        ingle_figure_format(&figure, format, words, sizeof words, NULL);
    }
    page_fact(page, ingle_quantity_label(ingle_length_budget_quantity(budget)), words);
}

static void put_lengths(struct page *page, const ingle_assessment *assessment,
                        const ingle_format *format)
{
    const ingle_length_budget *first = ingle_assessment_length_at(assessment, 0);
    if (first == NULL) {
        return;
    }
    page_heading(page, 2, "Standard uncertainty of each length");
    for (size_t i = 0; i < ingle_assessment_length_count(assessment); i++) {
        put_length(page, ingle_assessment_length_at(assessment, i), format);
    }
    page_heading(page, 3, "The budget of the first of them");
    for (size_t i = 0; i < ingle_length_budget_step_count(first); i++) {
        put_step(page, ingle_length_budget_step_at(first, i), format);
    }
}

/* ---- findings ------------------------------------------------------------------------------- */

static ingle_status conformance_text(const void *conformance, int32_t part,
                                     const ingle_format *format, char *buffer, size_t capacity,
                                     size_t *length)
{
    return ingle_conformance_text(conformance, part, format, buffer, capacity, length);
}

static void put_conformance(struct page *page, const ingle_conformance *conformance)
{
    const ingle_finding *finding = ingle_conformance_finding(conformance);
    ingle_verdict verdict = ingle_finding_verdict(finding);
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    explain_heading(page, finding, &(struct explain_manner){0});
    page_open(page, PAGE_PARAGRAPH);
    page_run(page, page_verdict_style(verdict), ingle_verdict_name(verdict));
    page_run(page, PAGE_PLAIN, ": ");
    page_run(page, PAGE_PLAIN, explain_text(page, finding, INGLE_FINDING_SENTENCE));
    page_close(page);
    page_line(page, PAGE_PARAGRAPH,
              page_text_of(page, conformance_text, conformance, INGLE_CONFORMANCE_SENTENCE,
                           &format));
    for (size_t i = 0; i < ingle_conformance_step_count(conformance); i++) {
        put_step(page, ingle_conformance_step_at(conformance, i), &format);
    }
    const char *caution =
        page_text_of(page, conformance_text, conformance, INGLE_CONFORMANCE_CAUTION, &format);
    if (caution[0] != '\0') {
        page_line(page, PAGE_PARAGRAPH, caution);
    }
}

static bool is_asked(const ingle_conformance *conformance, const char *rule)
{
    const ingle_finding *finding = ingle_conformance_finding(conformance);
    return ingle_conformance_method(conformance) != INGLE_METHOD_NONE &&
           (rule == NULL || strcmp(rule, ingle_rule_id(ingle_finding_rule(finding))) == 0);
}

static void put_findings(struct page *page, const ingle_assessment *assessment, const char *rule)
{
    bool any = false;
    page_heading(page, 2, "How sure the findings are");
    for (size_t i = 0; i < ingle_assessment_count(assessment); i++) {
        const ingle_conformance *conformance = ingle_assessment_at(assessment, i);
        if (is_asked(conformance, rule)) {
            put_conformance(page, conformance);
            any = true;
        }
    }
    if (!any) {
        page_line(page, PAGE_PARAGRAPH, "No finding has a probability.");
    }
}

/* ---- the whole ------------------------------------------------------------------------------ */

ingle_status ingle_assessment_page(const ingle_assessment *assessment, const ingle_page *page,
                                   const char *rule, ingle_write write, void *context)
{
    struct page written;
    const ingle_conformance *first =
        assessment == NULL ? NULL : ingle_assessment_at(assessment, 0);
    if (first == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (!explain_knows_rule(ingle_conformance_finding(first)->report, rule)) {
        return INGLE_ERROR_UNKNOWN_RULE;
    }
    ingle_status status = page_start(&written, NULL, page, write, context, "How sure are we?");
    if (status != INGLE_OK) {
        return status;
    }
    ingle_format format =
        explain_format(&written, ingle_finding_standard(ingle_conformance_finding(first)));
    page_line(&written, PAGE_PARAGRAPH, ingle_assessment_text(assessment));
    for (size_t i = 0; i < ingle_assessment_missing_count(assessment); i++) {
        const ingle_quantity *missing = ingle_assessment_missing_at(assessment, i);
        page_fact(&written, ingle_quantity_label(missing), ingle_quantity_how(missing));
    }
    put_lengths(&written, assessment, &format);
    put_findings(&written, assessment, rule);
    return page_end(&written);
}
