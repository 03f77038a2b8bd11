/* SPDX-License-Identifier: MIT */
/*
 * The schema of survey documents: groups and quantities are those of the catalogue.
 */
#include "schema/schema.h"

#include <ingle/ingle.h>

#include <stdio.h>
#include <string.h>

/* ---- quantities ------------------------------------------------------------------------------ */

static void write_assumed(struct json_writer *out, const ingle_quantity *quantity)
{
    ingle_amount assumed;
    if (!ingle_quantity_assumed(quantity, &assumed)) {
        return;
    }
    if (assumed.dimension == INGLE_CHOICE) {
        json_text(out, "default", ingle_quantity_choice_at(quantity, (size_t)assumed.value));
    } else {
        json_boolean(out, "default", assumed.value != 0);
    }
}

static void write_choices(struct json_writer *out, const ingle_quantity *quantity)
{
    json_open_array(out, "enum");
    for (size_t i = 0; i < ingle_quantity_choice_count(quantity); i++) {
        json_text(out, NULL, ingle_quantity_choice_at(quantity, i));
    }
    json_close_array(out);
}

static void write_quantity(struct json_writer *out, const ingle_quantity *quantity)
{
    ingle_dimension dimension = ingle_quantity_dimension(quantity);
    json_open_object(out, ingle_quantity_name(quantity));
    json_text(out, "title", ingle_quantity_label(quantity));
    json_text(out, "description", ingle_quantity_how(quantity));
    if (dimension == INGLE_CHOICE) {
        write_choices(out, quantity);
    } else if (dimension == INGLE_FLAG) {
        json_text(out, "type", "boolean");
    } else {
        char reference[64];
        snprintf(reference, sizeof reference, "#/$defs/%s", ingle_dimension_name(dimension));
        json_text(out, "$ref", reference);
    }
    write_assumed(out, quantity);
    json_close_object(out);
}

/* ---- groups ---------------------------------------------------------------------------------- */

static bool is_in_group(const ingle_quantity *quantity, const char *group)
{
    return quantity != NULL && strcmp(ingle_quantity_group(quantity), group) == 0;
}

static void write_group(struct json_writer *out, size_t first)
{
    const char *group = ingle_quantity_group(ingle_quantity_at(first));
    bool repeats = ingle_quantity_repeats(ingle_quantity_at(first)) != 0;
    if (repeats) {
        schema_open_array(out, group, "Empty where one looked and there is none.");
        schema_open_object(out, "items", NULL);
        schema_reference(out, "label", "text", "");
    } else {
        schema_open_object(out, group, NULL);
    }
    for (size_t i = first; is_in_group(ingle_quantity_at(i), group); i++) {
        write_quantity(out, ingle_quantity_at(i));
    }
    schema_reference(out, "note", "text", "");
    schema_close_object(out, NULL, 0);
    if (repeats) {
        schema_close_array(out);
    }
}

static void write_groups(struct json_writer *out)
{
    const char *group = "";
    schema_open_object(out, "survey", "What was measured and observed; all of it may be left out.");
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *quantity = ingle_quantity_at(i);
        if (!is_in_group(quantity, group)) {
            group = ingle_quantity_group(quantity);
            write_group(out, i);
        }
    }
    schema_reference(out, "note", "text", "");
    schema_close_object(out, NULL, 0);
}

/* ---- without the document's unit ------------------------------------------------------------- */

static void write_group_with_units(struct json_writer *out, size_t first)
{
    const char *group = ingle_quantity_group(ingle_quantity_at(first));
    bool repeats = ingle_quantity_repeats(ingle_quantity_at(first)) != 0;
    json_open_object(out, group);
    if (repeats) {
        json_open_object(out, "items");
    }
    json_open_object(out, "properties");
    for (size_t i = first; is_in_group(ingle_quantity_at(i), group); i++) {
        const ingle_quantity *quantity = ingle_quantity_at(i);
        if (schema_takes_document_unit(ingle_quantity_dimension(quantity))) {
            schema_reference(out, ingle_quantity_name(quantity), SCHEMA_WITH_UNIT, "");
        }
    }
    json_close_object(out);
    if (repeats) {
        json_close_object(out);
    }
    json_close_object(out);
}

static void write_groups_with_units(struct json_writer *out)
{
    const char *group = "";
    json_open_object(out, "survey");
    json_open_object(out, "properties");
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *quantity = ingle_quantity_at(i);
        if (!is_in_group(quantity, group)) {
            group = ingle_quantity_group(quantity);
            write_group_with_units(out, i);
        }
    }
    json_close_object(out);
    json_close_object(out);
}

static void write_without_unit(struct json_writer *out)
{
    schema_open_without_unit(out);
    schema_reference(out, "tolerance", SCHEMA_WITH_UNIT, "");
    write_groups_with_units(out);
    schema_amendments_with_units(out);
    schema_close_without_unit(out);
}

/* ---- the document ---------------------------------------------------------------------------- */

static void write_standards(struct json_writer *out)
{
    schema_open_array(out, "standards",
                      "The standards adopted where the fireplace stands. There is no default: give "
                      "them here or on the command line.");
    json_open_object(out, "items");
    schema_enum(out, schema_standard_at);
    json_close_object(out);
    json_integer(out, "minItems", 1);
    json_boolean(out, "uniqueItems", true);
    schema_close_array(out);
}

static void write_reading(struct json_writer *out, const ingle_reading *reading)
{
    json_open_object(out, ingle_reading_id(reading));
    json_text(out, "description", ingle_reading_label(reading));
    json_open_array(out, "enum");
    for (size_t i = 0; i < ingle_reading_option_count(reading); i++) {
        json_text(out, NULL, ingle_reading_option_at(reading, i));
    }
    json_close_array(out);
    json_text(out, "default", ingle_reading_option_at(reading, 0));
    json_close_object(out);
}

static void write_readings(struct json_writer *out)
{
    schema_open_object(out, "readings",
                       "How to read what a publication leaves open: see `ingle list readings`.");
    for (size_t i = 0; i < ingle_reading_count(); i++) {
        write_reading(out, ingle_reading_at(i));
    }
    schema_reference(out, "note", "text", "");
    schema_close_object(out, NULL, 0);
}

void schema_survey(struct json_writer *out)
{
    json_text(out, "title", "Survey");
    json_text(out, "description",
              "What was measured and observed at a fireplace or stove, and the standards to judge "
              "it by.");
    json_text(out, "type", "object");
    json_open_object(out, "properties");
    schema_reference(out, "id", "text", "");
    write_standards(out);
    write_readings(out);
    schema_unit(out, "; results are shown in it");
    schema_reference(out, "tolerance", ingle_dimension_name(INGLE_LENGTH), SCHEMA_FIXED);
    write_groups(out);
    schema_amendments(out);
    schema_reference(out, "note", "text", "");
    json_close_object(out);
    json_open_array(out, "required");
    json_text(out, NULL, "survey");
    json_close_array(out);
    json_boolean(out, "additionalProperties", false);
    write_without_unit(out);
    schema_definitions(out);
}
