/* SPDX-License-Identifier: MIT */
/*
 * The letters of a JSON document: UTF-8 sequences and the escapes of strings.
 */
#ifndef INGLE_JSON_LETTERS_H
#define INGLE_JSON_LETTERS_H

#include <stddef.h>
#include <stdint.h>

/* How many bytes a well-formed UTF-8 sequence of two bytes or more has here; 0 if there is none. */
size_t json_utf8_length(const unsigned char *at, const unsigned char *end);

/* The code point of a well-formed sequence of two bytes or more. */
uint32_t json_code_point(const unsigned char *at, size_t length);

/* The value of four hexadecimal digits, or -1. */
int32_t json_hexadecimal(const unsigned char *at, const unsigned char *end);

/* The second half of a surrogate pair, written as an escape, or -1. */
int32_t json_low_surrogate(const unsigned char *at, const unsigned char *end);

/*
 * Unescapes what stands at `at` in a string that was found correct: one escape, or one byte as it
 * is. Returns what comes after it.
 */
const unsigned char *json_unescape(const unsigned char *at, const unsigned char *end,
                                   unsigned char out[4], size_t *length);

#endif
