/* SPDX-License-Identifier: MIT */
/*
 * Older texts of the National Fire Protection Association on stoves, superseded: they date what was
 * built by them.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define RADIANT {QUANTITY_STOVE_TYPE, IS, CHOICE_STOVE_TYPE_RADIANT}
#define CIRCULATING {QUANTITY_STOVE_TYPE, IS, CHOICE_STOVE_TYPE_CIRCULATING}
#define ABOVE {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_CEILING}
#define NOT_ABOVE {QUANTITY_WALL_SURFACE, IS_NOT, CHOICE_WALL_SURFACE_CEILING}
#define IN_FRONT {QUANTITY_WALL_IN_FRONT, IS, true}
#define NOT_IN_FRONT {QUANTITY_WALL_IN_FRONT, IS, false}

#define FLOOR "older text (document and edition not seen)", INGLE_BASIS_CITED
#define TABLE "older tables (not seen)", INGLE_BASIS_FROM_MEMORY
#define CLEAR(inches, ...)                                                              \
    {                                                                                   \
        MATTER_STOVE_CLEARANCE, TABLE, INGLE_AT_LEAST, &formula_fixed,                  \
            .numbers = {INCHES(inches)}, .when = {STOVE, __VA_ARGS__},                  \
            .reading = "Superseded. The table still turns up in the forms of insurers. " \
                       "Taken as it stands behind a shield too."                    \
    }

static const struct ingle_rule rules[] = {
    {MATTER_FLOOR_BEFORE_BODY, FLOOR, INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(18)},
     .when = {STOVE}, .reading = "Superseded. 18 in at every other side with a door too."},
    {MATTER_FLOOR_BESIDE_BODY, FLOOR, INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(12)},
     .when = {STOVE}, .reading = "Superseded. For a side without a door."},
    CLEAR(36, RADIANT),
    CLEAR(36, CIRCULATING, ABOVE),
    CLEAR(24, CIRCULATING, NOT_ABOVE, IN_FRONT),
    CLEAR(12, CIRCULATING, NOT_ABOVE, NOT_IN_FRONT),
};

static const struct ingle_standard editions[] = {
    {.id = "nfpa-older-stoves", .title = "NFPA, older texts on stoves", .place = "United States",
     .note = "Older texts and tables of the National Fire Protection Association on stoves, "
             "superseded: documents and editions not seen. For dating what was built, not for "
             "building.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_older_stoves = {editions, COUNT_OF(editions)};
