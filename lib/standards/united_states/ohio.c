/* SPDX-License-Identifier: MIT */
/*
 * Ohio Administrative Code, rule 3701-33-09: heating equipment.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define RADIANT {QUANTITY_STOVE_TYPE, IS, CHOICE_STOVE_TYPE_RADIANT}
#define CIRCULATING {QUANTITY_STOVE_TYPE, IS, CHOICE_STOVE_TYPE_CIRCULATING}
#define BARE {QUANTITY_WALL_PROTECTION, IS, CHOICE_WALL_PROTECTION_NONE}

static const struct ingle_rule rules[] = {
    {MATTER_FLOOR_ALL_ROUND, "(C)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(18)}, .when = {STOVE},
     .reading = "Measured from the perimeter of the stove's base, or as the maker says."},
    {MATTER_STOVE_CLEARANCE, "(D)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(36)}, .when = {STOVE, RADIANT, BARE}},
    {MATTER_STOVE_CLEARANCE, "(D)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(18)}, .when = {STOVE, CIRCULATING, BARE}},
    {MATTER_CONNECTOR_CLEARANCE, "(E)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(18)},
     .when = {STOVE, {QUANTITY_CONNECTOR_KIND, IS, CHOICE_CONNECTOR_KIND_SINGLE_WALL}}},
};

static const struct ingle_standard editions[] = {
    {.id = "ohio-3701-33-09", .title = "Ohio Administrative Code 3701-33-09", .place = "Ohio",
     .note = "Ohio Administrative Code, rule 3701-33-09, without stated edition: stoves, in "
             "inches.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_ohio = {editions, COUNT_OF(editions)};
