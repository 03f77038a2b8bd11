/* SPDX-License-Identifier: MIT */
/*
 * Remedies over many random surveys: what a remedy says is done to the survey, and the same check
 * has to find the rule met then; one graduation less of it, and the rule is still not met.
 */
#include "check/report.h"
#include "fireplaces.h"
#include "measure/amounts.h"

/* ---- chance that comes out alike every time ------------------------------------------------- */

static uint64_t seed;

static int64_t any_from(int64_t least, int64_t most)
{
    seed ^= seed << 13;
    seed ^= seed >> 7;
    seed ^= seed << 17;
    return least + (int64_t)(seed % (uint64_t)(most - least + 1));
}

/* ---- surveys that fail here and there ------------------------------------------------------- */

static ingle_survey *survey;
static ingle_report *first, *second;

static int make(void **state)
{
    (void)state;
    seed = UINT64_C(0xD1B54A32D192ED03);
    return ingle_survey_new(NULL, &survey) == INGLE_OK &&
                   ingle_report_new(NULL, &first) == INGLE_OK &&
                   ingle_report_new(NULL, &second) == INGLE_OK
               ? 0
               : -1;
}

static int unmake(void **state)
{
    (void)state;
    ingle_report_free(first);
    ingle_report_free(second);
    ingle_survey_free(survey);
    return 0;
}

static void set(enum quantity_id id, int64_t value, int64_t tolerance)
{
    assert_int_equal(ingle_survey_set(survey, &quantities[id], 0, value, tolerance), INGLE_OK);
}

/* A length on the sixty-fourth or off every graduation, with a tolerance or none. */
static void set_length(enum quantity_id id, int least, int most)
{
    int64_t value = any_from(64 * least, 64 * most) * INCHES_AND(0, 1, 64);
    value += any_from(0, 3) == 0 ? any_from(0, 1000) : 0;
    set(id, value, any_from(0, 1) == 0 ? 0 : any_from(1, 32) * INCHES_AND(0, 1, 64));
}

static void set_area(enum quantity_id id, int least, int most)
{
    set(id, any_from(least, most) * SQUARE_INCHES_AND(0, 1, 4),
        any_from(0, 1) == 0 ? 0 : any_from(1, 4) * SQUARE_INCHES(1));
}

static void set_flue(void)
{
    switch (any_from(0, 3)) {
    case 0:
        set(QUANTITY_FLUE_LINER, any_from(0, CHOICE_FLUE_LINER_COUNT - 1), 0);
        break;
    case 1:
        set_length(QUANTITY_FLUE_DIAMETER, 5, 16);
        break;
    case 2:
        set_length(QUANTITY_FLUE_WIDTH, 4, 16);
        set_length(QUANTITY_FLUE_DEPTH, 4, 16);
        break;
    default:
        set_area(QUANTITY_FLUE_NET_AREA, 80, 800);
        set(QUANTITY_FLUE_SHAPE, any_from(CHOICE_FLUE_SHAPE_ROUND, CHOICE_FLUE_SHAPE_SQUARE), 0);
    }
}

static void survey_anything(void)
{
    ingle_survey_clear(survey);
    set(QUANTITY_APPLIANCE_KIND, any_from(0, 9) == 0 ? CHOICE_APPLIANCE_KIND_INSERT
                                                     : CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE, 0);
    set_length(QUANTITY_OPENING_WIDTH, 24, 48);
    set_length(QUANTITY_OPENING_HEIGHT, 18, 36);
    if (any_from(0, 4) == 0) {
        set_area(QUANTITY_OPENING_AREA, 1600, 6000);
    }
    set_length(QUANTITY_FIREBOX_DEPTH, 16, 24);
    set_length(QUANTITY_THROAT_HEIGHT, 4, 12);
    set_length(QUANTITY_THROAT_ABOVE_LINTEL, 4, 12);
    set_length(QUANTITY_THROAT_DEPTH, 2, 6);
    set_length(QUANTITY_THROAT_WIDTH, 12, 40);
    set_area(QUANTITY_DAMPER_AREA, 80, 800);
    set_area(QUANTITY_SMOKE_CHAMBER_AREA, 80, 800);
    set_length(QUANTITY_LINTEL_LEFT, 2, 6);
    set_length(QUANTITY_LINTEL_RIGHT, 0, 6);
    set_length(QUANTITY_SMOKE_CHAMBER_HEIGHT, 20, 60);
    set(QUANTITY_SMOKE_CHAMBER_WALLS, any_from(0, 1), 0);
    set(QUANTITY_SMOKE_CHAMBER_SLOPE, any_from(20, 60) * DEGREES(1), any_from(0, 2) * DEGREES(1));
    set_length(QUANTITY_HEARTH_FRONT, 10, 24);
    set_length(QUANTITY_HEARTH_LEFT, 0, 16);
    set_length(QUANTITY_HEARTH_RIGHT, 0, 16);
    set_length(QUANTITY_HEARTH_THICKNESS, 1, 6);
    set_length(QUANTITY_HEARTH_EXTENSION_THICKNESS, 0, 3);
    if (any_from(0, 1) == 0) {
        set_length(QUANTITY_HEARTH_FIREBOX_RAISE, 6, 10);
    }
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    set(QUANTITY_TRIM_PLACE, any_from(0, 1), 0);
    set_length(QUANTITY_TRIM_DISTANCE, 3, 14);
    set_length(QUANTITY_TRIM_PROJECTION, 0, 3);
    set_length(QUANTITY_TRIM_LINING_DISTANCE, 4, 14);
    set_length(QUANTITY_INSERT_PROJECTION, 0, 6);
    set_length(QUANTITY_INSERT_HEARTH_LEFT, 4, 10);
    set_length(QUANTITY_INSERT_HEARTH_RIGHT, 4, 10);
    set_flue();
}

/* ---- doing what a remedy says --------------------------------------------------------------- */

static ingle_check_options options;
static const ingle_standard *standards[1];

static void check(ingle_report *report)
{
    ingle_status status = ingle_check(survey, standards, 1, &options, report);
    if (status != INGLE_OK) {
        print_error("%s\n", ingle_report_error_text(report));
    }
    assert_int_equal(status, INGLE_OK);
}

static const enum quantity_id flue_quantities[] = {
    QUANTITY_FLUE_SHAPE,    QUANTITY_FLUE_LINER, QUANTITY_FLUE_DIAMETER,
    QUANTITY_FLUE_WIDTH,    QUANTITY_FLUE_DEPTH, QUANTITY_FLUE_NET_AREA,
};

/* A flue that is relined is known by its liner alone. */
static void reline(int64_t liner)
{
    for (size_t i = 0; i < COUNT_OF(flue_quantities); i++) {
        ingle_survey_unset(survey, &quantities[flue_quantities[i]], 0);
    }
    set(QUANTITY_FLUE_LINER, liner, 0);
}

/* Whether all findings of the same rule on the same quantity, in the same reading, are met. */
static bool met_now(const struct ingle_finding *before, bool all_readings)
{
    size_t found = 0;
    bool met = true;
    check(second);
    for (size_t i = 0; i < second->finding_count; i++) {
        const struct ingle_finding *now = &second->findings[i];
        if (now->rule == before->rule && now->judged == before->judged &&
            (all_readings || now->reading_number == before->reading_number)) {
            found++;
            met = met && now->verdict <= INGLE_MEETS;
        }
    }
    assert_true(found > 0);
    return met;
}

static void complain(const struct ingle_finding *finding, const ingle_remedy *remedy)
{
    char text[400];
    ingle_finding_text(finding, INGLE_FINDING_SENTENCE, NULL, text, sizeof text, NULL);
    print_error("%s\n", text);
    ingle_remedy_text(remedy, INGLE_REMEDY_SENTENCE, NULL, text, sizeof text, NULL);
    print_error("%s\n", text);
}

static void expect_met(const struct ingle_finding *finding, const ingle_remedy *remedy, bool due)
{
    bool met = met_now(finding, remedy->direction == 0);
    if (met != due) {
        complain(finding, remedy);
    }
    assert_int_equal(met, due);
}

static int64_t graduation_of(enum quantity_id id)
{
    bool metric = options.metric_remedies != 0;
    switch (quantities[id].dimension) {
    case INGLE_LENGTH:
        return metric ? MILLIMETRES(1) : INCHES_AND(0, 1, 16);
    case INGLE_AREA:
        return metric ? SQUARE_CENTIMETRES(1) : SQUARE_INCHES(1);
    default:
        return DEGREES(1);
    }
}

/*
 * What follows from measures with tolerances may be met as soon as it is measured itself, exactly;
 * then a remedy is more than is needed, and less of it is met as well.
 */
static bool meets_as_it_is(const struct ingle_finding *finding, const ingle_remedy *remedy,
                           bool recorded)
{
    return !recorded && finding->verdict == INGLE_TOO_CLOSE &&
           ingle_survey_set(survey, &quantities[remedy->quantity], 0, remedy->from, 0) ==
               INGLE_OK &&
           met_now(finding, false);
}

static void try_amount(const struct ingle_finding *finding, const ingle_remedy *remedy)
{
    const struct ingle_quantity *quantity = &quantities[remedy->quantity];
    ingle_amount was = {0, 0, 0}, to;
    int64_t tolerance = 0, step = graduation_of(remedy->quantity);
    int recorded = ingle_survey_get(survey, quantity, 0, &was, &tolerance);
    ingle_remedy_amount(remedy, &to);
    assert_true(to.value % step == 0);
    assert_true(remedy->direction > 0 ? to.value > remedy->from : to.value < remedy->from);
    set(remedy->quantity, to.value, tolerance);
    expect_met(finding, remedy, true);
    if (!meets_as_it_is(finding, remedy, recorded) &&
        ingle_survey_set(survey, quantity, 0, to.value - remedy->direction * step, tolerance) ==
            INGLE_OK) {
        expect_met(finding, remedy, false);
    }
    if (recorded) {
        set(remedy->quantity, was.value, tolerance);
    } else {
        ingle_survey_unset(survey, quantity, 0);
    }
}

static void try_liner(const struct ingle_finding *finding, const ingle_remedy *remedy)
{
    struct record before[COUNT_OF(flue_quantities)];
    const struct liner *chosen = NULL;
    for (size_t i = 0; i < COUNT_OF(flue_quantities); i++) {
        before[i] = *survey_record(survey, flue_quantities[i], 0);
    }
    reline(remedy->to);
    expect_met(finding, remedy, true);
    for (size_t i = 0; i < standards[0]->liner_count; i++) {
        const struct liner *liner = &standards[0]->liners[i];
        chosen = (int64_t)liner->liner == remedy->to ? liner : chosen;
    }
    assert_non_null(chosen);
    for (size_t i = 0; i < standards[0]->liner_count; i++) {
        const struct liner *liner = &standards[0]->liners[i];
        if ((liner->depth == 0) == (chosen->depth == 0) && liner->net_area < chosen->net_area) {
            reline((int64_t)liner->liner);
            expect_met(finding, remedy, false);
        }
    }
    for (size_t i = 0; i < COUNT_OF(flue_quantities); i++) {
        survey->records[flue_quantities[i]] = before[i];
    }
}

static size_t tried[QUANTITY_COUNT];
static size_t failed[MATTER_COUNT];

static void try_remedies(void)
{
    check(first);
    for (size_t i = 0; i < first->finding_count; i++) {
        const struct ingle_finding *finding = &first->findings[i];
        size_t count = ingle_finding_remedy_count(finding);
        failed[finding->rule->matter] += finding->verdict == INGLE_FAILS;
        assert_true(count == 0 || finding->verdict == INGLE_FAILS ||
                    finding->verdict == INGLE_TOO_CLOSE);
        /* What is simply too little can always be made more. */
        if (finding->verdict == INGLE_FAILS && finding->rule->formula == &formula_fixed) {
            assert_int_equal(count, 1);
        }
        for (size_t r = 0; r < count; r++) {
            const ingle_remedy *remedy = ingle_finding_remedy_at(finding, r);
            tried[remedy->quantity]++;
            if (remedy->direction == 0) {
                try_liner(finding, remedy);
            } else {
                try_amount(finding, remedy);
            }
        }
    }
}

/* What the made-up surveys hold of what does not repeat; trim they always hold. */
static bool surveyed[QUANTITY_COUNT];

static bool is_surveyed(enum quantity_id quantity)
{
    return surveyed[quantity] || quantities[quantity].group == GROUP_TRIM;
}

static void try_many(bool metric)
{
    static const char *const ids[] = {"irc-2012", "irc-2021", "irc-2024", "common-practice-us"};
    options = (ingle_check_options){.size = sizeof options, .without_working = 1,
                                    .with_not_applicable = 1, .metric_remedies = metric};
    memset(tried, 0, sizeof tried);
    for (int i = 0; i < 600; i++) {
        survey_anything();
        for (size_t q = 0; q < QUANTITY_COUNT; q++) {
            surveyed[q] = surveyed[q] || survey->records[q].recorded;
        }
        standards[0] = ingle_standard_find(ids[any_from(0, 3)]);
        try_remedies();
    }
    /* Every quantity of these surveys had its turn that a remedy of what failed can change. */
    for (enum matter_id m = 0; m < MATTER_COUNT; m++) {
        for (size_t c = 0; c < matter_change_count(m); c++) {
            enum quantity_id change = matters[m].changes[c];
            bool due = failed[m] > 0 && is_surveyed(change);
            if (due && tried[change] == 0) {
                print_error("%s\n", quantities[change].id);
            }
            assert_true(!due || tried[change] > 0);
        }
    }
}

static void remedies_on_the_sixteenth(void **state)
{
    (void)state;
    try_many(false);
}

static void remedies_on_the_millimetre(void **state)
{
    (void)state;
    try_many(true);
}

/* ---- remedies by hand ----------------------------------------------------------------------- */

static const ingle_finding *finding_of(const char *rule)
{
    const ingle_finding *finding;
    for (size_t i = 0; (finding = ingle_report_finding_at(first, i)) != NULL; i++) {
        if (strcmp(ingle_rule_id(ingle_finding_rule(finding)), rule) == 0) {
            return finding;
        }
    }
    fail_msg("no finding of %s", rule);
    return NULL;
}

static void expect_sentence(const char *rule, size_t index, const char *due)
{
    char text[400];
    const ingle_remedy *remedy = ingle_finding_remedy_at(finding_of(rule), index);
    assert_non_null(remedy);
    assert_int_equal(ingle_remedy_text(remedy, INGLE_REMEDY_SENTENCE, NULL, text, sizeof text,
                                       NULL), INGLE_OK);
    assert_string_equal(text, due);
}

/* M-13: 1080 in2 of opening need 108 in2: 12x12 (102) fails, 13x13 (127) is the next that meets. */
static void a_flue_too_small_has_three_remedies(void **state)
{
    (void)state;
    char text[80];
    ingle_amount to;
    survey_at_the_limits(survey);
    record_entries(survey, (const struct entry[]){{"opening.width", "36 in", NULL},
                                                  {"opening.height", "30 in", NULL},
                                                  {"flue.liner", "12x12", NULL},
                                                  {NULL, NULL, NULL}});
    options = (ingle_check_options){.size = sizeof options};
    standards[0] = ingle_standard_find("irc-2021");
    check(first);
    assert_int_equal(ingle_finding_remedy_count(finding_of("flue-area")), 3);
    expect_sentence("flue-area", 0,
                    "Reduce the opening to no more than 1020 in2 (60 in2 less).");
    /* 1020 in2 over 36 in is 28 1/3 in; 28 5/16 in is the sixteenth below. */
    expect_sentence("flue-area", 1, "At this width, lower the opening to no more than 28 5/16 in "
                                    "(1 11/16 in less).");
    const ingle_remedy *liner = ingle_finding_remedy_at(finding_of("flue-area"), 2);
    assert_ptr_equal(ingle_remedy_quantity(liner), &quantities[QUANTITY_FLUE_LINER]);
    ingle_remedy_amount(liner, &to);
    assert_int_equal(to.dimension, INGLE_CHOICE);
    assert_true(to.value == CHOICE_FLUE_LINER_13X13);
    assert_int_equal(ingle_remedy_text(liner, INGLE_REMEDY_SUBJECT, NULL, text, sizeof text, NULL),
                     INGLE_OK);
    assert_string_equal(text, "/survey/flue/liner");
    assert_null(ingle_finding_remedy_at(finding_of("flue-area"), 3));
}

static void a_remedy_holds_in_the_worst_corner(void **state)
{
    (void)state;
    survey_at_the_limits(survey);
    record_entries(survey, (const struct entry[]){{"hearth.front", "20 in", "1/8 in"},
                                                  {NULL, NULL, NULL}});
    options = (ingle_check_options){.size = sizeof options};
    standards[0] = ingle_standard_find("irc-2021");
    check(first);
    expect_sentence("hearth-front", 0, "Extend the hearth in front of the opening to at least "
                                       "20 1/8 in (1/8 in more).");
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, make, unmake)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(remedies_on_the_sixteenth),
        TEST(remedies_on_the_millimetre),
        TEST(a_flue_too_small_has_three_remedies),
        TEST(a_remedy_holds_in_the_worst_corner),
    };
    return cmocka_run_group_tests_name("remedies", tests, NULL, NULL);
}
