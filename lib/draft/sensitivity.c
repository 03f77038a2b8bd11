/* SPDX-License-Identifier: MIT */
/*
 * How the velocity follows what goes in, by small steps of the forward model to either side, and
 * the uncertainty that comes of it.
 */
#include "draft/figures.h"
#include "draft/model.h"

#include <math.h>

static const double step = 1e-4;

static bool logarithm_of_velocity(const ingle_draft_input *input, double *logarithm)
{
    struct flow flow;
    flow_run(input, &flow);
    if (flow.flows) {
        *logarithm = log(flow.frontal_velocity);
    }
    return flow.flows;
}

/* By how much ln V changes from one input to another. */
static bool change(const ingle_draft_input *from, const ingle_draft_input *to, double *difference)
{
    double before, after;
    if (!logarithm_of_velocity(from, &before) || !logarithm_of_velocity(to, &after)) {
        return false;
    }
    *difference = after - before;
    return true;
}

static void multiply(ingle_draft_input *input, ingle_draft_figure figure, double factor)
{
    *figure_field(input, figure) *= factor;
    if (figure == INGLE_DRAFT_HYDRAULIC_DIAMETER) {
        input->flue_area *= factor * factor;
    }
}

/* A loss computed from the throat is as good as one given, once it is computed. */
static ingle_draft_input with_inlet_loss(const ingle_draft_input *input)
{
    struct flow flow;
    ingle_draft_input given = *input;
    flow_run(input, &flow);
    given.inlet_loss = flow.inlet_loss;
    given.inlet = INGLE_DRAFT_INLET_GIVEN;
    return given;
}

bool sensitivity_of(const ingle_draft_input *input, ingle_draft_figure figure, double *value)
{
    double difference;
    ingle_draft_input less = with_inlet_loss(input);
    ingle_draft_input more = less;
    multiply(&less, figure, exp(-step));
    multiply(&more, figure, exp(step));
    if (!change(&less, &more, &difference)) {
        return false;
    }
    *value = difference / (2.0 * step);
    return true;
}

/* What a standard uncertainty of one figure, in its own unit, brings to that of V. */
static bool contribution(const ingle_draft_input *input, ingle_draft_figure figure,
                         double uncertainty, double *part)
{
    double difference;
    ingle_draft_input less = *input;
    ingle_draft_input more = *input;
    *figure_field(&less, figure) -= uncertainty * step;
    *figure_field(&more, figure) += uncertainty * step;
    if (!change(&less, &more, &difference)) {
        return false;
    }
    *part = difference / (2.0 * step);
    return true;
}

bool uncertainty_of(const ingle_draft_input *input, double *uncertainty)
{
    const ingle_draft_input given = with_inlet_loss(input);
    double friction = number_of(NUMBER_UNCERTAIN_FRICTION) * given.friction_factor;
    double height = number_of(NUMBER_UNCERTAIN_HEIGHT) * given.height;
    double parts[4];
    if (!contribution(&given, INGLE_DRAFT_INLET_LOSS, number_of(NUMBER_UNCERTAIN_INLET),
                      &parts[0]) ||
        !contribution(&given, INGLE_DRAFT_FRICTION_FACTOR, friction, &parts[1]) ||
        !contribution(&given, INGLE_DRAFT_RISE, number_of(NUMBER_UNCERTAIN_RISE), &parts[2]) ||
        !contribution(&given, INGLE_DRAFT_HEIGHT, height, &parts[3])) {
        return false;
    }
    *uncertainty = sqrt(parts[0] * parts[0] + parts[1] * parts[1] + parts[2] * parts[2] +
                        parts[3] * parts[3]);
    return true;
}
