/* SPDX-License-Identifier: MIT */
/* Line, column and JSON Pointer: worked out from a scan only when someone asks. */
#include "strict/letters.h"
#include "strict/scan.h"

#include <stdio.h>

typedef unsigned char byte;

void json_scan_place(const struct json_scan *scan, size_t offset, size_t *line, size_t *column)
{
    size_t length = (size_t)(scan->end - scan->bytes);
    const byte *place = scan->bytes + (offset < length ? offset : length);
    *line = 1;
    *column = 1;
    for (const byte *at = scan->bytes; at < place; at++) {
        if (*at == '\n') {
            ++*line;
            *column = 1;
        } else if ((*at & 0xC0) != 0x80) {
            ++*column;
        }
    }
}

struct pointer_text {
    byte *buffer;
    size_t capacity;
    size_t at; /* where the next byte goes, in the buffer or past it */
};

static void put(struct pointer_text *text, byte letter)
{
    if (text->at < text->capacity) {
        text->buffer[text->at] = letter;
    }
    text->at++;
}

static void put_name(struct pointer_text *text, const byte *at, const byte *end)
{
    while (at < end) {
        byte letter[4];
        size_t length;
        at = json_unescape(at, end, letter, &length);
        for (size_t i = 0; i < length; i++) {
            bool reserved = letter[i] == '~' || letter[i] == '/';
            put(text, reserved ? '~' : letter[i]);
            if (reserved) {
                put(text, letter[i] == '~' ? '0' : '1');
            }
        }
    }
}

/* Writes one step of a pointer from `at` on and returns its length. */
static size_t put_step(const struct json_scan *scan, const struct json_node *node,
                       struct pointer_text text)
{
    size_t start = text.at;
    put(&text, '/');
    if (scan->nodes[node->parent].kind == JSON_OBJECT) {
        const byte *name = scan->bytes + node->name;
        put_name(&text, name, name + node->name_length);
    } else {
        char digits[11];
        int count = snprintf(digits, sizeof digits, "%lu", (unsigned long)node->index);
        put_name(&text, (const byte *)digits, (const byte *)digits + count);
    }
    return text.at - start;
}

size_t json_scan_pointer(const struct json_scan *scan, size_t node, char *buffer, size_t capacity)
{
    const struct pointer_text nowhere = {NULL, 0, 0};
    size_t length = 0;
    size_t step = node < scan->node_count ? node : JSON_NO_NODE;
    for (size_t i = step; i != JSON_NO_NODE && scan->nodes[i].parent != JSON_NO_NODE;
         i = scan->nodes[i].parent) {
        length += put_step(scan, &scan->nodes[i], nowhere);
    }
    /* The steps are known from the last to the first, so they are written in that order. */
    size_t at = length;
    for (size_t i = step; at > 0; i = scan->nodes[i].parent) {
        at -= put_step(scan, &scan->nodes[i], nowhere);
        put_step(scan, &scan->nodes[i], (struct pointer_text){(byte *)buffer, capacity, at});
    }
    if (capacity > 0) {
        size_t end = length < capacity ? length : capacity - 1;
        while (end < length && end > 0 && ((byte)buffer[end] & 0xC0) == 0x80) {
            end--;
        }
        buffer[end] = '\0';
    }
    return length;
}
