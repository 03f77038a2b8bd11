/* SPDX-License-Identifier: MIT */
/*
 * Pages as Markdown: CommonMark, with the tables of its common extension.
 */
#include "pages/letters.h"
#include "pages/page.h"

#include <string.h>

/* As it stands, but for controls: a line that ends would end what it stands in. */
static void put_plain(struct output *output, const char *text)
{
    while (*text != '\0') {
        size_t length = letters_plain(text);
        output_add_bytes(output, text, length);
        text += length;
        if (*text != '\0') {
            output_add(output, letters_control(text, &length));
            text += length;
        }
    }
}

/* Letters that could be taken for markup stand after a backslash. */
static void put_escaped(struct output *output, const char *text)
{
    static const char marks[] = "\\`*_[]<>|&~";
    while (*text != '\0') {
        size_t length = letters_plain(text);
        size_t plain = strcspn(text, marks);
        if (length == 0) {
            output_add(output, letters_control(text, &length));
        } else if (plain > 0) {
            length = plain < length ? plain : length;
            output_add_bytes(output, text, length);
        } else {
            length = 1;
            output_add(output, "\\");
            output_add_bytes(output, text, length);
        }
        text += length;
    }
}

/* A mark that would start a heading, a list or a quotation only does so first in a line. */
static void put_line(struct page *page, const char *text)
{
    size_t digits = strspn(text, "0123456789");
    if (digits > 0 && (text[digits] == '.' || text[digits] == ')')) {
        output_add_bytes(&page->output, text, digits);
        output_add(&page->output, "\\");
        text += digits;
    } else if (*text == '#' || *text == '+' || *text == '-' || *text == '=') {
        output_add(&page->output, "\\");
    }
    put_escaped(&page->output, text);
}

static void leave_line(struct page *page)
{
    if (page->begun) {
        output_add(&page->output, "\n");
    }
    page->begun = true;
}

static void heading(struct page *page, int level, const char *text)
{
    leave_line(page);
    output_add_repeated(&page->output, "#", (size_t)level);
    output_add(&page->output, " ");
    put_escaped(&page->output, text);
    output_add(&page->output, "\n");
}

static void start(struct page *page, const char *title)
{
    heading(page, 1, title);
}

static void open(struct page *page, enum page_part part)
{
    if (!page->listing || part == PAGE_PARAGRAPH) {
        leave_line(page);
    }
    if (part == PAGE_WORKING && !page->listing) {
        output_add(&page->output, "```text\n");
    }
    output_add(&page->output, part == PAGE_ITEM ? "- " : "");
    page->column = 0;
}

/* The longest row of backticks in a text. */
static size_t longest_fence(const char *text)
{
    size_t longest = 0;
    while (*text != '\0') {
        size_t row = strspn(text, "`");
        longest = row > longest ? row : longest;
        text += row + strcspn(text + row, "`");
    }
    return longest;
}

/* Code between more backticks than stand in it in a row, and apart from those that it ends with. */
static void put_code(struct output *output, const char *text)
{
    size_t fence = longest_fence(text) + 1;
    const char *apart = fence > 1 ? " " : "";
    output_add_repeated(output, "`", fence);
    output_add(output, apart);
    put_plain(output, text);
    output_add(output, apart);
    output_add_repeated(output, "`", fence);
}

static void put_style(struct page *page, enum page_style style, const char *text)
{
    static const char *const around[PAGE_STYLE_COUNT] = {
        [PAGE_STRONG] = "**", [PAGE_EMPHASIS] = "*", [PAGE_MEETS] = "**", [PAGE_FAILS] = "**",
        [PAGE_OPEN] = "**"};
    if (style == PAGE_CODE) {
        put_code(&page->output, text);
    } else if (style == PAGE_BLANK) {
        output_add_repeated(&page->output, "\\_", letters_width(text, strlen(text)));
    } else if (around[style] != NULL) {
        output_add(&page->output, around[style]);
        put_escaped(&page->output, text);
        output_add(&page->output, around[style]);
    } else {
        put_escaped(&page->output, text);
    }
}

/* Lines of a calculation are a block of code, where nothing is markup. */
static void run(struct page *page, enum page_style style, const char *text)
{
    if (page->part == PAGE_WORKING) {
        put_plain(&page->output, text);
    } else if (style == PAGE_PLAIN && page->column == 0) {
        put_line(page, text);
    } else {
        put_style(page, style, text);
    }
    page->column += text[0] != '\0';
}

static void close(struct page *page, enum page_part part)
{
    (void)part;
    output_add(&page->output, "\n");
}

static void finish(struct page *page, enum page_part part)
{
    if (part == PAGE_WORKING) {
        output_add(&page->output, "```\n");
    }
}

static void put_row(struct page *page, const struct page_table *table, size_t row)
{
    output_add(&page->output, "|");
    for (size_t column = 0; column < table->columns; column++) {
        enum page_style style = PAGE_PLAIN;
        const char *text = table->cell(table->context, row, column, &style);
        output_add(&page->output, " ");
        if (text[0] != '\0') {
            put_style(page, style, text);
        }
        output_add(&page->output, " |");
    }
    output_add(&page->output, "\n");
}

static void put_table(struct page *page, const struct page_table *table)
{
    leave_line(page);
    output_add(&page->output, "|");
    for (size_t column = 0; column < table->columns; column++) {
        output_add(&page->output, " ");
        put_escaped(&page->output, table->heads[column]);
        output_add(&page->output, " |");
    }
    output_add(&page->output, "\n|");
    output_add_repeated(&page->output, " --- |", table->columns);
    output_add(&page->output, "\n");
    for (size_t row = 0; row < table->rows; row++) {
        put_row(page, table, row);
    }
}

static void turn(struct page *page)
{
    leave_line(page);
    output_add(&page->output, "***\n");
}

static void end(struct page *page)
{
    (void)page;
}

const struct page_manner markdown_manner = {.start = start, .heading = heading, .open = open,
                                            .run = run, .close = close, .finish = finish,
                                            .table = put_table, .turn = turn, .end = end};
