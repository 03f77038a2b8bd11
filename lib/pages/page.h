/* SPDX-License-Identifier: MIT */
/*
 * A page of text, made of headings, paragraphs, lists, lines of a calculation and tables, and
 * written as what the caller asked for. Parts are written in order; only runs lie within others:
 *
 *     page_heading(page, 2, "Hearth");
 *     page_open(page, PAGE_PARAGRAPH);
 *     page_run(page, PAGE_FAILS, "fails");
 *     page_run(page, PAGE_PLAIN, " by 1/16 in.");
 *     page_close(page);
 */
#ifndef INGLE_PAGES_PAGE_H
#define INGLE_PAGES_PAGE_H

#include "pages/output.h"

#include <ingle/check.h>
#include <ingle/memory.h>

#include <stdbool.h>
#include <stddef.h>

/* What stands in lines of its own. */
enum page_part {
    PAGE_PARAGRAPH,
    PAGE_ITEM,      /* of a list; items that follow each other are one list */
    PAGE_WORKING,   /* a line of a calculation; lines that follow each other are one block */
    PAGE_PART_COUNT
};

/* How a run of text within a part looks. */
enum page_style {
    PAGE_PLAIN,
    PAGE_STRONG,
    PAGE_EMPHASIS,
    PAGE_CODE,   /* an id, as it is written */
    PAGE_MEETS,  /* the word of a verdict: its colour comes with it */
    PAGE_FAILS,
    PAGE_OPEN,   /* neither met nor missed */
    PAGE_BLANK,  /* a line to write on; its text says how wide, by its letters */
    PAGE_STYLE_COUNT
};

/* What a verdict's word looks like. */
enum page_style page_verdict_style(ingle_verdict verdict);

/*
 * A table. `cell` gives the text of a cell, which stays as it is until the next call, and may set
 * its style; it is asked more than once for the same cell.
 */
struct page_table {
    size_t columns;
    size_t rows;
    const char *const *heads;
    const char *(*cell)(void *context, size_t row, size_t column, enum page_style *style);
    void *context;
};

struct page;

/* How a format writes the parts. */
struct page_manner {
    void (*start)(struct page *page, const char *title);
    void (*heading)(struct page *page, int level, const char *text);
    void (*open)(struct page *page, enum page_part part);
    void (*run)(struct page *page, enum page_style style, const char *text);
    void (*close)(struct page *page, enum page_part part);
    /* After the last of parts that belong together: items, lines of a calculation. */
    void (*finish)(struct page *page, enum page_part part);
    void (*table)(struct page *page, const struct page_table *table);
    void (*turn)(struct page *page); /* to a new sheet of paper */
    void (*end)(struct page *page);
};

extern const struct page_manner text_manner, markdown_manner, html_manner;

enum { PAGE_WORD = 256 };

struct page {
    struct output output;
    ingle_page how;
    const struct page_manner *manner;
    enum page_part part; /* the last or open one, while `listing` or `opened` */
    bool opened;
    bool listing;        /* the last part may be followed by one that belongs to it */
    ingle_allocator allocator;
    char *text; /* of page_text_of() */
    size_t text_capacity;

    /* The manner's own. */
    bool begun;          /* something stands above */
    size_t column;       /* of a text, and where its lines begin */
    size_t indent;
    bool spaced;         /* a space is due before the word */
    char word[PAGE_WORD]; /* that more may be added to, by the next run */
    size_t word_length, word_width;
};

/*
 * Starts a page. `options` may be NULL, and so may `allocator`, for the C library's. The title
 * heads the page, unless the options have another. Without INGLE_OK there is no page to end.
 */
ingle_status page_start(struct page *page, const ingle_allocator *allocator,
                        const ingle_page *options, ingle_write write, void *context,
                        const char *title);

/* Ends the page and gives its memory back; returns the first failure. */
ingle_status page_end(struct page *page);

/* How amounts are shown: in the page's unit, or else in another; NULL is the inch. */
ingle_format page_format(const struct page *page, const ingle_unit *otherwise);

/* Level 2 to 4; the title is level 1. */
void page_heading(struct page *page, int level, const char *text);

void page_open(struct page *page, enum page_part part);
void page_run(struct page *page, enum page_style style, const char *text);
void page_close(struct page *page);

/* Runs of a text of the catalogues, in which names stand between backticks. */
void page_prose(struct page *page, const char *text);

/* A part with one plain run. */
void page_line(struct page *page, enum page_part part, const char *text);

/* An item that says `name: text`. */
void page_fact(struct page *page, const char *name, const char *text);

void page_table(struct page *page, const struct page_table *table);

/* A new sheet of paper, or what comes nearest. */
void page_turn(struct page *page);

/* Anything that writes text in the manner of ingle_finding_text(). */
typedef ingle_status (*page_source)(const void *object, int32_t part, const ingle_format *format,
                                    char *buffer, size_t capacity, size_t *length);

/*
 * A text from its source, whole; it stays as it is until the next call. Never NULL: it is empty
 * where the source gives nothing, and where memory cannot be had, which the page keeps as failure.
 */
const char *page_text_of(struct page *page, page_source source, const void *object, int32_t part,
                         const ingle_format *format);

/* A part of a finding, in the same way. */
const char *page_finding_text(struct page *page, const ingle_finding *finding,
                              ingle_finding_part part, const ingle_format *format);

#endif
