/* SPDX-License-Identifier: MIT */
/*
 * The figures of an estimate: what each is called, what it counts, where it stands in an input.
 */
#ifndef INGLE_DRAFT_FIGURES_H
#define INGLE_DRAFT_FIGURES_H

#include "draft/numbers.h"
#include "draft/units.h"

enum {
    INPUT_FIGURES = INGLE_DRAFT_THROAT_AREA,
    FIGURE_COUNT = INPUT_FIGURES + INGLE_DRAFT_REQUIRED_HEIGHT - INGLE_DRAFT_MEAN_TEMPERATURE + 1
};

/* The place of a figure among all. */
#define FIGURE_PLACE(figure)                     \
    ((figure) < INGLE_DRAFT_MEAN_TEMPERATURE     \
         ? (figure) - 1                          \
         : (figure) - INGLE_DRAFT_MEAN_TEMPERATURE + INPUT_FIGURES)

struct figure {
    const char *id;
    const char *symbol;
    const char *label;
    enum kind kind;
    size_t offset;                 /* in ingle_draft_input, of one that goes in */
    enum number_id default_number; /* NUMBER_NONE without one */
    double least;                  /* that is taken */
    double most;
};

/* The row of a figure, or NULL for a number that is none. */
const struct figure *figure_row(ingle_draft_figure figure);

/* Whether a figure goes in. */
bool figure_goes_in(ingle_draft_figure figure);

/* The bit of a figure that goes in among those that were given. */
int32_t figure_bit(ingle_draft_figure figure);

/* The place of a figure that goes in within an input. */
double *figure_field(ingle_draft_input *input, ingle_draft_figure figure);
double figure_in(const ingle_draft_input *input, ingle_draft_figure figure);

#endif
