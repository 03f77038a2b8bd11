/* SPDX-License-Identifier: MIT */
/*
 * A printed table, as data: its keys and cells as they stand, and how it is read between them.
 */
#ifndef INGLE_FORMULAS_TABLE_H
#define INGLE_FORMULAS_TABLE_H

#include "survey/quantity.h"

/* A cell without value. */
#define NO_VALUE (-INT64_C(1))

/* Which key of a table, all in rising order, belongs to an amount. */
enum table_reading {
    KEY_UP_TO,      /* the first key that is not smaller: keys are upper limits, included */
    KEY_BELOW,      /* the first key that is larger: keys are upper limits, not included */
    KEY_FROM,       /* the last key that is not larger: keys are lower limits, included */
    KEY_EXACT,      /* only a key itself */
    KEY_INTERPOLATE /* on a straight line between two keys, for rows only */
};

struct table_keys {
    const int64_t *keys;
    size_t count; /* 0 where the table has one row or column only, without key */
    int64_t least; /* smaller amounts are outside, for keys that are upper limits */
    enum table_reading reading;
};

struct ingle_table {
    const char *name; /* as printed: "Table 10.6.2.3" */
    struct table_keys rows;
    struct table_keys columns;
    const int64_t *cells; /* row after row */
};

#endif
