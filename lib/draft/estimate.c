/* SPDX-License-Identifier: MIT */
/*
 * The estimate as an object: made from an input, and what can be asked of it.
 */
#include "draft/estimate.h"

#include "base/memory.h"

#include <math.h>

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_draft_new(const ingle_allocator *allocator, ingle_draft **draft)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_draft *made = draft == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made != NULL) {
        *draft = made;
    }
    return status;
}

void ingle_draft_free(ingle_draft *draft)
{
    if (draft != NULL) {
        ingle_allocator allocator = draft->allocator;
        allocator_free(&allocator, draft);
    }
}

/* ---- the flow alone ------------------------------------------------------------------------- */

ingle_status ingle_draft_velocity(const ingle_draft_input *input, double *velocity)
{
    struct flow flow;
    ingle_draft_input taken;
    struct fault fault = input_accept(input, 0, &taken);
    if (velocity == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (fault.status == INGLE_OK) {
        flow_run(&taken, &flow);
        *velocity = flow.frontal_velocity;
    }
    return fault.status;
}

ingle_status ingle_draft_required(const ingle_draft_input *input, ingle_draft_figure figure,
                                  double *value)
{
    ingle_draft_input taken;
    if (value == NULL || figure < INGLE_DRAFT_REQUIRED_DIAMETER ||
        figure > INGLE_DRAFT_REQUIRED_HEIGHT) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct fault fault = input_accept(input, figure, &taken);
    if (fault.status != INGLE_OK) {
        return fault.status;
    }
    return solve_required(&taken, figure, value) ? INGLE_OK : INGLE_ERROR_OVERFLOW;
}

/* ---- the estimate --------------------------------------------------------------------------- */

static void set(struct ingle_draft *draft, ingle_draft_figure figure, double value)
{
    draft->values[FIGURE_PLACE(figure)] = value;
    draft->known[FIGURE_PLACE(figure)] = true;
}

double figure_value(const struct ingle_draft *draft, ingle_draft_figure figure)
{
    return draft->values[FIGURE_PLACE(figure)];
}

static void set_inputs(struct ingle_draft *draft, const struct flow *flow)
{
    for (ingle_draft_figure figure = 1; figure <= INPUT_FIGURES; figure++) {
        set(draft, figure, figure_in(&draft->input, figure));
    }
    set(draft, INGLE_DRAFT_INLET_LOSS, flow->inlet_loss);
    draft->known[FIGURE_PLACE(INGLE_DRAFT_THROAT_AREA)] = draft->input.throat_area > 0;
}

static void set_flow(struct ingle_draft *draft, const struct flow *flow)
{
    set(draft, INGLE_DRAFT_MEAN_TEMPERATURE, flow->mean_temperature);
    set(draft, INGLE_DRAFT_THETA, flow->theta);
    set(draft, INGLE_DRAFT_OUTDOOR_DENSITY, flow->outdoor_density);
    set(draft, INGLE_DRAFT_GAS_DENSITY, flow->gas_density);
    set(draft, INGLE_DRAFT_ROOM_DENSITY, flow->room_density);
    set(draft, INGLE_DRAFT_THEORETICAL_DRAFT, flow->theoretical_draft);
    set(draft, INGLE_DRAFT_DRIVING_PRESSURE, flow->driving_pressure);
    set(draft, INGLE_DRAFT_FRICTION_LOSS, flow->friction_loss);
    set(draft, INGLE_DRAFT_TOTAL_LOSS, flow->total_loss);
    set(draft, INGLE_DRAFT_AREA_RATIO, flow->area_ratio);
    if (flow->flows) {
        set(draft, INGLE_DRAFT_FLUE_VELOCITY, flow->flue_velocity);
        set(draft, INGLE_DRAFT_FRONTAL_VELOCITY, flow->frontal_velocity);
        set(draft, INGLE_DRAFT_MASS_FLOW, flow->mass_flow);
    }
}

/* Twice the standard uncertainty in whole percent, and what is stated at the least. */
static double expanded(double uncertainty)
{
    double twice = ceil(2.0 * uncertainty * 100.0) / 100.0;
    double stated = number_of(NUMBER_STATED_UNCERTAINTY);
    return 2.0 * uncertainty > stated ? twice : stated;
}

static void set_uncertainty(struct ingle_draft *draft, const struct flow *flow)
{
    double uncertainty;
    if (!flow->flows || !uncertainty_of(&draft->input, &uncertainty)) {
        return;
    }
    double share = expanded(uncertainty);
    double low = flow->frontal_velocity * (1.0 - share);
    set(draft, INGLE_DRAFT_STANDARD_UNCERTAINTY, uncertainty);
    set(draft, INGLE_DRAFT_EXPANDED_UNCERTAINTY, share);
    set(draft, INGLE_DRAFT_FRONTAL_VELOCITY_LOW, low > 0.0 ? low : 0.0);
    set(draft, INGLE_DRAFT_FRONTAL_VELOCITY_HIGH, flow->frontal_velocity * (1.0 + share));
}

static void set_required(struct ingle_draft *draft)
{
    for (ingle_draft_figure figure = INGLE_DRAFT_REQUIRED_DIAMETER;
         figure <= INGLE_DRAFT_REQUIRED_HEIGHT; figure++) {
        double value;
        if (solve_required(&draft->input, figure, &value)) {
            set(draft, figure, value);
        }
    }
}

/* Where the uncertainty is not known, so near to no flow at all, anything may be. */
static ingle_draft_standing standing(const struct ingle_draft *draft, const struct flow *flow)
{
    double criterion = draft->input.criterion;
    if (!flow->flows) {
        return INGLE_DRAFT_NO_DRAFT;
    }
    if (!draft->known[FIGURE_PLACE(INGLE_DRAFT_EXPANDED_UNCERTAINTY)]) {
        return INGLE_DRAFT_WITHIN_UNCERTAINTY;
    }
    if (figure_value(draft, INGLE_DRAFT_FRONTAL_VELOCITY_LOW) >= criterion) {
        return INGLE_DRAFT_REACHES;
    }
    return figure_value(draft, INGLE_DRAFT_FRONTAL_VELOCITY_HIGH) < criterion
               ? INGLE_DRAFT_FALLS_SHORT
               : INGLE_DRAFT_WITHIN_UNCERTAINTY;
}

static void forget(struct ingle_draft *draft)
{
    for (size_t i = 0; i < FIGURE_COUNT; i++) {
        draft->values[i] = 0;
        draft->known[i] = false;
    }
    draft->standing = 0;
    draft->outside_count = draft->notice_count = draft->step_count = 0;
    draft->error_text[0] = '\0';
    draft->error_figure = 0;
}

ingle_status ingle_draft_estimate(ingle_draft *draft, const ingle_draft_input *input)
{
    struct flow flow;
    if (draft == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    forget(draft);
    struct fault fault = input_accept(input, 0, &draft->input);
    if (fault.status != INGLE_OK) {
        fault_write(&fault, &draft->input, draft->error_text, sizeof draft->error_text);
        draft->error_figure = fault.figure;
        return fault.status;
    }
    flow_run(&draft->input, &flow);
    set_inputs(draft, &flow);
    set_flow(draft, &flow);
    set_uncertainty(draft, &flow);
    set_required(draft);
    draft->standing = standing(draft, &flow);
    range_check(draft);
    draft_steps_collect(draft);
    draft_notices_collect(draft);
    return INGLE_OK;
}

/* ---- what can be asked ---------------------------------------------------------------------- */

const char *ingle_draft_error_text(const ingle_draft *draft)
{
    return draft->error_text;
}

ingle_draft_figure ingle_draft_error_figure(const ingle_draft *draft)
{
    return draft->error_figure;
}

int ingle_draft_get(const ingle_draft *draft, ingle_draft_figure figure, double *value)
{
    if (draft == NULL || figure_row(figure) == NULL || !draft->known[FIGURE_PLACE(figure)]) {
        return 0;
    }
    if (value != NULL) {
        *value = figure_value(draft, figure);
    }
    return 1;
}

int ingle_draft_get_shown(const ingle_draft *draft, ingle_draft_figure figure,
                          const ingle_format *format, double *value)
{
    double amount;
    enum unit_system system;
    if (value == NULL || !ingle_draft_get(draft, figure, &amount) ||
        system_of(format, &system) != INGLE_OK) {
        return 0;
    }
    *value = amount_shown(amount, unit_shown(figure_row(figure)->kind, system));
    return 1;
}

ingle_status ingle_draft_figure_text(const ingle_draft *draft, ingle_draft_figure figure,
                                     const ingle_format *format, char *buffer, size_t capacity,
                                     size_t *length)
{
    double amount;
    enum unit_system system;
    if ((buffer == NULL && capacity > 0) || !ingle_draft_get(draft, figure, &amount)) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status = system_of(format, &system);
    if (status != INGLE_OK) {
        return status;
    }
    struct text text = text_start(buffer, capacity);
    text_add_shown(&text, figure_row(figure)->kind, system, amount);
    return text_end(&text, length);
}

/* What was changed after the survey was taken is not the survey's any more. */
const char *ingle_draft_origin(const ingle_draft *draft, ingle_draft_figure figure)
{
    if (draft == NULL || !figure_goes_in(figure) || draft->standing == 0) {
        return NULL;
    }
    double surveyed = draft->surveyed[FIGURE_PLACE(figure)];
    double value = figure_in(&draft->input, figure);
    return value >= surveyed && value <= surveyed ? draft->origins[FIGURE_PLACE(figure)] : NULL;
}

const char *ingle_draft_from(const ingle_draft *draft, ingle_draft_figure figure)
{
    if (!ingle_draft_get(draft, figure, NULL) || !figure_goes_in(figure)) {
        return NULL;
    }
    if (figure == INGLE_DRAFT_INLET_LOSS && draft->input.inlet != INGLE_DRAFT_INLET_GIVEN) {
        return "computed";
    }
    if (ingle_draft_origin(draft, figure) != NULL) {
        return "survey";
    }
    bool given = (draft->input.given & figure_bit(figure)) != 0;
    return !given && is_default(draft, figure) ? "default" : "given";
}

ingle_draft_standing ingle_draft_standing_of(const ingle_draft *draft)
{
    return draft->standing;
}

int ingle_draft_reached(const ingle_draft *draft)
{
    double velocity;
    return ingle_draft_get(draft, INGLE_DRAFT_FRONTAL_VELOCITY, &velocity) &&
           velocity >= draft->input.criterion;
}

/* Those that the velocity can be asked about. */
static bool has_sensitivity(ingle_draft_figure figure)
{
    switch (figure) {
    case INGLE_DRAFT_OPENING_AREA:
    case INGLE_DRAFT_FLUE_AREA:
    case INGLE_DRAFT_HYDRAULIC_DIAMETER:
    case INGLE_DRAFT_HEIGHT:
    case INGLE_DRAFT_RISE:
    case INGLE_DRAFT_INLET_LOSS:
    case INGLE_DRAFT_FRICTION_FACTOR:
        return true;
    default:
        return false;
    }
}

int ingle_draft_sensitivity(const ingle_draft *draft, ingle_draft_figure figure, double *value)
{
    return draft != NULL && value != NULL && draft->standing > INGLE_DRAFT_NO_DRAFT &&
           has_sensitivity(figure) && sensitivity_of(&draft->input, figure, value);
}

size_t ingle_draft_outside_count(const ingle_draft *draft)
{
    return draft->outside_count;
}

const char *ingle_draft_outside_at(const ingle_draft *draft, size_t index)
{
    return index < draft->outside_count ? draft->outside[index].text : NULL;
}

ingle_draft_figure ingle_draft_outside_figure(const ingle_draft *draft, size_t index)
{
    return index < draft->outside_count ? draft->outside[index].figure : 0;
}

size_t ingle_draft_notice_count(const ingle_draft *draft)
{
    return draft->notice_count;
}

const char *ingle_draft_notice_at(const ingle_draft *draft, size_t index)
{
    return index < draft->notice_count ? draft->notices[index] : NULL;
}

size_t ingle_draft_missing_count(const ingle_draft *draft)
{
    return draft->missing_count;
}

const ingle_quantity *ingle_draft_missing_at(const ingle_draft *draft, size_t index)
{
    return index < draft->missing_count ? draft->missing[index] : NULL;
}
