/* SPDX-License-Identifier: MIT */
/*
 * Farmers' Bulletins of the United States Department of Agriculture: advice to builders of their
 * day. Their tables of recommended dimensions are no limits and are left out.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define BUILT_OF(kind) {QUANTITY_FIREBOX_WALLS, IS, CHOICE_FIREBOX_WALLS_##kind}

static const struct ingle_rule rules_1921[] = {
    {MATTER_FLUE_AREA, "on flues", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_area_for_each, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {SQUARE_INCHES(13), SQUARE_FEET(1)}, .when = {MASONRY_FIREPLACE},
     .follows = FOLLOWS(FLUE_SHARE_1921, PER_SQUARE_FOOT),
     .reading = "13 in² for each square foot of opening, as in the bulletin's own example."},
    {MATTER_FLUE_AREA, "on flues", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {RATIO(1, 10)}, .when = {MASONRY_FIREPLACE},
     .follows = FOLLOWS(FLUE_SHARE_1921, TENTH),
     .reading = "A tenth of the opening, which is more than 13 in² for each square foot."},
};

static const struct ingle_rule rules_1941[] = {
    {MATTER_FLUE_AREA, "on flues", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share_by_height,
     .inputs = {QUANTITY_OPENING_AREA, QUANTITY_FLUE_ABOVE_HEARTH},
     .numbers = {FEET(22), RATIO(1, 10), RATIO(1, 12)}, .when = {MASONRY_FIREPLACE, LINED}},
    {MATTER_FLUE_AREA, "on flues", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {RATIO(1, 10)},
     .when = {MASONRY_FIREPLACE, UNLINED}},
    {MATTER_HEARTH_FROM_FACING, "on hearths", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(16)}, .when = {MASONRY_FIREPLACE},
     .reading = "Measured from the chimney breast."},
    {MATTER_HEARTH_SIDE, "on hearths", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {MASONRY_FIREPLACE},
     .reading = "The hearth is 16 in longer than the opening is wide: 8 in at each side."},
    {MATTER_HEARTH_EXTENSION_THICKNESS, "on hearths", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(4)}, .when = {MASONRY_FIREPLACE},
     .reading = "Said of the hearth that runs out before the fireplace."},
    {MATTER_TRIM_DISTANCE, "on mantels", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = WOOD_TRIM},
    {MATTER_FIREBOX_WALL, "on fireplace walls", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {MASONRY_FIREPLACE, BUILT_OF(BRICK)}},
    {MATTER_FIREBOX_WALL, "on fireplace walls", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(12)}, .when = {MASONRY_FIREPLACE, BUILT_OF(STONE)}},
};

static const struct ingle_standard editions[] = {
    {.id = "usda-fb1230-1921", .title = "Farmers' Bulletin 1230, of", .place = "United States",
     .note = "Farmers' Bulletin 1230 of the United States Department of Agriculture, about 1921: "
             "advice of its day, no code now.",
     .unit = UNIT_INCH, .edition = 1921, .rules = rules_1921, .rule_count = COUNT_OF(rules_1921)},
    {.id = "usda-fb1889-1941", .title = "Farmers' Bulletin 1889, of", .place = "United States",
     .note = "Farmers' Bulletin 1889 of the United States Department of Agriculture, 1941: advice "
             "of its day, no code now.",
     .unit = UNIT_INCH, .edition = 1941, .rules = rules_1941, .rule_count = COUNT_OF(rules_1941)},
};

const struct publication publication_farmers_bulletins = {editions, COUNT_OF(editions)};
