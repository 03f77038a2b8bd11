/* SPDX-License-Identifier: MIT */
#include "measure/units.h"

#include "measure/amounts.h"
#include "measure/scan.h"

#include <string.h>

#define SPELLINGS(...) (const char *const[]){__VA_ARGS__, NULL}

/* Typographic marks: ’ and ” are what word processors make of ' and ". */
static const struct ingle_unit units[UNIT_PLACES] = {
    [UNIT_INCH] = {"inch", INGLE_LENGTH, INCHES(1), 1, 1,
                   SPELLINGS("in", "[in_i]", "in.", "inch", "inches", "\"", "″", "''", "′′", "”")},
    [UNIT_FOOT] = {"foot", INGLE_LENGTH, FEET(1), 1, 1,
                   SPELLINGS("ft", "[ft_i]", "ft.", "foot", "feet", "'", "′", "’")},
    [UNIT_MILLIMETRE] = {"millimetre", INGLE_LENGTH, MILLIMETRES(1), 1, 0,
                         SPELLINGS("mm", "millimetre", "millimetres", "millimeter",
                                   "millimeters")},
    [UNIT_CENTIMETRE] = {"centimetre", INGLE_LENGTH, CENTIMETRES(1), 1, 0,
                         SPELLINGS("cm", "centimetre", "centimetres", "centimeter",
                                   "centimeters")},
    [UNIT_METRE] = {"metre", INGLE_LENGTH, METRES(1), 1, 0,
                    SPELLINGS("m", "metre", "metres", "meter", "meters")},
    [UNIT_SQUARE_INCH] = {"square inch", INGLE_AREA, SQUARE_INCHES(1), 1, 1,
                          SPELLINGS("in2", "[sin_i]", "[in_i]2", "in²", "in^2", "sq in", "sq in.",
                                    "sq. in", "sq. in.", "sq.in.", "sq inch", "sq inches",
                                    "square inch", "square inches")},
    [UNIT_SQUARE_FOOT] = {"square foot", INGLE_AREA, SQUARE_FEET(1), 1, 1,
                          SPELLINGS("ft2", "[sft_i]", "[ft_i]2", "ft²", "ft^2", "sq ft", "sq ft.",
                                    "sq. ft", "sq. ft.", "sq.ft.", "sq foot", "sq feet",
                                    "square foot", "square feet")},
    [UNIT_SQUARE_MILLIMETRE] = {"square millimetre", INGLE_AREA, SQUARE_MILLIMETRES(1), 1, 0,
                                SPELLINGS("mm2", "mm²", "mm^2", "sq mm", "square millimetre",
                                          "square millimetres", "square millimeter",
                                          "square millimeters")},
    [UNIT_SQUARE_CENTIMETRE] = {"square centimetre", INGLE_AREA, SQUARE_CENTIMETRES(1), 1, 0,
                                SPELLINGS("cm2", "cm²", "cm^2", "sq cm", "square centimetre",
                                          "square centimetres", "square centimeter",
                                          "square centimeters")},
    [UNIT_SQUARE_METRE] = {"square metre", INGLE_AREA, SQUARE_METRES(1), 1, 0,
                           SPELLINGS("m2", "m²", "m^2", "sq m", "square metre", "square metres",
                                     "square meter", "square meters")},
    [UNIT_DEGREE] = {"degree", INGLE_ANGLE, DEGREES(1), 1, 0,
                     SPELLINGS("deg", "°", "degree", "degrees")},
    /* 180 · 3600 / pi = 206 264.806 247 096 355 156... arcseconds (OEIS A000796 for pi). */
    [UNIT_RADIAN] = {"radian", INGLE_ANGLE, INT64_C(206264806247096355), 1000000, 0,
                     SPELLINGS("rad", "radian", "radians")},
    [UNIT_INCH_PER_FOOT] = {"inch per foot", INGLE_SLOPE, SLOPE(1, 12), 1, 1,
                            SPELLINGS("in/ft", "[in_i]/[ft_i]", "in./ft.", "in per ft",
                                      "in. per ft.", "inch per foot", "inches per foot")},
    [UNIT_PERCENT] = {"per cent", INGLE_RATIO, PERCENT(1), 1, 0,
                      SPELLINGS("%", "percent", "per cent")},
    [UNIT_SLOPE_PERCENT] = {"per cent of slope", INGLE_SLOPE, PERCENT(1), 1, 1,
                            SPELLINGS("slope%", "%", "percent", "per cent")},
    [UNIT_BTU_PER_HOUR] = {"British thermal unit per hour", INGLE_POWER, BTU_PER_HOUR(1), 1, 1,
                           SPELLINGS("Btu/h", "[Btu_IT]/h", "BTU/h", "Btuh", "BTUH", "Btu/hr",
                                     "BTU/hr", "BTU/HR")},
    [UNIT_KILOWATT] = {"kilowatt", INGLE_POWER, KILOWATTS(1), 1, 0,
                       SPELLINGS("kW", "kilowatt", "kilowatts")},
    [UNIT_WATT] = {"watt", INGLE_POWER, EXACT_QUOTIENT(KILOWATTS(1), 1000), 1, 0,
                   SPELLINGS("W", "watt", "watts")},
    [UNIT_CUBIC_INCH] = {"cubic inch", INGLE_VOLUME, CUBIC_INCHES(1), 1, 1,
                         SPELLINGS("in3", "[cin_i]", "[in_i]3", "in³", "in^3", "cu in", "cu in.",
                                   "cu. in", "cu. in.", "cu.in.", "cu inch", "cu inches",
                                   "cubic inch", "cubic inches")},
    [UNIT_CUBIC_FOOT] = {"cubic foot", INGLE_VOLUME, CUBIC_FEET(1), 1, 1,
                         SPELLINGS("ft3", "[cft_i]", "[ft_i]3", "ft³", "ft^3", "cu ft", "cu ft.",
                                   "cu. ft", "cu. ft.", "cu.ft.", "cu foot", "cu feet",
                                   "cubic foot", "cubic feet")},
    [UNIT_LITRE] = {"litre", INGLE_VOLUME, LITRES(1), 1, 0,
                    SPELLINGS("L", "l", "litre", "litres", "liter", "liters")},
    [UNIT_CUBIC_METRE] = {"cubic metre", INGLE_VOLUME, CUBIC_METRES(1), 1, 0,
                          SPELLINGS("m3", "m³", "m^3", "cu m", "cubic metre", "cubic metres",
                                    "cubic meter", "cubic meters")},
};

const ingle_unit *unit_at_place(enum unit_place place)
{
    return &units[place];
}

/* The length of `name` at the start of the text; 0 if the text does not start with it. */
static size_t name_match(const char *name, const char *text, size_t length)
{
    if (length == 0 || *name != *text) { /* most are dismissed here: no name starts with a space */
        return 0;
    }
    struct scan scan = {text, length, 0};
    for (; *name != '\0'; name++) {
        if (*name == ' ') {
            if (!scan_spaces(&scan)) {
                return 0;
            }
        } else if (scan.at < length && text[scan.at] == *name) {
            scan.at++;
        } else {
            return 0;
        }
    }
    return scan.at;
}

size_t unit_match_one(const ingle_unit *unit, const char *text, size_t length)
{
    size_t longest = 0;
    for (const char *const *name = unit->names; *name != NULL; name++) {
        size_t matched = name_match(*name, text, length);
        longest = matched > longest ? matched : longest;
    }
    return longest;
}

/* Whether a spelling that ends at `end` is a whole word there, not the start of a longer one. */
static bool ends_word(const char *text, size_t length, size_t end)
{
    struct scan scan = {text, length, end};
    char last = text[end - 1];
    if (!is_letter(last) && !is_digit(last) && last != ']' && last != '.') {
        return true;
    }
    char next = scan_peek(&scan);
    if (((unsigned char)next & 0x80) != 0) {
        return scan_spaces(&scan);
    }
    return !is_letter(next) && !is_digit(next) && (next == '\0' || strchr("_^/*[", next) == NULL);
}

const ingle_unit *unit_match(const char *text, size_t length, ingle_dimension dimension,
                             size_t *taken)
{
    const ingle_unit *found = NULL;
    *taken = 0;
    for (size_t i = 0; i < UNIT_PLACES; i++) {
        if (dimension != 0 && units[i].dimension != dimension) {
            continue;
        }
        for (const char *const *name = units[i].names; *name != NULL; name++) {
            size_t matched = name_match(*name, text, length);
            if (matched > *taken && ends_word(text, length, matched)) {
                *taken = matched;
                found = &units[i];
            }
        }
    }
    return found;
}

const ingle_unit *unit_within(const ingle_unit *unit, ingle_dimension dimension)
{
    if (unit == NULL || unit->dimension == dimension) {
        return unit;
    }
    size_t taken;
    size_t length = strlen(unit->names[0]);
    const ingle_unit *same = unit_match(unit->names[0], length, dimension, &taken);
    return taken == length ? same : NULL;
}

size_t ingle_unit_count(void)
{
    return UNIT_PLACES;
}

const ingle_unit *ingle_unit_at(size_t index)
{
    return index < UNIT_PLACES ? &units[index] : NULL;
}

const ingle_unit *ingle_unit_find(const char *name)
{
    if (name == NULL) {
        return NULL;
    }
    size_t taken;
    size_t length = strlen(name);
    const ingle_unit *found = unit_match(name, length, 0, &taken);
    return taken == length ? found : NULL;
}

const char *ingle_unit_id(const ingle_unit *unit)
{
    return unit == NULL ? NULL : unit->names[0];
}

const char *ingle_unit_label(const ingle_unit *unit)
{
    return unit == NULL ? NULL : unit->label;
}

const char *ingle_unit_ucum(const ingle_unit *unit)
{
    return unit == NULL ? NULL : unit->names[unit->ucum];
}

ingle_dimension ingle_unit_dimension(const ingle_unit *unit)
{
    return unit == NULL ? 0 : unit->dimension;
}

void ingle_unit_size(const ingle_unit *unit, int64_t *numerator, int64_t *denominator)
{
    if (unit != NULL && numerator != NULL) {
        *numerator = unit->numerator;
    }
    if (unit != NULL && denominator != NULL) {
        *denominator = unit->denominator;
    }
}

int ingle_unit_is_metric(const ingle_unit *unit)
{
    return unit != NULL && (unit == unit_at_place(UNIT_MILLIMETRE) ||
                            unit == unit_at_place(UNIT_CENTIMETRE) ||
                            unit == unit_at_place(UNIT_METRE));
}

size_t ingle_unit_name_count(const ingle_unit *unit)
{
    size_t count = 0;
    while (unit != NULL && unit->names[count] != NULL) {
        count++;
    }
    return count;
}

const char *ingle_unit_name_at(const ingle_unit *unit, size_t index)
{
    return index < ingle_unit_name_count(unit) ? unit->names[index] : NULL;
}

const char *ingle_dimension_name(ingle_dimension dimension)
{
    static const char *const names[] = {
        [INGLE_LENGTH] = "length", [INGLE_AREA] = "area",   [INGLE_ANGLE] = "angle",
        [INGLE_SLOPE] = "slope",   [INGLE_RATIO] = "ratio", [INGLE_POWER] = "power",
        [INGLE_COUNT] = "count",   [INGLE_CHOICE] = "choice", [INGLE_FLAG] = "flag",
        [INGLE_VOLUME] = "volume",
    };
    return dimension >= INGLE_LENGTH && dimension <= INGLE_VOLUME ? names[dimension] : NULL;
}

int ingle_dimension_is_amount(ingle_dimension dimension)
{
    return dimension != INGLE_CHOICE && dimension != INGLE_FLAG &&
           ingle_dimension_name(dimension) != NULL;
}
