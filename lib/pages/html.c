/* SPDX-License-Identifier: MIT */
/*
 * Pages as a document of HTML that stands alone, reads on a telephone and prints on paper.
 */
#include "pages/letters.h"
#include "pages/page.h"

#include <string.h>

/* Dark enough on white for small print; on paper the words carry what the colours said. */
static const char style_sheet[] =
    "body{margin:0;background:#fff;color:#1a1a1a;font:16px/1.5 Georgia,'Times New Roman',serif}"
    "main{max-width:44rem;margin:0 auto;padding:1.5rem 1rem}"
    "h1,h2,h3,h4,th{font-family:system-ui,sans-serif;line-height:1.25}"
    "h1{font-size:1.6rem}h2{font-size:1.3rem;margin-top:2rem;border-bottom:1px solid #767676}"
    "h3{font-size:1.05rem;margin-top:1.6rem}h4{font-size:1rem}"
    "pre,code{font-family:ui-monospace,Consolas,monospace;font-size:.85em}"
    "pre{white-space:pre-wrap;overflow-wrap:anywhere;background:#f3f3f0;padding:.6rem .8rem;"
    "border-left:3px solid #767676}"
    "code{overflow-wrap:anywhere}"
    ".table{overflow-x:auto}table{border-collapse:collapse;font-size:.9em}"
    "th,td{border:1px solid #767676;padding:.25rem .5rem;text-align:left;vertical-align:top}"
    "svg{max-width:100%;height:auto}"
    ".meets,.fails,.open{font-weight:bold}.meets{color:#00563b}.fails{color:#a50021}"
    ".open{color:#5b4300}"
    ".blank{display:inline-block;border-bottom:1px solid #1a1a1a}"
    "@media print{@page{margin:18mm}body{font-size:10.5pt}main{max-width:none;padding:0}"
    "h2,h3,h4{break-after:avoid}li,pre,tr{break-inside:avoid}.turn{break-before:page;border:0}"
    ".table{overflow-x:visible}}";

static void put_element(struct page *page, const char *name, const char *text)
{
    output_add(&page->output, "<");
    output_add(&page->output, name);
    output_add(&page->output, ">");
    output_add_escaped(&page->output, text);
    output_add(&page->output, "</");
    output_add(&page->output, name);
    output_add(&page->output, ">");
}

static void start(struct page *page, const char *title)
{
    struct output *output = &page->output;
    output_add(output, "<!DOCTYPE html>\n"
                       "<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n"
                       "<head>\n<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" "
                       "content=\"width=device-width,initial-scale=1\"/>\n");
    put_element(page, "title", title);
    output_add(output, "\n<style>");
    output_add(output, style_sheet);
    output_add(output, "</style>\n</head>\n<body>\n<main>\n");
    put_element(page, "h1", title);
    output_add(output, "\n");
}

static void heading(struct page *page, int level, const char *text)
{
    const char name[] = {'h', (char)('0' + level), '\0'};
    put_element(page, name, text);
    output_add(&page->output, "\n");
}

static void open(struct page *page, enum page_part part)
{
    static const char *const first[PAGE_PART_COUNT] = {
        [PAGE_PARAGRAPH] = "<p>", [PAGE_ITEM] = "<ul>\n<li>", [PAGE_WORKING] = "<pre>"};
    static const char *const next[PAGE_PART_COUNT] = {
        [PAGE_PARAGRAPH] = "<p>", [PAGE_ITEM] = "<li>", [PAGE_WORKING] = "\n"};
    output_add(&page->output, page->listing ? next[part] : first[part]);
}

static void put_blank(struct page *page, const char *text)
{
    char width[8] = "";
    size_t letters = letters_width(text, strlen(text));
    letters = letters < 99 ? letters : 99;
    width[0] = (char)('0' + letters / 10);
    width[1] = (char)('0' + letters % 10);
    output_add(&page->output, "<span class=\"blank\" style=\"width:");
    output_add(&page->output, width);
    output_add(&page->output, "ch\">&#160;</span>");
}

static void run(struct page *page, enum page_style style, const char *text)
{
    static const char *const before[PAGE_STYLE_COUNT] = {
        [PAGE_PLAIN] = "", [PAGE_STRONG] = "<strong>", [PAGE_EMPHASIS] = "<em>",
        [PAGE_CODE] = "<code>", [PAGE_MEETS] = "<span class=\"meets\">",
        [PAGE_FAILS] = "<span class=\"fails\">", [PAGE_OPEN] = "<span class=\"open\">",
        [PAGE_BLANK] = ""};
    static const char *const after[PAGE_STYLE_COUNT] = {
        [PAGE_PLAIN] = "", [PAGE_STRONG] = "</strong>", [PAGE_EMPHASIS] = "</em>",
        [PAGE_CODE] = "</code>", [PAGE_MEETS] = "</span>", [PAGE_FAILS] = "</span>",
        [PAGE_OPEN] = "</span>", [PAGE_BLANK] = ""};
    if (style == PAGE_BLANK) {
        put_blank(page, text);
        return;
    }
    output_add(&page->output, before[style]);
    output_add_escaped(&page->output, text);
    output_add(&page->output, after[style]);
}

static void close(struct page *page, enum page_part part)
{
    output_add(&page->output, part == PAGE_PARAGRAPH ? "</p>\n" : part == PAGE_ITEM ? "</li>\n"
                                                                                    : "");
}

static void finish(struct page *page, enum page_part part)
{
    output_add(&page->output, part == PAGE_ITEM ? "</ul>\n" : part == PAGE_WORKING ? "</pre>\n"
                                                                                   : "");
}

static void put_row(struct page *page, const struct page_table *table, size_t row)
{
    output_add(&page->output, "<tr>");
    for (size_t column = 0; column < table->columns; column++) {
        enum page_style style = PAGE_PLAIN;
        const char *text = table->cell(table->context, row, column, &style);
        output_add(&page->output, "<td>");
        run(page, style, text);
        output_add(&page->output, "</td>");
    }
    output_add(&page->output, "</tr>\n");
}

static void put_table(struct page *page, const struct page_table *table)
{
    output_add(&page->output, "<div class=\"table\"><table>\n<thead><tr>");
    for (size_t column = 0; column < table->columns; column++) {
        put_element(page, "th", table->heads[column]);
    }
    output_add(&page->output, "</tr></thead>\n<tbody>\n");
    for (size_t row = 0; row < table->rows; row++) {
        put_row(page, table, row);
    }
    output_add(&page->output, "</tbody>\n</table></div>\n");
}

static void turn(struct page *page)
{
    output_add(&page->output, "<hr class=\"turn\"/>\n");
}

static void end(struct page *page)
{
    output_add(&page->output, "</main>\n</body>\n</html>\n");
}

const struct page_manner html_manner = {.start = start, .heading = heading, .open = open,
                                        .run = run, .close = close, .finish = finish,
                                        .table = put_table, .turn = turn, .end = end};
