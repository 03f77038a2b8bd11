/* SPDX-License-Identifier: MIT */
/*
 * University of Missouri Extension on creosote, as reported by others.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define DEPOSIT_IS(kind) {QUANTITY_CREOSOTE_KIND, IS, CHOICE_CREOSOTE_KIND_##kind}
#define DEPOSIT_IS_NOT(kind) {QUANTITY_CREOSOTE_KIND, IS_NOT, CHOICE_CREOSOTE_KIND_##kind}
#define REPORTED "as reported", INGLE_BASIS_CITED

static const struct ingle_rule rules[] = {
    {MATTER_CREOSOTE_CLEANING, REPORTED, INGLE_LESS_THAN, &formula_fixed,
     .numbers = {INCHES_AND(0, 1, 8)}, .when = {DEPOSIT_IS(SOFT)},
     .follows = FOLLOWS(SHINY_DEPOSIT, FLAKES_TOO), .reading = "Cleaned from exactly 1/8 in on."},
    {MATTER_CREOSOTE_FLAKES, REPORTED, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_CREOSOTE_KIND_FLAKY},
     .follows = FOLLOWS(SHINY_DEPOSIT, FLAKES_TOO),
     .reading = "Any shiny deposit: hard flakes are shiny, too."},
    {MATTER_CREOSOTE_CLEANING, REPORTED, INGLE_LESS_THAN, &formula_fixed,
     .numbers = {INCHES_AND(0, 1, 8)}, .when = {DEPOSIT_IS_NOT(NONE), DEPOSIT_IS_NOT(GLAZED)},
     .follows = FOLLOWS(SHINY_DEPOSIT, GLAZE_ALONE),
     .reading = "Cleaned from exactly 1/8 in on; hard flakes count as loose."},
    {MATTER_CREOSOTE_GLAZE, REPORTED, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_CREOSOTE_KIND_GLAZED}, .reading = "At any thickness."},
    {MATTER_CREOSOTE_LOOKS, REPORTED, INGLE_AT_LEAST, &formula_fixed, .numbers = {2},
     .when = {{QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}},
     .reading = "It is not clear whether it asks for a look or for cleaning: a look is enough "
                "here."},
    {MATTER_CREOSOTE_SEASON, REPORTED, INGLE_IS, &formula_observed, .numbers = {true},
     .when = {{QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}},
     .reading = "It is not clear whether it asks for a look or for cleaning: a look is enough "
                "here."},
};

static const struct ingle_rule g1735[] = {
    {MATTER_CREOSOTE_YEARLY, "cleaning", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {{QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}},
     .reading = "From every couple of weeks to no less than yearly: the longest is asked."},
};

static const struct ingle_standard editions[] = {
    {.id = "missouri-extension", .title = "University of Missouri Extension, creosote",
     .place = "United States",
     .note = "University of Missouri Extension on creosote: year not stated; known from others "
             "that report it. Advice, no code.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
    {.id = "missouri-g1735", .title = "University of Missouri Extension G1735",
     .place = "United States",
     .note = "University of Missouri Extension G1735: year not stated. Advice, no code. What it "
             "says of the temperature in the flue is not held here.",
     .unit = UNIT_INCH, .rules = g1735, .rule_count = COUNT_OF(g1735)},
};

const struct publication publication_missouri_extension = {editions, COUNT_OF(editions)};
