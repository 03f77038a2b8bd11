/* SPDX-License-Identifier: MIT */
/*
 * Red Lion, Pennsylvania, borough code of 1982: clearances of stoves.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define NO_SHIELD(kind) {QUANTITY_WALL_PROTECTION, IS_NOT, CHOICE_WALL_PROTECTION_##kind}
#define ON(surface) {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_##surface}
#define SHIELD(kind) {QUANTITY_WALL_PROTECTION, IS, CHOICE_WALL_PROTECTION_##kind}

#define ONLY_TWO                                                                               \
    "Two shields have a smaller figure: board held off, and brick veneer before a wall. Behind " \
    "any other 36 in stands."

static const struct ingle_rule rules[] = {
    {MATTER_STOVE_CLEARANCE, "stoves", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(36)}, .when = {STOVE, NO_SHIELD(THIN_BOARD_VENTED), NO_SHIELD(MASONRY)},
     .reading = ONLY_TWO},
    {MATTER_STOVE_CLEARANCE, "stoves", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(36)}, .when = {STOVE, SHIELD(MASONRY), ON(CEILING)}, .reading = ONLY_TWO},
    {MATTER_STOVE_CLEARANCE_REDUCED, "stoves", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(18)}, .when = {STOVE, SHIELD(THIN_BOARD_VENTED)},
     .reading = "The text says less than 36 in but more than 18 in, and does not say what holds "
                "at exactly 18 in: taken here as allowed. It names asbestos board, which must not "
                "be used."},
    {MATTER_SHIELD_AIR_SPACE, "stoves", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(1)}, .when = {STOVE, SHIELD(THIN_BOARD_VENTED)}},
    {MATTER_STOVE_CLEARANCE_REDUCED, "stoves", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(12)}, .when = {STOVE, SHIELD(MASONRY), ON(WALL)},
     .reading = "4 in brick veneer that reaches 2 ft above the stove and 2 ft beyond each side. "
                "The text says less than 18 in but more than 12 in, and does not say what holds "
                "at exactly 12 in: taken here as allowed."},
};

static const struct ingle_standard editions[] = {
    {.id = "red-lion-1982", .title = "Borough code of Red Lion", .place = "Red Lion, Pennsylvania",
     .note = "Red Lion, Pennsylvania, borough code of 1982: local. It is from the time of "
             "asbestos board, which must not be used.",
     .unit = UNIT_INCH, .edition = 1982, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_red_lion = {editions, COUNT_OF(editions)};
