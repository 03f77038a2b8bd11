/* SPDX-License-Identifier: MIT */
/*
 * An assessment as the files of this room see it.
 */
#ifndef INGLE_UNCERTAINTY_ASSESSMENT_H
#define INGLE_UNCERTAINTY_ASSESSMENT_H

#include "check/report.h"
#include "uncertainty/budget.h"
#include "uncertainty/monte_carlo.h"

/* Why a finding has no probability. */
enum without {
    HAS_PROBABILITY,
    NO_TAPE,
    NOT_JUDGED,     /* nothing was measured, or nothing is required */
    OBSERVED,       /* what is seen has no margin */
    NO_LENGTH,      /* no length measured with the tape is known to go into it */
    LENGTH_TOO_LONG /* for a length that goes into it the tape's standard has no tolerance */
};

struct ingle_conformance {
    const struct ingle_assessment *assessment;
    size_t finding;
    enum without without;
    ingle_method method;
    ingle_decision decision;
    double probability;
    double first_order; /* the same by the first-order law */
    double u;           /* of the margin */
    ingle_dimension dimension;
    struct monte_carlo run;
    bool run_asked;
    enum quantity_id turns_on; /* a length so near a condition that the rule may not apply */
    enum quantity_id exact;    /* an amount that was taken as exact; QUANTITY_NONE if none was */
    size_t first_step;
    size_t step_count;
};

enum { TAPE_NEEDS = 2 };

struct ingle_assessment {
    ingle_allocator allocator;
    const struct ingle_report *report;
    struct ingle_probability_options options;
    struct ingle_length_budget *lengths;
    size_t length_count, length_capacity;
    struct ingle_conformance *conformances;
    size_t conformance_count, conformance_capacity;
    struct reckoning reckoning;
    enum quantity_id missing[TAPE_NEEDS];
    size_t missing_count;
};

/* conformance.c: how sure a finding is, its steps added to the assessment. */
void conformance_find(struct ingle_assessment *assessment, struct ingle_conformance *conformance);

/* The budget of a length, or NULL where it has none. */
const struct ingle_length_budget *assessment_budget(const struct ingle_assessment *assessment,
                                                    enum quantity_id quantity, size_t item);

/* Whether a run agrees with the first-order law. */
bool run_agrees(const struct ingle_conformance *conformance);

#endif
