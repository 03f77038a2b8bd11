/* SPDX-License-Identifier: MIT */
/*
 * Fills an input from what was surveyed, by the same derivations that the rules' formulas use.
 */
#include "base/memory.h"
#include "check/words.h"
#include "draft/estimate.h"
#include "draft/shape.h"
#include "formulas/flue.h"
#include "standards/rule.h"

#include <math.h>

#define NANO 1e-9

/* One survey being taken. */
struct taking {
    struct ingle_draft *draft;
    struct calculation calculation;
    const ingle_standard *const *standards;
    size_t standard_count;
    ingle_draft_input *input;
    ingle_status status;
};

static bool recorded(const struct taking *taking, enum quantity_id quantity, int64_t *value)
{
    return calculation_recorded(&taking->calculation, quantity, value);
}

static bool choice_is(const struct taking *taking, enum quantity_id quantity, int64_t choice)
{
    int64_t value;
    return recorded(taking, quantity, &value) && value == choice;
}

static bool is_given(const struct taking *taking, ingle_draft_figure figure)
{
    return (taking->input->given & figure_bit(figure)) != 0;
}

/* What was given wins over the survey. */
static void set(struct taking *taking, ingle_draft_figure figure, double value,
                const char *origin)
{
    if (!is_given(taking, figure)) {
        *figure_field(taking->input, figure) = value;
        taking->draft->origins[FIGURE_PLACE(figure)] = origin;
        taking->draft->surveyed[FIGURE_PLACE(figure)] = value;
    }
}

/* A figure that the survey need not tell. */
static bool is_there(const struct taking *taking, ingle_draft_figure figure)
{
    return figure_in(taking->input, figure) > 0;
}

/* ---- what is missing or wrong --------------------------------------------------------------- */

static void miss(struct taking *taking, enum quantity_id quantity)
{
    struct ingle_draft *draft = taking->draft;
    if (draft->missing_count < LACKING) {
        draft->missing[draft->missing_count++] = &quantities[quantity];
    }
}

/* Keeps what a calculation missed, and what it found wrong. */
static void note_outcome(struct taking *taking, enum outcome outcome)
{
    struct calculation *calculation = &taking->calculation;
    for (size_t i = 0; outcome == OUTCOME_MISSING && i < calculation->missing_count; i++) {
        miss(taking, calculation->missing[i]);
    }
    if (outcome == OUTCOME_CONTRADICTION) {
        taking->status = INGLE_ERROR_CONTRADICTION;
    } else if (outcome == OUTCOME_OVERFLOW) {
        taking->status = INGLE_ERROR_OVERFLOW;
    }
}

/* A quantity that was recorded or follows from others; its misses are not yet noted. */
static enum outcome quantity(struct taking *taking, enum quantity_id id, int64_t *value)
{
    calculation_restart(&taking->calculation);
    return calculation_quantity(&taking->calculation, id, value);
}

/* The same in SI units. */
static enum outcome measure(struct taking *taking, enum quantity_id id, double *value)
{
    int64_t units;
    enum outcome outcome = quantity(taking, id, &units);
    if (outcome == OUTCOME_DONE) {
        double size = quantities[id].dimension == INGLE_AREA ? NANO * NANO : NANO;
        *value = (double)units * size;
    }
    return outcome;
}

/* ---- opening and throat --------------------------------------------------------------------- */

static void take_opening(struct taking *taking)
{
    double area;
    int64_t stated;
    bool more_sides =
        choice_is(taking, QUANTITY_OPENING_EXPOSURE, CHOICE_OPENING_EXPOSURE_MORE_SIDES);
    enum quantity_id id = more_sides ? QUANTITY_OPENING_TOTAL_AREA : QUANTITY_OPENING_AREA;
    if (more_sides) {
        taking->input->circumstances |= INGLE_DRAFT_MORE_SIDES;
    }
    enum outcome outcome = measure(taking, id, &area);
    if (outcome != OUTCOME_DONE) {
        if (outcome != OUTCOME_MISSING || !is_there(taking, INGLE_DRAFT_OPENING_AREA)) {
            note_outcome(taking, outcome);
        }
        return;
    }
    const char *parts =
        more_sides ? "opening.total-length × opening.height" : "opening.width × opening.height";
    set(taking, INGLE_DRAFT_OPENING_AREA, area,
        recorded(taking, id, &stated) ? quantities[id].id : parts);
}

static void take_throat(struct taking *taking)
{
    double area;
    int64_t stated;
    if (measure(taking, QUANTITY_THROAT_AREA, &area) == OUTCOME_DONE) {
        set(taking, INGLE_DRAFT_THROAT_AREA, area,
            recorded(taking, QUANTITY_THROAT_AREA, &stated) ? "throat.area"
                                                            : "throat.width × throat.depth");
    }
}

/* ---- the flue ------------------------------------------------------------------------------- */

/* Looks into the tables of the standards for the liner, and stays with the first that has it. */
static const struct liner *find_liner(struct taking *taking)
{
    int64_t name;
    if (!recorded(taking, QUANTITY_FLUE_LINER, &name)) {
        return NULL;
    }
    for (size_t i = 0; i < taking->standard_count; i++) {
        taking->calculation.liners = taking->standards[i]->liners;
        taking->calculation.liner_count = taking->standards[i]->liner_count;
        const struct liner *liner = flue_liner(&taking->calculation, name);
        if (liner != NULL) {
            return liner;
        }
    }
    return NULL;
}

static void take_diameter_of_liner(struct taking *taking, const struct liner *liner, double area)
{
    if (liner->depth == 0) {
        set(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER, (double)liner->width * NANO, "flue.liner");
        return;
    }
    taking->draft->proportions_from_name = true;
    set(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER,
        diameter_of_rectangle(area, (double)liner->width, (double)liner->depth), "flue.liner");
}

/* Of a flue of which nothing but its area and its shape is known. */
static void take_diameter_of_shape(struct taking *taking, double area)
{
    double shorter, longer;
    int64_t shape = -1;
    recorded(taking, QUANTITY_FLUE_SHAPE, &shape);
    if (shape == CHOICE_FLUE_SHAPE_ROUND) {
        set(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER, diameter_of_circle(area),
            "flue.net-area, flue.shape");
    } else if (shape == CHOICE_FLUE_SHAPE_SQUARE) {
        set(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER, sqrt(area), "flue.net-area, flue.shape");
    } else if (measure(taking, QUANTITY_FLUE_SHORTER_SIDE, &shorter) == OUTCOME_DONE &&
               measure(taking, QUANTITY_FLUE_LONGER_SIDE, &longer) == OUTCOME_DONE &&
               shorter > 0) {
        set(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER, diameter_of_rectangle(area, shorter, longer),
            "flue.net-area, flue.shorter-side, flue.longer-side");
    } else if (!is_there(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER)) {
        miss(taking, shape < 0 ? QUANTITY_FLUE_SHAPE : QUANTITY_FLUE_SHORTER_SIDE);
    }
}

static void take_diameter(struct taking *taking, const struct liner *liner, double area)
{
    double width = 0;
    double depth = 0;
    switch (flue_source(&taking->calculation)) {
    case FLUE_FROM_DIAMETER:
        measure(taking, QUANTITY_FLUE_DIAMETER, &width);
        set(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER, width, "flue.diameter");
        return;
    case FLUE_FROM_SIDES:
        measure(taking, QUANTITY_FLUE_WIDTH, &width);
        measure(taking, QUANTITY_FLUE_DEPTH, &depth);
        set(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER, 2.0 * width * depth / (width + depth),
            "flue.width, flue.depth");
        return;
    case FLUE_FROM_LINER:
        if (liner != NULL) {
            take_diameter_of_liner(taking, liner, area);
            return;
        }
        break;
    case FLUE_FROM_SHAPE:
    case FLUE_FROM_NOTHING:
        break;
    }
    take_diameter_of_shape(taking, area);
}

static const char *origin_of_flue(const struct taking *taking)
{
    static const char *const origins[] = {
        [FLUE_FROM_DIAMETER] = "π/4 × flue.diameter × flue.diameter",
        [FLUE_FROM_SIDES] = "flue.width × flue.depth",
        [FLUE_FROM_LINER] = "flue.liner",
        [FLUE_FROM_SHAPE] = NULL, /* it gives no area */
        [FLUE_FROM_NOTHING] = NULL,
    };
    int64_t stated;
    if (recorded(taking, QUANTITY_FLUE_NET_AREA, &stated)) {
        return "flue.net-area";
    }
    return origins[flue_source(&taking->calculation)];
}

/* A diameter alone is a round flue's. */
static bool take_given_diameter(struct taking *taking)
{
    double diameter = taking->input->hydraulic_diameter;
    bool alone = is_given(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER) &&
                 !is_given(taking, INGLE_DRAFT_FLUE_AREA);
    if (alone) {
        taking->input->flue_area = circle_shape() * diameter * diameter;
    }
    return alone;
}

static void take_flue(struct taking *taking)
{
    double area;
    const struct liner *liner = find_liner(taking);
    bool there = is_there(taking, INGLE_DRAFT_FLUE_AREA) &&
                 is_there(taking, INGLE_DRAFT_HYDRAULIC_DIAMETER);
    enum outcome outcome = measure(taking, QUANTITY_FLUE_NET_AREA, &area);
    if (outcome == OUTCOME_DONE && flue_contradicts(&taking->calculation)) {
        outcome = OUTCOME_CONTRADICTION;
    }
    if (outcome == OUTCOME_DONE) {
        set(taking, INGLE_DRAFT_FLUE_AREA, area, origin_of_flue(taking));
        take_diameter(taking, liner, area);
    } else if (outcome != OUTCOME_MISSING || !there) {
        note_outcome(taking, outcome);
    }
}

/* ---- height, fittings, the rest ------------------------------------------------------------- */

static void take_height(struct taking *taking)
{
    double height, opening;
    if (measure(taking, QUANTITY_FLUE_ABOVE_HEARTH, &height) == OUTCOME_DONE) {
        set(taking, INGLE_DRAFT_HEIGHT, height, "flue.above-hearth");
    } else if (measure(taking, QUANTITY_FLUE_HEIGHT, &height) == OUTCOME_DONE &&
               measure(taking, QUANTITY_OPENING_HEIGHT, &opening) == OUTCOME_DONE) {
        set(taking, INGLE_DRAFT_HEIGHT, height + opening, "flue.height + opening.height");
    } else if (!is_there(taking, INGLE_DRAFT_HEIGHT)) {
        miss(taking, QUANTITY_FLUE_ABOVE_HEARTH);
    }
}

static void take_fittings(struct taking *taking)
{
    int64_t bends;
    double cap = 0;
    bool capped = choice_is(taking, QUANTITY_RAIN_CAP_PRESENT, 1);
    bool screened = choice_is(taking, QUANTITY_SPARK_ARRESTOR_PRESENT, 1);
    if (recorded(taking, QUANTITY_FLUE_BENDS, &bends) && bends > 0) {
        taking->input->circumstances |= INGLE_DRAFT_NOT_STRAIGHT;
        set(taking, INGLE_DRAFT_FITTING_LOSS, (double)bends * number_of(NUMBER_ELBOW_45),
            "flue.bends");
    }
    cap += capped ? number_of(NUMBER_LOW_RESISTANCE_CAP) : 0.0;
    cap += screened ? number_of(NUMBER_SPARK_SCREEN) : 0.0;
    if (capped || screened) {
        set(taking, INGLE_DRAFT_CAP_LOSS, cap,
            !screened  ? "rain-cap.present"
            : !capped ? "spark-arrestor.present"
                      : "rain-cap.present, spark-arrestor.present");
    }
}

static void take_appliance(struct taking *taking)
{
    int64_t kind;
    if (recorded(taking, QUANTITY_APPLIANCE_KIND, &kind) &&
        kind != CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE) {
        taking->input->circumstances |= INGLE_DRAFT_OTHER_APPLIANCE;
    }
}

/* ---- the whole ------------------------------------------------------------------------------ */

static void forget_survey(struct ingle_draft *draft)
{
    for (size_t i = 0; i < INPUT_FIGURES; i++) {
        draft->origins[i] = NULL;
    }
    draft->missing_count = 0;
    draft->proportions_from_name = false;
    draft->error_text[0] = '\0';
    draft->error_figure = 0;
}

static void write_missing(struct ingle_draft *draft)
{
    struct text text = text_start(draft->error_text, sizeof draft->error_text);
    text_add(&text, "For an estimate of the draft the survey lacks ");
    for (size_t i = 0; i < draft->missing_count; i++) {
        text_add(&text, i == 0 ? "" : i + 1 == draft->missing_count ? " and " : ", ");
        text_add(&text, draft->missing[i]->id);
    }
    text_add(&text, ".");
}

static void write_fault(struct taking *taking)
{
    struct text text = text_start(taking->draft->error_text, sizeof taking->draft->error_text);
    enum quantity_id at_fault = taking->calculation.at_fault;
    if (at_fault != QUANTITY_NONE) {
        text_add(&text, quantities[at_fault].id);
        text_add(&text, ": ");
    }
    words_add_fault(&text, &taking->calculation, taking->status);
}

static void take_all(struct taking *taking)
{
    take_appliance(taking);
    take_opening(taking);
    take_throat(taking);
    take_height(taking);
    take_fittings(taking);
    if (taking->status == INGLE_OK && !take_given_diameter(taking)) {
        take_flue(taking);
    }
    if (taking->status != INGLE_OK) {
        write_fault(taking);
    } else if (taking->draft->missing_count > 0) {
        write_missing(taking->draft);
        taking->status = INGLE_ERROR_MISSING_NAME;
    }
}

ingle_status ingle_draft_take_survey(ingle_draft *draft, const ingle_survey *survey,
                                     const ingle_standard *const *standards,
                                     size_t standard_count, ingle_draft_input *input)
{
    ingle_draft_input taken;
    if (draft == NULL || survey == NULL || input == NULL ||
        (standards == NULL && standard_count > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status = struct_take(&taken, sizeof taken, sizeof taken, input);
    if (status != INGLE_OK) {
        return status;
    }
    forget_survey(draft);
    struct taking taking = {.draft = draft, .standards = standards,
                            .standard_count = standard_count, .input = &taken};
    taking.calculation = (struct calculation){.survey = survey, .judged = QUANTITY_NONE,
                                              .masked = QUANTITY_NONE, .rounding = ROUND_NEAREST};
    calculation_restart(&taking.calculation);
    take_all(&taking);
    size_t size = input->size;
    *input = taken;
    input->size = size;
    return taking.status;
}
