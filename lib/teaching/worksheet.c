/* SPDX-License-Identifier: MIT */
#include "teaching/worksheet.h"

#include "base/memory.h"
#include "base/text.h"
#include "check/report.h"
#include "survey/survey.h"

#include <string.h>

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_worksheet_new(const ingle_allocator *allocator, ingle_worksheet **worksheet)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_worksheet *made = worksheet == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made != NULL) {
        *worksheet = made;
    }
    return status;
}

void ingle_worksheet_free(ingle_worksheet *worksheet)
{
    if (worksheet == NULL) {
        return;
    }
    ingle_allocator allocator = worksheet->allocator;
    allocator_free(&allocator, worksheet->entries);
    allocator_free(&allocator, worksheet->needs);
    allocator_free(&allocator, worksheet->assumed);
    allocator_free(&allocator, worksheet);
}

static void clear(ingle_worksheet *worksheet)
{
    worksheet->entry_count = 0;
    worksheet->need_count = 0;
    worksheet->assumed_count = 0;
    worksheet->error_text[0] = '\0';
}

static ingle_status refuse(ingle_worksheet *worksheet, ingle_status status, const char *sentence)
{
    clear(worksheet);
    struct text text = text_start(worksheet->error_text, sizeof worksheet->error_text);
    text_add(&text, sentence != NULL && sentence[0] != '\0' ? sentence
                                                            : ingle_status_text(status));
    return status;
}

/* ---- what is missing ------------------------------------------------------------------------ */

static ingle_status add_need(ingle_worksheet *worksheet, struct worksheet_entry *entry,
                             const char *rule)
{
    if (!array_reserve(&worksheet->allocator, (void **)&worksheet->needs,
                       &worksheet->need_capacity, worksheet->need_count,
                       sizeof *worksheet->needs)) {
        return INGLE_ERROR_MEMORY;
    }
    size_t added = worksheet->need_count++;
    worksheet->needs[added] = (struct worksheet_need){rule, SIZE_MAX};
    if (entry->first_need == SIZE_MAX) {
        entry->first_need = added;
    } else {
        worksheet->needs[entry->last_need].next = added;
    }
    entry->last_need = added;
    return INGLE_OK;
}

/* Whether somebody has looked at the group that a quantity is of. */
static bool is_looked_at(const ingle_survey *survey, const ingle_quantity *quantity)
{
    return !groups[quantity->group].repeats || survey->items[quantity->group].opened;
}

static ingle_status add_entry(ingle_worksheet *worksheet, const ingle_survey *survey,
                              const struct ingle_missing *missing)
{
    if (!array_reserve(&worksheet->allocator, (void **)&worksheet->entries,
                       &worksheet->entry_capacity, worksheet->entry_count,
                       sizeof *worksheet->entries)) {
        return INGLE_ERROR_MEMORY;
    }
    struct worksheet_entry *entry = &worksheet->entries[worksheet->entry_count++];
    *entry = (struct worksheet_entry){ingle_missing_quantity(missing), missing->item, SIZE_MAX,
                                      SIZE_MAX};
    if (!is_looked_at(survey, entry->quantity)) {
        entry->item = SIZE_MAX;
    }
    for (size_t i = 0; i < ingle_missing_rule_count(missing); i++) {
        ingle_status status = add_need(worksheet, entry, ingle_missing_rule_at(missing, i));
        if (status != INGLE_OK) {
            return status;
        }
    }
    return INGLE_OK;
}

/* Stop by stop, as they are met in the report within each. */
static ingle_status add_missing(ingle_worksheet *worksheet, const ingle_survey *survey,
                                const ingle_report *report)
{
    for (size_t stop = 0; stop < STOP_COUNT; stop++) {
        for (size_t i = 0; i < report->missing_count; i++) {
            const struct ingle_missing *missing = &report->missing[i];
            if (ingle_quantity_stop(ingle_missing_quantity(missing)) != stop) {
                continue;
            }
            ingle_status status = add_entry(worksheet, survey, missing);
            if (status != INGLE_OK) {
                return status;
            }
        }
    }
    return INGLE_OK;
}

/* An item in each repeating group that nobody has looked at, so that what it needs is asked. */
static ingle_status add_items(ingle_survey *survey)
{
    for (size_t i = 0; i < GROUP_COUNT; i++) {
        if (groups[i].repeats && !survey->items[i].opened) {
            ingle_status status = ingle_survey_add_item(survey, groups[i].id, NULL, NULL);
            if (status != INGLE_OK) {
                return status;
            }
        }
    }
    return INGLE_OK;
}

/* ---- what is taken for granted -------------------------------------------------------------- */

/* The record of an item, or past the last NULL; what does not repeat has one. */
static const struct record *item_record(const ingle_survey *survey, enum quantity_id id,
                                        size_t item)
{
    bool past = !groups[quantities[id].group].repeats && item > 0;
    return past ? NULL : survey_record(survey, id, item);
}

static bool rules_out(const struct condition *condition, const struct record *record)
{
    bool among = condition->test == ONE_OF && (condition->value & CHOICE_BIT(record->value)) != 0;
    return record->recorded && (condition->test == IS       ? record->value != condition->value
                                : condition->test == IS_NOT ? record->value == condition->value
                                : condition->test == ONE_OF ? !among
                                                            : false);
}

/* Whether a condition is known not to hold, by what was recorded, of each item if it is of one. */
static bool is_ruled_out(const ingle_survey *survey, const struct condition *condition)
{
    const struct record *record;
    size_t item = 0;
    while ((record = item_record(survey, condition->quantity, item)) != NULL &&
           rules_out(condition, record)) {
        item++;
    }
    return record == NULL && item > 0;
}

static bool may_apply(const ingle_survey *survey, const struct ingle_rule *rule)
{
    for (size_t i = 0; i < RULE_CONDITIONS && rule->when[i].test != 0; i++) {
        if (is_ruled_out(survey, &rule->when[i])) {
            return false;
        }
    }
    return true;
}

/* Whether it is recorded: of each item, where it is of one. */
static bool is_recorded(const ingle_survey *survey, enum quantity_id id)
{
    const struct record *record;
    size_t item = 0;
    while ((record = item_record(survey, id, item)) != NULL && record->recorded) {
        item++;
    }
    return record == NULL && item > 0;
}

static void mark_assumed(const ingle_survey *survey, const struct ingle_rule *rule, bool *assumed)
{
    for (size_t i = 0; i < RULE_CONDITIONS && rule->when[i].test != 0; i++) {
        enum quantity_id id = rule->when[i].quantity;
        assumed[id] = assumed[id] || (quantities[id].assumes && !is_recorded(survey, id));
    }
}

static ingle_status list_assumed(ingle_worksheet *worksheet, const bool *assumed)
{
    for (size_t stop = 0; stop < STOP_COUNT; stop++) {
        for (size_t i = 0; i < QUANTITY_COUNT; i++) {
            if (!assumed[i] || groups[quantities[i].group].stop != stop) {
                continue;
            }
            if (!array_reserve(&worksheet->allocator, (void **)&worksheet->assumed,
                               &worksheet->assumed_capacity, worksheet->assumed_count,
                               sizeof *worksheet->assumed)) {
                return INGLE_ERROR_MEMORY;
            }
            worksheet->assumed[worksheet->assumed_count++] = &quantities[i];
        }
    }
    return INGLE_OK;
}

static ingle_status add_assumed(ingle_worksheet *worksheet, const ingle_survey *survey,
                                const ingle_standard *const *standards, size_t count)
{
    bool assumed[QUANTITY_COUNT] = {false};
    for (size_t i = 0; i < count; i++) {
        const struct ingle_standard *standard = standards[i];
        for (size_t j = 0; j < standard->rule_count; j++) {
            const struct ingle_rule *rule = &standard->rules[j];
            if (rule_in_edition(rule, standard->edition) && may_apply(survey, rule)) {
                mark_assumed(survey, rule, assumed);
            }
        }
    }
    return list_assumed(worksheet, assumed);
}

/* ---- making it ------------------------------------------------------------------------------ */

/* Judges the survey with an item in each group, and lists what is missing. */
static ingle_status fill(ingle_worksheet *worksheet, const ingle_survey *survey,
                         const ingle_standard *const *standards, size_t count,
                         const ingle_check_options *options, ingle_survey *copy,
                         ingle_report *report)
{
    ingle_status status = ingle_survey_copy(copy, survey);
    if (status == INGLE_OK) {
        status = add_items(copy);
    }
    if (status == INGLE_OK) {
        status = ingle_check(copy, standards, count, options, report);
    }
    if (status < 0) {
        return refuse(worksheet, status, ingle_report_error_text(report));
    }
    status = add_missing(worksheet, survey, report);
    if (status == INGLE_OK) {
        status = add_assumed(worksheet, survey, standards, count);
    }
    return status == INGLE_OK ? status : refuse(worksheet, status, NULL);
}

ingle_status ingle_worksheet_make(const ingle_survey *survey,
                                  const ingle_standard *const *standards, size_t standard_count,
                                  const ingle_check_options *check, ingle_worksheet *worksheet)
{
    ingle_survey *copy = NULL;
    ingle_report *report = NULL;
    if (worksheet == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    clear(worksheet);
    if (survey == NULL) {
        return refuse(worksheet, INGLE_ERROR_ARGUMENT, NULL);
    }
    ingle_status status = ingle_survey_new(&worksheet->allocator, &copy);
    if (status == INGLE_OK) {
        status = ingle_report_new(&worksheet->allocator, &report);
    }
    if (status != INGLE_OK) {
        refuse(worksheet, status, NULL);
    } else {
        status = fill(worksheet, survey, standards, standard_count, check, copy, report);
    }
    ingle_report_free(report);
    ingle_survey_free(copy);
    return status;
}

/* ---- reading it ----------------------------------------------------------------------------- */

const char *ingle_worksheet_error_text(const ingle_worksheet *worksheet)
{
    return worksheet->error_text;
}

size_t ingle_worksheet_count(const ingle_worksheet *worksheet)
{
    return worksheet->entry_count;
}

const ingle_quantity *ingle_worksheet_quantity_at(const ingle_worksheet *worksheet, size_t index)
{
    return index < worksheet->entry_count ? worksheet->entries[index].quantity : NULL;
}

size_t ingle_worksheet_item_at(const ingle_worksheet *worksheet, size_t index)
{
    return index < worksheet->entry_count ? worksheet->entries[index].item : SIZE_MAX;
}

size_t ingle_worksheet_rule_count(const ingle_worksheet *worksheet, size_t index)
{
    size_t count = 0;
    while (ingle_worksheet_rule_at(worksheet, index, count) != NULL) {
        count++;
    }
    return count;
}

const char *ingle_worksheet_rule_at(const ingle_worksheet *worksheet, size_t index, size_t rule)
{
    if (index >= worksheet->entry_count) {
        return NULL;
    }
    size_t need = worksheet->entries[index].first_need;
    while (need != SIZE_MAX && rule > 0) {
        need = worksheet->needs[need].next;
        rule--;
    }
    return need == SIZE_MAX ? NULL : worksheet->needs[need].rule;
}

size_t ingle_worksheet_assumed_count(const ingle_worksheet *worksheet)
{
    return worksheet->assumed_count;
}

const ingle_quantity *ingle_worksheet_assumed_at(const ingle_worksheet *worksheet, size_t index)
{
    return index < worksheet->assumed_count ? worksheet->assumed[index] : NULL;
}
