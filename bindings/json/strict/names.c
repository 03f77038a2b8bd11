/* SPDX-License-Identifier: MIT */
#include "strict/names.h"

#include "strict/scan.h"

#include <stdbool.h>
#include <string.h>

/* Objects up to this size have their names compared each with each; larger ones are sorted. */
enum { FEW_NAMES = 16 };

static bool same_name(const struct json_name *a, const struct json_name *b)
{
    return a->length == b->length && memcmp(a->text, b->text, a->length) == 0;
}

/* An order that brings equal names together, in document order among themselves. */
static bool goes_before(const struct json_name *a, const struct json_name *b)
{
    if (a->length != b->length) {
        return a->length < b->length;
    }
    int order = memcmp(a->text, b->text, a->length);
    return order != 0 ? order < 0 : a->node < b->node;
}

static void sift_down(struct json_name *names, size_t root, size_t count)
{
    struct json_name sifted = names[root];
    for (size_t child = 2 * root + 1; child < count; child = 2 * root + 1) {
        if (child + 1 < count && goes_before(&names[child], &names[child + 1])) {
            child++;
        }
        if (!goes_before(&sifted, &names[child])) {
            break;
        }
        names[root] = names[child];
        root = child;
    }
    names[root] = sifted;
}

/* Heapsort: no memory, no recursion, and no input that makes it slow. */
static void sort_names(struct json_name *names, size_t count)
{
    for (size_t root = count / 2; root > 0; root--) {
        sift_down(names, root - 1, count);
    }
    for (size_t left = count - 1; left > 0; left--) {
        struct json_name last = names[0];
        names[0] = names[left];
        names[left] = last;
        sift_down(names, 0, left);
    }
}

uint32_t json_first_repeated(struct json_name *names, size_t count)
{
    uint32_t repeated = JSON_NO_NODE;
    if (count <= FEW_NAMES) {
        for (size_t later = 1; later < count; later++) {
            for (size_t earlier = 0; earlier < later; earlier++) {
                if (same_name(&names[earlier], &names[later])) {
                    return names[later].node;
                }
            }
        }
        return repeated;
    }
    sort_names(names, count);
    for (size_t i = 1; i < count; i++) {
        if (names[i].node < repeated && same_name(&names[i - 1], &names[i])) {
            repeated = names[i].node;
        }
    }
    return repeated;
}
