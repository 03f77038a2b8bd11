/* SPDX-License-Identifier: MIT */
/*
 * 24 CFR 3280.709(g): fireplaces and fireplace stoves in manufactured homes. From memory.
 */
#include "measure/amounts.h"
#include "standards/publications.h"


static const struct ingle_rule rules[] = {
    {MATTER_CHIMNEY_HEIGHT, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {FEET(3)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE}},
     .reading = "Above the part of the roof that the chimney passes through."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_within, .inputs = {QUANTITY_NEARBY_DISTANCE}, .numbers = {FEET(2), FEET(10)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE}},
     .reading = "Above the highest part of the home within 10 ft."},
    {MATTER_EXTERIOR_AIR, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_AIR_DUCT_STATE_CONNECTED},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE}}},
    {MATTER_HEARTH_FRONT, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(16)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE}},
     .reading = "At every size of the opening."},
    {MATTER_HEARTH_SIDE, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE}},
     .reading = "At every size of the opening."},
    {MATTER_HEARTH_EXTENSION_THICKNESS, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES_AND(0, 3, 8)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE}}},
    {MATTER_CHIMNEY_HEIGHT, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {FEET(3)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}},
     .reading = "Above the part of the roof that the chimney passes through."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_within, .inputs = {QUANTITY_NEARBY_DISTANCE}, .numbers = {FEET(2), FEET(10)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}},
     .reading = "Above the highest part of the home within 10 ft."},
    {MATTER_EXTERIOR_AIR, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_AIR_DUCT_STATE_CONNECTED},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}}},
    {MATTER_HEARTH_FRONT, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(16)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}},
     .reading = "At every size of the opening."},
    {MATTER_HEARTH_SIDE, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}},
     .reading = "At every size of the opening."},
    {MATTER_HEARTH_EXTENSION_THICKNESS, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES_AND(0, 3, 8)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}}},
    {MATTER_CHIMNEY_HEIGHT, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {FEET(3)}, .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}},
     .reading = "Above the part of the roof that the chimney passes through."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_within, .inputs = {QUANTITY_NEARBY_DISTANCE}, .numbers = {FEET(2), FEET(10)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}},
     .reading = "Above the highest part of the home within 10 ft."},
    {MATTER_EXTERIOR_AIR, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_AIR_DUCT_STATE_CONNECTED},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}}},
    {MATTER_FLOOR_FRONT, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(16)}, .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}},
     .reading = "From the opening of a fireplace stove."},
    {MATTER_FLOOR_SIDE, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}},
     .reading = "From the opening of a fireplace stove."},
    {MATTER_FLOOR_THICKNESS, "3280.709(g)", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 3, 8)},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}}},
};

static const struct ingle_standard editions[] = {
    {.id = "hud-manufactured-home", .title = "24 CFR 3280", .place = "United States",
     .note = "24 CFR 3280.709(g), fireplaces and fireplace stoves in manufactured homes: from "
             "memory. Confirm every number in the regulation.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_hud_manufactured_home = {editions, COUNT_OF(editions)};
