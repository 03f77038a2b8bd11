/* SPDX-License-Identifier: MIT */
/*
 * New York City Administrative Code: solid-fuel stoves (27-848) and their connectors (27-870, the
 * code of 1968).
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}

#define CONNECTOR_AREA(test, inches) {QUANTITY_CONNECTOR_AREA, test, SQUARE_INCHES(inches)}

/* By the connector's area. The table ends at 79 before it goes on at 80, and at 154 before 155. */
#define GAUGE(number, ...)                                                                    \
    {                                                                                         \
        MATTER_CONNECTOR_GAUGE, "27-870", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,    \
            .numbers = {number}, .when = {STOVE, __VA_ARGS__},                                \
            .reading = "By the connector's inside area: of one of 79 in², and of those up to " \
                       "80 in², nothing is printed."                                          \
    }

static const struct ingle_rule rules[] = {
    {MATTER_ROOM_VOLUME, "27-848.08", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CUBIC_FEET(300)}, .when = {STOVE}},
    {MATTER_ROOM_WINDOW, "27-848.08", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {STOVE}},
    {MATTER_ROOM_CONFINED, "27-848.08", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {STOVE}},
    {MATTER_LISTING_PLATE, "27-848.08(b)", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_LISTING_LABEL_LISTED}, .when = {STOVE}},
    GAUGE(24, CONNECTOR_AREA(LESS_THAN, 79)),
    GAUGE(22, CONNECTOR_AREA(AT_LEAST, 80), CONNECTOR_AREA(AT_MOST, 154)),
    GAUGE(20, CONNECTOR_AREA(AT_LEAST, 155), CONNECTOR_AREA(AT_MOST, 200)),
    GAUGE(16, CONNECTOR_AREA(MORE_THAN, 200)),
};

static const struct ingle_standard editions[] = {
    {.id = "nyc-administrative", .title = "New York City Administrative Code",
     .place = "New York City",
     .note = "New York City Administrative Code, without stated edition: the room of a solid-fuel "
             "stove by 27-848.08, its connector by 27-870 of the code of 1968.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nyc_administrative = {editions, COUNT_OF(editions)};
