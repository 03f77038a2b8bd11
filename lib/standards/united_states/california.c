/* SPDX-License-Identifier: MIT */
/*
 * California's codes of 2013: gas in fireplaces by its mechanical code (CMC) and plumbing code
 * (CPC), with the text of NFPA 54-2012, and fireplaces by its energy code.
 */
#include "measure/amounts.h"
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

#define VALVE_SECTION "CMC 1312.4, CPC 1211.5"
#define LOGS_SECTION "CMC 907.1 to 907.3"
#define ENERGY_SECTION "Energy Code 150.0(e)1"

#define BLOCKED_SECTION "CMC Appendix E 602.1.1.3, " ENERGY_SECTION "C exception"
#define BLOCKED_READING                                                                        \
    "Asked of gas logs, log lighters and decorative appliances where the mechanical code or " \
    "the appliance's instructions require the damper blocked open. The mechanical code is "   \
    "read as doing so for logs that are not listed."
#define CONTROL_READING                                                                       \
    "Not asked above gas logs or a gas insert, which may need the damper blocked open, nor " \
    "above a log lighter whose instructions require that."
#define BLOCKED_BY_MAKER {QUANTITY_GAS_DAMPER_BY_MAKER, IS, true}

#define A_DAMPER {QUANTITY_DAMPER_STATE, IS_NOT, CHOICE_DAMPER_STATE_REMOVED}
#define NOT_A(kind) {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_##kind}

static const struct ingle_table damper_table = DAMPER_TABLE("CMC Table 907.2");

static const struct ingle_rule rules[] = {
    {MATTER_GAS_OPEN_PIPE, "CPC 1210.9.1.1, CMC 1311.8.1.1", INGLE_BASIS_READ, INGLE_IS,
     &formula_observed, .numbers = {false},
     .when = {{QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}, NO_GAS, NOT_A(STOVE),
              NOT_A(PELLET_STOVE), NOT_A(MASONRY_HEATER)}},

    /* The shutoff valve. */
    {MATTER_GAS_VALVE_PRESENT, VALVE_SECTION, INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_GAS_VALVE_PLACE_NONE}, .when = {ANY_GAS}},
    {MATTER_GAS_VALVE_DISTANCE, VALVE_SECTION, INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {FEET(6)}, .when = {ANY_GAS, VALVE_THERE}},
    {MATTER_GAS_VALVE_ACCESS, VALVE_SECTION, INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_GAS_VALVE_ACCESS_NONE}, .when = {ANY_GAS, VALVE_THERE}},
    {MATTER_GAS_VALVE_UPSTREAM, VALVE_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {ANY_GAS, VALVE_THERE}},
    {MATTER_GAS_VALVE_IN_FIREBOX, VALVE_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {GAS_LOGS, VALVE_IN_FIREBOX}},

    {MATTER_GAS_FIREPLACE_SEALED, "CMC 802.10.11, CPC 509.10.11", INGLE_BASIS_READ, INGLE_IS,
     &formula_observed, .numbers = {true},
     .when = {ANY_GAS, {QUANTITY_GAS_ON_FIREPLACE_FLUE, IS, true}}},

    /* Decorative gas appliances in vented fireplaces. */
    {MATTER_GAS_WORKING_FLUE, LOGS_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {GAS_LOGS, UP_THE_CHIMNEY}},
    {MATTER_GAS_THERMOSTAT, LOGS_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {GAS_LOGS, UP_THE_CHIMNEY}},
    {MATTER_GAS_SCREEN, LOGS_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {GAS_LOGS, UP_THE_CHIMNEY}},
    {MATTER_GAS_MANUFACTURED_HOME, LOGS_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {GAS_LOGS, UP_THE_CHIMNEY, IN_MANUFACTURED_HOME}},
    {MATTER_GAS_ROOM, LOGS_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_GAS_ROOM_OTHER}, .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_UNLISTED}},
    {MATTER_GAS_ROOM_VOLUME, LOGS_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_LISTED, GAS_IN_BEDROOM_OR_BATHROOM}},
    {MATTER_DAMPER_OPEN_AREA, "CMC Table 907.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_table_column, .inputs = {QUANTITY_GAS_CHIMNEY_HEIGHT, QUANTITY_GAS_INPUT},
     .table = &damper_table, .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_UNLISTED},
     .reading = DAMPER_TABLE_READING},
    {MATTER_DAMPER_OPEN_AREA_LISTED, "CMC 907.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_listing, .inputs = {QUANTITY_LISTING_DAMPER_OPENING},
     .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_LISTED}},
    {MATTER_DAMPER_FOR_GAS, BLOCKED_SECTION ", CMC Table 907.2", INGLE_BASIS_READ, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_DAMPER_STATE_WORKING},
     .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_UNLISTED}, .reading = BLOCKED_READING},
    {MATTER_DAMPER_FOR_GAS, BLOCKED_SECTION, INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_DAMPER_STATE_WORKING},
     .when = {GAS_LOGS, UP_THE_CHIMNEY, GAS_LISTED, BLOCKED_BY_MAKER}, .reading = BLOCKED_READING},
    {MATTER_DAMPER_FOR_GAS, BLOCKED_SECTION, INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_DAMPER_STATE_WORKING},
     .when = {ANY_GAS, NO_GAS_LOGS, NO_GAS_INSERT, NO_GAS_HEATER, UP_THE_CHIMNEY,
              BLOCKED_BY_MAKER},
     .reading = BLOCKED_READING},

    /* Energy. */
    {MATTER_FIREPLACE_DOORS, ENERGY_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {NOT_A(INSERT), NOT_A(STOVE), NOT_A(PELLET_STOVE), NOT_A(MASONRY_HEATER)}},
    {MATTER_DAMPER_CONTROL, ENERGY_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {NOT_A(INSERT), NOT_A(STOVE), NOT_A(PELLET_STOVE), NOT_A(MASONRY_HEATER),
              NO_GAS_LOGS, NO_GAS_INSERT, NO_LOG_LIGHTER, A_DAMPER},
     .reading = CONTROL_READING},
    {MATTER_DAMPER_PRESENT, ENERGY_SECTION, INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_DAMPER_STATE_REMOVED},
     .when = {NOT_A(INSERT), NOT_A(STOVE), NOT_A(PELLET_STOVE), NOT_A(MASONRY_HEATER),
              NO_GAS_LOGS, NO_GAS_INSERT, NO_LOG_LIGHTER},
     .reading = CONTROL_READING},
    {MATTER_DAMPER_CONTROL, ENERGY_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {NOT_A(INSERT), NOT_A(STOVE), NOT_A(PELLET_STOVE), NOT_A(MASONRY_HEATER),
              LOG_LIGHTER, {QUANTITY_GAS_DAMPER_BY_MAKER, IS, false}, A_DAMPER},
     .reading = CONTROL_READING},
    {MATTER_EXTERIOR_AIR, ENERGY_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_AIR_DUCT_STATE_CONNECTED},
     .when = {NOT_A(INSERT), NOT_A(STOVE), NOT_A(PELLET_STOVE), NOT_A(MASONRY_HEATER),
              {QUANTITY_AIR_ON_INNER_SLAB, IS, false}}},
    {MATTER_AIR_DAMPER, ENERGY_SECTION, INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {NOT_A(INSERT), NOT_A(STOVE), NOT_A(PELLET_STOVE), NOT_A(MASONRY_HEATER),
              {QUANTITY_AIR_DUCT_STATE, IS, CHOICE_AIR_DUCT_STATE_CONNECTED}}},
    {MATTER_AIR_AREA, ENERGY_SECTION, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {SQUARE_INCHES(6)},
     .when = {NOT_A(INSERT), NOT_A(STOVE), NOT_A(PELLET_STOVE), NOT_A(MASONRY_HEATER),
              {QUANTITY_AIR_DUCT_STATE, IS, CHOICE_AIR_DUCT_STATE_CONNECTED}},
     .reading = "Held against an intake that is there."},
};

static const struct ingle_standard editions[] = {
    {.id = "california-2013", .title = "California codes", .place = "California",
     .note = "2013 California Mechanical Code (CMC), Plumbing Code (CPC) and Energy Code: gas in "
             "fireplaces, doors, dampers, air intake.",
     .unit = UNIT_INCH, .edition = 2013, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_california = {editions, COUNT_OF(editions)};
