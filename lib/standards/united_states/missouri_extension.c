/* SPDX-License-Identifier: MIT */
/*
 * University of Missouri Extension on creosote, as reported by others.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define REPORTED "as reported", INGLE_BASIS_CITED

static const struct ingle_rule rules[] = {
    {MATTER_CREOSOTE_CLEANING, REPORTED, INGLE_LESS_THAN, &formula_fixed,
     .numbers = {INCHES_AND(0, 1, 8)},
     .when = {{QUANTITY_CREOSOTE_KIND, IS_NOT, CHOICE_CREOSOTE_KIND_NONE},
              {QUANTITY_CREOSOTE_KIND, IS_NOT, CHOICE_CREOSOTE_KIND_GLAZED}},
     .reading = "Cleaned from exactly 1/8 in on."},
    {MATTER_CREOSOTE_GLAZE, REPORTED, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_CREOSOTE_KIND_GLAZED}, .reading = "At any thickness."},
};

static const struct ingle_standard editions[] = {
    {.id = "missouri-extension", .title = "University of Missouri Extension, creosote",
     .place = "United States",
     .note = "University of Missouri Extension on creosote: year not stated; known from others "
             "that report it. Advice, no code.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_missouri_extension = {editions, COUNT_OF(editions)};
