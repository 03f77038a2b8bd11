/* SPDX-License-Identifier: MIT */
/*
 * NHBC chapter 6.8: a warranty standard for new homes in England, Wales, Scotland and Northern
 * Ireland. It was read; what it was only reported to say is cited.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define OPEN_FIRE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}
#define KIND_BIT(kind) CHOICE_BIT(CHOICE_APPLIANCE_KIND_##kind)
#define KINDS(kinds) {QUANTITY_APPLIANCE_KIND, ONE_OF, kinds}
#define NO_GAS {QUANTITY_APPLIANCE_FUEL, IS_NOT, CHOICE_APPLIANCE_FUEL_GAS, OR_UNKNOWN}
#define CLOSED KINDS(KIND_BIT(STOVE) | KIND_BIT(INSERT) | KIND_BIT(PELLET_STOVE)), NO_GAS
#define ANY_FIRE                                                                           \
    KINDS(KIND_BIT(MASONRY_FIREPLACE) | KIND_BIT(STOVE) | KIND_BIT(INSERT) |               \
          KIND_BIT(PELLET_STOVE))
#define ON_MASONRY_CHIMNEY                                                                     \
    {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE},          \
        {QUANTITY_CHIMNEY_CONSTRUCTION, IS, CHOICE_CHIMNEY_CONSTRUCTION_MASONRY}, WITH_OUTLET
/* A gas fire with a sealed vent, or with none, uses no chimney. */
#define WITH_OUTLET {QUANTITY_GAS_VENT, ONE_OF, CHOICE_BIT(CHOICE_GAS_VENT_CHIMNEY), OR_UNKNOWN}
#define HOT_HEARTH {QUANTITY_LISTING_COOL_HEARTH, IS, false}
#define NO_STABILISER {QUANTITY_FLUE_DRAUGHT_STABILISER, IS, false}
#define SOLID_FUEL {QUANTITY_APPLIANCE_FUEL, IS_NOT, CHOICE_APPLIANCE_FUEL_GAS}
#define WITH_THROAT {QUANTITY_THROAT_PRESENT, IS, true}
#define WITHOUT_THROAT {QUANTITY_THROAT_PRESENT, IS, false}
#define OWN_CHIMNEY {QUANTITY_HOUSE_FLUE_IN_PARTY_WALL, IS, false}
#define PARTY_WALL {QUANTITY_HOUSE_FLUE_IN_PARTY_WALL, IS, true}
#define AIRTIGHT {QUANTITY_HOUSE_AIRTIGHT, IS, true}
#define LEAKY {QUANTITY_HOUSE_AIRTIGHT, IS, false}
#define GAS_APPLIANCE {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_NONE}
#define NO_GAS_LOGS {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_LOG_SET}
#define NO_LOG_LIGHTER {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_LOG_LIGHTER}
#define GAS_FIRE(kind) {QUANTITY_GAS_APPLIANCE, IS, CHOICE_GAS_APPLIANCE_##kind}
#define UP_THE_CHIMNEY {QUANTITY_GAS_VENT, IS, CHOICE_GAS_VENT_CHIMNEY}
#define LOW_FLAME {QUANTITY_GAS_FLAME_RAISED, IS, false}
#define BACK_BOILER GAS_APPLIANCE, NO_LOG_LIGHTER, {QUANTITY_GAS_BACK_BOILER, IS, true}

/* ---- NHBC 2020 ------------------------------------------------------------------------------ */

#define EITHER                                                                               \
    "Either 200 mm from the inside of the flue or recess, or 40 mm from the chimney's outer " \
    "face. The two clauses disagree about Scotland."

static const struct ingle_rule nhbc_2020[] = {
    {MATTER_FLUE_HEIGHT, "6.8.6", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(450)}, .when = {OPEN_FIRE}},
    {MATTER_FLUE_SLOPE, "6.8.6", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {DEGREES(45)}, .when = {ANY_FIRE, WITH_OUTLET}},
    {MATTER_FLUE_BENDS, "6.8.6", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed, .numbers = {2},
     .when = {ANY_FIRE, WITH_OUTLET}},
    {MATTER_CHIMNEY_WALL, "6.8.6", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {ON_MASONRY_CHIMNEY, OWN_CHIMNEY}},
    {MATTER_CHIMNEY_WALL, "6.8.6", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {ON_MASONRY_CHIMNEY, PARTY_WALL}},
    {MATTER_SEPARATION_FROM_FLUE, "6.8.6, 6.8.22", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(200)}, .when = {ON_MASONRY_CHIMNEY},
     .follows = FOLLOWS(NHBC_SEPARATION, OUTER_FACE), .role = ORDINARY,
     .reading = EITHER},
    {MATTER_SEPARATION_FROM_CHIMNEY, "6.8.6, 6.8.22", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(40)}, .when = {ON_MASONRY_CHIMNEY},
     .follows = FOLLOWS(NHBC_SEPARATION, OUTER_FACE), .role = EXCEPTION,
     .reading = EITHER},
    {MATTER_SEPARATION_FROM_FLUE, "6.8.6, 6.8.22", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(200)}, .when = {ON_MASONRY_CHIMNEY},
     .follows = FOLLOWS(NHBC_SEPARATION, SCOTLAND),
     .reading = "The careful way until clause 3.19.1 of Scotland's handbook has been read: the two "
                "clauses disagree about Scotland."},
    {MATTER_SEPARATION_FROM_FIXINGS, "6.8.6, 6.8.22", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {ON_MASONRY_CHIMNEY}},
};

/* ---- NHBC, edition not recorded -------------------------------------------------------------- */

#define OPEN_FLUED "Gas fires with an open flue other than decorative fuel-effect fires."
#define GAS_HEARTH "6.8.8, edition not recorded"
/* In front of and beside the flame of a decorative or inset live fuel-effect fire. */
#define NAKED_FLAME(matter, millimetres, fire)                                                   \
    {matter, GAS_HEARTH, INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed,                \
     .numbers = {MILLIMETRES(millimetres)}, .when = {GAS_FIRE(fire), LOW_FLAME},                 \
     .reading = "Gas logs are read as a decorative fuel-effect fire, a gas insert as an inset "  \
                "live one. Measured from the naked flame."}

static const struct ingle_rule nhbc_undated[] = {
    {MATTER_CAP_PROJECTION, "6.8.7, edition not recorded", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {ON_MASONRY_CHIMNEY}},
    {MATTER_CAP_DRIP, "6.8.7, edition not recorded", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(30)}, .when = {ON_MASONRY_CHIMNEY},
     .reading = "The drip's 30 mm are read as its least distance from the chimney."},
    {MATTER_TERMINAL_BUILT_IN, "6.8.7, edition not recorded", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_share_or_least, .inputs = {QUANTITY_CAP_TERMINAL_LENGTH},
     .numbers = {RATIO(1, 4), MILLIMETRES(125)},
     .when = {ON_MASONRY_CHIMNEY, {QUANTITY_CAP_TERMINAL, IS, true}}},
    {MATTER_LINER_ABOVE_CAP, "6.8.7, edition not recorded", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(20)},
     .when = {ON_MASONRY_CHIMNEY, {QUANTITY_CAP_TERMINAL, IS, false}},
     .reading = "Where the liner itself ends above the cap, without a pot or terminal."},
    {MATTER_ROOM_VENT_AREA, "6.8.4 note 1, edition not recorded", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_share, .inputs = {QUANTITY_FLUE_NET_AREA},
     .numbers = {PERCENT(50)}, .when = {OPEN_FIRE, NO_GAS, WITHOUT_THROAT},
     .reading = "An open fire without a throat, under a canopy, say."},
    {MATTER_ROOM_VENT_AREA, "6.8.9, edition not recorded", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_area_by_heat, .inputs = {QUANTITY_GAS_INPUT},
     .numbers = {KILOWATTS(7), 0, SQUARE_MILLIMETRES(500)},
     .when = {GAS_APPLIANCE, NO_GAS_LOGS, NO_LOG_LIGHTER, UP_THE_CHIMNEY, LEAKY},
     .reading = OPEN_FLUED " The first 7 kW need no vent."},
    {MATTER_ROOM_VENT_AREA, "6.8.9, edition not recorded", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_area_by_heat, .inputs = {QUANTITY_GAS_INPUT},
     .numbers = {KILOWATTS(7), SQUARE_MILLIMETRES(500), SQUARE_MILLIMETRES(500)},
     .when = {GAS_APPLIANCE, NO_GAS_LOGS, NO_LOG_LIGHTER, UP_THE_CHIMNEY, AIRTIGHT},
     .reading = OPEN_FLUED},

    /* The hearth of a gas appliance. */
    {MATTER_GAS_HEARTH_THICKNESS, GAS_HEARTH, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(12)},
     .when = {GAS_APPLIANCE, NO_LOG_LIGHTER, LOW_FLAME, {QUANTITY_GAS_BACK_BOILER, IS, false}},
     .reading = "Of what cannot burn. No hearth where the flame and all that glows is 225 mm or "
                "more above the floor."},
    {MATTER_GAS_BASE_THICKNESS, GAS_HEARTH, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(125)}, .when = {BACK_BOILER}, .role = ORDINARY,
     .reading = "Solid."},
    {MATTER_GAS_BASE_ON_SUPPORTS, GAS_HEARTH, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(25)}, .when = {BACK_BOILER}, .role = EXCEPTION},
    {MATTER_GAS_BASE_SUPPORTS, GAS_HEARTH, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(25)}, .when = {BACK_BOILER}, .role = EXCEPTION},
    {MATTER_GAS_CLEARANCE, GAS_HEARTH, INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(75)},
     .when = {GAS_APPLIANCE, NO_GAS_LOGS, NO_LOG_LIGHTER, {QUANTITY_GAS_SHIELDED, IS, false}},
     .reading = "Of an appliance with a casing, at its back, sides and top; not where a shield of "
                "25 mm covers what is near."},
    NAKED_FLAME(MATTER_GAS_HEARTH_FRONT, 300, LOG_SET),
    NAKED_FLAME(MATTER_GAS_HEARTH_SIDE, 150, LOG_SET),
    NAKED_FLAME(MATTER_GAS_HEARTH_FRONT, 300, INSERT),
    NAKED_FLAME(MATTER_GAS_HEARTH_SIDE, 150, INSERT),

    /* The hearth of an open fire. */
    {MATTER_HEARTH_EDGE_MARKED, "6.8.8, edition not recorded", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {ANY_FIRE}},
};

/* ---- NHBC 2022 ------------------------------------------------------------------------------ */

#define BELOW(...)                                                                                \
    {MATTER_HEARTH_TIMBER_BELOW, "6.8.18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,      \
     .numbers = {MILLIMETRES(250)}, .when = {__VA_ARGS__}, .role = ORDINARY,                      \
     .reading = "Timber that only supports the hearth's edge does not count."},                   \
    {MATTER_HEARTH_TIMBER_AIR_SPACE, "6.8.18", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,  \
     .numbers = {MILLIMETRES(50)}, .when = {__VA_ARGS__}, .role = EXCEPTION}

static const struct ingle_rule nhbc_2022[] = {
    BELOW(OPEN_FIRE, SOLID_FUEL),
    BELOW(CLOSED, HOT_HEARTH),
};

/* ---- NHBC 2011 ------------------------------------------------------------------------------ */

#define FOR_WOOD {QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}
#define FOR_GAS {QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_GAS}
#define FUEL_EFFECT_FIRE GAS_FIRE(LOG_SET)
#define MORE_CLEARANCE {QUANTITY_GAS_LOW_CLEARANCE_RATE, IS, false}
#define LOW_CLEARANCE {QUANTITY_GAS_LOW_CLEARANCE_RATE, IS, true}
#define UP_TO_7_KW {QUANTITY_GAS_INPUT, AT_MOST, KILOWATTS(7)}
#define OVER_7_KW {QUANTITY_GAS_INPUT, MORE_THAN, KILOWATTS(7)}
#define AS_A_WHOLE "A decorative fuel-effect fire: the area as a whole, not for each kW."
#define NOT_OMITTED                                                                             \
    AS_A_WHOLE " From memory: only a fire of up to 7 kW, tested to clear its products with "    \
               "70 m3 in the hour or less, in a house that is not airtight, needs no vent."

static const struct ingle_rule nhbc_2011[] = {
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_THROAT_AREA}, .numbers = {PERCENT(50)},
     .when = {OPEN_FIRE, FOR_WOOD, WITH_THROAT}},
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {SQUARE_MILLIMETRES(10000)},
     .when = {FOR_GAS, FUEL_EFFECT_FIRE, WITH_THROAT, MORE_CLEARANCE}, .reading = AS_A_WHOLE},
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {SQUARE_MILLIMETRES(10000)},
     .when = {FOR_GAS, FUEL_EFFECT_FIRE, WITH_THROAT, LOW_CLEARANCE, OVER_7_KW},
     .reading = NOT_OMITTED},
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {SQUARE_MILLIMETRES(10000)},
     .when = {FOR_GAS, FUEL_EFFECT_FIRE, WITH_THROAT, LOW_CLEARANCE, UP_TO_7_KW, AIRTIGHT},
     .reading = NOT_OMITTED},
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_NET_AREA}, .numbers = {PERCENT(50)},
     .when = {FOR_GAS, FUEL_EFFECT_FIRE, WITHOUT_THROAT},
     .reading = "A decorative fuel-effect fire under a canopy."},
    {MATTER_ROOM_VENT_APERTURE, "Appendix 6.8-A", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(5)}, .when = {ANY_FIRE}},
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_area_by_heat, .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(5), 0, SQUARE_MILLIMETRES(550)}, .when = {CLOSED, NO_STABILISER, LEAKY},
     .reading = "A closed appliance without draught stabiliser: the first 5 kW need no vent."},
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_area_by_heat, .inputs = {QUANTITY_GAS_INPUT},
     .numbers = {KILOWATTS(7), 0, SQUARE_MILLIMETRES(500)},
     .when = {FOR_GAS, GAS_APPLIANCE, NO_GAS_LOGS, NO_LOG_LIGHTER, UP_THE_CHIMNEY, LEAKY},
     .reading = OPEN_FLUED " The first 7 kW need no vent."},
};

/* ---- Northern Ireland, as NHBC 2011 has it -------------------------------------------------- */

static const struct ingle_rule northern_ireland[] = {
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_area_above_heat, .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(6), SQUARE_MILLIMETRES(550), SQUARE_MILLIMETRES(550)},
     .when = {CLOSED}},
};

/* ---- the standards -------------------------------------------------------------------------- */

static const struct ingle_standard editions[] = {
    {.id = "nhbc-2020", .title = "NHBC Standards, chapter 6.8",
     .place = "England, Wales, Scotland and Northern Ireland",
     .note = "NHBC Standards 2020, 6.8.6 and 6.8.22: a warranty standard for new homes, not the "
             "regulation. Other sections of the chapter were read in other editions: see nhbc and "
             "nhbc-2022.",
     .unit = UNIT_MILLIMETRE, .edition = 2020, .rules = nhbc_2020,
     .rule_count = COUNT_OF(nhbc_2020)},
    {.id = "nhbc-2022", .title = "NHBC Standards, chapter 6.8",
     .place = "England, Wales, Scotland and Northern Ireland",
     .note = "NHBC Standards 2022, 6.8.18: a warranty standard for new homes, not the regulation. "
             "Other sections of the chapter were read in other editions: see nhbc and nhbc-2020.",
     .unit = UNIT_MILLIMETRE, .edition = 2022, .rules = nhbc_2022,
     .rule_count = COUNT_OF(nhbc_2022)},
    {.id = "nhbc", .title = "NHBC Standards, chapter 6.8",
     .place = "England, Wales, Scotland and Northern Ireland",
     .note = "NHBC Standards, 6.8.4 and 6.8.7 to 6.8.9, whose edition is not recorded: a warranty "
             "standard for new homes, not the regulation.",
     .unit = UNIT_MILLIMETRE, .rules = nhbc_undated, .rule_count = COUNT_OF(nhbc_undated)},
    {.id = "nhbc-2011", .title = "NHBC Standards, chapter 6.8",
     .place = "England, Wales, Scotland and Northern Ireland",
     .note = "NHBC Standards 2011, chapter 6.8, Appendix 6.8-A: a warranty standard for new homes, "
             "not the regulation.",
     .unit = UNIT_MILLIMETRE, .edition = 2011, .rules = nhbc_2011,
     .rule_count = COUNT_OF(nhbc_2011)},
    {.id = "nhbc-northern-ireland-2011", .title = "NHBC Standards, chapter 6.8",
     .place = "Northern Ireland",
     .note = "What NHBC Standards 2011 reports of Northern Ireland: an older rule.",
     .unit = UNIT_MILLIMETRE, .edition = 2011, .rules = northern_ireland,
     .rule_count = COUNT_OF(northern_ireland)},
};

const struct publication publication_nhbc = {editions, COUNT_OF(editions)};
