/* SPDX-License-Identifier: MIT */
/*
 * England: Approved Document J (2010), and the warranty standard NHBC chapter 6.8.
 *
 * Approved Document J is known mostly from reports of it: its rows are cited, or from memory. A
 * number that was read in NHBC is NHBC's row, not the other's.
 */
#include "formulas/table.h"
#include "measure/amounts.h"
#include "standards/publications.h"

#define OPEN_FIRE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}
#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define PELLET_STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_PELLET_STOVE}
#define STABILISER {QUANTITY_FLUE_DRAUGHT_STABILISER, IS, true}
#define NO_STABILISER {QUANTITY_FLUE_DRAUGHT_STABILISER, IS, false}
#define AIRTIGHT {QUANTITY_HOUSE_AIRTIGHT, IS, true}
#define LEAKY {QUANTITY_HOUSE_AIRTIGHT, IS, false}
#define ROUND_FLUE {QUANTITY_FLUE_SHAPE, IS, CHOICE_FLUE_SHAPE_ROUND}
#define OTHER_FLUE {QUANTITY_FLUE_SHAPE, IS_NOT, CHOICE_FLUE_SHAPE_ROUND}
#define ONE_SIDE {QUANTITY_OPENING_EXPOSURE, IS, CHOICE_OPENING_EXPOSURE_FRONT}
#define MORE_SIDES {QUANTITY_OPENING_EXPOSURE, IS, CHOICE_OPENING_EXPOSURE_MORE_SIDES}
#define UP_TO_500_WIDE {QUANTITY_OPENING_WIDTH, AT_MOST, MILLIMETRES(500)}
#define OVER_500_WIDE {QUANTITY_OPENING_WIDTH, MORE_THAN, MILLIMETRES(500)}
#define UP_TO_550_HIGH {QUANTITY_OPENING_HEIGHT, AT_MOST, MILLIMETRES(550)}
#define OVER_550_HIGH {QUANTITY_OPENING_HEIGHT, MORE_THAN, MILLIMETRES(550)}
#define IN_RECESS {QUANTITY_HEARTH_IN_RECESS, IS, true}
#define FREE_STANDING {QUANTITY_HEARTH_IN_RECESS, IS, false}
#define WITH_THROAT {QUANTITY_THROAT_PRESENT, IS, true}
#define WITHOUT_THROAT {QUANTITY_THROAT_PRESENT, IS, false}
#define ORDINARY_ROOF {QUANTITY_HOUSE_EASILY_IGNITED_ROOF, IS, false}
#define EASILY_IGNITED_ROOF {QUANTITY_HOUSE_EASILY_IGNITED_ROOF, IS, true}
#define NEAR_RIDGE {QUANTITY_OUTLET_TO_RIDGE, AT_MOST, MILLIMETRES(600)}
#define AWAY_FROM_RIDGE {QUANTITY_OUTLET_TO_RIDGE, MORE_THAN, MILLIMETRES(600)}
#define BELOW_RIDGE {QUANTITY_OUTLET_REACHES_RIDGE, IS, false}
#define NEAR_FLUE {QUANTITY_SEPARATION_FROM_FLUE, LESS_THAN, MILLIMETRES(200)}
#define OWN_CHIMNEY {QUANTITY_HOUSE_FLUE_IN_PARTY_WALL, IS, false}
#define PARTY_WALL {QUANTITY_HOUSE_FLUE_IN_PARTY_WALL, IS, true}

/* ---- Approved Document J -------------------------------------------------------------------- */

#define OPENING_READING                                                                        \
    "An opening of up to 500 mm width and 550 mm height, open on one side only, takes the fixed " \
    "size; one larger either way, or open on more sides, takes the share of its area."
#define ABOVE_FIFTEEN                                                                          \
    " From memory: a flue of more than 15 %, or of more than 120,000 mm2, calls for a specialist."

#define STOVE_READING                                                                            \
    "On smokeless or low-volatile fuel, or for an exempted appliance, 125 mm is enough up to 20 kW."

static const int64_t stove_outputs[] = {KILOWATTS(30), KILOWATTS(50)};
static const int64_t stove_diameters[] = {MILLIMETRES(150), MILLIMETRES(175)};
static const int64_t stove_sides[] = {MILLIMETRES(125), MILLIMETRES(150)};
static const struct ingle_table stove_flues = {
    .name = "Table 2", .rows = {stove_outputs, COUNT_OF(stove_outputs), 0, KEY_UP_TO},
    .cells = stove_diameters};
static const struct ingle_table stove_flue_sides = {
    .name = "Table 2", .rows = {stove_outputs, COUNT_OF(stove_outputs), 0, KEY_UP_TO},
    .cells = stove_sides};

static const struct ingle_rule document_j[] = {
    /* The flue's size. */
    {MATTER_FLUE_DIAMETER, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)},
     .when = {OPEN_FIRE, UP_TO_500_WIDE, UP_TO_550_HIGH, ONE_SIDE, ROUND_FLUE},
     .reading = OPENING_READING},
    {MATTER_FLUE_AREA, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {SQUARE_MILLIMETRES(31416)},
     .when = {OPEN_FIRE, UP_TO_500_WIDE, UP_TO_550_HIGH, ONE_SIDE, OTHER_FLUE},
     .reading = OPENING_READING},
    {MATTER_FLUE_SHORTER_SIDE, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(175)},
     .when = {OPEN_FIRE, UP_TO_500_WIDE, UP_TO_550_HIGH, ONE_SIDE, OTHER_FLUE},
     .reading = OPENING_READING},
    {MATTER_FLUE_AREA, "2.7", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {PERCENT(15)},
     .when = {OPEN_FIRE, OVER_500_WIDE, ONE_SIDE}, .reading = OPENING_READING ABOVE_FIFTEEN},
    {MATTER_FLUE_AREA, "2.7", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {PERCENT(15)},
     .when = {OPEN_FIRE, UP_TO_500_WIDE, OVER_550_HIGH, ONE_SIDE},
     .reading = OPENING_READING ABOVE_FIFTEEN},
    {MATTER_FLUE_AREA, "2.7, Appendix B", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_OPENING_TOTAL_AREA}, .numbers = {PERCENT(15)},
     .when = {OPEN_FIRE, MORE_SIDES},
     .reading = "The opening's area is the length of all open sides together times the opening's "
                "height." ABOVE_FIFTEEN},
    {MATTER_FLUE_SHORTER_SIDE, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {OPEN_FIRE, OVER_500_WIDE, ONE_SIDE, OTHER_FLUE},
     .reading = OPENING_READING},
    {MATTER_FLUE_SHORTER_SIDE, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)},
     .when = {OPEN_FIRE, UP_TO_500_WIDE, OVER_550_HIGH, ONE_SIDE, OTHER_FLUE},
     .reading = OPENING_READING},
    {MATTER_FLUE_SHORTER_SIDE, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {OPEN_FIRE, MORE_SIDES, OTHER_FLUE},
     .reading = OPENING_READING},

    {MATTER_FLUE_DIAMETER, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_table_cell,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT}, .table = &stove_flues, .when = {STOVE, ROUND_FLUE},
     .reading = STOVE_READING},
    {MATTER_FLUE_SHORTER_SIDE, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_table_cell,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT}, .table = &stove_flue_sides, .when = {STOVE, OTHER_FLUE},
     .reading = STOVE_READING " A flue that is not round needs the round one's area as well."},
    {MATTER_FLUE_DIAMETER, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(125)}, .when = {PELLET_STOVE, ROUND_FLUE},
     .reading = "100 mm where the maker allows it and a calculation by EN 13384-1 shows it."},

    /* The flue's height and outlet. */
    {MATTER_FLUE_HEIGHT, "2.8, paragraph not confirmed", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(450)}, .when = {OPEN_FIRE},
     .reading = "Straight up from the top of the fireplace opening; cowls and guards do not "
                "count."},
    {MATTER_FLUE_BENDS, "paragraph not confirmed", INGLE_BASIS_FROM_MEMORY, INGLE_AT_MOST,
     &formula_fixed, .numbers = {4}, .when = {OPEN_FIRE}, .reading = "Of 45 degrees each."},
    {MATTER_OUTLET_ABOVE_RIDGE, "Diagram 17, A", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(600)}, .when = {ORDINARY_ROOF, NEAR_RIDGE}},
    {MATTER_OUTLET_FROM_ROOF, "Diagram 17, B", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(2300)}, .when = {ORDINARY_ROOF, AWAY_FROM_RIDGE}},
    {MATTER_OUTLET_ABOVE_ROOF, "Diagram 17, B", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(1000)},
     .when = {ORDINARY_ROOF, AWAY_FROM_RIDGE, BELOW_RIDGE},
     .reading = "Not asked for where the outlet is as high as the ridge."},
    {MATTER_OUTLET_ABOVE_WINDOW, "Diagram 17, C", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_within, .inputs = {QUANTITY_WINDOW_DISTANCE},
     .numbers = {MILLIMETRES(1000), MILLIMETRES(2300)},
     .reading = "Besides A or B, for what opens within 2300 mm, measured horizontally."},
    {MATTER_OUTLET_ABOVE_NEIGHBOUR, "Diagram 17, D", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_within, .inputs = {QUANTITY_NEIGHBOUR_DISTANCE},
     .numbers = {MILLIMETRES(600), MILLIMETRES(2300)},
     .reading = "Besides A or B: above any part of the adjacent building within 2300 mm."},
    {MATTER_OUTLET_ABOVE_RIDGE, "Diagram 18", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(600)}, .when = {EASILY_IGNITED_ROOF, NEAR_RIDGE},
     .reading = "Known from a weak report: look it up before relying on it. That the flue is near "
                "the ridge is taken as within 600 mm of it, as in Diagram 17."},
    {MATTER_OUTLET_ABOVE_ROOF, "Diagram 18", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(1800)}, .when = {EASILY_IGNITED_ROOF},
     .reading = "Known from a weak report: look it up before relying on it."},
    {MATTER_OUTLET_FROM_ROOF, "Diagram 18", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(2300)}, .when = {EASILY_IGNITED_ROOF, AWAY_FROM_RIDGE},
     .reading = "Known from a weak report: look it up before relying on it."},

    /* The hearth. */
    {MATTER_HEARTH_FRONT, "Diagram 24", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(500)}, .when = {OPEN_FIRE, IN_RECESS},
     .reading = "Measured from the jambs, which stand in the plane of the opening."},
    {MATTER_HEARTH_SIDE, "Diagram 24", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {OPEN_FIRE, IN_RECESS}},
    {MATTER_HEARTH_PLAN, "Diagram 24", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(840)}, .when = {FREE_STANDING}},
    {MATTER_HEARTH_THICKNESS, "Diagrams 24 to 27, number not confirmed", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_fixed, .numbers = {MILLIMETRES(125)}, .when = {OPEN_FIRE},
     .reading = "A constructional hearth, with any solid non-combustible floor beneath counted "
                "in."},
    {MATTER_HEARTH_TIMBER_BELOW, "Diagram 25", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(250)}, .when = {OPEN_FIRE}, .role = ORDINARY,
     .reading = "Timber that only supports the hearth's edge does not count."},
    {MATTER_HEARTH_TIMBER_AIR_SPACE, "Diagram 25", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {OPEN_FIRE}, .role = EXCEPTION},
    {MATTER_HEARTH_CLEAR_FRONT, "Diagram 26", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {OPEN_FIRE}},
    {MATTER_HEARTH_CLEAR_FRONT, "Diagram 26", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(225)}, .when = {STOVE},
     .reading = "For a closed appliance; one that may be used with its doors open needs 300 mm."},
    {MATTER_HEARTH_CLEAR_SIDE, "Diagram 26", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {OPEN_FIRE},
     .reading = "Or up to a suitable heat-resistant wall."},
    {MATTER_HEARTH_CLEAR_SIDE, "Diagram 26", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {STOVE},
     .reading = "Or up to a suitable heat-resistant wall."},
    {MATTER_HEARTH_EDGE_MARKED, "paragraph not confirmed", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {OPEN_FIRE}},

    /* Recess, chimney, what can burn. */
    {MATTER_FIREBOX_WALL, "Diagram 28", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {OPEN_FIRE},
     .reading = "Solid and non-combustible. The back may be 100 mm where recesses stand back to "
                "back in one dwelling, or in each leaf of a cavity wall."},
    {MATTER_SEPARATION_FROM_CHIMNEY, "Diagram 21", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(40)}, .when = {OPEN_FIRE, NEAR_FLUE},
     .reading = "What is 200 mm or more from the inside of the flue or recess need not be clear of "
                "the outer face. Floorboards, skirtings, rails, mantel-shelves and architraves are "
                "excepted: no height of a mantel is set."},

    /* Air. */
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_THROAT_AREA}, .numbers = {PERCENT(50)}, .when = {OPEN_FIRE, WITH_THROAT}},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_NET_AREA}, .numbers = {PERCENT(50)},
     .when = {OPEN_FIRE, WITHOUT_THROAT}},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_area_by_heat,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(5), SQUARE_MILLIMETRES(300), SQUARE_MILLIMETRES(850)},
     .when = {STOVE, STABILISER, LEAKY}},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_area_by_heat,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(5), SQUARE_MILLIMETRES(850), SQUARE_MILLIMETRES(850)},
     .when = {STOVE, STABILISER, AIRTIGHT}},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_area_by_heat,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(5), 0, SQUARE_MILLIMETRES(550)}, .when = {STOVE, NO_STABILISER, LEAKY},
     .reading = "The first 5 kW need no vent."},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_area_by_heat, .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(5), SQUARE_MILLIMETRES(550), SQUARE_MILLIMETRES(550)},
     .when = {STOVE, NO_STABILISER, AIRTIGHT}},
};

/* ---- NHBC ----------------------------------------------------------------------------------- */

static const struct ingle_rule nhbc[] = {
    {MATTER_FLUE_HEIGHT, "6.8.6", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {CENTIMETRES(450)}, .when = {OPEN_FIRE}},
    {MATTER_FLUE_SLOPE, "6.8.6", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {DEGREES(45)}, .when = {OPEN_FIRE}},
    {MATTER_FLUE_BENDS, "6.8.6", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed, .numbers = {2},
     .when = {OPEN_FIRE}},
    {MATTER_CHIMNEY_WALL, "6.8.6", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {OPEN_FIRE, OWN_CHIMNEY}},
    {MATTER_CHIMNEY_WALL, "6.8.6", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {OPEN_FIRE, PARTY_WALL}},
    {MATTER_SEPARATION_FROM_CHIMNEY, "6.8.6, 6.8.22", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(40)}, .when = {OPEN_FIRE, NEAR_FLUE},
     .reading = "What is 200 mm or more from the inside of the flue or recess need not be clear of "
                "the outer face. Its two clauses disagree about Scotland: there use 200 mm from "
                "the flue."},
    {MATTER_SEPARATION_FROM_FIXINGS, "6.8.6, 6.8.22", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {OPEN_FIRE}},
    {MATTER_CAP_PROJECTION, "6.8.7, edition not recorded", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {OPEN_FIRE}},
    {MATTER_ROOM_VENT_AREA, "6.8.9, edition not recorded", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_area_by_heat, .inputs = {QUANTITY_GAS_INPUT},
     .numbers = {KILOWATTS(7), 0, SQUARE_MILLIMETRES(500)},
     .when = {{QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_NONE},
              {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_LOG_SET},
              {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_LOG_LIGHTER},
              {QUANTITY_GAS_VENT, IS, CHOICE_GAS_VENT_CHIMNEY}},
     .reading = "Gas fires with an open flue other than decorative fuel-effect fires; the first "
                "7 kW need no vent."},
    {MATTER_HEARTH_EDGE_MARKED, "6.8.8, edition not recorded", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {OPEN_FIRE}},
    {MATTER_HEARTH_TIMBER_BELOW, "6.8.18, 2022 edition", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(250)}, .when = {OPEN_FIRE}, .role = ORDINARY,
     .reading = "Timber that only supports the hearth's edge does not count."},
    {MATTER_HEARTH_TIMBER_AIR_SPACE, "6.8.18, 2022 edition", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {OPEN_FIRE}, .role = EXCEPTION},
};

/* ---- NHBC 2011 ------------------------------------------------------------------------------ */

#define FOR_WOOD {QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}
#define FOR_GAS {QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_GAS}
#define FUEL_EFFECT_FIRE {QUANTITY_GAS_APPLIANCE, IS, CHOICE_GAS_APPLIANCE_LOG_SET}

static const struct ingle_rule nhbc_2011[] = {
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_THROAT_AREA}, .numbers = {PERCENT(50)},
     .when = {OPEN_FIRE, FOR_WOOD, WITH_THROAT}},
    {MATTER_ROOM_VENT_AREA, "Appendix 6.8-A", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {SQUARE_MILLIMETRES(10000)}, .when = {FOR_GAS, FUEL_EFFECT_FIRE, WITH_THROAT},
     .reading = "A decorative fuel-effect fire: the area as a whole, not for each kW."},
    {MATTER_ROOM_VENT_APERTURE, "Appendix 6.8-A", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(5)}, .when = {OPEN_FIRE}},
};

/* ---- common practice ------------------------------------------------------------------------ */

#define PRACTICE "no publication", INGLE_BASIS_COMMON_PRACTICE
#define ON_CEILING {QUANTITY_CO_ALARM_PLACE, IS, CHOICE_CO_ALARM_PLACE_CEILING}
#define ON_WALL {QUANTITY_CO_ALARM_PLACE, IS, CHOICE_CO_ALARM_PLACE_WALL}

static const struct ingle_rule practice[] = {
    {MATTER_CHIMNEY_SLENDERNESS, PRACTICE, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_OUTLET_STACK_WIDTH}, .numbers = {RATIO(9, 2)}, .when = {OPEN_FIRE},
     .reading = "Usually attributed to Approved Document A, clause not confirmed; for masonry of "
                "more than 1500 kg in the cubic metre."},
    {MATTER_SEPARATION_FROM_FLUE_PIPE, PRACTICE, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_SEPARATION_PIPE_DIAMETER}, .numbers = {RATIO(3, 1)}, .when = {STOVE},
     .reading = "Three outside diameters from a single-wall pipe. Usually attributed to Approved "
                "Document J, clause not confirmed; with a shield, half as much to the shield."},
    {MATTER_CO_ALARM_PRESENT, PRACTICE, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_CO_ALARM_PLACE_NONE},
     .reading = "Usually attributed to Approved Document J, clause not confirmed."},
    {MATTER_CO_ALARM_FROM_WALL, PRACTICE, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {ON_CEILING}},
    {MATTER_CO_ALARM_BELOW_CEILING, PRACTICE, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {ON_WALL},
     .reading = "And above doors and windows."},
    {MATTER_CO_ALARM_DISTANCE, PRACTICE, INGLE_AT_LEAST, &formula_fixed, .numbers = {METRES(1)},
     .when = {{QUANTITY_CO_ALARM_PLACE, IS_NOT, CHOICE_CO_ALARM_PLACE_NONE}},
     .reading = "Exactly 1 m is far enough."},
    {MATTER_CO_ALARM_DISTANCE_MOST, PRACTICE, INGLE_AT_MOST, &formula_fixed, .numbers = {METRES(3)},
     .when = {{QUANTITY_CO_ALARM_PLACE, IS_NOT, CHOICE_CO_ALARM_PLACE_NONE}},
     .reading = "Exactly 3 m is near enough."},
};

/* ---- the standards -------------------------------------------------------------------------- */

static const struct ingle_standard editions[] = {
    {.id = "adj-2010", .title = "Approved Document J", .place = "England",
     .note = "Approved Document J, 2010 edition with its amendments: mostly known from reports of "
             "it, some of it from memory; each finding says which. It sets no height of a mantel.",
     .unit = UNIT_MILLIMETRE, .edition = 2010, .rules = document_j,
     .rule_count = COUNT_OF(document_j)},
    {.id = "nhbc-2020", .title = "NHBC Standards, chapter 6.8",
     .place = "England, Wales, Scotland and Northern Ireland",
     .note = "NHBC Standards, chapter 6.8, 2020 edition where a section does not say otherwise: a "
             "warranty standard for new homes, not the regulation.",
     .unit = UNIT_MILLIMETRE, .edition = 2020, .rules = nhbc, .rule_count = COUNT_OF(nhbc)},
    {.id = "nhbc-2011", .title = "NHBC Standards, chapter 6.8",
     .place = "England, Wales, Scotland and Northern Ireland",
     .note = "NHBC Standards 2011, chapter 6.8, Appendix 6.8-A: a warranty standard for new homes, "
             "not the regulation.",
     .unit = UNIT_MILLIMETRE, .edition = 2011, .rules = nhbc_2011,
     .rule_count = COUNT_OF(nhbc_2011)},
    {.id = "common-practice-england", .title = "Common practice", .place = "England",
     .note = "Practice of the trade in England with no publication confirmed behind it: advice, "
             "not code.",
     .unit = UNIT_MILLIMETRE, .rules = practice, .rule_count = COUNT_OF(practice)},
};

const struct publication publication_england = {editions, COUNT_OF(editions)};
