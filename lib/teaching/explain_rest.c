/* SPDX-License-Identifier: MIT */
/*
 * What a report says beside its findings: what was not measured, what was recorded and not judged,
 * and its notices.
 */
#include "teaching/explain.h"

#include "base/text.h"
#include "check/report.h"

#include <string.h>

struct rest {
    struct page *page;
    const ingle_report *report;
    const ingle_explain_options *options;
    char words[EXPLAIN_WORDS];
};

static bool is_report(const struct rest *rest)
{
    return rest->options->form == INGLE_EXPLAIN_REPORT;
}

/* ---- what was not measured ------------------------------------------------------------------- */

/* `(for: depth of the throat; passage above the firebox against the flue; 3 more)` */
static void put_lacking_in_report(struct rest *rest, const ingle_missing *missing)
{
    enum { NAMED = 3 };
    char words[EXPLAIN_PROSE];
    struct text text = text_start(words, sizeof words);
    size_t count = ingle_missing_rule_count(missing), named = 0;
    for (size_t i = 0; i < count && i < NAMED; i++) {
        const char *label = missing_matter(missing, i)->label;
        if (count > 1 || strcmp(label, ingle_missing_label(missing)) != 0) {
            text_add(&text, named++ == 0 ? " (for: " : "; ");
            text_add(&text, label);
        }
    }
    if (count > NAMED) {
        text_add(&text, "; ");
        text_add_unsigned(&text, count - NAMED);
        text_add(&text, " more");
    }
    text_add(&text, named > 0 ? "): " : ": ");
    page_run(rest->page, PAGE_PLAIN, words);
}

/* `(for hearth-front, flue-area and 3 more)` */
static void put_lacking(struct rest *rest, const ingle_missing *missing)
{
    enum { NAMED = 3 };
    struct text text = text_start(rest->words, EXPLAIN_WORDS);
    size_t count = ingle_missing_rule_count(missing);
    text_add(&text, " (for ");
    for (size_t i = 0; i < count && i < NAMED; i++) {
        text_add(&text, i > 0 ? ", " : "");
        text_add(&text, ingle_missing_rule_at(missing, i));
    }
    if (count > NAMED) {
        text_add(&text, " and ");
        text_add_unsigned(&text, count - NAMED);
        text_add(&text, " more");
    }
    text_add(&text, "): ");
    page_run(rest->page, PAGE_PLAIN, rest->words);
}

/* A finding that lacks no more than this and says what would be required of it. */
static bool wants(const ingle_finding *finding, const ingle_missing *missing)
{
    return finding->verdict == INGLE_UNMEASURED && finding->has_required &&
           finding->judged == missing->quantity && finding->item == missing->item &&
           finding->missing_count == 1 && finding->missing[0] == missing->quantity;
}

/* Whether one asks more than another, or comes first of two that ask the same. */
static bool asks_more(const ingle_finding *finding, const ingle_finding *other)
{
    bool at_least = finding->relation == INGLE_AT_LEAST;
    return finding->required == other->required
               ? finding < other
               : (finding->required > other->required) == at_least;
}

/* Of several that one standard wants, only what asks most is told. */
static bool asks_most(const struct rest *rest, const ingle_finding *finding,
                      const ingle_missing *missing)
{
    const ingle_finding *other;
    for (size_t i = 0; (other = ingle_report_finding_at(rest->report, i)) != NULL; i++) {
        if (other != finding && other->standard == finding->standard &&
            other->relation == finding->relation && wants(other, missing) &&
            asks_more(other, finding)) {
            return false;
        }
    }
    return true;
}

/* `at least 2 (NFPA 211, levels of inspection). `, for each standard that says what it wants. */
static void put_wanted(struct rest *rest, const ingle_missing *missing)
{
    const ingle_finding *finding;
    for (size_t i = 0; (finding = ingle_report_finding_at(rest->report, i)) != NULL; i++) {
        if (!wants(finding, missing) || !asks_most(rest, finding, missing)) {
            continue;
        }
        ingle_format format = explain_format(rest->page, finding->standard);
        explain_required(finding, &format, rest->words, EXPLAIN_WORDS);
        page_run(rest->page, PAGE_PLAIN, rest->words);
        struct text text = text_start(rest->words, EXPLAIN_WORDS);
        explain_add_title(&text, finding->standard, true);
        page_run(rest->page, PAGE_PLAIN, " (");
        page_run(rest->page, PAGE_PLAIN, rest->words);
        page_run(rest->page, PAGE_PLAIN, "). ");
    }
}

static bool lacks_rule(const ingle_missing *missing, const char *rule)
{
    for (size_t i = 0; i < ingle_missing_rule_count(missing); i++) {
        if (rule == NULL || strcmp(rule, ingle_missing_rule_at(missing, i)) == 0) {
            return true;
        }
    }
    return false;
}

static void put_unmeasured(struct rest *rest)
{
    struct page *page = rest->page;
    bool headed = false;
    size_t count = rest->options->least > INGLE_UNMEASURED
                       ? 0
                       : ingle_report_missing_count(rest->report);
    for (size_t i = 0; i < count; i++) {
        const ingle_missing *missing = ingle_report_missing_at(rest->report, i);
        if (!lacks_rule(missing, rest->options->rule)) {
            continue;
        }
        if (!headed) {
            page_heading(page, 2, "Not measured");
            headed = true;
        }
        page_open(page, PAGE_ITEM);
        page_run(page, PAGE_STRONG, ingle_missing_label(missing));
        (is_report(rest) ? put_lacking_in_report : put_lacking)(rest, missing);
        put_wanted(rest, missing);
        page_run(page, PAGE_PLAIN, ingle_missing_how(missing));
        page_close(page);
    }
}

/* ---- what was not judged --------------------------------------------------------------------- */

static ingle_status subject_text(const void *unjudged, int32_t part, const ingle_format *format,
                                 char *buffer, size_t capacity, size_t *length)
{
    (void)part;
    (void)format;
    return ingle_unjudged_subject_text(unjudged, buffer, capacity, length);
}

/* `label (rules on it: Common practice, United States)` */
static void put_one_unjudged(struct rest *rest, const ingle_unjudged *unjudged)
{
    const ingle_standard *standard;
    struct page *page = rest->page;
    page_open(page, PAGE_ITEM);
    page_run(page, PAGE_STRONG, ingle_quantity_label(ingle_unjudged_quantity(unjudged)));
    if (!is_report(rest)) {
        page_run(page, PAGE_PLAIN, " (");
        page_run(page, PAGE_CODE, page_text_of(page, subject_text, unjudged, 0, NULL));
        page_run(page, PAGE_PLAIN, ")");
    }
    for (size_t i = 0; (standard = ingle_unjudged_standard_at(unjudged, i)) != NULL; i++) {
        struct text text = text_start(rest->words, EXPLAIN_WORDS);
        explain_add_title(&text, standard, true);
        page_run(page, PAGE_PLAIN, i == 0 ? ": there are rules on it in " : "; ");
        page_run(page, PAGE_PLAIN, rest->words);
    }
    page_run(page, PAGE_PLAIN, ".");
    page_close(page);
}

static void put_unjudged(struct rest *rest)
{
    size_t count = rest->options->rule != NULL || rest->options->least > INGLE_UNMEASURED
                       ? 0
                       : ingle_report_unjudged_count(rest->report);
    if (count > 0) {
        page_heading(rest->page, 2, "Recorded, but judged by no rule of the standards named");
    }
    for (size_t i = 0; i < count; i++) {
        put_one_unjudged(rest, ingle_report_unjudged_at(rest->report, i));
    }
}

/* ---- what belongs to the whole --------------------------------------------------------------- */

static void put_notices(struct rest *rest)
{
    page_heading(rest->page, 2, "Notices");
    for (size_t i = 0; i < ingle_report_notice_count(rest->report); i++) {
        page_line(rest->page, PAGE_ITEM, ingle_report_notice_at(rest->report, i));
    }
}

void explain_rest(struct page *page, const ingle_report *report,
                  const ingle_explain_options *options)
{
    struct rest rest = {.page = page, .report = report, .options = options};
    put_unmeasured(&rest);
    put_unjudged(&rest);
    put_notices(&rest);
}
