/* SPDX-License-Identifier: MIT */
/*
 * Germany and France: model and state regulations on firing, the immission ordinance, an old rule
 * of the trade, orders on chimneys and public buildings, and the code of practice for chimneys;
 * and what handbooks of Europe say of open fires.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define OPEN_FIRE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}
#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define NO_GAS {QUANTITY_APPLIANCE_FUEL, IS_NOT, CHOICE_APPLIANCE_FUEL_GAS, OR_UNKNOWN}
/* A gas fire with a sealed vent, or with none, has no outlet of a flue. */
#define WITH_OUTLET {QUANTITY_GAS_VENT, ONE_OF, CHOICE_BIT(CHOICE_GAS_VENT_CHIMNEY), OR_UNKNOWN}
#define ON_MASONRY_CHIMNEY                                                             \
    {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE},  \
        {QUANTITY_CHIMNEY_CONSTRUCTION, IS, CHOICE_CHIMNEY_CONSTRUCTION_MASONRY}
#define SOLID_FUEL {QUANTITY_APPLIANCE_FUEL, IS_NOT, CHOICE_APPLIANCE_FUEL_GAS}
#define COMBUSTIBLE_FLOOR {QUANTITY_HOUSE_COMBUSTIBLE_FLOOR, IS, true}
#define NO_SCREEN {QUANTITY_WALL_SHIELD_LAYERS, IS, CHOICE_WALL_SHIELD_LAYERS_NONE}
#define SCREEN {QUANTITY_WALL_SHIELD_LAYERS, IS_NOT, CHOICE_WALL_SHIELD_LAYERS_NONE}
#define NO_SHIELD {QUANTITY_RADIATION_SHIELD, IS, false}
#define SHIELD {QUANTITY_RADIATION_SHIELD, IS, true}
#define LOW_PITCH {QUANTITY_HOUSE_ROOF_PITCH, AT_MOST, DEGREES(20)}
#define STEEP {QUANTITY_HOUSE_ROOF_PITCH, MORE_THAN, DEGREES(20)}
#define PITCHED {QUANTITY_HOUSE_ROOF_PITCH, MORE_THAN, DEGREES(15)}
#define UP_TO_15_DEGREES {QUANTITY_HOUSE_ROOF_PITCH, AT_MOST, DEGREES(15)}
#define FLAT {QUANTITY_HOUSE_ROOF_PITCH, LESS_THAN, DEGREES(15)}
#define PARAPET {QUANTITY_OUTLET_PARAPET, IS, true}
#define NO_SUCH_CAP {QUANTITY_OUTLET_ANTI_DOWNDRAUGHT_CAP, IS, false}
#define SUCH_A_CAP {QUANTITY_OUTLET_ANTI_DOWNDRAUGHT_CAP, IS, true}
#define NEARER_THAN_8_M {QUANTITY_NEARBY_DISTANCE, LESS_THAN, METRES(8)}

/* ---- Germany -------------------------------------------------------------------------------- */

/* The covering of a floor that can burn. */
#define COVERING(what, section, basis, ...)                                                  \
    {MATTER_##what##_FRONT, section, basis, INGLE_AT_LEAST, &formula_fixed,                  \
     .numbers = {CENTIMETRES(50)}, .when = {__VA_ARGS__, COMBUSTIBLE_FLOOR},                 \
     .reading = "The non-combustible covering of a floor that can burn, in front of the "    \
                "firing opening."},                                                          \
    {MATTER_##what##_SIDE, section, basis, INGLE_AT_LEAST, &formula_fixed,                   \
     .numbers = {CENTIMETRES(30)}, .when = {__VA_ARGS__, COMBUSTIBLE_FLOOR},                 \
     .reading = "Beyond the firing opening, not beyond the appliance."}

static const struct ingle_rule brandenburg[] = {
    COVERING(HEARTH, "section 4(8)", INGLE_BASIS_READ, OPEN_FIRE, SOLID_FUEL),
    COVERING(FLOOR, "section 4(8)", INGLE_BASIS_READ, STOVE),
};

static const struct ingle_rule model_regulation[] = {
    COVERING(HEARTH, "section 4", INGLE_BASIS_CITED, OPEN_FIRE, SOLID_FUEL),
    COVERING(FLOOR, "section 4", INGLE_BASIS_CITED, STOVE),
    {MATTER_SEPARATION_FROM_TIMBER, "section 8", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(2)}, .when = {ON_MASONRY_CHIMNEY},
     .reading = "Of timber beams and the like from the chimney."},
    {MATTER_SEPARATION_OF_OTHERS, "section 8", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(5)}, .when = {ON_MASONRY_CHIMNEY},
     .reading = "Of other parts that can burn from the chimney."},
    {MATTER_SEPARATION_FROM_FLUE_PIPE, "section 8", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(20)},
     .when = {STOVE, {QUANTITY_SEPARATION_PIPE_INSULATED, IS, false}},
     .reading = "Outside shafts."},
    {MATTER_SEPARATION_FROM_FLUE_PIPE, "section 8", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(5)},
     .when = {STOVE, {QUANTITY_SEPARATION_PIPE_INSULATED, IS, true}},
     .reading = "Outside shafts, with 2 cm of non-combustible insulation or gases of up to "
                "160 °C."},
};

static const struct ingle_rule state_regulations[] = {
    {MATTER_RADIATION_DISTANCE, "clause not stated", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(80)}, .when = {OPEN_FIRE, NO_SHIELD},
     .reading = "That it is asked for in front and to the sides is common practice; upwards, from "
                "memory."},
    {MATTER_RADIATION_DISTANCE, "clause not stated", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(80)}, .when = {STOVE, NO_SHIELD},
     .reading = "In the radiation zone of the stove's pane."},
    {MATTER_AIR_SUPPLY, "clause and edition not stated", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_flow_by_area, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {RATIO(360, 1)},
     .when = {OPEN_FIRE, NO_GAS, {QUANTITY_AIR_SUPPLY_SHARED, IS, false}},
     .reading = "In m3 in the hour: one report gives no time, another does."},
    {MATTER_AIR_SUPPLY, "clause and edition not stated", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_flow_by_area, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {RATIO(540, 1)},
     .when = {OPEN_FIRE, NO_GAS, {QUANTITY_AIR_SUPPLY_SHARED, IS, true}},
     .reading = "In m3 in the hour, where other appliances burn the same air: known from one "
                "report only."},
};

static const struct ingle_rule practice_in_germany[] = {
    {MATTER_RADIATION_DISTANCE, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(40)}, .when = {OPEN_FIRE, SHIELD}},
    {MATTER_RADIATION_DISTANCE, "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(40)}, .when = {STOVE, SHIELD},
     .reading = "In the radiation zone of the stove's pane."},
};

/* An old rule of the trade, not current model law. */
static const struct ingle_rule old_trade_rule[] = {
    {MATTER_HEARTH_FRONT, "no publication", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_input_plus_or_least, .inputs = {QUANTITY_FIREBOX_ABOVE_FLOOR},
     .numbers = {CENTIMETRES(30), CENTIMETRES(50)}, .when = {OPEN_FIRE, NO_GAS}},
    {MATTER_HEARTH_SIDE, "no publication", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_input_plus_or_least, .inputs = {QUANTITY_FIREBOX_ABOVE_FLOOR},
     .numbers = {CENTIMETRES(20), CENTIMETRES(30)}, .when = {OPEN_FIRE, NO_GAS}},
};

static const struct ingle_rule immission_ordinance[] = {
    {MATTER_OUTLET_ABOVE_RIDGE, "section 19(1) no. 1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(40)}, .when = {WITH_OUTLET}, .role = ORDINARY},
    {MATTER_OUTLET_OFF_ROOF, "section 19(1) no. 1a", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {METRES(1)}, .when = {WITH_OUTLET, LOW_PITCH}, .role = EXCEPTION,
     .reading = "In the place of the height above the ridge, up to a pitch of 20 degrees."},
    {MATTER_OUTLET_FROM_ROOF, "section 19(1) no. 1b", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(230)}, .when = {WITH_OUTLET, STEEP}, .role = EXCEPTION,
     .reading = "In the place of the height above the ridge, from a pitch of more than 20 "
                "degrees."},
    {MATTER_OUTLET_ABOVE_WINDOW, "section 19(1) no. 2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_within_by_heat, .inputs = {QUANTITY_WINDOW_DISTANCE, QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {METRES(1), METRES(15), KILOWATTS(50), KILOWATTS(50), METRES(2), METRES(40)},
     .when = {WITH_OUTLET},
     .reading = "Whether the radius is horizontal is not stated; it is taken so."},
};

/* ---- France --------------------------------------------------------------------------------- */

static const struct ingle_rule order_of_1969[] = {
    {MATTER_FLUE_SIDES_RATIO, "art. 6", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_FLUE_SHORTER_SIDE}, .numbers = {RATIO(8, 5)}, .when = {
         {QUANTITY_FLUE_SHAPE, IS_NOT, CHOICE_FLUE_SHAPE_ROUND}}},
    {MATTER_FLUE_UNIFORM, "art. 6", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}},
    {MATTER_FLUE_JOINT_IN_FLOOR, "art. 5", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {true},
     .when = {{QUANTITY_FLUE_ELEMENT_HEIGHT, MORE_THAN, CENTIMETRES(25)}}},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "art. 18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(40)}, .when = {WITH_OUTLET, NO_SUCH_CAP, NEARER_THAN_8_M},
     .reading = "What is exactly 8 m away does not count, nor what is too small to press the wind "
                "down."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "art. 18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(40)},
     .when = {WITH_OUTLET, SUCH_A_CAP, UP_TO_15_DEGREES, NEARER_THAN_8_M},
     .reading = "What is exactly 8 m away does not count, nor what is too small to press the wind "
                "down. For a pitch of exactly 15 degrees neither wording is meant."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "art. 18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(40)},
     .when = {WITH_OUTLET, SUCH_A_CAP, PITCHED, NEARER_THAN_8_M,
              {QUANTITY_NEARBY_ABOVE_RIDGE, IS, true}},
     .reading = "An outlet level with the ridge is enough only where nothing within 8 m stands "
                "above the ridge."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "art. 18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(40)},
     .when = {WITH_OUTLET, SUCH_A_CAP, PITCHED, NEARER_THAN_8_M,
              {QUANTITY_NEARBY_ABOVE_RIDGE, IS, false}},
     .role = ORDINARY,
     .reading = "An outlet level with the ridge is enough instead, for nothing within 8 m stands "
                "above the ridge."},
    {MATTER_OUTLET_REACHES_RIDGE, "art. 18", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {WITH_OUTLET, SUCH_A_CAP, PITCHED}, .role = EXCEPTION,
     .reading = "With such a cap, a pitch of more than 15 degrees and nothing above the ridge "
                "within 8 m, an outlet level with the ridge is enough."},
    {MATTER_OUTLET_ABOVE_ROOF, "art. 18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(120)}, .when = {WITH_OUTLET, FLAT},
     .reading = "For a terrace, or a pitch of less than 15 degrees; for exactly 15 degrees neither "
                "wording is meant."},
    {MATTER_OUTLET_ABOVE_PARAPET, "art. 18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {METRES(1)}, .when = {WITH_OUTLET, FLAT, PARAPET}},
};

static const struct ingle_rule order_of_1980[] = {
    {MATTER_FLOOR_FRONT, "art. CH 48", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(30)}, .when = {STOVE},
     .reading = "In front of the ash door, in buildings open to the public, for solid fuel."},
    {MATTER_FLOOR_SIDE, "art. CH 48", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(30)}, .when = {STOVE},
     .reading = "At each side of the ash door, in buildings open to the public, for solid fuel."},
    {MATTER_STOVE_CLEARANCE, "art. CH 48", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(50)}, .when = {STOVE, NO_SCREEN},
     .reading = "In buildings open to the public, for solid fuel."},
    {MATTER_STOVE_CLEARANCE_REDUCED, "art. CH 48", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(25)}, .when = {STOVE, SCREEN},
     .reading = "In buildings open to the public, for solid fuel."},
    {MATTER_SHIELD_AIR_SPACE, "art. CH 48", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(5)}, .when = {STOVE, SCREEN},
     .reading = "In buildings open to the public, for solid fuel."},
};

static const struct ingle_rule code_of_practice[] = {
    {MATTER_ROOM_VENT_AREA, "P1-1, art. 5.1.1, edition not stated", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_share_or_least, .inputs = {QUANTITY_FLUE_NET_AREA},
     .numbers = {RATIO(1, 4), SQUARE_CENTIMETRES(200)}, .when = {OPEN_FIRE, NO_GAS}},
};

/* ---- Europe --------------------------------------------------------------------------------- */

#define HANDBOOKS "no publication", INGLE_BASIS_COMMON_PRACTICE, INGLE_AT_LEAST, &formula_fixed

static const struct ingle_rule handbooks[] = {
    {MATTER_FLUE_HEIGHT, HANDBOOKS, .numbers = {CENTIMETRES(450)}, .when = {OPEN_FIRE},
     .reading = "The effective height, from the smoke hood to the chimney's mouth."},
    {MATTER_RADIATION_DISTANCE, HANDBOOKS, .numbers = {MILLIMETRES(800)}, .when = {OPEN_FIRE},
     .reading = "In front, above and at the sides, built-in furniture too."},
    {MATTER_HOOD_THICKNESS, HANDBOOKS, .numbers = {MILLIMETRES(2)},
     .when = {OPEN_FIRE, {QUANTITY_HOOD_METAL, IS, true}},
     .reading = "The 2 mm are read as the least."},
};

/* ---- the standards -------------------------------------------------------------------------- */

static const struct ingle_standard editions[] = {
    {.id = "brandenburg-feuv", .title = "Feuerungsverordnung of Brandenburg",
     .place = "Brandenburg, Germany",
     .note = "The firing regulation of Brandenburg, edition not stated; the model regulation and "
             "most states have the same for the floor. An older rule of the trade adds the height "
             "of the fire chamber above the floor: see trade-rule-germany.",
     .unit = UNIT_CENTIMETRE, .rules = brandenburg, .rule_count = COUNT_OF(brandenburg)},
    {.id = "muffeuv", .title = "Muster-Feuerungsverordnung", .place = "Germany",
     .note = "The model firing regulation of the German states, edition not stated, as other "
             "documents report it.",
     .unit = UNIT_CENTIMETRE, .rules = model_regulation, .rule_count = COUNT_OF(model_regulation)},
    {.id = "feuv-germany", .title = "Feuerungsverordnungen of the states", .place = "Germany",
     .note = "Firing regulations of the German states, clause and edition not stated, as guidance "
             "of the sweeps' trade and other reports restate them.",
     .unit = UNIT_CENTIMETRE, .rules = state_regulations,
     .rule_count = COUNT_OF(state_regulations)},
    {.id = "common-practice-germany", .title = "Common practice", .place = "Germany",
     .note = "Practice of the trade in Germany with no publication confirmed behind it: advice, "
             "not code.",
     .unit = UNIT_CENTIMETRE, .rules = practice_in_germany,
     .rule_count = COUNT_OF(practice_in_germany)},
    {.id = "trade-rule-germany", .title = "Old trade rule for open fires", .place = "Germany",
     .note = "From memory, with no text known: an older rule of the trade, not current model law.",
     .unit = UNIT_CENTIMETRE, .rules = old_trade_rule, .rule_count = COUNT_OF(old_trade_rule)},
    {.id = "bimschv-2010", .title = "1. BImSchV", .place = "Germany",
     .note = "First immission control ordinance, section 19 as of 2010, for plant from 22 March "
             "2010. From memory: it was made stricter from 2022, with the outlet near the ridge.",
     .unit = UNIT_CENTIMETRE, .edition = 2010, .rules = immission_ordinance,
     .rule_count = COUNT_OF(immission_ordinance)},
    {.id = "arrete-1969", .title = "Arrêté of 22 October", .place = "France",
     .note = "Order of 22 October 1969 on smoke flues of dwellings.",
     .unit = UNIT_CENTIMETRE, .edition = 1969, .rules = order_of_1969,
     .rule_count = COUNT_OF(order_of_1969)},
    {.id = "arrete-1980", .title = "Arrêté of 25 June", .place = "France",
     .note = "Order of 25 June 1980 on buildings open to the public, for solid fuel.",
     .unit = UNIT_CENTIMETRE, .edition = 1980, .rules = order_of_1980,
     .rule_count = COUNT_OF(order_of_1980)},
    {.id = "dtu-24-2", .title = "DTU 24.2", .place = "France",
     .note = "Code of practice for chimneys, P1-1, edition not stated, as other documents report "
             "it.",
     .unit = UNIT_CENTIMETRE, .rules = code_of_practice, .rule_count = COUNT_OF(code_of_practice)},
    {.id = "common-practice-europe", .title = "Common practice", .place = "Europe",
     .note = "What handbooks say of open fires, with no publication confirmed behind it: advice, "
             "not code.",
     .unit = UNIT_MILLIMETRE, .rules = handbooks, .rule_count = COUNT_OF(handbooks)},
};

const struct publication publication_europe = {editions, COUNT_OF(editions)};
