/* SPDX-License-Identifier: MIT */
#include "draft/figures.h"

#include "base/memory.h"

#include <string.h>

#define ROW(name) [FIGURE_PLACE(INGLE_DRAFT_##name)]
#define GIVEN(field) .offset = offsetof(ingle_draft_input, field), .default_number = NUMBER_NONE
#define DEFAULT(field, number) \
    .offset = offsetof(ingle_draft_input, field), .default_number = NUMBER_##number
#define TAKEN(a, b) .least = (a), .most = (b)
#define COMES_OUT .default_number = NUMBER_NONE

static const struct figure figures[FIGURE_COUNT] = {
    ROW(OPENING_AREA) = {"opening-area", "Ao", "area of the opening", KIND_OPENING_AREA,
                         GIVEN(opening_area), TAKEN(1e-3, 100.0)},
    ROW(FLUE_AREA) = {"flue-area", "Af", "area of the flue", KIND_FLUE_AREA, GIVEN(flue_area),
                      TAKEN(1e-5, 20.0)},
    ROW(HYDRAULIC_DIAMETER) = {"hydraulic-diameter", "D", "hydraulic diameter of the flue",
                               KIND_WIDTH, GIVEN(hydraulic_diameter), TAKEN(0.005, 5.0)},
    ROW(HEIGHT) = {"height", "H", "height from the firebox floor to the top of the flue",
                   KIND_HEIGHT, GIVEN(height), TAKEN(0.1, 150.0)},
    ROW(RISE) = {"rise", "dT", "mean rise of the flue gas over the outdoor temperature", KIND_RISE,
                 DEFAULT(rise, RISE), TAKEN(1.0, 2000.0)},
    ROW(OUTDOOR_TEMPERATURE) = {"outdoor-temperature", "To", "outdoor temperature",
                                KIND_TEMPERATURE,
                                DEFAULT(outdoor_temperature, OUTDOOR_TEMPERATURE),
                                TAKEN(180.0, 340.0)},
    ROW(ROOM_TEMPERATURE) = {"room-temperature", "Tr", "room temperature", KIND_TEMPERATURE,
                             DEFAULT(room_temperature, ROOM_TEMPERATURE), TAKEN(180.0, 340.0)},
    ROW(ROOM_PRESSURE) = {"room-pressure", "p", "pressure of the room over that outdoors",
                          KIND_PRESSURE, DEFAULT(room_pressure, ROOM_PRESSURE),
                          TAKEN(-1000.0, 1000.0)},
    ROW(AIR_PRESSURE) = {"air-pressure", "B", "pressure of the outdoor air", KIND_AIR_PRESSURE,
                         DEFAULT(air_pressure, AIR_PRESSURE), TAKEN(30000.0, 120000.0)},
    ROW(INLET_LOSS) = {"inlet-loss", "k_in", "loss of throat and smoke chamber", KIND_LOSS,
                       DEFAULT(inlet_loss, INLET_LOSS), TAKEN(0.0, 1000.0)},
    ROW(FITTING_LOSS) = {"fitting-loss", "k_fit", "loss of offsets and fittings", KIND_LOSS,
                         DEFAULT(fitting_loss, FITTING_LOSS), TAKEN(0.0, 1000.0)},
    ROW(CAP_LOSS) = {"cap-loss", "k_cap", "loss of cap and spark screen", KIND_LOSS,
                     DEFAULT(cap_loss, CAP_LOSS), TAKEN(0.0, 1000.0)},
    ROW(FRICTION_FACTOR) = {"friction-factor", "f", "friction factor of the flue", KIND_PLAIN,
                            DEFAULT(friction_factor, FRICTION_FACTOR), TAKEN(0.0, 10.0)},
    ROW(CRITERION) = {"criterion", "Vc", "mean velocity through the opening that is asked for",
                      KIND_SPEED, DEFAULT(criterion, CRITERION), TAKEN(1e-3, 10.0)},
    ROW(THROAT_AREA) = {"throat-area", "At", "clear area of the throat", KIND_FLUE_AREA,
                        GIVEN(throat_area), TAKEN(0.0, 20.0)},

    ROW(MEAN_TEMPERATURE) = {"mean-temperature", "Tm", "mean temperature of the flue gas",
                             KIND_TEMPERATURE, COMES_OUT},
    ROW(THETA) = {"theta", "Θ", "buoyancy number", KIND_PLAIN, COMES_OUT},
    ROW(OUTDOOR_DENSITY) = {"outdoor-density", "ρo", "density of the outdoor air", KIND_DENSITY,
                            COMES_OUT},
    ROW(GAS_DENSITY) = {"gas-density", "ρm", "mean density of the flue gas", KIND_DENSITY,
                        COMES_OUT},
    ROW(ROOM_DENSITY) = {"room-density", "ρr", "density of the room air", KIND_DENSITY,
                         COMES_OUT},
    ROW(THEORETICAL_DRAFT) = {"theoretical-draft", "Δp", "theoretical draft", KIND_PRESSURE,
                              COMES_OUT},
    ROW(DRIVING_PRESSURE) = {"driving-pressure", "P", "pressure that drives the flow",
                             KIND_PRESSURE, COMES_OUT},
    ROW(FRICTION_LOSS) = {"friction-loss", "k_f", "loss by friction along the flue", KIND_LOSS,
                          COMES_OUT},
    ROW(TOTAL_LOSS) = {"total-loss", "K", "all losses, the exit's velocity head among them",
                       KIND_LOSS, COMES_OUT},
    ROW(AREA_RATIO) = {"area-ratio", "r", "area of the flue as a share of the opening's",
                       KIND_PLAIN, COMES_OUT},
    ROW(FLUE_VELOCITY) = {"flue-velocity", "w", "velocity in the flue", KIND_SPEED, COMES_OUT},
    ROW(FRONTAL_VELOCITY) = {"frontal-velocity", "V", "mean velocity through the opening",
                             KIND_SPEED, COMES_OUT},
    ROW(MASS_FLOW) = {"mass-flow", "m", "mass flow", KIND_MASS_FLOW, COMES_OUT},
    ROW(STANDARD_UNCERTAINTY) = {"standard-uncertainty", "u",
                                 "relative standard uncertainty of the velocity", KIND_SHARE,
                                 COMES_OUT},
    ROW(EXPANDED_UNCERTAINTY) = {"expanded-uncertainty", "U",
                                 "relative expanded uncertainty of the velocity (k = 2)",
                                 KIND_SHARE, COMES_OUT},
    ROW(FRONTAL_VELOCITY_LOW) = {"frontal-velocity-low", "V_low",
                                 "lower end of the velocity through the opening", KIND_SPEED,
                                 COMES_OUT},
    ROW(FRONTAL_VELOCITY_HIGH) = {"frontal-velocity-high", "V_high",
                                  "upper end of the velocity through the opening", KIND_SPEED,
                                  COMES_OUT},
    ROW(REQUIRED_DIAMETER) = {"required-diameter", "D_req",
                              "diameter of a round flue that would reach the criterion",
                              KIND_WIDTH, COMES_OUT},
    ROW(REQUIRED_AREA) = {"required-area", "Af_req",
                          "area of a flue of this shape that would reach the criterion",
                          KIND_FLUE_AREA, COMES_OUT},
    ROW(REQUIRED_HEIGHT) = {"required-height", "H_req",
                            "height at which this flue would reach the criterion", KIND_HEIGHT,
                            COMES_OUT},
};

/* ---- the rows ------------------------------------------------------------------------------- */

const struct figure *figure_row(ingle_draft_figure figure)
{
    bool goes_in = figure >= 1 && figure <= INPUT_FIGURES;
    bool comes_out =
        figure >= INGLE_DRAFT_MEAN_TEMPERATURE && figure <= INGLE_DRAFT_REQUIRED_HEIGHT;
    return goes_in || comes_out ? &figures[FIGURE_PLACE(figure)] : NULL;
}

bool figure_goes_in(ingle_draft_figure figure)
{
    return figure >= 1 && figure <= INPUT_FIGURES;
}

size_t ingle_draft_figure_count(void)
{
    return FIGURE_COUNT;
}

ingle_draft_figure ingle_draft_figure_at(size_t index)
{
    if (index >= FIGURE_COUNT) {
        return 0;
    }
    ingle_draft_figure place = (ingle_draft_figure)index;
    return place < INPUT_FIGURES ? place + 1
                                 : place - INPUT_FIGURES + INGLE_DRAFT_MEAN_TEMPERATURE;
}

ingle_draft_figure ingle_draft_figure_find(const char *id)
{
    for (size_t i = 0; id != NULL && i < FIGURE_COUNT; i++) {
        if (strcmp(figures[i].id, id) == 0) {
            return ingle_draft_figure_at(i);
        }
    }
    return 0;
}

const char *ingle_draft_figure_id(ingle_draft_figure figure)
{
    const struct figure *row = figure_row(figure);
    return row == NULL ? NULL : row->id;
}

const char *ingle_draft_figure_label(ingle_draft_figure figure)
{
    const struct figure *row = figure_row(figure);
    return row == NULL ? NULL : row->label;
}

const char *ingle_draft_figure_symbol(ingle_draft_figure figure)
{
    const struct figure *row = figure_row(figure);
    return row == NULL ? NULL : row->symbol;
}

int ingle_draft_figure_is_input(ingle_draft_figure figure)
{
    return figure_goes_in(figure);
}

const ingle_draft_number *ingle_draft_figure_default(ingle_draft_figure figure)
{
    const struct figure *row = figure_row(figure);
    return row == NULL || row->default_number == NUMBER_NONE
               ? NULL
               : &draft_numbers[row->default_number];
}

const char *ingle_draft_figure_unit(ingle_draft_figure figure, const ingle_format *format)
{
    enum unit_system system;
    const struct figure *row = figure_row(figure);
    return row == NULL || system_of(format, &system) != INGLE_OK
               ? NULL
               : unit_shown(row->kind, system)->name;
}

int ingle_draft_figure_range(ingle_draft_figure figure, double *least, double *most)
{
    bool goes_in = figure_goes_in(figure);
    if (goes_in && least != NULL) {
        *least = figures[FIGURE_PLACE(figure)].least;
    }
    if (goes_in && most != NULL) {
        *most = figures[FIGURE_PLACE(figure)].most;
    }
    return goes_in;
}

/* ---- an input ------------------------------------------------------------------------------- */

int32_t figure_bit(ingle_draft_figure figure)
{
    return INT32_C(1) << (figure - 1);
}

double *figure_field(ingle_draft_input *input, ingle_draft_figure figure)
{
    return (double *)(void *)((char *)input + figures[FIGURE_PLACE(figure)].offset);
}

double figure_in(const ingle_draft_input *input, ingle_draft_figure figure)
{
    double value;
    memcpy(&value, (const char *)input + figures[FIGURE_PLACE(figure)].offset, sizeof value);
    return value;
}

ingle_status ingle_draft_input_start(ingle_draft_input *input)
{
    if (input == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    memset(input, 0, sizeof *input);
    input->size = sizeof *input;
    for (ingle_draft_figure figure = 1; figure <= INPUT_FIGURES; figure++) {
        const ingle_draft_number *number = ingle_draft_figure_default(figure);
        *figure_field(input, figure) = number == NULL ? 0.0 : number->value;
    }
    return INGLE_OK;
}

/* Whether an input is one that this release can write to. */
static bool is_input(const ingle_draft_input *input, ingle_draft_figure figure)
{
    return input != NULL && input->size >= sizeof *input && figure_goes_in(figure);
}

ingle_status ingle_draft_input_set(ingle_draft_input *input, ingle_draft_figure figure,
                                   double value)
{
    if (!is_input(input, figure)) {
        return INGLE_ERROR_ARGUMENT;
    }
    *figure_field(input, figure) = value;
    input->given |= figure_bit(figure);
    return INGLE_OK;
}

/* Only a room's pressure may be less than the one it is measured from. */
static bool may_be_negative(const struct figure *row)
{
    return row->least < 0;
}

ingle_status ingle_draft_input_set_text(ingle_draft_input *input, ingle_draft_figure figure,
                                        const char *text, size_t length, size_t *position)
{
    double amount = 0;
    if (!is_input(input, figure) || (text == NULL && length > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    const struct figure *row = figure_row(figure);
    ingle_status status =
        amount_read(row->kind, text == NULL ? "" : text, length, &amount, position);
    if (status == INGLE_OK && amount < 0 && !may_be_negative(row)) {
        status = INGLE_ERROR_NEGATIVE;
        if (position != NULL) {
            *position = 0;
        }
    }
    return status == INGLE_OK ? ingle_draft_input_set(input, figure, amount) : status;
}

int ingle_draft_input_get(const ingle_draft_input *input, ingle_draft_figure figure,
                          double *value)
{
    if (!is_input(input, figure) || value == NULL) {
        return 0;
    }
    *value = figure_in(input, figure);
    return 1;
}
