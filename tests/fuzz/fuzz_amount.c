/* SPDX-License-Identifier: MIT */
/*
 * Amounts from any bytes, as every dimension, with and without a unit given. What must hold:
 * an error has its place within the text and leaves the amount alone; an amount that was read is
 * shown in every format so that it can be read again, as itself or, behind ≈, to half a
 * graduation.
 */
#include <ingle/measure.h>

#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define ALMOST "≈ "

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void demand(int holds, const char *what)
{
    if (!holds) {
        fprintf(stderr, "does not hold: %s\n", what);
        abort();
    }
}

/* A graduation of the text that a format gives, in base units. */
static int64_t graduation(const ingle_amount *amount, const ingle_format *format)
{
    int64_t size = 0, per = 1;
    ingle_unit_size(ingle_amount_unit(amount, format), &size, &per);
    switch (amount->dimension) {
    case INGLE_LENGTH:
        return INT64_C(25400000) / format->denominator;
    case INGLE_RATIO:
        return INGLE_RATIO_ONE / 1000000;
    case INGLE_POWER: /* a thousandth of a Btu/h or a cubic foot is no whole number of base units */
    case INGLE_VOLUME:
        return size / 1000 + 2;
    default:
        return size / 1000;
    }
}

static void check_shown(const ingle_amount *amount, const char *unit, int32_t denominator)
{
    ingle_format format = {sizeof format, ingle_unit_find(unit), denominator, 0};
    char text[80];
    size_t length, place = 0;
    ingle_amount again = {0, 0, 0};
    demand(ingle_amount_format(amount, &format, text, sizeof text, &length) == INGLE_OK, "shown");
    demand(length == strlen(text), "its length is told");
    size_t start = strncmp(text, ALMOST, strlen(ALMOST)) == 0 ? strlen(ALMOST) : 0;
    ingle_status status = ingle_amount_parse(text + start, length - start, amount->dimension, NULL,
                                             &again, &place);
    int64_t step = start > 0 ? graduation(amount, &format) : 0;
    if (status == INGLE_ERROR_OVERFLOW && start > 0) {
        int64_t room = amount->value < 0 ? INT64_MAX + amount->value : INT64_MAX - amount->value;
        demand(room <= step / 2, "only the last graduation is too large to be read again");
        return;
    }
    bool coarse = amount->dimension == INGLE_POWER || amount->dimension == INGLE_VOLUME;
    demand(status == INGLE_OK || (status == INGLE_ROUNDED && start > 0 && coarse),
           "what is shown can be read");
    int64_t off = again.value - amount->value;
    bool rounded = off != 0 || status == INGLE_ROUNDED;
    demand(start > 0 ? rounded && 2 * off <= step && 2 * off >= -step : off == 0,
           "what is shown is the amount, or is marked and near it");
}

static void check_decimal(const ingle_amount *amount)
{
    const ingle_unit *unit = ingle_amount_unit(amount, NULL);
    char text[80];
    size_t length;
    ingle_amount again = {0, 0, 0};
    ingle_status status = ingle_amount_decimal(amount, unit, text, sizeof text, &length);
    demand(status == INGLE_OK || status == INGLE_ROUNDED, "written as a decimal");
    ingle_status read = ingle_amount_parse(text, length, amount->dimension, unit, &again, NULL);
    if (status == INGLE_OK) {
        demand(read == INGLE_OK && again.value == amount->value, "an exact decimal is the amount");
    }
}

static void check_amount(const ingle_amount *amount)
{
    static const char *const units[] = {"in", "ft", "mm", "cm", "m"};
    for (ingle_scale scale = 0; scale <= INGLE_SCALE_DECIMAL; scale++) {
        ingle_amount shown = *amount;
        shown.scale = scale;
        for (size_t i = 0; i < sizeof units / sizeof units[0]; i++) {
            check_shown(&shown, units[i], 64);
            check_shown(&shown, units[i], 16);
        }
    }
    check_decimal(amount);
}

static void check_text(const char *text, size_t size, ingle_dimension dimension,
                       const ingle_unit *unit)
{
    const ingle_amount untouched = {42, 43, 44};
    ingle_amount amount = untouched;
    size_t position = SIZE_MAX;
    ingle_status status = ingle_amount_parse(text, size, dimension, unit, &amount, &position);
    if (status < 0) {
        demand(position <= size, "an error lies within the text");
        demand(status != INGLE_ERROR_ARGUMENT, "the arguments are sound");
        demand(amount.value == untouched.value && amount.dimension == untouched.dimension &&
                   amount.scale == untouched.scale,
               "an error leaves the amount alone");
        return;
    }
    demand(status == INGLE_OK || status == INGLE_ROUNDED, "read, or refused");
    demand(amount.dimension == dimension && amount.scale == INGLE_SCALE_USUAL, "what was due");
    demand(amount.value != INT64_MIN, "every amount has its negative");
    check_amount(&amount);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    const char *text = (const char *)data;
    static const char empty[1];
    if (size == 0) {
        text = empty;
    }
    for (ingle_dimension dimension = INGLE_LENGTH; dimension <= INGLE_VOLUME; dimension++) {
        if (!ingle_dimension_is_amount(dimension)) {
            continue;
        }
        check_text(text, size, dimension, NULL);
        for (size_t i = 0; i < ingle_unit_count(); i++) {
            if (ingle_unit_dimension(ingle_unit_at(i)) == dimension) {
                check_text(text, size, dimension, ingle_unit_at(i));
            }
        }
    }
    return 0;
}
