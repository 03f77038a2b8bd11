/* SPDX-License-Identifier: MIT */
#include "check/conditions.h"

static bool holds_at(const struct condition *condition, int64_t value)
{
    switch (condition->test) {
    case IS:
        return value == condition->value;
    case IS_NOT:
        return value != condition->value;
    case AT_LEAST:
        return value >= condition->value;
    case MORE_THAN:
        return value > condition->value;
    case AT_MOST:
        return value <= condition->value;
    case LESS_THAN:
        return value < condition->value;
    case ONE_OF:
        return (condition->value & CHOICE_BIT(value)) != 0;
    }
    return false;
}

/* What follows from measures, and what has a tolerance, lies between two values. */
static bool bounds_of(const struct check *check, enum quantity_id quantity, size_t item,
                      struct bounds *bounds)
{
    struct calculation calculation = calculation_of(check, quantity, item);
    *bounds = evaluation_bounds(&calculation);
    return bounds->outcome == OUTCOME_DONE;
}

/* Where something is recorded or taken for granted as exact, that is all there is to it. */
static bool exact_bounds(const struct check *check, enum quantity_id quantity, size_t item,
                         struct bounds *bounds)
{
    int64_t value;
    const struct record *record = survey_record(check->survey, quantity, item);
    if ((record != NULL && record->tolerance != 0) ||
        !survey_value(check->survey, quantity, item, &value)) {
        return false;
    }
    *bounds = (struct bounds){OUTCOME_DONE, false, value, value};
    return true;
}

/* Each test of an amount holds on one side of a value, so the ends tell of all between them. */
static enum applies condition_applies(const struct condition *condition,
                                      const struct bounds *bounds)
{
    bool least = holds_at(condition, bounds->worst);
    bool most = holds_at(condition, bounds->best);
    if (least != most) {
        return APPLIES_PERHAPS;
    }
    return least ? APPLIES : DOES_NOT_APPLY;
}

/* What a condition comes to of something that is not known. */
static enum applies take_unknown(const struct condition *condition,
                                 struct application *application)
{
    switch (condition->unknown) {
    case OR_UNKNOWN:
        return APPLIES;
    case IF_KNOWN:
        return DOES_NOT_APPLY;
    case ASKED_FOR:
        break;
    }
    application->unknown = condition->quantity;
    return APPLIES_UNKNOWN;
}

static enum applies take_condition(const struct check *check, const struct condition *condition,
                                   size_t item, struct application *application)
{
    struct bounds bounds;
    if (!exact_bounds(check, condition->quantity, item, &bounds) &&
        !bounds_of(check, condition->quantity, item, &bounds)) {
        return take_unknown(condition, application);
    }
    enum applies applies = condition_applies(condition, &bounds);
    if (applies == APPLIES_PERHAPS) {
        application->turns_on = condition;
        application->least = bounds.worst;
        application->most = bounds.best;
    }
    return applies;
}

struct application rule_application(const struct check *check, const struct ingle_rule *rule,
                                    size_t item)
{
    struct application application = {APPLIES, QUANTITY_NONE, NULL, 0, 0};
    for (size_t i = 0; i < RULE_CONDITIONS && rule->when[i].test != 0; i++) {
        size_t asked = item_for(rule->when[i].quantity, item);
        enum applies applies =
            asked == ITEM_NONE ? APPLIES
                               : take_condition(check, &rule->when[i], asked, &application);
        if (applies > application.applies) {
            application.applies = applies;
        }
        if (applies == DOES_NOT_APPLY) {
            break;
        }
    }
    return application;
}
