/* SPDX-License-Identifier: MIT */
#include "teaching/exercise.h"

#include "base/memory.h"

#include <string.h>

/* ---- levels --------------------------------------------------------------------------------- */

static const struct {
    const char *text;
    size_t questions; /* at most */
} levels[EXERCISE_LEVELS] = {
    {"One or two rules on one topic.", 2},
    {"A few rules on the opening and what is around it.", 5},
    {"A whole fireplace.", 9},
    {"A whole fireplace with traps: measures exactly at a limit, units of both kinds, an insert "
     "that stands on the hearth.",
     EXERCISE_QUESTIONS},
};

int32_t ingle_exercise_level_count(void)
{
    return EXERCISE_LEVELS;
}

const char *ingle_exercise_level_text(int32_t level)
{
    return level >= 1 && level <= EXERCISE_LEVELS ? levels[level - 1].text : NULL;
}

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_exercise_new(const ingle_allocator *allocator, ingle_exercise **exercise)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_exercise *made = exercise == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made == NULL) {
        return status;
    }
    status = ingle_survey_new(&made->allocator, &made->survey);
    if (status == INGLE_OK) {
        status = ingle_report_new(&made->allocator, &made->report);
    }
    if (status != INGLE_OK) {
        ingle_exercise_free(made);
        return status;
    }
    *exercise = made;
    return status;
}

void ingle_exercise_free(ingle_exercise *exercise)
{
    if (exercise == NULL) {
        return;
    }
    ingle_report_free(exercise->report);
    ingle_survey_free(exercise->survey);
    ingle_allocator allocator = exercise->allocator;
    allocator_free(&allocator, exercise);
}

/* ---- the questions -------------------------------------------------------------------------- */

/* A finding on something measured, with an amount for an answer. */
static bool can_be_asked(const ingle_finding *finding)
{
    ingle_amount amount;
    ingle_verdict verdict = ingle_finding_verdict(finding);
    return (verdict == INGLE_FAILS || verdict == INGLE_MEETS) &&
           ingle_finding_required(finding, &amount) && ingle_dimension_is_amount(amount.dimension);
}

static bool is_asked(const ingle_exercise *exercise, size_t finding)
{
    for (size_t i = 0; i < exercise->question_count; i++) {
        if (exercise->questions[i] == finding) {
            return true;
        }
    }
    return false;
}

static bool is_same_matter(const ingle_finding *one, const ingle_finding *other)
{
    return ingle_rule_id(ingle_finding_rule(one)) == ingle_rule_id(ingle_finding_rule(other)) &&
           ingle_finding_quantity(one) == ingle_finding_quantity(other) &&
           ingle_finding_item(one) == ingle_finding_item(other);
}

static void add_question(ingle_exercise *exercise, size_t finding)
{
    size_t most = levels[exercise->level - 1].questions;
    if (exercise->question_count < most &&
        can_be_asked(ingle_report_finding_at(exercise->report, finding)) &&
        !is_asked(exercise, finding)) {
        exercise->questions[exercise->question_count++] = finding;
    }
}

/* Each matter by all standards before the next: what one edition asks, and what another. */
static void ask(ingle_exercise *exercise)
{
    size_t count = ingle_report_finding_count(exercise->report);
    exercise->question_count = 0;
    for (size_t i = 0; i < count; i++) {
        for (size_t j = i; j < count; j++) {
            if (is_same_matter(ingle_report_finding_at(exercise->report, i),
                               ingle_report_finding_at(exercise->report, j))) {
                add_question(exercise, j);
            }
        }
    }
}

/* ---- making it ------------------------------------------------------------------------------ */

static ingle_status make(ingle_exercise *exercise, const ingle_standard *const *standards,
                         size_t count)
{
    ingle_check_options options = {.size = sizeof options};
    bool metric = ingle_unit_is_metric(ingle_standard_unit(standards[0])) != 0;
    options.metric_remedies = metric;
    for (uint32_t turn = 0; turn < EXERCISE_TURNS; turn++) {
        ingle_status status = exercise_invent(exercise, metric, turn);
        if (status == INGLE_OK) {
            status = ingle_check(exercise->survey, standards, count, &options, exercise->report);
        }
        if (status < 0) {
            return status;
        }
        ask(exercise);
        if (exercise->question_count > 0) {
            return INGLE_OK;
        }
    }
    return INGLE_ERROR_NOTHING_MEASURED;
}

ingle_status ingle_exercise_make(ingle_exercise *exercise, uint64_t seed, int32_t level,
                                 const ingle_standard *const *standards, size_t standard_count)
{
    if (exercise == NULL || level < 1 || level > EXERCISE_LEVELS) {
        return INGLE_ERROR_ARGUMENT;
    }
    exercise->question_count = 0;
    exercise->given_count = 0;
    exercise->seed = seed;
    exercise->level = level;
    if (standards == NULL || standard_count == 0) {
        return INGLE_ERROR_NO_STANDARD;
    }
    if (standards[0] == NULL) {
        return INGLE_ERROR_UNKNOWN_STANDARD;
    }
    ingle_status status = make(exercise, standards, standard_count);
    if (status != INGLE_OK) {
        exercise->question_count = 0;
        exercise->given_count = 0;
    }
    return status;
}

/* ---- reading it ----------------------------------------------------------------------------- */

const ingle_survey *ingle_exercise_survey(const ingle_exercise *exercise)
{
    return exercise->survey;
}

const ingle_report *ingle_exercise_report(const ingle_exercise *exercise)
{
    return exercise->report;
}

size_t ingle_exercise_question_count(const ingle_exercise *exercise)
{
    return exercise->question_count;
}

const ingle_finding *ingle_exercise_answer_at(const ingle_exercise *exercise, size_t index)
{
    return index < exercise->question_count
               ? ingle_report_finding_at(exercise->report, exercise->questions[index])
               : NULL;
}

size_t ingle_exercise_given_count(const ingle_exercise *exercise)
{
    return exercise->given_count;
}

ingle_status ingle_exercise_given_at(const ingle_exercise *exercise, size_t index,
                                     const ingle_quantity **quantity, size_t *item,
                                     const ingle_unit **unit)
{
    if (exercise == NULL || quantity == NULL || item == NULL || unit == NULL ||
        index >= exercise->given_count) {
        return INGLE_ERROR_ARGUMENT;
    }
    *quantity = &quantities[exercise->given[index].quantity];
    *item = exercise->given[index].item;
    *unit = exercise->given[index].unit;
    return INGLE_OK;
}
