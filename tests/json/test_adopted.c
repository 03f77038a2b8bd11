/* SPDX-License-Identifier: MIT */
/*
 * What holds for many surveys: amendments that are kept, and the readings of a call.
 */
#include "document.h"

#include <stdio.h>

#define ENTRY(set, citation)                                                                     \
    "{`standard`: `irc-2021`, `rule`: `hearth-front`, `set`: {" set "}, `citation`: `" citation   \
    "`}"
#define OWN(set) "`amendments`: [" ENTRY(set, "own") "], "

/* What is required in front of the opening, of 6 ft2, and who says so. */
static void expect_front(const char *document, const char *required, const char *amendment)
{
    if (check_with(document, NULL) != INGLE_OK) {
        print_message("%s\n%s", document, ingle_json_text(json, NULL));
        fail();
    }
    struct json_object *report = left();
    struct json_object *front = finding(report, "hearth-front");
    assert_string_equal(text_of(member(front, "required"), "text"), required);
    assert_string_equal(text_of(front, "amendment"), amendment);
    json_object_put(report);
}

static void expect_kept(const char *document, const char *count)
{
    if (amend_with(document) != INGLE_OK) {
        print_message("%s\n%s", document, ingle_json_text(json, NULL));
        fail();
    }
    struct json_object *tree = left();
    assert_int_equal(json_object_object_length(tree), 1);
    assert_string_equal(text_of(tree, "amendments"), count);
    json_object_put(tree);
}

static int let_go(void **state)
{
    (void)state;
    ingle_json_clear_amendments(json);
    return 0;
}

/* ---- amendments ------------------------------------------------------------------------------ */

static void amendments_are_kept_until_cleared(void **state)
{
    (void)state;
    expect_kept("{`amendments`: [" ENTRY("`large`: `24 in`", "a") "]}", "1");
    for (int i = 0; i < 3; i++) {
        expect_front(DOCUMENT("", "`19 in`"), "24 in", "a");
    }
    ingle_json_clear_amendments(json);
    expect_front(DOCUMENT("", "`19 in`"), "20 in", "(absent)");
    ingle_json_clear_amendments(NULL);
}

static void the_document_s_own_win_for_it_alone(void **state)
{
    (void)state;
    expect_kept("{`amendments`: [" ENTRY("`large`: `24 in`", "a") "]}", "1");
    expect_front(DOCUMENT(OWN("`large`: `30 in`"), "`19 in`"), "30 in", "own");
    expect_front(DOCUMENT("", "`19 in`"), "24 in", "a");
    expect_front(DOCUMENT(OWN("`small`: `30 in`"), "`19 in`"), "24 in", "own");
    expect_front(DOCUMENT("`amendments`: [], ", "`19 in`"), "24 in", "a");
}

static void later_documents_win(void **state)
{
    (void)state;
    expect_kept("{`amendments`: [" ENTRY("`large`: `24 in`, `small`: `18 in`", "a") "]}", "2");
    expect_kept("{`amendments`: [" ENTRY("`large`: `26 in`", "b") "]}", "3");
    expect_front(DOCUMENT("", "`19 in`"), "26 in", "b");
    expect_kept("{`amendments`: [" ENTRY("`large`: `22 in`", "c") ", "
                ENTRY("`large`: `23 in`", "d") "]}", "5");
    expect_front(DOCUMENT("", "`19 in`"), "23 in", "d");
}

static void an_authority_and_a_unit(void **state)
{
    (void)state;
    expect_kept("{`amendments`: [" ENTRY("`large`: 600", "by-law 7-2")
                "], `unit`: `mm`, `authority`: `Town of Alderbrook`, `note`: `none`}", "1");
    /* The survey's own unit is another, and what it is shown in. */
    expect_front(DOCUMENT("`unit`: `cm`, ", "50"), "60 cm", "Town of Alderbrook, by-law 7-2");
    /* A bare number of a survey still needs the survey's unit. */
    assert_int_equal(check_with(DOCUMENT("", "50"), NULL), INGLE_ERROR_UNIT_MISSING);
    /* And the next document of amendments needs its own. */
    assert_int_equal(amend_with("{`amendments`: [" ENTRY("`large`: 600", "a") "]}"),
                     INGLE_ERROR_UNIT_MISSING);
}

static void a_document_that_is_refused_keeps_nothing(void **state)
{
    (void)state;
    expect_kept("{`amendments`: [" ENTRY("`large`: `24 in`", "a") "]}", "1");
    static const char *const refused[] = {
        "{`amendments`: [" ENTRY("`large`: `30 in`", "b") ", 1]}",
        "{`amendments`: [" ENTRY("`large`: `30 in`, `small`: `x`", "b") "]}",
        "{`amendments`: [" ENTRY("`large`: `30 in`", "b") "], `unit`: 1}",
        "{`amendments`: [" ENTRY("`large`: `30 in`", "b") "]",
        "[]",
    };
    for (size_t i = 0; i < sizeof refused / sizeof refused[0]; i++) {
        assert_true(amend_with(refused[i]) < 0);
        expect_front(DOCUMENT("", "`19 in`"), "24 in", "a");
    }
    expect_kept("{`amendments`: []}", "1");
}

/* What a survey set before it was refused must not reach the next, which amends another number. */
static void a_survey_that_is_refused_leaves_no_amendment(void **state)
{
    (void)state;
    assert_int_equal(check_with(DOCUMENT(OWN("`large`: `30 in`, `small`: `x`"), "`19 in`"), NULL),
                     INGLE_ERROR_NUMBER);
    expect_front(DOCUMENT(OWN("`small`: `10 in`"), "`19 in`"), "20 in", "own");
}

static void many_amendments(void **state)
{
    (void)state;
    char count[16];
    for (int i = 1; i <= 100; i++) {
        snprintf(count, sizeof count, "%d", i);
        expect_kept(i % 2 == 0 ? "{`amendments`: [" ENTRY("`large`: `24 in`", "even") "]}"
                               : "{`amendments`: [" ENTRY("`large`: `25 in`", "odd") "]}", count);
    }
    expect_front(DOCUMENT("", "`19 in`"), "24 in", "even");
    expect_front(DOCUMENT(OWN("`large`: `30 in`"), "`19 in`"), "30 in", "own");
    expect_front(DOCUMENT("", "`19 in`"), "24 in", "even");
}

static void calls_that_are_wrong(void **state)
{
    (void)state;
    assert_int_equal(ingle_json_amend(NULL, "", 0), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_amend(json, NULL, 1), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_amend(json, NULL, 0), INGLE_ERROR_JSON);
    assert_int_equal(ingle_json_verdict(json), INGLE_NOT_APPLICABLE);
}

/* ---- readings -------------------------------------------------------------------------------- */

/*
 * Ontario Building Code 2012, 9.22.5.1(2): raised more than 300 mm, 450 mm and 25 mm more for every
 * 50 mm above. 325 mm is half a step: 475 mm, or 450 mm if only whole steps count.
 */
#define RAISED(members)                                                                          \
    "{`standards`: [`obc-2012`], " members "`survey`: {`appliance`: {`kind`: "                    \
    "`masonry-fireplace`}, `hearth`: {`firebox-raise`: `325 mm`, `from-facing`: `460 mm`}}}"

static void expect_facing(const char *document, const ingle_json_options *options,
                          const char *required)
{
    assert_int_equal(check_with(document, options), INGLE_OK);
    struct json_object *report = left();
    struct json_object *facing = finding(report, "hearth-from-facing");
    assert_string_equal(text_of(member(facing, "required"), "text"), required);
    json_object_put(report);
}

static size_t index_of_reading(const char *id)
{
    const ingle_reading *reading;
    for (size_t i = 0; (reading = ingle_reading_at(i)) != NULL; i++) {
        if (strcmp(ingle_reading_id(reading), id) == 0) {
            return i;
        }
    }
    fail();
    return 0;
}

static void readings_of_documents_and_calls(void **state)
{
    (void)state;
    int32_t chosen[64];
    ingle_json_options options = {.size = sizeof options, .readings = chosen};
    size_t steps = index_of_reading("hearth-steps");
    options.reading_count = steps + 1;
    for (size_t i = 0; i <= steps; i++) {
        chosen[i] = -1;
    }
    static const char whole_steps[] = RAISED("`readings`: {`hearth-steps`: `whole-steps`}, ");
    expect_facing(RAISED(""), NULL, "475 mm");
    expect_facing(whole_steps, NULL, "450 mm");
    expect_facing(RAISED(""), NULL, "475 mm");
    expect_facing(whole_steps, &options, "450 mm");
    chosen[steps] = 0;
    expect_facing(whole_steps, &options, "475 mm");
    chosen[steps] = 1;
    expect_facing(RAISED(""), &options, "450 mm");
    expect_facing(RAISED(""), NULL, "475 mm");
    options.reading_count = 0;
    expect_facing(RAISED(""), &options, "475 mm");
}

static void readings_that_cannot_be(void **state)
{
    (void)state;
    int32_t chosen[64] = {0};
    size_t count = ingle_reading_count();
    assert_true(count > 0 && count < 64);
    ingle_json_options options = {.size = sizeof options, .reading_count = count};
    assert_int_equal(check_with(RAISED(""), &options), INGLE_ERROR_ARGUMENT);
    options.readings = chosen;
    assert_int_equal(check_with(RAISED(""), &options), INGLE_OK);
    chosen[0] = (int32_t)ingle_reading_option_count(ingle_reading_at(0));
    assert_int_equal(check_with(RAISED(""), &options), INGLE_ERROR_ARGUMENT);
    chosen[0] = -2;
    assert_int_equal(check_with(RAISED(""), &options), INGLE_ERROR_ARGUMENT);
    chosen[0] = -1;
    assert_int_equal(check_with(RAISED(""), &options), INGLE_OK);
    options.reading_count = count + 1;
    assert_int_equal(check_with(RAISED(""), &options), INGLE_ERROR_ARGUMENT);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(amendments_are_kept_until_cleared, let_go),
        cmocka_unit_test_teardown(the_document_s_own_win_for_it_alone, let_go),
        cmocka_unit_test_teardown(later_documents_win, let_go),
        cmocka_unit_test_teardown(an_authority_and_a_unit, let_go),
        cmocka_unit_test_teardown(a_document_that_is_refused_keeps_nothing, let_go),
        cmocka_unit_test_teardown(a_survey_that_is_refused_leaves_no_amendment, let_go),
        cmocka_unit_test_teardown(many_amendments, let_go),
        cmocka_unit_test_teardown(calls_that_are_wrong, let_go),
        cmocka_unit_test(readings_of_documents_and_calls),
        cmocka_unit_test(readings_that_cannot_be),
    };
    return cmocka_run_group_tests(tests, document_make, document_unmake);
}
