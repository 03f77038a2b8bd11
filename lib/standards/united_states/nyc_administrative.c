/* SPDX-License-Identifier: MIT */
/*
 * New York City Administrative Code: solid-fuel stoves (27-848) and their connectors (27-870, the
 * code of 1968).
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}

#define CONNECTOR_AREA(test, inches) {QUANTITY_CONNECTOR_AREA, test, SQUARE_INCHES(inches)}

#define BY_AREA                                                                               \
    "By the connector's inside area. Nothing is printed for one from 79 in² up to 80 in², nor " \
    "for one of more than 154 in² and less than 155 in²."
#define GAUGE(formula, number, ...)                                                      \
    {                                                                                    \
        MATTER_CONNECTOR_GAUGE, "27-870", INGLE_BASIS_READ, INGLE_AT_MOST, formula,      \
            .numbers = {number}, .when = {STOVE, __VA_ARGS__}, .reading = BY_AREA        \
    }
#define PRINTED(number, ...) GAUGE(&formula_fixed, number, __VA_ARGS__)
#define NOT_PRINTED(...) GAUGE(&formula_not_printed, 0, __VA_ARGS__)

static const struct ingle_rule rules[] = {
    {MATTER_ROOM_VOLUME, "27-848.08", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CUBIC_FEET(300)}, .when = {STOVE}},
    {MATTER_ROOM_WINDOW, "27-848.08", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {STOVE}},
    {MATTER_ROOM_CONFINED, "27-848.08", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {STOVE}},
    {MATTER_LISTING_PLATE, "27-848.08(b)", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_LISTING_LABEL_LISTED}, .when = {STOVE}},
    PRINTED(24, CONNECTOR_AREA(LESS_THAN, 79)),
    NOT_PRINTED(CONNECTOR_AREA(AT_LEAST, 79), CONNECTOR_AREA(LESS_THAN, 80)),
    PRINTED(22, CONNECTOR_AREA(AT_LEAST, 80), CONNECTOR_AREA(AT_MOST, 154)),
    NOT_PRINTED(CONNECTOR_AREA(MORE_THAN, 154), CONNECTOR_AREA(LESS_THAN, 155)),
    PRINTED(20, CONNECTOR_AREA(AT_LEAST, 155), CONNECTOR_AREA(AT_MOST, 200)),
    PRINTED(16, CONNECTOR_AREA(MORE_THAN, 200)),
};

static const struct ingle_standard editions[] = {
    {.id = "nyc-administrative", .title = "New York City Administrative Code",
     .place = "New York City",
     .note = "New York City Administrative Code, without stated edition: the room of a solid-fuel "
             "stove by 27-848.08, its connector by 27-870 of the code of 1968.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nyc_administrative = {editions, COUNT_OF(editions)};
