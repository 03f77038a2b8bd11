/* SPDX-License-Identifier: MIT */
/**
 * @file
 * What a call says of itself: done, done with a caution, or not done.
 *
 * A status is never a verdict: a hearth that is too short is a finding, and the call that found it
 * returns INGLE_OK.
 *
 * Rules for whoever binds this library: a status is 32 bits wide and signed; 0 is done, positive is
 * done with a caution, negative is not done; an unknown negative code means general failure, an
 * unknown positive one means done. A code keeps its meaning for ever and is never used again for
 * something else. The numbers carry no grouping.
 */
#ifndef INGLE_STATUS_H
#define INGLE_STATUS_H

#include <ingle/api.h>

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What a call says of itself. */
typedef int32_t ingle_status;

enum {
    /** Done. */
    INGLE_OK = 0,
    /** Done; the text named no whole number of base units and the nearest one was taken. */
    INGLE_ROUNDED = 1,
    /** Done; the buffer was too small and its text is cut. The length asked for tells the need. */
    INGLE_CUT = 2,

    /** Memory could not be had. The object is as it was before the call. */
    INGLE_ERROR_MEMORY = -1,
    /** An argument is NULL, past the end, or not among the values the call takes. */
    INGLE_ERROR_ARGUMENT = -2,
    /** The `size` of a struct is smaller than its first release. */
    INGLE_ERROR_STRUCT_SIZE = -3,
    /** A struct carries bytes that this release does not know and that are not zero. */
    INGLE_ERROR_STRUCT_NEWER = -4,
    /** The text is empty where an amount is due. */
    INGLE_ERROR_EMPTY = -5,
    /** What stands where a number is due is no number. */
    INGLE_ERROR_NUMBER = -6,
    /** The number has a comma. Write a decimal point, and no separator between thousands. */
    INGLE_ERROR_COMMA = -7,
    /** A fraction has zero below its line. */
    INGLE_ERROR_ZERO_DENOMINATOR = -8,
    /** The amount is too large to be held exactly. */
    INGLE_ERROR_OVERFLOW = -9,
    /** A number stands without a unit. */
    INGLE_ERROR_UNIT_MISSING = -10,
    /** What stands where a unit is due is no unit known here. */
    INGLE_ERROR_UNIT_UNKNOWN = -11,
    /** The unit is of another dimension: a length where an area is due, for instance. */
    INGLE_ERROR_DIMENSION = -12,
    /** Something follows the end of the amount. */
    INGLE_ERROR_TRAILING_TEXT = -13,
    /** The amount is negative where none can be. */
    INGLE_ERROR_NEGATIVE = -14,
    /** The amount lies outside the plausible range of its quantity. */
    INGLE_ERROR_IMPLAUSIBLE = -15,
    /** No quantity has this id. */
    INGLE_ERROR_UNKNOWN_QUANTITY = -16,
    /** The quantity has no such choice. */
    INGLE_ERROR_UNKNOWN_CHOICE = -17,
    /** No standard has this id. */
    INGLE_ERROR_UNKNOWN_STANDARD = -18,
    /** The standard has no rule with this id. */
    INGLE_ERROR_UNKNOWN_RULE = -19,
    /** The rule has no number with this name. */
    INGLE_ERROR_UNKNOWN_NUMBER = -20,
    /** Two things recorded cannot both be so: a square flue with an oblong liner, for instance. */
    INGLE_ERROR_CONTRADICTION = -21,
    /** No standard was named. Which code is adopted is a local fact, so there is no default. */
    INGLE_ERROR_NO_STANDARD = -22,
    /** The bytes are not UTF-8, or hold a NUL. */
    INGLE_ERROR_ENCODING = -23,
    /** The document is not JSON as RFC 8259 has it. */
    INGLE_ERROR_JSON = -24,
    /** An object of the document has two members of the same name. */
    INGLE_ERROR_DUPLICATE_NAME = -25,
    /** The document has a name that is not known at its place. */
    INGLE_ERROR_UNKNOWN_NAME = -26,
    /** The document lacks a name that is needed. */
    INGLE_ERROR_MISSING_NAME = -27,
    /** The document has a value of another type than is due at its place. */
    INGLE_ERROR_TYPE = -28,
    /** The document is nested deeper than any survey is. */
    INGLE_ERROR_DEPTH = -29,
    /** The document is longer than any survey is. */
    INGLE_ERROR_LENGTH = -30,
    /** Reading or writing failed. */
    INGLE_ERROR_IO = -31,
    /** The command line cannot be used. */
    INGLE_ERROR_USAGE = -32,
    /** A range of values is reversed, empty or endless; its step has to be above zero. */
    INGLE_ERROR_RANGE = -33,
    /** Nothing was measured of what this would be made from. */
    INGLE_ERROR_NOTHING_MEASURED = -34,
    /** An amendment does not say where it comes from: its citation is empty or blank. */
    INGLE_ERROR_NO_CITATION = -35
};

/**
 * The name of a status, as documents write it: lower case with hyphens, `unit-missing`.
 *
 * @param status any number
 * @returns a name that is never NULL; `failure` or `caution` for a code that is not known.
 */
INGLE_API const char *ingle_status_name(ingle_status status);

/**
 * One sentence on what a status means.
 *
 * @param status any number
 * @returns a sentence that is never NULL.
 */
INGLE_API const char *ingle_status_text(ingle_status status);

/** How many statuses there are. */
INGLE_API size_t ingle_status_count(void);

/**
 * One of all statuses, in the order of this header.
 *
 * @param index from 0
 * @param[out] status receives the code; untouched past the end
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past the end or for NULL.
 */
INGLE_API ingle_status ingle_status_at(size_t index, ingle_status *status);

#ifdef __cplusplus
}
#endif

#endif
