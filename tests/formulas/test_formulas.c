/* SPDX-License-Identifier: MIT */
/*
 * The formulas by themselves, through a calculation: at, below and above their numbers, with the
 * steps they record. The numbers here are the tests' own, chosen to come out even or just not to;
 * what the publications print is tested with the standards.
 */
#include "base/memory.h"
#include "formulas/derived.h"
#include "formulas/flue.h"
#include "formulas/formula.h"
#include "formulas/table.h"
#include "measure/amounts.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

/* ---- a calculation to try ------------------------------------------------------------------- */

/* A table as a standard has one: round, square, rectangular, long, and one long only inside. */
static const struct liner liners[] = {
    {"table A", CHOICE_FLUE_LINER_ROUND_8, INCHES(8), 0, SQUARE_INCHES(50), false},
    {"table B", CHOICE_FLUE_LINER_12X12, INCHES(12), INCHES(12), SQUARE_INCHES(102), false},
    {"table B", CHOICE_FLUE_LINER_8X12, INCHES(8), INCHES(12), SQUARE_INCHES(67), false},
    {"table B", CHOICE_FLUE_LINER_4_5X13, INCHES_AND(4, 1, 2), INCHES(13), SQUARE_INCHES(34),
     false},
    {"table B", CHOICE_FLUE_LINER_4_5X8_5, INCHES_AND(4, 1, 2), INCHES_AND(8, 1, 2),
     SQUARE_INCHES(23), true},
};

static ingle_survey *survey;
static struct step_list steps;
static struct calculation calculation;

static int make(void **state)
{
    (void)state;
    memset(&steps, 0, sizeof steps);
    allocator_take(&steps.allocator, NULL);
    return ingle_survey_new(NULL, &survey) == INGLE_OK ? 0 : -1;
}

static int unmake(void **state)
{
    (void)state;
    allocator_free(&steps.allocator, steps.steps);
    ingle_survey_free(survey);
    return 0;
}

static void start(const struct formula *formula, const int64_t *numbers, enum quantity_id judged,
                  enum quantity_id input)
{
    calculation = (struct calculation){
        .survey = survey,
        .liners = liners,
        .liner_count = sizeof liners / sizeof liners[0],
        .numbers = numbers,
        .formula = formula,
        .judged = judged,
        .inputs = {input, QUANTITY_NONE, QUANTITY_NONE},
        .relation = RELATION_AT_LEAST,
        .steps = &steps,
        .masked = QUANTITY_NONE,
        .at_fault = QUANTITY_NONE,
        .rounding = ROUND_UP,
    };
    calculation_restart(&calculation);
    steps.count = 0;
}

static void record(enum quantity_id id, int64_t value)
{
    assert_int_equal(ingle_survey_set(survey, &quantities[id], 0, value, 0), INGLE_OK);
}

static void forget(enum quantity_id id)
{
    assert_int_equal(ingle_survey_unset(survey, &quantities[id], 0), INGLE_OK);
}

static enum outcome run(int64_t *required)
{
    calculation_restart(&calculation);
    steps.count = 0;
    return calculation.formula->required(&calculation, required);
}

static void expect_required(int64_t due)
{
    int64_t required = -42;
    assert_int_equal(run(&required), OUTCOME_DONE);
    assert_true(required == due);
    /* The last step comes to what is required. */
    assert_true(steps.count > 0);
    assert_true(steps.steps[steps.count - 1].has_result);
    assert_true(steps.steps[steps.count - 1].result.value == due);
    /* Without a list the same comes out and nothing is recorded. */
    size_t recorded = steps.count;
    calculation.steps = NULL;
    calculation_restart(&calculation);
    assert_int_equal(calculation.formula->required(&calculation, &required), OUTCOME_DONE);
    calculation.steps = &steps;
    assert_true(required == due);
    assert_int_equal(steps.count, recorded);
}

static void expect_outcome(enum outcome due)
{
    int64_t required = -42;
    assert_int_equal(run(&required), due);
}

static void expect_missing(enum quantity_id first, enum quantity_id second)
{
    expect_outcome(OUTCOME_MISSING);
    assert_int_equal(calculation.missing_count, second == QUANTITY_NONE ? 1 : 2);
    assert_int_equal(calculation.missing[0], first);
    assert_true(second == QUANTITY_NONE || calculation.missing[1] == second);
}

static void expect_step(size_t index, const char *label, const char *expression)
{
    assert_true(index < steps.count);
    assert_string_equal(steps.steps[index].label, label);
    assert_string_equal(steps.steps[index].expression, expression);
}

static void expect_operand(size_t step, size_t index, const char *name, int64_t value)
{
    assert_string_equal(steps.steps[step].operands[index].name, name);
    assert_true(steps.steps[step].operands[index].amount.value == value);
}

/* ---- general -------------------------------------------------------------------------------- */

static void fixed_is_the_number(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(7)};
    start(&formula_fixed, numbers, QUANTITY_FIREBOX_DEPTH, QUANTITY_NONE);
    expect_required(INCHES(7));
    assert_int_equal(steps.count, 1);
    expect_step(0, "required", "{0}");
    expect_operand(0, 0, "limit", INCHES(7));
    assert_int_equal(steps.steps[0].result.dimension, INGLE_LENGTH);
}

static void a_share_rounds_to_the_strict_side(void **state)
{
    (void)state;
    const int64_t numbers[] = {RATIO(1, 12)};
    start(&formula_share, numbers, QUANTITY_SMOKE_CHAMBER_HEIGHT, QUANTITY_OPENING_WIDTH);
    record(QUANTITY_OPENING_WIDTH, INCHES(36));
    expect_required(INCHES(3));
    expect_step(0, "required", "{0} × {1}");
    expect_operand(0, 0, "opening.width", INCHES(36));
    expect_operand(0, 1, "ratio", RATIO(1, 12));
    /* 36 in and 1 nm over 12 is 3 in and a twelfth of a nanometre. */
    record(QUANTITY_OPENING_WIDTH, INCHES(36) + 1);
    expect_required(INCHES(3) + 1);
    calculation.rounding = ROUND_DOWN;
    expect_required(INCHES(3));
    record(QUANTITY_OPENING_WIDTH, INCHES(36) - 1);
    expect_required(INCHES(3) - 1);
    calculation.rounding = ROUND_UP;
    expect_required(INCHES(3));
    forget(QUANTITY_OPENING_WIDTH);
    expect_missing(QUANTITY_OPENING_WIDTH, QUANTITY_NONE);
}

static void a_share_too_large_is_an_overflow(void **state)
{
    (void)state;
    const int64_t numbers[] = {INT64_MAX};
    start(&formula_share, numbers, QUANTITY_THROAT_AREA, QUANTITY_OPENING_AREA);
    record(QUANTITY_OPENING_AREA, SQUARE_INCHES(14000));
    expect_outcome(OUTCOME_OVERFLOW);
}

static void a_share_or_least_is_the_greater(void **state)
{
    (void)state;
    const int64_t numbers[] = {RATIO(1, 3), INCHES(12)};
    start(&formula_share_or_least, numbers, QUANTITY_FIREBOX_DEPTH, QUANTITY_OPENING_WIDTH);
    record(QUANTITY_OPENING_WIDTH, INCHES(36) - 3);
    expect_required(INCHES(12));
    record(QUANTITY_OPENING_WIDTH, INCHES(36));
    expect_required(INCHES(12));
    record(QUANTITY_OPENING_WIDTH, INCHES(36) + 3);
    expect_required(INCHES(12) + 1);
    record(QUANTITY_OPENING_WIDTH, INCHES(42));
    expect_required(INCHES(14));
    assert_int_equal(steps.count, 2);
    expect_step(0, "share", "{0} × {1}");
    expect_step(1, "required", "the greater of {0} and {1}");
    expect_operand(1, 0, "share", INCHES(14));
    expect_operand(1, 1, "least", INCHES(12));
}

static void a_reduced_share_is_never_more_than_the_whole(void **state)
{
    (void)state;
    const int64_t numbers[] = {RATIO(1, 3), INCHES(12)};
    start(&formula_reduced_share, numbers, QUANTITY_FIREBOX_DEPTH, QUANTITY_OPENING_WIDTH);
    record(QUANTITY_OPENING_WIDTH, INCHES(8));
    expect_required(INCHES(8));
    expect_step(1, "required", "the greater of {0} and {1}");
    expect_step(2, "required", "no more than {0}");
    record(QUANTITY_OPENING_WIDTH, INCHES(12));
    expect_required(INCHES(12));
    record(QUANTITY_OPENING_WIDTH, INCHES(36));
    expect_required(INCHES(12));
    record(QUANTITY_OPENING_WIDTH, INCHES(48));
    expect_required(INCHES(16));
}

/* ---- hearth --------------------------------------------------------------------------------- */

static const int64_t by_area[] = {SQUARE_FEET(6), INCHES(16), INCHES(20)};

static void the_larger_hearth_begins_at_the_threshold(void **state)
{
    (void)state;
    start(&formula_by_opening_area, by_area, QUANTITY_HEARTH_FRONT, QUANTITY_OPENING_AREA);
    record(QUANTITY_OPENING_AREA, SQUARE_FEET(6) - 1);
    expect_required(INCHES(16));
    expect_step(0, "required", "{0} < {1}, so {2}");
    expect_operand(0, 2, "small", INCHES(16));
    record(QUANTITY_OPENING_AREA, SQUARE_FEET(6));
    expect_required(INCHES(20));
    expect_step(0, "required", "{0} ≥ {1}, so {2}");
    expect_operand(0, 0, "opening.area", SQUARE_FEET(6));
    expect_operand(0, 1, "threshold", SQUARE_FEET(6));
    expect_operand(0, 2, "large", INCHES(20));
    assert_int_equal(steps.steps[0].operands[0].amount.scale, INGLE_SCALE_LARGE);
    record(QUANTITY_OPENING_AREA, SQUARE_FEET(6) + 1);
    expect_required(INCHES(20));
}

static void the_opening_area_follows_from_its_sides(void **state)
{
    (void)state;
    start(&formula_by_opening_area, by_area, QUANTITY_HEARTH_FRONT, QUANTITY_OPENING_AREA);
    expect_missing(QUANTITY_OPENING_WIDTH, QUANTITY_OPENING_HEIGHT);
    record(QUANTITY_OPENING_WIDTH, INCHES(36));
    expect_missing(QUANTITY_OPENING_HEIGHT, QUANTITY_NONE);
    record(QUANTITY_OPENING_HEIGHT, INCHES(24));
    expect_required(INCHES(20)); /* 36 in x 24 in = 864 in2 = 6 ft2 */
    assert_int_equal(steps.count, 2);
    expect_step(0, "opening area", "{0} × {1}");
    expect_operand(0, 0, "opening.width", INCHES(36));
    expect_operand(0, 1, "opening.height", INCHES(24));
    assert_true(steps.steps[0].result.value == SQUARE_FEET(6));
    assert_int_equal(steps.steps[0].result.scale, INGLE_SCALE_LARGE);
    record(QUANTITY_OPENING_HEIGHT, INCHES(24) - 1);
    expect_required(INCHES(16));
    /* A recorded area comes before its sides. */
    record(QUANTITY_OPENING_AREA, SQUARE_FEET(7));
    expect_required(INCHES(20));
    assert_int_equal(steps.count, 1);
    forget(QUANTITY_OPENING_AREA);
    record(QUANTITY_OPENING_WIDTH, INCHES(240));
    record(QUANTITY_OPENING_HEIGHT, INCHES(144));
    expect_outcome(OUTCOME_OVERFLOW); /* 34 560 in2 are more than 63 bits of nm2 */
}

static void a_raise_that_is_not_recorded_is_not_used(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(8), INCHES(2), INCHES_AND(0, 3, 8)};
    start(&formula_by_firebox_raise, numbers, QUANTITY_HEARTH_EXTENSION_THICKNESS,
          QUANTITY_HEARTH_FIREBOX_RAISE);
    expect_required(INCHES(2));
    expect_step(0, "required", "{0}");
    assert_non_null(strstr(steps.steps[0].remark, "not recorded"));
    assert_int_equal(calculation.missing_count, 0);
    record(QUANTITY_HEARTH_FIREBOX_RAISE, INCHES(8) - 1);
    expect_required(INCHES(2));
    expect_step(0, "required", "{0} < {1}, so {2}");
    assert_null(steps.steps[0].remark);
    record(QUANTITY_HEARTH_FIREBOX_RAISE, INCHES(8));
    expect_required(INCHES_AND(0, 3, 8));
    expect_step(0, "required", "{0} ≥ {1}, so {2}");
    record(QUANTITY_HEARTH_FIREBOX_RAISE, INCHES(8) + 1);
    expect_required(INCHES_AND(0, 3, 8));
}

/* ---- smoke chamber and trim ----------------------------------------------------------------- */

static void walls_choose_the_slope(void **state)
{
    (void)state;
    const int64_t numbers[] = {DEGREES(45), DEGREES(30)};
    start(&formula_by_smoke_chamber_walls, numbers, QUANTITY_SMOKE_CHAMBER_SLOPE,
          QUANTITY_SMOKE_CHAMBER_WALLS);
    expect_missing(QUANTITY_SMOKE_CHAMBER_WALLS, QUANTITY_NONE);
    record(QUANTITY_SMOKE_CHAMBER_WALLS, CHOICE_SMOKE_CHAMBER_WALLS_SMOOTH);
    expect_required(DEGREES(45));
    expect_step(0, "required", "{0}, so {1}");
    expect_operand(0, 1, "smooth", DEGREES(45));
    assert_int_equal(steps.steps[0].operands[0].quantity, QUANTITY_SMOKE_CHAMBER_WALLS);
    record(QUANTITY_SMOKE_CHAMBER_WALLS, CHOICE_SMOKE_CHAMBER_WALLS_CORBELED);
    expect_required(DEGREES(30));
    expect_operand(0, 1, "corbeled", DEGREES(30));
}

static void projection_goes_by_distance(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(6), INCHES(12), RATIO(1, 8)};
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    start(&formula_projection_by_distance, numbers, QUANTITY_TRIM_PROJECTION,
          QUANTITY_TRIM_DISTANCE);
    calculation.relation = RELATION_AT_MOST;
    calculation.rounding = ROUND_DOWN;
    expect_missing(QUANTITY_TRIM_DISTANCE, QUANTITY_NONE);
    record(QUANTITY_TRIM_DISTANCE, INCHES(6) - 1);
    expect_required(0);
    expect_step(0, "allowed projection", "{0} < {1}, so none");
    record(QUANTITY_TRIM_DISTANCE, INCHES(6));
    expect_required(INCHES_AND(0, 3, 4));
    expect_step(0, "allowed projection", "{0} × {1}");
    record(QUANTITY_TRIM_DISTANCE, INCHES(6) + 7);
    expect_required(INCHES_AND(0, 3, 4));
    record(QUANTITY_TRIM_DISTANCE, INCHES(6) + 8);
    expect_required(INCHES_AND(0, 3, 4) + 1);
    record(QUANTITY_TRIM_DISTANCE, INCHES(12));
    expect_required(INCHES_AND(1, 1, 2));
    record(QUANTITY_TRIM_DISTANCE, INCHES(12) + 1);
    expect_outcome(OUTCOME_UNLIMITED);
    expect_step(0, "allowed projection", "{0} > {1}, so no limit in this rule");
    assert_false(steps.steps[0].has_result);
}

static void items_are_asked_of_their_own(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(6), INCHES(12), RATIO(1, 8)};
    const ingle_quantity *distance = &quantities[QUANTITY_TRIM_DISTANCE];
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    ingle_survey_set(survey, distance, 0, INCHES(8), 0);
    ingle_survey_set(survey, distance, 1, INCHES(10), 0);
    start(&formula_projection_by_distance, numbers, QUANTITY_TRIM_PROJECTION,
          QUANTITY_TRIM_DISTANCE);
    expect_required(INCHES(1));
    calculation.item = 1;
    expect_required(INCHES_AND(1, 1, 4));
}

/* ---- steps, states and listings ------------------------------------------------------------- */

static void within_asks_nothing_beyond(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(5), INCHES(30)};
    start(&formula_within, numbers, QUANTITY_HEARTH_FRONT, QUANTITY_OPENING_WIDTH);
    expect_missing(QUANTITY_OPENING_WIDTH, QUANTITY_NONE);
    record(QUANTITY_OPENING_WIDTH, INCHES(30) - 1);
    expect_required(INCHES(5));
    record(QUANTITY_OPENING_WIDTH, INCHES(30));
    expect_required(INCHES(5));
    expect_step(0, "required", "{0} ≤ {1}, so {2}");
    record(QUANTITY_OPENING_WIDTH, INCHES(30) + 1);
    expect_outcome(OUTCOME_UNLIMITED);
    expect_step(0, "required", "{0} > {1}, so nothing");
}

static void above_step_keeps_the_step_below(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(30), INCHES(5), INCHES(7)};
    start(&formula_above_step, numbers, QUANTITY_HEARTH_FRONT, QUANTITY_OPENING_WIDTH);
    record(QUANTITY_OPENING_WIDTH, INCHES(30) - 1);
    expect_required(INCHES(5));
    record(QUANTITY_OPENING_WIDTH, INCHES(30));
    expect_required(INCHES(5));
    expect_step(0, "required", "{0} ≤ {1}, so {2}");
    record(QUANTITY_OPENING_WIDTH, INCHES(30) + 1);
    expect_required(INCHES(7));
    expect_step(0, "required", "{0} > {1}, so {2}");
}

static void a_state_is_required_as_it_is(void **state)
{
    (void)state;
    const int64_t numbers[] = {CHOICE_SMOKE_CHAMBER_WALLS_SMOOTH};
    int64_t required = -1;
    start(&formula_observed, numbers, QUANTITY_SMOKE_CHAMBER_WALLS, QUANTITY_NONE);
    calculation.relation = RELATION_IS;
    assert_int_equal(run(&required), OUTCOME_DONE);
    assert_true(required == CHOICE_SMOKE_CHAMBER_WALLS_SMOOTH);
    assert_string_equal(steps.steps[0].expression, "{0}");
    assert_int_equal(steps.steps[0].operands[0].quantity, QUANTITY_SMOKE_CHAMBER_WALLS);
    calculation.relation = RELATION_IS_NOT;
    assert_int_equal(run(&required), OUTCOME_DONE);
    assert_string_equal(steps.steps[0].expression, "not {0}");
}

static void a_listing_decides_or_is_asked_for(void **state)
{
    (void)state;
    const int64_t numbers[] = {0};
    start(&formula_by_listing, numbers, QUANTITY_HEARTH_FRONT, QUANTITY_HEARTH_LEFT);
    expect_outcome(OUTCOME_LISTING);
    assert_int_equal(calculation.missing_count, 1);
    assert_int_equal(calculation.missing[0], QUANTITY_HEARTH_LEFT);
    record(QUANTITY_HEARTH_LEFT, INCHES(18));
    expect_required(INCHES(18));
    assert_non_null(strstr(steps.steps[0].remark, "listing"));
}

static void what_is_not_printed_is_not_made_up(void **state)
{
    (void)state;
    const int64_t numbers[] = {0};
    start(&formula_not_printed, numbers, QUANTITY_CONNECTOR_GAUGE, QUANTITY_NONE);
    expect_outcome(OUTCOME_OUTSIDE);
    assert_int_equal(calculation.missing_count, 0);
    assert_non_null(strstr(steps.steps[0].expression, "no value is printed"));
}

/* What is usual is named and not required, until the listing's own figure is recorded. */
static void what_is_usual_is_named_and_not_required(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(16)};
    ingle_survey_clear(survey);
    start(&formula_listing_with_usual, numbers, QUANTITY_FLOOR_DOOR_FRONT,
          QUANTITY_LISTING_HEARTH_FRONT);
    expect_outcome(OUTCOME_LISTING);
    assert_true(calculation.by_listing && calculation.has_usual);
    assert_true(calculation.usual == INCHES(16));
    assert_int_equal(calculation.missing[0], QUANTITY_LISTING_HEARTH_FRONT);
    record(QUANTITY_LISTING_HEARTH_FRONT, INCHES(18));
    expect_required(INCHES(18));
    assert_true(calculation.by_listing && !calculation.has_usual);
}

/* Only what has no label is judged by what is usual, whatever is said to be its listing's. */
static void without_a_label_what_is_usual_is_required(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(16)};
    ingle_survey_clear(survey);
    start(&formula_listing_or_usual, numbers, QUANTITY_INSERT_HEARTH_FRONT,
          QUANTITY_LISTING_HEARTH_FRONT);
    expect_outcome(OUTCOME_LISTING);
    assert_true(calculation.has_usual && calculation.usual == INCHES(16));
    record(QUANTITY_LISTING_LABEL, CHOICE_LISTING_LABEL_NO_LABEL);
    expect_required(INCHES(16));
    assert_false(calculation.has_usual);
    record(QUANTITY_LISTING_HEARTH_FRONT, INCHES(18));
    expect_required(INCHES(16));
    record(QUANTITY_LISTING_LABEL, CHOICE_LISTING_LABEL_LISTED);
    expect_required(INCHES(18));
}

/* A pad's depth: 24 in of stove, 16 in before it and 8 in behind. */
static void a_pad_goes_about_the_body(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(24), RATIO(1, 1)};
    ingle_survey_clear(survey);
    start(&formula_listing_about_body, numbers, QUANTITY_FLOOR_DEPTH, QUANTITY_STOVE_DEPTH);
    calculation.inputs[1] = QUANTITY_LISTING_HEARTH_FRONT;
    calculation.inputs[2] = QUANTITY_LISTING_HEARTH_BACK;
    expect_outcome(OUTCOME_LISTING);
    assert_false(calculation.has_usual);
    record(QUANTITY_STOVE_DEPTH, INCHES(24));
    record(QUANTITY_LISTING_HEARTH_FRONT, INCHES(16));
    expect_outcome(OUTCOME_LISTING);
    assert_true(calculation.has_usual && calculation.usual == INCHES(48));
    assert_int_equal(calculation.missing_count, 1);
    assert_int_equal(calculation.missing[0], QUANTITY_LISTING_HEARTH_BACK);
    record(QUANTITY_LISTING_HEARTH_BACK, INCHES(6));
    expect_required(INCHES(46));
    const int64_t twice[] = {INCHES(24), RATIO(2, 1)};
    calculation.numbers = twice;
    expect_required(INCHES(68));
    forget(QUANTITY_STOVE_DEPTH);
    expect_outcome(OUTCOME_MISSING);
}

/* ---- tables --------------------------------------------------------------------------------- */

static const int64_t row_keys[] = {INCHES(10), INCHES(20), INCHES(30)};
static const int64_t column_keys[] = {INCHES(6), INCHES(8)};
static const int64_t cells[] = {INCHES(1), INCHES(2), INCHES(3), NO_VALUE, INCHES(7), INCHES(8)};
static struct ingle_table table;

static void start_table(const struct formula *formula, enum table_reading rows)
{
    const int64_t *no_numbers = row_keys;
    ingle_survey_clear(survey);
    table = (struct ingle_table){"Table 1",
                                 {row_keys, 3, INCHES(8), rows},
                                 {column_keys, 2, 0, KEY_UP_TO},
                                 cells};
    start(formula, no_numbers, QUANTITY_HEARTH_FRONT, QUANTITY_OPENING_WIDTH);
    calculation.inputs[1] = QUANTITY_OPENING_HEIGHT;
    calculation.table = &table;
}

struct cell_case {
    enum table_reading reading;
    int64_t row_at, column_at;
    int64_t due; /* NO_VALUE for outside */
};

static void cells_are_found_by_their_keys(void **state)
{
    (void)state;
    static const struct cell_case cases[] = {
        {KEY_UP_TO, INCHES(8) - 1, INCHES(6), NO_VALUE},
        {KEY_UP_TO, INCHES(8), INCHES(6), INCHES(1)},
        {KEY_UP_TO, INCHES(10), INCHES(6), INCHES(1)},
        {KEY_UP_TO, INCHES(10) + 1, INCHES(6), INCHES(3)},
        {KEY_UP_TO, INCHES(30), INCHES(6) + 1, INCHES(8)},
        {KEY_UP_TO, INCHES(30) + 1, INCHES(6), NO_VALUE},
        {KEY_UP_TO, INCHES(20), INCHES(8), NO_VALUE},
        {KEY_UP_TO, INCHES(10), INCHES(8) + 1, NO_VALUE},
        {KEY_BELOW, INCHES(10) - 1, INCHES(6), INCHES(1)},
        {KEY_BELOW, INCHES(10), INCHES(6), INCHES(3)},
        {KEY_BELOW, INCHES(30), INCHES(6), NO_VALUE},
        {KEY_FROM, INCHES(10) - 1, INCHES(6), NO_VALUE},
        {KEY_FROM, INCHES(10), INCHES(6), INCHES(1)},
        {KEY_FROM, INCHES(20) - 1, INCHES(6), INCHES(1)},
        {KEY_FROM, INCHES(20), INCHES(6), INCHES(3)},
        {KEY_FROM, INCHES(99), INCHES(6), INCHES(7)},
        {KEY_EXACT, INCHES(20), INCHES(6), INCHES(3)},
        {KEY_EXACT, INCHES(20) + 1, INCHES(6), NO_VALUE},
        {KEY_INTERPOLATE, INCHES(10), INCHES(6), INCHES(1)},
        {KEY_INTERPOLATE, INCHES(15), INCHES(6), INCHES(2)},
        {KEY_INTERPOLATE, INCHES(15) + 1, INCHES(6), INCHES(2) + 1}, /* 1/5 nm more, upward */
        {KEY_INTERPOLATE, INCHES(25), INCHES(6), INCHES(5)},
        {KEY_INTERPOLATE, INCHES(30), INCHES(6), INCHES(7)},
        {KEY_INTERPOLATE, INCHES(30) + 1, INCHES(6), NO_VALUE},
        {KEY_INTERPOLATE, INCHES(15), INCHES(8), NO_VALUE},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        int64_t required = -42;
        start_table(&formula_table_cell, cases[i].reading);
        record(QUANTITY_OPENING_WIDTH, cases[i].row_at);
        record(QUANTITY_OPENING_HEIGHT, cases[i].column_at);
        enum outcome due = cases[i].due == NO_VALUE ? OUTCOME_OUTSIDE : OUTCOME_DONE;
        enum outcome outcome = run(&required);
        if (outcome != due || (due == OUTCOME_DONE && required != cases[i].due)) {
            print_error("case %zu: %d, %lld\n", i, (int)outcome, (long long)required);
        }
        assert_int_equal(outcome, due);
        assert_true(due == OUTCOME_OUTSIDE || required == cases[i].due);
        assert_string_equal(steps.steps[steps.count - 1].remark, "Table 1");
    }
}

static void the_steps_name_row_and_column(void **state)
{
    (void)state;
    static const struct {
        enum table_reading reading;
        int64_t row_at;
        const char *expression;
        int64_t keys[2];
    } cases[] = {
        {KEY_UP_TO, INCHES(11), "row for {0}, up to {1}", {INCHES(20), 0}},
        {KEY_BELOW, INCHES(10), "row for {0}, under {1}", {INCHES(20), 0}},
        {KEY_FROM, INCHES(29), "row for {0}, from {1} on", {INCHES(20), 0}},
        {KEY_EXACT, INCHES(30), "row for {0}, {1}", {INCHES(30), 0}},
        {KEY_INTERPOLATE, INCHES(10), "row for {0}, {1}", {INCHES(10), 0}},
        {KEY_INTERPOLATE, INCHES(25), "rows for {0}, {1} and {2}",
         {INCHES(20), INCHES(30)}},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        int64_t required;
        start_table(&formula_table_cell, cases[i].reading);
        record(QUANTITY_OPENING_WIDTH, cases[i].row_at);
        record(QUANTITY_OPENING_HEIGHT, INCHES(6));
        assert_int_equal(run(&required), OUTCOME_DONE);
        const struct ingle_step *row = &steps.steps[steps.count - 3];
        assert_string_equal(row->expression, cases[i].expression);
        assert_int_equal(row->operands[0].amount.value, cases[i].row_at);
        assert_int_equal(row->operands[1].amount.value, cases[i].keys[0]);
        assert_true(cases[i].keys[1] == 0 || row->operands[2].amount.value == cases[i].keys[1]);
        assert_string_equal(steps.steps[steps.count - 2].expression,
                            "column for {0}, up to {1}");
    }
}

static void a_table_asks_for_both_its_inputs(void **state)
{
    (void)state;
    start_table(&formula_table_cell, KEY_UP_TO);
    expect_missing(QUANTITY_OPENING_WIDTH, QUANTITY_OPENING_HEIGHT);
    start_table(&formula_table_column, KEY_UP_TO);
    record(QUANTITY_OPENING_HEIGHT, INCHES(6));
    expect_missing(QUANTITY_OPENING_WIDTH, QUANTITY_NONE);
}

static void the_first_column_that_is_enough_is_found(void **state)
{
    (void)state;
    start_table(&formula_table_column, KEY_UP_TO);
    calculation.inputs[1] = QUANTITY_HEARTH_LEFT;
    record(QUANTITY_OPENING_WIDTH, INCHES(10));
    record(QUANTITY_HEARTH_LEFT, INCHES(1));
    expect_required(INCHES(6));
    record(QUANTITY_HEARTH_LEFT, INCHES(1) + 1);
    expect_required(INCHES(8));
    record(QUANTITY_HEARTH_LEFT, INCHES(2));
    expect_required(INCHES(8));
    record(QUANTITY_HEARTH_LEFT, INCHES(2) + 1);
    expect_outcome(OUTCOME_OUTSIDE);
    record(QUANTITY_OPENING_WIDTH, INCHES(20)); /* its second cell has no value */
    record(QUANTITY_HEARTH_LEFT, INCHES(3) + 1);
    expect_outcome(OUTCOME_OUTSIDE);
}

/* ---- derived quantities --------------------------------------------------------------------- */

static void the_hearth_left_is_a_difference(void **state)
{
    (void)state;
    const int64_t numbers[] = {INCHES(16)};
    int64_t left = 42;
    start(&formula_fixed, numbers, QUANTITY_INSERT_HEARTH_FRONT, QUANTITY_NONE);
    assert_int_equal(calculation_quantity(&calculation, QUANTITY_INSERT_HEARTH_FRONT, &left),
                     OUTCOME_MISSING);
    assert_int_equal(calculation.missing_count, 2);
    assert_int_equal(calculation.missing[0], QUANTITY_HEARTH_FRONT);
    assert_int_equal(calculation.missing[1], QUANTITY_INSERT_PROJECTION);
    record(QUANTITY_HEARTH_FRONT, INCHES(20));
    record(QUANTITY_INSERT_PROJECTION, INCHES(5));
    assert_int_equal(calculation_quantity(&calculation, QUANTITY_INSERT_HEARTH_FRONT, &left),
                     OUTCOME_DONE);
    assert_true(left == INCHES(15));
    expect_step(steps.count - 1, "hearth left in front of the insert", "{0} − {1}");
    record(QUANTITY_INSERT_PROJECTION, INCHES(21));
    calculation_quantity(&calculation, QUANTITY_INSERT_HEARTH_FRONT, &left);
    assert_true(left == -INCHES(1)); /* it reaches beyond the hearth */
    record(QUANTITY_INSERT_HEARTH_FRONT, INCHES(17));
    calculation_quantity(&calculation, QUANTITY_INSERT_HEARTH_FRONT, &left);
    assert_true(left == INCHES(17));
}

static void the_throat_area_is_a_product(void **state)
{
    (void)state;
    const int64_t numbers[] = {RATIO(1, 20)};
    int64_t area = 42;
    record(QUANTITY_THROAT_WIDTH, INCHES(30));
    record(QUANTITY_THROAT_DEPTH, INCHES(4));
    start(&formula_share, numbers, QUANTITY_THROAT_AREA, QUANTITY_OPENING_AREA);
    assert_int_equal(calculation_quantity(&calculation, QUANTITY_THROAT_AREA, &area),
                     OUTCOME_DONE);
    assert_true(area == SQUARE_INCHES(120));
    expect_step(0, "throat area", "{0} × {1}");
    assert_int_equal(calculation_quantity(&calculation, QUANTITY_DAMPER_AREA, &area),
                     OUTCOME_MISSING);
    assert_int_equal(calculation.missing[0], QUANTITY_DAMPER_AREA);
}

static void what_is_on_trial_comes_first(void **state)
{
    (void)state;
    start(&formula_by_opening_area, by_area, QUANTITY_HEARTH_FRONT, QUANTITY_OPENING_AREA);
    record(QUANTITY_OPENING_AREA, SQUARE_FEET(5));
    calculation_try(&calculation, QUANTITY_OPENING_AREA, SQUARE_FEET(8));
    expect_required(INCHES(20));
    calculation_try(&calculation, QUANTITY_OPENING_AREA, SQUARE_FEET(4));
    assert_int_equal(calculation.trial_count, 1);
    expect_required(INCHES(16));
    assert_true(calculation_tries(&calculation, QUANTITY_OPENING_AREA));
    assert_false(calculation_tries(&calculation, QUANTITY_OPENING_WIDTH));
    /* What is masked is as if it were not recorded. */
    start(&formula_by_opening_area, by_area, QUANTITY_HEARTH_FRONT, QUANTITY_OPENING_AREA);
    calculation.masked = QUANTITY_OPENING_AREA;
    expect_missing(QUANTITY_OPENING_WIDTH, QUANTITY_OPENING_HEIGHT);
}

static void what_is_missing_is_noted_once(void **state)
{
    (void)state;
    start(&formula_fixed, by_area, QUANTITY_HEARTH_FRONT, QUANTITY_NONE);
    calculation_miss(&calculation, QUANTITY_HEARTH_LEFT);
    assert_int_equal(calculation_miss(&calculation, QUANTITY_HEARTH_LEFT), OUTCOME_MISSING);
    assert_int_equal(calculation.missing_count, 1);
    for (int i = 0; i < 3 * MISSING; i++) {
        calculation_miss(&calculation, (enum quantity_id)i);
    }
    assert_int_equal(calculation.missing_count, MISSING);
}

/* ---- flues ---------------------------------------------------------------------------------- */

/* aspect, round, square, rectangular, long: all different, so that each shows itself. */
static const int64_t shares[] = {RATIO(2, 1), RATIO(1, 12), RATIO(1, 10), RATIO(1, 9), RATIO(1, 8)};

static void start_flue(void)
{
    ingle_survey_clear(survey);
    start(&formula_flue_share, shares, QUANTITY_FLUE_NET_AREA, QUANTITY_OPENING_AREA);
    record(QUANTITY_OPENING_AREA, SQUARE_INCHES(720));
}

static void expect_area(int64_t due)
{
    int64_t area = -42;
    assert_int_equal(calculation_quantity(&calculation, QUANTITY_FLUE_NET_AREA, &area),
                     OUTCOME_DONE);
    assert_true(area == due);
}

static void sides_tell_the_class(void **state)
{
    (void)state;
    static const struct {
        int64_t width, depth, required;
    } cases[] = {
        {INCHES(8), INCHES(8), SQUARE_INCHES(72)},
        {INCHES(8), INCHES(8) + 1, SQUARE_INCHES(80)},
        {INCHES(8) + 1, INCHES(8), SQUARE_INCHES(80)},
        {INCHES(8), INCHES(16) - 1, SQUARE_INCHES(80)},
        {INCHES(16) - 1, INCHES(8), SQUARE_INCHES(80)},
        {INCHES(8), INCHES(16), SQUARE_INCHES(90)},
        {INCHES(16), INCHES(8), SQUARE_INCHES(90)},
        {INCHES(8), INCHES(16) + 1, SQUARE_INCHES(90)},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        start_flue();
        record(QUANTITY_FLUE_WIDTH, cases[i].width);
        record(QUANTITY_FLUE_DEPTH, cases[i].depth);
        assert_int_equal(flue_source(&calculation), FLUE_FROM_SIDES);
        expect_required(cases[i].required);
        expect_step(steps.count - 1, "required net area", "{0} × {1}");
        expect_area(cases[i].width * cases[i].depth);
    }
    expect_step(steps.count - 1, "net area of the flue", "{0} × {1}");
}

static void a_diameter_is_round(void **state)
{
    (void)state;
    int64_t area = 0;
    start_flue();
    record(QUANTITY_FLUE_DIAMETER, INCHES(8));
    assert_int_equal(flue_source(&calculation), FLUE_FROM_DIAMETER);
    expect_required(SQUARE_INCHES(60));
    /* pi/4 x 203 200 000^2 = 32 429 278 662 239 856.09... nm2 */
    calculation.rounding = ROUND_DOWN;
    calculation_quantity(&calculation, QUANTITY_FLUE_NET_AREA, &area);
    assert_true(area <= INT64_C(32429278662239856) && area >= INT64_C(32429278662239852));
    expect_step(steps.count - 1, "net area of the flue", "π/4 × {0} × {0}");
    calculation.rounding = ROUND_UP;
    calculation_quantity(&calculation, QUANTITY_FLUE_NET_AREA, &area);
    assert_true(area >= INT64_C(32429278662239857) && area <= INT64_C(32429278662239861));
}

static void liners_come_from_the_table(void **state)
{
    (void)state;
    static const struct {
        enum choice_FLUE_LINER liner;
        int64_t area, required;
    } cases[] = {
        {CHOICE_FLUE_LINER_ROUND_8, SQUARE_INCHES(50), SQUARE_INCHES(60)},
        {CHOICE_FLUE_LINER_12X12, SQUARE_INCHES(102), SQUARE_INCHES(72)},
        {CHOICE_FLUE_LINER_8X12, SQUARE_INCHES(67), SQUARE_INCHES(80)},
        {CHOICE_FLUE_LINER_4_5X13, SQUARE_INCHES(34), SQUARE_INCHES(90)},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        start_flue();
        record(QUANTITY_FLUE_LINER, (int64_t)cases[i].liner);
        assert_int_equal(flue_source(&calculation), FLUE_FROM_LINER);
        expect_required(cases[i].required);
        assert_int_equal(calculation.reading_count, 1);
        assert_null(calculation.reading_text);
        expect_area(cases[i].area);
        expect_step(steps.count - 1, "net area of the flue", "table area of {0}");
        assert_non_null(strstr(steps.steps[steps.count - 1].remark, "table"));
    }
}

static void an_ambiguous_liner_has_two_readings(void **state)
{
    (void)state;
    start_flue();
    record(QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_4_5X8_5);
    expect_required(SQUARE_INCHES(80));
    assert_int_equal(calculation.reading_count, 2);
    assert_non_null(strstr(calculation.reading_text, "outside"));
    calculation.reading = 1;
    expect_required(SQUARE_INCHES(90));
    assert_int_equal(calculation.reading_count, 2);
    assert_non_null(strstr(calculation.reading_text, "inside"));
}

static void inside_measures_tell_the_area_and_a_liner_the_ratio(void **state)
{
    (void)state;
    start_flue();
    record(QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_8X12);
    record(QUANTITY_FLUE_WIDTH, INCHES(6));
    assert_int_equal(flue_source(&calculation), FLUE_FROM_LINER);
    record(QUANTITY_FLUE_DEPTH, INCHES(12));
    assert_int_equal(flue_source(&calculation), FLUE_FROM_SIDES);
    expect_area(SQUARE_INCHES(72));
    /* By the nominal outside size it is less than 2 to 1, though the inside is just that. */
    expect_required(SQUARE_INCHES(80));
    /* A liner on trial takes the place of all that was found. */
    calculation_try(&calculation, QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_12X12);
    assert_int_equal(flue_source(&calculation), FLUE_FROM_LINER);
    expect_required(SQUARE_INCHES(72));
    expect_area(SQUARE_INCHES(102));
}

static void a_shape_alone_tells_the_share(void **state)
{
    (void)state;
    start_flue();
    assert_int_equal(flue_source(&calculation), FLUE_FROM_NOTHING);
    expect_missing(QUANTITY_FLUE_LINER, QUANTITY_NONE);
    record(QUANTITY_FLUE_NET_AREA, SQUARE_INCHES(70));
    expect_missing(QUANTITY_FLUE_SHAPE, QUANTITY_NONE);
    record(QUANTITY_FLUE_SHAPE, CHOICE_FLUE_SHAPE_ROUND);
    assert_int_equal(flue_source(&calculation), FLUE_FROM_SHAPE);
    expect_required(SQUARE_INCHES(60));
    expect_area(SQUARE_INCHES(70));
    record(QUANTITY_FLUE_SHAPE, CHOICE_FLUE_SHAPE_SQUARE);
    expect_required(SQUARE_INCHES(72));
    record(QUANTITY_FLUE_SHAPE, CHOICE_FLUE_SHAPE_RECTANGULAR);
    expect_missing(QUANTITY_FLUE_WIDTH, QUANTITY_FLUE_DEPTH);
    record(QUANTITY_FLUE_WIDTH, INCHES(7));
    expect_missing(QUANTITY_FLUE_DEPTH, QUANTITY_NONE);
    record(QUANTITY_FLUE_DEPTH, INCHES(10));
    expect_required(SQUARE_INCHES(80));
    expect_area(SQUARE_INCHES(70)); /* the area that was stated */
}

static void a_round_flue_lacks_its_diameter(void **state)
{
    (void)state;
    int64_t area;
    start_flue();
    record(QUANTITY_FLUE_SHAPE, CHOICE_FLUE_SHAPE_ROUND);
    assert_int_equal(calculation_quantity(&calculation, QUANTITY_FLUE_NET_AREA, &area),
                     OUTCOME_MISSING);
    assert_int_equal(calculation.missing[0], QUANTITY_FLUE_DIAMETER);
    start_flue();
    record(QUANTITY_FLUE_DEPTH, INCHES(8));
    expect_missing(QUANTITY_FLUE_WIDTH, QUANTITY_NONE);
}

static void a_liner_the_table_lacks_is_not_guessed(void **state)
{
    (void)state;
    int64_t area;
    start_flue();
    record(QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_24X24);
    assert_null(flue_liner(&calculation, CHOICE_FLUE_LINER_24X24));
    expect_missing(QUANTITY_FLUE_SHAPE, QUANTITY_NONE);
    assert_int_equal(calculation_quantity(&calculation, QUANTITY_FLUE_NET_AREA, &area),
                     OUTCOME_MISSING);
    assert_int_equal(calculation.missing[1], QUANTITY_FLUE_NET_AREA);
}

static void contradict(enum quantity_id first, int64_t first_value, enum quantity_id second,
                       int64_t second_value, enum quantity_id due)
{
    int64_t area;
    start_flue();
    record(first, first_value);
    record(second, second_value);
    assert_int_equal(flue_contradicts(&calculation), due != QUANTITY_NONE);
    assert_int_equal(calculation.at_fault, due);
    if (due != QUANTITY_NONE) {
        assert_int_equal(calculation.against, due == first ? second : first);
        expect_outcome(OUTCOME_CONTRADICTION);
        assert_int_equal(calculation_quantity(&calculation, QUANTITY_FLUE_NET_AREA, &area),
                         OUTCOME_CONTRADICTION);
    }
}

static void what_cannot_be_so_is_a_contradiction(void **state)
{
    (void)state;
    const int64_t round = CHOICE_FLUE_SHAPE_ROUND, square = CHOICE_FLUE_SHAPE_SQUARE,
                  rectangular = CHOICE_FLUE_SHAPE_RECTANGULAR;
    contradict(QUANTITY_FLUE_SHAPE, square, QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_ROUND_8,
               QUANTITY_FLUE_SHAPE);
    contradict(QUANTITY_FLUE_SHAPE, round, QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_12X12,
               QUANTITY_FLUE_SHAPE);
    contradict(QUANTITY_FLUE_SHAPE, square, QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_8X12,
               QUANTITY_FLUE_SHAPE);
    contradict(QUANTITY_FLUE_SHAPE, rectangular, QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_12X12,
               QUANTITY_FLUE_SHAPE);
    contradict(QUANTITY_FLUE_SHAPE, square, QUANTITY_FLUE_DIAMETER, INCHES(8),
               QUANTITY_FLUE_SHAPE);
    contradict(QUANTITY_FLUE_SHAPE, round, QUANTITY_FLUE_WIDTH, INCHES(8), QUANTITY_FLUE_SHAPE);
    contradict(QUANTITY_FLUE_DIAMETER, INCHES(8), QUANTITY_FLUE_DEPTH, INCHES(8),
               QUANTITY_FLUE_DIAMETER);
    contradict(QUANTITY_FLUE_DIAMETER, INCHES(8), QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_8X12,
               QUANTITY_FLUE_LINER);
    contradict(QUANTITY_FLUE_WIDTH, INCHES(8), QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_ROUND_8,
               QUANTITY_FLUE_LINER);
    /* And what can be so is none. */
    contradict(QUANTITY_FLUE_SHAPE, round, QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_ROUND_8,
               QUANTITY_NONE);
    contradict(QUANTITY_FLUE_SHAPE, rectangular, QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_8X12,
               QUANTITY_NONE);
    contradict(QUANTITY_FLUE_DIAMETER, INCHES(8), QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_ROUND_8,
               QUANTITY_NONE);
}

/* ---- dependences and breakpoints ------------------------------------------------------------ */

static int8_t direction_of(const struct dependences *dependences, enum quantity_id quantity)
{
    for (size_t i = 0; i < dependences->count; i++) {
        if (dependences->list[i].quantity == quantity) {
            return dependences->list[i].direction;
        }
    }
    return 42;
}

static void results_depend_on_what_was_recorded(void **state)
{
    (void)state;
    struct dependences dependences = {.count = 0};
    start_flue();
    forget(QUANTITY_OPENING_AREA);
    record(QUANTITY_OPENING_WIDTH, INCHES(30));
    record(QUANTITY_OPENING_HEIGHT, INCHES(24));
    dependences_add(&dependences, &calculation, QUANTITY_OPENING_AREA, -1);
    assert_int_equal(dependences.count, 2);
    assert_int_equal(direction_of(&dependences, QUANTITY_OPENING_WIDTH), -1);
    assert_int_equal(direction_of(&dependences, QUANTITY_OPENING_HEIGHT), -1);
    record(QUANTITY_HEARTH_FRONT, INCHES(20));
    record(QUANTITY_INSERT_PROJECTION, INCHES(4));
    dependences_add(&dependences, &calculation, QUANTITY_INSERT_HEARTH_FRONT, 1);
    assert_int_equal(direction_of(&dependences, QUANTITY_HEARTH_FRONT), 1);
    assert_int_equal(direction_of(&dependences, QUANTITY_INSERT_PROJECTION), -1);
    /* Once up and once down is either way. */
    dependences_add(&dependences, &calculation, QUANTITY_OPENING_WIDTH, 1);
    assert_int_equal(direction_of(&dependences, QUANTITY_OPENING_WIDTH), 0);
    record(QUANTITY_OPENING_AREA, SQUARE_FEET(5));
    dependences.count = 0;
    dependences_add(&dependences, &calculation, QUANTITY_OPENING_AREA, -1);
    assert_int_equal(dependences.count, 1);
    assert_int_equal(direction_of(&dependences, QUANTITY_OPENING_AREA), -1);
}

static void a_net_area_depends_on_its_source(void **state)
{
    (void)state;
    struct dependences dependences = {.count = 0};
    start_flue();
    record(QUANTITY_FLUE_LINER, CHOICE_FLUE_LINER_8X12);
    dependences_add(&dependences, &calculation, QUANTITY_FLUE_NET_AREA, 1);
    assert_int_equal(dependences.count, 0);
    record(QUANTITY_FLUE_WIDTH, INCHES(7));
    record(QUANTITY_FLUE_DEPTH, INCHES(11));
    dependences_add(&dependences, &calculation, QUANTITY_FLUE_NET_AREA, 1);
    assert_int_equal(dependences.count, 2);
    record(QUANTITY_FLUE_NET_AREA, SQUARE_INCHES(70));
    dependences.count = 0;
    dependences_add(&dependences, &calculation, QUANTITY_FLUE_NET_AREA, 1);
    assert_int_equal(dependences.count, 1);
    assert_int_equal(direction_of(&dependences, QUANTITY_FLUE_NET_AREA), 1);
    start_flue();
    record(QUANTITY_FLUE_DIAMETER, INCHES(8));
    dependences.count = 0;
    dependences_add(&dependences, &calculation, QUANTITY_FLUE_NET_AREA, 1);
    assert_int_equal(direction_of(&dependences, QUANTITY_FLUE_DIAMETER), 1);
}

/* Wherever the required area differs from its neighbour's, both are breakpoints. */
static void breakpoints_hold_every_jump(void **state)
{
    (void)state;
    static const int64_t places[] = {INCHES(4), INCHES(8), INCHES(16)};
    int64_t values[BREAKPOINTS];
    start_flue();
    record(QUANTITY_FLUE_WIDTH, INCHES(8));
    record(QUANTITY_FLUE_DEPTH, INCHES(8));
    size_t count =
        formula_flue_share.breakpoints(&calculation, QUANTITY_FLUE_WIDTH, values);
    assert_true(count <= BREAKPOINTS);
    for (size_t p = 0; p < sizeof places / sizeof places[0]; p++) {
        for (int64_t width = places[p] - 2; width < places[p] + 2; width++) {
            int64_t here = 0, next = 0;
            calculation_try(&calculation, QUANTITY_FLUE_WIDTH, width);
            assert_int_equal(run(&here), OUTCOME_DONE);
            calculation_try(&calculation, QUANTITY_FLUE_WIDTH, width + 1);
            assert_int_equal(run(&next), OUTCOME_DONE);
            bool has_here = false, has_next = false;
            for (size_t i = 0; i < count; i++) {
                has_here = has_here || values[i] == width;
                has_next = has_next || values[i] == width + 1;
            }
            assert_true(here == next || (has_here && has_next));
        }
    }
}

/* ---- descriptors ---------------------------------------------------------------------------- */

static const struct formula *const formulas[] = {
    &formula_fixed,           &formula_share,
    &formula_share_or_least,  &formula_by_opening_area,
    &formula_by_firebox_raise, &formula_by_smoke_chamber_walls,
    &formula_projection_by_distance, &formula_flue_share,
    &formula_within,          &formula_above_step,
    &formula_observed,        &formula_by_listing,
    &formula_listing_or_usual, &formula_listing_with_usual,
    &formula_listing_about_body, &formula_not_printed,
    &formula_table_cell,      &formula_table_column,
    &formula_reduced_share,
};

static void formulas_describe_themselves(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof formulas / sizeof formulas[0]; i++) {
        const struct formula *formula = formulas[i];
        size_t count = formula_number_count(formula);
        assert_true(count <= FORMULA_NUMBERS);
        /* What has no numbers of its own has them from elsewhere, or says that there are none. */
        assert_true(count > 0 || formula->driver_count > 0 || formula == &formula_not_printed);
        assert_non_null(formula->required);
        assert_true(formula->driver_count <= FORMULA_DRIVERS);
        for (size_t n = 0; n < count; n++) {
            char quoted[64] = "`";
            strcat(strcat(quoted, formula->numbers[n].name), "`");
            assert_non_null(strstr(formula->text, quoted));
            ingle_amount amount =
                formula_number_amount(formula, (unsigned)n, QUANTITY_HEARTH_FRONT, 5);
            assert_true(amount.value == 5);
            assert_true(ingle_dimension_name(amount.dimension) != NULL);
        }
        for (size_t d = 0; d < formula->driver_count; d++) {
            /* What may go either way has to name its breakpoints. */
            assert_true(formula->drivers[d].direction != 0 || formula->breakpoints != NULL);
        }
        for (size_t j = 0; j < i; j++) {
            assert_string_not_equal(formula->name, formulas[j]->name);
        }
    }
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, make, unmake)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(fixed_is_the_number),
        TEST(a_share_rounds_to_the_strict_side),
        TEST(a_share_too_large_is_an_overflow),
        TEST(a_share_or_least_is_the_greater),
        TEST(a_reduced_share_is_never_more_than_the_whole),
        TEST(the_larger_hearth_begins_at_the_threshold),
        TEST(the_opening_area_follows_from_its_sides),
        TEST(a_raise_that_is_not_recorded_is_not_used),
        TEST(walls_choose_the_slope),
        TEST(projection_goes_by_distance),
        TEST(items_are_asked_of_their_own),
        TEST(within_asks_nothing_beyond),
        TEST(above_step_keeps_the_step_below),
        TEST(a_state_is_required_as_it_is),
        TEST(a_listing_decides_or_is_asked_for),
        TEST(what_is_not_printed_is_not_made_up),
        TEST(what_is_usual_is_named_and_not_required),
        TEST(without_a_label_what_is_usual_is_required),
        TEST(a_pad_goes_about_the_body),
        TEST(cells_are_found_by_their_keys),
        TEST(the_steps_name_row_and_column),
        TEST(a_table_asks_for_both_its_inputs),
        TEST(the_first_column_that_is_enough_is_found),
        TEST(the_hearth_left_is_a_difference),
        TEST(the_throat_area_is_a_product),
        TEST(what_is_on_trial_comes_first),
        TEST(what_is_missing_is_noted_once),
        TEST(sides_tell_the_class),
        TEST(a_diameter_is_round),
        TEST(liners_come_from_the_table),
        TEST(an_ambiguous_liner_has_two_readings),
        TEST(inside_measures_tell_the_area_and_a_liner_the_ratio),
        TEST(a_shape_alone_tells_the_share),
        TEST(a_round_flue_lacks_its_diameter),
        TEST(a_liner_the_table_lacks_is_not_guessed),
        TEST(what_cannot_be_so_is_a_contradiction),
        TEST(results_depend_on_what_was_recorded),
        TEST(a_net_area_depends_on_its_source),
        TEST(breakpoints_hold_every_jump),
        TEST(formulas_describe_themselves),
    };
    return cmocka_run_group_tests_name("formulas", tests, NULL, NULL);
}
