/* SPDX-License-Identifier: MIT */
#include "reading/value.h"

#include "strict/letters.h"

#include <string.h>

struct json_walk json_walk_start(const struct json_scan *scan, struct json_value around)
{
    struct json_walk walk = {.scan = scan, .around = around, .node = around.node + 1};
    if (scan->nodes[around.node].kind == JSON_OBJECT) {
        walk.member = json_object_iter_begin(around.tree);
        walk.end = json_object_iter_end(around.tree);
    }
    return walk;
}

bool json_walk_next(struct json_walk *walk, const char **name, struct json_value *value)
{
    const struct json_node *nodes = walk->scan->nodes;
    if (walk->node >= nodes[walk->around.node].next) {
        return false;
    }
    value->node = walk->node;
    walk->node = nodes[walk->node].next;
    if (nodes[walk->around.node].kind == JSON_ARRAY) {
        *name = NULL;
        value->tree = json_object_array_get_idx(walk->around.tree, nodes[value->node].index);
        return true;
    }
    *name = json_object_iter_peek_name(&walk->member);
    value->tree = json_object_iter_peek_value(&walk->member);
    json_object_iter_next(&walk->member);
    return true;
}

enum json_kind json_value_kind(const struct json_scan *scan, struct json_value value)
{
    return (enum json_kind)scan->nodes[value.node].kind;
}

/* ---- whether both sides are whole ------------------------------------------------------------ */

/* The length of a text once it is unescaped. */
static size_t text_length(const unsigned char *at, const unsigned char *end)
{
    size_t sum = 0;
    while (at < end) {
        unsigned char letter[4];
        size_t length;
        at = json_unescape(at, end, letter, &length);
        sum += length;
    }
    return sum;
}

static bool name_is_whole(const struct json_scan *scan, const struct json_node *node,
                          const char *name)
{
    const unsigned char *source = scan->bytes + node->name;
    size_t length = strlen(name);
    if (node->name_escaped) {
        return length == text_length(source, source + node->name_length);
    }
    return length == node->name_length && memcmp(name, source, length) == 0;
}

static bool text_is_whole(const struct json_scan *scan, const struct json_node *node,
                          struct json_object *text)
{
    const unsigned char *source = scan->bytes + node->start + 1;
    size_t length = node->length - 2;
    return (size_t)json_object_get_string_len(text) ==
           (node->escaped ? text_length(source, source + length) : length);
}

static bool is_of_kind(struct json_object *tree, enum json_kind kind)
{
    switch (json_object_get_type(tree)) {
    case json_type_object:
        return kind == JSON_OBJECT;
    case json_type_array:
        return kind == JSON_ARRAY;
    case json_type_string:
        return kind == JSON_STRING;
    case json_type_boolean:
        return kind == JSON_TRUE || kind == JSON_FALSE;
    case json_type_int:
    case json_type_double:
        return kind == JSON_NUMBER;
    case json_type_null:
        return kind == JSON_NULL;
    }
    return false;
}

static size_t child_count(const struct json_node *nodes, uint32_t around)
{
    size_t count = 0;
    for (uint32_t i = around + 1; i < nodes[around].next; i = nodes[i].next) {
        count++;
    }
    return count;
}

/* Of an object or array: whether each child has its counterpart. */
static bool has_all_children(const struct json_scan *scan, struct json_value value)
{
    const struct json_node *node = &scan->nodes[value.node];
    size_t count = child_count(scan->nodes, value.node);
    return node->kind == JSON_OBJECT ? count == (size_t)json_object_object_length(value.tree)
                                     : count == json_object_array_length(value.tree);
}

/* No deeper than the scan allowed. */
static bool value_is_whole(const struct json_scan *scan, struct json_value value)
{
    const struct json_node *node = &scan->nodes[value.node];
    if (!is_of_kind(value.tree, (enum json_kind)node->kind)) {
        return false;
    }
    if (node->kind == JSON_STRING) {
        return text_is_whole(scan, node, value.tree);
    }
    if (node->kind != JSON_OBJECT && node->kind != JSON_ARRAY) {
        return true;
    }
    if (!has_all_children(scan, value)) {
        return false;
    }
    struct json_walk walk = json_walk_start(scan, value);
    struct json_value child;
    const char *name;
    while (json_walk_next(&walk, &name, &child)) {
        if ((name != NULL && !name_is_whole(scan, &scan->nodes[child.node], name)) ||
            !value_is_whole(scan, child)) {
            return false;
        }
    }
    return true;
}

bool json_tree_is_whole(const struct json_scan *scan, struct json_object *tree)
{
    return value_is_whole(scan, (struct json_value){tree, 0});
}

/* ---- from a pointer to its node -------------------------------------------------------------- */

/* Whether a step of a pointer, `~0` and `~1` being escapes, is this member's name. */
static bool is_name(const struct json_scan *scan, const struct json_node *node, const char *step,
                    size_t length)
{
    const unsigned char *at = scan->bytes + node->name, *end = at + node->name_length;
    size_t i = 0;
    while (at < end) {
        unsigned char letter[4];
        size_t more;
        at = json_unescape(at, end, letter, &more);
        for (size_t j = 0; j < more; j++) {
            bool escape = i + 1 < length && step[i] == '~';
            char due = escape ? (step[i + 1] == '1' ? '/' : '~') : i < length ? step[i] : '\0';
            if (i >= length || letter[j] != (unsigned char)due) {
                return false;
            }
            i += escape ? 2 : 1;
        }
    }
    return i == length;
}

static bool is_index(uint32_t index, const char *step, size_t length)
{
    uint64_t number = 0;
    for (size_t i = 0; i < length; i++) {
        if (step[i] < '0' || step[i] > '9' || number > UINT32_MAX) {
            return false;
        }
        number = number * 10 + (uint64_t)(step[i] - '0');
    }
    return length > 0 && number == index;
}

static uint32_t child_at(const struct json_scan *scan, uint32_t around, const char *step,
                         size_t length)
{
    const struct json_node *nodes = scan->nodes;
    for (uint32_t i = around + 1; i < nodes[around].next; i = nodes[i].next) {
        if (nodes[around].kind == JSON_OBJECT ? is_name(scan, &nodes[i], step, length)
                                              : is_index(nodes[i].index, step, length)) {
            return i;
        }
    }
    return JSON_NO_NODE;
}

uint32_t json_pointer_node(const struct json_scan *scan, const char *pointer)
{
    uint32_t node = 0;
    while (*pointer == '/') {
        size_t length = strcspn(pointer + 1, "/");
        uint32_t child = child_at(scan, node, pointer + 1, length);
        if (child == JSON_NO_NODE) {
            return node;
        }
        node = child;
        pointer += 1 + length;
    }
    return node;
}
