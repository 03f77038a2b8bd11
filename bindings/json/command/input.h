/* SPDX-License-Identifier: MIT */
/*
 * Reads documents and lines from files into memory of a fixed size, however long they are.
 */
#ifndef INGLE_JSON_INPUT_H
#define INGLE_JSON_INPUT_H

#include <stdbool.h>
#include <stddef.h>

struct input {
    char *bytes;
    size_t capacity;
    size_t longest; /* what is longer is given up to one byte more than this */
    size_t start, end; /* what was read and not yet given */
    int file;
    bool ended;
    bool skipping; /* the rest of a line that was too long */
    int error;     /* errno, or 0 */

    /* Called before reading has to wait, if not NULL. */
    void (*before_waiting)(void *context);
    void *context;
};

/* False if memory cannot be had. */
bool input_new(struct input *input, size_t longest);
void input_free(struct input *input);

/* Opens a file, `-` for standard input; false with `error` set if it cannot be opened. */
bool input_open(struct input *input, const char *name);
void input_close(struct input *input);

/*
 * Reads a whole file, or one byte more than the longest document; false with `error` set if
 * reading fails. The document is borrowed until the next call.
 */
bool input_document(struct input *input, const char **document, size_t *length);

/*
 * Gives the next line without its end; false at the end of the file, or with `error` set if reading
 * fails. Of a line that is too long it gives one byte more than the longest. Borrowed until the
 * next call.
 */
bool input_line(struct input *input, const char **line, size_t *length);

#endif
