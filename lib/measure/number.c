/* SPDX-License-Identifier: MIT */
#include "measure/number.h"

#include "base/wide.h"

#include <string.h>

/* Beyond every text's length, and far from the ends of its type. */
#define EXPONENT_LIMIT (INT64_MAX / 8)

static const char *const slashes[] = {"/", "\xE2\x81\x84"}; /* the second is U+2044 */

/* ---- reading -------------------------------------------------------------------------------- */

static bool take_minus(struct scan *scan)
{
    return scan_take(scan, "-") || scan_take(scan, "\xE2\x88\x92"); /* U+2212 */
}

/* Takes a slash and the spaces round it; takes nothing if there is none. */
static bool take_slash(struct scan *scan)
{
    struct scan ahead = *scan;
    scan_spaces(&ahead);
    if (!scan_take(&ahead, slashes[0]) && !scan_take(&ahead, slashes[1])) {
        return false;
    }
    scan_spaces(&ahead);
    *scan = ahead;
    return true;
}

/* The value of ASCII digits, or false beyond 63 bits. */
static bool digits_value(const char *digits, size_t length, uint64_t *value)
{
    *value = 0;
    for (size_t i = 0; i < length; i++) {
        uint64_t digit = (uint64_t)(digits[i] - '0');
        if (*value > ((uint64_t)INT64_MAX - digit) / 10) {
            return false;
        }
        *value = *value * 10 + digit;
    }
    return true;
}

/* What is wrong where a digit is due. */
static ingle_status no_digit(const struct scan *scan)
{
    return scan_peek(scan) == ',' ? INGLE_ERROR_COMMA : INGLE_ERROR_NUMBER;
}

/* Reads what is below the slash of the fraction whose upper part is given. */
static ingle_status read_denominator(struct scan *scan, size_t upper, size_t upper_length,
                                     struct number *number)
{
    size_t lower = scan->at;
    size_t lower_length = scan_digits(scan);
    if (lower_length == 0) {
        return no_digit(scan);
    }
    size_t end = scan->at;
    number->has_fraction = true;
    scan->at = upper;
    if (!digits_value(scan->text + upper, upper_length, &number->numerator)) {
        return INGLE_ERROR_OVERFLOW;
    }
    scan->at = lower;
    if (!digits_value(scan->text + lower, lower_length, &number->denominator)) {
        return INGLE_ERROR_OVERFLOW;
    }
    if (number->denominator == 0) {
        return INGLE_ERROR_ZERO_DENOMINATOR;
    }
    scan->at = end;
    return INGLE_OK;
}

static bool read_unicode_fraction(struct scan *scan, struct number *number)
{
    unsigned numerator, denominator;
    if (!scan_fraction(scan, &numerator, &denominator)) {
        return false;
    }
    number->has_fraction = true;
    number->numerator = numerator;
    number->denominator = denominator;
    return true;
}

/* Reads the fraction of a mixed number, if one follows the whole number just read. */
static ingle_status read_mixed(struct scan *scan, struct number *number)
{
    struct scan ahead = *scan;
    bool hyphen = scan_take(&ahead, "-");
    bool apart = hyphen || scan_spaces(&ahead);
    if (read_unicode_fraction(&ahead, number)) {
        *scan = ahead;
        return INGLE_OK;
    }
    size_t upper = ahead.at;
    size_t upper_length = apart ? scan_digits(&ahead) : 0;
    if (upper_length == 0) {
        return INGLE_OK;
    }
    if (!take_slash(&ahead)) {
        if (scan_peek(&ahead) == ',') {
            scan->at = ahead.at;
            return INGLE_ERROR_COMMA;
        }
        /* `15-16` is no number; `15 16` is one, and what follows it. */
        return hyphen ? INGLE_ERROR_NUMBER : INGLE_OK;
    }
    *scan = ahead;
    ingle_status status = read_denominator(scan, upper, upper_length, number);
    if (status == INGLE_OK && number->numerator >= number->denominator) {
        scan->at = upper;
        status = INGLE_ERROR_NUMBER;
    }
    return status;
}

/* Reads an exponent if there is one: an `e` without digits is none, but may start a unit. */
static bool read_exponent(struct scan *scan, struct number *number)
{
    struct scan ahead = *scan;
    if (!scan_take(&ahead, "e") && !scan_take(&ahead, "E")) {
        return false;
    }
    bool negative = scan_take(&ahead, "-");
    if (!negative) {
        scan_take(&ahead, "+");
    }
    size_t start = ahead.at;
    size_t length = scan_digits(&ahead);
    uint64_t value;
    if (length == 0) {
        return false;
    }
    if (!digits_value(ahead.text + start, length, &value) || value > EXPONENT_LIMIT) {
        value = EXPONENT_LIMIT;
    }
    number->exponent = negative ? -(int64_t)value : (int64_t)value;
    *scan = ahead;
    return true;
}

static ingle_status read_digits(struct scan *scan, struct number *number)
{
    size_t start = scan->at;
    number->whole = scan->text + start;
    number->whole_length = scan_digits(scan);
    bool point = scan_take(scan, ".");
    if (point) {
        number->places = scan->text + scan->at;
        number->places_length = scan_digits(scan);
        if (number->places_length == 0) {
            return INGLE_ERROR_NUMBER;
        }
    } else if (take_slash(scan)) {
        size_t upper_length = number->whole_length;
        number->whole_length = 0;
        return read_denominator(scan, start, upper_length, number);
    }
    if (read_exponent(scan, number) || point) {
        return INGLE_OK;
    }
    return read_mixed(scan, number);
}

/* A comma or a second point after the digits is part of a number that is none. */
static ingle_status read_end(struct scan *scan)
{
    struct scan ahead = *scan;
    scan_spaces(&ahead);
    if (scan_peek(&ahead) == ',') {
        scan->at = ahead.at;
        return INGLE_ERROR_COMMA;
    }
    return scan_peek(scan) == '.' ? INGLE_ERROR_NUMBER : INGLE_OK;
}

ingle_status number_read(struct scan *scan, bool sign, struct number *number)
{
    memset(number, 0, sizeof *number);
    number->start = scan->at;
    number->whole = number->places = scan->text;
    number->denominator = 1;
    number->negative = sign && take_minus(scan);
    if (!scan_number_next(scan)) {
        return no_digit(scan);
    }
    ingle_status status = INGLE_OK;
    if (!read_unicode_fraction(scan, number)) {
        status = read_digits(scan, number);
    }
    return status == INGLE_OK ? read_end(scan) : status;
}

/* ---- exact products ------------------------------------------------------------------------- */

static size_t digit_count(const struct number *number)
{
    return number->whole_length + number->places_length;
}

static uint64_t digit_at(const struct number *number, size_t index)
{
    char digit = index < number->whole_length ? number->whole[index]
                                              : number->places[index - number->whole_length];
    return (uint64_t)(digit - '0');
}

/* The whole number that the first `length` digits make, zeros added where there are fewer. */
static bool leading_value(const struct number *number, int64_t length, int64_t *value)
{
    size_t count = digit_count(number);
    *value = 0;
    for (int64_t i = 0; i < length; i++) {
        bool written = (uint64_t)i < count;
        if (!written && *value == 0) {
            break;
        }
        int64_t digit = written ? (int64_t)digit_at(number, (size_t)i) : 0;
        if (*value > (INT64_MAX - digit) / 10) {
            return false;
        }
        *value = *value * 10 + digit;
    }
    return true;
}

/* A quantity on its way through divisions by ten: a whole part, and what is left below one. */
struct rest {
    uint64_t whole;
    enum { REST_NONE, REST_BELOW_HALF, REST_HALF, REST_ABOVE_HALF } part;
};

static void divide_by_ten(struct rest *rest)
{
    uint64_t digit = rest->whole % 10;
    bool more = rest->part != REST_NONE;
    rest->whole /= 10;
    if (digit > 5 || (digit == 5 && more)) {
        rest->part = REST_ABOVE_HALF;
    } else if (digit == 5) {
        rest->part = REST_HALF;
    } else {
        rest->part = digit > 0 || more ? REST_BELOW_HALF : REST_NONE;
    }
}

/*
 * The product of a factor with the decimal fraction 0.ddd… whose digits start at `point`, which
 * may lie before the first digit. From the last digit to the first, each step adds one digit's
 * product and divides by ten: no digit is lost, however many there are, and 9 × factor + factor
 * fits in 64 bits.
 */
static struct rest fraction_times(const struct number *number, int64_t point, int64_t factor)
{
    struct rest rest = {0, REST_NONE};
    size_t first = point > 0 ? (size_t)point : 0;
    for (size_t i = digit_count(number); i > first; i--) {
        rest.whole += digit_at(number, i - 1) * (uint64_t)factor;
        divide_by_ten(&rest);
    }
    /* After 20 divisions only the trace of what was there is left, and it stays as it is. */
    for (int64_t i = 0; i < -point && i < 21; i++) {
        divide_by_ten(&rest);
    }
    return rest;
}

static ingle_status decimal_times(const struct number *number, int64_t factor, int64_t shift,
                                  int64_t *result)
{
    int64_t point = (int64_t)number->whole_length + number->exponent - shift;
    int64_t whole;
    if (!leading_value(number, point, &whole) || !wide_multiply(whole, factor, result)) {
        return INGLE_ERROR_OVERFLOW;
    }
    struct rest rest = fraction_times(number, point, factor);
    uint64_t added = rest.whole + (rest.part >= REST_HALF ? 1 : 0);
    if (!wide_add(*result, (int64_t)added, result)) {
        return INGLE_ERROR_OVERFLOW;
    }
    return rest.part == REST_NONE ? INGLE_OK : INGLE_ROUNDED;
}

/* ---- fractions ------------------------------------------------------------------------------ */

struct fraction {
    int64_t above;
    int64_t below;
};

static int64_t greatest_common_divisor(int64_t a, int64_t b)
{
    while (b != 0) {
        int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

static struct fraction reduced(int64_t above, int64_t below)
{
    int64_t divisor = greatest_common_divisor(above, below);
    struct fraction fraction = {above / divisor, below / divisor};
    return fraction;
}

/* The number of digits that are left without the zeros at the end. */
static size_t significant_digits(const struct number *number)
{
    size_t count = digit_count(number);
    while (count > 0 && digit_at(number, count - 1) == 0) {
        count--;
    }
    return count;
}

/* Multiplies by ten as often as told, unless that is too much. */
static bool raise(int64_t *value, int64_t times)
{
    for (int64_t i = 0; i < times && *value != 0; i++) {
        if (!wide_multiply(*value, 10, value)) {
            return false;
        }
    }
    return true;
}

/* The number as a fraction, or false if 63 bits do not hold its parts. */
static bool number_fraction(const struct number *number, struct fraction *fraction)
{
    size_t count = significant_digits(number);
    int64_t power = (int64_t)number->whole_length + number->exponent - (int64_t)count;
    int64_t above, below = 1;
    if (!leading_value(number, (int64_t)count, &above) || !raise(&above, power) ||
        (above != 0 && !raise(&below, -power))) {
        return false;
    }
    int64_t denominator = (int64_t)number->denominator;
    if (number->has_fraction) { /* then the digits are a whole number, and `below` is 1 */
        if (!wide_multiply(above, denominator, &above) ||
            !wide_add(above, (int64_t)number->numerator, &above)) {
            return false;
        }
        below = denominator;
    }
    *fraction = reduced(above, below);
    return true;
}

static ingle_status fraction_times_whole(struct fraction fraction, int64_t factor,
                                         int64_t *result)
{
    bool exact;
    if (!wide_multiply_divide((uint64_t)fraction.above, (uint64_t)factor,
                              (uint64_t)fraction.below, ROUND_NEAREST, result, &exact)) {
        return INGLE_ERROR_OVERFLOW;
    }
    return exact ? INGLE_OK : INGLE_ROUNDED;
}

static int64_t decimal_shift(int64_t power_of_ten)
{
    int64_t shift = 0;
    while (power_of_ten > 1) {
        power_of_ten /= 10;
        shift++;
    }
    return shift;
}

ingle_status number_times(const struct number *number, int64_t numerator, int64_t denominator,
                          int64_t *result)
{
    if (!number->has_fraction) {
        return decimal_times(number, numerator, decimal_shift(denominator), result);
    }
    struct fraction fraction;
    if (!number_fraction(number, &fraction) ||
        !wide_multiply(fraction.below, denominator, &fraction.below)) {
        return INGLE_ERROR_OVERFLOW;
    }
    return fraction_times_whole(fraction, numerator, result);
}

ingle_status number_quotient(const struct number *above, const struct number *below, int64_t scale,
                             int64_t *result)
{
    struct fraction upper, lower;
    if (!number_fraction(above, &upper) || !number_fraction(below, &lower)) {
        return INGLE_ERROR_OVERFLOW;
    }
    /* (a/b) / (c/d) = (a/c) × (d/b), each reduced before they are multiplied. */
    struct fraction first = reduced(upper.above, lower.above);
    struct fraction second = reduced(lower.below, upper.below);
    struct fraction quotient;
    if (!wide_multiply(first.above, second.above, &quotient.above) ||
        !wide_multiply(first.below, second.below, &quotient.below)) {
        return INGLE_ERROR_OVERFLOW;
    }
    return fraction_times_whole(quotient, scale, result);
}

bool number_is_zero(const struct number *number)
{
    return number->numerator == 0 && significant_digits(number) == 0;
}
