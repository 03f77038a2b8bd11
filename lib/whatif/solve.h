/* SPDX-License-Identifier: MIT */
/*
 * A solution as the files of this room see it.
 */
#ifndef INGLE_WHATIF_SOLVE_H
#define INGLE_WHATIF_SOLVE_H

#include "whatif/stepping.h"

#include <ingle/solve.h>

/* A finding that has failed at every value so far. */
struct aside {
    const ingle_rule *rule; /* the first row met */
    const ingle_standard *standard;
    const ingle_quantity *quantity;
    size_t item;
    bool moved;   /* its margin goes with the value, so that it is this quantity's doing */
    bool judged;  /* at a value before the one at hand, with this margin: */
    int64_t margin; /* the least of its findings', 0 where none is known */
    bool failed;  /* at the value at hand, with this one: */
    int64_t margin_here;
};

struct ingle_solution {
    ingle_allocator allocator;
    ingle_range range;
    ingle_interval *intervals;
    size_t interval_count, interval_capacity;
    struct aside *asides;
    size_t aside_count, aside_capacity;
    uint32_t *failures; /* how many findings fail at each value */
    size_t failure_capacity;
    ingle_amount now;
    bool recorded;
    bool does_now;
    char error_text[WHATIF_ERROR_TEXT_SIZE];
};

struct ingle_frontier {
    ingle_allocator allocator;
    ingle_amount *values;
    ingle_solution **solutions;
    size_t count;
    ingle_range with;
    char error_text[WHATIF_ERROR_TEXT_SIZE];
};

/* Takes the options of a question, or what they are without any. */
ingle_status solve_take_options(ingle_solve_options *taken, const ingle_solve_options *given);

/* Solves where the question has been taken; the error's sentence is the solution's. */
ingle_status solve_question(const struct question *question, const ingle_range *range, bool strict,
                            ingle_solution *solution);

#endif
