/* SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "command/input.h"

#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* Read at once: as much as a pipe holds, and little enough to stay in the cache. */
enum { PIECE = 65536 };

bool input_new(struct input *input, size_t longest)
{
    memset(input, 0, sizeof *input);
    input->longest = longest;
    input->capacity = longest + 1 + PIECE;
    input->file = -1;
    input->bytes = malloc(input->capacity);
    return input->bytes != NULL;
}

void input_free(struct input *input)
{
    free(input->bytes);
    input->bytes = NULL;
}

bool input_open(struct input *input, const char *name)
{
    input->start = input->end = 0;
    input->ended = input->skipping = false;
    input->error = 0;
    input->file = strcmp(name, "-") == 0 ? STDIN_FILENO : open(name, O_RDONLY | O_CLOEXEC);
    if (input->file < 0) {
        input->error = errno;
    }
    return input->file >= 0;
}

void input_close(struct input *input)
{
    if (input->file != STDIN_FILENO) {
        close(input->file);
    }
    input->file = -1;
}

static void tell_of_waiting(const struct input *input)
{
    struct pollfd wanted = {.fd = input->file, .events = POLLIN};
    if (input->before_waiting != NULL && poll(&wanted, 1, 0) == 0) {
        input->before_waiting(input->context);
    }
}

/* Reads the next piece behind what is there, and makes room for it first. */
static bool read_piece(struct input *input)
{
    if (input->start > 0 && input->capacity - input->end < PIECE) {
        memmove(input->bytes, input->bytes + input->start, input->end - input->start);
        input->end -= input->start;
        input->start = 0;
    }
    tell_of_waiting(input);
    ssize_t got;
    do {
        got = read(input->file, input->bytes + input->end, PIECE);
    } while (got < 0 && errno == EINTR);
    if (got < 0) {
        input->error = errno;
        return false;
    }
    input->ended = got == 0;
    input->end += (size_t)got;
    return true;
}

bool input_document(struct input *input, const char **document, size_t *length)
{
    while (!input->ended && input->end <= input->longest) {
        if (!read_piece(input)) {
            return false;
        }
    }
    *document = input->bytes;
    *length = input->end > input->longest ? input->longest + 1 : input->end;
    return true;
}

/* Drops what is left of a line that was too long, its end included. */
static bool skip_line(struct input *input)
{
    while (input->skipping) {
        char *end = memchr(input->bytes + input->start, '\n', input->end - input->start);
        if (end != NULL) {
            input->start = (size_t)(end + 1 - input->bytes);
            input->skipping = false;
        } else {
            input->start = input->end = 0;
            if (!read_piece(input)) {
                return false;
            }
            input->skipping = !input->ended;
        }
    }
    return true;
}

static void give(struct input *input, const char **line, size_t *length, size_t taken)
{
    *line = input->bytes + input->start;
    *length = taken;
    input->start += taken;
}

bool input_line(struct input *input, const char **line, size_t *length)
{
    if (!skip_line(input)) {
        return false;
    }
    if (input->start == input->end) {
        input->start = input->end = 0;
    }
    size_t searched = 0;
    for (;;) {
        const char *from = input->bytes + input->start + searched;
        const char *end = memchr(from, '\n', input->end - input->start - searched);
        size_t there = input->end - input->start;
        size_t before_end = end != NULL ? (size_t)(end - input->bytes) - input->start : there;
        if (before_end > input->longest) {
            give(input, line, length, input->longest + 1);
            input->skipping = true;
            return true;
        }
        if (end != NULL) {
            give(input, line, length, before_end);
            input->start++;
            return true;
        }
        if (input->ended) {
            give(input, line, length, there);
            return there > 0;
        }
        searched = there;
        if (!read_piece(input)) {
            return false;
        }
    }
}
