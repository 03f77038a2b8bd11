/* SPDX-License-Identifier: MIT */
#include "reading/amount_forms.h"

#include <string.h>

const ingle_unit *json_document_unit(const struct json_reader *reader, ingle_dimension dimension)
{
    return dimension == INGLE_LENGTH ? reader->unit
           : dimension == INGLE_AREA ? reader->area_unit
                                     : NULL;
}

/* Whether a text of this dimension brings a unit of its own. */
static bool needs_unit(ingle_dimension dimension)
{
    return dimension != INGLE_SLOPE && dimension != INGLE_RATIO && dimension != INGLE_COUNT;
}

/* ---- the unit of an object ------------------------------------------------------------------- */

static bool has_name(const ingle_unit *unit, const char *name)
{
    const char *known;
    for (size_t i = 0; (known = ingle_unit_name_at(unit, i)) != NULL; i++) {
        if (strcmp(known, name) == 0) {
            return true;
        }
    }
    return false;
}

/* The unit of a name among those of a dimension: `%` is one of slopes and one of ratios. */
static const ingle_unit *find_unit(const char *name, ingle_dimension dimension)
{
    const ingle_unit *unit = ingle_unit_find(name);
    if (unit == NULL || ingle_unit_dimension(unit) == dimension) {
        return unit;
    }
    for (size_t i = 0; i < ingle_unit_count(); i++) {
        const ingle_unit *other = ingle_unit_at(i);
        if (ingle_unit_dimension(other) == dimension && has_name(other, name)) {
            return other;
        }
    }
    return unit;
}

static ingle_status refuse_unit(struct json_reader *reader, uint32_t node, const char *name,
                                ingle_dimension dimension)
{
    const char *ids[64];
    size_t count = 0;
    for (size_t i = 0; i < ingle_unit_count() && count < 64; i++) {
        const ingle_unit *unit = ingle_unit_at(i);
        if (ingle_unit_dimension(unit) == dimension) {
            ids[count++] = ingle_unit_id(unit);
        }
    }
    const char *nearest = ingle_name_nearest(name, ids, count);
    if (nearest != NULL) {
        return json_refuse(&reader->error, node, INGLE_ERROR_UNIT_UNKNOWN,
                           "No unit known here is written like this. Did you mean %s?", nearest);
    }
    return json_refuse(&reader->error, node, INGLE_ERROR_UNIT_UNKNOWN,
                       "No unit known here is written like this.");
}

static ingle_status read_unit(struct json_reader *reader, struct json_value value,
                              ingle_dimension dimension, const ingle_unit **unit)
{
    size_t length;
    const char *name = json_read_text(reader, value, "the name of a unit", &length);
    if (name == NULL) {
        return reader->error.status;
    }
    *unit = find_unit(name, dimension);
    if (*unit == NULL) {
        return refuse_unit(reader, value.node, name, dimension);
    }
    if (ingle_unit_dimension(*unit) != dimension) {
        return json_refuse(&reader->error, value.node, INGLE_ERROR_DIMENSION,
                           "This unit measures another dimension (%s) than is due here (%s).",
                           ingle_dimension_name(ingle_unit_dimension(*unit)),
                           ingle_dimension_name(dimension));
    }
    return INGLE_OK;
}

/* ---- the forms ------------------------------------------------------------------------------- */

static struct json_measure of_number(const struct json_reader *reader, struct json_value value,
                                     const ingle_unit *unit)
{
    const struct json_node *node = &reader->scan->nodes[value.node];
    const char *source = (const char *)reader->scan->bytes + node->start;
    return (struct json_measure){source, node->length, unit, value.node};
}

/* A number in a unit, or a text: with a unit given the text is a bare number too. */
static ingle_status read_measure(struct json_reader *reader, struct json_value value,
                                 const ingle_unit *number_unit, const ingle_unit *text_unit,
                                 const char *due, struct json_measure *measure)
{
    if (json_value_kind(reader->scan, value) == JSON_NUMBER) {
        *measure = of_number(reader, value, number_unit);
        return INGLE_OK;
    }
    *measure = (struct json_measure){NULL, 0, text_unit, value.node};
    measure->text = json_read_text(reader, value, due, &measure->length);
    return measure->text == NULL ? reader->error.status : INGLE_OK;
}

/* Two units for one number are one too many, even if they agree. */
static ingle_status refuse_second_unit(struct json_reader *reader,
                                       const struct json_measure *measure,
                                       ingle_dimension dimension)
{
    ingle_amount amount;
    if (ingle_amount_parse(measure->text, measure->length, dimension, NULL, &amount, NULL) < 0) {
        return INGLE_OK;
    }
    return json_refuse(&reader->error, measure->node, INGLE_ERROR_TRAILING_TEXT,
                       "The text has a unit of its own and the object gives one beside it: leave "
                       "one of them out.");
}

struct amount_members {
    struct json_value value, unit, tolerance;
    bool has_value, has_unit, has_tolerance;
};

static ingle_status find_members(struct json_reader *reader, struct json_value object,
                                 bool tolerable, struct amount_members *found)
{
    static const char *const known[] = {"value", "unit", "note", "tolerance"};
    struct json_walk walk = json_walk_start(reader->scan, object);
    struct json_value value;
    const char *name;
    while (json_walk_next(&walk, &name, &value)) {
        if (strcmp(name, "value") == 0) {
            found->value = value;
            found->has_value = true;
        } else if (strcmp(name, "unit") == 0) {
            found->unit = value;
            found->has_unit = true;
        } else if (tolerable && strcmp(name, "tolerance") == 0) {
            found->tolerance = value;
            found->has_tolerance = true;
        } else if (strcmp(name, "note") != 0) {
            return json_refuse_member(reader, value, name, known, tolerable ? 4 : 3);
        } else if (json_read_note(reader, value) != INGLE_OK) {
            return reader->error.status;
        }
    }
    return found->has_value ? INGLE_OK : json_refuse_missing(reader, object, "value");
}

static ingle_status read_object(struct json_reader *reader, struct json_value object,
                                ingle_dimension dimension, bool tolerable,
                                struct json_amount_form *amount)
{
    struct amount_members found = {.has_value = false};
    const ingle_unit *unit = NULL;
    ingle_status status = find_members(reader, object, tolerable, &found);
    if (status == INGLE_OK && found.has_unit) {
        status = read_unit(reader, found.unit, dimension, &unit);
    }
    if (status != INGLE_OK) {
        return status;
    }
    bool number = json_value_kind(reader->scan, found.value) == JSON_NUMBER;
    const ingle_unit *bare = unit != NULL ? unit : json_document_unit(reader, dimension);
    status = read_measure(reader, found.value, bare, unit, "a number or a text", &amount->value);
    if (status == INGLE_OK && unit != NULL && !number && needs_unit(dimension)) {
        status = refuse_second_unit(reader, &amount->value, dimension);
    }
    if (status == INGLE_OK && found.has_tolerance) {
        /* A bare number is in the value's unit, which a text without `unit` keeps to itself. */
        amount->tolerated = true;
        status = read_measure(reader, found.tolerance, number ? bare : unit, NULL,
                              "a number or a text with a unit", &amount->tolerance);
    }
    return status;
}

ingle_status json_read_amount(struct json_reader *reader, struct json_value value,
                              ingle_dimension dimension, bool tolerable,
                              struct json_amount_form *amount)
{
    amount->tolerated = false;
    if (json_value_kind(reader->scan, value) == JSON_OBJECT) {
        return read_object(reader, value, dimension, tolerable, amount);
    }
    return read_measure(reader, value, json_document_unit(reader, dimension), NULL,
                        "an amount (a text with its unit, or an object)", &amount->value);
}

static ingle_status refuse_measure(struct json_reader *reader, const struct json_measure *measure,
                                   ingle_status status, size_t position)
{
    bool number = reader->scan->nodes[measure->node].kind == JSON_NUMBER;
    if (status == INGLE_ERROR_UNIT_MISSING && number) {
        return json_refuse(&reader->error, measure->node, status,
                           "The number needs a unit: write a text with its unit, or an object of "
                           "value and unit.");
    }
    return json_refuse_text(&reader->error, measure->node, position, status, "%s",
                            ingle_status_text(status));
}

ingle_status json_parse_measure(struct json_reader *reader, const struct json_measure *measure,
                                ingle_dimension dimension, int64_t *base_units)
{
    ingle_amount amount;
    size_t position = 0;
    ingle_status status = ingle_amount_parse(measure->text, measure->length, dimension,
                                             measure->unit, &amount, &position);
    if (status < 0) {
        return refuse_measure(reader, measure, status, position);
    }
    *base_units = amount.value;
    return status == INGLE_ROUNDED ? json_note_rounded(reader, measure->node) : INGLE_OK;
}
