/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Where texts and drawings are written, and how pages of text look.
 */
#ifndef INGLE_PAGE_H
#define INGLE_PAGE_H

#include <ingle/api.h>
#include <ingle/measure.h>

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/**
 * Receives a text piece by piece, in order.
 *
 * @param context what the call was given for it
 * @param text UTF-8, not ended by NUL; a letter may be parted between two pieces
 * @param length its length in bytes, at least 1
 * @returns 0 to go on; anything else ends the writing, and the call returns INGLE_ERROR_IO.
 */
typedef int32_t (*ingle_write)(void *context, const char *text, size_t length);

/** What a page of text is written as. */
typedef int32_t ingle_page_format;

enum {
    /** Plain text for a terminal or a message. */
    INGLE_PAGE_TEXT = 0,
    /** Markdown as CommonMark has it, with the tables of its common extension. */
    INGLE_PAGE_MARKDOWN = 1,
    /** A document of its own in HTML, well-formed as XML too, that asks for no other file. */
    INGLE_PAGE_HTML = 2
};

/** How many formats there are; they count from 0. */
INGLE_API size_t ingle_page_format_count(void);

/** The name of a format: `markdown`; NULL for a number that is none. */
INGLE_API const char *ingle_page_format_name(ingle_page_format format);

/** The format of a name; -1 when there is none. */
INGLE_API ingle_page_format ingle_page_format_find(const char *name);

/** How a page of text looks. Start from zeroed bytes and set `size`. */
typedef struct ingle_page {
    /** sizeof(ingle_page). */
    size_t size;
    /** What it is written as. */
    ingle_page_format format;
    /** The columns of a text, 20 to 1000; 0 is 79. The other formats have no width. */
    int32_t width;
    /** 1 marks verdicts in a text with the colours of a terminal, beside their words. */
    int32_t colour;
    /** Zero. */
    int32_t reserved;
    /** How lengths are shown, and what follows from them; NULL takes each standard's own unit. */
    const ingle_unit *unit;
    /** The title; NULL takes the call's own. */
    const char *title;
} ingle_page;

#ifdef __cplusplus
}
#endif

#endif
