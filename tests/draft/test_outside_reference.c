/* SPDX-License-Identifier: MIT */
/*
 * Against the GNU Scientific Library: its root finder (Brent) on the equation written out anew, its
 * numerical derivative, and the friction of rough pipes as a root.
 */
#include "fireplace.h"

#include <gsl/gsl_deriv.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_roots.h>

static double root_of(gsl_function *function, double low, double high)
{
    gsl_root_fsolver *solver = gsl_root_fsolver_alloc(gsl_root_fsolver_brent);
    assert_int_equal(gsl_root_fsolver_set(solver, function, low, high), GSL_SUCCESS);
    int status = GSL_CONTINUE;
    for (int i = 0; status == GSL_CONTINUE && i < 500; i++) {
        assert_int_equal(gsl_root_fsolver_iterate(solver), GSL_SUCCESS);
        status = gsl_root_test_interval(gsl_root_fsolver_x_lower(solver),
                                        gsl_root_fsolver_x_upper(solver), 0, 1e-14);
    }
    assert_int_equal(status, GSL_SUCCESS);
    double root = gsl_root_fsolver_root(solver);
    gsl_root_fsolver_free(solver);
    return root;
}

/* The equation of one temperature, as it is printed, less the criterion. */
struct fireplace {
    double opening, diameter, height, rise, inlet, friction, criterion;
};

static double printed(const struct fireplace *fireplace)
{
    double outdoor = (70 + 459.67) / 1.8;
    double share = outdoor / (outdoor + fireplace->rise);
    double losses =
        fireplace->inlet + fireplace->friction * fireplace->height / fireplace->diameter + 1;
    return PI / 4 * fireplace->diameter * fireplace->diameter / fireplace->opening *
           sqrt(2 * 9.80665 * fireplace->height * share * (1 - share) / losses);
}

static double by_diameter(double diameter, void *given)
{
    struct fireplace fireplace = *(struct fireplace *)given;
    fireplace.diameter = diameter;
    return printed(&fireplace) - fireplace.criterion;
}

static double by_height(double height, void *given)
{
    struct fireplace fireplace = *(struct fireplace *)given;
    fireplace.height = height;
    return printed(&fireplace) - fireplace.criterion;
}

static const struct fireplace fireplaces[] = {
    {0.70, 0.30, 4.6, 166.67, 1.0, 1.0 / 30, 0.24384},
    {0.15, 0.15, 3.0, 100, 0.85, 0.0245, 0.24384},
    {2.20, 0.45, 12.0, 300, 3.0, 0.047, 0.2},
    {0.50, 0.20, 7.5, 83.3, 0.5, 0.0333, 0.15},
    {1.10, 0.35, 5.5, 250, 1.21, 0.03, 0.3},
};

static ingle_draft_input input_of(const struct fireplace *fireplace)
{
    ingle_draft_input input =
        round_fireplace(fireplace->opening, fireplace->diameter, fireplace->height);
    input.rise = fireplace->rise;
    input.inlet_loss = fireplace->inlet;
    input.friction_factor = fireplace->friction;
    input.criterion = fireplace->criterion;
    return input;
}

static void test_required_by_brent(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof fireplaces / sizeof fireplaces[0]; i++) {
        struct fireplace fireplace = fireplaces[i];
        ingle_draft_input input = input_of(&fireplace);
        double value;
        gsl_function diameter = {by_diameter, &fireplace};
        gsl_function height = {by_height, &fireplace};
        assert_near(velocity_of(&input), printed(&fireplace), 1e-12);
        assert_int_equal(ingle_draft_required(&input, INGLE_DRAFT_REQUIRED_DIAMETER, &value),
                         INGLE_OK);
        assert_near(value, root_of(&diameter, 0.01, 3), 1e-11);
        assert_int_equal(ingle_draft_required(&input, INGLE_DRAFT_REQUIRED_HEIGHT, &value),
                         INGLE_OK);
        assert_near(value, root_of(&height, 0.1, 150), 1e-10);
    }
}

static double by_logarithm(double logarithm, void *given)
{
    struct fireplace fireplace = *(struct fireplace *)given;
    fireplace.rise = exp(logarithm);
    return log(printed(&fireplace));
}

static void test_sensitivity_by_derivative(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof fireplaces / sizeof fireplaces[0]; i++) {
        struct fireplace fireplace = fireplaces[i];
        ingle_draft_input input = input_of(&fireplace);
        ingle_draft *draft = estimate_of(&input);
        gsl_function function = {by_logarithm, &fireplace};
        double value, expected, error;
        assert_true(ingle_draft_sensitivity(draft, INGLE_DRAFT_RISE, &value));
        gsl_deriv_central(&function, log(fireplace.rise), 1e-3, &expected, &error);
        assert_within(value, expected, 1e-7);
        ingle_draft_free(draft);
    }
}

struct pipe {
    double reynolds, roughness;
};

static double friction_left_over(double factor, void *given)
{
    const struct pipe *pipe = given;
    return 1 / sqrt(factor) +
           2 * log10(2.51 / (pipe->reynolds * sqrt(factor)) + pipe->roughness / 3.71);
}

static void test_friction_by_brent(void **state)
{
    (void)state;
    for (double reynolds = 4000; reynolds < 1e8; reynolds *= 3.7) {
        for (double roughness = 0; roughness <= 0.1; roughness += 0.0125) {
            struct pipe pipe = {reynolds, roughness};
            gsl_function function = {friction_left_over, &pipe};
            double factor;
            assert_int_equal(ingle_draft_friction_factor(reynolds, roughness, &factor), INGLE_OK);
            assert_near(factor, root_of(&function, 1e-3, 1), 1e-11);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_required_by_brent),
        cmocka_unit_test(test_sensitivity_by_derivative),
        cmocka_unit_test(test_friction_by_brent),
    };
    gsl_set_error_handler_off();
    return cmocka_run_group_tests(tests, NULL, NULL);
}
