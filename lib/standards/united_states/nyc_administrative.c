/* SPDX-License-Identifier: MIT */
/*
 * New York City Administrative Code 27-848: solid-fuel stoves.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}

static const struct ingle_rule rules[] = {
    {MATTER_ROOM_VOLUME, "27-848.08", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {300}, .when = {STOVE}, .reading = "In cubic feet."},
    {MATTER_ROOM_WINDOW, "27-848.08", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {STOVE}},
    {MATTER_ROOM_CONFINED, "27-848.08", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {STOVE}},
    {MATTER_LISTING_PLATE, "27-848.08(b)", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_LISTING_LABEL_LISTED}, .when = {STOVE}},
};

static const struct ingle_standard editions[] = {
    {.id = "nyc-administrative", .title = "New York City Administrative Code",
     .place = "New York City",
     .note = "New York City Administrative Code 27-848.08, without stated edition: the room of a "
             "solid-fuel stove.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nyc_administrative = {editions, COUNT_OF(editions)};
