/* SPDX-License-Identifier: MIT */
/*
 * Canada: Ontario Building Code 2012, National Building Code 2023 Alberta Edition, CSA A405.
 *
 * Numbers in millimetres and metres, as printed; the inches beside them are rounded and not used.
 */
#include "measure/amounts.h"
#include "standards/canada/canada_flue_tables.h"
#include "standards/publications.h"

#define MASONRY_FIREPLACE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}
#define INSERT {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}
#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define CLAY_LINING {QUANTITY_CHIMNEY_LINER, IS, CHOICE_CHIMNEY_LINER_CLAY}
#define STEEL_ANGLE {QUANTITY_LINTEL_STEEL_ANGLE, IS, true}
#define SOLID_FUEL {QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}
#define FIREBRICK {QUANTITY_FIREBOX_LINING, IS, CHOICE_FIREBOX_LINING_FIREBRICK}
#define THIN_LINING {QUANTITY_FIREBOX_LINING_THICKNESS, LESS_THAN, MILLIMETRES(51)}
#define SEVERAL_FLUES {QUANTITY_CHIMNEY_FLUES, IS_NOT, CHOICE_CHIMNEY_FLUES_SINGLE}
#define INTERIOR_CHIMNEY {QUANTITY_CHIMNEY_PLACE, IS, CHOICE_CHIMNEY_PLACE_INTERIOR}
#define EXTERIOR_CHIMNEY {QUANTITY_CHIMNEY_PLACE, IS, CHOICE_CHIMNEY_PLACE_EXTERIOR}
#define WARM_AIR {QUANTITY_WARM_AIR_OUTLETS, IS, true}
#define METAL_IN_FACE {QUANTITY_SEPARATION_METAL_THROUGH_FACE, IS, true}
#define COMBUSTIBLE {QUANTITY_TRIM_COMBUSTIBLE, IS, true}
#define ABOVE_OPENING {QUANTITY_TRIM_SIDE, IS, CHOICE_TRIM_SIDE_ABOVE}
#define BESIDE_OPENING {QUANTITY_TRIM_SIDE, IS_NOT, CHOICE_TRIM_SIDE_ABOVE}
#define SLAB {QUANTITY_HEARTH_ON_COMBUSTIBLE_FLOOR, IS, false}
#define ON_FLOOR {QUANTITY_HEARTH_ON_COMBUSTIBLE_FLOOR, IS, true}
#define RAISED_ABOVE_FLOOR {QUANTITY_HEARTH_FIREBOX_RAISE, AT_LEAST, MILLIMETRES(200)}

/* ---- flues of masonry fireplaces ------------------------------------------------------------ */

#define FLUE_READING                                                                              \
    "The opening is width times height at the face, and the chimney's height is that of the flue " \
    "above the top of the opening: the article defines neither. Nor does it say whether a flue's " \
    "size is its inside or the nominal one; "
#define ROUND_READING FLUE_READING "here it is the diameter as recorded."
#define RECTANGULAR_READING                                                                  \
    FLUE_READING "here it is each side as recorded, and the shorter and the longer side are " \
                 "compared with those of the printed size."

#define FLUE_ROW(for_matter, for_relation, its_table, is_round, in_words, option)              \
    {                                                                                          \
        for_matter, "9.21.2.5(1)", INGLE_BASIS_READ, for_relation, &formula_table_cell,        \
            .inputs = {QUANTITY_OPENING_AREA, QUANTITY_FLUE_HEIGHT}, .table = &its_table,      \
            .when = {MASONRY_FIREPLACE,                                                        \
                     {QUANTITY_FLUE_SHAPE, is_round, CHOICE_FLUE_SHAPE_ROUND}},                \
            .follows = FOLLOWS(AREA_ROWS, option), .reading = in_words                         \
    }

#define FLUE_ROWS(for_matter, for_relation, its_table, is_round, in_words)                     \
    FLUE_ROW(for_matter, for_relation, its_table.upper_limits, is_round, in_words,             \
             UPPER_LIMITS),                                                                    \
        FLUE_ROW(for_matter, for_relation, its_table.rounded, is_round, in_words, ROUNDED)

#define ROUND_FLUE_ROWS                                                                         \
    FLUE_ROWS(MATTER_FLUE_DIAMETER, INGLE_AT_LEAST, canada_round_least, IS,                     \
              ROUND_READING),                                                                   \
    FLUE_ROWS(MATTER_FLUE_DIAMETER_MOST, INGLE_AT_MOST, canada_round_most, IS,                  \
              ROUND_READING)

#define RECTANGULAR_FLUE_ROWS                                                                   \
    FLUE_ROWS(MATTER_FLUE_SHORTER_SIDE, INGLE_AT_LEAST, canada_shorter_least, IS_NOT,           \
              RECTANGULAR_READING),                                                             \
    FLUE_ROWS(MATTER_FLUE_LONGER_SIDE, INGLE_AT_LEAST, canada_longer_least, IS_NOT,             \
              RECTANGULAR_READING),                                                             \
    FLUE_ROWS(MATTER_FLUE_SHORTER_SIDE_MOST, INGLE_AT_MOST, canada_shorter_most, IS_NOT,        \
              RECTANGULAR_READING),                                                             \
    FLUE_ROWS(MATTER_FLUE_LONGER_SIDE_MOST, INGLE_AT_MOST, canada_longer_most, IS_NOT,          \
              RECTANGULAR_READING)

/* ---- lintels: the smallest angle for brick, outside, in a wall of 100 mm --------------------- */

#define SPAN_READING \
    "The span is taken as the opening's width: the table does not say whether it is clear."
#define TENTH_MM(n) EXACT_QUOTIENT(MILLIMETRES(n), 10)

static const int64_t spans[] = {CENTIMETRES(120), CENTIMETRES(150), CENTIMETRES(180),
                                CENTIMETRES(210), CENTIMETRES(240), CENTIMETRES(270),
                                CENTIMETRES(300)};
static const int64_t longer_legs[] = {MILLIMETRES(89),  MILLIMETRES(89),  MILLIMETRES(102),
                                      MILLIMETRES(102), MILLIMETRES(127), MILLIMETRES(127),
                                      MILLIMETRES(152)};
static const int64_t shorter_legs[] = {MILLIMETRES(89), MILLIMETRES(89), MILLIMETRES(89),
                                       MILLIMETRES(89), MILLIMETRES(89), MILLIMETRES(89),
                                       MILLIMETRES(102)};
static const int64_t thicknesses[] = {TENTH_MM(64), TENTH_MM(79),    TENTH_MM(79),   TENTH_MM(79),
                                      TENTH_MM(79), MILLIMETRES(11), MILLIMETRES(11)};

#define BY_SPAN(cells_of)                                                              \
    {                                                                                  \
        .name = "Table 9.20.5.2.A", .rows = {spans, COUNT_OF(spans), 0, KEY_UP_TO},    \
        .cells = cells_of                                                              \
    }

static const struct ingle_table angle_longer_legs = BY_SPAN(longer_legs);
static const struct ingle_table angle_shorter_legs = BY_SPAN(shorter_legs);
static const struct ingle_table angle_thicknesses = BY_SPAN(thicknesses);

/* ---- Ontario -------------------------------------------------------------------------------- */

static const struct ingle_rule ontario[] = {
    /* Flues and chimneys: 9.21. */
    ROUND_FLUE_ROWS,
    RECTANGULAR_FLUE_ROWS,
    {MATTER_FLUE_SLOPE, "9.21.2.3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {DEGREES(45)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SHARED_FLUE, "9.21.2.1(1)", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FLUE_LINED, "9.21.3.1", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_FLUE_LINING_NONE}, .when = {MASONRY_FIREPLACE},
     .reading = "Of clay, concrete, firebrick or metal."},
    {MATTER_LINER_THICKNESS, "9.21.3.3", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {EXACT_QUOTIENT(MILLIMETRES(159), 10)}, .when = {MASONRY_FIREPLACE, CLAY_LINING}},
    {MATTER_LINER_GAP, "9.21.3.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(10)}, .when = {MASONRY_FIREPLACE},
     .reading = "Left unfilled."},
    {MATTER_LINER_START, "9.21.3.10", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {STOVE},
     .reading = "Below the lowest connection of a flue pipe."},
    {MATTER_LINER_ABOVE_CAP, "9.21.3.10", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_LINER_ABOVE_CAP_MOST, "9.21.3.10", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_CHIMNEY_HEIGHT, "9.21.4.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(900)}, .when = {MASONRY_FIREPLACE},
     .reading = "Of the flue's top above the highest point at which it meets the roof."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "9.21.4.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_within,
     .inputs = {QUANTITY_NEARBY_DISTANCE}, .numbers = {MILLIMETRES(600), METRES(3)},
     .when = {MASONRY_FIREPLACE},
     .reading = "Exactly 3 m is within 3 m; any roof surface or structure counts."},
    {MATTER_CHIMNEY_BRACING, "9.21.4.5", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {MASONRY_FIREPLACE,
              {QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, MORE_THAN, MILLIMETRES(3600)}},
     .reading = "Of a stack that stands more than 3.6 m above the roof or the wall beside it."},
    {MATTER_CHIMNEY_BRACING, "9.21.4.5", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {MASONRY_FIREPLACE,
              {QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, AT_MOST, MILLIMETRES(3600)},
              {QUANTITY_OUTLET_STACK_WIDTH, LESS_THAN, MILLIMETRES(400)}},
     .reading = "Of a stack with a side of less than 400 mm in plan."},
    {MATTER_CAP_DRIP, "9.21.4.6(2)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(25)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_CHIMNEY_WALL, "9.21.4.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(70)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FLUE_SPACING, "9.21.4.9", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(70)}, .when = {MASONRY_FIREPLACE, SEVERAL_FLUES},
     .reading = "Of masonry or concrete; where the liners are of firebrick, 90 mm of firebrick may "
                "stand in its place."},
    {MATTER_CHIMNEY_CLEARANCE, "9.21.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, INTERIOR_CHIMNEY}},
    {MATTER_CHIMNEY_CLEARANCE, "9.21.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(12)}, .when = {MASONRY_FIREPLACE, EXTERIOR_CHIMNEY}},
    {MATTER_SEPARATION_OF_FINISH, "9.21.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(12)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SEPARATION_FROM_CLEANOUT, "9.21.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)},
     .when = {MASONRY_FIREPLACE, {QUANTITY_SEPARATION_HAS_CLEANOUT, IS, true}}},
    {MATTER_JOIST_BEARING, "9.21.5.3", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(290)},
     .when = {MASONRY_FIREPLACE, {QUANTITY_SEPARATION_JOISTS_BEAR, IS, true}}},

    /* Fireplaces: 9.22, and their lintels: 9.20. */
    {MATTER_AIR_DIAMETER, "9.22.1.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {SOLID_FUEL},
     .reading = "Every fireplace for solid fuel needs an outdoor air duct, with a tight damper "
                "near the inner end that is worked from the room; a duct that is not round may "
                "have the same area instead."},
    {MATTER_FIREBOX_LINING, "9.22.2.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, FIREBRICK},
     .reading = "Of the sides and the back."},
    {MATTER_FIREBRICK_FLOOR, "9.22.2.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(25)}, .when = {MASONRY_FIREPLACE, FIREBRICK}},
    {MATTER_FIREBOX_WALL, "9.22.3.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(190)}, .when = {MASONRY_FIREPLACE, FIREBRICK, THIN_LINING},
     .reading = "Back and sides, the liner counted in, where the firebrick is less than 51 mm "
                "thick. The same is asked where the liner is of metal."},
    {MATTER_FIREBOX_DEPTH, "9.22.4.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {MASONRY_FIREPLACE},
     .reading = "Measured from the back of the fire chamber to the plane of the opening."},
    {MATTER_HEARTH_FROM_FACING, "9.22.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_raised_above_begun_steps, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {MILLIMETRES(150), MILLIMETRES(400), MILLIMETRES(450), MILLIMETRES(300),
                 MILLIMETRES(50), MILLIMETRES(25)},
     .when = {MASONRY_FIREPLACE}, .follows = FOLLOWS(HEARTH_STEPS, ROUND_UP),
     .reading = "Measured from the facing. A part of a 50 mm step counts as a whole one: the "
                "article does not say."},
    {MATTER_HEARTH_FROM_FACING, "9.22.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_raised_above_whole_steps, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {MILLIMETRES(150), MILLIMETRES(400), MILLIMETRES(450), MILLIMETRES(300),
                 MILLIMETRES(50), MILLIMETRES(25)},
     .when = {MASONRY_FIREPLACE}, .follows = FOLLOWS(HEARTH_STEPS, WHOLE_STEPS),
     .reading = "Measured from the facing. Only whole steps of 50 mm count: the article does not "
                "say."},
    {MATTER_HEARTH_SIDE, "9.22.5.1(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {MASONRY_FIREPLACE},
     .reading = "It does not grow with the height of the fire chamber."},
    {MATTER_HEARTH_THICKNESS, "9.22.5.2(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {MASONRY_FIREPLACE, SLAB},
     .reading = "The thickness of the reinforced concrete slab at its supports."},
    {MATTER_HEARTH_EDGE_THICKNESS, "9.22.5.2(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, SLAB}},
    {MATTER_SMOKE_CHAMBER_SLOPE, "9.22.7.1", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {DEGREES(45)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SMOKE_CHAMBER_WALL, "9.22.7.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(190)}, .when = {MASONRY_FIREPLACE},
     .reading = "Back parts exposed to the outside may be 140 mm."},
    {MATTER_TRIM_DISTANCE, "9.22.9.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_above_step,
     .inputs = {QUANTITY_TRIM_PROJECTION},
     .numbers = {MILLIMETRES(38), MILLIMETRES(150), MILLIMETRES(300)},
     .when = {MASONRY_FIREPLACE, COMBUSTIBLE, ABOVE_OPENING},
     .reading = "A piece that projects exactly 38 mm is one that does not project more; a piece "
                "exactly at the distance is not within it."},
    {MATTER_TRIM_DISTANCE, "9.22.9.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {MASONRY_FIREPLACE, COMBUSTIBLE, BESIDE_OPENING},
     .reading = "A piece exactly at the distance is not within it."},
    {MATTER_METAL_THROUGH_FACE, "9.22.9.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, METAL_IN_FACE}},
    {MATTER_FRAMING_CLEARANCE, "9.22.9.3(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {MASONRY_FIREPLACE, INTERIOR_CHIMNEY}},
    {MATTER_FRAMING_CLEARANCE, "9.22.9.3(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, EXTERIOR_CHIMNEY},
     .reading = "In an exterior wall."},
    {MATTER_SEPARATION_FROM_SMOKE_CHAMBER, "9.22.9.3(2)", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, INTERIOR_CHIMNEY}},
    {MATTER_SEPARATION_FROM_SMOKE_CHAMBER, "9.22.9.3(2)", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(25)}, .when = {MASONRY_FIREPLACE, EXTERIOR_CHIMNEY},
     .reading = "In an exterior wall."},
    {MATTER_WARM_AIR_DISTANCE, "9.22.9.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)},
     .when = {MASONRY_FIREPLACE, WARM_AIR,
              {QUANTITY_WARM_AIR_PROJECTION, AT_LEAST, MILLIMETRES(38)}},
     .reading = "What projects exactly 38 mm counts as projecting here."},
    {MATTER_WARM_AIR_DISTANCE, "9.22.9.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)},
     .when = {MASONRY_FIREPLACE, WARM_AIR,
              {QUANTITY_WARM_AIR_PROJECTION, LESS_THAN, MILLIMETRES(38)}}},
    {MATTER_SMOKE_CHAMBER_WALL, "9.22.10.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(190)}, .when = {INSERT},
     .reading = "Solid masonry between the smoke chamber and what can burn, unless the insert is "
                "listed for less; and a listed metal liner to the chimney's top, or a direct "
                "sealed connection to the flue."},
    {MATTER_LINTEL_BEARING, "9.20.5.2(4)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {MASONRY_FIREPLACE},
     .reading = "Of steel lintels."},
    {MATTER_LINTEL_LONGER_LEG, "Table 9.20.5.2.A", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_table_cell, .inputs = {QUANTITY_OPENING_WIDTH}, .table = &angle_longer_legs,
     .when = {MASONRY_FIREPLACE, STEEL_ANGLE}, .reading = SPAN_READING},
    {MATTER_LINTEL_SHORTER_LEG, "Table 9.20.5.2.A", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_table_cell, .inputs = {QUANTITY_OPENING_WIDTH}, .table = &angle_shorter_legs,
     .when = {MASONRY_FIREPLACE, STEEL_ANGLE}, .reading = SPAN_READING},
    {MATTER_LINTEL_ANGLE_THICKNESS, "Table 9.20.5.2.A", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_table_cell, .inputs = {QUANTITY_OPENING_WIDTH}, .table = &angle_thicknesses,
     .when = {MASONRY_FIREPLACE, STEEL_ANGLE}, .reading = SPAN_READING},
};

/* ---- Alberta -------------------------------------------------------------------------------- */

static const struct ingle_rule alberta[] = {
    ROUND_FLUE_ROWS,
    {MATTER_CHIMNEY_WALL, "9.21.4.8", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(75)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FLUE_SPACING, "9.21.4.9", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(75)}, .when = {MASONRY_FIREPLACE, SEVERAL_FLUES}},
};

/* ---- CSA A405 ------------------------------------------------------------------------------- */

#define CLAUSE_5_3_6 "5.3.6, edition not stated"

static const struct ingle_rule csa_a405[] = {
    {MATTER_HEARTH_OVERALL_DEPTH, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(700)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_FRONT, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_raised_from_begun_steps, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {MILLIMETRES(150), MILLIMETRES(400), MILLIMETRES(450), MILLIMETRES(300),
                 MILLIMETRES(50), MILLIMETRES(25)},
     .when = {MASONRY_FIREPLACE}, .follows = FOLLOWS(HEARTH_STEPS, ROUND_UP),
     .reading = "A raise of exactly 150 mm counts. A part of a 50 mm step counts as a whole one: "
                "what is known of the clause does not say."},
    {MATTER_HEARTH_FRONT, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_raised_from_whole_steps, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {MILLIMETRES(150), MILLIMETRES(400), MILLIMETRES(450), MILLIMETRES(300),
                 MILLIMETRES(50), MILLIMETRES(25)},
     .when = {MASONRY_FIREPLACE}, .follows = FOLLOWS(HEARTH_STEPS, WHOLE_STEPS),
     .reading = "A raise of exactly 150 mm counts. Only whole steps of 50 mm count: what is "
                "known of the clause does not say."},
    {MATTER_HEARTH_SIDE, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_THICKNESS, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {MASONRY_FIREPLACE, SLAB}},
    {MATTER_HEARTH_EDGE_THICKNESS, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, SLAB}},
    {MATTER_HEARTH_EXTENSION_THICKNESS, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)},
     .when = {MASONRY_FIREPLACE, ON_FLOOR, RAISED_ABOVE_FLOOR},
     .reading = "One piece of stone or concrete, or thin tile with its mesh-reinforced bed "
                "together. Jointed units over 25 mm may instead lie on sheet metal 0.5 mm thick; "
                "for a unit of exactly 25 mm neither wording is meant."},
};

/* ---- CMHC ------------------------------------------------------------------------------------ */

static const struct ingle_rule cmhc[] = {
    {MATTER_FLUE_AREA, "masonry chimneys", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {RATIO(1, 10)}, .when = {MASONRY_FIREPLACE},
     .reading = "A rule of thumb beside the tables: guidance, not code."},
    {MATTER_FLUE_SHORTER_SIDE, "masonry chimneys", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(200)},
     .when = {MASONRY_FIREPLACE, {QUANTITY_FLUE_SHAPE, IS_NOT, CHOICE_FLUE_SHAPE_ROUND}},
     .reading = "A rule of thumb beside the tables: guidance, not code."},
};

/* ---- the standards -------------------------------------------------------------------------- */

static const struct ingle_standard editions[] = {
    {.id = "obc-2012", .title = "Ontario Building Code", .place = "Ontario, Canada",
     .note = "Ontario Building Code 2012, O. Reg. 332/12, Division B, 9.20 to 9.22: numbers as "
             "read, in millimetres and metres. It was replaced on 31 December 2024 by a code "
             "that was not read: findings are by the code of 2012. Section 9.21 is for chimneys "
             "up to 12 m high and a combined rated output up to 120 kW.",
     .unit = UNIT_MILLIMETRE, .edition = 2012, .rules = ontario, .rule_count = COUNT_OF(ontario)},
    {.id = "nbc-ab-2023", .title = "National Building Code, Alberta Edition",
     .place = "Alberta, Canada",
     .note = "National Building Code, 2023 Alberta Edition, 9.21: its table of rectangular flues "
             "was missing from the text that was read, so rectangular flues are not judged.",
     .unit = UNIT_MILLIMETRE, .edition = 2023, .rules = alberta, .rule_count = COUNT_OF(alberta)},
    {.id = "csa-a405", .title = "CAN/CSA-A405", .place = "Canada",
     .note = "CAN/CSA-A405, clause 5.3.6, as other documents report it; the edition is not stated.",
     .unit = UNIT_MILLIMETRE, .rules = csa_a405, .rule_count = COUNT_OF(csa_a405)},
    {.id = "cmhc", .title = "CMHC guidance on wood-frame houses", .place = "Canada",
     .note = "Guidance on Canadian wood-frame house construction, masonry chimneys, edition not "
             "stated, as other documents report it: guidance, not code.",
     .unit = UNIT_MILLIMETRE, .rules = cmhc, .rule_count = COUNT_OF(cmhc)},
};

const struct publication publication_canada = {editions, COUNT_OF(editions)};
