/* SPDX-License-Identifier: MIT */
/*
 * NFPA 211: the levels of inspection and what calls for each. Its text was not read: the rules are
 * known from others that cite it.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define SECTION "inspection chapter, edition not seen"
#define LEVEL(matter, number) \
    matter, SECTION, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed, .numbers = {number}

static const struct ingle_rule rules[] = {
    {MATTER_INSPECTION_IN_YEAR, "edition and section not seen", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true},
     .reading = "Chimneys, fireplaces and vents: at least once a year."},
    {LEVEL(MATTER_INSPECTION_YEARLY, 1),
     .reading = "At least once a year, when nothing has changed, and when an appliance is replaced "
                "by one like it."},
    {LEVEL(MATTER_INSPECTION_FOR_SALE, 2), .when = {{QUANTITY_OCCASION_SALE, IS, true}}},
    {LEVEL(MATTER_INSPECTION_FOR_FUEL, 2), .when = {{QUANTITY_OCCASION_FUEL_CHANGE, IS, true}}},
    {LEVEL(MATTER_INSPECTION_FOR_APPLIANCE, 2),
     .when = {{QUANTITY_OCCASION_APPLIANCE_CHANGE, IS, CHOICE_APPLIANCE_CHANGE_OTHER}}},
    {LEVEL(MATTER_INSPECTION_FOR_RELINING, 2), .when = {{QUANTITY_OCCASION_RELINING, IS, true}}},
    {LEVEL(MATTER_INSPECTION_AFTER_EVENT, 2), .when = {{QUANTITY_OCCASION_EVENT, IS, true}}},
    {LEVEL(MATTER_INSPECTION_AFTER_FIRE, 2), .when = {{QUANTITY_SIGNS_CHIMNEY_FIRE, IS, true}}},
    {LEVEL(MATTER_INSPECTION_OPENED_UP, 3),
     .when = {{QUANTITY_OCCASION_HIDDEN_DAMAGE, IS, true}}},
};

static const struct ingle_standard editions[] = {
    {.id = "nfpa-211-inspections", .title = "NFPA 211, levels of inspection",
     .place = "United States",
     .note = "NFPA 211, levels of inspection: edition not stated; known from others that cite it.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nfpa_211_inspection = {editions, COUNT_OF(editions)};
