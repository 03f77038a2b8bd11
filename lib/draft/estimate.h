/* SPDX-License-Identifier: MIT */
/*
 * An estimate as the files of this room see it.
 */
#ifndef INGLE_DRAFT_ESTIMATE_H
#define INGLE_DRAFT_ESTIMATE_H

#include "draft/figures.h"
#include "draft/model.h"

#include <stdbool.h>

enum { REASONS = 12, DRAFT_NOTICES = 12, STEPS = 24, LACKING = 4, DRAFT_TEXT_SIZE = 280 };

/* Why an estimate is outside what may be claimed. */
struct reason {
    ingle_draft_figure figure; /* 0 for none */
    char text[DRAFT_TEXT_SIZE];
};

struct draft_step;

struct ingle_draft {
    ingle_allocator allocator;
    ingle_draft_input input;
    double values[FIGURE_COUNT];
    bool known[FIGURE_COUNT];
    ingle_draft_standing standing; /* 0 before an estimate */

    /* From the survey that was taken. */
    const char *origins[INPUT_FIGURES]; /* NULL for what it did not tell */
    double surveyed[INPUT_FIGURES];
    const ingle_quantity *missing[LACKING];
    size_t missing_count;
    bool proportions_from_name; /* the hydraulic diameter rests on a liner's nominal sizes */

    struct reason outside[REASONS];
    size_t outside_count;
    const char *notices[DRAFT_NOTICES];
    size_t notice_count;
    const struct draft_step *steps[STEPS];
    size_t step_count;

    char error_text[DRAFT_TEXT_SIZE];
    ingle_draft_figure error_figure;
};

/* What is wrong with an input. */
struct fault {
    ingle_status status;
    ingle_draft_figure figure; /* 0 for the call itself */
};

/*
 * accept.c: takes the caller's input, and refuses what is not finite, out of range or contradicts
 * itself. With `required` what that figure does without need not be there.
 */
struct fault input_accept(const ingle_draft_input *given, ingle_draft_figure required,
                          ingle_draft_input *taken);

/* Writes what is wrong, in a sentence. */
void fault_write(const struct fault *fault, const ingle_draft_input *input, char *text,
                 size_t size);

/* range.c: the reasons that put an estimate outside what may be claimed. */
void range_check(struct ingle_draft *draft);

/* notices.c: the cautions. */
void draft_notices_collect(struct ingle_draft *draft);

/* steps.c: which steps led to the estimate. */
void draft_steps_collect(struct ingle_draft *draft);

/* Whether a figure that went in has the value of its default. */
bool is_default(const struct ingle_draft *draft, ingle_draft_figure figure);

/* The value of a figure, known or not. */
double figure_value(const struct ingle_draft *draft, ingle_draft_figure figure);

#endif
