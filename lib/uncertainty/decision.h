/* SPDX-License-Identifier: MIT */
/*
 * Decision rules under measuring uncertainty.
 */
#ifndef INGLE_UNCERTAINTY_DECISION_H
#define INGLE_UNCERTAINTY_DECISION_H

#include <ingle/uncertainty.h>

#include <stdbool.h>

/* Whether a factor goes with a rule. */
bool decision_usable(ingle_decision_rule rule, double factor);

/* By the margin and the guard band's width; the rule and its factor go together. */
ingle_decision decision_by_margin(ingle_decision_rule rule, double margin, double band);

/*
 * By the probability that the rule is met, where the margin has no standard uncertainty: that at
 * which a normal margin would reach the same place.
 */
ingle_decision decision_by_probability(ingle_decision_rule rule, double factor,
                                       double probability, bool met_as_measured);

#endif
