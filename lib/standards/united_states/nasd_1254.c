/* SPDX-License-Identifier: MIT */
/*
 * University extension bulletin 1254 (NASD): wood stoves without a listing.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define UNLISTED {QUANTITY_LISTING_LABEL, IS_NOT, CHOICE_LISTING_LABEL_LISTED}
#define ON(surface) {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_##surface}
#define NOT_REDUCED                                                                           \
    MATTER_STOVE_CLEARANCE, "clearances", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,   \
        .numbers = {INCHES(36)},                                                              \
        .reading = "For a stove that stands free in a large room: top, sides, back and "      \
                   "front. A thin facing fixed right on the wall counts as none, and only "   \
                   "vented masonry before a wall has a smaller figure."
#define SHIELD(kind) {QUANTITY_WALL_PROTECTION, IS, CHOICE_WALL_PROTECTION_##kind}
#define FLOOR_IS_NOT(kind) {QUANTITY_FLOOR_PROTECTION, IS_NOT, CHOICE_FLOOR_PROTECTION_##kind}
#define LEGS(test, inches) {QUANTITY_STOVE_LEG_HEIGHT, test, INCHES(inches)}

static const struct ingle_rule rules[] = {
    {NOT_REDUCED,
     .when = {STOVE, UNLISTED,
              {QUANTITY_WALL_PROTECTION, IS_NOT, CHOICE_WALL_PROTECTION_MASONRY_VENTED}}},
    {NOT_REDUCED, .when = {STOVE, UNLISTED, SHIELD(MASONRY_VENTED), ON(CEILING)}},
    {MATTER_STOVE_CLEARANCE_REDUCED, "clearances", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(12)}, .when = {STOVE, UNLISTED, SHIELD(MASONRY_VENTED), ON(WALL)},
     .reading = "The bulletin works this one out: two thirds off 36 in."},
    {MATTER_FLOOR_PROTECTION, "floor protection", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_FLOOR_PROTECTION_SOLID_MASONRY_AND_STEEL},
     .when = {STOVE, UNLISTED, LEGS(AT_LEAST, 6), FLOOR_IS_NOT(LISTED_PROTECTOR),
              FLOOR_IS_NOT(NONCOMBUSTIBLE_FLOOR), FLOOR_IS_NOT(HOLLOW_MASONRY_AND_STEEL)},
     .reading = "Exactly 6 in is put here by the bulletin. Thicker hollow masonry is taken as "
                "enough."},
    {MATTER_FLOOR_ALL_ROUND, "floor protection", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(18)},
     .when = {STOVE, UNLISTED, FLOOR_IS_NOT(LISTED_PROTECTOR), FLOOR_IS_NOT(NONCOMBUSTIBLE_FLOOR)},
     .reading = "Measured from the appliance to the edge of the pad."},
    {MATTER_FLOOR_WIDTH, "floor protection", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_input_plus,
     .inputs = {QUANTITY_STOVE_WIDTH}, .numbers = {INCHES(36)},
     .when = {STOVE, UNLISTED, FLOOR_IS_NOT(LISTED_PROTECTOR), FLOOR_IS_NOT(NONCOMBUSTIBLE_FLOOR)},
     .reading = "18 in on each side of the stove."},
    {MATTER_FLOOR_DEPTH, "floor protection", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_input_plus,
     .inputs = {QUANTITY_STOVE_DEPTH}, .numbers = {INCHES(36)},
     .when = {STOVE, UNLISTED, FLOOR_IS_NOT(LISTED_PROTECTOR), FLOOR_IS_NOT(NONCOMBUSTIBLE_FLOOR)},
     .reading = "18 in in front of the stove and behind it."},
};

static const struct ingle_standard editions[] = {
    {.id = "nasd-1254", .title = "University extension bulletin 1254", .place = "United States",
     .note = "University extension bulletin 1254 (NASD), without stated edition: wood stoves "
             "without a listing, by what it says of NFPA 211.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nasd_1254 = {editions, COUNT_OF(editions)};
