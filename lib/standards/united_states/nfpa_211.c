/* SPDX-License-Identifier: MIT */
/*
 * NFPA 211, chimneys, fireplaces, vents and solid fuel-burning appliances.
 *
 * Its text was not read: every row is known from other sources that cite it. Percentages of 66 and
 * 33 are read as two thirds and one third, which is what their printed results say.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
/* For solid fuel: a gas insert goes by its listing. */
#define INSERT                                                      \
    {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_INSERT}, \
        {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_INSERT}
#define ON_FIREPLACE {QUANTITY_CONNECTOR_INTO, IS, CHOICE_CONNECTOR_INTO_FIREPLACE_CHIMNEY}
#define EXPOSED {QUANTITY_INSERT_CHIMNEY_EXPOSED, IS, true}
#define INTERIOR {QUANTITY_INSERT_CHIMNEY_EXPOSED, IS, false}
#define UNLISTED {QUANTITY_LISTING_LABEL, IS_NOT, CHOICE_LISTING_LABEL_LISTED}
#define WALL {QUANTITY_WALL_SURFACE, IS_NOT, CHOICE_WALL_SURFACE_CEILING}
#define CEILING {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_CEILING}
#define SHIELD(kind) {QUANTITY_WALL_PROTECTION, IS, CHOICE_WALL_PROTECTION_##kind}
#define NO_SHIELD(kind) {QUANTITY_WALL_PROTECTION, IS_NOT, CHOICE_WALL_PROTECTION_##kind}
#define HELD_OFF \
    NO_SHIELD(NONE), NO_SHIELD(MASONRY), NO_SHIELD(BOARD_OVER_BATTS), NO_SHIELD(LISTED_ASSEMBLY)
#define FLOOR_IS_NOT(kind) {QUANTITY_FLOOR_PROTECTION, IS_NOT, CHOICE_FLOOR_PROTECTION_##kind}
#define LEGS(test, inches) {QUANTITY_STOVE_LEG_HEIGHT, test, INCHES(inches)}
#define THROUGH_WALL STOVE, {QUANTITY_CONNECTOR_PASSES, IS, CHOICE_CONNECTOR_PASSES_WALL}
#define PASS(kind) {QUANTITY_PASS_THROUGH_ASSEMBLY, IS, CHOICE_PASS_ASSEMBLY_##kind}

/* ---- flues of appliances on a fireplace's chimney ------------------------------------------- */

#define FLUE_ROW(for_matter, for_relation, times, ...)                                   \
    {                                                                                    \
        for_matter, "12.4.5.1", INGLE_BASIS_CITED, for_relation, &formula_share,         \
            .inputs = {QUANTITY_COLLAR_AREA}, .numbers = {RATIO(times, 1)},              \
            .when = {__VA_ARGS__},                                                       \
            .reading = "Clear area of the flue or liner against the inside of the collar; " \
                       "the limit itself passes."                                        \
    }
#define FLUE_ROWS(...)                                                                    \
    FLUE_ROW(MATTER_INSERT_FLUE_AREA, INGLE_AT_LEAST, 1, __VA_ARGS__),                    \
    FLUE_ROW(MATTER_INSERT_FLUE_AREA_MOST, INGLE_AT_MOST, 3, __VA_ARGS__, INTERIOR),      \
    FLUE_ROW(MATTER_INSERT_FLUE_AREA_MOST, INGLE_AT_MOST, 2, __VA_ARGS__, EXPOSED)

/* From the appliance up into the liner, hidden in the fireplace. */
#define CONNECTOR_ROW(its_matter, ...)                                                  \
    {                                                                                   \
        its_matter, "12.4.5.1", INGLE_BASIS_CITED, INGLE_IS, &formula_observed,         \
            .numbers = {true}, .when = {__VA_ARGS__}                                    \
    }
#define CONNECTOR_ROWS(...)                                  \
    CONNECTOR_ROW(MATTER_INSERT_REACHES_LINER, __VA_ARGS__), \
    CONNECTOR_ROW(MATTER_INSERT_CONNECTOR, __VA_ARGS__)

/* ---- reduced clearances --------------------------------------------------------------------- */

#define PERCENTAGES \
    "66 and 33 per cent are two thirds and one third. The clearance is measured to the surface " \
    "itself, not to the shield."
#define REDUCED_BY(its_formula, its_option, its_reading, kind, keep, of, least, ...)           \
    {                                                                                          \
        MATTER_STOVE_CLEARANCE_REDUCED, "Table 12.6.2.1", INGLE_BASIS_CITED, INGLE_AT_LEAST,   \
            &its_formula, .inputs = {QUANTITY_WALL_UNPROTECTED},                               \
            .numbers = {RATIO(keep, of), INCHES(least)},                                       \
            .when = {STOVE, SHIELD(kind), __VA_ARGS__},                                        \
            .follows = FOLLOWS(SHIELD_MINIMUM, its_option), .reading = its_reading             \
    }
#define REDUCED_ROW(...)                                                                       \
    REDUCED_BY(formula_reduced_share, AS_BARE,                                                 \
               PERCENTAGES " No more is asked for than without the shield.", __VA_ARGS__),     \
    REDUCED_BY(formula_share_or_least, STANDS,                                                 \
               PERCENTAGES " The table's least distance stands, whatever is needed without.",  \
               __VA_ARGS__)
#define NOT_REDUCED_ROW(kind)                                                                \
    {                                                                                        \
        MATTER_STOVE_CLEARANCE_REDUCED, "Table 12.6.2.1", INGLE_BASIS_CITED, INGLE_AT_LEAST, \
            &formula_share, .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {RATIO(1, 1)}, \
            .when = {STOVE, SHIELD(kind), CEILING},                                          \
            .reading = "The table has none for a ceiling with this protection: the "         \
                       "clearance stays what it is without."                                 \
    }
#define VENTED_ROWS(kind)                     \
    REDUCED_ROW(kind, 1, 3, 12, WALL),        \
    REDUCED_ROW(kind, 1, 2, 18, CEILING)

/* ---- pass-throughs -------------------------------------------------------------------------- */

#define PASS_SECTION "wall pass-throughs (section and edition not seen)"
#define PASS_ROW(for_matter, kind, limit)                                         \
    {                                                                             \
        for_matter, PASS_SECTION, INGLE_BASIS_CITED, INGLE_AT_LEAST,              \
            &formula_fixed, .numbers = {limit}, .when = {THROUGH_WALL, PASS(kind)} \
    }
#define PASS_WIDER(for_matter, kind, input, inches, words)                        \
    {                                                                             \
        for_matter, PASS_SECTION, INGLE_BASIS_CITED, INGLE_AT_LEAST,              \
            &formula_input_plus, .inputs = {input}, .numbers = {INCHES(inches)},  \
            .when = {THROUGH_WALL, PASS(kind)}, .reading = words                  \
    }

#define FLOOR_SECTION "floor protection (section and edition not seen)"

static const struct ingle_rule rules[] = {
    FLUE_ROWS(INSERT),
    FLUE_ROWS(STOVE, ON_FIREPLACE),
    CONNECTOR_ROWS(INSERT),
    CONNECTOR_ROWS(STOVE, ON_FIREPLACE),

    {MATTER_FLOOR_PROTECTION, FLOOR_SECTION, INGLE_BASIS_CITED, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_FLOOR_PROTECTION_SOLID_MASONRY_AND_STEEL},
     .when = {STOVE, UNLISTED, LEGS(AT_LEAST, 6), FLOOR_IS_NOT(LISTED_PROTECTOR),
              FLOOR_IS_NOT(NONCOMBUSTIBLE_FLOOR), FLOOR_IS_NOT(HOLLOW_MASONRY_AND_STEEL)},
     .reading = "Exactly 6 in is put with the higher legs, as one text does; another says 2 to 6 "
                "in and higher than 6 in. What is enough under lower legs is taken as enough "
                "here."},
    {MATTER_FLOOR_PROTECTION, FLOOR_SECTION, INGLE_BASIS_CITED, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_FLOOR_PROTECTION_HOLLOW_MASONRY_AND_STEEL},
     .when = {STOVE, UNLISTED, LEGS(AT_LEAST, 2), LEGS(LESS_THAN, 6),
              FLOOR_IS_NOT(LISTED_PROTECTOR), FLOOR_IS_NOT(NONCOMBUSTIBLE_FLOOR)}},
    {MATTER_FLOOR_PROTECTION, FLOOR_SECTION, INGLE_BASIS_CITED, INGLE_IS, &formula_observed,
     .numbers = {CHOICE_FLOOR_PROTECTION_NONCOMBUSTIBLE_FLOOR},
     .when = {STOVE, UNLISTED, LEGS(LESS_THAN, 2), FLOOR_IS_NOT(LISTED_PROTECTOR)}},

    REDUCED_ROW(MASONRY, 2, 3, 24, WALL),
    NOT_REDUCED_ROW(MASONRY),
    REDUCED_ROW(BOARD_OVER_BATTS, 1, 2, 18, WALL),
    REDUCED_ROW(BOARD_OVER_BATTS, 2, 3, 24, CEILING),
    VENTED_ROWS(STEEL_OVER_BATTS),
    REDUCED_ROW(MASONRY_VENTED, 1, 3, 12, WALL),
    NOT_REDUCED_ROW(MASONRY_VENTED),
    VENTED_ROWS(STEEL_VENTED),
    VENTED_ROWS(BOARD_VENTED),
    VENTED_ROWS(DOUBLE_STEEL_VENTED),
    VENTED_ROWS(BATTS_BETWEEN_STEEL),
    {MATTER_STOVE_CLEARANCE_REDUCED, "Table 12.6.2.1", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_share, .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {RATIO(1, 1)},
     .when = {STOVE, SHIELD(THIN_BOARD_VENTED)},
     .reading = "The table names no board so thin, so nothing is taken off for it."},
    {MATTER_STOVE_CLEARANCE, "Table 12.6.2.1", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {RATIO(1, 1)}, .when = {STOVE, SHIELD(NONE)},
     .reading = "The table takes its percentages off the clearance that the surface needs without "
                "protection: of a bare one nothing is taken off."},
    {MATTER_SHIELD_SPACERS, "notes to the reduction table (not seen)", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {false},
     .when = {STOVE, HELD_OFF}},
    {MATTER_SHIELD_SPACER_PLACE, "notes to the reduction table (not seen)",
     INGLE_BASIS_FROM_MEMORY, INGLE_IS, &formula_observed, .numbers = {false},
     .when = {STOVE, HELD_OFF}},

    {MATTER_CONNECTOR_WALL_SHIELDED, "connectors (section and edition not seen)",
     INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(9)},
     .when = {STOVE, {QUANTITY_CONNECTOR_SHIELD, IS, CHOICE_CONNECTOR_SHIELD_PROTECTED}},
     .follows = FOLLOWS(PIPE_REDUCTION, HALF),
     .reading = "Half of 18 in is taken off. NFPA 211 is cited for two thirds, down to 6 in; "
                "whether that holds for a pipe is disputed: between 6 in and 9 in, ask the "
                "authority."},
    {MATTER_CONNECTOR_WALL_SHIELDED, "connectors (section and edition not seen)",
     INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(6)},
     .when = {STOVE, {QUANTITY_CONNECTOR_SHIELD, IS, CHOICE_CONNECTOR_SHIELD_PROTECTED}},
     .follows = FOLLOWS(PIPE_REDUCTION, TWO_THIRDS),
     .reading = "Two thirds of 18 in are taken off, as is cited; whether that holds for a pipe is "
                "disputed."},
    {MATTER_CONNECTOR_CEILING_SHIELDED, "connectors (section and edition not seen)",
     INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed, .numbers = {INCHES(9)},
     .when = {STOVE, {QUANTITY_CONNECTOR_SHIELD, IS, CHOICE_CONNECTOR_SHIELD_PROTECTED}}},
    {MATTER_CONNECTOR_HIDDEN, "connectors (section and edition not seen)", INGLE_BASIS_CITED,
     INGLE_IS_NOT, &formula_observed, .numbers = {CHOICE_CONNECTOR_PASSES_HIDDEN},
     .when = {STOVE}},

    {MATTER_PASS_ASSEMBLY, PASS_SECTION, INGLE_BASIS_CITED, INGLE_IS_NOT, &formula_observed,
     .numbers = {CHOICE_PASS_ASSEMBLY_OTHER}, .when = {THROUGH_WALL}},
    PASS_ROW(MATTER_PASS_CLEARANCE, BRICK, INCHES(12)),
    PASS_ROW(MATTER_PASS_LINER_THICKNESS, BRICK, INCHES_AND(0, 5, 8)),
    PASS_ROW(MATTER_PASS_CLEARANCE, CHIMNEY_LENGTH, INCHES(9)),
    PASS_ROW(MATTER_PASS_INSULATION, CHIMNEY_LENGTH, INCHES(1)),
    PASS_ROW(MATTER_PASS_CLEARANCE, VENTED_THIMBLE, INCHES(6)),
    PASS_WIDER(MATTER_PASS_DIAMETER, VENTED_THIMBLE, QUANTITY_CONNECTOR_DIAMETER, 4,
               "Two channels of 1 in about the pipe: a 10 in thimble for a 6 in pipe."),
    PASS_WIDER(MATTER_PASS_OPENING, VENTED_THIMBLE, QUANTITY_PASS_THROUGH_DIAMETER, 12,
               "6 in of glass fibre on each side of the thimble."),
    {MATTER_CONNECTOR_GAUGE, PASS_SECTION, INGLE_BASIS_CITED, INGLE_AT_MOST, &formula_fixed,
     .numbers = {24}, .when = {THROUGH_WALL, PASS(VENTED_THIMBLE)}},
    PASS_ROW(MATTER_PASS_CLEARANCE, WIDE_CHIMNEY_LENGTH, INCHES(2)),
    PASS_WIDER(MATTER_PASS_DIAMETER, WIDE_CHIMNEY_LENGTH, QUANTITY_CONNECTOR_DIAMETER, 2,
               "1 in of air on each side of the connector: 8 in for a 6 in pipe."),
    PASS_ROW(MATTER_PASS_INSULATION, WIDE_CHIMNEY_LENGTH, INCHES(1)),
    PASS_ROW(MATTER_PASS_LENGTH, WIDE_CHIMNEY_LENGTH, INCHES(12)),
};

static const struct ingle_standard editions[] = {
    {.id = "nfpa-211-2010", .title = "NFPA 211", .place = "United States",
     .note = "NFPA 211 of 2010, chimneys, fireplaces, vents and solid fuel-burning appliances: its "
             "text was not read. Every number is known from sources that cite it, some without "
             "section or edition.",
     .unit = UNIT_INCH, .edition = 2010, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_nfpa_211 = {editions, COUNT_OF(editions)};
