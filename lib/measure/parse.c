/* SPDX-License-Identifier: MIT */
/*
 * Reads amounts from text: a number and its unit, feet and inches, or one number against another.
 *
 * Amounts are read between -INT64_MAX and INT64_MAX, so that each has its negative.
 */
#include "base/utf8.h"
#include "base/wide.h"
#include "measure/number.h"
#include "measure/units.h"

/* What is due, and where reading stands. On error `scan.at` is the place that is reported. */
struct reading {
    struct scan scan;
    ingle_dimension dimension;
    const ingle_unit *given; /* the unit of a bare number, or NULL */
    int64_t value;           /* the amount's size, without its sign */
    bool rounded;
};

/* Keeps a value; a status of rounding is remembered and is no reason to stop. */
static ingle_status keep(struct reading *reading, ingle_status status)
{
    if (status == INGLE_ROUNDED) {
        reading->rounded = true;
        return INGLE_OK;
    }
    return status;
}

static ingle_status fail_at(struct reading *reading, size_t at, ingle_status status)
{
    reading->scan.at = at;
    return status;
}

static ingle_status keep_times(struct reading *reading, const struct number *number,
                               const ingle_unit *unit)
{
    ingle_status status =
        number_times(number, unit->numerator, unit->denominator, &reading->value);
    return status < 0 ? fail_at(reading, number->start, status) : keep(reading, status);
}

/* ---- units ---------------------------------------------------------------------------------- */

/* The unit of the dimension due that is next; NULL, with nothing taken, if none is. */
static const ingle_unit *take_unit(struct scan *scan, ingle_dimension dimension)
{
    size_t taken;
    const ingle_unit *unit =
        unit_match(scan->text + scan->at, scan->length - scan->at, dimension, &taken);
    scan->at += taken;
    return unit;
}

/* What is wrong with the text where a unit of the dimension due should be and is not. */
static ingle_status no_unit(struct scan scan)
{
    return take_unit(&scan, 0) != NULL ? INGLE_ERROR_DIMENSION : INGLE_ERROR_UNIT_UNKNOWN;
}

/* A number without a unit, in the unit that was given for it or in none. */
static ingle_status read_bare(struct reading *reading, const struct number *number)
{
    static const struct ingle_unit one = {"one", 0, INGLE_RATIO_ONE, 1, 0, NULL};
    if (reading->given != NULL) {
        const ingle_unit *unit = unit_within(reading->given, reading->dimension);
        return unit == NULL ? INGLE_ERROR_DIMENSION : keep_times(reading, number, unit);
    }
    if (reading->dimension == INGLE_SLOPE || reading->dimension == INGLE_RATIO) {
        return keep_times(reading, number, &one);
    }
    return INGLE_ERROR_UNIT_MISSING;
}

/* A number, and its unit if there is one. */
static ingle_status read_with_unit(struct reading *reading, const struct number *number)
{
    struct scan after = reading->scan;
    scan_spaces(&after);
    if (after.at == after.length) {
        return read_bare(reading, number);
    }
    if (scan_number_next(&after)) {
        ingle_status status = read_bare(reading, number);
        return status == INGLE_OK ? fail_at(reading, after.at, INGLE_ERROR_TRAILING_TEXT) : status;
    }
    reading->scan = after;
    const ingle_unit *unit = take_unit(&reading->scan, reading->dimension);
    return unit == NULL ? no_unit(after) : keep_times(reading, number, unit);
}

/* ---- feet and inches ------------------------------------------------------------------------ */

static bool is_whole(const struct number *number)
{
    int64_t whole;
    return number_times(number, 1, 1, &whole) == INGLE_OK;
}

/* Adds the inches that follow feet; the text continues at `reading->scan` with their number. */
static ingle_status read_inches(struct reading *reading)
{
    const ingle_unit *inch = unit_at_place(UNIT_INCH);
    struct number inches;
    size_t start = reading->scan.at;
    int64_t feet = reading->value;
    ingle_status status = number_read(&reading->scan, false, &inches);
    if (status != INGLE_OK) {
        return status;
    }
    struct scan after = reading->scan;
    scan_spaces(&after);
    if (after.at == after.length || scan_number_next(&after)) {
        return INGLE_ERROR_UNIT_MISSING;
    }
    reading->scan = after;
    const ingle_unit *unit = take_unit(&reading->scan, INGLE_LENGTH);
    if (unit == NULL) {
        return no_unit(after);
    }
    if (unit != inch) {
        return fail_at(reading, start, INGLE_ERROR_TRAILING_TEXT);
    }
    status = keep_times(reading, &inches, inch);
    if (status == INGLE_OK && !wide_add(feet, reading->value, &reading->value)) {
        status = fail_at(reading, inches.start, INGLE_ERROR_OVERFLOW);
    }
    return status;
}

/* Goes to the inches that follow feet, past spaces and a hyphen; false if none follow. */
static bool find_inches(struct scan *scan)
{
    struct scan ahead = *scan;
    scan_spaces(&ahead);
    if (scan_take(&ahead, "-")) {
        scan_spaces(&ahead);
    }
    if (!scan_number_next(&ahead)) {
        return false;
    }
    *scan = ahead;
    return true;
}

/* Feet, and inches if they follow; `after` stands behind the foot's spelling. */
static ingle_status read_feet(struct reading *reading, const struct number *number,
                              struct scan after)
{
    ingle_status status = keep_times(reading, number, unit_at_place(UNIT_FOOT));
    if (status != INGLE_OK) {
        return status;
    }
    reading->scan = after;
    if (!find_inches(&after)) {
        return INGLE_OK;
    }
    reading->scan = after;
    return is_whole(number) ? read_inches(reading) : INGLE_ERROR_TRAILING_TEXT;
}

/*
 * `3ft4in`: here the foot's spelling ends no word, and what follows it without a space may as
 * well belong to a name (`3 ft2`). So it is feet only if inches are read to their end.
 */
static bool read_joined(struct reading *reading, const struct number *number, struct scan unit)
{
    struct reading attempt = *reading;
    struct scan after = unit;
    after.at += unit_match_one(unit_at_place(UNIT_FOOT), unit.text + unit.at,
                               unit.length - unit.at);
    if (after.at == unit.at || !scan_number_next(&after) ||
        read_feet(&attempt, number, after) != INGLE_OK) {
        return false;
    }
    *reading = attempt;
    return true;
}

static ingle_status read_length(struct reading *reading, const struct number *number)
{
    struct scan after = reading->scan;
    scan_spaces(&after);
    struct scan unit = after;
    const ingle_unit *found = take_unit(&after, INGLE_LENGTH);
    if (found == unit_at_place(UNIT_FOOT)) {
        return read_feet(reading, number, after);
    }
    if (found == NULL && read_joined(reading, number, unit)) {
        return INGLE_OK;
    }
    return read_with_unit(reading, number);
}

/* ---- one number against another ------------------------------------------------------------- */

/*
 * Takes what stands between two numbers: `:`, `/`, or where a slope is due an `in`: `7 in 12`.
 * After a fraction a slash could be meant in more than one way and is not taken.
 */
static bool take_against(struct scan *scan, ingle_dimension dimension, const struct number *above)
{
    struct scan ahead = *scan;
    bool apart = scan_spaces(&ahead);
    bool found = scan_take(&ahead, ":") || (!above->has_fraction && scan_take(&ahead, "/"));
    if (!found && apart && dimension == INGLE_SLOPE && scan_take(&ahead, "in")) {
        found = scan_spaces(&ahead) && scan_number_next(&ahead);
    }
    scan_spaces(&ahead);
    if (found) {
        *scan = ahead;
    }
    return found;
}

static ingle_status read_ratio(struct reading *reading, const struct number *above)
{
    if (!take_against(&reading->scan, reading->dimension, above)) {
        return read_with_unit(reading, above);
    }
    struct number below;
    ingle_status status = number_read(&reading->scan, false, &below);
    if (status != INGLE_OK) {
        return status;
    }
    if (number_is_zero(&below)) {
        return fail_at(reading, below.start, INGLE_ERROR_ZERO_DENOMINATOR);
    }
    status = number_quotient(above, &below, INGLE_RATIO_ONE, &reading->value);
    return status < 0 ? fail_at(reading, above->start, status) : keep(reading, status);
}

/* ---- counts --------------------------------------------------------------------------------- */

static ingle_status read_count(struct reading *reading, const struct number *number)
{
    struct scan after = reading->scan;
    scan_spaces(&after);
    if (after.at < after.length) {
        reading->scan = after;
        return take_unit(&after, 0) != NULL ? INGLE_ERROR_DIMENSION : INGLE_ERROR_TRAILING_TEXT;
    }
    if (reading->given != NULL) {
        return INGLE_ERROR_DIMENSION;
    }
    ingle_status status = number_times(number, 1, 1, &reading->value);
    if (status == INGLE_ROUNDED) { /* a part of a thing is no number of things */
        status = INGLE_ERROR_NUMBER;
    }
    return status < 0 ? fail_at(reading, number->start, status) : status;
}

/* ---- the whole text ------------------------------------------------------------------------- */

static ingle_status read_size(struct reading *reading, const struct number *number)
{
    switch (reading->dimension) {
    case INGLE_LENGTH:
        return read_length(reading, number);
    case INGLE_SLOPE:
    case INGLE_RATIO:
        return read_ratio(reading, number);
    case INGLE_COUNT:
        return read_count(reading, number);
    default:
        return read_with_unit(reading, number);
    }
}

static ingle_status read_text(struct reading *reading)
{
    struct scan *scan = &reading->scan;
    struct number number;
    size_t sound = utf8_sound_length(scan->text, scan->length);
    if (sound < scan->length) {
        return fail_at(reading, sound, INGLE_ERROR_ENCODING);
    }
    scan_spaces(scan);
    if (scan->at == scan->length) {
        return INGLE_ERROR_EMPTY;
    }
    ingle_status status = number_read(scan, true, &number);
    if (status == INGLE_OK) {
        status = read_size(reading, &number);
    }
    if (status != INGLE_OK) {
        return status;
    }
    scan_spaces(scan);
    if (scan->at < scan->length) {
        return INGLE_ERROR_TRAILING_TEXT;
    }
    reading->value = number.negative ? -reading->value : reading->value;
    return reading->rounded ? INGLE_ROUNDED : INGLE_OK;
}

ingle_status ingle_amount_parse(const char *text, size_t length, ingle_dimension dimension,
                                const ingle_unit *unit, ingle_amount *amount, size_t *position)
{
    struct reading reading = {{text, length, 0}, dimension, unit, 0, false};
    ingle_status status = INGLE_ERROR_ARGUMENT;
    if (text != NULL && amount != NULL && ingle_dimension_is_amount(dimension)) {
        status = read_text(&reading);
    }
    if (status < 0) {
        if (position != NULL) {
            *position = reading.scan.at;
        }
        return status;
    }
    *amount = (ingle_amount){reading.value, dimension, INGLE_SCALE_USUAL};
    return status;
}
