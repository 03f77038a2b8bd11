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
           "The damper is stuck or hard to move; the rule only asks for a damper; how it moves is "
           "not judged by this rule.");
    check("irc-2021", old_fireplace);
    expect("flue-lined", INGLE_MEETS,
           "The flue's lining is cracked, or has gaps or holes; the rule only asks for a lining; "
           "its condition is not judged by this rule.");
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
           "Level of the inspection: 1 recorded, at least 2 is required: too low.");
    expect_label("inspection-for-sale", "inspection for the sale of the property");
    char text[200];
    assert_int_equal(ingle_finding_remedy_count(first("inspection-for-sale")), 1);
    ingle_remedy_text(ingle_finding_remedy_at(first("inspection-for-sale"), 0),
                      INGLE_REMEDY_SENTENCE, NULL, text, sizeof text, NULL);
    assert_string_equal(text, "Have an inspection made of a level of at least 2.");
}

/* Screws by the practice of the trade; bends and gauge by an ordinance, 1343.09. */
static void counts_agree_in_number_and_scales_have_a_sense(void **state)
{
    (void)state;
    static const struct entry pipe[] = {{"appliance.kind", "stove", NULL},
                                        {"appliance.fuel", "wood", NULL},
                                        {"connector.kind", "single-wall", NULL},
                                        {"connector.screws", "0", NULL},
                                        {"connector.elbows", "3", NULL},
                                        {"connector.diameter", "6 in", NULL},
                                        {"connector.gauge", "26", NULL},
                                        {NULL, NULL, NULL}};
    check("common-practice-us", pipe);
    expect("connector-screws", INGLE_FAILS,
           "Screws in each joint of the connector: 0 found, at least 3 are required: 3 too few.");
    check("newburgh-heights-1343-09", pipe);
    expect("connector-elbows", INGLE_FAILS,
           "Right-angle bends of the connector: 3 found, no more than 2 are allowed: 1 too many.");
    expect("connector-gauge", INGLE_FAILS,
           "Sheet gauge of the connector: 26 recorded, no more than 24 is allowed: too thin, since "
           "a higher number is thinner sheet.");
}

static void what_has_to_be_less_is_said_so(void **state)
{
    (void)state;
    check("common-practice-us",
          (const struct entry[]){{"appliance.kind", "masonry-fireplace", NULL},
                                 {"creosote.kind", "flaky", NULL},
                                 {"creosote.thickness", "1/4 in", NULL},
                                 {NULL, NULL, NULL}});
    expect("creosote-cleaning", INGLE_FAILS,
           "Thickness of the deposit in the flue: 1/4 in measured, only less than 1/8 in is "
           "allowed: 1/8 in too much.");
}

/* The appendix is known from another source that names no edition. */
static void a_section_without_edition_is_cited_without_a_year(void **state)
{
    (void)state;
    char text[1000];
    check("irc-2021", (const struct entry[]){{"appliance.kind", "masonry-fireplace", NULL},
                                             {"appliance.fuel", "gas", NULL},
                                             {"gas.appliance", "log-set", NULL},
                                             {"gas.vent", "chimney", NULL},
                                             {"damper.state", "working", NULL},
                                             {NULL, NULL, NULL}});
    assert_int_equal(ingle_finding_text(first("damper-for-gas"), INGLE_FINDING_CITATION, NULL,
                                        text, sizeof text, NULL), INGLE_OK);
    assert_string_equal(text,
                        "International Residential Code, Appendix D (edition not stated)");
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

/* Parging is one job: whoever does it mends the steps and the edges. */
static void one_job_is_one_trade_s(void **state)
{
    (void)state;
    check("irc-2021", old_fireplace);
    const char *parging = ingle_finding_refer(first("smoke-chamber-parging"));
    check("common-practice-us", old_fireplace);
    assert_string_equal(ingle_finding_refer(first("smoke-chamber-edges")), parging);
}

static const char *caution_of(const char *rule)
{
    static char text[1000];
    ingle_finding_text(first(rule), INGLE_FINDING_CAUTION, NULL, text, sizeof text, NULL);
    return text;
}

/* A duct that is missing leaves a hole into the framing: by whatever standard it is found. */
static void one_fact_has_one_set_of_words(void **state)
{
    (void)state;
    static const struct entry missing[] = {{"appliance.kind", "masonry-fireplace", NULL},
                                           {"air.duct-state", "missing", NULL},
                                           {NULL, NULL, NULL}};
    char text[1000];
    check("common-practice-us", missing);
    strcpy(text, caution_of("air-duct-connected"));
    const char *inspection = ingle_finding_inspection(first("air-duct-connected"));
    text[strstr(text, " What is asked") - text] = '\0';
    check("irc-2021", missing);
    assert_int_equal(ingle_finding_verdict(first("exterior-air")), INGLE_FAILS);
    assert_string_equal(caution_of("exterior-air"), text);
    assert_null(strstr(text, "window"));
    assert_non_null(inspection);
    assert_string_equal(ingle_finding_inspection(first("exterior-air")), inspection);
}

/* Where parts of a lining are missing nobody is told that there is none. */
static void a_lining_with_parts_missing_is_not_called_none(void **state)
{
    (void)state;
    check("irc-2021", (const struct entry[]){{"appliance.kind", "masonry-fireplace", NULL},
                                             {"flue.lining", "missing", NULL},
                                             {NULL, NULL, NULL}});
    assert_int_equal(ingle_finding_verdict(first("flue-lined")), INGLE_FAILS);
    assert_non_null(strstr(caution_of("flue-lined"), "cracked, open or missing"));
    assert_string_equal(ingle_finding_mend(first("flue-lined")),
                        "Have the lining repaired, or the flue relined.");
}

/* A gas fire has no embers: what is said of a hearth holds for both fuels. */
static void a_hearth_before_a_gas_fire_is_not_warned_of_embers_alone(void **state)
{
    (void)state;
    check("irc-2021", (const struct entry[]){{"appliance.kind", "masonry-fireplace", NULL},
                                             {"appliance.fuel", "gas", NULL},
                                             {"opening.width", "36 in", NULL},
                                             {"opening.height", "28 in", NULL},
                                             {"hearth.front", "16 in", NULL},
                                             {"hearth.left", "8 in", NULL},
                                             {NULL, NULL, NULL}});
    assert_int_equal(strncmp(caution_of("hearth-front"), "Radiant heat, and the embers of a wood "
                                                         "fire, reach", 50), 0);
    assert_int_equal(strncmp(caution_of("hearth-side"), "Heat to the side, and the embers of a "
                                                        "wood fire, reach", 50), 0);
}

/* Whether the fuel changes is recorded: then nobody is told to find out. */
static void the_fuel_s_change_is_taken_from_the_survey(void **state)
{
    (void)state;
    struct entry gas[] = {{"appliance.kind", "masonry-fireplace", NULL},
                          {"appliance.fuel", "gas", NULL},
                          {"gas.appliance", "log-set", NULL},
                          {"gas.vent", "chimney", NULL},
                          {"damper.state", "working", NULL},
                          {NULL, NULL, NULL},
                          {NULL, NULL, NULL}};
    check("common-practice-us", gas);
    assert_non_null(strstr(ingle_finding_inspection(first("damper-for-gas")), "Otherwise"));
    gas[5] = (struct entry){"occasion.fuel-change", "yes", NULL};
    check("common-practice-us", gas);
    assert_null(strstr(ingle_finding_inspection(first("damper-for-gas")), "Otherwise"));
    assert_int_equal(strncmp(ingle_finding_inspection(first("damper-for-gas")), "Level 2", 7), 0);
    gas[5].text = "no";
    check("common-practice-us", gas);
    assert_int_equal(strncmp(ingle_finding_inspection(first("damper-for-gas")), "Level 1", 7), 0);
}

/* ---- what puts it right --------------------------------------------------------------------- */

static void what_is_only_seen_has_something_that_puts_it_right(void **state)
{
    (void)state;
    check("common-practice-us", old_fireplace);
    assert_string_equal(ingle_finding_mend(first("flue-lining")),
                        "Have the lining repaired, or the flue relined.");
    /* Nothing where the rule is met, is not judged, or where a remedy is computed. */
    assert_null(ingle_finding_mend(first("soot-outside")));
    assert_null(ingle_finding_mend(first("smoke-chamber-edges")));
    assert_int_equal(ingle_finding_verdict(first("furniture-distance")), INGLE_FAILS);
    assert_null(ingle_finding_mend(first("furniture-distance")));
    assert_true(ingle_finding_remedy_count(first("furniture-distance")) > 0);
}

/* The diameter of a round flue can be changed to an amount; what a square one needs is another. */
static void where_no_remedy_is_found_something_puts_it_right(void **state)
{
    (void)state;
    struct entry insert[] = {{"appliance.kind", "insert", NULL},
                             {"appliance.fuel", "wood", NULL},
                             {"collar.diameter", "6 in", NULL},
                             {"insert.chimney-exposed", "yes", NULL},
                             {"flue.shape", "square", NULL},
                             {"flue.width", "12 in", NULL},
                             {"flue.depth", "12 in", NULL},
                             {NULL, NULL, NULL}};
    check("nfpa-211-2010", insert);
    assert_int_equal(ingle_finding_verdict(first("insert-flue-area-most")), INGLE_FAILS);
    assert_int_equal(ingle_finding_remedy_count(first("insert-flue-area-most")), 0);
    assert_string_equal(ingle_finding_mend(first("insert-flue-area-most")),
                        "Have the flue lined to the collar's size.");
    insert[4] = (struct entry){"flue.diameter", "12 in", NULL};
    insert[5] = (struct entry){NULL, NULL, NULL};
    check("nfpa-211-2010", insert);
    assert_int_equal(ingle_finding_remedy_count(first("insert-flue-area-most")), 1);
    assert_null(ingle_finding_mend(first("insert-flue-area-most")));
}

static void a_listing_is_somebody_s_to_look_up(void **state)
{
    (void)state;
    static const struct entry entries[] = {{"appliance.kind", "factory-built-fireplace", NULL},
                                           {"appliance.fuel", "wood", NULL},
                                           {"listing.label", "listed", NULL},
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
    assert_string_equal(text, "Not judged. Light nothing here until what the listing asks has been "
                              "looked up; what follows holds if it is not met. Radiant heat, and "
                              "the embers of a wood fire, reach the floor beyond a short hearth "
                              "and can light it. Do not burn until it has been put right.");
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
        TEST(counts_agree_in_number_and_scales_have_a_sense),
        TEST(what_has_to_be_less_is_said_so),
        TEST(a_section_without_edition_is_cited_without_a_year),
        TEST(what_is_missing_is_named_in_words),
        TEST(missing_quantities_and_groups_have_labels),
        TEST(a_finding_says_who_looks_next_and_what_inspection_is_due),
        TEST(a_listing_is_somebody_s_to_look_up),
        TEST(one_job_is_one_trade_s),
        TEST(one_fact_has_one_set_of_words),
        TEST(a_lining_with_parts_missing_is_not_called_none),
        TEST(a_hearth_before_a_gas_fire_is_not_warned_of_embers_alone),
        TEST(the_fuel_s_change_is_taken_from_the_survey),
        TEST(what_is_only_seen_has_something_that_puts_it_right),
        TEST(where_no_remedy_is_found_something_puts_it_right),
        TEST(a_larger_liner_is_not_promised_to_fit),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
