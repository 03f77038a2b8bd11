/* SPDX-License-Identifier: MIT */
/*
 * A sweep as the files of this room see it.
 */
#ifndef INGLE_WHATIF_SWEEP_H
#define INGLE_WHATIF_SWEEP_H

#include "whatif/stepping.h"

#include <ingle/sweep.h>

/* A finding at a value; amounts are in base units of the line's quantity. */
struct sweep_cell {
    const ingle_rule *rule; /* NULL where there is no finding */
    int64_t required, measured, margin;
    int8_t verdict;
    int8_t relation;
    bool has_required, has_measured, has_margin;
};

struct sweep_line {
    const ingle_rule *rule; /* the first row met */
    const ingle_standard *standard;
    const ingle_quantity *quantity;
    size_t item;
    struct sweep_cell *cells; /* one for each value */
};

struct ingle_sweep {
    ingle_allocator allocator;
    ingle_range range;
    size_t value_count;
    struct sweep_line *lines;
    size_t line_count, line_capacity;
    char error_text[WHATIF_ERROR_TEXT_SIZE];
};

#endif
