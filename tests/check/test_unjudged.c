/* SPDX-License-Identifier: MIT */
/*
 * What was recorded and no standard named judges, and what each standard comes to by itself. That
 * a code says nothing of cracked panels, soot or creosote is what its rows in the listing of all
 * rules show; which standards do is read there too.
 */
#include "fireplaces.h"

static ingle_survey *survey;
static ingle_report *report;

static int make(void **state)
{
    (void)state;
    assert_int_equal(ingle_survey_new(NULL, &survey), INGLE_OK);
    assert_int_equal(ingle_report_new(NULL, &report), INGLE_OK);
    return 0;
}

static int unmake(void **state)
{
    (void)state;
    ingle_report_free(report);
    ingle_survey_free(survey);
    return 0;
}

static void check(const struct entry *entries, const char *first, const char *second)
{
    const ingle_standard *standards[] = {ingle_standard_find(first),
                                         second == NULL ? NULL : ingle_standard_find(second)};
    ingle_survey_clear(survey);
    record_entries(survey, entries);
    assert_int_equal(ingle_check(survey, standards, second == NULL ? 1 : 2, NULL, report),
                     INGLE_OK);
}

static void expect_unjudged(size_t index, const char *subject)
{
    char text[200];
    const ingle_unjudged *unjudged = ingle_report_unjudged_at(report, index);
    assert_non_null(unjudged);
    assert_int_equal(ingle_unjudged_subject_text(unjudged, text, sizeof text, NULL), INGLE_OK);
    assert_string_equal(text, subject);
}

static bool points_to(size_t index, const char *standard)
{
    const ingle_standard *found;
    const ingle_unjudged *unjudged = ingle_report_unjudged_at(report, index);
    for (size_t i = 0; (found = ingle_unjudged_standard_at(unjudged, i)) != NULL; i++) {
        if (strcmp(ingle_standard_id(found), standard) == 0) {
            return true;
        }
    }
    return false;
}

static const struct entry sooty[] = {
    {"appliance.kind", "masonry-fireplace", NULL},
    {"appliance.fuel", "wood", NULL},
    {"opening.width", "36 in", NULL},
    {"opening.height", "24 in", NULL},
    {"hearth.front", "20 in", NULL},
    {"signs.soot", "yes", NULL},
    {"creosote.kind", "glazed", NULL},
    {NULL, NULL, NULL},
};

static void test_what_a_code_does_not_judge(void **state)
{
    (void)state;
    check(sooty, "irc-2021", NULL);
    assert_int_equal(ingle_report_unjudged_count(report), 2);
    expect_unjudged(0, "/survey/creosote/kind");
    expect_unjudged(1, "/survey/signs/soot");
    assert_true(points_to(0, "common-practice-us"));
    assert_true(points_to(0, "missouri-extension"));
    assert_true(points_to(1, "common-practice-us"));
    assert_false(points_to(1, "missouri-extension"));
    assert_null(ingle_report_unjudged_at(report, 2));
}

static void test_what_another_standard_judges(void **state)
{
    (void)state;
    check(sooty, "irc-2021", "common-practice-us");
    assert_int_equal(ingle_report_unjudged_count(report), 0);
    assert_int_equal(ingle_report_standard_verdict(report, 0), INGLE_UNMEASURED);
    assert_int_equal(ingle_report_standard_verdict(report, 1), INGLE_FAILS);
    assert_int_equal(ingle_report_standard_verdict(report, 2), INGLE_NOT_APPLICABLE);
    assert_int_equal(ingle_report_verdict(report), INGLE_FAILS);
}

/* The hearth left in front follows from both; the shelf is asked of fireplaces alone. */
static void test_what_is_judged_by_what_follows_from_it(void **state)
{
    static const struct entry entries[] = {
        {"appliance.kind", "insert", NULL},
        {"hearth.front", "20 in", NULL},
        {"insert.projection", "2 in", NULL},
        {NULL, NULL, NULL},
    };
    (void)state;
    check(entries, "common-practice-us", NULL);
    assert_int_equal(ingle_report_unjudged_count(report), 0);
}

static void test_items(void **state)
{
    static const struct entry entries[] = {
        {"appliance.kind", "insert", NULL},
        {"trim[0].distance", "8 in", NULL},
        {NULL, NULL, NULL},
    };
    const ingle_standard *standards[] = {ingle_standard_find("irc-2021")};
    (void)state;
    ingle_survey_clear(survey);
    assert_int_equal(ingle_survey_add_item(survey, "trim", "shelf", NULL), INGLE_OK);
    record_entries(survey, entries);
    assert_int_equal(ingle_check(survey, standards, 1, NULL, report), INGLE_OK);
    assert_int_equal(ingle_report_unjudged_count(report), 1);
    expect_unjudged(0, "/survey/trim/0/distance");
    assert_false(points_to(0, "irc-2024"));
}

static void test_arguments(void **state)
{
    size_t length = 0;
    (void)state;
    check(sooty, "irc-2021", NULL);
    const ingle_unjudged *unjudged = ingle_report_unjudged_at(report, 0);
    assert_string_equal(ingle_quantity_id(ingle_unjudged_quantity(unjudged)), "creosote.kind");
    assert_int_equal(ingle_unjudged_subject_text(NULL, NULL, 0, &length), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_unjudged_subject_text(unjudged, NULL, 1, &length),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_unjudged_subject_text(unjudged, NULL, 0, &length), INGLE_OK);
    assert_int_equal(length, strlen("/survey/creosote/kind"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_what_a_code_does_not_judge),
        cmocka_unit_test(test_what_another_standard_judges),
        cmocka_unit_test(test_what_is_judged_by_what_follows_from_it),
        cmocka_unit_test(test_items),
        cmocka_unit_test(test_arguments),
    };
    return cmocka_run_group_tests(tests, make, unmake);
}
