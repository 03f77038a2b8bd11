/* SPDX-License-Identifier: MIT */
/*
 * Common practice of the trade in Canada: facts with no publication behind them, in millimetres,
 * which are rules of their own and no conversions.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define PRACTICE "no publication", INGLE_BASIS_COMMON_PRACTICE
#define INSERT {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}
#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define LISTED {QUANTITY_LISTING_LABEL, IS, CHOICE_LISTING_LABEL_LISTED}
#define UNLISTED {QUANTITY_LISTING_LABEL, IS_NOT, CHOICE_LISTING_LABEL_LISTED}
#define BARE {QUANTITY_WALL_SHIELD_FACE, IS, CHOICE_WALL_SHIELD_FACE_NONE}
#define SHIELDED {QUANTITY_WALL_SHIELD_FACE, IS_NOT, CHOICE_WALL_SHIELD_FACE_NONE}
#define WALL {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_WALL}

#define SHIELD_READING "Usually said of CSA B365; its clause was not confirmed."

static const struct ingle_rule rules[] = {
    {MATTER_INSERT_HEARTH_FRONT, PRACTICE, INGLE_AT_LEAST, &formula_listing_or_usual,
     .inputs = {QUANTITY_LISTING_HEARTH_FRONT}, .numbers = {MILLIMETRES(450)}, .when = {INSERT},
     .reading = "18 in or 450 mm. Two measuring points are in use, the fuel door and the front of "
                "the insert: the one on the label counts."},
    {MATTER_INSERT_BODY_SIDE, PRACTICE, INGLE_AT_LEAST, &formula_listing_or_usual,
     .inputs = {QUANTITY_LISTING_HEARTH_SIDE}, .numbers = {MILLIMETRES(200)}, .when = {INSERT},
     .reading = "Measured from each side of the insert's body."},
    {MATTER_FLOOR_BEFORE_BODY, PRACTICE, INGLE_AT_LEAST, &formula_listing_with_usual,
     .inputs = {QUANTITY_LISTING_HEARTH_FRONT}, .numbers = {MILLIMETRES(450)},
     .when = {STOVE, LISTED},
     .reading = "On the side that is fuelled, taken here as the front."},
    {MATTER_FLOOR_BESIDE_BODY, PRACTICE, INGLE_AT_LEAST, &formula_listing_with_usual,
     .inputs = {QUANTITY_LISTING_HEARTH_SIDE}, .numbers = {MILLIMETRES(200)},
     .when = {STOVE, LISTED}},
    {MATTER_FLOOR_BEHIND_BODY, PRACTICE, INGLE_AT_LEAST, &formula_listing_with_usual,
     .inputs = {QUANTITY_LISTING_HEARTH_BACK}, .numbers = {MILLIMETRES(200)},
     .when = {STOVE, LISTED},
     .reading = "Behind the stove the pad may stop at the stove's own rear clearance where that is "
                "less."},
    {MATTER_STOVE_CLEARANCE, PRACTICE, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(1200)},
     .when = {STOVE, UNLISTED, BARE,
              {QUANTITY_STOVE_TYPE, IS, CHOICE_STOVE_TYPE_RADIANT}},
     .reading = "For an uncertified stove without jacket."},
    {MATTER_STOVE_CLEARANCE, PRACTICE, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(900)},
     .when = {STOVE, UNLISTED, BARE,
              {QUANTITY_STOVE_TYPE, IS, CHOICE_STOVE_TYPE_CIRCULATING}},
     .reading = "For an uncertified stove with a jacket."},
    {MATTER_STOVE_CLEARANCE_REDUCED, PRACTICE, INGLE_AT_LEAST, &formula_not_printed,
     .when = {STOVE, UNLISTED, SHIELDED},
     .reading = "What a shield takes off 1200 mm or 900 mm is for CSA B365 to say: practice has no "
                "figure of its own."},
    {MATTER_SHIELD_AIR_SPACE, PRACTICE, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(21)}, .when = {STOVE, SHIELDED}, .reading = SHIELD_READING},
    {MATTER_SHIELD_BOTTOM_GAP, PRACTICE, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(25)}, .when = {STOVE, SHIELDED, WALL}, .reading = SHIELD_READING},
    {MATTER_SHIELD_BOTTOM_GAP_MOST, PRACTICE, INGLE_AT_MOST, &formula_fixed,
     .numbers = {MILLIMETRES(75)}, .when = {STOVE, SHIELDED, WALL}, .reading = SHIELD_READING},
    {MATTER_SHIELD_PAST_SIDES, PRACTICE, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(450)}, .when = {STOVE, SHIELDED, WALL}, .reading = SHIELD_READING},
    {MATTER_SHIELD_ABOVE_STOVE, PRACTICE, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(500)}, .when = {STOVE, SHIELDED, WALL}, .reading = SHIELD_READING},
};

static const struct ingle_standard editions[] = {
    {.id = "common-practice-canada", .title = "Common practice", .place = "Canada",
     .note = "Practice of the trade in Canada with no publication behind it: advice, not code. The "
             "appliance's label or manual decides.",
     .unit = UNIT_MILLIMETRE, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_common_practice_canada = {editions, COUNT_OF(editions)};
