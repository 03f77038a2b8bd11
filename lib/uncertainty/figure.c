/* SPDX-License-Identifier: MIT */
#include "uncertainty/figure.h"

#include <math.h>
#include <stdbool.h>
#include <string.h>

enum { SHOWN_DIGITS = 3, DECIMAL_DIGITS = 7, MOST_PLACES = 12 };

/* Whole numbers up to here are written digit by digit; no figure comes near it. */
#define MOST_WRITTEN 9.0e18

ingle_figure figure_of(double value, ingle_dimension dimension)
{
    ingle_figure figure = {isfinite(value) ? value : 0, dimension, 0};
    return figure;
}

ingle_figure figure_plain(double value)
{
    return figure_of(value, INGLE_COUNT);
}

/* ---- numbers -------------------------------------------------------------------------------- */

/* Places after the point that leave so many significant digits. */
static int places_for(double size, int significant, int most_places)
{
    int places = significant - 1 - (int)floor(log10(size));
    return places < 0 ? 0 : places > most_places ? most_places : places;
}

static void add_fraction(struct text *text, uint64_t fraction, int places)
{
    char digits[MOST_PLACES + 1];
    int used = 0;
    for (int i = places - 1; i >= 0; i--) {
        digits[i] = (char)('0' + fraction % 10);
        fraction /= 10;
        used = used == 0 && digits[i] != '0' ? i + 1 : used;
    }
    if (used > 0) {
        text_add(text, ".");
        text_add_bytes(text, digits, (size_t)used);
    }
}

void text_add_number(struct text *text, double number, int significant, int most_places)
{
    double size = fabs(number);
    if (!isfinite(number) || size == 0) {
        text_add(text, "0");
        return;
    }
    int places = places_for(size, significant, most_places);
    double scale = pow(10, places);
    double scaled = round(size * scale);
    if (scaled > MOST_WRITTEN) {
        scaled = MOST_WRITTEN;
    }
    uint64_t digits = (uint64_t)scaled;
    uint64_t whole = (uint64_t)scale;
    if (number < 0 && digits > 0) {
        text_add(text, "-");
    }
    text_add_unsigned(text, digits / whole);
    add_fraction(text, digits % whole, places);
}

/* ---- figures -------------------------------------------------------------------------------- */

const ingle_unit *ingle_figure_unit(const ingle_figure *figure, const ingle_format *format)
{
    if (figure == NULL) {
        return NULL;
    }
    ingle_amount amount = {0, figure->dimension, INGLE_SCALE_USUAL};
    const ingle_unit *unit = ingle_amount_unit(&amount, format);
    return unit != NULL && unit == ingle_unit_find("ft") ? ingle_unit_find("in") : unit;
}

/* A figure's value in the unit it is shown in. */
static double value_in_unit(const ingle_figure *figure, const ingle_unit *unit)
{
    int64_t numerator = 1;
    int64_t denominator = 1;
    if (unit != NULL) {
        ingle_unit_size(unit, &numerator, &denominator);
    } else if (figure->dimension == INGLE_RATIO) {
        numerator = INGLE_RATIO_ONE;
    }
    return figure->value * (double)denominator / (double)numerator;
}

static bool is_usable(const ingle_figure *figure, const char *buffer, size_t capacity)
{
    return figure != NULL && isfinite(figure->value) &&
           ingle_dimension_is_amount(figure->dimension) && (buffer != NULL || capacity == 0);
}

void text_add_figure(struct text *text, const ingle_figure *figure, const ingle_format *format)
{
    const ingle_unit *unit = ingle_figure_unit(figure, format);
    text_add_number(text, value_in_unit(figure, unit), SHOWN_DIGITS, MOST_PLACES);
    if (unit != NULL) {
        text_add(text, " ");
        text_add(text, ingle_unit_id(unit));
    }
}

ingle_status ingle_figure_format(const ingle_figure *figure, const ingle_format *format,
                                 char *buffer, size_t capacity, size_t *length)
{
    if (!is_usable(figure, buffer, capacity)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    text_add_figure(&text, figure, format);
    return text_end(&text, length);
}

ingle_status ingle_figure_decimal(const ingle_figure *figure, const ingle_format *format,
                                  char *buffer, size_t capacity, size_t *length)
{
    if (!is_usable(figure, buffer, capacity)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    text_add_number(&text, value_in_unit(figure, ingle_figure_unit(figure, format)),
                    DECIMAL_DIGITS, MOST_PLACES);
    return text_end(&text, length);
}

void text_add_percent(struct text *text, double probability)
{
    const double least = 0.001;
    if (probability > 1 - least || probability < least) {
        text_add(text, probability < least ? "less than 0.1 %" : "more than 99.9 %");
        return;
    }
    /* To a tenth; rounded, it would else reach the two texts above. */
    text_add_number(text, round(probability * 1000) / 10, SHOWN_DIGITS, 1);
    text_add(text, " %");
}
