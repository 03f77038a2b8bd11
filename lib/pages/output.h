/* SPDX-License-Identifier: MIT */
/*
 * Text on its way to the caller's ingle_write, gathered into larger pieces. The first failure is
 * kept, and writing goes on without effect.
 */
#ifndef INGLE_PAGES_OUTPUT_H
#define INGLE_PAGES_OUTPUT_H

#include <ingle/page.h>
#include <ingle/status.h>

enum { OUTPUT_PIECE = 2048 };

struct output {
    ingle_write write;
    void *context;
    ingle_status status; /* INGLE_OK, or the first failure */
    size_t used;
    char piece[OUTPUT_PIECE];
};

/* INGLE_ERROR_ARGUMENT if there is nowhere to write to. */
ingle_status output_start(struct output *output, ingle_write write, void *context);

void output_add(struct output *output, const char *text);
void output_add_bytes(struct output *output, const char *text, size_t length);
void output_add_repeated(struct output *output, const char *text, size_t times);

/* A text with what XML and HTML take for markup escaped, in attributes too. */
void output_add_escaped(struct output *output, const char *text);

/* Keeps a failure that happened elsewhere, if it is the first. */
void output_fail(struct output *output, ingle_status status);

/* Writes what is left; returns the first failure, or INGLE_OK. */
ingle_status output_end(struct output *output);

#endif
