/* SPDX-License-Identifier: MIT */
/*
 * City of Lorain, Ohio: handout on wood stoves.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define UNLISTED {QUANTITY_LISTING_LABEL, IS_NOT, CHOICE_LISTING_LABEL_LISTED}
#define FLOOR_IS_NOT(kind) {QUANTITY_FLOOR_PROTECTION, IS_NOT, CHOICE_FLOOR_PROTECTION_##kind}
/* Hollow masonry under steel is more than the handout asks anywhere. */
#define NOT_BETTER_THAN_HOLLOW                                           \
    FLOOR_IS_NOT(LISTED_PROTECTOR), FLOOR_IS_NOT(NONCOMBUSTIBLE_FLOOR),  \
        FLOOR_IS_NOT(HOLLOW_MASONRY_AND_STEEL)
#define LOOSER \
    "Looser than NFPA 211: a local text only. The handout does not speak of steel on top."
#define LEGS(test, inches) {QUANTITY_STOVE_LEG_HEIGHT, test, INCHES(inches)}

static const struct ingle_rule rules[] = {
    {MATTER_FLOOR_PROTECTION, "floor protection", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_FLOOR_PROTECTION_HOLLOW_MASONRY},
     .when = {STOVE, UNLISTED, LEGS(AT_MOST, 2), NOT_BETTER_THAN_HOLLOW},
     .reading = LOOSER},
    {MATTER_FLOOR_PROTECTION, "floor protection", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_FLOOR_PROTECTION_SOLID_MASONRY},
     .when = {STOVE, UNLISTED, LEGS(MORE_THAN, 2), LEGS(AT_MOST, 6), NOT_BETTER_THAN_HOLLOW,
              FLOOR_IS_NOT(SOLID_MASONRY_AND_STEEL), FLOOR_IS_NOT(HOLLOW_MASONRY)},
     .reading = LOOSER " What is enough under lower legs is taken as enough here."},
};

static const struct ingle_standard editions[] = {
    {.id = "lorain", .title = "City of Lorain handout on wood stoves", .place = "Lorain, Ohio",
     .note = "City of Lorain, Ohio, handout on wood stoves, without stated edition. Its floor "
             "table is looser than the one of NFPA 211.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_lorain = {editions, COUNT_OF(editions)};
