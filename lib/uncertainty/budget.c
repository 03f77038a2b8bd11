/* SPDX-License-Identifier: MIT */
#include "uncertainty/budget.h"

#include "uncertainty/figure.h"

#include <math.h>

#define SQUARE_ROOT_OF_3 1.73205080756887729353

double rectangular(double half_width)
{
    return half_width / SQUARE_ROOT_OF_3;
}

static ingle_figure length_of(double nanometres)
{
    return figure_of(nanometres, INGLE_LENGTH);
}

/* ---- steps ---------------------------------------------------------------------------------- */

static void add_error_step(struct reckoning *reckoning, const struct tape_error *error)
{
    const char *expression = error->unit == 0 ? "{0}"
                             : error->hook > 0 ? "{0} + {1} × {2} + {3}"
                                               : "{0} + {1} × {2}";
    ADD_STEP(reckoning, .label = "maximum permissible error of the tape",
             .expression = expression,
             .operands = {{"a", length_of((double)error->fixed)},
                          {"b", length_of((double)error->for_each)},
                          {"metres or yards begun", figure_plain((double)error->units)},
                          {"c", length_of((double)error->hook)}},
             .result = length_of((double)error->whole), .has_result = true,
             .remark = error->source);
}

static void add_part_step(struct reckoning *reckoning, const char *label, const char *name,
                          double half_width)
{
    ADD_STEP(reckoning, .label = label, .expression = "{0} ÷ √3",
             .operands = {{name, length_of(half_width)}},
             .result = length_of(rectangular(half_width)), .has_result = true);
}

static void add_steps(const struct ingle_length_budget *budget, const struct tape_error *error,
                      struct reckoning *reckoning)
{
    add_error_step(reckoning, error);
    add_part_step(reckoning, "standard uncertainty from the tape", "error", (double)error->whole);
    add_part_step(reckoning, "standard uncertainty from the reading", "half a graduation",
                  (double)budget->graduation / 2);
    if (budget->masonry > 0) {
        add_part_step(reckoning, "standard uncertainty from the masonry", "irregularity",
                      (double)budget->masonry);
    }
    ADD_STEP(reckoning, .label = "standard uncertainty of the length",
             .expression = budget->masonry > 0 ? "√(({0})² + ({1})² + ({2})²)"
                                               : "√(({0})² + ({1})²)",
             .operands = {{"tape", length_of(rectangular((double)error->whole))},
                          {"reading", length_of(rectangular((double)budget->graduation / 2))},
                          {"masonry", length_of(rectangular((double)budget->masonry))}},
             .result = length_of(budget->u), .has_result = true);
}

/* ---- the budget ----------------------------------------------------------------------------- */

void budget_make(struct ingle_length_budget *budget, const struct tape *tape,
                 struct reckoning *reckoning)
{
    struct tape_error error;
    budget->first_step = reckoning->count;
    budget->known = tape_error(tape, budget->length, &error);
    if (budget->known) {
        budget->tape = error.whole;
        if (error.unit != 0) {
            budget->scale =
                (double)error.for_each * (double)budget->length / (double)error.unit;
        }
        budget->graduation = tape->graduation;
        budget->masonry = tape->irregularity;
        double from_tape = rectangular((double)budget->tape);
        double from_reading = rectangular((double)budget->graduation / 2);
        double from_masonry = rectangular((double)budget->masonry);
        budget->u = sqrt(from_tape * from_tape + from_reading * from_reading +
                         from_masonry * from_masonry);
        add_steps(budget, &error, reckoning);
    }
    budget->step_count = reckoning->count - budget->first_step;
}
