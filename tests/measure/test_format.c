/* SPDX-License-Identifier: MIT */
/* Amounts into text, and back: what is shown is read again as the amount, or says ≈. */
#include "measure/amounts.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#define ALMOST "≈ "

struct shown {
    int64_t value;
    const char *text;
};

static ingle_format format_of(const char *unit, int32_t denominator)
{
    ingle_format format = {sizeof format, ingle_unit_find(unit), denominator, 0};
    return format;
}

static void expect(const struct shown *cases, size_t count, ingle_dimension dimension,
                   ingle_scale scale, const char *unit, int32_t denominator)
{
    ingle_format format = format_of(unit, denominator);
    for (size_t i = 0; i < count; i++) {
        ingle_amount amount = {cases[i].value, dimension, scale};
        char text[64];
        size_t length = 0;
        assert_int_equal(ingle_amount_format(&amount, &format, text, sizeof text, &length),
                         INGLE_OK);
        assert_string_equal(text, cases[i].text);
        assert_int_equal(length, strlen(cases[i].text));
    }
}

#define EXPECT(cases, dimension, scale, unit, denominator) \
    expect(cases, sizeof(cases) / sizeof((cases)[0]), dimension, scale, unit, denominator)

static void lengths_in_inches(void **state)
{
    (void)state;
    static const struct shown finest[] = {
        {0, "0 in"},
        {INCHES(36), "36 in"},
        {INCHES_AND(19, 15, 16), "19 15/16 in"},
        {INCHES_AND(0, 1, 64), "1/64 in"},
        {INCHES_AND(0, 32, 64), "1/2 in"},
        {-INCHES_AND(0, 1, 16), "-1/16 in"},
        {-INCHES_AND(3, 1, 2), "-3 1/2 in"},
        {1, ALMOST "0 in"},
        {-1, ALMOST "0 in"},
        {INCHES(36) - 1, ALMOST "36 in"},
        {INCHES(36) + 1, ALMOST "36 in"},
        {-INCHES(36) + 1, ALMOST "-36 in"},
        {198437, ALMOST "0 in"},
        {198438, ALMOST "1/64 in"}, /* half a graduation is 198437.5 nm */
        {MILLIMETRES(914), ALMOST "35 63/64 in"},
        {INT64_MAX, ALMOST "363124883340 47/64 in"},
        {INT64_MIN, ALMOST "-363124883340 47/64 in"},
    };
    static const struct shown sixteenths[] = {
        {INCHES_AND(19, 15, 16), "19 15/16 in"},
        {INCHES_AND(0, 1, 64), ALMOST "0 in"},
        {INCHES_AND(0, 1, 32), ALMOST "1/16 in"},
        {-INCHES_AND(0, 1, 32), ALMOST "-1/16 in"},
        {INCHES_AND(11, 31, 32), ALMOST "12 in"},
    };
    static const struct shown whole[] = {
        {INCHES_AND(19, 15, 16), ALMOST "20 in"}, {INCHES(20), "20 in"}};
    EXPECT(finest, INGLE_LENGTH, INGLE_SCALE_USUAL, NULL, 0);
    EXPECT(finest, INGLE_LENGTH, INGLE_SCALE_LARGE, "in", 64);
    EXPECT(sixteenths, INGLE_LENGTH, INGLE_SCALE_USUAL, "in", 16);
    EXPECT(whole, INGLE_LENGTH, INGLE_SCALE_USUAL, "in", 1);
}

static void lengths_in_feet_and_inches(void **state)
{
    (void)state;
    static const struct shown cases[] = {
        {INCHES_AND(36, 1, 2), "3 ft 1/2 in"},
        {FEET(2), "2 ft"},
        {INCHES_AND(11, 1, 2), "11 1/2 in"},
        {-INCHES(15), "-1 ft 3 in"},
        {INCHES_AND(40, 1, 2), "3 ft 4 1/2 in"},
        {0, "0 in"},
        {1, ALMOST "0 in"},
        {FEET(1) - 1, ALMOST "1 ft"},
        {FEET(3) + 1, ALMOST "3 ft"},
        {-FEET(2) - 1, ALMOST "-2 ft"},
    };
    EXPECT(cases, INGLE_LENGTH, INGLE_SCALE_USUAL, "ft", 64);
}

static void lengths_in_metric_units(void **state)
{
    (void)state;
    static const struct shown millimetres[] = {
        {MILLIMETRES(914), "914 mm"},
        {INCHES_AND(19, 15, 16), "506.4125 mm"},
        {1, "0.000001 mm"},
        {-1, "-0.000001 mm"},
        {0, "0 mm"},
        {INT64_MAX, "9223372036854.775807 mm"},
        {INT64_MIN, "-9223372036854.775808 mm"},
    };
    static const struct shown centimetres[] = {{MILLIMETRES(914), "91.4 cm"}, {1, "0.0000001 cm"}};
    static const struct shown metres[] = {{MILLIMETRES(914), "0.914 m"}, {1, "0.000000001 m"}};
    EXPECT(millimetres, INGLE_LENGTH, INGLE_SCALE_USUAL, "mm", 0);
    EXPECT(centimetres, INGLE_LENGTH, INGLE_SCALE_USUAL, "cm", 0);
    EXPECT(metres, INGLE_LENGTH, INGLE_SCALE_USUAL, "m", 0);
}

static const char *raised(ingle_amount amount, const char *unit)
{
    static char text[64];
    ingle_format format = format_of(unit, 0);
    format.raised = 1;
    assert_int_equal(ingle_amount_format(&amount, &format, text, sizeof text, NULL), INGLE_OK);
    return text;
}

/* Powers are written raised, as the SI brochure does. What is shown can be read again. */
static void powers_are_raised_where_that_is_asked(void **state)
{
    (void)state;
    ingle_amount area = {SQUARE_FEET(6), INGLE_AREA, INGLE_SCALE_USUAL}, again;
    ingle_amount large = {SQUARE_FEET(6), INGLE_AREA, INGLE_SCALE_LARGE};
    ingle_amount length = {INCHES(3), INGLE_LENGTH, INGLE_SCALE_USUAL};
    ingle_amount volume = {CUBIC_FEET(5), INGLE_VOLUME, INGLE_SCALE_USUAL};
    assert_string_equal(raised(area, "in"), "864 in²");
    assert_string_equal(raised(area, "cm"), ALMOST "5574.182 cm²");
    assert_string_equal(raised(large, "in"), "6 ft²");
    assert_string_equal(raised(length, "in"), "3 in");
    assert_string_equal(raised(volume, "in"), "5 ft³");
    const char *text = raised(area, "in");
    assert_int_equal(ingle_amount_parse(text, strlen(text), INGLE_AREA, NULL, &again, NULL),
                     INGLE_OK);
    assert_true(again.value == area.value);
}

static void areas(void **state)
{
    (void)state;
    static const struct shown inches[] = {
        {SQUARE_FEET(6), "864 in2"},
        {SQUARE_INCHES_AND(50, 1, 8), "50.125 in2"},
        {SQUARE_INCHES_AND(50, 1, 16), ALMOST "50.063 in2"},
        {SQUARE_INCHES(50) - 1, ALMOST "50 in2"},
        {-SQUARE_INCHES(50), "-50 in2"},
        {1, ALMOST "0 in2"},
        {-1, ALMOST "0 in2"},
    };
    static const struct shown feet[] = {{SQUARE_FEET(6), "6 ft2"},
                                        {SQUARE_FEET(6) - 1, ALMOST "6 ft2"},
                                        {SQUARE_INCHES(72), "0.5 ft2"}};
    static const struct shown millimetres[] = {{SQUARE_INCHES(1), "645.16 mm2"},
                                               {INT64_MAX, ALMOST "9223372.037 mm2"}};
    static const struct shown centimetres[] = {{SQUARE_INCHES(1), ALMOST "6.452 cm2"}};
    static const struct shown metres[] = {{SQUARE_MILLIMETRES(557000), "0.557 m2"}};
    EXPECT(inches, INGLE_AREA, INGLE_SCALE_USUAL, NULL, 0);
    EXPECT(inches, INGLE_AREA, INGLE_SCALE_USUAL, "ft", 0);
    EXPECT(feet, INGLE_AREA, INGLE_SCALE_LARGE, "in", 0);
    EXPECT(feet, INGLE_AREA, INGLE_SCALE_LARGE, "ft", 0);
    EXPECT(millimetres, INGLE_AREA, INGLE_SCALE_USUAL, "mm", 0);
    EXPECT(centimetres, INGLE_AREA, INGLE_SCALE_USUAL, "cm", 0);
    EXPECT(metres, INGLE_AREA, INGLE_SCALE_USUAL, "m", 0);
    EXPECT(metres, INGLE_AREA, INGLE_SCALE_LARGE, "mm", 0);
    EXPECT(metres, INGLE_AREA, INGLE_SCALE_LARGE, "cm", 0);
}

static void angles_slopes_ratios_and_counts(void **state)
{
    (void)state;
    static const struct shown angles[] = {{DEGREES(45), "45°"},
                                          {DEGREES(105) / 2, "52.5°"},
                                          {-DEGREES(45), "-45°"},
                                          {DEGREES(45) + 1, ALMOST "45°"}};
    static const struct shown slopes[] = {
        {SLOPE(7, 12), "7 in 12"},    {SLOPE(15, 24), "7 1/2 in 12"},
        {-SLOPE(7, 12), "-7 in 12"},  {RATIO(58, 100), "6.96 in 12"},
        {0, "0 in 12"},               {INT64_C(5142857143), ALMOST "1.714 in 12"},
        {1, ALMOST "0 in 12"},        {SLOPE(1, 12) / 64, "1/64 in 12"}};
    static const struct shown eighths[] = {{SLOPE(1, 12) / 8, "1/8 in 12"},
                                           {SLOPE(1, 12) / 16, ALMOST "0.063 in 12"}};
    static const struct shown ratios[] = {
        {RATIO(1, 10), "1/10"},   {RATIO(1, 1000), "1/1000"},     {RATIO(2, 1), "2"},
        {RATIO(3, 2), "3/2"},     {RATIO(63, 64), "63/64"},       {RATIO(3, 200), "0.015"},
        {0, "0"},                 {-RATIO(1, 10), "-1/10"},       {1, "1/36000000000"},
        {7, ALMOST "0"},          {INT64_C(5142857143), ALMOST "0.142857"}};
    static const struct shown decimal[] = {
        {RATIO(33, 20), "1.65"}, {RATIO(1, 2), "0.5"},  {RATIO(119, 100), "1.19"},
        {RATIO(2, 1), "2"},      {0, "0"},              {-RATIO(1, 4), "-0.25"},
        {RATIO(1, 12), ALMOST "0.083333"}};
    static const struct shown counts[] = {{3, "3"}, {0, "0"}, {-3, "-3"},
                                          {INT64_MIN, "-9223372036854775808"}};
    EXPECT(angles, INGLE_ANGLE, INGLE_SCALE_USUAL, NULL, 0);
    EXPECT(slopes, INGLE_SLOPE, INGLE_SCALE_USUAL, "mm", 0);
    EXPECT(eighths, INGLE_SLOPE, INGLE_SCALE_USUAL, NULL, 8);
    EXPECT(ratios, INGLE_RATIO, INGLE_SCALE_USUAL, NULL, 0);
    EXPECT(decimal, INGLE_RATIO, INGLE_SCALE_DECIMAL, NULL, 0);
    EXPECT(counts, INGLE_COUNT, INGLE_SCALE_USUAL, NULL, 0);
}

static void heat_inputs(void **state)
{
    (void)state;
    static const struct shown customary[] = {{BTU_PER_HOUR(80000), "80000 Btu/h"},
                                             {BTU_PER_HOUR(1) / 2, "0.5 Btu/h"},
                                             {BTU_PER_HOUR(40000) - 1, ALMOST "40000 Btu/h"},
                                             {-BTU_PER_HOUR(7800), "-7800 Btu/h"},
                                             {KILOWATTS(1), ALMOST "3412.142 Btu/h"}};
    static const struct shown metric[] = {{KILOWATTS(12), "12 kW"},
                                          {KILOWATTS(1) / 1000, "0.001 kW"},
                                          {BTU_PER_HOUR(40000), ALMOST "11.723 kW"}};
    EXPECT(customary, INGLE_POWER, INGLE_SCALE_USUAL, NULL, 0);
    EXPECT(customary, INGLE_POWER, INGLE_SCALE_LARGE, "in", 16);
    EXPECT(customary, INGLE_POWER, INGLE_SCALE_USUAL, "ft", 0);
    EXPECT(metric, INGLE_POWER, INGLE_SCALE_USUAL, "mm", 0);
    EXPECT(metric, INGLE_POWER, INGLE_SCALE_USUAL, "cm", 0);
    EXPECT(metric, INGLE_POWER, INGLE_SCALE_USUAL, "m", 0);
}

static void volumes(void **state)
{
    (void)state;
    static const struct shown customary[] = {{CUBIC_FEET(300), "300 ft3"},
                                             {CUBIC_FEET(1) / 2, "0.5 ft3"},
                                             {CUBIC_FEET(300) - 1, ALMOST "300 ft3"},
                                             {-CUBIC_FEET(50), "-50 ft3"},
                                             {CUBIC_METRES(1), ALMOST "35.315 ft3"}};
    static const struct shown metric[] = {{CUBIC_METRES(12), "12 m3"},
                                          {LITRES(1), "0.001 m3"},
                                          {CUBIC_FEET(300), ALMOST "8.495 m3"}};
    EXPECT(customary, INGLE_VOLUME, INGLE_SCALE_USUAL, NULL, 0);
    EXPECT(customary, INGLE_VOLUME, INGLE_SCALE_LARGE, "in", 16);
    EXPECT(customary, INGLE_VOLUME, INGLE_SCALE_USUAL, "ft", 0);
    EXPECT(metric, INGLE_VOLUME, INGLE_SCALE_USUAL, "mm", 0);
    EXPECT(metric, INGLE_VOLUME, INGLE_SCALE_USUAL, "cm", 0);
    EXPECT(metric, INGLE_VOLUME, INGLE_SCALE_USUAL, "m", 0);
}

/* A graduation of the text that a format gives, in base units. */
static int64_t graduation(ingle_dimension dimension, const ingle_unit *unit, int32_t denominator)
{
    int64_t size = 0, per;
    ingle_unit_size(unit, &size, &per);
    switch (dimension) {
    case INGLE_LENGTH:
        return INCHES(1) / denominator;
    case INGLE_RATIO:
        return INGLE_RATIO_ONE / 1000000;
    case INGLE_POWER: /* a thousandth of a Btu/h or a cubic foot is no whole number of base units */
    case INGLE_VOLUME:
        return size / 1000 + 2;
    default:
        return size / 1000;
    }
}

static void comes_back(const ingle_amount *amount, const ingle_format *format)
{
    char text[64];
    size_t length;
    ingle_amount again = {0, 0, 0};
    assert_int_equal(ingle_amount_format(amount, format, text, sizeof text, &length), INGLE_OK);
    size_t start = strncmp(text, ALMOST, strlen(ALMOST)) == 0 ? strlen(ALMOST) : 0;
    ingle_status status = ingle_amount_parse(text + start, length - start, amount->dimension, NULL,
                                             &again, NULL);
    bool coarse = amount->dimension == INGLE_POWER || amount->dimension == INGLE_VOLUME;
    assert_true(status == INGLE_OK || (status == INGLE_ROUNDED && start > 0 && coarse));
    int64_t off = again.value - amount->value;
    if (start == 0) {
        assert_true(off == 0);
    } else {
        int64_t step = graduation(amount->dimension, ingle_amount_unit(amount, format),
                                  format->denominator);
        assert_true(off != 0 || status == INGLE_ROUNDED);
        assert_true(2 * off <= step && 2 * off >= -step);
    }
}

static void what_is_shown_is_read_again(void **state)
{
    (void)state;
    static const char *const units[] = {"in", "ft", "mm", "cm", "m"};
    uint64_t seed = 20240117; /* any: it makes the run repeatable */
    for (int round = 0; round < 4000; round++) {
        seed = seed * UINT64_C(6364136223846793005) + UINT64_C(1442695040888963407);
        /* From a few base units to nearly all there are, on a grid half the time. */
        int64_t value = (int64_t)(seed >> (2 + round % 60));
        value = round % 2 == 0 ? value : value - value % INCHES_AND(0, 1, 64);
        value = round % 3 == 0 ? -value : value;
        for (ingle_dimension dimension = INGLE_LENGTH; dimension <= INGLE_VOLUME; dimension++) {
            if (!ingle_dimension_is_amount(dimension)) {
                continue;
            }
            ingle_amount amount = {value, dimension, round % 3};
            ingle_format format = format_of(units[round % 5], 1 << round % 7);
            comes_back(&amount, &format);
        }
    }
}

static void decimals(void **state)
{
    (void)state;
    static const struct {
        ingle_amount amount;
        const char *unit, *text;
        ingle_status status;
    } cases[] = {
        {{INCHES_AND(19, 15, 16), INGLE_LENGTH, 0}, "in", "19.9375", INGLE_OK},
        {{-INCHES_AND(0, 1, 16), INGLE_LENGTH, 0}, "in", "-0.0625", INGLE_OK},
        {{INCHES(1), INGLE_LENGTH, 0}, "ft", "0.083333333", INGLE_ROUNDED},
        {{1, INGLE_LENGTH, 0}, "m", "0.000000001", INGLE_OK},
        {{1, INGLE_LENGTH, 0}, "in", "0.000000039", INGLE_ROUNDED},
        {{INT64_MIN, INGLE_LENGTH, 0}, "m", "-9223372036.854775808", INGLE_OK},
        {{SQUARE_FEET(6), INGLE_AREA, 1}, "ft2", "6", INGLE_OK},
        {{SQUARE_FEET(6) - 1, INGLE_AREA, 0}, "ft2", "6", INGLE_ROUNDED},
        {{-1, INGLE_AREA, 0}, "ft2", "0", INGLE_ROUNDED},
        {{DEGREES(45), INGLE_ANGLE, 0}, "deg", "45", INGLE_OK},
        {{DEGREES(45), INGLE_ANGLE, 0}, "rad", "0.785398163", INGLE_ROUNDED},
        {{INT64_MAX, INGLE_ANGLE, 0}, "rad", "44716169.494303227", INGLE_ROUNDED},
        {{INT64_C(206264806247096355), INGLE_ANGLE, 0}, "rad", "1000000", INGLE_OK},
        {{SLOPE(7, 12), INGLE_SLOPE, 0}, "in/ft", "7", INGLE_OK},
        {{RATIO(58, 100), INGLE_SLOPE, 0}, "%", "58", INGLE_OK},
        {{RATIO(58, 100), INGLE_SLOPE, 0}, "slope%", "58", INGLE_OK},
        {{RATIO(1, 12), INGLE_RATIO, 0}, NULL, "0.083333333", INGLE_ROUNDED},
        {{RATIO(1, 10), INGLE_RATIO, 0}, "%", "10", INGLE_OK},
        {{-3, INGLE_COUNT, 0}, NULL, "-3", INGLE_OK},
        {{CUBIC_FEET(1), INGLE_VOLUME, 0}, "in3", "1728", INGLE_OK},
        {{CUBIC_FEET(1), INGLE_VOLUME, 0}, "L", "28.316846592", INGLE_OK},
        {{CUBIC_FEET(1), INGLE_VOLUME, 0}, "m3", "0.028316847", INGLE_ROUNDED},
        {{2, INGLE_CHOICE, 0}, NULL, "2", INGLE_OK},
        {{1, INGLE_FLAG, 0}, NULL, "1", INGLE_OK},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        char text[64];
        size_t length;
        assert_int_equal(ingle_amount_decimal(&cases[i].amount, ingle_unit_find(cases[i].unit),
                                              text, sizeof text, &length),
                         cases[i].status);
        assert_string_equal(text, cases[i].text);
        assert_int_equal(length, strlen(text));
    }
}

static void units_of_formats(void **state)
{
    (void)state;
    ingle_format metric = format_of("cm", 0), wrong = format_of("deg", 0);
    ingle_amount length = {0, INGLE_LENGTH, 0}, area = {0, INGLE_AREA, 1},
                 angle = {0, INGLE_ANGLE, 0}, slope = {0, INGLE_SLOPE, 0},
                 power = {0, INGLE_POWER, 0}, ratio = {0, INGLE_RATIO, 0},
                 flag = {0, INGLE_FLAG, 0}, volume = {0, INGLE_VOLUME, 0};
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&length, NULL)), "in");
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&length, &metric)), "cm");
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&area, NULL)), "ft2");
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&area, &metric)), "m2");
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&angle, &metric)), "deg");
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&slope, &metric)), "in/ft");
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&power, NULL)), "Btu/h");
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&power, &metric)), "kW");
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&volume, NULL)), "ft3");
    assert_string_equal(ingle_unit_id(ingle_amount_unit(&volume, &metric)), "m3");
    assert_null(ingle_amount_unit(&ratio, NULL));
    assert_null(ingle_amount_unit(&flag, NULL));
    assert_null(ingle_amount_unit(&length, &wrong));
    assert_null(ingle_amount_unit(NULL, NULL));
}

static void small_buffers_cut(void **state)
{
    (void)state;
    ingle_amount amount = {INCHES_AND(19, 15, 16), INGLE_LENGTH, 0};
    char text[8] = "xxxxxxx";
    size_t length = 0;
    assert_int_equal(ingle_amount_format(&amount, NULL, text, 6, &length), INGLE_CUT);
    assert_string_equal(text, "19 15");
    assert_int_equal(text[6], 'x');
    assert_int_equal(length, 11);
    assert_int_equal(ingle_amount_format(&amount, NULL, NULL, 0, &length), INGLE_OK);
    assert_int_equal(length, 11);
    amount.value = INCHES(1);
    assert_int_equal(ingle_amount_decimal(&amount, ingle_unit_find("ft"), text, 4, &length),
                     INGLE_CUT);
    assert_string_equal(text, "0.0");
    assert_int_equal(length, 11);
}

static ingle_status status_of(ingle_format format)
{
    ingle_amount amount = {0, INGLE_COUNT, 0};
    char text[64];
    return ingle_amount_format(&amount, &format, text, sizeof text, NULL);
}

static void formats_that_cannot_be_are_refused(void **state)
{
    (void)state;
    static const int32_t denominators[] = {-1, -2147483647 - 1, 3, 12, 65, 128};
    for (size_t i = 0; i < sizeof denominators / sizeof denominators[0]; i++) {
        assert_int_equal(status_of(format_of("in", denominators[i])), INGLE_ERROR_ARGUMENT);
    }
    assert_int_equal(status_of(format_of("in2", 0)), INGLE_ERROR_ARGUMENT);
    ingle_format format = format_of("in", 16);
    assert_int_equal(status_of(format), INGLE_OK);
    format.raised = 1;
    assert_int_equal(status_of(format), INGLE_OK);
    format.raised = 2;
    assert_int_equal(status_of(format), INGLE_ERROR_STRUCT_NEWER);
    format.size = 1;
    assert_int_equal(status_of(format), INGLE_ERROR_STRUCT_SIZE);
    struct {
        ingle_format format;
        unsigned char later[8];
    } newer = {format_of("in", 16), {0}};
    newer.format.size = sizeof newer;
    ingle_amount amount = {INCHES(1), INGLE_LENGTH, 0};
    char text[16];
    assert_int_equal(ingle_amount_format(&amount, &newer.format, text, sizeof text, NULL),
                     INGLE_OK);
    newer.later[7] = 1;
    assert_int_equal(ingle_amount_format(&amount, &newer.format, text, sizeof text, NULL),
                     INGLE_ERROR_STRUCT_NEWER);
}

static void amounts_that_cannot_be_are_refused(void **state)
{
    (void)state;
    char text[16];
    ingle_amount flag = {1, INGLE_FLAG, 0}, nothing = {1, 0, 0}, length = {1, INGLE_LENGTH, 0},
                 count = {1, INGLE_COUNT, 0};
    const ingle_unit *inch = ingle_unit_find("in"), *square = ingle_unit_find("in2");
    assert_int_equal(ingle_amount_format(&flag, NULL, text, 16, NULL), INGLE_ERROR_DIMENSION);
    assert_int_equal(ingle_amount_format(&nothing, NULL, text, 16, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_amount_format(NULL, NULL, text, 16, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_amount_format(&length, NULL, NULL, 16, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_amount_decimal(&length, square, text, 16, NULL),
                     INGLE_ERROR_DIMENSION);
    assert_int_equal(ingle_amount_decimal(&count, inch, text, 16, NULL), INGLE_ERROR_DIMENSION);
    assert_int_equal(ingle_amount_decimal(&length, NULL, text, 16, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_amount_decimal(&nothing, NULL, text, 16, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_amount_decimal(&length, inch, NULL, 16, NULL), INGLE_ERROR_ARGUMENT);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(lengths_in_inches),
        cmocka_unit_test(lengths_in_feet_and_inches),
        cmocka_unit_test(lengths_in_metric_units),
        cmocka_unit_test(areas),
        cmocka_unit_test(powers_are_raised_where_that_is_asked),
        cmocka_unit_test(angles_slopes_ratios_and_counts),
        cmocka_unit_test(heat_inputs),
        cmocka_unit_test(volumes),
        cmocka_unit_test(what_is_shown_is_read_again),
        cmocka_unit_test(decimals),
        cmocka_unit_test(units_of_formats),
        cmocka_unit_test(small_buffers_cut),
        cmocka_unit_test(formats_that_cannot_be_are_refused),
        cmocka_unit_test(amounts_that_cannot_be_are_refused),
    };
    return cmocka_run_group_tests_name("format", tests, NULL, NULL);
}
