/* SPDX-License-Identifier: MIT */
/*
 * New York City Mechanical Code, chapter 8: chimneys and connectors of solid-fuel appliances.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define INSERT {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}
#define NO_GAS_INSERT {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_INSERT}
#define PIPE(kind) {QUANTITY_CONNECTOR_KIND, IS, CHOICE_CONNECTOR_KIND_##kind}
#define ON_FIREPLACE {QUANTITY_CONNECTOR_INTO, IS, CHOICE_CONNECTOR_INTO_FIREPLACE_CHIMNEY}
#define ALONE {QUANTITY_CONNECTOR_SEVERAL, IS, false}
#define NOT_VENT {QUANTITY_CONNECTOR_KIND, IS_NOT, CHOICE_CONNECTOR_KIND_VENT}
#define FAN_DRAWN                                                                    \
    {QUANTITY_FLUE_DRAFT_FAN, IS, true},                                             \
        {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_PELLET_STOVE}
#define FED_BY_HAND \
    "For fireplaces and whatever is fed by hand, so not for a pellet stove, which feeds itself."
#define ACROSS(test, inches) {QUANTITY_CONNECTOR_DIAMETER, test, INCHES(inches)}

#define EVERY_FLUE                                                                             \
    "Every flue of solid fuel, inside the house or on its outer wall. Where several appliances " \
    "join it, one collar alone does not tell."

static const struct ingle_rule rules[] = {
    {MATTER_INSERT_FLUE_AREA, "801.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_COLLAR_AREA}, .numbers = {RATIO(1, 1)}, .when = {INSERT, ALONE},
     .reading = "A chimney that serves one appliance."},
    {MATTER_INSERT_FLUE_AREA_MOST, "801.7", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_COLLAR_AREA}, .numbers = {RATIO(3, 1)},
     .when = {INSERT, NO_GAS_INSERT, ALONE}, .reading = EVERY_FLUE},
    {MATTER_INSERT_FLUE_AREA, "801.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_COLLAR_AREA}, .numbers = {RATIO(1, 1)}, .when = {STOVE, ALONE},
     .reading = "A chimney that serves one appliance."},
    {MATTER_INSERT_FLUE_AREA_MOST, "801.7", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_COLLAR_AREA}, .numbers = {RATIO(3, 1)}, .when = {STOVE, ALONE},
     .reading = EVERY_FLUE},
    {MATTER_INSERT_SEAL, "801.10.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {INSERT}},
    {MATTER_INSERT_ACCESS, "801.10.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {INSERT}},
    {MATTER_DETECTOR_WITH_FAN, "804.3.8", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {FAN_DRAWN}, .reading = FED_BY_HAND},
    {MATTER_DETECTOR_BATTERY, "804.3.8", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {FAN_DRAWN}, .reading = FED_BY_HAND},
    {MATTER_DETECTOR_FAILURE, "804.3.8", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {FAN_DRAWN}, .reading = FED_BY_HAND},
    {MATTER_INSERT_SEAL, "801.10.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {STOVE, ON_FIREPLACE}},
    {MATTER_INSERT_ACCESS, "801.10.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {STOVE, ON_FIREPLACE}},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.9(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 22, 1000)}, .when = {STOVE, NOT_VENT, ACROSS(AT_MOST, 5)}},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.9(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 28, 1000)},
     .when = {STOVE, NOT_VENT, ACROSS(MORE_THAN, 5), ACROSS(AT_MOST, 10)}},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.9(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 34, 1000)},
     .when = {STOVE, NOT_VENT, ACROSS(MORE_THAN, 10), ACROSS(AT_MOST, 16)}},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.9(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 64, 1000)}, .when = {STOVE, NOT_VENT, ACROSS(MORE_THAN, 16)}},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 19, 1000)}, .when = {PIPE(VENT), ACROSS(LESS_THAN, 6)}},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 23, 1000)},
     .when = {PIPE(VENT), ACROSS(AT_LEAST, 6), ACROSS(LESS_THAN, 10)}},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 29, 1000)},
     .when = {PIPE(VENT), ACROSS(AT_LEAST, 10), ACROSS(AT_MOST, 12)}},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.8", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_not_printed, .when = {PIPE(VENT), ACROSS(MORE_THAN, 12), ACROSS(LESS_THAN, 14)},
     .reading = "The table goes on at 14 in after 12 in."},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 34, 1000)},
     .when = {PIPE(VENT), ACROSS(AT_LEAST, 14), ACROSS(AT_MOST, 16)}},
    {MATTER_CONNECTOR_THICKNESS, "Table 803.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 56, 1000)}, .when = {PIPE(VENT), ACROSS(MORE_THAN, 16)}},
};

static const struct ingle_standard editions[] = {
    {.id = "nyc-mechanical", .title = "New York City Mechanical Code", .place = "New York City",
     .note = "New York City Mechanical Code, without stated edition: flues and connectors, in "
             "inches. Table 803.8 is for vent connectors of buildings that are no dwellings.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nyc_mechanical = {editions, COUNT_OF(editions)};
