/* SPDX-License-Identifier: MIT */
#include "writing/error.h"

#include "strict/letters.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>

void json_error_start(struct json_error *error, const struct json_scan *scan)
{
    error->status = INGLE_OK;
    error->scan = scan;
    error->node = JSON_NO_NODE;
    error->at = NULL;
    error->offset = 0;
    error->sentence[0] = '\0';
}

/* ---- refusing -------------------------------------------------------------------------------- */

/* A text that was cut ends with a whole code point. */
static void drop_half_letter(char *text, size_t length)
{
    size_t start = length;
    while (start > 0 && ((unsigned char)text[start - 1] & 0xC0) == 0x80) {
        start--;
    }
    if (start > 0 && (unsigned char)text[start - 1] >= 0xC0) {
        const unsigned char *lead = (const unsigned char *)text + start - 1;
        if (json_utf8_length(lead, (const unsigned char *)text + length) == 0) {
            text[start - 1] = '\0';
        }
    }
}

static ingle_status refuse(struct json_error *error, uint32_t node, size_t offset,
                           ingle_status status, const char *sentence, va_list words)
{
    error->status = status;
    error->node = node;
    error->offset = offset;
    int length = vsnprintf(error->sentence, sizeof error->sentence, sentence, words);
    if (length < 0) {
        error->sentence[0] = '\0';
    } else if ((size_t)length >= sizeof error->sentence) {
        drop_half_letter(error->sentence, sizeof error->sentence - 1);
    }
    return status;
}

ingle_status json_refuse(struct json_error *error, uint32_t node, ingle_status status,
                         const char *sentence, ...)
{
    va_list words;
    va_start(words, sentence);
    refuse(error, node, error->scan->nodes[node].start, status, sentence, words);
    va_end(words);
    return status;
}

ingle_status json_refuse_name(struct json_error *error, uint32_t node, ingle_status status,
                              const char *sentence, ...)
{
    va_list words;
    va_start(words, sentence);
    refuse(error, node, error->scan->nodes[node].name - 1, status, sentence, words);
    va_end(words);
    return status;
}

/* Where a byte of a value's text stands in its source. */
static size_t source_offset(const struct json_scan *scan, const struct json_node *node,
                            size_t position)
{
    if (node->kind != JSON_STRING) {
        return node->start + position;
    }
    const unsigned char *at = scan->bytes + node->start + 1, *end = at + node->length - 2;
    size_t passed = 0;
    while (at < end) {
        unsigned char letter[4];
        size_t length;
        const unsigned char *next = json_unescape(at, end, letter, &length);
        if (passed + length > position) {
            break;
        }
        passed += length;
        at = next;
    }
    return (size_t)(at - scan->bytes);
}

ingle_status json_refuse_text(struct json_error *error, uint32_t node, size_t position,
                              ingle_status status, const char *sentence, ...)
{
    size_t offset = source_offset(error->scan, &error->scan->nodes[node], position);
    va_list words;
    va_start(words, sentence);
    refuse(error, node, offset, status, sentence, words);
    va_end(words);
    return status;
}

ingle_status json_refuse_type(struct json_error *error, uint32_t node, const char *due)
{
    static const char *const kinds[] = {
        [JSON_OBJECT] = "an object", [JSON_ARRAY] = "an array", [JSON_STRING] = "a text",
        [JSON_NUMBER] = "a number",  [JSON_TRUE] = "true",      [JSON_FALSE] = "false"};
    uint8_t kind = error->scan->nodes[node].kind;
    if (kind == JSON_NULL) {
        return json_refuse(error, node, INGLE_ERROR_TYPE,
                           "null stands for nothing here: %s is due, and what was not recorded is "
                           "left out, with its name.",
                           due);
    }
    return json_refuse(error, node, INGLE_ERROR_TYPE, "Here %s is due, not %s.", due, kinds[kind]);
}

ingle_status json_refuse_fault(struct json_error *error, const struct json_fault *fault)
{
    error->status = fault->status;
    error->node = (uint32_t)fault->node;
    error->offset = fault->offset;
    snprintf(error->sentence, sizeof error->sentence, "%s", fault->sentence);
    return fault->status;
}

/* What comes from a command line or a file's name need not be UTF-8, but the document has to be. */
static void replace_what_is_no_utf8(char *text)
{
    const unsigned char *end = (const unsigned char *)text + strlen(text);
    for (unsigned char *at = (unsigned char *)text; at < end;) {
        size_t length = *at < 0x80 ? 1 : json_utf8_length(at, end);
        if (length == 0) {
            *at = '?';
            length = 1;
        }
        at += length;
    }
}

ingle_status json_refuse_call(struct json_error *error, ingle_status status, const char *sentence)
{
    json_error_start(error, NULL);
    error->status = status;
    const char *text = sentence != NULL ? sentence : ingle_status_text(status);
    if (snprintf(error->sentence, sizeof error->sentence, "%s", text) >=
        (int)sizeof error->sentence) {
        drop_half_letter(error->sentence, sizeof error->sentence - 1);
    }
    replace_what_is_no_utf8(error->sentence);
    return status;
}

/* ---- writing --------------------------------------------------------------------------------- */

static void write_pointer(const struct json_error *error, struct json_writer *writer)
{
    size_t capacity, length;
    json_begin_text(writer, "at");
    do {
        char *room = json_room(writer, &capacity);
        length = json_scan_pointer(error->scan, error->node, room, capacity);
    } while (!json_end_text(writer, length));
}

bool json_error_write(const struct json_error *error, struct json_writer *writer, bool one_line)
{
    json_start(writer, one_line);
    json_open_object(writer, NULL);
    json_open_object(writer, "error");
    json_text(writer, "code", ingle_status_name(error->status));
    json_text(writer, "message", error->sentence);
    if (error->scan == NULL || error->at != NULL) {
        json_text(writer, "at", error->at != NULL ? error->at : "");
    } else {
        write_pointer(error, writer);
    }
    if (error->scan != NULL) {
        size_t line, column;
        json_scan_place(error->scan, error->offset, &line, &column);
        json_integer(writer, "line", (int64_t)line);
        json_integer(writer, "column", (int64_t)column);
    }
    json_close_object(writer);
    json_close_object(writer);
    return json_finish(writer);
}
