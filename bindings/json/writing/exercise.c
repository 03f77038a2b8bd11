/* SPDX-License-Identifier: MIT */
/*
 * An exercise as JSON: the survey document of the problem, the questions, and the answers as the
 * report has them.
 */
#include "json.h"
#include "writing/amount.h"
#include "writing/report.h"

#include <string.h>

/* Whether a quantity of an item is told, and in which unit. */
static bool is_given(const ingle_exercise *exercise, const ingle_quantity *quantity, size_t item,
                     const ingle_unit **unit)
{
    const ingle_quantity *other;
    size_t its;
    for (size_t i = 0; ingle_exercise_given_at(exercise, i, &other, &its, unit) == INGLE_OK; i++) {
        if (other == quantity && its == item) {
            return true;
        }
    }
    return false;
}

static bool is_of(const ingle_quantity *quantity, const char *group)
{
    return strcmp(ingle_quantity_group(quantity), group) == 0;
}

static void write_item(struct json_writer *out, const ingle_exercise *exercise, const char *group,
                       size_t item)
{
    const ingle_survey *survey = ingle_exercise_survey(exercise);
    const char *label = ingle_survey_item_label(survey, group, item);
    json_open_object(out, ingle_survey_item_count(survey, group) > 0 ? NULL : group);
    if (label != NULL) {
        json_text(out, "label", label);
    }
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *quantity = ingle_quantity_at(i);
        const ingle_unit *unit;
        ingle_amount amount;
        if (is_of(quantity, group) && is_given(exercise, quantity, item, &unit) &&
            ingle_survey_get(survey, quantity, item, &amount, NULL)) {
            json_told(out, quantity, &amount, unit);
        }
    }
    json_close_object(out);
}

static bool has_group(const ingle_exercise *exercise, const char *group)
{
    const ingle_quantity *quantity;
    const ingle_unit *unit;
    size_t item;
    for (size_t i = 0; ingle_exercise_given_at(exercise, i, &quantity, &item, &unit) == INGLE_OK;
         i++) {
        if (is_of(quantity, group)) {
            return true;
        }
    }
    return false;
}

static void write_group(struct json_writer *out, const ingle_exercise *exercise,
                        const ingle_quantity *first)
{
    const char *group = ingle_quantity_group(first);
    size_t count = ingle_survey_item_count(ingle_exercise_survey(exercise), group);
    if (!has_group(exercise, group)) {
        return;
    }
    if (!ingle_quantity_repeats(first)) {
        write_item(out, exercise, group, 0);
        return;
    }
    json_open_array(out, group);
    for (size_t item = 0; item < count; item++) {
        write_item(out, exercise, group, item);
    }
    json_close_array(out);
}

static void write_document(struct json_writer *out, const ingle_exercise *exercise,
                           const ingle_standard *const *standards, size_t count)
{
    json_open_object(out, "document");
    json_open_array(out, "standards");
    for (size_t i = 0; i < count; i++) {
        json_text(out, NULL, ingle_standard_id(standards[i]));
    }
    json_close_array(out);
    json_open_object(out, "survey");
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *quantity = ingle_quantity_at(i);
        if (i == 0 || !is_of(ingle_quantity_at(i - 1), ingle_quantity_group(quantity))) {
            write_group(out, exercise, quantity);
        }
    }
    json_close_object(out);
    json_close_object(out);
}

static void write_questions(struct json_writer *out, const ingle_exercise *exercise)
{
    json_open_array(out, "questions");
    for (size_t i = 0; i < ingle_exercise_question_count(exercise); i++) {
        const ingle_finding *finding = ingle_exercise_answer_at(exercise, i);
        json_open_object(out, NULL);
        json_text(out, "standard", ingle_standard_id(ingle_finding_standard(finding)));
        json_text(out, "rule", ingle_rule_id(ingle_finding_rule(finding)));
        json_text_from(out, "subject", json_finding_text, finding, INGLE_FINDING_SUBJECT, NULL);
        json_text_from(out, "label", json_finding_text, finding, INGLE_FINDING_LABEL, NULL);
        json_close_object(out);
    }
    json_close_array(out);
}

ingle_status ingle_json_exercise(ingle_json *json, uint64_t seed, int32_t level,
                                 const ingle_standard *const *standards, size_t standard_count,
                                 ingle_exercise_part part, const ingle_unit *unit)
{
    ingle_exercise *exercise = NULL;
    if (json == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status = ingle_exercise_new(NULL, &exercise);
    if (status == INGLE_OK) {
        status = ingle_exercise_make(exercise, seed, level, standards, standard_count);
    }
    if (status != INGLE_OK) {
        ingle_exercise_free(exercise);
        return ingle_json_error(json, status, NULL);
    }
    struct json_writer *out = &json->writer;
    json_start(out, false);
    json_open_object(out, NULL);
    json_unsigned(out, "seed", seed);
    json_integer(out, "level", level);
    if (part != INGLE_EXERCISE_ANSWERS) {
        write_document(out, exercise, standards, standard_count);
        write_questions(out, exercise);
    }
    if (part != INGLE_EXERCISE_PROBLEM) {
        json_open_array(out, "answers");
        for (size_t i = 0; i < ingle_exercise_question_count(exercise); i++) {
            json_finding_write(out, ingle_exercise_answer_at(exercise, i), unit);
        }
        json_close_array(out);
    }
    json_text(out, "ingle", ingle_version());
    json_close_object(out);
    ingle_exercise_free(exercise);
    return json_finish(out) ? INGLE_OK : INGLE_ERROR_MEMORY;
}
