/* SPDX-License-Identifier: MIT */
#include "whatif/sweep.h"

#include "base/memory.h"
#include "check/report.h"

#include <string.h>

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_sweep_new(const ingle_allocator *allocator, ingle_sweep **sweep)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_sweep *made = sweep == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made != NULL) {
        *sweep = made;
    }
    return status;
}

static void clear(ingle_sweep *sweep)
{
    for (size_t i = 0; i < sweep->line_count; i++) {
        allocator_free(&sweep->allocator, sweep->lines[i].cells);
    }
    sweep->line_count = 0;
    sweep->value_count = 0;
    sweep->range = (ingle_range){.size = 0};
    sweep->error_text[0] = '\0';
}

void ingle_sweep_free(ingle_sweep *sweep)
{
    if (sweep == NULL) {
        return;
    }
    clear(sweep);
    ingle_allocator allocator = sweep->allocator;
    allocator_free(&allocator, sweep->lines);
    allocator_free(&allocator, sweep);
}

/* ---- filling it ----------------------------------------------------------------------------- */

static bool is_line_of(const struct sweep_line *line, const ingle_finding *finding)
{
    return ingle_rule_id(line->rule) == ingle_rule_id(ingle_finding_rule(finding)) &&
           line->standard == ingle_finding_standard(finding) &&
           line->quantity == ingle_finding_quantity(finding) &&
           line->item == finding->item;
}

static struct sweep_line *add_line(ingle_sweep *sweep, const ingle_finding *finding)
{
    if (!array_reserve(&sweep->allocator, (void **)&sweep->lines, &sweep->line_capacity,
                       sweep->line_count, sizeof *sweep->lines)) {
        return NULL;
    }
    struct sweep_cell *cells =
        allocator_new(&sweep->allocator, sweep->value_count * sizeof *cells);
    if (cells == NULL) {
        return NULL;
    }
    struct sweep_line *line = &sweep->lines[sweep->line_count++];
    *line = (struct sweep_line){.rule = ingle_finding_rule(finding),
                                .standard = ingle_finding_standard(finding),
                                .quantity = ingle_finding_quantity(finding),
                                .item = finding->item,
                                .cells = cells};
    return line;
}

/* The line of a finding: most often the one after the last that was found. */
static struct sweep_line *line_of(ingle_sweep *sweep, const ingle_finding *finding, size_t *hint)
{
    for (size_t i = 0; i < sweep->line_count; i++) {
        size_t place = (*hint + i) % sweep->line_count;
        if (is_line_of(&sweep->lines[place], finding)) {
            *hint = place + 1;
            return &sweep->lines[place];
        }
    }
    return add_line(sweep, finding);
}

/* Where two rows of a standard judge the same thing, the graver finding is the line's. */
static void fill(struct sweep_cell *cell, const ingle_finding *finding)
{
    ingle_amount required, measured, margin;
    if (cell->rule != NULL && cell->verdict >= ingle_finding_verdict(finding)) {
        return;
    }
    *cell = (struct sweep_cell){.rule = ingle_finding_rule(finding),
                                .verdict = (int8_t)ingle_finding_verdict(finding),
                                .relation = (int8_t)ingle_finding_relation(finding)};
    cell->has_required = ingle_finding_required(finding, &required) != 0;
    cell->required = cell->has_required ? required.value : 0;
    cell->has_measured = ingle_finding_measured(finding, &measured) != 0;
    cell->measured = cell->has_measured ? measured.value : 0;
    cell->has_margin = ingle_finding_margin(finding, &margin) != 0;
    cell->margin = cell->has_margin ? margin.value : 0;
}

static ingle_status fill_value(ingle_sweep *sweep, const struct stepping *stepping, size_t value)
{
    size_t count = ingle_report_finding_count(stepping->report);
    size_t hint = 0;
    for (size_t i = 0; i < count; i++) {
        const ingle_finding *finding = ingle_report_finding_at(stepping->report, i);
        if (!stepping_asks(stepping, finding)) {
            continue;
        }
        struct sweep_line *line = line_of(sweep, finding, &hint);
        if (line == NULL) {
            return stepping_refuse(stepping->error_text, INGLE_ERROR_MEMORY, NULL);
        }
        fill(&line->cells[value], finding);
    }
    return INGLE_OK;
}

static bool is_same(const struct sweep_cell *one, const struct sweep_cell *other)
{
    return one->verdict == other->verdict && one->rule == other->rule &&
           one->has_required == other->has_required && one->has_margin == other->has_margin &&
           one->required == other->required && one->measured == other->measured &&
           one->margin == other->margin;
}

static bool changes(const ingle_sweep *sweep, const struct sweep_line *line)
{
    for (size_t i = 1; i < sweep->value_count; i++) {
        if (!is_same(&line->cells[0], &line->cells[i])) {
            return true;
        }
    }
    return false;
}

static void drop_unchanged(ingle_sweep *sweep)
{
    size_t kept = 0;
    for (size_t i = 0; i < sweep->line_count; i++) {
        if (changes(sweep, &sweep->lines[i])) {
            sweep->lines[kept++] = sweep->lines[i];
        } else {
            allocator_free(&sweep->allocator, sweep->lines[i].cells);
        }
    }
    sweep->line_count = kept;
}

static ingle_status run(ingle_sweep *sweep, struct stepping *stepping)
{
    sweep->range = stepping->range;
    sweep->value_count = stepping->count;
    for (size_t i = 0; i < stepping->count; i++) {
        ingle_status status = stepping_judge(stepping, stepping_value(stepping, i).value);
        if (status == INGLE_OK) {
            status = fill_value(sweep, stepping, i);
        }
        if (status != INGLE_OK) {
            return status;
        }
    }
    return INGLE_OK;
}

static ingle_status take_options(ingle_sweep_options *taken, const ingle_sweep_options *given)
{
    ingle_status status = options_take(taken, sizeof *taken, given);
    return status == INGLE_OK && taken->reserved != 0 ? INGLE_ERROR_STRUCT_NEWER : status;
}

ingle_status ingle_sweep_run(const ingle_survey *survey, const ingle_standard *const *standards,
                             size_t standard_count, const ingle_check_options *check,
                             const ingle_range *range, const ingle_sweep_options *options,
                             ingle_sweep *sweep)
{
    ingle_sweep_options taken;
    struct stepping stepping;
    if (sweep == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    clear(sweep);
    ingle_status status = take_options(&taken, options);
    if (status != INGLE_OK) {
        return stepping_refuse(sweep->error_text, status, NULL);
    }
    struct question question = {survey, standards, standard_count, check, taken.rule};
    char error_text[WHATIF_ERROR_TEXT_SIZE];
    status = stepping_start(&stepping, &sweep->allocator, &question, range, error_text);
    if (status == INGLE_OK) {
        status = run(sweep, &stepping);
    }
    if (status != INGLE_OK) {
        clear(sweep);
        memcpy(sweep->error_text, error_text, sizeof error_text);
    } else if (taken.with_unchanged == 0) {
        drop_unchanged(sweep);
    }
    stepping_end(&stepping);
    return status;
}

/* ---- reading it ----------------------------------------------------------------------------- */

const char *ingle_sweep_error_text(const ingle_sweep *sweep)
{
    return sweep->error_text;
}

void ingle_sweep_range(const ingle_sweep *sweep, ingle_range *range)
{
    *range = sweep->range;
}

size_t ingle_sweep_value_count(const ingle_sweep *sweep)
{
    return sweep->value_count;
}

ingle_status ingle_sweep_value_at(const ingle_sweep *sweep, size_t value, ingle_amount *amount)
{
    if (sweep == NULL || amount == NULL || value >= sweep->value_count) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_quantity_range(sweep->range.quantity, amount, NULL);
    amount->value = sweep->range.from + (int64_t)value * sweep->range.step;
    return INGLE_OK;
}

size_t ingle_sweep_line_count(const ingle_sweep *sweep)
{
    return sweep->line_count;
}

const ingle_standard *ingle_sweep_line_standard(const ingle_sweep *sweep, size_t line)
{
    return line < sweep->line_count ? sweep->lines[line].standard : NULL;
}

const ingle_rule *ingle_sweep_line_rule(const ingle_sweep *sweep, size_t line)
{
    return line < sweep->line_count ? sweep->lines[line].rule : NULL;
}

const ingle_quantity *ingle_sweep_line_quantity(const ingle_sweep *sweep, size_t line)
{
    return line < sweep->line_count ? sweep->lines[line].quantity : NULL;
}

size_t ingle_sweep_line_item(const ingle_sweep *sweep, size_t line)
{
    return line < sweep->line_count ? sweep->lines[line].item : SIZE_MAX;
}

ingle_status ingle_sweep_cell_at(const ingle_sweep *sweep, size_t value, size_t line,
                                 ingle_sweep_cell *cell)
{
    if (sweep == NULL || cell == NULL || value >= sweep->value_count ||
        line >= sweep->line_count) {
        return INGLE_ERROR_ARGUMENT;
    }
    const struct sweep_cell *found = &sweep->lines[line].cells[value];
    ingle_amount kind;
    ingle_quantity_range(sweep->lines[line].quantity, &kind, NULL);
    *cell = (ingle_sweep_cell){.rule = found->rule, .verdict = found->verdict,
                               .relation = found->relation,
                               .has_required = found->has_required,
                               .has_measured = found->has_measured,
                               .has_margin = found->has_margin,
                               .required = kind, .measured = kind, .margin = kind};
    cell->required.value = found->required;
    cell->measured.value = found->measured;
    cell->margin.value = found->margin;
    return INGLE_OK;
}
