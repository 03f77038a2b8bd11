/* SPDX-License-Identifier: MIT */
/*
 * Ireland: the one number of Technical Guidance Document J (2014) that was read, and figures that
 * are taught. What the document asks of open fires is not confirmed: none of it is here.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define OPEN_FIRE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}
#define GAS_FIRE(kind) {QUANTITY_GAS_APPLIANCE, IS, CHOICE_GAS_APPLIANCE_##kind}

static const struct ingle_rule document_j[] = {
    {MATTER_GAS_FIRE_INPUT, "section 3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {KILOWATTS(15)}, .when = {GAS_FIRE(LOG_SET)},
     .reading = "A decorative fire of more than 15 kW is not installed in a dwelling; gas logs are "
                "read as one."},
    {MATTER_GAS_FIRE_INPUT, "section 3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {KILOWATTS(15)}, .when = {GAS_FIRE(INSERT)},
     .reading = "An inset live-effect fire of more than 15 kW is not installed in a dwelling; a "
                "gas insert is read as one."},
};

#define PRACTICE "no publication", INGLE_BASIS_COMMON_PRACTICE

static const struct ingle_rule taught[] = {
    {MATTER_HEARTH_FRONT, PRACTICE, INGLE_AT_LEAST, &formula_fixed, .numbers = {MILLIMETRES(500)},
     .when = {OPEN_FIRE}},
    {MATTER_OPENING_HEIGHT_MOST, PRACTICE, INGLE_AT_MOST, &formula_fixed,
     .numbers = {MILLIMETRES(550)}, .when = {OPEN_FIRE}},
};

static const struct ingle_standard editions[] = {
    {.id = "tgd-j-2014", .title = "Technical Guidance Document J", .place = "Ireland",
     .note = "Technical Guidance Document J, 2014 edition, section 3. What section 2 asks of open "
             "fires is not confirmed and is not judged.",
     .unit = UNIT_MILLIMETRE, .edition = 2014, .rules = document_j,
     .rule_count = COUNT_OF(document_j)},
    {.id = "common-practice-ireland", .title = "Common practice", .place = "Ireland",
     .note = "Figures that are taught in Ireland, with no publication confirmed behind them: "
             "advice, not code.",
     .unit = UNIT_MILLIMETRE, .rules = taught, .rule_count = COUNT_OF(taught)},
};

const struct publication publication_ireland = {editions, COUNT_OF(editions)};
