/* SPDX-License-Identifier: MIT */
/*
 * International Mechanical Code, chapter 8: chimneys. The edition of 2018 was read as New Jersey
 * adopted it; of that of 2006 other documents report section 805.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/publications.h"

#define NOT_A_FIREPLACE NO_FIREPLACE, BUILT_OF_MASONRY

static const struct ingle_rule chapter_8[] = {
    {MATTER_CLEANOUT_INLET, "chapter 8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = {NOT_A_FIREPLACE},
     .reading = "A fireplace is cleaned through itself."},
    {MATTER_CLEANOUT_HEIGHT, "chapter 8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = {NOT_A_FIREPLACE},
     .reading = "A fireplace is cleaned through itself."},
    {MATTER_LINER_SPEC, "chapter 8", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_CHIMNEY_LINER_SPEC_NONE}, .when = {MASONRY_CHIMNEY}},
};

static const struct ingle_rule section_805[] = {
    {MATTER_FACTORY_CHIMNEY_HT, "805", INGLE_BASIS_CITED, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {STOVE,
              {QUANTITY_CONNECTOR_INTO, IS, CHOICE_CONNECTOR_INTO_FACTORY_BUILT_CHIMNEY}},
     .reading = "Type HT of UL 103 is for closed appliances of solid fuel; an open fireplace may "
                "have a chimney to UL 103 without it."},
};

static const struct ingle_standard editions[] = {
    {.id = "imc-2006", .title = "International Mechanical Code", .place = "United States",
     .note = "International Mechanical Code 2006, section 805, as other documents report it: the "
             "type of factory-built chimneys.",
     .unit = UNIT_INCH, .edition = 2006, .rules = section_805,
     .rule_count = COUNT_OF(section_805)},
    {.id = "imc-2018", .title = "International Mechanical Code", .place = "United States",
     .note = "International Mechanical Code 2018, chapter 8, in inches: cleanouts and linings of "
             "chimneys. It was read as New Jersey adopted it, without the numbers of its sections.",
     .unit = UNIT_INCH, .edition = 2018, .rules = chapter_8, .rule_count = COUNT_OF(chapter_8)},
};

const struct publication publication_imc_chimneys = {editions, COUNT_OF(editions)};
