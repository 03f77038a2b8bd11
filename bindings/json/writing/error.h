/* SPDX-License-Identifier: MIT */
/*
 * Why a document is refused and where; written as the error document of the contract.
 */
#ifndef INGLE_JSON_ERROR_H
#define INGLE_JSON_ERROR_H

#include "strict/scan.h"
#include "writing/write.h"

#include <ingle/status.h>

enum { JSON_SENTENCE_SIZE = 512 };

struct json_error {
    ingle_status status;
    const struct json_scan *scan; /* NULL where it is no place in a document */
    uint32_t node;                /* whose pointer is given; JSON_NO_NODE is the whole document */
    const char *at;               /* the pointer, where it is known better than by the node */
    size_t offset;                /* of the place, in bytes */
    char sentence[JSON_SENTENCE_SIZE];
};

/* Starts with nothing wrong; errors will lie in what this scan has read. */
void json_error_start(struct json_error *error, const struct json_scan *scan);

/*
 * Each refuses and returns the status. The sentence is printf()'s; it is cut, between two code
 * points, where it is longer than a sentence should be.
 */
#if defined(__GNUC__)
#define JSON_SENTENCE __attribute__((format(printf, 4, 5)))
#define JSON_SENTENCE_AT __attribute__((format(printf, 5, 6)))
#else
#define JSON_SENTENCE
#define JSON_SENTENCE_AT
#endif

/* A value. */
ingle_status json_refuse(struct json_error *error, uint32_t node, ingle_status status,
                         const char *sentence, ...) JSON_SENTENCE;
/* A member, for its name. */
ingle_status json_refuse_name(struct json_error *error, uint32_t node, ingle_status status,
                              const char *sentence, ...) JSON_SENTENCE;
/* A string or number, `position` bytes into its text. */
ingle_status json_refuse_text(struct json_error *error, uint32_t node, size_t position,
                              ingle_status status, const char *sentence, ...) JSON_SENTENCE_AT;

/* A value of the wrong type; `due` is what was expected: `a text`. */
ingle_status json_refuse_type(struct json_error *error, uint32_t node, const char *due);

/* What the strict pass found. */
ingle_status json_refuse_fault(struct json_error *error, const struct json_fault *fault);

/* Something outside a document, with a sentence of its own or NULL for ingle_status_text(). */
ingle_status json_refuse_call(struct json_error *error, ingle_status status,
                              const char *sentence);

/* Writes `{"error": {...}}`; false if memory failed. */
bool json_error_write(const struct json_error *error, struct json_writer *writer, bool one_line);

#endif
