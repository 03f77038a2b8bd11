/* SPDX-License-Identifier: MIT */
/*
 * International Fuel Gas Code: gas in fireplaces. Most of its sections were cited or seen without
 * their edition; each row says so.
 */
#include "measure/amounts.h"
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

static const struct ingle_rule rules[] = {
    /* The shutoff valve. */
    {MATTER_GAS_VALVE_PRESENT, "409.5.1 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_GAS_VALVE_PLACE_NONE}, .when = {ANY_GAS}},
    {MATTER_GAS_VALVE_DISTANCE, "409.5.1 (edition not stated)", INGLE_BASIS_CITED, INGLE_AT_MOST,
     &formula_fixed, .numbers = {FEET(6)}, .when = {ANY_GAS, VALVE_IN_ROOM}},
    {MATTER_GAS_VALVE_ACCESS, "409.5.1 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_GAS_VALVE_ACCESS_NONE},
     .when = {ANY_GAS, VALVE_IN_ROOM}},
    {MATTER_GAS_VALVE_UPSTREAM, "409.5.1 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {ANY_GAS, VALVE_IN_ROOM}},
    {MATTER_GAS_VALVE_PLACE, "409.5.1, 409.5.2 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_GAS_VALVE_PLACE_IN_ROOM},
     .when = {LOG_LIGHTER, VALVE_THERE, VALVE_NOT_IN_FIREBOX, VALVE_NOT_AT_MANIFOLD},
     .reading = REMOTE_VALVE_READING},
    {MATTER_GAS_VALVE_READY_ACCESS, "409.5.2 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_GAS_VALVE_ACCESS_READY},
     .when = {ANY_GAS, NO_LOG_LIGHTER, VALVE_REMOTE}},
    {MATTER_GAS_VALVE_READY_ACCESS, "409.5.3 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_GAS_VALVE_ACCESS_READY},
     .when = {ANY_GAS, VALVE_AT_MANIFOLD}},
    {MATTER_GAS_VALVE_IDENTIFIED, "409.5.2 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {ANY_GAS, NO_LOG_LIGHTER, VALVE_REMOTE}},
    {MATTER_GAS_VALVE_IDENTIFIED, "409.5.3 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {ANY_GAS, VALVE_AT_MANIFOLD}},
    {MATTER_GAS_VALVE_SOLE, "409.5.2 (edition not stated)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {false}, .when = {ANY_GAS, NO_LOG_LIGHTER, VALVE_REMOTE}},
    {MATTER_GAS_FIXED_PIPING, "409.5.2 (edition not stated)", INGLE_BASIS_CITED, INGLE_AT_MOST,
     &formula_fixed, .numbers = {FEET(6)}, .when = {ANY_GAS, NO_LOG_LIGHTER, VALVE_REMOTE}},
    {MATTER_GAS_MANIFOLD_DISTANCE, "409.5.3 (edition not stated)", INGLE_BASIS_CITED,
     INGLE_AT_MOST, &formula_fixed, .numbers = {FEET(50)}, .when = {ANY_GAS, VALVE_AT_MANIFOLD}},

    /* Gas logs and log lighters. */
    {MATTER_GAS_LOGS_LISTED, "602.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {GAS_LOGS}, .since = 2024},
    {MATTER_DAMPER_FOR_GAS, "Appendix D (edition not stated)", INGLE_BASIS_CITED, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_DAMPER_STATE_WORKING},
     .when = {GAS_LOGS, UP_THE_CHIMNEY},
     .reading = "The appendix only informs: it says what to check where gas logs were put into a "
                "wood-burning fireplace."},

    /* Unvented. */
    {MATTER_UNVENTED_SOLE_HEAT, "section not seen", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {false}, .when = {ANY_GAS, NO_LOG_LIGHTER, UNVENTED}},
    {MATTER_GAS_AIR_VOLUME, "required-volume clause (number and edition not stated)",
     INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_volume_by_heat, .inputs = {QUANTITY_GAS_INPUT},
     .numbers = {CUBIC_FEET(50), BTU_PER_HOUR(1000)}, .when = {ANY_GAS, NO_LOG_LIGHTER, UNVENTED},
     .reading = "The clause is for air from indoors. It is asked here of appliances without a "
                "vent alone: to others the air may be led from outdoors."},
};

#define EDITION(year, more)                                                                  \
    {                                                                                        \
        .id = "ifgc-" #year, .title = "International Fuel Gas Code", .place = "United States", \
        .note = "International Fuel Gas Code " #year ": gas in fireplaces. Most sections were " \
                "seen or cited without their edition." more,                                 \
        .unit = UNIT_INCH, .edition = year, .rules = rules, .rule_count = COUNT_OF(rules)    \
    }

static const struct ingle_standard editions[] = {
    EDITION(2018, " That decorative appliances be listed was read in the 2024 edition only."),
    EDITION(2024, ""),
};

const struct publication publication_ifgc = {editions, COUNT_OF(editions)};
