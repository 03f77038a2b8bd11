/* SPDX-License-Identifier: MIT */
/*
 * A survey as the rooms above see it: a slot for every quantity.
 */
#ifndef INGLE_SURVEY_SURVEY_H
#define INGLE_SURVEY_SURVEY_H

#include "survey/quantity.h"

#include <ingle/memory.h>
#include <ingle/survey.h>

struct record {
    int64_t value;
    int64_t tolerance; /* half-width; 0 for none */
    bool recorded;
};

/* The items of one repeating group, each with a record for every quantity of the group. */
struct item_list {
    struct record *records;
    char **labels; /* NULL where an item has none */
    size_t record_capacity;
    size_t label_capacity;
    size_t count;
    bool opened; /* somebody looked, though there may be no item */
};

enum { SURVEY_ERROR_TEXT_SIZE = 320 };

struct ingle_survey {
    ingle_allocator allocator;
    struct record records[QUANTITY_COUNT]; /* of groups that do not repeat */
    struct item_list items[GROUP_COUNT];   /* of groups that do */
    size_t error_position;
    char error_text[SURVEY_ERROR_TEXT_SIZE];
};

/* The slot of a quantity, or NULL if there is no such item. */
const struct record *survey_record(const ingle_survey *survey, enum quantity_id id, size_t item);

/* What is recorded, or else assumed; false where it is neither. */
bool survey_value(const ingle_survey *survey, enum quantity_id id, size_t item, int64_t *value);

/* How something that is not recorded is known nevertheless. */
enum assumption { NOT_ASSUMED, ASSUMED, TOLD_BY_OTHERS };

/* What is taken for granted of a quantity, or told by others that are recorded. */
enum assumption survey_assumed(const ingle_survey *survey, enum quantity_id id, size_t item,
                               int64_t *value);

/* The JSON pointer of a quantity: /survey/trim/0/distance. */
struct text;
void survey_add_pointer(struct text *text, enum quantity_id id, size_t item);

#endif
