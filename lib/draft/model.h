/* SPDX-License-Identifier: MIT */
/*
 * The model itself, forward, and what is asked of it: inverses, sensitivities, uncertainty.
 */
#ifndef INGLE_DRAFT_MODEL_H
#define INGLE_DRAFT_MODEL_H

#include <ingle/draft.h>

#include <stdbool.h>

/* What comes out of one run. The velocities and the mass are 0 where nothing drives a flow. */
struct flow {
    bool flows;
    double inlet_loss; /* given, or computed from the throat */
    double mean_temperature;
    double theta;
    double outdoor_density;
    double gas_density;
    double room_density;
    double theoretical_draft;
    double driving_pressure;
    double friction_loss;
    double total_loss;
    double area_ratio;
    double flue_velocity;
    double frontal_velocity;
    double mass_flow;
};

/* model.c: runs the model on an input that was accepted. */
void flow_run(const ingle_draft_input *input, struct flow *flow);

/* The loss of an inlet from the area of its throat, textbook losses put together. */
double inlet_loss_of(double flue_area, double throat_area, bool rounded);

/* solve.c: the least value at which the criterion is reached; false where there is none. */
bool solve_required(const ingle_draft_input *input, ingle_draft_figure figure, double *value);

/* The diameter or area of a flue that is `shape` × D² in area; a circle's is π/4. */
double circle_shape(void);

/* sensitivity.c: ∂ ln V / ∂ ln x; false without a flow. */
bool sensitivity_of(const ingle_draft_input *input, ingle_draft_figure figure, double *value);

/* The relative standard uncertainty of the velocity; false without a flow. */
bool uncertainty_of(const ingle_draft_input *input, double *uncertainty);

#endif
