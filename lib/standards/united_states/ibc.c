/* SPDX-License-Identifier: MIT */
/*
 * International Building Code, chapter 21: masonry fireplaces, heaters and chimneys.
 *
 * It differs from the residential code in what a mantel may do beside the opening, in where the
 * throat's height is measured from, in the air intake, and in clearances that the residential code
 * has reduced since. Its own numbers in inches govern, never the rounded metric ones beside them.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

#define DAMPER_READING                                                                       \
    "Asked where no gas logs or gas insert stand in the fireplace: for these a damper that " \
    "is fixed or taken out may be right."
#define NO_GAS_FIRE NO_GAS_LOGS, NO_GAS_INSERT

#define FIRST_SECTION(first, later) first
#define LATER_SECTION(first, later) later

#define BASIS INGLE_BASIS_READ
#define SECTION FIRST_SECTION
static const struct ingle_rule rules_2012[] = {
#include "standards/united_states/ibc.def"
};
#undef SECTION

#define SECTION LATER_SECTION
static const struct ingle_rule rules_later[] = {
#include "standards/united_states/ibc.def"
};
#undef BASIS

#define BASIS INGLE_BASIS_FROM_MEMORY
static const struct ingle_rule rules_2018[] = {
#include "standards/united_states/ibc.def"
};
#undef BASIS
#undef SECTION

#define ROUND_TABLE "Table 2113.16(1)"
#define RECTANGULAR_TABLE "Table 2113.16(2)"

static const struct liner liners[] = {
#include "standards/united_states/liners.def"
};

#define EDITION(year, its_rules, more)                                                             \
    {                                                                                              \
        .id = "ibc-" #year, .title = "International Building Code", .place = "United States",      \
        .note = "International Building Code " #year ", chapter 21, fireplaces and chimneys: "     \
                "numbers as printed in inches." more,                                              \
        .unit = UNIT_INCH, .edition = year, .rules = its_rules, .rule_count = COUNT_OF(its_rules), \
        .liners = liners, .liner_count = COUNT_OF(liners)                                          \
    }

static const struct ingle_standard editions[] = {
    EDITION(2012, rules_2012, " It was read in its California adoption of 2013."),
    EDITION(2015, rules_later, ""),
    EDITION(2018, rules_2018,
            " Its text was not seen: it is taken to be like the editions before and after it."),
    EDITION(2021, rules_later, ""),
    EDITION(2024, rules_later, ""),
};

const struct publication publication_ibc = {editions, COUNT_OF(editions)};
