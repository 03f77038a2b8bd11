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

/* What a heading is made of. */
struct headed {
    const ingle_finding *finding;
    bool in_report;
};

/* `Hearth extension in front of the opening (hearth-front, irc-2021)`, or with the title alone. */
static ingle_status heading_text(const void *object, int32_t part, const ingle_format *format,
                                 char *buffer, size_t capacity, size_t *length)
{
    const struct headed *headed = object;
    const ingle_finding *finding = headed->finding;
    struct text text = text_start(buffer, capacity);
    ingle_finding_text(finding, part, format, buffer, capacity, &text.length);
    if (capacity > 0 && buffer[0] >= 'a' && buffer[0] <= 'z') {
        buffer[0] = (char)(buffer[0] - 'a' + 'A');
    }
    text_add(&text, " (");
    if (headed->in_report) {
        explain_add_title(&text, finding->standard, !rule_is_undated(finding->rule));
    } else {
        text_add(&text, ingle_rule_id(finding->rule));
        text_add(&text, ", ");
        text_add(&text, ingle_standard_id(finding->standard));
    }
    text_add(&text, ")");
    return text_end(&text, length);
}

void explain_heading(struct page *page, const ingle_finding *finding,
                     const struct explain_manner *manner)
{
    struct headed headed = {finding, manner->in_report};
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    page_heading(page, 3,
                 page_text_of(page, heading_text, &headed, INGLE_FINDING_LABEL, &format));
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

static void put_fact(struct page *page, bool is_told, const char *name, const char *text)
{
    if (is_told) {
        page_fact(page, name, text);
    }
}

static void put_margin(struct page *page, const ingle_finding *finding)
{
    char words[EXPLAIN_WORDS];
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    ingle_amount margin;
    bool is_amount =
        ingle_finding_margin(finding, &margin) && ingle_dimension_is_amount(margin.dimension);
    if (is_amount && !words_on_scale(&quantities[finding->judged])) {
        struct text text = text_start(words, sizeof words);
        words_add_amount_of(&text, ingle_finding_quantity(finding), &margin, &format);
        page_fact(page, "Margin", words);
    }
}

/* How it was measured has been told where the same fact stands above. */
static void put_amounts(struct page *page, const ingle_finding *finding, bool told_above)
{
    char words[EXPLAIN_WORDS];
    const char *how = ingle_quantity_how(ingle_finding_quantity(finding));
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    if (explain_is_seen(finding)) {
        put_fact(page, !told_above, "How it is looked at", how);
        return;
    }
    explain_measured(finding, &format, words, sizeof words);
    put_fact(page, words[0] != '\0', "Measured", words);
    put_fact(page, words[0] != '\0' && !told_above, "How it is measured", how);
    explain_required(finding, &format, words, sizeof words);
    put_fact(page, words[0] != '\0', "Required", words);
    put_margin(page, finding);
}

static const char *basis_words(const ingle_finding *finding)
{
    static const char *const words[] = {
        [INGLE_BASIS_READ] = "the text was read",
        [INGLE_BASIS_CITED] = "as another source cites it; to be confirmed there",
        [INGLE_BASIS_FROM_MEMORY] = "from memory; to be confirmed in the publication",
        [INGLE_BASIS_COMMON_PRACTICE] = "advice, not code: there is no publication behind it"};
    if (ingle_finding_verdict(finding) == INGLE_BY_LISTING) {
        return "nothing is recorded of what the listing says";
    }
    if (ingle_finding_by_listing(finding)) {
        return "the appliance's own listing, as it was recorded";
    }
    return ingle_finding_amendment(finding) != NULL ? "the amendment, as it was recorded"
                                                    : words[ingle_rule_basis(finding->rule)];
}

/* Of a rule: its label where the heading has another, and its formula with the numbers put in. */
static void put_rule_in_report(struct page *page, const ingle_finding *finding)
{
    char words[EXPLAIN_PROSE];
    const char *label = ingle_rule_label(finding->rule);
    bool headed = strcmp(label, explain_text(page, finding, INGLE_FINDING_LABEL)) == 0;
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    struct text text = text_start(words, sizeof words);
    text_add(&text, headed ? "" : label);
    if (!explain_is_seen(finding)) {
        text_add(&text, headed ? "" : ". ");
        explain_add_formula(&text, finding, &format);
    }
    put_fact(page, text.length > 0, "Rule", words);
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
}

static void put_source(struct page *page, const ingle_finding *finding)
{
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

static void put_remark(struct page *page, const ingle_step *step, const ingle_format *format)
{
    const char *remark = page_text_of(page, step_text, step, INGLE_STEP_REMARK, format);
    if (remark[0] != '\0') {
        page_run(page, PAGE_PLAIN, ". ");
        page_run(page, PAGE_PLAIN, remark);
    }
}

/* What a step comes to in words; false where it comes to no amount. */
static bool has_result(const ingle_step *step, const ingle_format *format, char *words, size_t size)
{
    ingle_amount amount;
    if (!ingle_step_result(step, &amount) || !ingle_dimension_is_amount(amount.dimension)) {
        return false;
    }
    ingle_amount_format(&amount, format, words, size, NULL);
    return true;
}

/* ` = 36 in × 1/6 = 6 in`, the last once where both are one. */
static void put_result(struct page *page, const ingle_step *step, const ingle_format *format)
{
    char result[EXPLAIN_WORDS];
    const char *put_in = page_text_of(page, step_text, step, INGLE_STEP_SUBSTITUTED, format);
    if (!has_result(step, format, result, sizeof result)) {
        page_run(page, PAGE_PLAIN, " is ");
        page_run(page, PAGE_PLAIN, put_in);
        return;
    }
    if (strcmp(put_in, result) != 0) {
        put_equal(page, put_in);
    }
    put_equal(page, result);
}

/* `required: opening.width × 1/6 = 36 in × 1/6 = 6 in` */
static void put_step(struct page *page, const ingle_step *step, const ingle_format *format)
{
    page_open(page, PAGE_WORKING);
    page_run(page, PAGE_PLAIN, ingle_step_label(step));
    page_run(page, PAGE_PLAIN, ": ");
    page_run(page, PAGE_PLAIN,
             page_text_of(page, step_text, step, INGLE_STEP_EXPRESSION, format));
    put_result(page, step, format);
    put_remark(page, step, format);
    page_close(page);
}

static bool ends_in(const char *text, const char *end)
{
    size_t length = strlen(text), least = strlen(end);
    return length >= least && strcmp(text + length - least, end) == 0;
}

/* `required: 36 in × 1/6 = 6 in`; what is taken for granted is told in words. */
static void put_step_in_report(struct page *page, const ingle_step *step,
                               const ingle_format *format)
{
    char result[EXPLAIN_WORDS];
    bool computed = has_result(step, format, result, sizeof result);
    int32_t part = computed ? INGLE_STEP_SUBSTITUTED : INGLE_STEP_SENTENCE;
    page_open(page, PAGE_WORKING);
    if (computed) {
        page_run(page, PAGE_PLAIN, ingle_step_label(step));
        page_run(page, PAGE_PLAIN, ": ");
    }
    const char *words = page_text_of(page, step_text, step, part, format);
    page_run(page, PAGE_PLAIN, words);
    if (computed && !ends_in(words, result)) {
        put_equal(page, result);
    }
    if (computed) {
        put_remark(page, step, format);
    }
    page_close(page);
}

static void put_working(struct page *page, const ingle_finding *finding, bool in_report)
{
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    size_t count = explain_is_seen(finding) ? 0 : ingle_finding_step_count(finding);
    for (size_t i = 0; i < count; i++) {
        (in_report ? put_step_in_report : put_step)(page, ingle_finding_step_at(finding, i),
                                                    &format);
    }
}

/* ---- what to do ----------------------------------------------------------------------------- */

static ingle_status remedy_text(const void *remedy, int32_t part, const ingle_format *format,
                                char *buffer, size_t capacity, size_t *length)
{
    return ingle_remedy_text(remedy, part, format, buffer, capacity, length);
}

static void put_remedies(struct page *page, const ingle_finding *finding)
{
    ingle_format format = explain_format(page, ingle_finding_standard(finding));
    for (size_t i = 0; i < ingle_finding_remedy_count(finding); i++) {
        page_fact(page, "To put it right",
                  page_text_of(page, remedy_text, ingle_finding_remedy_at(finding, i),
                               INGLE_REMEDY_SENTENCE, &format));
    }
}

/* How the numbers are known stands with their source. */
static void put_advice(struct page *page, const ingle_finding *finding)
{
    const char *mend = ingle_finding_mend(finding);
    const char *refer = ingle_finding_refer(finding);
    const char *inspection = ingle_finding_inspection(finding);
    put_fact(page, mend != NULL, "To put it right", mend);
    const char *danger = explain_text(page, finding, INGLE_FINDING_DANGER);
    put_fact(page, danger[0] != '\0', "Meanwhile", danger);
    put_fact(page, refer != NULL, "Who should look next", refer);
    put_fact(page, inspection != NULL, "Inspection called for", inspection);
}

/* `as said above of damper above a gas appliance, by International Residential Code 2021` */
static void put_told_above(struct page *page, const ingle_finding *finding,
                           const ingle_finding *above)
{
    char title[EXPLAIN_WORDS] = "";
    struct text text = text_start(title, sizeof title);
    page_open(page, PAGE_ITEM);
    page_run(page, PAGE_STRONG, "What to do");
    page_run(page, PAGE_PLAIN, ": as said above of ");
    page_run(page, PAGE_PLAIN, explain_text(page, above, INGLE_FINDING_LABEL));
    if (above->standard != finding->standard) {
        explain_add_title(&text, above->standard, !rule_is_undated(above->rule));
        page_run(page, PAGE_PLAIN, ", by ");
        page_run(page, PAGE_PLAIN, title);
    }
    page_close(page);
}

/* Whether a finding told above was on what this one judges. */
static bool is_on_the_same(const ingle_finding *finding, const ingle_finding *above)
{
    return above != NULL && above->judged == finding->judged && above->item == finding->item;
}

void explain_finding(struct page *page, const ingle_finding *finding,
                     const struct explain_manner *manner)
{
    explain_heading(page, finding, manner);
    put_verdict(page, finding);
    put_amounts(page, finding, is_on_the_same(finding, manner->above));
    (manner->in_report ? put_rule_in_report : put_rule)(page, finding);
    put_source(page, finding);
    put_working(page, finding, manner->in_report);
    put_remedies(page, finding);
    if (manner->above != NULL) {
        put_told_above(page, finding, manner->above);
    } else {
        put_advice(page, finding);
    }
}
