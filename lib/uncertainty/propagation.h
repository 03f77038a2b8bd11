/* SPDX-License-Identifier: MIT */
/*
 * How the uncertainties of lengths come to that of a finding's margin: to first order, with the
 * finding's own formula.
 */
#ifndef INGLE_UNCERTAINTY_PROPAGATION_H
#define INGLE_UNCERTAINTY_PROPAGATION_H

#include "check/evaluation.h"
#include "uncertainty/budget.h"

/* One uncertain length that the margin depends on. */
struct share {
    const struct ingle_length_budget *budget;
    double change; /* of the margin with one standard uncertainty of the length */
};

struct propagation {
    struct calculation calculation;
    struct share shares[DEPENDENCES];
    size_t count;
    enum quantity_id exact[DEPENDENCES]; /* amounts it depends on that are taken as exact */
    size_t exact_count;
    int64_t margin;  /* as measured; MARGIN_UNLIMITED where there is no limit */
    double tape_scale; /* standard uncertainties of the margin, those of one tape with their sign */
    double tape_rest;
    double tape;
    double reading;
    double masonry;
    double u;
    bool stepped; /* the margin is no straight line within three standard uncertainties */
};

/* What the margin is at the calculation's trial values. */
enum margin_kind {
    MARGIN_KNOWN,
    MARGIN_NO_LIMIT, /* the rule asks nothing there */
    MARGIN_NO_VALUE, /* the publication prints none there */
    MARGIN_NONE      /* it cannot be computed */
};

enum margin_kind propagation_margin(struct calculation *calculation, int64_t *margin);

/* `separate` takes every length's tape as its own. `calculation`, `shares`, `exact` are given. */
void propagate(struct propagation *propagation, bool separate);

#endif
