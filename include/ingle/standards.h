/* SPDX-License-Identifier: MIT */
/**
 * @file
 * The standards the library holds, their rules as printed, and local amendments.
 *
 * Every number of a rule carries its publication, section, edition and basis. The library holds
 * numbers and section numbers; the publications themselves are not quoted.
 */
#ifndef INGLE_STANDARDS_H
#define INGLE_STANDARDS_H

#include <ingle/api.h>
#include <ingle/measure.h>
#include <ingle/memory.h>
#include <ingle/status.h>
#include <ingle/survey.h>

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/* ---- standards ------------------------------------------------------------------------------ */

/** One edition of one publication. All are constant and live as long as the program. */
typedef struct ingle_standard ingle_standard;

/** How many standards there are. */
INGLE_API size_t ingle_standard_count(void);

/** One of all standards, from 0; NULL past the end. */
INGLE_API const ingle_standard *ingle_standard_at(size_t index);

/** The standard of an id, `irc-2021`; NULL when there is none. */
INGLE_API const ingle_standard *ingle_standard_find(const char *id);

/** A standard's id, unique and stable. */
INGLE_API const char *ingle_standard_id(const ingle_standard *standard);

/** The title of the publication. */
INGLE_API const char *ingle_standard_title(const ingle_standard *standard);

/** The year of the edition; 0 where there is no publication (common practice). */
INGLE_API int32_t ingle_standard_edition(const ingle_standard *standard);

/** Where it is used: `United States`. */
INGLE_API const char *ingle_standard_place(const ingle_standard *standard);

/** What a reader has to know of how its text was seen, in a sentence or two. */
INGLE_API const char *ingle_standard_note(const ingle_standard *standard);

/** The unit of length its numbers are printed in. */
INGLE_API const ingle_unit *ingle_standard_unit(const ingle_standard *standard);

/* ---- rules ---------------------------------------------------------------------------------- */

/** One row of a standard. All are constant and live as long as the program. */
typedef struct ingle_rule ingle_rule;

/** How the numbers of a rule are known. */
typedef int32_t ingle_basis;

enum {
    /** The text of the clause or table was read. */
    INGLE_BASIS_READ = 1,
    /** Another source cites or quotes it; the clause itself was not read. */
    INGLE_BASIS_CITED = 2,
    /** From memory; to be confirmed in the publication. */
    INGLE_BASIS_FROM_MEMORY = 3,
    /** A practice of the trade with no publication behind it. */
    INGLE_BASIS_COMMON_PRACTICE = 4
};

/** The name of a basis as documents write it: `read`; NULL for a number that is none. */
INGLE_API const char *ingle_basis_name(ingle_basis basis);

/** The basis with a name; 0 where there is none. */
INGLE_API ingle_basis ingle_basis_find(const char *name);

/** How what is measured has to stand to what is required. */
typedef int32_t ingle_relation;

enum {
    /** The measured amount is the required one or more. */
    INGLE_AT_LEAST = 1,
    /** The measured amount is the required one or less. */
    INGLE_AT_MOST = 2,
    /** What is seen is what is required: a choice or a flag. */
    INGLE_IS = 3,
    /** What is seen is anything but what the rule names: a choice or a flag. */
    INGLE_IS_NOT = 4,
    /** The measured amount is less than the required one; exactly that is too much. */
    INGLE_LESS_THAN = 5
};

/** The name of a relation as documents write it: `at-least`; NULL for a number that is none. */
INGLE_API const char *ingle_relation_name(ingle_relation relation);

/** How many rules a standard has. */
INGLE_API size_t ingle_standard_rule_count(const ingle_standard *standard);

/** One of a standard's rules, from 0 in the order of the publication; NULL past the end. */
INGLE_API const ingle_rule *ingle_standard_rule_at(const ingle_standard *standard, size_t index);

/**
 * A rule's id, the same for the same matter in every standard: `hearth-front`. Two rows of one
 * standard share an id where the publication gives different numbers under different conditions.
 */
INGLE_API const char *ingle_rule_id(const ingle_rule *rule);

/** What a rule is about, in words. */
INGLE_API const char *ingle_rule_label(const ingle_rule *rule);

/** The section of the publication: `R1001.10`. */
INGLE_API const char *ingle_rule_section(const ingle_rule *rule);

/** How the numbers are known. */
INGLE_API ingle_basis ingle_rule_basis(const ingle_rule *rule);

/** How measured stands to required. */
INGLE_API ingle_relation ingle_rule_relation(const ingle_rule *rule);

/** How many quantities a rule judges: both sides of a hearth are two. */
INGLE_API size_t ingle_rule_quantity_count(const ingle_rule *rule);

/** One of the quantities a rule judges, from 0; NULL past the end. */
INGLE_API const ingle_quantity *ingle_rule_quantity_at(const ingle_rule *rule, size_t index);

/** How many quantities the requirement is computed from; 0 where it is fixed. */
INGLE_API size_t ingle_rule_input_count(const ingle_rule *rule);

/** One of the quantities that the requirement is computed from, from 0; NULL past the end. */
INGLE_API const ingle_quantity *ingle_rule_input_at(const ingle_rule *rule, size_t index);

/** The first edition (year) that has this row; 0 if all known ones do. */
INGLE_API int32_t ingle_rule_since(const ingle_rule *rule);

/** The last edition (year) that has this row; 0 if the newest known one does. */
INGLE_API int32_t ingle_rule_until(const ingle_rule *rule);

/** The name of the formula that computes what is required. */
INGLE_API const char *ingle_rule_formula(const ingle_rule *rule);

/** What that formula does, in a sentence. */
INGLE_API const char *ingle_rule_formula_text(const ingle_rule *rule);

/** How many numbers a rule has. */
INGLE_API size_t ingle_rule_number_count(const ingle_rule *rule);

/**
 * The name of one of a rule's numbers, from 0: amendments set it by this. NULL past the end.
 *
 * What a state has to be (INGLE_CHOICE or INGLE_FLAG) is among the numbers, too, as `state`; that
 * no amendment can set, since another state would be another rule.
 */
INGLE_API const char *ingle_rule_number_name(const ingle_rule *rule, size_t index);

/**
 * One of a rule's numbers, from 0, as printed in the publication; of a state, the index of the
 * choice or the flag.
 *
 * @param rule a rule
 * @param index from 0
 * @param[out] amount receives it
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past the end or for NULL.
 */
INGLE_API ingle_status ingle_rule_number_at(const ingle_rule *rule, size_t index,
                                            ingle_amount *amount);

/** How the text is read where it can be read in more than one way; NULL where it is plain. */
INGLE_API const char *ingle_rule_reading(const ingle_rule *rule);

/**
 * Writes when a rule applies: `appliance.kind is masonry-fireplace and trim.combustible is yes`.
 *
 * @param rule a rule
 * @param[out] buffer receives UTF-8 that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_rule_condition_text(const ingle_rule *rule, char *buffer,
                                                 size_t capacity, size_t *length);

/** What is dangerous while the rule is not met. */
INGLE_API const char *ingle_rule_caution(const ingle_rule *rule);

/** What puts it right, where no remedy is computed; NULL where one always is. */
INGLE_API const char *ingle_rule_mend(const ingle_rule *rule);

/** Who should look next while the rule is not met; NULL for nobody in particular. */
INGLE_API const char *ingle_rule_refer(const ingle_rule *rule);

/** Which inspection is called for while the rule is not met, and why; NULL for none. */
INGLE_API const char *ingle_rule_inspection(const ingle_rule *rule);

/** The quantity of the appliance's own listing that a rule gives way to; NULL if there is none. */
INGLE_API const ingle_quantity *ingle_rule_listing(const ingle_rule *rule);

/* ---- readings ------------------------------------------------------------------------------- */

/** Something that a publication leaves open, so that it can be read in more than one way. */
typedef struct ingle_reading ingle_reading;

/** How many readings there are. */
INGLE_API size_t ingle_reading_count(void);

/** One of all readings, from 0; NULL past the end. */
INGLE_API const ingle_reading *ingle_reading_at(size_t index);

/** A reading's id, unique and stable: `hearth-steps`. */
INGLE_API const char *ingle_reading_id(const ingle_reading *reading);

/** What is open, in words. */
INGLE_API const char *ingle_reading_label(const ingle_reading *reading);

/** How many ways there are to read it. */
INGLE_API size_t ingle_reading_option_count(const ingle_reading *reading);

/** The id of one of the ways, from 0, the first being followed by default; NULL past the end. */
INGLE_API const char *ingle_reading_option_at(const ingle_reading *reading, size_t index);

/** One of the ways in words, from 0; NULL past the end. */
INGLE_API const char *ingle_reading_option_label(const ingle_reading *reading, size_t index);

/**
 * Which way of reading a rule belongs to.
 *
 * @param rule a rule
 * @param[out] option receives the number of the option; may be NULL; untouched if there is none
 * @returns the reading, or NULL where the rule holds however the publication is read.
 */
INGLE_API const ingle_reading *ingle_rule_follows(const ingle_rule *rule, size_t *option);

/* ---- tables --------------------------------------------------------------------------------- */

/** The number of the printed table that a rule looks its requirement up in; NULL without one. */
INGLE_API const char *ingle_rule_table(const ingle_rule *rule);

/**
 * How a row of the table is found for the rule's first input: `up-to` (keys are upper limits,
 * included), `below` (not included), `from` (lower limits, included), `exact`, or `interpolate`
 * (on a straight line between two rows). NULL without a table.
 */
INGLE_API const char *ingle_rule_table_row_reading(const ingle_rule *rule);

/** The same for columns; NULL where the table has one column without key. */
INGLE_API const char *ingle_rule_table_column_reading(const ingle_rule *rule);

/** How many rows the table has; 0 without a table. */
INGLE_API size_t ingle_rule_table_row_count(const ingle_rule *rule);

/** How many columns the table has; 0 without a table. */
INGLE_API size_t ingle_rule_table_column_count(const ingle_rule *rule);

/**
 * The key of a row, from 0.
 *
 * @param rule a rule
 * @param row from 0
 * @param[out] key receives it
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past the end or for NULL.
 */
INGLE_API ingle_status ingle_rule_table_row_at(const ingle_rule *rule, size_t row,
                                               ingle_amount *key);

/** The key of a column, as ingle_rule_table_row_at(); also INGLE_ERROR_ARGUMENT if it has none. */
INGLE_API ingle_status ingle_rule_table_column_at(const ingle_rule *rule, size_t column,
                                                  ingle_amount *key);

/**
 * A cell of the table.
 *
 * @param rule a rule
 * @param row from 0
 * @param column from 0
 * @param[out] cell receives it
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past the end, for NULL, or where no value is printed.
 */
INGLE_API ingle_status ingle_rule_table_cell_at(const ingle_rule *rule, size_t row, size_t column,
                                                ingle_amount *cell);

/* ---- materials ------------------------------------------------------------------------------ */

/** For how many materials a standard says what one inch of them is worth. */
INGLE_API size_t ingle_standard_material_count(const ingle_standard *standard);

/**
 * One material of a standard, from 0: it is asked only where a product's own data are not recorded.
 *
 * @param standard a standard
 * @param index from 0
 * @param[out] material receives the choice of `layer.material`: `slate`; borrowed, constant
 * @param[out] r_per_inch receives the R-value of one inch
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past the end or for NULL.
 */
INGLE_API ingle_status ingle_standard_material_at(const ingle_standard *standard, size_t index,
                                                  const char **material,
                                                  ingle_amount *r_per_inch);

/* ---- flue liners ---------------------------------------------------------------------------- */

/** How many liners a standard prints a net area for. */
INGLE_API size_t ingle_standard_liner_count(const ingle_standard *standard);

/**
 * One row of a standard's liner tables, from 0, in printed order.
 *
 * @param standard a standard
 * @param index from 0
 * @param[out] liner receives the choice of `flue.liner`: `13x13`; borrowed, constant
 * @param[out] area receives the printed net area
 * @param[out] table receives the table's number; borrowed, constant
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past the end or for NULL.
 */
INGLE_API ingle_status ingle_standard_liner_at(const ingle_standard *standard, size_t index,
                                               const char **liner, ingle_amount *area,
                                               const char **table);

/* ---- amendments ----------------------------------------------------------------------------- */

/** A local authority's changes to the numbers of rules. One thread at a time may change it. */
typedef struct ingle_amendments ingle_amendments;

/**
 * Makes an empty list of amendments.
 *
 * @param allocator where its memory comes from; NULL for the C library
 * @param[out] amendments receives it; give it back with ingle_amendments_free()
 * @returns INGLE_OK, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or
 *          INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_amendments_new(const ingle_allocator *allocator,
                                            ingle_amendments **amendments);

/** Gives a list back. NULL is allowed. */
INGLE_API void ingle_amendments_free(ingle_amendments *amendments);

/** Empties a list and keeps its memory for the next. */
INGLE_API void ingle_amendments_clear(ingle_amendments *amendments);

/**
 * Sets a number of all rows that share a rule id and have a number of that name. A state is no
 * number and cannot be set: see ingle_rule_number_name().
 *
 * @param amendments a list
 * @param standard the standard that is amended
 * @param rule a rule id: `hearth-front`
 * @param number the name of one of the rule's numbers: `large`
 * @param text the amount, as ingle_amount_parse() reads it; need not end in NUL
 * @param length its length in bytes
 * @param unit the unit of a bare number, or NULL where one has to be written
 * @param citation where the authority says so, not blank; it is copied and appears in the finding
 * @returns INGLE_OK, INGLE_ROUNDED, INGLE_ERROR_UNKNOWN_RULE, INGLE_ERROR_UNKNOWN_NUMBER,
 *          INGLE_ERROR_DIMENSION for a state, INGLE_ERROR_NO_CITATION for an empty or blank
 *          citation, INGLE_ERROR_NEGATIVE, what ingle_amount_parse() refuses, INGLE_ERROR_MEMORY
 *          or INGLE_ERROR_ARGUMENT. A later amendment of the same number wins.
 */
INGLE_API ingle_status ingle_amendments_set_text(ingle_amendments *amendments,
                                                 const ingle_standard *standard, const char *rule,
                                                 const char *number, const char *text,
                                                 size_t length, const ingle_unit *unit,
                                                 const char *citation);

/** How many numbers were set, those that a later one took the place of included. */
INGLE_API size_t ingle_amendments_count(const ingle_amendments *amendments);

/**
 * Gets one of the numbers that were set.
 *
 * @param amendments a list
 * @param index from 0, in the order in which they were set
 * @param[out] standard receives the standard that is amended
 * @param[out] rule receives the rule's id; borrowed, constant
 * @param[out] number receives the number's name; borrowed, constant
 * @param[out] amount receives what it was set to
 * @param[out] citation receives where the authority says so; borrowed
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past the end or for NULL.
 */
INGLE_API ingle_status ingle_amendments_at(const ingle_amendments *amendments, size_t index,
                                           const ingle_standard **standard, const char **rule,
                                           const char **number, ingle_amount *amount,
                                           const char **citation);

/** What was wrong with the last call that failed on this list, in a sentence; "" before one. */
INGLE_API const char *ingle_amendments_error_text(const ingle_amendments *amendments);

/** Where in the text it was wrong, in bytes from its start. */
INGLE_API size_t ingle_amendments_error_position(const ingle_amendments *amendments);

#ifdef __cplusplus
}
#endif

#endif
