/* SPDX-License-Identifier: MIT */
/*
 * The code of the National Board of Fire Underwriters in the 1950s, as a town took it over.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

static const struct ingle_rule rules[] = {
    {MATTER_HEARTH_FROM_FACING, "hearths", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(20)}, .when = {MASONRY_FIREPLACE},
     .reading = "Measured from the chimney breast; the same for every size of opening."},
    {MATTER_HEARTH_SIDE, "hearths", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(12)}, .when = {MASONRY_FIREPLACE},
     .reading = "The same for every size of opening."},
    {MATTER_HEARTH_WITH_SUPPORT, "hearths", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = {MASONRY_FIREPLACE}},
};

static const struct ingle_standard editions[] = {
    {.id = "nbfu-1950s", .title = "National Board of Fire Underwriters' code, 1950s",
     .place = "United States",
     .note = "National Board of Fire Underwriters' code of the 1950s: read in the building "
             "ordinance of La Porte, Texas; its year is not stated.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nbfu = {editions, COUNT_OF(editions)};
