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

enum { ERROR_TEXT_SIZE = 240 };

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

static ingle_status refuse(ingle_amendments *amendments, ingle_status status, const char *what,
                           const char *nearest)
{
    struct text text = text_start(amendments->error_text, sizeof amendments->error_text);
    amendments->error_position = 0;
    text_add(&text, what);
    text_add(&text, ": ");
    text_add(&text, ingle_status_text(status));
    if (nearest != NULL) {
        text_add(&text, " Did you mean ");
        text_add(&text, nearest);
        text_add(&text, "?");
    }
    return status;
}

static ingle_status refuse_rule(ingle_amendments *amendments, const ingle_standard *standard,
                                const char *rule)
{
    struct nearest nearest = nearest_start(rule);
    const ingle_rule *row;
    for (size_t i = 0; (row = ingle_standard_rule_at(standard, i)) != NULL; i++) {
        nearest_offer(&nearest, ingle_rule_id(row));
    }
    return refuse(amendments, INGLE_ERROR_UNKNOWN_RULE, rule, nearest.best);
}

static ingle_status refuse_number(ingle_amendments *amendments, const ingle_standard *standard,
                                  const char *rule, const char *number)
{
    struct nearest nearest = nearest_start(number);
    const ingle_rule *row;
    for (size_t i = 0; (row = ingle_standard_rule_at(standard, i)) != NULL; i++) {
        for (size_t n = 0; strcmp(ingle_rule_id(row), rule) == 0 &&
                           n < formula_number_count(row->formula);
             n++) {
            nearest_offer(&nearest, row->formula->numbers[n].name);
        }
    }
    return refuse(amendments, INGLE_ERROR_UNKNOWN_NUMBER, number, nearest.best);
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
    ingle_rule_number_at(row, index, &amount);
    if (amount.dimension == INGLE_CHOICE || amount.dimension == INGLE_FLAG) {
        return refuse(amendments, INGLE_ERROR_DIMENSION, number, NULL); /* a state is no number */
    }
    ingle_status status =
        ingle_amount_parse(text, length, amount.dimension, unit, &amount, &position);
    if (status >= 0 && amount.value < 0) {
        status = INGLE_ERROR_NEGATIVE;
    }
    if (status < 0) {
        refuse(amendments, status, number, NULL);
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
