/* SPDX-License-Identifier: MIT */
/* Products and quotients of base/wide.h, against values worked out with Python's integers. */
#include "base/wide.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>

#include <cmocka.h>

static void quotients_are_rounded_as_told(void **state)
{
    (void)state;
    int64_t down, nearest, up;
    bool exact;
    static const struct {
        uint64_t a, b, c;
        int64_t down, nearest, up;
    } cases[] = {
        {0, 5, 3, 0, 0, 0},
        {7, 1, 2, 3, 4, 4},
        {1, 1, 3, 0, 0, 1},
        {2, 1, 3, 0, 1, 1},
        {UINT64_MAX, UINT64_MAX, UINT64_MAX, -1, -1, -1}, /* 64 bits: refused */
        {INT64_MAX, UINT64_MAX, UINT64_MAX, INT64_MAX, INT64_MAX, INT64_MAX},
        /* 9e18 * 1e18 / 7e18 = 1285714285714285714.28... */
        {UINT64_C(9000000000000000000), UINT64_C(1000000000000000000),
         UINT64_C(7000000000000000000), 1285714285714285714, 1285714285714285714,
         1285714285714285715},
        /* 12345678901234567890 * 9876543210987654321 / 18446744073709551557
           = 6609981178781634674.14... */
        {UINT64_C(12345678901234567890), UINT64_C(9876543210987654321),
         UINT64_C(18446744073709551557), 6609981178781634674, 6609981178781634674,
         6609981178781634675},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        bool held = wide_multiply_divide(cases[i].a, cases[i].b, cases[i].c, ROUND_DOWN, &down,
                                         &exact);
        assert_int_equal(held, cases[i].down >= 0);
        if (!held) {
            continue;
        }
        assert_true(wide_multiply_divide(cases[i].a, cases[i].b, cases[i].c, ROUND_NEAREST,
                                         &nearest, NULL));
        assert_true(wide_multiply_divide(cases[i].a, cases[i].b, cases[i].c, ROUND_UP, &up, NULL));
        assert_true(down == cases[i].down && nearest == cases[i].nearest && up == cases[i].up);
        assert_int_equal(exact, down == up);
    }
}

static void quotients_beyond_63_bits_are_refused(void **state)
{
    (void)state;
    int64_t result = 42;
    assert_false(wide_multiply_divide(1, 1, 0, ROUND_DOWN, &result, NULL));
    assert_false(wide_multiply_divide(UINT64_C(1) << 63, 1, 1, ROUND_DOWN, &result, NULL));
    /* (2^64 - 1) / 2 is 2^63 - 1/2: down it fits, to the nearest and up it does not. */
    assert_false(wide_multiply_divide(UINT64_MAX, 1, 2, ROUND_NEAREST, &result, NULL));
    assert_false(wide_multiply_divide(UINT64_MAX, 1, 2, ROUND_UP, &result, NULL));
    assert_int_equal(result, 42);
    assert_true(wide_multiply_divide(UINT64_MAX, 1, 2, ROUND_DOWN, &result, NULL));
    assert_true(result == INT64_MAX);
}

static void products_and_sums_overflow_to_false(void **state)
{
    (void)state;
    int64_t result = 42;
    assert_false(wide_multiply(INT64_MAX, 2, &result));
    assert_false(wide_multiply(INT64_MIN, -1, &result));
    assert_false(wide_multiply(INT64_C(4294967296), INT64_C(4294967296), &result));
    assert_false(wide_add(INT64_MAX, 1, &result));
    assert_false(wide_add(INT64_MIN, -1, &result));
    assert_false(wide_subtract(INT64_MIN, 1, &result));
    assert_false(wide_subtract(0, INT64_MIN, &result));
    assert_int_equal(result, 42);
    assert_true(wide_multiply(INT64_C(-3037000499), INT64_C(3037000499), &result));
    assert_true(result == INT64_C(-9223372030926249001));
    assert_true(wide_multiply(-1, INT64_MAX, &result) && result == -INT64_MAX);
    assert_true(wide_add(INT64_MAX, INT64_MIN, &result) && result == -1);
    assert_true(wide_subtract(INT64_MIN, INT64_MIN, &result) && result == 0);
    assert_true(wide_subtract(-1, INT64_MAX, &result) && result == INT64_MIN);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(quotients_are_rounded_as_told),
        cmocka_unit_test(quotients_beyond_63_bits_are_refused),
        cmocka_unit_test(products_and_sums_overflow_to_false),
    };
    return cmocka_run_group_tests_name("wide", tests, NULL, NULL);
}
