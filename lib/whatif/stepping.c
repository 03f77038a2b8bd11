/* SPDX-License-Identifier: MIT */
#include "whatif/stepping.h"

#include "base/memory.h"
#include "base/nearest.h"
#include "base/text.h"
#include "standards/rule.h"

#include <string.h>

ingle_status stepping_refuse(char *error_text, ingle_status status, const char *about)
{
    struct text text = text_start(error_text, WHATIF_ERROR_TEXT_SIZE);
    if (about != NULL && about[0] != '\0') {
        text_add(&text, about);
        text_add(&text, ": ");
    }
    text_add(&text, ingle_status_text(status));
    return status;
}

/* What the range is about, where it is refused. */
static ingle_status refuse_range(const struct stepping *stepping, ingle_status status)
{
    const ingle_quantity *quantity = stepping->range.quantity;
    return stepping_refuse(stepping->error_text, status,
                           status == INGLE_ERROR_STRUCT_SIZE || quantity == NULL
                               ? NULL
                               : ingle_quantity_id(quantity));
}

static ingle_status find_rule(const struct stepping *stepping)
{
    const struct question *question = &stepping->question;
    struct nearest nearest = nearest_start(question->rule == NULL ? "" : question->rule);
    if (question->rule == NULL || standards_have_rule(question->standards, question->standard_count,
                                                      question->rule, &nearest)) {
        return INGLE_OK;
    }
    stepping_refuse(stepping->error_text, INGLE_ERROR_UNKNOWN_RULE, question->rule);
    if (nearest.best != NULL) {
        struct text text = {stepping->error_text, WHATIF_ERROR_TEXT_SIZE,
                            strlen(stepping->error_text)};
        text_add(&text, " Did you mean ");
        text_add(&text, nearest.best);
        text_add(&text, "?");
    }
    return INGLE_ERROR_UNKNOWN_RULE;
}

static ingle_status take_question(struct stepping *stepping)
{
    const struct question *question = &stepping->question;
    if (question->survey == NULL || question->standards == NULL || question->standard_count == 0) {
        return question->survey == NULL ? INGLE_ERROR_ARGUMENT : INGLE_ERROR_NO_STANDARD;
    }
    if (standards_first_null(question->standards, question->standard_count) <
        question->standard_count) {
        return INGLE_ERROR_UNKNOWN_STANDARD;
    }
    ingle_status status =
        options_take(&stepping->how, sizeof stepping->how, question->check);
    if (status != INGLE_OK) {
        return status;
    }
    stepping->how.size = sizeof stepping->how;
    stepping->how.without_working = 1;
    stepping->how.without_remedies = 1;
    stepping->how.with_not_applicable = 0;
    return INGLE_OK;
}

static ingle_status refuse_question(const struct stepping *stepping, ingle_status status)
{
    const struct question *question = &stepping->question;
    if (status != INGLE_ERROR_UNKNOWN_STANDARD) {
        return stepping_refuse(stepping->error_text, status, NULL);
    }
    struct text text = text_start(stepping->error_text, WHATIF_ERROR_TEXT_SIZE);
    standards_tell_null(&text, standards_first_null(question->standards,
                                                    question->standard_count));
    return status;
}

/* Whether a check failed for its values: others may do. */
static bool cannot_be(ingle_status status)
{
    return status == INGLE_ERROR_CONTRADICTION || status == INGLE_ERROR_OVERFLOW;
}

static ingle_status judge(struct stepping *stepping)
{
    const struct question *question = &stepping->question;
    return ingle_check(stepping->survey, question->standards, question->standard_count,
                       &stepping->how, stepping->report);
}

/* Two things recorded that cannot both be so may be just what a value would put right. */
static ingle_status judge_as_is(struct stepping *stepping)
{
    ingle_status status = judge(stepping);
    stepping->unjudged = cannot_be(status);
    if (status >= 0 || stepping->unjudged) {
        return INGLE_OK;
    }
    const char *sentence = ingle_report_error_text(stepping->report);
    struct text text = text_start(stepping->error_text, WHATIF_ERROR_TEXT_SIZE);
    text_add(&text, sentence[0] != '\0' ? sentence : ingle_status_text(status));
    return status;
}

/* The range has to be on an item that is there. */
static bool has_item(const struct stepping *stepping)
{
    const ingle_quantity *quantity = stepping->range.quantity;
    return ingle_quantity_repeats(quantity)
               ? stepping->range.item < ingle_survey_item_count(stepping->question.survey,
                                                                ingle_quantity_group(quantity))
               : stepping->range.item == 0;
}

ingle_status stepping_start(struct stepping *stepping, const ingle_allocator *allocator,
                            const struct question *question, const ingle_range *range,
                            char *error_text)
{
    *stepping = (struct stepping){.question = *question, .error_text = error_text};
    error_text[0] = '\0';
    if (range == NULL) {
        return stepping_refuse(error_text, INGLE_ERROR_ARGUMENT, NULL);
    }
    stepping->range = *range;
    ingle_status status = take_question(stepping);
    if (status != INGLE_OK) {
        return refuse_question(stepping, status);
    }
    status = ingle_range_settle(&stepping->range, &stepping->count);
    if (status == INGLE_OK && !has_item(stepping)) {
        status = INGLE_ERROR_UNKNOWN_QUANTITY;
    }
    if (status != INGLE_OK) {
        return refuse_range(stepping, status);
    }
    status = find_rule(stepping);
    if (status != INGLE_OK) {
        return status;
    }
    status = ingle_survey_new(allocator, &stepping->survey);
    if (status == INGLE_OK) {
        status = ingle_report_new(allocator, &stepping->report);
    }
    if (status == INGLE_OK) {
        status = ingle_survey_copy(stepping->survey, question->survey);
    }
    return status == INGLE_OK ? judge_as_is(stepping)
                              : stepping_refuse(error_text, status, NULL);
}

void stepping_end(struct stepping *stepping)
{
    ingle_report_free(stepping->report);
    ingle_survey_free(stepping->survey);
    stepping->report = NULL;
    stepping->survey = NULL;
}

ingle_amount stepping_value(const struct stepping *stepping, size_t index)
{
    const ingle_range *range = &stepping->range;
    ingle_amount amount;
    ingle_quantity_range(range->quantity, &amount, NULL);
    amount.value = range->from + (int64_t)index * range->step;
    return amount;
}

ingle_status stepping_set(struct stepping *stepping, int64_t value)
{
    const ingle_range *range = &stepping->range;
    int64_t tolerance = 0;
    ingle_survey_get(stepping->question.survey, range->quantity, range->item, NULL, &tolerance);
    ingle_status status =
        ingle_survey_set(stepping->survey, range->quantity, range->item, value, tolerance);
    return status >= 0 ? INGLE_OK
                       : stepping_refuse(stepping->error_text, status,
                                         ingle_quantity_id(range->quantity));
}

ingle_status stepping_judge(struct stepping *stepping, int64_t value)
{
    ingle_status status = stepping_set(stepping, value);
    if (status != INGLE_OK) {
        return status;
    }
    status = judge(stepping);
    stepping->unjudged = cannot_be(status);
    if (status >= 0 || stepping->unjudged) {
        return INGLE_OK;
    }
    return stepping_refuse(stepping->error_text, status,
                           ingle_quantity_id(stepping->range.quantity));
}

bool stepping_asks(const struct stepping *stepping, const ingle_finding *finding)
{
    const char *rule = stepping->question.rule;
    return rule == NULL || strcmp(rule, ingle_rule_id(ingle_finding_rule(finding))) == 0;
}
