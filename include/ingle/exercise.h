/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Practice problems: an invented fireplace with its measurements, questions, and answers worked out
 * by the library.
 */
#ifndef INGLE_EXERCISE_H
#define INGLE_EXERCISE_H

#include <ingle/api.h>
#include <ingle/check.h>
#include <ingle/memory.h>
#include <ingle/page.h>

#ifdef __cplusplus
extern "C" {
#endif

/** A practice problem. One thread at a time may use it. */
typedef struct ingle_exercise ingle_exercise;

/** How many levels there are, from the easiest, 1. */
INGLE_API int32_t ingle_exercise_level_count(void);

/** What a level is made of, in a sentence; NULL for a number that is none. */
INGLE_API const char *ingle_exercise_level_text(int32_t level);

/** Makes an empty exercise; give it back with ingle_exercise_free(). */
INGLE_API ingle_status ingle_exercise_new(const ingle_allocator *allocator,
                                          ingle_exercise **exercise);

/** Gives an exercise back. NULL is allowed. */
INGLE_API void ingle_exercise_free(ingle_exercise *exercise);

/**
 * Makes up a problem. The same seed, level and standards give the same problem on every machine,
 * as long as the standards' rules are the same.
 *
 * @param exercise receives it; what it held before is gone
 * @param seed any number
 * @param level 1 to ingle_exercise_level_count()
 * @param standards the standards that are asked about
 * @param standard_count how many; at least 1
 * @returns INGLE_OK; INGLE_ERROR_NOTHING_MEASURED if the standards have no rule to ask about;
 *          INGLE_ERROR_NO_STANDARD, INGLE_ERROR_UNKNOWN_STANDARD, INGLE_ERROR_MEMORY or
 *          INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_exercise_make(ingle_exercise *exercise, uint64_t seed, int32_t level,
                                           const ingle_standard *const *standards,
                                           size_t standard_count);

/** The measurements of the invented fireplace. */
INGLE_API const ingle_survey *ingle_exercise_survey(const ingle_exercise *exercise);

/** The report on it, with steps and remedies; it has more than is asked about. */
INGLE_API const ingle_report *ingle_exercise_report(const ingle_exercise *exercise);

/** How many questions there are. */
INGLE_API size_t ingle_exercise_question_count(const ingle_exercise *exercise);

/** The finding that answers a question, from 0; NULL past the end. */
INGLE_API const ingle_finding *ingle_exercise_answer_at(const ingle_exercise *exercise,
                                                        size_t index);

/** How many measurements the problem tells. */
INGLE_API size_t ingle_exercise_given_count(const ingle_exercise *exercise);

/**
 * One of the measurements that the problem tells, from 0.
 *
 * @param exercise an exercise
 * @param index from 0
 * @param[out] quantity receives the quantity
 * @param[out] item receives the item, where the group repeats, else 0
 * @param[out] unit receives the unit in which it is told; NULL for a choice
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT past the end or for NULL.
 */
INGLE_API ingle_status ingle_exercise_given_at(const ingle_exercise *exercise, size_t index,
                                               const ingle_quantity **quantity, size_t *item,
                                               const ingle_unit **unit);

/** Which parts of an exercise a page has. */
typedef int32_t ingle_exercise_part;

enum {
    /** The problem, and then the answers on a sheet of their own. */
    INGLE_EXERCISE_BOTH = 0,
    /** The problem alone. */
    INGLE_EXERCISE_PROBLEM = 1,
    /** The answers alone, worked out. */
    INGLE_EXERCISE_ANSWERS = 2
};

/**
 * Writes an exercise as a page.
 *
 * @param exercise an exercise that was made
 * @param part which parts
 * @param page how it looks; NULL for plain text
 * @param write receives it
 * @param context handed to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT,
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_exercise_page(const ingle_exercise *exercise,
                                           ingle_exercise_part part, const ingle_page *page,
                                           ingle_write write, void *context);

#ifdef __cplusplus
}
#endif

#endif
