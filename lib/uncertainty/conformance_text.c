/* SPDX-License-Identifier: MIT */
/*
 * What can be asked of a finding's probability, and its words.
 */
#include "uncertainty/assessment.h"
#include "uncertainty/figure.h"

#include <math.h>

/* Within which a run and the first-order law agree; see the header. */
#define AGREE_UNCERTAINTY 0.05
#define AGREE_SHAPE 0.0573
#define STANDARD_ERRORS 4.0

const char *ingle_method_name(ingle_method method)
{
    static const char *const names[] = {
        [INGLE_METHOD_NONE] = "none",
        [INGLE_METHOD_FIRST_ORDER] = "first-order",
        [INGLE_METHOD_MONTE_CARLO] = "monte-carlo",
    };
    return method >= 0 && (size_t)method < sizeof names / sizeof names[0] ? names[method] : NULL;
}

const ingle_finding *ingle_conformance_finding(const ingle_conformance *conformance)
{
    return &conformance->assessment->report->findings[conformance->finding];
}

ingle_method ingle_conformance_method(const ingle_conformance *conformance)
{
    return conformance->method;
}

ingle_decision ingle_conformance_decision(const ingle_conformance *conformance)
{
    return conformance->decision;
}

int ingle_conformance_probability(const ingle_conformance *conformance, double *probability)
{
    bool has = conformance->method != INGLE_METHOD_NONE;
    if (has && probability != NULL) {
        *probability = conformance->probability;
    }
    return has;
}

int ingle_conformance_uncertainty(const ingle_conformance *conformance, ingle_figure *uncertainty)
{
    bool has = conformance->method == INGLE_METHOD_FIRST_ORDER;
    if (has && uncertainty != NULL) {
        *uncertainty = figure_of(conformance->u, conformance->dimension);
    }
    return has;
}

size_t ingle_conformance_step_count(const ingle_conformance *conformance)
{
    return conformance->step_count;
}

const ingle_uncertainty_step *ingle_conformance_step_at(const ingle_conformance *conformance,
                                                        size_t index)
{
    return index < conformance->step_count
               ? &conformance->assessment->reckoning.steps[conformance->first_step + index]
               : NULL;
}

/* ---- the Monte Carlo run -------------------------------------------------------------------- */

bool run_agrees(const struct ingle_conformance *conformance)
{
    const struct monte_carlo *run = &conformance->run;
    double counted = monte_carlo_probability(run);
    double trials = (double)run->trials;
    /* The half keeps it from being nothing where all trials came out alike. */
    double error = sqrt(counted * (1 - counted) / trials) + 0.5 / trials;
    return conformance->method == INGLE_METHOD_FIRST_ORDER &&
           fabs(run->u - conformance->u) <= AGREE_UNCERTAINTY * conformance->u &&
           fabs(counted - conformance->first_order) <= AGREE_SHAPE + STANDARD_ERRORS * error;
}

int ingle_conformance_monte_carlo(const ingle_conformance *conformance, ingle_monte_carlo *run)
{
    if (conformance->run.trials == 0 || run == NULL || run->size < sizeof *run) {
        return 0;
    }
    run->trials = conformance->run.trials;
    run->met = conformance->run.met;
    run->outside = conformance->run.outside;
    run->standard_uncertainty = conformance->run.u;
    run->agrees = run_agrees(conformance);
    run->reserved = 0;
    return 1;
}

/* ---- words ---------------------------------------------------------------------------------- */

static const char *reason(enum without without)
{
    switch (without) {
    case HAS_PROBABILITY:
        break;
    case NO_TAPE:
        return "No probability: tape.class and tape.graduation have to be recorded.";
    case NOT_JUDGED:
        return "No probability: the rule was not judged.";
    case OBSERVED:
        return "No probability: what is observed has no margin.";
    case NO_LENGTH:
        return "No probability: no length measured with the tape is known to go into it.";
    case LENGTH_TOO_LONG:
        return "No probability: a length that goes into it is longer than the tape's standard has "
               "a tolerance for.";
    }
    return "";
}

static const char *decision_words(ingle_decision decision)
{
    switch (decision) {
    case INGLE_DECISION_PASS:
        return "pass";
    case INGLE_DECISION_CONDITIONAL_PASS:
        return "conditional pass";
    case INGLE_DECISION_INCONCLUSIVE:
        return "inconclusive";
    case INGLE_DECISION_CONDITIONAL_FAIL:
        return "conditional fail";
    case INGLE_DECISION_FAIL:
        return "fail";
    default:
        return "none";
    }
}

static void add_sentence(struct text *text, const struct ingle_conformance *conformance,
                         const ingle_format *format)
{
    const struct ingle_probability_options *options = &conformance->assessment->options;
    if (conformance->without != HAS_PROBABILITY) {
        text_add(text, reason(conformance->without));
        return;
    }
    text_add(text, "The rule is met with a probability of ");
    text_add_percent(text, conformance->probability);
    if (conformance->method == INGLE_METHOD_FIRST_ORDER) {
        ingle_figure u = figure_of(conformance->u, conformance->dimension);
        text_add(text, "; the margin has a standard uncertainty of ");
        text_add_figure(text, &u, format);
    }
    text_add(text, ". Decision (");
    text_add(text, ingle_decision_rule_name(options->rule));
    if (options->guard_factor != 0) {
        text_add(text, ", guard band ");
        text_add_number(text, options->guard_factor, 4, 4);
        text_add(text, " U");
    }
    text_add(text, "): ");
    text_add(text, decision_words(conformance->decision));
    text_add(text, ".");
}

static void add_caution(struct text *text, const struct ingle_conformance *conformance)
{
    const char *space = "";
    if (conformance->method == INGLE_METHOD_MONTE_CARLO) {
        text_add(text, "What is required steps or bends within the uncertainty, so the probability "
                       "was counted by Monte Carlo.");
        space = " ";
    } else if (conformance->run.trials > 0 && !run_agrees(conformance)) {
        text_add(text, "The Monte Carlo run does not agree with the first-order law.");
        space = " ";
    }
    if (conformance->run.outside > 0) {
        text_add(text, space);
        text_add(text, "In some trials no value is printed; they do not count as met.");
        space = " ";
    }
    if (conformance->turns_on != QUANTITY_NONE) {
        text_add(text, space);
        text_add(text, "Whether the rule applies turns on ");
        text_add(text, quantities[conformance->turns_on].id);
        text_add(text, ", which is as near to that limit as its uncertainty; the probability is "
                       "for the case that it applies.");
        space = " ";
    }
    if (conformance->exact != QUANTITY_NONE) {
        text_add(text, space);
        text_add(text, quantities[conformance->exact].id);
        text_add(text, " was recorded as such and is taken as exact.");
    }
}

ingle_status ingle_conformance_text(const ingle_conformance *conformance,
                                    ingle_conformance_part part, const ingle_format *format,
                                    char *buffer, size_t capacity, size_t *length)
{
    if (conformance == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    switch (part) {
    case INGLE_CONFORMANCE_SENTENCE:
        add_sentence(&text, conformance, format);
        break;
    case INGLE_CONFORMANCE_CAUTION:
        add_caution(&text, conformance);
        break;
    default:
        return INGLE_ERROR_ARGUMENT;
    }
    return text_end(&text, length);
}
