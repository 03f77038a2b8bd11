/* SPDX-License-Identifier: MIT */
/* A page on one rule: what is no rule of the standards is refused, and nothing is written. */
#include <ingle/ingle.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

static ingle_survey *survey;
static ingle_report *report;
static ingle_assessment *assessment;
static size_t written;

static int make(void **state)
{
    (void)state;
    const ingle_standard *standards[] = {ingle_standard_find("irc-2021"),
                                         ingle_standard_find("common-practice-us")};
    written = 0;
    return ingle_survey_new(NULL, &survey) == INGLE_OK &&
                   ingle_report_new(NULL, &report) == INGLE_OK &&
                   ingle_assessment_new(NULL, &assessment) == INGLE_OK &&
                   ingle_survey_record(survey, "appliance.kind", "masonry-fireplace", NULL) ==
                       INGLE_OK &&
                   ingle_check(survey, standards, 2, NULL, report) == INGLE_OK &&
                   ingle_assess(report, NULL, assessment) == INGLE_OK
               ? 0
               : -1;
}

static int unmake(void **state)
{
    (void)state;
    ingle_assessment_free(assessment);
    ingle_report_free(report);
    ingle_survey_free(survey);
    return 0;
}

static int32_t count(void *context, const char *text, size_t length)
{
    (void)context;
    (void)text;
    written += length;
    return 0;
}

static ingle_status explain(const char *rule)
{
    ingle_explain_options options = {.size = sizeof options, .rule = rule};
    return ingle_explain(report, NULL, &options, count, NULL);
}

static void a_rule_that_no_standard_has_is_refused(void **state)
{
    (void)state;
    /* "" is no rule either, and irc-2021 calls none of its rules by a standard's id. */
    static const char *const unknown[] = {"hearth-frnt", "", "irc-2021", "HEARTH-FRONT"};
    for (size_t i = 0; i < sizeof unknown / sizeof unknown[0]; i++) {
        assert_int_equal(explain(unknown[i]), INGLE_ERROR_UNKNOWN_RULE);
        assert_int_equal(ingle_assessment_page(assessment, NULL, unknown[i], count, NULL),
                         INGLE_ERROR_UNKNOWN_RULE);
        assert_int_equal(written, 0);
    }
}

static void a_rule_of_any_of_the_standards_is_known(void **state)
{
    (void)state;
    /* The first is the residential code's, the second the trade's alone; the third has a finding
       at a stove and none here. */
    static const char *const known[] = {"hearth-front", "furniture-distance", "floor-protection"};
    for (size_t i = 0; i < sizeof known / sizeof known[0]; i++) {
        assert_int_equal(explain(known[i]), INGLE_OK);
        assert_int_equal(ingle_assessment_page(assessment, NULL, known[i], count, NULL), INGLE_OK);
    }
    assert_true(written > 0);
}

static void a_rule_of_another_standard_is_not(void **state)
{
    (void)state;
    const ingle_standard *standard = ingle_standard_find("irc-2021");
    assert_int_equal(ingle_check(survey, &standard, 1, NULL, report), INGLE_OK);
    assert_int_equal(explain("furniture-distance"), INGLE_ERROR_UNKNOWN_RULE);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(a_rule_that_no_standard_has_is_refused, make, unmake),
        cmocka_unit_test_setup_teardown(a_rule_of_any_of_the_standards_is_known, make, unmake),
        cmocka_unit_test_setup_teardown(a_rule_of_another_standard_is_not, make, unmake),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
