/* SPDX-License-Identifier: MIT */
/*
 * The bounds that tolerances give, over many random small cases: no point inside the box of
 * tolerances lies outside them, and some corner or breakpoint reaches each. The margins expected
 * are computed here once more, from the rules' own words, in whole base units.
 */
#include "check/evaluation.h"
#include "measure/amounts.h"
#include "standards/rule.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

/* ---- chance that comes out alike every time ------------------------------------------------- */

static uint64_t seed;

static int64_t any_from(int64_t least, int64_t most)
{
    seed ^= seed << 13;
    seed ^= seed >> 7;
    seed ^= seed << 17;
    return least + (int64_t)(seed % (uint64_t)(most - least + 1));
}

#define GRADUATION INCHES_AND(0, 1, 64)

/* Near a place: within some graduations or within some base units. */
static int64_t near(int64_t place)
{
    return place + (any_from(0, 1) ? any_from(-16, 16) * GRADUATION : any_from(-3, 3));
}

static int64_t any_tolerance(void)
{
    switch (any_from(0, 3)) {
    case 0:
        return 0;
    case 1:
        return any_from(1, 5);
    default:
        return any_from(1, 16) * GRADUATION;
    }
}

/* ---- a measure and its box ------------------------------------------------------------------ */

enum { MEASURES = 4, CANDIDATES = 40 };

struct measure {
    enum quantity_id quantity;
    int64_t value;
    int64_t tolerance;
};

static struct measure measures[MEASURES];
static size_t measure_count;
static ingle_survey *exact;   /* a point inside the box, without tolerances */
static ingle_survey *written; /* what was measured, with tolerances */

static int make(void **state)
{
    (void)state;
    seed = UINT64_C(0x9E3779B97F4A7C15);
    return ingle_survey_new(NULL, &exact) == INGLE_OK &&
                   ingle_survey_new(NULL, &written) == INGLE_OK
               ? 0
               : -1;
}

static int unmake(void **state)
{
    (void)state;
    ingle_survey_free(exact);
    ingle_survey_free(written);
    return 0;
}

static void start_case(bool trim)
{
    measure_count = 0;
    ingle_survey_clear(exact);
    ingle_survey_clear(written);
    if (trim) {
        ingle_survey_add_item(exact, "trim", NULL, NULL);
        ingle_survey_add_item(written, "trim", NULL, NULL);
    }
}

static void measure(enum quantity_id quantity, int64_t value, int64_t tolerance)
{
    measures[measure_count++] = (struct measure){quantity, value, tolerance};
    assert_int_equal(ingle_survey_set(written, &quantities[quantity], 0, value, tolerance),
                     INGLE_OK);
}

static int64_t low(size_t measure)
{
    int64_t least = measures[measure].value - measures[measure].tolerance;
    return least < 0 ? 0 : least; /* no length is less than nothing */
}

static int64_t high(size_t measure)
{
    return measures[measure].value + measures[measure].tolerance;
}

static struct calculation calculation_of(const ingle_survey *survey, const char *standard,
                                         const char *rule, enum quantity_id judged,
                                         const int64_t *numbers)
{
    const ingle_standard *found = ingle_standard_find(standard);
    const ingle_rule *row;
    for (size_t i = 0; (row = ingle_standard_rule_at(found, i)) != NULL; i++) {
        if (strcmp(ingle_rule_id(row), rule) == 0) {
            break;
        }
    }
    assert_non_null(row);
    struct calculation calculation = {
        .survey = survey,
        .liners = found->liners,
        .liner_count = found->liner_count,
        .numbers = numbers == NULL ? row->numbers : numbers,
        .formula = row->formula,
        .judged = judged,
        .relation = (enum relation)row->relation,
        .table = row->table,
        .masked = QUANTITY_NONE,
        .at_fault = QUANTITY_NONE,
    };
    for (size_t i = 0; i < INPUTS; i++) {
        calculation.inputs[i] = row->inputs[i] == 0 ? QUANTITY_NONE : row->inputs[i];
    }
    return calculation;
}

/* ---- the margin as the library has it at one exact point ------------------------------------ */

static int64_t margin_at(struct calculation *calculation, const int64_t *point)
{
    struct evaluation evaluation;
    int64_t margin = MARGIN_UNLIMITED;
    for (size_t i = 0; i < measure_count; i++) {
        const struct ingle_quantity *quantity = &quantities[measures[i].quantity];
        assert_int_equal(ingle_survey_set(exact, quantity, 0, point[i], 0), INGLE_OK);
    }
    evaluate(calculation, &evaluation);
    if (evaluation.required_outcome != OUTCOME_UNLIMITED) {
        assert_int_equal(evaluation.required_outcome, OUTCOME_DONE);
        assert_int_equal(evaluation.measured_outcome, OUTCOME_DONE);
        assert_true(evaluation_margin(calculation, &evaluation, &margin));
    }
    return margin;
}

/* ---- comparing ------------------------------------------------------------------------------ */

/* The margin of a rule at a point, computed here. */
typedef int64_t (*margin_rule)(const int64_t *point);

/* Values along a measure at which the margin may be extreme: the ends and those named. */
struct candidates {
    int64_t values[CANDIDATES];
    size_t count;
};

static struct candidates candidates[MEASURES];

static void name_candidate(size_t measure, int64_t value)
{
    struct candidates *named = &candidates[measure];
    if (value >= low(measure) && value <= high(measure)) {
        assert_true(named->count < CANDIDATES);
        named->values[named->count++] = value;
    }
}

static void name_ends(void)
{
    for (size_t i = 0; i < measure_count; i++) {
        candidates[i].count = 0;
        name_candidate(i, low(i));
        name_candidate(i, high(i));
    }
}

static void expect_extremes(margin_rule rule, const struct bounds *bounds)
{
    int64_t worst = INT64_MAX, best = INT64_MIN;
    size_t places[MEASURES] = {0};
    for (bool more = true; more;) {
        int64_t point[MEASURES];
        for (size_t i = 0; i < measure_count; i++) {
            point[i] = candidates[i].values[places[i]];
        }
        int64_t margin = rule(point);
        worst = margin < worst ? margin : worst;
        best = margin > best ? margin : best;
        more = false;
        for (size_t i = 0; i < measure_count && !more; i++) {
            places[i]++;
            more = places[i] < candidates[i].count;
            places[i] = more ? places[i] : 0;
        }
    }
    if (worst != bounds->worst || best != bounds->best) {
        for (size_t i = 0; i < measure_count; i++) {
            print_error("%s %lld ± %lld\n", quantities[measures[i].quantity].id,
                        (long long)measures[i].value, (long long)measures[i].tolerance);
        }
        print_error("due %lld to %lld, bounds %lld to %lld\n", (long long)worst, (long long)best,
                    (long long)bounds->worst, (long long)bounds->best);
    }
    assert_true(worst == bounds->worst);
    assert_true(best == bounds->best);
}

static void expect_samples_inside(struct calculation *calculation, margin_rule rule,
                                  const struct bounds *bounds)
{
    for (int sample = 0; sample < 6; sample++) {
        int64_t point[MEASURES];
        for (size_t i = 0; i < measure_count; i++) {
            point[i] = sample == 0 ? measures[i].value : any_from(low(i), high(i));
        }
        int64_t margin = margin_at(calculation, point);
        assert_true(margin == rule(point));
        assert_true(margin >= bounds->worst && margin <= bounds->best);
    }
}

static void expect_case(const char *standard, const char *rule_id, enum quantity_id judged,
                        const int64_t *numbers, margin_rule rule)
{
    struct calculation measured = calculation_of(written, standard, rule_id, judged, numbers);
    struct calculation at_point = calculation_of(exact, standard, rule_id, judged, numbers);
    struct bounds bounds = evaluation_bounds(&measured);
    bool spread = false;
    for (size_t i = 0; i < measure_count; i++) {
        spread = spread || measures[i].tolerance > 0;
    }
    assert_int_equal(bounds.outcome, OUTCOME_DONE);
    assert_int_equal(bounds.spread, spread);
    assert_true(bounds.worst <= bounds.best);
    assert_true(spread || bounds.worst == bounds.best);
    expect_samples_inside(&at_point, rule, &bounds);
    expect_extremes(rule, &bounds);
}

static int64_t quotient_up(int64_t a, int64_t b)
{
    return a / b + (a % b != 0);
}

/* ---- the flue ------------------------------------------------------------------------------- */

/* One over these: the share for square, rectangular and long flues; long from aspect p : q on. */
static int64_t square_part, rectangular_part, long_part, aspect_p, aspect_q;

/* IRC R1003.15.1 with the numbers above: opening width and height, flue width and depth. */
static int64_t flue_margin(const int64_t *point)
{
    int64_t longer = point[2] > point[3] ? point[2] : point[3];
    int64_t shorter = point[2] > point[3] ? point[3] : point[2];
    int64_t part = longer == shorter                          ? square_part
                   : longer * aspect_q >= shorter * aspect_p ? long_part
                                                              : rectangular_part;
    return point[2] * point[3] - quotient_up(point[0] * point[1], part);
}

static void name_flue_candidates(size_t side, size_t other)
{
    const int64_t ends[] = {low(other), high(other)};
    for (size_t i = 0; i < 2; i++) {
        int64_t longer = quotient_up(ends[i] * aspect_p, aspect_q);
        int64_t shorter = ends[i] * aspect_q / aspect_p;
        for (int64_t off = -1; off <= 1; off++) {
            name_candidate(side, longer + off);
            name_candidate(side, shorter + off);
            name_candidate(side, ends[i] + off);
        }
    }
}

static void try_flue(void)
{
    const int64_t numbers[] = {INGLE_RATIO_ONE * aspect_p / aspect_q, RATIO(1, 12),
                               INGLE_RATIO_ONE / square_part, INGLE_RATIO_ONE / rectangular_part,
                               INGLE_RATIO_ONE / long_part};
    int64_t side = any_from(3 * 64, 10 * 64) * GRADUATION;
    int64_t other = any_from(0, 3) == 0   ? near(side)
                    : any_from(0, 2) == 0 ? any_from(3 * 64, 20 * 64) * GRADUATION
                                          : near(quotient_up(side * aspect_p, aspect_q));
    bool turned = any_from(0, 1) != 0;
    start_case(false);
    measure(QUANTITY_OPENING_WIDTH, any_from(20, 48) * INCHES(1), any_tolerance());
    measure(QUANTITY_OPENING_HEIGHT, any_from(16, 40) * INCHES(1), any_tolerance());
    measure(QUANTITY_FLUE_WIDTH, turned ? other : side, any_tolerance());
    measure(QUANTITY_FLUE_DEPTH, turned ? side : other, any_tolerance());
    name_ends();
    name_flue_candidates(2, 3);
    name_flue_candidates(3, 2);
    expect_case("irc-2021", "flue-area", QUANTITY_FLUE_NET_AREA, numbers, flue_margin);
}

static void flues_as_printed(void **state)
{
    (void)state;
    square_part = rectangular_part = 10;
    long_part = 8;
    aspect_p = 2;
    aspect_q = 1;
    for (int i = 0; i < 40000; i++) {
        try_flue();
    }
}

/* Amendments can make every share differ and move the aspect ratio. */
static void flues_as_amended(void **state)
{
    (void)state;
    static const int64_t parts[] = {6, 8, 9, 10, 12};
    for (int i = 0; i < 30000; i++) {
        square_part = parts[any_from(0, 4)];
        rectangular_part = parts[any_from(0, 4)];
        long_part = parts[any_from(0, 4)];
        aspect_p = any_from(3, 6);
        aspect_q = 2;
        try_flue();
    }
}

/* ---- trim ----------------------------------------------------------------------------------- */

/* IRC R1001.11 exception 4: distance, projection. */
static int64_t trim_margin(const int64_t *point)
{
    if (point[0] > INCHES(12)) {
        return MARGIN_UNLIMITED;
    }
    return (point[0] < INCHES(6) ? 0 : point[0] / 8) - point[1];
}

static void trim_projects_by_its_distance(void **state)
{
    (void)state;
    for (int i = 0; i < 30000; i++) {
        static const int64_t places[] = {INCHES(6), INCHES(12), INCHES(8), INCHES(1)};
        start_case(true);
        measure(QUANTITY_TRIM_DISTANCE, near(places[any_from(0, 3)]), any_tolerance());
        measure(QUANTITY_TRIM_PROJECTION, any_from(0, 128) * GRADUATION, any_tolerance());
        name_ends();
        name_candidate(0, INCHES(6));
        name_candidate(0, INCHES(6) - 1);
        name_candidate(0, INCHES(12));
        name_candidate(0, INCHES(12) + 1);
        expect_case("irc-2021", "trim-projection", QUANTITY_TRIM_PROJECTION, NULL, trim_margin);
    }
}

/* ---- hearths -------------------------------------------------------------------------------- */

/* IRC R1001.10: width and height of the opening, hearth in front. */
static int64_t hearth_margin(const int64_t *point)
{
    bool large = point[0] * point[1] >= 144 * 6 * INCHES(1) * INCHES(1);
    return point[2] - (large ? INCHES(20) : INCHES(16));
}

static void hearths_step_at_six_square_feet(void **state)
{
    (void)state;
    for (int i = 0; i < 20000; i++) {
        start_case(false);
        measure(QUANTITY_OPENING_WIDTH, near(INCHES(36)), any_tolerance());
        measure(QUANTITY_OPENING_HEIGHT, near(INCHES(24)), any_tolerance());
        measure(QUANTITY_HEARTH_FRONT, near(any_from(0, 1) ? INCHES(16) : INCHES(20)),
                any_tolerance());
        name_ends();
        expect_case("irc-2021", "hearth-front", QUANTITY_HEARTH_FRONT, NULL, hearth_margin);
    }
}

/* Common practice, no label: the hearth's depth less the insert's projection is 16 in or more. */
static int64_t insert_margin(const int64_t *point)
{
    return point[0] - point[1] - INCHES(16);
}

static void inserts_take_from_the_hearth(void **state)
{
    (void)state;
    for (int i = 0; i < 10000; i++) {
        start_case(false);
        measure(QUANTITY_HEARTH_FRONT, near(INCHES(20)), any_tolerance());
        measure(QUANTITY_INSERT_PROJECTION, near(INCHES(4)), any_tolerance());
        measure(QUANTITY_LISTING_LABEL, CHOICE_LISTING_LABEL_NO_LABEL, 0);
        name_ends();
        expect_case("common-practice-us", "insert-hearth-front", QUANTITY_INSERT_HEARTH_FRONT,
                    NULL, insert_margin);
    }
}

/* IRC R1001.6: width and depth of the throat, width and depth of the flue. */
static int64_t passage_margin(const int64_t *point)
{
    return point[0] * point[1] - point[2] * point[3];
}

static void passages_are_held_against_the_flue(void **state)
{
    (void)state;
    for (int i = 0; i < 10000; i++) {
        start_case(false);
        measure(QUANTITY_THROAT_WIDTH, near(INCHES(32)), any_tolerance());
        measure(QUANTITY_THROAT_DEPTH, near(INCHES(4)), any_tolerance());
        measure(QUANTITY_FLUE_WIDTH, near(INCHES(16)), any_tolerance());
        measure(QUANTITY_FLUE_DEPTH, near(INCHES(8)), any_tolerance());
        name_ends();
        expect_case("irc-2021", "passage-area", QUANTITY_THROAT_AREA, NULL, passage_margin);
    }
}

/* IRC R1001.6 exception: width of the opening, depth of the firebox. */
static int64_t rumford_margin(const int64_t *point)
{
    int64_t third = quotient_up(point[0], 3);
    return point[1] - (third > INCHES(12) ? third : INCHES(12));
}

static void rumfords_are_a_third_as_deep_as_wide(void **state)
{
    (void)state;
    for (int i = 0; i < 10000; i++) {
        start_case(false);
        measure(QUANTITY_OPENING_WIDTH, near(any_from(34, 48) * INCHES(1)), any_tolerance());
        measure(QUANTITY_FIREBOX_DEPTH, near(INCHES(13)), any_tolerance());
        name_ends();
        expect_case("irc-2021", "rumford-depth", QUANTITY_FIREBOX_DEPTH, NULL, rumford_margin);
    }
}

/* ---- the edges of the box itself ------------------------------------------------------------ */

static void a_low_corner_is_clipped_at_nothing(void **state)
{
    (void)state;
    start_case(true);
    measure(QUANTITY_TRIM_DISTANCE, INCHES(8), 0);
    measure(QUANTITY_TRIM_PROJECTION, INCHES_AND(0, 1, 16), INCHES(2));
    struct calculation calculation = calculation_of(written, "irc-2021", "trim-projection",
                                                    QUANTITY_TRIM_PROJECTION, NULL);
    struct bounds bounds = evaluation_bounds(&calculation);
    assert_true(bounds.best == INCHES(1)); /* 8 in over 8, and no projection at all */
    assert_true(bounds.worst == INCHES(1) - INCHES_AND(2, 1, 16));
}

/* A tolerance as wide as a flue's side makes the answer uncertain, not the whole check unusable. */
static void a_flue_may_be_less_certain_than_wide(void **state)
{
    (void)state;
    start_case(false);
    measure(QUANTITY_OPENING_WIDTH, INCHES(30), 0);
    measure(QUANTITY_OPENING_HEIGHT, INCHES(24), 0);
    measure(QUANTITY_FLUE_WIDTH, INCHES(8), INCHES(8));
    measure(QUANTITY_FLUE_DEPTH, INCHES(12), 0);
    struct calculation calculation =
        calculation_of(written, "irc-2021", "flue-area", QUANTITY_FLUE_NET_AREA, NULL);
    struct bounds bounds = evaluation_bounds(&calculation);
    assert_int_equal(bounds.outcome, OUTCOME_DONE);
    assert_true(bounds.worst < 0 && bounds.best > 0);
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, make, unmake)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(flues_as_printed),
        TEST(flues_as_amended),
        TEST(trim_projects_by_its_distance),
        TEST(hearths_step_at_six_square_feet),
        TEST(inserts_take_from_the_hearth),
        TEST(passages_are_held_against_the_flue),
        TEST(rumfords_are_a_third_as_deep_as_wide),
        TEST(a_low_corner_is_clipped_at_nothing),
        TEST(a_flue_may_be_less_certain_than_wide),
    };
    return cmocka_run_group_tests_name("tolerances", tests, NULL, NULL);
}
