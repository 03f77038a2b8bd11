/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Published relations of chimney draft, each alone: for teaching, and to see how the estimate of
 * draft.h stands to them. None of them decides anything.
 *
 * Draft is positive upwards, losses are positive. All arguments are finite; those of which it is
 * not said otherwise are greater than 0. Every function returns INGLE_OK; INGLE_ERROR_NUMBER for a
 * NaN or an infinity; INGLE_ERROR_IMPLAUSIBLE for a value that the relation has no sense for;
 * INGLE_ERROR_OVERFLOW if what comes out is not finite; INGLE_ERROR_ARGUMENT for a missing pointer.
 * On error nothing is written. "Handbook" is the ASHRAE Handbook, HVAC Systems and Equipment,
 * chapter on chimneys and fireplaces; how each number is known stands in ingle_draft_number_at().
 */
#ifndef INGLE_DRAFT_RELATIONS_H
#define INGLE_DRAFT_RELATIONS_H

#include <ingle/api.h>
#include <ingle/draft.h>
#include <ingle/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* ---- the handbook's ------------------------------------------------------------------------- */

/**
 * Theoretical draft: constant × B × H × (1/To − 1/Tm).
 *
 * @param constant one of the group `draft-constant`, in whose units all else is; NULL is that from
 *                 physics (g/R), in pascals, metres and kelvins
 * @param pressure of the outdoor air, B
 * @param height H
 * @param outdoor_temperature absolute, To
 * @param mean_temperature of the gas, absolute, Tm; where it is less than To the draft is negative
 * @param[out] draft receives it
 */
INGLE_API ingle_status ingle_draft_theoretical(const ingle_draft_number *constant,
                                               double pressure, double height,
                                               double outdoor_temperature,
                                               double mean_temperature, double *draft);

/**
 * Available draft: theoretical draft less the losses, all in one unit.
 *
 * @param theoretical of any sign
 * @param losses 0 or more
 * @param[out] available receives it
 */
INGLE_API ingle_status ingle_draft_available(double theoretical, double losses,
                                             double *available);

/**
 * Density: constant × B / T.
 *
 * @param constant one of the group `density-constant`, in whose units all else is; NULL is that
 *                 from physics (1/R), in SI units
 * @param pressure B
 * @param temperature absolute, T
 * @param[out] density receives it
 */
INGLE_API ingle_status ingle_draft_density(const ingle_draft_number *constant, double pressure,
                                           double temperature, double *density);

/**
 * Pressure loss: k ρ V² / 2, Pa.
 *
 * @param coefficient k, 0 or more
 * @param density kg/m³
 * @param velocity m/s, 0 or more
 * @param[out] loss receives it
 */
INGLE_API ingle_status ingle_draft_pressure_loss(double coefficient, double density,
                                                 double velocity, double *loss);

/**
 * The same as the handbook has it in inches of water: k ρ V² / (5.2 × 2 g).
 *
 * @param coefficient k, 0 or more
 * @param density lb/ft³
 * @param velocity ft/s, 0 or more
 * @param[out] loss receives it
 */
INGLE_API ingle_status ingle_draft_pressure_loss_inches(double coefficient, double density,
                                                        double velocity, double *loss);

/**
 * Mass flow of chimney gas: input × mass ratio, kg/s.
 *
 * @param input heat input, MW
 * @param mass_ratio kg/MJ, see the group `mass-to-input`
 * @param[out] mass_flow receives it
 */
INGLE_API ingle_status ingle_draft_gas_flow(double input, double mass_ratio, double *mass_flow);

/**
 * Heat input that a flue carries: 4.13e5 (d² / M) √(Δp B / (k Tm)), Btu/h.
 *
 * @param diameter d, in
 * @param mass_ratio M, lb for each 1000 Btu
 * @param loss Δp, in.wc
 * @param pressure B, inHg
 * @param coefficient k
 * @param mean_temperature Tm, °R
 * @param[out] input receives it
 */
INGLE_API ingle_status ingle_draft_heat_input(double diameter, double mass_ratio, double loss,
                                              double pressure, double coefficient,
                                              double mean_temperature, double *input);

/**
 * Loss by friction in velocity heads: 0.4 L / d.
 *
 * @param length L, ft, 0 or more
 * @param diameter d, in
 * @param[out] coefficient receives it
 */
INGLE_API ingle_status ingle_draft_friction_of_length(double length, double diameter,
                                                      double *coefficient);

/**
 * Pressure of the standard atmosphere, Pa.
 *
 * @param altitude m, −1000 to 11 000
 * @param[out] pressure receives it
 */
INGLE_API ingle_status ingle_draft_air_pressure(double altitude, double *pressure);

/**
 * By how much more volume a mass flow takes at an altitude: pressure at sea level by that there. It
 * is for mass flow or heat input, not for a criterion of frontal velocity.
 *
 * @param altitude m, −1000 to 11 000
 * @param[out] factor receives it
 */
INGLE_API ingle_status ingle_draft_altitude_factor(double altitude, double *factor);

/**
 * Loss of a tapered reducer in velocity heads: 1 − (d2/d1)⁴.
 *
 * @param larger d1
 * @param smaller d2, not more than d1
 * @param[out] coefficient receives it
 */
INGLE_API ingle_status ingle_draft_reducer_loss(double larger, double smaller,
                                                double *coefficient);

/**
 * Loss of a converging exit cone in velocity heads: (d1/d2)⁴ − 1.
 *
 * @param larger d1
 * @param smaller d2, not more than d1
 * @param[out] coefficient receives it
 */
INGLE_API ingle_status ingle_draft_exit_cone_loss(double larger, double smaller,
                                                  double *coefficient);

/* ---- textbook ------------------------------------------------------------------------------- */

/**
 * Flow of a stack: C A √(2 g H (Ti − To) / Ti), m³/s (common practice).
 *
 * @param coefficient C; the number `flow-coefficient` has its range
 * @param area A, m²
 * @param height H, m
 * @param inside_temperature Ti, K, not less than To
 * @param outdoor_temperature To, K
 * @param[out] flow receives it
 */
INGLE_API ingle_status ingle_draft_stack_flow(double coefficient, double area, double height,
                                              double inside_temperature,
                                              double outdoor_temperature, double *flow);

/**
 * Loss of a fireplace's inlet in velocity heads of the flue, from textbook losses:
 * (Af/At)² (k_entry + (1 − 1/3.5)²) + 0.2.
 *
 * @param flue_area Af
 * @param throat_area At, in the same unit
 * @param inlet INGLE_DRAFT_INLET_SHARP or INGLE_DRAFT_INLET_ROUNDED
 * @param[out] coefficient receives it
 */
INGLE_API ingle_status ingle_draft_throat_loss(double flue_area, double throat_area,
                                               ingle_draft_inlet inlet, double *coefficient);

/**
 * Friction factor of a rough pipe: 1/√ψ = −2 log10(2.51/(Re √ψ) + ε/3.71).
 *
 * @param reynolds Re, 4000 to 1e9: turbulent
 * @param roughness ε, roughness by hydraulic diameter, 0 to 0.1; see the group `roughness`
 * @param[out] factor receives it
 */
INGLE_API ingle_status ingle_draft_friction_factor(double reynolds, double roughness,
                                                   double *factor);

/* ---- the European form ---------------------------------------------------------------------- */

/*
 * The forms are those of EN 13384-1, their constants from memory. That standard is for appliances
 * with an outlet, not for a fire open to the room; no result of these is a result by it.
 */

/**
 * Air pressure in the European form: 97000 exp(−g z / (288 × 288.15)), Pa.
 *
 * @param altitude z, m, −1000 to 11 000
 * @param[out] pressure receives it
 */
INGLE_API ingle_status ingle_draft_en_air_pressure(double altitude, double *pressure);

/**
 * Density of air in the European form: p / (288 T), kg/m³.
 *
 * @param pressure Pa
 * @param temperature K
 * @param[out] density receives it
 */
INGLE_API ingle_status ingle_draft_en_density(double pressure, double temperature,
                                              double *density);

/**
 * Draught in the European form, the gas taken as air: H g (ρ air − ρ gas), Pa.
 *
 * @param pressure Pa
 * @param height H, m
 * @param air_temperature K
 * @param gas_temperature mean, K; where it is less than the air's the draught is negative
 * @param[out] draught receives it
 */
INGLE_API ingle_status ingle_draft_en_draught(double pressure, double height,
                                              double air_temperature, double gas_temperature,
                                              double *draught);

/**
 * Resistance in the European form: S (ψ L / D + Σζ) ρ w² / 2 + S' p_G, Pa, with S' = S where p_G
 * is 0 or more, else 1.
 *
 * @param flow_factor S; see `en-flow-factor-room-air`
 * @param friction ψ, 0 or more
 * @param length L, m, 0 or more
 * @param diameter D, m
 * @param fittings Σζ, 0 or more
 * @param density ρ, kg/m³
 * @param velocity w, m/s, 0 or more
 * @param velocity_change p_G, Pa, by the change of velocity; of any sign
 * @param[out] resistance receives it
 */
INGLE_API ingle_status ingle_draft_en_resistance(double flow_factor, double friction,
                                                 double length, double diameter, double fittings,
                                                 double density, double velocity,
                                                 double velocity_change, double *resistance);

/**
 * Heat through a chimney's wall in the European form: 1 / (1/αi + S (1/Λ + D/(Da αa))), W/(m² K).
 *
 * @param inner_coefficient αi, W/(m² K)
 * @param factor S; see `en-heat-factor-pressure`
 * @param resistance 1/Λ, m² K/W, 0 or more
 * @param inner_diameter D, m
 * @param outer_diameter Da, m
 * @param outer_coefficient αa, W/(m² K)
 * @param[out] coefficient receives it
 */
INGLE_API ingle_status ingle_draft_en_heat_transfer(double inner_coefficient, double factor,
                                                    double resistance, double inner_diameter,
                                                    double outer_diameter,
                                                    double outer_coefficient,
                                                    double *coefficient);

/**
 * Cooling number: U k L / (m c).
 *
 * @param perimeter U, m
 * @param coefficient k, W/(m² K)
 * @param length L, m
 * @param mass_flow m, kg/s
 * @param heat_capacity c, J/(kg K)
 * @param[out] number receives it
 */
INGLE_API ingle_status ingle_draft_cooling_number(double perimeter, double coefficient,
                                                  double length, double mass_flow,
                                                  double heat_capacity, double *number);

/**
 * Gas that cools along a flue: mean Tu + (Te − Tu)(1 − e^−K)/K and outlet Tu + (Te − Tu) e^−K. Any
 * temperature scale, the same for all.
 *
 * @param cooling K, 0 or more
 * @param entry Te, of any sign
 * @param around Tu, of any sign
 * @param[out] mean receives the mean temperature; may be NULL
 * @param[out] outlet receives the temperature at the top; may be NULL
 */
INGLE_API ingle_status ingle_draft_cooling(double cooling, double entry, double around,
                                           double *mean, double *outlet);

#ifdef __cplusplus
}
#endif

#endif
