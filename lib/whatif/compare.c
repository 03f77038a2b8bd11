/* SPDX-License-Identifier: MIT */
#include "whatif/compare.h"

#include "base/memory.h"

#include <stdbool.h>

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_comparison_new(const ingle_allocator *allocator, ingle_comparison **comparison)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_comparison *made =
        comparison == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made != NULL) {
        *comparison = made;
    }
    return status;
}

static void clear(ingle_comparison *comparison)
{
    allocator_free(&comparison->allocator, comparison->cells);
    comparison->cells = NULL;
    comparison->report = NULL;
    comparison->line_count = 0;
}

void ingle_comparison_free(ingle_comparison *comparison)
{
    if (comparison == NULL) {
        return;
    }
    clear(comparison);
    ingle_allocator allocator = comparison->allocator;
    allocator_free(&allocator, comparison->lines);
    allocator_free(&allocator, comparison);
}

/* ---- the layout ----------------------------------------------------------------------------- */

/* Every finding is of a standard that its report has. */
static size_t column_of(const ingle_comparison *comparison, const ingle_finding *finding)
{
    size_t column = 0;
    while (ingle_comparison_standard_at(comparison, column) != ingle_finding_standard(finding)) {
        column++;
    }
    return column;
}

static bool is_on_line(const ingle_finding *line, const ingle_finding *finding)
{
    return ingle_rule_id(ingle_finding_rule(line)) == ingle_rule_id(ingle_finding_rule(finding)) &&
           ingle_finding_quantity(line) == ingle_finding_quantity(finding) &&
           ingle_finding_item(line) == ingle_finding_item(finding);
}

static size_t line_of(const ingle_comparison *comparison, const ingle_finding *finding)
{
    size_t line = 0;
    while (line < comparison->line_count && !is_on_line(comparison->lines[line], finding)) {
        line++;
    }
    return line;
}

static bool add_line(ingle_comparison *comparison, const ingle_finding *finding)
{
    if (line_of(comparison, finding) < comparison->line_count) {
        return true;
    }
    if (!array_reserve(&comparison->allocator, (void **)&comparison->lines,
                       &comparison->line_capacity, comparison->line_count,
                       sizeof *comparison->lines)) {
        return false;
    }
    comparison->lines[comparison->line_count++] = finding;
    return true;
}

/* A rule that gives way to another row of its standard is no requirement. */
static bool counts(const ingle_finding *finding)
{
    return ingle_finding_verdict(finding) != INGLE_NOT_APPLICABLE;
}

static ingle_status lay_out(ingle_comparison *comparison)
{
    size_t count = ingle_report_finding_count(comparison->report);
    for (size_t i = 0; i < count; i++) {
        const ingle_finding *finding = ingle_report_finding_at(comparison->report, i);
        if (counts(finding) && !add_line(comparison, finding)) {
            return INGLE_ERROR_MEMORY;
        }
    }
    size_t columns = ingle_comparison_standard_count(comparison);
    size_t cells = comparison->line_count * columns;
    comparison->cells = allocator_new(&comparison->allocator,
                                      (cells > 0 ? cells : 1) * sizeof *comparison->cells);
    if (comparison->cells == NULL) {
        return INGLE_ERROR_MEMORY;
    }
    for (size_t i = 0; i < count; i++) {
        const ingle_finding *finding = ingle_report_finding_at(comparison->report, i);
        if (counts(finding)) {
            size_t place =
                line_of(comparison, finding) * columns + column_of(comparison, finding);
            const ingle_finding **cell = &comparison->cells[place];
            if (*cell == NULL || ingle_finding_verdict(*cell) < ingle_finding_verdict(finding)) {
                *cell = finding;
            }
        }
    }
    return INGLE_OK;
}

ingle_status ingle_compare(const ingle_report *report, ingle_comparison *comparison)
{
    if (report == NULL || comparison == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    clear(comparison);
    comparison->report = report;
    ingle_status status = lay_out(comparison);
    if (status != INGLE_OK) {
        clear(comparison);
    }
    return status;
}

/* ---- reading it ----------------------------------------------------------------------------- */

size_t ingle_comparison_standard_count(const ingle_comparison *comparison)
{
    return comparison->report == NULL ? 0 : ingle_report_standard_count(comparison->report);
}

const ingle_standard *ingle_comparison_standard_at(const ingle_comparison *comparison,
                                                   size_t column)
{
    return comparison->report == NULL ? NULL
                                      : ingle_report_standard_at(comparison->report, column);
}

ingle_verdict ingle_comparison_verdict(const ingle_comparison *comparison, size_t column)
{
    ingle_verdict gravest = INGLE_NOT_APPLICABLE;
    for (size_t line = 0; line < comparison->line_count; line++) {
        const ingle_finding *finding = ingle_comparison_finding_at(comparison, line, column);
        if (finding != NULL && ingle_finding_verdict(finding) > gravest) {
            gravest = ingle_finding_verdict(finding);
        }
    }
    return gravest;
}

size_t ingle_comparison_line_count(const ingle_comparison *comparison)
{
    return comparison->line_count;
}

const ingle_finding *ingle_comparison_finding_at(const ingle_comparison *comparison, size_t line,
                                                 size_t column)
{
    size_t columns = ingle_comparison_standard_count(comparison);
    return line < comparison->line_count && column < columns
               ? comparison->cells[line * columns + column]
               : NULL;
}

const ingle_finding *ingle_comparison_line_at(const ingle_comparison *comparison, size_t line)
{
    return line < comparison->line_count ? comparison->lines[line] : NULL;
}

/* ---- what changed --------------------------------------------------------------------------- */

const char *ingle_change_name(ingle_change change)
{
    static const char *const names[] = {"none", "added", "dropped", "required", "verdict"};
    return change >= INGLE_CHANGE_NONE && change <= INGLE_CHANGE_VERDICT ? names[change] : NULL;
}

static bool requires_the_same(const ingle_finding *one, const ingle_finding *other)
{
    ingle_amount a, b;
    int has_a = ingle_finding_required(one, &a), has_b = ingle_finding_required(other, &b);
    return has_a == has_b && (!has_a || a.value == b.value) &&
           ingle_finding_relation(one) == ingle_finding_relation(other);
}

ingle_change ingle_comparison_change_at(const ingle_comparison *comparison, size_t line,
                                        size_t column)
{
    if (column == 0 || column >= ingle_comparison_standard_count(comparison) ||
        line >= comparison->line_count) {
        return INGLE_CHANGE_NONE;
    }
    const ingle_finding *before = ingle_comparison_finding_at(comparison, line, column - 1);
    const ingle_finding *after = ingle_comparison_finding_at(comparison, line, column);
    if (before == NULL || after == NULL) {
        return after != NULL    ? INGLE_CHANGE_ADDED
               : before != NULL ? INGLE_CHANGE_DROPPED
                                : INGLE_CHANGE_NONE;
    }
    if (ingle_finding_verdict(before) != ingle_finding_verdict(after)) {
        return INGLE_CHANGE_VERDICT;
    }
    return requires_the_same(before, after) ? INGLE_CHANGE_NONE : INGLE_CHANGE_REQUIRED;
}
