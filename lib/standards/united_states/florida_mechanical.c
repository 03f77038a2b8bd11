/* SPDX-License-Identifier: MIT */
/*
 * Florida Building Code, Mechanical, section 905: solid-fuel stoves and inserts.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
/* For solid fuel. */
#define INSERT                                                      \
    {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}, \
        {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_INSERT}

static const struct ingle_rule rules[] = {
    {MATTER_LISTING_PLATE, "905.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_LISTING_LABEL_LISTED}, .when = {STOVE},
     .reading = "To UL 1482, or UL 737 for a fireplace stove."},
    {MATTER_LISTING_PLATE, "905.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_LISTING_LABEL_LISTED}, .when = {INSERT}, .reading = "To UL 1482."},
};

static const struct ingle_standard editions[] = {
    {.id = "florida-mechanical", .title = "Florida Building Code, Mechanical", .place = "Florida",
     .note = "Florida Building Code, Mechanical, section 905, without stated edition.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_florida_mechanical = {editions, COUNT_OF(editions)};
