/* SPDX-License-Identifier: MIT */
/*
 * Recording into a survey: what is implausible or wrongly written is refused here, with a sentence
 * that says what was expected.
 */
#include "base/memory.h"
#include "base/nearest.h"
#include "base/text.h"
#include "survey/survey.h"

#include <string.h>

static struct record *slot(ingle_survey *survey, enum quantity_id id, size_t item)
{
    return (struct record *)(uintptr_t)survey_record(survey, id, item);
}

/* ---- what went wrong ------------------------------------------------------------------------ */

static struct text error_start(ingle_survey *survey, const ingle_quantity *quantity)
{
    struct text text = text_start(survey->error_text, sizeof survey->error_text);
    survey->error_position = 0;
    if (quantity != NULL) {
        text_add(&text, quantity->id);
        text_add(&text, ": ");
    }
    return text;
}

static ingle_status refuse(ingle_survey *survey, const ingle_quantity *quantity,
                           ingle_status status)
{
    struct text text = error_start(survey, quantity);
    text_add(&text, ingle_status_text(status));
    return status;
}

static void add_amount(struct text *text, ingle_amount amount)
{
    char written[64];
    if (ingle_amount_format(&amount, NULL, written, sizeof written, NULL) >= 0) {
        text_add(text, written);
    }
}

static ingle_status refuse_implausible(ingle_survey *survey, const ingle_quantity *quantity,
                                       int64_t value)
{
    enum quantity_id id = quantity_id(quantity);
    struct text text = error_start(survey, quantity);
    add_amount(&text, quantity_amount(id, value));
    text_add(&text, " is outside the plausible range, ");
    add_amount(&text, quantity_amount(id, quantity->least));
    text_add(&text, " to ");
    add_amount(&text, quantity_amount(id, quantity->most));
    text_add(&text, ".");
    return INGLE_ERROR_IMPLAUSIBLE;
}

static ingle_status refuse_choice(ingle_survey *survey, const ingle_quantity *quantity,
                                  const char *choice)
{
    struct text text = error_start(survey, quantity);
    struct nearest nearest = nearest_start(choice);
    for (size_t i = 0; i < quantity->choice_count; i++) {
        nearest_offer(&nearest, quantity->choices[i].id);
    }
    text_add(&text, "there is no such choice; ");
    if (nearest.best != NULL) {
        text_add(&text, "did you mean ");
        text_add(&text, nearest.best);
        text_add(&text, "?");
        return INGLE_ERROR_UNKNOWN_CHOICE;
    }
    for (size_t i = 0; i < quantity->choice_count; i++) {
        text_add(&text, i == 0 ? "one of " : ", ");
        text_add(&text, quantity->choices[i].id);
    }
    text_add(&text, " is due.");
    return INGLE_ERROR_UNKNOWN_CHOICE;
}

/* `trim has no item 2; 2 were added, counted from 0.` */
static ingle_status refuse_item(ingle_survey *survey, struct text text,
                                const ingle_quantity *quantity, size_t item, ingle_status status)
{
    const char *group = groups[quantity->group].id;
    size_t count = ingle_survey_item_count(survey, group);
    text_add(&text, group);
    if (!groups[quantity->group].repeats) {
        text_add(&text, " does not repeat: write ");
        text_add(&text, quantity->id);
        text_add(&text, ".");
        return status;
    }
    text_add(&text, " has no item ");
    text_add_unsigned(&text, item);
    if (count == 0) {
        text_add(&text, "; none was added yet (add_item).");
    } else {
        text_add(&text, "; ");
        text_add_unsigned(&text, count);
        text_add(&text, count == 1 ? " was" : " were");
        text_add(&text, " added, counted from 0.");
    }
    return status;
}

/* ---- recording ------------------------------------------------------------------------------ */

static bool is_amount(const ingle_quantity *quantity)
{
    return quantity->dimension != INGLE_CHOICE && quantity->dimension != INGLE_FLAG;
}

static ingle_status accept(ingle_survey *survey, const ingle_quantity *quantity, int64_t value)
{
    ingle_amount most;
    ingle_quantity_range(quantity, NULL, &most);
    if (value >= quantity->least && value <= most.value) {
        return INGLE_OK;
    }
    if (quantity->dimension == INGLE_CHOICE) {
        return refuse(survey, quantity, INGLE_ERROR_UNKNOWN_CHOICE);
    }
    if (value < 0) {
        return refuse(survey, quantity, INGLE_ERROR_NEGATIVE);
    }
    return is_amount(quantity) ? refuse_implausible(survey, quantity, value)
                               : refuse(survey, quantity, INGLE_ERROR_ARGUMENT);
}

static ingle_status accept_tolerance(ingle_survey *survey, const ingle_quantity *quantity,
                                     int64_t tolerance)
{
    if (tolerance < 0) {
        return refuse(survey, quantity, INGLE_ERROR_NEGATIVE);
    }
    if (tolerance == 0) {
        return INGLE_OK;
    }
    if (!is_amount(quantity)) {
        return refuse(survey, quantity, INGLE_ERROR_ARGUMENT);
    }
    return tolerance > quantity->most ? refuse_implausible(survey, quantity, tolerance) : INGLE_OK;
}

ingle_status ingle_survey_set(ingle_survey *survey, const ingle_quantity *quantity, size_t item,
                              int64_t value, int64_t tolerance)
{
    if (survey == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (quantity == NULL) {
        return refuse(survey, NULL, INGLE_ERROR_UNKNOWN_QUANTITY);
    }
    struct record *record = slot(survey, quantity_id(quantity), item);
    if (record == NULL) {
        return refuse_item(survey, error_start(survey, quantity), quantity, item,
                           INGLE_ERROR_ARGUMENT);
    }
    ingle_status status = accept(survey, quantity, value);
    if (status == INGLE_OK) {
        status = accept_tolerance(survey, quantity, tolerance);
    }
    if (status == INGLE_OK) {
        *record = (struct record){value, tolerance, true};
    }
    return status;
}

/* Reads a text for a quantity; a text that cannot be read leaves its sentence in the survey. */
static ingle_status read_amount(ingle_survey *survey, const ingle_quantity *quantity,
                                const char *text, size_t length, const ingle_unit *unit,
                                int64_t *value)
{
    if (survey == NULL || text == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (quantity == NULL) {
        return refuse(survey, NULL, INGLE_ERROR_UNKNOWN_QUANTITY);
    }
    if (!is_amount(quantity)) {
        return refuse(survey, quantity, INGLE_ERROR_DIMENSION);
    }
    ingle_amount amount = {0, 0, 0};
    size_t position = 0;
    ingle_status status =
        ingle_amount_parse(text, length, quantity->dimension, unit, &amount, &position);
    if (status < 0) {
        refuse(survey, quantity, status);
        survey->error_position = position;
    }
    *value = amount.value;
    return status;
}

ingle_status ingle_survey_set_text(ingle_survey *survey, const ingle_quantity *quantity,
                                   size_t item, const char *text, size_t length,
                                   const ingle_unit *unit)
{
    int64_t value = 0;
    ingle_status status = read_amount(survey, quantity, text, length, unit, &value);
    if (status < 0) {
        return status;
    }
    ingle_status set = ingle_survey_set(survey, quantity, item, value, 0);
    return set < 0 ? set : status;
}

ingle_status ingle_survey_set_tolerance_text(ingle_survey *survey, const ingle_quantity *quantity,
                                             size_t item, const char *text, size_t length,
                                             const ingle_unit *unit)
{
    int64_t tolerance = 0;
    ingle_status status = read_amount(survey, quantity, text, length, unit, &tolerance);
    if (status < 0) {
        return status;
    }
    const struct record *record = survey_record(survey, quantity_id(quantity), item);
    if (record == NULL || !record->recorded) {
        return refuse(survey, quantity, INGLE_ERROR_ARGUMENT);
    }
    ingle_status set = ingle_survey_set(survey, quantity, item, record->value, tolerance);
    return set < 0 ? set : status;
}

ingle_status ingle_survey_set_choice(ingle_survey *survey, const ingle_quantity *quantity,
                                     size_t item, const char *choice)
{
    if (survey == NULL || choice == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (quantity == NULL) {
        return refuse(survey, NULL, INGLE_ERROR_UNKNOWN_QUANTITY);
    }
    if (quantity->dimension != INGLE_CHOICE) {
        return refuse(survey, quantity, INGLE_ERROR_DIMENSION);
    }
    for (size_t i = 0; i < quantity->choice_count; i++) {
        if (strcmp(quantity->choices[i].id, choice) == 0) {
            return ingle_survey_set(survey, quantity, item, (int64_t)i, 0);
        }
    }
    return refuse_choice(survey, quantity, choice);
}

ingle_status ingle_survey_unset(ingle_survey *survey, const ingle_quantity *quantity, size_t item)
{
    struct record *record =
        survey == NULL || quantity == NULL ? NULL : slot(survey, quantity_id(quantity), item);
    if (record == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    *record = (struct record){0, 0, false};
    return INGLE_OK;
}

/* ---- the short way -------------------------------------------------------------------------- */

/* Reads digits; 0 where there are none. Returns what follows them. */
static const char *read_index(const char *digit, size_t *item)
{
    *item = 0;
    for (; *digit >= '0' && *digit <= '9' && *item < SIZE_MAX / 100; digit++) {
        *item = *item * 10 + (size_t)(*digit - '0');
    }
    return digit;
}

/* What a path says. */
struct path {
    char id[64];
    size_t item;
    bool has_item; /* it gives an index; without one, `item` is 0 */
};

/* Splits `/trim/0/distance` or `/opening/width`. */
static bool split_pointer(const char *pointer, struct text *id, struct path *split)
{
    size_t group = strcspn(pointer + 1, "/");
    const char *rest = pointer + 1 + group;
    if (rest[0] != '/') {
        return false;
    }
    text_add_bytes(id, pointer + 1, group);
    text_add(id, ".");
    if (rest[1] >= '0' && rest[1] <= '9') {
        rest = read_index(rest + 1, &split->item);
        split->has_item = true;
    }
    if (rest[0] != '/' || strchr(rest + 1, '/') != NULL) {
        return false;
    }
    text_add(id, rest + 1);
    return text_end(id, NULL) == INGLE_OK;
}

/* Splits `trim[0].distance` into `trim.distance` and 0; false where it is no path. */
static bool split_path(const char *path, struct path *split)
{
    static const char survey[] = "/survey";
    struct text text = text_start(split->id, sizeof split->id);
    const char *bracket = strchr(path, '[');
    split->item = 0;
    split->has_item = false;
    if (strncmp(path, survey, sizeof survey - 1) == 0 && path[sizeof survey - 1] == '/') {
        return split_pointer(path + sizeof survey - 1, &text, split);
    }
    if (bracket == NULL) {
        text_add(&text, path);
        return text_end(&text, NULL) == INGLE_OK;
    }
    const char *digit = read_index(bracket + 1, &split->item);
    if (digit == bracket + 1 || strncmp(digit, "].", 2) != 0) {
        return false;
    }
    split->has_item = true;
    text_add_bytes(&text, path, (size_t)(bracket - path));
    text_add(&text, digit + 1);
    return text_end(&text, NULL) == INGLE_OK;
}

/* Starts what is to be said of a path. */
static struct text path_error_start(ingle_survey *survey, const char *path)
{
    struct text text = error_start(survey, NULL);
    text_add(&text, path);
    text_add(&text, ": ");
    return text;
}

/* How a quantity is written: `opening.width`, `trim[0].distance`. */
static void add_path(struct text *text, const ingle_quantity *quantity, size_t item)
{
    const char *group = groups[quantity->group].id;
    text_add(text, group);
    if (groups[quantity->group].repeats) {
        text_add(text, "[");
        text_add_unsigned(text, item);
        text_add(text, "]");
    }
    text_add(text, quantity->id + strlen(group));
}

static ingle_status refuse_path(ingle_survey *survey, const char *path, const struct path *split)
{
    struct text text = path_error_start(survey, path);
    struct nearest nearest = nearest_start(split->id);
    for (size_t i = 0; i < QUANTITY_COUNT; i++) {
        nearest_offer(&nearest, quantities[i].id);
    }
    text_add(&text, ingle_status_text(INGLE_ERROR_UNKNOWN_QUANTITY));
    if (nearest.best != NULL) {
        text_add(&text, " Did you mean ");
        add_path(&text, ingle_quantity_find(nearest.best), split->item);
        text_add(&text, "?");
    }
    return INGLE_ERROR_UNKNOWN_QUANTITY;
}

/* Without an index it could be any of the items. */
static ingle_status refuse_without_item(ingle_survey *survey, const char *path,
                                        const ingle_quantity *quantity)
{
    struct text text = path_error_start(survey, path);
    text_add(&text, groups[quantity->group].id);
    text_add(&text, " repeats: write ");
    add_path(&text, quantity, 0);
    text_add(&text, ".");
    return INGLE_ERROR_UNKNOWN_QUANTITY;
}

static ingle_status record_flag(ingle_survey *survey, const ingle_quantity *quantity, size_t item,
                                const char *text)
{
    bool yes = strcmp(text, "yes") == 0;
    if (!yes && strcmp(text, "no") != 0) {
        struct text error = error_start(survey, quantity);
        text_add(&error, "yes or no is due.");
        return INGLE_ERROR_UNKNOWN_CHOICE;
    }
    return ingle_survey_set(survey, quantity, item, yes, 0);
}

/* The quantity of a path, whether or not its item is there. */
static ingle_status find(ingle_survey *survey, const char *path, const ingle_quantity **quantity,
                         size_t *item)
{
    struct path split;
    const ingle_quantity *found =
        split_path(path, &split) ? ingle_quantity_find(split.id) : NULL;
    if (found == NULL) {
        return refuse_path(survey, path, &split);
    }
    if (groups[found->group].repeats && !split.has_item) {
        return refuse_without_item(survey, path, found);
    }
    *quantity = found;
    *item = split.item;
    return INGLE_OK;
}

ingle_status ingle_survey_find(ingle_survey *survey, const char *path,
                               const ingle_quantity **quantity, size_t *item)
{
    const ingle_quantity *found = NULL;
    size_t index = 0;
    if (survey == NULL || path == NULL || quantity == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status = find(survey, path, &found, &index);
    if (status != INGLE_OK) {
        return status;
    }
    if (survey_record(survey, quantity_id(found), index) == NULL) {
        return refuse_item(survey, path_error_start(survey, path), found, index,
                           INGLE_ERROR_UNKNOWN_QUANTITY);
    }
    *quantity = found;
    if (item != NULL) {
        *item = index;
    }
    return INGLE_OK;
}

ingle_status ingle_survey_record(ingle_survey *survey, const char *path, const char *text,
                                 const char *tolerance)
{
    const ingle_quantity *quantity = NULL;
    size_t item = 0;
    if (survey == NULL || path == NULL || text == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status found = find(survey, path, &quantity, &item);
    if (found != INGLE_OK) {
        return found;
    }
    if (!is_amount(quantity) && tolerance != NULL) {
        return refuse(survey, quantity, INGLE_ERROR_DIMENSION);
    }
    if (quantity->dimension == INGLE_CHOICE) {
        return ingle_survey_set_choice(survey, quantity, item, text);
    }
    if (quantity->dimension == INGLE_FLAG) {
        return record_flag(survey, quantity, item, text);
    }
    const struct record *record = survey_record(survey, quantity_id(quantity), item);
    struct record before = record == NULL ? (struct record){0, 0, false} : *record;
    ingle_status status =
        ingle_survey_set_text(survey, quantity, item, text, strlen(text), NULL);
    if (status < 0 || tolerance == NULL) {
        return status;
    }
    ingle_status more = ingle_survey_set_tolerance_text(survey, quantity, item, tolerance,
                                                        strlen(tolerance), NULL);
    if (more < 0) {
        *slot(survey, quantity_id(quantity), item) = before;
        return more;
    }
    return more != INGLE_OK ? more : status;
}
