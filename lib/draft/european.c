/* SPDX-License-Identifier: MIT */
/*
 * Relations in the European form, and the friction and cooling that go with them.
 */
#include "draft/numbers.h"
#include "draft/relation.h"

#include <ingle/draft_relations.h>

#include <math.h>

/* ---- friction ------------------------------------------------------------------------------- */

/* More turns than the slowest pipe takes to stand still. */
enum { FRICTION_TURNS = 100 };

/* Both sides of the relation have 1/√ψ: put in turn after turn, it comes to rest. */
static double friction(double reynolds, double roughness)
{
    double root = 6.0; /* 1/√ψ of a pipe that is neither smooth nor rough */
    for (int i = 0; i < FRICTION_TURNS; i++) {
        root = -2.0 * log10(2.51 * root / reynolds + roughness / 3.71);
    }
    return 1.0 / (root * root);
}

ingle_status ingle_draft_friction_factor(double reynolds, double roughness, double *factor)
{
    ingle_status accepted =
        ACCEPT(FROM_TO(reynolds, 4000.0, 1e9), FROM_TO(roughness, 0.0, 0.1));
    return relation_give(accepted, accepted == INGLE_OK ? friction(reynolds, roughness) : 0.0,
                         factor);
}

/* ---- draught -------------------------------------------------------------------------------- */

ingle_status ingle_draft_en_air_pressure(double altitude, double *pressure)
{
    double column = number_of(NUMBER_EN_GAS_CONSTANT) * number_of(NUMBER_EN_AIR_TEMPERATURE);
    return relation_give(ACCEPT(FROM_TO(altitude, -1000.0, 11000.0)),
                         number_of(NUMBER_EN_SEA_PRESSURE) *
                             exp(-number_of(NUMBER_EN_GRAVITY) * altitude / column),
                         pressure);
}

static double density(double pressure, double temperature)
{
    return pressure / (number_of(NUMBER_EN_GAS_CONSTANT) * temperature);
}

ingle_status ingle_draft_en_density(double pressure, double temperature, double *result)
{
    return relation_give(ACCEPT(POSITIVE(pressure), POSITIVE(temperature)),
                         density(pressure, temperature), result);
}

ingle_status ingle_draft_en_draught(double pressure, double height, double air_temperature,
                                    double gas_temperature, double *draught)
{
    return relation_give(ACCEPT(POSITIVE(pressure), POSITIVE(height), POSITIVE(air_temperature),
                                POSITIVE(gas_temperature)),
                         height * number_of(NUMBER_EN_GRAVITY) *
                             (density(pressure, air_temperature) -
                              density(pressure, gas_temperature)),
                         draught);
}

ingle_status ingle_draft_en_resistance(double flow_factor, double friction_factor, double length,
                                       double diameter, double fittings, double gas_density,
                                       double velocity, double velocity_change,
                                       double *resistance)
{
    double heads = friction_factor * length / diameter + fittings;
    double by_change = velocity_change >= 0.0 ? flow_factor * velocity_change : velocity_change;
    return relation_give(ACCEPT(POSITIVE(flow_factor), NOT_NEGATIVE(friction_factor),
                                NOT_NEGATIVE(length), POSITIVE(diameter), NOT_NEGATIVE(fittings),
                                POSITIVE(gas_density), NOT_NEGATIVE(velocity),
                                OF_ANY_SIGN(velocity_change)),
                         flow_factor * heads * gas_density * velocity * velocity / 2.0 + by_change,
                         resistance);
}

/* ---- cooling -------------------------------------------------------------------------------- */

ingle_status ingle_draft_en_heat_transfer(double inner_coefficient, double factor,
                                          double resistance, double inner_diameter,
                                          double outer_diameter, double outer_coefficient,
                                          double *coefficient)
{
    double outside = inner_diameter / (outer_diameter * outer_coefficient);
    return relation_give(ACCEPT(POSITIVE(inner_coefficient), POSITIVE(factor),
                                NOT_NEGATIVE(resistance), POSITIVE(inner_diameter),
                                POSITIVE(outer_diameter), POSITIVE(outer_coefficient)),
                         1.0 / (1.0 / inner_coefficient + factor * (resistance + outside)),
                         coefficient);
}

ingle_status ingle_draft_cooling_number(double perimeter, double coefficient, double length,
                                        double mass_flow, double heat_capacity, double *number)
{
    return relation_give(ACCEPT(POSITIVE(perimeter), POSITIVE(coefficient), POSITIVE(length),
                                POSITIVE(mass_flow), POSITIVE(heat_capacity)),
                         perimeter * coefficient * length / (mass_flow * heat_capacity), number);
}

/* (1 − e^−K) / K, which is 1 where nothing cools. */
static double mean_share(double cooling)
{
    return cooling > 0.0 ? -expm1(-cooling) / cooling : 1.0;
}

ingle_status ingle_draft_cooling(double cooling, double entry, double around, double *mean,
                                 double *outlet)
{
    double ignored;
    ingle_status accepted =
        ACCEPT(NOT_NEGATIVE(cooling), OF_ANY_SIGN(entry), OF_ANY_SIGN(around));
    ingle_status status =
        relation_give(accepted, around + (entry - around) * mean_share(cooling),
                      mean != NULL ? mean : &ignored);
    return status != INGLE_OK ? status
                              : relation_give(accepted, around + (entry - around) * exp(-cooling),
                                              outlet != NULL ? outlet : &ignored);
}
