/* SPDX-License-Identifier: MIT */
/*
 * Whether bytes are UTF-8.
 */
#ifndef INGLE_BASE_UTF8_H
#define INGLE_BASE_UTF8_H

#include <stddef.h>

/*
 * How many bytes from the start are well-formed UTF-8 (RFC 3629) without a NUL: `length` if all
 * are, else the offset of the first character that is not.
 */
size_t utf8_sound_length(const char *text, size_t length);

#endif
