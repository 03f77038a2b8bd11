/* SPDX-License-Identifier: MIT */
/*
 * Areas of circles. The areas expected were worked out with Python's integers from 40 digits of pi
 * (On-Line Encyclopedia of Integer Sequences, A000796).
 */
#include "measure/amounts.h"
#include "measure/circle.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>

#include <cmocka.h>

#define LARGEST INT64_C(3426888094) /* across: one more nanometre and the area needs 64 bits */

static void areas_are_enclosed(void **state)
{
    (void)state;
    static const struct {
        int64_t diameter, below, above;
    } cases[] = {
        {1, INT64_C(0), INT64_C(1)},
        {2, INT64_C(3), INT64_C(4)},
        {INCHES(1), INT64_C(506707479097497), INT64_C(506707479097498)},
        {INCHES(6), INT64_C(18241469247509919), INT64_C(18241469247509920)},
        {INCHES(8), INT64_C(32429278662239856), INT64_C(32429278662239857)},
        {MILLIMETRES(150), INT64_C(17671458676442586), INT64_C(17671458676442587)},
        {METRES(2), INT64_C(3141592653589793238), INT64_C(3141592653589793239)},
        {INT64_C(3426888092), INT64_C(9223372022688859805), INT64_C(9223372022688859806)},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        int64_t down, nearest, up;
        assert_true(circle_area(cases[i].diameter, ROUND_DOWN, &down));
        assert_true(circle_area(cases[i].diameter, ROUND_NEAREST, &nearest));
        assert_true(circle_area(cases[i].diameter, ROUND_UP, &up));
        assert_true(down <= cases[i].below && cases[i].below - down <= 2);
        assert_true(up >= cases[i].above && up - cases[i].above <= 2);
        assert_true(up - down <= 1 && down <= nearest && nearest <= up);
    }
}

static void a_share_is_rounded_once(void **state)
{
    (void)state;
    static const struct {
        int64_t diameter, numerator, denominator, below;
    } cases[] = {
        {INCHES(8), 4, 1, INT64_C(129717114648959424)},
        {INCHES(6), 3, 1, INT64_C(54724407742529757)},
        {1, 4, 1, INT64_C(3)},
        {2, 9, 10, INT64_C(2)},
        {MILLIMETRES(150), 9, 10, INT64_C(15904312808798328)},
        {INT64_C(203200001), RATIO(4, 1), RATIO(1, 1), INT64_C(129717115925702681)},
        {INT64_C(3426888092), 1, 3, INT64_C(3074457340896286601)},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        int64_t down, up;
        assert_true(circle_area_share(cases[i].diameter, cases[i].numerator, cases[i].denominator,
                                      ROUND_DOWN, &down));
        assert_true(circle_area_share(cases[i].diameter, cases[i].numerator, cases[i].denominator,
                                      ROUND_UP, &up));
        assert_int_equal(down, cases[i].below);
        assert_int_equal(up, cases[i].below + 1);
    }
}

static void shares_that_do_not_fit_are_refused(void **state)
{
    (void)state;
    int64_t area = 42;
    assert_false(circle_area_share(-1, 1, 1, ROUND_DOWN, &area));
    assert_false(circle_area_share(INCHES(1), -1, 1, ROUND_DOWN, &area));
    assert_false(circle_area_share(INCHES(1), 1, 0, ROUND_DOWN, &area));
    assert_false(circle_area_share(LARGEST, 2, 1, ROUND_DOWN, &area));
    assert_false(circle_area_share(LARGEST + 1, 1, 2, ROUND_DOWN, &area));
    assert_int_equal(area, 42);
    assert_true(circle_area_share(INCHES(1), 0, 1, ROUND_UP, &area));
    assert_int_equal(area, 0);
    assert_true(circle_area_share(0, 4, 1, ROUND_UP, &area));
    assert_int_equal(area, 0);
}

static void no_diameter_gives_no_area(void **state)
{
    (void)state;
    int64_t area = 42;
    assert_true(circle_area(0, ROUND_UP, &area));
    assert_int_equal(area, 0);
}

static void what_does_not_fit_is_refused(void **state)
{
    (void)state;
    int64_t area = 42;
    assert_false(circle_area(-1, ROUND_UP, &area));
    assert_false(circle_area(INT64_MIN, ROUND_UP, &area));
    assert_false(circle_area(INT64_MAX, ROUND_DOWN, &area));
    assert_false(circle_area(INT64_C(4294967296), ROUND_DOWN, &area));
    assert_false(circle_area(LARGEST + 1, ROUND_DOWN, &area));
    assert_int_equal(area, 42);
    assert_true(circle_area(LARGEST, ROUND_DOWN, &area));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(areas_are_enclosed),
        cmocka_unit_test(a_share_is_rounded_once),
        cmocka_unit_test(shares_that_do_not_fit_are_refused),
        cmocka_unit_test(no_diameter_gives_no_area),
        cmocka_unit_test(what_does_not_fit_is_refused),
    };
    return cmocka_run_group_tests_name("circle", tests, NULL, NULL);
}
