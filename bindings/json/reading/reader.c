/* SPDX-License-Identifier: MIT */
#include "reading/reader.h"

#include "reading/amount_forms.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* ---- the object ------------------------------------------------------------------------------ */

/* The groups of the catalogue, in its order: a group begins where the name changes. */
static size_t find_groups(struct json_group *groups)
{
    size_t count = 0;
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *quantity = ingle_quantity_at(i);
        const char *name = ingle_quantity_group(quantity);
        if (count == 0 || strcmp(groups[count - 1].name, name) != 0) {
            bool repeats = ingle_quantity_repeats(quantity) != 0;
            groups[count++] = (struct json_group){name, i, 0, repeats};
        }
        groups[count - 1].count++;
    }
    return count;
}

ingle_status json_reader_start(struct json_reader *reader)
{
    memset(reader, 0, sizeof *reader);
    reader->standards = calloc(ingle_standard_count() + 1, sizeof *reader->standards);
    reader->groups = calloc(ingle_quantity_count() + 1, sizeof *reader->groups);
    reader->names = calloc(ingle_quantity_count() + 1, sizeof *reader->names);
    reader->readings = calloc(ingle_reading_count() + 1, sizeof *reader->readings);
    if (reader->standards == NULL || reader->groups == NULL || reader->names == NULL ||
        reader->readings == NULL ||
        ingle_survey_new(NULL, &reader->survey) != INGLE_OK ||
        ingle_amendments_new(NULL, &reader->amendments) != INGLE_OK) {
        json_reader_free(reader);
        return INGLE_ERROR_MEMORY;
    }
    reader->group_count = find_groups(reader->groups);
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        reader->names[i] = ingle_quantity_name(ingle_quantity_at(i));
    }
    return INGLE_OK;
}

void json_reader_free(struct json_reader *reader)
{
    ingle_amendments_free(reader->amendments);
    ingle_survey_free(reader->survey);
    json_kept_free(&reader->kept);
    free(reader->readings);
    free(reader->rounded);
    free(reader->names);
    free(reader->groups);
    free(reader->standards);
    memset(reader, 0, sizeof *reader);
}

/* ---- for the parts of the reader ------------------------------------------------------------- */

const char *json_read_text(struct json_reader *reader, struct json_value value, const char *due,
                           size_t *length)
{
    const struct json_node *node = &reader->scan->nodes[value.node];
    if (node->kind != JSON_STRING) {
        json_refuse_type(&reader->error, value.node, due);
        return NULL;
    }
    const char *text = json_object_get_string(value.tree);
    *length = (size_t)json_object_get_string_len(value.tree);
    if (node->holds_nul) {
        json_refuse_text(&reader->error, value.node, strlen(text), INGLE_ERROR_ENCODING,
                         "A text cannot hold \\u0000.");
        return NULL;
    }
    return text;
}

ingle_status json_read_note(struct json_reader *reader, struct json_value value)
{
    size_t length;
    return json_read_text(reader, value, "a text", &length) == NULL ? reader->error.status
                                                                    : INGLE_OK;
}

void json_list_names(const char *const *names, size_t count, char *list, size_t size)
{
    size_t length = 0;
    list[0] = '\0';
    for (size_t i = 0; i < count && length < size; i++) {
        const char *before = i == 0 ? "" : i + 1 < count ? ", " : " and ";
        length += (size_t)snprintf(list + length, size - length, "%s%s", before, names[i]);
    }
}

ingle_status json_refuse_member(struct json_reader *reader, struct json_value value,
                                const char *name, const char *const *known, size_t count)
{
    char list[JSON_SENTENCE_SIZE / 2];
    const char *nearest = ingle_name_nearest(name, known, count);
    if (nearest != NULL) {
        return json_refuse_name(&reader->error, value.node, INGLE_ERROR_UNKNOWN_NAME,
                                "This name is not known here. Did you mean %s?", nearest);
    }
    json_list_names(known, count, list, sizeof list);
    return json_refuse_name(&reader->error, value.node, INGLE_ERROR_UNKNOWN_NAME,
                            "This name is not known here. Known are %s.", list);
}

ingle_status json_refuse_missing(struct json_reader *reader, struct json_value around,
                                 const char *name)
{
    return json_refuse(&reader->error, around.node, INGLE_ERROR_MISSING_NAME,
                       "This object needs a member \"%s\".", name);
}

ingle_status json_expect_object(struct json_reader *reader, struct json_value value,
                                const char *due)
{
    return json_value_kind(reader->scan, value) == JSON_OBJECT
               ? INGLE_OK
               : json_refuse_type(&reader->error, value.node, due);
}

ingle_status json_note_rounded(struct json_reader *reader, uint32_t node)
{
    if (reader->rounded_count == reader->rounded_capacity) {
        size_t wanted = reader->rounded_capacity == 0 ? 16 : 2 * reader->rounded_capacity;
        uint32_t *grown = realloc(reader->rounded, wanted * sizeof *grown);
        if (grown == NULL) {
            return json_refuse(&reader->error, node, INGLE_ERROR_MEMORY, "%s",
                               ingle_status_text(INGLE_ERROR_MEMORY));
        }
        reader->rounded = grown;
        reader->rounded_capacity = wanted;
    }
    reader->rounded[reader->rounded_count++] = node;
    return INGLE_OK;
}

ingle_status json_find_members(struct json_reader *reader, struct json_value around,
                               const char *const *names, size_t count, struct json_value *values,
                               bool *present)
{
    struct json_walk walk = json_walk_start(reader->scan, around);
    struct json_value value;
    const char *name;
    while (json_walk_next(&walk, &name, &value)) {
        size_t i = 0;
        while (i < count && strcmp(name, names[i]) != 0) {
            i++;
        }
        if (i == count) {
            return json_refuse_member(reader, value, name, names, count);
        }
        values[i] = value;
        present[i] = true;
    }
    return INGLE_OK;
}

const char *const json_document_units[] = {"in", "ft", "mm", "cm", "m", NULL};

/* ---- the members of the document ------------------------------------------------------------- */

enum member { ID, STANDARDS, READINGS, UNIT, TOLERANCE, SURVEY, AMENDMENTS, NOTE, MEMBER_COUNT };

static const char *const member_names[MEMBER_COUNT] = {
    [ID] = "id",     [STANDARDS] = "standards", [READINGS] = "readings",
    [UNIT] = "unit", [TOLERANCE] = "tolerance", [SURVEY] = "survey",
    [NOTE] = "note", [AMENDMENTS] = "amendments"};

struct members {
    struct json_value values[MEMBER_COUNT];
    bool present[MEMBER_COUNT];
};

static ingle_status read_id(struct json_reader *reader, struct json_value value)
{
    reader->id = json_read_text(reader, value, "a text", &reader->id_length);
    return reader->id == NULL ? reader->error.status : INGLE_OK;
}

/* The square of a unit has its name with a 2. */
ingle_status json_read_document_unit(struct json_reader *reader, struct json_value value)
{
    size_t length;
    const char *name = json_read_text(reader, value, "the name of a unit", &length);
    if (name == NULL) {
        return reader->error.status;
    }
    for (size_t i = 0; json_document_units[i] != NULL; i++) {
        if (strcmp(name, json_document_units[i]) == 0) {
            char square[8];
            snprintf(square, sizeof square, "%s2", name);
            reader->unit = ingle_unit_find(name);
            reader->area_unit = ingle_unit_find(square);
            return INGLE_OK;
        }
    }
    return json_refuse(&reader->error, value.node, INGLE_ERROR_UNIT_UNKNOWN,
                       "The unit of a document is one of in, ft, mm, cm and m.");
}

static ingle_status read_tolerance(struct json_reader *reader, struct json_value value)
{
    struct json_amount_form amount;
    ingle_status status = json_read_amount(reader, value, INGLE_LENGTH, false, &amount);
    if (status == INGLE_OK) {
        status = json_parse_measure(reader, &amount.value, INGLE_LENGTH, &reader->tolerance);
    }
    if (status == INGLE_OK && reader->tolerance < 0) {
        status = json_refuse(&reader->error, amount.value.node, INGLE_ERROR_NEGATIVE,
                             "A tolerance is a half-width and cannot be negative.");
    }
    reader->tolerance_node = value.node;
    return status;
}

/* ---- standards ------------------------------------------------------------------------------- */

static ingle_status refuse_standard(struct json_reader *reader, uint32_t node, const char *id)
{
    const char *nearest = NULL;
    /* One by one, since the catalogue has no array of ids: the nearest so far stays in the race. */
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        const char *two[2] = {nearest, ingle_standard_id(ingle_standard_at(i))};
        nearest = ingle_name_nearest(id, nearest == NULL ? two + 1 : two, nearest == NULL ? 1 : 2);
    }
    if (nearest != NULL) {
        return json_refuse(&reader->error, node, INGLE_ERROR_UNKNOWN_STANDARD,
                           "No standard has this id. Did you mean %s?", nearest);
    }
    return json_refuse(&reader->error, node, INGLE_ERROR_UNKNOWN_STANDARD,
                       "No standard has this id.");
}

const ingle_standard *json_read_standard(struct json_reader *reader, struct json_value value)
{
    size_t length;
    const char *id = json_read_text(reader, value, "the id of a standard", &length);
    if (id == NULL) {
        return NULL;
    }
    const ingle_standard *standard = ingle_standard_find(id);
    if (standard == NULL) {
        refuse_standard(reader, value.node, id);
    }
    return standard;
}

static bool is_adopted(const struct json_reader *reader, const ingle_standard *standard)
{
    for (size_t i = 0; i < reader->standard_count; i++) {
        if (reader->standards[i] == standard) {
            return true;
        }
    }
    return false;
}

static ingle_status read_standards(struct json_reader *reader, struct json_value array)
{
    if (json_value_kind(reader->scan, array) != JSON_ARRAY) {
        return json_refuse_type(&reader->error, array.node, "an array of ids of standards");
    }
    struct json_walk walk = json_walk_start(reader->scan, array);
    struct json_value value;
    const char *name;
    while (json_walk_next(&walk, &name, &value)) {
        const ingle_standard *standard = json_read_standard(reader, value);
        if (standard == NULL) {
            return reader->error.status;
        }
        if (is_adopted(reader, standard)) {
            return json_refuse(&reader->error, value.node, INGLE_ERROR_DUPLICATE_NAME,
                               "This standard is named already.");
        }
        reader->standards[reader->standard_count++] = standard;
    }
    return reader->standard_count > 0
               ? INGLE_OK
               : json_refuse(&reader->error, array.node, INGLE_ERROR_NO_STANDARD, "%s",
                             ingle_status_text(INGLE_ERROR_NO_STANDARD));
}

/* ---- the document ---------------------------------------------------------------------------- */

ingle_status json_forget(struct json_reader *reader, const struct json_scan *scan)
{
    json_error_start(&reader->error, scan);
    ingle_survey_clear(reader->survey);
    memset(reader->readings, 0, ingle_reading_count() * sizeof *reader->readings);
    reader->scan = scan;
    reader->id = NULL;
    reader->unit = NULL;
    reader->area_unit = NULL;
    reader->standard_count = 0;
    reader->rounded_count = 0;
    reader->tolerance = 0;
    reader->tolerance_node = JSON_NO_NODE;
    reader->keeping = false;
    reader->authority = NULL;
    if (reader->amended && json_kept_restore(&reader->kept, reader->amendments) != INGLE_OK) {
        return json_refuse(&reader->error, 0, INGLE_ERROR_MEMORY, "%s",
                           ingle_status_text(INGLE_ERROR_MEMORY));
    }
    reader->amended = false;
    return INGLE_OK;
}

typedef ingle_status (*member_reader)(struct json_reader *reader, struct json_value value);

/* In an order of its own: what a member rests on is read before it, wherever it stands. */
static ingle_status read_members(struct json_reader *reader, const struct members *members)
{
    static const struct {
        enum member member;
        member_reader read;
    } readers[] = {{NOTE, json_read_note},          {ID, read_id},
                   {UNIT, json_read_document_unit}, {TOLERANCE, read_tolerance},
                   {STANDARDS, read_standards},     {READINGS, json_read_readings},
                   {SURVEY, json_read_survey},      {AMENDMENTS, json_read_amendments}};
    for (size_t i = 0; i < sizeof readers / sizeof readers[0]; i++) {
        if (members->present[readers[i].member]) {
            ingle_status status = readers[i].read(reader, members->values[readers[i].member]);
            if (status != INGLE_OK) {
                return status;
            }
        }
    }
    return INGLE_OK;
}

ingle_status json_read_document(struct json_reader *reader, const struct json_scan *scan,
                                struct json_object *tree, bool adopted)
{
    struct json_value document = {tree, 0};
    struct members members = {.present = {false}};
    ingle_status status = json_forget(reader, scan);
    if (status == INGLE_OK) {
        status = json_expect_object(reader, document, "an object that is a survey document");
    }
    if (status == INGLE_OK) {
        status = json_find_members(reader, document, member_names, MEMBER_COUNT, members.values,
                                   members.present);
    }
    if (status == INGLE_OK && !members.present[SURVEY]) {
        status = json_refuse_missing(reader, document, member_names[SURVEY]);
    }
    if (status == INGLE_OK) {
        status = read_members(reader, &members);
    }
    if (status == INGLE_OK && !members.present[STANDARDS] && !adopted) {
        status = json_refuse(&reader->error, document.node, INGLE_ERROR_NO_STANDARD, "%s",
                             ingle_status_text(INGLE_ERROR_NO_STANDARD));
    }
    return status;
}
