/* SPDX-License-Identifier: MIT */
/*
 * Canada's tables of flue sizes for masonry fireplaces, Tables 9.21.2.5.A (round) and 9.21.2.5.B
 * (rectangular): the least and the greatest size by opening area and chimney height.
 */
#ifndef INGLE_STANDARDS_CANADA_FLUE_TABLES_H
#define INGLE_STANDARDS_CANADA_FLUE_TABLES_H

#include "formulas/table.h"

/* A table by the row that an opening belongs to: upper areas as limits, or areas rounded first. */
struct flue_table {
    struct ingle_table upper_limits;
    struct ingle_table rounded;
};

extern const struct flue_table canada_round_least;
extern const struct flue_table canada_round_most;
extern const struct flue_table canada_shorter_least;
extern const struct flue_table canada_shorter_most;
extern const struct flue_table canada_longer_least;
extern const struct flue_table canada_longer_most;

#endif
