/* SPDX-License-Identifier: MIT */
/*
 * Australia and New Zealand: ABCB Housing Provisions 2022, part 12.4, and AS/NZS 2918:2001; and the
 * chimney walls of the Philippines.
 *
 * The Housing Provisions have no ratio of flue to opening: none is judged.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define OPEN_FIRE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}
#define INSERT {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}
#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define WALL {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_WALL}
#define NO_GAS {QUANTITY_APPLIANCE_FUEL, IS_NOT, CHOICE_APPLIANCE_FUEL_GAS, OR_UNKNOWN}
#define KIND_BIT(kind) CHOICE_BIT(CHOICE_APPLIANCE_KIND_##kind)
#define ANY_FIRE                                                                              \
    {QUANTITY_APPLIANCE_KIND, ONE_OF,                                                         \
     KIND_BIT(MASONRY_FIREPLACE) | KIND_BIT(INSERT) | KIND_BIT(STOVE) | KIND_BIT(PELLET_STOVE)}, \
        {QUANTITY_GAS_VENT, ONE_OF, CHOICE_BIT(CHOICE_GAS_VENT_CHIMNEY), OR_UNKNOWN}
#define ON_MASONRY_CHIMNEY                                                            \
    {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE}, \
        {QUANTITY_CHIMNEY_CONSTRUCTION, IS, CHOICE_CHIMNEY_CONSTRUCTION_MASONRY}
#define ONE_LAYER {QUANTITY_WALL_SHIELD_LAYERS, IS, CHOICE_WALL_SHIELD_LAYERS_ONE}
#define TWO_LAYERS {QUANTITY_WALL_SHIELD_LAYERS, IS, CHOICE_WALL_SHIELD_LAYERS_TWO}
#define SHIELDED {QUANTITY_WALL_SHIELD_LAYERS, IS_NOT, CHOICE_WALL_SHIELD_LAYERS_NONE}
#define NO_LAYERS {QUANTITY_WALL_SHIELD_LAYERS, IS, CHOICE_WALL_SHIELD_LAYERS_NONE}
#define NEAR_RIDGE {QUANTITY_OUTLET_TO_RIDGE, AT_MOST, METRES(3)}
#define AWAY_FROM_RIDGE {QUANTITY_OUTLET_TO_RIDGE, MORE_THAN, METRES(3)}
#define STABLE_SITE {QUANTITY_FOOTING_STABLE_SITE, IS, true}
#define STOREYS(number) {QUANTITY_HOUSE_STOREYS, IS, CHOICE_HOUSE_STOREYS_##number}
#define WALL_UP_TO(height) {QUANTITY_FOOTING_WALL_HEIGHT, AT_MOST, height}

/* ---- ABCB Housing Provisions 2022 ----------------------------------------------------------- */

#define HEAT_SHIELD                                                                          \
    "12.4.5, Figures 12.4.5a, 12.4.5b", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed

static const struct ingle_rule housing_provisions[] = {
    {MATTER_HEARTH_FRONT, "12.4.2(b)(i)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {OPEN_FIRE}},
    {MATTER_HEARTH_SIDE, "12.4.2(b)(i)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {OPEN_FIRE}},
    {MATTER_HEARTH_FRONT, "12.4.4, 12.4.2(b)(i)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {INSERT},
     .reading = "An insert takes the hearth of an open fireplace."},
    {MATTER_HEARTH_SIDE, "12.4.4, 12.4.2(b)(i)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {INSERT},
     .reading = "An insert takes the hearth of an open fireplace."},
    {MATTER_HEARTH_SLOPES_AWAY, "12.4.2(b)(ii)", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {OPEN_FIRE}},
    {MATTER_HEARTH_SLOPES_AWAY, "12.4.4, 12.4.2(b)(ii)", INGLE_BASIS_READ, INGLE_IS,
     &formula_observed, .numbers = {false}, .when = {INSERT},
     .reading = "An insert takes the hearth of an open fireplace."},
    {MATTER_HEARTH_TIMBER_BELOW, "12.4.2(b)(iii), Figure 12.4.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(150)}, .when = {OPEN_FIRE},
     .reading = "From memory: earlier editions had 155 mm."},
    {MATTER_HEARTH_TIMBER_BELOW, "12.4.4, 12.4.2(b)(iii)", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(150)}, .when = {INSERT},
     .reading = "An insert takes the hearth of an open fireplace."},
    {MATTER_INSERT_TESTED, "12.4.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {INSERT}},
    {MATTER_INSERT_FLUE_SKINS, "12.4.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {INSERT}},
    {MATTER_INSERT_FLUE_CLEARANCE, "12.4.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {INSERT},
     .reading = "From the outer flue to adjacent materials."},
    {MATTER_FIREBOX_LEAVES_THICKNESS, "12.4.2(c)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(180)}, .when = {OPEN_FIRE},
     .reading = "Sides and back, two leaves of solid masonry together without the cavity, up to "
                "300 mm above the underside of the arch or lintel."},
    {MATTER_FIREBOX_LEAVES, "12.4.2(c)", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {OPEN_FIRE}},
    {MATTER_FIREBOX_BLOCK_LEAF, "12.4.2(c)", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {true}, .when = {OPEN_FIRE}},
    {MATTER_FIREBOX_UNIT_VOLUME, "12.4.2(c)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {PERCENT(75)}, .when = {OPEN_FIRE},
     .reading = "The net volume of a unit against its gross volume."},
    {MATTER_FIREBOX_UNIT_THICKNESS, "12.4.2(c)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {OPEN_FIRE},
     .reading = "The actual thickness."},
    {MATTER_CHIMNEY_PARGING, "12.4.3(a), (b)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(10)}, .when = {OPEN_FIRE},
     .reading = "Above that level; of mortar with 1 part of cement, 1 of lime and 5 of sand."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "12.4.3(c)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_within,
     .inputs = {QUANTITY_NEARBY_DISTANCE}, .numbers = {MILLIMETRES(300), MILLIMETRES(3600)},
     .when = {ANY_FIRE},
     .reading = "Of chimney or flue, above the highest part of the building within 3.6 m, measured "
                "horizontally."},
    {MATTER_FOOTING_FREE_PROJECTION, "4.2.18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {OPEN_FIRE, STABLE_SITE}},
    {MATTER_FOOTING_THICKNESS, "4.2.18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)},
     .when = {OPEN_FIRE, STABLE_SITE, STOREYS(ONE), WALL_UP_TO(MILLIMETRES(4200))},
     .reading = "A pad footing in a house of one storey, under a wall of up to 4.2 m."},
    {MATTER_FOOTING_THICKNESS, "4.2.18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)},
     .when = {OPEN_FIRE, STABLE_SITE, STOREYS(TWO), WALL_UP_TO(METRES(8))},
     .reading = "A pad footing in a house of two storeys, under a wall of up to 8 m."},
    {MATTER_FOOTING_MESH, "4.2.18", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {OPEN_FIRE, STABLE_SITE}},
    {MATTER_FOOTING_IN_SLAB, "4.2.18", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {OPEN_FIRE, STABLE_SITE},
     .reading = "That footing and slab are one is read as asked for."},
    {MATTER_STOVE_CLEARANCE, "12.4.5", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(1200)}, .when = {STOVE, NO_LAYERS, WALL},
     .reading = "To walls that are not of masonry, without tested clearances or a heat shield."},
    {MATTER_SHIELD_AIR_SPACE, HEAT_SHIELD, .numbers = {MILLIMETRES(25)},
     .when = {STOVE, SHIELDED, WALL}},
    {MATTER_SHIELD_FROM_APPLIANCE, HEAT_SHIELD, .numbers = {MILLIMETRES(50)},
     .when = {STOVE, SHIELDED, WALL}},
    {MATTER_SHIELD_ABOVE_APPLIANCE, HEAT_SHIELD, .numbers = {MILLIMETRES(600)},
     .when = {STOVE, SHIELDED, WALL}},
    {MATTER_SHIELD_THICKNESS, HEAT_SHIELD, .numbers = {MILLIMETRES(90)},
     .when = {STOVE, SHIELDED, WALL, {QUANTITY_WALL_SHIELD_FIRE_RATED, IS, false}},
     .reading = "Of masonry; not for a shield with a fire-resistance level of 60/60/60 or more."},
    {MATTER_FLOOR_BEFORE_BODY, "12.4.5", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(400)}, .when = {STOVE}},
    {MATTER_FLOOR_BESIDE_BODY, "12.4.5", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(400)}, .when = {STOVE}},
    {MATTER_DAMPER_CLOSES, "13.4.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_DAMPER_STATE_WORKING}, .when = {OPEN_FIRE, NO_GAS},
     .reading = "An open fireplace for solid fuel needs a damper or flap that closes."},
};

/* ---- AS/NZS 2918 ---------------------------------------------------------------------------- */

static const struct ingle_rule heaters[] = {
    {MATTER_FLOOR_FRONT, "3.3", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {STOVE},
     .reading = "Measured from the opening that fuel is loaded through."},
    {MATTER_FLOOR_SIDE, "3.3", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {STOVE},
     .reading = "Measured from the fuel opening as in front: what the sides are measured from is "
                "not stated."},
    {MATTER_FLOOR_PROTECTION, "3.3", INGLE_BASIS_CITED, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_FLOOR_PROTECTION_NONE}, .when = {STOVE},
     .reading = "The floor protector goes through under the heater."},
    {MATTER_STOVE_CLEARANCE_REDUCED, "Tables 3.1, 3.2", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_share, .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {RATIO(2, 5)},
     .when = {STOVE, ONE_LAYER, {QUANTITY_WALL_AIR_SPACE, AT_LEAST, MILLIMETRES(12)},
              {QUANTITY_WALL_AIR_SPACE, LESS_THAN, MILLIMETRES(25)}}},
    {MATTER_STOVE_CLEARANCE_REDUCED, "Tables 3.1, 3.2", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_share, .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {RATIO(3, 10)},
     .when = {STOVE, ONE_LAYER, {QUANTITY_WALL_AIR_SPACE, AT_LEAST, MILLIMETRES(25)}}},
    {MATTER_STOVE_CLEARANCE_REDUCED, "Tables 3.1, 3.2", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_share, .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {RATIO(1, 5)},
     .when = {STOVE, TWO_LAYERS, {QUANTITY_WALL_AIR_SPACE, AT_LEAST, MILLIMETRES(12)}},
     .reading = "Both air spaces are at least 12 mm."},
    {MATTER_STOVE_CLEARANCE_REDUCED, "Tables 3.1, 3.2", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_share, .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {RATIO(1, 1)},
     .when = {STOVE, SHIELDED, {QUANTITY_WALL_AIR_SPACE, LESS_THAN, MILLIMETRES(12)}},
     .reading = "No factor is known for an air space of less than 12 mm: the clearance stays what "
                "it is without a shield."},
    {MATTER_OUTLET_ABOVE_RIDGE, "Figure 4.9", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(600)}, .when = {STOVE, NEAR_RIDGE},
     .reading = "Exactly 3.0 m from the ridge is within 3.0 m."},
    {MATTER_OUTLET_ABOVE_ROOF, "Figure 4.9", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(1000)}, .when = {STOVE, AWAY_FROM_RIDGE}},
    {MATTER_OUTLET_FROM_ROOF, "Figure 4.9", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {METRES(3)}, .when = {STOVE, AWAY_FROM_RIDGE}},
    {MATTER_NEIGHBOUR_CLEAR, "Figure 4.9", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {METRES(3)},
     .when = {STOVE, {QUANTITY_NEIGHBOUR_DISTANCE, AT_MOST, METRES(3)},
              {QUANTITY_NEIGHBOUR_OUTLET_ABOVE, AT_MOST, 0}},
     .reading = "Of a structure within 3.0 m that the outlet does not stand above; horizontally, "
                "at the outlet's level. Exactly 3.0 m is within 3.0 m."},
};

static const struct ingle_rule practice[] = {
    {MATTER_FLUE_EXIT_HEIGHT, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(4600)}, .when = {STOVE},
     .reading = "Usually attributed to AS/NZS 2918:2001, clause not confirmed."},
};

/* ---- Philippines ---------------------------------------------------------------------------- */

#define SERVES(heat) {QUANTITY_CHIMNEY_HEAT_CLASS, IS, CHOICE_CHIMNEY_HEAT_CLASS_##heat}
#define NO_RUBBLE_STONE {QUANTITY_CHIMNEY_RUBBLE_STONE, IS, false}

static const struct ingle_rule philippines[] = {
    {MATTER_CHIMNEY_WALL, "section 1211, edition not stated", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(100)},
     .when = {ON_MASONRY_CHIMNEY, SERVES(RESIDENTIAL), NO_RUBBLE_STONE},
     .reading = "Of a dwelling's masonry chimney."},
    {MATTER_CHIMNEY_WALL, "section 1211, edition not stated", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(300)},
     .when = {ON_MASONRY_CHIMNEY, SERVES(RESIDENTIAL), {QUANTITY_CHIMNEY_RUBBLE_STONE, IS, true}},
     .reading = "Of a dwelling's chimney of rubble stone."},
    {MATTER_CHIMNEY_WALL, "section 1211, edition not stated", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(200)}, .when = {SERVES(LOW)},
     .reading = "Of a chimney for low-heat appliances."},
    {MATTER_CHIMNEY_WALL, "section 1211, edition not stated", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(200)}, .when = {SERVES(MEDIUM)},
     .reading = "Of a chimney for medium-heat appliances."},
    {MATTER_CHIMNEY_FIREBRICK, "section 1211, edition not stated", INGLE_BASIS_READ,
     INGLE_AT_LEAST, &formula_fixed, .numbers = {MILLIMETRES(100)}, .when = {SERVES(MEDIUM)},
     .reading = "Of a chimney for medium-heat appliances."},
    {MATTER_CHIMNEY_TIED, "section 1211, edition not stated", INGLE_BASIS_READ, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {ON_MASONRY_CHIMNEY},
     .reading = "At ceilings and floors more than 1.80 m above grade."},
};

/* ---- the standards -------------------------------------------------------------------------- */

static const struct ingle_standard editions[] = {
    {.id = "abcb-2022", .title = "ABCB Housing Provisions", .place = "Australia",
     .note = "ABCB Housing Provisions Standard 2022, part 12.4, text of 1 May 2023. It sets no "
             "ratio of flue to opening.",
     .unit = UNIT_MILLIMETRE, .edition = 2022, .rules = housing_provisions,
     .rule_count = COUNT_OF(housing_provisions)},
    {.id = "as-nzs-2918-2001", .title = "AS/NZS 2918", .place = "Australia and New Zealand",
     .note = "AS/NZS 2918:2001, as other documents report it.", .unit = UNIT_MILLIMETRE,
     .edition = 2001, .rules = heaters, .rule_count = COUNT_OF(heaters)},
    {.id = "common-practice-australia", .title = "Common practice",
     .place = "Australia and New Zealand",
     .note = "Practice of the trade with no clause confirmed behind it: advice, not code.",
     .unit = UNIT_MILLIMETRE, .rules = practice, .rule_count = COUNT_OF(practice)},
    {.id = "nbc-philippines", .title = "National Building Code of the Philippines",
     .place = "Philippines",
     .note = "National Building Code of the Philippines, section 1211, edition not stated.",
     .unit = UNIT_MILLIMETRE, .rules = philippines, .rule_count = COUNT_OF(philippines)},
};

const struct publication publication_australia = {editions, COUNT_OF(editions)};
