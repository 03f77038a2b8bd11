/* SPDX-License-Identifier: MIT */
/*
 * Technical Notes of the Brick Industry Association: advice and design tables, no code. The tables
 * of dimensions are no limits and are left out.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define ONE_SIZE FOLLOWS(BIA_HEARTH, ONE_SIZE)
#define BY_AREA FOLLOWS(BIA_HEARTH, BY_AREA)

static const struct ingle_rule rules_19[] = {
    {MATTER_HEARTH_FRONT, "extended hearth", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(16)}, .when = {MASONRY_FIREPLACE}, .follows = ONE_SIZE,
     .reading = "One size of hearth for every opening."},
    {MATTER_HEARTH_SIDE, "extended hearth", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {MASONRY_FIREPLACE}, .follows = ONE_SIZE,
     .reading = "One size of hearth for every opening."},
    {MATTER_HEARTH_FRONT, "extended hearth", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_opening_area, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {SQUARE_FEET(6), INCHES(16), INCHES(20)}, .when = {MASONRY_FIREPLACE},
     .follows = BY_AREA, .reading = "The larger hearth that some codes of the time asked for."},
    {MATTER_HEARTH_SIDE, "extended hearth", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_opening_area, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {SQUARE_FEET(6), INCHES(8), INCHES(12)}, .when = {MASONRY_FIREPLACE},
     .follows = BY_AREA, .reading = "The larger hearth that some codes of the time asked for."},
    {MATTER_FIREBOX_WALL, "combustion chamber", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FIREBOX_AIR_GAP, "combustion chamber", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(1)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FIREBOX_JOINT, "combustion chamber", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {INCHES_AND(0, 1, 4)}, .when = {MASONRY_FIREPLACE}},
};

static const struct ingle_rule rules_19a[] = {
    {MATTER_TRIM_DISTANCE, "combustible trim", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = WOOD_TRIM},
    {MATTER_TRIM_PROJECTION, "combustible trim", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_projection_by_distance, .inputs = {QUANTITY_TRIM_DISTANCE},
     .numbers = {INCHES(6), INCHES(12), RATIO(1, 8)}, .when = WOOD_TRIM},
    {MATTER_FIREBLOCK, "combustible trim", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(1)}, .when = {MASONRY_FIREPLACE},
     .reading = "The depth that is named for a firestop in the gaps is read as the least."},
};

static const struct ingle_standard editions[] = {
    {.id = "bia-1980", .title = "Brick Industry Association, Technical Notes 19 of",
     .place = "United States",
     .note = "Brick Industry Association, Technical Notes 19 (1980): advice of its day, no code.",
     .unit = UNIT_INCH, .edition = 1980, .rules = rules_19, .rule_count = COUNT_OF(rules_19)},
    {.id = "bia-19a", .title = "Brick Industry Association, Technical Notes 19A",
     .place = "United States",
     .note = "Brick Industry Association, Technical Notes 19A: year not stated; advice, no code.",
     .unit = UNIT_INCH, .rules = rules_19a, .rule_count = COUNT_OF(rules_19a)},
};

const struct publication publication_bia = {editions, COUNT_OF(editions)};
