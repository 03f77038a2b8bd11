/* SPDX-License-Identifier: MIT */
/*
 * The schema of amendments: which rules a standard has, and which numbers a rule. They are a part
 * of surveys, and a document of their own.
 */
#include "schema/schema.h"

#include <ingle/ingle.h>

#include <stdlib.h>
#include <string.h>

/* ---- every rule of every standard, as one row of rows ---------------------------------------- */

struct rows {
    const ingle_rule **list; /* ends with NULL */
};

static size_t count_rows(void)
{
    const ingle_standard *standard;
    size_t count = 0;
    for (size_t i = 0; (standard = ingle_standard_at(i)) != NULL; i++) {
        count += ingle_standard_rule_count(standard);
    }
    return count;
}

/* False if memory failed. */
static bool rows_new(struct rows *rows)
{
    const ingle_standard *standard;
    const ingle_rule *rule;
    size_t count = 0;
    rows->list = calloc(count_rows() + 1, sizeof *rows->list);
    for (size_t i = 0; rows->list != NULL && (standard = ingle_standard_at(i)) != NULL; i++) {
        for (size_t j = 0; (rule = ingle_standard_rule_at(standard, j)) != NULL; j++) {
            rows->list[count++] = rule;
        }
    }
    return rows->list != NULL;
}

/* The dimension of one of a rule's numbers; 0 for a state, which no amendment can set. */
static ingle_dimension number_dimension(const ingle_rule *rule, size_t index)
{
    ingle_amount amount = {.dimension = 0};
    ingle_rule_number_at(rule, index, &amount);
    return ingle_dimension_is_amount(amount.dimension) ? amount.dimension : 0;
}

static bool same_id(const ingle_rule *a, const ingle_rule *b)
{
    return strcmp(ingle_rule_id(a), ingle_rule_id(b)) == 0;
}

/* Whether no rule before this one has its id. */
static bool is_first_of_id(const struct rows *rows, size_t index)
{
    for (size_t i = 0; i < index; i++) {
        if (same_id(rows->list[i], rows->list[index])) {
            return false;
        }
    }
    return true;
}

/*
 * The dimensions, a bit for each, that a number has in rules of an id; in those of all ids if `id`
 * is NULL.
 */
static unsigned dimensions_of(const struct rows *rows, const char *id, const char *number)
{
    unsigned dimensions = 0;
    const ingle_rule *rule;
    for (size_t i = 0; (rule = rows->list[i]) != NULL; i++) {
        const char *name;
        bool due = id == NULL || strcmp(ingle_rule_id(rule), id) == 0;
        for (size_t j = 0; due && (name = ingle_rule_number_name(rule, j)) != NULL; j++) {
            ingle_dimension dimension = number_dimension(rule, j);
            if (dimension != 0 && strcmp(name, number) == 0) {
                dimensions |= 1u << dimension;
            }
        }
    }
    return dimensions;
}

/* Whether a number's name was met before: in rules of the same id, or in any if `any`. */
static bool is_met(const struct rows *rows, size_t rule_index, size_t number_index, bool any)
{
    const ingle_rule *rule = rows->list[rule_index];
    const char *number = ingle_rule_number_name(rule, number_index);
    for (size_t i = 0; i <= rule_index; i++) {
        const char *name;
        bool due = any || same_id(rows->list[i], rule);
        for (size_t j = 0; due && (name = ingle_rule_number_name(rows->list[i], j)) != NULL; j++) {
            if (i == rule_index && j == number_index) {
                return false;
            }
            if (strcmp(name, number) == 0) {
                return true;
            }
        }
    }
    return false;
}

/* ---- the numbers of a rule ------------------------------------------------------------------- */

static void write_number(struct json_writer *out, const char *number, unsigned dimensions)
{
    json_open_object(out, number);
    json_open_array(out, "anyOf");
    for (ingle_dimension i = INGLE_LENGTH; ingle_dimension_name(i) != NULL; i++) {
        if ((dimensions >> i & 1) != 0) {
            schema_reference(out, NULL, ingle_dimension_name(i), SCHEMA_FIXED);
        }
    }
    json_close_array(out);
    json_close_object(out);
}

static void write_numbers(struct json_writer *out, const struct rows *rows, size_t first)
{
    const ingle_rule *rule;
    schema_open_object(out, "set", NULL);
    for (size_t i = first; (rule = rows->list[i]) != NULL; i++) {
        for (size_t j = 0; j < ingle_rule_number_count(rule); j++) {
            if (same_id(rule, rows->list[first]) && number_dimension(rule, j) != 0 &&
                !is_met(rows, i, j, false)) {
                const char *number = ingle_rule_number_name(rule, j);
                write_number(out, number, dimensions_of(rows, ingle_rule_id(rule), number));
            }
        }
    }
    schema_reference(out, "note", "text", "");
    schema_close_object(out, NULL, 0);
}

/* Opens `if` a property is this, `then` properties. */
static void open_if(struct json_writer *out, const char *property, const char *value)
{
    json_open_object(out, NULL);
    json_open_object(out, "if");
    json_open_object(out, "properties");
    json_open_object(out, property);
    json_text(out, "const", value);
    json_close_object(out);
    json_close_object(out);
    json_close_object(out);
    json_open_object(out, "then");
    json_open_object(out, "properties");
}

static void close_if(struct json_writer *out)
{
    json_close_object(out);
    json_close_object(out);
    json_close_object(out);
}

/* ---- the rules of a standard ----------------------------------------------------------------- */

static bool is_first_in_standard(const ingle_standard *standard, size_t index)
{
    for (size_t i = 0; i < index; i++) {
        if (same_id(ingle_standard_rule_at(standard, i), ingle_standard_rule_at(standard, index))) {
            return false;
        }
    }
    return true;
}

/* Whether rows of the rule's id have numbers that an amendment can set. */
static bool is_amendable(const ingle_standard *standard, const ingle_rule *rule)
{
    const ingle_rule *row;
    for (size_t i = 0; (row = ingle_standard_rule_at(standard, i)) != NULL; i++) {
        for (size_t j = 0; same_id(row, rule) && j < ingle_rule_number_count(row); j++) {
            if (number_dimension(row, j) != 0) {
                return true;
            }
        }
    }
    return false;
}

static void write_rules(struct json_writer *out, const ingle_standard *standard)
{
    json_open_object(out, "rule");
    json_open_array(out, "enum");
    for (size_t i = 0; i < ingle_standard_rule_count(standard); i++) {
        const ingle_rule *rule = ingle_standard_rule_at(standard, i);
        if (is_first_in_standard(standard, i) && is_amendable(standard, rule)) {
            json_text(out, NULL, ingle_rule_id(rule));
        }
    }
    json_close_array(out);
    json_close_object(out);
}

static void write_conditions(struct json_writer *out, const struct rows *rows)
{
    const ingle_standard *standard;
    const ingle_rule *rule;
    json_open_array(out, "allOf");
    for (size_t i = 0; (standard = ingle_standard_at(i)) != NULL; i++) {
        open_if(out, "standard", ingle_standard_id(standard));
        write_rules(out, standard);
        close_if(out);
    }
    for (size_t i = 0; (rule = rows->list[i]) != NULL; i++) {
        if (is_first_of_id(rows, i)) {
            open_if(out, "rule", ingle_rule_id(rule));
            write_numbers(out, rows, i);
            close_if(out);
        }
    }
    json_close_array(out);
}

/* ---- amendments ------------------------------------------------------------------------------ */

static void write_members(struct json_writer *out)
{
    json_open_object(out, "standard");
    schema_enum(out, schema_standard_at);
    json_close_object(out);
    schema_type(out, "rule", "string", NULL);
    json_open_object(out, "set");
    json_text(out, "description", "The rule's numbers by their names: see `ingle list rules`.");
    json_text(out, "type", "object");
    json_open_array(out, "anyOf"); /* a note alone sets nothing */
    json_open_object(out, NULL);
    json_integer(out, "minProperties", 2);
    json_close_object(out);
    json_open_object(out, NULL);
    json_integer(out, "minProperties", 1);
    json_open_object(out, "properties");
    json_boolean(out, "note", false);
    json_close_object(out);
    json_close_object(out);
    json_close_array(out);
    json_close_object(out);
    json_open_object(out, "citation");
    json_text(out, "description", "Where the authority says so; the finding shows it.");
    json_text(out, "$ref", "#/$defs/text");
    json_integer(out, "minLength", 1);
    json_text(out, "pattern", "[^ \\t\\r\\n]"); /* not blank */
    json_close_object(out);
    schema_reference(out, "note", "text", "");
}

void schema_amendments(struct json_writer *out)
{
    static const char *const required[] = {"standard", "rule", "set", "citation"};
    struct rows rows;
    if (!rows_new(&rows)) {
        out->failed = true;
        return;
    }
    schema_open_array(out, "amendments", "A local authority's numbers in place of a standard's.");
    json_open_object(out, "items");
    json_text(out, "type", "object");
    write_conditions(out, &rows);
    json_open_object(out, "properties");
    write_members(out);
    schema_close_object(out, required, sizeof required / sizeof required[0]);
    schema_close_array(out);
    free(rows.list);
}

static void write_with_units(struct json_writer *out, const struct rows *rows)
{
    const ingle_rule *rule;
    json_open_object(out, "amendments");
    json_open_object(out, "items");
    json_open_object(out, "properties");
    json_open_object(out, "set");
    json_open_object(out, "properties");
    for (size_t i = 0; (rule = rows->list[i]) != NULL; i++) {
        for (size_t j = 0; j < ingle_rule_number_count(rule); j++) {
            const char *number = ingle_rule_number_name(rule, j);
            unsigned lengths = 1u << INGLE_LENGTH | 1u << INGLE_AREA;
            if (!is_met(rows, i, j, true) && number_dimension(rule, j) != 0 &&
                (dimensions_of(rows, NULL, number) & ~lengths) == 0) {
                schema_reference(out, number, SCHEMA_WITH_UNIT, "");
            }
        }
    }
    for (int i = 0; i < 5; i++) {
        json_close_object(out);
    }
}

void schema_amendments_with_units(struct json_writer *out)
{
    struct rows rows;
    if (rows_new(&rows)) {
        write_with_units(out, &rows);
        free(rows.list);
    } else {
        out->failed = true;
    }
}

/* ---- the document ---------------------------------------------------------------------------- */

void schema_amendments_document(struct json_writer *out)
{
    json_text(out, "title", "Amendments");
    json_text(out, "description",
              "What a town changed in the numbers of standards, for all surveys made there.");
    json_text(out, "type", "object");
    json_open_object(out, "properties");
    json_open_object(out, "authority");
    json_text(out, "description", "Whose amendments they are; findings show it before citations.");
    json_text(out, "$ref", "#/$defs/text");
    json_close_object(out);
    schema_unit(out, "");
    schema_amendments(out);
    schema_reference(out, "note", "text", "");
    json_close_object(out);
    json_open_array(out, "required");
    json_text(out, NULL, "amendments");
    json_close_array(out);
    json_boolean(out, "additionalProperties", false);
    schema_open_without_unit(out);
    schema_amendments_with_units(out);
    schema_close_without_unit(out);
    schema_definitions(out);
}
