/* SPDX-License-Identifier: MIT */
/*
 * What the schemas of documents that are written have in common: amounts, places, names.
 */
#include "schema/schema.h"

#include <ingle/ingle.h>

#define COUNT(names) (sizeof names / sizeof names[0])

/* ---- names ----------------------------------------------------------------------------------- */

const char *schema_basis_at(size_t index)
{
    return ingle_basis_name((ingle_basis)index + INGLE_BASIS_READ);
}

static const char *relation_at(size_t index)
{
    return ingle_relation_name((ingle_relation)index + INGLE_AT_LEAST);
}

static const char *unit_at(size_t index)
{
    return ingle_unit_id(ingle_unit_at(index));
}

/* ---- amounts and places ---------------------------------------------------------------------- */

static void write_amount(struct json_writer *out)
{
    static const char *const required[] = {"text"};
    schema_open_object(out, "amount",
                       "`text` is for people, and begins with ≈ where it is not exact. A choice "
                       "or flag has nothing else; a count or ratio has no unit.");
    schema_type(out, "value", "number", NULL);
    schema_names(out, "unit", NULL, unit_at);
    schema_type(out, "text", "string", NULL);
    json_close_object(out);
    json_open_object(out, "dependentRequired");
    json_open_array(out, "unit");
    json_text(out, NULL, "value");
    json_close_array(out);
    json_close_object(out);
    schema_required(out, required, COUNT(required));
    json_boolean(out, "additionalProperties", false);
    json_close_object(out);
}

static void write_figure(struct json_writer *out)
{
    static const char *const required[] = {"value", "text"};
    schema_open_object(out, "figure",
                       "A number that is not exact, such as an uncertainty. A plain number has no "
                       "unit.");
    schema_type(out, "value", "number", NULL);
    schema_names(out, "unit", NULL, unit_at);
    schema_type(out, "text", "string", "For people: to three digits.");
    schema_close_object(out, required, COUNT(required));
}

static void write_pointer(struct json_writer *out)
{
    json_open_object(out, "pointer");
    json_text(out, "description", "A JSON Pointer into the survey document.");
    json_text(out, "type", "string");
    json_text(out, "pattern", "^/survey(?:/[^/]+)+$");
    json_close_object(out);
}

void schema_answer_definitions(struct json_writer *out)
{
    json_open_object(out, "$defs");
    write_amount(out);
    write_figure(out);
    write_pointer(out);
    json_close_object(out);
}

/* ---- properties ------------------------------------------------------------------------------ */

void schema_subject(struct json_writer *out, const char *property)
{
    schema_reference(out, property, "pointer", "");
}

void schema_standard(struct json_writer *out)
{
    schema_names(out, "standard", NULL, schema_standard_at);
}

void schema_verdict(struct json_writer *out, const char *description)
{
    schema_names(out, "verdict", description, schema_verdict_at);
}

void schema_relation(struct json_writer *out)
{
    schema_names(out, "relation", NULL, relation_at);
}

void schema_release(struct json_writer *out)
{
    schema_type(out, "ingle", "string", "The release that answered.");
}

/* ---- errors ---------------------------------------------------------------------------------- */

static const char *code_at(size_t index)
{
    ingle_status status;
    return ingle_status_at(index, &status) == INGLE_OK ? ingle_status_name(status) : NULL;
}

void schema_error(struct json_writer *out)
{
    static const char *const required[] = {"error"};
    static const char *const members[] = {"code", "message"};
    schema_open_document(out, "Error", "Why a document or a command line could not be used.");
    schema_type(out, "line", "integer", "Of JSON Lines: in place of which line's report.");
    schema_open_object(out, "error", NULL);
    schema_names(out, "code", "See `ingle list statuses`.", code_at);
    schema_type(out, "message", "string", "In a sentence.");
    schema_type(out, "at", "string", "A JSON Pointer into the document.");
    schema_type(out, "line", "integer", "Where in the text it is, from 1.");
    schema_type(out, "column", "integer", "The letter of the line, from 1.");
    schema_close_object(out, members, COUNT(members));
    schema_close_document(out, required, COUNT(required));
}
