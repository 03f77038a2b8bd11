/* SPDX-License-Identifier: MIT */
/* The draft, and how sure the findings are, with their pages and plots, while memory fails. */
#include "works.h"

static ingle_survey *survey;
static ingle_report *report;
static const ingle_standard *standards[1];

static int make_ground(void **state)
{
    (void)state;
    standards[0] = ingle_standard_find("irc-2021");
    assert_int_equal(ingle_survey_new(NULL, &survey), INGLE_OK);
    assert_int_equal(ingle_report_new(NULL, &report), INGLE_OK);
    survey_at_the_limits(survey);
    static const struct entry more[] = {{"tape.class", "class-ii", NULL},
                                        {"tape.graduation", "1/16 in", NULL},
                                        {"flue.height", "16 ft", NULL},
                                        {NULL, NULL, NULL}};
    record_entries(survey, more);
    assert_int_equal(ingle_check(survey, standards, 1, NULL, report), INGLE_OK);
    return 0;
}

static int free_ground(void **state)
{
    (void)state;
    ingle_report_free(report);
    ingle_survey_free(survey);
    return 0;
}

static ingle_page page_of(ingle_page_format format)
{
    return (ingle_page){.size = sizeof(ingle_page), .format = format};
}

/* ---- the draft ------------------------------------------------------------------------------ */

static ingle_draft_input input;

static ingle_status new_draft(struct work *work)
{
    return ingle_draft_new(&work->allocator, (ingle_draft **)&work->object);
}

static ingle_status estimate(struct work *work)
{
    assert_int_equal(ingle_draft_input_start(&input), INGLE_OK);
    ingle_status status =
        ingle_draft_take_survey(work->object, survey, standards, 1, &input);
    return status == INGLE_OK ? ingle_draft_estimate(work->object, &input) : status;
}

static const char *draft_error(const void *object)
{
    return ingle_draft_error_text(object);
}

static bool draft_is_empty(const void *object)
{
    return !ingle_draft_get(object, INGLE_DRAFT_FRONTAL_VELOCITY, NULL);
}

static void free_draft(void *object)
{
    ingle_draft_free(object);
}

static ingle_status draft_text(struct work *work)
{
    return ingle_draft_page(work->object, NULL, keep, work->said);
}

static ingle_status draft_html(struct work *work)
{
    ingle_page page = page_of(INGLE_PAGE_HTML);
    page.unit = ingle_unit_find("mm");
    return ingle_draft_page(work->object, &page, keep, work->said);
}

static ingle_status draft_plot(struct work *work)
{
    return ingle_draft_plot(work->object, &input, standards[0], NULL, keep, work->said);
}

static const struct trade drafts = {new_draft, estimate, draft_error, draft_is_empty, free_draft,
                                    {draft_text, draft_html, draft_plot}, 1};

static void drafts_fail(void **state)
{
    (void)state;
    fail_at_every_allocation(&drafts);
    assert_non_null(strstr(whole.text, "</svg>"));
}

static void a_draft_is_plotted_without_memory(void **state)
{
    (void)state;
    struct work work = {.said = &whole};
    work.allocator = memory_allocator(&work.memory);
    start_work(&work, &drafts);
    fill_work(&work, &drafts);
    write_without_memory(&work, draft_plot);
    free_draft(work.object);
}

/* ---- how sure the findings are -------------------------------------------------------------- */

static ingle_status new_assessment(struct work *work)
{
    return ingle_assessment_new(&work->allocator, (ingle_assessment **)&work->object);
}

static ingle_status assess(struct work *work)
{
    ingle_probability_options options = {.size = sizeof options, .rule = INGLE_RULE_GUARDED,
                                         .guard_factor = 1, .trials = 20, .seed = 1};
    return ingle_assess(report, &options, work->object);
}

static bool assessment_is_empty(const void *object)
{
    return ingle_assessment_count(object) == 0 && ingle_assessment_length_count(object) == 0 &&
           ingle_assessment_missing_count(object) == 0;
}

static void free_assessment(void *object)
{
    ingle_assessment_free(object);
}

static ingle_status assessment_as(struct work *work, ingle_page_format format)
{
    ingle_page page = page_of(format);
    return ingle_assessment_page(work->object, &page, NULL, keep, work->said);
}

static ingle_status assessment_text(struct work *work)
{
    return assessment_as(work, INGLE_PAGE_TEXT);
}

static ingle_status assessment_html(struct work *work)
{
    return assessment_as(work, INGLE_PAGE_HTML);
}

/* All that is said of each finding: it is written into buffers, and asks for nothing. */
static ingle_status conformance_texts(struct work *work)
{
    char text[1024];
    size_t length;
    for (size_t i = 0; i < ingle_assessment_count(work->object); i++) {
        const ingle_conformance *conformance = ingle_assessment_at(work->object, i);
        assert_int_equal(ingle_conformance_text(conformance, INGLE_CONFORMANCE_SENTENCE, NULL,
                                                text, sizeof text, &length), INGLE_OK);
        keep(work->said, text, length);
        for (size_t s = 0; s < ingle_conformance_step_count(conformance); s++) {
            assert_int_equal(
                ingle_uncertainty_step_text(ingle_conformance_step_at(conformance, s),
                                            INGLE_STEP_SENTENCE, NULL, text, sizeof text,
                                            &length), INGLE_OK);
            keep(work->said, text, length);
        }
    }
    return INGLE_OK;
}

static ingle_status conformance_plot(struct work *work)
{
    ingle_status status = INGLE_ERROR_NOTHING_MEASURED;
    size_t count = ingle_assessment_count(work->object);
    for (size_t i = 0; i < count && status != INGLE_OK; i++) {
        status = ingle_probability_plot(ingle_assessment_at(work->object, i), NULL, keep,
                                        work->said);
    }
    return status;
}

static const struct trade assessments = {
    new_assessment, assess, NULL, assessment_is_empty, free_assessment,
    {assessment_text, assessment_html, conformance_texts, conformance_plot}, 15};

static void assessing_fails(void **state)
{
    (void)state;
    fail_at_every_allocation(&assessments);
    assert_non_null(strstr(whole.text, "Standard uncertainty of each length"));
    assert_non_null(strstr(whole.text, "</svg>"));
}

static void conformances_are_written_without_memory(void **state)
{
    (void)state;
    struct work work = {.said = &whole};
    work.allocator = memory_allocator(&work.memory);
    start_work(&work, &assessments);
    fill_work(&work, &assessments);
    write_without_memory(&work, conformance_texts);
    write_without_memory(&work, conformance_plot);
    free_assessment(work.object);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(drafts_fail),
        cmocka_unit_test(a_draft_is_plotted_without_memory),
        cmocka_unit_test(assessing_fails),
        cmocka_unit_test(conformances_are_written_without_memory),
    };
    return cmocka_run_group_tests_name("memory-doubles", tests, make_ground, free_ground);
}
