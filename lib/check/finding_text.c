/* SPDX-License-Identifier: MIT */
/*
 * The words of findings, steps and remedies, made only when somebody asks for them.
 */
#include "base/text.h"
#include "check/notices.h"
#include "check/report.h"
#include "formulas/flue.h"

#include <string.h>

/* A text that is being written, and how its amounts are shown. */
struct words {
    struct text text;
    const ingle_format *format;
    ingle_status status; /* INGLE_OK, or why an amount could not be written */
};

static void add_amount(struct words *words, ingle_amount amount)
{
    char written[80];
    size_t length;
    ingle_status status =
        ingle_amount_format(&amount, words->format, written, sizeof written, &length);
    if (status < 0) {
        words->status = status;
        return;
    }
    text_add_bytes(&words->text, written, length);
}

static ingle_status words_end(struct words *words, size_t *length)
{
    ingle_status status = text_end(&words->text, length);
    return words->status != INGLE_OK ? words->status : status;
}

static void add_pointer(struct text *text, enum quantity_id quantity, size_t item)
{
    if (item == ITEM_NONE && groups[quantities[quantity].group].repeats) {
        text_add(text, "/survey/");
        text_add(text, groups[quantities[quantity].group].id);
    } else {
        survey_add_pointer(text, quantity, item);
    }
}

/* ---- findings ------------------------------------------------------------------------------- */

static void add_label(struct text *text, const struct ingle_finding *finding)
{
    const struct ingle_quantity *quantity = &quantities[finding->judged];
    const char *group = groups[quantity->group].id;
    if (groups[quantity->group].repeats && finding->item != ITEM_NONE) {
        const char *label =
            ingle_survey_item_label(finding->report->survey, group, finding->item);
        if (label != NULL) {
            text_add(text, label);
        } else {
            text_add(text, group);
            text_add(text, " ");
            text_add_unsigned(text, finding->item + 1);
        }
        text_add(text, ": ");
    }
    text_add(text, quantity->label);
}

static void add_citation(struct text *text, const struct ingle_finding *finding)
{
    if (finding->by_listing) {
        text_add(text, "The appliance's own listing, in place of ");
    }
    text_add(text, finding->standard->title);
    if (finding->standard->edition != 0) {
        text_add(text, " ");
        text_add_unsigned(text, (uint64_t)finding->standard->edition);
    }
    if (finding->standard->edition == 0 && finding->rule->basis == INGLE_BASIS_COMMON_PRACTICE) {
        text_add(text, " (");
        text_add(text, finding->standard->place);
        text_add(text, ")");
    } else {
        text_add(text, ", ");
        text_add(text, finding->rule->section);
    }
    if (finding->amendment != NULL) {
        text_add(text, ", as amended by ");
        text_add(text, finding->amendment);
    }
}

static void add_missing(struct text *text, const struct ingle_finding *finding)
{
    for (size_t i = 0; i < finding->missing_count; i++) {
        text_add(text, i == 0 ? "" : i + 1 == finding->missing_count ? " and " : ", ");
        text_add(text, quantities[finding->missing[i]].id);
    }
    text_add(text, finding->missing_count == 1 ? " is not recorded" : " are not recorded");
}

static ingle_amount amount_of(const struct ingle_finding *finding, int64_t value)
{
    return quantity_amount(finding->judged, value);
}

static void add_state(struct text *text, const struct ingle_finding *finding, int64_t value)
{
    const struct ingle_quantity *quantity = &quantities[finding->judged];
    if (quantity->dimension == INGLE_FLAG) {
        text_add(text, value != 0 ? "yes" : "no");
    } else {
        text_add(text, quantity->choices[value].label);
    }
}

/* What is seen has no margin: it is so, or it is not. */
static void add_observation(struct words *words, const struct ingle_finding *finding)
{
    bool wanted = finding->relation == INGLE_IS;
    bool same = finding->measured == finding->required;
    add_state(&words->text, finding, finding->measured);
    if (same) {
        text_add(&words->text, wanted ? ", as required" : "; this is not allowed");
    } else {
        text_add(&words->text, wanted ? "; required is: " : "; not allowed is: ");
        add_state(&words->text, finding, finding->required);
    }
}

static bool is_observation(const struct ingle_finding *finding)
{
    return finding->relation == INGLE_IS || finding->relation == INGLE_IS_NOT;
}

/* The limit itself is then too much. */
static bool asks_for_less(const struct ingle_finding *finding)
{
    return finding->relation == INGLE_LESS_THAN;
}

static void add_limit(struct words *words, const struct ingle_finding *finding)
{
    if (asks_for_less(finding)) {
        text_add(&words->text, "less than ");
        add_amount(words, amount_of(finding, finding->required));
        text_add(&words->text, " is required");
        return;
    }
    text_add(&words->text,
             finding->relation == INGLE_AT_LEAST ? "at least " : "no more than ");
    add_amount(words, amount_of(finding, finding->required));
    text_add(&words->text,
             finding->relation == INGLE_AT_LEAST ? " is required" : " is allowed");
}

static void add_margin(struct words *words, const struct ingle_finding *finding)
{
    int64_t margin = finding->margin;
    if (margin == 0) {
        text_add(&words->text,
                 asks_for_less(finding) ? ": exactly that is too much" : ", exactly the limit");
        return;
    }
    text_add(&words->text, ": ");
    add_amount(words, amount_of(finding, margin < 0 ? -margin : margin));
    if (margin > 0) {
        text_add(&words->text, " to spare");
    } else {
        text_add(&words->text,
                 finding->relation == INGLE_AT_LEAST ? " too little" : " too much");
    }
}

static void add_judgement(struct words *words, const struct ingle_finding *finding)
{
    add_amount(words, amount_of(finding, finding->measured));
    text_add(&words->text, " measured");
    if (finding->has_required) {
        text_add(&words->text, ", ");
        add_limit(words, finding);
        add_margin(words, finding);
    }
    if (finding->verdict == INGLE_TOO_CLOSE) {
        text_add(&words->text, ". Within the tolerances of the measurements the rule may be met "
                               "or not");
    }
}

/* The label as a sentence begins. An item's own label stays as people write it. */
static void add_label_first(struct text *text, const struct ingle_finding *finding)
{
    const struct ingle_quantity *quantity = &quantities[finding->judged];
    if (groups[quantity->group].repeats) {
        add_label(text, finding);
        return;
    }
    char first = quantity->label[0];
    char upper = first >= 'a' && first <= 'z' ? (char)(first - 'a' + 'A') : first;
    text_add_bytes(text, &upper, 1);
    text_add(text, quantity->label + 1);
}

static void add_sentence(struct words *words, const struct ingle_finding *finding)
{
    add_label_first(&words->text, finding);
    text_add(&words->text, ": ");
    if (finding->replaced) {
        text_add(&words->text, finding->rule->role == ORDINARY
                                   ? "does not apply, since the exception is met"
                                   : "not needed, since the ordinary rule is met");
    } else if (finding->outside) {
        text_add(&words->text, "the publication prints no value for this, and none is made up");
    } else if (finding->verdict == INGLE_BY_LISTING) {
        text_add(&words->text, "the appliance's own label or manual decides; look up ");
        text_add(&words->text, quantities[finding->missing[0]].label);
    } else if (finding->verdict == INGLE_NOT_APPLICABLE) {
        text_add(&words->text, "the rule does not apply");
    } else if (finding->verdict == INGLE_UNMEASURED) {
        add_missing(&words->text, finding);
        if (finding->has_required && !is_observation(finding)) {
            text_add(&words->text, "; ");
            add_limit(words, finding);
        }
    } else if (is_observation(finding)) {
        add_observation(words, finding);
    } else {
        add_judgement(words, finding);
    }
    text_add(&words->text, ".");
}

static void add_caution(struct text *text, const struct ingle_finding *finding)
{
    const char *basis = basis_caution(finding->rule->basis);
    bool warn = finding->verdict >= INGLE_UNMEASURED;
    if (warn) {
        text_add(text, finding->verdict == INGLE_UNMEASURED ? "Not judged. If the rule is not met: "
                                                            : "");
        text_add(text, matters[finding->rule->matter].caution);
    }
    if (basis != NULL && finding->verdict != INGLE_NOT_APPLICABLE && !finding->by_listing) {
        text_add(text, warn ? " " : "");
        text_add(text, basis);
    }
}

ingle_status ingle_finding_text(const ingle_finding *finding, ingle_finding_part part,
                                const ingle_format *format, char *buffer, size_t capacity,
                                size_t *length)
{
    if (finding == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct words words = {text_start(buffer, capacity), format, INGLE_OK};
    switch (part) {
    case INGLE_FINDING_SUBJECT:
        add_pointer(&words.text, finding->judged, finding->item);
        break;
    case INGLE_FINDING_LABEL:
        add_label(&words.text, finding);
        break;
    case INGLE_FINDING_CITATION:
        add_citation(&words.text, finding);
        break;
    case INGLE_FINDING_SENTENCE:
        add_sentence(&words, finding);
        break;
    case INGLE_FINDING_CAUTION:
        add_caution(&words.text, finding);
        break;
    default:
        return INGLE_ERROR_ARGUMENT;
    }
    return words_end(&words, length);
}

ingle_status ingle_finding_missing_text(const ingle_finding *finding, size_t index, char *buffer,
                                        size_t capacity, size_t *length)
{
    if (finding == NULL || index >= finding->missing_count || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    add_pointer(&text, finding->missing[index], finding->item);
    return text_end(&text, length);
}

ingle_status ingle_missing_subject_text(const ingle_missing *missing, char *buffer,
                                        size_t capacity, size_t *length)
{
    if (missing == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    add_pointer(&text, missing->quantity, missing->item);
    return text_end(&text, length);
}

/* ---- steps ---------------------------------------------------------------------------------- */

static void add_operand_amount(struct words *words, const struct operand *operand)
{
    if (operand->quantity == QUANTITY_NONE) {
        add_amount(words, operand->amount);
    } else if (operand->amount.dimension == INGLE_FLAG) {
        text_add(&words->text, operand->amount.value != 0 ? "yes" : "no");
    } else {
        text_add(&words->text, quantities[operand->quantity].choices[operand->amount.value].id);
    }
}

/* The expression with its operands put in, by their names or by their amounts. */
static void add_expression(struct words *words, const ingle_step *step, bool amounts)
{
    const char *rest = step->expression;
    const char *brace;
    while ((brace = strchr(rest, '{')) != NULL) {
        const struct operand *operand = &step->operands[brace[1] - '0'];
        text_add_bytes(&words->text, rest, (size_t)(brace - rest));
        if (amounts) {
            add_operand_amount(words, operand);
        } else {
            text_add(&words->text, operand->name);
        }
        rest = brace + 3;
    }
    text_add(&words->text, rest);
}

static void add_step_sentence(struct words *words, const ingle_step *step)
{
    text_add(&words->text, step->label);
    text_add(&words->text, ": ");
    add_expression(words, step, false);
    text_add(&words->text, step->has_result ? " = " : ", here ");
    add_expression(words, step, true);
    if (step->has_result && strcmp(step->expression, "{0}") != 0) {
        text_add(&words->text, " = ");
        add_amount(words, step->result);
    }
    text_add(&words->text, ".");
    if (step->remark != NULL) {
        text_add(&words->text, " ");
        text_add(&words->text, step->remark);
    }
}

ingle_status ingle_step_text(const ingle_step *step, ingle_step_part part,
                             const ingle_format *format, char *buffer, size_t capacity,
                             size_t *length)
{
    if (step == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct words words = {text_start(buffer, capacity), format, INGLE_OK};
    switch (part) {
    case INGLE_STEP_EXPRESSION:
        add_expression(&words, step, false);
        break;
    case INGLE_STEP_SUBSTITUTED:
        add_expression(&words, step, true);
        break;
    case INGLE_STEP_SENTENCE:
        add_step_sentence(&words, step);
        break;
    case INGLE_STEP_REMARK:
        text_add(&words.text, step->remark == NULL ? "" : step->remark);
        break;
    default:
        return INGLE_ERROR_ARGUMENT;
    }
    return words_end(&words, length);
}

/* ---- remedies ------------------------------------------------------------------------------- */

static void add_amount_remedy(struct words *words, const struct ingle_remedy *remedy)
{
    const struct ingle_quantity *quantity = &quantities[remedy->quantity];
    const char *lead = remedy->direction > 0 ? quantity->increase : quantity->decrease;
    ingle_amount amount;
    ingle_remedy_amount(remedy, &amount);
    text_add(&words->text, lead != NULL ? lead : quantity->label);
    text_add(&words->text, " ");
    add_amount(words, amount);
    amount.value = remedy->direction * (remedy->to - remedy->from);
    text_add(&words->text, " (");
    add_amount(words, amount);
    text_add(&words->text, remedy->direction > 0 ? " more)." : " less).");
}

static void add_liner_remedy(struct words *words, const struct ingle_remedy *remedy)
{
    const ingle_standard *standard = remedy->report->findings[remedy->finding].standard;
    for (size_t i = 0; i < standard->liner_count; i++) {
        const struct liner *liner = &standard->liners[i];
        if ((int64_t)liner->liner == remedy->to) {
            text_add(&words->text, "Reline the flue: ");
            text_add(&words->text, quantities[QUANTITY_FLUE_LINER].choices[liner->liner].id);
            text_add(&words->text, " is the smallest liner of ");
            text_add(&words->text, liner->table);
            text_add(&words->text, " that would do, with a net area of ");
            add_amount(words, quantity_amount(QUANTITY_FLUE_NET_AREA, liner->net_area));
            text_add(&words->text, ".");
            return;
        }
    }
}

ingle_status ingle_remedy_text(const ingle_remedy *remedy, ingle_remedy_part part,
                               const ingle_format *format, char *buffer, size_t capacity,
                               size_t *length)
{
    if (remedy == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct words words = {text_start(buffer, capacity), format, INGLE_OK};
    switch (part) {
    case INGLE_REMEDY_SUBJECT:
        add_pointer(&words.text, remedy->quantity,
                    remedy->report->findings[remedy->finding].item);
        break;
    case INGLE_REMEDY_SENTENCE:
        if (remedy->direction == 0) {
            add_liner_remedy(&words, remedy);
        } else {
            add_amount_remedy(&words, remedy);
        }
        break;
    default:
        return INGLE_ERROR_ARGUMENT;
    }
    return words_end(&words, length);
}
