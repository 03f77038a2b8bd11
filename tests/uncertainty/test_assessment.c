/* SPDX-License-Identifier: MIT */
/*
 * How sure findings are: the published check of a flue's share, properties of what is propagated,
 * and what is said where there is no probability.
 */
#include "surveyed.h"

#include <gsl/gsl_cdf.h>

#include <stdlib.h>

static const ingle_probability_options apart = {.size = sizeof apart, .separate_tapes = 1};

/* ---- a flue's share of the opening ---------------------------------------------------------- */

/*
 * The ratio R = flue ÷ opening by its own law, u_R/R = √((2 u/D)² + (u/w)² + (u/h)²), from the
 * budgets that the library gives: w = 36 in, h = 30 in, D = 10 3/4 in, limit 1/12, each length with
 * the uncertainty of its own tape. (Check values: derived, JCGM 106 clause 7.)
 */
static void a_round_flue_against_its_share(void **state)
{
    (void)state;
    record_round_flue("10 3/4 in");
    assess(&apart);
    double u[3];
    assert_int_equal(ingle_assessment_length_count(assessment), 3);
    for (size_t i = 0; i < 3; i++) {
        ingle_figure figure;
        assert_true(
            ingle_length_budget_uncertainty(ingle_assessment_length_at(assessment, i), &figure));
        u[i] = figure.value / INCH;
        assert_true(is_near(u[i], 0.0240559350, 5e-11));
    }
    double area = atan(1) * 10.75 * 10.75;
    double ratio = area / (36.0 * 30.0);
    double u_ratio = ratio * sqrt(pow(2 * u[2] / 10.75, 2) + pow(u[0] / 36, 2) +
                                  pow(u[1] / 30, 2));
    const double limit = 1.0 / 12;
    double probability;
    assert_true(is_near(area, 90.76257526, 5e-9));
    assert_true(is_near(ratio, 0.08403942153, 5e-12));
    assert_true(is_near(u_ratio, 0.0003862140, 5e-11));
    assert_true(is_near((ratio - limit) / u_ratio, 1.828230, 5e-7));
    ingle_probability_within(ratio, u_ratio, &limit, NULL, &probability);
    assert_true(is_near(probability, 0.9662425, 5e-8));
    /* The finding itself is of the area, whose first order differs in the second. */
    assert_true(is_near(uncertainty_of("flue-area") / SQUARE_INCH,
                        sqrt(pow(2 * area * u[2] / 10.75, 2) + pow(2.5 * u[0], 2) +
                             pow(3 * u[1], 2)),
                        1e-6));
    assert_true(is_near(probability_of("flue-area"), 0.9662425, 2e-4));
}

/* The same with each decision rule. Acceptance limits for R: 0.0833333, 0.0839744, 0.0841058. */
static void a_round_flue_decided(void **state)
{
    (void)state;
    static const struct {
        ingle_decision_rule rule;
        double factor;
        ingle_decision decision;
    } rows[] = {
        {INGLE_RULE_SIMPLE, 0, INGLE_DECISION_PASS},
        {INGLE_RULE_GUARDED, 0.83, INGLE_DECISION_PASS},
        {INGLE_RULE_FOUR_WAY, 0.83, INGLE_DECISION_PASS},
        {INGLE_RULE_FOUR_WAY, 1, INGLE_DECISION_CONDITIONAL_PASS},
        {INGLE_RULE_THREE_WAY, 1, INGLE_DECISION_INCONCLUSIVE},
        {INGLE_RULE_GUARDED, 1, INGLE_DECISION_FAIL},
    };
    record_round_flue("10 3/4 in");
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        ingle_probability_options options = apart;
        options.rule = rows[i].rule;
        options.guard_factor = rows[i].factor;
        assess(&options);
        const ingle_conformance *conformance = conformance_of("flue-area");
        assert_int_equal(ingle_conformance_decision(conformance), rows[i].decision);
        /* The verdict is not the decision's to change. */
        assert_int_equal(ingle_finding_verdict(ingle_conformance_finding(conformance)),
                         INGLE_MEETS);
    }
}

/* ---- one tape ------------------------------------------------------------------------------- */

static double operand_of(const char *rule, const char *label, bool first)
{
    const ingle_conformance *conformance = conformance_of(rule);
    for (size_t i = 0; i < ingle_conformance_step_count(conformance); i++) {
        const ingle_uncertainty_step *step = ingle_conformance_step_at(conformance, i);
        if (strcmp(ingle_uncertainty_step_label(step), label) == 0) {
            char text[200];
            ingle_format format = {.size = sizeof format, .unit = ingle_unit_find("in")};
            ingle_uncertainty_step_text(step, INGLE_STEP_SUBSTITUTED, &format, text, sizeof text,
                                        NULL);
            const char *plus = strstr(text, " + ");
            assert_non_null(plus);
            return strtod(first ? text + 1 : plus + 3, NULL);
        }
    }
    fail_msg("no step %s", label);
    return 0;
}

/*
 * What a tape is off in proportion to length changes an area's margin by twice that share of the
 * margin, whatever the areas: at the limit it cancels. (2 − 1 − 1 = 0 in the ratio.) Class II: 0.2
 * mm in a metre.
 */
static void what_is_proportional_to_length_cancels(void **state)
{
    (void)state;
    static const char *const diameters[] = {"10 3/4 in", "10 11/16 in", "11 in"};
    static const double sizes[] = {10.75, 10.6875, 11};
    for (size_t i = 0; i < 3; i++) {
        record_round_flue(diameters[i]);
        assess(NULL);
        double margin = atan(1) * sizes[i] * sizes[i] - 90;
        double expected = 2 * 0.0002 * margin / sqrt(3);
        double rest = operand_of("flue-area", "from the tape", false);
        assert_true(is_near(operand_of("flue-area", "from the tape", true), expected,
                            0.006 * fabs(expected)));
        assert_true(fabs(rest) > 100 * fabs(expected)); /* the end does not cancel */
    }
}

/* One tape's errors partly cancel between flue and opening; those of three tapes do not. */
static void one_tape_is_surer_than_three(void **state)
{
    (void)state;
    record_round_flue("10 3/4 in");
    assess(&apart);
    double three = uncertainty_of("flue-area");
    assess(NULL);
    double one = uncertainty_of("flue-area");
    /* By hand: readings 0.0180421959 in, tape 0.7 mm ÷ √3, changes 2 A/D, 2.5 and 3 in. */
    double change = 2 * 90.76257526 / 10.75;
    double tape = 0.7 / 25.4 / sqrt(3) * (change - 2.5 - 3);
    double reading = 0.0180421959 * sqrt(change * change + 2.5 * 2.5 + 3 * 3);
    assert_true(is_near(one / SQUARE_INCH, sqrt(tape * tape + reading * reading), 1e-6));
    assert_true(one < three);
}

/* A difference of two lengths: what is fixed of the tape cancels wholly, the readings stay. */
static void an_end_cancels_in_a_difference(void **state)
{
    (void)state;
    record_fireplace();
    record("hearth.front", "20 1/8 in");
    record("hearth.facing", "4 in");
    record_tape("handbook-44", "1/16 in");
    const ingle_standard *standards[] = {ingle_standard_find("usda-fb1889-1941")};
    assert_int_equal(ingle_check(survey, standards, 1, NULL, report), INGLE_OK);
    assert_int_equal(ingle_assess(report, NULL, assessment), INGLE_OK);
    assert_true(is_near(uncertainty_of("hearth-from-facing") / INCH, sqrt(2) * 0.0180421959,
                        1e-7));
}

/* ---- properties ----------------------------------------------------------------------------- */

/* More flue never makes it less likely that the flue is enough. */
static void probability_rises_with_the_margin(void **state)
{
    (void)state;
    double last = -1;
    double least = 1;
    double most = 0;
    for (int sixteenths = 160; sixteenths <= 184; sixteenths++) {
        char diameter[32];
        ingle_amount amount = {sixteenths * 25400000LL / 16, INGLE_LENGTH, INGLE_SCALE_USUAL};
        ingle_amount_format(&amount, NULL, diameter, sizeof diameter, NULL);
        record_round_flue(diameter);
        assess(NULL);
        double probability = probability_of("flue-area");
        assert_true(probability >= last);
        last = probability;
        least = fmin(least, probability);
        most = fmax(most, probability);
    }
    assert_true(least < 1e-6 && most > 1 - 1e-6);
}

/* A single length: by hand, Φ(margin ÷ u), at every sixteenth about the limit of 20 in. */
static void a_hearth_against_the_normal_distribution(void **state)
{
    (void)state;
    for (int sixteenths = 318; sixteenths <= 322; sixteenths++) {
        char front[32];
        ingle_amount amount = {sixteenths * 25400000LL / 16, INGLE_LENGTH, INGLE_SCALE_USUAL};
        ingle_amount_format(&amount, NULL, front, sizeof front, NULL);
        record_fireplace();
        record("opening.width", "42 in");
        record("opening.height", "30 in");
        record("hearth.front", front);
        record_tape("class-ii", "1/16 in");
        assess(NULL);
        double z = (sixteenths / 16.0 - 20) / 0.0240559350;
        assert_true(is_near(probability_of("hearth-front"), gsl_cdf_ugaussian_P(z), 1e-7));
        assert_int_equal(ingle_conformance_method(conformance_of("hearth-front")),
                         INGLE_METHOD_FIRST_ORDER);
    }
}

/* Tolerances are another thing: they bear on the verdict and not on the probability. */
static void tolerances_have_no_part_in_it(void **state)
{
    (void)state;
    record_round_flue("10 3/4 in");
    assess(NULL);
    double without = probability_of("flue-area");
    assert_int_equal(ingle_survey_record(survey, "flue.diameter", "10 3/4 in", "1/4 in"),
                     INGLE_OK);
    assess(NULL);
    const ingle_finding *finding = ingle_conformance_finding(conformance_of("flue-area"));
    assert_int_equal(ingle_finding_verdict(finding), INGLE_TOO_CLOSE);
    assert_true(probability_of("flue-area") == without);
}

/* A local amendment's number is the one that the probability is of. */
static void amendments_count(void **state)
{
    (void)state;
    ingle_amendments *amendments;
    const ingle_standard *standards[] = {ingle_standard_find("irc-2021")};
    record_fireplace();
    record("opening.width", "42 in");
    record("opening.height", "30 in");
    record("hearth.front", "24 in");
    record_tape("class-ii", "1/16 in");
    assert_int_equal(ingle_amendments_new(NULL, &amendments), INGLE_OK);
    assert_int_equal(ingle_amendments_set_text(amendments, standards[0], "hearth-front",
                                               "large", "24 in", 5, NULL, "By-law 7-2"),
                     INGLE_OK);
    ingle_check_options options = {.size = sizeof options, .amendments = amendments};
    assert_int_equal(ingle_check(survey, standards, 1, &options, report), INGLE_OK);
    assert_int_equal(ingle_assess(report, NULL, assessment), INGLE_OK);
    assert_true(is_near(probability_of("hearth-front"), 0.5, 1e-9));
    ingle_amendments_free(amendments);
}

/* ---- where there is none -------------------------------------------------------------------- */

static const char *sentence_of(const char *rule, ingle_conformance_part part)
{
    static char text[600];
    assert_int_equal(
        ingle_conformance_text(conformance_of(rule), part, NULL, text, sizeof text, NULL),
        INGLE_OK);
    return text;
}

static void without_a_tape_it_says_what_is_missing(void **state)
{
    (void)state;
    record_round_flue("10 3/4 in");
    const ingle_quantity *tape_class = ingle_quantity_find("tape.class");
    const ingle_quantity *graduation = ingle_quantity_find("tape.graduation");
    ingle_survey_unset(survey, graduation, 0);
    assess(NULL);
    assert_int_equal(ingle_assessment_missing_count(assessment), 1);
    assert_ptr_equal(ingle_assessment_missing_at(assessment, 0), graduation);
    ingle_survey_unset(survey, tape_class, 0);
    assess(NULL);
    assert_int_equal(ingle_assessment_missing_count(assessment), 2);
    assert_ptr_equal(ingle_assessment_missing_at(assessment, 0), tape_class);
    assert_null(ingle_assessment_missing_at(assessment, 2));
    assert_int_equal(ingle_assessment_length_count(assessment), 0);
    assert_false(ingle_conformance_probability(conformance_of("flue-area"), NULL));
    assert_int_equal(ingle_conformance_decision(conformance_of("flue-area")),
                     INGLE_DECISION_NONE);
    assert_non_null(strstr(sentence_of("flue-area", INGLE_CONFORMANCE_SENTENCE), "tape.class"));
    assert_non_null(strstr(ingle_assessment_text(assessment), "tape.graduation"));
}

/* The tape judges nothing: one named changes no finding, one lacking leaves none unmeasured. */
static void a_tape_changes_no_finding(void **state)
{
    (void)state;
    record_round_flue("10 3/4 in");
    judge();
    size_t with = ingle_report_finding_count(report);
    size_t missing_with = ingle_report_missing_count(report);
    ingle_survey_unset(survey, ingle_quantity_find("tape.class"), 0);
    ingle_survey_unset(survey, ingle_quantity_find("tape.graduation"), 0);
    judge();
    assert_int_equal(ingle_report_finding_count(report), with);
    assert_int_equal(ingle_report_missing_count(report), missing_with);
    for (size_t i = 0; i < missing_with; i++) {
        const ingle_quantity *missing =
            ingle_missing_quantity(ingle_report_missing_at(report, i));
        assert_string_not_equal(ingle_quantity_group(missing), "tape");
    }
}

static void findings_without_a_measured_length_have_none(void **state)
{
    (void)state;
    record_fireplace();
    record("firebox.lining", "firebrick");
    record("flue.lining", "sound");
    record("flue.slope", "30 deg");
    record_tape("class-ii", "1/16 in");
    assess(NULL);
    assert_non_null(strstr(sentence_of("flue-slope", INGLE_CONFORMANCE_SENTENCE), "no length"));
    assert_non_null(strstr(sentence_of("hearth-front", INGLE_CONFORMANCE_SENTENCE), "not judged"));
    size_t observed = 0;
    for (size_t i = 0; i < ingle_assessment_count(assessment); i++) {
        char text[400];
        const ingle_conformance *conformance = ingle_assessment_at(assessment, i);
        ingle_conformance_text(conformance, INGLE_CONFORMANCE_SENTENCE, NULL, text, sizeof text,
                               NULL);
        observed += strstr(text, "observed") != NULL;
        assert_false(ingle_conformance_probability(conformance, NULL));
    }
    assert_true(observed > 0);
}

/* An area that somebody stated is exact as far as anybody knows, and that is said. */
static void a_stated_area_is_taken_as_exact(void **state)
{
    (void)state;
    record_fireplace();
    record("opening.width", "36 in");
    record("opening.height", "30 in");
    record("flue.shape", "round");
    record("flue.net-area", "91 in2");
    record_tape("class-ii", "1/16 in");
    assess(&apart);
    assert_true(is_near(uncertainty_of("flue-area") / SQUARE_INCH,
                        0.0240559350 * sqrt(2.5 * 2.5 + 3 * 3), 1e-6));
    assert_non_null(strstr(sentence_of("flue-area", INGLE_CONFORMANCE_CAUTION), "flue.net-area"));
}

/* Handbook 44 has no tolerance beyond 100 ft. */
static void a_length_beyond_the_tape_has_none(void **state)
{
    (void)state;
    record_fireplace();
    record("opening.width", "36 in");
    record("opening.height", "30 in");
    record("flue.width", "12 in");
    record("flue.depth", "12 in");
    record("flue.above-hearth", "101 ft");
    record("flue.lining", "sound");
    record_tape("handbook-44", "1/16 in");
    const ingle_standard *standards[] = {ingle_standard_find("usda-fb1889-1941"),
                                         ingle_standard_find("irc-2021")};
    assert_int_equal(ingle_check(survey, standards, 1, NULL, report), INGLE_OK);
    assert_int_equal(ingle_assess(report, NULL, assessment), INGLE_OK);
    assert_non_null(strstr(sentence_of("flue-area", INGLE_CONFORMANCE_SENTENCE), "tolerance"));
    assert_false(ingle_conformance_probability(conformance_of("flue-area"), NULL));
    assert_int_equal(ingle_check(survey, standards + 1, 1, NULL, report), INGLE_OK);
    assert_int_equal(ingle_assess(report, NULL, assessment), INGLE_OK);
    probability_of("flue-area"); /* which the long one has no part in */
}

/* ---- bad input and memory ------------------------------------------------------------------- */

static void options_out_of_range_are_refused(void **state)
{
    (void)state;
    record_round_flue("10 3/4 in");
    assess(NULL);
    ingle_probability_options options = {.size = sizeof options};
    options.rule = 4;
    assert_int_equal(ingle_assess(report, &options, assessment), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_assessment_count(assessment), 0);
    options.rule = INGLE_RULE_FOUR_WAY;
    assert_int_equal(ingle_assess(report, &options, assessment), INGLE_ERROR_ARGUMENT);
    options.guard_factor = NAN;
    assert_int_equal(ingle_assess(report, &options, assessment), INGLE_ERROR_ARGUMENT);
    options.guard_factor = 1;
    options.trials = ingle_most_trials() + 1;
    assert_int_equal(ingle_assess(report, &options, assessment), INGLE_ERROR_ARGUMENT);
    options.trials = 0;
    options.size = 8;
    assert_int_equal(ingle_assess(report, &options, assessment), INGLE_ERROR_STRUCT_SIZE);
    assert_int_equal(ingle_assess(NULL, NULL, assessment), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_assess(report, NULL, NULL), INGLE_ERROR_ARGUMENT);
    ingle_report *fresh;
    assert_int_equal(ingle_report_new(NULL, &fresh), INGLE_OK);
    assert_int_equal(ingle_assess(fresh, NULL, assessment), INGLE_ERROR_ARGUMENT);
    ingle_report_free(fresh);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_round_flue_against_its_share),
        TEST(a_round_flue_decided),
        TEST(what_is_proportional_to_length_cancels),
        TEST(one_tape_is_surer_than_three),
        TEST(an_end_cancels_in_a_difference),
        TEST(probability_rises_with_the_margin),
        TEST(a_hearth_against_the_normal_distribution),
        TEST(tolerances_have_no_part_in_it),
        TEST(amendments_count),
        TEST(without_a_tape_it_says_what_is_missing),
        TEST(a_tape_changes_no_finding),
        TEST(findings_without_a_measured_length_have_none),
        TEST(a_stated_area_is_taken_as_exact),
        TEST(a_length_beyond_the_tape_has_none),
        TEST(options_out_of_range_are_refused),
    };
    return cmocka_run_group_tests_name("assessment", tests, NULL, NULL);
}
