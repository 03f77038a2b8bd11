/* SPDX-License-Identifier: MIT */
/*
 * The letters of a text as a page shows them: how many columns they take, and what stands in for
 * those that would steer a terminal or end a line.
 */
#ifndef INGLE_PAGES_LETTERS_H
#define INGLE_PAGES_LETTERS_H

#include <stddef.h>

/*
 * How many columns of a terminal UTF-8 takes: two for the wide letters of East Asia and for most
 * pictures, none for marks that stand over the letter before, one for the rest.
 */
size_t letters_width(const char *text, size_t length);

/*
 * The next stretch of a text: how many bytes of it stand for themselves, from its beginning. 0 at
 * its end, and where a control stands first: letters_control() tells what stands in for that.
 */
size_t letters_plain(const char *text);

/*
 * What stands in for the control at the beginning of a text: a space for one that parts words or
 * lines, else the replacement character. `length` receives the bytes of the control.
 */
const char *letters_control(const char *text, size_t *length);

#endif
