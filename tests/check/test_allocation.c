/* SPDX-License-Identifier: MIT */
/*
 * Memory that fails: at every single allocation of a whole job, once and from there on. Nothing
 * leaks, the call says why it failed, and the same objects finish the job when there is memory.
 */
#include "fireplaces.h"

#include <stdio.h>

/* ---- the job -------------------------------------------------------------------------------- */

enum { PIECES = 20, BY_LAWS = 12 };

struct job {
    struct memory memory;
    ingle_allocator allocator;
    ingle_survey *survey;
    ingle_amendments *amendments;
    ingle_report *report;
};

static ingle_status new_survey(struct job *job)
{
    return ingle_survey_new(&job->allocator, &job->survey);
}

static ingle_status new_amendments(struct job *job)
{
    return ingle_amendments_new(&job->allocator, &job->amendments);
}

static ingle_status new_report(struct job *job)
{
    return ingle_report_new(&job->allocator, &job->report);
}

static ingle_status add_piece(struct job *job)
{
    char label[32];
    size_t before = ingle_survey_item_count(job->survey, "trim");
    snprintf(label, sizeof label, "piece %zu", before + 1);
    ingle_status status =
        ingle_survey_add_item(job->survey, "trim", before % 3 == 2 ? NULL : label, NULL);
    assert_int_equal(ingle_survey_item_count(job->survey, "trim"),
                     status == INGLE_OK ? before + 1 : before);
    return status;
}

static ingle_status add_by_law(struct job *job)
{
    return ingle_amendments_set_text(job->amendments, ingle_standard_find("irc-2021"),
                                     "hearth-front", "large", "22 in", 5, NULL, "by-law 7-2");
}

static ingle_status check_all(struct job *job)
{
    const ingle_standard *standards[] = {ingle_standard_find("irc-2021"),
                                         ingle_standard_find("irc-2024"),
                                         ingle_standard_find("common-practice-us")};
    ingle_check_options options = {.size = sizeof options,
                                   .amendments = job->amendments,
                                   .with_not_applicable = 1};
    ingle_status status = ingle_check(job->survey, standards, 3, &options, job->report);
    if (status == INGLE_ERROR_MEMORY) {
        assert_int_equal(ingle_report_finding_count(job->report), 0);
        assert_int_equal(ingle_report_missing_count(job->report), 0);
        assert_int_equal(ingle_report_notice_count(job->report), 0);
        assert_int_equal(ingle_report_verdict(job->report), INGLE_NOT_APPLICABLE);
        assert_string_equal(ingle_report_error_text(job->report),
                            ingle_status_text(INGLE_ERROR_MEMORY));
        assert_string_equal(ingle_report_error_subject(job->report), "");
    }
    return status;
}

/* Does one part of the job; where memory fails, does it again with memory. */
static void perform(struct job *job, ingle_status (*part)(struct job *job))
{
    bool failed_before = job->memory.failed;
    ingle_status status = part(job);
    if (status == INGLE_ERROR_MEMORY) {
        assert_true(job->memory.failed && !failed_before);
        job->memory.fail_at = 0;
        status = part(job);
    } else {
        /* No failure passes in silence. */
        assert_int_equal(job->memory.failed, failed_before);
    }
    assert_int_equal(status, INGLE_OK);
}

static void record_fireplace(ingle_survey *survey)
{
    char path[32];
    record_entries(survey, at_the_limits);
    ingle_survey_record(survey, "hearth.front", "19 15/16 in", "1/16 in");
    ingle_survey_record(survey, "flue.liner", "8x12", NULL);
    for (size_t i = 0; i < PIECES; i++) {
        snprintf(path, sizeof path, "trim[%zu].distance", i);
        assert_int_equal(ingle_survey_record(survey, path, "5 in", NULL), INGLE_OK);
    }
}

static void do_job(struct job *job)
{
    job->allocator = memory_allocator(&job->memory);
    perform(job, new_survey);
    for (int i = 0; i < PIECES; i++) {
        perform(job, add_piece);
    }
    record_fireplace(job->survey);
    perform(job, new_amendments);
    for (int i = 0; i < BY_LAWS; i++) {
        perform(job, add_by_law);
    }
    perform(job, new_report);
    perform(job, check_all);
}

static void end_job(struct job *job)
{
    ingle_report_free(job->report);
    ingle_amendments_free(job->amendments);
    ingle_survey_free(job->survey);
    assert_int_equal(job->memory.live, 0);
}

/* ---- all that a report says ----------------------------------------------------------------- */

static char said[1 << 20], said_without_failure[1 << 20];

static void add_to(char *text, size_t *length, const char *more)
{
    size_t added = strlen(more);
    assert_true(*length + added + 2 < sizeof said);
    memcpy(text + *length, more, added);
    *length += added;
    text[(*length)++] = '\n';
    text[*length] = '\0';
}

static void write_report(const ingle_report *report, char *text)
{
    char part[1024];
    size_t length = 0;
    text[0] = '\0';
    add_to(text, &length, ingle_verdict_name(ingle_report_verdict(report)));
    for (size_t i = 0; i < ingle_report_finding_count(report); i++) {
        const ingle_finding *finding = ingle_report_finding_at(report, i);
        for (int p = INGLE_FINDING_SUBJECT; p <= INGLE_FINDING_CAUTION; p++) {
            assert_int_equal(ingle_finding_text(finding, p, NULL, part, sizeof part, NULL), 0);
            add_to(text, &length, part);
        }
        for (size_t s = 0; s < ingle_finding_step_count(finding); s++) {
            assert_int_equal(ingle_step_text(ingle_finding_step_at(finding, s),
                                             INGLE_STEP_SENTENCE, NULL, part, sizeof part, NULL),
                             INGLE_OK);
            add_to(text, &length, part);
        }
        for (size_t r = 0; r < ingle_finding_remedy_count(finding); r++) {
            assert_int_equal(ingle_remedy_text(ingle_finding_remedy_at(finding, r),
                                               INGLE_REMEDY_SENTENCE, NULL, part, sizeof part,
                                               NULL), INGLE_OK);
            add_to(text, &length, part);
        }
    }
    for (size_t i = 0; i < ingle_report_missing_count(report); i++) {
        assert_int_equal(ingle_missing_subject_text(ingle_report_missing_at(report, i), part,
                                                    sizeof part, NULL), INGLE_OK);
        add_to(text, &length, part);
    }
    for (size_t i = 0; i < ingle_report_notice_count(report); i++) {
        add_to(text, &length, ingle_report_notice_at(report, i));
    }
}

/* ---- the tests ------------------------------------------------------------------------------ */

static size_t calls_of_a_whole_job(void)
{
    struct job job = {.memory = {0}};
    do_job(&job);
    write_report(job.report, said_without_failure);
    /* The job is worth failing: it has findings, steps, remedies, missing quantities. */
    assert_true(ingle_report_finding_count(job.report) > 2 * PIECES);
    assert_true(ingle_report_missing_count(job.report) >= PIECES);
    assert_non_null(strstr(said_without_failure, "Extend the hearth"));
    assert_non_null(strstr(said_without_failure, "Opening area: "));
    assert_non_null(strstr(said_without_failure, "by-law 7-2"));
    end_job(&job);
    return job.memory.calls;
}

static void fail_at_every_call(bool from_there_on)
{
    size_t calls = calls_of_a_whole_job();
    size_t failures = 0;
    assert_true(calls > 60);
    for (size_t n = 1; n <= calls + 1; n++) {
        struct job job = {.memory = {.fail_at = n, .fail_on = from_there_on}};
        do_job(&job);
        failures += job.memory.failed;
        write_report(job.report, said);
        assert_string_equal(said, said_without_failure);
        end_job(&job);
    }
    assert_int_equal(failures, calls);
}

static void any_allocation_may_fail_once(void **state)
{
    (void)state;
    fail_at_every_call(false);
}

static void memory_may_be_gone_for_good(void **state)
{
    (void)state;
    fail_at_every_call(true);
}

/* Objects that saw a failure are given back whole, whether or not the job goes on. */
static void what_failed_is_given_back(void **state)
{
    (void)state;
    size_t calls = calls_of_a_whole_job();
    for (size_t n = 1; n <= calls; n++) {
        struct job job = {.memory = {.fail_at = n, .fail_on = true}};
        job.allocator = memory_allocator(&job.memory);
        bool going = new_survey(&job) == INGLE_OK;
        for (int i = 0; going && i < PIECES; i++) {
            going = add_piece(&job) == INGLE_OK;
        }
        going = going && new_amendments(&job) == INGLE_OK;
        for (int i = 0; going && i < BY_LAWS; i++) {
            going = add_by_law(&job) == INGLE_OK;
        }
        if (going && new_report(&job) == INGLE_OK) {
            record_fireplace(job.survey);
            assert_int_equal(check_all(&job), INGLE_ERROR_MEMORY);
        }
        end_job(&job);
    }
}

static void nothing_is_made_without_memory(void **state)
{
    (void)state;
    struct job job = {.memory = {.fail_at = 1, .fail_on = true}};
    job.allocator = memory_allocator(&job.memory);
    assert_int_equal(new_survey(&job), INGLE_ERROR_MEMORY);
    assert_int_equal(new_amendments(&job), INGLE_ERROR_MEMORY);
    assert_int_equal(new_report(&job), INGLE_ERROR_MEMORY);
    assert_null(job.survey);
    assert_null(job.amendments);
    assert_null(job.report);
    end_job(&job);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(any_allocation_may_fail_once),
        cmocka_unit_test(memory_may_be_gone_for_good),
        cmocka_unit_test(what_failed_is_given_back),
        cmocka_unit_test(nothing_is_made_without_memory),
    };
    return cmocka_run_group_tests_name("allocation", tests, NULL, NULL);
}
