/* SPDX-License-Identifier: MIT */
/*
 * The model against reference values. Each was computed apart from this library, from the printed
 * relations, and stands with what it rests on.
 */
#include "fireplace.h"

/* ---- the buoyancy number -------------------------------------------------------------------- */

static double theta_of(double rise)
{
    ingle_draft_input input = by_ratio(12.0, FOOT, 15.0 * FOOT);
    input.rise = rise;
    ingle_draft *draft = estimate_of(&input);
    double theta = figure_of(draft, INGLE_DRAFT_THETA);
    ingle_draft_free(draft);
    return theta;
}

/* Θ = θ (1 − θ) at 70 °F: derived. */
static void test_theta(void **state)
{
    (void)state;
    assert_within(theta_of(RISE_F(300)), 0.2308425467, 5e-11);
    assert_within(theta_of(RISE_F(500)), 0.2497924231, 5e-11);
    assert_within(theta_of(RISE_F(150)), 0.1719889055, 5e-11);
    assert_within(theta_of(RISE_F(529.67)), 0.25, 1e-15);
}

/* √(4 Θ) by the rise in °F at 70 °F, to the digits of the reference table: derived. */
static void test_velocity_by_rise(void **state)
{
    static const double rows[][2] = {{100, .7310}, {150, .8294}, {200, .8921}, {300, .9609},
                                     {400, .9902}, {500, .9996}, {600, .9981}, {800, .9791},
                                     {1000, .9516}};
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        assert_within(sqrt(4.0 * theta_of(RISE_F(rows[i][0]))), rows[i][1], 5.1e-5);
    }
}

/* ---- the velocity --------------------------------------------------------------------------- */

/* Equation (5) with g 9.80665, f 1/30, inlet 1, exit 1, 70 °F: derived. */
static void test_reference_velocities(void **state)
{
    static const struct {
        double height, rise, losses, metres, feet;
    } rows[] = {
        {15, 300, 2.5, 0.2397922399, 0.7867199473},
        {22, 300, 2.7333333, 0.2777311170, 0.9111913289},
        {15, 500, 2.5, 0.2494404185, 0.8183740766},
    };
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        ingle_draft_input input = by_ratio(12.0, FOOT, rows[i].height * FOOT);
        input.rise = RISE_F(rows[i].rise);
        ingle_draft *draft = estimate_of(&input);
        double velocity = figure_of(draft, INGLE_DRAFT_FRONTAL_VELOCITY);
        assert_within(velocity, rows[i].metres, 5e-11);
        assert_within(velocity / FOOT, rows[i].feet, 5e-11);
        assert_within(figure_of(draft, INGLE_DRAFT_TOTAL_LOSS), rows[i].losses, 1e-7);
        ingle_draft_free(draft);
    }
}

static const double heights[] = {10, 15, 22, 30};
static const double circles[] = {8, 10, 12, 15, 18};

/* V in ft/s by rule, height and the circle of the same area, to three digits: derived. */
static const struct rule {
    double ratio;
    double sides; /* of a rectangle, longer by shorter; 0 for round */
    double velocities[4][5];
} rules[] = {
    {12, 0, {{.642, .656, .665, .675, .681}, {.750, .771, .787, .803, .814},
             {.856, .888, .911, .937, .955}, {.940, .983, 1.016, 1.051, 1.077}}},
    {10, 1, {{.761, .778, .791, .803, .812}, {.885, .912, .932, .953, .968},
             {1.004, 1.045, 1.075, 1.108, 1.132}, {1.099, 1.153, 1.194, 1.239, 1.272}}},
    {8, 2, {{.945, .968, .984, 1.000, 1.012}, {1.096, 1.132, 1.158, 1.185, 1.205},
            {1.241, 1.293, 1.332, 1.375, 1.405}, {1.354, 1.424, 1.476, 1.534, 1.578}}},
};

static void test_table_of_velocities(void **state)
{
    (void)state;
    for (size_t i = 0; i < 3; i++) {
        for (size_t j = 0; j < 4; j++) {
            for (size_t k = 0; k < 5; k++) {
                double sides = rules[i].sides;
                ingle_draft_input input =
                    by_ratio(rules[i].ratio, circles[k] * INCH, heights[j] * FOOT);
                if (sides > 0) {
                    input.hydraulic_diameter =
                        2.0 * sqrt(input.flue_area * sides) / (1.0 + sides);
                }
                assert_within(velocity_of(&input) / FOOT, rules[i].velocities[j][k], 5.1e-4);
            }
        }
    }
}

/* K that gives exactly 0.8 ft/s, by the flue's share, height and rise: derived. */
static void test_losses_that_the_ratios_imply(void **state)
{
    static const double rises[] = {100, 200, 300, 400, 500};
    static const struct {
        double ratio, height, losses[5];
    } rows[] = {
        {12, 15, {1.40, 2.08, 2.42, 2.57, 2.62}}, {12, 22, {2.05, 3.06, 3.55, 3.77, 3.84}},
        {10, 15, {2.01, 3.00, 3.48, 3.70, 3.77}}, {10, 22, {2.96, 4.40, 5.11, 5.42, 5.53}},
        {8, 15, {3.15, 4.69, 5.44, 5.78, 5.89}},  {8, 22, {4.62, 6.88, 7.98, 8.47, 8.63}},
        {1 / .15, 15, {4.53, 6.75, 7.83, 8.32, 8.48}},
        {1 / .15, 22, {6.65, 9.90, 11.49, 12.20, 12.43}},
    };
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        for (size_t j = 0; j < 5; j++) {
            ingle_draft_input input = by_ratio(rows[i].ratio, FOOT, rows[i].height * FOOT);
            input.rise = RISE_F(rises[j]);
            input.friction_factor = 0;
            input.inlet_loss = 0;
            /* With K = 1 the velocity is √K times that which the criterion allows. */
            double share = velocity_of(&input) / (0.8 * FOOT);
            assert_within(share * share, rows[i].losses[j], 5.1e-3);
        }
    }
}

/* ---- what the figures depend on ------------------------------------------------------------- */

static ingle_draft_input reference(void)
{
    return round_fireplace(1080.0 * INCH * INCH, 10.75 * INCH, 15.0 * FOOT);
}

/*
 * V 0.7846 ft/s and its sensitivities at 1080 in², round 10 3/4 in, 15 ft: derived. The reference
 * has them by steps of some size; by the equation itself V is 0.78432, that of the rise θ − 1/2 =
 * 0.1384, of the inlet −0.1955, of friction −0.1091.
 */
static void test_sensitivities(void **state)
{
    static const struct {
        ingle_draft_figure figure;
        double value;
    } rows[] = {
        {INGLE_DRAFT_FLUE_AREA, 1.000},          {INGLE_DRAFT_OPENING_AREA, -1.000},
        {INGLE_DRAFT_HYDRAULIC_DIAMETER, 2.109}, {INGLE_DRAFT_HEIGHT, 0.391},
        {INGLE_DRAFT_RISE, 0.137},               {INGLE_DRAFT_INLET_LOSS, -0.196},
        {INGLE_DRAFT_FRICTION_FACTOR, -0.110},
    };
    ingle_draft_input input = reference();
    ingle_draft *draft = estimate_of(&input);
    double value;
    (void)state;
    assert_within(figure_of(draft, INGLE_DRAFT_FRONTAL_VELOCITY) / FOOT, 0.7846, 5e-4);
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        assert_true(ingle_draft_sensitivity(draft, rows[i].figure, &value));
        assert_within(value, rows[i].value, 2e-3);
    }
    assert_true(ingle_draft_sensitivity(draft, INGLE_DRAFT_RISE, &value));
    assert_within(value, AT_F(70) / (AT_F(70) + RISE_F(300)) - 0.5, 1e-7);
    assert_false(ingle_draft_sensitivity(draft, INGLE_DRAFT_CRITERION, &value));
    assert_false(ingle_draft_sensitivity(draft, INGLE_DRAFT_THETA, &value));
    ingle_draft_free(draft);
}

/* The same from the equation's own derivatives, to many more digits. */
static void test_sensitivities_are_derivatives(void **state)
{
    ingle_draft_input input = reference();
    double value;
    (void)state;
    input.room_pressure = -3.0;
    input.room_temperature = 290.0;
    ingle_draft *draft = estimate_of(&input);
    double losses = figure_of(draft, INGLE_DRAFT_TOTAL_LOSS);
    double friction = figure_of(draft, INGLE_DRAFT_FRICTION_LOSS);
    double column = figure_of(draft, INGLE_DRAFT_THEORETICAL_DRAFT) /
                    figure_of(draft, INGLE_DRAFT_DRIVING_PRESSURE);
    assert_true(ingle_draft_sensitivity(draft, INGLE_DRAFT_HEIGHT, &value));
    assert_within(value, (column - friction / losses) / 2.0, 1e-6);
    assert_true(ingle_draft_sensitivity(draft, INGLE_DRAFT_INLET_LOSS, &value));
    assert_within(value, -input.inlet_loss / losses / 2.0, 1e-6);
    assert_true(ingle_draft_sensitivity(draft, INGLE_DRAFT_FRICTION_FACTOR, &value));
    assert_within(value, -friction / losses / 2.0, 1e-6);
    assert_true(ingle_draft_sensitivity(draft, INGLE_DRAFT_HYDRAULIC_DIAMETER, &value));
    assert_within(value, 2.0 + friction / losses / 2.0, 1e-6);
    ingle_draft_free(draft);
}

/* Budget 5.9, 3.3, 4.6, 2.0 %, together 8.4 %; stated is 20 %: derived. */
static void test_uncertainty(void **state)
{
    ingle_draft_input input = reference();
    ingle_draft *draft = estimate_of(&input);
    double velocity = figure_of(draft, INGLE_DRAFT_FRONTAL_VELOCITY);
    (void)state;
    assert_within(figure_of(draft, INGLE_DRAFT_STANDARD_UNCERTAINTY), 0.084, 5e-4);
    assert_near(figure_of(draft, INGLE_DRAFT_EXPANDED_UNCERTAINTY), 0.20, 1e-12);
    assert_near(figure_of(draft, INGLE_DRAFT_FRONTAL_VELOCITY_LOW), 0.8 * velocity, 1e-12);
    assert_near(figure_of(draft, INGLE_DRAFT_FRONTAL_VELOCITY_HIGH), 1.2 * velocity, 1e-12);
    assert_int_equal(ingle_draft_standing_of(draft), INGLE_DRAFT_WITHIN_UNCERTAINTY);
    ingle_draft_free(draft);
    /* Where twice the budget is more than 20 %, that is stated. */
    input.rise = RISE_F(110);
    draft = estimate_of(&input);
    double share = figure_of(draft, INGLE_DRAFT_EXPANDED_UNCERTAINTY);
    double standard = figure_of(draft, INGLE_DRAFT_STANDARD_UNCERTAINTY);
    assert_true(share >= 2.0 * standard && share < 2.0 * standard + 0.01 && share > 0.2);
    ingle_draft_free(draft);
}

/* Room under the outdoors' pressure, and cold days: factors on V, to three digits: derived. */
static void test_room_pressure_and_cold_days(void **state)
{
    static const double pressures[][2] = {{-1, .974}, {-2, .947}, {-5, .862}, {-10, .697}};
    static const double days[][2] = {{40, 1.080}, {20, 1.135}, {0, 1.192}};
    ingle_draft_input input = reference();
    double usual = velocity_of(&input);
    (void)state;
    for (size_t i = 0; i < 4; i++) {
        input.room_pressure = pressures[i][0];
        assert_within(velocity_of(&input) / usual, pressures[i][1], 5.1e-4);
    }
    input.room_pressure = 0;
    for (size_t i = 0; i < 3; i++) {
        /* The gas is as hot as on the mild day. */
        input.outdoor_temperature = AT_F(days[i][0]);
        input.rise = AT_F(70) + RISE_F(300) - input.outdoor_temperature;
        assert_within(velocity_of(&input) / usual, days[i][1], 5.1e-4);
    }
}

/* Theoretical draft of 15 ft, 530 and 830 °R: 19.40881 Pa with 0.03413; g/R is 0.1 % above. */
static void test_theoretical_draft(void **state)
{
    ingle_draft_input input = reference();
    (void)state;
    input.outdoor_temperature = 530.0 * 5.0 / 9.0;
    input.rise = RISE_F(300);
    ingle_draft *draft = estimate_of(&input);
    assert_near(figure_of(draft, INGLE_DRAFT_THEORETICAL_DRAFT),
                19.40881 * (9.80665 / 287.05) / 0.03413, 1e-6);
    ingle_draft_free(draft);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_theta),
        cmocka_unit_test(test_velocity_by_rise),
        cmocka_unit_test(test_reference_velocities),
        cmocka_unit_test(test_table_of_velocities),
        cmocka_unit_test(test_losses_that_the_ratios_imply),
        cmocka_unit_test(test_sensitivities),
        cmocka_unit_test(test_sensitivities_are_derivatives),
        cmocka_unit_test(test_uncertainty),
        cmocka_unit_test(test_room_pressure_and_cold_days),
        cmocka_unit_test(test_theoretical_draft),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
