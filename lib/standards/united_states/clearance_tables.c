/* SPDX-License-Identifier: MIT */
/*
 * Tables of reduced clearances as printed, in inches, smallest required clearance first.
 */
#include "standards/united_states/clearance_tables.h"

#include "measure/amounts.h"
#include "standards/rule.h"

static const int64_t irc_required[] = {INCHES(6), INCHES(9), INCHES(12), INCHES(18), INCHES(36)};
static const int64_t imc_required[] = {INCHES(6), INCHES(9), INCHES(18), INCHES(36)};

#define CELLS(...) ((const int64_t[]){__VA_ARGS__})

#define IRC(its_cells)                                                                          \
    {                                                                                           \
        .name = "Table M1306.2", .rows = {irc_required, COUNT_OF(irc_required), 0, KEY_EXACT},  \
        .cells = its_cells                                                                      \
    }
#define IRC_ROW(six, nine, twelve, eighteen, thirty_six) \
    IRC(CELLS(INCHES(six), INCHES(nine), INCHES(twelve), INCHES(eighteen), INCHES(thirty_six)))

/* Column 1: above the appliance or a horizontal connector; rows 1 and 4 are not allowed there. */
const struct ingle_table irc_clearance_above[8] = {
    [1] = IRC_ROW(4, 6, 9, 12, 24),
    [2] = IRC_ROW(3, 5, 6, 9, 18),
    [4] = IRC_ROW(3, 5, 6, 9, 18),
    [5] = IRC_ROW(3, 5, 6, 9, 18),
    [6] = IRC_ROW(3, 5, 6, 9, 18),
    [7] = IRC_ROW(3, 5, 6, 9, 18),
};

/* Column 2: from the appliance, a vertical connector and single-wall pipe, sides and rear. */
const struct ingle_table irc_clearance_beside[8] = {
    IRC_ROW(5, 6, 9, 12, 24),
    IRC_ROW(3, 5, 6, 9, 18),
    IRC_ROW(3, 3, 4, 6, 12),
    IRC_ROW(6, 6, 6, 6, 12),
    IRC_ROW(2, 3, 4, 6, 12),
    IRC_ROW(3, 3, 4, 6, 12),
    IRC_ROW(3, 3, 4, 6, 12),
    IRC_ROW(3, 3, 4, 6, 12),
};

#define IMC_ROW(six, nine, eighteen, thirty_six)                                                \
    {                                                                                           \
        .name = "Table 308.6", .rows = {imc_required, COUNT_OF(imc_required), 0, KEY_INTERPOLATE}, \
        .cells = CELLS(INCHES(six), INCHES(nine), INCHES(eighteen), INCHES(thirty_six))         \
    }

/* A horizontal assembly above the source of heat. */
const struct ingle_table imc_clearance_above[5] = {
    IMC_ROW(3, 5, 9, 18),
    IMC_ROW(3, 5, 9, 18),
    IMC_ROW(3, 5, 9, 18),
    IMC_ROW(3, 5, 9, 18),
    IMC_ROW(4, 6, 12, 24),
};

/* A horizontal assembly beneath it, and every vertical one. */
const struct ingle_table imc_clearance_beside[5] = {
    IMC_ROW(3, 3, 6, 12),
    IMC_ROW(2, 3, 6, 12),
    IMC_ROW(3, 3, 6, 12),
    IMC_ROW(3, 3, 6, 12),
    IMC_ROW(3, 5, 9, 18),
};
