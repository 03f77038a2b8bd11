/* SPDX-License-Identifier: MIT */
/* What the tests of this room share: units, and an input made from imperial numbers. */
#ifndef TESTS_DRAFT_FIREPLACE_H
#define TESTS_DRAFT_FIREPLACE_H

#include <ingle/ingle.h>

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#define FOOT 0.3048
#define INCH 0.0254
#define PI 3.14159265358979323846

/* A rise in °F, and a temperature in °F, in kelvins. */
#define RISE_F(degrees) ((degrees) * 5.0 / 9.0)
#define AT_F(degrees) (((degrees) + 459.67) * 5.0 / 9.0)

/* Fails with both numbers if they differ by more than a share of the expected one. */
static inline void assert_near(double got, double expected, double share)
{
    if (!(fabs(got - expected) <= share * fabs(expected))) {
        fail_msg("%.12g is not within %g of %.12g", got, share, expected);
    }
}

/* The same with the difference itself. */
static inline void assert_within(double got, double expected, double difference)
{
    if (!(fabs(got - expected) <= difference)) {
        fail_msg("%.12g is not within %g of %.12g", got, difference, expected);
    }
}

static inline ingle_draft_input defaults(void)
{
    ingle_draft_input input;
    assert_int_equal(ingle_draft_input_start(&input), INGLE_OK);
    return input;
}

/* A round flue by its diameter, an opening by its area, a height: all in metres. */
static inline ingle_draft_input round_fireplace(double opening, double diameter, double height)
{
    ingle_draft_input input = defaults();
    input.opening_area = opening;
    input.flue_area = PI / 4.0 * diameter * diameter;
    input.hydraulic_diameter = diameter;
    input.height = height;
    return input;
}

/* An opening so many times the area of its flue. */
static inline ingle_draft_input by_ratio(double ratio, double diameter, double height)
{
    ingle_draft_input input = round_fireplace(1.0, diameter, height);
    input.opening_area = ratio * input.flue_area;
    return input;
}

static inline double velocity_of(const ingle_draft_input *input)
{
    double velocity = -1.0;
    assert_int_equal(ingle_draft_velocity(input, &velocity), INGLE_OK);
    return velocity;
}

static inline ingle_draft *estimate_of(const ingle_draft_input *input)
{
    ingle_draft *draft = NULL;
    assert_int_equal(ingle_draft_new(NULL, &draft), INGLE_OK);
    assert_int_equal(ingle_draft_estimate(draft, input), INGLE_OK);
    return draft;
}

static inline double figure_of(const ingle_draft *draft, ingle_draft_figure figure)
{
    double value = NAN;
    assert_true(ingle_draft_get(draft, figure, &value));
    return value;
}

#endif
