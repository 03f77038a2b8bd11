/* SPDX-License-Identifier: MIT */
/*
 * From a survey to an estimate: where each figure comes from, what is missing, what is outside what
 * may be claimed, the texts, and memory.
 */
#include "fireplace.h"

struct entry {
    const char *path;
    const char *text;
};

static ingle_survey *survey;
static ingle_draft *draft;
static ingle_draft_input input;

static int make(void **state)
{
    (void)state;
    return ingle_survey_new(NULL, &survey) == INGLE_OK &&
                   ingle_draft_new(NULL, &draft) == INGLE_OK &&
                   ingle_draft_input_start(&input) == INGLE_OK
               ? 0
               : -1;
}

static int unmake(void **state)
{
    (void)state;
    ingle_survey_free(survey);
    ingle_draft_free(draft);
    return 0;
}

static void record(const struct entry *entries)
{
    for (; entries->path != NULL; entries++) {
        assert_int_equal(ingle_survey_record(survey, entries->path, entries->text, NULL),
                         INGLE_OK);
    }
}

static ingle_status take(void)
{
    const ingle_standard *irc = ingle_standard_find("irc-2021");
    return ingle_draft_take_survey(draft, survey, &irc, 1, &input);
}

#define RECORD(...) record((const struct entry[]){__VA_ARGS__, {NULL, NULL}})
#define OPENING {"opening.width", "36 in"}, {"opening.height", "30 in"}
#define ROUND {"flue.diameter", "10 3/4 in"}
#define HEIGHT {"flue.above-hearth", "15 ft"}

static void test_a_whole_survey(void **state)
{
    (void)state;
    RECORD(OPENING, ROUND, HEIGHT, {"appliance.kind", "masonry-fireplace"});
    assert_int_equal(take(), INGLE_OK);
    assert_int_equal(ingle_draft_missing_count(draft), 0);
    assert_near(input.opening_area, 1080 * INCH * INCH, 1e-12);
    assert_near(input.flue_area, 90.76257526 * INCH * INCH, 1e-9);
    assert_near(input.hydraulic_diameter, 10.75 * INCH, 1e-12);
    assert_near(input.height, 15 * FOOT, 1e-12);
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_string_equal(ingle_draft_origin(draft, INGLE_DRAFT_OPENING_AREA),
                        "opening.width × opening.height");
    assert_string_equal(ingle_draft_origin(draft, INGLE_DRAFT_HEIGHT), "flue.above-hearth");
    assert_null(ingle_draft_origin(draft, INGLE_DRAFT_RISE));
    assert_within(figure_of(draft, INGLE_DRAFT_FRONTAL_VELOCITY) / FOOT, 0.7843, 5e-5);
    assert_int_equal(ingle_draft_outside_count(draft), 0);
    assert_int_equal(ingle_draft_reached(draft), 0);
}

static void test_other_ways_to_say_it(void **state)
{
    (void)state;
    RECORD({"opening.area", "7.5 ft2"}, {"flue.width", "11 in"}, {"flue.depth", "13 in"},
           {"flue.height", "12 ft 6 in"}, {"opening.height", "30 in"}, {"throat.width", "36 in"},
           {"throat.depth", "4 in"}, {"rain-cap.present", "yes"},
           {"spark-arrestor.present", "yes"});
    assert_int_equal(take(), INGLE_OK);
    assert_near(input.flue_area, 143 * INCH * INCH, 1e-12);
    assert_near(input.hydraulic_diameter, 4 * 143.0 / 48 * INCH, 1e-12);
    assert_near(input.height, 15 * FOOT, 1e-12);
    assert_near(input.throat_area, 144 * INCH * INCH, 1e-12);
    assert_near(input.cap_loss, 1.0, 1e-12);
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_string_equal(ingle_draft_origin(draft, INGLE_DRAFT_CAP_LOSS),
                        "rain-cap.present, spark-arrestor.present");
    assert_string_equal(ingle_draft_origin(draft, INGLE_DRAFT_HEIGHT),
                        "flue.height + opening.height");
}

/* A liner's net area is the standard's; its hydraulic diameter is by its nominal proportions. */
static void test_liners(void **state)
{
    (void)state;
    RECORD(OPENING, HEIGHT, {"flue.liner", "round-12"});
    assert_int_equal(take(), INGLE_OK);
    assert_near(input.hydraulic_diameter, 12 * INCH, 1e-12);
    ingle_survey_record(survey, "flue.liner", "8x12", NULL);
    assert_int_equal(take(), INGLE_OK);
    assert_near(input.hydraulic_diameter, 2 * sqrt(input.flue_area * 96) / 20, 1e-12);
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    bool told = false;
    for (size_t i = 0; i < ingle_draft_notice_count(draft); i++) {
        told = told || strstr(ingle_draft_notice_at(draft, i), "nominal size") != NULL;
    }
    assert_true(told);
    /* Without a standard nobody knows its area. */
    ingle_draft_input_start(&input);
    assert_int_equal(ingle_draft_take_survey(draft, survey, NULL, 0, &input),
                     INGLE_ERROR_MISSING_NAME);
    assert_string_equal(ingle_quantity_id(ingle_draft_missing_at(draft, 0)), "flue.net-area");
}

static void test_area_and_shape_alone(void **state)
{
    (void)state;
    RECORD(OPENING, HEIGHT, {"flue.net-area", "100 sq in"});
    assert_int_equal(take(), INGLE_ERROR_MISSING_NAME);
    assert_string_equal(ingle_quantity_id(ingle_draft_missing_at(draft, 0)), "flue.shape");
    RECORD({"flue.shape", "square"});
    assert_int_equal(take(), INGLE_OK);
    assert_near(input.hydraulic_diameter, 10 * INCH, 1e-12);
    RECORD({"flue.shape", "round"});
    assert_int_equal(take(), INGLE_OK);
    assert_near(input.hydraulic_diameter, sqrt(400 / PI) * INCH, 1e-12);
    RECORD({"flue.shape", "rectangular"}, {"flue.shorter-side", "8 in"},
           {"flue.longer-side", "12 in"});
    assert_int_equal(take(), INGLE_OK);
    assert_near(input.hydraulic_diameter, 2 * sqrt(9600) / 20 * INCH, 1e-12);
}

static void test_what_is_missing(void **state)
{
    (void)state;
    assert_int_equal(take(), INGLE_ERROR_MISSING_NAME);
    assert_int_equal(ingle_draft_missing_count(draft), 4);
    assert_string_equal(ingle_draft_error_text(draft),
                        "For an estimate of the draft the survey lacks opening.width, "
                        "opening.height, flue.above-hearth and flue.liner.");
    assert_null(ingle_draft_missing_at(draft, 4));
    /* What was given otherwise is not missing. */
    ingle_draft_input_set(&input, INGLE_DRAFT_HEIGHT, 5);
    ingle_draft_input_set(&input, INGLE_DRAFT_FLUE_AREA, 0.07);
    ingle_draft_input_set(&input, INGLE_DRAFT_HYDRAULIC_DIAMETER, 0.28);
    RECORD(OPENING);
    assert_int_equal(take(), INGLE_OK);
    assert_near(input.height, 5, 0);
    assert_string_equal(ingle_draft_error_text(draft), "");
}

/* What is given wins over the survey, and a diameter alone is a round flue's. */
static void test_what_is_given(void **state)
{
    (void)state;
    RECORD(OPENING, ROUND, HEIGHT);
    assert_int_equal(ingle_draft_input_set_text(&input, INGLE_DRAFT_HYDRAULIC_DIAMETER, "12 in",
                                                5, NULL),
                     INGLE_OK);
    assert_int_equal(ingle_draft_input_set(&input, INGLE_DRAFT_HEIGHT, 7), INGLE_OK);
    assert_int_equal(take(), INGLE_OK);
    assert_near(input.flue_area, PI * 36 * INCH * INCH, 1e-12);
    assert_near(input.height, 7, 0);
    assert_null(ingle_draft_from(draft, INGLE_DRAFT_HEIGHT));
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_string_equal(ingle_draft_from(draft, INGLE_DRAFT_HEIGHT), "given");
    assert_string_equal(ingle_draft_from(draft, INGLE_DRAFT_OPENING_AREA), "survey");
    assert_string_equal(ingle_draft_from(draft, INGLE_DRAFT_RISE), "default");
    assert_null(ingle_draft_from(draft, INGLE_DRAFT_THROAT_AREA));
    assert_null(ingle_draft_from(draft, INGLE_DRAFT_THETA));
    assert_null(ingle_draft_origin(draft, INGLE_DRAFT_HEIGHT));
    /* What is changed after is not the survey's any more. */
    input.opening_area *= 2;
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_string_equal(ingle_draft_from(draft, INGLE_DRAFT_OPENING_AREA), "given");
}

static void test_what_contradicts(void **state)
{
    (void)state;
    RECORD(OPENING, HEIGHT, ROUND, {"flue.width", "12 in"});
    assert_int_equal(take(), INGLE_ERROR_CONTRADICTION);
    assert_string_equal(ingle_draft_error_text(draft),
                        "flue.diameter: Two things recorded cannot both be so: flue.diameter is "
                        "10 3/4 in, and flue.width is 12 in.");
}

/* ---- what may be claimed -------------------------------------------------------------------- */

static void expect_outside(ingle_draft_figure figure, const char *words)
{
    bool told = false;
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_true(ingle_draft_get(draft, INGLE_DRAFT_FRONTAL_VELOCITY, NULL));
    for (size_t i = 0; i < ingle_draft_outside_count(draft); i++) {
        told = told || (ingle_draft_outside_figure(draft, i) == figure &&
                        strstr(ingle_draft_outside_at(draft, i), words) != NULL);
    }
    assert_true(told);
    assert_non_null(strstr(ingle_draft_notice_at(draft, 0), "outside what may be claimed"));
}

static void test_outside_by_survey(void **state)
{
    (void)state;
    RECORD(ROUND, HEIGHT, {"opening.exposure", "more-sides"}, {"opening.total-area", "9 ft2"},
           {"appliance.kind", "factory-built-fireplace"}, {"flue.bends", "2"});
    assert_int_equal(take(), INGLE_OK);
    assert_near(input.fitting_loss, 0.6, 1e-12);
    assert_near(input.opening_area, 9 * FOOT * FOOT, 1e-12);
    expect_outside(INGLE_DRAFT_OPENING_AREA, "two or more sides");
    expect_outside(0, "open masonry fireplace");
    expect_outside(INGLE_DRAFT_FITTING_LOSS, "straight");
}

static void test_ends_of_the_range(void **state)
{
    static const struct {
        ingle_draft_figure figure;
        double least, most;
    } rows[] = {{INGLE_DRAFT_OPENING_AREA, 0.15, 2.2},
                {INGLE_DRAFT_HEIGHT, 3, 12},
                {INGLE_DRAFT_RISE, RISE_F(100), RISE_F(1000)}};
    (void)state;
    for (size_t i = 0; i < 3; i++) {
        for (int end = 0; end < 2; end++) {
            double limit = end == 0 ? rows[i].least : rows[i].most;
            input = round_fireplace(0.7, 0.3, 5);
            ingle_draft_input_set(&input, rows[i].figure, limit);
            assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
            assert_int_equal(ingle_draft_outside_count(draft), 0);
            ingle_draft_input_set(&input, rows[i].figure, limit * (end == 0 ? 0.9999 : 1.0001));
            expect_outside(rows[i].figure, "m");
        }
    }
    for (int end = 0; end < 2; end++) {
        double limit = end == 0 ? 0.10 : 0.45;
        input = round_fireplace(0.7, limit, 5);
        assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
        assert_int_equal(ingle_draft_outside_count(draft), 0);
        input = round_fireplace(0.7, limit * (end == 0 ? 0.9999 : 1.0001), 5);
        expect_outside(INGLE_DRAFT_HYDRAULIC_DIAMETER, "hydraulic diameter");
    }
}

static void test_shapes_and_throats(void **state)
{
    (void)state;
    input = round_fireplace(0.7, 0.3, 5);
    input.flue_area = 0.2 * 0.4;
    input.hydraulic_diameter = 2 * 0.2 * 0.4 / 0.6;
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_int_equal(ingle_draft_outside_count(draft), 0);
    input.throat_area = input.flue_area;
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_int_equal(ingle_draft_outside_count(draft), 0);
    input.throat_area *= 0.999;
    expect_outside(INGLE_DRAFT_THROAT_AREA, "throat");
    input.flue_area = 0.2 * 0.401;
    input.hydraulic_diameter = 2 * 0.2 * 0.401 / 0.601;
    expect_outside(INGLE_DRAFT_HYDRAULIC_DIAMETER, "2:1");
    input.room_pressure = -2;
    expect_outside(INGLE_DRAFT_ROOM_PRESSURE, "outdoor pressure");
}

/* ---- texts ---------------------------------------------------------------------------------- */

static const char *sentence(const char *unit)
{
    static char room[600];
    ingle_format format = {.size = sizeof format, .unit = ingle_unit_find(unit)};
    assert_int_equal(ingle_draft_sentence(draft, &format, room, sizeof room, NULL), INGLE_OK);
    return room;
}

static void test_sentences(void **state)
{
    (void)state;
    input = round_fireplace(1080 * INCH * INCH, 10.75 * INCH, 15 * FOOT);
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_string_equal(sentence("in"),
                        "Through the opening goes an estimated 0.784 ft/s (0.627 ft/s to "
                        "0.941 ft/s) on the average; the 0.800 ft/s asked for lies within its "
                        "uncertainty. By the estimate a round flue of 10.85 in, or this flue at a "
                        "height of 15.78 ft, would reach it.");
    assert_string_equal(sentence("mm"),
                        "Through the opening goes an estimated 0.239 m/s (0.191 m/s to 0.287 m/s) "
                        "on the average; the 0.244 m/s asked for lies within its uncertainty. By "
                        "the estimate a round flue of 276 mm, or this flue at a height of 4.81 m, "
                        "would reach it.");
    input.criterion = 0.1;
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_int_equal(ingle_draft_standing_of(draft), INGLE_DRAFT_REACHES);
    assert_non_null(strstr(sentence("m"), "that reaches the 0.100 m/s asked for."));
    input.criterion = 0.4;
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_int_equal(ingle_draft_standing_of(draft), INGLE_DRAFT_FALLS_SHORT);
    assert_non_null(strstr(sentence("m"), "that falls short of the 0.400 m/s asked for."));
    input.room_pressure = -100;
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_int_equal(ingle_draft_standing_of(draft), INGLE_DRAFT_NO_DRAFT);
    assert_non_null(strstr(sentence("m"), "Nothing drives a flow"));
    assert_false(ingle_draft_get(draft, INGLE_DRAFT_FRONTAL_VELOCITY, NULL));
}

static const char *step(ingle_draft_figure figure, ingle_step_part part)
{
    static char room[600];
    for (size_t i = 0; i < ingle_draft_step_count(draft); i++) {
        if (ingle_draft_step_figure(draft, i) == figure) {
            assert_int_equal(ingle_draft_step_text(draft, i, part, NULL, room, sizeof room, NULL),
                             INGLE_OK);
            return room;
        }
    }
    return NULL;
}

static void test_steps(void **state)
{
    (void)state;
    input = round_fireplace(1080 * INCH * INCH, 10.75 * INCH, 15 * FOOT);
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_string_equal(step(INGLE_DRAFT_TOTAL_LOSS, INGLE_STEP_EXPRESSION),
                        "k_in + k_fit + k_f + k_cap + 1");
    assert_string_equal(step(INGLE_DRAFT_TOTAL_LOSS, INGLE_STEP_SUBSTITUTED),
                        "1 + 0 + 0.55814 + 0 + 1");
    assert_string_equal(step(INGLE_DRAFT_THEORETICAL_DRAFT, INGLE_STEP_EXPRESSION),
                        "g × H × (ρo − ρm)");
    assert_string_equal(step(INGLE_DRAFT_FRONTAL_VELOCITY, INGLE_STEP_SENTENCE),
                        "mean velocity through the opening: V = r × w × ρm / ρr = 0.0840394 × "
                        "4.45579 m/s × 0.765819 kg/m3 / 1.19957 kg/m3 = 0.23906 m/s, 0.784 ft/s");
    assert_null(step(INGLE_DRAFT_INLET_LOSS, INGLE_STEP_SENTENCE));
    input.throat_area = 1.12 * input.flue_area;
    input.inlet = INGLE_DRAFT_INLET_SHARP;
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    assert_non_null(step(INGLE_DRAFT_INLET_LOSS, INGLE_STEP_SENTENCE));
    assert_within(figure_of(draft, INGLE_DRAFT_INLET_LOSS), 1.00, 0.0055);
    assert_int_equal(ingle_draft_step_text(draft, 99, INGLE_STEP_SENTENCE, NULL, NULL, 0, NULL),
                     INGLE_ERROR_ARGUMENT);
}

/* 0.8 ft/s is a large fire, and the estimate says what it is not: always. */
static void test_notices(void **state)
{
    static const char *const words[] = {"large fire", "no promise about smoke",
                                        "no measured fireplace", "from memory"};
    (void)state;
    input = round_fireplace(0.7, 0.3, 5);
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++) {
        bool told = false;
        for (size_t j = 0; j < ingle_draft_notice_count(draft); j++) {
            told = told || strstr(ingle_draft_notice_at(draft, j), words[i]) != NULL;
            assert_null(strstr(ingle_draft_notice_at(draft, j), "safe"));
        }
        assert_true(told);
    }
}

/* ---- pages ---------------------------------------------------------------------------------- */

struct written {
    char text[20000];
    size_t length;
    size_t room; /* after so many bytes writing fails */
};

static int32_t keep(void *context, const char *text, size_t length)
{
    struct written *written = context;
    if (written->length + length >= written->room) {
        return 1;
    }
    memcpy(written->text + written->length, text, length);
    written->length += length;
    written->text[written->length] = '\0';
    return 0;
}

static void test_pages(void **state)
{
    static struct written written;
    static const char *const parts[] = {"What comes out", "What goes in", "Working", "Notice",
                                        "from flue.diameter", "by default (from-memory)",
                                        "Outside what may be claimed", "large"};
    ingle_page page = {.size = sizeof page, .unit = ingle_unit_find("mm")};
    (void)state;
    written = (struct written){.room = sizeof written.text};
    assert_int_equal(ingle_draft_page(draft, NULL, keep, &written), INGLE_ERROR_ARGUMENT);
    RECORD(OPENING, ROUND, {"flue.above-hearth", "8 ft"});
    assert_int_equal(take(), INGLE_OK);
    assert_int_equal(ingle_draft_estimate(draft, &input), INGLE_OK);
    for (page.format = 0; page.format < (int32_t)ingle_page_format_count(); page.format++) {
        written.length = 0;
        assert_int_equal(ingle_draft_page(draft, &page, keep, &written), INGLE_OK);
        for (size_t i = 0; i < sizeof parts / sizeof parts[0]; i++) {
            assert_non_null(strstr(written.text, parts[i]));
        }
        assert_non_null(strstr(written.text, "mm"));
    }
    written = (struct written){.room = 1000};
    assert_int_equal(ingle_draft_page(draft, NULL, keep, &written), INGLE_ERROR_IO);
    page = (ingle_page){.size = sizeof page, .unit = ingle_unit_find("kW")};
    written = (struct written){.room = sizeof written.text};
    assert_int_equal(ingle_draft_page(draft, &page, keep, &written), INGLE_ERROR_DIMENSION);
}

static void test_decimals(void **state)
{
    static const struct {
        double value;
        int32_t digits;
        const char *text;
    } rows[] = {{0, 6, "0"},
                {0.1, 6, "0.1"},
                {-0.25, 1, "-0.3"},
                {2.0 / 3, 5, "0.66667"},
                {123456, 3, "123000"},
                {99.99, 3, "100"},
                {1e14, 15, "100000000000000"},
                {-1e-9, 2, "-0.000000001"},
                {1e-300, 15, "0"},
                {101325, 10, "101325"},
                {0.1 + 0.2, 15, "0.3"}};
    char room[32];
    size_t length;
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        assert_int_equal(ingle_draft_decimal(rows[i].value, rows[i].digits, room, 32, &length),
                         INGLE_OK);
        assert_string_equal(room, rows[i].text);
    }
    assert_int_equal(ingle_draft_decimal(NAN, 3, room, 32, NULL), INGLE_ERROR_NUMBER);
    assert_int_equal(ingle_draft_decimal(1e15, 3, room, 32, NULL), INGLE_ERROR_OVERFLOW);
    assert_int_equal(ingle_draft_decimal(1, 0, room, 32, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_draft_decimal(1.25, 3, room, 3, &length), INGLE_CUT);
    assert_int_equal(length, 4);
    assert_string_equal(room, "1.");
}

/* Against the C library's own writing; below 15 places nothing is written. */
static void test_decimals_against_the_c_library(void **state)
{
    uint64_t seed = 99;
    char ours[40], theirs[64];
    (void)state;
    for (int i = 0; i < 20000; i++) {
        seed = seed * UINT64_C(6364136223846793005) + 1;
        double value = ((double)(seed >> 11) / 9007199254740992.0) * pow(10, (double)(i % 20) - 8);
        assert_int_equal(ingle_draft_decimal(value, 9, ours, sizeof ours, NULL), INGLE_OK);
        snprintf(theirs, sizeof theirs, "%.9g", value);
        double expected = strtod(theirs, NULL);
        assert_within(strtod(ours, NULL), expected, 1e-15 * (1.0 + expected));
    }
}

/* ---- memory --------------------------------------------------------------------------------- */

static void *nothing(void *context, void *memory, size_t bytes)
{
    (void)context;
    (void)memory;
    (void)bytes;
    return NULL;
}

static void test_no_memory(void **state)
{
    ingle_allocator allocator = {sizeof allocator, nothing, NULL};
    ingle_draft *none = NULL;
    (void)state;
    assert_int_equal(ingle_draft_new(&allocator, &none), INGLE_ERROR_MEMORY);
    assert_null(none);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(test_a_whole_survey, make, unmake),
        cmocka_unit_test_setup_teardown(test_other_ways_to_say_it, make, unmake),
        cmocka_unit_test_setup_teardown(test_liners, make, unmake),
        cmocka_unit_test_setup_teardown(test_area_and_shape_alone, make, unmake),
        cmocka_unit_test_setup_teardown(test_what_is_missing, make, unmake),
        cmocka_unit_test_setup_teardown(test_what_is_given, make, unmake),
        cmocka_unit_test_setup_teardown(test_what_contradicts, make, unmake),
        cmocka_unit_test_setup_teardown(test_pages, make, unmake),
        cmocka_unit_test_setup_teardown(test_outside_by_survey, make, unmake),
        cmocka_unit_test_setup_teardown(test_ends_of_the_range, make, unmake),
        cmocka_unit_test_setup_teardown(test_shapes_and_throats, make, unmake),
        cmocka_unit_test_setup_teardown(test_sentences, make, unmake),
        cmocka_unit_test_setup_teardown(test_steps, make, unmake),
        cmocka_unit_test_setup_teardown(test_notices, make, unmake),
        cmocka_unit_test(test_decimals),
        cmocka_unit_test(test_decimals_against_the_c_library),
        cmocka_unit_test(test_no_memory),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
