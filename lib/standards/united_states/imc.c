/* SPDX-License-Identifier: MIT */
/*
 * International Mechanical Code: reduced clearances of solid-fuel stoves.
 *
 * The table was read in the building code of Chicago, which adopted it; its rows for brick were not
 * legible there and are left out.
 */
#include "measure/amounts.h"
#include "standards/united_states/clearance_tables.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define ABOVE {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_CEILING}
#define BESIDE {QUANTITY_WALL_SURFACE, IS_NOT, CHOICE_WALL_SURFACE_CEILING}
#define SHIELD(kind) {QUANTITY_WALL_PROTECTION, IS, CHOICE_WALL_PROTECTION_##kind}
#define NO_SHIELD(kind) {QUANTITY_WALL_PROTECTION, IS_NOT, CHOICE_WALL_PROTECTION_##kind}

#define TABLE "Table 308.4.2 (read as Table 308.6 in Chicago)"
#define BETWEEN_COLUMNS                                                                        \
    "Between the table's columns the reduced clearance lies on a straight line; below the "    \
    "smallest required clearance nothing is read."
#define UNCLEAR " The print that was read is unclear in this row."

#define REDUCED_ROW(kind, place_in_table, its_tables, place, more)                   \
    {                                                                                \
        MATTER_STOVE_CLEARANCE_REDUCED, TABLE, INGLE_BASIS_READ,             \
            INGLE_AT_LEAST, &formula_table_cell,                                     \
            .inputs = {QUANTITY_WALL_UNPROTECTED}, .table = &its_tables[place_in_table], \
            .when = {STOVE, SHIELD(kind), place}, .reading = BETWEEN_COLUMNS more    \
    }
#define REDUCED_ROWS(kind, place_in_table, more)                             \
    REDUCED_ROW(kind, place_in_table, imc_clearance_above, ABOVE, more),     \
    REDUCED_ROW(kind, place_in_table, imc_clearance_beside, BESIDE, more)

#define HELD_OFF(kind)                                                                       \
    {                                                                                        \
        MATTER_SHIELD_AIR_SPACE, TABLE, INGLE_BASIS_READ, INGLE_AT_LEAST,            \
            &formula_fixed, .numbers = {INCHES(1)}, .when = {STOVE, SHIELD(kind)}            \
    }

#define NOT_KNOWN(kind, its_reading)                                                         \
    {                                                                                        \
        MATTER_STOVE_CLEARANCE_REDUCED, TABLE, INGLE_BASIS_READ, INGLE_AT_LEAST,     \
            &formula_not_printed, .when = {STOVE, SHIELD(kind)}, .reading = its_reading      \
    }
#define BRICK "The table's rows for brick could not be read in the print that was seen."
#define NOT_AMONG "This protection is not among the rows of the table that were read."

static const struct ingle_rule rules[] = {
    REDUCED_ROWS(STEEL_OVER_BATTS, 0, ""),
    REDUCED_ROWS(STEEL_VENTED, 1, ""),
    REDUCED_ROWS(DOUBLE_STEEL_VENTED, 2, ""),
    REDUCED_ROWS(BATTS_BETWEEN_STEEL, 3, UNCLEAR),
    REDUCED_ROWS(BOARD_OVER_BATTS, 4, UNCLEAR),
    NOT_KNOWN(MASONRY, BRICK),
    NOT_KNOWN(MASONRY_VENTED, BRICK),
    NOT_KNOWN(BOARD_VENTED, NOT_AMONG),
    NOT_KNOWN(THIN_BOARD_VENTED, NOT_AMONG),
    {MATTER_STOVE_CLEARANCE, TABLE, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {RATIO(1, 1)}, .when = {STOVE, SHIELD(NONE)},
     .reading = "Without protection the clearance is the one that heads the table's columns: "
                "nothing is taken off."},
    HELD_OFF(STEEL_OVER_BATTS),
    HELD_OFF(STEEL_VENTED),
    HELD_OFF(DOUBLE_STEEL_VENTED),
    HELD_OFF(BATTS_BETWEEN_STEEL),
    {MATTER_STOVE_CLEARANCE_REDUCED, "308.4.1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_listing, .inputs = {QUANTITY_WALL_BY_LISTING},
     .when = {STOVE, SHIELD(LISTED_ASSEMBLY)},
     .reading = "A protective assembly listed to UL 1618, used to its instructions."},
    {MATTER_STOVE_CLEARANCE_LEAST, "308.4.3", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_input_or_most, .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {INCHES(12)},
     .when = {STOVE, NO_SHIELD(NONE), NO_SHIELD(LISTED_ASSEMBLY)},
     .reading = "For solid fuel: a clearance of 12 in or less is not reduced, a larger one never "
                "to less than 12 in."},
};

static const struct ingle_standard editions[] = {
    {.id = "imc-2015", .title = "International Mechanical Code", .place = "United States",
     .note = "International Mechanical Code 2015: reduced clearances, in inches. The table was "
             "read in the building code of Chicago, which prints it as Table 308.6.",
     .unit = UNIT_INCH, .edition = 2015, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_imc = {editions, COUNT_OF(editions)};
