/* SPDX-License-Identifier: MIT */
/*
 * Ordinances and codes of single towns and one state in the United States. They hold there alone.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define OLD_UBC_FLUE                                                                       \
    INGLE_AT_LEAST, &formula_share_with_least, .inputs = {QUANTITY_OPENING_AREA},          \
        .numbers = {RATIO(1, 12), SQUARE_INCHES(50), RATIO(1, 10), SQUARE_INCHES(64)},     \
        .when = {MASONRY_FIREPLACE}

static const struct ingle_rule solon[] = {
    {MATTER_HEARTH_FRONT, "section not stated", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(20)}, .when = {MASONRY_FIREPLACE},
     .reading = "It does not say from where: measured from the plane of the opening."},
    {MATTER_HEARTH_SIDE, "section not stated", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(16)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_EXTENSION_THICKNESS, "section not stated", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(4)}, .when = {MASONRY_FIREPLACE},
     .reading = "Said of the hearth that runs out before the fireplace."},
    {MATTER_FLUE_AREA_LEAST, "section not stated", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {SQUARE_INCHES(45)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FIREBOX_WALL, "section not stated", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(6, 1, 2)}, .when = {MASONRY_FIREPLACE}},
};

static const struct ingle_rule norton[] = {
    {MATTER_FLUE_AREA_LEAST, "1430.02", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {SQUARE_INCHES(70)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FLUE_AREA, "1430.02", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share_off_height,
     .inputs = {QUANTITY_OPENING_AREA, QUANTITY_FLUE_ABOVE_HEARTH},
     .numbers = {FEET(22), RATIO(1, 10), RATIO(1, 12)}, .when = {MASONRY_FIREPLACE},
     .reading = "It does not say from where the chimney's height is measured: taken from the "
                "hearth. Exactly 22 ft is not covered."},
    {MATTER_FLUE_AREA_FOR_STOVE, "1430.02", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {SQUARE_INCHES(40)}, .when = {STOVE, NO(STOVE_SMALL_SPECIAL)},
     .reading = "Stoves, ranges and room heaters."},
    {MATTER_FLUE_AREA_FOR_STOVE, "1430.02", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {SQUARE_INCHES(28)}, .when = {STOVE, YES(STOVE_SMALL_SPECIAL)},
     .reading = "Small special stoves: what they are is for the authority to say."},
};

static const struct ingle_rule lake_forest[] = {
    {MATTER_FLUE_AREA, "flues", INGLE_BASIS_READ, OLD_UBC_FLUE},
    {MATTER_CHIMNEY_ABOVE_DAMPER, "chimney height", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {FEET(14)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_CHIMNEY_ABOVE_DAMPER, "chimney height", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {FEET(14)}, .when = {STOVE},
     .reading = "Above the damper of the appliance: that of the stove, or of its pipe."},
    {MATTER_LINER_STAGGER, "flue linings", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(7)}, .when = {MASONRY_CHIMNEY, TOUCHING_FLUES}},
    {MATTER_FLUE_AGAINST_CONNECTOR, "flues", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_CONNECTOR_AREA}, .numbers = {RATIO(1, 1)}, .when = {STOVE}},
};

static const struct ingle_rule spring_garden[] = {
    {MATTER_SHARED_FLUE, "solid-fuel stoves", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {STOVE}},
    {MATTER_FLUE_LINED, "solid-fuel stoves", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_FLUE_LINING_NONE}, .when = {STOVE, BUILT_OF_MASONRY},
     .reading = "Said of an existing chimney."},
};

static const struct ingle_rule wisconsin[] = {
    {MATTER_FLUE_AREA, "section not seen", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_share_with_least, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {RATIO(1, 12), SQUARE_INCHES(75), RATIO(1, 10), SQUARE_INCHES(75)},
     .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_THICKNESS, "section not seen", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(4)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_LINER_STAGGER, "SPS 321.30(3)", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(7)}, .when = {MASONRY_CHIMNEY, TOUCHING_FLUES}},
};

#define RULES_OF(list) .rules = list, .rule_count = COUNT_OF(list)

static const struct ingle_standard editions[] = {
    {.id = "solon-oh", .title = "Codified ordinances of Solon", .place = "Solon, Ohio",
     .note = "Codified ordinances of Solon, Ohio: year not stated; they hold there alone.",
     .unit = UNIT_INCH, RULES_OF(solon)},
    {.id = "norton-oh-1981", .title = "Codified ordinances of Norton", .place = "Norton, Ohio",
     .note = "Codified ordinances of Norton, Ohio, 1981: they hold there alone.",
     .unit = UNIT_INCH, .edition = 1981, RULES_OF(norton)},
    {.id = "lake-forest-1994", .title = "Fireplace ordinance of Lake Forest",
     .place = "Lake Forest, Illinois",
     .note = "Ordinance of Lake Forest, Illinois, 1994: it holds there alone.",
     .unit = UNIT_INCH, .edition = 1994, RULES_OF(lake_forest)},
    {.id = "spring-garden", .title = "Township code of Spring Garden",
     .place = "Spring Garden Township, Pennsylvania",
     .note = "Township code of Spring Garden, Pennsylvania: year not stated; it holds there alone.",
     .unit = UNIT_INCH, RULES_OF(spring_garden)},
    {.id = "wisconsin", .title = "Dwelling code of Wisconsin", .place = "Wisconsin",
     .note = "State dwelling code of Wisconsin: year and section not seen; known from others that "
             "cite it.",
     .unit = UNIT_INCH, RULES_OF(wisconsin)},
};

const struct publication publication_local_us = {editions, COUNT_OF(editions)};
