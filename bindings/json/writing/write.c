/* SPDX-License-Identifier: MIT */
#include "writing/write.h"

#include <stdlib.h>
#include <string.h>

static bool grow(struct json_writer *writer, size_t more)
{
    if (writer->failed) {
        return false;
    }
    size_t wanted = writer->capacity < 4096 ? 4096 : writer->capacity * 2;
    while (wanted - writer->length <= more) {
        wanted *= 2;
    }
    char *grown = realloc(writer->bytes, wanted);
    if (grown == NULL) {
        writer->failed = true;
        writer->length = writer->capacity;
        return false;
    }
    writer->bytes = grown;
    writer->capacity = wanted;
    return true;
}

/* Room for so many bytes and one. Once memory failed there is none: length is then capacity. */
static inline bool reserve(struct json_writer *writer, size_t more)
{
    return more < writer->capacity - writer->length || grow(writer, more);
}

static inline void put(struct json_writer *writer, const char *bytes, size_t length)
{
    if (reserve(writer, length)) {
        memcpy(writer->bytes + writer->length, bytes, length);
        writer->length += length;
    }
}

static inline void put_byte(struct json_writer *writer, char byte)
{
    if (reserve(writer, 1)) {
        writer->bytes[writer->length++] = byte;
    }
}

/* ---- escapes --------------------------------------------------------------------------------- */

static void put_escape(struct json_writer *writer, unsigned char byte)
{
    static const char hexadecimal[] = "0123456789abcdef";
    switch (byte) {
    case '"':
        put(writer, "\\\"", 2);
        break;
    case '\\':
        put(writer, "\\\\", 2);
        break;
    case '\n':
        put(writer, "\\n", 2);
        break;
    case '\t':
        put(writer, "\\t", 2);
        break;
    default:
        put(writer, "\\u00", 4);
        put_byte(writer, hexadecimal[byte >> 4]);
        put_byte(writer, hexadecimal[byte & 15]);
    }
}

static bool is_plain(unsigned char byte)
{
    return byte >= 0x20 && byte != '"' && byte != '\\';
}

/* How many bytes from the start need no escape; eight at a time while none does. */
static size_t plain_length(const char *text, size_t length)
{
    const uint64_t ones = UINT64_C(0x0101010101010101);
    size_t at = 0;
    for (; length - at >= 8; at += 8) {
        /* A byte's high bit becomes set where the byte needs an escape. A borrow can set one too
           many, but only where one is rightly set, and the bytes are then looked at singly. */
        uint64_t word;
        memcpy(&word, text + at, 8);
        uint64_t quote = word ^ ones * '"';
        uint64_t backslash = word ^ ones * '\\';
        uint64_t found = ((word - ones * ' ') & ~word) | ((quote - ones) & ~quote) |
                         ((backslash - ones) & ~backslash);
        if ((found & ones * 0x80) != 0) {
            break;
        }
    }
    while (at < length && is_plain((unsigned char)text[at])) {
        at++;
    }
    return at;
}

static void put_text(struct json_writer *writer, const char *text, size_t length)
{
    put_byte(writer, '"');
    size_t plain;
    while ((plain = plain_length(text, length)) < length) {
        put(writer, text, plain);
        put_escape(writer, (unsigned char)text[plain]);
        text += plain + 1;
        length -= plain + 1;
    }
    put(writer, text, length);
    put_byte(writer, '"');
}

/* ---- what stands around values --------------------------------------------------------------- */

/* The start of a line where there is an indent; the bytes are there already. */
static char *line_start(const struct json_writer *writer, char *at)
{
    size_t spaces = 2 * (size_t)writer->depth;
    *at = '\n';
    memset(at + 1, ' ', spaces);
    return at + 1 + spaces;
}

/* What stands before every value: a comma, the line, the name. */
static void put_lead(struct json_writer *writer, const char *name)
{
    size_t length = name != NULL ? strlen(name) : 0;
    if (!reserve(writer, length + 2 * (size_t)writer->depth + 8)) {
        return;
    }
    char *at = writer->bytes + writer->length;
    if (writer->filled) {
        *at++ = ',';
    }
    if (!writer->one_line && writer->depth > 0) {
        at = line_start(writer, at);
    } else if (writer->filled) {
        *at++ = ' ';
    }
    if (name != NULL) {
        *at = '"';
        memcpy(at + 1, name, length);
        memcpy(at + 1 + length, "\": ", 3);
        at += length + 4;
    }
    writer->length = (size_t)(at - writer->bytes);
    writer->filled = true;
}

static void open_bracket(struct json_writer *writer, const char *name, char bracket)
{
    put_lead(writer, name);
    put_byte(writer, bracket);
    writer->depth++;
    writer->filled = false;
}

static void close_bracket(struct json_writer *writer, char bracket)
{
    writer->depth--;
    if (writer->filled && !writer->one_line &&
        reserve(writer, 2 * (size_t)writer->depth + 1)) {
        writer->length =
            (size_t)(line_start(writer, writer->bytes + writer->length) - writer->bytes);
    }
    put_byte(writer, bracket);
    writer->filled = true;
}

void json_start(struct json_writer *writer, bool one_line)
{
    writer->length = 0;
    writer->depth = 0;
    writer->one_line = one_line;
    writer->filled = false;
    writer->failed = false;
}

bool json_finish(struct json_writer *writer)
{
    put(writer, "\n", 2);
    if (!writer->failed) {
        writer->length--;
    }
    return !writer->failed;
}

void json_free(struct json_writer *writer)
{
    free(writer->bytes);
    memset(writer, 0, sizeof *writer);
}

void json_open_object(struct json_writer *writer, const char *name)
{
    open_bracket(writer, name, '{');
}

void json_close_object(struct json_writer *writer)
{
    close_bracket(writer, '}');
}

void json_open_array(struct json_writer *writer, const char *name)
{
    open_bracket(writer, name, '[');
}

void json_close_array(struct json_writer *writer)
{
    close_bracket(writer, ']');
}

void json_text_bytes(struct json_writer *writer, const char *name, const char *text, size_t length)
{
    put_lead(writer, name);
    put_text(writer, text, length);
}

void json_text(struct json_writer *writer, const char *name, const char *text)
{
    if (text != NULL) {
        json_text_bytes(writer, name, text, strlen(text));
    } else {
        json_digits(writer, name, "null");
    }
}

void json_digits(struct json_writer *writer, const char *name, const char *digits)
{
    put_lead(writer, name);
    put(writer, digits, strlen(digits));
}

static void put_digits(struct json_writer *writer, const char *name, uint64_t number,
                       bool negative)
{
    char digits[24];
    size_t start = sizeof digits - 1;
    digits[start] = '\0';
    do {
        digits[--start] = (char)('0' + number % 10);
        number /= 10;
    } while (number > 0);
    if (negative) {
        digits[--start] = '-';
    }
    json_digits(writer, name, digits + start);
}

void json_integer(struct json_writer *writer, const char *name, int64_t number)
{
    uint64_t magnitude = number < 0 ? 0 - (uint64_t)number : (uint64_t)number;
    put_digits(writer, name, magnitude, number < 0);
}

void json_unsigned(struct json_writer *writer, const char *name, uint64_t number)
{
    put_digits(writer, name, number, false);
}

void json_boolean(struct json_writer *writer, const char *name, bool value)
{
    json_digits(writer, name, value ? "true" : "false");
}

struct json_mark json_mark(const struct json_writer *writer)
{
    return (struct json_mark){writer->length, writer->filled};
}

void json_return(struct json_writer *writer, struct json_mark mark)
{
    if (!writer->failed) {
        writer->length = mark.length;
        writer->filled = mark.filled;
    }
}

/* ---- what others write in place -------------------------------------------------------------- */

/* Room that most texts fit in at the first turn. */
enum { USUAL_ROOM = 512 };

void json_begin_digits(struct json_writer *writer, const char *name)
{
    put_lead(writer, name);
    reserve(writer, USUAL_ROOM);
}

void json_begin_text(struct json_writer *writer, const char *name)
{
    put_lead(writer, name);
    put_byte(writer, '"');
    reserve(writer, USUAL_ROOM);
}

char *json_room(struct json_writer *writer, size_t *capacity)
{
    *capacity = writer->failed ? 0 : writer->capacity - writer->length;
    return writer->failed ? NULL : writer->bytes + writer->length;
}

/* Whether the text fits, or need not any more; if not, there is more room now. */
static bool fits(struct json_writer *writer, size_t length)
{
    if (writer->failed || length < writer->capacity - writer->length) {
        return true;
    }
    return !reserve(writer, length);
}

bool json_end_digits(struct json_writer *writer, size_t length)
{
    if (!fits(writer, length)) {
        return false;
    }
    if (!writer->failed) {
        writer->length += length;
    }
    return true;
}

static size_t escaped_length(unsigned char byte)
{
    if (is_plain(byte)) {
        return 1;
    }
    return byte == '"' || byte == '\\' || byte == '\n' || byte == '\t' ? 2 : 6;
}

/* Escapes the text in the room: moves it up by what escapes add, then writes it down again. */
static void escape_room(struct json_writer *writer, size_t length, size_t added)
{
    if (!reserve(writer, length + added)) {
        return;
    }
    char *source = writer->bytes + writer->length + added;
    memmove(source, source - added, length);
    for (size_t i = 0; i < length; i++) {
        /* What is written never passes what is still to be read: the gap holds the rest, and the
           memory stays where it is, being large enough already. */
        unsigned char byte = (unsigned char)source[i];
        if (is_plain(byte)) {
            put_byte(writer, (char)byte);
        } else {
            put_escape(writer, byte);
        }
    }
}

bool json_end_text(struct json_writer *writer, size_t length)
{
    if (!fits(writer, length)) {
        return false;
    }
    if (writer->failed) {
        return true;
    }
    const char *text = writer->bytes + writer->length;
    size_t plain = plain_length(text, length);
    size_t added = 0;
    for (size_t i = plain; i < length; i++) {
        added += escaped_length((unsigned char)text[i]) - 1;
    }
    writer->length += plain;
    if (plain < length) {
        escape_room(writer, length - plain, added);
    }
    put_byte(writer, '"');
    return true;
}
