/* SPDX-License-Identifier: MIT */
/*
 * International Residential Code of 2000, 2003 and 2009. In the first two fireplaces were numbered
 * R1003 and chimneys R1001; the two were swapped in 2006. The fireplace rules are known from others
 * that cite them, of 2009 only those on trim.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define TRIM(section, editions)                                                                 \
    {MATTER_TRIM_DISTANCE, section, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,          \
     .numbers = {INCHES(6)}, .when = WOOD_TRIM, editions},                                      \
    {MATTER_TRIM_PROJECTION, section, INGLE_BASIS_CITED, INGLE_AT_MOST,                         \
     &formula_projection_by_distance, .inputs = {QUANTITY_TRIM_DISTANCE},                       \
     .numbers = {INCHES(6), INCHES(12), RATIO(1, 8)}, .when = WOOD_TRIM, editions}

static const struct ingle_rule rules[] = {
    {MATTER_HEARTH_FRONT, "R1003.10", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_by_opening_area,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {SQUARE_FEET(6), INCHES(16), INCHES(20)},
     .when = {MASONRY_FIREPLACE}, .until = 2003},
    {MATTER_HEARTH_SIDE, "R1003.10", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_by_opening_area,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {SQUARE_FEET(6), INCHES(8), INCHES(12)},
     .when = {MASONRY_FIREPLACE}, .until = 2003},
    TRIM("R1003.12", .until = 2003),
    TRIM("R1001.11 exception 4", .since = 2009),
    {MATTER_CHIMNEY_HEIGHT, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {FEET(3)}, .when = {MASONRY_CHIMNEY},
     .reading = "The top is the flue's outlet, not that of a rain cap.", .since = 2003,
     .until = 2003},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_within,
     .inputs = {QUANTITY_NEARBY_DISTANCE}, .numbers = {FEET(2), FEET(10)},
     .when = {MASONRY_CHIMNEY},
     .reading = "The distance is taken horizontally. The top is the flue's outlet, not that of a "
                "rain cap.",
     .since = 2003, .until = 2003},
};

#define EDITION(year, more)                                                                      \
    {                                                                                            \
        .id = "irc-" #year, .title = "International Residential Code", .place = "United States", \
        .note = "International Residential Code " #year ": fireplaces as others cite them. "     \
                more,                                                                            \
        .unit = UNIT_INCH, .edition = year, .rules = rules, .rule_count = COUNT_OF(rules)        \
    }

#define OLD_NUMBERING "Fireplaces were R1003 and chimneys R1001 then."

static const struct ingle_standard editions[] = {
    EDITION(2000, OLD_NUMBERING),
    EDITION(2003, OLD_NUMBERING),
    EDITION(2009, "Only the rules on trim are known of it."),
};

const struct publication publication_irc_early = {editions, COUNT_OF(editions)};
