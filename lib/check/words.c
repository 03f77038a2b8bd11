/* SPDX-License-Identifier: MIT */
#include "check/words.h"

#include "check/report.h"

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
