/* SPDX-License-Identifier: MIT */
/*
 * Writes JSON as text, straight into memory that grows and is kept. A member's name is NULL inside
 * arrays; it is one of our own and needs no escape. Memory that cannot be had is noted in `failed`,
 * and further writing does nothing.
 */
#ifndef INGLE_JSON_WRITE_H
#define INGLE_JSON_WRITE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

struct json_writer {
    char *bytes;
    size_t length;
    size_t capacity;
    unsigned depth;
    bool one_line;
    bool filled; /* the open object or array has something in it */
    bool failed;
};

/* Starts a new document in the memory of the last. */
void json_start(struct json_writer *writer, bool one_line);

/* Ends the document with a newline and a NUL that does not count. False if memory failed. */
bool json_finish(struct json_writer *writer);

void json_free(struct json_writer *writer);

void json_open_object(struct json_writer *writer, const char *name);
void json_close_object(struct json_writer *writer);
void json_open_array(struct json_writer *writer, const char *name);
void json_close_array(struct json_writer *writer);

/* A text, escaped; NULL writes null. */
void json_text(struct json_writer *writer, const char *name, const char *text);
void json_text_bytes(struct json_writer *writer, const char *name, const char *text,
                     size_t length);

/* A number already written in digits, as JSON has them. */
void json_digits(struct json_writer *writer, const char *name, const char *digits);
void json_integer(struct json_writer *writer, const char *name, int64_t number);
void json_unsigned(struct json_writer *writer, const char *name, uint64_t number);
void json_boolean(struct json_writer *writer, const char *name, bool value);

/* A place between two members, to come back to if the next had better not be there. */
struct json_mark {
    size_t length;
    bool filled;
};

struct json_mark json_mark(const struct json_writer *writer);
void json_return(struct json_writer *writer, struct json_mark mark);

/*
 * A text or a number that another function writes in place, in the manner of snprintf():
 *
 *     size_t capacity, length = 0;
 *     json_begin_text(writer, name);
 *     do {
 *         char *room = json_room(writer, &capacity);
 *         length = <writes to room>;
 *     } while (!json_end_text(writer, length));
 *
 * The end asks for another turn, with more room, where the text and its NUL did not fit. Room is
 * NULL and capacity 0 once memory failed. A text is escaped where it stands; digits need none.
 */
void json_begin_text(struct json_writer *writer, const char *name);
void json_begin_digits(struct json_writer *writer, const char *name);
char *json_room(struct json_writer *writer, size_t *capacity);
bool json_end_text(struct json_writer *writer, size_t length);
bool json_end_digits(struct json_writer *writer, size_t length);

#endif
