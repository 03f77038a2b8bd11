/* SPDX-License-Identifier: MIT */
/*
 * Amounts written as constants, for tables: `INCHES(20)`, `SQUARE_FEET(6)`, `RATIO(1, 10)`.
 *
 * Each is an integer constant expression in base units, of type int64_t. What is no whole number
 * of base units (`RATIO(1, 7)`) does not compile where a constant is due.
 */
#ifndef INGLE_MEASURE_AMOUNTS_H
#define INGLE_MEASURE_AMOUNTS_H

#include <ingle/measure.h>

/* a / b, which has to come out even: else a division by zero stops the compiler. */
#define EXACT_QUOTIENT(a, b) ((a) / (b) / ((a) % (b) == 0 ? 1 : 0))

/* Lengths, in nanometres. INCHES_AND(10, 3, 4) is 10 3/4 in. */
#define MILLIMETRES(n) (INT64_C(1000000) * (n))
#define CENTIMETRES(n) (INT64_C(10000000) * (n))
#define METRES(n) (INT64_C(1000000000) * (n))
#define INCHES(n) (INT64_C(25400000) * (n))
#define INCHES_AND(whole, numerator, denominator) \
    (INCHES(whole) + EXACT_QUOTIENT(INCHES(numerator), denominator))
#define FEET(n) (INCHES(12) * (n))

/* Areas, in square nanometres. SQUARE_INCHES_AND(50, 1, 4) is 50 1/4 in². */
#define SQUARE_MILLIMETRES(n) (INT64_C(1000000000000) * (n))
#define SQUARE_CENTIMETRES(n) (INT64_C(100000000000000) * (n))
#define SQUARE_METRES(n) (INT64_C(1000000000000000000) * (n))
#define SQUARE_INCHES(n) (INT64_C(645160000000000) * (n))
#define SQUARE_INCHES_AND(whole, numerator, denominator) \
    (SQUARE_INCHES(whole) + EXACT_QUOTIENT(SQUARE_INCHES(numerator), denominator))
#define SQUARE_FEET(n) (SQUARE_INCHES(144) * (n))

/* Volumes, in thousandths of a cubic millimetre. */
#define LITRES(n) (INT64_C(1000000000) * (n))
#define CUBIC_METRES(n) (INT64_C(1000000000000) * (n))
#define CUBIC_INCHES(n) (INT64_C(16387064) * (n))
#define CUBIC_FEET(n) (CUBIC_INCHES(1728) * (n))

/* Angles, in millionths of an arcsecond. */
#define DEGREES(n) (INT64_C(3600000000) * (n))

/* Heat inputs, in hundred millionths of a joule in an hour. */
#define BTU_PER_HOUR(n) (INT64_C(105505585262) * (n))
#define KILOWATTS(n) (INT64_C(360000000000000) * (n))

/* Slopes and ratios, in 36 000 000 000ths: SLOPE(7, 12) rises 7 in a run of 12. */
#define RATIO(a, b) EXACT_QUOTIENT(INGLE_RATIO_ONE * (a), b)
#define SLOPE(rise, run) RATIO(rise, run)
#define PERCENT(n) (RATIO(1, 100) * (n))

#endif
