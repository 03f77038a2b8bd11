/* SPDX-License-Identifier: MIT */
/*
 * The characters that have a meaning in an amount's text.
 */
#ifndef INGLE_MEASURE_SCAN_H
#define INGLE_MEASURE_SCAN_H

#include <stdbool.h>
#include <stddef.h>

/* A place in a text, which is sound UTF-8. */
struct scan {
    const char *text;
    size_t length;
    size_t at;
};

/* The byte that is next, or 0 at the end. */
char scan_peek(const struct scan *scan);

/* Takes `mark` if it is next. */
bool scan_take(struct scan *scan, const char *mark);

/* Takes spaces: U+0020, U+00A0 no-break, U+2009 thin, U+202F narrow no-break. Tells if any. */
bool scan_spaces(struct scan *scan);

/* Takes ASCII digits and returns how many. */
size_t scan_digits(struct scan *scan);

/* Takes one Unicode fraction (½), if it is next, and tells its parts. */
bool scan_fraction(struct scan *scan, unsigned *numerator, unsigned *denominator);

/* Whether what is next starts a number without a sign. */
bool scan_number_next(const struct scan *scan);

bool is_digit(char byte);
bool is_letter(char byte);

#endif
