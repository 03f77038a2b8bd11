/* SPDX-License-Identifier: MIT */
/*
 * The schemas of answers to what would happen: solutions, frontiers, sweeps and comparisons.
 */
#include "schema/schema.h"

#include <ingle/ingle.h>

#define COUNT(names) (sizeof names / sizeof names[0])

/* ---- what they share ------------------------------------------------------------------------- */

static void write_amount(struct json_writer *out, const char *property)
{
    schema_reference(out, property, "amount", "");
}

/* Which quantity was led through which values. */
static void write_range(struct json_writer *out)
{
    static const char *const required[] = {"from", "to"};
    schema_subject(out, "quantity");
    schema_type(out, "label", "string", "What it is, in words.");
    schema_open_object(out, "range", "The first and the last value; a choice or flag has no step.");
    write_amount(out, "from");
    write_amount(out, "to");
    write_amount(out, "step");
    schema_close_object(out, required, COUNT(required));
}

static void write_rule(struct json_writer *out, const char *property, const char *description)
{
    static const char *const required[] = {"standard", "rule", "section"};
    schema_open_object(out, property, description);
    schema_standard(out);
    schema_type(out, "rule", "string", NULL);
    schema_type(out, "section", "string", NULL);
    schema_close_object(out, required, COUNT(required));
}

static void write_intervals(struct json_writer *out)
{
    static const char *const required[] = {"from", "to"};
    schema_open_array(out, "works", "The intervals of values at which no rule asked for fails.");
    schema_open_object(out, "items", NULL);
    write_amount(out, "from");
    write_amount(out, "to");
    write_rule(out, "below", "A rule that fails one step below; not at the range's beginning.");
    write_rule(out, "above", "A rule that fails one step above; not at the range's end.");
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

/* ---- solutions ------------------------------------------------------------------------------- */

static void write_neighbour(struct json_writer *out, const char *property, const char *description)
{
    static const char *const required[] = {"to"};
    schema_open_object(out, property, description);
    write_amount(out, "to");
    write_amount(out, "change");
    schema_close_object(out, required, COUNT(required));
}

static void write_surveyed(struct json_writer *out)
{
    static const char *const required[] = {"value", "works"};
    schema_open_object(out, "surveyed", "The value as it was recorded; not there if it was not.");
    write_amount(out, "value");
    schema_type(out, "works", "boolean", "Whether it does.");
    schema_close_object(out, required, COUNT(required));
    schema_open_object(out, "nearest", "The values nearest to it that do.");
    write_neighbour(out, "below", NULL);
    write_neighbour(out, "above", NULL);
    schema_close_object(out, NULL, 0);
}

static void write_asides(struct json_writer *out)
{
    static const char *const required[] = {"standard", "rule", "section", "subject"};
    schema_open_array(out, "aside", "What fails whatever the value, being none of its doing.");
    schema_open_object(out, "items", NULL);
    schema_standard(out);
    schema_type(out, "rule", "string", NULL);
    schema_type(out, "section", "string", NULL);
    schema_subject(out, "subject");
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

void schema_solution(struct json_writer *out)
{
    static const char *const required[] = {"quantity", "label", "range", "works", "aside", "ingle"};
    schema_answer_definitions(out);
    schema_open_document(out, "Solution",
                         "Which values of one quantity would do, all else as it was surveyed.");
    write_range(out);
    write_surveyed(out);
    write_intervals(out);
    write_asides(out);
    schema_release(out);
    schema_close_document(out, required, COUNT(required));
}

/* ---- frontiers ------------------------------------------------------------------------------- */

void schema_frontier(struct json_writer *out)
{
    static const char *const required[] = {"quantity", "label", "range", "with", "frontier",
                                           "ingle"};
    static const char *const with[] = {"quantity", "label", "range"};
    static const char *const entry[] = {"value", "works"};
    schema_answer_definitions(out);
    schema_open_document(out, "Frontier",
                         "For each value of one quantity, the values of another that would do.");
    write_range(out);
    schema_open_object(out, "with", "The other quantity and its values.");
    write_range(out);
    schema_close_object(out, with, COUNT(with));
    schema_open_array(out, "frontier", "One entry for each value of the other quantity.");
    schema_open_object(out, "items", NULL);
    write_amount(out, "value");
    write_intervals(out);
    schema_close_object(out, entry, COUNT(entry));
    schema_close_array(out);
    schema_release(out);
    schema_close_document(out, required, COUNT(required));
}

/* ---- sweeps ---------------------------------------------------------------------------------- */

static void write_cell(struct json_writer *out)
{
    static const char *const required[] = {"value", "section", "verdict", "relation"};
    schema_open_array(out, "values",
                      "What the rule says at each value; values without a finding are left out.");
    schema_open_object(out, "items", NULL);
    write_amount(out, "value");
    schema_type(out, "section", "string", NULL);
    schema_verdict(out, NULL);
    schema_relation(out);
    write_amount(out, "measured");
    write_amount(out, "required");
    write_amount(out, "margin");
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

void schema_sweep(struct json_writer *out)
{
    static const char *const required[] = {"quantity", "label", "range", "lines", "ingle"};
    static const char *const line[] = {"standard", "rule", "label", "subject", "values"};
    schema_answer_definitions(out);
    schema_open_document(out, "Sweep",
                         "What each rule says while one quantity is led through its values.");
    write_range(out);
    schema_open_array(out, "lines", "One for each rule on each thing that it judges.");
    schema_open_object(out, "items", NULL);
    schema_standard(out);
    schema_type(out, "rule", "string", NULL);
    schema_type(out, "label", "string", NULL);
    schema_subject(out, "subject");
    write_cell(out);
    schema_close_object(out, line, COUNT(line));
    schema_close_array(out);
    schema_release(out);
    schema_close_document(out, required, COUNT(required));
}

/* ---- comparisons ----------------------------------------------------------------------------- */

static const char *change_at(size_t index)
{
    return ingle_change_name((ingle_change)index);
}

static void write_compared_standards(struct json_writer *out)
{
    static const char *const required[] = {"id", "title", "verdict"};
    schema_open_array(out, "standards", "In the order in which they are compared.");
    schema_open_object(out, "items", NULL);
    schema_names(out, "id", NULL, schema_standard_at);
    schema_type(out, "title", "string", NULL);
    schema_verdict(out, "The gravest by this standard.");
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

static void write_compared(struct json_writer *out)
{
    static const char *const finding[] = {"section", "verdict", "relation"};
    static const char *const required[] = {"standard"};
    schema_open_array(out, "by", "What each standard says; the standard alone where it says none.");
    schema_open_object(out, "items", NULL);
    schema_standard(out);
    schema_type(out, "section", "string", NULL);
    schema_verdict(out, NULL);
    schema_relation(out);
    write_amount(out, "required");
    schema_names(out, "change", "What changed from the standard before.", change_at);
    json_close_object(out);
    json_open_object(out, "dependentRequired");
    for (size_t i = 0; i < COUNT(finding); i++) {
        json_open_array(out, finding[i]);
        json_text(out, NULL, finding[(i + 1) % COUNT(finding)]);
        json_close_array(out);
    }
    json_open_array(out, "required");
    json_text(out, NULL, "verdict");
    json_close_array(out);
    json_close_object(out);
    schema_required(out, required, COUNT(required));
    json_boolean(out, "additionalProperties", false);
    json_close_object(out);
    schema_close_array(out);
}

void schema_comparison(struct json_writer *out)
{
    static const char *const required[] = {"standards", "lines", "ingle"};
    static const char *const line[] = {"rule", "label", "subject", "by"};
    schema_answer_definitions(out);
    schema_open_document(out, "Comparison", "One survey under several standards, rule by rule.");
    schema_type(out, "id", "string", "That of the survey document, if it has one.");
    write_compared_standards(out);
    schema_open_array(out, "lines", "One for each rule on each thing that it judges.");
    schema_open_object(out, "items", NULL);
    schema_type(out, "rule", "string", NULL);
    schema_type(out, "label", "string", NULL);
    schema_subject(out, "subject");
    write_compared(out);
    schema_close_object(out, line, COUNT(line));
    schema_close_array(out);
    schema_release(out);
    schema_close_document(out, required, COUNT(required));
}
