/* SPDX-License-Identifier: MIT */
/*
 * A comparison as the files of this room see it.
 */
#ifndef INGLE_WHATIF_COMPARE_H
#define INGLE_WHATIF_COMPARE_H

#include <ingle/compare.h>

struct ingle_comparison {
    ingle_allocator allocator;
    const ingle_report *report;
    const ingle_finding **lines; /* the first finding of each */
    size_t line_count, line_capacity;
    const ingle_finding **cells; /* line by line */
};

#endif
