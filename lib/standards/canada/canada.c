/* SPDX-License-Identifier: MIT */
/*
 * Canada beside Ontario: the codes of Alberta and British Columbia, the model code, CSA A405, CMHC.
 *
 * Numbers in millimetres and metres, as printed; the inches beside them are rounded and not used.
 */
#include "measure/amounts.h"
#include "standards/canada/canada_rows.h"
#include "standards/publications.h"

/* ---- Alberta -------------------------------------------------------------------------------- */

static const struct ingle_rule alberta[] = {
    ROUND_FLUE_ROWS,
    {MATTER_CLEANOUT_PRESENT, "9.21.4.7", INGLE_BASIS_CITED, INGLE_IS, &formula_observed,
     .numbers = {true}, .when = {MASONRY_CHIMNEY}, .reading = "Near the flue's base."},
    {MATTER_CHIMNEY_WALL, "9.21.4.8", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(75)}, .when = {MASONRY_CHIMNEY}},
    {MATTER_FLUE_SPACING, "9.21.4.9", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(75)},
     .when = {MASONRY_CHIMNEY, SEVERAL_FLUES, NO(CHIMNEY_FIREBRICK_WYTHE)},
     .reading = "Not of firebrick between liners of firebrick."},
};

/* ---- British Columbia ----------------------------------------------------------------------- */

static const struct ingle_rule british_columbia[] = {
    ROUND_FLUE_ROWS,
};

/* ---- the model code ------------------------------------------------------------------------- */

static const struct ingle_rule model_code[] = {
    FIREBOX_WALL_ROWS("9.22.3.1, edition not stated"),
};

/* ---- CSA A405 ------------------------------------------------------------------------------- */

#define CLAUSE_5_3_6 "5.3.6, edition not stated"
#define JOINTED {QUANTITY_HEARTH_BUILD, IS, CHOICE_HEARTH_BUILD_UNITS}
#define TWENTY_FIVE                                                                            \
    "Units of less than 25 mm need the bed, those of more may lie on the metal: of exactly 25 mm " \
    "neither wording speaks, and it is not judged."

static const struct ingle_rule csa_a405[] = {
    {MATTER_HEARTH_OVERALL_DEPTH, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(700)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_FRONT, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_raised_from_begun_steps, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {MILLIMETRES(150), MILLIMETRES(400), MILLIMETRES(450), MILLIMETRES(300),
                 MILLIMETRES(50), MILLIMETRES(25)},
     .when = {MASONRY_FIREPLACE}, .follows = FOLLOWS(HEARTH_STEPS, ROUND_UP),
     .reading = "A raise of exactly 150 mm counts. A part of a 50 mm step counts as a whole one: "
                "what is known of the clause does not say."},
    {MATTER_HEARTH_FRONT, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_raised_from_whole_steps, .inputs = {QUANTITY_HEARTH_FIREBOX_RAISE},
     .numbers = {MILLIMETRES(150), MILLIMETRES(400), MILLIMETRES(450), MILLIMETRES(300),
                 MILLIMETRES(50), MILLIMETRES(25)},
     .when = {MASONRY_FIREPLACE}, .follows = FOLLOWS(HEARTH_STEPS, WHOLE_STEPS),
     .reading = "A raise of exactly 150 mm counts. Only whole steps of 50 mm count: what is "
                "known of the clause does not say."},
    {MATTER_HEARTH_SIDE, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(200)}, .when = {MASONRY_FIREPLACE}},
    {MATTER_HEARTH_THICKNESS, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(100)}, .when = {MASONRY_FIREPLACE, SLAB}},
    {MATTER_HEARTH_EDGE_THICKNESS, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {MILLIMETRES(50)}, .when = {MASONRY_FIREPLACE, SLAB}},
    {MATTER_HEARTH_OPENING_ABOVE_FLOOR, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(200)}, .when = {MASONRY_FIREPLACE, ON_FLOOR},
     .reading = "Above a floor that can burn and on which the hearth rests."},
    {MATTER_HEARTH_EXTENSION_THICKNESS, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)},
     .when = {MASONRY_FIREPLACE, ON_FLOOR,
              {QUANTITY_HEARTH_BUILD, IS, CHOICE_HEARTH_BUILD_ONE_PIECE}},
     .reading = "One piece of stone or concrete."},
    {MATTER_HEARTH_EXTENSION_THICKNESS, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(50)},
     .when = {MASONRY_FIREPLACE, ON_FLOOR, JOINTED,
              {QUANTITY_HEARTH_UNIT_THICKNESS, LESS_THAN, MILLIMETRES(25)}},
     .reading = "Thin tile and its mesh-reinforced bed together. " TWENTY_FIVE},
    {MATTER_HEARTH_SHEET_METAL, CLAUSE_5_3_6, INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_fixed,
     .numbers = {EXACT_QUOTIENT(MILLIMETRES(5), 10)},
     .when = {MASONRY_FIREPLACE, ON_FLOOR, JOINTED,
              {QUANTITY_HEARTH_UNIT_THICKNESS, MORE_THAN, MILLIMETRES(25)}},
     .reading = "Under jointed units. " TWENTY_FIVE},
};

/* ---- CMHC ------------------------------------------------------------------------------------ */

static const struct ingle_rule cmhc[] = {
    {MATTER_FLUE_AREA, "masonry chimneys", INGLE_BASIS_CITED, INGLE_AT_LEAST, &formula_share,
     .inputs = {QUANTITY_OPENING_AREA}, .numbers = {RATIO(1, 10)}, .when = {MASONRY_FIREPLACE},
     .reading = "A rule of thumb beside the tables: guidance, not code."},
    {MATTER_FLUE_SHORTER_SIDE, "masonry chimneys", INGLE_BASIS_CITED, INGLE_AT_LEAST,
     &formula_fixed, .numbers = {MILLIMETRES(200)},
     .when = {MASONRY_FIREPLACE, SIDED_FLUE},
     .reading = "A rule of thumb beside the tables: guidance, not code."},
};

/* ---- the standards -------------------------------------------------------------------------- */

static const struct ingle_standard editions[] = {
    {.id = "nbc-ab-2023", .title = "National Building Code, Alberta Edition",
     .place = "Alberta, Canada",
     .note = "National Building Code, 2023 Alberta Edition, 9.21: its table of rectangular flues "
             "was missing from the text that was read, so rectangular flues are not judged.",
     .unit = UNIT_MILLIMETRE, .edition = 2023, .rules = alberta, .rule_count = COUNT_OF(alberta)},
    {.id = "bcbc-2012", .title = "British Columbia Building Code",
     .place = "British Columbia, Canada",
     .note = "British Columbia Building Code 2012, 9.21: of its table of rectangular flues only "
             "the beginning was seen, so rectangular flues are not judged.",
     .unit = UNIT_MILLIMETRE, .edition = 2012, .rules = british_columbia,
     .rule_count = COUNT_OF(british_columbia)},
    {.id = "nbc-canada", .title = "National Building Code of Canada", .place = "Canada",
     .note = "National Building Code of Canada, Part 9, edition not stated: of it only the article "
             "on the masonry around a firebox was read.",
     .unit = UNIT_MILLIMETRE, .rules = model_code, .rule_count = COUNT_OF(model_code)},
    {.id = "csa-a405", .title = "CAN/CSA-A405", .place = "Canada",
     .note = "CAN/CSA-A405, clause 5.3.6, as other documents report it; the edition is not stated.",
     .unit = UNIT_MILLIMETRE, .rules = csa_a405, .rule_count = COUNT_OF(csa_a405)},
    {.id = "cmhc", .title = "CMHC guidance on wood-frame houses", .place = "Canada",
     .note = "Guidance on Canadian wood-frame house construction, masonry chimneys, edition not "
             "stated, as other documents report it: guidance, not code.",
     .unit = UNIT_MILLIMETRE, .rules = cmhc, .rule_count = COUNT_OF(cmhc)},
};

const struct publication publication_canada = {editions, COUNT_OF(editions)};
