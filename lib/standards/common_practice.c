/* SPDX-License-Identifier: MIT */
/*
 * Common practice of the trade in the United States: facts with no publication behind them. They
 * are advice; the appliance's label or manual takes their place wherever it says something.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define INSERT {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}

static const struct ingle_rule rules[] = {
    {MATTER_INSERT_HEARTH_FRONT, "no publication", INGLE_BASIS_COMMON_PRACTICE,
     INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(16)}, .when = {INSERT},
     .reading = "Two measuring points are in use, the fuel door and the front of the insert: the "
                "one on the label counts."},
    {MATTER_INSERT_HEARTH_SIDE, "no publication", INGLE_BASIS_COMMON_PRACTICE,
     INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(8)}, .when = {INSERT},
     .reading = "Measured from each side of the fuel opening."},
};

static const struct ingle_standard editions[] = {
    {.id = "common-practice-us", .title = "Common practice", .place = "United States",
     .note = "Practice of the trade with no publication behind it: advice, not code. The "
             "appliance's label or manual decides.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_common_practice = {editions, COUNT_OF(editions)};
