/* SPDX-License-Identifier: MIT */
/**
 * @file
 * What can be measured or observed (quantities), and what was (a survey).
 */
#ifndef INGLE_SURVEY_H
#define INGLE_SURVEY_H

#include <ingle/api.h>
#include <ingle/measure.h>
#include <ingle/memory.h>
#include <ingle/status.h>

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/* ---- the catalogue of quantities ------------------------------------------------------------ */

/** One thing that can be measured or observed. All are constant and live as long as the program. */
typedef struct ingle_quantity ingle_quantity;

/** How many quantities there are. */
INGLE_API size_t ingle_quantity_count(void);

/** One of all quantities, from 0, those of one group together; NULL past the end. */
INGLE_API const ingle_quantity *ingle_quantity_at(size_t index);

/**
 * The quantity of an id.
 *
 * @param id `opening.width`; may be NULL
 * @returns NULL when there is none.
 */
INGLE_API const ingle_quantity *ingle_quantity_find(const char *id);

/** A quantity's id, unique and stable: its group, a dot, its name within the group. */
INGLE_API const char *ingle_quantity_id(const ingle_quantity *quantity);

/** The first part of the id: `opening`. */
INGLE_API const char *ingle_quantity_group(const ingle_quantity *quantity);

/** The second part of the id: `width`. */
INGLE_API const char *ingle_quantity_name(const ingle_quantity *quantity);

/** A quantity in words: `width of the fireplace opening`. */
INGLE_API const char *ingle_quantity_label(const ingle_quantity *quantity);

/** How it is measured or observed: from what to what. One or more sentences. */
INGLE_API const char *ingle_quantity_how(const ingle_quantity *quantity);

/** What kind of thing it is. */
INGLE_API ingle_dimension ingle_quantity_dimension(const ingle_quantity *quantity);

/** 1 if its group repeats (pieces of trim), else 0. */
INGLE_API int ingle_quantity_repeats(const ingle_quantity *quantity);

/**
 * The plausible range: an amount outside it is a slip of the pen and is refused.
 *
 * @param quantity a quantity
 * @param[out] least receives the smallest amount taken; may be NULL
 * @param[out] most receives the largest amount taken; may be NULL
 */
INGLE_API void ingle_quantity_range(const ingle_quantity *quantity, ingle_amount *least,
                                    ingle_amount *most);

/** How many choices an INGLE_CHOICE quantity has; 0 for the others. */
INGLE_API size_t ingle_quantity_choice_count(const ingle_quantity *quantity);

/** The name of one of a quantity's choices, from 0: `rectangular`; NULL past the end. */
INGLE_API const char *ingle_quantity_choice_at(const ingle_quantity *quantity, size_t index);

/** One of a quantity's choices in words, from 0; NULL past the end. */
INGLE_API const char *ingle_quantity_choice_label(const ingle_quantity *quantity, size_t index);

/**
 * What is taken where a choice or flag is not recorded.
 *
 * @param quantity a quantity
 * @param[out] assumed receives the choice's index or the flag; untouched if nothing is taken
 * @returns 1 if something is taken for granted (a finding that rests on it says so), else 0.
 */
INGLE_API int ingle_quantity_assumed(const ingle_quantity *quantity, ingle_amount *assumed);

/* ---- the visit ------------------------------------------------------------------------------ */

/** How many stops a visit has, in their order: from the room to the roof. */
INGLE_API size_t ingle_stop_count(void);

/** The id of a stop, from 0: `firebox`; NULL past the end. */
INGLE_API const char *ingle_stop_id(size_t stop);

/** A stop in words, from 0; NULL past the end. */
INGLE_API const char *ingle_stop_label(size_t stop);

/** The stop at which a quantity is measured or observed. */
INGLE_API size_t ingle_quantity_stop(const ingle_quantity *quantity);

/* ---- the survey ----------------------------------------------------------------------------- */

/** The quantities recorded at one fireplace or stove. One thread at a time may use it. */
typedef struct ingle_survey ingle_survey;

/**
 * Makes an empty survey.
 *
 * @param allocator where its memory comes from; NULL for the C library
 * @param[out] survey receives it; give it back with ingle_survey_free()
 * @returns INGLE_OK, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or
 *          INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_survey_new(const ingle_allocator *allocator, ingle_survey **survey);

/** Gives a survey back. NULL is allowed. */
INGLE_API void ingle_survey_free(ingle_survey *survey);

/** Empties a survey and keeps its memory for the next. */
INGLE_API void ingle_survey_clear(ingle_survey *survey);

/**
 * Copies all that a survey holds into another, labels and looked-at groups included.
 *
 * @param survey receives it; what it held before is gone
 * @param from what is copied; another object
 * @returns INGLE_OK, INGLE_ERROR_ARGUMENT, or INGLE_ERROR_MEMORY, and then it is empty.
 */
INGLE_API ingle_status ingle_survey_copy(ingle_survey *survey, const ingle_survey *from);

/**
 * Finds what a path names.
 *
 * @param survey a survey; an item of a repeating group has to be in it
 * @param path `opening.width`, `trim[0].distance`, or the JSON pointer that a report gives:
 *             `/survey/trim/0/distance`. Where the group repeats, the index has to be there
 * @param[out] quantity receives the quantity
 * @param[out] item receives the item's index where the group repeats, else 0; may be NULL
 * @returns INGLE_OK, INGLE_ERROR_UNKNOWN_QUANTITY or INGLE_ERROR_ARGUMENT; on error nothing is
 *          written, and ingle_survey_error_text() tells more.
 */
INGLE_API ingle_status ingle_survey_find(ingle_survey *survey, const char *path,
                                         const ingle_quantity **quantity, size_t *item);

/**
 * Records that a repeating group was looked at, though it may have no item: "there is no trim" is
 * not the same as "nobody looked".
 *
 * @param survey a survey
 * @param group a repeating group: `trim`
 * @returns INGLE_OK, INGLE_ERROR_UNKNOWN_QUANTITY or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_survey_open_group(ingle_survey *survey, const char *group);

/**
 * Adds an item to a repeating group: one more piece of trim.
 *
 * @param survey a survey
 * @param group a repeating group: `trim`
 * @param label what people call this item, or NULL; it is copied
 * @param[out] item receives its index in the group, from 0; may be NULL
 * @returns INGLE_OK, INGLE_ERROR_UNKNOWN_QUANTITY, INGLE_ERROR_ENCODING, INGLE_ERROR_MEMORY or
 *          INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_survey_add_item(ingle_survey *survey, const char *group,
                                             const char *label, size_t *item);

/**
 * Whether a repeating group was looked at: it was opened, or has an item.
 *
 * @returns 1, or 0 where nobody looked or there is no such group.
 */
INGLE_API int ingle_survey_is_open(const ingle_survey *survey, const char *group);

/** How many items a repeating group has; 0 for a group that is not known. */
INGLE_API size_t ingle_survey_item_count(const ingle_survey *survey, const char *group);

/** The label of an item; NULL if it has none or is not there. */
INGLE_API const char *ingle_survey_item_label(const ingle_survey *survey, const char *group,
                                              size_t item);

/**
 * Records a quantity from its path and text: the short way for most uses.
 *
 * @param survey a survey
 * @param path as ingle_survey_find() reads it: `opening.width`, or `trim[0].distance` for an item
 * @param text an amount, a choice's name, or `yes` or `no`
 * @param tolerance the half-width of the measurement as text, or NULL for none
 * @returns as ingle_survey_set_text(), INGLE_ERROR_UNKNOWN_QUANTITY, and INGLE_ERROR_ARGUMENT for
 *          an item that is not there: ingle_survey_add_item() comes first.
 */
INGLE_API ingle_status ingle_survey_record(ingle_survey *survey, const char *path,
                                           const char *text, const char *tolerance);

/**
 * Records an amount from text.
 *
 * @param survey a survey
 * @param quantity one for which ingle_dimension_is_amount(); NULL gives
 *        INGLE_ERROR_UNKNOWN_QUANTITY
 * @param item the item's index where the group repeats, else 0
 * @param text as ingle_amount_parse() reads it; need not end in NUL
 * @param length its length in bytes
 * @param unit the unit of a bare number, or NULL where one has to be written
 * @returns INGLE_OK, INGLE_ROUNDED, what ingle_amount_parse() refuses, INGLE_ERROR_NEGATIVE,
 *          INGLE_ERROR_IMPLAUSIBLE or INGLE_ERROR_ARGUMENT. The survey is unchanged on error, and
 *          ingle_survey_error_text() and _position() tell more.
 */
INGLE_API ingle_status ingle_survey_set_text(ingle_survey *survey, const ingle_quantity *quantity,
                                             size_t item, const char *text, size_t length,
                                             const ingle_unit *unit);

/**
 * Gives a recorded amount its tolerance from text: the half-width within which the measurement
 * lies. The same arguments and statuses as ingle_survey_set_text(); INGLE_ERROR_ARGUMENT where the
 * quantity is not recorded.
 */
INGLE_API ingle_status ingle_survey_set_tolerance_text(ingle_survey *survey,
                                                       const ingle_quantity *quantity, size_t item,
                                                       const char *text, size_t length,
                                                       const ingle_unit *unit);

/**
 * Records an amount, a choice (by its index) or a flag (0 or 1).
 *
 * @param survey a survey
 * @param quantity a quantity; NULL gives INGLE_ERROR_UNKNOWN_QUANTITY
 * @param item the item's index where the group repeats, else 0
 * @param value base units of the quantity's dimension
 * @param tolerance half-width in base units, 0 for none; 0 for choices and flags
 * @returns INGLE_OK, INGLE_ERROR_NEGATIVE, INGLE_ERROR_IMPLAUSIBLE, INGLE_ERROR_UNKNOWN_CHOICE or
 *          INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_survey_set(ingle_survey *survey, const ingle_quantity *quantity,
                                        size_t item, int64_t value, int64_t tolerance);

/**
 * Records a choice by its name.
 *
 * @returns INGLE_OK, INGLE_ERROR_UNKNOWN_CHOICE, INGLE_ERROR_UNKNOWN_QUANTITY (NULL),
 *          INGLE_ERROR_DIMENSION (no choice) or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_survey_set_choice(ingle_survey *survey,
                                               const ingle_quantity *quantity, size_t item,
                                               const char *choice);

/**
 * Takes a quantity out of a survey again.
 *
 * @returns INGLE_OK (also if it was not recorded) or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_survey_unset(ingle_survey *survey, const ingle_quantity *quantity,
                                          size_t item);

/**
 * What is recorded of a quantity.
 *
 * @param survey a survey
 * @param quantity a quantity
 * @param item the item's index where the group repeats, else 0
 * @param[out] amount receives the amount; may be NULL
 * @param[out] tolerance receives the half-width in base units; may be NULL
 * @returns 1 if it is recorded, else 0, and then nothing is written.
 */
INGLE_API int ingle_survey_get(const ingle_survey *survey, const ingle_quantity *quantity,
                               size_t item, ingle_amount *amount, int64_t *tolerance);

/** What was wrong with the last call that failed on this survey, in a sentence; "" before one. */
INGLE_API const char *ingle_survey_error_text(const ingle_survey *survey);

/** Where in the text it was wrong, in bytes from its start. */
INGLE_API size_t ingle_survey_error_position(const ingle_survey *survey);

#ifdef __cplusplus
}
#endif

#endif
