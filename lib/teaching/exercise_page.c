/* SPDX-License-Identifier: MIT */
/*
 * An exercise to hand out, and its answers.
 */
#include "teaching/exercise.h"
#include "teaching/explain.h"

#include "base/text.h"
#include "check/words.h"

#include <string.h>

static const char invented[] =
    "The fireplace is invented. Say for each question what is required and by which section, "
    "whether it is met and by how much, and what would put it right.";

/* ---- the problem ---------------------------------------------------------------------------- */

static void put_label(struct page *page, const ingle_exercise *exercise,
                      const struct given *given)
{
    const ingle_quantity *quantity = &quantities[given->quantity];
    const char *label =
        ingle_survey_item_label(exercise->survey, ingle_quantity_group(quantity), given->item);
    if (ingle_quantity_repeats(quantity) && label != NULL) {
        page_run(page, PAGE_STRONG, label);
        page_run(page, PAGE_PLAIN, ", ");
    }
    page_run(page, PAGE_PLAIN, ingle_quantity_label(quantity));
    page_run(page, PAGE_PLAIN, ": ");
}

static void put_given(struct page *page, const ingle_exercise *exercise,
                      const struct given *given)
{
    char words[EXPLAIN_WORDS];
    ingle_amount amount = {0, 0, 0};
    const ingle_quantity *quantity = &quantities[given->quantity];
    ingle_survey_get(exercise->survey, quantity, given->item, &amount, NULL);
    ingle_format format = page_format(page, given->unit);
    format.unit = given->unit;
    struct text text = text_start(words, sizeof words);
    words_add_amount_of(&text, quantity, &amount, &format);
    page_open(page, PAGE_ITEM);
    put_label(page, exercise, given);
    page_run(page, PAGE_PLAIN, words);
    page_run(page, PAGE_PLAIN, ".");
    page_close(page);
}

static void put_question(struct page *page, const ingle_exercise *exercise, size_t index)
{
    char number[24];
    const ingle_finding *finding = ingle_exercise_answer_at(exercise, index);
    struct text text = text_start(number, sizeof number);
    text_add_unsigned(&text, index + 1);
    text_add(&text, ". ");
    page_open(page, PAGE_PARAGRAPH);
    page_run(page, PAGE_STRONG, number);
    page_run(page, PAGE_PLAIN, explain_text(page, finding, INGLE_FINDING_LABEL));
    page_run(page, PAGE_PLAIN, ", by ");
    page_run(page, PAGE_PLAIN, explain_text(page, finding, INGLE_FINDING_CITATION));
    page_run(page, PAGE_PLAIN, ": ");
    page_run(page, PAGE_BLANK, "                              ");
    page_close(page);
}

static void put_problem(struct page *page, const ingle_exercise *exercise)
{
    page_line(page, PAGE_PARAGRAPH, invented);
    page_heading(page, 2, "What was measured");
    for (size_t i = 0; i < exercise->given_count; i++) {
        put_given(page, exercise, &exercise->given[i]);
    }
    page_heading(page, 2, "Questions");
    for (size_t i = 0; i < exercise->question_count; i++) {
        put_question(page, exercise, i);
    }
}

/* ---- the answers ---------------------------------------------------------------------------- */

static void put_answers(struct page *page, const ingle_exercise *exercise)
{
    page_heading(page, 2, "Answers");
    for (size_t i = 0; i < exercise->question_count; i++) {
        explain_finding(page, ingle_exercise_answer_at(exercise, i),
                        &(struct explain_manner){0});
    }
    page_heading(page, 2, "Notices");
    for (size_t i = 0; i < ingle_report_notice_count(exercise->report); i++) {
        page_line(page, PAGE_ITEM, ingle_report_notice_at(exercise->report, i));
    }
}

/* ---- the whole ------------------------------------------------------------------------------ */

static void make_title(const ingle_exercise *exercise, char *title, size_t size)
{
    struct text text = text_start(title, size);
    text_add(&text, "Exercise ");
    text_add_unsigned(&text, exercise->seed);
    text_add(&text, ", level ");
    text_add_unsigned(&text, (uint64_t)exercise->level);
}

ingle_status ingle_exercise_page(const ingle_exercise *exercise, ingle_exercise_part part,
                                 const ingle_page *page, ingle_write write, void *context)
{
    struct page written;
    char title[EXPLAIN_WORDS];
    if (exercise == NULL || exercise->question_count == 0 || part < INGLE_EXERCISE_BOTH ||
        part > INGLE_EXERCISE_ANSWERS) {
        return INGLE_ERROR_ARGUMENT;
    }
    make_title(exercise, title, sizeof title);
    ingle_status status = page_start(&written, &exercise->allocator, page, write, context, title);
    if (status != INGLE_OK) {
        return status;
    }
    if (part != INGLE_EXERCISE_ANSWERS) {
        put_problem(&written, exercise);
    }
    if (part == INGLE_EXERCISE_BOTH) {
        page_turn(&written);
    }
    if (part != INGLE_EXERCISE_PROBLEM) {
        put_answers(&written, exercise);
    }
    return page_end(&written);
}
