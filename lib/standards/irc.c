/* SPDX-License-Identifier: MIT */
/*
 * International Residential Code, chapter 10: masonry fireplaces.
 *
 * Numbers as printed, in inches, square inches and square feet: the metric values beside them in the
 * code are rounded, and not always alike, so they are not used. To add an edition, add it to
 * `editions` below; where a row changes, end the old one with `.until` and give the new one `.since`.
 *
 * The opening's area is read as width times height of the clear finished opening at the face, which
 * the code does not define.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define MASONRY_FIREPLACE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}
#define RUMFORD {QUANTITY_FIREBOX_DESIGN, IS, CHOICE_FIREBOX_DESIGN_RUMFORD}
#define COMBUSTIBLE {QUANTITY_TRIM_COMBUSTIBLE, IS, true}
#define ON_FACE {QUANTITY_TRIM_PLACE, IS, CHOICE_TRIM_PLACE_ON_FACE}
#define ABUTTING {QUANTITY_TRIM_PLACE, IS, CHOICE_TRIM_PLACE_ABUTTING}

static const struct ingle_rule rules[] = {
    /* Firebox and throat. */
    {MATTER_FIREBOX_DEPTH, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(20)}, .when = {MASONRY_FIREPLACE}, .role = ORDINARY,
     .reading = "Measured at hearth level, from the plane of the front opening to the back wall."},
    {MATTER_THROAT_HEIGHT, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {MASONRY_FIREPLACE}, .role = ORDINARY},
    {MATTER_THROAT_DEPTH, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)}, .when = {MASONRY_FIREPLACE}, .role = ORDINARY},
    {MATTER_PASSAGE_AREA, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_NET_AREA}, .numbers = {RATIO(1, 1)}, .when = {MASONRY_FIREPLACE},
     .role = ORDINARY,
     .reading = "Throat, open damper and smoke chamber are each compared with the flue's net area."},
    {MATTER_RUMFORD_DEPTH, "R1001.6 exception", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_share_or_least, .inputs = {QUANTITY_OPENING_WIDTH},
     .numbers = {RATIO(1, 3), INCHES(12)}, .when = {MASONRY_FIREPLACE, RUMFORD},
     .role = EXCEPTION},
    {MATTER_RUMFORD_THROAT_HEIGHT, "R1001.6 exception", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(12)}, .when = {MASONRY_FIREPLACE, RUMFORD},
     .role = EXCEPTION},
    {MATTER_RUMFORD_THROAT_AREA, "R1001.6 exception", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_share, .inputs = {QUANTITY_OPENING_AREA}, .numbers = {RATIO(1, 20)},
     .when = {MASONRY_FIREPLACE, RUMFORD}, .role = EXCEPTION},

    /* Lintel and smoke chamber. */
    {MATTER_LINTEL_BEARING, "R1001.7", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_THROAT_ABOVE_LINTEL, "R1001.7", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SMOKE_CHAMBER_HEIGHT, "R1001.8.1", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_OPENING_WIDTH}, .numbers = {RATIO(1, 1)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SMOKE_CHAMBER_SLOPE, "R1001.8.1", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_by_smoke_chamber_walls, .inputs = {QUANTITY_SMOKE_CHAMBER_WALLS},
     .numbers = {DEGREES(45), DEGREES(30)}, .when = {MASONRY_FIREPLACE}},

    /* Hearth and hearth extension. */
    {MATTER_HEARTH_THICKNESS, "R1001.9.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_EXTENSION_THICKNESS, "R1001.9.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_firebox_raise, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {INCHES(8), INCHES(2), INCHES_AND(0, 3, 8)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_FRONT, "R1001.10", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_by_opening_area,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {SQUARE_FEET(6), INCHES(16), INCHES(20)},
     .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_SIDE, "R1001.10", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_by_opening_area,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {SQUARE_FEET(6), INCHES(8), INCHES(12)},
     .when = {MASONRY_FIREPLACE}},

    /* Combustible trim. */
    {MATTER_TRIM_ABUTTING, "R1001.11 exception 3", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(12)}, .when = {MASONRY_FIREPLACE, ABUTTING, COMBUSTIBLE},
     .until = 2021},
    {MATTER_TRIM_ABUTTING, "R1001.11 exception 3", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_opening_area, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {SQUARE_FEET(6), INCHES(8), INCHES(12)},
     .when = {MASONRY_FIREPLACE, ABUTTING, COMBUSTIBLE}, .since = 2024},
    {MATTER_TRIM_DISTANCE, "R1001.11 exception 4", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(6)}, .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE}},
    {MATTER_TRIM_PROJECTION, "R1001.11 exception 4", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_projection_by_distance, .inputs = {QUANTITY_TRIM_DISTANCE},
     .numbers = {INCHES(6), INCHES(12), RATIO(1, 8)},
     .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE},
     .reading = "At exactly 6 in and at exactly 12 in from the opening the projection is limited; "
                "further away this exception sets no limit."},

    /* Flue. */
    {MATTER_FLUE_AREA, "R1003.15.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_flue_share,
     .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {RATIO(2, 1), RATIO(1, 12), RATIO(1, 10), RATIO(1, 10), RATIO(1, 8)},
     .when = {MASONRY_FIREPLACE},
     .reading = "The aspect ratio of a named liner is taken from its nominal outside size, that of "
                "a measured flue from its inside."},
};

#define ROUND_TABLE "Table R1003.14(1)"
#define RECTANGULAR_TABLE "Table R1003.14(2)"

/* Net areas in square inches, in printed order. The round ones are cut down to whole numbers. */
static const struct liner liners[] = {
    {ROUND_TABLE, CHOICE_FLUE_LINER_ROUND_6, INCHES(6), 0, SQUARE_INCHES(28), false},
    {ROUND_TABLE, CHOICE_FLUE_LINER_ROUND_7, INCHES(7), 0, SQUARE_INCHES(38), false},
    {ROUND_TABLE, CHOICE_FLUE_LINER_ROUND_8, INCHES(8), 0, SQUARE_INCHES(50), false},
    {ROUND_TABLE, CHOICE_FLUE_LINER_ROUND_10, INCHES(10), 0, SQUARE_INCHES(78), false},
    {ROUND_TABLE, CHOICE_FLUE_LINER_ROUND_10_75, INCHES_AND(10, 3, 4), 0, SQUARE_INCHES(90), false},
    {ROUND_TABLE, CHOICE_FLUE_LINER_ROUND_12, INCHES(12), 0, SQUARE_INCHES(113), false},
    {ROUND_TABLE, CHOICE_FLUE_LINER_ROUND_15, INCHES(15), 0, SQUARE_INCHES(176), false},
    {ROUND_TABLE, CHOICE_FLUE_LINER_ROUND_18, INCHES(18), 0, SQUARE_INCHES(254), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_4_5X8_5, INCHES_AND(4, 1, 2), INCHES_AND(8, 1, 2),
     SQUARE_INCHES(23), true},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_4_5X13, INCHES_AND(4, 1, 2), INCHES(13),
     SQUARE_INCHES(34), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_8X8, INCHES(8), INCHES(8), SQUARE_INCHES(42), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_8_5X8_5, INCHES_AND(8, 1, 2), INCHES_AND(8, 1, 2),
     SQUARE_INCHES(49), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_8X12, INCHES(8), INCHES(12), SQUARE_INCHES(67), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_8_5X13, INCHES_AND(8, 1, 2), INCHES(13),
     SQUARE_INCHES(76), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_12X12, INCHES(12), INCHES(12), SQUARE_INCHES(102), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_8_5X18, INCHES_AND(8, 1, 2), INCHES(18),
     SQUARE_INCHES(101), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_13X13, INCHES(13), INCHES(13), SQUARE_INCHES(127), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_12X16, INCHES(12), INCHES(16), SQUARE_INCHES(131), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_13X18, INCHES(13), INCHES(18), SQUARE_INCHES(173), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_16X16, INCHES(16), INCHES(16), SQUARE_INCHES(181), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_16X20, INCHES(16), INCHES(20), SQUARE_INCHES(222), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_18X18, INCHES(18), INCHES(18), SQUARE_INCHES(233), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_20X20, INCHES(20), INCHES(20), SQUARE_INCHES(298), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_20X24, INCHES(20), INCHES(24), SQUARE_INCHES(335), false},
    {RECTANGULAR_TABLE, CHOICE_FLUE_LINER_24X24, INCHES(24), INCHES(24), SQUARE_INCHES(431), false},
};

#define EDITION(year, more)                                                                     \
    {                                                                                           \
        .id = "irc-" #year, .title = "International Residential Code", .place = "United States", \
        .note = "International Residential Code " #year ", chapter 10, masonry fireplaces: "    \
                "numbers as printed in inches." more,                                           \
        .unit = UNIT_INCH, .edition = year, .rules = rules, .rule_count = COUNT_OF(rules),           \
        .liners = liners, .liner_count = COUNT_OF(liners)                                       \
    }

static const struct ingle_standard editions[] = {
    EDITION(2012, " It was read in its California adoption of 2013."),
    EDITION(2015, ""),
    EDITION(2018, ""),
    EDITION(2021, ""),
    EDITION(2024, ""),
};

const struct publication publication_irc = {editions, COUNT_OF(editions)};
