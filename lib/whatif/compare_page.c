/* SPDX-License-Identifier: MIT */
/*
 * A comparison as a page: the matrix, what changed, and what is met as a whole.
 */
#include "whatif/compare.h"

#include "base/memory.h"
#include "base/text.h"
#include "check/words.h"
#include "pages/page.h"

#include <string.h>

enum { CELL_SIZE = 160 };

struct comparing {
    const ingle_comparison *comparison;
    struct page *page;
    char cell[CELL_SIZE];
    const char **heads;
};

static ingle_format format_for(const struct comparing *comparing, const ingle_standard *standard)
{
    return page_format(comparing->page, ingle_standard_unit(standard));
}

/* ---- what is required, in a few words ------------------------------------------------------- */

static const char *relation_word(ingle_relation relation)
{
    return relation == INGLE_AT_LEAST    ? "≥ "
           : relation == INGLE_AT_MOST   ? "≤ "
           : relation == INGLE_LESS_THAN ? "< "
           : relation == INGLE_IS_NOT    ? "not "
                                         : "";
}

static void add_required(struct text *text, const ingle_finding *finding,
                         const ingle_format *format)
{
    ingle_amount required;
    if (!ingle_finding_required(finding, &required)) {
        return;
    }
    text_add(text, relation_word(ingle_finding_relation(finding)));
    words_add_amount_of(text, ingle_finding_quantity(finding), &required, format);
    text_add(text, ": ");
}

/* `≥ 20 in: fails` */
static const char *in_short(struct comparing *comparing, const ingle_finding *finding)
{
    struct text text = text_start(comparing->cell, CELL_SIZE);
    if (finding == NULL) {
        return "no rule held";
    }
    ingle_format format = format_for(comparing, ingle_finding_standard(finding));
    add_required(&text, finding, &format);
    text_add(&text, ingle_verdict_name(ingle_finding_verdict(finding)));
    return comparing->cell;
}

static const char *label_of(struct comparing *comparing, const ingle_finding *finding)
{
    ingle_format format = format_for(comparing, ingle_finding_standard(finding));
    return page_finding_text(comparing->page, finding, INGLE_FINDING_LABEL, &format);
}

/* ---- which lines are shown ------------------------------------------------------------------ */

/* A line that nothing was measured for says nothing of the standards. */
static bool is_shown(const ingle_comparison *comparison, size_t line)
{
    for (size_t column = 0; column < ingle_comparison_standard_count(comparison); column++) {
        const ingle_finding *finding = ingle_comparison_finding_at(comparison, line, column);
        if (finding != NULL && ingle_finding_verdict(finding) != INGLE_UNMEASURED) {
            return true;
        }
    }
    return false;
}

static size_t count_shown(const ingle_comparison *comparison)
{
    size_t shown = 0;
    for (size_t line = 0; line < comparison->line_count; line++) {
        shown += is_shown(comparison, line);
    }
    return shown;
}

/* The line in a row of the matrix. */
static size_t line_at_row(const ingle_comparison *comparison, size_t row)
{
    size_t line = 0;
    while (!is_shown(comparison, line) || row > 0) {
        row -= is_shown(comparison, line) ? 1 : 0;
        line++;
    }
    return line;
}

/* ---- the matrix ----------------------------------------------------------------------------- */

static const char *matrix_cell(void *context, size_t row, size_t column, enum page_style *style)
{
    struct comparing *comparing = context;
    const ingle_comparison *comparison = comparing->comparison;
    size_t place = line_at_row(comparison, row);
    const ingle_finding *line = ingle_comparison_line_at(comparison, place);
    if (column == 0) {
        return label_of(comparing, line);
    }
    if (column == 1) {
        *style = PAGE_CODE;
        return ingle_rule_id(ingle_finding_rule(line));
    }
    const ingle_finding *finding = ingle_comparison_finding_at(comparison, place, column - 2);
    *style = finding == NULL ? PAGE_PLAIN : page_verdict_style(ingle_finding_verdict(finding));
    return in_short(comparing, finding);
}

static bool take_heads(struct comparing *comparing)
{
    const ingle_comparison *comparison = comparing->comparison;
    size_t count = ingle_comparison_standard_count(comparison) + 2;
    comparing->heads =
        allocator_new(&comparison->allocator, count * sizeof *comparing->heads);
    if (comparing->heads == NULL) {
        return false;
    }
    comparing->heads[0] = "what";
    comparing->heads[1] = "rule";
    for (size_t i = 2; i < count; i++) {
        comparing->heads[i] = ingle_standard_id(ingle_comparison_standard_at(comparison, i - 2));
    }
    return true;
}

static void put_matrix(struct comparing *comparing)
{
    const ingle_comparison *comparison = comparing->comparison;
    page_heading(comparing->page, 2, "Rule by rule");
    size_t shown = count_shown(comparison);
    size_t columns = ingle_comparison_standard_count(comparison) + 2;
    struct page_table table = {columns, shown, comparing->heads, matrix_cell, comparing};
    page_table(comparing->page, &table);
    if (shown < comparison->line_count) {
        char words[CELL_SIZE];
        struct text text = text_start(words, sizeof words);
        text_add(&text, "Not shown, since what they need was not measured: ");
        text_add_unsigned(&text, comparison->line_count - shown);
        text_add(&text, " more.");
        page_line(comparing->page, PAGE_PARAGRAPH, words);
    }
}

/* ---- what changed --------------------------------------------------------------------------- */

static bool is_change(const ingle_comparison *comparison, size_t line, size_t column)
{
    return is_shown(comparison, line) &&
           ingle_comparison_change_at(comparison, line, column) != INGLE_CHANGE_NONE;
}

static bool is_changed(const ingle_comparison *comparison, size_t column)
{
    for (size_t line = 0; line < comparison->line_count; line++) {
        if (is_change(comparison, line, column)) {
            return true;
        }
    }
    return false;
}

static void put_change(struct comparing *comparing, size_t line, size_t column)
{
    const ingle_comparison *comparison = comparing->comparison;
    struct page *page = comparing->page;
    page_open(page, PAGE_ITEM);
    page_run(page, PAGE_STRONG, label_of(comparing, ingle_comparison_line_at(comparison, line)));
    page_run(page, PAGE_PLAIN, ": from ");
    page_run(page, PAGE_PLAIN,
             in_short(comparing, ingle_comparison_finding_at(comparison, line, column - 1)));
    page_run(page, PAGE_PLAIN, " to ");
    page_run(page, PAGE_PLAIN,
             in_short(comparing, ingle_comparison_finding_at(comparison, line, column)));
    page_close(page);
}

static void put_step(struct comparing *comparing, size_t column)
{
    const ingle_comparison *comparison = comparing->comparison;
    char heading[CELL_SIZE];
    struct text text = text_start(heading, sizeof heading);
    text_add(&text, "From ");
    text_add(&text, ingle_standard_id(ingle_comparison_standard_at(comparison, column - 1)));
    text_add(&text, " to ");
    text_add(&text, ingle_standard_id(ingle_comparison_standard_at(comparison, column)));
    page_heading(comparing->page, 3, heading);
    if (!is_changed(comparison, column)) {
        page_line(comparing->page, PAGE_PARAGRAPH, "Nothing changes for this survey.");
    }
    for (size_t line = 0; line < comparison->line_count; line++) {
        if (is_change(comparison, line, column)) {
            put_change(comparing, line, column);
        }
    }
}

/* ---- the whole ------------------------------------------------------------------------------ */

static void put_verdicts(struct comparing *comparing)
{
    const ingle_comparison *comparison = comparing->comparison;
    struct page *page = comparing->page;
    page_heading(page, 2, "As a whole");
    for (size_t i = 0; i < ingle_comparison_standard_count(comparison); i++) {
        const ingle_standard *standard = ingle_comparison_standard_at(comparison, i);
        ingle_verdict verdict = ingle_comparison_verdict(comparison, i);
        page_open(page, PAGE_ITEM);
        page_run(page, PAGE_CODE, ingle_standard_id(standard));
        page_run(page, PAGE_PLAIN, " (");
        page_run(page, PAGE_PLAIN, ingle_standard_title(standard));
        page_run(page, PAGE_PLAIN, "): ");
        page_run(page, page_verdict_style(verdict), ingle_verdict_name(verdict));
        page_close(page);
    }
}

static void put_notices(struct comparing *comparing)
{
    const ingle_report *report = comparing->comparison->report;
    page_heading(comparing->page, 2, "Notices");
    for (size_t i = 0; i < ingle_report_notice_count(report); i++) {
        page_line(comparing->page, PAGE_ITEM, ingle_report_notice_at(report, i));
    }
}

static void put_all(struct comparing *comparing)
{
    const ingle_comparison *comparison = comparing->comparison;
    put_verdicts(comparing);
    if (ingle_comparison_standard_count(comparison) > 1) {
        page_heading(comparing->page, 2, "What changes");
    }
    for (size_t column = 1; column < ingle_comparison_standard_count(comparison); column++) {
        put_step(comparing, column);
    }
    put_matrix(comparing);
    put_notices(comparing);
}

ingle_status ingle_comparison_page(const ingle_comparison *comparison, const ingle_page *page,
                                   ingle_write write, void *context)
{
    struct page written;
    if (comparison == NULL || comparison->report == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status = page_start(&written, &comparison->allocator, page, write, context,
                                     "One survey by several standards");
    if (status != INGLE_OK) {
        return status;
    }
    struct comparing comparing = {.comparison = comparison, .page = &written};
    if (take_heads(&comparing)) {
        put_all(&comparing);
    } else {
        output_fail(&written.output, INGLE_ERROR_MEMORY);
    }
    allocator_free(&comparison->allocator, comparing.heads);
    return page_end(&written);
}
