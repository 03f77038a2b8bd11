/* SPDX-License-Identifier: MIT */
/*
 * Ontario Building Code 2012, Division B, 9.20 to 9.22.
 *
 * Numbers in millimetres and metres, as printed; the inches beside them are rounded and not used.
 */
#include "measure/amounts.h"
#include "standards/canada/canada_rows.h"
#include "standards/publications.h"

#define CLAY_LINING {QUANTITY_CHIMNEY_LINER, IS, CHOICE_CHIMNEY_LINER_CLAY}
#define STAINLESS_LINING {QUANTITY_CHIMNEY_LINER, IS, CHOICE_CHIMNEY_LINER_STAINLESS}
#define SOLID_FUEL {QUANTITY_APPLIANCE_FUEL, IS, CHOICE_APPLIANCE_FUEL_WOOD}
#define INTERIOR_CHIMNEY {QUANTITY_CHIMNEY_PLACE, IS, CHOICE_CHIMNEY_PLACE_INTERIOR}
#define EXTERIOR_CHIMNEY {QUANTITY_CHIMNEY_PLACE, IS, CHOICE_CHIMNEY_PLACE_EXTERIOR}
#define ABOVE_OPENING {QUANTITY_TRIM_SIDE, IS, CHOICE_TRIM_SIDE_ABOVE}
#define BESIDE_OPENING {QUANTITY_TRIM_SIDE, IS_NOT, CHOICE_TRIM_SIDE_ABOVE}
#define OWN_MASONRY_CHIMNEY {QUANTITY_CONNECTOR_INTO, IS, CHOICE_CONNECTOR_INTO_MASONRY_CHIMNEY}
#define IN_FIREPLACE_CHIMNEY \
    {QUANTITY_CONNECTOR_INTO, IS, CHOICE_CONNECTOR_INTO_FIREPLACE_CHIMNEY}
#define WITH_DUCT {QUANTITY_AIR_DUCT_STATE, IS, CHOICE_AIR_DUCT_STATE_CONNECTED}
#define SOLID_FUEL_FIREPLACE                                                                  \
    KIND(IS_NOT, STOVE), KIND(IS_NOT, PELLET_STOVE), KIND(IS_NOT, MASONRY_HEATER),            \
        KIND(IS_NOT, INSERT), SOLID_FUEL
/* What the section is about: taller chimneys and more heat are left out, once they are known. */
#define SCOPE_OF_9_21                                              \
    {QUANTITY_FLUE_HEIGHT, AT_MOST, METRES(12), OR_UNKNOWN},       \
        {QUANTITY_APPLIANCE_OUTPUT, AT_MOST, KILOWATTS(120), OR_UNKNOWN}
#define CHIMNEY_OF_9_21 MASONRY_CHIMNEY, SCOPE_OF_9_21
#define STOVES (KIND_BIT(STOVE) | KIND_BIT(PELLET_STOVE))
#define ON_SHARED_FLUE                                                                     \
    KINDS(STOVES | KIND_BIT(INSERT) | KIND_BIT(MASONRY_HEATER)), BUILT_OF_MASONRY,         \
        SCOPE_OF_9_21, SOLID_FUEL, YES(STOVE_OTHER_ON_FLUE)
#define SHARED_READING \
    "An appliance for solid fuel shares no flue with one for natural gas or propane."

/* A liner of stainless steel is for gas and oil, but for that of an insert or hearth stove. */
#define STAINLESS_ROW(...)                                                                       \
    {                                                                                            \
        MATTER_STAINLESS_LINER_FUEL, "9.21.3.6", INGLE_BASIS_READ, INGLE_IS, &formula_observed,  \
            .numbers = {CHOICE_APPLIANCE_FUEL_GAS},                                              \
            .when = {__VA_ARGS__, BUILT_OF_MASONRY, STAINLESS_LINING, SCOPE_OF_9_21},            \
            .reading = "For gas and oil only. The liner of an insert or hearth stove in an old " \
                       "fireplace is another matter."                                            \
    }

#define CLEANOUT_ROW(...)                                                                     \
    {                                                                                         \
        MATTER_CLEANOUT_PRESENT, "9.21.4.7", INGLE_BASIS_READ, INGLE_IS, &formula_observed,   \
            .numbers = {true}, .when = {__VA_ARGS__, SCOPE_OF_9_21},                          \
            .reading = "Near the flue's base. A flue that was built to serve a masonry "      \
                       "fireplace needs none."                                                \
    }

#define INSERT_ROWS(...)                                                                          \
    {MATTER_INSERT_SMOKE_CHAMBER, "9.22.10.2(2), (3)", INGLE_BASIS_READ, INGLE_AT_LEAST,          \
     &formula_fixed, .numbers = {MILLIMETRES(190)}, .when = {__VA_ARGS__},                        \
     .reading = "Solid masonry between the smoke chamber and what can burn, unless the insert "   \
                "is listed for less."},                                                           \
    {MATTER_INSERT_CONNECTION, "9.22.10.2", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,    \
     .numbers = {CHOICE_INSERT_CONNECTION_NONE}, .when = {__VA_ARGS__}}

/* ---- lintels: the smallest angle for brick, outside, in a wall of 100 mm --------------------- */

#define SPAN_READING \
    "The span is taken as the opening's width: the table does not say whether it is clear."
#define TENTH_MM(n) EXACT_QUOTIENT(MILLIMETRES(n), 10)

static const int64_t spans[] = {CENTIMETRES(120), CENTIMETRES(150), CENTIMETRES(180),
                                CENTIMETRES(210), CENTIMETRES(240), CENTIMETRES(270),
                                CENTIMETRES(300)};
static const int64_t longer_legs[] = {MILLIMETRES(89),  MILLIMETRES(89),  MILLIMETRES(102),
                                      MILLIMETRES(102), MILLIMETRES(127), MILLIMETRES(127),
                                      MILLIMETRES(152)};
static const int64_t shorter_legs[] = {MILLIMETRES(89), MILLIMETRES(89), MILLIMETRES(89),
                                       MILLIMETRES(89), MILLIMETRES(89), MILLIMETRES(89),
                                       MILLIMETRES(102)};
static const int64_t thicknesses[] = {TENTH_MM(64), TENTH_MM(79),    TENTH_MM(79),   TENTH_MM(79),
                                      TENTH_MM(79), MILLIMETRES(11), MILLIMETRES(11)};

#define BY_SPAN(cells_of)                                                              \
    {                                                                                  \
        .name = "Table 9.20.5.2.A", .rows = {spans, COUNT_OF(spans), 0, KEY_UP_TO},    \
        .cells = cells_of                                                              \
    }

static const struct ingle_table angle_longer_legs = BY_SPAN(longer_legs);
static const struct ingle_table angle_shorter_legs = BY_SPAN(shorter_legs);
static const struct ingle_table angle_thicknesses = BY_SPAN(thicknesses);

/* ---- the rows -------------------------------------------------------------------------------- */

static const struct ingle_rule ontario[] = {
    /* Flues and chimneys: 9.21. */
    {MATTER_CHIMNEY_WITHIN_SCOPE, "9.21.1.1(1)", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_within_scope, .inputs = {QUANTITY_FLUE_HEIGHT}, .numbers = {METRES(12)},
     .when = {MASONRY_CHIMNEY},
     .reading = "The section is for rectangular chimneys of masonry or concrete up to this height: "
                "of a taller one none of its rules is asked. The flue's height is taken for the "
                "chimney's, which is more."},
    {MATTER_OUTPUT_WITHIN_SCOPE, "9.21.1.1(1)", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_within_scope, .inputs = {QUANTITY_APPLIANCE_OUTPUT}, .numbers = {KILOWATTS(120)},
     .when = {KINDS(STOVES | KIND_BIT(INSERT) | KIND_BIT(MASONRY_HEATER)), BUILT_OF_MASONRY},
     .reading = "Of all appliances on the chimney together: with more none of the section's rules "
                "is asked. What is compared is the output of the one that was recorded."},
    ROUND_FLUE_ROWS,
    RECTANGULAR_FLUE_ROWS,
    {MATTER_FLUE_OVAL_SIDES, "9.21.2.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_LONGER_SIDE}, .numbers = {RATIO(2, 3)},
     .when = {CHIMNEY_OF_9_21, {QUANTITY_FLUE_SHAPE, IS, CHOICE_FLUE_SHAPE_OVAL}},
     .reading = "The width is taken as the lesser of an oval's two measures, the breadth as the "
                "greater."},
    {MATTER_FLUE_SLOPE, "9.21.2.3", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {DEGREES(45)}, .when = {CHIMNEY_OF_9_21}},
    {MATTER_SHARED_FLUE, "9.21.2.1(1)", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {MASONRY_FIREPLACE, SCOPE_OF_9_21}},
    {MATTER_CONNECTOR_OPEN_FIREPLACE, "9.21.2.1(1)", INGLE_BASIS_READ, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_CONNECTOR_INTO_OPEN_FIREPLACE_FLUE},
     .when = {KINDS(STOVES), SCOPE_OF_9_21},
     .reading = "A flue that serves a fireplace serves no other appliance."},
    {MATTER_FLUE_SHARED_WITH_GAS, "9.21.2.1(2)", INGLE_BASIS_READ, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_FLUE_SHARED_WITH_GAS}, .when = {ON_SHARED_FLUE},
     .reading = SHARED_READING},
    {MATTER_FLUE_SHARED_WITH_OIL, "9.21.2.1(3)", INGLE_BASIS_READ, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_FLUE_SHARED_WITH_OIL},
     .when = {ON_SHARED_FLUE, NO(FLUE_LISTED_WITH_OIL)},
     .reading = "With an oil appliance it shares one only where it is listed for that."},
    {MATTER_FLUE_LINED, "9.21.3.1", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_FLUE_LINING_NONE}, .when = {CHIMNEY_OF_9_21},
     .reading = "Of clay, concrete, firebrick or metal."},
    {MATTER_LINER_THICKNESS, "9.21.3.3", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {EXACT_QUOTIENT(MILLIMETRES(159), 10)}, .when = {CHIMNEY_OF_9_21, CLAY_LINING},
     .reading = "The liner has to stand 1100 °C as well, which no tape tells."},
    {MATTER_LINER_THICKNESS, "9.21.3.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {EXACT_QUOTIENT(MILLIMETRES(3), 10)}, .when = {CHIMNEY_OF_9_21, STAINLESS_LINING}},
    STAINLESS_ROW(MASONRY_FIREPLACE),
    STAINLESS_ROW(KINDS(STOVES), OWN_MASONRY_CHIMNEY),
    STAINLESS_ROW(KIND(IS, MASONRY_HEATER)),
    {MATTER_LINER_GAP, "9.21.3.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(10)}, .when = {CHIMNEY_OF_9_21}},
    {MATTER_LINER_GAP_OPEN, "9.21.3.8", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {CHIMNEY_OF_9_21}},
    {MATTER_LINER_START, "9.21.3.10", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)},
     .when = {KINDS(STOVES | KIND_BIT(MASONRY_HEATER)), BUILT_OF_MASONRY, SCOPE_OF_9_21},
     .reading = "Below the lowest connection of a flue pipe."},
    {MATTER_LINER_ABOVE_CAP, "9.21.3.10", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {CHIMNEY_OF_9_21}},
    {MATTER_LINER_ABOVE_CAP_MOST, "9.21.3.10", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {CHIMNEY_OF_9_21}},
    {MATTER_CHIMNEY_HEIGHT, "9.21.4.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(900)}, .when = {CHIMNEY_OF_9_21},
     .reading = "Of the flue's top above the highest point at which it meets the roof."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "9.21.4.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_within,
     .inputs = {QUANTITY_NEARBY_DISTANCE}, .numbers = {MILLIMETRES(600), METRES(3)},
     .when = {CHIMNEY_OF_9_21},
     .reading = "Exactly 3 m is within 3 m; any roof surface or structure counts."},
    {MATTER_CHIMNEY_BRACING, "9.21.4.5", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {CHIMNEY_OF_9_21,
              {QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, MORE_THAN, MILLIMETRES(3600)}},
     .reading = "Of a stack that stands more than 3.6 m above the roof or the wall beside it."},
    {MATTER_CHIMNEY_BRACING, "9.21.4.5", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {CHIMNEY_OF_9_21,
              {QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, AT_MOST, MILLIMETRES(3600)},
              {QUANTITY_OUTLET_STACK_WIDTH, LESS_THAN, MILLIMETRES(400)}},
     .reading = "Of a stack with a side of less than 400 mm in plan."},
    {MATTER_CAP_DRIP, "9.21.4.6(2)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(25)}, .when = {CHIMNEY_OF_9_21}},
    CLEANOUT_ROW(KINDS(STOVES), BUILT_OF_MASONRY, OWN_MASONRY_CHIMNEY),
    CLEANOUT_ROW(KIND(IS, MASONRY_HEATER), BUILT_OF_MASONRY),
    {MATTER_CHIMNEY_WALL, "9.21.4.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(70)}, .when = {CHIMNEY_OF_9_21}},
    {MATTER_FLUE_SPACING, "9.21.4.9", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(70)},
     .when = {CHIMNEY_OF_9_21, SEVERAL_FLUES, NO(CHIMNEY_FIREBRICK_WYTHE)},
     .reading = "Of masonry or concrete."},
    {MATTER_FLUE_SPACING, "9.21.4.9", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(90)},
     .when = {CHIMNEY_OF_9_21, SEVERAL_FLUES, YES(CHIMNEY_FIREBRICK_WYTHE)},
     .reading = "Of firebrick between liners of firebrick."},
    {MATTER_SEPARATION_FROM_TIMBER, "9.21.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {CHIMNEY_OF_9_21, INTERIOR_CHIMNEY},
     .reading = "Of framing that can burn: flooring and finish may be nearer."},
    {MATTER_CHIMNEY_CLEARANCE, "9.21.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(12)}, .when = {CHIMNEY_OF_9_21, EXTERIOR_CHIMNEY},
     .reading = "Of framing, and of flooring and finish as well. Exterior is taken as wholly "
                "outside the exterior walls."},
    {MATTER_SEPARATION_OF_FINISH, "9.21.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(12)}, .when = {CHIMNEY_OF_9_21}},
    {MATTER_SEPARATION_FROM_CLEANOUT, "9.21.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)},
     .when = {CHIMNEY_OF_9_21, {QUANTITY_SEPARATION_HAS_CLEANOUT, IS, true}}},
    {MATTER_JOIST_BEARING, "9.21.5.3", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(290)},
     .when = {CHIMNEY_OF_9_21, {QUANTITY_SEPARATION_JOISTS_BEAR, IS, true}}},

    /* Fireplaces: 9.22, and their lintels: 9.20. */
    {MATTER_EXTERIOR_AIR, "9.22.1.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_AIR_DUCT_STATE_CONNECTED}, .when = {SOLID_FUEL_FIREPLACE},
     .reading = "Every fireplace for solid fuel needs an outdoor air duct, one that came from a "
                "factory included."},
    {MATTER_AIR_DUCT_AREA, "9.22.1.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_circle,
     .numbers = {MILLIMETRES(100)}, .when = {SOLID_FUEL_FIREPLACE, WITH_DUCT},
     .reading = "A round duct of 100 mm, or any other of its area."},
    {MATTER_AIR_INTAKE_PLACE, "9.22.1.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_AIR_INTAKE_PLACE_OUTDOORS}, .when = {SOLID_FUEL_FIREPLACE, WITH_DUCT}},
    {MATTER_AIR_DUCT_NONCOMBUSTIBLE, "9.22.1.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {SOLID_FUEL_FIREPLACE, WITH_DUCT}},
    {MATTER_AIR_OUTLET_CLOSABLE, "9.22.1.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {SOLID_FUEL_FIREPLACE, WITH_DUCT},
     .reading = "By a tight damper near the duct's inner end, which lies as near the opening as it "
                "can."},
    {MATTER_AIR_DAMPER_FROM_ROOM, "9.22.1.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {SOLID_FUEL_FIREPLACE, WITH_DUCT}},
    {MATTER_AIR_DAMPER_SHOWS_POSITION, "9.22.1.4", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {SOLID_FUEL_FIREPLACE, WITH_DUCT}},
    {MATTER_FIREBOX_LINED, "9.22.2.1", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_FIREBOX_LINING_NONE}, .when = {MASONRY_FIREPLACE},
     .reading = "Of firebrick or of steel; of another lining the article says nothing."},
    {MATTER_FIREBOX_LINING, "9.22.2.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, FIREBRICK},
     .reading = "Of the sides and the back. A steel liner needs no firebrick."},
    {MATTER_FIREBRICK_FLOOR, "9.22.2.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(25)}, .when = {MASONRY_FIREPLACE, FIREBRICK}},
    FIREBOX_WALL_ROWS("9.22.3.1"),
    {MATTER_FIREBOX_DEPTH, "9.22.4.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)}, .when = {MASONRY_FIREPLACE},
     .reading = "Measured from the back of the fire chamber to the plane of the opening."},
    {MATTER_HEARTH_FROM_FACING, "9.22.5.1(1), (2)", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_raised_above_begun_steps, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {MILLIMETRES(150), MILLIMETRES(400), MILLIMETRES(450), MILLIMETRES(300),
                 MILLIMETRES(50), MILLIMETRES(25)},
     .when = {MASONRY_FIREPLACE}, .follows = FOLLOWS(HEARTH_STEPS, ROUND_UP),
     .reading = "Measured from the facing. A part of a 50 mm step counts as a whole one: the "
                "article does not say."},
    {MATTER_HEARTH_FROM_FACING, "9.22.5.1(1), (2)", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_raised_above_whole_steps, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {MILLIMETRES(150), MILLIMETRES(400), MILLIMETRES(450), MILLIMETRES(300),
                 MILLIMETRES(50), MILLIMETRES(25)},
     .when = {MASONRY_FIREPLACE}, .follows = FOLLOWS(HEARTH_STEPS, WHOLE_STEPS),
     .reading = "Measured from the facing. Only whole steps of 50 mm count: the article does not "
                "say."},
    {MATTER_HEARTH_SIDE, "9.22.5.1(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {MASONRY_FIREPLACE},
     .reading = "It does not grow with the height of the fire chamber."},
    {MATTER_HEARTH_THICKNESS, "9.22.5.2(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {MASONRY_FIREPLACE, SLAB},
     .reading = "The thickness of the reinforced concrete slab at its supports."},
    {MATTER_HEARTH_EDGE_THICKNESS, "9.22.5.2(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, SLAB}},
    {MATTER_HEARTH_OPENING_ABOVE_FLOOR, "9.22.5.2(2)", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(200)}, .when = {MASONRY_FIREPLACE, ON_FLOOR},
     .reading = "Above a floor that can burn and on which the hearth rests. How the hearth is then "
                "made is for CSA A405."},
    {MATTER_DAMPER_COVERS_THROAT, "9.22.6.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SMOKE_CHAMBER_SLOPE, "9.22.7.1", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {DEGREES(45)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SMOKE_CHAMBER_WALL, "9.22.7.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(190)}, .when = {MASONRY_FIREPLACE},
     .reading = "Sides, front and back, back parts that are exposed to the outside left out."},
    {MATTER_SMOKE_CHAMBER_EXPOSED_BACK, "9.22.7.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(140)},
     .when = {MASONRY_FIREPLACE, YES(SMOKE_CHAMBER_BACK_EXPOSED)}},
    {MATTER_LISTING_PLATE, "9.22.8.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_LISTING_LABEL_LISTED}, .when = {FACTORY_BUILT},
     .reading = "To CAN/ULC-S610: the listing decides every measure."},
    {MATTER_FACTORY_HEARTH_FRONT, "9.22.8.1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_listing, .inputs = {QUANTITY_LISTING_HEARTH_FRONT}, .when = {FACTORY_BUILT}},
    {MATTER_FACTORY_HEARTH_SIDE, "9.22.8.1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_listing, .inputs = {QUANTITY_LISTING_HEARTH_SIDE}, .when = {FACTORY_BUILT}},
    {MATTER_TRIM_DISTANCE, "9.22.9.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_above_step,
     .inputs = {QUANTITY_TRIM_PROJECTION},
     .numbers = {MILLIMETRES(38), MILLIMETRES(150), MILLIMETRES(300)},
     .when = {MASONRY_FIREPLACE, YES(TRIM_COMBUSTIBLE), ABOVE_OPENING},
     .reading = "A piece that projects exactly 38 mm is one that does not project more; a piece "
                "exactly at the distance is not within it."},
    {MATTER_TRIM_DISTANCE, "9.22.9.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)},
     .when = {MASONRY_FIREPLACE, YES(TRIM_COMBUSTIBLE), BESIDE_OPENING},
     .reading = "A piece exactly at the distance is not within it."},
    {MATTER_METAL_THROUGH_FACE, "9.22.9.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, YES(SEPARATION_METAL_THROUGH_FACE)}},
    {MATTER_FRAMING_CLEARANCE, "9.22.9.3(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {MASONRY_FIREPLACE, NO(FIREPLACE_IN_EXTERIOR_WALL)}},
    {MATTER_FRAMING_CLEARANCE, "9.22.9.3(1)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, YES(FIREPLACE_IN_EXTERIOR_WALL)}},
    {MATTER_SEPARATION_FROM_SMOKE_CHAMBER, "9.22.9.3(2)", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_IN_EXTERIOR_WALL)}},
    {MATTER_SEPARATION_FROM_SMOKE_CHAMBER, "9.22.9.3(2)", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(25)},
     .when = {MASONRY_FIREPLACE, YES(FIREPLACE_IN_EXTERIOR_WALL)}},
    {MATTER_WARM_AIR_DISTANCE, "9.22.9.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(300)},
     .when = {MASONRY_FIREPLACE, YES(WARM_AIR_OUTLETS),
              {QUANTITY_WARM_AIR_PROJECTION, AT_LEAST, MILLIMETRES(38)}},
     .reading = "What projects exactly 38 mm counts as projecting here."},
    {MATTER_WARM_AIR_DISTANCE, "9.22.9.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)},
     .when = {MASONRY_FIREPLACE, YES(WARM_AIR_OUTLETS),
              {QUANTITY_WARM_AIR_PROJECTION, LESS_THAN, MILLIMETRES(38)}}},
    INSERT_ROWS(INSERT, NO(INSERT_IN_FACTORY_BUILT)),
    INSERT_ROWS(STOVE, IN_FIREPLACE_CHIMNEY),
    {MATTER_LINTEL_BEARING, "9.20.5.2(4)", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(150)}, .when = {MASONRY_FIREPLACE, YES(LINTEL_STEEL)}},
    {MATTER_LINTEL_LONGER_LEG, "Table 9.20.5.2.A", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_table_cell, .inputs = {QUANTITY_OPENING_WIDTH}, .table = &angle_longer_legs,
     .when = {MASONRY_FIREPLACE, YES(LINTEL_STEEL_ANGLE)}, .reading = SPAN_READING},
    {MATTER_LINTEL_SHORTER_LEG, "Table 9.20.5.2.A", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_table_cell, .inputs = {QUANTITY_OPENING_WIDTH}, .table = &angle_shorter_legs,
     .when = {MASONRY_FIREPLACE, YES(LINTEL_STEEL_ANGLE)}, .reading = SPAN_READING},
    {MATTER_LINTEL_ANGLE_THICKNESS, "Table 9.20.5.2.A", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_table_cell, .inputs = {QUANTITY_OPENING_WIDTH}, .table = &angle_thicknesses,
     .when = {MASONRY_FIREPLACE, YES(LINTEL_STEEL_ANGLE)}, .reading = SPAN_READING},
};

static const struct ingle_standard editions[] = {
    {.id = "obc-2012", .title = "Ontario Building Code", .place = "Ontario, Canada",
     .note = "Ontario Building Code 2012, O. Reg. 332/12, Division B, 9.20 to 9.22: numbers as "
             "read, in millimetres and metres. It was replaced on 31 December 2024 by a code "
             "that was not read: findings are by the code of 2012. Section 9.21 is for chimneys "
             "up to 12 m high and a combined rated output up to 120 kW.",
     .unit = UNIT_MILLIMETRE, .edition = 2012, .rules = ontario, .rule_count = COUNT_OF(ontario)},
};

const struct publication publication_ontario = {editions, COUNT_OF(editions)};
