/* SPDX-License-Identifier: MIT */
/*
 * What a report says where the rows have ids and names: titles, numbers, what is computed from.
 */
#include "teaching/explain.h"

#include "check/report.h"
#include "check/words.h"

#include <string.h>

void explain_add_title(struct text *text, const ingle_standard *standard, bool dated)
{
    text_add(text, standard->title);
    if (dated && standard->edition != 0) {
        text_add(text, " ");
        text_add_unsigned(text, (uint64_t)standard->edition);
    }
    if (standard->rules[0].basis == INGLE_BASIS_COMMON_PRACTICE) {
        text_add(text, ", ");
        text_add(text, standard->place);
    }
}

/* ---- a formula with its numbers put in ------------------------------------------------------ */

struct formula_words {
    struct text *text;
    const ingle_finding *finding;
    const ingle_format *format;
    int64_t numbers[FORMULA_NUMBERS]; /* as amended */
};

static const struct ingle_quantity *input_of(const struct formula_words *words, unsigned input)
{
    return &quantities[words->finding->rule->inputs[input]];
}

static void add_input(struct formula_words *words, unsigned input)
{
    text_add(words->text, "the ");
    text_add(words->text, input_of(words, input)->label);
}

/* `the lining is “no lining”`: of a choice, the one that stands for nothing being there. */
static void add_nothing_there(struct formula_words *words)
{
    const struct ingle_quantity *input = input_of(words, 0);
    if (input->choice_count == 0) {
        text_add(words->text, input->dimension == INGLE_FLAG ? "no" : "none");
        return;
    }
    text_add(words->text, "“");
    text_add(words->text, input->choices[0].label);
    text_add(words->text, "”");
}

static void add_first_input(struct formula_words *words)
{
    add_input(words, 0);
}

static void add_second_input(struct formula_words *words)
{
    add_input(words, 1);
}

/* How formulas speak of what only a row knows. */
static const struct {
    const char *phrase;
    void (*add)(struct formula_words *words);
} phrases[] = {{"the rule's input", add_first_input},
               {"the rule's first input", add_first_input},
               {"the rule's second input", add_second_input},
               {"no, none or the first of its choices", add_nothing_there}};

/* The bytes of a phrase that the text begins with, after its words were added; 0 for none. */
static size_t add_phrase(struct formula_words *words, const char *rest)
{
    for (size_t i = 0; i < COUNT_OF(phrases); i++) {
        size_t length = strlen(phrases[i].phrase);
        if (strncmp(rest, phrases[i].phrase, length) == 0) {
            phrases[i].add(words);
            return length;
        }
    }
    return 0;
}

/* A number by its name, which ends in a backtick. */
static void add_number(struct formula_words *words, const char *name, size_t length)
{
    const struct formula *formula = words->finding->rule->formula;
    for (unsigned i = 0; i < formula_number_count(formula); i++) {
        const char *known = formula->numbers[i].name;
        if (strlen(known) == length && strncmp(known, name, length) == 0) {
            ingle_amount amount = formula_number_amount(formula, i, words->finding->judged,
                                                        words->numbers[i]);
            words_add_amount_of(words->text, &quantities[words->finding->judged], &amount,
                                words->format);
        }
    }
}

void explain_add_formula(struct text *text, const ingle_finding *finding,
                         const ingle_format *format)
{
    struct formula_words words = {text, finding, format, {0}};
    const char *rest = finding->rule->formula->text;
    amendments_apply(finding->report->amendments, finding->standard, finding->rule,
                     words.numbers);
    while (*rest != '\0') {
        size_t length = add_phrase(&words, rest);
        if (*rest == '`') {
            length = strcspn(rest + 1, "`");
            add_number(&words, rest + 1, length);
            length += 2;
        } else if (length == 0) {
            length = 1;
            text_add_bytes(text, rest, length);
        }
        rest += length;
    }
}
