/* SPDX-License-Identifier: MIT */
/* Judging a survey: which findings there are, what they come to, and what they say. */
#include "check/report.h"
#include "fireplaces.h"
#include "measure/amounts.h"

static struct memory memory;
static ingle_survey *survey;
static ingle_amendments *amendments;
static ingle_report *report;

static int make(void **state)
{
    (void)state;
    memory = (struct memory){0};
    ingle_allocator allocator = memory_allocator(&memory);
    return ingle_survey_new(NULL, &survey) == INGLE_OK &&
                   ingle_amendments_new(NULL, &amendments) == INGLE_OK &&
                   ingle_report_new(&allocator, &report) == INGLE_OK
               ? 0
               : -1;
}

static int unmake(void **state)
{
    (void)state;
    ingle_report_free(report);
    ingle_amendments_free(amendments);
    ingle_survey_free(survey);
    return memory.live == 0 ? 0 : -1;
}

/* ---- checking and finding ------------------------------------------------------------------- */

static ingle_status check_with(const char *standard, const ingle_check_options *options)
{
    const ingle_standard *standards[] = {ingle_standard_find(standard)};
    assert_non_null(standards[0]);
    return ingle_check(survey, standards, 1, options, report);
}

static void check(const char *standard)
{
    assert_int_equal(check_with(standard, NULL), INGLE_OK);
}

static void check_all(const char *standard)
{
    ingle_check_options options = {.size = sizeof options, .with_not_applicable = 1};
    assert_int_equal(check_with(standard, &options), INGLE_OK);
}

static void record(const char *path, const char *text, const char *tolerance)
{
    const struct entry entries[] = {{path, text, tolerance}, {NULL, NULL, NULL}};
    record_entries(survey, entries);
}

static void forget(const char *id)
{
    assert_int_equal(ingle_survey_unset(survey, ingle_quantity_find(id), 0), INGLE_OK);
}

/* The findings of a rule on a quantity and item; the first of them, and how many. */
static const ingle_finding *look(const char *rule, const char *quantity, size_t item, size_t *count)
{
    const ingle_finding *found = NULL, *finding;
    *count = 0;
    for (size_t i = 0; (finding = ingle_report_finding_at(report, i)) != NULL; i++) {
        if (strcmp(ingle_rule_id(ingle_finding_rule(finding)), rule) == 0 &&
            strcmp(ingle_quantity_id(ingle_finding_quantity(finding)), quantity) == 0 &&
            ingle_finding_item(finding) == item) {
            found = found == NULL ? finding : found;
            ++*count;
        }
    }
    return found;
}

static const ingle_finding *only(const char *rule, const char *quantity)
{
    size_t count;
    const ingle_finding *finding = look(rule, quantity, 0, &count);
    if (count != 1) {
        print_error("%s: %zu findings\n", rule, count);
    }
    assert_int_equal(count, 1);
    return finding;
}

static void expect_verdict(const char *rule, const char *quantity, ingle_verdict due)
{
    const ingle_finding *finding = only(rule, quantity);
    if (ingle_finding_verdict(finding) != due) {
        print_error("%s: %s\n", rule, ingle_verdict_name(ingle_finding_verdict(finding)));
    }
    assert_int_equal(ingle_finding_verdict(finding), due);
}

static void expect_none(const char *rule, const char *quantity)
{
    size_t count;
    look(rule, quantity, 0, &count);
    assert_int_equal(count, 0);
}

static void expect_required(const ingle_finding *finding, int64_t due)
{
    ingle_amount amount = {-1, -1, -1};
    assert_int_equal(ingle_finding_required(finding, &amount), 1);
    assert_true(amount.value == due);
}

static void expect_measured(const ingle_finding *finding, int64_t due)
{
    ingle_amount amount = {-1, -1, -1};
    assert_int_equal(ingle_finding_measured(finding, &amount), 1);
    assert_true(amount.value == due);
}

static void expect_margin(const ingle_finding *finding, int64_t due)
{
    ingle_amount amount = {-1, -1, -1};
    assert_int_equal(ingle_finding_margin(finding, &amount), 1);
    assert_true(amount.value == due);
}

static void expect_part(const ingle_finding *finding, ingle_finding_part part, const char *words)
{
    char text[1000];
    assert_int_equal(ingle_finding_text(finding, part, NULL, text, sizeof text, NULL), INGLE_OK);
    if (strstr(text, words) == NULL) {
        print_error("%s\n", text);
    }
    assert_non_null(strstr(text, words));
}

/* ---- verdicts ------------------------------------------------------------------------------- */

static void verdicts_have_names(void **state)
{
    (void)state;
    static const char *const names[] = {"not-applicable", "meets",     "unmeasured",
                                        "by-listing",     "too-close", "fails"};
    assert_int_equal(ingle_verdict_count(), 6);
    for (ingle_verdict i = 0; i < 6; i++) {
        assert_string_equal(ingle_verdict_name(i), names[i]);
        assert_int_equal(ingle_verdict_find(names[i]), i);
        assert_true(strlen(ingle_verdict_text(i)) > 0);
        assert_null(strstr(ingle_verdict_text(i), "safe"));
    }
    assert_null(ingle_verdict_name(6));
    assert_null(ingle_verdict_name(-1));
    assert_null(ingle_verdict_text(6));
    assert_null(ingle_verdict_text(-1));
    assert_int_equal(ingle_verdict_find("safe"), -1);
    assert_int_equal(ingle_verdict_find(NULL), -1);
    assert_int_equal(INGLE_MEETS, ingle_verdict_find("meets"));
    assert_int_equal(INGLE_FAILS, ingle_verdict_find("fails"));
}

/* All at the limits of the code: every finding meets. */
static void at_the_limits_all_is_met(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    for (size_t s = 0; s < 5; s++) {
        static const char *const editions[] = {"irc-2012", "irc-2015", "irc-2018", "irc-2021",
                                               "irc-2024"};
        static const size_t counts[] = {58, 65, 61, 61, 61};
        check(editions[s]);
        for (size_t i = 0; i < ingle_report_finding_count(report); i++) {
            const ingle_finding *finding = ingle_report_finding_at(report, i);
            assert_int_equal(ingle_finding_verdict(finding), INGLE_MEETS);
            assert_int_equal(ingle_finding_remedy_count(finding), 0);
            assert_int_equal(ingle_finding_missing_count(finding), 0);
        }
        /* Footing: 3; R1001.5: 3; R1001.6: 3 and 3 passages; R1001.7: 9; R1001.8: 4; R1001.9: 4;
           R1001.10: 3; R1001.11: 6; R1003.9 to R1003.12: 11; R1003.15.1: 1; R1003.18: 2; R1006: 6.
           Later editions: R1006.5, and what is asked in 2015 of a flue at an appliance. */
        assert_int_equal(ingle_report_finding_count(report), counts[s]);
        assert_int_equal(ingle_report_verdict(report), INGLE_MEETS);
        assert_int_equal(ingle_report_missing_count(report), 0);
    }
}

/* The hearth of IRC R1001.10 in front of an opening of exactly 6 ft2. */
static void the_gravest_verdict_is_that_of_the_whole(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    check("irc-2021");
    assert_int_equal(ingle_report_verdict(report), INGLE_MEETS);
    forget("firebox.depth");
    check("irc-2021");
    assert_int_equal(ingle_report_verdict(report), INGLE_UNMEASURED);
    record("hearth.front", "20 in", "1/16 in");
    check("irc-2021");
    expect_verdict("hearth-front", "hearth.front", INGLE_TOO_CLOSE);
    assert_int_equal(ingle_report_verdict(report), INGLE_TOO_CLOSE);
    record("hearth.left", "11 15/16 in", NULL);
    check("irc-2021");
    expect_verdict("hearth-side", "hearth.left", INGLE_FAILS);
    expect_verdict("hearth-side", "hearth.right", INGLE_MEETS);
    assert_int_equal(ingle_report_verdict(report), INGLE_FAILS);
    record("appliance.kind", "pellet-stove", NULL);
    record("chimney.construction", "factory-built", NULL);
    check("ibc-2021");
    assert_int_equal(ingle_report_finding_count(report), 0);
    assert_int_equal(ingle_report_verdict(report), INGLE_NOT_APPLICABLE);
    assert_true(INGLE_FAILS > INGLE_TOO_CLOSE && INGLE_TOO_CLOSE > INGLE_BY_LISTING &&
                INGLE_BY_LISTING > INGLE_UNMEASURED && INGLE_UNMEASURED > INGLE_MEETS &&
                INGLE_MEETS > INGLE_NOT_APPLICABLE);
}

static void tolerances_decide_between_three(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    record("hearth.front", "20 1/16 in", "1/16 in");
    check("irc-2021");
    expect_verdict("hearth-front", "hearth.front", INGLE_MEETS);
    record("hearth.front", "19 15/16 in", "1/16 in");
    check("irc-2021");
    expect_verdict("hearth-front", "hearth.front", INGLE_TOO_CLOSE);
    expect_margin(only("hearth-front", "hearth.front"), -INCHES_AND(0, 1, 16));
    expect_part(only("hearth-front", "hearth.front"), INGLE_FINDING_SENTENCE, "tolerances");
    record("hearth.front", "19 7/8 in", "1/16 in");
    check("irc-2021");
    expect_verdict("hearth-front", "hearth.front", INGLE_FAILS);
    /* The opening's tolerance reaches into the requirement: 35 15/16 x 24 may be 36 x 24. */
    record("opening.width", "35 15/16 in", "1/16 in");
    record("hearth.front", "18 in", NULL);
    check("irc-2021");
    expect_verdict("hearth-front", "hearth.front", INGLE_TOO_CLOSE);
    expect_required(only("hearth-front", "hearth.front"), INCHES(16));
}

static void the_amounts_of_a_finding(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    record("hearth.front", "19 15/16 in", NULL);
    record("smoke-chamber.height", "37 in", NULL); /* M-43 of R1001.8.1 */
    check("irc-2021");
    const ingle_finding *front = only("hearth-front", "hearth.front");
    expect_required(front, INCHES(20));
    expect_measured(front, INCHES_AND(19, 15, 16));
    expect_margin(front, -INCHES_AND(0, 1, 16));
    assert_string_equal(ingle_standard_id(ingle_finding_standard(front)), "irc-2021");
    assert_null(ingle_finding_amendment(front));
    expect_part(front, INGLE_FINDING_SUBJECT, "/survey/hearth/front");
    expect_part(front, INGLE_FINDING_CITATION, "International Residential Code 2021, R1001.10");
    expect_part(front, INGLE_FINDING_SENTENCE,
                "19 15/16 in measured, at least 20 in is required: 1/16 in too little.");
    expect_part(front, INGLE_FINDING_CAUTION, "Light no fire");
    const ingle_finding *height = only("smoke-chamber-height", "smoke-chamber.height");
    expect_required(height, INCHES(36));
    expect_margin(height, -INCHES(1)); /* at most: required less measured */
    expect_part(height, INGLE_FINDING_SENTENCE, "no more than 36 in is allowed: 1 in too much.");
    const ingle_finding *depth = only("firebox-depth", "firebox.depth");
    expect_part(depth, INGLE_FINDING_SENTENCE, "exactly the limit");
    assert_int_equal(ingle_finding_required(depth, NULL), 1);
}

/* ---- what was not measured ------------------------------------------------------------------ */

static void an_unmeasured_finding_still_says_what_is_required(void **state)
{
    (void)state;
    ingle_amount amount = {42, 42, 42};
    survey_at_the_limits(survey);
    forget("hearth.front");
    check("irc-2021");
    const ingle_finding *front = only("hearth-front", "hearth.front");
    assert_int_equal(ingle_finding_verdict(front), INGLE_UNMEASURED);
    expect_required(front, INCHES(20));
    assert_int_equal(ingle_finding_measured(front, &amount), 0);
    assert_int_equal(ingle_finding_margin(front, &amount), 0);
    assert_true(amount.value == 42);
    assert_int_equal(ingle_finding_missing_count(front), 1);
    assert_ptr_equal(ingle_finding_missing_at(front, 0), ingle_quantity_find("hearth.front"));
    assert_null(ingle_finding_missing_at(front, 1));
    expect_part(front, INGLE_FINDING_SENTENCE,
                "Hearth extension in front of the opening: not recorded; at least 20 in is "
                "required.");
    expect_part(front, INGLE_FINDING_CAUTION,
                "Not judged; what follows holds if the rule is not met. ");
    /* What the requirement rests on is another matter. */
    record("hearth.front", "20 in", NULL);
    forget("opening.height");
    check("irc-2021");
    front = only("hearth-front", "hearth.front");
    assert_int_equal(ingle_finding_verdict(front), INGLE_UNMEASURED);
    assert_int_equal(ingle_finding_required(front, &amount), 0);
    expect_measured(front, INCHES(20));
    assert_ptr_equal(ingle_finding_missing_at(front, 0), ingle_quantity_find("opening.height"));
    expect_part(front, INGLE_FINDING_SENTENCE,
                ": not judged, since this is not recorded: height of the fireplace opening.");
    forget("opening.width");
    check("irc-2021");
    expect_part(only("hearth-front", "hearth.front"), INGLE_FINDING_SENTENCE,
                "not recorded: width of the fireplace opening; height of the fireplace opening.");
}

/* What is missing is listed once, with each of the rules that lack it once. */
static void the_missing_list_names_each_rule_once(void **state)
{
    (void)state;
    const ingle_standard *standards[] = {ingle_standard_find("irc-2021"),
                                         ingle_standard_find("irc-2024")};
    survey_at_the_limits(survey);
    forget("opening.height");
    assert_int_equal(ingle_check(survey, standards, 2, NULL, report), INGLE_OK);
    assert_int_equal(ingle_report_missing_count(report), 1);
    const ingle_missing *missing = ingle_report_missing_at(report, 0);
    assert_ptr_equal(ingle_missing_quantity(missing), ingle_quantity_find("opening.height"));
    assert_string_equal(ingle_missing_how(missing),
                        ingle_quantity_how(ingle_quantity_find("opening.height")));
    static const char *const due[] = {"hearth-front", "hearth-side", "flue-area"};
    assert_int_equal(ingle_missing_rule_count(missing), 3);
    for (size_t i = 0; i < 3; i++) {
        assert_string_equal(ingle_missing_rule_at(missing, i), due[i]);
    }
    assert_null(ingle_missing_rule_at(missing, 3));
    assert_null(ingle_report_missing_at(report, 1));
}

static void an_empty_survey_lacks_the_appliance(void **state)
{
    (void)state;
    check("irc-2021");
    assert_int_equal(ingle_report_verdict(report), INGLE_UNMEASURED);
    bool kind = false;
    for (size_t i = 0; i < ingle_report_missing_count(report); i++) {
        const ingle_missing *missing = ingle_report_missing_at(report, i);
        kind = kind || strcmp(ingle_quantity_id(ingle_missing_quantity(missing)),
                              "appliance.kind") == 0;
        for (size_t r = 0; r < ingle_missing_rule_count(missing); r++) {
            for (size_t other = 0; other < r; other++) {
                assert_string_not_equal(ingle_missing_rule_at(missing, r),
                                        ingle_missing_rule_at(missing, other));
            }
        }
    }
    assert_true(kind);
}

static void trim_that_nobody_looked_at_is_missing_as_a_whole(void **state)
{
    (void)state;
    char subject[40];
    record_entries(survey, at_the_limits);
    ingle_survey_open_group(survey, "nearby");
    check("irc-2021");
    expect_verdict("trim-distance", "trim.distance", INGLE_UNMEASURED);
    expect_verdict("trim-projection", "trim.projection", INGLE_UNMEASURED);
    expect_verdict("trim-abutting", "trim.lining-distance", INGLE_UNMEASURED);
    expect_part(only("trim-distance", "trim.distance"), INGLE_FINDING_SUBJECT, "/survey/trim");
    assert_int_equal(ingle_report_missing_count(report), 1);
    const ingle_missing *missing = ingle_report_missing_at(report, 0);
    assert_int_equal(ingle_missing_subject_text(missing, subject, sizeof subject, NULL), INGLE_OK);
    assert_string_equal(subject, "/survey/trim");
    assert_non_null(strstr(ingle_missing_how(missing), "an empty list"));
    assert_int_equal(ingle_missing_rule_count(missing), 3);
    /* An empty list says that there is none. */
    ingle_survey_open_group(survey, "trim");
    check("irc-2021");
    expect_none("trim-distance", "trim.distance");
    assert_int_equal(ingle_report_missing_count(report), 0);
    assert_int_equal(ingle_report_verdict(report), INGLE_MEETS);
}

static void each_piece_of_trim_has_its_own_finding(void **state)
{
    (void)state;
    char subject[40];
    size_t count;
    survey_at_the_limits(survey);
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    record("trim[1].projection", "2 in", NULL);
    check("irc-2021");
    const ingle_finding *second = look("trim-distance", "trim.distance", 1, &count);
    assert_int_equal(count, 1);
    assert_int_equal(ingle_finding_verdict(second), INGLE_UNMEASURED);
    expect_part(second, INGLE_FINDING_SUBJECT, "/survey/trim/1/distance");
    expect_part(second, INGLE_FINDING_LABEL, "trim 2: distance from the opening");
    expect_part(only("trim-distance", "trim.distance"), INGLE_FINDING_LABEL,
                "mantel shelf: distance from the opening");
    assert_int_equal(ingle_report_missing_count(report), 1);
    assert_int_equal(ingle_missing_subject_text(ingle_report_missing_at(report, 0), subject,
                                                sizeof subject, NULL), INGLE_OK);
    assert_string_equal(subject, "/survey/trim/1/distance");
    assert_int_equal(ingle_missing_rule_count(ingle_report_missing_at(report, 0)), 2);
    record("trim[1].distance", "9 in", NULL); /* M-22: the limit is 1 1/8 in */
    check("irc-2021");
    const ingle_finding *projection = look("trim-projection", "trim.projection", 1, &count);
    assert_int_equal(ingle_finding_verdict(projection), INGLE_FAILS);
    expect_required(projection, INCHES_AND(1, 1, 8));
}

/* A limit that may hold within the tolerances is not ruled out for want of the other measure. */
static void a_limit_that_may_hold_needs_its_measure(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    record("trim[0].distance", "12 1/16 in", "1/8 in");
    record("trim[0].projection", "2 in", NULL);
    check("irc-2021");
    expect_verdict("trim-projection", "trim.projection", INGLE_TOO_CLOSE);
    forget("trim.projection");
    check("irc-2021");
    expect_verdict("trim-projection", "trim.projection", INGLE_UNMEASURED);
}

/* ---- what does not apply -------------------------------------------------------------------- */

static void what_does_not_apply_is_shown_on_demand(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    check("irc-2021");
    size_t applying = ingle_report_finding_count(report);
    expect_none("rumford-depth", "firebox.depth");
    check_all("irc-2021");
    assert_true(ingle_report_finding_count(report) > applying + 4);
    expect_verdict("rumford-depth", "firebox.depth", INGLE_NOT_APPLICABLE);
    expect_verdict("trim-abutting", "trim.lining-distance", INGLE_NOT_APPLICABLE);
    expect_part(only("rumford-depth", "firebox.depth"), INGLE_FINDING_SENTENCE,
                "the rule does not apply");
    assert_int_equal(ingle_report_verdict(report), INGLE_MEETS);
    record("appliance.kind", "pellet-stove", NULL);
    record("chimney.construction", "factory-built", NULL);
    check_all("ibc-2021");
    assert_true(ingle_report_finding_count(report) > applying);
    assert_int_equal(ingle_report_verdict(report), INGLE_NOT_APPLICABLE);
}

static void trim_beyond_the_rule_is_not_limited(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    record("trim[0].distance", "12 1/8 in", NULL); /* M-21 */
    record("trim[0].projection", "8 in", NULL);
    check("irc-2021");
    expect_none("trim-projection", "trim.projection");
    expect_verdict("trim-distance", "trim.distance", INGLE_MEETS);
    check_all("irc-2021");
    expect_verdict("trim-projection", "trim.projection", INGLE_NOT_APPLICABLE);
    record("trim[0].distance", "12 in", NULL); /* M-19 */
    check("irc-2021");
    expect_verdict("trim-projection", "trim.projection", INGLE_FAILS);
    expect_required(only("trim-projection", "trim.projection"), INCHES_AND(1, 1, 2));
    record("trim[0].combustible", "no", NULL);
    check("irc-2021");
    expect_none("trim-projection", "trim.projection");
    expect_none("trim-distance", "trim.distance");
}

/* IRC R1001.11 exception 3, M-25 and M-26: 9 in from the lining. */
static void abutting_trim_goes_by_the_edition(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    record("trim[0].place", "abutting", NULL);
    record("trim[0].lining-distance", "9 in", NULL);
    record("opening.area", "5 ft2", NULL);
    check("irc-2021");
    expect_verdict("trim-abutting", "trim.lining-distance", INGLE_FAILS);
    expect_none("trim-distance", "trim.distance");
    check("irc-2024");
    expect_verdict("trim-abutting", "trim.lining-distance", INGLE_MEETS);
    record("opening.area", "6 ft2", NULL);
    check("irc-2021");
    expect_verdict("trim-abutting", "trim.lining-distance", INGLE_FAILS);
    check("irc-2024");
    expect_verdict("trim-abutting", "trim.lining-distance", INGLE_FAILS);
}

/* ---- exceptions ----------------------------------------------------------------------------- */

static const char *const ordinary[][2] = {
    {"firebox-depth", "firebox.depth"},   {"throat-height", "throat.height"},
    {"throat-depth", "throat.depth"},     {"passage-area", "throat.area"},
    {"passage-area", "damper.area"},      {"passage-area", "smoke-chamber.area"},
};

static const char *const exception[][2] = {
    {"rumford-depth", "firebox.depth"},
    {"rumford-throat-height", "throat.above-lintel"},
    {"rumford-throat-area", "throat.area"},
};

/* IRC R1001.6 exception: 36 in wide, so 12 in deep; 864 in2, so a throat of 43.2 in2. */
static void survey_a_rumford(void)
{
    survey_at_the_limits(survey);
    record("firebox.design", "rumford", NULL);
    record("firebox.depth", "12 in", NULL);
    record("throat.above-lintel", "12 in", NULL);
    record("throat.area", "43.2 in2", NULL);
}

static void a_rumford_that_meets_needs_no_ordinary_rules(void **state)
{
    (void)state;
    survey_a_rumford();
    check("irc-2021");
    for (size_t i = 0; i < COUNT_OF(ordinary); i++) {
        expect_none(ordinary[i][0], ordinary[i][1]);
    }
    for (size_t i = 0; i < COUNT_OF(exception); i++) {
        expect_verdict(exception[i][0], exception[i][1], INGLE_MEETS);
    }
    assert_int_equal(ingle_report_verdict(report), INGLE_MEETS);
    check_all("irc-2021");
    for (size_t i = 0; i < COUNT_OF(ordinary); i++) {
        expect_verdict(ordinary[i][0], ordinary[i][1], INGLE_NOT_APPLICABLE);
    }
    expect_part(only("firebox-depth", "firebox.depth"), INGLE_FINDING_SENTENCE,
                "does not apply, since the exception is met");
}

static void a_rumford_that_meets_the_ordinary_rules_needs_no_exception(void **state)
{
    (void)state;
    survey_at_the_limits(survey); /* its throat is 8 in above the lintel */
    record("firebox.design", "rumford", NULL);
    check("irc-2021");
    for (size_t i = 0; i < COUNT_OF(exception); i++) {
        expect_none(exception[i][0], exception[i][1]);
    }
    for (size_t i = 0; i < COUNT_OF(ordinary); i++) {
        expect_verdict(ordinary[i][0], ordinary[i][1], INGLE_MEETS);
    }
    assert_int_equal(ingle_report_verdict(report), INGLE_MEETS);
    check_all("irc-2021");
    expect_verdict("rumford-throat-height", "throat.above-lintel", INGLE_NOT_APPLICABLE);
    expect_part(only("rumford-throat-height", "throat.above-lintel"), INGLE_FINDING_SENTENCE,
                "not needed, since the ordinary rule is met");
}

static void a_rumford_that_meets_neither_shows_both(void **state)
{
    (void)state;
    survey_a_rumford();
    record("throat.area", "43.1 in2", NULL);
    check("irc-2021");
    expect_verdict("firebox-depth", "firebox.depth", INGLE_FAILS);
    expect_verdict("rumford-depth", "firebox.depth", INGLE_MEETS);
    expect_verdict("rumford-throat-area", "throat.area", INGLE_FAILS);
    assert_int_equal(ingle_report_verdict(report), INGLE_FAILS);
    /* Nor does an exception that is not measured through take the place of the rules. */
    forget("throat.above-lintel");
    record("throat.area", "44 in2", NULL);
    check("irc-2021");
    expect_verdict("firebox-depth", "firebox.depth", INGLE_FAILS);
    expect_verdict("rumford-throat-height", "throat.above-lintel", INGLE_UNMEASURED);
}

/* M-44: an opening 42 in wide needs a third of it, 14 in. */
static void a_wide_rumford_has_to_be_deeper(void **state)
{
    (void)state;
    survey_a_rumford();
    record("opening.width", "42 in", NULL);
    record("firebox.depth", "13 in", NULL);
    check("irc-2021");
    expect_verdict("rumford-depth", "firebox.depth", INGLE_FAILS);
    expect_required(only("rumford-depth", "firebox.depth"), INCHES(14));
}

static void exceptions_are_settled_standard_by_standard(void **state)
{
    (void)state;
    const ingle_standard *standards[] = {ingle_standard_find("irc-2012"),
                                         ingle_standard_find("irc-2024")};
    const ingle_finding *finding;
    ingle_check_options options = {.size = sizeof options, .amendments = amendments};
    survey_a_rumford();
    assert_int_equal(ingle_amendments_set_text(amendments, standards[1], "rumford-depth", "least",
                                               "13 in", 5, NULL, "by-law"), INGLE_OK);
    assert_int_equal(ingle_check(survey, standards, 2, &options, report), INGLE_OK);
    for (size_t i = 0; (finding = ingle_report_finding_at(report, i)) != NULL; i++) {
        if (strcmp(ingle_rule_id(ingle_finding_rule(finding)), "firebox-depth") == 0) {
            assert_string_equal(ingle_standard_id(ingle_finding_standard(finding)), "irc-2024");
            assert_int_equal(ingle_finding_verdict(finding), INGLE_FAILS);
        }
    }
    size_t count;
    look("firebox-depth", "firebox.depth", 0, &count);
    assert_int_equal(count, 1);
}

/* ---- readings, amendments, notices ---------------------------------------------------------- */

/* M-11: liner 4.5x8.5, 23 in2, serves 230 in2 at a tenth and 184 in2 at an eighth. */
static void an_ambiguous_liner_is_read_both_ways(void **state)
{
    (void)state;
    size_t count;
    survey_at_the_limits(survey);
    record("flue.liner", "4.5x8.5", NULL);
    record("opening.area", "184 in2", NULL);
    check("irc-2021");
    const ingle_finding *first = look("flue-area", "flue.net-area", 0, &count);
    assert_int_equal(count, 2);
    const ingle_finding *second = first + 1;
    assert_int_equal(ingle_finding_verdict(first), INGLE_MEETS);
    assert_int_equal(ingle_finding_verdict(second), INGLE_MEETS);
    expect_required(second, SQUARE_INCHES(23));
    expect_measured(first, SQUARE_INCHES(23));
    expect_measured(second, SQUARE_INCHES(23));
    assert_non_null(strstr(ingle_finding_reading(first), "outside"));
    assert_non_null(strstr(ingle_finding_reading(second), "inside"));
    record("opening.area", "230 in2", NULL);
    check("irc-2021");
    first = look("flue-area", "flue.net-area", 0, &count);
    assert_int_equal(ingle_finding_verdict(first), INGLE_MEETS);
    expect_required(first, SQUARE_INCHES(23));
    assert_int_equal(ingle_finding_verdict(first + 1), INGLE_FAILS);
    expect_required(first + 1, SQUARE_INCHES_AND(28, 3, 4));
    assert_int_equal(ingle_report_verdict(report), INGLE_FAILS);
}

static void amendments_stand_in_their_findings(void **state)
{
    (void)state;
    ingle_check_options options = {.size = sizeof options, .amendments = amendments};
    survey_at_the_limits(survey);
    check_with("irc-2021", &options);
    size_t notices = ingle_report_notice_count(report);
    ingle_amendments_set_text(amendments, ingle_standard_find("irc-2021"), "hearth-side", "large",
                              "13 in", 5, NULL, "Alder Lane by-law 7-2");
    assert_int_equal(check_with("irc-2021", &options), INGLE_OK);
    assert_int_equal(ingle_report_notice_count(report), notices + 1);
    static const char *const sides[] = {"hearth.left", "hearth.right"};
    for (size_t i = 0; i < 2; i++) {
        const ingle_finding *side = only("hearth-side", sides[i]);
        assert_int_equal(ingle_finding_verdict(side), INGLE_FAILS);
        expect_required(side, INCHES(13));
        assert_string_equal(ingle_finding_amendment(side), "Alder Lane by-law 7-2");
        expect_part(side, INGLE_FINDING_CITATION, "as amended by Alder Lane by-law 7-2");
    }
    assert_null(ingle_finding_amendment(only("hearth-front", "hearth.front")));
    assert_int_equal(check_with("irc-2024", &options), INGLE_OK);
    expect_verdict("hearth-side", "hearth.left", INGLE_MEETS);
    assert_int_equal(ingle_report_notice_count(report), notices);
}

static void notices_are_given_once(void **state)
{
    (void)state;
    const ingle_standard *standards[] = {ingle_standard_find("irc-2021"),
                                         ingle_standard_find("irc-2021"),
                                         ingle_standard_find("common-practice-us")};
    bool notes[2] = {false, false};
    assert_int_equal(ingle_check(survey, standards, 3, NULL, report), INGLE_OK);
    assert_int_equal(ingle_report_notice_count(report), 4);
    for (size_t i = 0; i < ingle_report_notice_count(report); i++) {
        const char *notice = ingle_report_notice_at(report, i);
        assert_int_equal(notice[strlen(notice) - 1], '.');
        notes[0] = notes[0] || strcmp(notice, ingle_standard_note(standards[0])) == 0;
        notes[1] = notes[1] || strcmp(notice, ingle_standard_note(standards[2])) == 0;
        for (size_t j = 0; j < i; j++) {
            assert_string_not_equal(ingle_report_notice_at(report, j), notice);
        }
    }
    assert_true(notes[0] && notes[1]);
    assert_null(ingle_report_notice_at(report, 4));
}

static void common_practice_says_that_it_is_advice(void **state)
{
    (void)state;
    record("appliance.kind", "insert", NULL);
    record("listing.label", "no-label", NULL);
    record("hearth.front", "20 in", NULL);
    record("insert.projection", "4 1/16 in", NULL);
    check("common-practice-us");
    const ingle_finding *front = only("insert-hearth-front", "insert.hearth-front");
    assert_int_equal(ingle_finding_verdict(front), INGLE_FAILS);
    expect_measured(front, INCHES_AND(15, 15, 16));
    expect_part(front, INGLE_FINDING_CITATION, "Common practice (United States)");
    expect_part(front, INGLE_FINDING_CAUTION, "advice, not code");
    record("insert.projection", "4 in", NULL);
    check("common-practice-us");
    expect_verdict("insert-hearth-front", "insert.hearth-front", INGLE_MEETS);
    expect_part(only("insert-hearth-front", "insert.hearth-front"), INGLE_FINDING_CAUTION,
                "advice, not code");
}

/* ---- what is refused ------------------------------------------------------------------------ */

static void expect_empty(const char *subject)
{
    assert_int_equal(ingle_report_finding_count(report), 0);
    assert_int_equal(ingle_report_missing_count(report), 0);
    assert_int_equal(ingle_report_notice_count(report), 0);
    assert_int_equal(ingle_report_verdict(report), INGLE_NOT_APPLICABLE);
    assert_null(ingle_report_finding_at(report, 0));
    assert_true(strlen(ingle_report_error_text(report)) > 0);
    assert_string_equal(ingle_report_error_subject(report), subject);
}

static void a_standard_that_is_none_is_told_by_its_index(void **state)
{
    (void)state;
    const ingle_standard *standards[] = {ingle_standard_find("irc-2021"),
                                         ingle_standard_find("irc-2022")};
    ingle_solution *solution = NULL;
    ingle_solve_options options = {.size = sizeof options, .rule = "hearth-frnt"};
    ingle_range range = {.size = sizeof range, .quantity = ingle_quantity_find("hearth.front"),
                         .from = INCHES(12), .to = INCHES(24), .step = INCHES(1)};
    assert_int_equal(ingle_check(survey, standards, 2, NULL, report),
                     INGLE_ERROR_UNKNOWN_STANDARD);
    expect_empty("");
    assert_non_null(strstr(ingle_report_error_text(report), "standards[1] is NULL"));
    assert_int_equal(ingle_solution_new(NULL, &solution), INGLE_OK);
    assert_int_equal(ingle_solve(survey, standards, 2, NULL, &range, &options, solution),
                     INGLE_ERROR_UNKNOWN_STANDARD);
    assert_non_null(strstr(ingle_solution_error_text(solution), "standards[1] is NULL"));
    ingle_solution_free(solution);
}

static void a_standard_named_twice_is_adopted_once(void **state)
{
    (void)state;
    const ingle_standard *irc = ingle_standard_find("irc-2021");
    const ingle_standard *trade = ingle_standard_find("common-practice-us");
    const ingle_standard *standards[] = {irc, trade, irc, trade, irc};
    survey_at_the_limits(survey);
    record("hearth.front", "19 in", NULL);
    assert_int_equal(ingle_check(survey, standards, 2, NULL, report), INGLE_OK);
    size_t findings = ingle_report_finding_count(report);
    size_t notices = ingle_report_notice_count(report);
    size_t missing = ingle_report_missing_count(report);
    assert_int_equal(ingle_check(survey, standards, 5, NULL, report), INGLE_OK);
    assert_int_equal(ingle_report_finding_count(report), findings);
    assert_int_equal(ingle_report_notice_count(report), notices);
    assert_int_equal(ingle_report_missing_count(report), missing);
    assert_int_equal(ingle_report_standard_count(report), 2);
    assert_ptr_equal(ingle_report_standard_at(report, 0), irc);
    assert_ptr_equal(ingle_report_standard_at(report, 1), trade);
    assert_null(ingle_report_standard_at(report, 2));
    expect_verdict("hearth-front", "hearth.front", INGLE_FAILS); /* and it is the only one */
}

static void arguments_that_lack_are_refused(void **state)
{
    (void)state;
    const ingle_standard *irc = ingle_standard_find("irc-2021");
    const ingle_standard *none = NULL;
    assert_string_equal(ingle_report_error_text(report), "");
    assert_int_equal(ingle_check(NULL, &irc, 1, NULL, report), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_check(survey, &irc, 1, NULL, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_check(survey, NULL, 1, NULL, report), INGLE_ERROR_ARGUMENT);
    expect_empty("");
    assert_int_equal(ingle_check(survey, &none, 1, NULL, report), INGLE_ERROR_UNKNOWN_STANDARD);
    expect_empty("");
    survey_at_the_limits(survey);
    check("irc-2021");
    assert_string_equal(ingle_report_error_text(report), "");
    assert_int_equal(ingle_check(survey, &irc, 0, NULL, report), INGLE_ERROR_NO_STANDARD);
    expect_empty("");
    assert_int_equal(ingle_check(survey, NULL, 0, NULL, report), INGLE_ERROR_NO_STANDARD);
    assert_int_equal(ingle_report_new(NULL, NULL), INGLE_ERROR_ARGUMENT);
    ingle_report_free(NULL);
    assert_int_equal(ingle_finding_text(NULL, INGLE_FINDING_LABEL, NULL, NULL, 0, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_step_text(NULL, INGLE_STEP_SENTENCE, NULL, NULL, 0, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_remedy_text(NULL, INGLE_REMEDY_SENTENCE, NULL, NULL, 0, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_missing_subject_text(NULL, NULL, 0, NULL), INGLE_ERROR_ARGUMENT);
}

static void options_of_other_releases(void **state)
{
    (void)state;
    struct {
        ingle_check_options options;
        int64_t more;
    } newer = {.options = {.size = sizeof newer}, .more = 0};
    survey_at_the_limits(survey);
    assert_int_equal(check_with("irc-2021", &newer.options), INGLE_OK);
    newer.more = 1;
    assert_int_equal(check_with("irc-2021", &newer.options), INGLE_ERROR_STRUCT_NEWER);
    expect_empty("");
    newer.options.size = sizeof newer.options - 1;
    assert_int_equal(check_with("irc-2021", &newer.options), INGLE_ERROR_STRUCT_SIZE);
    newer.options.size = 0;
    assert_int_equal(check_with("irc-2021", &newer.options), INGLE_ERROR_STRUCT_SIZE);
    expect_empty("");
    newer.options.size = sizeof newer.options;
    assert_int_equal(check_with("irc-2021", &newer.options), INGLE_OK);
}

static void options_leave_out_what_they_say(void **state)
{
    (void)state;
    ingle_check_options options = {.size = sizeof options};
    survey_at_the_limits(survey);
    record("hearth.front", "19 in", NULL);
    check("irc-2021");
    assert_true(ingle_finding_step_count(only("hearth-front", "hearth.front")) > 0);
    assert_int_equal(ingle_finding_remedy_count(only("hearth-front", "hearth.front")), 1);
    options.without_working = 1;
    check_with("irc-2021", &options);
    assert_int_equal(ingle_finding_step_count(only("hearth-front", "hearth.front")), 0);
    assert_null(ingle_finding_step_at(only("hearth-front", "hearth.front"), 0));
    assert_int_equal(ingle_finding_remedy_count(only("hearth-front", "hearth.front")), 1);
    options.without_remedies = 1;
    check_with("irc-2021", &options);
    assert_int_equal(ingle_finding_remedy_count(only("hearth-front", "hearth.front")), 0);
    assert_null(ingle_finding_remedy_at(only("hearth-front", "hearth.front"), 0));
    expect_verdict("hearth-front", "hearth.front", INGLE_FAILS);
}

static void contradictions_have_a_subject(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    record("flue.shape", "rectangular", NULL); /* but the liner is 13x13 */
    assert_int_equal(check_with("irc-2021", NULL), INGLE_ERROR_CONTRADICTION);
    expect_empty("/survey/flue/shape");
    assert_string_equal(ingle_report_error_text(report),
                        "flue.shape: Two things recorded cannot both be so: flue.shape is "
                        "rectangular, and flue.liner is 13x13.");
    record("flue.shape", "square", NULL);
    check("irc-2021");
    assert_string_equal(ingle_report_error_text(report), "");
    assert_string_equal(ingle_report_error_subject(report), "");
    forget("flue.shape");
    record("flue.diameter", "8 in", NULL);
    assert_int_equal(check_with("irc-2021", NULL), INGLE_ERROR_CONTRADICTION);
    expect_empty("/survey/flue/liner");
    assert_non_null(strstr(ingle_report_error_text(report),
                           "flue.liner is 13x13, and flue.diameter is 8 in."));
    record("flue.width", "8 1/2 in", NULL);
    assert_int_equal(check_with("irc-2021", NULL), INGLE_ERROR_CONTRADICTION);
    expect_empty("/survey/flue/diameter");
    assert_non_null(strstr(ingle_report_error_text(report),
                           "flue.diameter is 8 in, and flue.width is 8 1/2 in."));
}

/* 240 in x 144 in are 34 560 in2; 63 bits hold some 14 296 in2. */
static void an_opening_too_large_is_an_overflow(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    record("opening.width", "240 in", NULL);
    record("opening.height", "144 in", NULL);
    assert_int_equal(check_with("irc-2021", NULL), INGLE_ERROR_OVERFLOW);
    assert_int_equal(ingle_report_finding_count(report), 0);
    assert_true(strlen(ingle_report_error_text(report)) > 0);
    record("opening.height", "24 in", NULL);
    check("irc-2021");
}

/* ---- steps ---------------------------------------------------------------------------------- */

static void expect_step(const ingle_finding *finding, size_t index, const char *expression,
                        const char *substituted)
{
    char text[400];
    const ingle_step *step = ingle_finding_step_at(finding, index);
    assert_non_null(step);
    ingle_step_text(step, INGLE_STEP_EXPRESSION, NULL, text, sizeof text, NULL);
    assert_string_equal(text, expression);
    ingle_step_text(step, INGLE_STEP_SUBSTITUTED, NULL, text, sizeof text, NULL);
    assert_string_equal(text, substituted);
}

static void the_steps_tell_the_calculation(void **state)
{
    (void)state;
    char text[400];
    ingle_amount result = {42, 42, 42};
    survey_at_the_limits(survey);
    record("hearth.front", "19 15/16 in", "1/8 in");
    check("irc-2021");
    const ingle_finding *front = only("hearth-front", "hearth.front");
    assert_int_equal(ingle_finding_step_count(front), 4);
    expect_step(front, 0, "opening.width × opening.height", "36 in × 24 in");
    expect_step(front, 1, "opening.area ≥ threshold, so large", "6 ft2 ≥ 6 ft2, so 20 in");
    expect_step(front, 2, "hearth.front − required", "19 15/16 in − 20 in");
    expect_step(front, 3, "from worst to best", "from -3/16 in to 1/16 in");
    assert_string_equal(ingle_step_label(ingle_finding_step_at(front, 0)), "opening area");
    assert_int_equal(ingle_step_result(ingle_finding_step_at(front, 0), &result), 1);
    assert_true(result.value == SQUARE_FEET(6));
    result.value = 42;
    assert_int_equal(ingle_step_result(ingle_finding_step_at(front, 3), &result), 0);
    assert_true(result.value == 42);
    ingle_step_text(ingle_finding_step_at(front, 0), INGLE_STEP_SENTENCE, NULL, text, sizeof text,
                    NULL);
    assert_string_equal(text, "Opening area: width of the fireplace opening × height of the "
                              "fireplace opening = 36 in × 24 in = 6 ft2.");
    assert_null(ingle_finding_step_at(front, 4));
    /* What is taken for granted is said, with the table a number is from. */
    const ingle_finding *distance = only("trim-distance", "trim.distance");
    ingle_step_text(ingle_finding_step_at(distance, 0), INGLE_STEP_REMARK, NULL, text, sizeof text,
                    NULL);
    assert_string_equal(text, "It is not recorded.");
    expect_step(distance, 0, "trim.place", "on-face");
    expect_step(distance, 1, "trim.combustible", "yes");
    ingle_step_text(ingle_finding_step_at(distance, 0), INGLE_STEP_SENTENCE, NULL, text,
                    sizeof text, NULL);
    assert_string_equal(text, "Taken for granted: how the piece meets the masonry (mounted on the "
                              "masonry front). It is not recorded.");
}

static void findings_of_the_same_survey_are_told_alike(void **state)
{
    (void)state;
    ingle_format millimetres = {.size = sizeof millimetres, .unit = ingle_unit_find("mm")};
    ingle_format wrong = {.size = 1};
    char text[400];
    survey_at_the_limits(survey);
    check("irc-2021");
    const ingle_finding *front = only("hearth-front", "hearth.front");
    assert_int_equal(ingle_finding_text(front, INGLE_FINDING_SENTENCE, &millimetres, text,
                                        sizeof text, NULL), INGLE_OK);
    assert_non_null(strstr(text, "508 mm measured, at least 508 mm is required"));
    assert_int_equal(ingle_finding_text(front, INGLE_FINDING_SENTENCE, &wrong, text, sizeof text,
                                        NULL), INGLE_ERROR_STRUCT_SIZE);
    assert_int_equal(ingle_finding_text(front, 0, NULL, text, sizeof text, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_finding_text(front, 7, NULL, text, sizeof text, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_finding_text(front, INGLE_FINDING_LABEL, NULL, NULL, 1, NULL),
                     INGLE_ERROR_ARGUMENT);
}

/* ---- texts in small buffers ----------------------------------------------------------------- */

typedef ingle_status (*text_writer)(const void *object, int part, char *buffer, size_t capacity,
                                    size_t *length);

static ingle_status write_finding(const void *object, int part, char *buffer, size_t capacity,
                                  size_t *length)
{
    return ingle_finding_text(object, part, NULL, buffer, capacity, length);
}

static ingle_status write_step(const void *object, int part, char *buffer, size_t capacity,
                               size_t *length)
{
    return ingle_step_text(object, part, NULL, buffer, capacity, length);
}

static ingle_status write_remedy(const void *object, int part, char *buffer, size_t capacity,
                                 size_t *length)
{
    return ingle_remedy_text(object, part, NULL, buffer, capacity, length);
}

static ingle_status write_missing(const void *object, int part, char *buffer, size_t capacity,
                                  size_t *length)
{
    (void)part;
    return ingle_missing_subject_text(object, buffer, capacity, length);
}

static void expect_cut_alike(text_writer write, const void *object, int part)
{
    char whole[2000];
    size_t due = 0, length = 0;
    assert_int_equal(write(object, part, whole, sizeof whole, &due), INGLE_OK);
    assert_int_equal(strlen(whole), due);
    assert_int_equal(write(object, part, NULL, 0, &length), INGLE_OK);
    assert_int_equal(length, due);
    for (size_t capacity = 1; capacity <= due + 2; capacity++) {
        char *buffer = malloc(capacity);
        assert_non_null(buffer);
        size_t written = capacity <= due ? capacity - 1 : due;
        assert_int_equal(write(object, part, buffer, capacity, &length),
                         capacity <= due ? INGLE_CUT : INGLE_OK);
        assert_int_equal(length, due);
        assert_memory_equal(buffer, whole, written);
        assert_int_equal(buffer[written], '\0');
        free(buffer);
    }
}

static void expect_finding_cut_alike(const ingle_finding *finding)
{
    for (int part = INGLE_FINDING_SUBJECT; part <= INGLE_FINDING_DANGER; part++) {
        expect_cut_alike(write_finding, finding, part);
    }
    for (size_t i = 0; i < ingle_finding_step_count(finding); i++) {
        for (int part = INGLE_STEP_EXPRESSION; part <= INGLE_STEP_REMARK; part++) {
            expect_cut_alike(write_step, ingle_finding_step_at(finding, i), part);
        }
    }
    for (size_t i = 0; i < ingle_finding_remedy_count(finding); i++) {
        expect_cut_alike(write_remedy, ingle_finding_remedy_at(finding, i), INGLE_REMEDY_SUBJECT);
        expect_cut_alike(write_remedy, ingle_finding_remedy_at(finding, i), INGLE_REMEDY_SENTENCE);
    }
}

static void texts_are_cut_at_any_capacity(void **state)
{
    (void)state;
    ingle_check_options options = {.size = sizeof options, .amendments = amendments,
                                   .with_not_applicable = 1};
    survey_at_the_limits(survey);
    record("firebox.design", "rumford", NULL);
    record("hearth.front", "19 15/16 in", "1/8 in");
    record("trim[0].projection", "2 in", NULL);
    record("flue.liner", "8x12", NULL);
    forget("damper.area");
    ingle_amendments_set_text(amendments, ingle_standard_find("irc-2021"), "hearth-front", "large",
                              "21 in", 5, NULL, "Alder Lane by-law 7-2");
    assert_int_equal(check_with("irc-2021", &options), INGLE_OK);
    size_t remedies = 0;
    for (size_t i = 0; i < ingle_report_finding_count(report); i++) {
        expect_finding_cut_alike(ingle_report_finding_at(report, i));
        remedies += ingle_finding_remedy_count(ingle_report_finding_at(report, i));
    }
    assert_true(remedies > 2);
    assert_true(ingle_report_missing_count(report) > 0);
    for (size_t i = 0; i < ingle_report_missing_count(report); i++) {
        expect_cut_alike(write_missing, ingle_report_missing_at(report, i), 0);
    }
}

/* ---- the report is used again --------------------------------------------------------------- */

static void a_report_used_again_asks_for_no_memory(void **state)
{
    (void)state;
    check_all("irc-2021"); /* where nothing is recorded the most is missing */
    survey_at_the_limits(survey);
    for (int i = 0; i < 40; i++) {
        ingle_survey_add_item(survey, "trim", NULL, NULL);
    }
    record("trim[0].distance", "5 in", NULL);
    record("hearth.front", "12 in", "1/8 in");
    check_all("irc-2021");
    size_t calls = memory.calls, findings = ingle_report_finding_count(report);
    assert_true(calls > 4);
    for (int i = 0; i < 3; i++) {
        check_all("irc-2021");
        assert_int_equal(ingle_report_finding_count(report), findings);
    }
    ingle_survey_clear(survey);
    check_all("irc-2021");
    survey_at_the_limits(survey);
    check("irc-2024");
    assert_int_equal(check_with("irc-2021", &(ingle_check_options){.size = 1}),
                     INGLE_ERROR_STRUCT_SIZE);
    check("irc-2021");
    assert_int_equal(memory.calls, calls);
    assert_int_equal(ingle_report_verdict(report), INGLE_MEETS);
}

/* A code that was read, one that others cite, and practice: less of each by the basis asked for. */
static void rows_known_less_well_are_left_out(void **state)
{
    (void)state;
    const ingle_standard *standards[] = {ingle_standard_find("irc-2021"),
                                         ingle_standard_find("nfpa-211-fireplaces"),
                                         ingle_standard_find("common-practice-us")};
    static const char *const names[] = {"read", "cited", "from-memory", "common-practice"};
    size_t before = 0;
    survey_at_the_limits(survey);
    for (size_t i = 0; i < 4; i++) {
        ingle_check_options options = {.size = sizeof options,
                                       .least_basis = ingle_basis_find(names[i])};
        assert_int_equal(options.least_basis, INGLE_BASIS_READ + i);
        assert_int_equal(ingle_check(survey, standards, 3, &options, report), INGLE_OK);
        const ingle_finding *finding;
        size_t count = 0;
        for (; (finding = ingle_report_finding_at(report, count)) != NULL; count++) {
            assert_true(ingle_rule_basis(ingle_finding_rule(finding)) <= options.least_basis);
        }
        assert_true(count >= before);
        before = count;
    }
    assert_int_equal(ingle_check(survey, standards, 3, NULL, report), INGLE_OK);
    assert_int_equal(ingle_report_finding_count(report), before);
    ingle_check_options options = {.size = sizeof options, .least_basis = 5};
    assert_int_equal(ingle_check(survey, standards, 3, &options, report), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_basis_find("sited"), 0);
    assert_int_equal(ingle_basis_find(NULL), 0);
}

int main(void)
{
#define TEST(name) cmocka_unit_test_setup_teardown(name, make, unmake)
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(verdicts_have_names),
        TEST(at_the_limits_all_is_met),
        TEST(the_gravest_verdict_is_that_of_the_whole),
        TEST(tolerances_decide_between_three),
        TEST(the_amounts_of_a_finding),
        TEST(an_unmeasured_finding_still_says_what_is_required),
        TEST(the_missing_list_names_each_rule_once),
        TEST(an_empty_survey_lacks_the_appliance),
        TEST(trim_that_nobody_looked_at_is_missing_as_a_whole),
        TEST(each_piece_of_trim_has_its_own_finding),
        TEST(a_limit_that_may_hold_needs_its_measure),
        TEST(what_does_not_apply_is_shown_on_demand),
        TEST(trim_beyond_the_rule_is_not_limited),
        TEST(abutting_trim_goes_by_the_edition),
        TEST(a_rumford_that_meets_needs_no_ordinary_rules),
        TEST(a_rumford_that_meets_the_ordinary_rules_needs_no_exception),
        TEST(a_rumford_that_meets_neither_shows_both),
        TEST(a_wide_rumford_has_to_be_deeper),
        TEST(exceptions_are_settled_standard_by_standard),
        TEST(an_ambiguous_liner_is_read_both_ways),
        TEST(amendments_stand_in_their_findings),
        TEST(notices_are_given_once),
        TEST(common_practice_says_that_it_is_advice),
        TEST(a_standard_that_is_none_is_told_by_its_index),
        TEST(a_standard_named_twice_is_adopted_once),
        TEST(arguments_that_lack_are_refused),
        TEST(options_of_other_releases),
        TEST(options_leave_out_what_they_say),
        TEST(contradictions_have_a_subject),
        TEST(an_opening_too_large_is_an_overflow),
        TEST(the_steps_tell_the_calculation),
        TEST(findings_of_the_same_survey_are_told_alike),
        TEST(texts_are_cut_at_any_capacity),
        TEST(a_report_used_again_asks_for_no_memory),
        TEST(rows_known_less_well_are_left_out),
    };
    return cmocka_run_group_tests_name("check", tests, NULL, NULL);
}
