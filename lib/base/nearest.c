/* SPDX-License-Identifier: MIT */
#include "base/nearest.h"

#include <ingle/names.h>

#include <string.h>

/* Names longer than this are compared by their start, which is enough to tell them apart. */
#define NAME_COMPARED 64

static size_t smallest(size_t a, size_t b, size_t c)
{
    size_t least = a < b ? a : b;
    return least < c ? least : c;
}

static char folded(char c)
{
    if (c == '_' || c == ' ') {
        return '-';
    }
    return c >= 'A' && c <= 'Z' ? (char)(c - 'A' + 'a') : c;
}

/* Levenshtein's distance, upper and lower case, hyphens and underscores being alike. */
static size_t edit_distance(const char *a, size_t a_length, const char *b, size_t b_length)
{
    size_t row[NAME_COMPARED + 1];
    for (size_t j = 0; j <= b_length; j++) {
        row[j] = j;
    }
    for (size_t i = 1; i <= a_length; i++) {
        size_t diagonal = row[0];
        row[0] = i;
        for (size_t j = 1; j <= b_length; j++) {
            size_t above = row[j];
            size_t change = folded(a[i - 1]) == folded(b[j - 1]) ? 0 : 1;
            row[j] = smallest(above + 1, row[j - 1] + 1, diagonal + change);
            diagonal = above;
        }
    }
    return row[b_length];
}

static size_t compared_length(const char *name)
{
    size_t length = strlen(name);
    return length < NAME_COMPARED ? length : NAME_COMPARED;
}

struct nearest nearest_start(const char *wanted)
{
    struct nearest nearest = {wanted, compared_length(wanted), NULL, 0};
    /* More than about a third of the letters wrong is another word, not a slip. */
    nearest.distance = nearest.wanted_length / 3 + 2;
    return nearest;
}

void nearest_offer(struct nearest *nearest, const char *known)
{
    size_t distance =
        edit_distance(nearest->wanted, nearest->wanted_length, known, compared_length(known));
    if (distance < nearest->distance) {
        nearest->distance = distance;
        nearest->best = known;
    }
}

const char *ingle_name_nearest(const char *name, const char *const *known, size_t count)
{
    if (name == NULL || (known == NULL && count > 0)) {
        return NULL;
    }
    struct nearest nearest = nearest_start(name);
    for (size_t i = 0; i < count; i++) {
        nearest_offer(&nearest, known[i]);
    }
    return nearest.best;
}
