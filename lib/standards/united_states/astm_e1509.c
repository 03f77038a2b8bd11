/* SPDX-License-Identifier: MIT */
/*
 * ASTM E1509: pellet stoves. Only its scope was read: what has to be kept clear, and what the floor
 * needs, is on the label.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define BY_LABEL(matter, figure)                                                                 \
    {                                                                                            \
        matter, "scope", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_by_listing,                  \
            .inputs = {figure},                                                                  \
            .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_PELLET_STOVE},          \
                     {QUANTITY_LISTING_LABEL, IS, CHOICE_LISTING_LABEL_LISTED}},                 \
            .reading = "Clearances and floor protection of a pellet stove are those of its label." \
    }

static const struct ingle_rule rules[] = {
    BY_LABEL(MATTER_STOVE_CLEARANCE, QUANTITY_WALL_BY_LISTING),
    BY_LABEL(MATTER_FLOOR_BEFORE_BODY, QUANTITY_LISTING_HEARTH_FRONT),
    BY_LABEL(MATTER_FLOOR_BESIDE_BODY, QUANTITY_LISTING_HEARTH_SIDE),
    BY_LABEL(MATTER_FLOOR_BEHIND_BODY, QUANTITY_LISTING_HEARTH_BACK),
    BY_LABEL(MATTER_FLOOR_R_VALUE, QUANTITY_LISTING_PAD_R),
};

static const struct ingle_standard editions[] = {
    {.id = "astm-e1509", .title = "ASTM E1509", .place = "United States",
     .note = "ASTM E1509, pellet stoves: the scopes of the editions of 2012 (reapproved 2017) and "
             "2022 were read, not the standard itself.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_astm_e1509 = {editions, COUNT_OF(editions)};
