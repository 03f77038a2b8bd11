/* SPDX-License-Identifier: MIT */
#include "pages/page.h"

#include "base/memory.h"

#include <string.h>

/* ---- formats -------------------------------------------------------------------------------- */

static const struct {
    const char *name;
    const struct page_manner *manner;
} formats[] = {
    [INGLE_PAGE_TEXT] = {"text", &text_manner},
    [INGLE_PAGE_MARKDOWN] = {"markdown", &markdown_manner},
    [INGLE_PAGE_HTML] = {"html", &html_manner},
};

enum { FORMAT_COUNT = sizeof formats / sizeof formats[0] };

size_t ingle_page_format_count(void)
{
    return FORMAT_COUNT;
}

const char *ingle_page_format_name(ingle_page_format format)
{
    return format >= 0 && format < FORMAT_COUNT ? formats[format].name : NULL;
}

ingle_page_format ingle_page_format_find(const char *name)
{
    for (int32_t i = 0; name != NULL && i < FORMAT_COUNT; i++) {
        if (strcmp(name, formats[i].name) == 0) {
            return i;
        }
    }
    return -1;
}

/* ---- the page ------------------------------------------------------------------------------- */

enum { WIDTH_LEAST = 20, WIDTH_USUAL = 79, WIDTH_MOST = 1000 };

static ingle_status take_options(ingle_page *taken, const ingle_page *given)
{
    ingle_status status = options_take(taken, sizeof *taken, given);
    if (status != INGLE_OK) {
        return status;
    }
    if (taken->reserved != 0) {
        return INGLE_ERROR_STRUCT_NEWER;
    }
    if (taken->width == 0) {
        taken->width = WIDTH_USUAL;
    }
    bool plain = taken->colour == 0 || taken->colour == 1;
    return taken->format >= 0 && taken->format < FORMAT_COUNT && taken->width >= WIDTH_LEAST &&
                   taken->width <= WIDTH_MOST && plain
               ? INGLE_OK
               : INGLE_ERROR_ARGUMENT;
}

ingle_status page_start(struct page *page, const ingle_allocator *allocator,
                        const ingle_page *options, ingle_write write, void *context,
                        const char *title)
{
    memset(page, 0, sizeof *page);
    ingle_status status = output_start(&page->output, write, context);
    if (status == INGLE_OK) {
        status = allocator_take(&page->allocator, allocator);
    }
    if (status == INGLE_OK) {
        status = take_options(&page->how, options);
    }
    if (status != INGLE_OK) {
        return status;
    }
    page->manner = formats[page->how.format].manner;
    page->manner->start(page, page->how.title != NULL ? page->how.title : title);
    return INGLE_OK;
}

/* Ends the list or block that the last part was of. */
static void finish_listing(struct page *page)
{
    if (page->listing) {
        page->manner->finish(page, page->part);
        page->listing = false;
    }
}

ingle_status page_end(struct page *page)
{
    finish_listing(page);
    page->manner->end(page);
    allocator_free(&page->allocator, page->text);
    page->text = NULL;
    return output_end(&page->output);
}

void page_heading(struct page *page, int level, const char *text)
{
    finish_listing(page);
    page->manner->heading(page, level, text);
}

void page_open(struct page *page, enum page_part part)
{
    if (page->listing && page->part != part) {
        finish_listing(page);
    }
    page->part = part;
    page->manner->open(page, part);
    page->opened = true;
    page->listing = true;
}

void page_run(struct page *page, enum page_style style, const char *text)
{
    page->manner->run(page, style, text);
}

void page_close(struct page *page)
{
    page->manner->close(page, page->part);
    page->opened = false;
}

/* Runs of at most so many bytes: a longer one is parted, which no format shows. */
enum { RUN_SIZE = 256 };

/* Where a run of at most so many bytes may end: never within a letter. */
static size_t run_length(const char *text)
{
    size_t length = strcspn(text, "`");
    if (length < RUN_SIZE) {
        return length;
    }
    length = RUN_SIZE - 1;
    while (length > 0 && ((unsigned char)text[length] & 0xC0) == 0x80) {
        length--;
    }
    return length;
}

void page_prose(struct page *page, const char *text)
{
    char run[RUN_SIZE];
    enum page_style style = PAGE_PLAIN;
    while (*text != '\0') {
        size_t length = run_length(text);
        memcpy(run, text, length);
        run[length] = '\0';
        if (length > 0) {
            page_run(page, style, run);
        }
        text += length;
        if (*text == '`') {
            style = style == PAGE_PLAIN ? PAGE_CODE : PAGE_PLAIN;
            text++;
        }
    }
}

void page_line(struct page *page, enum page_part part, const char *text)
{
    page_open(page, part);
    page_run(page, PAGE_PLAIN, text);
    page_close(page);
}

void page_fact(struct page *page, const char *name, const char *text)
{
    page_open(page, PAGE_ITEM);
    page_run(page, PAGE_STRONG, name);
    page_run(page, PAGE_PLAIN, ": ");
    page_run(page, PAGE_PLAIN, text);
    page_close(page);
}

void page_table(struct page *page, const struct page_table *table)
{
    finish_listing(page);
    page->manner->table(page, table);
}

ingle_format page_format(const struct page *page, const ingle_unit *otherwise)
{
    const ingle_unit *unit = page->how.unit;
    return (ingle_format){.size = sizeof(ingle_format),
                          .unit = unit != NULL ? unit : otherwise,
                          .raised = 1};
}

void page_turn(struct page *page)
{
    finish_listing(page);
    page->manner->turn(page);
}

enum page_style page_verdict_style(ingle_verdict verdict)
{
    return verdict == INGLE_FAILS               ? PAGE_FAILS
           : verdict == INGLE_MEETS             ? PAGE_MEETS
           : verdict == INGLE_NOT_APPLICABLE    ? PAGE_PLAIN
                                                : PAGE_OPEN;
}

/* ---- texts from their sources --------------------------------------------------------------- */

static bool reserve_text(struct page *page, size_t capacity)
{
    if (capacity <= page->text_capacity) {
        return true;
    }
    char *grown = allocator_new(&page->allocator, capacity);
    if (grown == NULL) {
        output_fail(&page->output, INGLE_ERROR_MEMORY);
        return false;
    }
    allocator_free(&page->allocator, page->text);
    page->text = grown;
    page->text_capacity = capacity;
    return true;
}

const char *page_text_of(struct page *page, page_source source, const void *object, int32_t part,
                         const ingle_format *format)
{
    enum { USUAL = 512 };
    size_t length = 0;
    if (!reserve_text(page, USUAL)) {
        return "";
    }
    page->text[0] = '\0';
    ingle_status status =
        source(object, part, format, page->text, page->text_capacity, &length);
    if (status == INGLE_CUT && reserve_text(page, length + 1)) {
        source(object, part, format, page->text, page->text_capacity, &length);
    }
    return page->text;
}

static ingle_status finding_text(const void *finding, int32_t part, const ingle_format *format,
                                 char *buffer, size_t capacity, size_t *length)
{
    return ingle_finding_text(finding, part, format, buffer, capacity, length);
}

const char *page_finding_text(struct page *page, const ingle_finding *finding,
                              ingle_finding_part part, const ingle_format *format)
{
    return page_text_of(page, finding_text, finding, part, format);
}
