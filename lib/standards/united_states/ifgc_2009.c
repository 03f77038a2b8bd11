/* SPDX-License-Identifier: MIT */
/*
 * International Fuel Gas Code of 2009, section 501.7: appliances on the flue of a fireplace.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

#define INSERT {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}
#define ON_FIREPLACE_FLUE {QUANTITY_GAS_ON_FIREPLACE_FLUE, IS, true}
#define IN_FACTORY_BUILT {QUANTITY_INSERT_IN_FACTORY_BUILT, IS, true}

static const struct ingle_rule rules[] = {
    {MATTER_INSERT_INTO_FLUE, "501.7.3", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {INSERT, {QUANTITY_INSERT_IN_FACTORY_BUILT, IS, false}},
     .reading = "The end of the clause was not seen."},
    {MATTER_GAS_FIREPLACE_SEALED, "501.7, 501.7.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {ANY_GAS, ON_FIREPLACE_FLUE}},
    {MATTER_GAS_FLUE_ACCESS, "501.7.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {ANY_GAS, ON_FIREPLACE_FLUE}},
    {MATTER_GAS_FACTORY_BUILT_FLUE, "501.7.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {ANY_GAS, ON_FIREPLACE_FLUE, OF_FACTORY_PARTS}},
    {MATTER_GAS_INTO_FLUE, "501.7.3", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {ANY_GAS, ON_FIREPLACE_FLUE, BUILT_OF_MASONRY},
     .reading = "The end of the clause was not seen."},
    {MATTER_INSERT_SEAL, "501.7.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {INSERT}},
    {MATTER_INSERT_ACCESS, "501.7.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {INSERT}},
    {MATTER_INSERT_IN_FACTORY_BUILT, "501.7.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {INSERT, IN_FACTORY_BUILT}},
    {MATTER_CONNECTOR_FACTORY_BUILT, "501.7.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {STOVE,
              {QUANTITY_CONNECTOR_INTO, IS, CHOICE_CONNECTOR_INTO_FACTORY_BUILT_FIREPLACE}}},
};

static const struct ingle_standard editions[] = {
    {.id = "ifgc-2009", .title = "International Fuel Gas Code", .place = "United States",
     .note = "International Fuel Gas Code 2009, section 501.7: appliances on the flue of a "
             "fireplace.",
     .unit = UNIT_INCH, .edition = 2009, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_ifgc_2009 = {editions, COUNT_OF(editions)};
