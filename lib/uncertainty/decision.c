/* SPDX-License-Identifier: MIT */
#include "uncertainty/decision.h"

#include "uncertainty/normal.h"

#include <math.h>
#include <string.h>

#define COUNT(array) (sizeof(array) / sizeof(array)[0])

/* The expanded uncertainty U is this many standard ones. */
#define COVERAGE 2.0
#define MOST_FACTOR 100.0

/* ---- what there is -------------------------------------------------------------------------- */

static const struct {
    const char *name;
    const char *text;
} rules[] = {
    [INGLE_RULE_SIMPLE] = {"simple", "Pass where the rule is met as measured, else fail "
                                     "(ILAC-G8:09/2019, 4.2.1)."},
    [INGLE_RULE_GUARDED] = {"guarded", "Pass where the rule is met by the guard band or more, else "
                                       "fail (ILAC-G8:09/2019, 4.2.2)."},
    [INGLE_RULE_THREE_WAY] = {"three-way", "As four-way, with the two conditional answers told as "
                                           "one: inconclusive."},
    [INGLE_RULE_FOUR_WAY] = {"four-way", "Pass beyond the guard band, conditional pass from there "
                                         "to the limit, conditional fail to the band's other side, "
                                         "fail beyond (ILAC-G8:09/2019, 4.2.3)."},
};

static const char *const decisions[] = {
    [INGLE_DECISION_NONE] = "none",
    [INGLE_DECISION_PASS] = "pass",
    [INGLE_DECISION_CONDITIONAL_PASS] = "conditional-pass",
    [INGLE_DECISION_INCONCLUSIVE] = "inconclusive",
    [INGLE_DECISION_CONDITIONAL_FAIL] = "conditional-fail",
    [INGLE_DECISION_FAIL] = "fail",
};

/* ILAC-G8:09/2019, Table 1. */
static const struct {
    const char *name;
    double factor;
    const char *text;
} bands[] = {
    {"six-sigma", 3, "3 U: false acceptance printed as less than 1 ppm."},
    {"three-sigma", 1.5, "1.5 U: false acceptance printed as less than 0.16 %."},
    {"ilac-g8-2009", 1, "U: false acceptance printed as less than 2.5 %."},
    {"iso-14253-1-2017", 0.83, "0.83 U: false acceptance printed as less than 5 %."},
    {"none", 0, "No guard band: false acceptance printed as less than 50 %."},
};

size_t ingle_decision_rule_count(void)
{
    return COUNT(rules);
}

const char *ingle_decision_rule_name(ingle_decision_rule rule)
{
    return rule >= 0 && (size_t)rule < COUNT(rules) ? rules[rule].name : NULL;
}

const char *ingle_decision_rule_text(ingle_decision_rule rule)
{
    return rule >= 0 && (size_t)rule < COUNT(rules) ? rules[rule].text : NULL;
}

ingle_decision_rule ingle_decision_rule_find(const char *name)
{
    for (size_t i = 0; name != NULL && i < COUNT(rules); i++) {
        if (strcmp(rules[i].name, name) == 0) {
            return (ingle_decision_rule)i;
        }
    }
    return -1;
}

size_t ingle_decision_count(void)
{
    return COUNT(decisions);
}

const char *ingle_decision_name(ingle_decision decision)
{
    return decision >= 0 && (size_t)decision < COUNT(decisions) ? decisions[decision] : NULL;
}

size_t ingle_guard_band_count(void)
{
    return COUNT(bands);
}

const char *ingle_guard_band_name(size_t index)
{
    return index < COUNT(bands) ? bands[index].name : NULL;
}

double ingle_guard_band_factor(size_t index)
{
    return index < COUNT(bands) ? bands[index].factor : 0;
}

const char *ingle_guard_band_text(size_t index)
{
    return index < COUNT(bands) ? bands[index].text : NULL;
}

double ingle_guard_band_risk(double factor)
{
    return isfinite(factor) ? normal_below(-COVERAGE * factor) : 1;
}

/* ---- deciding ------------------------------------------------------------------------------- */

bool decision_usable(ingle_decision_rule rule, double factor)
{
    if (ingle_decision_rule_name(rule) == NULL || !isfinite(factor) ||
        fabs(factor) > MOST_FACTOR) {
        return false;
    }
    if (rule == INGLE_RULE_SIMPLE) {
        return factor == 0;
    }
    return rule == INGLE_RULE_GUARDED ? factor != 0 : factor > 0;
}

/* The four answers, of which the rules with fewer tell some as one. */
static ingle_decision told(ingle_decision_rule rule, ingle_decision decision)
{
    bool between = decision == INGLE_DECISION_CONDITIONAL_PASS ||
                   decision == INGLE_DECISION_CONDITIONAL_FAIL;
    return rule == INGLE_RULE_THREE_WAY && between ? INGLE_DECISION_INCONCLUSIVE : decision;
}

ingle_decision decision_by_margin(ingle_decision_rule rule, double margin, double band)
{
    if (rule == INGLE_RULE_SIMPLE || rule == INGLE_RULE_GUARDED) {
        return margin >= band ? INGLE_DECISION_PASS : INGLE_DECISION_FAIL;
    }
    if (margin > band) {
        return INGLE_DECISION_PASS;
    }
    if (margin < -band) {
        return INGLE_DECISION_FAIL;
    }
    return told(rule, margin >= 0 ? INGLE_DECISION_CONDITIONAL_PASS
                                  : INGLE_DECISION_CONDITIONAL_FAIL);
}

ingle_decision decision_by_probability(ingle_decision_rule rule, double factor,
                                       double probability, bool met_as_measured)
{
    double enough = 1 - ingle_guard_band_risk(factor);
    if (rule == INGLE_RULE_SIMPLE) {
        return met_as_measured ? INGLE_DECISION_PASS : INGLE_DECISION_FAIL;
    }
    if (rule == INGLE_RULE_GUARDED) {
        return probability >= enough ? INGLE_DECISION_PASS : INGLE_DECISION_FAIL;
    }
    if (probability > enough) {
        return INGLE_DECISION_PASS;
    }
    if (probability < 1 - enough) {
        return INGLE_DECISION_FAIL;
    }
    return told(rule, met_as_measured ? INGLE_DECISION_CONDITIONAL_PASS
                                      : INGLE_DECISION_CONDITIONAL_FAIL);
}

ingle_status ingle_decide(ingle_decision_rule rule, double factor, double margin,
                          double standard_uncertainty, ingle_decision *decision)
{
    if (decision == NULL || !decision_usable(rule, factor) || !isfinite(margin) ||
        !isfinite(standard_uncertainty) || standard_uncertainty < 0) {
        return INGLE_ERROR_ARGUMENT;
    }
    *decision = decision_by_margin(rule, margin, factor * COVERAGE * standard_uncertainty);
    return INGLE_OK;
}
