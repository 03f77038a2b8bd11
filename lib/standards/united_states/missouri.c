/* SPDX-License-Identifier: MIT */
/*
 * Missouri Weatherization Field Guide: wood stoves.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define LISTED {QUANTITY_LISTING_LABEL, IS, CHOICE_LISTING_LABEL_LISTED}
#define UNLISTED {QUANTITY_LISTING_LABEL, IS_NOT, CHOICE_LISTING_LABEL_LISTED}
#define BUILT                                                                            \
    {QUANTITY_FLOOR_PROTECTION, IS_NOT, CHOICE_FLOOR_PROTECTION_LISTED_PROTECTOR},       \
        {QUANTITY_FLOOR_PROTECTION, IS_NOT, CHOICE_FLOOR_PROTECTION_NONCOMBUSTIBLE_FLOOR}

static const struct ingle_rule rules[] = {
    {MATTER_STOVE_CLEARANCE, "wood stoves", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(36)}, .when = {STOVE, UNLISTED},
     .reading = "A stove whose label is missing is treated as unlisted. The guide gives no figure "
                "for a shielded wall: 36 in stands whatever is in front of it."},
    {MATTER_STOVE_CLEARANCE, "wood stoves", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_by_listing,
     .inputs = {QUANTITY_WALL_BY_LISTING}, .when = {STOVE, LISTED},
     .reading = "The figures of the label; with shields they can be as small as 6 in."},
    {MATTER_FLOOR_PROTECTION, "wood stoves", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_FLOOR_PROTECTION_HOLLOW_MASONRY_AND_TOP}, .when = {STOVE, UNLISTED, BUILT}},
    {MATTER_FLOOR_TOP, "wood stoves", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 1, 4)},
     .when = {STOVE, UNLISTED,
              {QUANTITY_FLOOR_PROTECTION, IS, CHOICE_FLOOR_PROTECTION_HOLLOW_MASONRY_AND_TOP}}},
    {MATTER_FLOOR_ALL_ROUND, "wood stoves", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(18)},
     .when = {STOVE, UNLISTED,
              {QUANTITY_FLOOR_PROTECTION, IS_NOT, CHOICE_FLOOR_PROTECTION_NONCOMBUSTIBLE_FLOOR}}},
    {MATTER_FLOOR_BEFORE_BODY, "wood stoves", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_listing_with_usual, .inputs = {QUANTITY_LISTING_HEARTH_FRONT},
     .numbers = {INCHES(18)}, .when = {STOVE, LISTED},
     .reading = "What is usual for listed stoves; the label decides."},
    {MATTER_FLOOR_THICKNESS, "wood stoves", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_listing_with_usual, .inputs = {QUANTITY_LISTING_PAD_THICKNESS},
     .numbers = {INCHES(1)}, .when = {STOVE, LISTED},
     .reading = "What is usual for listed stoves; the label decides."},
};

static const struct ingle_standard editions[] = {
    {.id = "missouri-guide", .title = "Missouri Weatherization Field Guide", .place = "Missouri",
     .note = "Missouri Weatherization Field Guide, without stated edition: a guide to the trade, "
             "not a code.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_missouri = {editions, COUNT_OF(editions)};
