/* SPDX-License-Identifier: MIT */
/*
 * Purdue Extension FNR-100: wood stoves.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define RADIANT {QUANTITY_STOVE_TYPE, IS, CHOICE_STOVE_TYPE_RADIANT}

static const struct ingle_rule rules[] = {
    {MATTER_STOVE_CLEARANCE, "clearances", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(36)}, .when = {STOVE, RADIANT},
     .reading = "For radiant stoves. It lets board or 28 gauge metal held off the wall cut this, "
                "and no figure of that was seen, so 36 in stands behind a shield too. Its shields "
                "are from the time of asbestos board, which must not be used."},
};

static const struct ingle_standard editions[] = {
    {.id = "purdue-fnr-100", .title = "Purdue Extension FNR-100", .place = "United States",
     .note = "Purdue Extension FNR-100, without stated edition: extension advice from the time of "
             "asbestos board, which must not be used.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_purdue = {editions, COUNT_OF(editions)};
