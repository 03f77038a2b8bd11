/* SPDX-License-Identifier: MIT */
/*
 * Probabilities, guard bands and decision rules against the GNU Scientific Library and the examples
 * of JCGM 106:2012 and ILAC-G8:09/2019. The examples' values are known from memory; each was
 * computed anew.
 */
#include <ingle/ingle.h>

#include <gsl/gsl_cdf.h>
#include <gsl/gsl_integration.h>
#include <gsl/gsl_randist.h>

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

static bool near(double value, double expected, double within)
{
    if (fabs(value - expected) <= within) {
        return true;
    }
    print_error("%.12g is not %.12g within %g\n", value, expected, within);
    return false;
}

static double below(double value, double u, double upper)
{
    double probability = -1;
    assert_int_equal(ingle_probability_within(value, u, NULL, &upper, &probability), INGLE_OK);
    return probability;
}

static double above(double value, double u, double lower)
{
    double probability = -1;
    assert_int_equal(ingle_probability_within(value, u, &lower, NULL, &probability), INGLE_OK);
    return probability;
}

static double between(double value, double u, double lower, double upper)
{
    double probability = -1;
    assert_int_equal(ingle_probability_within(value, u, &lower, &upper, &probability), INGLE_OK);
    return probability;
}

/* ---- the normal distribution ---------------------------------------------------------------- */

/* GNU Scientific Library: gsl_cdf_ugaussian_P and _Q, to 1e-13 of the value. */
static void it_is_the_normal_distribution(void **state)
{
    (void)state;
    for (double z = -12; z <= 12; z += 0.0625) {
        double expected = gsl_cdf_ugaussian_P(z);
        assert_true(near(below(0, 1, z) / expected, 1, 1e-13));
        assert_true(near(above(0, 1, z) / gsl_cdf_ugaussian_Q(z), 1, 1e-13));
    }
    assert_true(near(below(0, 1, 1.75), 0.959940843136, 1e-12)); /* printed by the same library */
}

/* Both limits far out on one side: the difference keeps its digits. */
static void two_limits_keep_their_digits(void **state)
{
    (void)state;
    for (double z = 4; z < 12; z += 0.5) {
        double expected = gsl_cdf_ugaussian_Q(z) - gsl_cdf_ugaussian_Q(z + 1);
        assert_true(near(between(0, 1, z, z + 1) / expected, 1, 1e-12));
        assert_true(near(between(0, 1, -z - 1, -z) / expected, 1, 1e-12));
    }
}

/* JCGM 106:2012, 7.3 table 1: z for conformance probabilities, printed to two places. */
static void distances_for_probabilities(void **state)
{
    (void)state;
    static const struct {
        double probability, printed, computed;
    } rows[] = {{0.80, 0.84, 0.841621},
                {0.90, 1.28, 1.281552},
                {0.95, 1.64, 1.644854},
                {0.99, 2.33, 2.326348},
                {0.999, 3.09, 3.090232}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        assert_true(near(below(0, 1, rows[i].computed), rows[i].probability, 5e-7));
        assert_true(near(rows[i].computed, rows[i].printed, 0.006));
        assert_true(near(gsl_cdf_ugaussian_Pinv(rows[i].probability), rows[i].computed, 5e-7));
    }
}

/* ---- worked examples ------------------------------------------------------------------------ */

/* JCGM 106:2012, 7.3.3 examples 1 and 2, and 7.4. */
static void examples_of_conformance(void **state)
{
    (void)state;
    assert_true(near(below(-5.484, 0.008, -5.47), 0.96, 0.005)); /* breakdown voltage */
    assert_true(near(below(-5.484, 0.008, -5.47), 0.959941, 5e-7));
    assert_true(near(above(509.7, 8.6, 490), 0.99, 0.005)); /* burst pressure */
    assert_true(near(above(509.7, 8.6, 490), 0.989010, 5e-7));
    assert_true(near(between(13.6, 1.8, 12.5, 16.3), 0.66, 0.005)); /* viscosity of oil */
    assert_true(near(between(13.6, 1.8, 12.5, 16.3), 0.662630, 5e-7));
}

/* JCGM 106:2012, 8.3.3.2 example 1: guarded rejection at 100 km/h, u 2 % of the value, 99.9 %. */
static void example_of_guarded_rejection(void **state)
{
    (void)state;
    double speed = 100 / (1 - 0.02 * gsl_cdf_ugaussian_Pinv(0.999));
    assert_true(near(speed, 106.5876, 5e-5));
    assert_true(near(1 - below(speed, 0.02 * speed, 100), 0.999, 1e-9));
    /* printed: 107 km/h, and w = 7. With r of a negative guard band |w| = |r| U. */
    double factor = -gsl_cdf_ugaussian_Pinv(0.999) / 2;
    ingle_decision decision = INGLE_DECISION_NONE;
    assert_int_equal(ingle_decide(INGLE_RULE_GUARDED, factor, 100 - 106.0, 2.12, &decision),
                     INGLE_OK);
    assert_int_equal(decision, INGLE_DECISION_PASS);
    assert_int_equal(ingle_decide(INGLE_RULE_GUARDED, factor, 100 - 107.0, 2.14, &decision),
                     INGLE_OK);
    assert_int_equal(decision, INGLE_DECISION_FAIL);
}

/*
 * JCGM 106:2012, 9.5.4: resistors of 1500 Ω ± 0.2 Ω, made with u0 = 0.12, measured with 0.04. A
 * resistor of true deviation η is accepted with the probability that what is measured of it lies
 * within the acceptance limits.
 */
struct resistors {
    double accepted; /* the acceptance limits' half-width */
    bool producer;   /* the risk of rejecting a good one, not of accepting a bad one */
};

static double risk_at(double deviation, void *context)
{
    const struct resistors *resistors = context;
    double accept = between(deviation, 0.04, -resistors->accepted, resistors->accepted);
    return gsl_ran_gaussian_pdf(deviation, 0.12) * (resistors->producer ? 1 - accept : accept);
}

static double integral(gsl_function *function, double from, double to)
{
    double result, error;
    gsl_integration_workspace *room = gsl_integration_workspace_alloc(1000);
    assert_int_equal(
        gsl_integration_qags(function, from, to, 1e-12, 1e-10, 1000, room, &result, &error), 0);
    gsl_integration_workspace_free(room);
    return result;
}

static double consumers_risk(double accepted)
{
    struct resistors resistors = {accepted, false};
    gsl_function function = {risk_at, &resistors};
    return integral(&function, -1.4, -0.2) + integral(&function, 0.2, 1.4);
}

static double producers_risk(double accepted)
{
    struct resistors resistors = {accepted, true};
    gsl_function function = {risk_at, &resistors};
    return integral(&function, -0.2, 0.2);
}

static void example_of_risks(void **state)
{
    (void)state;
    assert_true(near(between(0, 0.12, -0.2, 0.2), 0.904419, 5e-7)); /* good ones, as made */
    assert_true(near(consumers_risk(0.18), 0.01, 0.005));           /* printed: about 1 % */
    assert_true(near(producers_risk(0.18), 0.07, 0.005));           /* printed: about 7 % */
    assert_true(near(consumers_risk(0.18), 0.0098783, 5e-8));
    assert_true(near(producers_risk(0.18), 0.0690265, 5e-8));
    assert_true(near(consumers_risk(0.2), 0.0189422, 5e-8));
    assert_true(near(producers_risk(0.2), 0.0372078, 5e-8));
    assert_true(near(consumers_risk(0.16), 0.0043341, 5e-8));
    assert_true(near(producers_risk(0.16), 0.1146566, 5e-8));
    assert_true(near(consumers_risk(0.12), 0.00046863, 5e-9));
    assert_true(near(producers_risk(0.12), 0.2476696, 5e-8));
}

/* ---- guard bands ---------------------------------------------------------------------------- */

/* ILAC-G8:09/2019, table 1: factor, what is printed of the risk, and the risk at that limit. */
static void guard_bands_of_table_1(void **state)
{
    (void)state;
    static const struct {
        const char *name;
        double factor, printed, computed, within;
    } rows[] = {{"six-sigma", 3, 1e-6, 9.86588e-10, 5e-15},
                {"three-sigma", 1.5, 0.0016, 0.00134990, 5e-9},
                {"ilac-g8-2009", 1, 0.025, 0.0227501, 5e-8},
                {"iso-14253-1-2017", 0.83, 0.05, 0.0484572, 5e-8},
                {"none", 0, 0.5, 0.5, 0}};
    assert_int_equal(ingle_guard_band_count(), sizeof rows / sizeof rows[0]);
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        assert_string_equal(ingle_guard_band_name(i), rows[i].name);
        assert_true(ingle_guard_band_factor(i) == rows[i].factor);
        double risk = ingle_guard_band_risk(rows[i].factor);
        assert_true(risk <= rows[i].printed);
        assert_true(near(risk, rows[i].computed, rows[i].within));
        assert_true(near(risk, gsl_cdf_ugaussian_Q(2 * rows[i].factor), 1e-15));
    }
    assert_null(ingle_guard_band_name(5));
    /* ISO 14253-1:2017 prints 0.83 U for 95 %, which is 1.645 u = 0.8224 U. */
    assert_true(near(gsl_cdf_ugaussian_Pinv(0.95) / 2, 0.8224, 5e-5));
}

/* Specification 10 ± 1, U = 0.2: acceptance half-widths for the factors of the table. */
static void guard_bands_move_the_limit(void **state)
{
    (void)state;
    static const struct {
        double factor, half_width;
    } rows[] = {{0.83, 0.834}, {1, 0.8}, {1.5, 0.7}, {3, 0.4}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        ingle_decision decision = INGLE_DECISION_NONE;
        double margin = 1 - rows[i].half_width;
        ingle_decide(INGLE_RULE_GUARDED, rows[i].factor, margin + 1e-9, 0.1, &decision);
        assert_int_equal(decision, INGLE_DECISION_PASS);
        ingle_decide(INGLE_RULE_GUARDED, rows[i].factor, margin - 1e-9, 0.1, &decision);
        assert_int_equal(decision, INGLE_DECISION_FAIL);
    }
}

/* ---- rules ---------------------------------------------------------------------------------- */

static ingle_decision decided(ingle_decision_rule rule, double factor, double margin)
{
    ingle_decision decision = INGLE_DECISION_NONE;
    assert_int_equal(ingle_decide(rule, factor, margin, 0.5, &decision), INGLE_OK);
    return decision;
}

/* ILAC-G8:09/2019, 4.2.1 to 4.2.3, with U = 1 and so w = r. */
static void answers_of_the_rules(void **state)
{
    (void)state;
    assert_int_equal(decided(INGLE_RULE_SIMPLE, 0, 0), INGLE_DECISION_PASS);
    assert_int_equal(decided(INGLE_RULE_SIMPLE, 0, -1e-12), INGLE_DECISION_FAIL);
    assert_int_equal(decided(INGLE_RULE_GUARDED, 1, 1), INGLE_DECISION_PASS);
    assert_int_equal(decided(INGLE_RULE_GUARDED, 1, 0.999), INGLE_DECISION_FAIL);
    assert_int_equal(decided(INGLE_RULE_GUARDED, -1, -0.999), INGLE_DECISION_PASS);
    assert_int_equal(decided(INGLE_RULE_GUARDED, -1, -1.001), INGLE_DECISION_FAIL);
    static const struct {
        double margin;
        ingle_decision four, three;
    } rows[] = {{1.001, INGLE_DECISION_PASS, INGLE_DECISION_PASS},
                {1, INGLE_DECISION_CONDITIONAL_PASS, INGLE_DECISION_INCONCLUSIVE},
                {0, INGLE_DECISION_CONDITIONAL_PASS, INGLE_DECISION_INCONCLUSIVE},
                {-1e-9, INGLE_DECISION_CONDITIONAL_FAIL, INGLE_DECISION_INCONCLUSIVE},
                {-1, INGLE_DECISION_CONDITIONAL_FAIL, INGLE_DECISION_INCONCLUSIVE},
                {-1.001, INGLE_DECISION_FAIL, INGLE_DECISION_FAIL}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        assert_int_equal(decided(INGLE_RULE_FOUR_WAY, 1, rows[i].margin), rows[i].four);
        assert_int_equal(decided(INGLE_RULE_THREE_WAY, 1, rows[i].margin), rows[i].three);
    }
}

static void names_lead_to_rules_and_back(void **state)
{
    (void)state;
    assert_int_equal(ingle_decision_rule_count(), 4);
    for (ingle_decision_rule rule = 0; rule < 4; rule++) {
        assert_int_equal(ingle_decision_rule_find(ingle_decision_rule_name(rule)), rule);
        assert_non_null(ingle_decision_rule_text(rule));
    }
    assert_int_equal(ingle_decision_rule_find("five-way"), -1);
    assert_int_equal(ingle_decision_rule_find(NULL), -1);
    assert_null(ingle_decision_rule_name(4));
    assert_null(ingle_decision_name(-1));
    assert_int_equal(ingle_decision_count(), 6);
}

/* ---- bad input ------------------------------------------------------------------------------ */

static void nothing_that_is_no_number_comes_out(void **state)
{
    (void)state;
    const double nothings[] = {NAN, INFINITY, -INFINITY};
    const double one = 1, two = 2;
    double probability = 0.25;
    ingle_decision decision = INGLE_DECISION_NONE;
    for (size_t i = 0; i < 3; i++) {
        double no = nothings[i];
        assert_int_equal(ingle_probability_within(no, 1, &one, NULL, &probability),
                         INGLE_ERROR_ARGUMENT);
        assert_int_equal(ingle_probability_within(1, no, &one, NULL, &probability),
                         INGLE_ERROR_ARGUMENT);
        assert_int_equal(ingle_probability_within(1, 1, &no, NULL, &probability),
                         INGLE_ERROR_ARGUMENT);
        assert_int_equal(ingle_probability_within(1, 1, NULL, &no, &probability),
                         INGLE_ERROR_ARGUMENT);
        assert_int_equal(ingle_decide(INGLE_RULE_GUARDED, no, 1, 1, &decision),
                         INGLE_ERROR_ARGUMENT);
        assert_int_equal(ingle_decide(INGLE_RULE_SIMPLE, 0, no, 1, &decision),
                         INGLE_ERROR_ARGUMENT);
        assert_int_equal(ingle_decide(INGLE_RULE_SIMPLE, 0, 1, no, &decision),
                         INGLE_ERROR_ARGUMENT);
        assert_true(ingle_guard_band_risk(no) == 1);
    }
    assert_int_equal(ingle_probability_within(1, 1, NULL, NULL, &probability),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_probability_within(1, 1, &two, &one, &probability),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_probability_within(1, -1, &one, NULL, &probability),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_decide(INGLE_RULE_SIMPLE, 1, 1, 1, &decision), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_decide(INGLE_RULE_FOUR_WAY, 0, 1, 1, &decision), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_decide(INGLE_RULE_FOUR_WAY, -1, 1, 1, &decision),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_decide(4, 1, 1, 1, &decision), INGLE_ERROR_ARGUMENT);
    assert_true(probability == 0.25);
    assert_int_equal(decision, INGLE_DECISION_NONE);
}

/* Without uncertainty it is so or it is not, the limit itself being met. */
static void without_uncertainty_it_is_so_or_not(void **state)
{
    (void)state;
    assert_true(above(1, 0, 1) == 1 && below(1, 0, 1) == 1 && between(1, 0, 1, 1) == 1);
    assert_true(above(0.9, 0, 1) == 0 && below(1.1, 0, 1) == 0 && between(2, 0, 0, 1) == 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(it_is_the_normal_distribution),
        cmocka_unit_test(two_limits_keep_their_digits),
        cmocka_unit_test(distances_for_probabilities),
        cmocka_unit_test(examples_of_conformance),
        cmocka_unit_test(example_of_guarded_rejection),
        cmocka_unit_test(example_of_risks),
        cmocka_unit_test(guard_bands_of_table_1),
        cmocka_unit_test(guard_bands_move_the_limit),
        cmocka_unit_test(answers_of_the_rules),
        cmocka_unit_test(names_lead_to_rules_and_back),
        cmocka_unit_test(nothing_that_is_no_number_comes_out),
        cmocka_unit_test(without_uncertainty_it_is_so_or_not),
    };
    return cmocka_run_group_tests_name("decisions", tests, NULL, NULL);
}
