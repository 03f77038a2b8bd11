/* SPDX-License-Identifier: MIT */
/* What the tests of this room share: fireplaces, and the assessment of what was found at them. */
#ifndef TESTS_UNCERTAINTY_SURVEYED_H
#define TESTS_UNCERTAINTY_SURVEYED_H

#include <ingle/ingle.h>

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

static ingle_survey *survey;
static ingle_report *report;
static ingle_assessment *assessment;

static inline int make_surveyed(void **state)
{
    (void)state;
    return ingle_survey_new(NULL, &survey) == INGLE_OK &&
                   ingle_report_new(NULL, &report) == INGLE_OK &&
                   ingle_assessment_new(NULL, &assessment) == INGLE_OK
               ? 0
               : -1;
}

static inline int free_surveyed(void **state)
{
    (void)state;
    ingle_assessment_free(assessment);
    ingle_report_free(report);
    ingle_survey_free(survey);
    return 0;
}

static inline void record(const char *path, const char *text)
{
    ingle_status status = ingle_survey_record(survey, path, text, NULL);
    if (status < 0) {
        print_error("%s: %s\n", path, ingle_survey_error_text(survey));
    }
    assert_true(status >= 0);
}

static inline void record_fireplace(void)
{
    ingle_survey_clear(survey);
    record("appliance.kind", "masonry-fireplace");
    record("appliance.fuel", "wood");
}

static inline void record_tape(const char *tape_class, const char *graduation)
{
    record("tape.class", tape_class);
    record("tape.graduation", graduation);
}

/* Check value 19's fireplace: a round flue of 10 3/4 in that is to be 1/12 of 36 × 30 in. */
static inline void record_round_flue(const char *diameter)
{
    record_fireplace();
    record("opening.width", "36 in");
    record("opening.height", "30 in");
    record("flue.diameter", diameter);
    record_tape("class-ii", "1/16 in");
}

static inline void judge(void)
{
    const ingle_standard *standards[] = {ingle_standard_find("irc-2021")};
    assert_non_null(standards[0]);
    assert_int_equal(ingle_check(survey, standards, 1, NULL, report), INGLE_OK);
}

static inline void assess(const ingle_probability_options *options)
{
    judge();
    assert_int_equal(ingle_assess(report, options, assessment), INGLE_OK);
    assert_int_equal(ingle_assessment_count(assessment), ingle_report_finding_count(report));
}

/* That of the first finding by a rule. */
static inline const ingle_conformance *conformance_of(const char *rule)
{
    const ingle_conformance *conformance;
    for (size_t i = 0; (conformance = ingle_assessment_at(assessment, i)) != NULL; i++) {
        const ingle_finding *finding = ingle_conformance_finding(conformance);
        if (strcmp(ingle_rule_id(ingle_finding_rule(finding)), rule) == 0) {
            return conformance;
        }
    }
    fail_msg("no finding by %s", rule);
    return NULL;
}

static inline double probability_of(const char *rule)
{
    double probability = -1;
    assert_true(ingle_conformance_probability(conformance_of(rule), &probability));
    assert_true(probability >= 0 && probability <= 1);
    return probability;
}

static inline double uncertainty_of(const char *rule)
{
    ingle_figure u;
    assert_true(ingle_conformance_uncertainty(conformance_of(rule), &u));
    assert_true(isfinite(u.value) && u.value >= 0);
    return u.value;
}

static inline ingle_monte_carlo run_of(const char *rule)
{
    ingle_monte_carlo run = {.size = sizeof run};
    assert_true(ingle_conformance_monte_carlo(conformance_of(rule), &run));
    return run;
}

static inline bool is_near(double value, double expected, double within)
{
    if (fabs(value - expected) <= within) {
        return true;
    }
    print_error("%.12g is not %.12g within %g\n", value, expected, within);
    return false;
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, make_surveyed, free_surveyed)

#define SQUARE_INCH 645160000000000.0
#define INCH 25400000.0

#endif
