/* SPDX-License-Identifier: MIT */
/*
 * What was read and is at hand, and the documents that answer questions about it. What is required
 * is R1001.10's: an opening of 6 ft2 and more asks for 20 in of hearth in front.
 */
#include "document.h"

#include <stdlib.h>

#define INCH INT64_C(25400000)

static const char short_hearth[] = DOCUMENT("`id`: `living-room_2`, `unit`: `in`, ", "`19 in`");

static void read_short(void)
{
    assert_int_equal(read_with(short_hearth, NULL), INGLE_OK);
}

/* ---- what was read -------------------------------------------------------------------------- */

static void expect_nothing(const ingle_json *of)
{
    size_t count = 7;
    assert_null(ingle_json_survey(of));
    assert_null(ingle_json_report(of));
    assert_null(ingle_json_standards(of, &count));
    assert_int_equal(count, 0);
    assert_null(ingle_json_standards(of, NULL));
    assert_null(ingle_json_how(of));
    assert_null(ingle_json_unit(of));
    assert_null(ingle_json_draft_unit(of));
    assert_string_equal(ingle_json_id(of), "");
    assert_null(ingle_json_title(of));
}

static void before_reading_there_is_nothing(void **state)
{
    (void)state;
    ingle_json *fresh;
    assert_int_equal(ingle_json_new(&fresh), INGLE_OK);
    expect_nothing(fresh);
    expect_nothing(NULL);
    assert_int_equal(ingle_json_verdict(fresh), INGLE_NOT_APPLICABLE);
    assert_int_equal(ingle_json_verdict(NULL), INGLE_NOT_APPLICABLE);
    ingle_json_free(fresh);
}

static void what_was_read_is_at_hand(void **state)
{
    (void)state;
    size_t count;
    ingle_amount front;
    read_short();
    struct json_object *tree = left();
    assert_int_equal(json_object_object_length(tree), 1);
    assert_string_equal(text_of(tree, "verdict"), "fails");
    json_object_put(tree);
    assert_int_equal(ingle_json_verdict(json), INGLE_FAILS);
    assert_true(ingle_survey_get(ingle_json_survey(json), ingle_quantity_find("hearth.front"), 0,
                                 &front, NULL));
    assert_true(front.value == 19 * INCH);
    assert_int_equal(ingle_report_verdict(ingle_json_report(json)), INGLE_FAILS);
    const ingle_standard *const *standards = ingle_json_standards(json, &count);
    assert_int_equal(count, 1);
    assert_ptr_equal(standards[0], ingle_standard_find("irc-2021"));
    assert_ptr_equal(ingle_json_unit(json), ingle_unit_find("in"));
    assert_ptr_equal(ingle_json_draft_unit(json), ingle_unit_find("in"));
    assert_string_equal(ingle_json_id(json), "living-room_2");
    assert_string_equal(ingle_json_title(json), "Living room 2");
}

static void the_options_win(void **state)
{
    (void)state;
    size_t count;
    const ingle_standard *adopted[] = {ingle_standard_find("irc-2000"),
                                       ingle_standard_find("obc-2012")};
    int32_t readings[] = {1};
    ingle_json_options options = {.size = sizeof options, .standards = adopted,
                                  .standard_count = 2, .unit = ingle_unit_find("mm"),
                                  .readings = readings, .reading_count = 1};
    assert_int_equal(read_with(short_hearth, &options), INGLE_OK);
    assert_ptr_equal(ingle_json_standards(json, &count)[1], adopted[1]);
    assert_int_equal(count, 2);
    assert_ptr_equal(ingle_json_unit(json), ingle_unit_find("mm"));
    const ingle_check_options *how = ingle_json_how(json);
    assert_int_equal(how->reading_count, ingle_reading_count());
    assert_int_equal(how->readings[0], 1);
    assert_int_equal(how->readings[1], 0);
    assert_int_equal(how->metric_remedies, 1);
    assert_int_equal(ingle_amendments_count(how->amendments), 0);
}

static void a_document_without_a_unit_has_none(void **state)
{
    (void)state;
    assert_int_equal(read_with(DOCUMENT("", "`19 in`"), NULL), INGLE_OK);
    assert_null(ingle_json_unit(json));
    assert_ptr_equal(ingle_json_draft_unit(json), ingle_unit_find("in")); /* the standard's */
    assert_string_equal(ingle_json_id(json), "");
    assert_null(ingle_json_title(json));
}

static void amendments_are_at_hand(void **state)
{
    (void)state;
    const ingle_standard *standard;
    const char *rule, *number, *citation;
    ingle_amount amount;
    assert_int_equal(amend_with("{`authority`: `Town`, `amendments`: [{`standard`: `irc-2021`, "
                                "`rule`: `hearth-front`, `set`: {`large`: `24 in`}, "
                                "`citation`: `7-2`}]}"), INGLE_OK);
    expect_nothing(json); /* it refers to amendments that are other ones now */
    read_short();
    const ingle_amendments *amendments = ingle_json_how(json)->amendments;
    assert_int_equal(ingle_amendments_count(amendments), 1);
    assert_int_equal(ingle_amendments_at(amendments, 0, &standard, &rule, &number, &amount,
                                         &citation), INGLE_OK);
    assert_string_equal(citation, "Town, 7-2");
    assert_true(amount.value == 24 * INCH);
    ingle_json_clear_amendments(json);
    expect_nothing(json);
}

static void what_cannot_be_read_leaves_nothing(void **state)
{
    (void)state;
    read_short();
    assert_int_equal(read_with(DOCUMENT("", "`19 yd`"), NULL), INGLE_ERROR_UNIT_UNKNOWN);
    expect_nothing(json);
    assert_int_equal(ingle_json_verdict(json), INGLE_NOT_APPLICABLE);
    struct json_object *tree = left();
    assert_string_equal(text_of(member(tree, "error"), "at"), "/survey/hearth/front");
    json_object_put(tree);
    assert_int_equal(ingle_json_read(NULL, "{}", 2, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_read(json, NULL, 2, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_read(json, NULL, 0, NULL), INGLE_ERROR_JSON);
    expect_nothing(json);
}

/* The first 127 bytes, and never a part of a letter: 63 of two bytes each and one before them. */
static void a_long_id_is_cut_between_letters(void **state)
{
    (void)state;
    char document[1024] = "{`standards`: [`irc-2021`], `survey`: {}, `id`: `";
    char id[256] = "";
    for (int i = 0; i < 100; i++) {
        strcat(id, "ü");
    }
    strcat(strcat(document, id), "`}");
    assert_int_equal(read_with(document, NULL), INGLE_OK);
    assert_int_equal(strlen(ingle_json_id(json)), 126);
    assert_memory_equal(ingle_json_id(json), id, 126);
}

/* ---- ranges from texts ---------------------------------------------------------------------- */

static void expect_range(const char *path, const char *from, const char *to, const char *step,
                         int64_t least, int64_t most, int64_t one)
{
    ingle_range range;
    assert_int_equal(ingle_json_range(json, path, from, to, step, &range), INGLE_OK);
    assert_string_equal(ingle_quantity_id(range.quantity), path);
    assert_true(range.from == least && range.to == most && range.step == one);
}

static void ranges_are_read_from_texts(void **state)
{
    (void)state;
    ingle_amount least, most;
    ingle_quantity_range(ingle_quantity_find("hearth.front"), &least, &most);
    read_short();
    expect_range("hearth.front", NULL, NULL, NULL, 0, 0, 0);
    expect_range("hearth.front", "18", "2 ft", "1/2", 18 * INCH, 24 * INCH, INCH / 2);
    expect_range("hearth.front", "457.2 mm", "1' 8\"", NULL, 18 * INCH, 20 * INCH, 0);
    expect_range("flue.net-area", "100", "127 in2", "1", 100 * INCH * INCH, 127 * INCH * INCH,
                 INCH * INCH);
    ingle_range range;
    assert_int_equal(ingle_json_range(json, "hearth.front", "18 in", NULL, NULL, &range), INGLE_OK);
    assert_true(range.from == 18 * INCH && range.to > most.value - INCH && range.to <= most.value);
    assert_int_equal(ingle_json_range(json, "hearth.front", NULL, "18 in", NULL, &range), INGLE_OK);
    assert_true(range.to == 18 * INCH && range.from >= least.value);
}

static void expect_no_range(const char *path, const char *from, const char *to, const char *step,
                            ingle_status due, const char *says)
{
    ingle_range range, before;
    memset(&range, 0x5A, sizeof range);
    memcpy(&before, &range, sizeof range);
    assert_int_equal(ingle_json_range(json, path, from, to, step, &range), due);
    assert_memory_equal(&range, &before, sizeof range);
    struct json_object *tree = left();
    const char *message = text_of(member(tree, "error"), "message");
    if (strstr(message, says) == NULL) {
        fail_msg("%s does not say %s", message, says);
    }
    json_object_put(tree);
}

static void ranges_that_are_refused(void **state)
{
    (void)state;
    read_short();
    expect_no_range("hearth.frnt", NULL, NULL, NULL, INGLE_ERROR_UNKNOWN_QUANTITY, "hearth.front");
    expect_no_range("hearth.front", "18 in2", NULL, NULL, INGLE_ERROR_DIMENSION, "from \"18 in2\"");
    expect_no_range("hearth.front", NULL, "18 x", NULL, INGLE_ERROR_UNIT_UNKNOWN, "to \"18 x\"");
    expect_no_range("hearth.front", NULL, NULL, "0", INGLE_ERROR_RANGE, "");
    expect_no_range("gas.input", "40000", NULL, NULL, INGLE_ERROR_UNIT_MISSING, "40000");
    expect_no_range("trim[0].distance", NULL, NULL, NULL, INGLE_ERROR_UNKNOWN_QUANTITY, "");
    ingle_range range;
    assert_int_equal(ingle_json_range(NULL, "hearth.front", NULL, NULL, NULL, &range),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_range(json, NULL, NULL, NULL, NULL, &range), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_range(json, "hearth.front", NULL, NULL, NULL, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(read_with("{}", NULL), INGLE_ERROR_MISSING_NAME);
    expect_no_range("hearth.front", NULL, NULL, NULL, INGLE_ERROR_ARGUMENT, "read before");
}

/* ---- answers -------------------------------------------------------------------------------- */

struct asked {
    size_t count;
    const ingle_standard *const *standards;
    ingle_range range, with;
    ingle_solution *solution;
    ingle_frontier *frontier;
    ingle_sweep *sweep;
    ingle_comparison *comparison;
    ingle_worksheet *worksheet;
};

static struct asked asked;

static int make_answers(void **state)
{
    (void)state;
    const ingle_survey *survey;
    read_short();
    survey = ingle_json_survey(json);
    asked.standards = ingle_json_standards(json, &asked.count);
    ingle_json_range(json, "hearth.front", "18", "22", "1", &asked.range);
    ingle_json_range(json, "opening.height", "20", "24", "4", &asked.with);
    ingle_solution_new(NULL, &asked.solution);
    ingle_frontier_new(NULL, &asked.frontier);
    ingle_sweep_new(NULL, &asked.sweep);
    ingle_comparison_new(NULL, &asked.comparison);
    ingle_worksheet_new(NULL, &asked.worksheet);
    const ingle_check_options *how = ingle_json_how(json);
    return ingle_solve(survey, asked.standards, 1, how, &asked.range, NULL, asked.solution) +
           ingle_solve_with(survey, asked.standards, 1, how, &asked.range, &asked.with, NULL,
                            asked.frontier) +
           ingle_sweep_run(survey, asked.standards, 1, how, &asked.range, NULL, asked.sweep) +
           ingle_compare(ingle_json_report(json), asked.comparison) +
           ingle_worksheet_make(survey, asked.standards, 1, how, asked.worksheet);
}

static int free_answers(void **state)
{
    (void)state;
    ingle_worksheet_free(asked.worksheet);
    ingle_comparison_free(asked.comparison);
    ingle_sweep_free(asked.sweep);
    ingle_frontier_free(asked.frontier);
    ingle_solution_free(asked.solution);
    return 0;
}

static struct json_object *first(struct json_object *around, const char *name)
{
    return json_object_array_get_idx(member(around, name), 0);
}

static void a_solution_is_left(void **state)
{
    (void)state;
    assert_int_equal(ingle_json_solution(json, asked.solution), INGLE_OK);
    struct json_object *tree = left();
    assert_string_equal(text_of(tree, "quantity"), "/survey/hearth/front");
    assert_string_equal(text_of(member(member(tree, "range"), "step"), "text"), "1 in");
    assert_string_equal(text_of(member(first(tree, "works"), "from"), "text"), "20 in");
    assert_string_equal(text_of(member(first(tree, "works"), "to"), "text"), "22 in");
    assert_string_equal(text_of(member(first(tree, "works"), "below"), "rule"), "hearth-front");
    assert_string_equal(text_of(member(tree, "surveyed"), "works"), "false");
    assert_string_equal(
        text_of(member(member(member(tree, "nearest"), "above"), "change"), "text"), "1 in");
    assert_string_equal(text_of(tree, "ingle"), ingle_version());
    json_object_put(tree);
}

/* 36 in × 20 in are less than 6 ft2, of which 16 in are asked; × 24 in are 6 ft2. */
static void a_frontier_is_left(void **state)
{
    (void)state;
    static const char *const due[] = {"18 in", "20 in"};
    assert_int_equal(ingle_json_frontier(json, asked.frontier), INGLE_OK);
    struct json_object *tree = left();
    assert_string_equal(text_of(member(tree, "with"), "quantity"), "/survey/opening/height");
    struct json_object *entries = member(tree, "frontier");
    assert_int_equal(json_object_array_length(entries), 2);
    for (size_t i = 0; i < 2; i++) {
        struct json_object *entry = json_object_array_get_idx(entries, i);
        assert_string_equal(text_of(member(first(entry, "works"), "from"), "text"), due[i]);
    }
    json_object_put(tree);
}

static void a_sweep_is_left(void **state)
{
    (void)state;
    static const char *const due[] = {"fails", "fails", "meets", "meets", "meets"};
    assert_int_equal(ingle_json_sweep(json, asked.sweep), INGLE_OK);
    struct json_object *tree = left();
    struct json_object *line = first(tree, "lines");
    assert_string_equal(text_of(line, "rule"), "hearth-front");
    struct json_object *values = member(line, "values");
    assert_int_equal(json_object_array_length(values), 5);
    for (size_t i = 0; i < 5; i++) {
        assert_string_equal(text_of(json_object_array_get_idx(values, i), "verdict"), due[i]);
    }
    json_object_put(tree);
}

static void a_comparison_is_left(void **state)
{
    (void)state;
    assert_int_equal(ingle_json_comparison(json, asked.comparison), INGLE_OK);
    struct json_object *tree = left();
    assert_string_equal(text_of(tree, "id"), "living-room_2");
    assert_string_equal(text_of(first(tree, "standards"), "id"), "irc-2021");
    assert_string_equal(text_of(first(tree, "standards"), "verdict"), "fails");
    json_object_put(tree);
}

/* It can be read as it is, and comes to the same. */
static void a_worksheet_is_left(void **state)
{
    (void)state;
    assert_int_equal(ingle_json_worksheet(json, asked.worksheet), INGLE_OK);
    size_t length;
    const char *text = ingle_json_text(json, &length);
    assert_non_null(strstr(text, "From the left side edge of the opening"));
    char *copy = malloc(length);
    assert_non_null(copy);
    memcpy(copy, text, length);
    assert_int_equal(ingle_json_read(json, copy, length, NULL), INGLE_OK);
    assert_int_equal(ingle_json_verdict(json), INGLE_FAILS);
    assert_string_equal(ingle_json_id(json), "living-room_2");
    free(copy);
}

static void exercises_are_left(void **state)
{
    (void)state;
    static const char *const parts[][2] = {[INGLE_EXERCISE_BOTH] = {"questions", "answers"},
                                           [INGLE_EXERCISE_PROBLEM] = {"questions", "document"},
                                           [INGLE_EXERCISE_ANSWERS] = {"answers", "answers"}};
    const ingle_standard *standard = ingle_standard_find("irc-2021");
    for (ingle_exercise_part part = 0; part <= INGLE_EXERCISE_ANSWERS; part++) {
        assert_int_equal(ingle_json_exercise(json, 18446744073709551615u, 2, &standard, 1, part,
                                             NULL), INGLE_OK);
        struct json_object *tree = left();
        assert_string_equal(text_of(tree, "seed"), "18446744073709551615");
        assert_non_null(member(tree, parts[part][0]));
        assert_non_null(member(tree, parts[part][1]));
        assert_int_equal(member(tree, "document") == NULL, part == INGLE_EXERCISE_ANSWERS);
        assert_int_equal(member(tree, "answers") == NULL, part == INGLE_EXERCISE_PROBLEM);
        json_object_put(tree);
    }
    assert_int_equal(ingle_json_exercise(json, 1, 0, &standard, 1, 0, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_exercise(json, 1, 1, NULL, 0, 0, NULL), INGLE_ERROR_NO_STANDARD);
    assert_int_equal(ingle_json_exercise(NULL, 1, 1, &standard, 1, 0, NULL), INGLE_ERROR_ARGUMENT);
}

static void a_draft_is_left(void **state)
{
    (void)state;
    ingle_draft *draft;
    ingle_draft_input input;
    ingle_draft_input_start(&input);
    input.opening_area = 0.557;
    input.flue_area = 0.0707; /* π/4 × 0.3 × 0.3 */
    input.hydraulic_diameter = 0.3;
    input.height = 5;
    assert_int_equal(ingle_draft_new(NULL, &draft), INGLE_OK);
    assert_int_equal(ingle_json_draft(json, draft, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_int_equal(ingle_json_draft(json, draft, ingle_unit_find("m")), INGLE_OK);
    struct json_object *tree = left();
    assert_string_equal(text_of(member(member(tree, "inputs"), "height"), "text"), "5.00 m");
    assert_string_equal(text_of(member(member(tree, "inputs"), "height"), "from"), "given");
    json_object_put(tree);
    assert_int_equal(ingle_json_draft(json, draft, ingle_unit_find("deg")), INGLE_ERROR_DIMENSION);
    assert_int_equal(ingle_json_draft(NULL, draft, NULL), INGLE_ERROR_ARGUMENT);
    ingle_draft_free(draft);
}

static void probabilities_are_left_where_asked(void **state)
{
    (void)state;
    ingle_probability_options probability = {.size = sizeof probability};
    ingle_json_options options = {.size = sizeof options, .probability = &probability};
    assert_int_equal(check_with(short_hearth, &options), INGLE_OK);
    struct json_object *tree = left();
    assert_non_null(member(member(tree, "uncertainty"), "missing")); /* no tape is named */
    json_object_put(tree);
    probability.trials = INGLE_MOST_TRIALS + 1;
    assert_int_equal(check_with(short_hearth, &options), INGLE_ERROR_ARGUMENT);
    assert_int_equal(check_with(short_hearth, NULL), INGLE_OK);
    tree = left();
    assert_null(member(tree, "uncertainty"));
    json_object_put(tree);
}

/* ---- what cannot be answered ---------------------------------------------------------------- */

static void expect_refused(ingle_status status)
{
    assert_int_equal(status, INGLE_ERROR_ARGUMENT);
    struct json_object *tree = left();
    assert_string_equal(text_of(member(tree, "error"), "code"), "argument");
    json_object_put(tree);
}

static void nothing_is_answered_of_what_was_not_made(void **state)
{
    (void)state;
    ingle_solution *solution;
    ingle_frontier *frontier;
    ingle_sweep *sweep;
    ingle_solution_new(NULL, &solution);
    ingle_frontier_new(NULL, &frontier);
    ingle_sweep_new(NULL, &sweep);
    read_short();
    expect_refused(ingle_json_solution(json, solution));
    expect_refused(ingle_json_frontier(json, frontier));
    expect_refused(ingle_json_sweep(json, sweep));
    ingle_solution_free(solution);
    ingle_frontier_free(frontier);
    ingle_sweep_free(sweep);
}

static void nothing_is_answered_without_a_survey(void **state)
{
    (void)state;
    assert_int_equal(read_with("{}", NULL), INGLE_ERROR_MISSING_NAME);
    expect_refused(ingle_json_solution(json, asked.solution));
    expect_refused(ingle_json_frontier(json, asked.frontier));
    expect_refused(ingle_json_sweep(json, asked.sweep));
    expect_refused(ingle_json_comparison(json, asked.comparison));
    expect_refused(ingle_json_worksheet(json, asked.worksheet));
}

static void arguments_that_lack_are_refused(void **state)
{
    (void)state;
    assert_int_equal(ingle_json_solution(NULL, asked.solution), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_solution(json, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_frontier(json, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_sweep(json, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_comparison(json, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_worksheet(json, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_schema(json, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_schema(json, "solutions"), INGLE_ERROR_UNKNOWN_NAME);
    struct json_object *tree = left();
    assert_non_null(strstr(text_of(member(tree, "error"), "message"), "solution, frontier"));
    json_object_put(tree);
}

#define ASKED(name) cmocka_unit_test_setup_teardown(name, make_answers, free_answers)

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(before_reading_there_is_nothing),
        cmocka_unit_test(what_was_read_is_at_hand),
        cmocka_unit_test(the_options_win),
        cmocka_unit_test(a_document_without_a_unit_has_none),
        cmocka_unit_test(amendments_are_at_hand),
        cmocka_unit_test(what_cannot_be_read_leaves_nothing),
        cmocka_unit_test(a_long_id_is_cut_between_letters),
        cmocka_unit_test(ranges_are_read_from_texts),
        cmocka_unit_test(ranges_that_are_refused),
        ASKED(a_solution_is_left),
        ASKED(a_frontier_is_left),
        ASKED(a_sweep_is_left),
        ASKED(a_comparison_is_left),
        ASKED(a_worksheet_is_left),
        cmocka_unit_test(exercises_are_left),
        cmocka_unit_test(a_draft_is_left),
        cmocka_unit_test(probabilities_are_left_where_asked),
        cmocka_unit_test(nothing_is_answered_of_what_was_not_made),
        ASKED(nothing_is_answered_without_a_survey),
        ASKED(arguments_that_lack_are_refused),
    };
    return cmocka_run_group_tests(tests, document_make, document_unmake);
}
