/* SPDX-License-Identifier: MIT */
/*
 * Refuses what no fireplace has, before anything is computed from it.
 */
#include "base/memory.h"
#include "draft/decimal.h"
#include "draft/estimate.h"

#include <math.h>

/* By how much a stated hydraulic diameter may be larger than a circle's: its rounding. */
static const double rounding_slack = 1.01;

/* Whether the unknown that is sought stands in for a figure. */
static bool is_sought(ingle_draft_figure figure, ingle_draft_figure required)
{
    switch (required) {
    case INGLE_DRAFT_REQUIRED_DIAMETER:
        return figure == INGLE_DRAFT_FLUE_AREA || figure == INGLE_DRAFT_HYDRAULIC_DIAMETER;
    case INGLE_DRAFT_REQUIRED_HEIGHT:
        return figure == INGLE_DRAFT_HEIGHT;
    default:
        return false;
    }
}

static bool is_computed(const ingle_draft_input *input, ingle_draft_figure figure)
{
    return figure == INGLE_DRAFT_INLET_LOSS && input->inlet != INGLE_DRAFT_INLET_GIVEN;
}

static ingle_status accept_figure(ingle_draft_figure figure, double value)
{
    const struct figure *row = figure_row(figure);
    if (!isfinite(value)) {
        return INGLE_ERROR_NUMBER;
    }
    if (value < 0 && row->least >= 0) {
        return INGLE_ERROR_NEGATIVE;
    }
    return value < row->least || value > row->most ? INGLE_ERROR_IMPLAUSIBLE : INGLE_OK;
}

/* A circle has the largest hydraulic diameter of all flues of an area. */
static bool has_too_large_diameter(const ingle_draft_input *input)
{
    double diameter = input->hydraulic_diameter / rounding_slack;
    return circle_shape() * diameter * diameter > input->flue_area;
}

static struct fault accept_together(const ingle_draft_input *input, ingle_draft_figure required)
{
    struct fault fault = {INGLE_OK, 0};
    if (input->inlet != INGLE_DRAFT_INLET_GIVEN &&
        input->throat_area < figure_row(INGLE_DRAFT_FLUE_AREA)->least) {
        fault = (struct fault){INGLE_ERROR_IMPLAUSIBLE, INGLE_DRAFT_THROAT_AREA};
    } else if (required != INGLE_DRAFT_REQUIRED_DIAMETER && has_too_large_diameter(input)) {
        fault = (struct fault){INGLE_ERROR_CONTRADICTION, INGLE_DRAFT_HYDRAULIC_DIAMETER};
    }
    return fault;
}

static bool choices_are_known(const ingle_draft_input *input)
{
    const ingle_draft_circumstances all =
        INGLE_DRAFT_MORE_SIDES | INGLE_DRAFT_OTHER_APPLIANCE | INGLE_DRAFT_NOT_STRAIGHT;
    return input->inlet >= INGLE_DRAFT_INLET_GIVEN && input->inlet <= INGLE_DRAFT_INLET_ROUNDED &&
           (input->circumstances & ~all) == 0 && input->reserved == 0;
}

struct fault input_accept(const ingle_draft_input *given, ingle_draft_figure required,
                          ingle_draft_input *taken)
{
    struct fault fault = {INGLE_ERROR_ARGUMENT, 0};
    if (given == NULL) {
        return fault;
    }
    fault.status = struct_take(taken, sizeof *taken, sizeof *taken, given);
    if (fault.status == INGLE_OK && !choices_are_known(taken)) {
        fault.status = INGLE_ERROR_ARGUMENT;
    }
    for (ingle_draft_figure i = 1; fault.status == INGLE_OK && i <= INPUT_FIGURES; i++) {
        if (!is_sought(i, required) && !is_computed(taken, i)) {
            fault = (struct fault){accept_figure(i, figure_in(taken, i)), i};
        }
    }
    return fault.status == INGLE_OK ? accept_together(taken, required) : fault;
}

/* ---- in words ------------------------------------------------------------------------------- */

/* A label with a capital letter. */
static void add_label(struct text *text, ingle_draft_figure figure)
{
    const char *label = figure_row(figure)->label;
    char first = (char)(label[0] - 'a' + 'A');
    text_add_bytes(text, &first, 1);
    text_add(text, label + 1);
}

static void add_range(struct text *text, const struct figure *row, double value)
{
    if (value == 0 && row->least > 0) {
        text_add(text, " is 0 or was not given; it");
    } else if (fabs(value) < DECIMAL_LIMIT) {
        text_add(text, " cannot be ");
        text_add_shown(text, row->kind, SYSTEM_SI, value);
        text_add(text, ": it");
    } else {
        text_add(text, " cannot be so large: it");
    }
    text_add(text, " has to lie from ");
    text_add_shown(text, row->kind, SYSTEM_SI, row->least);
    text_add(text, " to ");
    text_add_shown(text, row->kind, SYSTEM_SI, row->most);
    text_add(text, ".");
}

void fault_write(const struct fault *fault, const ingle_draft_input *input, char *buffer,
                 size_t size)
{
    struct text text = text_start(buffer, size);
    if (fault->figure == 0) {
        text_add(&text, ingle_status_text(fault->status));
        return;
    }
    add_label(&text, fault->figure);
    if (fault->status == INGLE_ERROR_NUMBER) {
        text_add(&text, " is no finite number.");
    } else if (fault->status == INGLE_ERROR_CONTRADICTION) {
        text_add(&text, " is larger than that of a round flue of the same area, and no flue has "
                        "that.");
    } else if (fault->figure == INGLE_DRAFT_THROAT_AREA && input->throat_area >= 0 &&
               input->throat_area < figure_row(INGLE_DRAFT_FLUE_AREA)->least) {
        text_add(&text, " was not given, and the loss of the inlet is to be computed from it.");
    } else {
        add_range(&text, figure_row(fault->figure), figure_in(input, fault->figure));
    }
}
