/* SPDX-License-Identifier: MIT */
/*
 * How sure one finding is: the lengths that go into it, its probability, its decision.
 */
#include "check/judging.h"
#include "uncertainty/assessment.h"
#include "uncertainty/decision.h"
#include "uncertainty/figure.h"
#include "uncertainty/normal.h"

#include <math.h>

/* Within this many standard uncertainties of a condition a rule may not apply. */
#define NEAR_CONDITION 2.0

/* U is twice the standard uncertainty. */
#define COVERAGE 2.0

/* ---- what goes into it ---------------------------------------------------------------------- */

static void take_dependence(const struct ingle_assessment *assessment,
                            struct propagation *propagation, enum quantity_id quantity,
                            struct ingle_conformance *conformance)
{
    size_t item = item_for(quantity, propagation->calculation.item);
    const struct ingle_length_budget *budget = assessment_budget(assessment, quantity, item);
    ingle_dimension dimension = quantities[quantity].dimension;
    if (budget != NULL && budget->known) {
        propagation->shares[propagation->count++] = (struct share){budget, 0};
    } else if (budget != NULL) {
        conformance->without = LENGTH_TOO_LONG;
    } else if (dimension != INGLE_CHOICE && dimension != INGLE_FLAG &&
               !quantities[quantity].without_tape) {
        propagation->exact[propagation->exact_count++] = quantity;
    }
}

static void take_dependences(const struct ingle_assessment *assessment,
                             struct propagation *propagation,
                             struct ingle_conformance *conformance)
{
    struct dependences dependences;
    margin_dependences(&propagation->calculation, &dependences);
    for (size_t i = 0; i < dependences.count; i++) {
        int64_t value;
        enum quantity_id quantity = dependences.list[i].quantity;
        if (calculation_recorded(&propagation->calculation, quantity, &value)) {
            take_dependence(assessment, propagation, quantity, conformance);
        }
    }
    if (propagation->exact_count > 0) {
        conformance->exact = propagation->exact[0];
    }
    if (propagation->count == 0 && conformance->without == HAS_PROBABILITY) {
        conformance->without = NO_LENGTH;
    }
}

/* Notes a length that lies so near to a condition of the rule that the rule may not apply. */
static void look_at_conditions(const struct ingle_assessment *assessment,
                               const struct ingle_finding *finding,
                               struct ingle_conformance *conformance)
{
    for (size_t i = 0; i < RULE_CONDITIONS && finding->rule->when[i].test != 0; i++) {
        const struct condition *condition = &finding->rule->when[i];
        const struct ingle_length_budget *budget =
            assessment_budget(assessment, condition->quantity,
                              item_for(condition->quantity, finding->item));
        if (budget != NULL && budget->known &&
            fabs((double)(budget->length - condition->value)) <= NEAR_CONDITION * budget->u) {
            conformance->turns_on = condition->quantity;
        }
    }
}

/* ---- steps ---------------------------------------------------------------------------------- */

static void add_change_steps(struct reckoning *reckoning, const struct propagation *propagation,
                             ingle_dimension dimension)
{
    for (size_t i = 0; i < propagation->count; i++) {
        const struct share *share = &propagation->shares[i];
        ADD_STEP(reckoning, .label = "change of the margin with one standard uncertainty",
                 .about = quantities[share->budget->quantity].id,
                 .expression = "(margin({0} + {1}) − margin({0} − {1})) ÷ 2",
                 .operands = {{quantities[share->budget->quantity].id,
                               figure_of((double)share->budget->length, INGLE_LENGTH), true},
                              {"u", figure_of(share->budget->u, INGLE_LENGTH)}},
                 .result = figure_of(share->change, dimension), .has_result = true);
    }
}

static void add_tape_step(struct reckoning *reckoning, const struct propagation *propagation,
                          bool separate, ingle_dimension dimension)
{
    ingle_figure tape = figure_of(propagation->tape, dimension);
    if (separate) {
        ADD_STEP(reckoning, .label = "from the tapes",
                 .expression = "{0}", .operands = {{"root of the sum of squares", tape}},
                 .result = tape, .has_result = true,
                 .remark = "Each length has a tape of its own.");
        return;
    }
    ADD_STEP(reckoning, .label = "from the tape", .expression = "|{0} + {1}|",
             .operands = {{"in proportion to length",
                           figure_of(propagation->tape_scale, dimension)},
                          {"its end and what was rounded up",
                           figure_of(propagation->tape_rest, dimension)}},
             .result = tape, .has_result = true,
             .remark = "One tape is off by the same share of its error at every length, so that "
                       "changes of opposite sign cancel.");
}

static void add_sum_steps(struct reckoning *reckoning, const struct propagation *propagation,
                          bool separate, ingle_dimension dimension)
{
    ingle_figure reading = figure_of(propagation->reading, dimension);
    ingle_figure masonry = figure_of(propagation->masonry, dimension);
    add_tape_step(reckoning, propagation, separate, dimension);
    ADD_STEP(reckoning, .label = "from the readings", .expression = "{0}",
             .operands = {{"root of the sum of squares", reading}}, .result = reading,
             .has_result = true);
    if (propagation->masonry > 0) {
        ADD_STEP(reckoning, .label = "from the masonry", .expression = "{0}",
                 .operands = {{"root of the sum of squares", masonry}}, .result = masonry,
                 .has_result = true);
    }
    ADD_STEP(reckoning, .label = "standard uncertainty of the margin",
             .expression =
                 propagation->masonry > 0 ? "√(({0})² + ({1})² + ({2})²)" : "√(({0})² + ({1})²)",
             .operands = {{"tape", figure_of(propagation->tape, dimension)},
                          {"reading", reading},
                          {"masonry", masonry}},
             .result = figure_of(propagation->u, dimension), .has_result = true);
}

static void add_probability_step(struct reckoning *reckoning,
                                 const struct propagation *propagation,
                                 const struct ingle_conformance *conformance)
{
    ADD_STEP(reckoning, .label = "probability that the rule is met", .expression = "Φ({0} ÷ {1})",
             .operands = {{"margin",
                           figure_of((double)propagation->margin, conformance->dimension)},
                          {"u", figure_of(propagation->u, conformance->dimension)}},
             .result = figure_plain(conformance->first_order), .has_result = true,
             .remark = "Φ is the normal distribution.");
}

static void add_run_step(struct reckoning *reckoning, const struct ingle_conformance *conformance)
{
    ADD_STEP(reckoning, .label = "probability by Monte Carlo", .expression = "{0} ÷ {1}",
             .operands = {{"trials in which it is met", figure_plain((double)conformance->run.met)},
                          {"trials", figure_plain((double)conformance->run.trials)}},
             .result = figure_plain(monte_carlo_probability(&conformance->run)),
             .has_result = true);
}

static void add_band_step(struct reckoning *reckoning, const struct ingle_conformance *conformance,
                          double factor)
{
    ingle_figure u = figure_of(conformance->u, conformance->dimension);
    if (factor == 0) {
        return;
    }
    if (conformance->method == INGLE_METHOD_MONTE_CARLO) {
        ADD_STEP(reckoning, .label = "probability that the guard band asks for",
                 .expression = "Φ(2 × {0})", .operands = {{"r", figure_plain(factor)}},
                 .result = figure_plain(1 - ingle_guard_band_risk(factor)), .has_result = true);
        return;
    }
    ADD_STEP(reckoning, .label = "guard band", .expression = "{0} × 2 × {1}",
             .operands = {{"r", figure_plain(factor)}, {"u", u}},
             .result = figure_of(factor * COVERAGE * conformance->u, conformance->dimension),
             .has_result = true);
}

/* ---- the probability ------------------------------------------------------------------------ */

static double by_first_order(const struct propagation *propagation)
{
    const double limit = 0;
    double probability = 0;
    if (propagation->margin == MARGIN_UNLIMITED) {
        return 1;
    }
    ingle_probability_within((double)propagation->margin, propagation->u, &limit, NULL,
                             &probability);
    return probability;
}

static void decide(const struct ingle_probability_options *options,
                   const struct propagation *propagation, struct ingle_conformance *conformance)
{
    if (conformance->method == INGLE_METHOD_MONTE_CARLO) {
        conformance->decision =
            decision_by_probability(options->rule, options->guard_factor,
                                    conformance->probability, propagation->margin >= 0);
        return;
    }
    conformance->decision =
        decision_by_margin(options->rule, (double)propagation->margin,
                           options->guard_factor * COVERAGE * conformance->u);
}

static void run(const struct ingle_probability_options *options,
                const struct propagation *propagation, struct ingle_conformance *conformance)
{
    uint64_t trials = options->trials;
    if (propagation->stepped && trials == 0) {
        trials = INGLE_TRIALS_UNASKED;
    }
    if (trials > 0) {
        conformance->run = monte_carlo_run(propagation, options->separate_tapes != 0, trials,
                                           options->seed);
    }
}

static void settle(struct ingle_assessment *assessment, struct propagation *propagation,
                   struct ingle_conformance *conformance)
{
    const struct ingle_probability_options *options = &assessment->options;
    bool separate = options->separate_tapes != 0;
    propagate(propagation, separate);
    conformance->u = propagation->u;
    conformance->first_order = by_first_order(propagation);
    run(options, propagation, conformance);
    conformance->method =
        propagation->stepped ? INGLE_METHOD_MONTE_CARLO : INGLE_METHOD_FIRST_ORDER;
    conformance->probability = propagation->stepped ? monte_carlo_probability(&conformance->run)
                                                    : conformance->first_order;
    if (!propagation->stepped) {
        add_change_steps(&assessment->reckoning, propagation, conformance->dimension);
        add_sum_steps(&assessment->reckoning, propagation, separate, conformance->dimension);
        add_probability_step(&assessment->reckoning, propagation, conformance);
    }
    if (conformance->run.trials > 0) {
        add_run_step(&assessment->reckoning, conformance);
    }
    add_band_step(&assessment->reckoning, conformance, options->guard_factor);
    decide(options, propagation, conformance);
}

/* Why a finding has none, as far as the finding itself tells. */
static enum without without_by_finding(const struct ingle_assessment *assessment,
                                       const struct ingle_finding *finding)
{
    if (assessment->missing_count > 0) {
        return NO_TAPE;
    }
    if (finding->verdict != INGLE_MEETS && finding->verdict != INGLE_TOO_CLOSE &&
        finding->verdict != INGLE_FAILS) {
        return NOT_JUDGED;
    }
    return finding->relation == INGLE_IS || finding->relation == INGLE_IS_NOT ? OBSERVED
                                                                              : HAS_PROBABILITY;
}

void conformance_find(struct ingle_assessment *assessment, struct ingle_conformance *conformance)
{
    const struct ingle_finding *finding = &assessment->report->findings[conformance->finding];
    int64_t numbers[FORMULA_NUMBERS];
    conformance->dimension = quantities[finding->judged].dimension;
    conformance->without = without_by_finding(assessment, finding);
    if (conformance->without != HAS_PROBABILITY) {
        return;
    }
    struct propagation propagation = {.calculation = calculation_again(finding, numbers)};
    take_dependences(assessment, &propagation, conformance);
    if (conformance->without == HAS_PROBABILITY) {
        look_at_conditions(assessment, finding, conformance);
        settle(assessment, &propagation, conformance);
    }
}
