/* SPDX-License-Identifier: MIT */
/*
 * The library's catalogues as arrays of objects.
 */
#include "writing/amount.h"
#include "writing/draft.h"
#include "json.h"

#include <string.h>

static ingle_format format_of(const ingle_standard *standard)
{
    ingle_format format = {.size = sizeof format};
    format.unit = standard != NULL ? ingle_standard_unit(standard) : NULL;
    return format;
}

/* ---- standards ------------------------------------------------------------------------------ */

static void write_liners(struct json_writer *out, const ingle_standard *standard)
{
    ingle_format format = format_of(standard);
    size_t count = ingle_standard_liner_count(standard);
    if (count == 0) {
        return;
    }
    json_open_array(out, "liners");
    for (size_t i = 0; i < count; i++) {
        const char *liner, *table;
        ingle_amount area;
        if (ingle_standard_liner_at(standard, i, &liner, &area, &table) == INGLE_OK) {
            json_open_object(out, NULL);
            json_text(out, "liner", liner);
            json_amount(out, "net_area", &area, &format);
            json_text(out, "table", table);
            json_close_object(out);
        }
    }
    json_close_array(out);
}

static void write_materials(struct json_writer *out, const ingle_standard *standard)
{
    ingle_format format = format_of(standard);
    size_t count = ingle_standard_material_count(standard);
    if (count == 0) {
        return;
    }
    json_open_array(out, "materials");
    for (size_t i = 0; i < count; i++) {
        const char *material;
        ingle_amount r_per_inch;
        if (ingle_standard_material_at(standard, i, &material, &r_per_inch) == INGLE_OK) {
            json_open_object(out, NULL);
            json_text(out, "material", material);
            json_amount(out, "r_per_inch", &r_per_inch, &format);
            json_close_object(out);
        }
    }
    json_close_array(out);
}

static void write_standard(struct json_writer *out, const ingle_standard *standard)
{
    json_open_object(out, NULL);
    json_text(out, "id", ingle_standard_id(standard));
    json_text(out, "title", ingle_standard_title(standard));
    if (ingle_standard_edition(standard) != 0) {
        json_integer(out, "edition", ingle_standard_edition(standard));
    }
    json_text(out, "place", ingle_standard_place(standard));
    json_text(out, "unit", ingle_unit_id(ingle_standard_unit(standard)));
    json_text(out, "note", ingle_standard_note(standard));
    json_integer(out, "rules", (int64_t)ingle_standard_rule_count(standard));
    write_liners(out, standard);
    write_materials(out, standard);
    json_close_object(out);
}

/* ---- rules ---------------------------------------------------------------------------------- */

static void write_judged(struct json_writer *out, const ingle_rule *rule)
{
    json_open_array(out, "judges");
    for (size_t i = 0; i < ingle_rule_quantity_count(rule); i++) {
        json_text(out, NULL, ingle_quantity_id(ingle_rule_quantity_at(rule, i)));
    }
    json_close_array(out);
    if (ingle_rule_input_count(rule) > 0) {
        json_open_array(out, "from");
        for (size_t i = 0; i < ingle_rule_input_count(rule); i++) {
            json_text(out, NULL, ingle_quantity_id(ingle_rule_input_at(rule, i)));
        }
        json_close_array(out);
    }
}

/* A number as an amount; a state is written by the name of the choice, or yes or no. */
static void write_number(struct json_writer *out, const char *name, const ingle_amount *amount,
                         const ingle_quantity *quantity, const ingle_format *format)
{
    if (amount->dimension != INGLE_CHOICE && amount->dimension != INGLE_FLAG) {
        json_amount(out, name, amount, format);
        return;
    }
    json_open_object(out, name);
    json_text(out, "text",
              amount->dimension == INGLE_FLAG
                  ? (amount->value != 0 ? "yes" : "no")
                  : ingle_quantity_choice_at(quantity, (size_t)amount->value));
    json_close_object(out);
}

static void write_keys(struct json_writer *out, const char *name, const ingle_rule *rule,
                       ingle_status (*key_at)(const ingle_rule *, size_t, ingle_amount *),
                       const ingle_quantity *quantity, const ingle_format *format)
{
    ingle_amount key;
    json_open_array(out, name);
    for (size_t i = 0; key_at(rule, i, &key) == INGLE_OK; i++) {
        write_number(out, NULL, &key, quantity, format);
    }
    json_close_array(out);
}

static void write_table_row(struct json_writer *out, const ingle_rule *rule, size_t row,
                            const ingle_format *format)
{
    json_open_array(out, NULL);
    for (size_t i = 0; i < ingle_rule_table_column_count(rule); i++) {
        ingle_amount cell;
        if (ingle_rule_table_cell_at(rule, row, i, &cell) == INGLE_OK) {
            json_amount(out, NULL, &cell, format);
        } else {
            json_text(out, NULL, NULL);
        }
    }
    json_close_array(out);
}

static void write_table(struct json_writer *out, const ingle_rule *rule,
                        const ingle_format *format)
{
    if (ingle_rule_table(rule) == NULL) {
        return;
    }
    json_open_object(out, "table");
    json_text(out, "name", ingle_rule_table(rule));
    json_text(out, "row_reading", ingle_rule_table_row_reading(rule));
    write_keys(out, "rows", rule, ingle_rule_table_row_at, ingle_rule_input_at(rule, 0), format);
    if (ingle_rule_table_column_reading(rule) != NULL) {
        json_text(out, "column_reading", ingle_rule_table_column_reading(rule));
        write_keys(out, "columns", rule, ingle_rule_table_column_at, ingle_rule_input_at(rule, 1),
                   format);
    }
    json_open_array(out, "cells");
    for (size_t row = 0; row < ingle_rule_table_row_count(rule); row++) {
        write_table_row(out, rule, row, format);
    }
    json_close_array(out);
    json_close_object(out);
}

static void write_numbers(struct json_writer *out, const ingle_rule *rule,
                          const ingle_format *format)
{
    json_open_object(out, "numbers");
    for (size_t i = 0; i < ingle_rule_number_count(rule); i++) {
        ingle_amount amount;
        if (ingle_rule_number_at(rule, i, &amount) == INGLE_OK) {
            write_number(out, ingle_rule_number_name(rule, i), &amount,
                         ingle_rule_quantity_at(rule, 0), format);
        }
    }
    json_close_object(out);
}

static void write_condition(struct json_writer *out, const ingle_rule *rule)
{
    size_t capacity, length;
    json_begin_text(out, "when");
    do {
        char *room = json_room(out, &capacity);
        length = 0;
        ingle_rule_condition_text(rule, room, capacity, &length);
    } while (!json_end_text(out, length));
}

static void write_editions(struct json_writer *out, const ingle_rule *rule)
{
    if (ingle_rule_since(rule) != 0) {
        json_integer(out, "since", ingle_rule_since(rule));
    }
    if (ingle_rule_until(rule) != 0) {
        json_integer(out, "until", ingle_rule_until(rule));
    }
}

static void write_followed(struct json_writer *out, const ingle_rule *rule)
{
    size_t option = 0;
    const ingle_reading *reading = ingle_rule_follows(rule, &option);
    if (reading != NULL) {
        json_open_object(out, "follows");
        json_text(out, "reading", ingle_reading_id(reading));
        json_text(out, "option", ingle_reading_option_at(reading, option));
        json_close_object(out);
    }
}

static void write_text_if_any(struct json_writer *out, const char *name, const char *text)
{
    if (text != NULL) {
        json_text(out, name, text);
    }
}

static void write_rule(struct json_writer *out, const ingle_standard *standard,
                       const ingle_rule *rule)
{
    ingle_format format = format_of(standard);
    json_open_object(out, NULL);
    json_text(out, "standard", ingle_standard_id(standard));
    json_text(out, "rule", ingle_rule_id(rule));
    json_text(out, "label", ingle_rule_label(rule));
    json_text(out, "section", ingle_rule_section(rule));
    json_text(out, "basis", ingle_basis_name(ingle_rule_basis(rule)));
    write_editions(out, rule);
    json_text(out, "relation", ingle_relation_name(ingle_rule_relation(rule)));
    write_judged(out, rule);
    json_text(out, "formula", ingle_rule_formula(rule));
    json_text(out, "formula_text", ingle_rule_formula_text(rule));
    write_numbers(out, rule, &format);
    write_table(out, rule, &format);
    write_condition(out, rule);
    write_text_if_any(out, "listing",
                      ingle_rule_listing(rule) == NULL
                          ? NULL
                          : ingle_quantity_id(ingle_rule_listing(rule)));
    write_text_if_any(out, "caution", ingle_rule_caution(rule));
    write_text_if_any(out, "mend", ingle_rule_mend(rule));
    write_text_if_any(out, "refer", ingle_rule_refer(rule));
    write_text_if_any(out, "inspection", ingle_rule_inspection(rule));
    if (ingle_rule_reading(rule) != NULL) {
        json_text(out, "reading", ingle_rule_reading(rule));
    }
    write_followed(out, rule);
    json_close_object(out);
}

static void write_rules(struct json_writer *out, const ingle_standard *standard)
{
    for (size_t i = 0; i < ingle_standard_rule_count(standard); i++) {
        write_rule(out, standard, ingle_standard_rule_at(standard, i));
    }
}

/* ---- readings ------------------------------------------------------------------------------- */

/* Whether a row of this rule id, before the row `end` of the standard, follows the reading. */
static bool is_followed(const ingle_standard *standard, const ingle_reading *reading,
                        const char *rule, size_t end)
{
    for (size_t i = 0; i < end; i++) {
        const ingle_rule *row = ingle_standard_rule_at(standard, i);
        if (ingle_rule_follows(row, NULL) == reading &&
            (rule == NULL || strcmp(ingle_rule_id(row), rule) == 0)) {
            return true;
        }
    }
    return false;
}

/* The rules of a standard of which rows follow a reading, each once. */
static void write_following(struct json_writer *out, const ingle_standard *standard,
                            const ingle_reading *reading)
{
    for (size_t i = 0; i < ingle_standard_rule_count(standard); i++) {
        const ingle_rule *rule = ingle_standard_rule_at(standard, i);
        if (ingle_rule_follows(rule, NULL) == reading &&
            !is_followed(standard, reading, ingle_rule_id(rule), i)) {
            json_open_object(out, NULL);
            json_text(out, "standard", ingle_standard_id(standard));
            json_text(out, "rule", ingle_rule_id(rule));
            json_close_object(out);
        }
    }
}

static void write_reading(struct json_writer *out, const ingle_reading *reading,
                          const ingle_standard *only)
{
    json_open_object(out, NULL);
    json_text(out, "id", ingle_reading_id(reading));
    json_text(out, "label", ingle_reading_label(reading));
    json_open_array(out, "options");
    for (size_t i = 0; i < ingle_reading_option_count(reading); i++) {
        json_open_object(out, NULL);
        json_text(out, "id", ingle_reading_option_at(reading, i));
        json_text(out, "label", ingle_reading_option_label(reading, i));
        json_close_object(out);
    }
    json_close_array(out);
    json_open_array(out, "rules");
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        if (only == NULL || only == ingle_standard_at(i)) {
            write_following(out, ingle_standard_at(i), reading);
        }
    }
    json_close_array(out);
    json_close_object(out);
}

/* ---- quantities ----------------------------------------------------------------------------- */

static bool rule_uses(const ingle_rule *rule, const ingle_quantity *quantity)
{
    for (size_t i = 0; i < ingle_rule_quantity_count(rule); i++) {
        if (ingle_rule_quantity_at(rule, i) == quantity) {
            return true;
        }
    }
    for (size_t i = 0; i < ingle_rule_input_count(rule); i++) {
        if (ingle_rule_input_at(rule, i) == quantity) {
            return true;
        }
    }
    return ingle_rule_listing(rule) == quantity;
}

static bool standard_uses(const ingle_standard *standard, const ingle_quantity *quantity)
{
    for (size_t i = 0; i < ingle_standard_rule_count(standard); i++) {
        if (rule_uses(ingle_standard_rule_at(standard, i), quantity)) {
            return true;
        }
    }
    return false;
}

static void write_choices(struct json_writer *out, const ingle_quantity *quantity)
{
    json_open_array(out, "choices");
    for (size_t i = 0; i < ingle_quantity_choice_count(quantity); i++) {
        json_open_object(out, NULL);
        json_text(out, "id", ingle_quantity_choice_at(quantity, i));
        json_text(out, "label", ingle_quantity_choice_label(quantity, i));
        json_close_object(out);
    }
    json_close_array(out);
}

static void write_assumed(struct json_writer *out, const ingle_quantity *quantity)
{
    ingle_amount assumed;
    if (!ingle_quantity_assumed(quantity, &assumed)) {
        return;
    }
    if (assumed.dimension == INGLE_CHOICE) {
        json_text(out, "assumed", ingle_quantity_choice_at(quantity, (size_t)assumed.value));
    } else {
        json_boolean(out, "assumed", assumed.value != 0);
    }
}

static void write_range(struct json_writer *out, const ingle_quantity *quantity,
                        const ingle_format *format)
{
    ingle_amount least, most;
    ingle_quantity_range(quantity, &least, &most);
    json_amount(out, "least", &least, format);
    json_amount(out, "most", &most, format);
}

static void write_quantity(struct json_writer *out, const ingle_quantity *quantity,
                           const ingle_standard *standard)
{
    ingle_format format = format_of(standard);
    ingle_dimension dimension = ingle_quantity_dimension(quantity);
    json_open_object(out, NULL);
    json_text(out, "id", ingle_quantity_id(quantity));
    json_text(out, "label", ingle_quantity_label(quantity));
    json_text(out, "dimension", ingle_dimension_name(dimension));
    if (ingle_quantity_repeats(quantity)) {
        json_boolean(out, "repeats", true);
    }
    if (dimension == INGLE_CHOICE) {
        write_choices(out, quantity);
    } else if (dimension != INGLE_FLAG) {
        write_range(out, quantity, &format);
    }
    write_assumed(out, quantity);
    json_text(out, "how", ingle_quantity_how(quantity));
    json_close_object(out);
}

/* ---- units, verdicts, statuses -------------------------------------------------------------- */

static void write_unit(struct json_writer *out, const ingle_unit *unit)
{
    int64_t numerator = 0, denominator = 1;
    ingle_unit_size(unit, &numerator, &denominator);
    json_open_object(out, NULL);
    json_text(out, "id", ingle_unit_id(unit));
    json_text(out, "label", ingle_unit_label(unit));
    json_text(out, "ucum", ingle_unit_ucum(unit));
    json_text(out, "dimension", ingle_dimension_name(ingle_unit_dimension(unit)));
    json_integer(out, "numerator", numerator);
    json_integer(out, "denominator", denominator);
    json_open_array(out, "names");
    for (size_t i = 0; i < ingle_unit_name_count(unit); i++) {
        json_text(out, NULL, ingle_unit_name_at(unit, i));
    }
    json_close_array(out);
    json_close_object(out);
}

static void write_verdict(struct json_writer *out, ingle_verdict verdict)
{
    json_open_object(out, NULL);
    json_text(out, "verdict", ingle_verdict_name(verdict));
    json_integer(out, "gravity", verdict);
    json_text(out, "text", ingle_verdict_text(verdict));
    json_close_object(out);
}

static void write_status(struct json_writer *out, ingle_status status)
{
    json_open_object(out, NULL);
    json_text(out, "code", ingle_status_name(status));
    json_integer(out, "status", status);
    json_text(out, "text", ingle_status_text(status));
    json_close_object(out);
}

/* ---- the catalogues by name ----------------------------------------------------------------- */

static void list_standards(struct json_writer *out, const ingle_standard *only)
{
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        if (only == NULL || only == ingle_standard_at(i)) {
            write_standard(out, ingle_standard_at(i));
        }
    }
}

static void list_rules(struct json_writer *out, const ingle_standard *only)
{
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        if (only == NULL || only == ingle_standard_at(i)) {
            write_rules(out, ingle_standard_at(i));
        }
    }
}

static void list_readings(struct json_writer *out, const ingle_standard *only)
{
    for (size_t i = 0; i < ingle_reading_count(); i++) {
        const ingle_reading *reading = ingle_reading_at(i);
        if (only == NULL ||
            is_followed(only, reading, NULL, ingle_standard_rule_count(only))) {
            write_reading(out, reading, only);
        }
    }
}

static void list_quantities(struct json_writer *out, const ingle_standard *only)
{
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        if (only == NULL || standard_uses(only, ingle_quantity_at(i))) {
            write_quantity(out, ingle_quantity_at(i), only);
        }
    }
}

static void list_units(struct json_writer *out, const ingle_standard *only)
{
    (void)only;
    for (size_t i = 0; i < ingle_unit_count(); i++) {
        write_unit(out, ingle_unit_at(i));
    }
}

static void list_verdicts(struct json_writer *out, const ingle_standard *only)
{
    (void)only;
    for (size_t i = 0; i < ingle_verdict_count(); i++) {
        write_verdict(out, (ingle_verdict)i);
    }
}

static void list_statuses(struct json_writer *out, const ingle_standard *only)
{
    (void)only;
    ingle_status status;
    for (size_t i = 0; ingle_status_at(i, &status) == INGLE_OK; i++) {
        write_status(out, status);
    }
}

static const struct {
    const char *name;
    void (*list)(struct json_writer *out, const ingle_standard *only);
} catalogues[] = {
    {"standards", list_standards},   {"rules", list_rules}, {"readings", list_readings},
    {"quantities", list_quantities}, {"units", list_units}, {"verdicts", list_verdicts},
    {"statuses", list_statuses},     {"draft", json_list_draft_numbers},
};

ingle_status ingle_json_list(ingle_json *json, const char *catalogue,
                             const ingle_standard *standard)
{
    if (json == NULL || catalogue == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    for (size_t i = 0; i < sizeof catalogues / sizeof catalogues[0]; i++) {
        if (strcmp(catalogues[i].name, catalogue) == 0) {
            json_start(&json->writer, false);
            json_open_array(&json->writer, NULL);
            catalogues[i].list(&json->writer, standard);
            json_close_array(&json->writer);
            return json_finish(&json->writer) ? INGLE_OK : INGLE_ERROR_MEMORY;
        }
    }
    return ingle_json_error(json, INGLE_ERROR_UNKNOWN_NAME,
                            "The catalogues are standards, rules, readings, quantities, units, "
                            "verdicts, statuses and draft.");
}
