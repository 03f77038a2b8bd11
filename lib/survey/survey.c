/* SPDX-License-Identifier: MIT */
#include "survey/survey.h"

#include "base/memory.h"
#include "base/text.h"
#include "base/utf8.h"

#include <string.h>

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_survey_new(const ingle_allocator *allocator, ingle_survey **survey)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_survey *made = survey == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made != NULL) {
        *survey = made;
    }
    return status;
}

static void clear_items(ingle_survey *survey, struct item_list *list)
{
    for (size_t i = 0; i < list->count; i++) {
        allocator_free(&survey->allocator, list->labels[i]);
    }
    list->count = 0;
    list->opened = false;
}

void ingle_survey_free(ingle_survey *survey)
{
    if (survey == NULL) {
        return;
    }
    for (size_t i = 0; i < GROUP_COUNT; i++) {
        clear_items(survey, &survey->items[i]);
        allocator_free(&survey->allocator, survey->items[i].labels);
        allocator_free(&survey->allocator, survey->items[i].records);
    }
    ingle_allocator allocator = survey->allocator;
    allocator_free(&allocator, survey);
}

void ingle_survey_clear(ingle_survey *survey)
{
    for (size_t i = 0; i < GROUP_COUNT; i++) {
        clear_items(survey, &survey->items[i]);
    }
    memset(survey->records, 0, sizeof survey->records);
    survey->error_text[0] = '\0';
    survey->error_position = 0;
}

/* ---- repeating groups ----------------------------------------------------------------------- */

static struct item_list *list_of(ingle_survey *survey, const char *group)
{
    enum group_id id = group_find(group);
    return id < GROUP_COUNT && groups[id].repeats ? &survey->items[id] : NULL;
}

ingle_status ingle_survey_open_group(ingle_survey *survey, const char *group)
{
    if (survey == NULL || group == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct item_list *list = list_of(survey, group);
    if (list == NULL) {
        return INGLE_ERROR_UNKNOWN_QUANTITY;
    }
    list->opened = true;
    return INGLE_OK;
}

static bool reserve_item(ingle_survey *survey, struct item_list *list, size_t members)
{
    return array_reserve(&survey->allocator, (void **)&list->labels, &list->label_capacity,
                         list->count, sizeof *list->labels) &&
           array_reserve(&survey->allocator, (void **)&list->records, &list->record_capacity,
                         list->count, members * sizeof *list->records);
}

ingle_status ingle_survey_add_item(ingle_survey *survey, const char *group, const char *label,
                                   size_t *item)
{
    if (survey == NULL || group == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct item_list *list = list_of(survey, group);
    if (list == NULL) {
        return INGLE_ERROR_UNKNOWN_QUANTITY;
    }
    size_t members = group_size(group_find(group));
    char *copy = NULL;
    if (label != NULL) {
        if (utf8_sound_length(label, strlen(label)) != strlen(label)) {
            return INGLE_ERROR_ENCODING;
        }
        copy = allocator_copy(&survey->allocator, label, strlen(label));
        if (copy == NULL) {
            return INGLE_ERROR_MEMORY;
        }
    }
    if (!reserve_item(survey, list, members)) {
        allocator_free(&survey->allocator, copy);
        return INGLE_ERROR_MEMORY;
    }
    memset(list->records + list->count * members, 0, members * sizeof *list->records);
    list->labels[list->count] = copy;
    list->opened = true;
    if (item != NULL) {
        *item = list->count;
    }
    list->count++;
    return INGLE_OK;
}

int ingle_survey_is_open(const ingle_survey *survey, const char *group)
{
    enum group_id id = group_find(group);
    return id < GROUP_COUNT && groups[id].repeats && survey->items[id].opened;
}

size_t ingle_survey_item_count(const ingle_survey *survey, const char *group)
{
    enum group_id id = group_find(group);
    return id < GROUP_COUNT ? survey->items[id].count : 0;
}

const char *ingle_survey_item_label(const ingle_survey *survey, const char *group, size_t item)
{
    enum group_id id = group_find(group);
    return id < GROUP_COUNT && item < survey->items[id].count ? survey->items[id].labels[item]
                                                              : NULL;
}

/* ---- copying -------------------------------------------------------------------------------- */

static ingle_status copy_items(ingle_survey *survey, const ingle_survey *from, enum group_id group)
{
    const struct item_list *source = &from->items[group];
    struct item_list *list = &survey->items[group];
    for (size_t i = 0; i < source->count; i++) {
        ingle_status status =
            ingle_survey_add_item(survey, groups[group].id, source->labels[i], NULL);
        if (status != INGLE_OK) {
            return status;
        }
    }
    if (source->count > 0) {
        memcpy(list->records, source->records,
               source->count * group_size(group) * sizeof *list->records);
    }
    list->opened = source->opened;
    return INGLE_OK;
}

ingle_status ingle_survey_copy(ingle_survey *survey, const ingle_survey *from)
{
    if (survey == NULL || from == NULL || survey == from) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_survey_clear(survey);
    memcpy(survey->records, from->records, sizeof survey->records);
    for (size_t i = 0; i < GROUP_COUNT; i++) {
        ingle_status status = copy_items(survey, from, (enum group_id)i);
        if (status != INGLE_OK) {
            ingle_survey_clear(survey);
            return status;
        }
    }
    return INGLE_OK;
}

/* ---- reading -------------------------------------------------------------------------------- */

const struct record *survey_record(const ingle_survey *survey, enum quantity_id id, size_t item)
{
    enum group_id group = (enum group_id)quantities[id].group;
    if (!groups[group].repeats) {
        return item == 0 ? &survey->records[id] : NULL;
    }
    const struct item_list *list = &survey->items[group];
    if (item >= list->count) {
        return NULL;
    }
    return list->records + item * group_size(group) + ((size_t)id - groups[group].first);
}

bool survey_value(const ingle_survey *survey, enum quantity_id id, size_t item, int64_t *value)
{
    const struct record *record = survey_record(survey, id, item);
    if (record != NULL && record->recorded) {
        *value = record->value;
        return true;
    }
    return survey_assumed(survey, id, item, value) != NOT_ASSUMED;
}

int ingle_survey_get(const ingle_survey *survey, const ingle_quantity *quantity, size_t item,
                     ingle_amount *amount, int64_t *tolerance)
{
    if (survey == NULL || quantity == NULL) {
        return 0;
    }
    const struct record *record = survey_record(survey, quantity_id(quantity), item);
    if (record == NULL || !record->recorded) {
        return 0;
    }
    if (amount != NULL) {
        *amount = quantity_amount(quantity_id(quantity), record->value);
    }
    if (tolerance != NULL) {
        *tolerance = record->tolerance;
    }
    return 1;
}

const char *ingle_survey_error_text(const ingle_survey *survey)
{
    return survey->error_text;
}

size_t ingle_survey_error_position(const ingle_survey *survey)
{
    return survey->error_position;
}

void survey_add_pointer(struct text *text, enum quantity_id id, size_t item)
{
    const ingle_quantity *quantity = &quantities[id];
    text_add(text, "/survey/");
    text_add(text, groups[quantity->group].id);
    if (groups[quantity->group].repeats) {
        text_add(text, "/");
        text_add_unsigned(text, item);
    }
    text_add(text, "/");
    text_add(text, ingle_quantity_name(quantity));
}
