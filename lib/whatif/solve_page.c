/* SPDX-License-Identifier: MIT */
/*
 * A solution, or a frontier of them, as a page.
 */
#include "whatif/solve.h"

#include "base/text.h"
#include "check/words.h"
#include "pages/page.h"

#include <string.h>

enum { WORDS_SIZE = 256 };

static const char aside_title[] = "Left aside: these fail whatever the value";

static const char notice[] =
    "A value that would do meets the numbers of the rules asked, all else being as surveyed. It is "
    "for the local authority, the listing of the appliance and licensed practice to allow it.";

struct solving_page {
    struct page *page;
    const ingle_quantity *quantity;
    ingle_format format;
};

static struct solving_page page_of(struct page *page, const ingle_quantity *quantity, bool metric)
{
    return (struct solving_page){page, quantity,
                                 page_format(page, ingle_unit_find(metric ? "mm" : "in"))};
}

/* ---- values in words ------------------------------------------------------------------------ */

/* `from 16 in to 20 in`, or the one value. */
static void add_interval(struct text *text, const struct solving_page *solving,
                         const ingle_interval *interval)
{
    if (interval->least.value != interval->most.value) {
        text_add(text, "from ");
        words_add_amount_of(text, solving->quantity, &interval->least, &solving->format);
        text_add(text, " to ");
    }
    words_add_amount_of(text, solving->quantity, &interval->most, &solving->format);
}

static void add_obstacle(struct text *text, const char *where, const ingle_rule *rule,
                         const ingle_standard *standard)
{
    if (rule != NULL) {
        text_add(text, "; ");
        text_add(text, where);
        text_add(text, " it fails ");
        text_add(text, ingle_rule_id(rule));
        text_add(text, " of ");
        text_add(text, ingle_standard_id(standard));
    }
}

/* ---- the parts ------------------------------------------------------------------------------ */

static bool is_word(const ingle_quantity *quantity)
{
    return quantity->dimension == INGLE_CHOICE || quantity->dimension == INGLE_FLAG;
}

static void put_range(const struct solving_page *solving, const ingle_range *range)
{
    char words[WORDS_SIZE];
    if (is_word(range->quantity)) {
        page_line(solving->page, PAGE_PARAGRAPH,
                  "Asked of each of its choices, all else as surveyed.");
        return;
    }
    struct text text = text_start(words, sizeof words);
    ingle_amount amount;
    ingle_quantity_range(range->quantity, &amount, NULL);
    amount.value = range->from;
    text_add(&text, "Asked from ");
    words_add_amount_of(&text, range->quantity, &amount, &solving->format);
    text_add(&text, " to ");
    amount.value = range->to;
    words_add_amount_of(&text, range->quantity, &amount, &solving->format);
    text_add(&text, ", every ");
    amount.value = range->step;
    words_add_amount_of(&text, range->quantity, &amount, &solving->format);
    text_add(&text, ", all else as surveyed.");
    page_line(solving->page, PAGE_PARAGRAPH, words);
}

/* Choices have no order that people would know: each stands for itself. */
static void put_choices(const struct solving_page *solving, const ingle_interval *interval)
{
    ingle_amount choice = interval->least;
    for (; choice.value <= interval->most.value; choice.value++) {
        char words[WORDS_SIZE];
        struct text text = text_start(words, sizeof words);
        words_add_amount_of(&text, solving->quantity, &choice, &solving->format);
        page_line(solving->page, PAGE_ITEM, words);
    }
}

static void put_intervals(const struct solving_page *solving, const ingle_solution *solution)
{
    page_heading(solving->page, 2, "What would do");
    if (solution->interval_count == 0) {
        page_line(solving->page, PAGE_PARAGRAPH, "No value of this range would.");
    }
    for (size_t i = 0; i < solution->interval_count; i++) {
        const ingle_interval *interval = &solution->intervals[i];
        char words[WORDS_SIZE];
        struct text text = text_start(words, sizeof words);
        if (is_word(solving->quantity)) {
            put_choices(solving, interval);
            continue;
        }
        add_interval(&text, solving, interval);
        add_obstacle(&text, "below", interval->below, interval->below_standard);
        add_obstacle(&text, "above", interval->above, interval->above_standard);
        text_add(&text, ".");
        page_line(solving->page, PAGE_ITEM, words);
    }
}

/* `the nearest above is 20 in, which is 1/16 in more` */
static void put_nearest(const struct solving_page *solving, const ingle_solution *solution,
                        int32_t direction)
{
    char words[WORDS_SIZE];
    struct text text = text_start(words, sizeof words);
    ingle_amount nearest;
    if (!ingle_dimension_is_amount(solution->now.dimension) ||
        !ingle_solution_nearest(solution, direction, &nearest)) {
        return;
    }
    text_add(&text, direction > 0 ? "The nearest above is " : "The nearest below is ");
    words_add_amount_of(&text, solving->quantity, &nearest, &solving->format);
    text_add(&text, ", which is ");
    ingle_amount change = nearest;
    change.value = direction > 0 ? nearest.value - solution->now.value
                                 : solution->now.value - nearest.value;
    words_add_amount_of(&text, solving->quantity, &change, &solving->format);
    text_add(&text, direction > 0 ? " more." : " less.");
    page_line(solving->page, PAGE_ITEM, words);
}

static void put_now(const struct solving_page *solving, const ingle_solution *solution)
{
    struct page *page = solving->page;
    char words[WORDS_SIZE];
    struct text text = text_start(words, sizeof words);
    page_heading(page, 2, "As surveyed");
    if (!solution->recorded) {
        page_line(page, PAGE_PARAGRAPH, "It was not measured.");
        return;
    }
    words_add_amount_of(&text, solving->quantity, &solution->now, &solving->format);
    page_open(page, PAGE_ITEM);
    page_run(page, PAGE_PLAIN, words);
    page_run(page, PAGE_PLAIN, ": ");
    page_run(page, solution->does_now ? PAGE_MEETS : PAGE_FAILS,
             solution->does_now ? "this would do" : "this would not do");
    page_run(page, PAGE_PLAIN, ".");
    page_close(page);
    if (!solution->does_now) {
        put_nearest(solving, solution, -1);
        put_nearest(solving, solution, 1);
    }
}

static void put_asides(const struct solving_page *solving, const ingle_solution *solution)
{
    struct page *page = solving->page;
    if (solution->aside_count == 0) {
        return;
    }
    page_heading(page, 2, aside_title);
    for (size_t i = 0; i < solution->aside_count; i++) {
        const struct aside *aside = &solution->asides[i];
        page_open(page, PAGE_ITEM);
        page_run(page, PAGE_CODE, ingle_rule_id(aside->rule));
        page_run(page, PAGE_PLAIN, " of ");
        page_run(page, PAGE_CODE, ingle_standard_id(aside->standard));
        page_run(page, PAGE_PLAIN, ": ");
        page_run(page, PAGE_PLAIN, ingle_quantity_label(aside->quantity));
        page_run(page, PAGE_PLAIN, ".");
        page_close(page);
    }
}

/* ---- one quantity --------------------------------------------------------------------------- */

ingle_status ingle_solution_page(const ingle_solution *solution, const ingle_page *page,
                                 ingle_write write, void *context)
{
    struct page written;
    if (solution == NULL || solution->range.size == 0) {
        return INGLE_ERROR_ARGUMENT;
    }
    const ingle_range *range = &solution->range;
    char title[WORDS_SIZE];
    struct text text = text_start(title, sizeof title);
    text_add(&text, "What would do: ");
    text_add(&text, ingle_quantity_label(range->quantity));
    ingle_status status = page_start(&written, &solution->allocator, page, write, context, title);
    if (status != INGLE_OK) {
        return status;
    }
    struct solving_page solving = page_of(&written, range->quantity, range->metric != 0);
    put_range(&solving, range);
    put_now(&solving, solution);
    put_intervals(&solving, solution);
    put_asides(&solving, solution);
    page_heading(&written, 2, "Notice");
    page_line(&written, PAGE_PARAGRAPH, notice);
    return page_end(&written);
}

/* ---- two quantities ------------------------------------------------------------------------- */

struct frontier_rows {
    const ingle_frontier *frontier;
    const struct solving_page *solving;
    char cell[WORDS_SIZE];
};

static const char *frontier_cell(void *context, size_t row, size_t column, enum page_style *style)
{
    struct frontier_rows *rows = context;
    const ingle_solution *solution = rows->frontier->solutions[row];
    struct text text = text_start(rows->cell, sizeof rows->cell);
    if (column == 0) {
        words_add_amount_of(&text, rows->frontier->with.quantity, &rows->frontier->values[row],
                  &rows->solving->format);
        return rows->cell;
    }
    if (solution->interval_count == 0) {
        *style = PAGE_FAILS;
        return "none";
    }
    for (size_t i = 0; i < solution->interval_count; i++) {
        text_add(&text, i > 0 ? ", " : "");
        add_interval(&text, rows->solving, &solution->intervals[i]);
    }
    return rows->cell;
}

static const char frontier_title[] = "What would do together";

ingle_status ingle_frontier_page(const ingle_frontier *frontier, const ingle_page *page,
                                 ingle_write write, void *context)
{
    struct page written;
    if (frontier == NULL || frontier->count == 0) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status =
        page_start(&written, &frontier->allocator, page, write, context, frontier_title);
    if (status != INGLE_OK) {
        return status;
    }
    const ingle_range *range = &frontier->solutions[0]->range;
    struct solving_page solving = page_of(&written, range->quantity, range->metric != 0);
    const char *heads[] = {ingle_quantity_label(frontier->with.quantity),
                           ingle_quantity_label(range->quantity)};
    struct frontier_rows rows = {.frontier = frontier, .solving = &solving};
    struct page_table table = {2, frontier->count, heads, frontier_cell, &rows};
    page_table(&written, &table);
    page_line(&written, PAGE_PARAGRAPH, notice);
    return page_end(&written);
}
