/* SPDX-License-Identifier: MIT */
/*
 * The forms of an amount as JSON Schema, for each dimension. The patterns hold that a text begins
 * with a number and ends with a unit of its dimension; what stands between is for the command to
 * judge.
 */
#include "schema/schema.h"

#include <string.h>

#define SPACES "[ \u00A0\u2009\u202F]*"
#define DIGITS "0-9.½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚⅐⅑⅒"
#define BARE_NUMBER "^" SPACES "[" DIGITS "][" DIGITS " \u00A0\u2009\u202F/⁄eE+-]*$"

bool schema_takes_document_unit(ingle_dimension dimension)
{
    return dimension == INGLE_LENGTH || dimension == INGLE_AREA;
}

static bool needs_unit(ingle_dimension dimension)
{
    return dimension == INGLE_LENGTH || dimension == INGLE_AREA || dimension == INGLE_ANGLE ||
           dimension == INGLE_POWER || dimension == INGLE_VOLUME;
}

/* ---- patterns -------------------------------------------------------------------------------- */

struct pattern {
    char text[4096];
    size_t length;
    bool cut;
};

static void add(struct pattern *pattern, const char *text, size_t length)
{
    if (pattern->length + length >= sizeof pattern->text) {
        pattern->cut = true;
        return;
    }
    memcpy(pattern->text + pattern->length, text, length);
    pattern->length += length;
}

static void add_text(struct pattern *pattern, const char *text)
{
    add(pattern, text, strlen(text));
}

/* A unit's spelling, in which a space stands for one or more. */
static void add_spelling(struct pattern *pattern, const char *name)
{
    for (; *name != '\0'; name++) {
        if (*name == ' ') {
            add_text(pattern, "[ \u00A0\u2009\u202F]+");
            continue;
        }
        if (strchr("^$\\.*+?()[]{}|/", *name) != NULL) {
            add_text(pattern, "\\");
        }
        add(pattern, name, 1);
    }
}

static void add_units(struct pattern *pattern, ingle_dimension dimension)
{
    const char *before = "(?:";
    const ingle_unit *unit;
    for (size_t i = 0; (unit = ingle_unit_at(i)) != NULL; i++) {
        const char *name;
        bool due = ingle_unit_dimension(unit) == dimension;
        for (size_t j = 0; due && (name = ingle_unit_name_at(unit, j)) != NULL; j++) {
            add_text(pattern, before);
            add_spelling(pattern, name);
            before = "|";
        }
    }
    add_text(pattern, ")");
}

static void write_pattern(struct json_writer *out, ingle_dimension dimension)
{
    struct pattern pattern = {.length = 0};
    add_text(&pattern, "^" SPACES "[" DIGITS "]");
    if (needs_unit(dimension)) {
        add_text(&pattern, "(?:[^,]*[^A-Za-z,])?");
        add_units(&pattern, dimension);
        add_text(&pattern, SPACES "$");
    }
    out->failed |= pattern.cut;
    json_text_bytes(out, "pattern", pattern.text, pattern.length);
}

/* ---- forms ----------------------------------------------------------------------------------- */

static void write_number(struct json_writer *out, const char *name)
{
    json_open_object(out, name);
    json_text(out, "type", "number");
    json_integer(out, "minimum", 0);
    json_close_object(out);
}

static void write_text_form(struct json_writer *out, ingle_dimension dimension)
{
    json_text(out, "type", "string");
    write_pattern(out, dimension);
}

static void write_bare_text(struct json_writer *out)
{
    json_open_object(out, NULL);
    json_text(out, "type", "string");
    json_text(out, "pattern", BARE_NUMBER);
    json_close_object(out);
}

static void write_unit_names(struct json_writer *out, ingle_dimension dimension)
{
    json_open_object(out, "unit");
    json_open_array(out, "enum");
    const ingle_unit *unit;
    for (size_t i = 0; (unit = ingle_unit_at(i)) != NULL; i++) {
        const char *name;
        bool due = ingle_unit_dimension(unit) == dimension;
        for (size_t j = 0; due && (name = ingle_unit_name_at(unit, j)) != NULL; j++) {
            json_text(out, NULL, name);
        }
    }
    json_close_array(out);
    json_close_object(out);
}

/* What the object of an amount holds. */
enum form {
    NUMBER_AND_UNIT, /* a number as such or in a text, and its unit */
    NUMBER_ALONE,
    TEXT_ALONE
};

static void write_value(struct json_writer *out, ingle_dimension dimension, enum form form)
{
    const char *name = ingle_dimension_name(dimension);
    if (form == TEXT_ALONE) {
        schema_reference(out, "value", name, "-text");
    } else if (form == NUMBER_ALONE) {
        write_number(out, "value");
    } else {
        json_open_object(out, "value");
        json_open_array(out, "anyOf");
        write_number(out, NULL);
        write_bare_text(out);
        json_close_array(out);
        json_close_object(out);
    }
}

/* A number beside a number has its unit; beside a text it has none, if one is needed. */
static void write_tolerance(struct json_writer *out, ingle_dimension dimension, enum form form)
{
    const char *name = ingle_dimension_name(dimension);
    if (form == TEXT_ALONE && needs_unit(dimension)) {
        schema_reference(out, "tolerance", name, "-text");
        return;
    }
    json_open_object(out, "tolerance");
    json_open_array(out, "anyOf");
    write_number(out, NULL);
    schema_reference(out, NULL, name, "-text");
    json_close_array(out);
    json_close_object(out);
}

static void write_object_form(struct json_writer *out, ingle_dimension dimension, enum form form,
                              bool tolerable)
{
    static const char *const required[] = {"value", "unit"};
    schema_open_object(out, NULL, NULL);
    write_value(out, dimension, form);
    if (form == NUMBER_AND_UNIT) {
        write_unit_names(out, dimension);
    }
    if (tolerable) {
        write_tolerance(out, dimension, form);
    }
    schema_reference(out, "note", "text", "");
    schema_close_object(out, required, form == NUMBER_AND_UNIT ? 2 : 1);
}

static bool has_unit(ingle_dimension dimension)
{
    const ingle_unit *unit;
    for (size_t i = 0; (unit = ingle_unit_at(i)) != NULL; i++) {
        if (ingle_unit_dimension(unit) == dimension) {
            return true;
        }
    }
    return false;
}

static void write_forms(struct json_writer *out, ingle_dimension dimension, bool tolerable)
{
    bool number_alone = !needs_unit(dimension) || schema_takes_document_unit(dimension);
    json_open_array(out, "anyOf");
    schema_reference(out, NULL, ingle_dimension_name(dimension), "-text");
    write_object_form(out, dimension, TEXT_ALONE, tolerable);
    if (has_unit(dimension)) {
        write_object_form(out, dimension, NUMBER_AND_UNIT, tolerable);
    }
    if (number_alone) {
        write_number(out, NULL);
        write_object_form(out, dimension, NUMBER_ALONE, tolerable);
    }
    json_close_array(out);
}

/* ---- definitions ----------------------------------------------------------------------------- */

static void open_definition(struct json_writer *out, const char *name, const char *suffix)
{
    char joined[64] = "";
    if (strlen(name) + strlen(suffix) >= sizeof joined) {
        out->failed = true;
    } else {
        strcat(strcat(joined, name), suffix);
    }
    json_open_object(out, joined);
}

static void write_dimension(struct json_writer *out, ingle_dimension dimension)
{
    const char *name = ingle_dimension_name(dimension);
    open_definition(out, name, "-text");
    write_text_form(out, dimension);
    json_close_object(out);
    open_definition(out, name, "");
    write_forms(out, dimension, true);
    json_close_object(out);
    open_definition(out, name, SCHEMA_FIXED);
    write_forms(out, dimension, false);
    json_close_object(out);
}

static void write_with_unit(struct json_writer *out)
{
    json_open_object(out, SCHEMA_WITH_UNIT);
    json_text(out, "description", "Anything but a number that needs the document's unit.");
    json_open_object(out, "not");
    json_open_array(out, "anyOf");
    schema_type(out, NULL, "number", NULL);
    json_open_object(out, NULL);
    json_text(out, "type", "object");
    json_open_object(out, "properties");
    schema_type(out, "value", "number", NULL);
    json_boolean(out, "unit", false);
    json_close_object(out);
    json_close_object(out);
    json_close_array(out);
    json_close_object(out);
    json_close_object(out);
}

void schema_amounts(struct json_writer *out)
{
    for (ingle_dimension i = INGLE_LENGTH; ingle_dimension_name(i) != NULL; i++) {
        if (ingle_dimension_is_amount(i)) {
            write_dimension(out, i);
        }
    }
    write_with_unit(out);
}
