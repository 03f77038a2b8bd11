/* SPDX-License-Identifier: MIT */
/*
 * A value of a document by its two sides: json-c's tree has the texts, the scan has the place and
 * the source. Both are in document order and names are unique, so they are walked in step.
 */
#ifndef INGLE_JSON_VALUE_H
#define INGLE_JSON_VALUE_H

#include "strict/scan.h"

#include <json-c/json_object.h>
#include <json-c/json_object_iterator.h>

struct json_value {
    struct json_object *tree; /* NULL for null */
    uint32_t node;
};

/* A walk through the members of an object or the elements of an array. */
struct json_walk {
    const struct json_scan *scan;
    struct json_value around;
    uint32_t node; /* the next one */
    struct json_object_iterator member, end;
};

struct json_walk json_walk_start(const struct json_scan *scan, struct json_value around);

/*
 * Gives the next value, and its name in an object (NULL in an array); false at the end. The name
 * is borrowed from the tree.
 */
bool json_walk_next(struct json_walk *walk, const char **name, struct json_value *value);

enum json_kind json_value_kind(const struct json_scan *scan, struct json_value value);

/*
 * Whether the tree has all that the scan went through. json-c leaves out what it had no memory for
 * and says nothing; a walk in step needs both sides whole.
 */
bool json_tree_is_whole(const struct json_scan *scan, struct json_object *tree);

/*
 * The node that a JSON Pointer leads to, or the last one on its way that is there: what was not
 * written has no place but that of the object it would stand in.
 */
uint32_t json_pointer_node(const struct json_scan *scan, const char *pointer);

#endif
