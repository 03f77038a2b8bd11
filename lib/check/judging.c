/* SPDX-License-Identifier: MIT */
#include "check/conditions.h"

#include "base/memory.h"
#include "base/text.h"
#include "check/unjudged.h"
#include "check/words.h"

#include <string.h>

/* ---- errors --------------------------------------------------------------------------------- */

/* Leaves a report empty but for an error, and starts what is to be said of it. */
static struct text refuse_start(struct ingle_report *report, enum quantity_id quantity, size_t item)
{
    struct text text = text_start(report->error_text, sizeof report->error_text);
    struct text subject = text_start(report->error_subject, sizeof report->error_subject);
    if (quantity != QUANTITY_NONE) {
        text_add(&text, quantities[quantity].id);
        text_add(&text, ": ");
        survey_add_pointer(&subject, quantity, item);
    }
    report->finding_count = 0;
    report->remedy_count = 0;
    report->missing_count = 0;
    report->unjudged_count = 0;
    report->notice_count = 0;
    report->steps.count = 0;
    report->verdict = INGLE_NOT_APPLICABLE;
    return text;
}

ingle_status report_refuse(struct ingle_report *report, ingle_status status, const char *sentence)
{
    struct text text = refuse_start(report, QUANTITY_NONE, 0);
    text_add(&text, sentence != NULL ? sentence : ingle_status_text(status));
    return status;
}

size_t item_for(enum quantity_id quantity, size_t item)
{
    return groups[quantities[quantity].group].repeats ? item : 0;
}

static ingle_status refuse_outcome(struct check *check, const struct calculation *calculation,
                                   enum outcome outcome)
{
    enum quantity_id quantity =
        calculation->at_fault != QUANTITY_NONE ? calculation->at_fault : calculation->judged;
    ingle_status status = outcome == OUTCOME_CONTRADICTION ? INGLE_ERROR_CONTRADICTION
                                                           : INGLE_ERROR_OVERFLOW;
    struct text text =
        refuse_start(check->report, quantity, item_for(quantity, calculation->item));
    words_add_fault(&text, calculation, status);
    return status;
}

/* ---- findings ------------------------------------------------------------------------------- */

static struct ingle_finding *add_finding(struct check *check, const struct ingle_rule *rule,
                                         enum quantity_id judged, size_t item)
{
    struct ingle_report *report = check->report;
    if (!array_reserve(&report->allocator, (void **)&report->findings, &report->finding_capacity,
                       report->finding_count, sizeof *report->findings)) {
        return NULL;
    }
    struct ingle_finding *finding = &report->findings[report->finding_count++];
    *finding = (struct ingle_finding){.report = report,
                                      .standard = check->standard,
                                      .rule = rule,
                                      .reading = rule->reading,
                                      .relation = rule->relation,
                                      .judged = judged,
                                      .item = item,
                                      .first_step = report->steps.count,
                                      .first_remedy = report->remedy_count};
    return finding;
}

static ingle_status add_not_applicable(struct check *check, const struct ingle_rule *rule,
                                       enum quantity_id judged, size_t item)
{
    if (!check->options.with_not_applicable) {
        return INGLE_OK;
    }
    return add_finding(check, rule, judged, item) != NULL ? INGLE_OK : INGLE_ERROR_MEMORY;
}

/* Rows of one matter that differ only in their conditions lack the same: that is said once. */
static bool lacks_already(const struct check *check, const struct ingle_rule *rule,
                          enum quantity_id judged, size_t item, enum quantity_id missing)
{
    for (size_t i = check->first_finding; i < check->report->finding_count; i++) {
        const struct ingle_finding *finding = &check->report->findings[i];
        if (finding->rule->matter == rule->matter && finding->rule->role == rule->role &&
            finding->judged == judged && finding->item == item &&
            finding->verdict == INGLE_UNMEASURED && finding->missing_count > 0 &&
            finding->missing[0] == missing) {
            return true;
        }
    }
    return false;
}

static ingle_status add_unmeasured(struct check *check, const struct ingle_rule *rule,
                                   enum quantity_id judged, size_t item, enum quantity_id missing)
{
    if (lacks_already(check, rule, judged, item, missing)) {
        return INGLE_OK;
    }
    struct ingle_finding *finding = add_finding(check, rule, judged, item);
    if (finding == NULL) {
        return INGLE_ERROR_MEMORY;
    }
    finding->verdict = INGLE_UNMEASURED;
    finding->missing[finding->missing_count++] = missing;
    return INGLE_OK;
}

/* ---- conditions ----------------------------------------------------------------------------- */

static void add_assumption_steps(const struct check *check, const struct ingle_rule *rule,
                                 struct calculation *calculation)
{
    for (size_t i = 0; i < RULE_CONDITIONS && rule->when[i].test != 0; i++) {
        enum quantity_id quantity = rule->when[i].quantity;
        size_t item = item_for(quantity, calculation->item);
        const struct record *record = survey_record(check->survey, quantity, item);
        int64_t value;
        if (record != NULL && record->recorded) {
            continue;
        }
        enum assumption assumption = survey_assumed(check->survey, quantity, item, &value);
        if (assumption != NOT_ASSUMED) {
            bool assumed = assumption == ASSUMED;
            RECORD_STEP(calculation, .expression = "{0}", .remark = "It is not recorded.",
                        .label = assumed ? "taken for granted" : "known from the rest",
                        .operands = {operand_quantity(calculation, quantity, value)});
        }
    }
}

/* Between which values that lies on which the rule turns. */
static void add_turning_step(struct calculation *calculation,
                             const struct application *application)
{
    enum quantity_id quantity = application->turns_on->quantity;
    struct operand least = operand_amount("least", quantity_amount(quantity, application->least));
    struct operand most = operand_amount("greatest", quantity_amount(quantity, application->most));
    RECORD_STEP(calculation, .label = quantities[quantity].label, .expression = "from {0} to {1}",
                .operands = {least, most},
                .remark = "The rule applies at one end of this and not at the other.");
}

/* ---- judging -------------------------------------------------------------------------------- */

static void add_margin_step(struct calculation *calculation, const struct ingle_finding *finding)
{
    struct operand measured = operand_amount(
        quantities[finding->judged].id, calculation_judged_amount(calculation, finding->measured));
    struct operand required =
        operand_amount("required", calculation_judged_amount(calculation, finding->required));
    bool at_least = calculation->relation == RELATION_AT_LEAST;
    RECORD_STEP(calculation, .label = "margin", .expression = "{0} − {1}",
                .operands = {at_least ? measured : required, at_least ? required : measured},
                .result = calculation_judged_amount(calculation, finding->margin),
                .has_result = true);
}

/* What the tolerances leave of the margin, where there are any. */
static void add_bounds_step(struct calculation *calculation, const struct bounds *bounds,
                            int64_t offset)
{
    struct operand worst =
        operand_amount("worst", calculation_judged_amount(calculation, bounds->worst + offset));
    bool limited = bounds->best != MARGIN_UNLIMITED;
    int64_t greatest = limited ? bounds->best + offset : 0;
    struct operand best = operand_amount("best", calculation_judged_amount(calculation, greatest));
    RECORD_STEP(calculation, .label = "margin within the tolerances",
                .expression = limited ? "from {0} to {1}" : "from {0} to no limit at all",
                .operands = {worst, best});
}

static ingle_verdict verdict_of(const struct bounds *bounds, bool unlimited)
{
    if (bounds->worst < 0) {
        return bounds->best < 0 ? INGLE_FAILS : INGLE_TOO_CLOSE;
    }
    return unlimited ? INGLE_NOT_APPLICABLE : INGLE_MEETS;
}

static void enter_missing(const struct calculation *calculation, struct ingle_finding *finding,
                          ingle_verdict verdict)
{
    finding->verdict = verdict;
    finding->missing_count = calculation->missing_count;
    memcpy(finding->missing, calculation->missing, sizeof finding->missing);
}

/*
 * There is no limit that what was not measured would have to be held against; but within the
 * tolerances of the other measures there may be one.
 */
static ingle_status enter_without_measure(struct check *check,
                                          const struct calculation *calculation,
                                          struct ingle_finding *finding)
{
    struct bounds bounds = evaluation_bounds(calculation);
    if (bounds.outcome == OUTCOME_MISSING) {
        enter_missing(calculation, finding, INGLE_UNMEASURED);
    } else if (bounds.outcome != OUTCOME_DONE) {
        return refuse_outcome(check, calculation, bounds.outcome);
    }
    return INGLE_OK;
}

/* What is seen has no margin and no tolerance. */
static void enter_observation(const struct calculation *calculation,
                              const struct evaluation *evaluation, struct ingle_finding *finding)
{
    int64_t margin = 0;
    evaluation_margin(calculation, evaluation, &margin);
    finding->verdict = margin < 0 ? INGLE_FAILS : INGLE_MEETS;
}

static ingle_status enter_measure(struct check *check, struct calculation *calculation,
                                  const struct evaluation *evaluation,
                                  struct ingle_finding *finding)
{
    int64_t margin = MARGIN_UNLIMITED;
    int64_t offset = calculation->relation == RELATION_LESS_THAN ? MARGIN_OF_LIMIT : 0;
    if (finding->has_required) {
        if (!evaluation_margin(calculation, evaluation, &margin)) {
            return refuse_outcome(check, calculation, OUTCOME_OVERFLOW);
        }
        finding->has_margin = true;
        finding->margin = margin + offset;
        add_margin_step(calculation, finding);
    }
    struct bounds bounds = evaluation_bounds_around(calculation, margin);
    if (bounds.outcome != OUTCOME_DONE) {
        return refuse_outcome(check, calculation, bounds.outcome);
    }
    if (bounds.spread && bounds.worst != MARGIN_UNLIMITED) {
        add_bounds_step(calculation, &bounds, offset);
    }
    finding->verdict = verdict_of(&bounds, !finding->has_required);
    return INGLE_OK;
}

static void enter_amounts(const struct calculation *calculation,
                          const struct evaluation *evaluation, struct ingle_finding *finding)
{
    finding->has_required = evaluation->required_outcome == OUTCOME_DONE;
    finding->required = evaluation->required;
    finding->has_measured = evaluation->measured_outcome == OUTCOME_DONE;
    finding->measured = evaluation->measured;
    finding->by_listing = calculation->by_listing;
    finding->has_usual = calculation->has_usual;
    finding->usual = calculation->usual;
    finding->relation = (ingle_relation)calculation->relation;
    finding->outside = evaluation->required_outcome == OUTCOME_OUTSIDE;
    if (calculation->reading_text != NULL) {
        finding->reading = calculation->reading_text;
    }
}

static bool cannot_be(enum outcome outcome)
{
    return outcome == OUTCOME_OVERFLOW || outcome == OUTCOME_CONTRADICTION;
}

/* Enters what a calculation came to into its finding. */
static ingle_status enter(struct check *check, struct calculation *calculation,
                          struct ingle_finding *finding)
{
    struct evaluation evaluation;
    evaluate(calculation, &evaluation);
    enum outcome required = evaluation.required_outcome;
    enum outcome measured = evaluation.measured_outcome;
    if (cannot_be(required) || cannot_be(measured)) {
        return refuse_outcome(check, calculation, cannot_be(required) ? required : measured);
    }
    enter_amounts(calculation, &evaluation, finding);
    if (finding->outside) {
        finding->verdict = INGLE_UNMEASURED;
        return INGLE_OK;
    }
    if (required == OUTCOME_LISTING) {
        enter_missing(calculation, finding, INGLE_BY_LISTING);
        return INGLE_OK;
    }
    if (required == OUTCOME_MISSING || (measured == OUTCOME_MISSING && finding->has_required)) {
        enter_missing(calculation, finding, INGLE_UNMEASURED);
        return INGLE_OK;
    }
    if (measured == OUTCOME_MISSING) {
        return enter_without_measure(check, calculation, finding);
    }
    if (calculation->relation == RELATION_IS || calculation->relation == RELATION_IS_NOT) {
        enter_observation(calculation, &evaluation, finding);
        return INGLE_OK;
    }
    return enter_measure(check, calculation, &evaluation, finding);
}

/* The appliance's own listing comes before any rule on the same matter. */
static void give_way_to_listing(const struct check *check, const struct ingle_rule *rule,
                                struct calculation *calculation)
{
    int64_t value;
    enum quantity_id listing = matters[rule->matter].listing;
    if (listing != 0 && listing_speaks(calculation, listing) &&
        survey_value(check->survey, listing, item_for(listing, calculation->item), &value)) {
        calculation->formula = &formula_by_listing;
        calculation->inputs[0] = listing;
        calculation->inputs[1] = QUANTITY_NONE;
        if (calculation->relation == RELATION_LESS_THAN) {
            calculation->relation = RELATION_AT_MOST; /* a listing states what it allows */
        }
    }
}

_Static_assert((int)RELATION_AT_LEAST == INGLE_AT_LEAST && (int)RELATION_AT_MOST == INGLE_AT_MOST &&
                   (int)RELATION_IS == INGLE_IS && (int)RELATION_IS_NOT == INGLE_IS_NOT &&
                   (int)RELATION_LESS_THAN == INGLE_LESS_THAN,
               "a rule's relation is handed to its formula as it is");

struct calculation calculation_of(const struct check *check, enum quantity_id quantity,
                                  size_t item)
{
    static const int64_t nothing[FORMULA_NUMBERS];
    return (struct calculation){
        .survey = check->survey,
        .item = item,
        .liners = check->standard->liners,
        .liner_count = check->standard->liner_count,
        .numbers = nothing,
        .formula = &formula_fixed,
        .judged = quantity,
        .inputs = {QUANTITY_NONE},
        .relation = RELATION_AT_LEAST,
        .masked = QUANTITY_NONE,
        .at_fault = QUANTITY_NONE,
    };
}

struct calculation calculation_for(const struct check *check, const struct ingle_rule *rule,
                                   enum quantity_id judged, size_t item, const int64_t *numbers)
{
    struct calculation calculation = {
        .survey = check->survey,
        .item = item,
        .liners = check->standard->liners,
        .liner_count = check->standard->liner_count,
        .materials = check->standard->materials,
        .material_count = check->standard->material_count,
        .numbers = numbers,
        .formula = rule->formula,
        .judged = judged,
        .relation = (enum relation)rule->relation,
        .table = rule->table,
        .masked = QUANTITY_NONE,
        .at_fault = QUANTITY_NONE,
        .steps = check->options.without_working ? NULL : &check->report->steps,
    };
    for (size_t i = 0; i < INPUTS; i++) {
        calculation.inputs[i] = rule->inputs[i] == 0 ? QUANTITY_NONE : rule->inputs[i];
    }
    give_way_to_listing(check, rule, &calculation);
    return calculation;
}

struct calculation calculation_again(const struct ingle_finding *finding, int64_t *numbers)
{
    const struct ingle_report *report = finding->report;
    struct check check = {.survey = report->survey,
                          .amendments = report->amendments,
                          .options = {.without_working = 1},
                          .standard = finding->standard};
    amendments_apply(report->amendments, finding->standard, finding->rule, numbers);
    struct calculation calculation =
        calculation_for(&check, finding->rule, finding->judged, finding->item, numbers);
    calculation.reading = finding->reading_number;
    return calculation;
}

/* What is not met fails only if the rule applies. */
static void enter_application(const struct application *application,
                              struct ingle_finding *finding)
{
    finding->turns_on = application->turns_on;
    if (finding->turns_on != NULL && finding->verdict == INGLE_FAILS) {
        finding->verdict = INGLE_TOO_CLOSE;
    }
}

/* One finding for each way in which the rule can be read of what was surveyed. */
static ingle_status judge(struct check *check, const struct ingle_rule *rule,
                          enum quantity_id judged, size_t item,
                          const struct application *application)
{
    int64_t numbers[FORMULA_NUMBERS];
    const char *amendment = amendments_apply(check->amendments, check->standard, rule, numbers);
    struct calculation calculation = calculation_for(check, rule, judged, item, numbers);
    uint8_t readings = 1;
    for (uint8_t reading = 0; reading < readings; reading++) {
        struct ingle_finding *finding = add_finding(check, rule, judged, item);
        if (finding == NULL) {
            return INGLE_ERROR_MEMORY;
        }
        finding->amendment = amendment;
        finding->reading_number = reading;
        calculation.reading = reading;
        if (calculation.steps != NULL) {
            add_assumption_steps(check, rule, &calculation);
        }
        if (application->turns_on != NULL) {
            add_turning_step(&calculation, application);
        }
        ingle_status status = enter(check, &calculation, finding);
        if (status != INGLE_OK) {
            return status;
        }
        enter_application(application, finding);
        finding->step_count = check->report->steps.count - finding->first_step;
        readings = calculation.reading_count;
        if (finding->verdict == INGLE_NOT_APPLICABLE && !check->options.with_not_applicable) {
            check->report->steps.count = finding->first_step;
            check->report->finding_count--;
        }
    }
    return INGLE_OK;
}

ingle_status judge_item(struct check *check, const struct ingle_rule *rule, enum quantity_id judged,
                        size_t item)
{
    struct application application = rule_application(check, rule, item);
    if (application.applies != DOES_NOT_APPLY) {
        unjudged_take_rule(check, rule, judged, item);
    }
    switch (application.applies) {
    case DOES_NOT_APPLY:
        return add_not_applicable(check, rule, judged, item);
    case APPLIES_UNKNOWN:
        return add_unmeasured(check, rule, judged, item, application.unknown);
    case APPLIES_PERHAPS:
    case APPLIES:
        break;
    }
    return item == ITEM_NONE ? add_unmeasured(check, rule, judged, item, judged)
                             : judge(check, rule, judged, item, &application);
}
