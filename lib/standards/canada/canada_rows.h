/* SPDX-License-Identifier: MIT */
/*
 * Conditions and rows that the codes of Canada share.
 */
#ifndef INGLE_STANDARDS_CANADA_ROWS_H
#define INGLE_STANDARDS_CANADA_ROWS_H

#include "standards/canada/canada_flue_tables.h"
#include "standards/rule.h"

#define KIND(test, kind) {QUANTITY_APPLIANCE_KIND, test, CHOICE_APPLIANCE_KIND_##kind}
#define YES(quantity) {QUANTITY_##quantity, IS, true}
#define NO(quantity) {QUANTITY_##quantity, IS, false}
#define KIND_BIT(kind) CHOICE_BIT(CHOICE_APPLIANCE_KIND_##kind)
#define KINDS(kinds) {QUANTITY_APPLIANCE_KIND, ONE_OF, kinds}
/* The codes' masonry fireplace may have a liner of steel. */
#define MASONRY_FIREPLACE KINDS(KIND_BIT(MASONRY_FIREPLACE) | KIND_BIT(STEEL_FIREPLACE_UNIT))
#define STOVE KIND(IS, STOVE)
#define INSERT KIND(IS, INSERT)
#define FACTORY_BUILT KIND(IS, FACTORY_BUILT_FIREPLACE)
#define BUILT_OF_MASONRY {QUANTITY_CHIMNEY_CONSTRUCTION, IS, CHOICE_CHIMNEY_CONSTRUCTION_MASONRY}
#define MASONRY_CHIMNEY KIND(IS_NOT, FACTORY_BUILT_FIREPLACE), BUILT_OF_MASONRY
#define SEVERAL_FLUES {QUANTITY_CHIMNEY_FLUES, IS_NOT, CHOICE_CHIMNEY_FLUES_SINGLE}
#define STEEL_LINED {QUANTITY_FIREBOX_LINING, IS, CHOICE_FIREBOX_LINING_STEEL}
#define FIREBRICK {QUANTITY_FIREBOX_LINING, IS, CHOICE_FIREBOX_LINING_FIREBRICK}
#define SLAB NO(HEARTH_ON_COMBUSTIBLE_FLOOR)
#define ON_FLOOR YES(HEARTH_ON_COMBUSTIBLE_FLOOR)
#define ROUND_FLUE {QUANTITY_FLUE_SHAPE, IS, CHOICE_FLUE_SHAPE_ROUND}
#define SIDED_FLUE                                             \
    {QUANTITY_FLUE_SHAPE, IS_NOT, CHOICE_FLUE_SHAPE_ROUND},    \
        {QUANTITY_FLUE_SHAPE, IS_NOT, CHOICE_FLUE_SHAPE_OVAL}

/* ---- flues of masonry fireplaces ------------------------------------------------------------ */

#define FLUE_READING                                                                              \
    "The opening is width times height at the face, and the chimney's height is that of the flue " \
    "above the top of the opening: the article defines neither. Nor does it say whether a flue's " \
    "size is its inside or the nominal one; "
#define ROUND_READING FLUE_READING "here it is the diameter as recorded."
#define RECTANGULAR_READING                                                                  \
    FLUE_READING "here it is each side as recorded, and the shorter and the longer side are " \
                 "compared with those of the printed size."

#define FLUE_ROW(for_matter, for_relation, its_table, option, in_words, ...)                 \
    {                                                                                        \
        for_matter, "9.21.2.5(1)", INGLE_BASIS_READ, for_relation, &formula_table_cell,      \
            .inputs = {QUANTITY_OPENING_AREA, QUANTITY_FLUE_HEIGHT}, .table = &its_table,    \
            .when = {MASONRY_FIREPLACE, __VA_ARGS__}, .follows = FOLLOWS(AREA_ROWS, option), \
            .reading = in_words                                                              \
    }

/* A size by each way to read the areas; what follows are the conditions on the flue's shape. */
#define FLUE_ROWS(for_matter, for_relation, its_table, in_words, ...)                  \
    FLUE_ROW(for_matter, for_relation, its_table.upper_limits, UPPER_LIMITS, in_words, \
             __VA_ARGS__),                                                             \
        FLUE_ROW(for_matter, for_relation, its_table.rounded, ROUNDED, in_words, __VA_ARGS__)

#define ROUND_FLUE_ROWS                                                                   \
    FLUE_ROWS(MATTER_FLUE_DIAMETER, INGLE_AT_LEAST, canada_round_least, ROUND_READING,    \
              ROUND_FLUE),                                                                \
    FLUE_ROWS(MATTER_FLUE_DIAMETER_MOST, INGLE_AT_MOST, canada_round_most, ROUND_READING, \
              ROUND_FLUE)

#define RECTANGULAR_FLUE_ROWS                                                    \
    FLUE_ROWS(MATTER_FLUE_SHORTER_SIDE, INGLE_AT_LEAST, canada_shorter_least,    \
              RECTANGULAR_READING, SIDED_FLUE),                                  \
    FLUE_ROWS(MATTER_FLUE_LONGER_SIDE, INGLE_AT_LEAST, canada_longer_least,      \
              RECTANGULAR_READING, SIDED_FLUE),                                  \
    FLUE_ROWS(MATTER_FLUE_SHORTER_SIDE_MOST, INGLE_AT_MOST, canada_shorter_most, \
              RECTANGULAR_READING, SIDED_FLUE),                                  \
    FLUE_ROWS(MATTER_FLUE_LONGER_SIDE_MOST, INGLE_AT_MOST, canada_longer_most,   \
              RECTANGULAR_READING, SIDED_FLUE)

/* ---- masonry around a firebox: 9.22.3.1 ----------------------------------------------------- */

#define FIREBOX_WALL_ROWS(section)                                                                 \
    {MATTER_FIREBOX_WALL, section, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,               \
     .numbers = {MILLIMETRES(190)},                                                                \
     .when = {MASONRY_FIREPLACE, FIREBRICK,                                                        \
              {QUANTITY_FIREBOX_LINING_THICKNESS, LESS_THAN, MILLIMETRES(51)}},                    \
     .reading = "Back and sides, the liner counted in, where the firebrick is less than 51 mm "    \
                "thick."},                                                                         \
    {MATTER_FIREBOX_WALL, section, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,               \
     .numbers = {MILLIMETRES(190)},                                                                \
     .when = {MASONRY_FIREPLACE, STEEL_LINED, NO(FIREBOX_AIR_CHAMBER)},                            \
     .reading = "Back and sides, the liner counted in, where the liner is of metal."},             \
    {MATTER_FIREBOX_MASONRY, section, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,            \
     .numbers = {MILLIMETRES(90)},                                                                 \
     .when = {MASONRY_FIREPLACE, STEEL_LINED, YES(FIREBOX_AIR_CHAMBER), NO(FIREBOX_HOLLOW_UNITS)}, \
     .reading = "Of solid units about a steel liner with an air-circulating chamber."},            \
    {MATTER_FIREBOX_MASONRY, section, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,            \
     .numbers = {MILLIMETRES(190)},                                                                \
     .when = {MASONRY_FIREPLACE, STEEL_LINED, YES(FIREBOX_AIR_CHAMBER),                            \
              YES(FIREBOX_HOLLOW_UNITS)},                                                          \
     .reading = "Of hollow units about a steel liner with an air-circulating chamber."}

#endif
