/* SPDX-License-Identifier: MIT */
/*
 * Newburgh Heights, Ohio, codified ordinances 1343.09: chimney connectors. It credits NFPA 119B of
 * 1974.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define INTO_OPEN_FIREPLACE CHOICE_CONNECTOR_INTO_OPEN_FIREPLACE_FLUE
#define PIPE(kind) {QUANTITY_CONNECTOR_KIND, IS, CHOICE_CONNECTOR_KIND_##kind}
#define ACROSS(test, inches) {QUANTITY_CONNECTOR_DIAMETER, test, INCHES(inches)}

static const struct ingle_rule rules[] = {
    {MATTER_CONNECTOR_OPEN_FIREPLACE, "1343.09(a)", INGLE_BASIS_READ, INGLE_IS_NOT,
     &formula_observed, .numbers = {INTO_OPEN_FIREPLACE}, .when = {STOVE}},
    {MATTER_CONNECTOR_CLEARANCE, "1343.09(b)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(18)}, .when = {STOVE, PIPE(SINGLE_WALL)}},
    {MATTER_PASS_CLEARANCE, "1343.09(c)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_CONNECTOR_DIAMETER}, .numbers = {RATIO(3, 1)},
     .when = {STOVE, {QUANTITY_CONNECTOR_PASSES, IS, CHOICE_CONNECTOR_PASSES_WALL}},
     .reading = "An older rule: three times the diameter of the pipe."},
    {MATTER_CONNECTOR_RUN, "1343.09(d)(1)", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_CONNECTOR_CHIMNEY_HEIGHT}, .numbers = {PERCENT(75)}, .when = {STOVE},
     .reading = "The height is that of the vertical chimney above the inlet."},
    {MATTER_CONNECTOR_ELBOWS, "1343.09(d)(2)", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {2}, .when = {STOVE}},
    {MATTER_CONNECTOR_DIAMETER, "1343.09(d)(3)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_COLLAR_DIAMETER}, .numbers = {RATIO(1, 1)}, .when = {STOVE}},
    {MATTER_CONNECTOR_RISE, "1343.09(d)(4)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_CONNECTOR_RUN}, .numbers = {RATIO(1, 48)}, .when = {STOVE},
     .reading = "A quarter of an inch for each foot of the run."},
    {MATTER_CONNECTOR_OVERLAP, "1343.09(d)(5)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(2)}, .when = {STOVE}},
    {MATTER_CONNECTOR_GAUGE, "Table 3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {26}, .when = {STOVE, ACROSS(LESS_THAN, 6)}},
    {MATTER_CONNECTOR_GAUGE, "Table 3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {24}, .when = {STOVE, ACROSS(AT_LEAST, 6), ACROSS(LESS_THAN, 10)}},
    {MATTER_CONNECTOR_GAUGE, "Table 3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {22}, .when = {STOVE, ACROSS(AT_LEAST, 10), ACROSS(AT_MOST, 12)},
     .reading = "The table skips 13 in."},
    {MATTER_CONNECTOR_GAUGE, "Table 3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_not_printed,
     .when = {STOVE, ACROSS(MORE_THAN, 12), ACROSS(LESS_THAN, 14)},
     .reading = "The table skips 13 in."},
    {MATTER_CONNECTOR_GAUGE, "Table 3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {20}, .when = {STOVE, ACROSS(AT_LEAST, 14), ACROSS(LESS_THAN, 16)}},
    {MATTER_CONNECTOR_GAUGE, "Table 3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {16}, .when = {STOVE, ACROSS(AT_LEAST, 16), ACROSS(AT_MOST, 16)}},
    {MATTER_CONNECTOR_GAUGE, "Table 3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_not_printed,
     .when = {STOVE, ACROSS(MORE_THAN, 16)}, .reading = "The table ends at 16 in."},
};

static const struct ingle_standard editions[] = {
    {.id = "newburgh-heights-1343-09", .title = "Codified ordinances of Newburgh Heights",
     .place = "Newburgh Heights, Ohio",
     .note = "Newburgh Heights, Ohio, codified ordinances 1343.09: local, and from the 1970s; it "
             "credits NFPA 119B of 1974.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_newburgh_heights = {editions, COUNT_OF(editions)};
