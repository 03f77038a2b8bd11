/* SPDX-License-Identifier: MIT */
#include "standards/amendments.h"

#include "base/memory.h"
#include "base/nearest.h"
#include "base/text.h"

#include <string.h>

struct amendment {
    const ingle_standard *standard;
    enum matter_id matter;
    const char *number; /* the name, from the formula */
    ingle_amount amount;
    char *citation;
};

enum { ERROR_TEXT_SIZE = 400 };

struct ingle_amendments {
    ingle_allocator allocator;
    struct amendment *list;
    size_t count;
    size_t capacity;
    size_t error_position;
    char error_text[ERROR_TEXT_SIZE];
};

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_amendments_new(const ingle_allocator *allocator, ingle_amendments **amendments)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_amendments *made =
        amendments == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made != NULL) {
        *amendments = made;
    }
    return status;
}

void ingle_amendments_clear(ingle_amendments *amendments)
{
    for (size_t i = 0; i < amendments->count; i++) {
        allocator_free(&amendments->allocator, amendments->list[i].citation);
    }
    amendments->count = 0;
    amendments->error_text[0] = '\0';
    amendments->error_position = 0;
}

void ingle_amendments_free(ingle_amendments *amendments)
{
    if (amendments == NULL) {
        return;
    }
    ingle_amendments_clear(amendments);
    allocator_free(&amendments->allocator, amendments->list);
    ingle_allocator allocator = amendments->allocator;
    allocator_free(&allocator, amendments);
}

const char *ingle_amendments_error_text(const ingle_amendments *amendments)
{
    return amendments->error_text;
}

size_t ingle_amendments_error_position(const ingle_amendments *amendments)
{
    return amendments->error_position;
}

/* ---- what went wrong ------------------------------------------------------------------------ */

/* Starts what is to be said of `what`. */
static struct text error_start(ingle_amendments *amendments, const char *what)
{
    struct text text = text_start(amendments->error_text, sizeof amendments->error_text);
    amendments->error_position = 0;
    text_add(&text, what);
    text_add(&text, ": ");
    return text;
}

static ingle_status refuse(ingle_amendments *amendments, ingle_status status, const char *what)
{
    struct text text = error_start(amendments, what);
    text_add(&text, ingle_status_text(status));
    return status;
}

static void add_nearest(struct text *text, const char *nearest)
{
    text_add(text, " Did you mean ");
    text_add(text, nearest);
    text_add(text, "?");
}

static ingle_status refuse_rule(ingle_amendments *amendments, const ingle_standard *standard,
                                const char *rule)
{
    struct nearest nearest = nearest_start(rule);
    const ingle_rule *row;
    for (size_t i = 0; (row = ingle_standard_rule_at(standard, i)) != NULL; i++) {
        nearest_offer(&nearest, ingle_rule_id(row));
    }
    struct text text = error_start(amendments, rule);
    text_add(&text, ingle_status_text(INGLE_ERROR_UNKNOWN_RULE));
    if (nearest.best != NULL) {
        add_nearest(&text, nearest.best);
    }
    return INGLE_ERROR_UNKNOWN_RULE;
}

static bool is_state(const ingle_rule *row, size_t number)
{
    ingle_amount amount;
    ingle_rule_number_at(row, number, &amount);
    return amount.dimension == INGLE_CHOICE || amount.dimension == INGLE_FLAG;
}

/* The names of the numbers that an amendment can set, each once. */
struct settable {
    const char *names[4 * FORMULA_NUMBERS];
    size_t count;
};

static void add_settable(struct settable *settable, const char *name)
{
    for (size_t i = 0; i < settable->count; i++) {
        if (strcmp(settable->names[i], name) == 0) {
            return;
        }
    }
    if (settable->count < COUNT_OF(settable->names)) {
        settable->names[settable->count++] = name;
    }
}

static struct settable find_settable(const ingle_standard *standard, const char *rule)
{
    struct settable settable = {.count = 0};
    const ingle_rule *row;
    for (size_t i = 0; (row = ingle_standard_rule_at(standard, i)) != NULL; i++) {
        bool due = strcmp(ingle_rule_id(row), rule) == 0;
        for (size_t n = 0; due && n < formula_number_count(row->formula); n++) {
            if (!is_state(row, n)) {
                add_settable(&settable, row->formula->numbers[n].name);
            }
        }
    }
    return settable;
}

static void list_settable(struct text *text, const struct settable *settable)
{
    text_add(text, settable->count > 0 ? " It has " : " It has none that an amendment can set");
    for (size_t i = 0; i < settable->count; i++) {
        text_add(text, i == 0 ? "" : i + 1 == settable->count ? " and " : ", ");
        text_add(text, settable->names[i]);
    }
    text_add(text, ".");
}

static ingle_status refuse_number(ingle_amendments *amendments, const ingle_standard *standard,
                                  const char *rule, const char *number)
{
    struct nearest nearest = nearest_start(number);
    struct settable settable = find_settable(standard, rule);
    for (size_t i = 0; i < settable.count; i++) {
        nearest_offer(&nearest, settable.names[i]);
    }
    struct text text = error_start(amendments, number);
    text_add(&text, ingle_status_text(INGLE_ERROR_UNKNOWN_NUMBER));
    if (nearest.best != NULL) {
        add_nearest(&text, nearest.best);
    } else {
        list_settable(&text, &settable);
    }
    return INGLE_ERROR_UNKNOWN_NUMBER;
}

/* A state is the name of a choice, or yes or no: another one would be another rule. */
static ingle_status refuse_state(ingle_amendments *amendments, const char *number)
{
    struct text text = error_start(amendments, number);
    text_add(&text, "This is a state and no number; an amendment cannot set it.");
    return INGLE_ERROR_DIMENSION;
}

/* ---- setting -------------------------------------------------------------------------------- */

/* The first row of a rule id that has a number of this name; `known` tells if the id is there. */
static const ingle_rule *find_row(const ingle_standard *standard, const char *rule,
                                  const char *number, unsigned *index, bool *known)
{
    const ingle_rule *row;
    *known = false;
    for (size_t i = 0; (row = ingle_standard_rule_at(standard, i)) != NULL; i++) {
        if (strcmp(ingle_rule_id(row), rule) != 0) {
            continue;
        }
        *known = true;
        for (unsigned n = 0; n < formula_number_count(row->formula); n++) {
            if (strcmp(row->formula->numbers[n].name, number) == 0) {
                *index = n;
                return row;
            }
        }
    }
    return NULL;
}

static ingle_status add(ingle_amendments *amendments, struct amendment amendment,
                        const char *citation)
{
    amendment.citation = allocator_copy(&amendments->allocator, citation, strlen(citation));
    if (amendment.citation == NULL) {
        return INGLE_ERROR_MEMORY;
    }
    if (!array_reserve(&amendments->allocator, (void **)&amendments->list, &amendments->capacity,
                       amendments->count, sizeof *amendments->list)) {
        allocator_free(&amendments->allocator, amendment.citation);
        return INGLE_ERROR_MEMORY;
    }
    amendments->list[amendments->count++] = amendment;
    return INGLE_OK;
}

static bool is_blank(const char *text)
{
    return text[strspn(text, " \t\r\n")] == '\0';
}

ingle_status ingle_amendments_set_text(ingle_amendments *amendments,
                                       const ingle_standard *standard, const char *rule,
                                       const char *number, const char *text, size_t length,
                                       const ingle_unit *unit, const char *citation)
{
    bool known;
    unsigned index = 0;
    if (amendments == NULL || standard == NULL || rule == NULL || number == NULL ||
        text == NULL || citation == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    const ingle_rule *row = find_row(standard, rule, number, &index, &known);
    if (row == NULL) {
        return known ? refuse_number(amendments, standard, rule, number)
                     : refuse_rule(amendments, standard, rule);
    }
    ingle_amount amount;
    size_t position = 0;
    if (is_state(row, index)) {
        return refuse_state(amendments, number);
    }
    if (is_blank(citation)) {
        return refuse(amendments, INGLE_ERROR_NO_CITATION, rule);
    }
    ingle_rule_number_at(row, index, &amount);
    ingle_status status =
        ingle_amount_parse(text, length, amount.dimension, unit, &amount, &position);
    if (status >= 0 && amount.value < 0) {
        status = INGLE_ERROR_NEGATIVE;
    }
    if (status < 0) {
        refuse(amendments, status, number);
        amendments->error_position = position;
        return status;
    }
    struct amendment amendment = {standard, row->matter, row->formula->numbers[index].name,
                                  amount, NULL};
    ingle_status added = add(amendments, amendment, citation);
    return added < 0 ? added : status;
}

/* ---- reading it ----------------------------------------------------------------------------- */

size_t ingle_amendments_count(const ingle_amendments *amendments)
{
    return amendments->count;
}

ingle_status ingle_amendments_at(const ingle_amendments *amendments, size_t index,
                                 const ingle_standard **standard, const char **rule,
                                 const char **number, ingle_amount *amount, const char **citation)
{
    if (amendments == NULL || standard == NULL || rule == NULL || number == NULL ||
        amount == NULL || citation == NULL || index >= amendments->count) {
        return INGLE_ERROR_ARGUMENT;
    }
    const struct amendment *amendment = &amendments->list[index];
    *standard = amendment->standard;
    *rule = matters[amendment->matter].id;
    *number = amendment->number;
    *amount = amendment->amount;
    *citation = amendment->citation;
    return INGLE_OK;
}

/* ---- applying ------------------------------------------------------------------------------- */

bool amendments_concern(const ingle_amendments *amendments, const ingle_standard *standard)
{
    for (size_t i = 0; amendments != NULL && i < amendments->count; i++) {
        if (amendments->list[i].standard == standard) {
            return true;
        }
    }
    return false;
}

const char *amendments_apply(const ingle_amendments *amendments, const ingle_standard *standard,
                             const struct ingle_rule *rule, int64_t *numbers)
{
    const char *citation = NULL;
    size_t count = formula_number_count(rule->formula);
    memcpy(numbers, rule->numbers, sizeof rule->numbers);
    for (size_t i = 0; amendments != NULL && i < amendments->count; i++) {
        const struct amendment *amendment = &amendments->list[i];
        if (amendment->standard != standard || amendment->matter != rule->matter) {
            continue;
        }
        for (size_t n = 0; n < count; n++) {
            if (strcmp(rule->formula->numbers[n].name, amendment->number) == 0) {
                numbers[n] = amendment->amount.value;
                citation = amendment->citation;
            }
        }
    }
    return citation;
}
