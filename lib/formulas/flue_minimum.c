/* SPDX-License-Identifier: MIT */
/*
 * The flue that older rules ask for: a share of the opening that goes by the chimney's height, one
 * that never falls under a least area, or so much for each part of the opening.
 */
#include "formulas/flue.h"
#include "formulas/formula.h"

static ingle_amount area_amount(int64_t area)
{
    ingle_amount amount = {area, INGLE_AREA, INGLE_SCALE_USUAL};
    return amount;
}

/* The opening times one of the rule's ratios. */
static enum outcome share_of(struct calculation *calculation, const char *label, int64_t opening,
                             unsigned ratio, int64_t *share)
{
    if (!wide_multiply_divide((uint64_t)opening, (uint64_t)calculation->numbers[ratio],
                              INGLE_RATIO_ONE, calculation->rounding, share, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = label, .expression = "{0} × {1}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], opening),
                             operand_number(calculation, ratio)},
                .result = area_amount(*share), .has_result = true);
    return OUTCOME_DONE;
}

/* ---- by the chimney's height ---------------------------------------------------------------- */

enum { HEIGHT, SHORTER, TALLER };

static void record_height(struct calculation *calculation, int64_t height, const char *expression,
                          unsigned ratio)
{
    RECORD_STEP(calculation, .label = "share of the opening", .expression = expression,
                .operands = {operand_quantity(calculation, calculation->inputs[1], height),
                             operand_number(calculation, HEIGHT),
                             operand_number(calculation, ratio)});
}

static enum outcome by_height(struct calculation *calculation, bool gap, int64_t *required)
{
    int64_t opening = 0;
    int64_t height = 0;
    enum outcome area = calculation_quantity(calculation, calculation->inputs[0], &opening);
    enum outcome tall = calculation_quantity(calculation, calculation->inputs[1], &height);
    if (area != OUTCOME_DONE || tall != OUTCOME_DONE) {
        return area != OUTCOME_DONE ? area : tall;
    }
    int64_t step = calculation->numbers[HEIGHT];
    if (gap && height == step) {
        record_height(calculation, height, "{0} = {1}, for which no share is printed", SHORTER);
        return OUTCOME_OUTSIDE;
    }
    if (height < step) {
        record_height(calculation, height, "{0} < {1}, so {2}", SHORTER);
    } else {
        record_height(calculation, height, gap ? "{0} > {1}, so {2}" : "{0} ≥ {1}, so {2}", TALLER);
    }
    return share_of(calculation, "required net area", opening, height < step ? SHORTER : TALLER,
                    required);
}

static enum outcome share_by_height_required(struct calculation *calculation, int64_t *required)
{
    return by_height(calculation, false, required);
}

static enum outcome share_off_height_required(struct calculation *calculation, int64_t *required)
{
    return by_height(calculation, true, required);
}

static size_t height_breakpoints(struct calculation *calculation, enum quantity_id quantity,
                                 int64_t *values)
{
    (void)quantity;
    values[0] = calculation->numbers[HEIGHT] - 1;
    values[1] = calculation->numbers[HEIGHT];
    values[2] = calculation->numbers[HEIGHT] + 1;
    return 3;
}

#define HEIGHT_NUMBERS                                                                        \
    {{"height", INGLE_LENGTH, INGLE_SCALE_USUAL}, {"shorter", INGLE_RATIO, INGLE_SCALE_USUAL}, \
     {"taller", INGLE_RATIO, INGLE_SCALE_USUAL}}

const struct formula formula_share_by_height = {
    .name = "share-by-height",
    .text = "The net area required is the opening times `taller` for a chimney of `height` or "
            "more, and times `shorter` for one that is less high.",
    .numbers = HEIGHT_NUMBERS,
    .drivers = {{THE_INPUT, 1}, {SECOND_INPUT, 0}},
    .driver_count = 2,
    .required = share_by_height_required,
    .breakpoints = height_breakpoints,
};

const struct formula formula_share_off_height = {
    .name = "share-off-height",
    .text = "The net area required is the opening times `taller` for a chimney higher than "
            "`height`, and times `shorter` for one that is less high. For exactly `height` nothing "
            "is printed.",
    .numbers = HEIGHT_NUMBERS,
    .drivers = {{THE_INPUT, 1}, {SECOND_INPUT, 0}},
    .driver_count = 2,
    .required = share_off_height_required,
    .breakpoints = height_breakpoints,
};

/* ---- never less than a least area ----------------------------------------------------------- */

enum { ROUND, ROUND_LEAST, SIDED, SIDED_LEAST };

static enum outcome is_round(struct calculation *calculation, bool *round)
{
    int64_t value = 0;
    if (flue_contradicts(calculation)) {
        return OUTCOME_CONTRADICTION;
    }
    *round = true;
    if (calculation_recorded(calculation, QUANTITY_FLUE_DIAMETER, &value)) {
        return OUTCOME_DONE;
    }
    if (calculation_recorded(calculation, QUANTITY_FLUE_LINER, &value)) {
        *round = flue_liner_is_round(value);
        return OUTCOME_DONE;
    }
    if (calculation_recorded(calculation, QUANTITY_FLUE_SHAPE, &value)) {
        *round = value == CHOICE_FLUE_SHAPE_ROUND;
        return OUTCOME_DONE;
    }
    *round = false;
    return flue_source(calculation) == FLUE_FROM_SIDES
               ? OUTCOME_DONE
               : calculation_miss(calculation, QUANTITY_FLUE_SHAPE);
}

static enum outcome share_with_least_required(struct calculation *calculation, int64_t *required)
{
    int64_t opening = 0;
    int64_t share = 0;
    bool round = false;
    enum outcome area = calculation_quantity(calculation, calculation->inputs[0], &opening);
    enum outcome shape = is_round(calculation, &round);
    if (area != OUTCOME_DONE || shape != OUTCOME_DONE) {
        return area != OUTCOME_DONE ? area : shape;
    }
    if (flue_is_oval(calculation)) {
        return OUTCOME_OUTSIDE;
    }
    unsigned number = round ? ROUND_LEAST : SIDED_LEAST;
    int64_t least = calculation->numbers[number];
    enum outcome outcome =
        share_of(calculation, "share", opening, round ? ROUND : SIDED, &share);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    *required = share > least ? share : least;
    RECORD_STEP(calculation, .label = "required net area",
                .expression = "the greater of {0} and {1}",
                .operands = {operand_amount("share", area_amount(share)),
                             operand_number(calculation, number)},
                .result = area_amount(*required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_share_with_least = {
    .name = "share-with-least",
    .text = "The net area required is the opening times `round` and never less than `round-least` "
            "for a round flue, and times `sided` and never less than `sided-least` for a square or "
            "rectangular one. For an oval one nothing is printed.",
    .numbers = {{"round", INGLE_RATIO, INGLE_SCALE_USUAL},
                {"round-least", AS_JUDGED, INGLE_SCALE_USUAL},
                {"sided", INGLE_RATIO, INGLE_SCALE_USUAL},
                {"sided-least", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = share_with_least_required,
};

/* ---- so much for each part of the opening --------------------------------------------------- */

enum { EACH, WHOLE };

static enum outcome area_for_each_required(struct calculation *calculation, int64_t *required)
{
    int64_t opening = 0;
    calculation->area_scale = INGLE_SCALE_LARGE;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &opening);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    if (!wide_multiply_divide((uint64_t)opening, (uint64_t)calculation->numbers[EACH],
                              (uint64_t)calculation->numbers[WHOLE], calculation->rounding,
                              required, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required net area", .expression = "{0} × {1} ÷ {2}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], opening),
                             operand_number(calculation, EACH), operand_number(calculation, WHOLE)},
                .result = area_amount(*required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_area_for_each = {
    .name = "area-for-each",
    .text = "The net area required is `each` for every `per` of the opening, parts counted.",
    .numbers = {{"each", AS_JUDGED, INGLE_SCALE_USUAL}, {"per", INGLE_AREA, INGLE_SCALE_LARGE}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = area_for_each_required,
};
