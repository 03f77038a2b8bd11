/* SPDX-License-Identifier: MIT */
/*
 * Pages as plain text: words in lines of the page's width.
 */
#include "pages/letters.h"
#include "pages/page.h"

#include <string.h>

enum { ITEM_INDENT = 2, WORKING_INDENT = 4 };

/* Brings the line to where its words begin. */
static void indent_line(struct page *page)
{
    output_add_repeated(&page->output, " ", page->indent - page->column);
    page->column = page->indent;
}

static void break_line(struct page *page)
{
    output_add(&page->output, "\n");
    page->column = 0;
}

/* Writes the word at hand, on the next line if this one has no room for it. */
static void put_word(struct page *page)
{
    bool first = page->column <= page->indent;
    bool space = page->spaced && !first;
    if (page->word_length == 0) {
        return;
    }
    if (space && page->column + 1 + page->word_width > (size_t)page->how.width) {
        break_line(page);
    } else if (space) {
        output_add(&page->output, " ");
        page->column++;
    }
    if (page->column < page->indent) {
        indent_line(page);
    }
    output_add_bytes(&page->output, page->word, page->word_length);
    page->column += page->word_width;
    page->word_length = page->word_width = 0;
    page->spaced = false;
}

/* Adds to the word at hand, which has room for it. */
static void add_part(struct page *page, const char *text, size_t length, size_t width)
{
    memcpy(page->word + page->word_length, text, length);
    page->word_length += length;
    page->word_width += width;
}

/* Adds what takes no column: a colour. */
static void add_colour(struct page *page, const char *text)
{
    size_t length = strlen(text);
    if (page->word_length + length > PAGE_WORD) {
        put_word(page);
    }
    add_part(page, text, length, 0);
}

/* Adds to the word at hand; one that is longer than any word is written in parts. */
static void add_to_word(struct page *page, const char *text, size_t length)
{
    while (length > 0) {
        if (page->word_length + length > PAGE_WORD) {
            put_word(page);
        }
        size_t part = length < PAGE_WORD ? length : PAGE_WORD;
        while (part < length && ((unsigned char)text[part] & 0xC0) == 0x80) {
            part--; /* never within a letter */
        }
        add_part(page, text, part, letters_width(text, part));
        text += part;
        length -= part;
    }
}

/* Words of so many bytes, without controls. */
static void add_stretch(struct page *page, const char *text, size_t length)
{
    while (length > 0) {
        const char *space = memchr(text, ' ', length);
        size_t word = space == NULL ? length : (size_t)(space - text);
        add_to_word(page, text, word);
        if (space != NULL) {
            put_word(page);
            page->spaced = true;
            word++;
        }
        text += word;
        length -= word;
    }
}

/* What stands without a space beside the run before is one word with it. */
static void add_words(struct page *page, const char *text)
{
    while (*text != '\0') {
        size_t length = letters_plain(text);
        add_stretch(page, text, length);
        text += length;
        if (*text != '\0') {
            const char *shown = letters_control(text, &length);
            add_stretch(page, shown, strlen(shown));
            text += length;
        }
    }
}

static void end_line(struct page *page)
{
    put_word(page);
    break_line(page);
    page->spaced = false;
}

static void leave_line(struct page *page)
{
    if (page->begun) {
        break_line(page);
    }
}

/* ---- the manner ----------------------------------------------------------------------------- */

static void heading(struct page *page, int level, const char *text)
{
    static const char *const under[] = {"", "=", "-", "", ""};
    leave_line(page);
    page->indent = 0;
    add_words(page, text);
    put_word(page);
    size_t width = page->column;
    end_line(page);
    if (under[level][0] != '\0') {
        output_add_repeated(&page->output, under[level],
                            width < (size_t)page->how.width ? width : (size_t)page->how.width);
        end_line(page);
    }
    page->begun = true;
}

static void start(struct page *page, const char *title)
{
    heading(page, 1, title);
}

static void open(struct page *page, enum page_part part)
{
    static const size_t indents[PAGE_PART_COUNT] = {
        [PAGE_PARAGRAPH] = 0, [PAGE_ITEM] = ITEM_INDENT, [PAGE_WORKING] = WORKING_INDENT};
    if (!page->listing || part == PAGE_PARAGRAPH) {
        leave_line(page);
    }
    page->begun = true;
    page->indent = 0;
    page->spaced = false;
    page->indent = indents[part];
    if (part == PAGE_ITEM) {
        output_add(&page->output, "- ");
        page->column = page->indent;
    }
}

static void put_blank(struct page *page, const char *text)
{
    static const char line[] = "________________________________________";
    size_t width = letters_width(text, strlen(text));
    width = width < sizeof line - 1 ? width : sizeof line - 1;
    add_to_word(page, line, width);
}

static void run(struct page *page, enum page_style style, const char *text)
{
    static const char *const colours[PAGE_STYLE_COUNT] = {
        [PAGE_MEETS] = "\x1b[32m", [PAGE_FAILS] = "\x1b[1;31m", [PAGE_OPEN] = "\x1b[33m"};
    bool coloured = page->how.colour == 1 && colours[style] != NULL;
    if (style == PAGE_BLANK) {
        put_blank(page, text);
        return;
    }
    if (coloured) {
        add_colour(page, colours[style]);
    }
    add_words(page, text);
    if (coloured) {
        add_colour(page, "\x1b[0m");
    }
}

static void close(struct page *page, enum page_part part)
{
    (void)part;
    end_line(page);
}

static void finish(struct page *page, enum page_part part)
{
    (void)page;
    (void)part;
}

static void turn(struct page *page)
{
    leave_line(page);
    output_add_repeated(&page->output, "*", 3);
    end_line(page);
}

static void end(struct page *page)
{
    (void)page;
}

/* ---- tables --------------------------------------------------------------------------------- */

enum { COLUMNS_MOST = 32, COLUMN_GAP = 2 };

static const char *cell_of(const struct page_table *table, size_t row, size_t column,
                           enum page_style *style)
{
    *style = PAGE_PLAIN;
    return table->cell(table->context, row, column, style);
}

/* The width of the table; the widths of its columns but the last, which is never filled up. */
static size_t measure(const struct page_table *table, size_t widths[COLUMNS_MOST])
{
    size_t total = 0;
    enum page_style style;
    for (size_t column = 0; column < table->columns; column++) {
        const char *head = table->heads[column];
        widths[column] = letters_width(head, strlen(head));
        for (size_t row = 0; row < table->rows; row++) {
            const char *text = cell_of(table, row, column, &style);
            size_t width = letters_width(text, strlen(text));
            widths[column] = width > widths[column] ? width : widths[column];
        }
        total += widths[column] + (column > 0 ? COLUMN_GAP : 0);
    }
    return total;
}

static void put_cell(struct page *page, const char *text, enum page_style style, size_t width,
                     bool last)
{
    size_t taken = letters_width(text, strlen(text));
    page->column = page->indent = 0;
    run(page, style, text);
    put_word(page);
    page->spaced = false;
    if (!last) {
        output_add_repeated(&page->output, " ", width - taken + COLUMN_GAP);
    }
}

static void put_rows(struct page *page, const struct page_table *table, const size_t *widths)
{
    size_t last = table->columns - 1;
    for (size_t column = 0; column <= last; column++) {
        put_cell(page, table->heads[column], PAGE_PLAIN, widths[column], column == last);
    }
    end_line(page);
    for (size_t column = 0; column <= last; column++) {
        output_add_repeated(&page->output, "-", widths[column]);
        output_add_repeated(&page->output, " ", column < last ? COLUMN_GAP : 0);
    }
    end_line(page);
    for (size_t row = 0; row < table->rows; row++) {
        for (size_t column = 0; column <= last; column++) {
            enum page_style style;
            const char *text = cell_of(table, row, column, &style);
            put_cell(page, text, style, widths[column], column == last);
        }
        end_line(page);
    }
}

/* A table wider than the page: each row by itself, its cells below each other after their heads. */
static void put_records(struct page *page, const struct page_table *table)
{
    for (size_t row = 0; row < table->rows; row++) {
        for (size_t column = 0; column < table->columns; column++) {
            enum page_style style;
            const char *text = cell_of(table, row, column, &style);
            if (text[0] == '\0') {
                continue;
            }
            page->indent = column == 0 ? 0 : ITEM_INDENT;
            add_words(page, table->heads[column]);
            add_words(page, ": ");
            page->indent = 2 * ITEM_INDENT;
            run(page, style, text);
            end_line(page);
        }
    }
}

static void put_table(struct page *page, const struct page_table *table)
{
    size_t widths[COLUMNS_MOST];
    leave_line(page);
    page->begun = true;
    if (table->columns <= COLUMNS_MOST && measure(table, widths) <= (size_t)page->how.width) {
        put_rows(page, table, widths);
    } else {
        put_records(page, table);
    }
}

const struct page_manner text_manner = {.start = start, .heading = heading, .open = open,
                                        .run = run, .close = close, .finish = finish,
                                        .table = put_table, .turn = turn, .end = end};
