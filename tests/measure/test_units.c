/* SPDX-License-Identifier: MIT */
/* The table of units: every spelling leads to its unit, and the constants agree with it. */
#include "measure/amounts.h"
#include "measure/units.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdbool.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

static void every_spelling_finds_its_unit(void **state)
{
    (void)state;
    for (size_t i = 0; i < ingle_unit_count(); i++) {
        const ingle_unit *unit = ingle_unit_at(i);
        bool code_listed = false;
        assert_string_equal(ingle_unit_name_at(unit, 0), ingle_unit_id(unit));
        for (size_t j = 0; j < ingle_unit_name_count(unit); j++) {
            const char *name = ingle_unit_name_at(unit, j);
            const ingle_unit *found = ingle_unit_find(name);
            code_listed = code_listed || strcmp(name, ingle_unit_ucum(unit)) == 0;
            /* The per cents of ratio and slope share spellings, never an id. */
            assert_ptr_equal(unit_within(found, ingle_unit_dimension(unit)), unit);
            assert_true(j > 0 || found == unit);
            for (size_t k = 0; k < j; k++) {
                assert_string_not_equal(name, ingle_unit_name_at(unit, k));
            }
        }
        assert_true(code_listed);
        assert_null(ingle_unit_name_at(unit, ingle_unit_name_count(unit)));
    }
    assert_null(ingle_unit_at(ingle_unit_count()));
}

static void spellings_lead_to_the_unit_meant(void **state)
{
    (void)state;
    static const struct {
        const char *name, *id;
    } cases[] = {
        {"in", "in"},          {"[in_i]", "in"},      {"inches", "in"},   {"\"", "in"},
        {"″", "in"},           {"''", "in"},          {"ft", "ft"},       {"[ft_i]", "ft"},
        {"'", "ft"},           {"′", "ft"},           {"feet", "ft"},     {"mm", "mm"},
        {"cm", "cm"},          {"m", "m"},            {"sq in", "in2"},   {"sq. in.", "in2"},
        {"sq  in", "in2"},     {"in²", "in2"},        {"[sin_i]", "in2"}, {"in^2", "in2"},
        {"[sft_i]", "ft2"},    {"square feet", "ft2"}, {"mm²", "mm2"},    {"m²", "m2"},
        {"°", "deg"},          {"degrees", "deg"},    {"rad", "rad"},     {"in/ft", "in/ft"},
        {"[in_i]/[ft_i]", "in/ft"}, {"%", "%"},       {"slope%", "slope%"},
        {"Btu/h", "Btu/h"},    {"BTU/h", "Btu/h"},    {"Btuh", "Btu/h"},  {"BTUH", "Btu/h"},
        {"[Btu_IT]/h", "Btu/h"}, {"kW", "kW"},        {"W", "W"},         {"kilowatts", "kW"},
        {"cu ft", "ft3"},      {"[cft_i]", "ft3"},    {"ft³", "ft3"},   {"cu. in.", "in3"},
        {"[cin_i]", "in3"},    {"m³", "m3"},          {"L", "L"},       {"litres", "L"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        const ingle_unit *unit = ingle_unit_find(cases[i].name);
        assert_non_null(unit);
        assert_string_equal(ingle_unit_id(unit), cases[i].id);
    }
    assert_int_equal(ingle_unit_dimension(ingle_unit_find("%")), INGLE_RATIO);
}

static void other_names_find_nothing(void **state)
{
    (void)state;
    static const char *const names[] = {"",    "MM",   "In", "inx", "in ",  " in", "yd3",
                                        "sqin", "yard", "dm3", "in2 ", "in\n", "\xC2",
                                        "kw", "Btu", "btu/h", "Btu/ft", "w", "MW"};
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        assert_null(ingle_unit_find(names[i]));
    }
    assert_null(ingle_unit_find(NULL));
}

static void no_unit_says_nothing(void **state)
{
    (void)state;
    int64_t numerator = 42, denominator = 42;
    assert_null(ingle_unit_id(NULL));
    assert_null(ingle_unit_label(NULL));
    assert_null(ingle_unit_ucum(NULL));
    assert_null(ingle_unit_name_at(NULL, 0));
    assert_int_equal(ingle_unit_name_count(NULL), 0);
    assert_int_equal(ingle_unit_dimension(NULL), 0);
    ingle_unit_size(NULL, &numerator, &denominator);
    assert_int_equal(numerator, 42);
    ingle_unit_size(ingle_unit_at(0), NULL, NULL);
}

/* The header of the public API states these numbers. */
static void constants_are_in_base_units(void **state)
{
    (void)state;
    static const int64_t constants[] = {INCHES_AND(15, 15, 16), SQUARE_FEET(6), SLOPE(7, 12),
                                        RATIO(1, 12)};
    assert_true(INCHES(1) == 25400000 && INCHES_AND(0, 1, 64) == 396875);
    assert_true(constants[0] == 15 * INT64_C(25400000) + 15 * INT64_C(1587500));
    assert_true(FEET(3) == 36 * INCHES(1) && MILLIMETRES(10) == CENTIMETRES(1));
    assert_true(METRES(1) == 100 * CENTIMETRES(1));
    assert_true(SQUARE_INCHES(1) == INT64_C(645160000000000));
    assert_true(constants[1] == 36 * 24 * SQUARE_INCHES(1));
    assert_true(SQUARE_INCHES_AND(50, 1, 4) * 4 == 201 * SQUARE_INCHES(1));
    assert_true(SQUARE_METRES(1) == 10000 * SQUARE_CENTIMETRES(1));
    assert_true(SQUARE_CENTIMETRES(1) == 100 * SQUARE_MILLIMETRES(1));
    assert_true(CUBIC_INCHES(1) == INT64_C(16387064) && CUBIC_FEET(1) == INT64_C(28316846592));
    assert_true(CUBIC_METRES(1) == 1000 * LITRES(1));
    assert_true(DEGREES(1) == INT64_C(3600000000));
    assert_true(constants[2] == INT64_C(21000000000) && constants[3] == INT64_C(3000000000));
    assert_true(PERCENT(100) == INGLE_RATIO_ONE);
    assert_true(BTU_PER_HOUR(1) == INT64_C(105505585262));
    assert_true(KILOWATTS(1) == INT64_C(360000000000000));
}

static void dimensions_have_names(void **state)
{
    (void)state;
    assert_string_equal(ingle_dimension_name(INGLE_LENGTH), "length");
    assert_string_equal(ingle_dimension_name(INGLE_AREA), "area");
    assert_string_equal(ingle_dimension_name(INGLE_ANGLE), "angle");
    assert_string_equal(ingle_dimension_name(INGLE_SLOPE), "slope");
    assert_string_equal(ingle_dimension_name(INGLE_RATIO), "ratio");
    assert_string_equal(ingle_dimension_name(INGLE_POWER), "power");
    assert_string_equal(ingle_dimension_name(INGLE_COUNT), "count");
    assert_string_equal(ingle_dimension_name(INGLE_CHOICE), "choice");
    assert_string_equal(ingle_dimension_name(INGLE_FLAG), "flag");
    assert_string_equal(ingle_dimension_name(INGLE_VOLUME), "volume");
    assert_null(ingle_dimension_name(0));
    assert_null(ingle_dimension_name(11));
    assert_null(ingle_dimension_name(-1));
}

static void dimensions_of_words_are_no_amounts(void **state)
{
    (void)state;
    for (ingle_dimension dimension = -1; dimension <= 11; dimension++) {
        bool amount = dimension >= 1 && dimension <= 10 && dimension != INGLE_CHOICE &&
                      dimension != INGLE_FLAG;
        assert_int_equal(ingle_dimension_is_amount(dimension), amount);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_spelling_finds_its_unit),
        cmocka_unit_test(spellings_lead_to_the_unit_meant),
        cmocka_unit_test(other_names_find_nothing),
        cmocka_unit_test(no_unit_says_nothing),
        cmocka_unit_test(constants_are_in_base_units),
        cmocka_unit_test(dimensions_have_names),
        cmocka_unit_test(dimensions_of_words_are_no_amounts),
    };
    return cmocka_run_group_tests_name("units", tests, NULL, NULL);
}
