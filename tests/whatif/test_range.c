/* SPDX-License-Identifier: MIT */
/*
 * Ranges and their values: what is filled in, what is moved onto a graduation and what is refused.
 * The numbers are reckoned here by hand: 1 in is 25.4 mm, by definition.
 */
#include "measure/amounts.h"
#include "whatif/stepping.h"

#include <ingle/ingle.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

static ingle_range range_of(const char *quantity, int64_t from, int64_t to, int64_t step)
{
    const ingle_quantity *found = ingle_quantity_find(quantity);
    assert_non_null(found);
    return (ingle_range){.size = sizeof(ingle_range), .quantity = found, .from = from, .to = to,
                         .step = step};
}

static void expect_settled(ingle_range range, int64_t from, int64_t to, size_t values)
{
    size_t count = SIZE_MAX;
    assert_int_equal(ingle_range_settle(&range, &count), INGLE_OK);
    assert_true(range.from == from);
    assert_true(range.to == to);
    assert_int_equal(count, values);
    assert_int_equal(ingle_range_settle(&range, NULL), INGLE_OK); /* once more changes nothing */
    assert_true(range.from == from && range.to == to);
}

/* What is refused is as it was, and so is the count. */
static void expect_refused(ingle_range range, ingle_status due)
{
    ingle_range before;
    size_t count = 77;
    memcpy(&before, &range, sizeof range);
    assert_int_equal(ingle_range_settle(&range, &count), due);
    assert_memory_equal(&before, &range, sizeof range);
    assert_int_equal(count, 77);
}

/* ---- bounds --------------------------------------------------------------------------------- */

static void bounds_move_onto_graduations(void **state)
{
    (void)state;
    expect_settled(range_of("hearth.front", INCHES(18), INCHES(20), INCHES(1)), INCHES(18),
                   INCHES(20), 3);
    expect_settled(range_of("hearth.front", INCHES(18) + 1, INCHES(20) - 1, INCHES(1)),
                   INCHES(19), INCHES(19), 1);
    expect_settled(range_of("hearth.front", INCHES(18) - 1, INCHES(20) + 1, INCHES(1)),
                   INCHES(18), INCHES(20), 3);
    /* 18 in is 457.2 mm, 20 in is 508 mm. */
    expect_settled(range_of("hearth.front", INCHES(18), INCHES(20), MILLIMETRES(5)),
                   MILLIMETRES(460), MILLIMETRES(505), 10);
    /* Multiples of the step, not of the step from the bound on: 7 in has none at 18 in. */
    expect_settled(range_of("hearth.front", INCHES(18), INCHES(40), INCHES(7)), INCHES(21),
                   INCHES(35), 3);
}

static void one_value_or_none(void **state)
{
    (void)state;
    expect_settled(range_of("hearth.front", INCHES(20), INCHES(20), INCHES(1)), INCHES(20),
                   INCHES(20), 1);
    expect_refused(range_of("hearth.front", INCHES(20) + 1, INCHES(20) + 1, INCHES(1)),
                   INGLE_ERROR_RANGE);
    expect_refused(range_of("hearth.front", INCHES(20) + 1, INCHES(21) - 1, INCHES(1)),
                   INGLE_ERROR_RANGE);
    expect_refused(range_of("hearth.front", INCHES(18), INCHES(20), INCHES(21)),
                   INGLE_ERROR_RANGE);
}

static void reversed_and_negative(void **state)
{
    (void)state;
    expect_refused(range_of("hearth.front", INCHES(20), INCHES(18), INCHES(1)),
                   INGLE_ERROR_RANGE);
    expect_refused(range_of("hearth.front", INCHES(18), INCHES(20), -1), INGLE_ERROR_RANGE);
    expect_refused(range_of("hearth.front", INCHES(18), INCHES(20), INT64_MIN),
                   INGLE_ERROR_RANGE);
    expect_refused(range_of("hearth.front", INT64_MIN, INCHES(20), INCHES(1)),
                   INGLE_ERROR_IMPLAUSIBLE);
}

static void implausible_bounds(void **state)
{
    (void)state;
    ingle_amount least, most;
    ingle_quantity_range(ingle_quantity_find("hearth.front"), &least, &most);
    int64_t step = INCHES(1);
    expect_refused(range_of("hearth.front", least.value - 1, INCHES(20), step),
                   INGLE_ERROR_IMPLAUSIBLE);
    expect_refused(range_of("hearth.front", INCHES(20), most.value + 1, step),
                   INGLE_ERROR_IMPLAUSIBLE);
    expect_refused(range_of("hearth.front", INCHES(20), INT64_MAX, step),
                   INGLE_ERROR_IMPLAUSIBLE);
}

static void no_more_than_so_many(void **state)
{
    (void)state;
    const int64_t first = MILLIMETRES(100), step = 1000; /* of a nanometre each */
    const int64_t most = first + (INGLE_RANGE_MOST - 1) * step;
    expect_settled(range_of("hearth.front", first, most, step), first, most, INGLE_RANGE_MOST);
    expect_settled(range_of("hearth.front", first, most + step - 1, step), first, most,
                   INGLE_RANGE_MOST);
    expect_refused(range_of("hearth.front", first, most + step, step), INGLE_ERROR_RANGE);
    expect_refused(range_of("hearth.front", first, INCHES(40), 1), INGLE_ERROR_RANGE);
}

/* A step beyond all values would wrap around where it is added to a bound. */
static void steps_that_would_overflow(void **state)
{
    (void)state;
    expect_refused(range_of("hearth.front", INCHES(18), INCHES(20), INT64_MAX),
                   INGLE_ERROR_RANGE);
    expect_refused(range_of("hearth.front", INCHES(18), INCHES(20), INT64_MAX - INCHES(1)),
                   INGLE_ERROR_RANGE);
    expect_settled(range_of("hearth.front", 0, 1, INT64_MAX), 0, 0, 1);
}

/* ---- what is left to the library ------------------------------------------------------------ */

static bool is_word(const ingle_quantity *quantity)
{
    ingle_dimension dimension = ingle_quantity_dimension(quantity);
    return dimension == INGLE_CHOICE || dimension == INGLE_FLAG;
}

/* The whole of every quantity can be gone through, by either kind of steps, from end to end. */
static void every_quantity_has_its_values(void **state)
{
    (void)state;
    for (size_t i = 0; i < 2 * ingle_quantity_count(); i++) {
        const ingle_quantity *quantity = ingle_quantity_at(i / 2);
        ingle_range range = {.size = sizeof range, .quantity = quantity, .metric = i % 2 == 0};
        ingle_amount least, most;
        size_t count = 0;
        ingle_quantity_range(quantity, &least, &most);
        ingle_status status = ingle_range_settle(&range, &count);
        if (status != INGLE_OK) {
            fail_msg("%s: %d", ingle_quantity_id(quantity), (int)status);
        }
        assert_true(count >= 1 && count <= INGLE_RANGE_MOST);
        assert_true(range.step > 0);
        assert_true(range.from % range.step == 0 && range.to % range.step == 0);
        assert_true((uint64_t)(range.to - range.from) / (uint64_t)range.step + 1 == count);
        if (!is_word(quantity)) {
            assert_true(least.value >= 0); /* so that a multiple below zero is never due */
            assert_true(range.from >= least.value && range.from - range.step < least.value);
            assert_true(range.to <= most.value && range.to > most.value - range.step);
        }
    }
}

static void steps_are_those_of_the_tape(void **state)
{
    (void)state;
    static const struct {
        const char *quantity;
        int64_t usual, metric;
    } steps[] = {{"hearth.front", INCHES_AND(0, 1, 16), MILLIMETRES(1)},
                 {"flue.net-area", SQUARE_INCHES(1), SQUARE_CENTIMETRES(1)},
                 {"flue.slope", DEGREES(1), DEGREES(1)},
                 {"roof.slope", SLOPE(1, 24), SLOPE(1, 24)},
                 {"gas.input", BTU_PER_HOUR(1000), KILOWATTS(1) / 2}};
    for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++) {
        ingle_range range = range_of(steps[i].quantity, 0, 0, 0);
        assert_int_equal(ingle_range_settle(&range, NULL), INGLE_OK);
        assert_true(range.step == steps[i].usual);
        range = range_of(steps[i].quantity, 0, 0, 0);
        range.metric = 1;
        assert_int_equal(ingle_range_settle(&range, NULL), INGLE_OK);
        assert_true(range.step == steps[i].metric);
    }
}

/* All of its words, whatever the bounds and the step. */
static void words_are_taken_whole(void **state)
{
    (void)state;
    size_t choices = ingle_quantity_choice_count(ingle_quantity_find("damper.state"));
    assert_true(choices > 2);
    expect_settled(range_of("damper.state", 0, 0, 0), 0, (int64_t)choices - 1, choices);
    expect_settled(range_of("damper.state", 1, 2, 7), 0, (int64_t)choices - 1, choices);
    expect_settled(range_of("damper.state", 9, -9, -1), 0, (int64_t)choices - 1, choices);
    expect_settled(range_of("flue.obstructed", 5, 5, 5), 0, 1, 2);
}

/* ---- what is no range ----------------------------------------------------------------------- */

static void ranges_that_are_none(void **state)
{
    (void)state;
    assert_int_equal(ingle_range_settle(NULL, NULL), INGLE_ERROR_ARGUMENT);
    ingle_range range = range_of("hearth.front", INCHES(18), INCHES(20), INCHES(1));
    range.quantity = NULL;
    expect_refused(range, INGLE_ERROR_UNKNOWN_QUANTITY);
    range = range_of("hearth.front", INCHES(18), INCHES(20), INCHES(1));
    range.size = sizeof range - 1;
    expect_refused(range, INGLE_ERROR_STRUCT_SIZE);
    range.size = 0;
    expect_refused(range, INGLE_ERROR_STRUCT_SIZE);
}

/* A program of a later release: its bytes count if they are not zero; its size stays its own. */
static void ranges_of_a_later_release(void **state)
{
    (void)state;
    struct {
        ingle_range range;
        int64_t more;
    } later = {range_of("hearth.front", INCHES(18) + 1, INCHES(20), INCHES(1)), 0};
    size_t count = 0;
    later.range.size = sizeof later;
    assert_int_equal(ingle_range_settle(&later.range, &count), INGLE_OK);
    assert_int_equal(count, 2);
    assert_int_equal(later.range.size, sizeof later);
    later.more = 1;
    assert_int_equal(ingle_range_settle(&later.range, &count), INGLE_ERROR_STRUCT_NEWER);
}

/* ---- stepping ------------------------------------------------------------------------------- */

static ingle_survey *survey;
static const ingle_standard *standards[1];
static char error_text[WHATIF_ERROR_TEXT_SIZE];

static int make_survey(void **state)
{
    (void)state;
    standards[0] = ingle_standard_find("irc-2021");
    assert_int_equal(ingle_survey_new(NULL, &survey), INGLE_OK);
    ingle_survey_record(survey, "appliance.kind", "masonry-fireplace", NULL);
    ingle_survey_record(survey, "opening.width", "36 in", NULL);
    ingle_survey_record(survey, "opening.height", "24 in", NULL);
    ingle_survey_record(survey, "hearth.front", "19 1/3 in", "1/8 in");
    return 0;
}

static int free_survey(void **state)
{
    (void)state;
    ingle_survey_free(survey);
    return 0;
}

static struct question question_of(const char *rule)
{
    return (struct question){.survey = survey, .standards = standards, .standard_count = 1,
                             .rule = rule};
}

static ingle_status start(struct stepping *stepping, const ingle_range *range, const char *rule)
{
    struct question question = question_of(rule);
    return stepping_start(stepping, NULL, &question, range, error_text);
}

static ingle_verdict verdict_now(const struct stepping *stepping, const char *rule)
{
    const ingle_finding *finding;
    for (size_t i = 0; (finding = ingle_report_finding_at(stepping->report, i)) != NULL; i++) {
        if (strcmp(ingle_rule_id(ingle_finding_rule(finding)), rule) == 0) {
            return ingle_finding_verdict(finding);
        }
    }
    return -1;
}

/* R1001.10: an opening of 6 ft2 or more asks for 20 in in front, here measured to 1/8 in. */
static void values_rise_by_the_step(void **state)
{
    (void)state;
    struct stepping stepping;
    ingle_range range = range_of("hearth.front", INCHES(19) + 5, INCHES(21), INCHES_AND(0, 1, 16));
    assert_int_equal(start(&stepping, &range, NULL), INGLE_OK);
    assert_int_equal(stepping.count, 32);
    for (size_t i = 0; i < stepping.count; i++) {
        ingle_amount value = stepping_value(&stepping, i);
        int64_t due = INCHES_AND(19, 1, 16) + (int64_t)i * INCHES_AND(0, 1, 16);
        assert_true(value.value == due);
        assert_int_equal(value.dimension, INGLE_LENGTH);
        assert_int_equal(stepping_judge(&stepping, value.value), INGLE_OK);
        assert_false(stepping.unjudged);
        assert_int_equal(verdict_now(&stepping, "hearth-front"),
                         due < INCHES_AND(19, 7, 8)    ? INGLE_FAILS
                         : due < INCHES_AND(20, 1, 8)  ? INGLE_TOO_CLOSE
                                                       : INGLE_MEETS);
    }
    stepping_end(&stepping);
    stepping_end(&stepping); /* may be ended whatever came before */
    /* What was asked about is as it was: 19 1/3 in to the nearest nanometre, 491.066667 mm. */
    ingle_amount now;
    int64_t tolerance;
    assert_true(ingle_survey_get(survey, range.quantity, 0, &now, &tolerance));
    assert_true(now.value == 491066667);
    assert_true(tolerance == INCHES_AND(0, 1, 8));
}

static void steps_that_are_refused(void **state)
{
    (void)state;
    struct stepping stepping;
    ingle_range range = range_of("hearth.front", INCHES(20), INCHES(18), INCHES(1));
    assert_int_equal(start(&stepping, &range, NULL), INGLE_ERROR_RANGE);
    assert_non_null(strstr(error_text, "hearth.front"));
    stepping_end(&stepping);
    assert_int_equal(start(&stepping, NULL, NULL), INGLE_ERROR_ARGUMENT);
    stepping_end(&stepping);
    range = range_of("hearth.front", INCHES(18), INCHES(20), INCHES(1));
    range.item = 1;
    assert_int_equal(start(&stepping, &range, NULL), INGLE_ERROR_UNKNOWN_QUANTITY);
    stepping_end(&stepping);
    range = range_of("trim.distance", INCHES(1), INCHES(20), INCHES(1)); /* there is no trim */
    assert_int_equal(start(&stepping, &range, NULL), INGLE_ERROR_UNKNOWN_QUANTITY);
    stepping_end(&stepping);
    range = range_of("hearth.front", INCHES(18), INCHES(20), INCHES(1));
    assert_int_equal(start(&stepping, &range, "hearth-frnt"), INGLE_ERROR_UNKNOWN_RULE);
    assert_non_null(strstr(error_text, "Did you mean hearth-front?"));
    stepping_end(&stepping);
    assert_int_equal(start(&stepping, &range, "hearth-front"), INGLE_OK);
    assert_string_equal(error_text, "");
    stepping_end(&stepping);
}

/* A shape that the liner contradicts: that value does not do, and the next is judged. */
static void a_value_that_cannot_be_is_passed_over(void **state)
{
    (void)state;
    struct stepping stepping;
    ingle_range range = range_of("flue.shape", 0, 0, 0);
    ingle_survey_record(survey, "flue.liner", "13x13", NULL);
    ingle_survey_record(survey, "flue.shape", "round", NULL);
    assert_int_equal(start(&stepping, &range, NULL), INGLE_OK);
    assert_true(stepping.unjudged); /* as it is recorded, it cannot be either */
    for (size_t i = 0; i < stepping.count; i++) {
        bool square = strcmp(ingle_quantity_choice_at(range.quantity, i), "square") == 0;
        assert_int_equal(stepping_judge(&stepping, stepping_value(&stepping, i).value), INGLE_OK);
        assert_int_equal(stepping.unjudged, !square);
        assert_int_equal(ingle_report_finding_count(stepping.report) > 0, square);
    }
    stepping_end(&stepping);
}

/* Off a graduation, the nearest that do are the graduations about it. */
static void the_nearest_are_graduations(void **state)
{
    (void)state;
    ingle_solution *solution;
    ingle_amount nearest;
    ingle_range range = range_of("hearth.front", 0, 0, 0);
    assert_int_equal(ingle_solution_new(NULL, &solution), INGLE_OK);
    ingle_survey_record(survey, "hearth.front", "25 1/3 in", NULL);
    assert_int_equal(ingle_solve(survey, standards, 1, NULL, &range, NULL, solution), INGLE_OK);
    assert_true(ingle_solution_does_now(solution));
    assert_true(ingle_solution_nearest(solution, -1, &nearest));
    assert_true(nearest.value == INCHES_AND(25, 5, 16)); /* 25 1/3 lies between 5/16 and 6/16 */
    assert_true(ingle_solution_nearest(solution, 1, &nearest));
    assert_true(nearest.value == INCHES_AND(25, 6, 16));
    ingle_survey_record(survey, "hearth.front", "20 in", NULL);
    assert_int_equal(ingle_solve(survey, standards, 1, NULL, &range, NULL, solution), INGLE_OK);
    assert_true(ingle_solution_nearest(solution, 1, &nearest));
    assert_true(nearest.value == INCHES_AND(20, 1, 16));
    assert_false(ingle_solution_nearest(solution, -1, &nearest)); /* 20 in is the least that does */
    assert_false(ingle_solution_nearest(solution, 0, &nearest));
    ingle_solution_free(solution);
}

#define ON_SURVEY(name) cmocka_unit_test_setup_teardown(name, make_survey, free_survey)

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(bounds_move_onto_graduations),
        cmocka_unit_test(one_value_or_none),
        cmocka_unit_test(reversed_and_negative),
        cmocka_unit_test(implausible_bounds),
        cmocka_unit_test(no_more_than_so_many),
        cmocka_unit_test(steps_that_would_overflow),
        cmocka_unit_test(every_quantity_has_its_values),
        cmocka_unit_test(steps_are_those_of_the_tape),
        cmocka_unit_test(words_are_taken_whole),
        cmocka_unit_test(ranges_that_are_none),
        cmocka_unit_test(ranges_of_a_later_release),
        ON_SURVEY(values_rise_by_the_step),
        ON_SURVEY(steps_that_are_refused),
        ON_SURVEY(a_value_that_cannot_be_is_passed_over),
        ON_SURVEY(the_nearest_are_graduations),
    };
    return cmocka_run_group_tests_name("range", tests, NULL, NULL);
}
