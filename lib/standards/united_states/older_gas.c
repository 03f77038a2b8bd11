/* SPDX-License-Identifier: MIT */
/*
 * Older codes of the United States on gas in fireplaces, as cited: their editions are stated by
 * numbering or decade only.
 */
#include "measure/amounts.h"
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

static const struct ingle_rule plumbing_rules[] = {
    {MATTER_GAS_VALVE_PLACE, "1211.17 (1994 and 1997 numbering)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_GAS_VALVE_PLACE_IN_ROOM},
     .when = {ANY_GAS, NO_GAS_HEATER},
     .reading = "That the valve be outside the hearth is cited from the edition of 2000."},
    {MATTER_GAS_VALVE_DISTANCE, "1211.17 (1994 and 1997 numbering)", INGLE_BASIS_CITED,
     INGLE_AT_MOST, &formula_fixed, .numbers = {FEET(4)},
     .when = {ANY_GAS, NO_GAS_HEATER, VALVE_THERE},
     .reading = "Measured to the gas outlet in the fireplace; one source measures from the hearth "
                "opening."},
    {MATTER_GAS_HEATER_VALVE_DISTANCE, "1211.15, 1211.18 (of the same years)", INGLE_BASIS_CITED,
     INGLE_AT_MOST, &formula_fixed, .numbers = {FEET(3)}, .when = {GAS_HEATER, VALVE_THERE},
     .reading = "Appliances other than fireplaces are read as room heaters here."},
    {MATTER_GAS_VALVE_PRESENT, "1211.15, 1211.18 (of the same years)", INGLE_BASIS_CITED,
     INGLE_IS_NOT, &formula_observed, .numbers = {CHOICE_GAS_VALVE_PLACE_NONE},
     .when = {GAS_HEATER},
     .reading = "Appliances other than fireplaces are read as room heaters here."},
    {MATTER_GAS_VALVE_UPSTREAM, "1211.15, 1211.18 (of the same years)", INGLE_BASIS_CITED,
     INGLE_IS, &formula_observed, .numbers = {true}, .when = {GAS_HEATER, VALVE_THERE},
     .reading = "Appliances other than fireplaces are read as room heaters here."},
};

static const struct ingle_rule mechanical_rules[] = {
    {MATTER_GAS_PIPE_ENTRY, "901.3 (1990s)", INGLE_BASIS_CITED, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_GAS_PIPE_ENTRY_SEALED},
     .when = {ANY_GAS, NO_GAS_HEATER}},
};

static const struct ingle_rule dwelling_rules[] = {
    {MATTER_GAS_PIPE_ENTRY, "2431.1 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_GAS_PIPE_ENTRY_SEALED},
     .when = {ANY_GAS, NO_GAS_HEATER}},
};

static const struct ingle_standard editions[] = {
    {.id = "upc-older", .title = "Uniform Plumbing Code, older editions", .place = "United States",
     .note = "Uniform Plumbing Code, in the numbering of 1994 and 1997, as cited: for houses piped "
             "in its day. The California codes of 2013 have no such rule.",
     .unit = UNIT_INCH, .rules = plumbing_rules, .rule_count = COUNT_OF(plumbing_rules)},
    {.id = "umc-older", .title = "Uniform Mechanical Code, older editions",
     .place = "United States",
     .note = "Uniform Mechanical Code of the 1990s, as cited: gas pipes into fireplaces alone.",
     .unit = UNIT_INCH, .rules = mechanical_rules, .rule_count = COUNT_OF(mechanical_rules)},
    {.id = "cabo-gas-older", .title = "CABO One and Two Family Dwelling Code, gas",
     .place = "United States",
     .note = "CABO One and Two Family Dwelling Code, edition not stated, as cited: gas pipes into "
             "fireplaces alone.",
     .unit = UNIT_INCH, .rules = dwelling_rules, .rule_count = COUNT_OF(dwelling_rules)},
};

const struct publication publication_older_gas = {editions, COUNT_OF(editions)};
