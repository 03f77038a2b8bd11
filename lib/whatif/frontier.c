/* SPDX-License-Identifier: MIT */
#include "whatif/solve.h"

#include "base/memory.h"

#include <string.h>

enum { FRONTIER_PARTS = 40 };

ingle_status ingle_frontier_new(const ingle_allocator *allocator, ingle_frontier **frontier)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_frontier *made = frontier == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made != NULL) {
        *frontier = made;
    }
    return status;
}

/* Gives back what was found; the sentence on an error stays. */
static void forget(ingle_frontier *frontier)
{
    for (size_t i = 0; i < frontier->count; i++) {
        ingle_solution_free(frontier->solutions[i]);
    }
    allocator_free(&frontier->allocator, frontier->solutions);
    allocator_free(&frontier->allocator, frontier->values);
    frontier->solutions = NULL;
    frontier->values = NULL;
    frontier->count = 0;
    frontier->with = (ingle_range){.size = 0};
}

static void clear(ingle_frontier *frontier)
{
    forget(frontier);
    frontier->error_text[0] = '\0';
}

void ingle_frontier_free(ingle_frontier *frontier)
{
    if (frontier == NULL) {
        return;
    }
    clear(frontier);
    ingle_allocator allocator = frontier->allocator;
    allocator_free(&allocator, frontier);
}

/* The next coarser step that stays on the tape: twice as many 1/16 in, or 1, 2, 5, 10 mm. */
static int64_t coarser(int64_t step, int64_t finest, bool metric)
{
    if (!metric) {
        return step * 2;
    }
    int64_t leading = step / finest;
    while (leading >= 10) {
        leading /= 10;
    }
    return leading == 2 ? step / 2 * 5 : step * 2;
}

/* Without a step of its own the range is parted into some forty. */
static ingle_status settle_with(ingle_range *with)
{
    bool coarse = with->step == 0;
    ingle_status status = ingle_range_settle(with, NULL);
    ingle_dimension dimension =
        status == INGLE_OK ? ingle_quantity_dimension(with->quantity) : INGLE_CHOICE;
    if (status != INGLE_OK || !coarse || dimension == INGLE_CHOICE || dimension == INGLE_FLAG) {
        return status;
    }
    int64_t finest = with->step;
    while ((with->to - with->from) / with->step > FRONTIER_PARTS) {
        with->step = coarser(with->step, finest, with->metric != 0);
    }
    return ingle_range_settle(with, NULL);
}

static bool reserve(ingle_frontier *frontier, size_t count)
{
    frontier->values = allocator_new(&frontier->allocator, count * sizeof *frontier->values);
    frontier->solutions = allocator_new(&frontier->allocator, count * sizeof *frontier->solutions);
    return frontier->values != NULL && frontier->solutions != NULL;
}

/* Solves at one value of the other quantity, and adds it. */
static ingle_status add(ingle_frontier *frontier, struct stepping *stepping, size_t index,
                        const ingle_range *range, bool strict)
{
    ingle_solution *solution = NULL;
    struct question question = stepping->question;
    ingle_amount value = stepping_value(stepping, index);
    ingle_status status = stepping_set(stepping, value.value);
    if (status != INGLE_OK) {
        return status;
    }
    status = ingle_solution_new(&frontier->allocator, &solution);
    if (status != INGLE_OK) {
        return stepping_refuse(frontier->error_text, status, NULL);
    }
    question.survey = stepping->survey;
    frontier->values[frontier->count] = value;
    frontier->solutions[frontier->count++] = solution;
    status = solve_question(&question, range, strict, solution);
    if (status != INGLE_OK) {
        memcpy(frontier->error_text, solution->error_text, sizeof frontier->error_text);
    }
    return status;
}

static ingle_status solve_all(ingle_frontier *frontier, const struct question *question,
                              const ingle_range *range, const ingle_range *with, bool strict)
{
    struct stepping stepping;
    ingle_range settled = *with;
    ingle_status status = settle_with(&settled);
    if (status != INGLE_OK) {
        return stepping_refuse(frontier->error_text, status,
                               with->quantity == NULL ? NULL : ingle_quantity_id(with->quantity));
    }
    status = stepping_start(&stepping, &frontier->allocator, question, &settled,
                            frontier->error_text);
    if (status == INGLE_OK && !reserve(frontier, stepping.count)) {
        status = stepping_refuse(frontier->error_text, INGLE_ERROR_MEMORY, NULL);
    }
    for (size_t i = 0; status == INGLE_OK && i < stepping.count; i++) {
        status = add(frontier, &stepping, i, range, strict);
    }
    stepping_end(&stepping);
    if (status == INGLE_OK) {
        frontier->with = settled;
    } else {
        forget(frontier);
    }
    return status;
}

ingle_status ingle_solve_with(const ingle_survey *survey, const ingle_standard *const *standards,
                              size_t standard_count, const ingle_check_options *check,
                              const ingle_range *range, const ingle_range *with,
                              const ingle_solve_options *options, ingle_frontier *frontier)
{
    ingle_solve_options taken;
    if (frontier == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    clear(frontier);
    ingle_status status = range == NULL || with == NULL ? INGLE_ERROR_ARGUMENT
                                                        : solve_take_options(&taken, options);
    if (status == INGLE_OK && range->quantity == with->quantity && range->item == with->item) {
        status = INGLE_ERROR_RANGE;
    }
    if (status != INGLE_OK) {
        return stepping_refuse(frontier->error_text, status, NULL);
    }
    struct question question = {survey, standards, standard_count, check, taken.rule};
    return solve_all(frontier, &question, range, with, taken.strict != 0);
}

const char *ingle_frontier_error_text(const ingle_frontier *frontier)
{
    return frontier->error_text;
}

size_t ingle_frontier_count(const ingle_frontier *frontier)
{
    return frontier->count;
}

ingle_status ingle_frontier_value_at(const ingle_frontier *frontier, size_t index,
                                     ingle_amount *amount)
{
    if (frontier == NULL || amount == NULL || index >= frontier->count) {
        return INGLE_ERROR_ARGUMENT;
    }
    *amount = frontier->values[index];
    return INGLE_OK;
}

const ingle_solution *ingle_frontier_solution_at(const ingle_frontier *frontier, size_t index)
{
    return index < frontier->count ? frontier->solutions[index] : NULL;
}

void ingle_frontier_with(const ingle_frontier *frontier, ingle_range *with)
{
    *with = frontier->with;
}
