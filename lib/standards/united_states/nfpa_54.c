/* SPDX-License-Identifier: MIT */
/*
 * NFPA 54, National Fuel Gas Code: gas in fireplaces, and the table of permanent damper openings
 * that other publications print as well.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

const int64_t damper_heights[] = {FEET(6), FEET(8), FEET(10), FEET(15), FEET(20), FEET(30)};

const int64_t damper_openings[] = {
    SQUARE_INCHES(8),  SQUARE_INCHES(13), SQUARE_INCHES(20), SQUARE_INCHES(29),
    SQUARE_INCHES(39), SQUARE_INCHES(51), SQUARE_INCHES(64),
};

#define INPUTS_UP_TO(a, b, c, d, e, f, g)                                                 \
    BTU_PER_HOUR(a), BTU_PER_HOUR(b), BTU_PER_HOUR(c), BTU_PER_HOUR(d), BTU_PER_HOUR(e), \
        BTU_PER_HOUR(f), BTU_PER_HOUR(g)

const int64_t damper_inputs[] = {
    INPUTS_UP_TO(7800, 14000, 23200, 34000, 46400, 62400, 80000),
    INPUTS_UP_TO(8400, 15200, 25200, 37000, 50400, 68000, 86000),
    INPUTS_UP_TO(9000, 16800, 27600, 40400, 55800, 74400, 96400),
    INPUTS_UP_TO(9800, 18200, 30200, 44600, 62400, 84000, 108800),
    INPUTS_UP_TO(10600, 20200, 32600, 50400, 68400, 94000, 122200),
    INPUTS_UP_TO(11200, 21600, 36600, 55200, 76800, 105800, 138600),
};

static const struct ingle_table damper_table = DAMPER_TABLE("Table 10.6.2.3");

static const struct ingle_rule rules[] = {
    {MATTER_GAS_OPEN_PIPE, "7.7.2.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false},
     .when = {{QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}, NO_GAS, A_FIREPLACE}},

    /* The shutoff valve. */
    {MATTER_GAS_VALVE_PRESENT, "9.6.4", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_GAS_VALVE_PLACE_NONE}, .when = {ANY_GAS}},
    {MATTER_GAS_VALVE_DISTANCE, "9.6.4", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {FEET(6)}, .when = {ANY_GAS, VALVE_THERE}},
    {MATTER_GAS_VALVE_ACCESS, "9.6.4", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_GAS_VALVE_ACCESS_NONE}, .when = {ANY_GAS, VALVE_THERE}},
    {MATTER_GAS_VALVE_UPSTREAM, "9.6.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {ANY_GAS, VALVE_THERE}},
    {MATTER_GAS_VALVE_IN_FIREBOX, "9.6.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {GAS_LOGS, VALVE_IN_FIREBOX}},

    {MATTER_GAS_FIREPLACE_SEALED, "12.11.13", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {ANY_GAS, {QUANTITY_GAS_ON_FIREPLACE_FLUE, IS, true}}},

    /* Decorative gas appliances in vented fireplaces. */
    {MATTER_GAS_WORKING_FLUE, "10.6", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {GAS_LOGS, UP_THE_CHIMNEY}},
    {MATTER_GAS_THERMOSTAT, "10.6", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {GAS_LOGS, UP_THE_CHIMNEY}},
    {MATTER_GAS_SCREEN, "10.6", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {GAS_LOGS, UP_THE_CHIMNEY}},
    {MATTER_GAS_MANUFACTURED_HOME, "10.6", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {GAS_LOGS, UP_THE_CHIMNEY, IN_MANUFACTURED_HOME}},
    {MATTER_GAS_ROOM, "10.6", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_GAS_ROOM_OTHER}, .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_UNLISTED}},
    {MATTER_GAS_ROOM_VOLUME, "10.6", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_LISTED, GAS_IN_BEDROOM_OR_BATHROOM}},
    {MATTER_DAMPER_OPEN_AREA, "Table 10.6.2.3", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_table_column, .inputs = {QUANTITY_GAS_CHIMNEY_HEIGHT, QUANTITY_GAS_INPUT},
     .table = &damper_table, .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_UNLISTED},
     .reading = DAMPER_TABLE_READING},
    {MATTER_DAMPER_OPEN_AREA_LISTED, "10.6.2.3", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_listing, .inputs = {QUANTITY_LISTING_DAMPER_OPENING},
     .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_LISTED}},
};

static const struct ingle_standard editions[] = {
    {.id = "nfpa-54-2012", .title = "NFPA 54, National Fuel Gas Code", .place = "United States",
     .note = "NFPA 54, National Fuel Gas Code, 2012: gas in fireplaces. Read in the 2013 "
             "California mechanical and plumbing codes, which print its text.",
     .unit = UNIT_INCH, .edition = 2012, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nfpa_54 = {editions, COUNT_OF(editions)};
