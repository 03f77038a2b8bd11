/* SPDX-License-Identifier: MIT */
/*
 * A worksheet as a survey document to fill in: what was recorded stands in it with how it is
 * judged, and what is missing or taken for granted is told in notes, which readers pass over.
 */
#include "json.h"
#include "writing/amount.h"

#include <stdio.h>
#include <string.h>

enum { NOTE_SIZE = 65536 };

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
            json_recorded(filling->out, quantity, &amount, tolerance,
                          filling->json->reader.tolerance, &filling->format);
        }
    }
}

/* ---- notes ----------------------------------------------------------------------------------- */

struct note {
    char *text;
    size_t length; /* what does not fit is left out, whole pieces at a time */
};

static void add(struct note *note, const char *piece)
{
    size_t length = strlen(piece);
    if (note->length + length < NOTE_SIZE) {
        memcpy(note->text + note->length, piece, length + 1);
        note->length += length;
    }
}

/* The choices of a quantity: ` (square, round)`. */
static void add_choices(struct note *note, const ingle_quantity *quantity)
{
    size_t count = ingle_quantity_choice_count(quantity);
    for (size_t i = 0; i < count; i++) {
        add(note, i == 0 ? " (" : ", ");
        add(note, ingle_quantity_choice_at(quantity, i));
    }
    add(note, count > 0 ? ")" : "");
}

/* What is taken for granted of a quantity, as a document has it: `; false is taken for granted`. */
static void add_assumed(struct note *note, const ingle_quantity *quantity)
{
    ingle_amount assumed;
    if (!ingle_quantity_assumed(quantity, &assumed)) {
        return;
    }
    add(note, "; ");
    add(note, assumed.dimension == INGLE_CHOICE
                  ? ingle_quantity_choice_at(quantity, (size_t)assumed.value)
              : assumed.value != 0 ? "true"
                                   : "false");
    add(note, " is taken for granted");
}

static void add_quantity(struct note *note, const ingle_quantity *quantity, bool assumed)
{
    add(note, note->length > 0 ? " | " : "");
    add(note, ingle_quantity_name(quantity));
    add_choices(note, quantity);
    if (assumed) {
        add_assumed(note, quantity);
    }
    add(note, ": ");
    add(note, ingle_quantity_how(quantity));
}

/* What a group lacks, of one item or, with SIZE_MAX, of each. */
static void add_missing(const struct filling *filling, struct note *note, const char *group,
                        size_t item)
{
    for (size_t i = 0; i < ingle_worksheet_count(filling->worksheet); i++) {
        const ingle_quantity *quantity = ingle_worksheet_quantity_at(filling->worksheet, i);
        if (is_of(quantity, group) && ingle_worksheet_item_at(filling->worksheet, i) == item) {
            add_quantity(note, quantity, false);
        }
    }
}

/* What is taken for granted of a group where it was not recorded. */
static void add_granted(const struct filling *filling, struct note *note, const char *group,
                        size_t item)
{
    const ingle_survey *survey = filling->json->reader.survey;
    for (size_t i = 0; i < ingle_worksheet_assumed_count(filling->worksheet); i++) {
        const ingle_quantity *quantity = ingle_worksheet_assumed_at(filling->worksheet, i);
        bool recorded =
            item != SIZE_MAX && ingle_survey_get(survey, quantity, item, NULL, NULL) != 0;
        if (is_of(quantity, group) && !recorded) {
            add_quantity(note, quantity, true);
        }
    }
}

/* Puts together the note on a group; false where there is nothing to say. */
static bool make_note(struct filling *filling, const char *group, size_t item)
{
    struct note note = {.text = filling->note};
    note.text[0] = '\0';
    add_missing(filling, &note, group, item);
    add_granted(filling, &note, group, item);
    return note.length > 0;
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
    if (!ingle_survey_is_open(survey, group)) {
        return;
    }
    json_open_array(out, group); /* empty, it says that there is none */
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
    struct note lists = {.text = filling->lists};
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const char *group = ingle_quantity_group(ingle_quantity_at(i));
        if (is_first_of_group(i) && ingle_quantity_repeats(ingle_quantity_at(i)) &&
            !ingle_survey_is_open(filling->json->reader.survey, group) &&
            make_note(filling, group, SIZE_MAX)) {
            add(&lists, lists.length > 0 ? " || \"" : "\"");
            add(&lists, group);
            add(&lists, "\" is a list, of objects with: ");
            add(&lists, filling->note);
        }
    }
    if (lists.length > 0) {
        json_text(filling->out, "note", lists.text);
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

/* ---- how it is judged ------------------------------------------------------------------------ */

static void write_standards(const ingle_json *json, struct json_writer *out)
{
    json_open_array(out, "standards");
    for (size_t i = 0; i < json->standard_count; i++) {
        json_text(out, NULL, ingle_standard_id(json->standards[i]));
    }
    json_close_array(out);
}

/* Those that follow another option than the first. */
static void write_readings(const ingle_json *json, struct json_writer *out)
{
    struct json_mark before = json_mark(out);
    bool any = false;
    json_open_object(out, "readings");
    for (size_t i = 0; i < json->how.reading_count; i++) {
        const ingle_reading *reading = ingle_reading_at(i);
        if (json->how.readings[i] > 0) {
            json_text(out, ingle_reading_id(reading),
                      ingle_reading_option_at(reading, (size_t)json->how.readings[i]));
            any = true;
        }
    }
    json_close_object(out);
    if (!any) {
        json_return(out, before);
    }
}

/* A town's and the document's own, each number under the citation that findings show. */
static void write_amendments(const struct filling *filling)
{
    struct json_writer *out = filling->out;
    const ingle_amendments *amendments = filling->json->how.amendments;
    const ingle_standard *standard;
    const char *rule, *number, *citation;
    ingle_amount amount;
    if (ingle_amendments_count(amendments) == 0) {
        return;
    }
    json_open_array(out, "amendments");
    for (size_t i = 0; ingle_amendments_at(amendments, i, &standard, &rule, &number, &amount,
                                           &citation) == INGLE_OK; i++) {
        json_open_object(out, NULL);
        json_text(out, "standard", ingle_standard_id(standard));
        json_text(out, "rule", rule);
        json_open_object(out, "set");
        json_measure(out, number, &amount, NULL, &filling->format);
        json_close_object(out);
        json_text(out, "citation", citation);
        json_close_object(out);
    }
    json_close_array(out);
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
    write_standards(json, out);
    json_text(out, "unit", ingle_unit_id(unit));
    if (json->reader.tolerance > 0) {
        json_tolerance(out, json->reader.tolerance, &filling.format);
    }
    write_readings(json, out);
    write_survey(&filling);
    write_amendments(&filling);
    json_close_object(out);
    return json_finish(out) ? INGLE_OK : INGLE_ERROR_MEMORY;
}
