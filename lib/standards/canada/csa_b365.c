/* SPDX-License-Identifier: MIT */
/*
 * CSA B365: stoves in Canada. Table 4 is of the 1991 edition; the edition of the rest is not
 * stated.
 */
#include "measure/amounts.h"
#include "standards/publications.h"

#define STOVE {QUANTITY_APPLIANCE_KIND, IS, CHOICE_APPLIANCE_KIND_STOVE}
#define WALL {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_WALL}
#define CEILING {QUANTITY_WALL_SURFACE, IS, CHOICE_WALL_SURFACE_CEILING}
#define SHIELDED {QUANTITY_WALL_SHIELD_FACE, IS_NOT, CHOICE_WALL_SHIELD_FACE_NONE}
#define WITH_SHEET_METAL                                                              \
    SHIELDED, {QUANTITY_WALL_SHIELD_FACE, IS_NOT, CHOICE_WALL_SHIELD_FACE_CERAMIC_TILE}, \
        {QUANTITY_WALL_SHIELD_FACE, IS_NOT, CHOICE_WALL_SHIELD_FACE_BRICK}

/* What is left of the clearance that the surface needs without a shield: 100 % less the printed. */
#define LEFT(face, percent, where)                                                             \
    {                                                                                          \
        MATTER_STOVE_CLEARANCE_REDUCED, "Table 4", INGLE_BASIS_CITED, INGLE_AT_LEAST,          \
            &formula_share, .inputs = {QUANTITY_WALL_UNPROTECTED},                             \
            .numbers = {PERCENT(percent)},                                                     \
            .when = {STOVE,                                                                    \
                     {QUANTITY_WALL_SHIELD_FACE, IS, CHOICE_WALL_SHIELD_FACE_##face}, where},  \
            .reading = "What is left when the printed reduction is taken off."                 \
    }

/* Above the appliance the table has none for brick. */
#define WHOLE(face)                                                                             \
    {                                                                                           \
        MATTER_STOVE_CLEARANCE_REDUCED, "Table 4", INGLE_BASIS_CITED, INGLE_AT_LEAST,           \
            &formula_share, .inputs = {QUANTITY_WALL_UNPROTECTED}, .numbers = {PERCENT(100)},   \
            .when = {STOVE,                                                                     \
                     {QUANTITY_WALL_SHIELD_FACE, IS, CHOICE_WALL_SHIELD_FACE_##face}, CEILING}, \
            .reading = "The table has no reduction above the appliance for brick: the "         \
                       "clearance stays what it is without."                                    \
    }

static const struct ingle_rule table_4[] = {
    LEFT(SHEET_METAL, 33, WALL),
    LEFT(SHEET_METAL, 50, CEILING),
    LEFT(CERAMIC_TILE, 50, WALL),
    LEFT(CERAMIC_TILE, 67, CEILING),
    LEFT(TILE_ON_SHEET_METAL, 33, WALL),
    LEFT(TILE_ON_SHEET_METAL, 50, CEILING),
    LEFT(BRICK, 50, WALL),
    WHOLE(BRICK),
    LEFT(BRICK_ON_SHEET_METAL, 33, WALL),
    WHOLE(BRICK_ON_SHEET_METAL),
    {MATTER_SHIELD_AIR_SPACE, "Table 4", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(21)}, .when = {STOVE, SHIELDED}},
    {MATTER_SHIELD_METAL, "Table 4", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {EXACT_QUOTIENT(MILLIMETRES(33), 100)}, .when = {STOVE, WITH_SHEET_METAL}},
};

#define NOT_STATED "clause and edition not stated"

static const struct ingle_rule rules[] = {
    {MATTER_FLOOR_FRONT, NOT_STATED, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(450)}, .when = {STOVE},
     .reading = "The ember pad, from the loading door."},
    {MATTER_FLOOR_BESIDE_BODY, NOT_STATED, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {STOVE},
     .reading = "The ember pad; taken from the stove's body, which is not stated."},
    {MATTER_FLOOR_BEHIND_BODY, NOT_STATED, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {STOVE},
     .reading = "The ember pad; taken from the stove's body, which is not stated."},
    {MATTER_SPACE_BEFORE_DOOR, NOT_STATED, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(1200)}, .when = {STOVE}},
};

static const struct ingle_standard editions[] = {
    {.id = "csa-b365", .title = "CSA B365", .place = "Canada",
     .note = "CSA B365, edition not stated, as other documents report it.",
     .unit = UNIT_MILLIMETRE, .rules = rules, .rule_count = COUNT_OF(rules)},
    {.id = "csa-b365-1991", .title = "CSA B365", .place = "Canada",
     .note = "CSA B365, Table 4 of the 1991 edition, as other documents report it.",
     .unit = UNIT_MILLIMETRE, .edition = 1991, .rules = table_4, .rule_count = COUNT_OF(table_4)},
};

const struct publication publication_csa_b365 = {editions, COUNT_OF(editions)};
