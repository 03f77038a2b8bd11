/* SPDX-License-Identifier: MIT */
/*
 * The strict pass over a JSON document: it holds RFC 8259 and nothing else, and knows where each
 * value stands.
 *
 * Held are the grammar; UTF-8 (no overlong form, no surrogate, nothing past U+10FFFF, no byte-order
 * mark, no NUL byte); member names that are unique in their object once unescaped; and a limit of
 * depth. Stricter than the RFC's grammar are two things that no text can hold: half a surrogate
 * pair written as an escape, and \u0000 in a member name. \u0000 in a value is accepted and marked.
 *
 * A scan keeps its memory from document to document, so a stream of documents of like size costs no
 * allocation. It points into the bytes it was given: they must live as long as it is asked.
 */
#ifndef INGLE_JSON_SCAN_H
#define INGLE_JSON_SCAN_H

#include <ingle/memory.h>
#include <ingle/status.h>

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

enum json_kind {
    JSON_OBJECT,
    JSON_ARRAY,
    JSON_STRING,
    JSON_NUMBER,
    JSON_TRUE,
    JSON_FALSE,
    JSON_NULL
};

/* The parent of the document's own value. */
#define JSON_NO_NODE UINT32_MAX

/*
 * One value. Nodes stand in document order, a container before what it contains; its first child,
 * if any, is the node after it, and a child's next sibling is the child's `next`.
 */
struct json_node {
    uint32_t start;       /* offset of the value's source text; a string's begins with its quote */
    uint32_t length;      /* of the source text in bytes, a string's two quotes included */
    uint32_t name;        /* of a member: offset of its name between the quotes, as written */
    uint32_t name_length; /* of the name as written, in bytes; 0 for what is no member */
    uint32_t parent;      /* the node that contains this one, or JSON_NO_NODE */
    uint32_t index;       /* from 0 among the parent's children, in an object too */
    uint32_t next;        /* the first node after this value and all it contains */
    uint8_t kind;         /* an enum json_kind */
    bool escaped;         /* the string has escapes, so that its source is not its text */
    bool holds_nul;       /* the string has \u0000 */
    bool name_escaped;    /* the name has escapes */
};

/* Why and where a document was refused. */
struct json_fault {
    ingle_status status;
    size_t offset;     /* in bytes; the document's length where it ends too early */
    size_t node;       /* what json_scan_pointer() takes: the value that was begun or due there,
                          or else the container around it */
    char sentence[96]; /* what was expected, and what stands there instead */
};

struct json_name; /* a member name of an object that is still open */
struct json_open; /* an object or array that is still open */

struct json_scan {
    /* To be read: the nodes after INGLE_OK only, the fault after anything else. */
    const struct json_node *nodes;
    size_t node_count;
    struct json_fault fault;

    /* The scan's own. */
    ingle_allocator allocator;
    const unsigned char *bytes, *end;
    struct json_node *node_array;
    struct json_name *names;
    struct json_open *open;
    unsigned char *unescaped; /* the texts of names that have escapes */
    size_t node_capacity, name_capacity, open_capacity, unescaped_capacity;
    size_t name_count, depth, unescaped_length;
    unsigned depth_limit;
    uint32_t place;                    /* where a fault would be, as json_fault has it */
    uint32_t due_name, due_name_length; /* the name whose value comes next */
    bool due_name_escaped;
};

/* Begins a scan; it has no memory yet. `allocator` NULL takes the C library's. */
void json_scan_init(struct json_scan *scan, const ingle_allocator *allocator);

/* Gives a scan's memory back. It is then as json_scan_init() leaves it. */
void json_scan_free(struct json_scan *scan);

/*
 * Scans one document. The first fault in the order of the bytes is reported, but a name that comes
 * twice only when its object ends; it is then the second one that is at fault.
 *
 * `depth_limit` is how many objects and arrays can be open at once: 0 allows a bare scalar only.
 *
 * Returns INGLE_OK, or INGLE_ERROR_JSON, _ENCODING, _DUPLICATE_NAME, _DEPTH, _LENGTH (from 4 GiB)
 * or _MEMORY, and then `fault` says the rest.
 */
ingle_status json_scan_document(struct json_scan *scan, const char *bytes, size_t length,
                                unsigned depth_limit);

/*
 * The line and column of a byte, both from 1. A line ends with a line feed; a column is a Unicode
 * code point, so that a tab is one column and a letter with a separate accent is two.
 */
void json_scan_place(const struct json_scan *scan, size_t offset, size_t *line, size_t *column);

/*
 * Writes the JSON Pointer (RFC 6901) of a node: "" is the whole document. In the manner of
 * snprintf() it returns the pointer's length, and what does not fit `capacity` is cut, between two
 * code points. `buffer` may be NULL if `capacity` is 0. Works for a fault's node too.
 */
size_t json_scan_pointer(const struct json_scan *scan, size_t node, char *buffer, size_t capacity);

#endif
