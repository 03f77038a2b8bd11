/* SPDX-License-Identifier: MIT */
/*
 * Ohio Administrative Code, rule 3701-33-09: heating equipment.
 */
#include "measure/amounts.h"
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define RADIANT {QUANTITY_STOVE_TYPE, IS, CHOICE_STOVE_TYPE_RADIANT}
#define FLOOR_THAT_BURNS \
    {QUANTITY_FLOOR_PROTECTION, IS_NOT, CHOICE_FLOOR_PROTECTION_NONCOMBUSTIBLE_FLOOR}
#define CIRCULATING {QUANTITY_STOVE_TYPE, IS, CHOICE_STOVE_TYPE_CIRCULATING}

/* From the base, or as the maker says. */
#define PAD_ROW(its_matter)                                                                       \
    {                                                                                             \
        its_matter, "(C)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,                      \
            .numbers = {INCHES(18)}, .when = {STOVE, FLOOR_THAT_BURNS},                           \
            .reading = "Or as the maker says. The rule measures from the perimeter of the "       \
                       "stove's base, the survey from its body, which gives no more where the "   \
                       "body reaches out past the base."                                          \
    }
#define WITHOUT_REDUCTION \
    "The rule has no smaller figure for a shielded wall: it stands whatever is in front of it."

static const struct ingle_rule rules[] = {
    PAD_ROW(MATTER_FLOOR_BEFORE_BODY),
    PAD_ROW(MATTER_FLOOR_BESIDE_BODY),
    PAD_ROW(MATTER_FLOOR_BEHIND_BODY),
    {MATTER_STOVE_CLEARANCE, "(D)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(36)}, .when = {STOVE, RADIANT}, .reading = WITHOUT_REDUCTION},
    {MATTER_STOVE_CLEARANCE, "(D)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(18)}, .when = {STOVE, CIRCULATING, NO_GAS_HEATER},
     .reading = WITHOUT_REDUCTION},
    {MATTER_STOVE_CLEARANCE, "(D)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)},
     .when = {STOVE, CIRCULATING, GAS_HEATER, {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_WALL},
              {QUANTITY_WALL_IN_FRONT, IS, false}},
     .reading = "At the rear and the sides. Above and before it no figure was seen."},
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
