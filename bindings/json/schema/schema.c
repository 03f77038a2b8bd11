/* SPDX-License-Identifier: MIT */
#include "schema/schema.h"

#include "json.h"

#include <string.h>

/* ---- what they are made of ------------------------------------------------------------------- */

/* Longer than the name of any of $defs. */
enum { REFERENCE_ROOM = 80 };

void schema_reference(struct json_writer *out, const char *property, const char *kind,
                      const char *suffix)
{
    char reference[REFERENCE_ROOM] = "#/$defs/";
    if (strlen(reference) + strlen(kind) + strlen(suffix) >= sizeof reference) {
        out->failed = true;
        return;
    }
    strcat(strcat(reference, kind), suffix);
    json_open_object(out, property);
    json_text(out, "$ref", reference);
    json_close_object(out);
}

static void open_typed(struct json_writer *out, const char *property, const char *type,
                       const char *description)
{
    json_open_object(out, property);
    if (description != NULL) {
        json_text(out, "description", description);
    }
    json_text(out, "type", type);
}

void schema_type(struct json_writer *out, const char *property, const char *type,
                 const char *description)
{
    open_typed(out, property, type, description);
    json_close_object(out);
}

void schema_open_object(struct json_writer *out, const char *property, const char *description)
{
    open_typed(out, property, "object", description);
    json_open_object(out, "properties");
}

void schema_close_object(struct json_writer *out, const char *const *required, size_t count)
{
    schema_close_document(out, required, count);
    json_close_object(out);
}

void schema_required(struct json_writer *out, const char *const *required, size_t count)
{
    json_open_array(out, "required");
    for (size_t i = 0; i < count; i++) {
        json_text(out, NULL, required[i]);
    }
    json_close_array(out);
}

void schema_open_document(struct json_writer *out, const char *title, const char *description)
{
    json_text(out, "title", title);
    json_text(out, "description", description);
    json_text(out, "type", "object");
    json_open_object(out, "properties");
}

void schema_close_document(struct json_writer *out, const char *const *required, size_t count)
{
    json_close_object(out);
    if (count > 0) {
        schema_required(out, required, count);
    }
    json_boolean(out, "additionalProperties", false);
}

void schema_names(struct json_writer *out, const char *property, const char *description,
                  const char *(*name_at)(size_t index))
{
    json_open_object(out, property);
    if (description != NULL) {
        json_text(out, "description", description);
    }
    schema_enum(out, name_at);
    json_close_object(out);
}

void schema_texts(struct json_writer *out, const char *property, const char *description)
{
    schema_open_array(out, property, description);
    schema_type(out, "items", "string", NULL);
    schema_close_array(out);
}

void schema_open_array(struct json_writer *out, const char *property, const char *description)
{
    open_typed(out, property, "array", description);
}

void schema_close_array(struct json_writer *out)
{
    json_close_object(out);
}

void schema_enum(struct json_writer *out, const char *(*name_at)(size_t index))
{
    const char *name;
    json_open_array(out, "enum");
    for (size_t i = 0; (name = name_at(i)) != NULL; i++) {
        json_text(out, NULL, name);
    }
    json_close_array(out);
}

const char *schema_standard_at(size_t index)
{
    const ingle_standard *standard = ingle_standard_at(index);
    return standard != NULL ? ingle_standard_id(standard) : NULL;
}

const char *schema_verdict_at(size_t index)
{
    return ingle_verdict_name((ingle_verdict)index);
}

/* ---- parts of the schemas of documents that are read ----------------------------------------- */

void schema_unit(struct json_writer *out, const char *purpose)
{
    char description[160] =
        "The unit of lengths that are bare numbers, whose square is that of areas";
    json_open_object(out, "unit");
    json_text(out, "description", strcat(strcat(description, purpose), "."));
    json_open_array(out, "enum");
    for (size_t i = 0; json_document_units[i] != NULL; i++) {
        json_text(out, NULL, json_document_units[i]);
    }
    json_close_array(out);
    json_close_object(out);
}

void schema_open_without_unit(struct json_writer *out)
{
    json_open_object(out, "if");
    json_open_object(out, "not");
    json_open_array(out, "required");
    json_text(out, NULL, "unit");
    json_close_array(out);
    json_close_object(out);
    json_close_object(out);
    json_open_object(out, "then");
    json_open_object(out, "properties");
}

void schema_close_without_unit(struct json_writer *out)
{
    json_close_object(out);
    json_close_object(out);
}

void schema_definitions(struct json_writer *out)
{
    json_open_object(out, "$defs");
    json_open_object(out, "text");
    json_text(out, "type", "string");
    json_text(out, "pattern", "^[^\\u0000]*$");
    json_close_object(out);
    schema_amounts(out);
    json_close_object(out);
}

/* ---- the schemas by name --------------------------------------------------------------------- */

static const struct {
    const char *name;
    const char *id;
    void (*write)(struct json_writer *out);
} schemas[] = {
    {"survey", "urn:ingle:survey", schema_survey},
    {"report", "urn:ingle:report", schema_report},
    {"amendments", "urn:ingle:amendments", schema_amendments_document},
    {"solution", "urn:ingle:solution", schema_solution},
    {"frontier", "urn:ingle:frontier", schema_frontier},
    {"sweep", "urn:ingle:sweep", schema_sweep},
    {"comparison", "urn:ingle:comparison", schema_comparison},
    {"exercise", "urn:ingle:exercise", schema_exercise},
    {"draft", "urn:ingle:draft", schema_draft},
    {"error", "urn:ingle:error", schema_error},
};

enum { SCHEMA_COUNT = sizeof schemas / sizeof schemas[0] };

static ingle_status refuse_name(ingle_json *json)
{
    const char *names[SCHEMA_COUNT];
    char list[160], sentence[240] = "The documents that have a schema are ";
    for (size_t i = 0; i < SCHEMA_COUNT; i++) {
        names[i] = schemas[i].name;
    }
    json_list_names(names, SCHEMA_COUNT, list, sizeof list);
    return ingle_json_error(json, INGLE_ERROR_UNKNOWN_NAME,
                            strcat(strcat(sentence, list), "."));
}

ingle_status ingle_json_schema(ingle_json *json, const char *document)
{
    if (json == NULL || document == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    for (size_t i = 0; i < SCHEMA_COUNT; i++) {
        if (strcmp(schemas[i].name, document) == 0) {
            struct json_writer *out = &json->writer;
            json_start(out, false);
            json_open_object(out, NULL);
            json_text(out, "$schema", "https://json-schema.org/draft/2020-12/schema");
            json_text(out, "$id", schemas[i].id);
            schemas[i].write(out);
            json_close_object(out);
            return json_finish(out) ? INGLE_OK : INGLE_ERROR_MEMORY;
        }
    }
    return refuse_name(json);
}
