/* SPDX-License-Identifier: MIT */
#include "uncertainty/monte_carlo.h"

#include "base/random.h"

#include <math.h>

/* Draws the true length behind a measured one; `tape` is the tape's share of its error. */
static int64_t draw_length(struct random *random, const struct ingle_length_budget *budget,
                           int64_t tape)
{
    int64_t length = budget->length + random_part(tape, budget->tape) +
                     random_part(random_share(random), budget->graduation) / 2;
    if (budget->masonry > 0) {
        length += random_part(random_share(random), budget->masonry);
    }
    return length < 0 ? 0 : length;
}

static void draw(struct random *random, const struct propagation *propagation, bool separate,
                 struct calculation *trial)
{
    int64_t tape = random_share(random);
    for (size_t i = 0; i < propagation->count; i++) {
        const struct ingle_length_budget *budget = propagation->shares[i].budget;
        if (separate && i > 0) {
            tape = random_share(random);
        }
        calculation_try(trial, budget->quantity, draw_length(random, budget, tape));
    }
}

/* The spread of what was drawn, kept up as it grows (B. P. Welford, 1962). */
struct spread {
    uint64_t count;
    double mean;
    double squares;
};

static void spread_take(struct spread *spread, double value)
{
    double off = value - spread->mean;
    spread->count++;
    spread->mean += off / (double)spread->count;
    spread->squares += off * (value - spread->mean);
}

struct monte_carlo monte_carlo_run(const struct propagation *propagation, bool separate,
                                   uint64_t trials, uint64_t seed)
{
    struct monte_carlo run = {.trials = trials};
    struct random random = {seed};
    struct spread spread = {0, 0, 0};
    struct calculation trial = propagation->calculation;
    for (uint64_t i = 0; i < trials; i++) {
        int64_t margin = 0;
        draw(&random, propagation, separate, &trial);
        enum margin_kind kind = propagation_margin(&trial, &margin);
        if (kind == MARGIN_KNOWN) {
            spread_take(&spread, (double)margin);
        }
        run.met += kind == MARGIN_NO_LIMIT || (kind == MARGIN_KNOWN && margin >= 0);
        run.outside += kind == MARGIN_NO_VALUE || kind == MARGIN_NONE;
    }
    run.u = spread.count > 1 ? sqrt(spread.squares / (double)(spread.count - 1)) : 0;
    return run;
}

double monte_carlo_probability(const struct monte_carlo *run)
{
    return run->trials == 0 ? 0 : (double)run->met / (double)run->trials;
}
