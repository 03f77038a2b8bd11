/* SPDX-License-Identifier: MIT */
/*
 * Writes amounts as text: for people on a tape's grid, or as plain decimals.
 */
#include "base/memory.h"
#include "base/text.h"
#include "base/wide.h"
#include "measure/amounts.h"
#include "measure/units.h"

#include <string.h>

enum {
    FINEST_DENOMINATOR = 64,
    /* Places after the point: of a decimal that stands for the amount, of areas, angles, slopes,
     * heat inputs and volumes as people write them, and of ratios. */
    DECIMAL_PLACES = 9,
    SHOWN_PLACES = 3,
    SHEET_PLACES = 4, /* 26 gauge is 0.0187 in */
    SHOWN_RATIO_PLACES = 6
};

/* An amount on its way into text. */
struct showing {
    struct text text;
    bool negative;
    uint64_t size; /* the amount without its sign */
    const ingle_unit *unit;
    uint64_t denominator;
    bool raised;
};

static uint64_t size_of(int64_t value)
{
    return value < 0 ? 0 - (uint64_t)value : (uint64_t)value;
}

/* ---- signs ---------------------------------------------------------------------------------- */

/* Adds what goes before the digits. Zero has no sign, whatever was rounded to it. */
static void add_start(struct showing *showing, bool exact, bool zero)
{
    if (!exact) {
        text_add(&showing->text, "\xE2\x89\x88 "); /* U+2248, almost equal to */
    }
    if (showing->negative && !zero) {
        text_add(&showing->text, "-");
    }
}

/* ---- decimals ------------------------------------------------------------------------------- */

/* A size in a unit, to so many places after the point. */
struct decimal {
    uint64_t whole;
    uint64_t fraction; /* in units of the last place */
    int places;
    bool exact;
};

static uint64_t power_of_ten(int exponent)
{
    uint64_t power = 1;
    while (exponent-- > 0) {
        power *= 10;
    }
    return power;
}

/* `size` base units in units that hold numerator / denominator of them. */
static struct decimal decimal_of(uint64_t size, int64_t numerator, int64_t denominator, int places)
{
    uint64_t divisor = (uint64_t)numerator, factor = (uint64_t)denominator;
    struct decimal decimal = {0, 0, places, true};
    int64_t whole = 0, fraction = 0;
    if (factor == 1) {
        decimal.whole = size / divisor;
    } else if (wide_multiply_divide(size, factor, divisor, ROUND_DOWN, &whole, NULL)) {
        decimal.whole = (uint64_t)whole; /* the radian's always fits */
    }
    /* The products wrap round, their difference is less than the divisor and does not. */
    uint64_t rest = size * factor - decimal.whole * divisor;
    uint64_t scale = power_of_ten(places);
    wide_multiply_divide(rest, scale, divisor, ROUND_NEAREST, &fraction, &decimal.exact);
    decimal.fraction = (uint64_t)fraction;
    if (decimal.fraction == scale) {
        decimal.fraction = 0;
        decimal.whole++;
    }
    return decimal;
}

static void add_decimal(struct text *text, struct decimal decimal)
{
    char digits[DECIMAL_PLACES];
    uint64_t left = decimal.fraction;
    for (int i = decimal.places - 1; i >= 0; i--) {
        digits[i] = (char)('0' + left % 10);
        left /= 10;
    }
    size_t length = (size_t)decimal.places;
    while (length > 0 && digits[length - 1] == '0') {
        length--;
    }
    text_add_unsigned(text, decimal.whole);
    if (length > 0) {
        text_add(text, ".");
        text_add_bytes(text, digits, length);
    }
}

/* Shows the size as a decimal in a unit of the size given, and says whether it is exactly that. */
static void show_decimal(struct showing *showing, int64_t numerator, int64_t denominator,
                         int places)
{
    struct decimal decimal = decimal_of(showing->size, numerator, denominator, places);
    add_start(showing, decimal.exact, decimal.whole == 0 && decimal.fraction == 0);
    add_decimal(&showing->text, decimal);
}

/* A power stands at the end of an id: `in2`. */
static void add_raised(struct text *text, const char *id)
{
    size_t length = strlen(id);
    char power = id[length - 1];
    bool has_power = length > 1 && (power == '2' || power == '3');
    text_add_bytes(text, id, has_power ? length - 1 : length);
    text_add(text, !has_power ? "" : power == '2' ? "²" : "³");
}

static void add_unit(struct showing *showing, const ingle_unit *unit)
{
    text_add(&showing->text, " ");
    if (showing->raised) {
        add_raised(&showing->text, ingle_unit_id(unit));
    } else {
        text_add(&showing->text, ingle_unit_id(unit));
    }
}

static void show_in_unit(struct showing *showing, int places)
{
    show_decimal(showing, showing->unit->numerator, showing->unit->denominator, places);
    add_unit(showing, showing->unit);
}

/* ---- fractions ------------------------------------------------------------------------------ */

static uint64_t greatest_common_divisor(uint64_t a, uint64_t b)
{
    while (b != 0) {
        uint64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

/* Adds graduations / denominator in lowest terms: `15/16`. */
static void add_fraction(struct text *text, uint64_t above, uint64_t below)
{
    uint64_t divisor = greatest_common_divisor(above, below);
    text_add_unsigned(text, above / divisor);
    if (below != divisor) {
        text_add(text, "/");
        text_add_unsigned(text, below / divisor);
    }
}

/* Adds a number of graduations as a mixed number: `15 15/16`. */
static void add_mixed(struct text *text, uint64_t graduations, uint64_t denominator)
{
    uint64_t whole = graduations / denominator, rest = graduations % denominator;
    if (whole > 0 || rest == 0) {
        text_add_unsigned(text, whole);
    }
    if (whole > 0 && rest > 0) {
        text_add(text, " ");
    }
    if (rest > 0) {
        add_fraction(text, rest, denominator);
    }
}

/* ---- each dimension ------------------------------------------------------------------------- */

/* Whether a thickness is of those that sheet metal has, in thousandths of an inch. */
static bool is_of_sheet(const struct showing *showing)
{
    return showing->denominator == FINEST_DENOMINATOR &&
           showing->size < (uint64_t)INCHES_AND(0, 1, 8) &&
           showing->size % (uint64_t)INCHES_AND(0, 1, 64) != 0 &&
           showing->size % (uint64_t)INCHES_AND(0, 1, 1000) == 0;
}

/* Inches, or feet and inches. */
static void show_inches(struct showing *showing, ingle_scale scale)
{
    const ingle_unit *foot = unit_at_place(UNIT_FOOT);
    if (scale == INGLE_SCALE_DECIMAL || is_of_sheet(showing)) {
        show_decimal(showing, INCHES(1), 1, SHEET_PLACES);
        add_unit(showing, unit_at_place(UNIT_INCH));
        return;
    }
    uint64_t graduation = (uint64_t)INCHES(1) / showing->denominator;
    uint64_t rest = showing->size % graduation;
    uint64_t count = showing->size / graduation + (rest >= graduation - rest ? 1 : 0);
    uint64_t per_foot = 12 * showing->denominator;
    add_start(showing, rest == 0, count == 0);
    if (showing->unit == foot && count >= per_foot) {
        text_add_unsigned(&showing->text, count / per_foot);
        add_unit(showing, foot);
        count %= per_foot;
        if (count == 0) {
            return;
        }
        text_add(&showing->text, " ");
    }
    add_mixed(&showing->text, count, showing->denominator);
    add_unit(showing, unit_at_place(UNIT_INCH));
}

static void show_length(struct showing *showing, ingle_scale scale)
{
    if (showing->unit == unit_at_place(UNIT_INCH) || showing->unit == unit_at_place(UNIT_FOOT)) {
        show_inches(showing, scale);
    } else {
        show_in_unit(showing, DECIMAL_PLACES); /* one nanometre is 0.000 000 001 m */
    }
}

static void show_angle(struct showing *showing)
{
    show_decimal(showing, DEGREES(1), 1, SHOWN_PLACES);
    text_add(&showing->text, "\xC2\xB0"); /* U+00B0, degree sign */
}

/* The rise in a run of 12: a tape's fraction where it is one, else a decimal. */
static void show_slope(struct showing *showing)
{
    uint64_t graduation = (uint64_t)SLOPE(1, 12) / showing->denominator;
    if (showing->size % graduation == 0) {
        add_start(showing, true, showing->size == 0);
        add_mixed(&showing->text, showing->size / graduation, showing->denominator);
    } else {
        show_decimal(showing, SLOPE(1, 12), 1, SHOWN_PLACES);
    }
    text_add(&showing->text, " in 12");
}

/* A fraction where it is `1/n` or has a small number below its line, else a decimal. */
static void show_ratio(struct showing *showing, ingle_scale scale)
{
    uint64_t one = (uint64_t)INGLE_RATIO_ONE;
    uint64_t divisor = greatest_common_divisor(showing->size, one);
    if (scale != INGLE_SCALE_DECIMAL &&
        (showing->size == divisor || one / divisor <= FINEST_DENOMINATOR)) {
        add_start(showing, true, showing->size == 0);
        add_fraction(&showing->text, showing->size, one);
    } else {
        show_decimal(showing, INGLE_RATIO_ONE, 1, SHOWN_RATIO_PLACES);
    }
}

static void show_count(struct showing *showing)
{
    add_start(showing, true, showing->size == 0);
    text_add_unsigned(&showing->text, showing->size);
}

static void show(struct showing *showing, const ingle_amount *amount)
{
    switch (amount->dimension) {
    case INGLE_LENGTH:
        show_length(showing, amount->scale);
        break;
    case INGLE_AREA:
    case INGLE_POWER:
    case INGLE_VOLUME:
        show_in_unit(showing, SHOWN_PLACES);
        break;
    case INGLE_ANGLE:
        show_angle(showing);
        break;
    case INGLE_SLOPE:
        show_slope(showing);
        break;
    case INGLE_RATIO:
        show_ratio(showing, amount->scale);
        break;
    default:
        show_count(showing);
        break;
    }
}

/* ---- formats -------------------------------------------------------------------------------- */

/* Takes a format, its defaults filled in. */
static ingle_status format_take(ingle_format *taken, const ingle_format *given)
{
    ingle_format plain = {sizeof plain, NULL, 0, 0};
    ingle_status status =
        struct_take(taken, sizeof *taken, sizeof *taken, given != NULL ? given : &plain);
    if (status != INGLE_OK) {
        return status;
    }
    if (taken->unit == NULL) {
        taken->unit = unit_at_place(UNIT_INCH);
    }
    if (taken->denominator == 0) {
        taken->denominator = FINEST_DENOMINATOR;
    }
    int32_t denominator = taken->denominator;
    if (denominator < 0 || denominator > FINEST_DENOMINATOR ||
        (denominator & (denominator - 1)) != 0 || taken->unit->dimension != INGLE_LENGTH) {
        return INGLE_ERROR_ARGUMENT;
    }
    return taken->raised == 0 || taken->raised == 1 ? INGLE_OK : INGLE_ERROR_STRUCT_NEWER;
}

/* Which units of area go with a unit of length: the usual, and the large. */
static const ingle_unit *area_unit(const ingle_unit *length, ingle_scale scale)
{
    static const struct {
        enum unit_place length, usual, large;
    } areas[] = {
        {UNIT_INCH, UNIT_SQUARE_INCH, UNIT_SQUARE_FOOT},
        {UNIT_FOOT, UNIT_SQUARE_INCH, UNIT_SQUARE_FOOT},
        {UNIT_MILLIMETRE, UNIT_SQUARE_MILLIMETRE, UNIT_SQUARE_METRE},
        {UNIT_CENTIMETRE, UNIT_SQUARE_CENTIMETRE, UNIT_SQUARE_METRE},
        {UNIT_METRE, UNIT_SQUARE_METRE, UNIT_SQUARE_METRE},
    };
    for (size_t i = 0; i < sizeof areas / sizeof areas[0]; i++) {
        if (unit_at_place(areas[i].length) == length) {
            return unit_at_place(scale == INGLE_SCALE_LARGE ? areas[i].large : areas[i].usual);
        }
    }
    return NULL;
}

/* One of two units, by the system that a unit of length belongs to. */
static const ingle_unit *unit_beside(const ingle_unit *length, enum unit_place customary,
                                     enum unit_place metric)
{
    bool is_customary = length == unit_at_place(UNIT_INCH) || length == unit_at_place(UNIT_FOOT);
    return unit_at_place(is_customary ? customary : metric);
}

static const ingle_unit *shown_unit(const ingle_amount *amount, const ingle_unit *length)
{
    switch (amount->dimension) {
    case INGLE_LENGTH:
        return length;
    case INGLE_AREA:
        return area_unit(length, amount->scale);
    case INGLE_ANGLE:
        return unit_at_place(UNIT_DEGREE);
    case INGLE_SLOPE:
        return unit_at_place(UNIT_INCH_PER_FOOT);
    case INGLE_POWER:
        return unit_beside(length, UNIT_BTU_PER_HOUR, UNIT_KILOWATT);
    case INGLE_VOLUME:
        return unit_beside(length, UNIT_CUBIC_FOOT, UNIT_CUBIC_METRE);
    default:
        return NULL;
    }
}

const ingle_unit *ingle_amount_unit(const ingle_amount *amount, const ingle_format *format)
{
    ingle_format taken;
    if (amount == NULL || format_take(&taken, format) != INGLE_OK) {
        return NULL;
    }
    return shown_unit(amount, taken.unit);
}

ingle_status ingle_amount_format(const ingle_amount *amount, const ingle_format *format,
                                 char *buffer, size_t capacity, size_t *length)
{
    ingle_format taken;
    if (amount == NULL || (buffer == NULL && capacity > 0) ||
        ingle_dimension_name(amount->dimension) == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (!ingle_dimension_is_amount(amount->dimension)) {
        return INGLE_ERROR_DIMENSION;
    }
    ingle_status status = format_take(&taken, format);
    if (status != INGLE_OK) {
        return status;
    }
    struct showing showing = {text_start(buffer, capacity), amount->value < 0,
                              size_of(amount->value), shown_unit(amount, taken.unit),
                              (uint64_t)taken.denominator, taken.raised != 0};
    show(&showing, amount);
    return text_end(&showing.text, length);
}

/* ---- plain decimals ------------------------------------------------------------------------- */

/* The size of one in a dimension whose amounts may stand without a unit; 0 in the others. */
static int64_t unitless_size(ingle_dimension dimension)
{
    switch (dimension) {
    case INGLE_RATIO:
        return INGLE_RATIO_ONE;
    case INGLE_COUNT:
    case INGLE_CHOICE:
    case INGLE_FLAG:
        return 1;
    default:
        return 0;
    }
}

ingle_status ingle_amount_decimal(const ingle_amount *amount, const ingle_unit *unit, char *buffer,
                                  size_t capacity, size_t *length)
{
    if (amount == NULL || (buffer == NULL && capacity > 0) ||
        ingle_dimension_name(amount->dimension) == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    int64_t numerator = unitless_size(amount->dimension), denominator = 1;
    if (unit != NULL) {
        const ingle_unit *own = unit_within(unit, amount->dimension);
        if (own == NULL) {
            return INGLE_ERROR_DIMENSION;
        }
        ingle_unit_size(own, &numerator, &denominator);
    } else if (numerator == 0) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    struct decimal decimal =
        decimal_of(size_of(amount->value), numerator, denominator, DECIMAL_PLACES);
    if (amount->value < 0 && (decimal.whole > 0 || decimal.fraction > 0)) {
        text_add(&text, "-");
    }
    add_decimal(&text, decimal);
    ingle_status status = text_end(&text, length);
    return status == INGLE_OK && !decimal.exact ? INGLE_ROUNDED : status;
}
