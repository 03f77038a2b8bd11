/* SPDX-License-Identifier: MIT */
/*
 * The sentences of findings, as an inspector would paste them into a report: each verdict over each
 * kind of quantity, and who is to look next.
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

static void check(const char *standard, const struct entry *entries)
{
    const ingle_standard *standards[] = {ingle_standard_find(standard)};
    ingle_survey_clear(survey);
    record_entries(survey, entries);
    assert_int_equal(ingle_check(survey, standards, 1, NULL, report), INGLE_OK);
}

static const ingle_finding *first(const char *rule)
{
    const ingle_finding *finding;
    for (size_t i = 0; (finding = ingle_report_finding_at(report, i)) != NULL; i++) {
        if (strcmp(ingle_rule_id(ingle_finding_rule(finding)), rule) == 0) {
            return finding;
        }
    }
    fail_msg("no finding of %s", rule);
    return NULL;
}

static void expect(const char *rule, ingle_verdict verdict, const char *due)
{
    char text[1000];
    const ingle_finding *finding = first(rule);
    assert_int_equal(ingle_finding_verdict(finding), verdict);
    assert_int_equal(ingle_finding_text(finding, INGLE_FINDING_SENTENCE, NULL, text, sizeof text,
                                        NULL), INGLE_OK);
    assert_string_equal(text, due);
}

static void expect_label(const char *rule, const char *due)
{
    char text[1000];
    assert_int_equal(ingle_finding_text(first(rule), INGLE_FINDING_LABEL, NULL, text, sizeof text,
                                        NULL), INGLE_OK);
    assert_string_equal(text, due);
}

/* ---- what is seen --------------------------------------------------------------------------- */

static const struct entry old_fireplace[] = {{"appliance.kind", "masonry-fireplace", NULL},
                                             {"appliance.fuel", "wood", NULL},
                                             {"signs.chimney-fire", "yes", NULL},
                                             {"signs.soot", "no", NULL},
                                             {"damper.state", "stuck", NULL},
                                             {"flue.lining", "cracked", NULL},
                                             {"room.furniture", "35 in", NULL},
                                             {NULL, NULL, NULL}};

static void what_is_seen_is_said_in_plain_words(void **state)
{
    (void)state;
    check("common-practice-us", old_fireplace);
    expect("chimney-fire", INGLE_FAILS,
           "A chimney fire has been reported or its signs were seen; the rule asks that there have "
           "been none.");
    expect("soot-outside", INGLE_MEETS,
           "There is no soot outside the firebox, as the rule asks.");
    expect("flue-lining", INGLE_FAILS,
           "The flue's lining is cracked, or has gaps or holes; the rule asks for one that is "
           "whole, without cracks, gaps or holes.");
    expect("damper-moves", INGLE_FAILS,
           "The damper is stuck or hard to move, which the rule does not allow.");
    expect("smoke-chamber-edges", INGLE_UNMEASURED,
           "Whether edges of the smoke chamber stand into the gas path: not recorded; the rule "
           "asks that there be none.");
}

/* That another state is forbidden says nothing for the one that was found. */
static void a_state_that_is_not_forbidden_is_not_called_right(void **state)
{
    (void)state;
    check("common-practice-us", old_fireplace);
    expect("damper-for-solid-fuel", INGLE_MEETS,
           "The damper is stuck or hard to move; all this rule forbids is that the damper was "
           "removed or never there.");
    check("irc-2021", old_fireplace);
    expect("flue-lined", INGLE_MEETS,
           "The flue's lining is cracked, or has gaps or holes; all this rule forbids is that the "
           "flue has no lining.");
}

/* ---- what is measured ----------------------------------------------------------------------- */

static void what_is_counted_is_found(void **state)
{
    (void)state;
    static const struct entry entries[] = {{"appliance.kind", "masonry-fireplace", NULL},
                                           {"inspection.level", "1", NULL},
                                           {"occasion.sale", "yes", NULL},
                                           {NULL, NULL, NULL}};
    check("nfpa-211-inspections", entries);
    expect("inspection-for-sale", INGLE_FAILS,
           "Level of the inspection: 1 found, at least 2 is required: 1 too little.");
    expect_label("inspection-for-sale", "inspection for the sale of the property");
}

/* ---- what is not known ---------------------------------------------------------------------- */

static void what_is_missing_is_named_in_words(void **state)
{
    (void)state;
    static const struct entry entries[] = {{"appliance.kind", "masonry-fireplace", NULL},
                                           {"opening.height", "24 in", NULL},
                                           {"hearth.front", "20 in", NULL},
                                           {NULL, NULL, NULL}};
    check("irc-2021", entries);
    expect("firebox-depth", INGLE_UNMEASURED,
           "Depth of the firebox: not recorded; at least 20 in is required.");
    expect("hearth-front", INGLE_UNMEASURED,
           "Hearth extension in front of the opening: not judged, since this is not recorded: "
           "width of the fireplace opening.");
    expect("trim-distance", INGLE_UNMEASURED,
           "Distance of combustible trim from the opening: not recorded.");
    expect("cricket-height", INGLE_UNMEASURED,
           "Height of the cricket: not judged, since this is not recorded: whether a cricket or "
           "saddle sheds water behind the chimney.");
}

static void missing_quantities_and_groups_have_labels(void **state)
{
    (void)state;
    check("irc-2021", (const struct entry[]){{"appliance.kind", "masonry-fireplace", NULL},
                                             {NULL, NULL, NULL}});
    const ingle_missing *missing;
    bool width = false, trim = false;
    for (size_t i = 0; (missing = ingle_report_missing_at(report, i)) != NULL; i++) {
        width |= strcmp(ingle_missing_label(missing), "width of the fireplace opening") == 0;
        trim |= strcmp(ingle_missing_label(missing), "trim") == 0;
    }
    assert_true(width && trim);
}

/* ---- who looks next ------------------------------------------------------------------------- */

static void a_finding_says_who_looks_next_and_what_inspection_is_due(void **state)
{
    (void)state;
    check("common-practice-us", old_fireplace);
    assert_string_equal(ingle_finding_refer(first("chimney-fire")), "a chimney sweep");
    assert_non_null(strstr(ingle_finding_inspection(first("chimney-fire")), "Level 2 inspection"));
    /* Nothing is left to do where the rule is met; and before it is judged no inspection is due. */
    assert_null(ingle_finding_refer(first("soot-outside")));
    assert_null(ingle_finding_inspection(first("soot-outside")));
    assert_string_equal(ingle_finding_refer(first("smoke-chamber-edges")), "a mason");
    assert_null(ingle_finding_inspection(first("smoke-chamber-edges")));
}

static void a_listing_is_somebody_s_to_look_up(void **state)
{
    (void)state;
    static const struct entry entries[] = {{"appliance.kind", "factory-built-fireplace", NULL},
                                           {"appliance.fuel", "wood", NULL},
                                           {"hearth.front", "18 in", NULL},
                                           {NULL, NULL, NULL}};
    check("irc-2021", entries);
    expect("factory-hearth-front", INGLE_BY_LISTING,
           "Hearth extension in front of the opening: the appliance's own label or manual decides; "
           "look up what it says of this, and compare that with the 18 in measured.");
    const ingle_finding *finding = first("factory-hearth-front");
    assert_non_null(strstr(ingle_finding_refer(finding), "the laboratory that listed it"));
    assert_null(ingle_finding_inspection(finding));
    char text[1000];
    ingle_finding_text(finding, INGLE_FINDING_CAUTION, NULL, text, sizeof text, NULL);
    assert_int_equal(strncmp(text, "Not judged. If what the listing asks is not met: ", 49), 0);
}

/* ---- remedies ------------------------------------------------------------------------------- */

/* 36 in x 30 in asks for more than a 12x12 liner has: no liner that would do fits into it. */
static void a_larger_liner_is_not_promised_to_fit(void **state)
{
    (void)state;
    static const struct entry entries[] = {{"appliance.kind", "masonry-fireplace", NULL},
                                           {"opening.width", "36 in", NULL},
                                           {"opening.height", "30 in", NULL},
                                           {"flue.liner", "12x12", NULL},
                                           {NULL, NULL, NULL}};
    char text[1000];
    check("irc-2021", entries);
    const ingle_finding *flue = first("flue-area");
    size_t last = ingle_finding_remedy_count(flue) - 1;
    assert_int_equal(ingle_remedy_text(ingle_finding_remedy_at(flue, last), INGLE_REMEDY_SENTENCE,
                                       NULL, text, sizeof text, NULL), INGLE_OK);
    assert_string_equal(text, "Have the flue rebuilt larger, since no larger liner fits into it: "
                              "13x13 is the smallest liner of Table R1003.14(2) that would do, "
                              "with a net area of 127 in2.");
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, make, unmake)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(what_is_seen_is_said_in_plain_words),
        TEST(a_state_that_is_not_forbidden_is_not_called_right),
        TEST(what_is_counted_is_found),
        TEST(what_is_missing_is_named_in_words),
        TEST(missing_quantities_and_groups_have_labels),
        TEST(a_finding_says_who_looks_next_and_what_inspection_is_due),
        TEST(a_listing_is_somebody_s_to_look_up),
        TEST(a_larger_liner_is_not_promised_to_fit),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
