/* SPDX-License-Identifier: MIT */
/*
 * What would reach the criterion, by halving on the forward model: there is no second equation
 * that could disagree with it.
 */
#include "draft/figures.h"
#include "draft/model.h"

#include <math.h>

/* More halvings than a double has bits. */
enum { HALVINGS = 200 };

/* π/4 × D² is a circle, D² a square. */
double circle_shape(void)
{
    return atan(1.0);
}

/* One unknown of an input: its height, or the hydraulic diameter of a flue that keeps its shape. */
struct unknown {
    ingle_draft_input input;
    ingle_draft_figure figure;
    double shape; /* of the flue; not used for a height */
};

static bool reaches(struct unknown *unknown, double value)
{
    struct flow flow;
    *figure_field(&unknown->input, unknown->figure) = value;
    if (unknown->figure == INGLE_DRAFT_HYDRAULIC_DIAMETER) {
        unknown->input.flue_area = unknown->shape * value * value;
    }
    flow_run(&unknown->input, &flow);
    return flow.flows && flow.frontal_velocity >= unknown->input.criterion;
}

/* Halves the range of the unknown, as ratios, down to neighbouring doubles. */
static bool halve(struct unknown *unknown, double *value)
{
    double low, high;
    ingle_draft_figure_range(unknown->figure, &low, &high);
    if (reaches(unknown, low) || !reaches(unknown, high)) {
        return false;
    }
    for (int i = 0; i < HALVINGS; i++) {
        double middle = sqrt(low) * sqrt(high);
        if (middle <= low || middle >= high) {
            break;
        }
        if (reaches(unknown, middle)) {
            high = middle;
        } else {
            low = middle;
        }
    }
    *value = high;
    return true;
}

bool solve_required(const ingle_draft_input *input, ingle_draft_figure figure, double *value)
{
    double found;
    double diameter = input->hydraulic_diameter;
    struct unknown unknown = {*input, INGLE_DRAFT_HYDRAULIC_DIAMETER, circle_shape()};
    if (figure == INGLE_DRAFT_REQUIRED_HEIGHT) {
        unknown.figure = INGLE_DRAFT_HEIGHT;
    } else if (figure == INGLE_DRAFT_REQUIRED_AREA) {
        unknown.shape = input->flue_area / (diameter * diameter);
    }
    if (!halve(&unknown, &found)) {
        return false;
    }
    *value = figure == INGLE_DRAFT_REQUIRED_AREA ? unknown.shape * found * found : found;
    return true;
}
