/* SPDX-License-Identifier: MIT */
/*
 * The report as an object, and what can be asked of it and its findings.
 */
#include "check/report.h"

#include "base/memory.h"
#include "base/text.h"
#include "survey/survey.h"

#include <string.h>

/* ---- the object ----------------------------------------------------------------------------- */

ingle_status ingle_report_new(const ingle_allocator *allocator, ingle_report **report)
{
    ingle_status status = INGLE_ERROR_ARGUMENT;
    ingle_report *made = report == NULL ? NULL : object_new(allocator, sizeof *made, &status);
    if (made == NULL) {
        return status;
    }
    made->steps.allocator = made->allocator;
    *report = made;
    return status;
}

void ingle_report_free(ingle_report *report)
{
    if (report == NULL) {
        return;
    }
    ingle_allocator allocator = report->allocator;
    allocator_free(&allocator, report->standards);
    allocator_free(&allocator, report->findings);
    allocator_free(&allocator, report->remedies);
    allocator_free(&allocator, report->missing);
    allocator_free(&allocator, report->lacks);
    allocator_free(&allocator, report->unjudged);
    allocator_free(&allocator, report->steps.steps);
    allocator_free(&allocator, report);
}

const char *ingle_report_error_text(const ingle_report *report)
{
    return report->error_text;
}

const char *ingle_report_error_subject(const ingle_report *report)
{
    return report->error_subject;
}

/* ---- by what it was judged ------------------------------------------------------------------ */

size_t ingle_report_standard_count(const ingle_report *report)
{
    return report->standard_count;
}

const ingle_standard *ingle_report_standard_at(const ingle_report *report, size_t index)
{
    return index < report->standard_count ? report->standards[index] : NULL;
}

ingle_verdict ingle_report_standard_verdict(const ingle_report *report, size_t index)
{
    const ingle_standard *standard = ingle_report_standard_at(report, index);
    ingle_verdict gravest = INGLE_NOT_APPLICABLE;
    for (size_t i = 0; standard != NULL && i < report->finding_count; i++) {
        const struct ingle_finding *finding = &report->findings[i];
        if (finding->standard == standard && finding->verdict > gravest) {
            gravest = finding->verdict;
        }
    }
    return gravest;
}

/* ---- the whole ------------------------------------------------------------------------------ */

static const struct {
    const char *name;
    const char *text;
} verdicts[] = {
    [INGLE_NOT_APPLICABLE] = {"not-applicable", "The rule does not apply to what was surveyed."},
    [INGLE_MEETS] = {"meets", "The rule is met, wherever within the tolerances the true measures "
                              "lie."},
    [INGLE_UNMEASURED] = {"unmeasured", "Something that the rule needs was not recorded, or the "
                                        "publication prints no value for what was."},
    [INGLE_BY_LISTING] = {"by-listing", "The appliance's own listing decides."},
    [INGLE_TOO_CLOSE] = {"too-close", "Within the tolerances the rule may be met or not."},
    [INGLE_FAILS] = {"fails", "The rule is not met, wherever within the tolerances the true "
                              "measures lie."},
};

size_t ingle_verdict_count(void)
{
    return COUNT_OF(verdicts);
}

const char *ingle_verdict_name(ingle_verdict verdict)
{
    return verdict >= 0 && (size_t)verdict < COUNT_OF(verdicts) ? verdicts[verdict].name : NULL;
}

const char *ingle_verdict_text(ingle_verdict verdict)
{
    return verdict >= 0 && (size_t)verdict < COUNT_OF(verdicts) ? verdicts[verdict].text : NULL;
}

ingle_verdict ingle_verdict_find(const char *name)
{
    for (size_t i = 0; name != NULL && i < COUNT_OF(verdicts); i++) {
        if (strcmp(verdicts[i].name, name) == 0) {
            return (ingle_verdict)i;
        }
    }
    return -1;
}

ingle_verdict ingle_report_verdict(const ingle_report *report)
{
    return report->verdict;
}

size_t ingle_report_finding_count(const ingle_report *report)
{
    return report->finding_count;
}

const ingle_finding *ingle_report_finding_at(const ingle_report *report, size_t index)
{
    return index < report->finding_count ? &report->findings[index] : NULL;
}

size_t ingle_report_notice_count(const ingle_report *report)
{
    return report->notice_count;
}

const char *ingle_report_notice_at(const ingle_report *report, size_t index)
{
    return index < report->notice_count ? report->notices[index] : NULL;
}

/* ---- what was not measured ------------------------------------------------------------------ */

size_t ingle_report_missing_count(const ingle_report *report)
{
    return report->missing_count;
}

const ingle_missing *ingle_report_missing_at(const ingle_report *report, size_t index)
{
    return index < report->missing_count ? &report->missing[index] : NULL;
}

const ingle_quantity *ingle_missing_quantity(const ingle_missing *missing)
{
    return &quantities[missing->quantity];
}

const char *ingle_missing_label(const ingle_missing *missing)
{
    const struct ingle_quantity *quantity = &quantities[missing->quantity];
    return missing->item == ITEM_NONE ? groups[quantity->group].id : quantity->label;
}

const char *ingle_missing_how(const ingle_missing *missing)
{
    const struct ingle_quantity *quantity = &quantities[missing->quantity];
    return missing->item == ITEM_NONE ? groups[quantity->group].how : quantity->how;
}

size_t ingle_missing_rule_count(const ingle_missing *missing)
{
    size_t count = 0;
    const struct lack *lacks = missing->report->lacks;
    for (size_t i = missing->first_lack; i != LACK_END; i = lacks[i].next) {
        count++;
    }
    return count;
}

const struct matter *missing_matter(const struct ingle_missing *missing, size_t index)
{
    const struct lack *lacks = missing->report->lacks;
    for (size_t i = missing->first_lack; i != LACK_END; i = lacks[i].next) {
        if (index-- == 0) {
            return &matters[lacks[i].matter];
        }
    }
    return NULL;
}

const char *ingle_missing_rule_at(const ingle_missing *missing, size_t index)
{
    const struct matter *matter = missing_matter(missing, index);
    return matter != NULL ? matter->id : NULL;
}

/* ---- a finding ------------------------------------------------------------------------------ */

const ingle_standard *ingle_finding_standard(const ingle_finding *finding)
{
    return finding->standard;
}

const ingle_rule *ingle_finding_rule(const ingle_finding *finding)
{
    return finding->rule;
}

ingle_verdict ingle_finding_verdict(const ingle_finding *finding)
{
    return finding->verdict;
}

const ingle_quantity *ingle_finding_quantity(const ingle_finding *finding)
{
    return &quantities[finding->judged];
}

size_t ingle_finding_item(const ingle_finding *finding)
{
    return finding->item == ITEM_NONE ? 0 : finding->item;
}

const char *ingle_finding_amendment(const ingle_finding *finding)
{
    return finding->amendment;
}

const char *ingle_finding_reading(const ingle_finding *finding)
{
    return finding->reading;
}

ingle_relation ingle_finding_relation(const ingle_finding *finding)
{
    return finding->relation;
}

int ingle_finding_by_listing(const ingle_finding *finding)
{
    return finding->by_listing;
}

const struct matter *finding_words(const struct ingle_finding *finding)
{
    enum matter_id matter = finding->rule->matter;
    return finding->has_measured ? matter_as(matter, finding->measured) : &matters[matter];
}

static bool is_not_met(const struct ingle_finding *finding)
{
    return finding->verdict >= INGLE_TOO_CLOSE;
}

const char *ingle_finding_mend(const ingle_finding *finding)
{
    return is_not_met(finding) && finding->remedy_count == 0 ? finding_words(finding)->mend : NULL;
}

/* Beyond its rule's own words, a listing that is not known is somebody's to look up. */
const char *ingle_finding_refer(const ingle_finding *finding)
{
    switch (finding->verdict) {
    case INGLE_FAILS:
    case INGLE_TOO_CLOSE:
    case INGLE_UNMEASURED:
        return finding_words(finding)->refer;
    case INGLE_BY_LISTING:
        return "whoever has the label and the manual at hand; where both are gone, the "
               "appliance's maker or the laboratory that listed it";
    default:
        return NULL;
    }
}

/* Where it is known whether the fuel changes, nobody is told to find out. */
const char *ingle_finding_inspection(const ingle_finding *finding)
{
    const struct matter *words = finding_words(finding);
    const struct record *fuel =
        survey_record(finding->report->survey, QUANTITY_OCCASION_FUEL_CHANGE, 0);
    if (!is_not_met(finding)) {
        return NULL;
    }
    return words->inspection_by_fuel[0] != NULL && fuel != NULL && fuel->recorded
               ? words->inspection_by_fuel[fuel->value != 0]
               : words->inspection;
}

static int give(const ingle_finding *finding, bool has, int64_t value, ingle_amount *amount)
{
    if (has && amount != NULL) {
        *amount = quantity_amount(finding->judged, value);
    }
    return has;
}

int ingle_finding_measured(const ingle_finding *finding, ingle_amount *amount)
{
    return give(finding, finding->has_measured, finding->measured, amount);
}

int ingle_finding_required(const ingle_finding *finding, ingle_amount *amount)
{
    return give(finding, finding->has_required, finding->required, amount);
}

int ingle_finding_margin(const ingle_finding *finding, ingle_amount *amount)
{
    return give(finding, finding->has_margin, finding->margin, amount);
}

int ingle_finding_usual(const ingle_finding *finding, ingle_amount *amount)
{
    return give(finding, finding->has_usual, finding->usual, amount);
}

size_t ingle_finding_missing_count(const ingle_finding *finding)
{
    return finding->missing_count;
}

const ingle_quantity *ingle_finding_missing_at(const ingle_finding *finding, size_t index)
{
    return index < finding->missing_count ? &quantities[finding->missing[index]] : NULL;
}

/* ---- its working and remedies --------------------------------------------------------------- */

size_t ingle_finding_step_count(const ingle_finding *finding)
{
    return finding->step_count;
}

const ingle_step *ingle_finding_step_at(const ingle_finding *finding, size_t index)
{
    return index < finding->step_count
               ? &finding->report->steps.steps[finding->first_step + index]
               : NULL;
}

const char *ingle_step_label(const ingle_step *step)
{
    return step->label;
}

int ingle_step_result(const ingle_step *step, ingle_amount *amount)
{
    if (step->has_result && amount != NULL) {
        *amount = step->result;
    }
    return step->has_result;
}

size_t ingle_finding_remedy_count(const ingle_finding *finding)
{
    return finding->remedy_count;
}

const ingle_remedy *ingle_finding_remedy_at(const ingle_finding *finding, size_t index)
{
    return index < finding->remedy_count
               ? &finding->report->remedies[finding->first_remedy + index]
               : NULL;
}

const ingle_quantity *ingle_remedy_quantity(const ingle_remedy *remedy)
{
    return &quantities[remedy->quantity];
}

void ingle_remedy_amount(const ingle_remedy *remedy, ingle_amount *amount)
{
    *amount = quantity_amount(remedy->quantity, remedy->to);
    amount->scale = INGLE_SCALE_USUAL;
}
