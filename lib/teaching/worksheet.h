/* SPDX-License-Identifier: MIT */
/*
 * A worksheet as the files of this room see it.
 */
#ifndef INGLE_TEACHING_WORKSHEET_H
#define INGLE_TEACHING_WORKSHEET_H

#include <ingle/worksheet.h>

/* Something to measure. Rules that need it are a chain through the worksheet's needs. */
struct worksheet_entry {
    const ingle_quantity *quantity;
    size_t item; /* SIZE_MAX of a group that nobody has looked at */
    size_t first_need, last_need;
};

struct worksheet_need {
    const char *rule; /* an id, which is constant */
    size_t next;      /* SIZE_MAX after the last */
};

enum { WORKSHEET_ERROR_SIZE = 320 };

struct ingle_worksheet {
    ingle_allocator allocator;
    struct worksheet_entry *entries;
    size_t entry_count, entry_capacity;
    struct worksheet_need *needs;
    size_t need_count, need_capacity;
    const ingle_quantity **assumed;
    size_t assumed_count, assumed_capacity;
    char error_text[WORKSHEET_ERROR_SIZE];
};

#endif
