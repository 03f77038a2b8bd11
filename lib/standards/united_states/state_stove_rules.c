/* SPDX-License-Identifier: MIT */
/*
 * What states ask of the listing of stoves and inserts.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
/* For solid fuel. */
#define INSERT                                                      \
    {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}, \
        {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_INSERT}
#define IS_LISTED(its_section, ...)                                                        \
    {                                                                                      \
        MATTER_LISTING_PLATE, its_section, INGLE_BASIS_READ, INGLE_IS, &formula_observed,  \
            .numbers = {CHOICE_LISTING_LABEL_LISTED}, .when = {__VA_ARGS__}                \
    }
#define STATES_CLEARANCES(its_section, ...)                                                \
    {                                                                                      \
        MATTER_LABEL_CLEARANCES, its_section, INGLE_BASIS_READ, INGLE_IS,                  \
            &formula_observed, .numbers = {true}, .when = {__VA_ARGS__},                   \
            .reading = "None is permitted without tested clearances and a stated floor "   \
                       "protection; NFPA 211 fills gaps."                                  \
    }

#define GUIDANCE "permit guidance for solid-fuel appliances"

static const struct ingle_rule massachusetts[] = {
    IS_LISTED(GUIDANCE, STOVE),
    IS_LISTED(GUIDANCE, INSERT),
    STATES_CLEARANCES(GUIDANCE, STOVE),
    STATES_CLEARANCES(GUIDANCE, INSERT),
};

static const struct ingle_rule massachusetts_alarms[] = {
    {MATTER_CO_ALARM_IN_HOME, "notice on wood stoves", INGLE_BASIS_READ, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {STOVE},
     .reading = "In most homes by 31 March 2006."},
    {MATTER_SMOKE_ALARM_IN_HOME, "notice on wood stoves", INGLE_BASIS_READ, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {STOVE},
     .reading = "Before the stove is used."},
};

static const struct ingle_rule maine[] = {
    IS_LISTED("section 8", STOVE),
    IS_LISTED("section 8", INSERT),
};

static const struct ingle_standard editions[] = {
    {.id = "massachusetts-stoves", .title = "Massachusetts permit guidance for stoves",
     .place = "Massachusetts",
     .note = "Massachusetts permit guidance for solid-fuel appliances, without stated edition: "
             "stoves and inserts listed to UL 1482 or UL 737.",
     .unit = UNIT_INCH, .rules = massachusetts, .rule_count = COUNT_OF(massachusetts)},
    {.id = "massachusetts-alarms-2006", .title = "Massachusetts notice on wood stoves",
     .place = "Massachusetts",
     .note = "Massachusetts state notice on wood stoves, 2006: alarms.", .unit = UNIT_INCH,
     .edition = 2006, .rules = massachusetts_alarms,
     .rule_count = COUNT_OF(massachusetts_alarms)},
    {.id = "maine-02-658-110", .title = "Maine rule 02-658 chapter 110", .place = "Maine",
     .note = "Maine rule 02-658, chapter 110, without stated edition: solid-fuel appliances listed "
             "and labelled.",
     .unit = UNIT_INCH, .rules = maine, .rule_count = COUNT_OF(maine)},
};

const struct publication publication_state_stove_rules = {editions, COUNT_OF(editions)};
