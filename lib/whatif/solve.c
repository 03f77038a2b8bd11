/* SPDX-License-Identifier: MIT */
#include "whatif/solve.h"

#include "base/memory.h"

#include <string.h>

#define UNJUDGED UINT32_MAX

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_solution_new(const ingle_allocator *allocator, ingle_solution **solution)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_solution *made = solution == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made != NULL) {
        *solution = made;
    }
    return status;
}

void ingle_solution_free(ingle_solution *solution)
{
    if (solution == NULL) {
        return;
    }
    ingle_allocator allocator = solution->allocator;
    allocator_free(&allocator, solution->intervals);
    allocator_free(&allocator, solution->asides);
    allocator_free(&allocator, solution->failures);
    allocator_free(&allocator, solution);
}

static void clear(ingle_solution *solution)
{
    solution->range = (ingle_range){.size = 0};
    solution->interval_count = 0;
    solution->aside_count = 0;
    solution->recorded = false;
    solution->does_now = false;
    solution->error_text[0] = '\0';
}

/* ---- what fails at a value ------------------------------------------------------------------ */

struct solving {
    ingle_solution *solution;
    struct stepping stepping;
    bool strict;
};

static bool fails(const struct solving *solving, const ingle_finding *finding)
{
    ingle_verdict least = solving->strict ? INGLE_TOO_CLOSE : INGLE_FAILS;
    return ingle_finding_verdict(finding) >= least && stepping_asks(&solving->stepping, finding);
}

/* Ids are constants: the same matter's is the same pointer. */
static struct aside *find_aside(const ingle_solution *solution, const ingle_finding *finding)
{
    for (size_t i = 0; i < solution->aside_count; i++) {
        struct aside *aside = &solution->asides[i];
        if (ingle_rule_id(aside->rule) == ingle_rule_id(ingle_finding_rule(finding)) &&
            aside->standard == ingle_finding_standard(finding) &&
            aside->quantity == ingle_finding_quantity(finding) &&
            aside->item == ingle_finding_item(finding)) {
            return aside;
        }
    }
    return NULL;
}

static bool judges_range(const struct solving *solving, const ingle_finding *finding)
{
    const ingle_range *range = &solving->stepping.range;
    return ingle_finding_quantity(finding) == range->quantity &&
           ingle_finding_item(finding) == range->item;
}

/* Two readings of a rule may judge the same thing: the margin is that of the worse. */
static void note_aside(struct aside *aside, const ingle_finding *finding)
{
    ingle_amount margin;
    int64_t missed = ingle_finding_margin(finding, &margin) ? margin.value : 0;
    if (!aside->failed || missed < aside->margin_here) {
        aside->margin_here = missed;
    }
    aside->failed = true;
}

static ingle_status add_aside(struct solving *solving, const ingle_finding *finding)
{
    ingle_solution *solution = solving->solution;
    if (!array_reserve(&solution->allocator, (void **)&solution->asides,
                       &solution->aside_capacity, solution->aside_count,
                       sizeof *solution->asides)) {
        return INGLE_ERROR_MEMORY;
    }
    struct aside *aside = &solution->asides[solution->aside_count++];
    *aside = (struct aside){.rule = ingle_finding_rule(finding),
                            .standard = ingle_finding_standard(finding),
                            .quantity = ingle_finding_quantity(finding),
                            .item = ingle_finding_item(finding),
                            .moved = judges_range(solving, finding)};
    note_aside(aside, finding);
    return INGLE_OK;
}

/* Keeps only the findings that failed at this value, too, and sees whether they went with it. */
static void drop_asides(ingle_solution *solution)
{
    size_t kept = 0;
    for (size_t i = 0; i < solution->aside_count; i++) {
        struct aside aside = solution->asides[i];
        if (aside.failed) {
            aside.moved = aside.moved || (aside.judged && aside.margin != aside.margin_here);
            aside.margin = aside.margin_here;
            aside.judged = true;
            aside.failed = false;
            solution->asides[kept++] = aside;
        }
    }
    solution->aside_count = kept;
}

static ingle_status look(struct solving *solving, bool first, uint32_t *failures)
{
    const ingle_report *report = solving->stepping.report;
    size_t count = ingle_report_finding_count(report);
    *failures = 0;
    for (size_t i = 0; i < count; i++) {
        const ingle_finding *finding = ingle_report_finding_at(report, i);
        if (!fails(solving, finding)) {
            continue;
        }
        struct aside *aside = find_aside(solving->solution, finding);
        if (aside != NULL) {
            *failures += aside->failed ? 0 : 1; /* two rows on the same thing count once */
            note_aside(aside, finding);
        } else {
            *failures += 1;
            if (first && add_aside(solving, finding) != INGLE_OK) {
                return INGLE_ERROR_MEMORY;
            }
        }
    }
    drop_asides(solving->solution);
    return INGLE_OK;
}

/* ---- all values ----------------------------------------------------------------------------- */

static ingle_status reserve_failures(ingle_solution *solution, size_t count)
{
    if (count <= solution->failure_capacity) {
        return INGLE_OK;
    }
    uint32_t *made = allocator_new(&solution->allocator, count * sizeof *made);
    if (made == NULL) {
        return INGLE_ERROR_MEMORY;
    }
    allocator_free(&solution->allocator, solution->failures);
    solution->failures = made;
    solution->failure_capacity = count;
    return INGLE_OK;
}

static ingle_status look_at_all(struct solving *solving)
{
    ingle_solution *solution = solving->solution;
    struct stepping *stepping = &solving->stepping;
    bool first = true;
    for (size_t i = 0; i < stepping->count; i++) {
        ingle_status status = stepping_judge(stepping, stepping_value(stepping, i).value);
        if (status == INGLE_OK && stepping->unjudged) {
            solution->failures[i] = UNJUDGED;
            continue;
        }
        if (status == INGLE_OK) {
            status = look(solving, first, &solution->failures[i]);
        }
        if (status != INGLE_OK) {
            return status;
        }
        first = false;
    }
    return INGLE_OK;
}

/* How many failures a value that does has: those that are none of this quantity's doing. */
static uint32_t failures_aside(const ingle_solution *solution)
{
    for (size_t i = 0; i < solution->aside_count; i++) {
        if (solution->asides[i].moved) {
            return UNJUDGED - 1; /* this one fails everywhere: no value does */
        }
    }
    return (uint32_t)solution->aside_count;
}

/* The rule that stops an interval at a value beside it. */
static ingle_status find_obstacle(struct solving *solving, size_t index, const ingle_rule **rule,
                                  const ingle_standard **standard)
{
    struct stepping *stepping = &solving->stepping;
    *rule = NULL;
    *standard = NULL;
    if (index >= stepping->count) {
        return INGLE_OK;
    }
    ingle_status status = stepping_judge(stepping, stepping_value(stepping, index).value);
    size_t count = status == INGLE_OK ? ingle_report_finding_count(stepping->report) : 0;
    for (size_t i = 0; i < count && *rule == NULL; i++) {
        const ingle_finding *finding = ingle_report_finding_at(stepping->report, i);
        if (fails(solving, finding) && find_aside(solving->solution, finding) == NULL) {
            *rule = ingle_finding_rule(finding);
            *standard = ingle_finding_standard(finding);
        }
    }
    return status;
}

static ingle_status add_interval(struct solving *solving, size_t first, size_t last)
{
    ingle_solution *solution = solving->solution;
    if (!array_reserve(&solution->allocator, (void **)&solution->intervals,
                       &solution->interval_capacity, solution->interval_count,
                       sizeof *solution->intervals)) {
        return INGLE_ERROR_MEMORY;
    }
    ingle_interval *interval = &solution->intervals[solution->interval_count++];
    interval->least = stepping_value(&solving->stepping, first);
    interval->most = stepping_value(&solving->stepping, last);
    ingle_status status =
        find_obstacle(solving, first - 1, &interval->below, &interval->below_standard);
    return status == INGLE_OK ? find_obstacle(solving, last + 1, &interval->above,
                                              &interval->above_standard)
                              : status;
}

static ingle_status find_intervals(struct solving *solving)
{
    const ingle_solution *solution = solving->solution;
    uint32_t aside = failures_aside(solution);
    size_t count = solving->stepping.count;
    ingle_status status = INGLE_OK;
    for (size_t i = 0; i < count && status == INGLE_OK; i++) {
        size_t first = i;
        while (i < count && solution->failures[i] == aside) {
            i++;
        }
        if (i > first) {
            status = add_interval(solving, first, i - 1);
        }
    }
    return status;
}

/* ---- the value as surveyed ------------------------------------------------------------------ */

static ingle_status judge_now(struct solving *solving)
{
    ingle_solution *solution = solving->solution;
    struct stepping *stepping = &solving->stepping;
    const ingle_range *range = &stepping->range;
    solution->recorded = ingle_survey_get(stepping->question.survey, range->quantity, range->item,
                                          &solution->now, NULL) != 0;
    if (!solution->recorded) {
        return INGLE_OK;
    }
    ingle_status status = stepping_judge(stepping, solution->now.value);
    solution->does_now = status == INGLE_OK && !stepping->unjudged;
    for (size_t i = 0; solution->does_now && i < ingle_report_finding_count(stepping->report);
         i++) {
        const ingle_finding *finding = ingle_report_finding_at(stepping->report, i);
        const struct aside *aside = find_aside(solution, finding);
        solution->does_now = !fails(solving, finding) || (aside != NULL && !aside->moved);
    }
    return status;
}

/* Findings that fail everywhere through this quantity are no bystanders. */
static void forget_moved(ingle_solution *solution)
{
    size_t kept = 0;
    for (size_t i = 0; i < solution->aside_count; i++) {
        if (!solution->asides[i].moved) {
            solution->asides[kept++] = solution->asides[i];
        }
    }
    solution->aside_count = kept;
}

/* ---- solving -------------------------------------------------------------------------------- */

static ingle_status solve(struct solving *solving)
{
    ingle_solution *solution = solving->solution;
    ingle_status status = reserve_failures(solution, solving->stepping.count);
    if (status == INGLE_OK) {
        status = look_at_all(solving);
    }
    if (status == INGLE_OK) {
        status = find_intervals(solving);
    }
    if (status == INGLE_OK) {
        status = judge_now(solving);
    }
    forget_moved(solution);
    solution->range = solving->stepping.range;
    if (status == INGLE_ERROR_MEMORY) {
        stepping_refuse(solution->error_text, status, NULL);
    }
    return status;
}

ingle_status solve_question(const struct question *question, const ingle_range *range, bool strict,
                            ingle_solution *solution)
{
    struct solving solving = {.solution = solution, .strict = strict};
    clear(solution);
    ingle_status status = stepping_start(&solving.stepping, &solution->allocator, question, range,
                                         solution->error_text);
    if (status == INGLE_OK) {
        status = solve(&solving);
    }
    stepping_end(&solving.stepping);
    if (status != INGLE_OK) {
        solution->interval_count = 0;
        solution->aside_count = 0;
        solution->range.size = 0;
    }
    return status;
}

ingle_status solve_take_options(ingle_solve_options *taken, const ingle_solve_options *given)
{
    ingle_status status = options_take(taken, sizeof *taken, given);
    return status == INGLE_OK && taken->reserved != 0 ? INGLE_ERROR_STRUCT_NEWER : status;
}

ingle_status ingle_solve(const ingle_survey *survey, const ingle_standard *const *standards,
                         size_t standard_count, const ingle_check_options *check,
                         const ingle_range *range, const ingle_solve_options *options,
                         ingle_solution *solution)
{
    ingle_solve_options taken;
    if (solution == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    clear(solution);
    ingle_status status = solve_take_options(&taken, options);
    if (status != INGLE_OK) {
        return stepping_refuse(solution->error_text, status, NULL);
    }
    struct question question = {survey, standards, standard_count, check, taken.rule};
    return solve_question(&question, range, taken.strict != 0, solution);
}

/* ---- reading it ----------------------------------------------------------------------------- */

const char *ingle_solution_error_text(const ingle_solution *solution)
{
    return solution->error_text;
}

void ingle_solution_range(const ingle_solution *solution, ingle_range *range)
{
    *range = solution->range;
}

size_t ingle_solution_interval_count(const ingle_solution *solution)
{
    return solution->interval_count;
}

ingle_status ingle_solution_interval_at(const ingle_solution *solution, size_t index,
                                        ingle_interval *interval)
{
    if (solution == NULL || interval == NULL || index >= solution->interval_count) {
        return INGLE_ERROR_ARGUMENT;
    }
    *interval = solution->intervals[index];
    return INGLE_OK;
}

int ingle_solution_now(const ingle_solution *solution, ingle_amount *amount)
{
    if (solution->recorded) {
        *amount = solution->now;
    }
    return solution->recorded;
}

int ingle_solution_does_now(const ingle_solution *solution)
{
    return solution->does_now;
}

/* The value of an interval nearest to the one as surveyed, on one side of it. */
static bool nearest_within(const ingle_solution *solution, const ingle_interval *interval,
                           int32_t direction, int64_t *value)
{
    int64_t now = solution->now.value;
    int64_t step = solution->range.step;
    if (direction > 0) {
        int64_t next = now - now % step + step;
        *value = interval->least.value > next ? interval->least.value : next;
        return *value <= interval->most.value;
    }
    int64_t last = now % step == 0 ? now - step : now - now % step;
    *value = interval->most.value < last ? interval->most.value : last;
    return *value >= interval->least.value;
}

int ingle_solution_nearest(const ingle_solution *solution, int32_t direction,
                           ingle_amount *amount)
{
    size_t count = solution->interval_count;
    if (!solution->recorded || (direction != 1 && direction != -1)) {
        return 0;
    }
    for (size_t i = 0; i < count; i++) {
        size_t place = direction > 0 ? i : count - 1 - i;
        int64_t value;
        if (nearest_within(solution, &solution->intervals[place], direction, &value)) {
            *amount = solution->now;
            amount->value = value;
            return 1;
        }
    }
    return 0;
}

size_t ingle_solution_aside_count(const ingle_solution *solution)
{
    return solution->aside_count;
}

const ingle_rule *ingle_solution_aside_at(const ingle_solution *solution, size_t index)
{
    return index < solution->aside_count ? solution->asides[index].rule : NULL;
}

const ingle_standard *ingle_solution_aside_standard(const ingle_solution *solution, size_t index)
{
    return index < solution->aside_count ? solution->asides[index].standard : NULL;
}

const ingle_quantity *ingle_solution_aside_quantity(const ingle_solution *solution, size_t index,
                                                    size_t *item)
{
    if (index >= solution->aside_count) {
        return NULL;
    }
    if (item != NULL) {
        *item = solution->asides[index].item;
    }
    return solution->asides[index].quantity;
}
