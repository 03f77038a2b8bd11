/* SPDX-License-Identifier: MIT */
/*
 * The words of steps and remedies, made only when somebody asks for them.
 */
#include "check/report.h"
#include "check/words.h"
#include "formulas/flue.h"

#include <string.h>

/* ---- steps ---------------------------------------------------------------------------------- */

/* How the operands of an expression are shown. */
enum operand_form { BY_NAME, BY_LABEL, BY_AMOUNT };

static void add_operand_amount(struct words *words, const struct operand *operand)
{
    if (operand->quantity == QUANTITY_NONE) {
        words_add_amount(words, operand->amount);
    } else if (operand->amount.dimension == INGLE_FLAG) {
        text_add(&words->text, operand->amount.value != 0 ? "yes" : "no");
    } else {
        text_add(&words->text, quantities[operand->quantity].choices[operand->amount.value].id);
    }
}

/* A quantity's id is its operand's name; other names are words already. */
static const char *operand_label(const struct operand *operand)
{
    const ingle_quantity *quantity = ingle_quantity_find(operand->name);
    return quantity != NULL ? quantity->label : operand->name;
}

static void add_operand(struct words *words, const struct operand *operand, enum operand_form form)
{
    switch (form) {
    case BY_NAME:
        text_add(&words->text, operand->name);
        break;
    case BY_LABEL:
        text_add(&words->text, operand_label(operand));
        break;
    case BY_AMOUNT:
        add_operand_amount(words, operand);
        break;
    }
}

/* The expression with its operands put in. */
static void add_expression(struct words *words, const ingle_step *step, enum operand_form form)
{
    const char *rest = step->expression;
    const char *brace;
    while ((brace = strchr(rest, '{')) != NULL) {
        text_add_bytes(&words->text, rest, (size_t)(brace - rest));
        add_operand(words, &step->operands[brace[1] - '0'], form);
        rest = brace + 3;
    }
    text_add(&words->text, rest);
}

/* Something taken as it stands, that is seen and not measured: its state in words. */
static bool is_state(const ingle_step *step)
{
    return !step->has_result && strcmp(step->expression, "{0}") == 0 &&
           step->operands[0].quantity != QUANTITY_NONE;
}

static void add_step_amounts(struct words *words, const ingle_step *step)
{
    if (is_state(step)) {
        text_add(&words->text, " (");
        words_add_state(&words->text, &quantities[step->operands[0].quantity],
                  step->operands[0].amount.value);
        text_add(&words->text, ")");
        return;
    }
    text_add(&words->text, step->has_result ? " = " : ", here ");
    add_expression(words, step, BY_AMOUNT);
    if (step->has_result && strcmp(step->expression, "{0}") != 0) {
        text_add(&words->text, " = ");
        words_add_amount(words, step->result);
    }
}

static void add_step_sentence(struct words *words, const ingle_step *step)
{
    words_add_first(&words->text, step->label);
    text_add(&words->text, ": ");
    add_expression(words, step, BY_LABEL);
    add_step_amounts(words, step);
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
        add_expression(&words, step, BY_NAME);
        break;
    case INGLE_STEP_SUBSTITUTED:
        add_expression(&words, step, BY_AMOUNT);
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
    words_add_amount(words, amount);
    if (words_on_scale(quantity)) {
        text_add(&words->text, ".");
        return;
    }
    amount.value = remedy->direction * (remedy->to - remedy->from);
    text_add(&words->text, " (");
    words_add_amount(words, amount);
    text_add(&words->text, remedy->direction > 0 ? " more)." : " less).");
}

/* A liner that is asked for has more area than the flue, so it never fits into what is there. */
static void add_liner_remedy(struct words *words, const struct ingle_remedy *remedy)
{
    const ingle_standard *standard = remedy->report->findings[remedy->finding].standard;
    for (size_t i = 0; i < standard->liner_count; i++) {
        const struct liner *liner = &standard->liners[i];
        if ((int64_t)liner->liner == remedy->to) {
            text_add(&words->text, "Have the flue rebuilt larger, since no larger liner fits into "
                                   "it: ");
            text_add(&words->text, quantities[QUANTITY_FLUE_LINER].choices[liner->liner].id);
            text_add(&words->text, " is the smallest liner of ");
            text_add(&words->text, liner->table);
            text_add(&words->text, " that would do, with a net area of ");
            words_add_amount(words, quantity_amount(QUANTITY_FLUE_NET_AREA, liner->net_area));
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
        words_add_pointer(&words.text, remedy->quantity,
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
