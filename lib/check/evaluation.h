/* SPDX-License-Identifier: MIT */
/*
 * One run of a rule's calculation, and the worst and best that tolerances allow.
 */
#ifndef INGLE_CHECK_EVALUATION_H
#define INGLE_CHECK_EVALUATION_H

#include "formulas/derived.h"
#include "formulas/formula.h"

/* What a calculation came to, by the values as measured. */
struct evaluation {
    enum outcome required_outcome;
    enum outcome measured_outcome;
    int64_t required;
    int64_t measured;
};

void evaluate(struct calculation *calculation, struct evaluation *evaluation);

/* The margin of an evaluation in which both outcomes are done; false on overflow. */
bool evaluation_margin(const struct calculation *calculation, const struct evaluation *evaluation,
                       int64_t *margin);

/*
 * Where the limit itself is too much, margins are counted from one base unit inside it, so that
 * what is not met is negative everywhere. Add this to show one.
 */
#define MARGIN_OF_LIMIT 1

/* The margin where the rule sets no limit. */
#define MARGIN_UNLIMITED INT64_MAX

/* The least and the greatest margin within the tolerances of what was recorded. */
struct bounds {
    enum outcome outcome; /* OUTCOME_DONE, or why there are none */
    bool spread;          /* whether there is any tolerance in it */
    int64_t worst;
    int64_t best;
};

/*
 * Where the margin only rises or only falls with each measure, one corner of the box of tolerances
 * is the worst and the opposite one the best. Where a formula goes either way with a measure it
 * names its breakpoints; between them the margin only rises or falls, so the extremes lie on the
 * edges of the box: at its corners or at a breakpoint along an edge.
 */
struct bounds evaluation_bounds(const struct calculation *calculation);

/* The same where the margin by the values as measured is known already. */
struct bounds evaluation_bounds_around(const struct calculation *calculation, int64_t margin);

/* Whether a quantity, or one it follows from, was recorded with a tolerance. */
bool evaluation_spread(const struct calculation *calculation, enum quantity_id quantity);

/* The recorded quantities that the margin depends on. */
void margin_dependences(const struct calculation *calculation, struct dependences *dependences);

/* Which way the margin goes when a quantity grows: +1, -1, or 0 for either way or not at all. */
int margin_direction(const struct calculation *calculation, enum quantity_id quantity);

#endif
