/* SPDX-License-Identifier: MIT */
/*
 * The printed tables of reduced clearances: one for each protection and place, its rows the
 * clearance that is required without protection. Each code has its own; none follows from another.
 */
#ifndef INGLE_STANDARDS_CLEARANCE_TABLES_H
#define INGLE_STANDARDS_CLEARANCE_TABLES_H

#include "formulas/table.h"

/* International Residential Code, Table M1306.2, by its rows. */
extern const struct ingle_table irc_clearance_above[8];
extern const struct ingle_table irc_clearance_beside[8];

/*
 * International Mechanical Code, Table 308.4.2, read as Table 308.6 in Chicago: its first five
 * protections in printed order.
 */
extern const struct ingle_table imc_clearance_above[5];
extern const struct ingle_table imc_clearance_beside[5];

#endif
