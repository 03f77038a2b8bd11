/* SPDX-License-Identifier: MIT */
/*
 * CABO One and Two Family Dwelling Code, 1989 to 1995, from memory: trim. What it asks of the
 * hearth was not seen and is left out.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define FROM_MEMORY "section not seen", INGLE_BASIS_FROM_MEMORY

static const struct ingle_rule rules[] = {
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
     .note = "CABO One and Two Family Dwelling Code, 1989 to 1995: not read; trim from "
             "memory. Its text on hearths was not seen: none is held here.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_cabo = {editions, COUNT_OF(editions)};
