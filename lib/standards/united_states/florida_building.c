/* SPDX-License-Identifier: MIT */
/*
 * Florida Building Code, Building, of 2023: combustible mantel and trim about a masonry fireplace,
 * in the words of the building code that it follows.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define SECTION "2111.12 exception 4"

static const struct ingle_rule rules[] = {
    {MATTER_TRIM_DISTANCE, SECTION, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = WOOD_TRIM},
    {MATTER_TRIM_PROJECTION, SECTION, INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_projection_by_distance, .inputs = {QUANTITY_TRIM_DISTANCE},
     .numbers = {INCHES(6), INCHES(12), RATIO(1, 8)},
     .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE, ABOVE_OPENING},
     .reading = "At exactly 6 in and at exactly 12 in above the opening the projection is limited; "
                "further away this exception sets no limit."},
    {MATTER_TRIM_SIDE_CLEARANCE, SECTION, INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_limit_and_projection, .inputs = {QUANTITY_TRIM_PROJECTION},
     .numbers = {INCHES_AND(1, 1, 2), INCHES(6)},
     .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE, BESIDE_OPENING},
     .reading = "The additional clearance is the whole projection, on top of the distance that any "
                "piece has to keep."},
};

static const struct ingle_standard editions[] = {
    {.id = "florida-building-2023", .title = "Florida Building Code, Building", .place = "Florida",
     .note = "Florida Building Code, Building, 2023: mantel and trim of masonry fireplaces, in "
             "inches. Its other rules on fireplaces were not looked at.",
     .unit = UNIT_INCH, .edition = 2023, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_florida_building = {editions, COUNT_OF(editions)};
