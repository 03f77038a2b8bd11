/* SPDX-License-Identifier: MIT */
/*
 * A worksheet to print and carry.
 */
#include "teaching/worksheet.h"

#include "base/text.h"
#include "pages/page.h"

enum { WORDS = 240, RULES_NAMED = 4 };

static const char introduction[] =
    "What the rules need of this visit, stop by stop. Write the amount with its unit on the line; "
    "where the tape cannot reach, write why. Take nothing apart, light nothing, and do not use the "
    "fireplace until what was found has been judged.";

/* ---- one thing to measure ------------------------------------------------------------------- */

static void put_label(struct page *page, const ingle_worksheet *worksheet, size_t index)
{
    const ingle_quantity *quantity = ingle_worksheet_quantity_at(worksheet, index);
    size_t item = ingle_worksheet_item_at(worksheet, index);
    page_run(page, PAGE_STRONG, ingle_quantity_label(quantity));
    if (!ingle_quantity_repeats(quantity)) {
        return;
    }
    char words[WORDS];
    struct text text = text_start(words, sizeof words);
    text_add(&text, item == SIZE_MAX ? " of each " : " of ");
    text_add(&text, ingle_quantity_group(quantity));
    if (item != SIZE_MAX) {
        text_add(&text, " ");
        text_add_unsigned(&text, item + 1);
    }
    page_run(page, PAGE_PLAIN, words);
}

/* The choices of a quantity, to be ticked; a line for what is measured. */
static void put_room(struct page *page, const ingle_quantity *quantity)
{
    size_t count = ingle_quantity_choice_count(quantity);
    page_run(page, PAGE_PLAIN, " ");
    if (ingle_quantity_dimension(quantity) == INGLE_FLAG) {
        page_run(page, PAGE_PLAIN, "[ ] yes [ ] no");
    } else if (count == 0) {
        page_run(page, PAGE_BLANK, "               ");
    }
    for (size_t i = 0; i < count; i++) {
        page_run(page, PAGE_PLAIN, i > 0 ? " [ ] " : "[ ] ");
        page_run(page, PAGE_PLAIN, ingle_quantity_choice_label(quantity, i));
    }
    page_run(page, PAGE_PLAIN, ". ");
}

static void put_rules(struct page *page, const ingle_worksheet *worksheet, size_t index)
{
    char words[WORDS];
    struct text text = text_start(words, sizeof words);
    size_t count = ingle_worksheet_rule_count(worksheet, index);
    text_add(&text, " For ");
    for (size_t i = 0; i < count && i < RULES_NAMED; i++) {
        text_add(&text, i > 0 ? ", " : "");
        text_add(&text, ingle_worksheet_rule_at(worksheet, index, i));
    }
    if (count > RULES_NAMED) {
        text_add(&text, " and ");
        text_add_unsigned(&text, count - RULES_NAMED);
        text_add(&text, " more");
    }
    text_add(&text, ".");
    page_run(page, PAGE_PLAIN, words);
}

static void put_entry(struct page *page, const ingle_worksheet *worksheet, size_t index)
{
    const ingle_quantity *quantity = ingle_worksheet_quantity_at(worksheet, index);
    page_open(page, PAGE_ITEM);
    put_label(page, worksheet, index);
    page_run(page, PAGE_PLAIN, ":");
    put_room(page, quantity);
    page_run(page, PAGE_PLAIN, ingle_quantity_how(quantity));
    put_rules(page, worksheet, index);
    page_close(page);
}

/* ---- the whole ------------------------------------------------------------------------------ */

static void put_stop(struct page *page, const ingle_worksheet *worksheet, size_t stop)
{
    bool headed = false;
    for (size_t i = 0; i < ingle_worksheet_count(worksheet); i++) {
        if (ingle_quantity_stop(ingle_worksheet_quantity_at(worksheet, i)) != stop) {
            continue;
        }
        if (!headed) {
            page_heading(page, 2, ingle_stop_label(stop));
            headed = true;
        }
        put_entry(page, worksheet, i);
    }
}

static void put_assumed(struct page *page, const ingle_worksheet *worksheet)
{
    size_t count = ingle_worksheet_assumed_count(worksheet);
    if (count > 0) {
        page_heading(page, 2, "Taken for granted unless you record otherwise");
    }
    for (size_t i = 0; i < count; i++) {
        const ingle_quantity *quantity = ingle_worksheet_assumed_at(worksheet, i);
        ingle_amount assumed = {0, 0, 0};
        ingle_quantity_assumed(quantity, &assumed);
        page_fact(page, ingle_quantity_label(quantity),
                  assumed.dimension == INGLE_CHOICE
                      ? ingle_quantity_choice_label(quantity, (size_t)assumed.value)
                  : assumed.value != 0 ? "yes"
                                       : "no");
    }
}

ingle_status ingle_worksheet_page(const ingle_worksheet *worksheet, const ingle_page *page,
                                  ingle_write write, void *context)
{
    struct page written;
    if (worksheet == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status =
        page_start(&written, &worksheet->allocator, page, write, context, "Worksheet");
    if (status != INGLE_OK) {
        return status;
    }
    page_line(&written, PAGE_PARAGRAPH, introduction);
    if (ingle_worksheet_count(worksheet) == 0) {
        page_line(&written, PAGE_PARAGRAPH, "Nothing is missing.");
    }
    for (size_t stop = 0; stop < ingle_stop_count(); stop++) {
        put_stop(&written, worksheet, stop);
    }
    put_assumed(&written, worksheet);
    return page_end(&written);
}
