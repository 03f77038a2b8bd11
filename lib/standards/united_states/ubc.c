/* SPDX-License-Identifier: MIT */
/*
 * Uniform Building Code of the 1970s to 1997, which was not itself read: its flue table stands in
 * an ordinance that took it over, the rest in a handout on it or in memory. What it asks of the
 * hearth was not seen and is left out.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define TABLE "Table 31-B, 37-B"
#define HANDOUT "as a local handout has it"

static const struct ingle_rule rules[] = {
    {MATTER_FLUE_AREA, TABLE, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share_with_least,
     .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {RATIO(1, 12), SQUARE_INCHES(50), RATIO(1, 10), SQUARE_INCHES(64)},
     .when = {MASONRY_FIREPLACE, LINED},
     .reading = "As the ordinance of Lake Forest, Illinois, of 1994 has it."},
    {MATTER_FLUE_AREA, TABLE, INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_share_or_least,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {RATIO(1, 8), SQUARE_INCHES(100)},
     .when = {MASONRY_FIREPLACE, UNLINED},
     .reading = "A flue lined with firebrick counts as unlined."},
    {MATTER_TRIM_DISTANCE, HANDOUT, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = WOOD_TRIM},
    {MATTER_TRIM_PROJECTION, HANDOUT, INGLE_BASIS_CITED, INGLE_AT_MOST,
     &formula_projection_by_distance, .inputs = {QUANTITY_TRIM_DISTANCE},
     .numbers = {INCHES(6), INCHES(12), RATIO(1, 8)}, .when = WOOD_TRIM},
    {MATTER_FIREPLACE_CLEARANCE, HANDOUT, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(2)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FIREPLACE_CLEARANCE_BACK, HANDOUT, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(2)}, .when = {MASONRY_FIREPLACE}, .reading = "The same as at the sides."},
    {MATTER_DAMPER_AREA, HANDOUT, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_NET_AREA}, .numbers = {PERCENT(90)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_DAMPER_GAUGE, HANDOUT, INGLE_BASIS_CITED, INGLE_AT_MOST, &formula_fixed,
     .numbers = {12}, .when = {MASONRY_FIREPLACE, A_DAMPER},
     .reading = "The gage that is named is read as the thinnest allowed."},
};

static const struct ingle_standard editions[] = {
    {.id = "ubc-1970s-1997", .title = "Uniform Building Code, 1970s to 1997",
     .place = "United States",
     .note = "Uniform Building Code, 1970s to 1997: not itself read; its flue table was read in "
             "the ordinance of Lake Forest, Illinois, other parts are cited by a handout of "
             "Rosemount, Minnesota, or from memory. Its text on hearths was not seen: none is "
             "held here.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_ubc = {editions, COUNT_OF(editions)};
