/* SPDX-License-Identifier: MIT */
/*
 * The handbook's relations, and those of the textbook, one by one.
 */
#include "draft/model.h"
#include "draft/numbers.h"
#include "draft/relation.h"

#include <ingle/draft_relations.h>

#include <math.h>
#include <string.h>

static const double foot = 0.3048;

/* The atmosphere's relation holds in the troposphere. */
static const double lowest = -1000.0;
static const double highest = 11000.0;

static bool is_of_group(const ingle_draft_number *constant, const char *group)
{
    return constant == NULL || strcmp(constant->group, group) == 0;
}

/* ---- draft and density ---------------------------------------------------------------------- */

ingle_status ingle_draft_theoretical(const ingle_draft_number *constant, double pressure,
                                     double height, double outdoor_temperature,
                                     double mean_temperature, double *draft)
{
    if (!is_of_group(constant, "draft-constant")) {
        return INGLE_ERROR_ARGUMENT;
    }
    double factor = constant != NULL
                        ? constant->value
                        : number_of(NUMBER_GRAVITY) / number_of(NUMBER_GAS_CONSTANT);
    return relation_give(ACCEPT(POSITIVE(pressure), POSITIVE(height),
                                POSITIVE(outdoor_temperature), POSITIVE(mean_temperature)),
                         factor * pressure * height *
                             (1.0 / outdoor_temperature - 1.0 / mean_temperature),
                         draft);
}

ingle_status ingle_draft_available(double theoretical, double losses, double *available)
{
    return relation_give(ACCEPT(OF_ANY_SIGN(theoretical), NOT_NEGATIVE(losses)),
                         theoretical - losses, available);
}

ingle_status ingle_draft_density(const ingle_draft_number *constant, double pressure,
                                 double temperature, double *density)
{
    if (!is_of_group(constant, "density-constant")) {
        return INGLE_ERROR_ARGUMENT;
    }
    double factor = constant != NULL ? constant->value : 1.0 / number_of(NUMBER_GAS_CONSTANT);
    return relation_give(ACCEPT(POSITIVE(pressure), POSITIVE(temperature)),
                         factor * pressure / temperature, density);
}

/* ---- losses --------------------------------------------------------------------------------- */

ingle_status ingle_draft_pressure_loss(double coefficient, double density, double velocity,
                                       double *loss)
{
    return relation_give(
        ACCEPT(NOT_NEGATIVE(coefficient), POSITIVE(density), NOT_NEGATIVE(velocity)),
        coefficient * density * velocity * velocity / 2.0, loss);
}

ingle_status ingle_draft_pressure_loss_inches(double coefficient, double density, double velocity,
                                              double *loss)
{
    double gravity = number_of(NUMBER_GRAVITY) / foot;
    return relation_give(
        ACCEPT(NOT_NEGATIVE(coefficient), POSITIVE(density), NOT_NEGATIVE(velocity)),
        coefficient * density * velocity * velocity /
            (number_of(NUMBER_LOSS_INCHES) * 2.0 * gravity),
        loss);
}

ingle_status ingle_draft_friction_of_length(double length, double diameter, double *coefficient)
{
    return relation_give(ACCEPT(NOT_NEGATIVE(length), POSITIVE(diameter)),
                         number_of(NUMBER_FRICTION_PER_FOOT) * length / diameter, coefficient);
}

static double fourth_power(double value)
{
    return value * value * value * value;
}

ingle_status ingle_draft_reducer_loss(double larger, double smaller, double *coefficient)
{
    return relation_give(ACCEPT(POSITIVE(smaller), FROM_TO(larger, smaller, RELATION_LIMIT)),
                         1.0 - fourth_power(smaller / larger), coefficient);
}

ingle_status ingle_draft_exit_cone_loss(double larger, double smaller, double *coefficient)
{
    return relation_give(ACCEPT(POSITIVE(smaller), FROM_TO(larger, smaller, RELATION_LIMIT)),
                         fourth_power(larger / smaller) - 1.0, coefficient);
}

ingle_status ingle_draft_throat_loss(double flue_area, double throat_area,
                                     ingle_draft_inlet inlet, double *coefficient)
{
    if (inlet != INGLE_DRAFT_INLET_SHARP && inlet != INGLE_DRAFT_INLET_ROUNDED) {
        return INGLE_ERROR_ARGUMENT;
    }
    return relation_give(
        ACCEPT(POSITIVE(flue_area), POSITIVE(throat_area)),
        inlet_loss_of(flue_area, throat_area, inlet == INGLE_DRAFT_INLET_ROUNDED), coefficient);
}

/* ---- flows ---------------------------------------------------------------------------------- */

ingle_status ingle_draft_gas_flow(double input, double mass_ratio, double *mass_flow)
{
    return relation_give(ACCEPT(POSITIVE(input), POSITIVE(mass_ratio)), input * mass_ratio,
                         mass_flow);
}

ingle_status ingle_draft_heat_input(double diameter, double mass_ratio, double loss,
                                    double pressure, double coefficient, double mean_temperature,
                                    double *input)
{
    return relation_give(ACCEPT(POSITIVE(diameter), POSITIVE(mass_ratio), POSITIVE(loss),
                                POSITIVE(pressure), POSITIVE(coefficient),
                                POSITIVE(mean_temperature)),
                         number_of(NUMBER_INPUT_CONSTANT) * diameter * diameter / mass_ratio *
                             sqrt(loss * pressure / (coefficient * mean_temperature)),
                         input);
}

ingle_status ingle_draft_stack_flow(double coefficient, double area, double height,
                                    double inside_temperature, double outdoor_temperature,
                                    double *flow)
{
    return relation_give(ACCEPT(POSITIVE(coefficient), POSITIVE(area), POSITIVE(height),
                                POSITIVE(outdoor_temperature),
                                FROM_TO(inside_temperature, outdoor_temperature, RELATION_LIMIT)),
                         coefficient * area *
                             sqrt(2.0 * number_of(NUMBER_GRAVITY) * height *
                                  (inside_temperature - outdoor_temperature) /
                                  inside_temperature),
                         flow);
}

/* ---- atmosphere ----------------------------------------------------------------------------- */

/* The pressure at an altitude as a share of that at sea level. */
static double share_of_pressure(double altitude)
{
    return pow(1.0 - number_of(NUMBER_ATMOSPHERE_LAPSE) * altitude,
               number_of(NUMBER_ATMOSPHERE_EXPONENT));
}

ingle_status ingle_draft_air_pressure(double altitude, double *pressure)
{
    return relation_give(ACCEPT(FROM_TO(altitude, lowest, highest)),
                         number_of(NUMBER_ATMOSPHERE_SEA) * 1000.0 * share_of_pressure(altitude),
                         pressure);
}

ingle_status ingle_draft_altitude_factor(double altitude, double *factor)
{
    return relation_give(ACCEPT(FROM_TO(altitude, lowest, highest)),
                         1.0 / share_of_pressure(altitude), factor);
}
