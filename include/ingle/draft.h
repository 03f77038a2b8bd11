/* SPDX-License-Identifier: MIT */
/**
 * @file
 * An estimate of the draft of an open fireplace: how fast the air goes in through the opening, by
 * opening, flue, height and warmth, and the flue or the height at which it would reach a criterion.
 *
 * It works beside the verdicts and decides none. It is no promise about smoke, no check of a code,
 * and no named standard's method. Amounts are doubles in SI units: metres, square metres, kelvins,
 * pascals, kilograms, seconds; no call lets a NaN or an infinity out.
 *
 * The model (derived): one steady flow, balanced from the hearth to the top of the flue.
 *
 *     g H (ρo − ρm) + p = K ρm w² / 2          K = inlet + fittings + f H / D + cap + 1
 *     ρm w Af = ρr Ao V                        ρ = B / (R T), Tm = To + dT
 *
 * with H the height, ρo, ρm, ρr the densities outdoors, in the flue and in the room, p the room's
 * pressure over outdoors, K all losses in velocity heads of the flue, w the velocity in the flue, D
 * its hydraulic diameter, Af and Ao the areas of flue and opening, V the mean velocity through the
 * opening. With one temperature in the room and outdoors and no room pressure it is
 *
 *     V = (Af / Ao) √(2 g H Θ / K),  Θ = θ (1 − θ),  θ = To / Tm.
 */
#ifndef INGLE_DRAFT_H
#define INGLE_DRAFT_H

#include <ingle/api.h>
#include <ingle/check.h>
#include <ingle/measure.h>
#include <ingle/memory.h>
#include <ingle/page.h>
#include <ingle/standards.h>
#include <ingle/status.h>
#include <ingle/survey.h>

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/* ---- the numbers it rests on ---------------------------------------------------------------- */

/**
 * A number that the estimate rests on or that a relation offers, with its source. All are constant
 * and live as long as the program.
 */
typedef struct ingle_draft_number ingle_draft_number;

/** How many numbers there are. */
INGLE_API size_t ingle_draft_number_count(void);

/** One of the numbers, from 0, those of one group together; NULL past the end. */
INGLE_API const ingle_draft_number *ingle_draft_number_at(size_t index);

/** The number of an id, `criterion`; NULL when there is none, and for NULL. */
INGLE_API const ingle_draft_number *ingle_draft_number_find(const char *id);

/** A number's id, unique and stable. */
INGLE_API const char *ingle_draft_number_id(const ingle_draft_number *number);

/**
 * What a number is for: `default` (taken where nothing else is given), `claim` (bounds of what may
 * be claimed), `uncertainty`, `constant`, `draft-constant`, `density-constant`, `component` (loss
 * in velocity heads), `roughness` (m), `chimney-gas-temperature`, `mass-to-input` (kg/MJ).
 */
INGLE_API const char *ingle_draft_number_group(const ingle_draft_number *number);

/** A number in words. */
INGLE_API const char *ingle_draft_number_label(const ingle_draft_number *number);

/** Its value, in its unit. */
INGLE_API double ingle_draft_number_value(const ingle_draft_number *number);

/** Its unit: `m/s`; `1` where it has none. */
INGLE_API const char *ingle_draft_number_unit(const ingle_draft_number *number);

/**
 * The range in which it is plausible, in its unit.
 *
 * @param number a number
 * @param[out] least receives the lower end; may be NULL
 * @param[out] most receives the upper end; may be NULL
 * @returns 1, or 0 if no range is known, and then nothing is written.
 */
INGLE_API int ingle_draft_number_range(const ingle_draft_number *number, double *least,
                                       double *most);

/** Where it comes from, in a sentence or two. */
INGLE_API const char *ingle_draft_number_source(const ingle_draft_number *number);

/**
 * How it is known: the name of an ingle_basis, or `derived` where it follows from physics or
 * arithmetic, or `assumption` where it is only what the model takes for simplicity.
 */
INGLE_API const char *ingle_draft_number_basis(const ingle_draft_number *number);

/* ---- the figures of an estimate ------------------------------------------------------------- */

/** One of the figures that go into an estimate or come out of it. */
typedef int32_t ingle_draft_figure;

enum {
    /** Area of the fireplace opening, m². */
    INGLE_DRAFT_OPENING_AREA = 1,
    /** Clear area of the flue, m². */
    INGLE_DRAFT_FLUE_AREA = 2,
    /** Hydraulic diameter of the flue, four areas by the perimeter, m; a round one's diameter. */
    INGLE_DRAFT_HYDRAULIC_DIAMETER = 3,
    /** Height from the firebox floor to the top of the flue, m. */
    INGLE_DRAFT_HEIGHT = 4,
    /** Mean rise of the flue gas over the outdoor temperature, K. */
    INGLE_DRAFT_RISE = 5,
    /** Outdoor temperature, absolute, K. */
    INGLE_DRAFT_OUTDOOR_TEMPERATURE = 6,
    /** Room temperature, absolute, K. */
    INGLE_DRAFT_ROOM_TEMPERATURE = 7,
    /** Pressure of the room at the hearth over that outdoors, Pa. */
    INGLE_DRAFT_ROOM_PRESSURE = 8,
    /** Pressure of the outdoor air, Pa. */
    INGLE_DRAFT_AIR_PRESSURE = 9,
    /** Loss of throat and smoke chamber, in velocity heads of the flue. */
    INGLE_DRAFT_INLET_LOSS = 10,
    /** Loss of offsets and other fittings, in velocity heads of the flue. */
    INGLE_DRAFT_FITTING_LOSS = 11,
    /** Loss of cap and spark screen, in velocity heads of the flue. */
    INGLE_DRAFT_CAP_LOSS = 12,
    /** Friction factor of the flue (Darcy's). */
    INGLE_DRAFT_FRICTION_FACTOR = 13,
    /** Mean velocity through the opening that is asked for, m/s. */
    INGLE_DRAFT_CRITERION = 14,
    /** Clear area of the throat, m²; 0 where it was not measured. */
    INGLE_DRAFT_THROAT_AREA = 15,

    /** Mean temperature of the flue gas, absolute, K. */
    INGLE_DRAFT_MEAN_TEMPERATURE = 101,
    /** Θ, the buoyancy number: θ (1 − θ) of the outdoor over the mean gas temperature. */
    INGLE_DRAFT_THETA = 102,
    /** Density of the outdoor air, kg/m³. */
    INGLE_DRAFT_OUTDOOR_DENSITY = 103,
    /** Mean density of the flue gas, kg/m³. */
    INGLE_DRAFT_GAS_DENSITY = 104,
    /** Density of the room air, kg/m³. */
    INGLE_DRAFT_ROOM_DENSITY = 105,
    /** Theoretical draft of the hot column, Pa. */
    INGLE_DRAFT_THEORETICAL_DRAFT = 106,
    /** What drives the flow: theoretical draft and room pressure together, Pa. */
    INGLE_DRAFT_DRIVING_PRESSURE = 107,
    /** Loss by friction along the flue, in velocity heads. */
    INGLE_DRAFT_FRICTION_LOSS = 108,
    /** K, all losses and the exit's velocity head together. */
    INGLE_DRAFT_TOTAL_LOSS = 109,
    /** Area of the flue as a share of the opening's. */
    INGLE_DRAFT_AREA_RATIO = 110,
    /** Velocity in the flue, m/s. */
    INGLE_DRAFT_FLUE_VELOCITY = 111,
    /** Mean velocity through the opening, m/s. */
    INGLE_DRAFT_FRONTAL_VELOCITY = 112,
    /** Mass flow, kg/s. */
    INGLE_DRAFT_MASS_FLOW = 113,
    /** Relative standard uncertainty of the frontal velocity. */
    INGLE_DRAFT_STANDARD_UNCERTAINTY = 114,
    /** Relative expanded uncertainty (k = 2) that is stated with the frontal velocity. */
    INGLE_DRAFT_EXPANDED_UNCERTAINTY = 115,
    /** Lower end of the frontal velocity with its expanded uncertainty, m/s. */
    INGLE_DRAFT_FRONTAL_VELOCITY_LOW = 116,
    /** Upper end of the frontal velocity with its expanded uncertainty, m/s. */
    INGLE_DRAFT_FRONTAL_VELOCITY_HIGH = 117,
    /** Diameter of a round flue that would reach the criterion, m. */
    INGLE_DRAFT_REQUIRED_DIAMETER = 118,
    /** Area of a flue of the given shape that would reach the criterion, m². */
    INGLE_DRAFT_REQUIRED_AREA = 119,
    /** Height at which the given flue would reach the criterion, m. */
    INGLE_DRAFT_REQUIRED_HEIGHT = 120
};

/** How many figures there are. */
INGLE_API size_t ingle_draft_figure_count(void);

/** One of the figures by its place, from 0, in the order of this header; 0 past the end. */
INGLE_API ingle_draft_figure ingle_draft_figure_at(size_t index);

/** The figure of an id, `frontal-velocity`; 0 when there is none, and for NULL. */
INGLE_API ingle_draft_figure ingle_draft_figure_find(const char *id);

/** A figure's id, unique and stable: `rise`; NULL for a number that is none. */
INGLE_API const char *ingle_draft_figure_id(ingle_draft_figure figure);

/** A figure in words; NULL for a number that is none. */
INGLE_API const char *ingle_draft_figure_label(ingle_draft_figure figure);

/** A figure's sign in the equations: `V`; NULL for a number that is none. */
INGLE_API const char *ingle_draft_figure_symbol(ingle_draft_figure figure);

/** 1 if a figure goes into the estimate, 0 if it comes out of it or is none. */
INGLE_API int ingle_draft_figure_is_input(ingle_draft_figure figure);

/** What is taken for a figure where nothing else is given; NULL where nothing is. */
INGLE_API const ingle_draft_number *ingle_draft_figure_default(ingle_draft_figure figure);

/**
 * The unit in which a format shows a figure: `ft/s` with `in` and `ft`, `m/s` with the others.
 *
 * @param figure a figure
 * @param format whose `unit` decides; NULL is the inch
 * @returns its name, NULL where the figure has no unit or an argument is unusable.
 */
INGLE_API const char *ingle_draft_figure_unit(ingle_draft_figure figure,
                                              const ingle_format *format);

/**
 * The values that are taken for a figure that goes in, in SI units. They are wide and ours; what
 * may be claimed is narrower, see ingle_draft_outside_count().
 *
 * @param figure a figure
 * @param[out] least receives the smallest; may be NULL
 * @param[out] most receives the largest; may be NULL
 * @returns 1, or 0 for a figure that comes out or is none, and then nothing is written.
 */
INGLE_API int ingle_draft_figure_range(ingle_draft_figure figure, double *least, double *most);

/* ---- what goes in --------------------------------------------------------------------------- */

/** How the loss of the inlet is known. */
typedef int32_t ingle_draft_inlet;

enum {
    /** It is `inlet_loss`. */
    INGLE_DRAFT_INLET_GIVEN = 0,
    /** It is computed from the throat's area, with a sharp lintel. */
    INGLE_DRAFT_INLET_SHARP = 1,
    /** It is computed from the throat's area, with a rounded breast. */
    INGLE_DRAFT_INLET_ROUNDED = 2
};

/** What takes a fireplace out of the model's reach; added together in `circumstances`. */
typedef int32_t ingle_draft_circumstances;

enum {
    /** The fireplace is open on two or more sides. */
    INGLE_DRAFT_MORE_SIDES = 1,
    /** It is no open masonry fireplace. */
    INGLE_DRAFT_OTHER_APPLIANCE = 2,
    /** The flue is not straight. */
    INGLE_DRAFT_NOT_STRAIGHT = 4
};

/**
 * What an estimate is made from, in SI units. ingle_draft_input_start() fills in the defaults; the
 * first four have none and have to be given.
 */
typedef struct ingle_draft_input {
    /** sizeof(ingle_draft_input). */
    size_t size;
    /** INGLE_DRAFT_OPENING_AREA, m². */
    double opening_area;
    /** INGLE_DRAFT_FLUE_AREA, m². */
    double flue_area;
    /** INGLE_DRAFT_HYDRAULIC_DIAMETER, m. */
    double hydraulic_diameter;
    /** INGLE_DRAFT_HEIGHT, m. */
    double height;
    /** INGLE_DRAFT_RISE, K. */
    double rise;
    /** INGLE_DRAFT_OUTDOOR_TEMPERATURE, K. */
    double outdoor_temperature;
    /** INGLE_DRAFT_ROOM_TEMPERATURE, K. */
    double room_temperature;
    /** INGLE_DRAFT_ROOM_PRESSURE, Pa; negative where the house is under the outdoors' pressure. */
    double room_pressure;
    /** INGLE_DRAFT_AIR_PRESSURE, Pa. */
    double air_pressure;
    /** INGLE_DRAFT_INLET_LOSS; not used where `inlet` says that it is computed. */
    double inlet_loss;
    /** INGLE_DRAFT_FITTING_LOSS. */
    double fitting_loss;
    /** INGLE_DRAFT_CAP_LOSS. */
    double cap_loss;
    /** INGLE_DRAFT_FRICTION_FACTOR. */
    double friction_factor;
    /** INGLE_DRAFT_CRITERION, m/s. */
    double criterion;
    /** INGLE_DRAFT_THROAT_AREA, m²; 0 where it was not measured. */
    double throat_area;
    /** How the inlet's loss is known. */
    ingle_draft_inlet inlet;
    /** What takes the fireplace out of reach, added together; 0 for nothing. */
    ingle_draft_circumstances circumstances;
    /**
     * Bit n − 1 is 1 for each figure n that was set by ingle_draft_input_set() or _set_text(): a
     * survey that is taken leaves it as it is.
     */
    int32_t given;
    /** Zero. */
    int32_t reserved;
} ingle_draft_input;

/**
 * Fills an input with the defaults, and with zeros what has none.
 *
 * @param[out] input receives them, `size` as well
 * @returns INGLE_OK or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_draft_input_start(ingle_draft_input *input);

/**
 * Puts one figure into an input.
 *
 * @param input started by ingle_draft_input_start()
 * @param figure one that goes in
 * @param value in SI units; whether it can be is for the estimate to say
 * @returns INGLE_OK or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_draft_input_set(ingle_draft_input *input, ingle_draft_figure figure,
                                             double value);

/**
 * Puts one figure into an input from text: `300 F`, `166.7 K`, `70 F`, `-5 Pa`, `0.8 ft/s`,
 * `15 ft`, `1/30`. A rise in °F or °C is a difference and is read as such; a temperature is not.
 *
 * @param input started by ingle_draft_input_start()
 * @param figure one that goes in
 * @param text UTF-8, need not end in NUL
 * @param length its length in bytes
 * @param[out] position receives, on error, the offset in bytes where something else was due; may
 *             be NULL
 * @returns INGLE_OK, what ingle_amount_parse() refuses, INGLE_ERROR_NEGATIVE, or
 *          INGLE_ERROR_ARGUMENT. The input is unchanged on error.
 */
INGLE_API ingle_status ingle_draft_input_set_text(ingle_draft_input *input,
                                                  ingle_draft_figure figure, const char *text,
                                                  size_t length, size_t *position);

/** Gets one figure of an input, in SI units. @returns 1, or 0 if it is none that goes in. */
INGLE_API int ingle_draft_input_get(const ingle_draft_input *input, ingle_draft_figure figure,
                                    double *value);

/* ---- the flow alone ------------------------------------------------------------------------- */

/**
 * The mean velocity through the opening, and nothing else: for curves.
 *
 * @param input what goes in
 * @param[out] velocity receives it, m/s; 0 where nothing drives a flow up the flue
 * @returns INGLE_OK, INGLE_ERROR_NEGATIVE, INGLE_ERROR_IMPLAUSIBLE, INGLE_ERROR_NUMBER (NaN or
 *          infinite), INGLE_ERROR_CONTRADICTION (a hydraulic diameter that no flue of this area
 *          has), INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_draft_velocity(const ingle_draft_input *input, double *velocity);

/**
 * What would reach the criterion, and nothing else: found by halving on the same flow, and not by
 * an inverse of its own. For a diameter the input need not have a flue, for a height no height.
 *
 * @param input what goes in
 * @param figure INGLE_DRAFT_REQUIRED_DIAMETER, _REQUIRED_AREA or _REQUIRED_HEIGHT
 * @param[out] value receives it, in SI units
 * @returns as ingle_draft_velocity(), and INGLE_ERROR_OVERFLOW where nothing within the range of
 *          the figure reaches the criterion, or already its smallest value does.
 */
INGLE_API ingle_status ingle_draft_required(const ingle_draft_input *input,
                                            ingle_draft_figure figure, double *value);

/* ---- the estimate --------------------------------------------------------------------------- */

/** An estimate with its working. One thread at a time may use it. */
typedef struct ingle_draft ingle_draft;

/**
 * Makes an empty estimate.
 *
 * @param allocator where its memory comes from; NULL for the C library
 * @param[out] draft receives it; give it back with ingle_draft_free()
 * @returns INGLE_OK, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or
 *          INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_draft_new(const ingle_allocator *allocator, ingle_draft **draft);

/** Gives an estimate back. NULL is allowed. */
INGLE_API void ingle_draft_free(ingle_draft *draft);

/**
 * Fills an input from a survey: opening, flue, height, throat, bends, cap and spark arrestor. What
 * the survey does not tell, and what is `given`, stays as it is in the input. A hydraulic diameter
 * that is given without the flue's area is that of a round flue.
 *
 * @param draft notes where each figure comes from, and what is missing
 * @param survey what was measured and observed
 * @param standards those whose tables of liners are looked into, in this order; may be NULL
 * @param standard_count how many
 * @param[in,out] input started by ingle_draft_input_start()
 * @returns INGLE_OK; INGLE_ERROR_MISSING_NAME if opening, flue or height are neither in the survey
 *          nor in the input, and ingle_draft_missing_at() tells what to measure;
 *          INGLE_ERROR_CONTRADICTION; INGLE_ERROR_OVERFLOW; INGLE_ERROR_ARGUMENT;
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_draft_take_survey(ingle_draft *draft, const ingle_survey *survey,
                                               const ingle_standard *const *standards,
                                               size_t standard_count, ingle_draft_input *input);

/** How many quantities the survey that was taken lacks. */
INGLE_API size_t ingle_draft_missing_count(const ingle_draft *draft);

/** One of the quantities that the survey lacks, from 0; NULL past the end. */
INGLE_API const ingle_quantity *ingle_draft_missing_at(const ingle_draft *draft, size_t index);

/**
 * Makes the estimate.
 *
 * @param[in,out] draft receives it; what it held before is gone, but for where a survey's figures
 *                come from
 * @param input what goes in
 * @returns as ingle_draft_velocity(); ingle_draft_error_text() and _error_figure() tell more.
 */
INGLE_API ingle_status ingle_draft_estimate(ingle_draft *draft, const ingle_draft_input *input);

/** What was wrong with the last call that failed on this object, in a sentence; "" before one. */
INGLE_API const char *ingle_draft_error_text(const ingle_draft *draft);

/** Which figure was wrong; 0 where it is the call itself. */
INGLE_API ingle_draft_figure ingle_draft_error_figure(const ingle_draft *draft);

/**
 * Gets a figure that went in or came out, in SI units.
 *
 * @param draft an estimate
 * @param figure which
 * @param[out] value receives it, always a finite number; may be NULL
 * @returns 1, or 0 if it is not known (nothing drives a flow, the criterion cannot be reached), and
 *          then nothing is written.
 */
INGLE_API int ingle_draft_get(const ingle_draft *draft, ingle_draft_figure figure, double *value);

/**
 * Gets a figure in the unit in which a format shows it.
 *
 * @param draft an estimate
 * @param figure which
 * @param format whose `unit` decides; NULL is the inch
 * @param[out] value receives it
 * @returns 1, or 0 as ingle_draft_get() or for an unusable argument; then nothing is written.
 */
INGLE_API int ingle_draft_get_shown(const ingle_draft *draft, ingle_draft_figure figure,
                                    const ingle_format *format, double *value);

/**
 * Writes a figure for people: `0.787 ft/s`.
 *
 * @param draft an estimate
 * @param figure which
 * @param format whose `unit` decides; NULL is the inch
 * @param[out] buffer receives UTF-8 that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT, INGLE_ERROR_ARGUMENT (also for a figure that is not known),
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_draft_figure_text(const ingle_draft *draft, ingle_draft_figure figure,
                                               const ingle_format *format, char *buffer,
                                               size_t capacity, size_t *length);

/**
 * Where a figure that went in comes from: `survey`, `given`, `default`, or `computed` (an inlet's
 * loss from its throat); NULL for one that did not go in.
 */
INGLE_API const char *ingle_draft_from(const ingle_draft *draft, ingle_draft_figure figure);

/**
 * The quantities of the survey that a figure comes from, `opening.width × opening.height`; NULL
 * where it is not from the survey.
 */
INGLE_API const char *ingle_draft_origin(const ingle_draft *draft, ingle_draft_figure figure);

/** How the estimate stands to the criterion. */
typedef int32_t ingle_draft_standing;

enum {
    /** Nothing drives a flow up the flue. */
    INGLE_DRAFT_NO_DRAFT = 1,
    /** The criterion is not reached, with the whole uncertainty added. */
    INGLE_DRAFT_FALLS_SHORT = 2,
    /** The criterion lies within the uncertainty. */
    INGLE_DRAFT_WITHIN_UNCERTAINTY = 3,
    /** The criterion is reached, with the whole uncertainty taken off. */
    INGLE_DRAFT_REACHES = 4
};

/** How the estimate stands to the criterion; 0 before one was made. */
INGLE_API ingle_draft_standing ingle_draft_standing_of(const ingle_draft *draft);

/** The name of a standing: `within-uncertainty`; NULL for a number that is none. */
INGLE_API const char *ingle_draft_standing_name(ingle_draft_standing standing);

/** 1 if the estimated velocity is the criterion or more, its uncertainty left out; else 0. */
INGLE_API int ingle_draft_reached(const ingle_draft *draft);

/** Writes the estimate in a sentence or two; arguments as those of ingle_draft_figure_text(). */
INGLE_API ingle_status ingle_draft_sentence(const ingle_draft *draft, const ingle_format *format,
                                            char *buffer, size_t capacity, size_t *length);

/**
 * Gets how the velocity follows a figure: by how many percent for each percent of it (∂ ln V / ∂ ln
 * x).
 *
 * @param draft an estimate
 * @param figure INGLE_DRAFT_OPENING_AREA, _FLUE_AREA (its hydraulic diameter as it is),
 *               _HYDRAULIC_DIAMETER (the flue keeping its shape, so that its area goes with it: the
 *               diameter of a round one), _HEIGHT, _RISE, _INLET_LOSS or _FRICTION_FACTOR
 * @param[out] value receives it
 * @returns 1, or 0 for another figure or without a flow, and then nothing is written.
 */
INGLE_API int ingle_draft_sensitivity(const ingle_draft *draft, ingle_draft_figure figure,
                                      double *value);

/** How many reasons put the estimate outside what may be claimed; 0 if it is inside. */
INGLE_API size_t ingle_draft_outside_count(const ingle_draft *draft);

/** One of the reasons that put the estimate outside, in a sentence; NULL past the end. */
INGLE_API const char *ingle_draft_outside_at(const ingle_draft *draft, size_t index);

/** The figure that a reason is about; 0 where it is about none, and past the end. */
INGLE_API ingle_draft_figure ingle_draft_outside_figure(const ingle_draft *draft, size_t index);

/** How many cautions belong to the estimate. */
INGLE_API size_t ingle_draft_notice_count(const ingle_draft *draft);

/** One of the cautions that belong to the estimate, from 0; NULL past the end. */
INGLE_API const char *ingle_draft_notice_at(const ingle_draft *draft, size_t index);

/** How many steps led to the estimate. */
INGLE_API size_t ingle_draft_step_count(const ingle_draft *draft);

/** The figure that one of the steps gives, from 0, in the order of calculation; 0 past the end. */
INGLE_API ingle_draft_figure ingle_draft_step_figure(const ingle_draft *draft, size_t index);

/**
 * Writes a part of a step. What is put in is in SI units; what comes out is in those of the format
 * too.
 *
 * @param draft an estimate
 * @param index of the step, from 0
 * @param part INGLE_STEP_EXPRESSION, _SUBSTITUTED, _SENTENCE or _REMARK
 * @param format whose `unit` decides; NULL is the inch
 * @param[out] buffer receives UTF-8 that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT, INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or
 *          INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_draft_step_text(const ingle_draft *draft, size_t index,
                                             ingle_step_part part, const ingle_format *format,
                                             char *buffer, size_t capacity, size_t *length);

/**
 * Writes the estimate as a page: what it comes to, what went in and from where, the working, and
 * the cautions.
 *
 * @param draft an estimate
 * @param page how it looks, and whose `unit` decides the units; NULL for plain text and inches
 * @param write receives the text
 * @param context given to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO, INGLE_ERROR_MEMORY, INGLE_ERROR_DIMENSION,
 *          INGLE_ERROR_STRUCT_SIZE, INGLE_ERROR_STRUCT_NEWER, or INGLE_ERROR_ARGUMENT (also where
 *          no estimate was made).
 */
INGLE_API ingle_status ingle_draft_page(const ingle_draft *draft, const ingle_page *page,
                                        ingle_write write, void *context);

/**
 * Writes a number as JSON has it, whatever the locale: at most that many significant digits,
 * and no more than 15 places after the point, rounded to the nearest, no exponent, no trailing
 * zeros.
 *
 * @param value a finite number of size less than 1e15
 * @param digits 1 to 15
 * @param[out] buffer receives ASCII that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT, INGLE_ERROR_NUMBER (NaN or infinite), INGLE_ERROR_OVERFLOW or
 *          INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_draft_decimal(double value, int32_t digits, char *buffer,
                                           size_t capacity, size_t *length);

#ifdef __cplusplus
}
#endif

#endif
