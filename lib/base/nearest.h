/* SPDX-License-Identifier: MIT */
/*
 * The known name that a mistyped one most likely means.
 */
#ifndef INGLE_BASE_NEAREST_H
#define INGLE_BASE_NEAREST_H

#include <stddef.h>

/* Keeps the best of the names offered one by one. */
struct nearest {
    const char *wanted;
    size_t wanted_length;
    const char *best; /* NULL while none is near enough */
    size_t distance;
};

struct nearest nearest_start(const char *wanted);
void nearest_offer(struct nearest *nearest, const char *known);

#endif
