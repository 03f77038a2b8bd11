/* SPDX-License-Identifier: MIT */
/*
 * What tapes may be off, and the budget of a length, against the texts of the publications: their
 * tolerances were read (Directive 2014/32/EU Annex X; UK SI 1986/1682 regulation 24) or are cited
 * (NIST Handbook 44 section 5.52); the values at these lengths follow from them.
 */
#include "base/memory.h"
#include "measure/amounts.h"
#include "uncertainty/budget.h"

#include <ingle/ingle.h>

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#define TENTHS(n) (MILLIMETRES(n) / 10)

static int64_t allowed(enum choice_TAPE_CLASS tape_class, bool at_hook, int64_t length)
{
    struct tape tape = {.tape_class = tape_class, .at_hook = at_hook};
    struct tape_error error;
    return tape_error(&tape, length, &error) ? error.whole : -1;
}

/* Directive 2014/32/EU, Annex X: ±(a + b L), and c at a hook. Lengths and tenths of millimetres. */
static void tapes_of_the_directive(void **state)
{
    (void)state;
    static const struct {
        enum choice_TAPE_CLASS tape_class;
        int64_t millimetres, mark, hook;
    } rows[] = {
        {CHOICE_TAPE_CLASS_CLASS_II, 1000, 5, 7},   {CHOICE_TAPE_CLASS_CLASS_II, 1200, 7, 9},
        {CHOICE_TAPE_CLASS_CLASS_II, 3200, 11, 13}, {CHOICE_TAPE_CLASS_CLASS_III, 1200, 14, 17},
        {CHOICE_TAPE_CLASS_CLASS_I, 2000, 3, 4},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        int64_t length = MILLIMETRES(rows[i].millimetres);
        assert_int_equal(allowed(rows[i].tape_class, false, length), TENTHS(rows[i].mark));
        assert_int_equal(allowed(rows[i].tape_class, true, length), TENTHS(rows[i].hook));
    }
}

/* L is rounded up before it is multiplied: one nanometre more than a metre is two metres. */
static void lengths_are_rounded_up_first(void **state)
{
    (void)state;
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_CLASS_II, false, METRES(2)), TENTHS(7));
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_CLASS_II, false, METRES(2) + 1), TENTHS(9));
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_CLASS_II, false, 1), TENTHS(5));
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_UK_IMPERIAL, false, FEET(3)),
                     INCHES_AND(0, 40, 1000));
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_UK_IMPERIAL, false, FEET(3) + 1),
                     INCHES_AND(0, 55, 1000));
}

/* NIST Handbook 44, section 5.52; between two rows the larger tolerance (our reading). */
static void tapes_of_handbook_44(void **state)
{
    (void)state;
    static const struct {
        int64_t feet, thirty_seconds;
    } rows[] = {{5, 1},  {6, 1},  {7, 2},  {30, 2}, {31, 4},
                {55, 4}, {56, 6}, {80, 6}, {81, 8}, {100, 8}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        assert_int_equal(allowed(CHOICE_TAPE_CLASS_HANDBOOK_44, true, FEET(rows[i].feet)),
                         INCHES_AND(0, rows[i].thirty_seconds, 32));
    }
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_HANDBOOK_44, true, INCHES(78)),
                     INCHES_AND(0, 1, 16));
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_HANDBOOK_44, true, FEET(100) + 1), -1);
}

/* UK SI 1986/1682, regulation 24. */
static void tapes_of_1986(void **state)
{
    (void)state;
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_UK_IMPERIAL, true, INCHES(30)),
                     INCHES_AND(0, 40, 1000));
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_UK_IMPERIAL, true, FEET(4)),
                     INCHES_AND(0, 55, 1000));
    assert_int_equal(allowed(CHOICE_TAPE_CLASS_UK_METRIC, true, MILLIMETRES(1500)), TENTHS(14));
}

/* ---- budgets -------------------------------------------------------------------------------- */

static struct reckoning reckoning;

static double budget_u(struct tape tape, int64_t length)
{
    struct ingle_length_budget budget = {.length = length};
    reckoning.count = 0;
    budget_make(&budget, &tape, &reckoning);
    assert_true(budget.known);
    return budget.u;
}

static bool near(double value, double expected, double within)
{
    if (fabs(value - expected) <= within) {
        return true;
    }
    print_error("%.12g is not %.12g within %g\n", value, expected, within);
    return false;
}

static const struct tape class_ii = {CHOICE_TAPE_CLASS_CLASS_II, true, INCHES(1) / 16, 0};

/* One length up to 1 m, class II, from the hook, to the nearest 1/16 in. In nanometres. */
static void budget_of_a_length(void **state)
{
    (void)state;
    double u = budget_u(class_ii, INCHES(36));
    assert_true(near(u, 611020.7477, 5e-5));
    assert_true(near(u / 25400000, 0.0240559350, 5e-11));
    assert_true(near(2 * u, 1222e3, 500));
    assert_true(near(rectangular(700000), 404145, 0.5));
    assert_true(near(rectangular(INCHES_AND(0, 1, 32)), 458272, 0.5));
    assert_true(near(rectangular(INCHES_AND(0, 1, 32)) / 25400000, 0.0180421959, 5e-11));
    struct tape handbook_44 = class_ii;
    handbook_44.tape_class = CHOICE_TAPE_CLASS_HANDBOOK_44;
    assert_true(near(budget_u(handbook_44, INCHES(36)) / 25400000, 0.0255155, 5e-8));
    assert_true(near(2 * budget_u(handbook_44, INCHES(36)) / 25400000, 0.0510, 5e-5));
}

/* JCGM 100 (GUM) 4.3.7: a rectangular half-width, so 0.2887 of a division for a reading. */
static void masonry_counts_as_a_rectangle(void **state)
{
    (void)state;
    struct tape uneven = class_ii;
    uneven.irregularity = INCHES_AND(0, 1, 4);
    double u = budget_u(uneven, INCHES(36));
    double expected = sqrt(pow(611020.7477, 2) + pow(6350000 / sqrt(3), 2));
    assert_true(near(u, expected, 1e-3));
    assert_true(near(rectangular(0.5), 0.2887, 5e-5));
}

static void a_budget_tells_its_steps(void **state)
{
    (void)state;
    static const char *const expected[] = {
        "maximum permissible error of the tape: a + b × metres or yards begun + c = 0.3 mm + "
        "0.2 mm × 1 + 0.2 mm = 0.7 mm. Directive 2014/32/EU, Annex X, class II",
        "standard uncertainty from the tape: error ÷ √3 = 0.7 mm ÷ √3 = 0.404 mm.",
        "standard uncertainty from the reading: half a graduation ÷ √3 = 0.794 mm ÷ √3 = "
        "0.458 mm.",
        "standard uncertainty of the length: √((tape)² + (reading)²) = √((0.404 mm)² + "
        "(0.458 mm)²) = 0.611 mm.",
    };
    ingle_format format = {.size = sizeof format, .unit = ingle_unit_find("mm")};
    budget_u(class_ii, INCHES(36));
    assert_int_equal(reckoning.count, 4);
    for (size_t i = 0; i < 4; i++) {
        char text[400];
        assert_int_equal(ingle_uncertainty_step_text(&reckoning.steps[i], INGLE_STEP_SENTENCE,
                                                     &format, text, sizeof text, NULL),
                         INGLE_OK);
        assert_string_equal(text, expected[i]);
    }
}

/* ---- figures -------------------------------------------------------------------------------- */

static const char *shown(double value, ingle_dimension dimension, const char *unit, bool decimal)
{
    static char text[64];
    ingle_format format = {.size = sizeof format, .unit = ingle_unit_find(unit)};
    ingle_figure figure = {value, dimension, 0};
    ingle_status status =
        decimal ? ingle_figure_decimal(&figure, &format, text, sizeof text, NULL)
                : ingle_figure_format(&figure, &format, text, sizeof text, NULL);
    assert_int_equal(status, INGLE_OK);
    return text;
}

static void figures_are_shown(void **state)
{
    (void)state;
    assert_string_equal(shown(611020.7477, INGLE_LENGTH, "in", false), "0.0241 in");
    assert_string_equal(shown(611020.7477, INGLE_LENGTH, "ft", false), "0.0241 in");
    assert_string_equal(shown(-611020.7477, INGLE_LENGTH, "mm", true), "-0.6110207");
    assert_string_equal(shown(2.5e14, INGLE_AREA, "mm", false), "250 mm2");
    assert_string_equal(shown(0.96624251, INGLE_COUNT, "mm", true), "0.9662425");
    assert_string_equal(shown(9.87e-10, INGLE_COUNT, "mm", true), "0.000000000987");
    assert_string_equal(shown(0, INGLE_LENGTH, "mm", false), "0 mm");
    assert_string_equal(shown(1e300, INGLE_COUNT, "mm", false), "9000000000000000000");
    assert_string_equal(shown(123456, INGLE_COUNT, "mm", false), "123456");
    assert_string_equal(shown(0.9999, INGLE_COUNT, "mm", false), "1");
    ingle_figure nothing = {NAN, INGLE_COUNT, 0};
    assert_int_equal(ingle_figure_format(&nothing, NULL, NULL, 0, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_figure_decimal(&nothing, NULL, NULL, 0, NULL), INGLE_ERROR_ARGUMENT);
}

static int start(void **state)
{
    (void)state;
    return allocator_take(&reckoning.allocator, NULL) == INGLE_OK ? 0 : -1;
}

static int end(void **state)
{
    (void)state;
    allocator_free(&reckoning.allocator, reckoning.steps);
    return 0;
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(tapes_of_the_directive),
        cmocka_unit_test(lengths_are_rounded_up_first),
        cmocka_unit_test(tapes_of_handbook_44),
        cmocka_unit_test(tapes_of_1986),
        cmocka_unit_test(budget_of_a_length),
        cmocka_unit_test(masonry_counts_as_a_rectangle),
        cmocka_unit_test(a_budget_tells_its_steps),
        cmocka_unit_test(figures_are_shown),
    };
    return cmocka_run_group_tests_name("tapes", tests, start, end);
}
