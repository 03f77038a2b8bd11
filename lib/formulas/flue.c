/* SPDX-License-Identifier: MIT */
/*
 * The flue's net area, and the share of the opening that its shape asks for.
 */
#include "formulas/flue.h"

#include "formulas/formula.h"
#include "measure/circle.h"

/* ---- what the flue is known from ------------------------------------------------------------ */

static bool recorded(const struct calculation *calculation, enum quantity_id quantity)
{
    int64_t value;
    return calculation_recorded(calculation, quantity, &value);
}

bool flue_is_oval(const struct calculation *calculation)
{
    int64_t shape;
    return calculation_recorded(calculation, QUANTITY_FLUE_SHAPE, &shape) &&
           shape == CHOICE_FLUE_SHAPE_OVAL;
}

/* An oval's sides do not tell its area. */
enum flue_source flue_source(const struct calculation *calculation)
{
    if (calculation_tries(calculation, QUANTITY_FLUE_LINER)) {
        return FLUE_FROM_LINER;
    }
    if (flue_is_oval(calculation)) {
        return FLUE_FROM_SHAPE;
    }
    if (recorded(calculation, QUANTITY_FLUE_DIAMETER)) {
        return FLUE_FROM_DIAMETER;
    }
    if (recorded(calculation, QUANTITY_FLUE_WIDTH) && recorded(calculation, QUANTITY_FLUE_DEPTH)) {
        return FLUE_FROM_SIDES;
    }
    if (recorded(calculation, QUANTITY_FLUE_LINER)) {
        return FLUE_FROM_LINER;
    }
    return recorded(calculation, QUANTITY_FLUE_SHAPE) ? FLUE_FROM_SHAPE : FLUE_FROM_NOTHING;
}

const struct liner *flue_liner(const struct calculation *calculation, int64_t liner)
{
    for (size_t i = 0; i < calculation->liner_count; i++) {
        if ((int64_t)calculation->liners[i].liner == liner) {
            return &calculation->liners[i];
        }
    }
    return NULL;
}

/* The catalogue has the round ones first. */
bool flue_liner_is_round(int64_t liner)
{
    return liner <= CHOICE_FLUE_LINER_ROUND_18;
}

static const struct liner *recorded_liner(const struct calculation *calculation)
{
    int64_t liner;
    return calculation_recorded(calculation, QUANTITY_FLUE_LINER, &liner)
               ? flue_liner(calculation, liner)
               : NULL;
}

/* Notes the measures that would tell the inside of a flue of which too little is known. */
static enum outcome miss_inside(struct calculation *calculation)
{
    int64_t shape = -1;
    bool width = recorded(calculation, QUANTITY_FLUE_WIDTH);
    bool depth = recorded(calculation, QUANTITY_FLUE_DEPTH);
    bool shaped = calculation_recorded(calculation, QUANTITY_FLUE_SHAPE, &shape);
    if (shaped && shape == CHOICE_FLUE_SHAPE_ROUND) {
        return calculation_miss(calculation, QUANTITY_FLUE_DIAMETER);
    }
    if (shaped && shape == CHOICE_FLUE_SHAPE_OVAL) {
        return calculation_miss(calculation, QUANTITY_FLUE_NET_AREA);
    }
    if (!shaped && !width && !depth) {
        return calculation_miss(calculation, QUANTITY_FLUE_LINER);
    }
    if (!width) {
        calculation_miss(calculation, QUANTITY_FLUE_WIDTH);
    }
    if (!depth) {
        calculation_miss(calculation, QUANTITY_FLUE_DEPTH);
    }
    return OUTCOME_MISSING;
}

/* ---- contradictions ------------------------------------------------------------------------- */

static int64_t shape_of_liner(const struct liner *liner)
{
    if (liner->depth == 0) {
        return CHOICE_FLUE_SHAPE_ROUND;
    }
    return liner->width == liner->depth ? CHOICE_FLUE_SHAPE_SQUARE : CHOICE_FLUE_SHAPE_RECTANGULAR;
}

static void contradict(struct calculation *calculation, enum quantity_id one,
                       enum quantity_id other)
{
    calculation->at_fault = one;
    calculation->against = other;
}

/* Holds a recorded shape against what else is known of the flue. */
static void hold_shape(struct calculation *calculation, int64_t shape, bool round, bool sided,
                       enum quantity_id side)
{
    const struct liner *liner = recorded_liner(calculation);
    bool says_round = shape == CHOICE_FLUE_SHAPE_ROUND;
    if (round && !says_round) {
        contradict(calculation, QUANTITY_FLUE_SHAPE, QUANTITY_FLUE_DIAMETER);
    } else if (sided && says_round) {
        contradict(calculation, QUANTITY_FLUE_SHAPE, side);
    } else if (liner != NULL && shape != shape_of_liner(liner)) {
        contradict(calculation, QUANTITY_FLUE_SHAPE, QUANTITY_FLUE_LINER);
    }
}

bool flue_contradicts(struct calculation *calculation)
{
    int64_t shape;
    const struct liner *liner = recorded_liner(calculation);
    bool round = recorded(calculation, QUANTITY_FLUE_DIAMETER);
    bool wide = recorded(calculation, QUANTITY_FLUE_WIDTH);
    bool sided = wide || recorded(calculation, QUANTITY_FLUE_DEPTH);
    enum quantity_id side = wide ? QUANTITY_FLUE_WIDTH : QUANTITY_FLUE_DEPTH;
    if (calculation_tries(calculation, QUANTITY_FLUE_LINER)) {
        return false;
    }
    if (round && sided) {
        contradict(calculation, QUANTITY_FLUE_DIAMETER, side);
    } else if (calculation_recorded(calculation, QUANTITY_FLUE_SHAPE, &shape)) {
        hold_shape(calculation, shape, round, sided, side);
    } else if (liner != NULL && round && liner->depth != 0) {
        contradict(calculation, QUANTITY_FLUE_LINER, QUANTITY_FLUE_DIAMETER);
    } else if (liner != NULL && sided && liner->depth == 0) {
        contradict(calculation, QUANTITY_FLUE_LINER, side);
    }
    return calculation->at_fault != QUANTITY_NONE;
}

/* ---- net area ------------------------------------------------------------------------------- */

static const char area_label[] = "net area of the flue";

static ingle_amount area_amount(int64_t area)
{
    ingle_amount amount = {area, INGLE_AREA, INGLE_SCALE_USUAL};
    return amount;
}

static enum outcome area_by_diameter(struct calculation *calculation, int64_t *area)
{
    int64_t diameter = 0;
    calculation_recorded(calculation, QUANTITY_FLUE_DIAMETER, &diameter);
    if (!circle_area(diameter, calculation->rounding, area)) {
        calculation->at_fault = QUANTITY_FLUE_DIAMETER;
        return OUTCOME_OVERFLOW;
    }
    struct operand operand = operand_quantity(calculation, QUANTITY_FLUE_DIAMETER, diameter);
    RECORD_STEP(calculation, .label = area_label, .expression = "π/4 × {0} × {0}",
                .operands = {operand}, .result = area_amount(*area), .has_result = true);
    return OUTCOME_DONE;
}

static enum outcome area_by_sides(struct calculation *calculation, int64_t *area)
{
    int64_t width = 0;
    int64_t depth = 0;
    calculation_recorded(calculation, QUANTITY_FLUE_WIDTH, &width);
    calculation_recorded(calculation, QUANTITY_FLUE_DEPTH, &depth);
    if (!wide_multiply(width, depth, area)) {
        calculation->at_fault = QUANTITY_FLUE_WIDTH;
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = area_label, .expression = "{0} × {1}",
                .operands = {operand_quantity(calculation, QUANTITY_FLUE_WIDTH, width),
                             operand_quantity(calculation, QUANTITY_FLUE_DEPTH, depth)},
                .result = area_amount(*area), .has_result = true);
    return OUTCOME_DONE;
}

static enum outcome area_by_liner(struct calculation *calculation, int64_t *area)
{
    const struct liner *liner = recorded_liner(calculation);
    if (liner == NULL) {
        return calculation_miss(calculation, QUANTITY_FLUE_NET_AREA);
    }
    *area = liner->net_area;
    struct operand operand =
        operand_quantity(calculation, QUANTITY_FLUE_LINER, (int64_t)liner->liner);
    RECORD_STEP(calculation, .label = area_label, .expression = "table area of {0}",
                .remark = liner->table, .operands = {operand}, .result = area_amount(*area),
                .has_result = true);
    return OUTCOME_DONE;
}

enum outcome flue_net_area(struct calculation *calculation, int64_t *area)
{
    if (flue_contradicts(calculation)) {
        return OUTCOME_CONTRADICTION;
    }
    switch (flue_source(calculation)) {
    case FLUE_FROM_DIAMETER:
        return area_by_diameter(calculation, area);
    case FLUE_FROM_SIDES:
        return area_by_sides(calculation, area);
    case FLUE_FROM_LINER:
        return area_by_liner(calculation, area);
    case FLUE_FROM_SHAPE:
    case FLUE_FROM_NOTHING:
        break;
    }
    return miss_inside(calculation);
}

/* ---- the share of the opening --------------------------------------------------------------- */

enum { ASPECT, ROUND_SHARE, SQUARE_SHARE, RECTANGULAR_SHARE, LONG_SHARE };

/* The shortest longer side at which a flue is as long as the rule's aspect ratio has it. */
static bool long_from(const struct calculation *calculation, int64_t shorter, int64_t *longer)
{
    return wide_multiply_divide((uint64_t)shorter, (uint64_t)calculation->numbers[ASPECT],
                                INGLE_RATIO_ONE, ROUND_UP, longer, NULL);
}

static void aspect_step(struct calculation *calculation, int64_t longer, int64_t shorter)
{
    int64_t ratio;
    if (!wide_multiply_divide((uint64_t)longer, INGLE_RATIO_ONE, (uint64_t)shorter, ROUND_NEAREST,
                              &ratio, NULL)) {
        return; /* a side of next to nothing, at a corner of the tolerances: nothing to show */
    }
    ingle_amount amount = {ratio, INGLE_RATIO, INGLE_SCALE_USUAL};
    RECORD_STEP(
        calculation, .label = "aspect ratio", .expression = "{0} ÷ {1}",
        .operands = {operand_amount("longer side", quantity_amount(QUANTITY_FLUE_WIDTH, longer)),
                     operand_amount("shorter side", quantity_amount(QUANTITY_FLUE_WIDTH, shorter))},
        .result = amount, .has_result = true);
}

static enum outcome share_by_sides(struct calculation *calculation, int64_t width, int64_t depth,
                                   unsigned *share)
{
    int64_t longer = width > depth ? width : depth;
    int64_t shorter = width > depth ? depth : width;
    int64_t limit;
    if (longer == shorter) {
        *share = SQUARE_SHARE;
        return OUTCOME_DONE;
    }
    if (!long_from(calculation, shorter, &limit)) {
        return OUTCOME_OVERFLOW;
    }
    *share = longer >= limit ? LONG_SHARE : RECTANGULAR_SHARE;
    if (calculation->steps != NULL) {
        aspect_step(calculation, longer, shorter);
    }
    return OUTCOME_DONE;
}

static enum outcome share_by_liner(struct calculation *calculation, unsigned *share)
{
    const struct liner *liner = recorded_liner(calculation);
    if (liner == NULL) {
        return calculation_miss(calculation, QUANTITY_FLUE_SHAPE);
    }
    if (liner->depth == 0) {
        *share = ROUND_SHARE;
        return OUTCOME_DONE;
    }
    if (liner->long_inside) {
        calculation->reading_count = 2;
        calculation->reading_text = calculation->reading == 0
                                        ? "Aspect ratio by the liner's nominal outside size."
                                        : "Aspect ratio by the liner's inside size.";
        if (calculation->reading == 1) {
            *share = LONG_SHARE;
            return OUTCOME_DONE;
        }
    }
    return share_by_sides(calculation, liner->width, liner->depth, share);
}

static enum outcome share_by_shape(struct calculation *calculation, unsigned *share)
{
    int64_t shape = 0;
    calculation_recorded(calculation, QUANTITY_FLUE_SHAPE, &shape);
    if (shape == CHOICE_FLUE_SHAPE_RECTANGULAR) {
        return miss_inside(calculation);
    }
    if (shape == CHOICE_FLUE_SHAPE_OVAL) {
        return OUTCOME_OUTSIDE;
    }
    *share = shape == CHOICE_FLUE_SHAPE_ROUND ? ROUND_SHARE : SQUARE_SHARE;
    return OUTCOME_DONE;
}

/* A named liner keeps its nominal ratio where its inside was measured as well. */
static enum outcome share_of_opening(struct calculation *calculation, unsigned *share)
{
    int64_t width = 0;
    int64_t depth = 0;
    if (recorded_liner(calculation) != NULL) {
        return share_by_liner(calculation, share);
    }
    switch (flue_source(calculation)) {
    case FLUE_FROM_DIAMETER:
        *share = ROUND_SHARE;
        return OUTCOME_DONE;
    case FLUE_FROM_SIDES:
        calculation_recorded(calculation, QUANTITY_FLUE_WIDTH, &width);
        calculation_recorded(calculation, QUANTITY_FLUE_DEPTH, &depth);
        return share_by_sides(calculation, width, depth, share);
    case FLUE_FROM_LINER:
        return share_by_liner(calculation, share);
    case FLUE_FROM_SHAPE:
        return share_by_shape(calculation, share);
    case FLUE_FROM_NOTHING:
        break;
    }
    return recorded(calculation, QUANTITY_FLUE_NET_AREA)
               ? calculation_miss(calculation, QUANTITY_FLUE_SHAPE)
               : miss_inside(calculation);
}

static enum outcome flue_share_required(struct calculation *calculation, int64_t *required)
{
    int64_t area = 0;
    unsigned share = ROUND_SHARE;
    if (flue_contradicts(calculation)) {
        return OUTCOME_CONTRADICTION;
    }
    enum outcome opening = calculation_quantity(calculation, calculation->inputs[0], &area);
    enum outcome shape = share_of_opening(calculation, &share);
    if (opening != OUTCOME_DONE || shape != OUTCOME_DONE) {
        return opening != OUTCOME_DONE ? opening : shape;
    }
    if (!wide_multiply_divide((uint64_t)area, (uint64_t)calculation->numbers[share],
                              INGLE_RATIO_ONE, calculation->rounding, required, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required net area", .expression = "{0} × {1}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], area),
                             operand_number(calculation, share)},
                .result = area_amount(*required), .has_result = true);
    return OUTCOME_DONE;
}

/*
 * Along one side, all else fixed, the share jumps where that side comes to be as long as the aspect
 * ratio has it, where the other one does, and at the square.
 */
static size_t flue_share_breakpoints(struct calculation *calculation, enum quantity_id quantity,
                                     int64_t *values)
{
    int64_t other = 0;
    int64_t longer;
    int64_t shorter;
    size_t count = 0;
    calculation_recorded(
        calculation, quantity == QUANTITY_FLUE_WIDTH ? QUANTITY_FLUE_DEPTH : QUANTITY_FLUE_WIDTH,
        &other);
    if (long_from(calculation, other, &longer)) {
        values[count++] = longer - 1;
        values[count++] = longer;
    }
    if (wide_multiply_divide((uint64_t)other, INGLE_RATIO_ONE,
                             (uint64_t)calculation->numbers[ASPECT], ROUND_DOWN, &shorter, NULL)) {
        values[count++] = shorter;
        values[count++] = shorter + 1;
    }
    values[count++] = other - 1;
    values[count++] = other;
    values[count++] = other + 1;
    return count;
}

const struct formula formula_flue_share = {
    .name = "flue-share",
    .text = "The net area required is a share of the opening: `round` for a round flue, `square` "
            "for a square one, `rectangular` for one whose longer side is less than `aspect` times "
            "its shorter, and `long` from there on. For an oval one nothing is printed.",
    .numbers = {{"aspect", INGLE_RATIO, INGLE_SCALE_USUAL},
                {"round", INGLE_RATIO, INGLE_SCALE_USUAL},
                {"square", INGLE_RATIO, INGLE_SCALE_USUAL},
                {"rectangular", INGLE_RATIO, INGLE_SCALE_USUAL},
                {"long", INGLE_RATIO, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}, {QUANTITY_FLUE_WIDTH, 0}, {QUANTITY_FLUE_DEPTH, 0}},
    .driver_count = 3,
    .required = flue_share_required,
    .breakpoints = flue_share_breakpoints,
};
