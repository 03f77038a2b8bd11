/* SPDX-License-Identifier: MIT */
/*
 * International Residential Code, chapter 10: fireplaces, chimneys, exterior air, masonry heaters.
 *
 * Numbers as printed, in inches, square inches and square feet: the metric values beside them in
 * the code are rounded, and not always alike, so they are not used. To add an edition, add it to
 * `editions` below; where a row changes, end the old one with `.until` and give the new one
 * `.since`.
 *
 * The opening's area is read as width times height of the clear finished opening at the face, which
 * the code does not define.
 */
#include "measure/amounts.h"
#include "standards/united_states/clearance_tables.h"
#include "standards/united_states/chapter_conditions.h"
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

#define FOR_SOLID_FUEL                                                                       \
    "Asked where no gas logs or gas insert stand in the fireplace: for these a damper that " \
    "is fixed or taken out may be right."
#define NO_GAS_FIRE NO_GAS_LOGS, NO_GAS_INSERT

#define MANUAL_FIRST                                                                        \
    "The chimney's own manual comes first; where it says nothing, 30 degrees and 4 elbows " \
    "are the most."

static const struct ingle_rule rules[] = {
    /* Firebox and throat. */
    {MATTER_FIREBOX_DEPTH, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(20)}, .when = {MASONRY_FIREPLACE}, .role = ORDINARY,
     .reading = "Measured at hearth level, from the plane of the front opening to the back wall."},
    {MATTER_THROAT_HEIGHT, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {MASONRY_FIREPLACE}, .role = ORDINARY},
    {MATTER_THROAT_DEPTH, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)}, .when = {MASONRY_FIREPLACE}, .role = ORDINARY},
    {MATTER_PASSAGE_AREA, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_NET_AREA}, .numbers = {RATIO(1, 1)}, .when = {MASONRY_FIREPLACE},
     .role = ORDINARY,
     .reading = "Throat, open damper and smoke chamber are each compared with the flue's net "
                "area."},
    {MATTER_RUMFORD_PASSAGE, "R1001.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_NET_AREA}, .numbers = {RATIO(1, 1)},
     .when = {MASONRY_FIREPLACE, RUMFORD}, .follows = FOLLOWS(RUMFORD_PASSAGES, STAY),
     .reading = "The exception takes the place of what is asked of depth and throat: damper and "
                "smoke chamber stay."},
    {MATTER_RUMFORD_DEPTH, "R1001.6 exception", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_share_or_least, .inputs = {QUANTITY_OPENING_WIDTH},
     .numbers = {RATIO(1, 3), INCHES(12)}, .when = {MASONRY_FIREPLACE, RUMFORD},
     .role = EXCEPTION},
    {MATTER_RUMFORD_THROAT_HEIGHT, "R1001.6 exception", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(12)}, .when = {MASONRY_FIREPLACE, RUMFORD},
     .role = EXCEPTION},
    {MATTER_RUMFORD_THROAT_AREA, "R1001.6 exception", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_share, .inputs = {QUANTITY_OPENING_AREA}, .numbers = {RATIO(1, 20)},
     .when = {MASONRY_FIREPLACE, RUMFORD}, .role = EXCEPTION},

    /* Lintel and smoke chamber. */
    {MATTER_LINTEL_BEARING, "R1001.7", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_LINTEL_MATERIAL, "R1001.7", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_FIREPLACE}},
    {MATTER_THROAT_ABOVE_LINTEL, "R1001.7", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SMOKE_CHAMBER_HEIGHT, "R1001.8.1", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_OPENING_WIDTH}, .numbers = {RATIO(1, 1)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SMOKE_CHAMBER_SLOPE, "R1001.8.1", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_by_smoke_chamber_walls, .inputs = {QUANTITY_SMOKE_CHAMBER_WALLS},
     .numbers = {DEGREES(45), DEGREES(30)}, .when = {MASONRY_FIREPLACE}},

    /* Hearth and hearth extension. */
    {MATTER_HEARTH_THICKNESS, "R1001.9.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_SUPPORT, "R1001.9", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_FORM, "R1001.9", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_EXTENSION_THICKNESS, "R1001.9.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_firebox_raise, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {INCHES(8), INCHES(2), INCHES_AND(0, 3, 8)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_FRONT, "R1001.10", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_by_opening_area,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {SQUARE_FEET(6), INCHES(16), INCHES(20)},
     .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_SIDE, "R1001.10", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_by_opening_area,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {SQUARE_FEET(6), INCHES(8), INCHES(12)},
     .when = {MASONRY_FIREPLACE}},

    /* Combustible trim. */
    {MATTER_TRIM_ABUTTING, "R1001.11 exception 3", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(12)},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_LISTED_FOR_CONTACT), ABUTTING, COMBUSTIBLE},
     .until = 2021},
    {MATTER_TRIM_ABUTTING, "R1001.11 exception 3", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_opening_area, .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {SQUARE_FEET(6), INCHES(8), INCHES(12)},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_LISTED_FOR_CONTACT), ABUTTING, COMBUSTIBLE},
     .since = 2024},
    {MATTER_TRIM_DISTANCE, "R1001.11 exception 4", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(6)}, .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE}},
    {MATTER_TRIM_PROJECTION, "R1001.11 exception 4", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_projection_by_distance, .inputs = {QUANTITY_TRIM_DISTANCE},
     .numbers = {INCHES(6), INCHES(12), RATIO(1, 8)},
     .when = {MASONRY_FIREPLACE, ON_FACE, COMBUSTIBLE},
     .reading = "At exactly 6 in and at exactly 12 in from the opening the projection is limited; "
                "further away this exception sets no limit."},

    /* Clearance of the masonry. */
    {MATTER_FIREPLACE_CLEARANCE, "R1001.11", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(2)},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_LISTED_FOR_CONTACT), NO(FIREPLACE_IN_MASONRY_WALL)}},
    {MATTER_FIREPLACE_CLEARANCE_BACK, "R1001.11", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(4)},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_LISTED_FOR_CONTACT), NO(FIREPLACE_IN_MASONRY_WALL)}},
    {MATTER_FIREPLACE_SPACE_FILL, "R1001.11", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_SPACE_FILL_EMPTY},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_LISTED_FOR_CONTACT), NO(FIREPLACE_IN_MASONRY_WALL)},
     .until = 2021},
    {MATTER_FIREPLACE_SPACE_FILL, "R1001.11", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_SPACE_FILL_COMBUSTIBLE},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_LISTED_FOR_CONTACT), NO(FIREPLACE_IN_MASONRY_WALL)},
     .since = 2024},
    {MATTER_FIREPLACE_WALL_CONTACT, "R1001.11 exception 2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(12)},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_LISTED_FOR_CONTACT),
              YES(FIREPLACE_IN_MASONRY_WALL)}},
    {MATTER_ACCESSORIES, "R1001.13", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_FIREPLACE, YES(ACCESSORIES_PRESENT)}, .since = 2021},

    /* Walls and footing. */
    {MATTER_FIREBOX_WALL, "R1001.5", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_with_or_without,
     .inputs = {QUANTITY_FIREBOX_LINING}, .numbers = {INCHES(8), INCHES(10)},
     .when = {MASONRY_FIREPLACE}},
    {MATTER_FIREBOX_LINING, "R1001.5", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(2)}, .when = {MASONRY_FIREPLACE, FIREBRICK}},
    {MATTER_FIREBOX_JOINT, "R1001.5", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {INCHES_AND(0, 1, 4)}, .when = {MASONRY_FIREPLACE, FIREBRICK}},
    {MATTER_STEEL_UNIT_LINING, "R1001.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 1, 4)}, .when = {STEEL_UNIT, UNLISTED}},
    {MATTER_STEEL_UNIT_WALL, "R1001.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {STEEL_UNIT, UNLISTED}},
    {MATTER_STEEL_UNIT_MASONRY, "R1001.5.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)}, .when = {STEEL_UNIT, UNLISTED}},
    {MATTER_STEEL_UNIT_AIR, "R1001.5.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {STEEL_UNIT, UNLISTED}},
    {MATTER_DAMPER_PRESENT, "R1001.7.1", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_DAMPER_STATE_REMOVED}, .when = {MASONRY_FIREPLACE, NO_GAS_FIRE},
     .reading = FOR_SOLID_FUEL},
    {MATTER_DAMPER_METAL, "R1001.7.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_FIREPLACE, NO_GAS_FIRE, A_DAMPER},
     .reading = FOR_SOLID_FUEL},
    {MATTER_DAMPER_CONTROL, "R1001.7.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_FIREPLACE, NO_GAS_FIRE, A_DAMPER},
     .reading = FOR_SOLID_FUEL},
    {MATTER_DAMPER_OPERABLE, "R1001.7.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_DAMPER_STATE_WORKING},
     .when = {MASONRY_FIREPLACE, NO_GAS_FIRE, A_DAMPER}, .reading = FOR_SOLID_FUEL},
    {MATTER_DAMPER_HEIGHT, "R1001.7.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {MASONRY_FIREPLACE, A_DAMPER}},
    {MATTER_SMOKE_CHAMBER_WALL, "R1001.8", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_with_or_without, .inputs = {QUANTITY_SMOKE_CHAMBER_LINING},
     .numbers = {INCHES(6), INCHES(8)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_SMOKE_CHAMBER_LINING, "R1001.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(2)},
     .when = {MASONRY_FIREPLACE,
              {QUANTITY_SMOKE_CHAMBER_LINING, IS, CHOICE_SMOKE_CHAMBER_LINING_FIREBRICK}}},
    {MATTER_SMOKE_CHAMBER_CLAY_LINING, "R1001.8", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES_AND(0, 5, 8)},
     .when = {MASONRY_FIREPLACE,
              {QUANTITY_SMOKE_CHAMBER_LINING, IS, CHOICE_SMOKE_CHAMBER_LINING_CLAY}}},
    {MATTER_SMOKE_CHAMBER_PARGING, "R1001.8", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_FIREPLACE}},
    {MATTER_FOOTING_THICKNESS, "R1001.2, R1003.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(12)}, .when = {MASONRY_CHIMNEY}},
    {MATTER_FOOTING_PROJECTION, "R1001.2, R1003.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(6)}, .when = {MASONRY_CHIMNEY}},
    {MATTER_FOOTING_BELOW_FROST, "R1001.2, R1003.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_share, .inputs = {QUANTITY_FOOTING_FROST_DEPTH}, .numbers = {RATIO(1, 1)},
     .when = {MASONRY_CHIMNEY, {QUANTITY_FOOTING_FROST_DEPTH, MORE_THAN, 0}}},
    {MATTER_FOOTING_BELOW_GRADE, "R1001.2, R1003.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(12)},
     .when = {MASONRY_CHIMNEY, {QUANTITY_FOOTING_FROST_DEPTH, AT_MOST, 0}}},
    /* Of a masonry fireplace under a factory-built chimney. */
    {MATTER_FOOTING_THICKNESS, "R1001.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(12)}, .when = {MASONRY_FIREPLACE, OF_FACTORY_PARTS}},
    {MATTER_FOOTING_PROJECTION, "R1001.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = {MASONRY_FIREPLACE, OF_FACTORY_PARTS}},
    {MATTER_FOOTING_BELOW_FROST, "R1001.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FOOTING_FROST_DEPTH}, .numbers = {RATIO(1, 1)},
     .when = {MASONRY_FIREPLACE, OF_FACTORY_PARTS,
              {QUANTITY_FOOTING_FROST_DEPTH, MORE_THAN, 0}}},
    {MATTER_FOOTING_BELOW_GRADE, "R1001.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(12)},
     .when = {MASONRY_FIREPLACE, OF_FACTORY_PARTS, {QUANTITY_FOOTING_FROST_DEPTH, AT_MOST, 0}}},

    {MATTER_CHIMNEY_CORBEL, "R1003.5", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_CHIMNEY_CORBELED_WALL}, .numbers = {RATIO(1, 2)},
     .when = {MASONRY_CHIMNEY, CORBELED, NO(CHIMNEY_CORBEL_SECOND_STOREY)}},
    {MATTER_CHIMNEY_CORBEL_STOREY, "R1003.5", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_CHIMNEY_CORBELED_WALL}, .numbers = {RATIO(1, 1)},
     .when = {MASONRY_CHIMNEY, CORBELED, YES(CHIMNEY_CORBEL_SECOND_STOREY)}},
    {MATTER_CHIMNEY_CORBEL_COURSE, "R1003.5", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_lesser_share,
     .inputs = {QUANTITY_CHIMNEY_UNIT_HEIGHT, QUANTITY_CHIMNEY_UNIT_BED_DEPTH},
     .numbers = {RATIO(1, 2), RATIO(1, 3)}, .when = {MASONRY_CHIMNEY, CORBELED}},
    {MATTER_CHIMNEY_CORBEL_WALL, "R1003.5", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(12)},
     .when = {MASONRY_CHIMNEY, {QUANTITY_CHIMNEY_CORBEL, IS, CHOICE_CHIMNEY_CORBEL_ONE_SIDE}}},
    {MATTER_CHIMNEY_OFFSET, "R1003.7", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_CHIMNEY_WALL_CENTRE}, .numbers = {RATIO(1, 1)},
     .when = {MASONRY_CHIMNEY, CLAY_LINER, YES(CHIMNEY_OFFSET), YES(CHIMNEY_ONE_WYTHE)}},
    {MATTER_CHIMNEY_SIZE_CHANGE, "R1003.6", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = {MASONRY_CHIMNEY, YES(CHIMNEY_CHANGES_SIZE)}},

    /* The chimney above the roof. */
    {MATTER_CHIMNEY_HEIGHT, "R1003.9", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {FEET(3)}, .when = {MASONRY_CHIMNEY},
     .reading = "The top is the flue's outlet, not that of a rain cap."},
    {MATTER_CHIMNEY_HEIGHT_NEARBY, "R1003.9", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_within,
     .inputs = {QUANTITY_NEARBY_DISTANCE}, .numbers = {FEET(2), FEET(10)},
     .when = {MASONRY_CHIMNEY},
     .reading = "The distance is taken horizontally. The top is the flue's outlet, not that of a "
                "rain cap."},
    {MATTER_CHIMNEY_CAP, "R1003.9.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_CHIMNEY_CAP_COMPLETE}, .when = {MASONRY_CHIMNEY}},
    {MATTER_SPARK_ARRESTOR_AREA, "R1003.9.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_NET_AREA}, .numbers = {RATIO(4, 1)},
     .when = {MASONRY_CHIMNEY, YES(SPARK_ARRESTOR_PRESENT)}},
    {MATTER_SPARK_ARRESTOR_MESH_MOST, "R1003.9.2", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_fixed, .numbers = {INCHES_AND(0, 1, 2)},
     .when = {MASONRY_CHIMNEY, YES(SPARK_ARRESTOR_PRESENT)}},
    {MATTER_SPARK_ARRESTOR_MESH_LEAST, "R1003.9.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES_AND(0, 3, 8)},
     .when = {MASONRY_CHIMNEY, YES(SPARK_ARRESTOR_PRESENT)}},
    {MATTER_SPARK_ARRESTOR_WIRE, "R1003.9.2", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_SPARK_ARRESTOR_WIRE_LIGHTER},
     .when = {MASONRY_CHIMNEY, YES(SPARK_ARRESTOR_PRESENT)}},
    {MATTER_RAIN_CAP_AREA, "R1003.9.3", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_FLUE_NET_AREA}, .numbers = {RATIO(4, 1)},
     .when = {MASONRY_CHIMNEY, YES(RAIN_CAP_PRESENT)}},

    /* Walls, linings, cleanout. */
    {MATTER_CHIMNEY_WALL_NOMINAL, "R1003.10", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)}, .when = {MASONRY_CHIMNEY}},
    {MATTER_CHIMNEY_WALL_SOLID, "R1003.10", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_CHIMNEY}},
    {MATTER_FLUE_LINED, "R1003.11", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_FLUE_LINING_NONE}, .when = {MASONRY_CHIMNEY, NO_PARTS_MISSING}},
    {MATTER_FLUE_LINED, "R1003.11", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_FLUE_LINING_MISSING}, .when = {MASONRY_CHIMNEY, PARTS_MISSING},
     .reading = "Where parts of the lining are missing the chimney is not lined."},
    {MATTER_LINER_SPEC, "R1003.11, R1003.11.1", INGLE_BASIS_READ, INGLE_IS_NOT,
     &formula_observed, .numbers = {CHOICE_CHIMNEY_LINER_SPEC_NONE},
     .when = {MASONRY_CHIMNEY, UNNAMED_LINER},
     .reading = "Clay liners, listed lining systems and listed factory-built units for use within "
                "masonry are named. Any other lining has to be approved for 1,800 °F."},
    {MATTER_LINER_START, "R1003.12", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(8)}, .when = {NO_FIREPLACE, BUILT_OF_MASONRY, CLAY_LINER}},
    {MATTER_LINER_FROM_CHAMBER, "R1003.12", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_FIREPLACE, BUILT_OF_MASONRY, CLAY_LINER}},
    {MATTER_LINER_TOP, "R1003.12", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_CHIMNEY, CLAY_LINER}},
    {MATTER_LINER_GAP_MOST, "R1003.12", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_share,
     .inputs = {QUANTITY_FLUE_LINER_THICKNESS}, .numbers = {RATIO(1, 1)},
     .when = {MASONRY_CHIMNEY, CLAY_LINER}, .reading = "Be it left as air or insulated."},
    {MATTER_LINER_SPACE, "R1003.12.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {MASONRY_CHIMNEY, LINED}},
    {MATTER_PELLET_FLUE, "R1003.11.4", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_CHIMNEY_PELLET_FLUE_OTHER}, .when = {PELLET_STOVE, BUILT_OF_MASONRY},
     .since = 2018, .until = 2018},
    {MATTER_FLUE_SLOPE, "R1003.12", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {DEGREES(30)}, .when = {MASONRY_CHIMNEY, CLAY_LINER}},
    {MATTER_FLUE_SPACING, "R1003.13", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)},
     .when = {MASONRY_CHIMNEY, {QUANTITY_CHIMNEY_FLUES, IS, CHOICE_CHIMNEY_FLUES_SEPARATE}}},
    {MATTER_LINER_STAGGER, "R1003.13", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)},
     .when = {MASONRY_CHIMNEY, {QUANTITY_CHIMNEY_FLUES, IS, CHOICE_CHIMNEY_FLUES_TOUCHING}}},
    {MATTER_CLEANOUT_BASE, "R1003.17", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = {NO_FIREPLACE, BUILT_OF_MASONRY}},
    {MATTER_CLEANOUT_INLET, "R1003.17", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = {NO_FIREPLACE, BUILT_OF_MASONRY}},
    {MATTER_CLEANOUT_HEIGHT, "R1003.17", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(6)}, .when = {NO_FIREPLACE, BUILT_OF_MASONRY}},
    {MATTER_CLEANOUT_COVER, "R1003.17", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {NO_FIREPLACE, BUILT_OF_MASONRY}},

    /* Clearance of the chimney. */
    {MATTER_CHIMNEY_CLEARANCE, "R1003.18", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_with_or_without, .inputs = {QUANTITY_CHIMNEY_PLACE},
     .numbers = {INCHES(1), INCHES(2)},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_LISTED_FOR_CONTACT), NO(CHIMNEY_IN_MASONRY_WALL)}},
    {MATTER_CHIMNEY_SPACE_FILL, "R1003.18", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_SPACE_FILL_EMPTY},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_LISTED_FOR_CONTACT), NO(CHIMNEY_IN_MASONRY_WALL)}},
    {MATTER_CHIMNEY_WALL_CONTACT, "R1003.18 exception 2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(12)},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_LISTED_FOR_CONTACT), YES(CHIMNEY_IN_MASONRY_WALL)},
     .until = 2021},
    {MATTER_CHIMNEY_WALL_CONTACT, "R1003.18 exception 2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(8)},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_LISTED_FOR_CONTACT), YES(CHIMNEY_IN_MASONRY_WALL)},
     .since = 2024},
    {MATTER_CHIMNEY_TRIM_ABUTTING, "R1003.18 exception 3", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(12)},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_LISTED_FOR_CONTACT), YES(CHIMNEY_TRIM_ABUTS)},
     .until = 2012},
    {MATTER_CHIMNEY_TRIM_ABUTTING, "R1003.18 exception 3", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(8)},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_LISTED_FOR_CONTACT), YES(CHIMNEY_TRIM_ABUTS)},
     .since = 2015, .until = 2021},
    {MATTER_CHIMNEY_TRIM_ABUTTING, "R1003.18 exception 3", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(8)},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_LISTED_FOR_CONTACT), YES(CHIMNEY_TRIM_ABUTS)},
     .since = 2024, .reading = "Of any combustible material that abuts the chimney."},
    {MATTER_CHIMNEY_CORNER_OVERLAP, "R1003.18 exception 3", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_fixed, .numbers = {INCHES(1)},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_LISTED_FOR_CONTACT), YES(CHIMNEY_TRIM_ABUTS)},
     .until = 2012},

    /* Cricket. */
    {MATTER_CRICKET, "R1003.20", INGLE_BASIS_READ, INGLE_IS, &formula_observed, .numbers = {true},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_MEETS_RIDGE),
              {QUANTITY_CHIMNEY_WIDTH, MORE_THAN, INCHES(30)}}},
    {MATTER_CRICKET_OTHER, "R903.2.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {OF_FACTORY_PARTS, NO(CHIMNEY_MEETS_RIDGE),
              {QUANTITY_CHIMNEY_WIDTH, MORE_THAN, INCHES(30)}},
     .reading = "The width is that across the slope of the roof. It is asked for here of chimneys "
                "that are not of masonry."},
    {MATTER_CRICKET_HEIGHT, "Table R1003.20", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_rise_by_slope, .inputs = {QUANTITY_CHIMNEY_WIDTH, QUANTITY_ROOF_SLOPE},
     .numbers = {RATIO(2, 1)},
     .when = {MASONRY_CHIMNEY, NO(CHIMNEY_MEETS_RIDGE),
              {QUANTITY_CHIMNEY_WIDTH, MORE_THAN, INCHES(30)}, YES(CRICKET_PRESENT)},
     .reading = "Printed for slopes of 12, 8, 6, 4 and 3 in 12, as a half, a third, a quarter, a "
                "sixth and an eighth of the width. For any other slope the height is derived: all "
                "the printed rows are the width times the slope, divided by 2."},

    /* Factory-built fireplaces. */
    {MATTER_LISTING_PLATE, "R1004.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_LISTING_LABEL_LISTED}, .when = {FACTORY_BUILT}},
    {MATTER_FACTORY_HEARTH_FRONT, "R1004.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_by_listing,
     .inputs = {QUANTITY_LISTING_HEARTH_FRONT}, .when = {FACTORY_BUILT, LISTED_UNIT}},
    {MATTER_FACTORY_HEARTH_SIDE, "R1004.2", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_by_listing,
     .inputs = {QUANTITY_LISTING_HEARTH_SIDE}, .when = {FACTORY_BUILT, LISTED_UNIT}},
    {MATTER_FACTORY_HEARTH_SEEN, "R1004.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {FACTORY_BUILT}},
    /* Factory-built chimneys, whatever stands on them. */
    {MATTER_FACTORY_CHIMNEY_OFFSET, "R1005.7", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {DEGREES(30)}, .when = {OF_FACTORY_PARTS}, .until = 2021},
    {MATTER_FACTORY_CHIMNEY_OFFSET, "R1005.7, R1005.9", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_by_listing, .inputs = {QUANTITY_LISTING_CHIMNEY_OFFSET},
     .when = {OF_FACTORY_PARTS, NO(FACTORY_MANUAL_SILENT)}, .since = 2024,
     .reading = MANUAL_FIRST},
    {MATTER_FACTORY_CHIMNEY_OFFSET, "R1005.7, R1005.9", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_fixed, .numbers = {DEGREES(30)},
     .when = {OF_FACTORY_PARTS, YES(FACTORY_MANUAL_SILENT)}, .since = 2024,
     .reading = MANUAL_FIRST},
    {MATTER_FACTORY_CHIMNEY_ELBOWS, "R1005.7", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {4}, .when = {OF_FACTORY_PARTS}, .until = 2021},
    {MATTER_FACTORY_CHIMNEY_ELBOWS, "R1005.7, R1005.9", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_by_listing, .inputs = {QUANTITY_LISTING_CHIMNEY_ELBOWS},
     .when = {OF_FACTORY_PARTS, NO(FACTORY_MANUAL_SILENT)}, .since = 2024,
     .reading = MANUAL_FIRST},
    {MATTER_FACTORY_CHIMNEY_ELBOWS, "R1005.7, R1005.9", INGLE_BASIS_READ, INGLE_AT_MOST,
     &formula_fixed, .numbers = {4}, .when = {OF_FACTORY_PARTS, YES(FACTORY_MANUAL_SILENT)},
     .since = 2024, .reading = MANUAL_FIRST},
    {MATTER_INSULATION_SHIELD_HEIGHT, "R1005.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(2)}, .when = {OF_FACTORY_PARTS, YES(FACTORY_THROUGH_INSULATION)},
     .since = 2018},
    {MATTER_INSULATION_SHIELD_STEEL, "R1005.8", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES_AND(0, 187, 10000)},
     .when = {OF_FACTORY_PARTS, YES(FACTORY_THROUGH_INSULATION)}, .since = 2018},

    /* Masonry heaters. */
    {MATTER_HEATER_CLEARANCE, "R1002.5", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(36)}, .when = {HEATER, UNLISTED}, .role = ORDINARY},
    {MATTER_THICK_HEATER_CLEARANCE, "R1002.5 exception 1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(4)}, .when = {HEATER, UNLISTED}, .role = EXCEPTION},
    {MATTER_THICK_HEATER_WALL, "R1002.5 exception 1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(8)}, .when = {HEATER, UNLISTED}, .role = EXCEPTION},
    {MATTER_THICK_HEATER_CHANNEL, "R1002.5 exception 1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(5)}, .when = {HEATER, UNLISTED}, .role = EXCEPTION},
    {MATTER_THICK_HEATER_CEILING, "R1002.5 exception 1", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {INCHES(8)},
     .when = {HEATER, UNLISTED, YES(HEATER_CEILING_COMBUSTIBLE)}, .role = EXCEPTION},
    {MATTER_HEATER_CLEARANCE, "R1002.5 exception 2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_by_listing, .inputs = {QUANTITY_LISTING_HEATER_CLEARANCE},
     .when = {HEATER, LISTED_UNIT}, .reading = "Listed to UL 1482, or from 2015 to EN 15250."},
    {MATTER_HEATER_FLOOR, "R1002.5", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {INCHES(4)}, .when = {HEATER}},

    /* Exterior air. */
    {MATTER_EXTERIOR_AIR, "R1006.1", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_AIR_DUCT_STATE_CONNECTED},
     .when = {AN_OPEN_FIREPLACE, NO(AIR_ROOM_PRESSURIZED)}},
    {MATTER_AIR_AREA, "R1006.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {SQUARE_INCHES(6)},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_LISTED_FOR_CONTACT), SUPPLIED}},
    {MATTER_AIR_AREA, "R1006.4", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {SQUARE_INCHES(6)},
     .when = {UNLISTED, AN_OPEN_FIREPLACE, NO_MASONRY_FIREPLACE, SUPPLIED}},
    {MATTER_AIR_AREA_MOST, "R1006.4", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {SQUARE_INCHES(55)},
     .when = {MASONRY_FIREPLACE, NO(FIREPLACE_LISTED_FOR_CONTACT), SUPPLIED}},
    {MATTER_AIR_AREA_MOST, "R1006.4", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {SQUARE_INCHES(55)},
     .when = {UNLISTED, AN_OPEN_FIREPLACE, NO_MASONRY_FIREPLACE, SUPPLIED}},
    {MATTER_AIR_INTAKE_PLACE, "R1006.2", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_AIR_INTAKE_PLACE_INDOORS}, .when = {AN_OPEN_FIREPLACE, SUPPLIED}},
    {MATTER_AIR_INTAKE_HEIGHT, "R1006.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {AN_OPEN_FIREPLACE, SUPPLIED}, .until = 2012},
    {MATTER_AIR_INTAKE_HEIGHT, "R1006.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {AN_OPEN_FIREPLACE, NO_FACTORY_BUILT, SUPPLIED}, .since = 2015},
    {MATTER_AIR_INTAKE_HEIGHT, "R1006.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {UNLISTED, FACTORY_BUILT, SUPPLIED}, .since = 2015},
    {MATTER_AIR_INTAKE_SCREEN, "R1006.2", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {INCHES_AND(0, 1, 4)}, .when = {AN_OPEN_FIREPLACE, SUPPLIED},
     .reading = "The mesh that is named is read as the widest allowed."},
    {MATTER_AIR_DUCT_CLEARANCE, "R1006.3, R1006.1.2", INGLE_BASIS_READ, INGLE_AT_LEAST,
     &formula_within, .inputs = {QUANTITY_AIR_DUCT_CLEARANCE_AT}, .numbers = {INCHES(1), FEET(5)},
     .when = {AN_OPEN_FIREPLACE, SUPPLIED, NO(AIR_DUCT_LISTED)}},
    {MATTER_AIR_OUTLET_PLACE, "R1006.5", INGLE_BASIS_READ, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_AIR_OUTLET_PLACE_ELSEWHERE}, .when = {AN_OPEN_FIREPLACE, SUPPLIED},
     .since = 2015},
    {MATTER_AIR_OUTLET_DISTANCE, "R1006.5", INGLE_BASIS_READ, INGLE_AT_MOST, &formula_fixed,
     .numbers = {INCHES(24)},
     .when = {AN_OPEN_FIREPLACE, SUPPLIED,
              {QUANTITY_AIR_OUTLET_PLACE, IS, CHOICE_AIR_OUTLET_PLACE_HEARTH_LEVEL}},
     .since = 2015},
    {MATTER_AIR_OUTLET_CLOSABLE, "R1006.5", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {AN_OPEN_FIREPLACE, SUPPLIED}, .since = 2015},
    {MATTER_AIR_OUTLET_EMBERS, "R1006.5", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .when = {AN_OPEN_FIREPLACE, SUPPLIED}, .since = 2015},

    /* Flue. */
    {MATTER_FLUE_AREA, "R1003.15.1", INGLE_BASIS_READ, INGLE_AT_LEAST, &formula_flue_share,
     .inputs = {QUANTITY_OPENING_AREA},
     .numbers = {RATIO(2, 1), RATIO(1, 12), RATIO(1, 10), RATIO(1, 10), RATIO(1, 8)},
     .when = {MASONRY_FIREPLACE},
     .reading = "The aspect ratio of a named liner is taken from its nominal outside size, also "
                "where its inside was measured; that of any other flue from its inside."},

    /* The flue's condition (read in the edition of 2015 alone), and doors. */
    {MATTER_FLUE_LINING, "M1801.3.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_FLUE_LINING_SOUND}, .since = 2015, .until = 2015,
     .reading = "No width of a crack or gap is allowed."},
    {MATTER_FLUE_OBSTRUCTED, "M1801.3.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {false}, .since = 2015, .until = 2015},
    {MATTER_FLUE_DEPOSITS, "M1801.3.2", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_CREOSOTE_KIND_NONE}, .since = 2015, .until = 2015},
    {MATTER_GLASS_DOORS_LISTED, "R1004.5", INGLE_BASIS_READ, INGLE_IS, &formula_observed,
     .numbers = {true},
     .when = {{QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE},
              {QUANTITY_GLASS_DOORS_KIND, IS, CHOICE_GLASS_DOORS_KIND_GASKETED}},
     .since = 2015},

    /* Gas in fireplaces. */
#include "standards/united_states/irc_gas.def"

    /* Stoves. */
#include "standards/united_states/irc_mechanical.def"
};

#define ROUND_TABLE "Table R1003.14(1)"
#define RECTANGULAR_TABLE "Table R1003.14(2)"

static const struct liner liners[] = {
#include "standards/united_states/liners.def"
};

#define EDITION(year, more)                                                                     \
    {                                                                                           \
        .id = "irc-" #year, .title = "International Residential Code", .place = "United States", \
        .note = "International Residential Code " #year ", chapter 10, fireplaces and chimneys: " \
                "numbers as printed in inches." more,                                           \
        .unit = UNIT_INCH, .edition = year, .rules = rules, .rule_count = COUNT_OF(rules),       \
        .liners = liners, .liner_count = COUNT_OF(liners)                                       \
    }

static const struct ingle_standard editions[] = {
    EDITION(2012, " It was read in its California adoption of 2013."),
    EDITION(2015, ""),
    EDITION(2018, ""),
    EDITION(2021, ""),
    EDITION(2024, ""),
};

const struct publication publication_irc = {editions, COUNT_OF(editions)};
