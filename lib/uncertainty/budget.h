/* SPDX-License-Identifier: MIT */
/*
 * What is uncertain of one length: the tape, the reading, and what was measured.
 */
#ifndef INGLE_UNCERTAINTY_BUDGET_H
#define INGLE_UNCERTAINTY_BUDGET_H

#include "survey/survey.h"
#include "uncertainty/reckoning.h"
#include "uncertainty/tape.h"

struct ingle_length_budget {
    const struct ingle_assessment *assessment;
    enum quantity_id quantity;
    size_t item;
    int64_t length;
    bool known;      /* whether anything is published for a length like this */
    int64_t tape;    /* half-widths, in nanometres */
    double scale;    /* of the tape's: what goes in proportion to the length */
    int64_t graduation; /* the whole of it; the half-width is half */
    int64_t masonry;
    double u; /* the standard uncertainty */
    size_t first_step;
    size_t step_count;
};

/* The standard uncertainty of a rectangular distribution by its half-width. */
double rectangular(double half_width);

/* The budget of a length, its steps added. */
void budget_make(struct ingle_length_budget *budget, const struct tape *tape,
                 struct reckoning *reckoning);

#endif
