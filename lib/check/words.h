/* SPDX-License-Identifier: MIT */
/*
 * What the texts of findings, steps and remedies are made of.
 */
#ifndef INGLE_CHECK_WORDS_H
#define INGLE_CHECK_WORDS_H

#include "base/text.h"
#include "survey/quantity.h"

#include <ingle/standards.h>

/* A text that is being written, and how its amounts are shown. */
struct words {
    struct text text;
    const ingle_format *format;
    ingle_status status; /* INGLE_OK, or why an amount could not be written */
};

void words_add_amount(struct words *words, ingle_amount amount);

/* Ends the text; a failure of an amount comes before one of the text. */
ingle_status words_end(struct words *words, size_t *length);

/* As a sentence begins: the first letter large. */
void words_add_first(struct text *text, const char *words);

/* The JSON pointer of a quantity, or of its group where that was not looked at. */
void words_add_pointer(struct text *text, enum quantity_id quantity, size_t item);

/* An amount of a quantity: a choice or a flag in words, or as the format shows it. */
void words_add_amount_of(struct text *text, const struct ingle_quantity *quantity,
                         const ingle_amount *amount, const ingle_format *format);

/* Whether a number is a place on a scale: nothing of it is too few, too many or to spare. */
bool words_on_scale(const struct ingle_quantity *quantity);

/* A choice or a flag in words. */
void words_add_state(struct text *text, const struct ingle_quantity *quantity, int64_t value);

/*
 * What a calculation ended in that could not be done; of a contradiction both sides, as they were
 * recorded: `Two things recorded cannot both be so: flue.shape is square, and flue.liner is 8x12.`
 */
struct calculation;
void words_add_fault(struct text *text, const struct calculation *calculation, ingle_status status);

/*
 * What a rule on something seen asks, after "the rule asks": of INGLE_IS the state, of INGLE_IS_NOT
 * any other. NULL where the catalogue has no words for it.
 */
const char *words_wish(const struct ingle_quantity *quantity, ingle_relation relation,
                       int64_t state);

#endif
