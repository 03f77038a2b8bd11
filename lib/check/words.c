/* SPDX-License-Identifier: MIT */
#include "check/words.h"

#include "check/report.h"

#include <string.h>

void words_add_amount(struct words *words, ingle_amount amount)
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

ingle_status words_end(struct words *words, size_t *length)
{
    ingle_status status = text_end(&words->text, length);
    return words->status != INGLE_OK ? words->status : status;
}

void words_add_first(struct text *text, const char *words)
{
    char upper = words[0] >= 'a' && words[0] <= 'z' ? (char)(words[0] - 'a' + 'A') : words[0];
    text_add_bytes(text, &upper, 1);
    text_add(text, words + 1);
}

void words_add_pointer(struct text *text, enum quantity_id quantity, size_t item)
{
    if (item == ITEM_NONE && groups[quantities[quantity].group].repeats) {
        text_add(text, "/survey/");
        text_add(text, groups[quantities[quantity].group].id);
    } else {
        survey_add_pointer(text, quantity, item);
    }
}

void words_add_state(struct text *text, const struct ingle_quantity *quantity, int64_t value)
{
    if (quantity->dimension == INGLE_FLAG) {
        text_add(text, value != 0 ? "yes" : "no");
    } else {
        text_add(text, quantity->choices[value].label);
    }
}

bool words_on_scale(const struct ingle_quantity *quantity)
{
    return quantity->below != NULL || quantity->above != NULL;
}

const char *words_wish(const struct ingle_quantity *quantity, ingle_relation relation,
                       int64_t state)
{
    if (quantity->dimension == INGLE_FLAG) {
        return quantity->asks[relation == INGLE_IS ? state : !state];
    }
    return relation == INGLE_IS ? quantity->choices[state].asks : quantity->choices[state].bars;
}

void words_add_amount_of(struct text *text, const struct ingle_quantity *quantity,
                         const ingle_amount *amount, const ingle_format *format)
{
    char words[96] = "";
    if (amount->dimension == INGLE_CHOICE || amount->dimension == INGLE_FLAG) {
        words_add_state(text, quantity, amount->value);
        return;
    }
    ingle_amount_format(amount, format, words, sizeof words, NULL);
    text_add(text, words);
}

/* `flue.shape is square`: a choice by the name that it is recorded by. */
static void add_recorded(struct text *text, const struct calculation *calculation,
                         enum quantity_id id)
{
    const struct ingle_quantity *quantity = &quantities[id];
    int64_t value = 0;
    calculation_recorded(calculation, id, &value);
    ingle_amount amount = quantity_amount(id, value);
    text_add(text, quantity->id);
    text_add(text, " is ");
    if (quantity->dimension == INGLE_CHOICE) {
        text_add(text, quantity->choices[value].id);
    } else {
        words_add_amount_of(text, quantity, &amount, NULL);
    }
}

void words_add_fault(struct text *text, const struct calculation *calculation, ingle_status status)
{
    const char *sentence = ingle_status_text(status);
    if (status != INGLE_ERROR_CONTRADICTION || calculation->at_fault == QUANTITY_NONE) {
        text_add(text, sentence);
        return;
    }
    text_add_bytes(text, sentence, strlen(sentence) - 1); /* without its full stop */
    text_add(text, ": ");
    add_recorded(text, calculation, calculation->at_fault);
    text_add(text, ", and ");
    add_recorded(text, calculation, calculation->against);
    text_add(text, ".");
}
