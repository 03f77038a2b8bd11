/* SPDX-License-Identifier: MIT */
/*
 * Answers to what would happen: solutions, frontiers, sweeps and comparisons as JSON.
 */
#include "json.h"
#include "writing/amount.h"

#include <stdio.h>
#include <string.h>

/* ---- what all answers share ------------------------------------------------------------------ */

static ingle_status refuse(ingle_json *json, ingle_status status, const char *sentence)
{
    return ingle_json_error(json, status,
                            sentence != NULL && sentence[0] != '\0' ? sentence : NULL);
}

static ingle_status refuse_unread(ingle_json *json)
{
    return refuse(json, INGLE_ERROR_ARGUMENT, "No survey document was read before.");
}

static ingle_status finish(ingle_json *json)
{
    return json_finish(&json->writer) ? INGLE_OK : INGLE_ERROR_MEMORY;
}

/* The unit of what belongs to no single standard: the document's, or the first standard's. */
static ingle_format shared_format(const ingle_json *json)
{
    const ingle_unit *unit =
        json->unit != NULL ? json->unit : ingle_standard_unit(json->standards[0]);
    return (ingle_format){.size = sizeof(ingle_format), .unit = unit};
}

static ingle_format format_of(const ingle_json *json, const ingle_standard *standard)
{
    const ingle_unit *unit = json->unit != NULL ? json->unit : ingle_standard_unit(standard);
    return (ingle_format){.size = sizeof(ingle_format), .unit = unit};
}

/* The JSON pointer of a quantity; SIZE_MAX is a whole group that nobody recorded. */
static void write_subject(struct json_writer *out, const char *name,
                          const ingle_quantity *quantity, size_t item)
{
    char pointer[160];
    if (ingle_quantity_repeats(quantity) && item == SIZE_MAX) {
        snprintf(pointer, sizeof pointer, "/survey/%s", ingle_quantity_group(quantity));
    } else if (ingle_quantity_repeats(quantity)) {
        snprintf(pointer, sizeof pointer, "/survey/%s/%zu/%s", ingle_quantity_group(quantity),
                 item, ingle_quantity_name(quantity));
    } else {
        snprintf(pointer, sizeof pointer, "/survey/%s/%s", ingle_quantity_group(quantity),
                 ingle_quantity_name(quantity));
    }
    json_text(out, name, pointer);
}

static void write_value(struct json_writer *out, const char *name, const ingle_range *range,
                        int64_t value, const ingle_format *format)
{
    ingle_amount amount;
    ingle_quantity_range(range->quantity, &amount, NULL);
    amount.value = value;
    json_amount_of(out, name, range->quantity, &amount, format);
}

static void write_range(struct json_writer *out, const ingle_range *range, const char *name,
                        const ingle_format *format)
{
    write_subject(out, name, range->quantity, range->item);
    json_text(out, "label", ingle_quantity_label(range->quantity));
    json_open_object(out, "range");
    write_value(out, "from", range, range->from, format);
    write_value(out, "to", range, range->to, format);
    ingle_dimension dimension = ingle_quantity_dimension(range->quantity);
    if (dimension != INGLE_CHOICE && dimension != INGLE_FLAG) {
        write_value(out, "step", range, range->step, format);
    }
    json_close_object(out);
}

static void write_rule(struct json_writer *out, const char *name, const ingle_rule *rule,
                       const ingle_standard *standard)
{
    if (rule == NULL) {
        return;
    }
    json_open_object(out, name);
    json_text(out, "standard", ingle_standard_id(standard));
    json_text(out, "rule", ingle_rule_id(rule));
    json_text(out, "section", ingle_rule_section(rule));
    json_close_object(out);
}

/* ---- ranges from texts ----------------------------------------------------------------------- */

/* The unit of bare numbers, as in documents: that of lengths, whose square is that of areas. */
static const ingle_unit *bare_unit(const ingle_json *json, ingle_dimension dimension)
{
    ingle_amount kind = {.dimension = dimension};
    ingle_format format = {.size = sizeof format, .unit = json->unit};
    bool takes_unit = dimension == INGLE_LENGTH || dimension == INGLE_AREA;
    return json->unit != NULL && takes_unit ? ingle_amount_unit(&kind, &format) : NULL;
}

static ingle_status read_bound(ingle_json *json, const char *name, const char *text,
                               const ingle_quantity *quantity, int64_t *value)
{
    ingle_amount amount;
    size_t position = 0;
    char sentence[512];
    if (text == NULL) {
        return INGLE_OK;
    }
    ingle_dimension dimension = ingle_quantity_dimension(quantity);
    ingle_status status = ingle_amount_parse(text, strlen(text), dimension,
                                             bare_unit(json, dimension), &amount, &position);
    if (status >= 0) {
        *value = amount.value;
        return INGLE_OK;
    }
    snprintf(sentence, sizeof sentence, "%s \"%.200s\", at its byte %zu: %s", name, text,
             position + 1, ingle_status_text(status));
    return refuse(json, status, sentence);
}

ingle_status ingle_json_range(ingle_json *json, const char *path, const char *from, const char *to,
                              const char *step, ingle_range *range)
{
    if (json == NULL || path == NULL || range == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (!json->read) {
        return refuse_unread(json);
    }
    ingle_range made = {.size = sizeof made, .metric = json->how.metric_remedies};
    ingle_status status =
        ingle_survey_find(json->reader.survey, path, &made.quantity, &made.item);
    if (status != INGLE_OK) {
        return refuse(json, status, ingle_survey_error_text(json->reader.survey));
    }
    ingle_range all = made;
    ingle_range_settle(&all, NULL);
    made.from = from == NULL && to != NULL ? all.from : 0;
    made.to = to == NULL && from != NULL ? all.to : 0;
    status = read_bound(json, "from", from, made.quantity, &made.from);
    if (status == INGLE_OK) {
        status = read_bound(json, "to", to, made.quantity, &made.to);
    }
    if (status == INGLE_OK && step != NULL) {
        status = read_bound(json, "step", step, made.quantity, &made.step);
        if (status == INGLE_OK && made.step <= 0) {
            status = refuse(json, INGLE_ERROR_RANGE, NULL);
        }
    }
    if (status == INGLE_OK) {
        *range = made;
    }
    return status;
}

/* ---- solutions ------------------------------------------------------------------------------- */

static void write_intervals(struct json_writer *out, const ingle_solution *solution,
                            const ingle_format *format)
{
    ingle_range range;
    ingle_interval interval;
    ingle_solution_range(solution, &range);
    json_open_array(out, "works");
    for (size_t i = 0; ingle_solution_interval_at(solution, i, &interval) == INGLE_OK; i++) {
        json_open_object(out, NULL);
        write_value(out, "from", &range, interval.least.value, format);
        write_value(out, "to", &range, interval.most.value, format);
        write_rule(out, "below", interval.below, interval.below_standard);
        write_rule(out, "above", interval.above, interval.above_standard);
        json_close_object(out);
    }
    json_close_array(out);
}

static void write_nearest(struct json_writer *out, const char *name,
                          const ingle_solution *solution, int32_t direction,
                          const ingle_format *format)
{
    ingle_range range;
    ingle_amount now, nearest;
    ingle_solution_range(solution, &range);
    if (!ingle_solution_now(solution, &now) ||
        !ingle_solution_nearest(solution, direction, &nearest)) {
        return;
    }
    json_open_object(out, name);
    write_value(out, "to", &range, nearest.value, format);
    if (ingle_dimension_is_amount(now.dimension)) {
        write_value(out, "change", &range, nearest.value - now.value, format);
    }
    json_close_object(out);
}

static void write_now(struct json_writer *out, const ingle_solution *solution,
                      const ingle_format *format)
{
    ingle_range range;
    ingle_amount now;
    ingle_solution_range(solution, &range);
    if (!ingle_solution_now(solution, &now)) {
        return;
    }
    json_open_object(out, "surveyed");
    write_value(out, "value", &range, now.value, format);
    json_boolean(out, "works", ingle_solution_does_now(solution) != 0);
    json_close_object(out);
    json_open_object(out, "nearest");
    write_nearest(out, "below", solution, -1, format);
    write_nearest(out, "above", solution, 1, format);
    json_close_object(out);
}

static void write_asides(struct json_writer *out, const ingle_solution *solution)
{
    json_open_array(out, "aside");
    for (size_t i = 0; i < ingle_solution_aside_count(solution); i++) {
        size_t item;
        const ingle_quantity *quantity = ingle_solution_aside_quantity(solution, i, &item);
        const ingle_rule *rule = ingle_solution_aside_at(solution, i);
        json_open_object(out, NULL);
        json_text(out, "standard", ingle_standard_id(ingle_solution_aside_standard(solution, i)));
        json_text(out, "rule", ingle_rule_id(rule));
        json_text(out, "section", ingle_rule_section(rule));
        write_subject(out, "subject", quantity, item);
        json_close_object(out);
    }
    json_close_array(out);
}

ingle_status ingle_json_solution(ingle_json *json, const ingle_solution *solution)
{
    if (json == NULL || solution == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_range range;
    ingle_solution_range(solution, &range);
    if (!json->read || range.size == 0) {
        return refuse_unread(json);
    }
    struct json_writer *out = &json->writer;
    ingle_format format = shared_format(json);
    json_start(out, false);
    json_open_object(out, NULL);
    write_range(out, &range, "quantity", &format);
    write_now(out, solution, &format);
    write_intervals(out, solution, &format);
    write_asides(out, solution);
    json_text(out, "ingle", ingle_version());
    json_close_object(out);
    return finish(json);
}

static void write_frontier_value(struct json_writer *out, const ingle_frontier *frontier,
                                 size_t index, const ingle_format *format)
{
    ingle_range with;
    ingle_amount value;
    ingle_frontier_with(frontier, &with);
    ingle_frontier_value_at(frontier, index, &value);
    json_open_object(out, NULL);
    write_value(out, "value", &with, value.value, format);
    write_intervals(out, ingle_frontier_solution_at(frontier, index), format);
    json_close_object(out);
}

ingle_status ingle_json_frontier(ingle_json *json, const ingle_frontier *frontier)
{
    if (json == NULL || frontier == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (!json->read || ingle_frontier_count(frontier) == 0) {
        return refuse_unread(json);
    }
    struct json_writer *out = &json->writer;
    ingle_format format = shared_format(json);
    ingle_range range;
    json_start(out, false);
    json_open_object(out, NULL);
    ingle_solution_range(ingle_frontier_solution_at(frontier, 0), &range);
    write_range(out, &range, "quantity", &format);
    json_open_object(out, "with");
    ingle_frontier_with(frontier, &range);
    write_range(out, &range, "quantity", &format);
    json_close_object(out);
    json_open_array(out, "frontier");
    for (size_t i = 0; i < ingle_frontier_count(frontier); i++) {
        write_frontier_value(out, frontier, i, &format);
    }
    json_close_array(out);
    json_text(out, "ingle", ingle_version());
    json_close_object(out);
    return finish(json);
}

/* ---- sweeps ---------------------------------------------------------------------------------- */

static void write_cell(struct json_writer *out, const ingle_sweep *sweep, size_t value,
                       size_t line, const ingle_format *format)
{
    ingle_sweep_cell cell;
    ingle_amount at;
    ingle_range range;
    const ingle_quantity *quantity = ingle_sweep_line_quantity(sweep, line);
    if (ingle_sweep_cell_at(sweep, value, line, &cell) != INGLE_OK || cell.rule == NULL) {
        return;
    }
    ingle_sweep_range(sweep, &range);
    ingle_sweep_value_at(sweep, value, &at);
    json_open_object(out, NULL);
    write_value(out, "value", &range, at.value, format);
    json_text(out, "section", ingle_rule_section(cell.rule));
    json_text(out, "verdict", ingle_verdict_name(cell.verdict));
    json_text(out, "relation", ingle_relation_name(cell.relation));
    if (cell.has_measured) {
        json_amount_of(out, "measured", quantity, &cell.measured, format);
    }
    if (cell.has_required) {
        json_amount_of(out, "required", quantity, &cell.required, format);
    }
    if (cell.has_margin) {
        json_amount_of(out, "margin", quantity, &cell.margin, format);
    }
    json_close_object(out);
}

static void write_line(const ingle_json *json, struct json_writer *out, const ingle_sweep *sweep,
                       size_t line)
{
    ingle_format format = format_of(json, ingle_sweep_line_standard(sweep, line));
    const ingle_rule *rule = ingle_sweep_line_rule(sweep, line);
    json_open_object(out, NULL);
    json_text(out, "standard", ingle_standard_id(ingle_sweep_line_standard(sweep, line)));
    json_text(out, "rule", ingle_rule_id(rule));
    json_text(out, "label", ingle_rule_label(rule));
    write_subject(out, "subject", ingle_sweep_line_quantity(sweep, line),
                  ingle_sweep_line_item(sweep, line));
    json_open_array(out, "values");
    for (size_t value = 0; value < ingle_sweep_value_count(sweep); value++) {
        write_cell(out, sweep, value, line, &format);
    }
    json_close_array(out);
    json_close_object(out);
}

ingle_status ingle_json_sweep(ingle_json *json, const ingle_sweep *sweep)
{
    if (json == NULL || sweep == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_range range;
    ingle_sweep_range(sweep, &range);
    if (!json->read || range.size == 0) {
        return refuse_unread(json);
    }
    struct json_writer *out = &json->writer;
    ingle_format format = shared_format(json);
    json_start(out, false);
    json_open_object(out, NULL);
    write_range(out, &range, "quantity", &format);
    json_open_array(out, "lines");
    for (size_t line = 0; line < ingle_sweep_line_count(sweep); line++) {
        write_line(json, out, sweep, line);
    }
    json_close_array(out);
    json_text(out, "ingle", ingle_version());
    json_close_object(out);
    return finish(json);
}

/* ---- comparisons ----------------------------------------------------------------------------- */

static void write_compared(const ingle_json *json, struct json_writer *out,
                           const ingle_comparison *comparison, size_t line, size_t column)
{
    const ingle_finding *finding = ingle_comparison_finding_at(comparison, line, column);
    const ingle_standard *standard = ingle_comparison_standard_at(comparison, column);
    ingle_amount required;
    json_open_object(out, NULL);
    json_text(out, "standard", ingle_standard_id(standard));
    if (finding != NULL) {
        ingle_format format = format_of(json, standard);
        json_text(out, "section", ingle_rule_section(ingle_finding_rule(finding)));
        json_text(out, "verdict", ingle_verdict_name(ingle_finding_verdict(finding)));
        json_text(out, "relation", ingle_relation_name(ingle_finding_relation(finding)));
        if (ingle_finding_required(finding, &required)) {
            json_amount_of(out, "required", ingle_finding_quantity(finding), &required, &format);
        }
    }
    if (column > 0) {
        json_text(out, "change",
                  ingle_change_name(ingle_comparison_change_at(comparison, line, column)));
    }
    json_close_object(out);
}

static void write_comparison_line(const ingle_json *json, struct json_writer *out,
                                  const ingle_comparison *comparison, size_t line)
{
    const ingle_finding *first = ingle_comparison_line_at(comparison, line);
    ingle_format format = shared_format(json);
    json_open_object(out, NULL);
    json_text(out, "rule", ingle_rule_id(ingle_finding_rule(first)));
    json_text_from(out, "label", json_finding_text, first, INGLE_FINDING_LABEL, &format);
    json_text_from(out, "subject", json_finding_text, first, INGLE_FINDING_SUBJECT, &format);
    json_open_array(out, "by");
    for (size_t i = 0; i < ingle_comparison_standard_count(comparison); i++) {
        write_compared(json, out, comparison, line, i);
    }
    json_close_array(out);
    json_close_object(out);
}

ingle_status ingle_json_comparison(ingle_json *json, const ingle_comparison *comparison)
{
    if (json == NULL || comparison == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (!json->read) {
        return refuse_unread(json);
    }
    struct json_writer *out = &json->writer;
    json_start(out, false);
    json_open_object(out, NULL);
    if (json->id[0] != '\0') {
        json_text(out, "id", json->id);
    }
    json_open_array(out, "standards");
    for (size_t i = 0; i < ingle_comparison_standard_count(comparison); i++) {
        json_open_object(out, NULL);
        json_text(out, "id", ingle_standard_id(ingle_comparison_standard_at(comparison, i)));
        json_text(out, "title", ingle_standard_title(ingle_comparison_standard_at(comparison, i)));
        json_text(out, "verdict", ingle_verdict_name(ingle_comparison_verdict(comparison, i)));
        json_close_object(out);
    }
    json_close_array(out);
    json_open_array(out, "lines");
    for (size_t i = 0; i < ingle_comparison_line_count(comparison); i++) {
        write_comparison_line(json, out, comparison, i);
    }
    json_close_array(out);
    json_text(out, "ingle", ingle_version());
    json_close_object(out);
    return finish(json);
}
