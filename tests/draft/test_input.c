/* SPDX-License-Identifier: MIT */
/*
 * What goes in: defaults, text, what is refused and in which words; and that no NaN comes out,
 * whatever goes in.
 */
#include "fireplace.h"

/* ---- defaults and text ---------------------------------------------------------------------- */

static void test_defaults(void **state)
{
    ingle_draft_input input = defaults();
    (void)state;
    assert_int_equal(input.size, sizeof input);
    assert_near(input.criterion, 0.8 * FOOT, 1e-12);
    assert_near(input.rise, RISE_F(300), 1e-12);
    assert_near(input.outdoor_temperature, 294.261, 1e-5);
    assert_near(input.friction_factor, 1.0 / 30, 1e-15);
    for (size_t i = 0; i < ingle_draft_figure_count(); i++) {
        ingle_draft_figure figure = ingle_draft_figure_at(i);
        double value;
        assert_int_equal(ingle_draft_figure_find(ingle_draft_figure_id(figure)), figure);
        assert_non_null(ingle_draft_figure_label(figure));
        assert_non_null(ingle_draft_figure_symbol(figure));
        int goes_in = ingle_draft_figure_is_input(figure);
        assert_int_equal(ingle_draft_input_get(&input, figure, &value), goes_in);
        assert_int_equal(ingle_draft_figure_range(figure, NULL, NULL), goes_in);
        const ingle_draft_number *number = ingle_draft_figure_default(figure);
        if (number != NULL) {
            double least, most;
            ingle_draft_figure_range(figure, &least, &most);
            assert_near(value, ingle_draft_number_value(number), 0);
            assert_true(least <= value && value <= most);
            assert_string_equal(ingle_draft_number_group(number), "default");
            assert_string_equal(ingle_draft_number_id(number), ingle_draft_figure_id(figure));
        }
    }
    assert_int_equal(ingle_draft_figure_at(ingle_draft_figure_count()), 0);
    assert_int_equal(ingle_draft_figure_find("draught"), 0);
    assert_null(ingle_draft_figure_id(0));
    assert_null(ingle_draft_figure_label(16));
    assert_null(ingle_draft_figure_id(100));
    assert_null(ingle_draft_figure_id(121));
}

static void test_text(void **state)
{
    static const struct {
        ingle_draft_figure figure;
        const char *text;
        double value;
    } rows[] = {
        /* A rise is a difference: 459.67 is never added to it. */
        {INGLE_DRAFT_RISE, "300 F", RISE_F(300)},
        {INGLE_DRAFT_RISE, "300 °F", RISE_F(300)},
        {INGLE_DRAFT_RISE, " 166.5K ", 166.5},
        {INGLE_DRAFT_RISE, "150 °C", 150},
        {INGLE_DRAFT_OUTDOOR_TEMPERATURE, "70 F", AT_F(70)},
        {INGLE_DRAFT_OUTDOOR_TEMPERATURE, "-10 °C", 263.15},
        {INGLE_DRAFT_OUTDOOR_TEMPERATURE, "0 degF", AT_F(0)},
        {INGLE_DRAFT_ROOM_TEMPERATURE, "294.261 K", 294.261},
        {INGLE_DRAFT_ROOM_TEMPERATURE, "530 R", 530 / 1.8},
        {INGLE_DRAFT_ROOM_PRESSURE, "-5 Pa", -5},
        {INGLE_DRAFT_ROOM_PRESSURE, "-0.02 in.wc", -0.02 * 249.08891},
        {INGLE_DRAFT_AIR_PRESSURE, "29.92 inHg", 29.92 * 3386.3886},
        {INGLE_DRAFT_AIR_PRESSURE, "97 kPa", 97000},
        {INGLE_DRAFT_CRITERION, "0.8 ft/s", 0.8 * FOOT},
        {INGLE_DRAFT_CRITERION, "0.25 m/s", 0.25},
        {INGLE_DRAFT_FRICTION_FACTOR, "1/30", 1.0 / 30},
        {INGLE_DRAFT_INLET_LOSS, "1.25", 1.25},
        {INGLE_DRAFT_HEIGHT, "15 ft 6 in", 15.5 * FOOT},
        {INGLE_DRAFT_HYDRAULIC_DIAMETER, "10 3/4 in", 10.75 * INCH},
        {INGLE_DRAFT_OPENING_AREA, "7.5 ft2", 7.5 * FOOT * FOOT},
        {INGLE_DRAFT_FLUE_AREA, "90 sq in", 90 * INCH * INCH},
    };
    ingle_draft_input input = defaults();
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        double value;
        assert_int_equal(ingle_draft_input_set_text(&input, rows[i].figure, rows[i].text,
                                                    strlen(rows[i].text), NULL),
                         INGLE_OK);
        assert_true(ingle_draft_input_get(&input, rows[i].figure, &value));
        assert_near(value, rows[i].value, 1e-9);
    }
}

static void test_text_that_is_refused(void **state)
{
    static const struct {
        ingle_draft_figure figure;
        const char *text;
        ingle_status status;
        size_t position;
    } rows[] = {
        {INGLE_DRAFT_RISE, "", INGLE_ERROR_EMPTY, 0},
        {INGLE_DRAFT_RISE, "300", INGLE_ERROR_UNIT_MISSING, 3},
        {INGLE_DRAFT_RISE, "300 Pa", INGLE_ERROR_UNIT_UNKNOWN, 4},
        {INGLE_DRAFT_RISE, "hot", INGLE_ERROR_NUMBER, 0},
        {INGLE_DRAFT_RISE, "1,5 K", INGLE_ERROR_COMMA, 1},
        {INGLE_DRAFT_RISE, "-20 K", INGLE_ERROR_NEGATIVE, 0},
        {INGLE_DRAFT_RISE, "1e30 K", INGLE_ERROR_OVERFLOW, 0},
        {INGLE_DRAFT_RISE, "300 K\xff", INGLE_ERROR_ENCODING, 5},
        {INGLE_DRAFT_RISE, "1/0 K", INGLE_ERROR_ZERO_DENOMINATOR, 2},
        {INGLE_DRAFT_INLET_LOSS, "1 m", INGLE_ERROR_TRAILING_TEXT, 2},
        {INGLE_DRAFT_HEIGHT, "15", INGLE_ERROR_UNIT_MISSING, 2},
        {INGLE_DRAFT_HEIGHT, "15 ft2", INGLE_ERROR_DIMENSION, 3},
        {INGLE_DRAFT_CRITERION, "nan m/s", INGLE_ERROR_NUMBER, 0},
    };
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        ingle_draft_input input = defaults();
        ingle_draft_input before = input;
        size_t position = 99;
        assert_int_equal(ingle_draft_input_set_text(&input, rows[i].figure, rows[i].text,
                                                    strlen(rows[i].text), &position),
                         rows[i].status);
        assert_int_equal(position, rows[i].position);
        assert_memory_equal(&input, &before, sizeof input);
    }
    ingle_draft_input input = defaults();
    assert_int_equal(ingle_draft_input_set_text(&input, INGLE_DRAFT_THETA, "1", 1, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_draft_input_set(&input, 0, 1), INGLE_ERROR_ARGUMENT);
}

/* ---- what is refused ------------------------------------------------------------------------ */

static ingle_draft_input usual(void)
{
    return round_fireplace(0.7, 0.3, 4.6);
}

static void test_what_no_fireplace_has(void **state)
{
    static const struct {
        ingle_draft_figure figure;
        double value;
        ingle_status status;
        const char *words;
    } rows[] = {
        {INGLE_DRAFT_HEIGHT, 0, INGLE_ERROR_IMPLAUSIBLE, "is 0 or was not given"},
        {INGLE_DRAFT_HEIGHT, -1, INGLE_ERROR_NEGATIVE, "cannot be -1 m"},
        {INGLE_DRAFT_HEIGHT, NAN, INGLE_ERROR_NUMBER, "no finite number"},
        {INGLE_DRAFT_HEIGHT, 1e300, INGLE_ERROR_IMPLAUSIBLE, "so large"},
        {INGLE_DRAFT_OPENING_AREA, 0, INGLE_ERROR_IMPLAUSIBLE, "not given"},
        {INGLE_DRAFT_OPENING_AREA, 1e6, INGLE_ERROR_IMPLAUSIBLE, "from 0.001 m2 to 100 m2"},
        {INGLE_DRAFT_FLUE_AREA, INFINITY, INGLE_ERROR_NUMBER, "no finite number"},
        {INGLE_DRAFT_OUTDOOR_TEMPERATURE, 0, INGLE_ERROR_IMPLAUSIBLE, "from 180 K to 340 K"},
        {INGLE_DRAFT_OUTDOOR_TEMPERATURE, -5, INGLE_ERROR_NEGATIVE, "cannot be -5 K"},
        {INGLE_DRAFT_ROOM_TEMPERATURE, 70, INGLE_ERROR_IMPLAUSIBLE, "cannot be 70 K"},
        {INGLE_DRAFT_RISE, 0, INGLE_ERROR_IMPLAUSIBLE, "from 1 K"},
        {INGLE_DRAFT_ROOM_PRESSURE, -1e5, INGLE_ERROR_IMPLAUSIBLE, "from -1000 Pa"},
        {INGLE_DRAFT_AIR_PRESSURE, 29.92, INGLE_ERROR_IMPLAUSIBLE, "from 30000 Pa"},
        {INGLE_DRAFT_CRITERION, 0, INGLE_ERROR_IMPLAUSIBLE, "not given"},
        {INGLE_DRAFT_FRICTION_FACTOR, -0.1, INGLE_ERROR_NEGATIVE, "Friction factor"},
        {INGLE_DRAFT_HYDRAULIC_DIAMETER, 0.32, INGLE_ERROR_CONTRADICTION, "round flue"},
    };
    ingle_draft *draft = NULL;
    (void)state;
    assert_int_equal(ingle_draft_new(NULL, &draft), INGLE_OK);
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        ingle_draft_input input = usual();
        double value = 7;
        ingle_draft_input_set(&input, rows[i].figure, rows[i].value);
        assert_int_equal(ingle_draft_velocity(&input, &value), rows[i].status);
        assert_near(value, 7, 0);
        assert_int_equal(ingle_draft_estimate(draft, &input), rows[i].status);
        assert_int_equal(ingle_draft_error_figure(draft), rows[i].figure);
        if (strstr(ingle_draft_error_text(draft), rows[i].words) == NULL) {
            fail_msg("%s", ingle_draft_error_text(draft));
        }
        assert_false(ingle_draft_get(draft, INGLE_DRAFT_FRONTAL_VELOCITY, &value));
        assert_int_equal(ingle_draft_standing_of(draft), 0);
        assert_int_equal(ingle_draft_step_count(draft), 0);
    }
    ingle_draft_free(draft);
}

static void test_calls_that_are_refused(void **state)
{
    ingle_draft_input input = usual();
    ingle_draft *draft = NULL;
    double value;
    char room[8];
    (void)state;
    assert_int_equal(ingle_draft_new(NULL, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_draft_input_start(NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_draft_velocity(NULL, &value), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_draft_velocity(&input, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_draft_estimate(NULL, &input), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_draft_required(&input, INGLE_DRAFT_THETA, &value),
                     INGLE_ERROR_ARGUMENT);
    input.inlet = 3;
    assert_int_equal(ingle_draft_velocity(&input, &value), INGLE_ERROR_ARGUMENT);
    input.inlet = INGLE_DRAFT_INLET_SHARP; /* without a throat */
    assert_int_equal(ingle_draft_velocity(&input, &value), INGLE_ERROR_IMPLAUSIBLE);
    input.inlet = 0;
    input.circumstances = 8;
    assert_int_equal(ingle_draft_velocity(&input, &value), INGLE_ERROR_ARGUMENT);
    input.circumstances = 0;
    input.size = 8;
    assert_int_equal(ingle_draft_velocity(&input, &value), INGLE_ERROR_STRUCT_SIZE);
    struct {
        ingle_draft_input known;
        double unknown;
    } longer = {usual(), 1};
    longer.known.size = sizeof longer;
    assert_int_equal(ingle_draft_velocity(&longer.known, &value), INGLE_ERROR_STRUCT_NEWER);
    longer.unknown = 0;
    assert_int_equal(ingle_draft_velocity(&longer.known, &value), INGLE_OK);
    assert_int_equal(ingle_draft_new(NULL, &draft), INGLE_OK);
    assert_int_equal(ingle_draft_sentence(draft, NULL, room, 8, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_draft_figure_text(draft, 101, NULL, room, 8, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_string_equal(ingle_draft_error_text(draft), "");
    ingle_draft_free(draft);
    ingle_draft_free(NULL);
}

/* ---- no NaN leaves -------------------------------------------------------------------------- */

static uint64_t seed = 7;

static uint64_t bits(void)
{
    seed ^= seed << 13;
    seed ^= seed >> 7;
    seed ^= seed << 17;
    return seed;
}

/* A double of any kind: sensible, at the end of its range, or no number at all. */
static double any_value(ingle_draft_figure figure)
{
    double least, most, value;
    uint64_t raw = bits();
    ingle_draft_figure_range(figure, &least, &most);
    switch (bits() % 16) {
    case 0:
        return least;
    case 1:
        return most;
    case 2:
        return bits() % 2 == 0 ? nextafter(least, -INFINITY) : nextafter(most, INFINITY);
    case 3:
        memcpy(&value, &raw, sizeof value);
        return value;
    case 4:
        return bits() % 2 == 0 ? NAN : INFINITY;
    case 5:
        return 0.0;
    default:
        return least + (most - least) * pow((double)(raw >> 11) / 9007199254740992.0, 3);
    }
}

static ingle_draft_input any_input(void)
{
    ingle_draft_input input = usual();
    for (ingle_draft_figure figure = 1; figure <= INGLE_DRAFT_THROAT_AREA; figure++) {
        if (bits() % 3 == 0) {
            ingle_draft_input_set(&input, figure, any_value(figure));
        }
    }
    if (bits() % 2 == 0) { /* one that the flue's area can have */
        input.hydraulic_diameter = sqrt(fabs(input.flue_area));
    }
    input.inlet = (ingle_draft_inlet)(bits() % 3);
    input.circumstances = (ingle_draft_circumstances)(bits() % 8);
    return input;
}

static void check_texts(const ingle_draft *draft)
{
    char room[1200];
    size_t length;
    assert_int_equal(ingle_draft_sentence(draft, NULL, room, sizeof room, &length), INGLE_OK);
    assert_null(strchr(room, '?'));
    for (size_t i = 0; i < ingle_draft_step_count(draft); i++) {
        for (ingle_step_part part = INGLE_STEP_EXPRESSION; part <= INGLE_STEP_REMARK; part++) {
            assert_int_equal(
                ingle_draft_step_text(draft, i, part, NULL, room, sizeof room, &length),
                INGLE_OK);
            assert_null(strchr(room, '?'));
            assert_null(strchr(room, '{'));
        }
    }
    for (size_t i = 0; i < ingle_draft_outside_count(draft); i++) {
        assert_true(strlen(ingle_draft_outside_at(draft, i)) > 20);
    }
}

static void check_figures(const ingle_draft *draft)
{
    for (size_t i = 0; i < ingle_draft_figure_count(); i++) {
        ingle_draft_figure figure = ingle_draft_figure_at(i);
        double value;
        char room[64];
        if (ingle_draft_get(draft, figure, &value)) {
            assert_true(isfinite(value));
            assert_int_equal(ingle_draft_figure_text(draft, figure, NULL, room, sizeof room, NULL),
                             INGLE_OK);
            assert_null(strchr(room, '?'));
        }
        if (ingle_draft_sensitivity(draft, figure, &value)) {
            assert_true(isfinite(value));
        }
    }
}

static void test_no_nan_leaves(void **state)
{
    ingle_draft *draft = NULL;
    int done = 0, refused = 0, still = 0;
    (void)state;
    assert_int_equal(ingle_draft_new(NULL, &draft), INGLE_OK);
    for (int i = 0; i < 60000; i++) {
        double velocity = 0;
        ingle_draft_input input = any_input();
        ingle_status status = ingle_draft_estimate(draft, &input);
        assert_int_equal(ingle_draft_velocity(&input, &velocity), status);
        assert_true(isfinite(velocity) && velocity >= 0);
        if (status == INGLE_OK) {
            done++;
            still += ingle_draft_standing_of(draft) == INGLE_DRAFT_NO_DRAFT;
            check_texts(draft);
        } else {
            refused++;
            assert_true(strlen(ingle_draft_error_text(draft)) > 20);
            assert_int_not_equal(ingle_draft_error_figure(draft), 0);
        }
        check_figures(draft);
    }
    assert_in_range(done, 3000, 57000);
    assert_in_range(refused, 3000, 57000);
    assert_in_range(still, 30, 30000);
    ingle_draft_free(draft);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_defaults),
        cmocka_unit_test(test_text),
        cmocka_unit_test(test_text_that_is_refused),
        cmocka_unit_test(test_what_no_fireplace_has),
        cmocka_unit_test(test_calls_that_are_refused),
        cmocka_unit_test(test_no_nan_leaves),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
