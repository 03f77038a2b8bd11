/* SPDX-License-Identifier: MIT */
#include "base/text.h"

#include <string.h>

struct text text_start(char *buffer, size_t capacity)
{
    struct text text = {buffer, capacity, 0};
    if (capacity > 0) {
        buffer[0] = '\0';
    }
    return text;
}

void text_add_bytes(struct text *text, const char *more, size_t length)
{
    if (text->length + 1 < text->capacity) {
        size_t room = text->capacity - text->length - 1;
        size_t taken = length < room ? length : room;
        memcpy(text->buffer + text->length, more, taken);
        text->buffer[text->length + taken] = '\0';
    }
    text->length += length;
}

void text_add(struct text *text, const char *more)
{
    text_add_bytes(text, more, strlen(more));
}

void text_add_unsigned(struct text *text, uint64_t number)
{
    char digits[20];
    size_t start = sizeof digits;
    do {
        digits[--start] = (char)('0' + number % 10);
        number /= 10;
    } while (number > 0);
    text_add_bytes(text, digits + start, sizeof digits - start);
}

ingle_status text_end(struct text *text, size_t *length)
{
    if (length != NULL) {
        *length = text->length;
    }
    return text->length < text->capacity || text->capacity == 0 ? INGLE_OK : INGLE_CUT;
}
