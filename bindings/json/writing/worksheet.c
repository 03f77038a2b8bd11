/* SPDX-License-Identifier: MIT */
/*
 * A worksheet as a survey document to fill in: what was recorded stands in it, and what is missing
 * is told in notes, which readers pass over.
 */
#include "json.h"
#include "writing/amount.h"

#include <stdio.h>
#include <string.h>

enum { NOTE_SIZE = 16384 };

struct filling {
    const ingle_json *json;
    struct json_writer *out;
    const ingle_worksheet *worksheet;
    ingle_format format;
    char note[NOTE_SIZE];
    char lists[NOTE_SIZE]; /* on the lists that nobody has begun */
};

static bool is_of(const ingle_quantity *quantity, const char *group)
{
    return strcmp(ingle_quantity_group(quantity), group) == 0;
}

/* ---- what was recorded ----------------------------------------------------------------------- */

static void write_item(struct filling *filling, const char *group, size_t item)
{
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *quantity = ingle_quantity_at(i);
        ingle_amount amount;
        int64_t tolerance;
        if (is_of(quantity, group) &&
            ingle_survey_get(filling->json->reader.survey, quantity, item, &amount, &tolerance)) {
            json_recorded(filling->out, quantity, &amount, tolerance, &filling->format);
        }
    }
}

/* ---- what is missing ------------------------------------------------------------------------- */

/* The choices of a quantity, for the note: ` (one of square, round)`. */
static size_t add_choices(char *note, size_t length, const ingle_quantity *quantity)
{
    size_t count = ingle_quantity_choice_count(quantity);
    for (size_t i = 0; i < count && length < NOTE_SIZE; i++) {
        length += (size_t)snprintf(note + length, NOTE_SIZE - length, "%s%s",
                                   i == 0 ? " (" : ", ", ingle_quantity_choice_at(quantity, i));
    }
    if (count > 0 && length < NOTE_SIZE) {
        length += (size_t)snprintf(note + length, NOTE_SIZE - length, ")");
    }
    return length;
}

/* Puts together the note on what a group lacks, of one item or, with SIZE_MAX, of each. */
static bool make_note(struct filling *filling, const char *group, size_t item)
{
    size_t length = 0;
    for (size_t i = 0; i < ingle_worksheet_count(filling->worksheet); i++) {
        const ingle_quantity *quantity = ingle_worksheet_quantity_at(filling->worksheet, i);
        if (!is_of(quantity, group) ||
            ingle_worksheet_item_at(filling->worksheet, i) != item || length >= NOTE_SIZE) {
            continue;
        }
        length += (size_t)snprintf(filling->note + length, NOTE_SIZE - length, "%s%s",
                                   length > 0 ? " | " : "", ingle_quantity_name(quantity));
        length = length < NOTE_SIZE ? add_choices(filling->note, length, quantity) : length;
        if (length < NOTE_SIZE) {
            length += (size_t)snprintf(filling->note + length, NOTE_SIZE - length, ": %s",
                                       ingle_quantity_how(quantity));
        }
    }
    return length > 0;
}

/* ---- the survey ------------------------------------------------------------------------------ */

/* A group in which nothing is recorded or missing is taken back. */
static void write_group(struct filling *filling, const char *group)
{
    struct json_writer *out = filling->out;
    struct json_mark before = json_mark(out);
    json_open_object(out, group);
    struct json_mark open = json_mark(out);
    write_item(filling, group, 0);
    if (make_note(filling, group, 0)) {
        json_text(out, "note", filling->note);
    }
    bool empty = json_mark(out).length == open.length;
    json_close_object(out);
    if (empty) {
        json_return(out, before);
    }
}

static void write_items(struct filling *filling, const char *group)
{
    struct json_writer *out = filling->out;
    const ingle_survey *survey = filling->json->reader.survey;
    size_t count = ingle_survey_item_count(survey, group);
    if (count == 0) {
        return;
    }
    json_open_array(out, group);
    for (size_t item = 0; item < count; item++) {
        const char *label = ingle_survey_item_label(survey, group, item);
        json_open_object(out, NULL);
        if (label != NULL) {
            json_text(out, "label", label);
        }
        write_item(filling, group, item);
        if (make_note(filling, group, item)) {
            json_text(out, "note", filling->note);
        }
        json_close_object(out);
    }
    json_close_array(out);
}

static bool is_first_of_group(size_t index)
{
    return index == 0 || !is_of(ingle_quantity_at(index - 1),
                                ingle_quantity_group(ingle_quantity_at(index)));
}

/* Lists that nobody has begun are told in a note of the survey: an empty one would say "none". */
static void write_unbegun(struct filling *filling)
{
    char *whole = filling->lists;
    size_t length = 0;
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const char *group = ingle_quantity_group(ingle_quantity_at(i));
        if (is_first_of_group(i) && ingle_quantity_repeats(ingle_quantity_at(i)) &&
            make_note(filling, group, SIZE_MAX) && length < NOTE_SIZE) {
            length += (size_t)snprintf(whole + length, NOTE_SIZE - length,
                                       "%s\"%s\" is a list, of objects with: %s",
                                       length > 0 ? " || " : "", group, filling->note);
        }
    }
    if (length > 0) {
        json_text(filling->out, "note", whole);
    }
}

static void write_survey(struct filling *filling)
{
    json_open_object(filling->out, "survey");
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *quantity = ingle_quantity_at(i);
        if (!is_first_of_group(i)) {
            continue;
        }
        if (ingle_quantity_repeats(quantity)) {
            write_items(filling, ingle_quantity_group(quantity));
        } else {
            write_group(filling, ingle_quantity_group(quantity));
        }
    }
    write_unbegun(filling);
    json_close_object(filling->out);
}

ingle_status ingle_json_worksheet(ingle_json *json, const ingle_worksheet *worksheet)
{
    if (json == NULL || worksheet == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (!json->read) {
        return ingle_json_error(json, INGLE_ERROR_ARGUMENT, "No survey document was read before.");
    }
    struct json_writer *out = &json->writer;
    struct filling filling = {.json = json, .out = out, .worksheet = worksheet};
    const ingle_unit *unit =
        json->unit != NULL ? json->unit : ingle_standard_unit(json->standards[0]);
    filling.format = (ingle_format){.size = sizeof filling.format, .unit = unit};
    json_start(out, false);
    json_open_object(out, NULL);
    if (json->id[0] != '\0') {
        json_text(out, "id", json->id);
    }
    json_open_array(out, "standards");
    for (size_t i = 0; i < json->standard_count; i++) {
        json_text(out, NULL, ingle_standard_id(json->standards[i]));
    }
    json_close_array(out);
    json_text(out, "unit", ingle_unit_id(unit));
    write_survey(&filling);
    json_close_object(out);
    return json_finish(out) ? INGLE_OK : INGLE_ERROR_MEMORY;
}
