/* SPDX-License-Identifier: MIT */
/*
 * One finding, worked out.
 */
#include "teaching/explain.h"

#include "base/text.h"
#include "check/report.h"
#include "check/words.h"
#include "survey/survey.h"

#include <string.h>

/* ---- amounts in words ----------------------------------------------------------------------- */

ingle_format explain_format(const struct page *page, const ingle_standard *standard)
{
    return page_format(page, ingle_standard_unit(standard));
}

static const char *relation_words(ingle_relation relation)
{
    return relation == INGLE_AT_LEAST    ? "at least "
           : relation == INGLE_AT_MOST   ? "no more than "
           : relation == INGLE_LESS_THAN ? "less than "
                                         : "";
}

/* A table has no room for a sentence: what the rule asks, without its "for". */
static void add_wish(struct text *text, const ingle_finding *finding, int64_t state)
{
    const ingle_quantity *quantity = ingle_finding_quantity(finding);
    const char *wish = words_wish(quantity, INGLE_IS_NOT, state);
    if (wish == NULL) {
        text_add(text, "anything but ");
        words_add_state(text, quantity, state);
    } else {
        text_add(text, strncmp(wish, "for ", 4) == 0 ? wish + 4 : wish);
    }
}

void explain_required(const ingle_finding *finding, const ingle_format *format, char *words,
                      size_t size)
{
    struct text text = text_start(words, size);
    ingle_amount required;
    if (!ingle_finding_required(finding, &required)) {
        return;
    }
    if (ingle_finding_relation(finding) == INGLE_IS_NOT) {
        add_wish(&text, finding, required.value);
    } else {
        text_add(&text, relation_words(ingle_finding_relation(finding)));
        words_add_amount_of(&text, ingle_finding_quantity(finding), &required, format);
    }
}

/* The half-width within which the judged quantity was measured; 0 without one. */
static int64_t tolerance_of(const ingle_finding *finding)
{
    const struct record *record =
        survey_record(finding->report->survey, finding->judged, finding->item);
    return record != NULL && record->recorded ? record->tolerance : 0;
}

void explain_measured(const ingle_finding *finding, const ingle_format *format, char *words,
                      size_t size)
{
    struct text text = text_start(words, size);
    ingle_amount amount;
    if (!ingle_finding_measured(finding, &amount)) {
        return;
    }
    words_add_amount_of(&text, ingle_finding_quantity(finding), &amount, format);
    amount.value = tolerance_of(finding);
    if (amount.value > 0) {
        text_add(&text, " ± ");
        words_add_amount_of(&text, ingle_finding_quantity(finding), &amount, format);
    }
}

const char *explain_text(struct page *page, const ingle_finding *finding, ingle_finding_part part)
{
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    return page_finding_text(page, finding, part, &format);
}

bool explain_is_seen(const ingle_finding *finding)
{
    ingle_relation relation = ingle_finding_relation(finding);
    return relation == INGLE_IS || relation == INGLE_IS_NOT;
}

/* ---- the parts of a finding ----------------------------------------------------------------- */

/* `Hearth extension in front of the opening (hearth-front, irc-2021)` */
static ingle_status heading_text(const void *object, int32_t part, const ingle_format *format,
                                 char *buffer, size_t capacity, size_t *length)
{
    const ingle_finding *finding = object;
    struct text text = text_start(buffer, capacity);
    ingle_finding_text(finding, part, format, buffer, capacity, &text.length);
    if (capacity > 0 && buffer[0] >= 'a' && buffer[0] <= 'z') {
        buffer[0] = (char)(buffer[0] - 'a' + 'A');
    }
    text_add(&text, " (");
    text_add(&text, ingle_rule_id(ingle_finding_rule(finding)));
    text_add(&text, ", ");
    text_add(&text, ingle_standard_id(ingle_finding_standard(finding)));
    text_add(&text, ")");
    return text_end(&text, length);
}

void explain_heading(struct page *page, const ingle_finding *finding)
{
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    page_heading(page, 3,
                 page_text_of(page, heading_text, finding, INGLE_FINDING_LABEL, &format));
}

static void put_verdict(struct page *page, const ingle_finding *finding)
{
    ingle_verdict verdict = ingle_finding_verdict(finding);
    page_open(page, PAGE_PARAGRAPH);
    page_run(page, page_verdict_style(verdict), ingle_verdict_name(verdict));
    page_run(page, PAGE_PLAIN, ": ");
    page_run(page, PAGE_PLAIN, explain_text(page, finding, INGLE_FINDING_SENTENCE));
    page_close(page);
}

static void put_amounts(struct page *page, const ingle_finding *finding)
{
    char words[EXPLAIN_WORDS];
    const ingle_quantity *quantity = ingle_finding_quantity(finding);
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    ingle_amount margin;
    explain_measured(finding, &format, words, sizeof words);
    if (explain_is_seen(finding)) {
        page_fact(page, "How it is looked at", ingle_quantity_how(quantity));
        return;
    }
    if (words[0] != '\0') {
        page_fact(page, "Measured", words);
        page_fact(page, "How it is measured", ingle_quantity_how(quantity));
    }
    explain_required(finding, &format, words, sizeof words);
    if (words[0] != '\0') {
        page_fact(page, "Required", words);
    }
    if (ingle_finding_margin(finding, &margin) && ingle_dimension_is_amount(margin.dimension)) {
        struct text text = text_start(words, sizeof words);
        words_add_amount_of(&text, quantity, &margin, &format);
        page_fact(page, "Margin", words);
    }
}

static const char *basis_words(const ingle_finding *finding)
{
    static const char *const words[] = {
        [INGLE_BASIS_READ] = "the text was read",
        [INGLE_BASIS_CITED] = "as another source cites it",
        [INGLE_BASIS_FROM_MEMORY] = "from memory, to be confirmed in the publication",
        [INGLE_BASIS_COMMON_PRACTICE] = "common practice, with no publication behind it"};
    return ingle_finding_by_listing(finding)
               ? "the appliance's own listing, as it was recorded"
               : words[ingle_rule_basis(ingle_finding_rule(finding))];
}

static void put_rule(struct page *page, const ingle_finding *finding)
{
    const ingle_rule *rule = ingle_finding_rule(finding);
    page_open(page, PAGE_ITEM);
    page_run(page, PAGE_STRONG, "Rule");
    page_run(page, PAGE_PLAIN, ": ");
    page_run(page, PAGE_PLAIN, ingle_rule_label(rule));
    page_run(page, PAGE_PLAIN, ".");
    if (!explain_is_seen(finding)) {
        page_run(page, PAGE_PLAIN, " ");
        page_prose(page, ingle_rule_formula_text(rule));
    }
    page_close(page);
    page_open(page, PAGE_ITEM);
    page_run(page, PAGE_STRONG, "Source");
    page_run(page, PAGE_PLAIN, ": ");
    page_run(page, PAGE_PLAIN, explain_text(page, finding, INGLE_FINDING_CITATION));
    page_run(page, PAGE_PLAIN, " (");
    page_run(page, PAGE_PLAIN, basis_words(finding));
    page_run(page, PAGE_PLAIN, ")");
    page_close(page);
    if (ingle_finding_reading(finding) != NULL) {
        page_fact(page, "How the text is read", ingle_finding_reading(finding));
    }
}

/* ---- its working ---------------------------------------------------------------------------- */

static ingle_status step_text(const void *step, int32_t part, const ingle_format *format,
                              char *buffer, size_t capacity, size_t *length)
{
    return ingle_step_text(step, part, format, buffer, capacity, length);
}

/* Text that was rounded brings a sign of its own. */
static void put_equal(struct page *page, const char *text)
{
    page_run(page, PAGE_PLAIN, strncmp(text, "≈", strlen("≈")) == 0 ? " " : " = ");
    page_run(page, PAGE_PLAIN, text);
}

/* `required: opening.width × 1/6 = 36 in × 1/6 = 6 in` */
static void put_step(struct page *page, const ingle_step *step, const ingle_format *format)
{
    char result[EXPLAIN_WORDS] = "";
    ingle_amount amount;
    bool has_result =
        ingle_step_result(step, &amount) && ingle_dimension_is_amount(amount.dimension);
    page_open(page, PAGE_WORKING);
    page_run(page, PAGE_PLAIN, ingle_step_label(step));
    page_run(page, PAGE_PLAIN, ": ");
    page_run(page, PAGE_PLAIN,
             page_text_of(page, step_text, step, INGLE_STEP_EXPRESSION, format));
    if (has_result) {
        ingle_amount_format(&amount, format, result, sizeof result, NULL);
    }
    const char *put_in = page_text_of(page, step_text, step, INGLE_STEP_SUBSTITUTED, format);
    if (!has_result) {
        page_run(page, PAGE_PLAIN, " is ");
        page_run(page, PAGE_PLAIN, put_in);
    } else {
        if (strcmp(put_in, result) != 0) {
            put_equal(page, put_in);
        }
        put_equal(page, result);
    }
    const char *remark = page_text_of(page, step_text, step, INGLE_STEP_REMARK, format);
    if (remark[0] != '\0') {
        page_run(page, PAGE_PLAIN, ". ");
        page_run(page, PAGE_PLAIN, remark);
    }
    page_close(page);
}

static void put_working(struct page *page, const ingle_finding *finding)
{
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    size_t count = explain_is_seen(finding) ? 0 : ingle_finding_step_count(finding);
    for (size_t i = 0; i < count; i++) {
        put_step(page, ingle_finding_step_at(finding, i), &format);
    }
}

/* ---- what to do ----------------------------------------------------------------------------- */

static ingle_status remedy_text(const void *remedy, int32_t part, const ingle_format *format,
                                char *buffer, size_t capacity, size_t *length)
{
    return ingle_remedy_text(remedy, part, format, buffer, capacity, length);
}

static void put_advice(struct page *page, const ingle_finding *finding)
{
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    for (size_t i = 0; i < ingle_finding_remedy_count(finding); i++) {
        page_fact(page, "To put it right",
                  page_text_of(page, remedy_text, ingle_finding_remedy_at(finding, i),
                               INGLE_REMEDY_SENTENCE, &format));
    }
    if (ingle_finding_mend(finding) != NULL) {
        page_fact(page, "To put it right", ingle_finding_mend(finding));
    }
    const char *caution = explain_text(page, finding, INGLE_FINDING_CAUTION);
    if (caution[0] != '\0') {
        page_fact(page, ingle_finding_verdict(finding) == INGLE_MEETS ? "To be known" : "Meanwhile",
                  caution);
    }
    if (ingle_finding_refer(finding) != NULL) {
        page_fact(page, "Who should look next", ingle_finding_refer(finding));
    }
    if (ingle_finding_inspection(finding) != NULL) {
        page_fact(page, "Inspection called for", ingle_finding_inspection(finding));
    }
}

void explain_finding(struct page *page, const ingle_finding *finding)
{
    explain_heading(page, finding);
    put_verdict(page, finding);
    put_amounts(page, finding);
    put_rule(page, finding);
    put_working(page, finding);
    put_advice(page, finding);
}
