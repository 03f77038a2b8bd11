/* SPDX-License-Identifier: MIT */
#include "json.h"

#include "writing/report.h"

#include <json-c/json_object.h>
#include <json-c/json_tokener.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* A survey needs six: document, survey, group, item, amount; the rest is for what will come. */
enum { DEPTH_LIMIT = 16 };

/* What is left where there is no memory for anything else. */
static const char no_memory_text[] =
    "{\"error\": {\"code\": \"memory\", \"message\": \"Memory could not be had.\", "
    "\"at\": \"\"}}\n";

/* ---- the object ------------------------------------------------------------------------------ */

ingle_status ingle_json_new(ingle_json **json)
{
    if (json == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_json *made = calloc(1, sizeof *made);
    if (made == NULL) {
        return INGLE_ERROR_MEMORY;
    }
    json_scan_init(&made->scan, NULL);
    ingle_status status = json_reader_start(&made->reader);
    if (status == INGLE_OK) {
        status = ingle_report_new(NULL, &made->report);
    }
    if (status == INGLE_OK) {
        status = ingle_assessment_new(NULL, &made->assessment);
    }
    made->tokener = json_tokener_new_ex(2 * DEPTH_LIMIT);
    if (status != INGLE_OK || made->tokener == NULL) {
        ingle_json_free(made);
        return INGLE_ERROR_MEMORY;
    }
    *json = made;
    return INGLE_OK;
}

void ingle_json_free(ingle_json *json)
{
    if (json == NULL) {
        return;
    }
    ingle_assessment_free(json->assessment);
    ingle_report_free(json->report);
    json_reader_free(&json->reader);
    if (json->tokener != NULL) {
        json_tokener_free(json->tokener);
    }
    json_scan_free(&json->scan);
    json_free(&json->writer);
    free(json);
}

size_t ingle_json_longest(void)
{
    return INGLE_JSON_LONGEST;
}

ingle_verdict ingle_json_verdict(const ingle_json *json)
{
    return json == NULL ? INGLE_NOT_APPLICABLE : json->verdict;
}

const char *ingle_json_text(const ingle_json *json, size_t *length)
{
    const char *text = "";
    size_t bytes = 0;
    if (json != NULL && json->writer.failed) {
        text = no_memory_text;
        bytes = sizeof no_memory_text - 1;
    } else if (json != NULL && json->writer.bytes != NULL) {
        text = json->writer.bytes;
        bytes = json->writer.length;
    }
    if (length != NULL) {
        *length = bytes;
    }
    return text;
}

/* ---- errors ---------------------------------------------------------------------------------- */

static ingle_status leave_error(ingle_json *json, bool one_line)
{
    const struct json_error *error = &json->reader.error;
    json->verdict = INGLE_NOT_APPLICABLE;
    return json_error_write(error, &json->writer, one_line) ? error->status : INGLE_ERROR_MEMORY;
}

static ingle_status refuse_call(ingle_json *json, ingle_status status, const char *sentence,
                                bool one_line)
{
    json_refuse_call(&json->reader.error, status, sentence);
    return leave_error(json, one_line);
}

ingle_status ingle_json_error(ingle_json *json, ingle_status status, const char *message)
{
    if (json == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (status >= 0) {
        status = INGLE_ERROR_ARGUMENT;
        message = "The status of an error document is negative.";
    }
    return refuse_call(json, status, message, false);
}

/* ---- checking -------------------------------------------------------------------------------- */

static bool is_document_unit(const ingle_unit *unit)
{
    const char *const *names = json_document_units;
    for (size_t i = 0; names[i] != NULL; i++) {
        if (unit == ingle_unit_find(names[i])) {
            return true;
        }
    }
    return false;
}

/* Whether each number is that of an option of its reading, or -1. */
static bool are_options(const int32_t *readings, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        const ingle_reading *reading = ingle_reading_at(i);
        if (readings == NULL || reading == NULL || readings[i] < -1 ||
            readings[i] >= (int32_t)ingle_reading_option_count(reading)) {
            return false;
        }
    }
    return true;
}

/* The options as this release knows them; zeroed ones for NULL. */
static ingle_status take_options(const ingle_json_options *given, ingle_json_options *taken)
{
    const unsigned char *bytes = (const unsigned char *)given;
    *taken = (ingle_json_options){.size = sizeof *taken};
    if (given == NULL) {
        return INGLE_OK;
    }
    if (given->size < sizeof *taken || given->size > 4096) {
        return INGLE_ERROR_STRUCT_SIZE;
    }
    for (size_t i = sizeof *taken; i < given->size; i++) {
        if (bytes[i] != 0) {
            return INGLE_ERROR_STRUCT_NEWER;
        }
    }
    *taken = *given;
    bool named = taken->standard_count == 0 || taken->standards != NULL;
    for (size_t i = 0; named && i < taken->standard_count; i++) {
        named = taken->standards[i] != NULL;
    }
    bool shown = taken->unit == NULL || is_document_unit(taken->unit);
    return named && shown && are_options(taken->readings, taken->reading_count)
               ? INGLE_OK
               : INGLE_ERROR_ARGUMENT;
}

/* Looks only as far as the limit, which is the place to report. */
static ingle_status refuse_length(ingle_json *json, const char *document)
{
    struct json_error *error = &json->reader.error;
    json_scan_document(&json->scan, document, INGLE_JSON_LONGEST, 0);
    json_error_start(error, &json->scan);
    struct json_fault fault = {INGLE_ERROR_LENGTH, INGLE_JSON_LONGEST, JSON_NO_NODE, ""};
    snprintf(fault.sentence, sizeof fault.sentence,
             "The document goes on here, after %d bytes, the longest that is read.",
             INGLE_JSON_LONGEST);
    return json_refuse_fault(error, &fault);
}

/* json-c's tree of a document that the scan has taken. */
static ingle_status parse(ingle_json *json, const char *document, size_t length,
                          struct json_object **tree)
{
    *tree = json_tokener_parse_ex(json->tokener, document, (int)length);
    if (*tree != NULL && json_tree_is_whole(&json->scan, *tree)) {
        return INGLE_OK;
    }
    /* What RFC 8259 allows is refused, or cut, only for lack of memory; json-c may not say so. */
    json_tokener_reset(json->tokener);
    return json_refuse(&json->reader.error, 0, INGLE_ERROR_MEMORY, "%s",
                       ingle_status_text(INGLE_ERROR_MEMORY));
}

/* What the library found when it judged, at its place in the document. */
static ingle_status refuse_judging(ingle_json *json, ingle_status status)
{
    struct json_error *error = &json->reader.error;
    const char *sentence = ingle_report_error_text(json->report);
    const char *subject = ingle_report_error_subject(json->report);
    json_refuse(error, json_pointer_node(&json->scan, subject), status, "%s",
                sentence[0] != '\0' ? sentence : ingle_status_text(status));
    error->at = subject;
    return status;
}

/* The options of readings to follow: those of the call, else the document's, else the first. */
static const int32_t *follow(struct json_reader *reader, const ingle_json_options *options)
{
    for (size_t i = 0; i < options->reading_count; i++) {
        if (options->readings[i] >= 0) {
            reader->readings[i] = options->readings[i];
        }
    }
    return reader->readings;
}

/* An id longer than what is kept is cut between two of its letters. */
static void keep_id(ingle_json *json)
{
    const struct json_reader *reader = &json->reader;
    size_t length = reader->id == NULL ? 0 : reader->id_length;
    if (length > JSON_ID_MOST) {
        length = JSON_ID_MOST;
        while (length > 0 && ((unsigned char)reader->id[length] & 0xC0) == 0x80) {
            length--;
        }
    }
    memcpy(json->id, length > 0 ? reader->id : "", length);
    json->id[length] = '\0';
}

/* An id in words: `living-room` is `Living room`. */
static void make_title(ingle_json *json)
{
    memcpy(json->title, json->id, sizeof json->title);
    for (char *at = json->title; *at != '\0'; at++) {
        *at = *at == '-' || *at == '_' ? ' ' : *at;
    }
    if (json->title[0] >= 'a' && json->title[0] <= 'z') {
        json->title[0] = (char)(json->title[0] - 'a' + 'A');
    }
}

/* What a check of the document does, and is shown in. */
static void settle(ingle_json *json, const ingle_json_options *options)
{
    struct json_reader *reader = &json->reader;
    bool adopted = options->standard_count > 0;
    json->standards = adopted ? options->standards : reader->standards;
    json->standard_count = adopted ? options->standard_count : reader->standard_count;
    json->unit = options->unit != NULL ? options->unit : reader->unit;
    const ingle_unit *unit = json->unit;
    json->how = (ingle_check_options){.size = sizeof json->how};
    json->how.amendments = reader->amendments;
    json->how.readings = follow(reader, options);
    json->how.reading_count = ingle_reading_count();
    json->how.without_working = options->without_working;
    json->how.with_not_applicable = options->with_not_applicable;
    json->how.least_basis = options->least_basis;
    json->how.metric_remedies =
        ingle_unit_is_metric(unit != NULL ? unit : ingle_standard_unit(json->standards[0]));
    json->probability = (ingle_probability_options){.size = 0};
    keep_id(json);
    make_title(json);
}

/* How sure the findings are, where that was asked for. */
static ingle_status assess(ingle_json *json, const ingle_probability_options *options)
{
    if (options == NULL) {
        return INGLE_OK;
    }
    ingle_status status = ingle_assess(json->report, options, json->assessment);
    if (status != INGLE_OK) {
        json_refuse_call(&json->reader.error, status, NULL);
        return status;
    }
    json->probability = *options;
    return INGLE_OK;
}

static ingle_status judge(ingle_json *json, const ingle_json_options *options)
{
    settle(json, options);
    ingle_status status = ingle_check(json->reader.survey, json->standards, json->standard_count,
                                      &json->how, json->report);
    if (status < 0) {
        return refuse_judging(json, status);
    }
    json->verdict = ingle_report_verdict(json->report);
    json->read = true;
    return assess(json, options->probability);
}

static ingle_status write_report(ingle_json *json, bool one_line)
{
    bool assessed = json->probability.size != 0;
    struct json_report report = {.report = json->report,
                                 .document = &json->reader,
                                 .unit = json->unit,
                                 .assessment = assessed ? json->assessment : NULL,
                                 .probability = &json->probability,
                                 .with_working = !json->how.without_working};
    return json_report_write(&report, &json->writer, one_line) ? INGLE_OK : INGLE_ERROR_MEMORY;
}

/* The shortest document that says what came of reading. */
static ingle_status write_verdict(ingle_json *json, bool one_line)
{
    json_start(&json->writer, one_line);
    json_open_object(&json->writer, NULL);
    json_text(&json->writer, "verdict", ingle_verdict_name(json->verdict));
    json_close_object(&json->writer);
    return json_finish(&json->writer) ? INGLE_OK : INGLE_ERROR_MEMORY;
}

/* Takes the bytes of a document through the scan; `due` is what it has to be. */
static ingle_status take_document(ingle_json *json, const char *document, size_t length,
                                  const char *due, struct json_object **tree)
{
    struct json_error *error = &json->reader.error;
    if (length > INGLE_JSON_LONGEST) {
        return refuse_length(json, document);
    }
    ingle_status status = json_scan_document(&json->scan, document, length, DEPTH_LIMIT);
    json_error_start(error, &json->scan);
    if (status != INGLE_OK) {
        return json_refuse_fault(error, &json->scan.fault);
    }
    if (json->scan.nodes[0].kind != JSON_OBJECT) {
        return json_refuse_type(error, 0, due);
    }
    return parse(json, document, length, tree);
}

typedef ingle_status (*answer_writer)(ingle_json *json, bool one_line);

static ingle_status check(ingle_json *json, const char *document, size_t length,
                          const ingle_json_options *options, answer_writer write)
{
    struct json_reader *reader = &json->reader;
    struct json_object *tree = NULL;
    ingle_status status =
        take_document(json, document, length, "an object that is a survey document", &tree);
    if (status == INGLE_OK) {
        status = json_read_document(reader, &json->scan, tree, options->standard_count > 0);
    }
    if (status == INGLE_OK) {
        status = judge(json, options);
    }
    if (status == INGLE_OK) {
        status = write(json, options->one_line != 0);
    }
    reader->id = NULL; /* it is the tree's */
    json_object_put(tree);
    return status;
}

static ingle_status take_and_check(ingle_json *json, const char *document, size_t length,
                                   const ingle_json_options *options, answer_writer write)
{
    ingle_json_options taken;
    if (json == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    json->read = false;
    ingle_status status = take_options(options, &taken);
    if (status == INGLE_OK && document == NULL && length > 0) {
        status = INGLE_ERROR_ARGUMENT;
    }
    if (status != INGLE_OK) {
        return refuse_call(json, status, NULL, false);
    }
    json_start(&json->writer, taken.one_line != 0);
    status = check(json, document, length, &taken, write);
    if (status == INGLE_OK) {
        return INGLE_OK;
    }
    json->verdict = INGLE_NOT_APPLICABLE;
    json->read = false;
    return json->writer.failed ? status : leave_error(json, taken.one_line != 0);
}

ingle_status ingle_json_check(ingle_json *json, const char *document, size_t length,
                              const ingle_json_options *options)
{
    return take_and_check(json, document, length, options, write_report);
}

ingle_status ingle_json_read(ingle_json *json, const char *document, size_t length,
                             const ingle_json_options *options)
{
    return take_and_check(json, document, length, options, write_verdict);
}

/* ---- what was read --------------------------------------------------------------------------- */

const ingle_survey *ingle_json_survey(const ingle_json *json)
{
    return json != NULL && json->read ? json->reader.survey : NULL;
}

const ingle_report *ingle_json_report(const ingle_json *json)
{
    return json != NULL && json->read ? json->report : NULL;
}

const ingle_standard *const *ingle_json_standards(const ingle_json *json, size_t *count)
{
    bool read = json != NULL && json->read;
    if (count != NULL) {
        *count = read ? json->standard_count : 0;
    }
    return read ? json->standards : NULL;
}

const ingle_check_options *ingle_json_how(const ingle_json *json)
{
    return json != NULL && json->read ? &json->how : NULL;
}

const ingle_unit *ingle_json_unit(const ingle_json *json)
{
    return json != NULL && json->read ? json->unit : NULL;
}

const char *ingle_json_id(const ingle_json *json)
{
    return json != NULL && json->read ? json->id : "";
}

const char *ingle_json_title(const ingle_json *json)
{
    return json != NULL && json->read && json->title[0] != '\0' ? json->title : NULL;
}

/* ---- amendments that are kept ---------------------------------------------------------------- */

static ingle_status amend(ingle_json *json, const char *document, size_t length)
{
    struct json_object *tree = NULL;
    ingle_status status =
        take_document(json, document, length, "an object that is a document of amendments", &tree);
    if (status == INGLE_OK) {
        status = json_read_amendments_document(&json->reader, &json->scan, tree);
    }
    json_object_put(tree);
    return status;
}

ingle_status ingle_json_amend(ingle_json *json, const char *document, size_t length)
{
    if (json == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (document == NULL && length > 0) {
        return refuse_call(json, INGLE_ERROR_ARGUMENT, NULL, false);
    }
    ingle_status status = amend(json, document, length);
    json->read = false;
    if (status != INGLE_OK) {
        return leave_error(json, false);
    }
    json_start(&json->writer, false);
    json_open_object(&json->writer, NULL);
    json_integer(&json->writer, "amendments", (int64_t)json->reader.kept.count);
    json_close_object(&json->writer);
    return json_finish(&json->writer) ? INGLE_OK : INGLE_ERROR_MEMORY;
}

void ingle_json_clear_amendments(ingle_json *json)
{
    if (json != NULL) {
        json_kept_cut(&json->reader.kept, 0);
        ingle_amendments_clear(json->reader.amendments);
        json->read = false; /* what was read refers to them */
    }
}
