/* SPDX-License-Identifier: MIT */
/*
 * The table of units: the one place that knows their sizes and spellings.
 */
#ifndef INGLE_MEASURE_UNITS_H
#define INGLE_MEASURE_UNITS_H

#include <ingle/measure.h>

/* The places of the units in the table, which is also the order in which they are listed. */
enum unit_place {
    UNIT_INCH,
    UNIT_FOOT,
    UNIT_MILLIMETRE,
    UNIT_CENTIMETRE,
    UNIT_METRE,
    UNIT_SQUARE_INCH,
    UNIT_SQUARE_FOOT,
    UNIT_SQUARE_MILLIMETRE,
    UNIT_SQUARE_CENTIMETRE,
    UNIT_SQUARE_METRE,
    UNIT_DEGREE,
    UNIT_RADIAN,
    UNIT_INCH_PER_FOOT,
    UNIT_PERCENT, /* before the slope's, so that a bare % is a ratio */
    UNIT_SLOPE_PERCENT,
    UNIT_BTU_PER_HOUR,
    UNIT_KILOWATT,
    UNIT_WATT,
    UNIT_CUBIC_INCH,
    UNIT_CUBIC_FOOT,
    UNIT_LITRE,
    UNIT_CUBIC_METRE,
    UNIT_PLACES
};

struct ingle_unit {
    const char *label;
    ingle_dimension dimension;
    int64_t numerator; /* base units in `denominator` units */
    int64_t denominator;
    size_t ucum;              /* which spelling is the UCUM code: 0 if it is the id as well, or 1 */
    const char *const *names; /* all spellings, the id first, NULL after the last */
};

/* The unit at a place. */
const ingle_unit *unit_at_place(enum unit_place place);

/*
 * The longest spelling, among the units of one dimension or of all (0), that the text starts with
 * and that ends where a word ends: `in` is not found in `inx`, nor in `in2`. A space in a spelling
 * stands for any number of spaces in the text. Returns NULL if there is none; else `taken`
 * receives its length in the text.
 */
const ingle_unit *unit_match(const char *text, size_t length, ingle_dimension dimension,
                             size_t *taken);

/*
 * The length of a unit's longest spelling at the start of the text, wherever it ends; 0 if there
 * is none.
 */
size_t unit_match_one(const ingle_unit *unit, const char *text, size_t length);

/*
 * A unit as one of `dimension`: itself, or the one that has its id as a spelling there (a bare %
 * is a ratio unless a slope is due). NULL if there is none.
 */
const ingle_unit *unit_within(const ingle_unit *unit, ingle_dimension dimension);

#endif
