/* SPDX-License-Identifier: MIT */
#include "draft/units.h"

#include "base/memory.h"
#include "base/utf8.h"
#include "draft/decimal.h"
#include "measure/number.h"

#include <string.h>

#define FOOT 0.3048
#define INCH 0.0254
#define POUND 0.45359237
#define INCH_OF_WATER 249.08891 /* at 4 °C */
#define INCH_OF_MERCURY 3386.3886
#define FAHRENHEIT (5.0 / 9.0)

enum { PUT_IN_DIGITS = 6 };

static const struct shown_unit units[KIND_COUNT][SYSTEM_COUNT] = {
    [KIND_PLAIN] = {{NULL, 1, 0, 4}, {NULL, 1, 0, 4}, {NULL, 1, 0, 4}},
    [KIND_SHARE] = {{"%", 0.01, 0, 1}, {"%", 0.01, 0, 1}, {"%", 0.01, 0, 1}},
    [KIND_LOSS] = {{NULL, 1, 0, 2}, {NULL, 1, 0, 2}, {NULL, 1, 0, 2}},
    [KIND_WIDTH] = {{"m", 1, 0, 4}, {"in", INCH, 0, 2}, {"mm", 0.001, 0, 0}},
    [KIND_HEIGHT] = {{"m", 1, 0, 3}, {"ft", FOOT, 0, 2}, {"m", 1, 0, 2}},
    [KIND_FLUE_AREA] = {{"m2", 1, 0, 5}, {"in2", INCH * INCH, 0, 1}, {"cm2", 1e-4, 0, 0}},
    [KIND_OPENING_AREA] = {{"m2", 1, 0, 4}, {"ft2", FOOT * FOOT, 0, 2}, {"m2", 1, 0, 3}},
    [KIND_SPEED] = {{"m/s", 1, 0, 4}, {"ft/s", FOOT, 0, 3}, {"m/s", 1, 0, 3}},
    [KIND_TEMPERATURE] = {{"K", 1, 0, 2}, {"°F", FAHRENHEIT, -459.67, 0}, {"°C", 1, -273.15, 0}},
    [KIND_RISE] = {{"K", 1, 0, 2}, {"°F", FAHRENHEIT, 0, 0}, {"K", 1, 0, 0}},
    [KIND_PRESSURE] = {{"Pa", 1, 0, 3}, {"in.wc", INCH_OF_WATER, 0, 4}, {"Pa", 1, 0, 2}},
    [KIND_AIR_PRESSURE] = {{"Pa", 1, 0, 0}, {"inHg", INCH_OF_MERCURY, 0, 2}, {"Pa", 1, 0, 0}},
    [KIND_DENSITY] = {{"kg/m3", 1, 0, 4}, {"lb/ft3", POUND / (FOOT * FOOT * FOOT), 0, 4},
                      {"kg/m3", 1, 0, 3}},
    [KIND_MASS_FLOW] = {{"kg/s", 1, 0, 4}, {"lb/h", POUND / 3600.0, 0, 0}, {"kg/s", 1, 0, 3}},
};

/* ---- shown ---------------------------------------------------------------------------------- */

static bool is_one_of(const ingle_unit *unit, const char *const *ids)
{
    for (; *ids != NULL; ids++) {
        if (strcmp(ingle_unit_id(unit), *ids) == 0) {
            return true;
        }
    }
    return false;
}

ingle_status system_of(const ingle_format *format, enum unit_system *system)
{
    static const char *const inches[] = {"in", "ft", NULL};
    static const char *const metres[] = {"mm", "cm", "m", NULL};
    ingle_format taken = {.size = sizeof taken};
    *system = SYSTEM_INCH;
    if (format == NULL) {
        return INGLE_OK;
    }
    ingle_status status = struct_take(&taken, sizeof taken, sizeof taken, format);
    if (status != INGLE_OK || taken.unit == NULL || is_one_of(taken.unit, inches)) {
        return status;
    }
    *system = SYSTEM_METRIC;
    return is_one_of(taken.unit, metres) ? INGLE_OK : INGLE_ERROR_DIMENSION;
}

const struct shown_unit *unit_shown(enum kind kind, enum unit_system system)
{
    return &units[kind][system];
}

double amount_shown(double amount, const struct shown_unit *unit)
{
    return amount / unit->size + unit->offset;
}

void text_add_shown(struct text *text, enum kind kind, enum unit_system system, double amount)
{
    const struct shown_unit *unit = unit_shown(kind, system);
    double shown = amount_shown(amount, unit);
    if (system == SYSTEM_SI) {
        text_add_significant(text, shown, PUT_IN_DIGITS);
    } else {
        text_add_places(text, shown, unit->places);
    }
    if (unit->name != NULL) {
        text_add(text, " ");
        text_add(text, unit->name);
    }
}

/* ---- read ----------------------------------------------------------------------------------- */

/* A spelling of a unit: (number - zero) × size is the amount in SI units. */
struct spelling {
    const char *name;
    double size;
    double zero;
};

/* The longer one first where one begins another. */
static const struct spelling speeds[] = {
    {"ft/s", FOOT, 0}, {"fps", FOOT, 0}, {"m/s", 1, 0}, {NULL, 0, 0}};
static const struct spelling rises[] = {
    {"°F", FAHRENHEIT, 0}, {"degF", FAHRENHEIT, 0}, {"F", FAHRENHEIT, 0}, {"°R", FAHRENHEIT, 0},
    {"R", FAHRENHEIT, 0},  {"°C", 1, 0},            {"degC", 1, 0},       {"C", 1, 0},
    {"K", 1, 0},           {NULL, 0, 0}};
static const struct spelling temperatures[] = {
    {"°F", FAHRENHEIT, -459.67}, {"degF", FAHRENHEIT, -459.67}, {"F", FAHRENHEIT, -459.67},
    {"°R", FAHRENHEIT, 0},       {"R", FAHRENHEIT, 0},          {"°C", 1, -273.15},
    {"degC", 1, -273.15},        {"C", 1, -273.15},             {"K", 1, 0},
    {NULL, 0, 0}};
static const struct spelling pressures[] = {
    {"Pa", 1, 0}, {"hPa", 100, 0}, {"mbar", 100, 0}, {"kPa", 1000, 0}, {"in.wc", INCH_OF_WATER, 0},
    {"inH2O", INCH_OF_WATER, 0}, {"inHg", INCH_OF_MERCURY, 0}, {NULL, 0, 0}};
static const struct spelling none[] = {{"", 1, 0}, {NULL, 0, 0}};

static const struct spelling *const spellings[KIND_COUNT] = {
    [KIND_PLAIN] = none,       [KIND_SHARE] = none,           [KIND_LOSS] = none,
    [KIND_SPEED] = speeds,     [KIND_TEMPERATURE] = temperatures, [KIND_RISE] = rises,
    [KIND_PRESSURE] = pressures, [KIND_AIR_PRESSURE] = pressures,
};

/* Reads the unit that has to end the text. */
static ingle_status read_unit(struct scan *scan, enum kind kind, const struct spelling **unit)
{
    const char *rest = scan->text + scan->at;
    size_t length = scan->length - scan->at;
    for (*unit = spellings[kind]; (*unit)->name != NULL; (*unit)++) {
        if (strlen((*unit)->name) == length && memcmp((*unit)->name, rest, length) == 0) {
            return INGLE_OK;
        }
    }
    if (length == 0) {
        return INGLE_ERROR_UNIT_MISSING;
    }
    return spellings[kind] == none ? INGLE_ERROR_TRAILING_TEXT : INGLE_ERROR_UNIT_UNKNOWN;
}

/* A number is held to this part of one: finer than any of these is known. */
static const int64_t parts_of_one = INT64_C(1000000000000);

static ingle_status read_number(struct scan *scan, double *value)
{
    struct number number;
    int64_t parts;
    ingle_status status = number_read(scan, true, &number);
    if (status < 0) {
        return status;
    }
    status = number_times(&number, parts_of_one, 1, &parts);
    if (status < 0) {
        scan->at = number.start;
        return status;
    }
    *value = (number.negative ? -1.0 : 1.0) * (double)parts / (double)parts_of_one;
    return INGLE_OK;
}

/* Spaces at the end are as good as none. */
static size_t length_without_end_spaces(const char *text, size_t length)
{
    while (length > 0 && text[length - 1] == ' ') {
        length--;
    }
    return length;
}

static ingle_status read_own(enum kind kind, struct scan *scan, double *amount)
{
    const struct spelling *unit;
    double value = 0;
    scan_spaces(scan);
    if (scan->at == scan->length) {
        return INGLE_ERROR_EMPTY;
    }
    ingle_status status = read_number(scan, &value);
    if (status == INGLE_OK) {
        scan_spaces(scan);
        status = read_unit(scan, kind, &unit);
    }
    if (status == INGLE_OK) {
        *amount = (value - unit->zero) * unit->size;
    }
    return status;
}

static ingle_status read_exact(ingle_dimension dimension, const char *text, size_t length,
                               double *amount, size_t *position)
{
    ingle_amount exact;
    ingle_status status = ingle_amount_parse(text, length, dimension, NULL, &exact, position);
    if (status >= 0) {
        *amount = (double)exact.value / (dimension == INGLE_LENGTH ? 1e9 : 1e18);
    }
    return status < 0 ? status : INGLE_OK;
}

ingle_status amount_read(enum kind kind, const char *text, size_t length, double *amount,
                         size_t *position)
{
    if (kind == KIND_WIDTH || kind == KIND_HEIGHT) {
        return read_exact(INGLE_LENGTH, text, length, amount, position);
    }
    if (kind == KIND_FLUE_AREA || kind == KIND_OPENING_AREA) {
        return read_exact(INGLE_AREA, text, length, amount, position);
    }
    size_t sound = utf8_sound_length(text, length);
    struct scan scan = {text, length_without_end_spaces(text, length), 0};
    ingle_status status = INGLE_ERROR_ENCODING;
    scan.at = sound;
    if (sound == length) {
        scan.at = 0;
        status = read_own(kind, &scan, amount);
    }
    if (status < 0 && position != NULL) {
        *position = scan.at;
    }
    return status;
}
