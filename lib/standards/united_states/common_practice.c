/* SPDX-License-Identifier: MIT */
/*
 * Common practice of the trade in the United States: facts with no publication behind them. They
 * are advice; the appliance's label or manual takes their place wherever it says something.
 */
#include "measure/amounts.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

#define INSERT {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}
#define NO_INSERT {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_INSERT}
#define NO_STOVE {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_STOVE}
#define NO_PELLET_STOVE {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_PELLET_STOVE}
#define NO_STEEL_UNIT {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_STEEL_FIREPLACE_UNIT}
#define BURNS_WOOD {QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}
#define DEPOSIT {QUANTITY_CREOSOTE_KIND, IS_NOT, CHOICE_CREOSOTE_KIND_NONE}
#define NO_GLAZE {QUANTITY_CREOSOTE_KIND, IS_NOT, CHOICE_CREOSOTE_KIND_GLAZED}

static const struct ingle_rule rules[] = {
    {MATTER_INSERT_HEARTH_FRONT, "no publication", INGLE_BASIS_COMMON_PRACTICE,
     INGLE_AT_LEAST, &formula_listing_or_usual, .inputs = {QUANTITY_LISTING_HEARTH_FRONT},
     .numbers = {INCHES(16)}, .when = {INSERT},
     .reading = "Two measuring points are in use, the fuel door and the front of the insert: the "
                "one on the label counts."},
    {MATTER_INSERT_HEARTH_SIDE, "no publication", INGLE_BASIS_COMMON_PRACTICE,
     INGLE_AT_LEAST, &formula_listing_or_usual, .inputs = {QUANTITY_LISTING_HEARTH_SIDE},
     .numbers = {INCHES(8)}, .when = {INSERT},
     .reading = "Measured from each side of the fuel opening."},

    /* What is observed: damper and air. */
    {MATTER_DAMPER_FOR_SOLID_FUEL, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_DAMPER_STATE_REMOVED},
     .when = {BURNS_WOOD, NO_STOVE, NO_PELLET_STOVE, NO_MASONRY_HEATER, NO_INSERT}},
    {MATTER_DAMPER_MOVES, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_DAMPER_STATE_STUCK},
     .when = {NO_STOVE, NO_PELLET_STOVE, NO_MASONRY_HEATER, NO_INSERT}},
    {MATTER_DAMPER_FOR_GAS, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_DAMPER_STATE_WORKING},
     .when = {GAS_LOGS, UP_THE_CHIMNEY},
     .reading = "A damper that is removed, fixed or blocked open cannot be shut by mistake."},
    {MATTER_AIR_DUCT_OPEN, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_AIR_DUCT_STATE_BLOCKED},
     .when = {NO_STOVE, NO_PELLET_STOVE, NO_MASONRY_HEATER, NO_INSERT}},
    {MATTER_AIR_DUCT_CONNECTED, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_AIR_DUCT_STATE_MISSING},
     .when = {NO_STOVE, NO_PELLET_STOVE, NO_MASONRY_HEATER, NO_INSERT}},

    /* Firebox. */
    {MATTER_PANEL_CRACK, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_LESS_THAN,
     &formula_fixed, .numbers = {INCHES_AND(0, 1, 16)}, .when = {FACTORY_BUILT},
     .reading = "A crack of exactly 1/16 in is too wide; one text has only wider ones replaced. "
                "Hairline cracks serve on. The maker's figure comes first."},
    {MATTER_PANEL_WEAR, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_LESS_THAN,
     &formula_fixed, .numbers = {INCHES_AND(0, 1, 4)}, .when = {FACTORY_BUILT},
     .reading = "Replaced where worn away by exactly 1/4 in. The maker's figure comes first."},
    {MATTER_PANEL_BROKEN, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {false}, .when = {FACTORY_BUILT}},
    {MATTER_FIREBOX_GAPS, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {false}, .when = {FACTORY_BUILT}},
    {MATTER_GAS_PIPE_ENTRY, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_GAS_PIPE_ENTRY_SEALED},
     .when = {ANY_GAS, NO_GAS_HEATER}},
    {MATTER_TRIM_SCORCHED, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {false}, .when = {COMBUSTIBLE, NO_STOVE, NO_PELLET_STOVE}},
    {MATTER_SOOT_OUTSIDE, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {false}},

    /* Smoke chamber and flue. */
    {MATTER_SMOKE_CHAMBER_EDGES, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {false}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FLUE_EDGES, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {false}, .when = {FACTORY_BUILT}},
    {MATTER_FLUE_LINING, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_FLUE_LINING_SOUND}},
    {MATTER_CREOSOTE_GLAZE, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_CREOSOTE_KIND_GLAZED}},
    {MATTER_CREOSOTE_CLEANING, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_LESS_THAN,
     &formula_fixed, .numbers = {INCHES_AND(0, 1, 8)}, .when = {DEPOSIT, NO_GLAZE},
     .reading = "Cleaned from exactly 1/8 in on; below that it is watched."},
    {MATTER_CREOSOTE_BURNING, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_LESS_THAN,
     &formula_fixed, .numbers = {INCHES_AND(0, 1, 4)}, .when = {DEPOSIT, NO_GLAZE},
     .reading = "The older figure for cleaning, 1/4 in, is read as that from which nothing is "
                "burned before the flue has been cleaned."},
    {MATTER_CHIMNEY_FIRE, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {false}},

    /* The appliance's plate. */
    {MATTER_LISTING_PLATE, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_LISTING_LABEL_LISTED},
     .when = {NO_MASONRY_FIREPLACE, NO_MASONRY_HEATER, NO_STEEL_UNIT}},

    /* Gas. */
    {MATTER_GAS_VALVE_DISTANCE, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_AT_MOST,
     &formula_fixed, .numbers = {FEET(4)}, .when = {ANY_GAS, VALVE_IN_ROOM}},
    {MATTER_GAS_VALVE_ACCESS, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_GAS_VALVE_ACCESS_NONE},
     .when = {ANY_GAS, VALVE_THERE,
              {QUANTITY_GAS_VALVE_ACCESS, IS_NOT, CHOICE_GAS_VALVE_ACCESS_CABINET}}},
    {MATTER_GAS_VALVE_CABINET, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_GAS_VALVE_ACCESS_CABINET},
     .when = {ANY_GAS, VALVE_THERE}},

#include "standards/united_states/common_practice_gas.def"

    /* Stoves and inserts. */
#include "standards/united_states/common_practice_stoves.def"
};

#define USUAL_VALUE \
    "A usual value with no publication behind it: the product's own data come first."

/* Only materials on which what is said does not conflict. */
static const struct material materials[] = {
    {CHOICE_LAYER_MATERIAL_COMMON_BRICK, RATIO(20, 100), USUAL_VALUE},
    {CHOICE_LAYER_MATERIAL_FACE_BRICK, RATIO(111, 1000), USUAL_VALUE},
    {CHOICE_LAYER_MATERIAL_CEMENT_MORTAR, RATIO(20, 100), USUAL_VALUE},
    {CHOICE_LAYER_MATERIAL_CERAMIC_TILE, RATIO(8, 100), USUAL_VALUE},
    {CHOICE_LAYER_MATERIAL_SLATE, RATIO(100, 1000), USUAL_VALUE},
    {CHOICE_LAYER_MATERIAL_GRANITE, RATIO(83, 1000), USUAL_VALUE},
};

static const struct ingle_standard editions[] = {
    {.id = "common-practice-us", .title = "Common practice", .place = "United States",
     .note = "Practice of the trade with no publication behind it: advice, not code. The "
             "appliance's label or manual decides.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules),
     .materials = materials, .material_count = COUNT_OF(materials)},
};

const struct publication publication_common_practice = {editions, COUNT_OF(editions)};
