/* SPDX-License-Identifier: MIT */
/*
 * The amendments of a document: a local authority's numbers in place of a standard's. They stand in
 * a survey document, or in one of their own that holds for many surveys.
 */
#include "reading/amount_forms.h"
#include "reading/reader.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* What the numbers of an amendment are set under. */
struct amendment {
    const ingle_standard *standard;
    const char *rule;
    const char *citation;
    uint32_t rule_node;
};

/* The dimension of a rule's number; 0 where there is none, which setting it will tell. */
static ingle_dimension number_dimension(const struct amendment *amendment, const char *number)
{
    const ingle_rule *rule;
    for (size_t i = 0; (rule = ingle_standard_rule_at(amendment->standard, i)) != NULL; i++) {
        const char *name;
        ingle_amount amount;
        for (size_t j = 0; strcmp(ingle_rule_id(rule), amendment->rule) == 0 &&
                           (name = ingle_rule_number_name(rule, j)) != NULL;
             j++) {
            if (strcmp(name, number) == 0 && ingle_rule_number_at(rule, j, &amount) == INGLE_OK) {
                return amount.dimension;
            }
        }
    }
    return 0;
}

static ingle_status refuse_number(struct json_reader *reader, const struct amendment *amendment,
                                  const struct json_measure *measure, uint32_t member,
                                  ingle_status status)
{
    const char *sentence = ingle_amendments_error_text(reader->amendments);
    if (sentence[0] == '\0') {
        sentence = ingle_status_text(status);
    }
    switch (status) {
    case INGLE_ERROR_UNKNOWN_RULE:
        return json_refuse(&reader->error, amendment->rule_node, status, "%s", sentence);
    case INGLE_ERROR_UNKNOWN_NUMBER:
        return json_refuse_name(&reader->error, member, status, "%s", sentence);
    default:
        return json_refuse_text(&reader->error, measure->node,
                                ingle_amendments_error_position(reader->amendments), status, "%s",
                                sentence);
    }
}

/* What the library says of a state: it is no number of a document. */
static ingle_status refuse_state(struct json_reader *reader, const struct amendment *amendment,
                                 const char *number, uint32_t member)
{
    ingle_amendments_set_text(reader->amendments, amendment->standard, amendment->rule, number, "",
                              0, NULL, amendment->citation);
    return json_refuse_name(&reader->error, member, INGLE_ERROR_UNKNOWN_NUMBER, "%s",
                            ingle_amendments_error_text(reader->amendments));
}

static ingle_status set_number(struct json_reader *reader, const struct amendment *amendment,
                               const char *number, struct json_value value)
{
    struct json_amount_form amount = {.value = {.text = ""}};
    ingle_dimension dimension = number_dimension(amendment, number);
    ingle_status status = INGLE_OK;
    int64_t base_units;
    if (dimension != 0 && !ingle_dimension_is_amount(dimension)) {
        return refuse_state(reader, amendment, number, value.node);
    }
    if (dimension != 0) {
        status = json_read_amount(reader, value, dimension, false, &amount);
    }
    if (status == INGLE_OK && dimension != 0) {
        status = json_parse_measure(reader, &amount.value, dimension, &base_units);
    }
    if (status != INGLE_OK) {
        return status;
    }
    struct json_amendment set = {amendment->standard, amendment->rule,     number,
                                 amount.value.text,   amendment->citation, amount.value.length,
                                 amount.value.unit};
    status = json_amendment_set(reader->amendments, &set);
    if (status >= 0 && reader->keeping && !json_kept_add(&reader->kept, &set)) {
        return json_refuse(&reader->error, value.node, INGLE_ERROR_MEMORY, "%s",
                           ingle_status_text(INGLE_ERROR_MEMORY));
    }
    return status < 0 ? refuse_number(reader, amendment, &amount.value, value.node, status)
                      : INGLE_OK;
}

static ingle_status set_numbers(struct json_reader *reader, const struct amendment *amendment,
                                struct json_value set)
{
    struct json_walk walk = json_walk_start(reader->scan, set);
    struct json_value value;
    const char *name;
    size_t count = 0;
    while (json_walk_next(&walk, &name, &value)) {
        bool note = strcmp(name, "note") == 0;
        ingle_status status =
            note ? json_read_note(reader, value) : set_number(reader, amendment, name, value);
        if (status != INGLE_OK) {
            return status;
        }
        count += !note;
    }
    return count > 0 ? INGLE_OK
                     : json_refuse(&reader->error, set.node, INGLE_ERROR_MISSING_NAME,
                                   "This object needs at least one number of the rule.");
}

enum { STANDARD, RULE, SET, CITATION, AMENDMENT_NOTE, PART_COUNT };

static const char *const part_names[PART_COUNT] = {
    [STANDARD] = "standard", [RULE] = "rule",           [SET] = "set",
    [CITATION] = "citation", [AMENDMENT_NOTE] = "note",
};

static ingle_status find_parts(struct json_reader *reader, struct json_value amendment,
                               struct json_value parts[PART_COUNT])
{
    bool present[PART_COUNT] = {false};
    ingle_status status =
        json_find_members(reader, amendment, part_names, PART_COUNT, parts, present);
    if (status != INGLE_OK) {
        return status;
    }
    for (size_t i = 0; i < AMENDMENT_NOTE; i++) {
        if (!present[i]) {
            return json_refuse_missing(reader, amendment, part_names[i]);
        }
    }
    return present[AMENDMENT_NOTE] ? json_read_note(reader, parts[AMENDMENT_NOTE]) : INGLE_OK;
}

/* Sets the numbers under the citation as findings show it: whose it is, if that is told, first. */
static ingle_status set_as_cited(struct json_reader *reader, struct amendment *amendment,
                                 struct json_value set)
{
    if (reader->authority == NULL) {
        return set_numbers(reader, amendment, set);
    }
    size_t size = strlen(reader->authority) + strlen(amendment->citation) + 3;
    char *citation = malloc(size);
    if (citation == NULL) {
        return json_refuse(&reader->error, set.node, INGLE_ERROR_MEMORY, "%s",
                           ingle_status_text(INGLE_ERROR_MEMORY));
    }
    snprintf(citation, size, "%s, %s", reader->authority, amendment->citation);
    amendment->citation = citation;
    ingle_status status = set_numbers(reader, amendment, set);
    free(citation);
    return status;
}

static ingle_status read_amendment(struct json_reader *reader, struct json_value value)
{
    struct json_value parts[PART_COUNT];
    struct amendment amendment;
    size_t length;
    ingle_status status = json_expect_object(reader, value, "an object that is an amendment");
    if (status == INGLE_OK) {
        status = find_parts(reader, value, parts);
    }
    if (status != INGLE_OK) {
        return status;
    }
    amendment.standard = json_read_standard(reader, parts[STANDARD]);
    if (amendment.standard == NULL) {
        return reader->error.status;
    }
    amendment.rule_node = parts[RULE].node;
    amendment.rule = json_read_text(reader, parts[RULE], "the id of a rule", &length);
    if (amendment.rule == NULL) {
        return reader->error.status;
    }
    amendment.citation = json_read_text(reader, parts[CITATION], "a text", &length);
    if (amendment.citation == NULL) {
        return reader->error.status;
    }
    /* Before an authority stands before it, with which it would not be blank. */
    if (amendment.citation[strspn(amendment.citation, " \t\r\n")] == '\0') {
        return json_refuse(&reader->error, parts[CITATION].node, INGLE_ERROR_NO_CITATION, "%s",
                           ingle_status_text(INGLE_ERROR_NO_CITATION));
    }
    status = json_expect_object(reader, parts[SET], "an object of numbers");
    return status == INGLE_OK ? set_as_cited(reader, &amendment, parts[SET]) : status;
}

ingle_status json_read_amendments(struct json_reader *reader, struct json_value amendments)
{
    if (json_value_kind(reader->scan, amendments) != JSON_ARRAY) {
        return json_refuse_type(&reader->error, amendments.node, "an array of amendments");
    }
    struct json_walk walk = json_walk_start(reader->scan, amendments);
    struct json_value value;
    const char *name;
    while (json_walk_next(&walk, &name, &value)) {
        /* Before it is read: some of its numbers may be set when another is refused. */
        reader->amended = true;
        ingle_status status = read_amendment(reader, value);
        if (status != INGLE_OK) {
            return status;
        }
    }
    return INGLE_OK;
}

/* ---- a document of amendments ---------------------------------------------------------------- */

enum { AUTHORITY, UNIT, AMENDMENTS, NOTE, MEMBER_COUNT };

static const char *const member_names[MEMBER_COUNT] = {
    [AUTHORITY] = "authority", [UNIT] = "unit", [AMENDMENTS] = "amendments", [NOTE] = "note"};

static ingle_status read_authority(struct json_reader *reader, struct json_value value)
{
    size_t length = 0;
    const char *authority = json_read_text(reader, value, "a text", &length);
    reader->authority = length > 0 ? authority : NULL;
    return authority == NULL ? reader->error.status : INGLE_OK;
}

static ingle_status read_members(struct json_reader *reader, struct json_value document)
{
    static ingle_status (*const readers[MEMBER_COUNT])(struct json_reader *, struct json_value) = {
        [AUTHORITY] = read_authority,
        [UNIT] = json_read_document_unit,
        [AMENDMENTS] = json_read_amendments,
        [NOTE] = json_read_note};
    static const int order[MEMBER_COUNT] = {NOTE, AUTHORITY, UNIT, AMENDMENTS};
    struct json_value values[MEMBER_COUNT];
    bool present[MEMBER_COUNT] = {false};
    ingle_status status =
        json_find_members(reader, document, member_names, MEMBER_COUNT, values, present);
    if (status == INGLE_OK && !present[AMENDMENTS]) {
        status = json_refuse_missing(reader, document, member_names[AMENDMENTS]);
    }
    for (size_t i = 0; status == INGLE_OK && i < MEMBER_COUNT; i++) {
        if (present[order[i]]) {
            status = readers[order[i]](reader, values[order[i]]);
        }
    }
    return status;
}

ingle_status json_read_amendments_document(struct json_reader *reader,
                                           const struct json_scan *scan,
                                           struct json_object *tree)
{
    struct json_value document = {tree, 0};
    size_t before = reader->kept.count;
    ingle_status status = json_forget(reader, scan);
    if (status == INGLE_OK) {
        reader->keeping = true;
        status = read_members(reader, document);
    }
    if (status != INGLE_OK) {
        json_kept_cut(&reader->kept, before); /* and what was set is taken back by forgetting */
        return status;
    }
    reader->amended = false;
    return INGLE_OK;
}
