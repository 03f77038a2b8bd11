/* SPDX-License-Identifier: MIT */
/*
 * The survey of a document: its groups, their quantities, and the items of groups that repeat.
 */
#include "reading/amount_forms.h"
#include "reading/reader.h"

#include <string.h>

/* ---- what is wrong with a name --------------------------------------------------------------- */

enum { NAMES_MOST = 128 };

static ingle_status refuse_group(struct json_reader *reader, struct json_value value,
                                 const char *name)
{
    const char *known[NAMES_MOST];
    size_t count = 0;
    for (size_t i = 0; i < reader->group_count && count < NAMES_MOST - 1; i++) {
        known[count++] = reader->groups[i].name;
    }
    known[count++] = "note";
    return json_refuse_member(reader, value, name, known, count);
}

static ingle_status refuse_quantity(struct json_reader *reader, const struct json_group *group,
                                    struct json_value value, const char *name)
{
    const char *known[NAMES_MOST];
    size_t count = 0;
    for (size_t i = 0; i < group->count && count < NAMES_MOST - 2; i++) {
        known[count++] = reader->names[group->first + i];
    }
    known[count++] = "note";
    if (group->repeats) {
        known[count++] = "label";
    }
    return json_refuse_member(reader, value, name, known, count);
}

/* ---- quantities ------------------------------------------------------------------------------ */

static ingle_status refuse_recording(struct json_reader *reader, uint32_t node,
                                     ingle_status status)
{
    const char *sentence = ingle_survey_error_text(reader->survey);
    return json_refuse(&reader->error, node, status, "%s",
                       sentence[0] != '\0' ? sentence : ingle_status_text(status));
}

static ingle_status record_choice(struct json_reader *reader, const ingle_quantity *quantity,
                                  size_t item, struct json_value value)
{
    size_t length;
    const char *choice =
        json_read_text(reader, value, "a text that is one of the choices", &length);
    if (choice == NULL) {
        return reader->error.status;
    }
    ingle_status status = ingle_survey_set_choice(reader->survey, quantity, item, choice);
    return status < 0 ? refuse_recording(reader, value.node, status) : INGLE_OK;
}

static ingle_status record_flag(struct json_reader *reader, const ingle_quantity *quantity,
                                size_t item, struct json_value value)
{
    enum json_kind kind = json_value_kind(reader->scan, value);
    if (kind != JSON_TRUE && kind != JSON_FALSE) {
        return json_refuse_type(&reader->error, value.node, "true or false");
    }
    ingle_status status =
        ingle_survey_set(reader->survey, quantity, item, kind == JSON_TRUE ? 1 : 0, 0);
    return status < 0 ? refuse_recording(reader, value.node, status) : INGLE_OK;
}

/* The tolerance that an amount has, and the value that says so. */
static ingle_status read_tolerance(struct json_reader *reader,
                                   const struct json_amount_form *amount,
                                   ingle_dimension dimension, int64_t *tolerance, uint32_t *node)
{
    *tolerance = 0;
    if (amount->tolerated) {
        *node = amount->tolerance.node;
        return json_parse_measure(reader, &amount->tolerance, dimension, tolerance);
    }
    if (dimension == INGLE_LENGTH) {
        *node = reader->tolerance_node;
        *tolerance = reader->tolerance;
    }
    return INGLE_OK;
}

static ingle_status record_amount(struct json_reader *reader, const ingle_quantity *quantity,
                                  size_t item, struct json_value value)
{
    ingle_dimension dimension = ingle_quantity_dimension(quantity);
    struct json_amount_form amount;
    int64_t base_units = 0, tolerance = 0;
    uint32_t node = value.node;
    ingle_status status = json_read_amount(reader, value, dimension, true, &amount);
    if (status == INGLE_OK) {
        status = json_parse_measure(reader, &amount.value, dimension, &base_units);
    }
    if (status == INGLE_OK) {
        status = read_tolerance(reader, &amount, dimension, &tolerance, &node);
    }
    if (status != INGLE_OK) {
        return status;
    }
    /* First by itself, so that it is known which of the two is refused. */
    status = ingle_survey_set(reader->survey, quantity, item, base_units, 0);
    if (status < 0) {
        return refuse_recording(reader, amount.value.node, status);
    }
    if (tolerance != 0) {
        status = ingle_survey_set(reader->survey, quantity, item, base_units, tolerance);
    }
    return status < 0 ? refuse_recording(reader, node, status) : INGLE_OK;
}

static ingle_status record(struct json_reader *reader, const ingle_quantity *quantity, size_t item,
                           struct json_value value)
{
    switch (ingle_quantity_dimension(quantity)) {
    case INGLE_CHOICE:
        return record_choice(reader, quantity, item, value);
    case INGLE_FLAG:
        return record_flag(reader, quantity, item, value);
    default:
        return record_amount(reader, quantity, item, value);
    }
}

/* ---- groups ---------------------------------------------------------------------------------- */

static const ingle_quantity *find_quantity(const struct json_reader *reader,
                                           const struct json_group *group, const char *name)
{
    for (size_t i = group->first; i < group->first + group->count; i++) {
        if (strcmp(reader->names[i], name) == 0) {
            return ingle_quantity_at(i);
        }
    }
    return NULL;
}

/* The members of one object: the quantities of a group, or of one of its items. */
static ingle_status read_quantities(struct json_reader *reader, const struct json_group *group,
                                    size_t item, struct json_value object)
{
    struct json_walk walk = json_walk_start(reader->scan, object);
    struct json_value value;
    const char *name;
    ingle_status status = INGLE_OK;
    while (status == INGLE_OK && json_walk_next(&walk, &name, &value)) {
        const ingle_quantity *quantity = find_quantity(reader, group, name);
        if (quantity != NULL) {
            status = record(reader, quantity, item, value);
        } else if (strcmp(name, "note") == 0) {
            status = json_read_note(reader, value);
        } else if (!group->repeats || strcmp(name, "label") != 0) {
            status = refuse_quantity(reader, group, value, name);
        }
    }
    return status;
}

/* The label of an item, which has to be known before the item is there; NULL without one. */
static ingle_status find_label(struct json_reader *reader, struct json_value item,
                               const char **label)
{
    struct json_walk walk = json_walk_start(reader->scan, item);
    struct json_value value;
    const char *name;
    *label = NULL;
    while (json_walk_next(&walk, &name, &value)) {
        if (strcmp(name, "label") == 0) {
            size_t length;
            *label = json_read_text(reader, value, "a text", &length);
            return *label == NULL ? reader->error.status : INGLE_OK;
        }
    }
    return INGLE_OK;
}

static ingle_status read_item(struct json_reader *reader, const struct json_group *group,
                              struct json_value value)
{
    const char *label;
    size_t item;
    ingle_status status = json_expect_object(reader, value, "an object");
    if (status == INGLE_OK) {
        status = find_label(reader, value, &label);
    }
    if (status != INGLE_OK) {
        return status;
    }
    status = ingle_survey_add_item(reader->survey, group->name, label, &item);
    if (status < 0) {
        return json_refuse(&reader->error, value.node, status, "%s", ingle_status_text(status));
    }
    return read_quantities(reader, group, item, value);
}

static ingle_status read_items(struct json_reader *reader, const struct json_group *group,
                               struct json_value array)
{
    if (json_value_kind(reader->scan, array) != JSON_ARRAY) {
        return json_refuse_type(&reader->error, array.node,
                                "an array with an object for each, or an empty one,");
    }
    ingle_status status = ingle_survey_open_group(reader->survey, group->name);
    if (status < 0) {
        return json_refuse(&reader->error, array.node, status, "%s", ingle_status_text(status));
    }
    struct json_walk walk = json_walk_start(reader->scan, array);
    struct json_value value;
    const char *name;
    while (status == INGLE_OK && json_walk_next(&walk, &name, &value)) {
        status = read_item(reader, group, value);
    }
    return status;
}

static ingle_status read_group(struct json_reader *reader, const struct json_group *group,
                               struct json_value value)
{
    if (group->repeats) {
        return read_items(reader, group, value);
    }
    ingle_status status = json_expect_object(reader, value, "an object");
    return status == INGLE_OK ? read_quantities(reader, group, 0, value) : status;
}

static const struct json_group *find_group(const struct json_reader *reader, const char *name)
{
    for (size_t i = 0; i < reader->group_count; i++) {
        if (strcmp(reader->groups[i].name, name) == 0) {
            return &reader->groups[i];
        }
    }
    return NULL;
}

ingle_status json_read_survey(struct json_reader *reader, struct json_value survey)
{
    ingle_status status = json_expect_object(reader, survey, "an object");
    if (status != INGLE_OK) {
        return status;
    }
    struct json_walk walk = json_walk_start(reader->scan, survey);
    struct json_value value;
    const char *name;
    while (status == INGLE_OK && json_walk_next(&walk, &name, &value)) {
        const struct json_group *group = find_group(reader, name);
        if (group != NULL) {
            status = read_group(reader, group, value);
        } else if (strcmp(name, "note") == 0) {
            status = json_read_note(reader, value);
        } else {
            status = refuse_group(reader, value, name);
        }
    }
    return status;
}
