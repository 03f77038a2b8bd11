/* SPDX-License-Identifier: MIT */
/*
 * England: Approved Document J (2010), and the practice of its trade.
 *
 * It is known mostly from reports of it: its rows are cited, or from memory. A number that was read
 * in the warranty standard NHBC is that one's row.
 */
#include "formulas/table.h"
#include "measure/amounts.h"
#include "standards/publications.h"

#define MASONRY {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE}
#define SOLID_FUEL {QUANTITY_APPLIANCE_FUEL, IS_NOT, CHOICE_APPLIANCE_FUEL_GAS}
#define OPEN_FIRE MASONRY, SOLID_FUEL
#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define KIND_BIT(kind) CHOICE_BIT(CHOICE_APPLIANCE_KIND_##kind)
#define KINDS(kinds) {QUANTITY_APPLIANCE_KIND, ONE_OF, kinds}
#define NO_GAS {QUANTITY_APPLIANCE_FUEL, IS_NOT, CHOICE_APPLIANCE_FUEL_GAS, OR_UNKNOWN}
#define STOVE_OR_INSERT KINDS(KIND_BIT(STOVE) | KIND_BIT(INSERT)), NO_GAS
#define CLOSED KINDS(KIND_BIT(STOVE) | KIND_BIT(INSERT) | KIND_BIT(PELLET_STOVE)), NO_GAS
#define ANY_FIRE                                                                           \
    KINDS(KIND_BIT(MASONRY_FIREPLACE) | KIND_BIT(STOVE) | KIND_BIT(INSERT) |               \
          KIND_BIT(PELLET_STOVE)), NO_GAS
#define ON_MASONRY_CHIMNEY                                                                   \
    {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE}, NO_GAS, \
        {QUANTITY_CHIMNEY_CONSTRUCTION, IS, CHOICE_CHIMNEY_CONSTRUCTION_MASONRY}
/* A gas fire with a sealed vent, or with none, has no outlet of a flue. */
#define WITH_OUTLET {QUANTITY_GAS_VENT, ONE_OF, CHOICE_BIT(CHOICE_GAS_VENT_CHIMNEY), OR_UNKNOWN}
#define NO_STOVE {QUANTITY_APPLIANCE_KIND, IS_NOT, CHOICE_APPLIANCE_KIND_STOVE}
#define PELLET_STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_PELLET_STOVE}
#define SMOKE_EXEMPT {QUANTITY_STOVE_SMOKE_EXEMPT, IS, true}
#define ORDINARY_FUEL {QUANTITY_STOVE_SMOKE_EXEMPT, IS, false}
#define OUTPUT_UP_TO(kilowatts) {QUANTITY_APPLIANCE_OUTPUT, AT_MOST, KILOWATTS(kilowatts)}
#define OUTPUT_OVER(kilowatts) {QUANTITY_APPLIANCE_OUTPUT, MORE_THAN, KILOWATTS(kilowatts)}
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
#define PITCHED {QUANTITY_HOUSE_ROOF_PITCH, AT_LEAST, DEGREES(10), OR_UNKNOWN}
#define FLAT {QUANTITY_HOUSE_ROOF_PITCH, LESS_THAN, DEGREES(10), IF_KNOWN}
#define NEAR_RIDGE {QUANTITY_OUTLET_TO_RIDGE, AT_MOST, MILLIMETRES(600)}
#define AWAY_FROM_RIDGE {QUANTITY_OUTLET_TO_RIDGE, MORE_THAN, MILLIMETRES(600)}
#define THROAT_IN_REACH {QUANTITY_THROAT_CAN_BE_MEASURED, IS, true}
#define THROAT_OUT_OF_REACH {QUANTITY_THROAT_CAN_BE_MEASURED, IS, false}
#define COOL_HEARTH {QUANTITY_LISTING_COOL_HEARTH, IS, true}
#define HOT_HEARTH {QUANTITY_LISTING_COOL_HEARTH, IS, false}
#define BUILT(how) {QUANTITY_RECESS_CONSTRUCTION, IS, CHOICE_RECESS_CONSTRUCTION_##how}
#define ABUTTING {QUANTITY_ADJACENT_WALL_HEARTH_DISTANCE, AT_MOST, 0}
#define NOT_ABUTTING {QUANTITY_ADJACENT_WALL_HEARTH_DISTANCE, MORE_THAN, 0}
#define HEARTH_WITHIN_150 {QUANTITY_ADJACENT_WALL_HEARTH_DISTANCE, AT_MOST, MILLIMETRES(150)}
#define FIRE_WITHIN_50 {QUANTITY_ADJACENT_WALL_APPLIANCE_DISTANCE, AT_MOST, MILLIMETRES(50)}
#define FIRE_BEYOND_50 {QUANTITY_ADJACENT_WALL_APPLIANCE_DISTANCE, MORE_THAN, MILLIMETRES(50)}
#define FIRE_WITHIN_300 {QUANTITY_ADJACENT_WALL_APPLIANCE_DISTANCE, AT_MOST, MILLIMETRES(300)}
#define GAS {QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_GAS}
#define GAS_FIRE(kind) {QUANTITY_GAS_APPLIANCE, IS, CHOICE_GAS_APPLIANCE_##kind}
#define UP_THE_CHIMNEY {QUANTITY_GAS_VENT, IS, CHOICE_GAS_VENT_CHIMNEY}

/* ---- Approved Document J -------------------------------------------------------------------- */

/* The document's alternatives. */
enum { BELOW_HEARTH, OUTLET, SEPARATION };

#define OPENING_READING                                                                        \
    "An opening of up to 500 mm width and 550 mm height, open on one side only, takes the fixed " \
    "size; one larger either way, or open on more sides, takes the share of its area."
#define ABOVE_FIFTEEN                                                                          \
    " From memory: a flue of more than 15 %, or of more than 120,000 mm2, calls for a specialist."

#define EXEMPTED                                                                                 \
    "For smokeless or low-volatile fuel, or an exempted appliance, of up to 20 kW."

static const int64_t stove_outputs[] = {KILOWATTS(30), KILOWATTS(50)};
static const int64_t stove_diameters[] = {MILLIMETRES(150), MILLIMETRES(175)};
static const int64_t stove_sides[] = {MILLIMETRES(125), MILLIMETRES(150)};
static const struct ingle_table stove_flues = {
    .name = "Table 2", .rows = {stove_outputs, COUNT_OF(stove_outputs), 0, KEY_UP_TO},
    .cells = stove_diameters};
static const struct ingle_table stove_flue_sides = {
    .name = "Table 2", .rows = {stove_outputs, COUNT_OF(stove_outputs), 0, KEY_UP_TO},
    .cells = stove_sides};

static const int64_t vent_widths[] = {MILLIMETRES(350), MILLIMETRES(400), MILLIMETRES(450),
                                      MILLIMETRES(500)};
static const int64_t vent_areas[] = {SQUARE_MILLIMETRES(14500), SQUARE_MILLIMETRES(16500),
                                     SQUARE_MILLIMETRES(18500), SQUARE_MILLIMETRES(20500)};
static const struct ingle_table vents_by_width = {
    .name = "Table 1, note", .rows = {vent_widths, COUNT_OF(vent_widths), 0, KEY_EXACT},
    .cells = vent_areas};

#define GAS_FIRES                                                                               \
    "Gas logs are read as a decorative fuel-effect fire, a gas insert as an inset live one, a " \
    "room heater as a radiant one."
#define TABLE_5 "Table 5, number not confirmed", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST

/* An opening of up to 500 mm by 550 mm: the flue is nowhere narrower than 175 mm. */
#define GAS_FLUES(place, fire, ...)                                                             \
    {MATTER_FLUE_DIAMETER, TABLE_5, &formula_fixed, .numbers = {MILLIMETRES(175)},              \
     .when = {place, GAS, GAS_FIRE(fire), UP_TO_500_WIDE, UP_TO_550_HIGH, __VA_ARGS__,          \
              ROUND_FLUE},                                                                      \
     .reading = GAS_FIRES},                                                                     \
    {MATTER_FLUE_SHORTER_SIDE, TABLE_5, &formula_fixed, .numbers = {MILLIMETRES(175)},          \
     .when = {place, GAS, GAS_FIRE(fire), UP_TO_500_WIDE, UP_TO_550_HIGH, __VA_ARGS__,          \
              OTHER_FLUE},                                                                      \
     .reading = GAS_FIRES}

#define CONSTRUCTIONAL                                                                            \
    "A constructional hearth, with any solid non-combustible floor beneath counted in; from "    \
    "memory: a decorative top as well."
#define FLAT_ROOF                                                                             \
    "A roof of less than 10 degrees is flat: it is taken to have no ridge that the flue could " \
    "be near."
#define EITHER                                                                               \
    "Either 200 mm from the inside of the flue or recess, or 40 mm from the chimney's outer " \
    "face. "
#define EXCEPTED_TRIM                                                                         \
    "Floorboards, skirtings, rails, mantel-shelves and architraves are excepted: no height of " \
    "a mantel is set."
#define EDGE_SUPPORT "Timber that only supports the hearth's edge does not count."

#define CHAMBER                                                                              \
    "section not known", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST, &formula_fixed
#define IN_A_CHAMBER .when = {ANY_FIRE, IN_RECESS, BUILT(PREFABRICATED)}
#define BESIDE_HEARTH "walls adjacent to hearths, number not confirmed"

#define CLEAR_SIDE(side, ...)                                                               \
    {                                                                                       \
        MATTER_HEARTH_CLEAR_##side, "Diagram 26", INGLE_BASIS_CITED, INGLE_AT_LEAST,        \
            &formula_fixed, .numbers = {MILLIMETRES(150)},                                  \
            .when = {__VA_ARGS__, {QUANTITY_HEARTH_##side##_TO_WALL, IS, false}},           \
            .reading = "Or up to a suitable heat-resistant wall."                           \
    }
#define CLEAR_SIDES(...) CLEAR_SIDE(LEFT, __VA_ARGS__), CLEAR_SIDE(RIGHT, __VA_ARGS__)

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

    /* The flue of a closed appliance. */
    {MATTER_FLUE_DIAMETER, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_table_cell,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT}, .table = &stove_flues,
     .when = {STOVE_OR_INSERT, ORDINARY_FUEL, ROUND_FLUE}},
    {MATTER_FLUE_DIAMETER, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_table_cell,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT}, .table = &stove_flues,
     .when = {STOVE_OR_INSERT, SMOKE_EXEMPT, OUTPUT_OVER(20), ROUND_FLUE}},
    {MATTER_FLUE_DIAMETER, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(125)},
     .when = {STOVE_OR_INSERT, SMOKE_EXEMPT, OUTPUT_UP_TO(20), ROUND_FLUE},
     .reading = EXEMPTED},
    {MATTER_FLUE_SHORTER_SIDE, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_table_cell,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT}, .table = &stove_flue_sides,
     .when = {STOVE_OR_INSERT, ORDINARY_FUEL, OTHER_FLUE}},
    {MATTER_FLUE_SHORTER_SIDE, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_table_cell,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT}, .table = &stove_flue_sides,
     .when = {STOVE_OR_INSERT, SMOKE_EXEMPT, OUTPUT_OVER(20), OTHER_FLUE}},
    {MATTER_FLUE_SHORTER_SIDE, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)},
     .when = {STOVE_OR_INSERT, SMOKE_EXEMPT, OUTPUT_UP_TO(20), OTHER_FLUE,
              {QUANTITY_FLUE_BENDS, AT_MOST, 0}},
     .reading = EXEMPTED " In a straight flue."},
    {MATTER_FLUE_SHORTER_SIDE, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(125)},
     .when = {STOVE_OR_INSERT, SMOKE_EXEMPT, OUTPUT_UP_TO(20), OTHER_FLUE,
              {QUANTITY_FLUE_BENDS, MORE_THAN, 0}},
     .reading = EXEMPTED " In a flue with bends."},
    {MATTER_FLUE_AREA_LEAST, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_circle,
     .numbers = {MILLIMETRES(125)},
     .when = {STOVE_OR_INSERT, SMOKE_EXEMPT, OUTPUT_UP_TO(20), OTHER_FLUE},
     .reading = EXEMPTED " As large as a round flue of 125 mm."},
    {MATTER_FLUE_AREA_LEAST, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_circle,
     .numbers = {MILLIMETRES(150)},
     .when = {STOVE_OR_INSERT, ORDINARY_FUEL, OUTPUT_UP_TO(30), OTHER_FLUE},
     .reading = "As large as a round flue of 150 mm."},
    {MATTER_FLUE_AREA_LEAST, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_circle,
     .numbers = {MILLIMETRES(150)},
     .when = {STOVE_OR_INSERT, SMOKE_EXEMPT, OUTPUT_OVER(20), OUTPUT_UP_TO(30), OTHER_FLUE},
     .reading = "As large as a round flue of 150 mm."},
    {MATTER_FLUE_AREA_LEAST, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_circle,
     .numbers = {MILLIMETRES(175)},
     .when = {STOVE_OR_INSERT, OUTPUT_OVER(30), OUTPUT_UP_TO(50), OTHER_FLUE},
     .reading = "As large as a round flue of 175 mm."},
    {MATTER_FLUE_DIAMETER, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(125)},
     .when = {PELLET_STOVE, {QUANTITY_LISTING_SMALL_PELLET_FLUE, IS, false}, ROUND_FLUE}},
    {MATTER_FLUE_DIAMETER, "Table 2", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)},
     .when = {PELLET_STOVE, {QUANTITY_LISTING_SMALL_PELLET_FLUE, IS, true}, ROUND_FLUE},
     .reading = "Where the maker allows it and a calculation by EN 13384-1 shows it."},

    /* The flue of a gas fire. */
    GAS_FLUES(MASONRY, LOG_SET, ONE_SIDE),
    GAS_FLUES(NO_STOVE, INSERT, UP_THE_CHIMNEY),
    {MATTER_FLUE_DIAMETER, TABLE_5, &formula_fixed, .numbers = {MILLIMETRES(125)},
     .when = {NO_STOVE, GAS, GAS_FIRE(ROOM_HEATER), UP_THE_CHIMNEY, ROUND_FLUE},
     .reading = GAS_FIRES},
    {MATTER_FLUE_SHORTER_SIDE, TABLE_5, &formula_fixed, .numbers = {MILLIMETRES(125)},
     .when = {NO_STOVE, GAS, GAS_FIRE(ROOM_HEATER), UP_THE_CHIMNEY, OTHER_FLUE},
     .reading = GAS_FIRES},
    {MATTER_FLUE_AREA, "Table 5, number not confirmed; 2.7", INGLE_BASIS_FROM_MEMORY,
     INGLE_AT_LEAST, &formula_share, .inputs = {QUANTITY_OPENING_AREA}, .numbers = {PERCENT(15)},
     .when = {MASONRY, GAS, GAS_FIRE(LOG_SET), OVER_500_WIDE, ONE_SIDE}, .reading = GAS_FIRES},
    {MATTER_FLUE_AREA, "Table 5, number not confirmed; 2.7", INGLE_BASIS_FROM_MEMORY,
     INGLE_AT_LEAST, &formula_share, .inputs = {QUANTITY_OPENING_AREA}, .numbers = {PERCENT(15)},
     .when = {MASONRY, GAS, GAS_FIRE(LOG_SET), UP_TO_500_WIDE, OVER_550_HIGH, ONE_SIDE},
     .reading = GAS_FIRES},
    {MATTER_FLUE_AREA, "Table 5, number not confirmed; 2.7", INGLE_BASIS_FROM_MEMORY,
     INGLE_AT_LEAST, &formula_share, .inputs = {QUANTITY_OPENING_TOTAL_AREA},
     .numbers = {PERCENT(15)}, .when = {MASONRY, GAS, GAS_FIRE(LOG_SET), MORE_SIDES},
     .reading = GAS_FIRES},

    /* The flue's height and outlet. */
    {MATTER_FLUE_HEIGHT, "2.8, paragraph not confirmed", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(450)}, .when = {OPEN_FIRE},
     .reading = "Straight up from the top of the fireplace opening; cowls and guards do not "
                "count."},
    {MATTER_FLUE_HEIGHT, "2.8, paragraph not confirmed", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {CENTIMETRES(450)}, .when = {CLOSED},
     .reading = "Straight up from where the flue leaves the closed appliance; cowls and guards do "
                "not count."},
    {MATTER_FLUE_SLOPE, "paragraph not confirmed", INGLE_BASIS_FROM_MEMORY, INGLE_AT_MOST,
     &formula_fixed, .numbers = {DEGREES(45)}, .when = {ANY_FIRE}},
    {MATTER_FLUE_BENDS, "paragraph not confirmed", INGLE_BASIS_FROM_MEMORY, INGLE_AT_MOST,
     &formula_fixed, .numbers = {4}, .when = {ANY_FIRE}, .reading = "Of 45 degrees each."},
    {MATTER_OUTLET_ABOVE_RIDGE, "Diagram 17, A", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(600)}, .when = {WITH_OUTLET, ORDINARY_ROOF, PITCHED, NEAR_RIDGE}},
    {MATTER_OUTLET_FROM_ROOF, "Diagram 17, B", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(2300)},
     .when = {WITH_OUTLET, ORDINARY_ROOF, PITCHED, AWAY_FROM_RIDGE}},
    {MATTER_OUTLET_ABOVE_ROOF, "Diagram 17, B", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(1000)},
     .when = {WITH_OUTLET, ORDINARY_ROOF, PITCHED, AWAY_FROM_RIDGE},
     .role = ORDINARY, .exception = OUTLET},
    {MATTER_OUTLET_REACHES_RIDGE, "Diagram 17, B", INGLE_BASIS_FROM_MEMORY, INGLE_IS,
     &formula_observed, .numbers = {true},
     .when = {WITH_OUTLET, ORDINARY_ROOF, PITCHED, AWAY_FROM_RIDGE},
     .role = EXCEPTION, .exception = OUTLET,
     .reading = "Instead of the height above the roof."},
    {MATTER_OUTLET_FROM_ROOF, "Diagram 17, B", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(2300)}, .when = {WITH_OUTLET, ORDINARY_ROOF, FLAT},
     .reading = FLAT_ROOF},
    {MATTER_OUTLET_ABOVE_ROOF, "Diagram 17, B", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(1000)}, .when = {WITH_OUTLET, ORDINARY_ROOF, FLAT},
     .role = ORDINARY, .exception = OUTLET, .reading = FLAT_ROOF},
    {MATTER_OUTLET_REACHES_RIDGE, "Diagram 17, B", INGLE_BASIS_FROM_MEMORY, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {WITH_OUTLET, ORDINARY_ROOF, FLAT},
     .role = EXCEPTION, .exception = OUTLET, .reading = FLAT_ROOF},
    {MATTER_OUTLET_ABOVE_WINDOW, "Diagram 17, C", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(1000)},
     .when = {WITH_OUTLET, {QUANTITY_WINDOW_DISTANCE, AT_MOST, MILLIMETRES(2300)}},
     .reading = "Besides A or B, for what opens within 2300 mm, measured horizontally."},
    {MATTER_OUTLET_ABOVE_WINDOW, "Diagram 17, C", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(1000)},
     .when = {WITH_OUTLET, {QUANTITY_WINDOW_DISTANCE, MORE_THAN, MILLIMETRES(2300)},
              {QUANTITY_WINDOW_OUTLET_BELOW, IS, true}},
     .reading = "Besides A or B, for what the outlet is below, however far away."},
    {MATTER_OUTLET_ABOVE_NEIGHBOUR, "Diagram 17, D", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_within, .inputs = {QUANTITY_NEIGHBOUR_DISTANCE},
     .numbers = {MILLIMETRES(600), MILLIMETRES(2300)},
     .when = {WITH_OUTLET},
     .reading = "Besides A or B: above any part of the adjacent building within 2300 mm."},
    {MATTER_OUTLET_ABOVE_RIDGE, "Diagram 18", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(600)}, .when = {WITH_OUTLET, EASILY_IGNITED_ROOF, NEAR_RIDGE},
     .reading = "Known from a weak report: look it up before relying on it. That the flue is near "
                "the ridge is taken as within 600 mm of it, as in Diagram 17."},
    {MATTER_OUTLET_ABOVE_ROOF, "Diagram 18", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(1800)}, .when = {WITH_OUTLET, EASILY_IGNITED_ROOF},
     .reading = "Known from a weak report: look it up before relying on it."},
    {MATTER_OUTLET_FROM_ROOF, "Diagram 18", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(2300)}, .when = {WITH_OUTLET, EASILY_IGNITED_ROOF, AWAY_FROM_RIDGE},
     .reading = "Known from a weak report: look it up before relying on it."},

    /* The hearth. */
    {MATTER_HEARTH_FRONT, "Diagram 24", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(500)}, .when = {OPEN_FIRE, IN_RECESS},
     .reading = "Measured from the jambs, which stand in the plane of the opening."},
    {MATTER_HEARTH_SIDE, "Diagram 24", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {OPEN_FIRE, IN_RECESS}},
    {MATTER_HEARTH_FRONT, "Diagrams 24, 27", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(500)}, .when = {CLOSED, IN_RECESS},
     .reading = "Measured from the jambs. An appliance that needs no constructional hearth needs "
                "one of the same plan."},
    {MATTER_HEARTH_SIDE, "Diagrams 24, 27", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {CLOSED, IN_RECESS},
     .reading = "An appliance that needs no constructional hearth needs one of the same plan."},
    {MATTER_HEARTH_PLAN, "Diagram 24", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(840)}, .when = {NO_GAS, FREE_STANDING}},
    {MATTER_HEARTH_THICKNESS, "Diagrams 24 to 27, number not confirmed", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_fixed, .numbers = {MILLIMETRES(125)}, .when = {OPEN_FIRE},
     .reading = CONSTRUCTIONAL},
    {MATTER_HEARTH_THICKNESS, "Diagrams 24 to 27, number not confirmed", INGLE_BASIS_CITED,
     INGLE_AT_LEAST, &formula_fixed, .numbers = {MILLIMETRES(125)}, .when = {CLOSED, HOT_HEARTH},
     .reading = CONSTRUCTIONAL},
    {MATTER_HEARTH_THICKNESS, "Diagram 27", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(12)}, .when = {CLOSED, COOL_HEARTH},
     .reading = "Board or tile that cannot burn, under an appliance that keeps the hearth's top at "
                "100 °C or less."},
    {MATTER_HEARTH_TIMBER_BELOW, "Diagram 25", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(250)}, .when = {OPEN_FIRE}, .role = ORDINARY,
     .reading = EDGE_SUPPORT},
    {MATTER_HEARTH_TIMBER_AIR_SPACE, "Diagram 25", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {OPEN_FIRE}, .role = EXCEPTION},
    {MATTER_HEARTH_TIMBER_BELOW, "Diagram 25", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(250)}, .when = {CLOSED, HOT_HEARTH}, .role = ORDINARY,
     .reading = EDGE_SUPPORT},
    {MATTER_HEARTH_TIMBER_AIR_SPACE, "Diagram 25", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {CLOSED, HOT_HEARTH}, .role = EXCEPTION},
    {MATTER_HEARTH_CLEAR_FRONT, "Diagram 26", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {OPEN_FIRE}},
    {MATTER_HEARTH_CLEAR_FRONT, "Diagram 26", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(225)}, .when = {CLOSED, {QUANTITY_STOVE_DOORS_OPEN, IS, false}}},
    {MATTER_HEARTH_CLEAR_FRONT, "Diagram 26", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {CLOSED, {QUANTITY_STOVE_DOORS_OPEN, IS, true}},
     .reading = "For a closed appliance that may be used with its doors open."},
    CLEAR_SIDES(OPEN_FIRE),
    CLEAR_SIDES(CLOSED),
    {MATTER_HEARTH_CLEAR_BACK, "Diagram 26", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)},
     .when = {CLOSED, FREE_STANDING, {QUANTITY_HEARTH_BACK_TO_WALL, IS, false}}},
    {MATTER_HEARTH_EDGE_MARKED, "paragraph not confirmed", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {OPEN_FIRE}},
    {MATTER_HEARTH_EDGE_MARKED, "paragraph not confirmed", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {true}, .when = {CLOSED}},

    /* The recess and what is above it. */
    {MATTER_FIREBOX_WALL, "Diagram 28", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {OPEN_FIRE, BUILT(SOLID)},
     .reading = "Solid and non-combustible."},
    {MATTER_RECESS_SIDE, "Diagram 28", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {CLOSED, IN_RECESS, BUILT(SOLID)},
     .reading = "Solid and non-combustible."},
    {MATTER_RECESS_BACK, "Diagram 28", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {CLOSED, IN_RECESS, BUILT(SOLID)},
     .reading = "Solid and non-combustible."},
    {MATTER_RECESS_SIDE, "Diagram 28", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {ANY_FIRE, IN_RECESS, BUILT(BACK_TO_BACK)}},
    {MATTER_RECESS_BACK, "Diagram 28", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {ANY_FIRE, IN_RECESS, BUILT(BACK_TO_BACK)},
     .reading = "Where recesses stand back to back in one dwelling."},
    {MATTER_RECESS_SIDE, "Diagram 28", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {ANY_FIRE, IN_RECESS, BUILT(CAVITY)}},
    {MATTER_RECESS_BACK, "Diagram 28", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {ANY_FIRE, IN_RECESS, BUILT(CAVITY)},
     .reading = "Each leaf of the cavity wall."},
    {MATTER_RECESS_BASE, CHAMBER, .numbers = {MILLIMETRES(50)}, IN_A_CHAMBER},
    {MATTER_RECESS_SIDE, CHAMBER, .numbers = {MILLIMETRES(75)}, IN_A_CHAMBER},
    {MATTER_RECESS_BACK, CHAMBER, .numbers = {MILLIMETRES(100)}, IN_A_CHAMBER},
    {MATTER_RECESS_TOP, CHAMBER, .numbers = {MILLIMETRES(100)}, IN_A_CHAMBER,
     .reading = "Top, lintel and gather."},
    {MATTER_GATHER, "Diagrams 22, 23", INGLE_BASIS_FROM_MEMORY, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {OPEN_FIRE},
     .reading = "A prefabricated or corbelled gather, a canopy, or a chamber with one built in. No "
                "size of a throat or gather is known."},

    /* Walls beside the hearth. */
    {MATTER_ADJACENT_WALL_THICKNESS, BESIDE_HEARTH, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(200)}, .when = {SOLID_FUEL, ABUTTING, FIRE_WITHIN_50}},
    {MATTER_ADJACENT_WALL_THICKNESS, BESIDE_HEARTH, INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(75)},
     .when = {SOLID_FUEL, ABUTTING, FIRE_BEYOND_50, FIRE_WITHIN_300},
     .reading = "One report prints other numbers for this band, an apparent error."},
    {MATTER_ADJACENT_WALL_THICKNESS, BESIDE_HEARTH, INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(75)},
     .when = {SOLID_FUEL, NOT_ABUTTING, HEARTH_WITHIN_150}},
    {MATTER_ADJACENT_WALL_ABOVE_APPLIANCE, BESIDE_HEARTH, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(300)},
     .when = {SOLID_FUEL, ABUTTING, FIRE_WITHIN_300}},
    {MATTER_ADJACENT_WALL_ABOVE_HEARTH, BESIDE_HEARTH, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(1200)},
     .when = {SOLID_FUEL, ABUTTING, FIRE_WITHIN_300}},
    {MATTER_ADJACENT_WALL_ABOVE_HEARTH, BESIDE_HEARTH, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(1200)},
     .when = {SOLID_FUEL, NOT_ABUTTING, HEARTH_WITHIN_150}},

    /* What can burn. */
    {MATTER_SEPARATION_FROM_FLUE, "Diagram 21", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {ON_MASONRY_CHIMNEY},
     .role = ORDINARY, .exception = SEPARATION, .reading = EITHER EXCEPTED_TRIM},
    {MATTER_SEPARATION_FROM_CHIMNEY, "Diagram 21", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(40)}, .when = {ON_MASONRY_CHIMNEY},
     .role = EXCEPTION, .exception = SEPARATION, .reading = EITHER EXCEPTED_TRIM},
    {MATTER_SEPARATION_FROM_FIXINGS, "Diagram 21", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)}, .when = {ON_MASONRY_CHIMNEY}},

    /* Air. */
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_THROAT_AREA}, .numbers = {PERCENT(50)},
     .when = {OPEN_FIRE, WITH_THROAT, THROAT_IN_REACH}},
    {MATTER_ROOM_VENT_BY_WIDTH, "note to Table 1", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_table_cell, .inputs = {QUANTITY_OPENING_WIDTH}, .table = &vents_by_width,
     .when = {OPEN_FIRE, WITH_THROAT, THROAT_OUT_OF_REACH},
     .reading = "The defaults are read as standing in for a throat that nobody can measure. "
                "Widths between the four are not stated."},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_NET_AREA}, .numbers = {PERCENT(50)},
     .when = {OPEN_FIRE, WITHOUT_THROAT}},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_area_by_heat,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(5), SQUARE_MILLIMETRES(300), SQUARE_MILLIMETRES(850)},
     .when = {CLOSED, STABILISER, LEAKY}},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_area_by_heat,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(5), SQUARE_MILLIMETRES(850), SQUARE_MILLIMETRES(850)},
     .when = {CLOSED, STABILISER, AIRTIGHT}},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_area_by_heat,
     .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(5), 0, SQUARE_MILLIMETRES(550)}, .when = {CLOSED, NO_STABILISER, LEAKY},
     .reading = "The first 5 kW need no vent."},
    {MATTER_ROOM_VENT_AREA, "Table 1", INGLE_BASIS_FROM_MEMORY, INGLE_AT_LEAST,
     &formula_area_by_heat, .inputs = {QUANTITY_APPLIANCE_OUTPUT},
     .numbers = {KILOWATTS(5), SQUARE_MILLIMETRES(550), SQUARE_MILLIMETRES(550)},
     .when = {CLOSED, NO_STABILISER, AIRTIGHT}},
    {MATTER_ROOM_VENT_BY_MAKER, "2.2, 2.3", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_by_listing,
     .inputs = {QUANTITY_LISTING_VENT_AREA},
     .when = {SOLID_FUEL, {QUANTITY_LISTING_VENT_AREA, MORE_THAN, 0, IF_KNOWN}},
     .reading = "Asked for besides the table: of the two the larger counts."},
    {MATTER_ROOM_VENT_PLACE, "paragraph not confirmed", INGLE_BASIS_FROM_MEMORY, INGLE_IS_NOT,
     &formula_observed, .numbers = {true}, .when = {SOLID_FUEL}},
};

/* ---- common practice ------------------------------------------------------------------------ */

#define PRACTICE "no publication", INGLE_BASIS_COMMON_PRACTICE
#define ON_CEILING {QUANTITY_CO_ALARM_PLACE, IS, CHOICE_CO_ALARM_PLACE_CEILING}
#define ON_WALL {QUANTITY_CO_ALARM_PLACE, IS, CHOICE_CO_ALARM_PLACE_WALL}

#define NOT_CONFIRMED "Usually attributed to Approved Document J, clause not confirmed."

static const struct ingle_rule practice[] = {
    {MATTER_CHIMNEY_SLENDERNESS, PRACTICE, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_OUTLET_STACK_WIDTH}, .numbers = {RATIO(9, 2)}, .when = {MASONRY},
     .reading = "Usually attributed to Approved Document A, clause not confirmed; for masonry of "
                "more than 1500 kg in the cubic metre."},
    {MATTER_SEPARATION_FROM_FLUE_PIPE, PRACTICE, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_SEPARATION_PIPE_DIAMETER}, .numbers = {RATIO(3, 1)},
     .when = {STOVE, {QUANTITY_SEPARATION_PIPE_SHIELD, IS, false}},
     .reading = "Three outside diameters from a single-wall pipe. " NOT_CONFIRMED},
    {MATTER_PIPE_SHIELD_DISTANCE, PRACTICE, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_SEPARATION_PIPE_DIAMETER}, .numbers = {RATIO(3, 2)},
     .when = {STOVE, {QUANTITY_SEPARATION_PIPE_SHIELD, IS, true}}, .reading = NOT_CONFIRMED},
    {MATTER_PIPE_SHIELD_OVERLAP, PRACTICE, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_SEPARATION_PIPE_DIAMETER}, .numbers = {RATIO(3, 2)},
     .when = {STOVE, {QUANTITY_SEPARATION_PIPE_SHIELD, IS, true}}, .reading = NOT_CONFIRMED},
    {MATTER_PIPE_SHIELD_GAP, PRACTICE, INGLE_AT_LEAST, &formula_fixed, .numbers = {MILLIMETRES(12)},
     .when = {STOVE, {QUANTITY_SEPARATION_PIPE_SHIELD, IS, true}}, .reading = NOT_CONFIRMED},
    {MATTER_CO_ALARM_PRESENT, PRACTICE, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_CO_ALARM_PLACE_NONE},
     .reading = NOT_CONFIRMED},
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
    {.id = "common-practice-england", .title = "Common practice", .place = "England",
     .note = "Practice of the trade in England with no publication confirmed behind it: advice, "
             "not code.",
     .unit = UNIT_MILLIMETRE, .rules = practice, .rule_count = COUNT_OF(practice)},
};

const struct publication publication_england = {editions, COUNT_OF(editions)};
