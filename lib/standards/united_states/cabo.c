/* SPDX-License-Identifier: MIT */
/*
 * CABO One and Two Family Dwelling Code, 1989 to 1995, from memory.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define FROM_MEMORY "section not seen", INGLE_BASIS_FROM_MEMORY

static const struct ingle_rule rules[] = {
    {MATTER_HEARTH_FRONT, FROM_MEMORY, INGLE_AT_LEAST, &formula_by_opening_area,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {SQUARE_FEET(6), INCHES(16), INCHES(20)},
     .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_SIDE, FROM_MEMORY, INGLE_AT_LEAST, &formula_by_opening_area,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {SQUARE_FEET(6), INCHES(8), INCHES(12)},
     .when = {MASONRY_FIREPLACE}},
    {MATTER_TRIM_DISTANCE, FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(6)},
     .when = WOOD_TRIM},
    {MATTER_TRIM_PROJECTION, FROM_MEMORY, INGLE_AT_MOST, &formula_projection_by_distance,
     .inputs = {QUANTITY_TRIM_DISTANCE}, .numbers = {INCHES(6), INCHES(12), RATIO(1, 8)},
     .when = WOOD_TRIM,
     .reading = "Limited up to 12 in from the opening, as in the code that followed it."},
};

static const struct ingle_standard editions[] = {
    {.id = "cabo-1989-1995", .title = "CABO One and Two Family Dwelling Code, 1989 to 1995",
     .place = "United States",
     .note = "CABO One and Two Family Dwelling Code, 1989 to 1995: not read; from memory.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_cabo = {editions, COUNT_OF(editions)};
