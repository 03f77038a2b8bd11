/* SPDX-License-Identifier: MIT */
/*
 * NFPA 211: hearth and mantel of masonry fireplaces. Its text was not read: the rules are known
 * from others that cite it. The clause on trim beside the opening that projects far is left out,
 * since its wording was not seen.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

static const struct ingle_rule rules[] = {
    {MATTER_HEARTH_FROM_FACING, "11.3.2 to 11.3.5, edition not stated", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_by_opening_area, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {SQUARE_FEET(6), INCHES(16), INCHES(20)}, .when = {MASONRY_FIREPLACE},
     .reading = "Measured from the facing, not from the plane of the opening."},
    {MATTER_HEARTH_SIDE, "11.3.2 to 11.3.5, edition not stated", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_by_opening_area, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {SQUARE_FEET(6), INCHES(8), INCHES(12)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_EXTENSION_THICKNESS, "11.3.2 to 11.3.5, edition not stated", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(2)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_BENEATH, "11.3.2 to 11.3.5, edition not stated", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {MASONRY_FIREPLACE, YES(HEARTH_OVERHUNG)}},
    {MATTER_TRIM_DISTANCE, "7-3.3.3 (older), 11.2.5.4 (2016)", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_above_step, .inputs = {QUANTITY_TRIM_PROJECTION},
     .numbers = {INCHES_AND(1, 1, 2), INCHES(6), INCHES(12)},
     .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE, ABOVE_OPENING},
     .reading = "A piece that projects exactly 1 1/2 in may stand 6 in above the opening."},
    {MATTER_TRIM_DISTANCE, "7-3.3.3 (older), 11.2.5.4 (2016)", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(6)},
     .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE, BESIDE_OPENING},
     .reading = "What more it asks of pieces beside the opening that project further than 1 1/2 in "
                "was not seen."},
};

static const struct ingle_standard editions[] = {
    {.id = "nfpa-211-fireplaces", .title = "NFPA 211, masonry fireplaces",
     .place = "United States",
     .note = "NFPA 211, masonry fireplaces: editions as named with each rule; known from others "
             "that cite it.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nfpa_211_fireplaces = {editions, COUNT_OF(editions)};
