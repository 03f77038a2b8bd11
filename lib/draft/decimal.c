/* SPDX-License-Identifier: MIT */
#include "draft/decimal.h"

#include <ingle/draft.h>

#include <math.h>
#include <stdbool.h>

enum { MOST_DIGITS = 15, LEAST_POWER = -15 };

/* Exact in a double up to 10^22. */
static double power_of_ten(unsigned exponent)
{
    double power = 1.0;
    while (exponent-- > 0) {
        power *= 10.0;
    }
    return power;
}

/* Whether it can be written; if not, a mark is. */
static bool writable(struct text *text, double value)
{
    bool can = isfinite(value) && fabs(value) < DECIMAL_LIMIT;
    if (!can) {
        text_add(text, "?");
    }
    return can;
}

static unsigned without_end_zeros(uint64_t *fraction, unsigned places)
{
    while (places > 0 && *fraction % 10 == 0) {
        *fraction /= 10;
        places--;
    }
    return places;
}

static void add_fraction(struct text *text, uint64_t fraction, unsigned places)
{
    char digits[MOST_DIGITS];
    size_t start = sizeof digits;
    for (; places > 0 && start > 0; places--, fraction /= 10) {
        digits[--start] = (char)('0' + fraction % 10);
    }
    text_add(text, ".");
    text_add_bytes(text, digits + start, sizeof digits - start);
}

/* As many places as 53 bits hold beside the whole part. */
static unsigned places_held(double size, unsigned places)
{
    while (places > 0 && size * power_of_ten(places) >= DECIMAL_LIMIT) {
        places--;
    }
    return places;
}

static void add_rounded(struct text *text, double value, unsigned places, bool trimmed)
{
    double size = fabs(value);
    places = places_held(size, places > MOST_DIGITS ? MOST_DIGITS : places);
    uint64_t one = (uint64_t)power_of_ten(places);
    uint64_t scaled = (uint64_t)floor(size * power_of_ten(places) + 0.5);
    if (value < 0 && scaled > 0) {
        text_add(text, "-");
    }
    text_add_unsigned(text, scaled / one);
    uint64_t fraction = scaled % one;
    if (trimmed) {
        places = without_end_zeros(&fraction, places);
    }
    if (places > 0) {
        add_fraction(text, fraction, places);
    }
}

void text_add_places(struct text *text, double value, unsigned places)
{
    if (writable(text, value)) {
        add_rounded(text, value, places, false);
    }
}

/* The power of ten of a number's first digit; far down it is taken as the lowest one written. */
static int power_of(double size)
{
    int power = size > 0 ? (int)floor(log10(size)) : 0;
    return power < LEAST_POWER ? LEAST_POWER : power;
}

void text_add_significant(struct text *text, double value, unsigned digits)
{
    if (!writable(text, value)) {
        return;
    }
    int places = (int)digits - 1 - power_of(fabs(value));
    if (places >= 0) {
        add_rounded(text, value, (unsigned)places, true);
    } else {
        double unit = power_of_ten((unsigned)-places);
        double rounded = floor(fabs(value) / unit + 0.5) * unit;
        add_rounded(text, value < 0 ? -rounded : rounded, 0, true);
    }
}

ingle_status ingle_draft_decimal(double value, int32_t digits, char *buffer, size_t capacity,
                                 size_t *length)
{
    if ((buffer == NULL && capacity > 0) || digits < 1 || digits > MOST_DIGITS) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (!isfinite(value)) {
        return INGLE_ERROR_NUMBER;
    }
    if (fabs(value) >= DECIMAL_LIMIT) {
        return INGLE_ERROR_OVERFLOW;
    }
    struct text text = text_start(buffer, capacity);
    text_add_significant(&text, value, (unsigned)digits);
    return text_end(&text, length);
}
