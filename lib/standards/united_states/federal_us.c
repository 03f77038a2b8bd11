/* SPDX-License-Identifier: MIT */
/*
 * What the federal government of the United States asked or asks of fireplaces and of appliances
 * for solid fuel, manufactured homes apart.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

static const struct ingle_rule fha_mps[] = {
    {MATTER_FLUE_AREA, "edition not seen", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_share_by_height, .inputs = {QUANTITY_OPENING_AREA, QUANTITY_FLUE_ABOVE_THROAT},
     .numbers = {FEET(15), RATIO(1, 8), RATIO(1, 10)}, .when = {MASONRY_FIREPLACE}},
};

static const struct ingle_rule cpsc[] = {
    {MATTER_LABEL_CLEARANCES, "1406.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {NO_MASONRY_FIREPLACE,
              NO_MASONRY_HEATER,
              {QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}},
     .reading = "Said of the makers of appliances that burn coal or wood. Its opening part was "
                "read."},
};

static const struct ingle_standard editions[] = {
    {.id = "fha-mps", .title = "FHA Minimum Property Standards", .place = "United States",
     .note = "Old Minimum Property Standards of the Federal Housing Administration: edition not "
             "seen; known from others that cite them.",
     .unit = UNIT_INCH, .rules = fha_mps, .rule_count = COUNT_OF(fha_mps)},
    {.id = "cpsc-1406", .title = "Consumer Product Safety Commission, 16 CFR",
     .place = "United States",
     .note = "16 CFR 1406, what makers of appliances for coal and wood have to state: its opening "
             "part was read; it has no number for a hearth.",
     .unit = UNIT_INCH, .rules = cpsc, .rule_count = COUNT_OF(cpsc)},
};

const struct publication publication_federal_us = {editions, COUNT_OF(editions)};
