/* SPDX-License-Identifier: MIT */
/* Worksheets, exercises, explanations and drawings, while memory fails. */
#include "works.h"

static ingle_survey *survey;
static ingle_amendments *amendments;
static const ingle_standard *standards[2];

enum { STANDARDS = sizeof standards / sizeof standards[0] };

static int make_ground(void **state)
{
    (void)state;
    standards[0] = ingle_standard_find("irc-2021");
    standards[1] = ingle_standard_find("common-practice-us");
    assert_int_equal(ingle_survey_new(NULL, &survey), INGLE_OK);
    assert_int_equal(ingle_amendments_new(NULL, &amendments), INGLE_OK);
    survey_at_the_limits(survey);
    /* Something to put right, something left open, something not measured, and a local rule. */
    assert_int_equal(ingle_survey_record(survey, "hearth.front", "19 1/2 in", NULL), INGLE_OK);
    assert_int_equal(ingle_survey_record(survey, "hearth.left", "12 in", "1/16 in"), INGLE_OK);
    assert_int_equal(ingle_survey_unset(survey, ingle_quantity_find("throat.height"), 0),
                     INGLE_OK);
    assert_int_equal(ingle_amendments_set_text(amendments, standards[0], "hearth-front", "large",
                                               "22 in", 5, NULL, "by-law 7-2"), INGLE_OK);
    return 0;
}

static int free_ground(void **state)
{
    (void)state;
    ingle_amendments_free(amendments);
    ingle_survey_free(survey);
    return 0;
}

static ingle_page page_of(ingle_page_format format)
{
    return (ingle_page){.size = sizeof(ingle_page), .format = format};
}

/* ---- worksheets ----------------------------------------------------------------------------- */

static ingle_status new_worksheet(struct work *work)
{
    return ingle_worksheet_new(&work->allocator, (ingle_worksheet **)&work->object);
}

/* Of a fireplace at which only the opening has been measured, and a shelf seen. */
static ingle_status make_worksheet(struct work *work)
{
    ingle_survey *begun;
    ingle_check_options options = {.size = sizeof options, .amendments = amendments};
    assert_int_equal(ingle_survey_new(NULL, &begun), INGLE_OK);
    assert_int_equal(ingle_survey_record(begun, "appliance.kind", "masonry-fireplace", NULL),
                     INGLE_OK);
    assert_int_equal(ingle_survey_record(begun, "opening.width", "36 in", NULL), INGLE_OK);
    assert_int_equal(ingle_survey_add_item(begun, "trim", "shelf", NULL), INGLE_OK);
    ingle_status status =
        ingle_worksheet_make(begun, standards, STANDARDS, &options, work->object);
    ingle_survey_free(begun);
    return status;
}

static const char *worksheet_error(const void *object)
{
    return ingle_worksheet_error_text(object);
}

static bool worksheet_is_empty(const void *object)
{
    return ingle_worksheet_count(object) == 0 && ingle_worksheet_assumed_count(object) == 0;
}

static void free_worksheet(void *object)
{
    ingle_worksheet_free(object);
}

static ingle_status worksheet_as(struct work *work, ingle_page_format format)
{
    ingle_page page = page_of(format);
    return ingle_worksheet_page(work->object, &page, keep, work->said);
}

static ingle_status worksheet_text(struct work *work)
{
    return worksheet_as(work, INGLE_PAGE_TEXT);
}

static ingle_status worksheet_html(struct work *work)
{
    return worksheet_as(work, INGLE_PAGE_HTML);
}

static const struct trade worksheets = {
    new_worksheet, make_worksheet, worksheet_error, worksheet_is_empty, free_worksheet,
    {worksheet_text, worksheet_html}, 20};

static void worksheets_fail(void **state)
{
    (void)state;
    fail_at_every_allocation(&worksheets);
    assert_non_null(strstr(whole.text, "hearth"));
}

/* ---- exercises ------------------------------------------------------------------------------ */

static ingle_status new_exercise(struct work *work)
{
    return ingle_exercise_new(&work->allocator, (ingle_exercise **)&work->object);
}

static ingle_status make_exercise(struct work *work)
{
    return ingle_exercise_make(work->object, 7, ingle_exercise_level_count(), standards,
                               STANDARDS);
}

static bool exercise_is_empty(const void *object)
{
    return ingle_exercise_question_count(object) == 0 && ingle_exercise_given_count(object) == 0 &&
           ingle_exercise_answer_at(object, 0) == NULL;
}

static void free_exercise(void *object)
{
    ingle_exercise_free(object);
}

static ingle_status exercise_both(struct work *work)
{
    ingle_page page = page_of(INGLE_PAGE_MARKDOWN);
    return ingle_exercise_page(work->object, INGLE_EXERCISE_BOTH, &page, keep, work->said);
}

static ingle_status exercise_problem(struct work *work)
{
    ingle_page page = page_of(INGLE_PAGE_HTML);
    return ingle_exercise_page(work->object, INGLE_EXERCISE_PROBLEM, &page, keep, work->said);
}

static ingle_status exercise_answers(struct work *work)
{
    return ingle_exercise_page(work->object, INGLE_EXERCISE_ANSWERS, NULL, keep, work->said);
}

static const struct trade exercises = {
    new_exercise, make_exercise, NULL, exercise_is_empty, free_exercise,
    {exercise_both, exercise_problem, exercise_answers}, 20};

static void exercises_fail(void **state)
{
    (void)state;
    fail_at_every_allocation(&exercises);
}

/* ---- explanations --------------------------------------------------------------------------- */

static ingle_status new_report(struct work *work)
{
    return ingle_report_new(&work->allocator, (ingle_report **)&work->object);
}

static ingle_status check(struct work *work)
{
    ingle_check_options options = {.size = sizeof options, .amendments = amendments};
    return ingle_check(survey, standards, STANDARDS, &options, work->object);
}

static const char *report_error(const void *object)
{
    return ingle_report_error_text(object);
}

static bool report_is_empty(const void *object)
{
    return ingle_report_finding_count(object) == 0;
}

static void free_report(void *object)
{
    ingle_report_free(object);
}

static ingle_status explain(struct work *work, ingle_explain_form form, ingle_page_format format)
{
    ingle_page page = page_of(format);
    ingle_explain_options options = {.size = sizeof options, .form = form};
    return ingle_explain(work->object, &page, &options, keep, work->said);
}

#define EXPLAIN(name, form, format)                       \
    static ingle_status name(struct work *work)           \
    {                                                     \
        return explain(work, form, format);               \
    }
EXPLAIN(worked_text, INGLE_EXPLAIN_WORKED, INGLE_PAGE_TEXT)
EXPLAIN(worked_markdown, INGLE_EXPLAIN_WORKED, INGLE_PAGE_MARKDOWN)
EXPLAIN(worked_html, INGLE_EXPLAIN_WORKED, INGLE_PAGE_HTML)
EXPLAIN(report_text, INGLE_EXPLAIN_REPORT, INGLE_PAGE_TEXT)
EXPLAIN(report_html, INGLE_EXPLAIN_REPORT, INGLE_PAGE_HTML)
EXPLAIN(brief_text, INGLE_EXPLAIN_BRIEF, INGLE_PAGE_TEXT)
EXPLAIN(brief_markdown, INGLE_EXPLAIN_BRIEF, INGLE_PAGE_MARKDOWN)

static const struct trade explaining = {
    new_report, check, report_error, report_is_empty, free_report,
    {worked_text, worked_markdown, worked_html, report_text, report_html, brief_text,
     brief_markdown}, 25};

static void explaining_fails(void **state)
{
    (void)state;
    fail_at_every_allocation(&explaining);
    assert_non_null(strstr(whole.text, "by-law 7-2"));
}

/* ---- drawings ------------------------------------------------------------------------------- */

#define DRAW(name, view)                                                      \
    static ingle_status name(struct work *work)                               \
    {                                                                         \
        return ingle_draw(work->object, view, NULL, keep, work->said);        \
    }
DRAW(plan, INGLE_VIEW_PLAN)
DRAW(elevation, INGLE_VIEW_ELEVATION)
DRAW(section, INGLE_VIEW_SECTION)
DRAW(roof, INGLE_VIEW_ROOF)

static void drawings_need_no_memory(void **state)
{
    (void)state;
    static ingle_status (*const views[])(struct work *) = {plan, elevation, section, roof};
    enum { VIEWS = sizeof views / sizeof views[0] };
    assert_int_equal(ingle_view_count(), VIEWS);
    struct work work = {.said = &whole};
    work.allocator = memory_allocator(&work.memory);
    start_work(&work, &explaining);
    fill_work(&work, &explaining);
    for (size_t i = 0; i < VIEWS; i++) {
        write_without_memory(&work, views[i]);
        assert_non_null(strstr(whole.text, "</svg>"));
    }
    free_report(work.object);
    assert_int_equal(work.memory.live, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(worksheets_fail),
        cmocka_unit_test(exercises_fail),
        cmocka_unit_test(explaining_fails),
        cmocka_unit_test(drawings_need_no_memory),
    };
    return cmocka_run_group_tests_name("memory-teaching", tests, make_ground, free_ground);
}
