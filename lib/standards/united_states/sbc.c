/* SPDX-License-Identifier: MIT */
/*
 * Standard Building Code of the 1990s, as others cite it.
 */
#include "formulas/table.h"
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

static const int64_t small_openings[] = {SQUARE_FEET(6)};
static const int64_t small_front[] = {INCHES(16)};
static const int64_t small_side[] = {INCHES(8)};

/* What is asked of openings of 6 square feet and more is not stated. */
static const struct ingle_table front = {
    .name = "for openings under 6 square feet",
    .rows = {small_openings, COUNT_OF(small_openings), 0, KEY_BELOW}, .cells = small_front};
static const struct ingle_table side = {
    .name = "for openings under 6 square feet",
    .rows = {small_openings, COUNT_OF(small_openings), 0, KEY_BELOW}, .cells = small_side};

static const struct ingle_rule rules[] = {
    {MATTER_HEARTH_FROM_FACING, "section not seen", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_table_cell, .inputs = {QUANTITY_OPENING_AREA}, .table = &front,
     .when = {MASONRY_FIREPLACE}, .reading = "Measured from the facing."},
    {MATTER_HEARTH_SIDE, "section not seen", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_table_cell, .inputs = {QUANTITY_OPENING_AREA}, .table = &side,
     .when = {MASONRY_FIREPLACE}},
    {MATTER_TRIM_DISTANCE, "2114.3.10", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_above_step,
     .inputs = {QUANTITY_TRIM_PROJECTION},
     .numbers = {INCHES_AND(1, 1, 2), INCHES(6), INCHES(12)},
     .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE, ABOVE_OPENING}},
    {MATTER_TRIM_SIDE_CLEARANCE, "2114.3.10", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_limit_and_projection, .inputs = {QUANTITY_TRIM_PROJECTION},
     .numbers = {INCHES_AND(1, 1, 2), INCHES(6)},
     .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE, BESIDE_OPENING}},
};

static const struct ingle_standard editions[] = {
    {.id = "sbc-1990s", .title = "Standard Building Code, 1990s", .place = "United States",
     .note = "Standard Building Code of the 1990s: year not stated; known from others that cite "
             "it.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_sbc = {editions, COUNT_OF(editions)};
