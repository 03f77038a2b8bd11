/* SPDX-License-Identifier: MIT */
/* Amounts from text: what is read, to the base unit, and where each error is placed. */
#include "measure/amounts.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

struct accepted {
    const char *text;
    int64_t value;
};

struct refused {
    const char *text;
    ingle_status status;
    size_t position;
};

static ingle_status parse(const char *text, ingle_dimension dimension, const char *unit,
                          ingle_amount *amount, size_t *position)
{
    /* A copy of the very length, without NUL, so that a sanitizer sees a byte read beyond. */
    size_t length = strlen(text);
    char *copy = malloc(length > 0 ? length : 1);
    assert_non_null(copy);
    memcpy(copy, text, length);
    ingle_status status = ingle_amount_parse(copy, length, dimension, ingle_unit_find(unit),
                                             amount, position);
    free(copy);
    return status;
}

static void expect(const struct accepted *cases, size_t count, ingle_dimension dimension,
                   const char *unit, ingle_status due)
{
    for (size_t i = 0; i < count; i++) {
        ingle_amount amount = {0, 0, 42};
        size_t position = 42;
        ingle_status status = parse(cases[i].text, dimension, unit, &amount, &position);
        if (status != due || amount.value != cases[i].value) {
            print_error("%s: status %d, value %lld\n", cases[i].text, (int)status,
                        (long long)amount.value);
        }
        assert_int_equal(status, due);
        assert_true(amount.value == cases[i].value);
        assert_int_equal(amount.dimension, dimension);
        assert_int_equal(amount.scale, INGLE_SCALE_USUAL);
        assert_int_equal(position, 42);
    }
}

static void expect_refusal(const struct refused *cases, size_t count, ingle_dimension dimension,
                           const char *unit)
{
    for (size_t i = 0; i < count; i++) {
        ingle_amount amount = {42, 43, 44};
        size_t position = 99;
        ingle_status status = parse(cases[i].text, dimension, unit, &amount, &position);
        if (status != cases[i].status || position != cases[i].position) {
            print_error("%s: status %d at %zu\n", cases[i].text, (int)status, position);
        }
        assert_int_equal(status, cases[i].status);
        assert_int_equal(position, cases[i].position);
        assert_true(amount.value == 42 && amount.dimension == 43 && amount.scale == 44);
        assert_int_equal(parse(cases[i].text, dimension, unit, &amount, NULL), status);
    }
}

#define EXPECT(cases, dimension, unit, due) \
    expect(cases, sizeof(cases) / sizeof((cases)[0]), dimension, unit, due)
#define EXPECT_REFUSAL(cases, dimension, unit) \
    expect_refusal(cases, sizeof(cases) / sizeof((cases)[0]), dimension, unit)

static void lengths_are_read(void **state)
{
    (void)state;
    static const struct accepted cases[] = {
        {"36 in", INCHES(36)},
        {"36in", INCHES(36)},
        {"036.50 in", INCHES_AND(36, 1, 2)},
        {".5 in", INCHES_AND(0, 1, 2)},
        {"1e2 in", INCHES(100)},
        {"1.5E+1 in", INCHES(15)},
        {"250e-1in", INCHES(25)},
        {"0e999999999999999999999 in", 0},
        {"-0 in", 0},
        {"15 15/16 in", INCHES_AND(15, 15, 16)},
        {"15-15/16 in", INCHES_AND(15, 15, 16)},
        {"15-15/16\"", INCHES_AND(15, 15, 16)},
        {"15/16 in", INCHES_AND(0, 15, 16)},
        {"15 / 16 in", INCHES_AND(0, 15, 16)},
        {"33/16 in", INCHES_AND(2, 1, 16)},
        {"15⁄16 in", INCHES_AND(0, 15, 16)},
        {"1 15⁄16 in", INCHES_AND(1, 15, 16)},
        {"½ in", INCHES_AND(0, 1, 2)},
        {"12½ in", INCHES_AND(12, 1, 2)},
        {"12 ½ in", INCHES_AND(12, 1, 2)},
        {"12-½ in", INCHES_AND(12, 1, 2)},
        {"12⅝″", INCHES_AND(12, 5, 8)},
        {"1⅕ in", INCHES_AND(1, 1, 5)},
        {"⅖ in", INCHES_AND(0, 2, 5)},
        {"⅒ in", INCHES_AND(0, 1, 10)},
        {"3' 0 1/2\"", INCHES_AND(36, 1, 2)},
        {"3'-4\"", INCHES(40)},
        {"3' - 4\"", INCHES(40)},
        {"3'4\"", INCHES(40)},
        {"3' 4''", INCHES(40)},
        {"3’ 4”", INCHES(40)},
        {"3′ 4″", INCHES(40)},
        {"3'-4-1/2\"", INCHES_AND(40, 1, 2)},
        {"3'½\"", INCHES_AND(36, 1, 2)},
        {"3' 14\"", INCHES(50)},
        {"3 ft 1/2 in", INCHES_AND(36, 1, 2)},
        {"3ft 4in", INCHES(40)},
        {"3ft4in", INCHES(40)},
        {"3ft2in", INCHES(38)},
        {"3ft2½in", INCHES_AND(38, 1, 2)},
        {"3ft.5in", INCHES_AND(36, 1, 2)},
        {"3ft. 4in.", INCHES(40)},
        {"3 feet 4 inches", INCHES(40)},
        {"3.0 ft 4.5 in", INCHES_AND(40, 1, 2)},
        {"3.5 ft", INCHES(42)},
        {"3 1/2 ft", INCHES(42)},
        {"3 [ft_i] 4 [in_i]", INCHES(40)},
        {"-1 ft 3 in", -INCHES(15)},
        {"−1′ 3″", -INCHES(15)},
        {"-1/16 in", -INCHES_AND(0, 1, 16)},
        {"914 mm", MILLIMETRES(914)},
        {"914mm", MILLIMETRES(914)},
        {"91.4 cm", MILLIMETRES(914)},
        {"0.914 m", MILLIMETRES(914)},
        {"2 metres", METRES(2)},
        {"0.000001 mm", 1},
        {"  36  in  ", INCHES(36)},
        {"\xC2\xA0" "36\xE2\x80\xAF" "1/2\xE2\x80\x89in\xC2\xA0", INCHES_AND(36, 1, 2)},
        {"9223372036.854775807 m", INT64_MAX},
        {"-9223372036.854775807 m", -INT64_MAX},
        {"0.0000000000000000000000000092e35 mm", MILLIMETRES(920000000)},
        {"1000000000000000000000000000000000000e-36 in", INCHES(1)},
        {"00000000000000000000000000000000000001/00000000000000000000000000000000002 in",
         INCHES_AND(0, 1, 2)},
    };
    EXPECT(cases, INGLE_LENGTH, NULL, INGLE_OK);
}

/* The fractions' names in the Unicode Character Database give their parts. */
static void every_unicode_fraction_is_read(void **state)
{
    (void)state;
    static const struct {
        const char *mark, *parts;
    } cases[] = {
        {"½ in", "1/2 in"}, {"¼ in", "1/4 in"}, {"¾ in", "3/4 in"}, {"⅛ in", "1/8 in"},
        {"⅜ in", "3/8 in"}, {"⅝ in", "5/8 in"}, {"⅞ in", "7/8 in"}, {"⅓ in", "1/3 in"},
        {"⅔ in", "2/3 in"}, {"⅕ in", "1/5 in"}, {"⅖ in", "2/5 in"}, {"⅗ in", "3/5 in"},
        {"⅘ in", "4/5 in"}, {"⅙ in", "1/6 in"}, {"⅚ in", "5/6 in"}, {"⅐ in", "1/7 in"},
        {"⅑ in", "1/9 in"}, {"⅒ in", "1/10 in"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        ingle_amount mark = {0, 0, 0}, parts = {1, 0, 0};
        assert_true(parse(cases[i].mark, INGLE_LENGTH, NULL, &mark, NULL) >= 0);
        assert_true(parse(cases[i].parts, INGLE_LENGTH, NULL, &parts, NULL) >= 0);
        assert_true(mark.value == parts.value);
    }
}

static void lengths_between_base_units_go_to_the_nearest(void **state)
{
    (void)state;
    static const struct accepted cases[] = {
        {"1/3 in", 8466667},
        {"⅓ in", 8466667},
        {"2/3 in", 16933333},
        {"-1/3 in", -8466667},
        {"0.33333333333333333333333 in", 8466667},
        {"0.3333333333333333333333333333333333333333333333333333333333333333333333 in", 8466667},
        {"99999.99999999999999999999999999999999999999 in", INCHES(100000)},
        {"0.0000005 mm", 1},
        {"0.00000049999999999999999999999999999999999 mm", 0},
        {"0.00000050000000000000000000000000000000001 mm", 1},
        {"0.0000015 mm", 2},
        {"-0.0000005 mm", -1},
        {"-0.0000004 mm", 0},
        {"1e-400 mm", 0},
        {"1e-99999999999999999999 mm", 0},
        {"1/2000000 mm", 1},
        {"1/2000001 mm", 0},
        {"3 ft 1/3 in", FEET(3) + 8466667},
        {"9223372036.8547758074 m", INT64_MAX},
    };
    EXPECT(cases, INGLE_LENGTH, NULL, INGLE_ROUNDED);
}

static void bare_numbers_take_the_unit_given(void **state)
{
    (void)state;
    static const struct accepted inches[] = {
        {"36", INCHES(36)}, {" 15-15/16 ", INCHES_AND(15, 15, 16)}, {"36 mm", MILLIMETRES(36)}};
    static const struct accepted areas[] = {{"864", SQUARE_FEET(6)}, {"6 ft2", SQUARE_FEET(6)}};
    static const struct accepted slopes[] = {{"58", RATIO(58, 100)}, {"7:12", SLOPE(7, 12)}};
    static const struct refused wrong[] = {
        {"36", INGLE_ERROR_DIMENSION, 2}, {"36 x", INGLE_ERROR_UNIT_UNKNOWN, 3}};
    static const struct refused pair[] = {
        {"36 40", INGLE_ERROR_TRAILING_TEXT, 3}, {"36 x", INGLE_ERROR_UNIT_UNKNOWN, 3},
        {"3'4", INGLE_ERROR_UNIT_MISSING, 3}};
    EXPECT(inches, INGLE_LENGTH, "in", INGLE_OK);
    EXPECT(areas, INGLE_AREA, "in2", INGLE_OK);
    EXPECT(slopes, INGLE_SLOPE, "%", INGLE_OK);
    EXPECT_REFUSAL(wrong, INGLE_AREA, "in");
    EXPECT_REFUSAL(wrong, INGLE_RATIO, "in");
    EXPECT_REFUSAL(pair, INGLE_LENGTH, "in");
}

static void areas_are_read(void **state)
{
    (void)state;
    static const struct accepted cases[] = {
        {"6 ft2", SQUARE_FEET(6)},
        {"6ft2", SQUARE_FEET(6)},
        {"6 ft²", SQUARE_FEET(6)},
        {"864 sq in", SQUARE_FEET(6)},
        {"864 sq. in.", SQUARE_FEET(6)},
        {"864 sq\xC2\xA0in", SQUARE_FEET(6)},
        {"864 square inches", SQUARE_FEET(6)},
        {"864 [sin_i]", SQUARE_FEET(6)},
        {"0.557 m²", SQUARE_MILLIMETRES(557000)},
        {"5570 cm^2", SQUARE_MILLIMETRES(557000)},
        {"557000 mm2", SQUARE_MILLIMETRES(557000)},
        {"50 1/4 in2", SQUARE_INCHES_AND(50, 1, 4)},
        {"9.223372036854775807 m2", INT64_MAX},
    };
    static const struct accepted rounded[] = {
        {"1/3 in2", INT64_C(215053333333333)},
        {"0.0000000000000000005 m2", 1},
    };
    static const struct refused refused[] = {
        {"36 in", INGLE_ERROR_DIMENSION, 3},
        {"3' 4\"", INGLE_ERROR_DIMENSION, 1},
        {"9.2233720368547758075 m2", INGLE_ERROR_OVERFLOW, 0},
        {"10 m2", INGLE_ERROR_OVERFLOW, 0},
        {"6 ft4", INGLE_ERROR_UNIT_UNKNOWN, 2}, {"6 ft3", INGLE_ERROR_DIMENSION, 2},
    };
    EXPECT(cases, INGLE_AREA, NULL, INGLE_OK);
    EXPECT(rounded, INGLE_AREA, NULL, INGLE_ROUNDED);
    EXPECT_REFUSAL(refused, INGLE_AREA, NULL);
}

static void angles_are_read(void **state)
{
    (void)state;
    static const struct accepted cases[] = {
        {"45°", DEGREES(45)}, {"45 °", DEGREES(45)}, {"45 deg", DEGREES(45)},
        {"52½ degrees", DEGREES(105) / 2}, {"1e6 rad", INT64_C(206264806247096355)},
        {"0 rad", 0}};
    /* pi/4 to 20 digits is 45° to far less than a base unit. */
    static const struct accepted rounded[] = {
        {"0.78539816339744830962 rad", DEGREES(45)},
        {"1 rad", INT64_C(206264806247)},
        {"1/2 rad", INT64_C(103132403124)}};
    static const struct refused refused[] = {
        {"45", INGLE_ERROR_UNIT_MISSING, 2}, {"45 in", INGLE_ERROR_DIMENSION, 3},
        {"45° 30", INGLE_ERROR_TRAILING_TEXT, 5}, {"45°C", INGLE_ERROR_TRAILING_TEXT, 4}};
    EXPECT(cases, INGLE_ANGLE, NULL, INGLE_OK);
    EXPECT(rounded, INGLE_ANGLE, NULL, INGLE_ROUNDED);
    EXPECT_REFUSAL(refused, INGLE_ANGLE, NULL);
}

static void heat_inputs_are_read(void **state)
{
    (void)state;
    static const struct accepted cases[] = {
        {"40000 Btu/h", BTU_PER_HOUR(40000)}, {"40000BTU/h", BTU_PER_HOUR(40000)},
        {"40000 Btuh", BTU_PER_HOUR(40000)},  {"40000 BTUH", BTU_PER_HOUR(40000)},
        {"40000 [Btu_IT]/h", BTU_PER_HOUR(40000)}, {"1/2 Btu/h", BTU_PER_HOUR(1) / 2},
        {"4e4 BTU/HR", BTU_PER_HOUR(40000)},  {"12 kW", KILOWATTS(12)},
        {"12000 W", KILOWATTS(12)},           {"11.5 kilowatts", KILOWATTS(23) / 2},
        {"0 W", 0}};
    /* 1 Btu/h is 105 505 585 262 base units, so a tenth of one is a fifth of a unit off. */
    static const struct accepted rounded[] = {{"0.1 Btu/h", INT64_C(10550558526)},
                                              {"1/3 Btu/h", INT64_C(35168528421)}};
    static const struct refused refused[] = {
        {"40000", INGLE_ERROR_UNIT_MISSING, 5},  {"40,000 Btu/h", INGLE_ERROR_COMMA, 2},
        {"40000 Btu", INGLE_ERROR_UNIT_UNKNOWN, 6}, {"40000 btu/h", INGLE_ERROR_UNIT_UNKNOWN, 6},
        {"12 kw", INGLE_ERROR_UNIT_UNKNOWN, 3},  {"12 in", INGLE_ERROR_DIMENSION, 3},
        {"40000 Btu/hx", INGLE_ERROR_UNIT_UNKNOWN, 6},
        {"87500000 Btu/h", INGLE_ERROR_OVERFLOW, 0}};
    EXPECT(cases, INGLE_POWER, NULL, INGLE_OK);
    EXPECT(rounded, INGLE_POWER, NULL, INGLE_ROUNDED);
    EXPECT_REFUSAL(refused, INGLE_POWER, NULL);
    EXPECT_REFUSAL(((const struct refused[]){{"12 kW", INGLE_ERROR_DIMENSION, 3}}), INGLE_LENGTH,
                   NULL);
}

static void volumes_are_read(void **state)
{
    (void)state;
    static const struct accepted cases[] = {
        {"300 cu ft", CUBIC_FEET(300)}, {"300 ft3", CUBIC_FEET(300)}, {"300ft³", CUBIC_FEET(300)},
        {"1 [cft_i]", CUBIC_FEET(1)},   {"12 1/2 cu. ft.", CUBIC_FEET(25) / 2},
        {"1728 in3", CUBIC_FEET(1)},    {"0.5 m3", LITRES(500)},   {"500 L", LITRES(500)},
        {"2.5 cubic metres", LITRES(2500)}, {"0 m³", 0}};
    static const struct accepted rounded[] = {{"1/7 L", INT64_C(142857143)},
                                              {"0.0001 in3", INT64_C(1639)}};
    static const struct refused refused[] = {
        {"300", INGLE_ERROR_UNIT_MISSING, 3},  {"300 ft", INGLE_ERROR_DIMENSION, 4},
        {"300 ft2", INGLE_ERROR_DIMENSION, 4}, {"300 ft4", INGLE_ERROR_UNIT_UNKNOWN, 4},
        {"3 cu ft 4 cu in", INGLE_ERROR_TRAILING_TEXT, 8},
        {"10000000 m3", INGLE_ERROR_OVERFLOW, 0}};
    EXPECT(cases, INGLE_VOLUME, NULL, INGLE_OK);
    EXPECT(rounded, INGLE_VOLUME, NULL, INGLE_ROUNDED);
    EXPECT_REFUSAL(refused, INGLE_VOLUME, NULL);
    EXPECT_REFUSAL(((const struct refused[]){{"12 m3", INGLE_ERROR_DIMENSION, 3}}), INGLE_LENGTH,
                   NULL);
}

static void slopes_are_read(void **state)
{
    (void)state;
    static const struct accepted cases[] = {
        {"7 in 12", SLOPE(7, 12)},   {"7  in  12", SLOPE(7, 12)},  {"7:12", SLOPE(7, 12)},
        {"7 : 12", SLOPE(7, 12)},    {"7/12", SLOPE(7, 12)},       {"7.5/12", SLOPE(15, 24)},
        {"7 in/ft", SLOPE(7, 12)},   {"7 in per ft", SLOPE(7, 12)}, {"58 %", RATIO(58, 100)},
        {"58%", RATIO(58, 100)},     {"0.58", RATIO(58, 100)},     {"7 1/2 in 12", SLOPE(15, 24)},
        {"7½:12", SLOPE(15, 24)},    {"-7 in 12", -SLOPE(7, 12)},  {"1 in 1½", SLOPE(2, 3)},
        {"0 in 12", 0},              {"7 1/2 : 12", SLOPE(15, 24)}, {"7 slope%", PERCENT(7)},
        {"1.20e1:0.12e2", RATIO(1, 1)}};
    static const struct accepted rounded[] = {{"1 in 7", INT64_C(5142857143)}};
    static const struct refused refused[] = {
        {"7 in", INGLE_ERROR_DIMENSION, 2},      {"7 in x", INGLE_ERROR_DIMENSION, 2},
        {"7 in 0", INGLE_ERROR_ZERO_DENOMINATOR, 5}, {"7:0.0", INGLE_ERROR_ZERO_DENOMINATOR, 2},
        {"7:", INGLE_ERROR_NUMBER, 2},           {"7:-12", INGLE_ERROR_NUMBER, 2},
        {"7:12:3", INGLE_ERROR_TRAILING_TEXT, 4}, {"7 in 12 in", INGLE_ERROR_TRAILING_TEXT, 8},
        {"1e18:1", INGLE_ERROR_OVERFLOW, 0},
        {"7 1/2 / 12", INGLE_ERROR_UNIT_UNKNOWN, 6}, {"7 in2", INGLE_ERROR_DIMENSION, 2},
        {"7:1,2", INGLE_ERROR_COMMA, 3}};
    EXPECT(cases, INGLE_SLOPE, NULL, INGLE_OK);
    EXPECT(rounded, INGLE_SLOPE, NULL, INGLE_ROUNDED);
    EXPECT_REFUSAL(refused, INGLE_SLOPE, NULL);
}

static void ratios_are_read(void **state)
{
    (void)state;
    static const struct accepted cases[] = {
        {"1/10", RATIO(1, 10)}, {"2:1", RATIO(2, 1)}, {"0.1", RATIO(1, 10)},
        {"1.5", RATIO(3, 2)},   {"10 %", RATIO(1, 10)}, {"1/10 %", RATIO(1, 1000)},
        {"1/12", INT64_C(3000000000)}, {"2.5 : 1", RATIO(5, 2)}, {"1 / 10", RATIO(1, 10)}};
    static const struct refused refused[] = {
        {"1 in 10", INGLE_ERROR_DIMENSION, 2}, {"1.5 x", INGLE_ERROR_UNIT_UNKNOWN, 4},
        {"1/0", INGLE_ERROR_ZERO_DENOMINATOR, 2}, {"1/2/3", INGLE_ERROR_UNIT_UNKNOWN, 3},
        {"1/2.5", INGLE_ERROR_NUMBER, 3}, {"2:1 %", INGLE_ERROR_TRAILING_TEXT, 4},
        {"1 7", INGLE_ERROR_TRAILING_TEXT, 2}};
    EXPECT(cases, INGLE_RATIO, NULL, INGLE_OK);
    EXPECT_REFUSAL(refused, INGLE_RATIO, NULL);
}

static void counts_are_read(void **state)
{
    (void)state;
    static const struct accepted cases[] = {
        {"3", 3}, {" 3 ", 3}, {"3.0", 3}, {"1e3", 1000}, {"-3", -3},
        {"9223372036854775807", INT64_MAX}, {"-9223372036854775807", -INT64_MAX}};
    static const struct refused refused[] = {
        {"3.5", INGLE_ERROR_NUMBER, 0}, {"1/2", INGLE_ERROR_NUMBER, 0},
        {" 1e-1", INGLE_ERROR_NUMBER, 1}, {"3 in", INGLE_ERROR_DIMENSION, 2},
        {"3 pieces", INGLE_ERROR_TRAILING_TEXT, 2},
        {"9223372036854775808", INGLE_ERROR_OVERFLOW, 0}};
    static const struct refused with_unit[] = {{"3", INGLE_ERROR_DIMENSION, 1}};
    EXPECT(cases, INGLE_COUNT, NULL, INGLE_OK);
    EXPECT_REFUSAL(refused, INGLE_COUNT, NULL);
    EXPECT_REFUSAL(with_unit, INGLE_COUNT, "in");
}

static void errors_are_placed(void **state)
{
    (void)state;
    static const struct refused cases[] = {
        {"", INGLE_ERROR_EMPTY, 0},
        {"   ", INGLE_ERROR_EMPTY, 3},
        {"\xC2\xA0", INGLE_ERROR_EMPTY, 2},
        {"abc", INGLE_ERROR_NUMBER, 0},
        {"in", INGLE_ERROR_NUMBER, 0},
        {"5.", INGLE_ERROR_NUMBER, 2},
        {"5. in", INGLE_ERROR_NUMBER, 2},
        {".", INGLE_ERROR_NUMBER, 1},
        {"-", INGLE_ERROR_NUMBER, 1},
        {"--5", INGLE_ERROR_NUMBER, 1},
        {"- 5 in", INGLE_ERROR_NUMBER, 1},
        {"+5 in", INGLE_ERROR_NUMBER, 0},
        {"1.2.3 in", INGLE_ERROR_NUMBER, 3},
        {"1/ in", INGLE_ERROR_NUMBER, 3},
        {"1/x in", INGLE_ERROR_NUMBER, 2},
        {"15-16 in", INGLE_ERROR_NUMBER, 2},
        {"15 17/16 in", INGLE_ERROR_NUMBER, 3},
        {"15 16/16 in", INGLE_ERROR_NUMBER, 3},
        {"NaN", INGLE_ERROR_NUMBER, 0},
        {"Infinity", INGLE_ERROR_NUMBER, 0},
        {"36,5 in", INGLE_ERROR_COMMA, 2},
        {"1,000 mm", INGLE_ERROR_COMMA, 1},
        {",5 in", INGLE_ERROR_COMMA, 0},
        {"1.5,5 in", INGLE_ERROR_COMMA, 3},
        {"1/2,5 in", INGLE_ERROR_COMMA, 3},
        {"1/,5 in", INGLE_ERROR_COMMA, 2},
        {"15 1,5/16 in", INGLE_ERROR_COMMA, 4},
        {"36 , 5 in", INGLE_ERROR_COMMA, 3},
        {"3' 4,5\"", INGLE_ERROR_COMMA, 4},
        {"1/0 in", INGLE_ERROR_ZERO_DENOMINATOR, 2},
        {"0/0", INGLE_ERROR_ZERO_DENOMINATOR, 2},
        {"15 1/000 in", INGLE_ERROR_ZERO_DENOMINATOR, 5},
        {"3' 1/0\"", INGLE_ERROR_ZERO_DENOMINATOR, 5},
        {"1e400 in", INGLE_ERROR_OVERFLOW, 0},
        {" -1e400 in", INGLE_ERROR_OVERFLOW, 1},
        {"1e99999999999999999999999 in", INGLE_ERROR_OVERFLOW, 0},
        {"99999999999999999999 mm", INGLE_ERROR_OVERFLOW, 0},
        {"9223372036.8547758075 m", INGLE_ERROR_OVERFLOW, 0},
        {"9223372036.854775808 m", INGLE_ERROR_OVERFLOW, 0},
        {"30260406945 ft 1e18 in", INGLE_ERROR_OVERFLOW, 15},
        {"30260406945 ft 12 in", INGLE_ERROR_OVERFLOW, 15},
        {"1/99999999999999999999 in", INGLE_ERROR_OVERFLOW, 2},
        {"99999999999999999999/3 in", INGLE_ERROR_OVERFLOW, 0},
        {"36", INGLE_ERROR_UNIT_MISSING, 2},
        {"36 ", INGLE_ERROR_UNIT_MISSING, 2},
        {"36 40 in", INGLE_ERROR_UNIT_MISSING, 2},
        {"3'4", INGLE_ERROR_UNIT_MISSING, 3},
        {"3' 0 1/2", INGLE_ERROR_UNIT_MISSING, 8},
        {"36 MM", INGLE_ERROR_UNIT_UNKNOWN, 3},
        {"36 inx", INGLE_ERROR_UNIT_UNKNOWN, 3},
        {"36 m/s", INGLE_ERROR_UNIT_UNKNOWN, 3},
        {"36 m3", INGLE_ERROR_DIMENSION, 3},
        {"36 m³", INGLE_ERROR_DIMENSION, 3},
        {"36 ft3", INGLE_ERROR_DIMENSION, 3},
        {"3ft4", INGLE_ERROR_UNIT_UNKNOWN, 1},
        {"1e in", INGLE_ERROR_UNIT_UNKNOWN, 1},
        {"1e+ in", INGLE_ERROR_UNIT_UNKNOWN, 1},
        {"0x10 in", INGLE_ERROR_UNIT_UNKNOWN, 1},
        {"36\tin", INGLE_ERROR_UNIT_UNKNOWN, 2},
        {"3' 4 x", INGLE_ERROR_UNIT_UNKNOWN, 5},
        {"36 in2", INGLE_ERROR_DIMENSION, 3},
        {"36 in²", INGLE_ERROR_DIMENSION, 3},
        {"36 ft2", INGLE_ERROR_DIMENSION, 3},
        {"36 sq in", INGLE_ERROR_DIMENSION, 3},
        {"36 %", INGLE_ERROR_DIMENSION, 3},
        {"36°", INGLE_ERROR_DIMENSION, 2},
        {"3' 4 in2", INGLE_ERROR_DIMENSION, 5},
        {"36 in x", INGLE_ERROR_TRAILING_TEXT, 6},
        {"36\"x", INGLE_ERROR_TRAILING_TEXT, 3},
        {"36 in 4", INGLE_ERROR_TRAILING_TEXT, 6},
        {"36 in,", INGLE_ERROR_TRAILING_TEXT, 5},
        {"3 ft x", INGLE_ERROR_TRAILING_TEXT, 5},
        {"3 ft -", INGLE_ERROR_TRAILING_TEXT, 5},
        {"3' --4\"", INGLE_ERROR_TRAILING_TEXT, 3},
        {"3.5' 4\"", INGLE_ERROR_TRAILING_TEXT, 5},
        {"3 ft 4 mm", INGLE_ERROR_TRAILING_TEXT, 5},
        {"3 ft 4 ft", INGLE_ERROR_TRAILING_TEXT, 5},
        {"3 m 4 in", INGLE_ERROR_TRAILING_TEXT, 4},
        {"3' 4\" 5\"", INGLE_ERROR_TRAILING_TEXT, 6},
        {"36 in\x80", INGLE_ERROR_ENCODING, 5},
        {"\xFF", INGLE_ERROR_ENCODING, 0},
        {"36 \xE2\x80", INGLE_ERROR_ENCODING, 3},
        {"36 \xC0\xA0in", INGLE_ERROR_ENCODING, 3},
        {"36 \xED\xA0\x80", INGLE_ERROR_ENCODING, 3},
        {"36 \xF4\x90\x80\x80", INGLE_ERROR_ENCODING, 3},
    };
    EXPECT_REFUSAL(cases, INGLE_LENGTH, NULL);
}

static void a_nul_is_refused_at_its_place(void **state)
{
    (void)state;
    ingle_amount amount;
    size_t position = 99;
    assert_int_equal(ingle_amount_parse("36 in\0", 6, INGLE_LENGTH, NULL, &amount, &position),
                     INGLE_ERROR_ENCODING);
    assert_int_equal(position, 5);
}

static void arguments_that_cannot_be_are_refused(void **state)
{
    (void)state;
    ingle_amount amount = {42, 43, 44};
    size_t position = 99;
    assert_int_equal(ingle_amount_parse(NULL, 0, INGLE_LENGTH, NULL, &amount, &position),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(position, 0);
    assert_int_equal(ingle_amount_parse("3", 1, INGLE_COUNT, NULL, NULL, &position),
                     INGLE_ERROR_ARGUMENT);
    static const ingle_dimension dimensions[] = {-1, 0, INGLE_CHOICE, INGLE_FLAG, 11};
    for (size_t i = 0; i < sizeof dimensions / sizeof dimensions[0]; i++) {
        assert_int_equal(ingle_amount_parse("3", 1, dimensions[i], NULL, &amount, &position),
                         INGLE_ERROR_ARGUMENT);
    }
    assert_true(amount.value == 42 && amount.dimension == 43);
}

static void digits_without_end_are_read(void **state)
{
    (void)state;
    enum { DIGITS = 100000 };
    ingle_amount amount;
    char *text = malloc(DIGITS + 16);
    assert_non_null(text);
    /* 0.4999…9 of a nanometre goes down, 0.5000…01 up: each digit to the last has its say. */
    memcpy(text, "0.0000004", 9);
    memset(text + 9, '9', DIGITS);
    memcpy(text + 9 + DIGITS, " mm", 3);
    assert_int_equal(
        ingle_amount_parse(text, DIGITS + 12, INGLE_LENGTH, NULL, &amount, NULL), INGLE_ROUNDED);
    assert_int_equal(amount.value, 0);
    memset(text + 8, '0', DIGITS);
    text[8] = '5';
    text[8 + DIGITS] = '1';
    assert_int_equal(
        ingle_amount_parse(text, DIGITS + 12, INGLE_LENGTH, NULL, &amount, NULL), INGLE_ROUNDED);
    assert_int_equal(amount.value, 1);
    free(text);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(lengths_are_read),
        cmocka_unit_test(every_unicode_fraction_is_read),
        cmocka_unit_test(lengths_between_base_units_go_to_the_nearest),
        cmocka_unit_test(bare_numbers_take_the_unit_given),
        cmocka_unit_test(areas_are_read),
        cmocka_unit_test(angles_are_read),
        cmocka_unit_test(heat_inputs_are_read),
        cmocka_unit_test(volumes_are_read),
        cmocka_unit_test(slopes_are_read),
        cmocka_unit_test(ratios_are_read),
        cmocka_unit_test(counts_are_read),
        cmocka_unit_test(errors_are_placed),
        cmocka_unit_test(a_nul_is_refused_at_its_place),
        cmocka_unit_test(arguments_that_cannot_be_are_refused),
        cmocka_unit_test(digits_without_end_are_read),
    };
    return cmocka_run_group_tests_name("parse", tests, NULL, NULL);
}
