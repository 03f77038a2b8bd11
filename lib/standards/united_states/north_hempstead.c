/* SPDX-License-Identifier: MIT */
/*
 * North Hempstead, New York, town code 2-58: connectors of stoves.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define SINGLE_WALL {QUANTITY_CONNECTOR_KIND, IS, CHOICE_CONNECTOR_KIND_SINGLE_WALL}
#define PIPE_SHIELD(kind) {QUANTITY_CONNECTOR_SHIELD, IS, CHOICE_CONNECTOR_SHIELD_##kind}

static const struct ingle_rule rules[] = {
    {MATTER_CONNECTOR_CLEARANCE, "2-58", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(18)},
     .when = {STOVE, SINGLE_WALL,
              {QUANTITY_CONNECTOR_SHIELD, IS_NOT, CHOICE_CONNECTOR_SHIELD_INSULATION_OR_METAL}},
     .reading = "For single-wall pipe: a listed one goes by its listing."},
    {MATTER_CONNECTOR_CLEARANCE, "2-58", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(9)}, .when = {STOVE, SINGLE_WALL, PIPE_SHIELD(INSULATION_OR_METAL)},
     .reading = "With 1 in or more of insulation on the pipe, or metal held 1 in or more off, "
                "over its whole length and 12 in or more beyond both sides."},
};

static const struct ingle_standard editions[] = {
    {.id = "north-hempstead-2-58", .title = "Town code of North Hempstead",
     .place = "North Hempstead, New York",
     .note = "North Hempstead, New York, town code 2-58, without stated edition: local.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_north_hempstead = {editions, COUNT_OF(editions)};
