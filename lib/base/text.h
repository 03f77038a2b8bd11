/* SPDX-License-Identifier: MIT */
/*
 * Writes text into a buffer of the caller's, in the manner of snprintf() but without its locale:
 * what does not fit is counted, and the text is never left without its NUL.
 */
#ifndef INGLE_BASE_TEXT_H
#define INGLE_BASE_TEXT_H

#include <ingle/status.h>

#include <stddef.h>
#include <stdint.h>

struct text {
    char *buffer;
    size_t capacity;
    size_t length; /* of the whole text, cut or not */
};

/* Starts a text in `buffer`, which may be NULL if `capacity` is 0. */
struct text text_start(char *buffer, size_t capacity);

void text_add(struct text *text, const char *more);
void text_add_bytes(struct text *text, const char *more, size_t length);
void text_add_unsigned(struct text *text, uint64_t number);

/* Ends the text, reports its length where asked and says whether it was cut. */
ingle_status text_end(struct text *text, size_t *length);

#endif
