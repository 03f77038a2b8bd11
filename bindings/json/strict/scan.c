/* SPDX-License-Identifier: MIT */
#include "strict/scan.h"

#include "strict/letters.h"
#include "strict/names.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

typedef unsigned char byte;

struct json_open {
    uint32_t node;
    uint32_t count; /* children so far */
    size_t first_name;
    bool is_object;
};

enum {
    ESCAPED = 1,
    HOLDS_NUL = 2
};

/* ---- Faults: each function that reads returns where it stopped, or NULL at a fault. ---- */

static const byte *fault(struct json_scan *scan, ingle_status status, const byte *at,
                         const char *sentence)
{
    scan->fault.status = status;
    scan->fault.offset = (size_t)(at - scan->bytes);
    scan->fault.node = scan->place;
    snprintf(scan->fault.sentence, sizeof scan->fault.sentence, "%s", sentence);
    return NULL;
}

/* The fault that something else stands where `what` was expected. */
static const byte *expected(struct json_scan *scan, const byte *at, const char *what)
{
    char sentence[sizeof scan->fault.sentence];
    if (at == scan->end) {
        snprintf(sentence, sizeof sentence, "%s was expected, but the document ends here.", what);
    } else if (*at > ' ' && *at < 0x7F) {
        snprintf(sentence, sizeof sentence, "%s was expected, not '%c'.", what, *at);
    } else if (*at == 0) {
        return fault(scan, INGLE_ERROR_ENCODING, at, "A document cannot hold a NUL byte.");
    } else if (*at < 0x80) {
        snprintf(sentence, sizeof sentence, "%s was expected, not U+%04X.", what, (unsigned)*at);
    } else {
        size_t length = json_utf8_length(at, scan->end);
        if (length == 0) {
            return fault(scan, INGLE_ERROR_ENCODING, at, "The bytes here are not UTF-8.");
        }
        uint32_t point = json_code_point(at, length);
        snprintf(sentence, sizeof sentence, "%s was expected, not %sU+%04lX.", what,
                 point == 0xFEFF ? "the byte-order mark " : "", (unsigned long)point);
    }
    return fault(scan, INGLE_ERROR_JSON, at, sentence);
}

/* ---- Memory ---- */

static void *from_c_library(void *context, void *memory, size_t bytes)
{
    (void)context;
    if (bytes == 0) {
        free(memory);
        return NULL;
    }
    return realloc(memory, bytes);
}

/* Grows an array to `wanted` elements or more; NULL is a fault, and the array is as it was. */
static void *grown(struct json_scan *scan, void *array, size_t *capacity, size_t wanted,
                   size_t element)
{
    size_t target = *capacity < 16 ? 16 : *capacity;
    while (target < wanted && target <= SIZE_MAX / 2 / element) {
        target *= 2;
    }
    void *memory = NULL;
    if (target >= wanted) {
        memory = scan->allocator.reallocate(scan->allocator.context, array, target * element);
    }
    if (memory == NULL) {
        fault(scan, INGLE_ERROR_MEMORY, scan->bytes, "Memory for the document could not be had.");
        return NULL;
    }
    *capacity = target;
    return memory;
}

void json_scan_init(struct json_scan *scan, const ingle_allocator *allocator)
{
    static const ingle_allocator c_library = {sizeof c_library, from_c_library, NULL};
    *scan = (struct json_scan){0};
    scan->allocator = allocator != NULL ? *allocator : c_library;
}

void json_scan_free(struct json_scan *scan)
{
    ingle_allocator allocator = scan->allocator;
    void *const memory[] = {scan->node_array, scan->names, scan->open, scan->unescaped};
    for (size_t i = 0; i < sizeof memory / sizeof memory[0]; i++) {
        if (memory[i] != NULL) {
            allocator.reallocate(allocator.context, memory[i], 0);
        }
    }
    json_scan_init(scan, &allocator);
}

/* ---- Strings ---- */

/* Skips what stands for itself in a string: ASCII without controls, quote and backslash. */
static const byte *skip_plain(const byte *at, const byte *end)
{
    const uint64_t ones = UINT64_C(0x0101010101010101);
    while (end - at >= 8) {
        /* A byte's high bit becomes set where the byte ends the run. A borrow can set one too
           many, but only above one that is rightly set, and the bytes are then looked at singly. */
        uint64_t word;
        memcpy(&word, at, 8);
        uint64_t quote = word ^ ones * '"';
        uint64_t backslash = word ^ ones * '\\';
        uint64_t found = word | (word - ones * ' ') | (quote - ones) | (backslash - ones);
        if ((found & ones * 0x80) != 0) {
            break;
        }
        at += 8;
    }
    while (at < end && *at >= ' ' && *at < 0x80 && *at != '"' && *at != '\\') {
        at++;
    }
    return at;
}

static const byte *read_unicode_escape(struct json_scan *scan, const byte *at, unsigned *marks)
{
    int32_t value = json_hexadecimal(at + 2, scan->end);
    if (value < 0) {
        return fault(scan, INGLE_ERROR_JSON, at,
                     "Four hexadecimal digits were expected after \\u.");
    }
    if (value >= 0xD800 && value <= 0xDFFF) {
        if (value >= 0xDC00 || json_low_surrogate(at + 6, scan->end) < 0) {
            return fault(scan, INGLE_ERROR_ENCODING, at,
                         "Half a surrogate pair stands here without its other half.");
        }
        return at + 12;
    }
    if (value == 0) {
        *marks |= HOLDS_NUL;
    }
    return at + 6;
}

static const byte *read_escape(struct json_scan *scan, const byte *at, unsigned *marks)
{
    *marks |= ESCAPED;
    if (scan->end - at < 2) {
        return expected(scan, scan->end, "The rest of an escape");
    }
    switch (at[1]) {
    case '"':
    case '\\':
    case '/':
    case 'b':
    case 'f':
    case 'n':
    case 'r':
    case 't':
        return at + 2;
    case 'u':
        return read_unicode_escape(scan, at, marks);
    default:
        return fault(scan, INGLE_ERROR_JSON, at,
                     "After a backslash, one of \" \\ / b f n r t u was expected.");
    }
}

/* Reads from behind the opening quote; returns where the closing quote stands. */
static const byte *read_string(struct json_scan *scan, const byte *at, unsigned *marks)
{
    while (at != NULL) {
        at = skip_plain(at, scan->end);
        if (at == scan->end) {
            return expected(scan, at, "A closing quote");
        }
        if (*at == '"') {
            return at;
        }
        if (*at == '\\') {
            at = read_escape(scan, at, marks);
        } else if (*at < 0x80) {
            return expected(scan, at, "An escape in place of a raw control character");
        } else {
            size_t length = json_utf8_length(at, scan->end);
            at = length > 0 ? at + length : expected(scan, at, "UTF-8");
        }
    }
    return NULL;
}

/* ---- Member names ---- */

/* The text of a name that has escapes. All of a document's are kept until its end in one piece of
   memory as long as the document, which no unescaped text exceeds, so that they never move. */
static bool unescape_name(struct json_scan *scan, struct json_name *name)
{
    if (scan->unescaped_length == 0) {
        size_t document = (size_t)(scan->end - scan->bytes);
        if (document > scan->unescaped_capacity) {
            byte *memory = grown(scan, scan->unescaped, &scan->unescaped_capacity, document, 1);
            if (memory == NULL) {
                return false;
            }
            scan->unescaped = memory;
        }
    }
    byte *text = scan->unescaped + scan->unescaped_length;
    const byte *at = name->text, *end = at + name->length;
    size_t length = 0;
    while (at < end) {
        byte letter[4];
        size_t more;
        at = json_unescape(at, end, letter, &more);
        memcpy(text + length, letter, more);
        length += more;
    }
    name->text = text;
    name->length = (uint32_t)length;
    scan->unescaped_length += length;
    return true;
}

static bool add_name(struct json_scan *scan, const byte *text, const byte *end, unsigned marks)
{
    if (scan->name_count == scan->name_capacity) {
        struct json_name *names =
            grown(scan, scan->names, &scan->name_capacity, scan->name_count + 1, sizeof *names);
        if (names == NULL) {
            return false;
        }
        scan->names = names;
    }
    struct json_name *name = &scan->names[scan->name_count++];
    *name = (struct json_name){text, (uint32_t)(end - text), (uint32_t)scan->node_count};
    scan->due_name = (uint32_t)(text - scan->bytes);
    scan->due_name_length = name->length;
    scan->due_name_escaped = (marks & ESCAPED) != 0;
    return (marks & ESCAPED) == 0 || unescape_name(scan, name);
}

/* ---- Values ---- */

static const byte *skip_space(const byte *at, const byte *end)
{
    while (at < end && (*at == ' ' || *at == '\n' || *at == '\r' || *at == '\t')) {
        at++;
    }
    return at;
}

/* Begins a node; its kind and length come when it is read. */
static struct json_node *add_node(struct json_scan *scan, const byte *at)
{
    if (scan->node_count == scan->node_capacity) {
        struct json_node *nodes = grown(scan, scan->node_array, &scan->node_capacity,
                                        scan->node_count + 1, sizeof *nodes);
        if (nodes == NULL) {
            return NULL;
        }
        scan->node_array = nodes;
        scan->nodes = nodes;
    }
    scan->place = (uint32_t)scan->node_count;
    struct json_node *node = &scan->node_array[scan->node_count++];
    *node = (struct json_node){.start = (uint32_t)(at - scan->bytes),
                               .parent = JSON_NO_NODE,
                               .next = (uint32_t)scan->node_count};
    if (scan->depth > 0) {
        struct json_open *around = &scan->open[scan->depth - 1];
        node->parent = around->node;
        node->index = around->count++;
        if (around->is_object) {
            node->name = scan->due_name;
            node->name_length = scan->due_name_length;
            node->name_escaped = scan->due_name_escaped;
        }
    }
    return node;
}

static const byte *end_node(struct json_scan *scan, struct json_node *node, enum json_kind kind,
                            const byte *end)
{
    node->kind = (uint8_t)kind;
    node->length = (uint32_t)(end - scan->bytes) - node->start;
    return end;
}

static const byte *read_text(struct json_scan *scan, struct json_node *node, const byte *at)
{
    unsigned marks = 0;
    const byte *quote = read_string(scan, at + 1, &marks);
    if (quote == NULL) {
        return NULL;
    }
    node->escaped = (marks & ESCAPED) != 0;
    node->holds_nul = (marks & HOLDS_NUL) != 0;
    return end_node(scan, node, JSON_STRING, quote + 1);
}

static bool is_digit(const byte *at, const byte *end)
{
    return at < end && *at >= '0' && *at <= '9';
}

static const byte *read_digits(struct json_scan *scan, const byte *at, const char *what)
{
    if (!is_digit(at, scan->end)) {
        return expected(scan, at, what);
    }
    while (is_digit(at, scan->end)) {
        at++;
    }
    return at;
}

static const byte *read_number(struct json_scan *scan, struct json_node *node, const byte *at)
{
    const byte *end = scan->end;
    at += *at == '-';
    if (at < end && *at == '0') {
        at++;
        if (is_digit(at, end)) {
            return fault(scan, INGLE_ERROR_JSON, at, "No digit can follow a leading zero.");
        }
    } else {
        at = read_digits(scan, at, "A digit");
    }
    if (at != NULL && at < end && *at == '.') {
        at = read_digits(scan, at + 1, "A digit after the decimal point");
    }
    if (at != NULL && at < end && (*at == 'e' || *at == 'E')) {
        at++;
        at += at < end && (*at == '+' || *at == '-');
        at = read_digits(scan, at, "A digit of the exponent");
    }
    return at != NULL ? end_node(scan, node, JSON_NUMBER, at) : NULL;
}

static const byte *read_word(struct json_scan *scan, struct json_node *node, const byte *at,
                             const char *word, enum json_kind kind)
{
    size_t length = strlen(word);
    if ((size_t)(scan->end - at) < length || memcmp(at, word, length) != 0) {
        return fault(scan, INGLE_ERROR_JSON, at,
                     "A value was expected; the only words are true, false and null.");
    }
    return end_node(scan, node, kind, at + length);
}

static const byte *open_container(struct json_scan *scan, const byte *at, enum json_kind kind)
{
    if (scan->depth >= scan->depth_limit) {
        char sentence[sizeof scan->fault.sentence];
        snprintf(sentence, sizeof sentence,
                 "Objects and arrays can be nested %u deep, and this one is deeper.",
                 scan->depth_limit);
        return fault(scan, INGLE_ERROR_DEPTH, at, sentence);
    }
    if (scan->depth == scan->open_capacity) {
        struct json_open *open =
            grown(scan, scan->open, &scan->open_capacity, scan->depth + 1, sizeof *open);
        if (open == NULL) {
            return NULL;
        }
        scan->open = open;
    }
    uint32_t node = (uint32_t)scan->node_count - 1;
    scan->node_array[node].kind = (uint8_t)kind;
    scan->open[scan->depth++] =
        (struct json_open){node, 0, scan->name_count, kind == JSON_OBJECT};
    return at + 1;
}

static const byte *close_container(struct json_scan *scan, const byte *at)
{
    struct json_open *closed = &scan->open[--scan->depth];
    size_t names = scan->name_count - closed->first_name;
    uint32_t repeated =
        names > 1 ? json_first_repeated(scan->names + closed->first_name, names) : JSON_NO_NODE;
    if (repeated != JSON_NO_NODE) {
        scan->place = repeated;
        return fault(scan, INGLE_ERROR_DUPLICATE_NAME,
                     scan->bytes + scan->node_array[repeated].name - 1,
                     "The object has a member of this name already.");
    }
    scan->name_count = closed->first_name;
    struct json_node *node = &scan->node_array[closed->node];
    node->next = (uint32_t)scan->node_count;
    return end_node(scan, node, (enum json_kind)node->kind, at + 1);
}

/* Reads a scalar whole; of an object or array only its opening bracket. */
static const byte *read_value(struct json_scan *scan, const byte *at)
{
    struct json_node *node = add_node(scan, at);
    if (node == NULL) {
        return NULL;
    }
    switch (at < scan->end ? *at : '\0') {
    case '{':
        return open_container(scan, at, JSON_OBJECT);
    case '[':
        return open_container(scan, at, JSON_ARRAY);
    case '"':
        return read_text(scan, node, at);
    case 't':
        return read_word(scan, node, at, "true", JSON_TRUE);
    case 'f':
        return read_word(scan, node, at, "false", JSON_FALSE);
    case 'n':
        return read_word(scan, node, at, "null", JSON_NULL);
    default:
        if ((at < scan->end && *at == '-') || is_digit(at, scan->end)) {
            return read_number(scan, node, at);
        }
        return expected(scan, at, node->parent != JSON_NO_NODE && node->index == 0 &&
                                          scan->node_array[node->parent].kind == JSON_ARRAY
                                      ? "A value or ]"
                                      : "A value");
    }
}

/* Reads a member's name and the colon; returns where its value is due. */
static const byte *read_name(struct json_scan *scan, const byte *at, bool first)
{
    if (at == scan->end || *at != '"') {
        return expected(scan, at, first ? "A member name in double quotes, or },"
                                        : "A member name in double quotes");
    }
    unsigned marks = 0;
    const byte *quote = read_string(scan, at + 1, &marks);
    if (quote == NULL) {
        return NULL;
    }
    if ((marks & HOLDS_NUL) != 0) {
        return fault(scan, INGLE_ERROR_ENCODING, at, "A member name cannot hold \\u0000.");
    }
    if (!add_name(scan, at + 1, quote, marks)) {
        return NULL;
    }
    at = skip_space(quote + 1, scan->end);
    if (at == scan->end || *at != ':') {
        return expected(scan, at, "A colon");
    }
    return skip_space(at + 1, scan->end);
}

/* Goes on from behind a value or an opening bracket: closes what is complete and returns where the
   next value is due, or with nothing open any more the first byte that is no whitespace. */
static const byte *to_next_value(struct json_scan *scan, const byte *at)
{
    while (at != NULL && scan->depth > 0) {
        struct json_open *around = &scan->open[scan->depth - 1];
        scan->place = around->node;
        at = skip_space(at, scan->end);
        if (at < scan->end && *at == (around->is_object ? '}' : ']')) {
            at = close_container(scan, at);
            continue;
        }
        if (around->count > 0) {
            if (at == scan->end || *at != ',') {
                return expected(scan, at, around->is_object ? "A comma or }" : "A comma or ]");
            }
            at = skip_space(at + 1, scan->end);
        }
        return around->is_object ? read_name(scan, at, around->count == 0) : at;
    }
    return at != NULL ? skip_space(at, scan->end) : NULL;
}

static void begin_document(struct json_scan *scan, const char *bytes, size_t length,
                           unsigned depth_limit)
{
    scan->bytes = (const byte *)(bytes != NULL ? bytes : "");
    scan->end = scan->bytes + length;
    scan->depth_limit = depth_limit;
    scan->node_count = scan->name_count = scan->depth = scan->unescaped_length = 0;
    scan->place = 0;
    scan->fault = (struct json_fault){.status = INGLE_OK};
}

ingle_status json_scan_document(struct json_scan *scan, const char *bytes, size_t length,
                                unsigned depth_limit)
{
    bool too_long = length >= UINT32_MAX;
    begin_document(scan, bytes, bytes != NULL && !too_long ? length : 0, depth_limit);
    if (too_long) {
        fault(scan, INGLE_ERROR_LENGTH, scan->bytes, "The document is longer than 4 GiB.");
        return scan->fault.status;
    }
    const byte *at = skip_space(scan->bytes, scan->end);
    do {
        at = read_value(scan, at);
        at = to_next_value(scan, at);
    } while (at != NULL && scan->depth > 0);
    if (at != NULL && at < scan->end) {
        expected(scan, at, "The end of the document");
    }
    return scan->fault.status;
}
