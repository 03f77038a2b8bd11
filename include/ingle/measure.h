/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Exact amounts, their units, and text in and out.
 *
 * An amount is a 64-bit count of a base unit that makes inch fractions and millimetres whole:
 *
 * | dimension      | base unit                | so that                                |
 * |----------------|--------------------------|----------------------------------------|
 * | INGLE_LENGTH   | nanometre                | 1 in = 25 400 000, 1/64 in = 396 875   |
 * | INGLE_AREA     | square nanometre         | 1 in² = 645 160 000 000 000            |
 * | INGLE_ANGLE    | millionth of an arcsecond| 1° = 3 600 000 000                     |
 * | INGLE_SLOPE    | 1/36 000 000 000         | 7 in 12 = 21 000 000 000               |
 * | INGLE_RATIO    | 1/36 000 000 000         | 1/12 = 3 000 000 000                   |
 * | INGLE_POWER    | 1/100 000 000 J/h        | 1 Btu/h = 105 505 585 262              |
 * | INGLE_COUNT    | one                      |                                        |
 * | INGLE_CHOICE   | the choice's index       |                                        |
 * | INGLE_FLAG     | 0 no, 1 yes              |                                        |
 * | INGLE_VOLUME   | 1/1 000 of a cubic mm    | 1 in³ = 16 387 064                     |
 *
 * The Btu is that of the International Table, 1 055.055 852 62 J; 1 kW is 360 000 000 000 000.
 *
 * Nothing here uses floating point or the locale.
 */
#ifndef INGLE_MEASURE_H
#define INGLE_MEASURE_H

#include <ingle/api.h>
#include <ingle/status.h>

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What kind of thing an amount counts. */
typedef int32_t ingle_dimension;

enum {
    /** A length, in nanometres. */
    INGLE_LENGTH = 1,
    /** An area, in square nanometres. */
    INGLE_AREA = 2,
    /** A plane angle, in millionths of an arcsecond. */
    INGLE_ANGLE = 3,
    /** A rise in its run, in 36 000 000 000ths. */
    INGLE_SLOPE = 4,
    /** A plain ratio, in 36 000 000 000ths. */
    INGLE_RATIO = 5,
    /** A heat input, in hundred millionths of a joule in an hour. */
    INGLE_POWER = 6,
    /** A number of things. */
    INGLE_COUNT = 7,
    /** One of a quantity's choices, by its index. */
    INGLE_CHOICE = 8,
    /** No (0) or yes (1). */
    INGLE_FLAG = 9,
    /** A volume, in thousandths of a cubic millimetre. */
    INGLE_VOLUME = 10
};

/** Base units in one whole, for INGLE_SLOPE and INGLE_RATIO. */
#define INGLE_RATIO_ONE INT64_C(36000000000)

/** Which of a dimension's units people write an amount in. */
typedef int32_t ingle_scale;

enum {
    /** The unit used for it at a fireplace: square inches for a flue. */
    INGLE_SCALE_USUAL = 0,
    /** The larger unit: square feet for an opening. */
    INGLE_SCALE_LARGE = 1,
    /**
     * Of a ratio or a length: as a decimal, not a fraction: `1.65` for an R-value, `0.0187 in` for
     * sheet metal.
     */
    INGLE_SCALE_DECIMAL = 2
};

/** An amount. This struct is fixed for ever and is passed as it is. */
typedef struct ingle_amount {
    /** The count of base units of the dimension. */
    int64_t value;
    /** What it counts. */
    ingle_dimension dimension;
    /** How it is usually written. It has no part in any calculation. */
    ingle_scale scale;
} ingle_amount;

/**
 * The name of a dimension, as documents write it: `length`, `area`.
 *
 * @returns NULL for a number that is no dimension.
 */
INGLE_API const char *ingle_dimension_name(ingle_dimension dimension);

/**
 * Whether a dimension's amounts are read and written as numbers: false for INGLE_CHOICE and
 * INGLE_FLAG, whose values stand for words, and for a number that is no dimension.
 */
INGLE_API int ingle_dimension_is_amount(ingle_dimension dimension);

/* ---- units ---------------------------------------------------------------------------------- */

/** A unit. All units are constant and live as long as the program. */
typedef struct ingle_unit ingle_unit;

/** How many units there are. */
INGLE_API size_t ingle_unit_count(void);

/** One of all units, from 0; NULL past the end. */
INGLE_API const ingle_unit *ingle_unit_at(size_t index);

/**
 * The unit of a name: an id, a UCUM code or any other spelling the unit is known by.
 *
 * Upper and lower case differ, as they do in the standards of the units (`mm`, never `MM`). Where
 * one of our own names is also a UCUM code of another unit, ours is meant: `ft` is the foot.
 *
 * @param name a text, or NULL
 * @returns NULL when no unit has this name.
 */
INGLE_API const ingle_unit *ingle_unit_find(const char *name);

/** A unit's id, unique and stable: `in`, `ft2`. */
INGLE_API const char *ingle_unit_id(const ingle_unit *unit);

/** A unit's name in words: `square foot`. */
INGLE_API const char *ingle_unit_label(const ingle_unit *unit);

/** A unit's code in the Unified Code for Units of Measure: `[in_i]`. */
INGLE_API const char *ingle_unit_ucum(const ingle_unit *unit);

/** What a unit measures. */
INGLE_API ingle_dimension ingle_unit_dimension(const ingle_unit *unit);

/**
 * A unit's size: it holds `numerator / denominator` base units of its dimension.
 *
 * Only the radian is not exactly so: it has no rational size and is given to 18 digits.
 *
 * @param unit a unit
 * @param[out] numerator receives the number of base units in `denominator` units
 * @param[out] denominator receives that number of units; 1 for all but the radian
 */
INGLE_API void ingle_unit_size(const ingle_unit *unit, int64_t *numerator, int64_t *denominator);

/** 1 for the millimetre, the centimetre and the metre; 0 for any other unit and for NULL. */
INGLE_API int ingle_unit_is_metric(const ingle_unit *unit);

/** How many spellings a unit is known by, its id and UCUM code included. */
INGLE_API size_t ingle_unit_name_count(const ingle_unit *unit);

/** One of a unit's spellings, from 0; NULL past the end. */
INGLE_API const char *ingle_unit_name_at(const ingle_unit *unit, size_t index);

/* ---- text in -------------------------------------------------------------------------------- */

/**
 * Reads an amount from text.
 *
 * Lengths: `36 in`, `15 15/16 in`, `15-15/16"`, `12½ in`, `3' 0 1/2"`, `3 ft 1/2 in`, `914 mm`,
 * `91.4 cm`, `0.914 m`. Areas: `6 ft2`, `864 sq in`, `0.557 m²`. Angles: `45°`, `45 deg`,
 * `0.52 rad`. Heat inputs: `40000 Btu/h`, `11.7 kW`. Volumes: `300 cu ft`, `8.5 m³`. Slopes:
 * `7 in 12`, `7:12`, `58 %`. Ratios: `1/10`, `2:1`, `0.1`, `10 %`. Counts: `3`. Primes, Unicode
 * fractions and UCUM codes (`[ft_i]`) are known; spaces may stand between the parts. Only slopes,
 * ratios and counts may stand without a unit.
 *
 * @param text UTF-8, need not end in NUL
 * @param length its length in bytes
 * @param dimension what is due: one for which ingle_dimension_is_amount()
 * @param unit the unit of a bare number, or NULL where one has to be written
 * @param[out] amount receives the amount, scale INGLE_SCALE_USUAL; untouched on error
 * @param[out] position receives, on error, the offset in bytes of the place in the text where
 *             something else was due; may be NULL
 * @returns INGLE_OK; INGLE_ROUNDED if the amount is no whole number of base units; or
 *          INGLE_ERROR_EMPTY, _NUMBER, _COMMA, _ZERO_DENOMINATOR, _OVERFLOW, _UNIT_MISSING,
 *          _UNIT_UNKNOWN, _DIMENSION, _TRAILING_TEXT, _ENCODING, _ARGUMENT.
 *          A negative amount is read as such; whether it can be is not for this call to say.
 */
INGLE_API ingle_status ingle_amount_parse(const char *text, size_t length,
                                          ingle_dimension dimension, const ingle_unit *unit,
                                          ingle_amount *amount, size_t *position);

/* ---- text out ------------------------------------------------------------------------------- */

/** How amounts are shown. Start from zeroed bytes and set `size`. */
typedef struct ingle_format {
    /** sizeof(ingle_format). */
    size_t size;
    /**
     * The unit of lengths: `in`, `ft` (feet and inches), `mm`, `cm` or `m`; NULL is the inch.
     * Areas follow it: in² and ft² with the first two, mm², cm² or m² with the others, and m² for
     * what is written large. So do heat inputs: Btu/h with the first two, kW with the others; and
     * volumes: ft³ with the first two, m³ with the others.
     */
    const ingle_unit *unit;
    /** The finest fraction of an inch shown: 1, 2, 4, 8, 16, 32 or 64; 0 is 64. */
    int32_t denominator;
    /** 1 writes the units of areas and volumes for reading, `in²` and `ft³`; 0 as `in2`, `ft3`. */
    int32_t raised;
} ingle_format;

/**
 * Writes an amount for people: `19 15/16 in`, `3 ft 1/2 in`, `506.4125 mm`, `6 ft2`, `45°`, `1/10`,
 * `1.65`, `40000 Btu/h`, `300 ft3`.
 *
 * Where the text is not exactly the amount it begins with `≈ `: that is never left out. What
 * ingle_amount_parse() reads from the rest of the text is then off by half a graduation at most.
 *
 * @param amount an amount of a dimension for which ingle_dimension_is_amount()
 * @param format how, or NULL for inches to 1/64
 * @param[out] buffer receives UTF-8 that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT, INGLE_ERROR_ARGUMENT, INGLE_ERROR_DIMENSION,
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_amount_format(const ingle_amount *amount, const ingle_format *format,
                                           char *buffer, size_t capacity, size_t *length);

/**
 * The unit in which a format shows an amount.
 *
 * @returns NULL for dimensions without unit (ratio, count, choice, flag) and for unusable
 *          arguments.
 */
INGLE_API const ingle_unit *ingle_amount_unit(const ingle_amount *amount,
                                              const ingle_format *format);

/**
 * Writes an amount as a plain decimal number in a unit: `19.9375`.
 *
 * At most nine places after the point, rounded to the nearest where it has more, no exponent, no
 * trailing zeros: a JSON number.
 *
 * @param amount an amount
 * @param unit a unit of its dimension; NULL where the dimension has none
 * @param[out] buffer receives ASCII that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK; INGLE_ROUNDED if the decimals are not exactly the amount; INGLE_CUT;
 *          INGLE_ERROR_ARGUMENT or INGLE_ERROR_DIMENSION.
 */
INGLE_API ingle_status ingle_amount_decimal(const ingle_amount *amount, const ingle_unit *unit,
                                            char *buffer, size_t capacity, size_t *length);

#ifdef __cplusplus
}
#endif

#endif
