/* SPDX-License-Identifier: MIT */
/*
 * The assessment as an object: the tape, the budget of every length, and each finding in turn.
 */
#include "uncertainty/assessment.h"

#include "base/memory.h"
#include "base/text.h"
#include "uncertainty/decision.h"

#include <string.h>

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_assessment_new(const ingle_allocator *allocator, ingle_assessment **assessment)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_assessment *made =
        assessment == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made == NULL) {
        return status;
    }
    made->reckoning.allocator = made->allocator;
    *assessment = made;
    return status;
}

void ingle_assessment_free(ingle_assessment *assessment)
{
    if (assessment == NULL) {
        return;
    }
    ingle_allocator allocator = assessment->allocator;
    allocator_free(&allocator, assessment->lengths);
    allocator_free(&allocator, assessment->conformances);
    allocator_free(&allocator, assessment->reckoning.steps);
    allocator_free(&allocator, assessment);
}

static void empty(struct ingle_assessment *assessment)
{
    assessment->length_count = 0;
    assessment->conformance_count = 0;
    assessment->missing_count = 0;
    assessment->reckoning.count = 0;
    assessment->reckoning.failed = false;
    assessment->report = NULL;
}

/* ---- the tape and the lengths --------------------------------------------------------------- */

static bool take_one(struct ingle_assessment *assessment, enum quantity_id quantity,
                     int64_t *value)
{
    bool there = survey_value(assessment->report->survey, quantity, 0, value);
    if (!there) {
        assessment->missing[assessment->missing_count++] = quantity;
    }
    return there;
}

/* The tape as the survey names it; notes what is missing. */
static bool take_tape(struct ingle_assessment *assessment, struct tape *tape)
{
    int64_t tape_class = 0;
    int64_t end = CHOICE_TAPE_END_HOOK;
    *tape = (struct tape){.irregularity = 0};
    survey_value(assessment->report->survey, QUANTITY_TAPE_END, 0, &end);
    survey_value(assessment->report->survey, QUANTITY_TAPE_IRREGULARITY, 0, &tape->irregularity);
    bool known = take_one(assessment, QUANTITY_TAPE_CLASS, &tape_class);
    known = take_one(assessment, QUANTITY_TAPE_GRADUATION, &tape->graduation) && known;
    tape->tape_class = (enum choice_TAPE_CLASS)tape_class;
    tape->at_hook = end == CHOICE_TAPE_END_HOOK;
    return known;
}

static ingle_status add_length(struct ingle_assessment *assessment, const struct tape *tape,
                               enum quantity_id quantity, size_t item)
{
    const struct record *record = survey_record(assessment->report->survey, quantity, item);
    if (record == NULL || !record->recorded) {
        return INGLE_OK;
    }
    if (!array_reserve(&assessment->allocator, (void **)&assessment->lengths,
                       &assessment->length_capacity, assessment->length_count,
                       sizeof *assessment->lengths)) {
        return INGLE_ERROR_MEMORY;
    }
    struct ingle_length_budget *budget = &assessment->lengths[assessment->length_count++];
    *budget = (struct ingle_length_budget){.assessment = assessment,
                                           .quantity = quantity,
                                           .item = item,
                                           .length = record->value};
    budget_make(budget, tape, &assessment->reckoning);
    return INGLE_OK;
}

static ingle_status add_lengths(struct ingle_assessment *assessment, const struct tape *tape)
{
    ingle_status status = INGLE_OK;
    for (size_t i = 0; i < QUANTITY_COUNT && status == INGLE_OK; i++) {
        const struct ingle_quantity *quantity = &quantities[i];
        bool repeats = groups[quantity->group].repeats;
        size_t items =
            repeats ? assessment->report->survey->items[quantity->group].count : 1;
        if (quantity->dimension != INGLE_LENGTH || quantity->without_tape) {
            continue;
        }
        for (size_t item = 0; item < items && status == INGLE_OK; item++) {
            status = add_length(assessment, tape, (enum quantity_id)i, item);
        }
    }
    return status;
}

const struct ingle_length_budget *assessment_budget(const struct ingle_assessment *assessment,
                                                    enum quantity_id quantity, size_t item)
{
    for (size_t i = 0; i < assessment->length_count; i++) {
        const struct ingle_length_budget *budget = &assessment->lengths[i];
        if (budget->quantity == quantity && budget->item == item) {
            return budget;
        }
    }
    return NULL;
}

/* ---- assessing ------------------------------------------------------------------------------ */

static ingle_status take_options(struct ingle_probability_options *taken,
                                 const ingle_probability_options *given)
{
    memset(taken, 0, sizeof *taken);
    ingle_status status =
        given == NULL ? INGLE_OK : struct_take(taken, sizeof *taken, sizeof *taken, given);
    if (status != INGLE_OK) {
        return status;
    }
    return decision_usable(taken->rule, taken->guard_factor) &&
                   taken->trials <= INGLE_MOST_TRIALS
               ? INGLE_OK
               : INGLE_ERROR_ARGUMENT;
}

static ingle_status add_conformances(struct ingle_assessment *assessment)
{
    for (size_t i = 0; i < assessment->report->finding_count; i++) {
        if (!array_reserve(&assessment->allocator, (void **)&assessment->conformances,
                           &assessment->conformance_capacity, assessment->conformance_count,
                           sizeof *assessment->conformances)) {
            return INGLE_ERROR_MEMORY;
        }
        struct ingle_conformance *conformance =
            &assessment->conformances[assessment->conformance_count++];
        *conformance = (struct ingle_conformance){.assessment = assessment,
                                                  .finding = i,
                                                  .turns_on = QUANTITY_NONE,
                                                  .exact = QUANTITY_NONE,
                                                  .first_step = assessment->reckoning.count};
        conformance_find(assessment, conformance);
        conformance->step_count = assessment->reckoning.count - conformance->first_step;
    }
    return assessment->reckoning.failed ? INGLE_ERROR_MEMORY : INGLE_OK;
}

ingle_status ingle_assess(const ingle_report *report, const ingle_probability_options *options,
                          ingle_assessment *assessment)
{
    struct tape tape;
    if (report == NULL || assessment == NULL || report->survey == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    empty(assessment);
    ingle_status status = take_options(&assessment->options, options);
    if (status != INGLE_OK) {
        return status;
    }
    assessment->report = report;
    if (take_tape(assessment, &tape)) {
        status = add_lengths(assessment, &tape);
    }
    if (status == INGLE_OK) {
        status = add_conformances(assessment);
    }
    if (status != INGLE_OK) {
        empty(assessment);
    }
    return status;
}

uint64_t ingle_most_trials(void)
{
    return INGLE_MOST_TRIALS;
}

/* ---- what can be asked of it ---------------------------------------------------------------- */

size_t ingle_assessment_missing_count(const ingle_assessment *assessment)
{
    return assessment->missing_count;
}

const ingle_quantity *ingle_assessment_missing_at(const ingle_assessment *assessment, size_t index)
{
    return index < assessment->missing_count ? &quantities[assessment->missing[index]] : NULL;
}

const char *ingle_assessment_text(const ingle_assessment *assessment)
{
    if (assessment->missing_count > 0) {
        return "No probability is given: it needs the accuracy class of the tape and the "
               "graduation it was read to (tape.class, tape.graduation).";
    }
    return assessment->options.separate_tapes
               ? "Probabilities rest on the tape that the survey names, each length being measured "
                 "with a tape of its own. They stand beside the verdicts and change none."
               : "Probabilities rest on the one tape that the survey names. They stand beside the "
                 "verdicts and change none.";
}

size_t ingle_assessment_length_count(const ingle_assessment *assessment)
{
    return assessment->length_count;
}

const ingle_length_budget *ingle_assessment_length_at(const ingle_assessment *assessment,
                                                      size_t index)
{
    return index < assessment->length_count ? &assessment->lengths[index] : NULL;
}

const ingle_quantity *ingle_length_budget_quantity(const ingle_length_budget *budget)
{
    return &quantities[budget->quantity];
}

size_t ingle_length_budget_item(const ingle_length_budget *budget)
{
    return budget->item;
}

int ingle_length_budget_uncertainty(const ingle_length_budget *budget, ingle_figure *uncertainty)
{
    if (budget->known && uncertainty != NULL) {
        *uncertainty = (ingle_figure){budget->u, INGLE_LENGTH, 0};
    }
    return budget->known;
}

ingle_status ingle_length_budget_subject_text(const ingle_length_budget *budget, char *buffer,
                                              size_t capacity, size_t *length)
{
    if (budget == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    survey_add_pointer(&text, budget->quantity, budget->item);
    return text_end(&text, length);
}

size_t ingle_length_budget_step_count(const ingle_length_budget *budget)
{
    return budget->step_count;
}

const ingle_uncertainty_step *ingle_length_budget_step_at(const ingle_length_budget *budget,
                                                          size_t index)
{
    return index < budget->step_count
               ? &budget->assessment->reckoning.steps[budget->first_step + index]
               : NULL;
}

size_t ingle_assessment_count(const ingle_assessment *assessment)
{
    return assessment->conformance_count;
}

const ingle_conformance *ingle_assessment_at(const ingle_assessment *assessment, size_t index)
{
    return index < assessment->conformance_count ? &assessment->conformances[index] : NULL;
}
