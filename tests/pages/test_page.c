/* SPDX-License-Identifier: MIT */
/*
 * Pages from their parts: what each format makes of them. What is due is written here by hand, from
 * CommonMark 0.30 and its tables, from XML 1.0, and from what a terminal of a width can show.
 */
#include "pages/letters.h"
#include "pages/page.h"

#include <ingle/ingle.h>

#include <locale.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <wchar.h>

#include <cmocka.h>

/* ---- a page, written down ------------------------------------------------------------------- */

static char written[1 << 16];
static size_t length;

static int32_t keep(void *context, const char *text, size_t bytes)
{
    (void)context;
    assert_true(bytes > 0 && length + bytes < sizeof written);
    memcpy(written + length, text, bytes);
    length += bytes;
    written[length] = '\0';
    return 0;
}

static struct page page;

static void start_page(ingle_page_format format, int32_t width)
{
    ingle_page how = {.size = sizeof how, .format = format, .width = width};
    length = 0;
    written[0] = '\0';
    assert_int_equal(page_start(&page, NULL, &how, keep, NULL, "Title"), INGLE_OK);
}

static void expect(const char *due)
{
    assert_int_equal(page_end(&page), INGLE_OK);
    assert_string_equal(written, due);
}

/* Of HTML, what stands below the title; the frame is the same for all. */
static void expect_body(const char *due)
{
    static const char before[] = "<h1>Title</h1>\n", after[] = "</main>\n</body>\n</html>\n";
    assert_int_equal(page_end(&page), INGLE_OK);
    char *body = strstr(written, before);
    assert_non_null(body);
    body += sizeof before - 1;
    char *end = strstr(body, after);
    assert_non_null(end);
    *end = '\0';
    assert_string_equal(body, due);
}

static void put_example(void)
{
    page_heading(&page, 2, "Hearth");
    page_open(&page, PAGE_PARAGRAPH);
    page_run(&page, PAGE_FAILS, "fails");
    page_run(&page, PAGE_PLAIN, " by 1/16 in.");
    page_close(&page);
    page_fact(&page, "Measured", "20 in");
    page_fact(&page, "Required", "20 1/16 in");
    page_line(&page, PAGE_WORKING, "a × b");
    page_line(&page, PAGE_WORKING, "c < d");
    page_line(&page, PAGE_PARAGRAPH, "After.");
}

static void parts_in_text(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_TEXT, 40);
    put_example();
    expect("Title\n=====\n\nHearth\n------\n\nfails by 1/16 in.\n\n- Measured: 20 in\n"
           "- Required: 20 1/16 in\n\n    a × b\n    c < d\n\nAfter.\n");
}

static void parts_in_markdown(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_MARKDOWN, 0);
    put_example();
    expect("# Title\n\n## Hearth\n\n**fails** by 1/16 in.\n\n- **Measured**: 20 in\n"
           "- **Required**: 20 1/16 in\n\n```text\na × b\nc < d\n```\n\nAfter.\n");
}

static void parts_in_html(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_HTML, 0);
    put_example();
    expect_body("<h2>Hearth</h2>\n<p><span class=\"fails\">fails</span> by 1/16 in.</p>\n<ul>\n"
                "<li><strong>Measured</strong>: 20 in</li>\n"
                "<li><strong>Required</strong>: 20 1/16 in</li>\n</ul>\n"
                "<pre>a × b\nc &lt; d</pre>\n"
                "<p>After.</p>\n");
}

static void a_list_ends_with_the_page(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_HTML, 0);
    page_line(&page, PAGE_ITEM, "one");
    expect_body("<ul>\n<li>one</li>\n</ul>\n");
    start_page(INGLE_PAGE_MARKDOWN, 0);
    page_line(&page, PAGE_WORKING, "one");
    expect("# Title\n\n```text\none\n```\n");
}

static void a_new_sheet_of_paper(void **state)
{
    (void)state;
    static const char *const due[] = {"Title\n=====\n\none\n\n***\n\ntwo\n",
                                      "# Title\n\none\n\n***\n\ntwo\n"};
    for (ingle_page_format format = INGLE_PAGE_TEXT; format <= INGLE_PAGE_MARKDOWN; format++) {
        start_page(format, 40);
        page_line(&page, PAGE_PARAGRAPH, "one");
        page_turn(&page);
        page_line(&page, PAGE_PARAGRAPH, "two");
        expect(due[format]);
    }
}

/* ---- runs ----------------------------------------------------------------------------------- */

static void prose_has_code_between_backticks(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_MARKDOWN, 0);
    page_open(&page, PAGE_PARAGRAPH);
    page_prose(&page, "`small` for less than `threshold`.");
    page_close(&page);
    expect("# Title\n\n`small` for less than `threshold`.\n");
    start_page(INGLE_PAGE_HTML, 0);
    page_open(&page, PAGE_PARAGRAPH);
    page_prose(&page, "a `b<c` d");
    page_close(&page);
    expect_body("<p>a <code>b&lt;c</code> d</p>\n");
}

/* A run is parted where it is long, and never within a letter. */
static void long_prose_is_whole(void **state)
{
    (void)state;
    char prose[2048] = "", due[2200] = "<p>";
    for (int i = 0; i < 400; i++) {
        strcat(prose, i % 7 == 6 ? "x" : "½");
    }
    start_page(INGLE_PAGE_HTML, 0);
    page_open(&page, PAGE_PARAGRAPH);
    page_prose(&page, prose);
    page_close(&page);
    expect_body(strcat(strcat(due, prose), "</p>\n"));
}

static void lines_to_write_on(void **state)
{
    (void)state;
    static const char *const due[] = {"Title\n=====\n\nwidth: ___.\n",
                                      "# Title\n\nwidth: \\_\\_\\_.\n"};
    for (ingle_page_format format = INGLE_PAGE_TEXT; format <= INGLE_PAGE_HTML; format++) {
        start_page(format, 40);
        page_open(&page, PAGE_PARAGRAPH);
        page_run(&page, PAGE_PLAIN, "width: ");
        page_run(&page, PAGE_BLANK, "½½½"); /* as wide as three letters, whatever their bytes */
        page_run(&page, PAGE_PLAIN, ".");
        page_close(&page);
        if (format == INGLE_PAGE_HTML) {
            expect_body("<p>width: <span class=\"blank\" style=\"width:03ch\">&#160;</span>."
                        "</p>\n");
        } else {
            expect(due[format]);
        }
    }
}

static void colours_stand_beside_words(void **state)
{
    (void)state;
    ingle_page how = {.size = sizeof how, .width = 20, .colour = 1};
    length = 0;
    assert_int_equal(page_start(&page, NULL, &how, keep, NULL, "T"), INGLE_OK);
    page_open(&page, PAGE_PARAGRAPH);
    page_run(&page, PAGE_FAILS, "fails");
    page_run(&page, PAGE_PLAIN, " by far: 10 in 20"); /* 22 columns without the colours */
    page_close(&page);
    expect("T\n=\n\n\x1b[1;31mfails\x1b[0m by far: 10 in\n20\n");
}

static void verdicts_have_their_styles(void **state)
{
    (void)state;
    assert_int_equal(page_verdict_style(INGLE_FAILS), PAGE_FAILS);
    assert_int_equal(page_verdict_style(INGLE_MEETS), PAGE_MEETS);
    assert_int_equal(page_verdict_style(INGLE_NOT_APPLICABLE), PAGE_PLAIN);
    assert_int_equal(page_verdict_style(INGLE_UNMEASURED), PAGE_OPEN);
    assert_int_equal(page_verdict_style(INGLE_TOO_CLOSE), PAGE_OPEN);
    assert_int_equal(page_verdict_style(INGLE_BY_LISTING), PAGE_OPEN);
}

/* ---- widths --------------------------------------------------------------------------------- */

static void expect_line(int32_t width, enum page_part part, const char *text, const char *due)
{
    char whole[4096] = "Title\n=====\n\n";
    start_page(INGLE_PAGE_TEXT, width);
    page_line(&page, part, text);
    expect(strcat(whole, due));
}

static void lines_break_between_words(void **state)
{
    (void)state;
    expect_line(20, PAGE_PARAGRAPH, "12345 7890 2345 7890 next", "12345 7890 2345 7890\nnext\n");
    expect_line(20, PAGE_PARAGRAPH, "12345 7890 2345 78901 n", "12345 7890 2345\n78901 n\n");
    expect_line(20, PAGE_ITEM, "4567 9012 4567 9 1234", "- 4567 9012 4567 9\n  1234\n");
    expect_line(20, PAGE_WORKING, "567 9012 456 890 2", "    567 9012 456 890\n    2\n");
    expect_line(20, PAGE_PARAGRAPH, "  many   spaces\tand\nlines ", "many spaces and\nlines\n");
    expect_line(20, PAGE_PARAGRAPH, "", "\n");
}

/* A run without a space before it is one word with the run before. */
static void runs_are_not_parted(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_TEXT, 20);
    page_open(&page, PAGE_PARAGRAPH);
    page_run(&page, PAGE_PLAIN, "1234567 901234 67");
    page_run(&page, PAGE_CODE, "89");
    page_run(&page, PAGE_PLAIN, "12.");
    page_close(&page);
    expect("Title\n=====\n\n1234567 901234\n678912.\n");
}

/* A word longer than any is whole, keeps its space before, and none comes behind. */
static void endless_words_are_whole(void **state)
{
    (void)state;
    char text[1400], due[1400];
    memset(text, 0, sizeof text);
    strcpy(text, "one ");
    for (int i = 0; i < 300; i++) {
        strcat(text, "ü");
    }
    strcpy(due, "Title\n=====\n\none\n");
    strcat(strcat(due, text + 4), ", two\n");
    start_page(INGLE_PAGE_TEXT, 40);
    page_open(&page, PAGE_PARAGRAPH);
    page_run(&page, PAGE_PLAIN, text);
    page_run(&page, PAGE_PLAIN, ", two");
    page_close(&page);
    assert_int_equal(page_end(&page), INGLE_OK);
    /* Beyond the width the next word begins a line. */
    char *two = strstr(due, ", two");
    memcpy(two, ",\ntwo", 5);
    assert_string_equal(written, due);
}

static void wide_letters_take_two_columns(void **state)
{
    (void)state;
    expect_line(20, PAGE_PARAGRAPH, "暖炉暖炉暖炉暖炉暖 炉", "暖炉暖炉暖炉暖炉暖\n炉\n"); /* 18 + 1 + 2 */
    expect_line(20, PAGE_PARAGRAPH, "123456789 123456789́ 1", "123456789 123456789́\n1\n");
    expect_line(20, PAGE_PARAGRAPH, "123456789 éé 123456́ 1", "123456789 éé 123456́\n1\n");
}

/* The C library's own table of Unicode is the outside reference. */
static void widths_are_those_of_the_system(void **state)
{
    (void)state;
    static const char *const letters[] = {
        "a", "ü", "½", "″", "×", "≈", "é", "ß", "Ω", "Ж", "א", "あ", "ア", "漢", "暖", "炉", "한",
        "국", "，", "！", "、", "￥", "🔥", "🏠", "𠀀", "\u0301", "\u0308", "\u20D7", "ｱ", "─"};
    assert_non_null(setlocale(LC_CTYPE, "C.UTF-8"));
    for (size_t i = 0; i < sizeof letters / sizeof letters[0]; i++) {
        wchar_t letter[2] = {0};
        assert_int_equal(mbstowcs(letter, letters[i], 1), 1);
        int due = wcwidth(letter[0]);
        assert_true(due >= 0);
        if (letters_width(letters[i], strlen(letters[i])) != (size_t)due) {
            fail_msg("%s is not %d wide", letters[i], due);
        }
    }
    setlocale(LC_CTYPE, "C");
}

/* ---- escapes -------------------------------------------------------------------------------- */

static void expect_markdown(const char *text, const char *due)
{
    char whole[512] = "# Title\n\n";
    start_page(INGLE_PAGE_MARKDOWN, 0);
    page_line(&page, PAGE_PARAGRAPH, text);
    expect(strcat(strcat(whole, due), "\n"));
}

static void markup_is_escaped_in_markdown(void **state)
{
    (void)state;
    expect_markdown("a*b_c`d[e]<f>&g|h~i\\j", "a\\*b\\_c\\`d\\[e\\]\\<f\\>\\&g\\|h\\~i\\\\j");
    expect_markdown("# no heading", "\\# no heading");
    expect_markdown("- no item", "\\- no item");
    expect_markdown("+ no item", "\\+ no item");
    expect_markdown("12. no item", "12\\. no item");
    expect_markdown("12) no item", "12\\) no item");
    expect_markdown("12 in", "12 in");
    expect_markdown("> no quotation", "\\> no quotation");
    expect_markdown("=== no heading above", "\\=== no heading above");
    expect_markdown("a - b # c 1. d", "a - b # c 1. d");
    expect_markdown("a\n# b\r\n\x1b[31m", "a # b  \xEF\xBF\xBD\\[31m");
}

/* What a line begins with is what has letters first. */
static void an_empty_run_begins_no_line(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_MARKDOWN, 0);
    page_open(&page, PAGE_PARAGRAPH);
    page_run(&page, PAGE_PLAIN, "");
    page_run(&page, PAGE_PLAIN, "# no heading");
    page_close(&page);
    expect("# Title\n\n\\# no heading\n");
}

static void code_holds_backticks_in_markdown(void **state)
{
    (void)state;
    static const struct {
        const char *text, *due;
    } codes[] = {{"id", "`id`"}, {"a`b", "`` a`b ``"}, {"``", "``` `` ```"}, {"*_<", "`*_<`"}};
    for (size_t i = 0; i < sizeof codes / sizeof codes[0]; i++) {
        char whole[64] = "# Title\n\n";
        start_page(INGLE_PAGE_MARKDOWN, 0);
        page_open(&page, PAGE_PARAGRAPH);
        page_run(&page, PAGE_CODE, codes[i].text);
        page_close(&page);
        expect(strcat(strcat(whole, codes[i].due), "\n"));
    }
}

static void markup_is_escaped_in_html(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_HTML, 0);
    page_line(&page, PAGE_PARAGRAPH, "a<b> & \"c\" 'd' \x01\x1b");
    page_heading(&page, 3, "</h3><script>");
    expect_body("<p>a&lt;b&gt; &amp; &quot;c&quot; &#39;d&#39; \xEF\xBF\xBD\xEF\xBF\xBD</p>\n"
                "<h3>&lt;/h3&gt;&lt;script&gt;</h3>\n");
}

/* No text steers a terminal, in C0, DEL or C1; ESC [ would, and so would U+009B. */
static void controls_are_shown_in_text(void **state)
{
    (void)state;
    expect_line(40, PAGE_PARAGRAPH, "a\x1b[31mb \x7F \xC2\x9B""1m c\r\nd",
                "a\xEF\xBF\xBD[31mb \xEF\xBF\xBD \xEF\xBF\xBD""1m c d\n");
    expect_line(40, PAGE_PARAGRAPH, "\xC2\xA0\xC2\xBD", "\xC2\xA0\xC2\xBD\n");
}

static void the_title_is_escaped(void **state)
{
    (void)state;
    ingle_page how = {.size = sizeof how, .format = INGLE_PAGE_MARKDOWN, .title = "*a*\n# b"};
    length = 0;
    assert_int_equal(page_start(&page, NULL, &how, keep, NULL, "Title"), INGLE_OK);
    expect("# \\*a\\* # b\n");
    how.format = INGLE_PAGE_HTML;
    how.title = "</title><b>";
    length = 0;
    assert_int_equal(page_start(&page, NULL, &how, keep, NULL, "Title"), INGLE_OK);
    assert_int_equal(page_end(&page), INGLE_OK);
    assert_null(strstr(written, "<b>"));
    assert_non_null(strstr(written, "<title>&lt;/title&gt;&lt;b&gt;</title>"));
}

/* ---- tables --------------------------------------------------------------------------------- */

static const char *const heads[] = {"what", "verdict"};
static const char *const cells[][2] = {{"hearth|1", "fails"}, {"", "meets"}, {"暖炉", ""}};

static const char *cell(void *context, size_t row, size_t column, enum page_style *style)
{
    assert_ptr_equal(context, cells);
    assert_true(row < 3 && column < 2);
    *style = column == 1 ? PAGE_FAILS : PAGE_PLAIN;
    return cells[row][column];
}

static void put_table_of(size_t rows)
{
    struct page_table table = {2, rows, heads, cell, (void *)(uintptr_t)cells};
    page_table(&page, &table);
}

static void tables_in_text(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_TEXT, 40);
    put_table_of(3);
    expect("Title\n=====\n\nwhat      verdict\n--------  -------\nhearth|1  fails\n"
           "          meets\n暖炉      \n");
}

/* Too wide for the page: each row by itself, without its empty cells. */
static void wide_tables_are_records(void **state)
{
    (void)state;
    static const char *const long_heads[] = {"what is judged", "verdict"};
    struct page_table table = {2, 3, long_heads, cell, (void *)(uintptr_t)cells};
    start_page(INGLE_PAGE_TEXT, 20);
    page_table(&page, &table);
    expect("Title\n=====\n\nwhat is judged:\n    hearth|1\n  verdict: fails\n  verdict: meets\n"
           "what is judged: 暖炉\n");
}

static void tables_in_markdown(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_MARKDOWN, 0);
    put_table_of(3);
    expect("# Title\n\n| what | verdict |\n| --- | --- |\n| hearth\\|1 | **fails** |\n"
           "|  | **meets** |\n| 暖炉 |  |\n");
}

static void tables_in_html(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_HTML, 0);
    put_table_of(1);
    expect_body("<div class=\"table\"><table>\n"
                "<thead><tr><th>what</th><th>verdict</th></tr></thead>\n"
                "<tbody>\n<tr><td>hearth|1</td><td><span class=\"fails\">fails</span></td></tr>\n"
                "</tbody>\n</table></div>\n");
}

static void tables_without_rows(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_TEXT, 40);
    put_table_of(0);
    expect("Title\n=====\n\nwhat  verdict\n----  -------\n");
    start_page(INGLE_PAGE_MARKDOWN, 0);
    put_table_of(0);
    expect("# Title\n\n| what | verdict |\n| --- | --- |\n");
    start_page(INGLE_PAGE_HTML, 0);
    put_table_of(0);
    expect_body("<div class=\"table\"><table>\n"
                "<thead><tr><th>what</th><th>verdict</th></tr></thead>\n"
                "<tbody>\n</tbody>\n</table></div>\n");
}

static void a_table_ends_the_list_above(void **state)
{
    (void)state;
    start_page(INGLE_PAGE_HTML, 0);
    page_line(&page, PAGE_ITEM, "one");
    put_table_of(0);
    assert_int_equal(page_end(&page), INGLE_OK);
    assert_non_null(strstr(written, "<li>one</li>\n</ul>\n<div class=\"table\">"));
}

/* ---- texts from their sources --------------------------------------------------------------- */

/* A text of so many letters, in the manner of ingle_finding_text(). */
static ingle_status letters_source(const void *object, int32_t part, const ingle_format *format,
                                   char *buffer, size_t capacity, size_t *bytes)
{
    size_t wanted = *(const size_t *)object;
    size_t given = wanted < capacity ? wanted : capacity - 1;
    assert_null(format);
    memset(buffer, 'a' + part, given);
    buffer[given] = '\0';
    *bytes = wanted;
    return given < wanted ? INGLE_CUT : INGLE_OK;
}

static ingle_status refusing_source(const void *object, int32_t part, const ingle_format *format,
                                    char *buffer, size_t capacity, size_t *bytes)
{
    (void)object, (void)part, (void)format, (void)buffer, (void)capacity, (void)bytes;
    return INGLE_ERROR_ARGUMENT;
}

static void texts_are_whole(void **state)
{
    (void)state;
    static const size_t lengths[] = {0, 1, 510, 511, 512, 513, 5000, 3};
    start_page(INGLE_PAGE_TEXT, 0);
    for (size_t i = 0; i < sizeof lengths / sizeof lengths[0]; i++) {
        const char *text = page_text_of(&page, letters_source, &lengths[i], (int32_t)i, NULL);
        assert_int_equal(strlen(text), lengths[i]);
        assert_int_equal(strspn(text, (const char[]){(char)('a' + (int)i), '\0'}), lengths[i]);
    }
    assert_string_equal(page_text_of(&page, refusing_source, NULL, 0, NULL), "");
    assert_int_equal(page_end(&page), INGLE_OK);
}

static void a_finding_gives_its_texts(void **state)
{
    (void)state;
    ingle_survey *survey;
    ingle_report *report;
    const ingle_standard *standard = ingle_standard_find("irc-2021");
    ingle_format inches = {.size = sizeof inches, .unit = ingle_unit_find("in")};
    assert_int_equal(ingle_survey_new(NULL, &survey), INGLE_OK);
    assert_int_equal(ingle_report_new(NULL, &report), INGLE_OK);
    ingle_survey_record(survey, "appliance.kind", "masonry-fireplace", NULL);
    ingle_survey_record(survey, "firebox.depth", "19 in", NULL);
    assert_int_equal(ingle_check(survey, &standard, 1, NULL, report), INGLE_OK);
    const ingle_finding *finding = NULL;
    for (size_t i = 0; (finding = ingle_report_finding_at(report, i)) != NULL &&
                       ingle_finding_verdict(finding) != INGLE_FAILS; i++) {
    }
    assert_non_null(finding);
    start_page(INGLE_PAGE_TEXT, 0);
    char due[1024];
    for (ingle_finding_part part = INGLE_FINDING_SUBJECT; part <= INGLE_FINDING_CAUTION; part++) {
        assert_int_equal(ingle_finding_text(finding, part, &inches, due, sizeof due, NULL),
                         INGLE_OK);
        assert_string_equal(page_finding_text(&page, finding, part, &inches), due);
    }
    assert_int_equal(page_end(&page), INGLE_OK);
    ingle_report_free(report);
    ingle_survey_free(survey);
}

/* ---- what can go wrong ---------------------------------------------------------------------- */

static size_t pieces, pieces_taken;

static int32_t keep_some(void *context, const char *text, size_t bytes)
{
    pieces++;
    return pieces > pieces_taken ? 1 : keep(context, text, bytes);
}

/* A writer that refuses is not asked again. */
static void a_page_that_cannot_be_written(void **state)
{
    (void)state;
    for (pieces_taken = 0; pieces_taken < 3; pieces_taken++) {
        pieces = length = 0;
        assert_int_equal(page_start(&page, NULL, NULL, keep_some, NULL, "Title"), INGLE_OK);
        for (int i = 0; i < 1000; i++) {
            page_line(&page, PAGE_PARAGRAPH, "A line of a page that is long enough by far.");
        }
        assert_int_equal(page_end(&page), INGLE_ERROR_IO);
        assert_int_equal(pieces, pieces_taken + 1);
    }
}

static void options_that_are_refused(void **state)
{
    (void)state;
    static const struct {
        ingle_page how;
        ingle_status due;
    } pages[] = {
        {{.size = sizeof(ingle_page), .format = -1}, INGLE_ERROR_ARGUMENT},
        {{.size = sizeof(ingle_page), .format = 3}, INGLE_ERROR_ARGUMENT},
        {{.size = sizeof(ingle_page), .width = 19}, INGLE_ERROR_ARGUMENT},
        {{.size = sizeof(ingle_page), .width = 1001}, INGLE_ERROR_ARGUMENT},
        {{.size = sizeof(ingle_page), .width = -1}, INGLE_ERROR_ARGUMENT},
        {{.size = sizeof(ingle_page), .colour = 2}, INGLE_ERROR_ARGUMENT},
        {{.size = sizeof(ingle_page), .reserved = 1}, INGLE_ERROR_STRUCT_NEWER},
        {{.size = sizeof(ingle_page) - 1}, INGLE_ERROR_STRUCT_SIZE},
        {{.size = sizeof(ingle_page), .width = 20}, INGLE_OK},
        {{.size = sizeof(ingle_page), .width = 1000}, INGLE_OK},
    };
    for (size_t i = 0; i < sizeof pages / sizeof pages[0]; i++) {
        length = 0;
        assert_int_equal(page_start(&page, NULL, &pages[i].how, keep, NULL, "T"), pages[i].due);
        if (pages[i].due == INGLE_OK) {
            assert_int_equal(page_end(&page), INGLE_OK);
        }
    }
    assert_int_equal(page_start(&page, NULL, NULL, NULL, NULL, "T"), INGLE_ERROR_ARGUMENT);
}

static void formats_have_names(void **state)
{
    (void)state;
    assert_int_equal(ingle_page_format_count(), 3);
    for (ingle_page_format i = 0; i < 3; i++) {
        assert_int_equal(ingle_page_format_find(ingle_page_format_name(i)), i);
    }
    assert_null(ingle_page_format_name(-1));
    assert_null(ingle_page_format_name(3));
    assert_int_equal(ingle_page_format_find("pdf"), -1);
    assert_int_equal(ingle_page_format_find(NULL), -1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(parts_in_text),
        cmocka_unit_test(parts_in_markdown),
        cmocka_unit_test(parts_in_html),
        cmocka_unit_test(a_list_ends_with_the_page),
        cmocka_unit_test(a_new_sheet_of_paper),
        cmocka_unit_test(prose_has_code_between_backticks),
        cmocka_unit_test(long_prose_is_whole),
        cmocka_unit_test(lines_to_write_on),
        cmocka_unit_test(colours_stand_beside_words),
        cmocka_unit_test(verdicts_have_their_styles),
        cmocka_unit_test(lines_break_between_words),
        cmocka_unit_test(runs_are_not_parted),
        cmocka_unit_test(endless_words_are_whole),
        cmocka_unit_test(wide_letters_take_two_columns),
        cmocka_unit_test(widths_are_those_of_the_system),
        cmocka_unit_test(markup_is_escaped_in_markdown),
        cmocka_unit_test(an_empty_run_begins_no_line),
        cmocka_unit_test(code_holds_backticks_in_markdown),
        cmocka_unit_test(markup_is_escaped_in_html),
        cmocka_unit_test(controls_are_shown_in_text),
        cmocka_unit_test(the_title_is_escaped),
        cmocka_unit_test(tables_in_text),
        cmocka_unit_test(wide_tables_are_records),
        cmocka_unit_test(tables_in_markdown),
        cmocka_unit_test(tables_in_html),
        cmocka_unit_test(tables_without_rows),
        cmocka_unit_test(a_table_ends_the_list_above),
        cmocka_unit_test(texts_are_whole),
        cmocka_unit_test(a_finding_gives_its_texts),
        cmocka_unit_test(a_page_that_cannot_be_written),
        cmocka_unit_test(options_that_are_refused),
        cmocka_unit_test(formats_have_names),
    };
    return cmocka_run_group_tests_name("page", tests, NULL, NULL);
}
