/* SPDX-License-Identifier: MIT */
/*
 * The steps behind uncertainties and probabilities: what was put together, from which figures, and
 * what came out. Texts are made from them only when somebody asks.
 */
#ifndef INGLE_UNCERTAINTY_RECKONING_H
#define INGLE_UNCERTAINTY_RECKONING_H

#include <ingle/uncertainty.h>

#include <stdbool.h>

enum { RECKONING_OPERANDS = 4 };

struct reckoning_operand {
    const char *name;
    ingle_figure figure;
    bool exact; /* a whole number of base units, shown as the amount it is */
};

struct ingle_uncertainty_step {
    const char *label;
    const char *about;      /* the id of the quantity it is about, behind the label; or NULL */
    const char *expression; /* {0} to {3} stand for the operands */
    const char *remark;     /* more to say of it; NULL for nothing */
    struct reckoning_operand operands[RECKONING_OPERANDS];
    ingle_figure result;
    bool has_result;
};

/* The steps of one assessment, one after the other. */
struct reckoning {
    ingle_allocator allocator;
    struct ingle_uncertainty_step *steps;
    size_t count;
    size_t capacity;
    bool failed; /* for want of memory */
};

void reckoning_add(struct reckoning *reckoning, const struct ingle_uncertainty_step *step);

/* Adds a step, given as the fields of a struct ingle_uncertainty_step. */
#define ADD_STEP(reckoning, ...) \
    reckoning_add(reckoning, &(struct ingle_uncertainty_step){__VA_ARGS__})

#endif
