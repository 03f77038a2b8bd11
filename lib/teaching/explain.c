/* SPDX-License-Identifier: MIT */
/*
 * A report as a worked solution: its order and its frame.
 */
#include "teaching/explain.h"

#include "base/memory.h"
#include "base/nearest.h"
#include "base/text.h"
#include "check/report.h"

#include <string.h>

struct explaining {
    const ingle_report *report;
    struct page *page;
    ingle_explain_options options;
    size_t stop;              /* whose findings are written */
    char words[EXPLAIN_WORDS]; /* of the cell at hand */
};

bool explain_knows_rule(const ingle_report *report, const char *rule)
{
    struct nearest nearest = nearest_start(rule == NULL ? "" : rule);
    return rule == NULL ||
           standards_have_rule(report->standards, report->standard_count, rule, &nearest);
}

static bool is_asked(const struct explaining *explaining, const ingle_finding *finding)
{
    const char *rule = explaining->options.rule;
    return ingle_finding_verdict(finding) >= explaining->options.least &&
           (rule == NULL || strcmp(rule, ingle_rule_id(ingle_finding_rule(finding))) == 0);
}

/* For whoever has to read no row, and so no id. */
static bool is_report(const struct explaining *explaining)
{
    return explaining->options.form == INGLE_EXPLAIN_REPORT;
}

/* Whether a finding has a line of its own, and no more. */
static bool is_brief(const struct explaining *explaining, const ingle_finding *finding)
{
    return explaining->options.form == INGLE_EXPLAIN_BRIEF ||
           (is_report(explaining) && ingle_finding_verdict(finding) <= INGLE_MEETS);
}

/* What was not measured stands in a list of its own, below. */
static bool is_at_stop(const struct explaining *explaining, const ingle_finding *finding)
{
    return is_asked(explaining, finding) &&
           ingle_finding_verdict(finding) != INGLE_UNMEASURED &&
           ingle_quantity_stop(ingle_finding_quantity(finding)) == explaining->stop;
}

static size_t count_at_stop(const struct explaining *explaining, bool brief)
{
    size_t found = 0;
    for (size_t i = 0; i < ingle_report_finding_count(explaining->report); i++) {
        const ingle_finding *finding = ingle_report_finding_at(explaining->report, i);
        found += is_at_stop(explaining, finding) && is_brief(explaining, finding) == brief;
    }
    return found;
}

/* ---- the whole verdict ---------------------------------------------------------------------- */

static size_t count_of(const ingle_report *report, ingle_verdict verdict)
{
    size_t count = 0;
    for (size_t i = 0; i < ingle_report_finding_count(report); i++) {
        count += ingle_finding_verdict(ingle_report_finding_at(report, i)) == verdict;
    }
    return count;
}

/* `3 fails, 1 too-close, 12 meets`, the gravest first. */
static void put_counts(struct explaining *explaining)
{
    char words[EXPLAIN_WORDS];
    struct text text = text_start(words, sizeof words);
    for (size_t i = ingle_verdict_count(); i-- > 0;) {
        size_t count = count_of(explaining->report, (ingle_verdict)i);
        if (count > 0) {
            text_add(&text, text.length > 0 ? ", " : "");
            text_add_unsigned(&text, count);
            text_add(&text, " ");
            text_add(&text, ingle_verdict_name((ingle_verdict)i));
        }
    }
    page_run(explaining->page, PAGE_PLAIN, text.length > 0 ? words : "none");
}

/* By several standards: what each of them comes to stands with it. */
static void put_standard(struct explaining *explaining, size_t index)
{
    const ingle_report *report = explaining->report;
    const ingle_standard *standard = ingle_report_standard_at(report, index);
    ingle_verdict verdict = ingle_report_standard_verdict(report, index);
    struct text text = text_start(explaining->words, EXPLAIN_WORDS);
    explain_add_title(&text, standard, true);
    page_run(explaining->page, is_report(explaining) ? PAGE_PLAIN : PAGE_CODE,
             is_report(explaining) ? explaining->words : ingle_standard_id(standard));
    if (ingle_report_standard_count(report) > 1) {
        page_run(explaining->page, PAGE_PLAIN, ": ");
        page_run(explaining->page, page_verdict_style(verdict), ingle_verdict_name(verdict));
    }
}

static void put_standards(struct explaining *explaining)
{
    size_t count = ingle_report_standard_count(explaining->report);
    for (size_t i = 0; i < count; i++) {
        page_run(explaining->page, PAGE_PLAIN, i == 0 ? " Judged by " : "; ");
        put_standard(explaining, i);
    }
    page_run(explaining->page, PAGE_PLAIN, count == 0 ? "" : ".");
}

static void put_summary(struct explaining *explaining)
{
    struct page *page = explaining->page;
    ingle_verdict verdict = ingle_report_verdict(explaining->report);
    page_open(page, PAGE_PARAGRAPH);
    page_run(page, PAGE_PLAIN, "Verdict of the whole: ");
    page_run(page, page_verdict_style(verdict), ingle_verdict_name(verdict));
    page_run(page, PAGE_PLAIN, ". Findings: ");
    put_counts(explaining);
    page_run(page, PAGE_PLAIN, ".");
    put_standards(explaining);
    page_close(page);
}

/* ---- findings ------------------------------------------------------------------------------- */

static const ingle_finding *finding_in_row(const struct explaining *explaining, size_t row)
{
    size_t i = 0;
    for (;; i++) {
        const ingle_finding *finding = ingle_report_finding_at(explaining->report, i);
        if (finding == NULL || (is_at_stop(explaining, finding) &&
                                is_brief(explaining, finding) && row-- == 0)) {
            return finding;
        }
    }
}

/* `R1001.10, irc-2021`; in a report the citation. */
static const char *source_of(struct explaining *explaining, const ingle_finding *finding)
{
    struct text text = text_start(explaining->words, EXPLAIN_WORDS);
    if (is_report(explaining)) {
        return explain_text(explaining->page, finding, INGLE_FINDING_CITATION);
    }
    text_add(&text, ingle_rule_section(ingle_finding_rule(finding)));
    text_add(&text, ", ");
    text_add(&text, ingle_standard_id(ingle_finding_standard(finding)));
    text_add(&text, ingle_finding_by_listing(finding) ? ", by the listing" : "");
    text_add(&text, ingle_finding_amendment(finding) != NULL ? ", as amended" : "");
    return explaining->words;
}

static const char *brief_cell(void *context, size_t row, size_t column, enum page_style *style)
{
    struct explaining *explaining = context;
    const ingle_finding *finding = finding_in_row(explaining, row);
    ingle_format format = explain_format(explaining->page, ingle_finding_standard(finding));
    switch (column) {
    case 0:
        *style = page_verdict_style(ingle_finding_verdict(finding));
        return ingle_verdict_name(ingle_finding_verdict(finding));
    case 1:
        return explain_text(explaining->page, finding, INGLE_FINDING_LABEL);
    case 2:
        explain_measured(finding, &format, explaining->words, EXPLAIN_WORDS);
        return explaining->words;
    case 3:
        explain_required(finding, &format, explaining->words, EXPLAIN_WORDS);
        return explaining->words;
    default:
        return source_of(explaining, finding);
    }
}

/* `: 18 in, required at least 20 in` */
static void put_brief_amounts(struct explaining *explaining, const ingle_finding *finding)
{
    struct page *page = explaining->page;
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    explain_measured(finding, &format, explaining->words, EXPLAIN_WORDS);
    page_run(page, PAGE_PLAIN, explaining->words[0] != '\0' ? ": " : "");
    page_run(page, PAGE_PLAIN, explaining->words);
    explain_required(finding, &format, explaining->words, EXPLAIN_WORDS);
    page_run(page, PAGE_PLAIN, explaining->words[0] != '\0' ? ", required " : "");
    page_run(page, PAGE_PLAIN, explaining->words);
}

/* `fails: hearth extension in front of the opening: 18 in, at least 20 in (R1001.10, irc-2021)` */
static void put_brief_line(struct explaining *explaining, const ingle_finding *finding)
{
    struct page *page = explaining->page;
    ingle_verdict verdict = ingle_finding_verdict(finding);
    page_open(page, PAGE_ITEM);
    page_run(page, page_verdict_style(verdict), ingle_verdict_name(verdict));
    page_run(page, PAGE_PLAIN, ": ");
    if (explain_is_seen(finding)) {
        page_run(page, PAGE_PLAIN, explain_text(page, finding, INGLE_FINDING_SENTENCE));
    } else {
        page_run(page, PAGE_PLAIN, explain_text(page, finding, INGLE_FINDING_LABEL));
        put_brief_amounts(explaining, finding);
    }
    page_run(page, PAGE_PLAIN, " (");
    page_run(page, PAGE_PLAIN, source_of(explaining, finding));
    page_run(page, PAGE_PLAIN, ")");
    page_close(page);
}

static void put_brief(struct explaining *explaining)
{
    static const char *const heads[] = {"verdict", "what", "measured", "required", "source"};
    struct page_table table = {5, count_at_stop(explaining, true), heads, brief_cell, explaining};
    if (explaining->page->how.format != INGLE_PAGE_TEXT && table.rows > 0) {
        page_table(explaining->page, &table);
        return;
    }
    for (size_t row = 0; row < table.rows; row++) {
        put_brief_line(explaining, finding_in_row(explaining, row));
    }
}

static bool is_told_in_full(const struct explaining *explaining, const ingle_finding *finding)
{
    return is_at_stop(explaining, finding) && !is_brief(explaining, finding);
}

static bool says_the_same(const ingle_finding *finding, const ingle_finding *other)
{
    return finding->verdict == other->verdict && finding_words(finding) == finding_words(other);
}

/* The first in a report that says the same of what to do: by another standard, of another side. */
static const ingle_finding *told_above(const struct explaining *explaining, size_t index)
{
    const ingle_finding *finding = ingle_report_finding_at(explaining->report, index);
    for (size_t i = 0; is_report(explaining) && i < index; i++) {
        const ingle_finding *above = ingle_report_finding_at(explaining->report, i);
        if (is_told_in_full(explaining, above) && says_the_same(finding, above)) {
            return above;
        }
    }
    return NULL;
}

static void put_in_full(struct explaining *explaining)
{
    for (size_t i = 0; i < ingle_report_finding_count(explaining->report); i++) {
        const ingle_finding *finding = ingle_report_finding_at(explaining->report, i);
        struct explain_manner manner = {is_report(explaining), told_above(explaining, i)};
        if (is_told_in_full(explaining, finding)) {
            explain_finding(explaining->page, finding, &manner);
        }
    }
}

static void put_stops(struct explaining *explaining)
{
    for (size_t stop = 0; stop < ingle_stop_count(); stop++) {
        explaining->stop = stop;
        size_t brief = count_at_stop(explaining, true);
        if (brief + count_at_stop(explaining, false) > 0) {
            page_heading(explaining->page, 2, ingle_stop_label(stop));
            put_in_full(explaining);
        }
        if (brief > 0 && explaining->options.form == INGLE_EXPLAIN_REPORT) {
            page_heading(explaining->page, 3, "Met");
        }
        put_brief(explaining);
    }
}

/* ---- the page -------------------------------------------------------------------------------- */

ingle_status ingle_explain(const ingle_report *report, const ingle_page *page,
                           const ingle_explain_options *options, ingle_write write, void *context)
{
    struct page written;
    struct explaining explaining = {.report = report, .page = &written};
    if (report == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status =
        options_take(&explaining.options, sizeof explaining.options, options);
    bool known = explaining.options.form >= INGLE_EXPLAIN_WORKED &&
                 explaining.options.form <= INGLE_EXPLAIN_BRIEF;
    if (status != INGLE_OK || !known) {
        return status != INGLE_OK ? status : INGLE_ERROR_ARGUMENT;
    }
    if (!explain_knows_rule(report, explaining.options.rule)) {
        return INGLE_ERROR_UNKNOWN_RULE;
    }
    status = page_start(&written, &report->allocator, page, write, context, "Findings");
    if (status != INGLE_OK) {
        return status;
    }
    put_summary(&explaining);
    put_stops(&explaining);
    explain_rest(&written, report, &explaining.options);
    return page_end(&written);
}
