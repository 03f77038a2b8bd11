/* SPDX-License-Identifier: MIT */
/*
 * Walks the rules of each standard, settles exceptions, and has the remedies sought.
 */
#include "base/memory.h"
#include "base/text.h"
#include "check/unjudged.h"

#include <string.h>

/* ---- the quantities and items of a rule ----------------------------------------------------- */

static ingle_status check_quantity(struct check *check, const struct ingle_rule *rule,
                                   enum quantity_id judged)
{
    uint8_t group = quantities[judged].group;
    if (!groups[group].repeats) {
        return judge_item(check, rule, judged, 0);
    }
    const struct item_list *list = &check->survey->items[group];
    if (!list->opened) {
        return judge_item(check, rule, judged, ITEM_NONE);
    }
    for (size_t item = 0; item < list->count; item++) {
        ingle_status status = judge_item(check, rule, judged, item);
        if (status != INGLE_OK) {
            return status;
        }
    }
    return INGLE_OK;
}

/* ---- exceptions ----------------------------------------------------------------------------- */

/* A role in one of a standard's exceptions. */
struct part {
    enum rule_role role;
    uint8_t exception;
};

static bool belongs(const struct ingle_finding *finding, struct part part)
{
    return finding->rule->role == part.role && finding->rule->exception == part.exception &&
           finding->verdict != INGLE_NOT_APPLICABLE;
}

/* Counts the findings of a part, and those of them that are met. */
static size_t count_findings(const struct check *check, struct part part, size_t *met)
{
    size_t count = 0;
    *met = 0;
    for (size_t i = check->first_finding; i < check->report->finding_count; i++) {
        const struct ingle_finding *finding = &check->report->findings[i];
        count += belongs(finding, part);
        *met += belongs(finding, part) && finding->verdict == INGLE_MEETS;
    }
    return count;
}

/* Drops the findings of a part, or keeps them as not applicable where those are asked for. */
static void replace(struct check *check, struct part part)
{
    struct ingle_report *report = check->report;
    size_t kept = check->first_finding;
    for (size_t i = check->first_finding; i < report->finding_count; i++) {
        struct ingle_finding finding = report->findings[i];
        if (belongs(&finding, part)) {
            if (!check->options.with_not_applicable) {
                continue;
            }
            finding.verdict = INGLE_NOT_APPLICABLE;
            finding.missing_count = 0;
            finding.replaced = true;
        }
        report->findings[kept++] = finding;
    }
    report->finding_count = kept;
}

static void settle_exception(struct check *check, uint8_t exception)
{
    const struct part ordinary = {ORDINARY, exception};
    const struct part instead = {EXCEPTION, exception};
    size_t met;
    size_t count = count_findings(check, instead, &met);
    if (count == 0) {
        return;
    }
    if (met == count) {
        replace(check, ordinary);
    } else if (count_findings(check, ordinary, &met) == met) {
        replace(check, instead);
    }
}

static void settle_exceptions(struct check *check)
{
    uint8_t last = 0;
    for (size_t i = 0; i < check->standard->rule_count; i++) {
        uint8_t exception = check->standard->rules[i].exception;
        last = exception > last ? exception : last;
    }
    for (unsigned exception = 0; exception <= last; exception++) {
        settle_exception(check, (uint8_t)exception);
    }
}

/* ---- the whole ------------------------------------------------------------------------------ */

/* Whether a row's numbers are known as well as is asked. */
static bool is_known_well(const struct check *check, const struct ingle_rule *rule)
{
    return check->options.least_basis == 0 || rule->basis <= check->options.least_basis;
}

/* Whether a row belongs to the way in which the publication is to be read. */
static bool is_followed(const struct check *check, const struct ingle_rule *rule)
{
    size_t reading = rule->follows.reading;
    if (reading == READING_NONE) {
        return true;
    }
    int32_t chosen = reading <= check->options.reading_count && check->options.readings != NULL
                         ? check->options.readings[reading - 1]
                         : 0;
    return chosen == (int32_t)rule->follows.option;
}

static ingle_status check_standard(struct check *check, const ingle_standard *standard)
{
    check->standard = standard;
    check->first_finding = check->report->finding_count;
    for (size_t i = 0; i < standard->rule_count; i++) {
        const struct ingle_rule *rule = &standard->rules[i];
        if (!rule_in_edition(rule, standard->edition) || !is_followed(check, rule) ||
            !is_known_well(check, rule)) {
            continue;
        }
        for (size_t q = 0; q < matter_judged_count(rule->matter); q++) {
            ingle_status status = check_quantity(check, rule, matters[rule->matter].judged[q]);
            if (status != INGLE_OK) {
                return status;
            }
        }
    }
    settle_exceptions(check);
    return INGLE_OK;
}

static ingle_status find_remedies(struct check *check)
{
    for (size_t i = 0; i < check->report->finding_count; i++) {
        struct ingle_finding *finding = &check->report->findings[i];
        if (finding->verdict != INGLE_FAILS && finding->verdict != INGLE_TOO_CLOSE) {
            continue;
        }
        int64_t numbers[FORMULA_NUMBERS];
        struct calculation calculation = calculation_again(finding, numbers);
        ingle_status status =
            remedies_find(check->report, i, &calculation, check->options.metric_remedies != 0);
        if (status != INGLE_OK) {
            return status;
        }
    }
    return INGLE_OK;
}

/* What is missing, where it is listed already, or NULL; of a group nobody looked at, the group. */
static struct ingle_missing *find_missing(struct ingle_report *report, enum quantity_id quantity,
                                          size_t item)
{
    for (size_t i = 0; i < report->missing_count; i++) {
        struct ingle_missing *missing = &report->missing[i];
        bool same = item == ITEM_NONE
                        ? quantities[missing->quantity].group == quantities[quantity].group
                        : missing->quantity == quantity;
        if (same && missing->item == item) {
            return missing;
        }
    }
    return NULL;
}

static struct ingle_missing *list_missing(struct ingle_report *report, enum quantity_id quantity,
                                          size_t item)
{
    struct ingle_missing *missing = find_missing(report, quantity, item);
    if (missing == NULL &&
        array_reserve(&report->allocator, (void **)&report->missing, &report->missing_capacity,
                      report->missing_count, sizeof *report->missing)) {
        missing = &report->missing[report->missing_count++];
        *missing = (struct ingle_missing){report, quantity, item, LACK_END, LACK_END};
    }
    return missing;
}

/* Adds a rule to those that lack something, once. */
static ingle_status add_lack(struct ingle_report *report, struct ingle_missing *missing,
                             enum matter_id matter)
{
    for (size_t i = missing->first_lack; i != LACK_END; i = report->lacks[i].next) {
        if (report->lacks[i].matter == matter) {
            return INGLE_OK;
        }
    }
    if (!array_reserve(&report->allocator, (void **)&report->lacks, &report->lack_capacity,
                       report->lack_count, sizeof *report->lacks)) {
        return INGLE_ERROR_MEMORY;
    }
    size_t added = report->lack_count++;
    report->lacks[added] = (struct lack){matter, LACK_END};
    if (missing->first_lack == LACK_END) {
        missing->first_lack = added;
    } else {
        report->lacks[missing->last_lack].next = added;
    }
    missing->last_lack = added;
    return INGLE_OK;
}

static ingle_status collect_missing(struct ingle_report *report)
{
    for (size_t i = 0; i < report->finding_count; i++) {
        const struct ingle_finding *finding = &report->findings[i];
        for (size_t m = 0; m < finding->missing_count; m++) {
            enum quantity_id quantity = finding->missing[m];
            struct ingle_missing *missing =
                list_missing(report, quantity, item_for(quantity, finding->item));
            if (missing == NULL ||
                add_lack(report, missing, finding->rule->matter) != INGLE_OK) {
                return INGLE_ERROR_MEMORY;
            }
        }
    }
    return INGLE_OK;
}

static bool is_kept(const struct ingle_report *report, const ingle_standard *standard)
{
    for (size_t i = 0; i < report->standard_count; i++) {
        if (report->standards[i] == standard) {
            return true;
        }
    }
    return false;
}

static ingle_status keep_standard(struct ingle_report *report, const ingle_standard *standard)
{
    if (!array_reserve(&report->allocator, (void **)&report->standards,
                       &report->standard_capacity, report->standard_count,
                       sizeof *report->standards)) {
        return INGLE_ERROR_MEMORY;
    }
    report->standards[report->standard_count++] = standard;
    return INGLE_OK;
}

static ingle_status run(struct check *check, const ingle_standard *const *standards, size_t count)
{
    struct ingle_report *report = check->report;
    for (size_t i = 0; i < count; i++) {
        if (is_kept(report, standards[i])) {
            continue; /* named twice, it is adopted once */
        }
        ingle_status status = keep_standard(report, standards[i]);
        if (status == INGLE_OK) {
            status = check_standard(check, standards[i]);
        }
        if (status != INGLE_OK) {
            return status;
        }
    }
    if (!check->options.without_remedies) {
        ingle_status status = find_remedies(check);
        if (status != INGLE_OK) {
            return status;
        }
    }
    for (size_t i = 0; i < report->finding_count; i++) {
        if (report->findings[i].verdict > report->verdict) {
            report->verdict = report->findings[i].verdict;
        }
    }
    notices_collect(report, check->amendments);
    ingle_status status = collect_missing(report);
    if (status == INGLE_OK) {
        status = unjudged_collect(check);
    }
    return status == INGLE_OK && report->steps.failed ? INGLE_ERROR_MEMORY : status;
}

static void empty(struct ingle_report *report)
{
    report->standard_count = 0;
    report->finding_count = 0;
    report->remedy_count = 0;
    report->missing_count = 0;
    report->lack_count = 0;
    report->unjudged_count = 0;
    report->notice_count = 0;
    report->steps.count = 0;
    report->steps.failed = false;
    report->verdict = INGLE_NOT_APPLICABLE;
    report->error_text[0] = '\0';
    report->error_subject[0] = '\0';
    report->amendments = NULL;
}

/* An option that is not there would leave out every row of its reading, without a word. */
static bool readings_are_known(const ingle_check_options *options)
{
    for (size_t i = 0; options->readings != NULL && i < options->reading_count; i++) {
        const ingle_reading *reading = ingle_reading_at(i);
        if (reading == NULL || options->readings[i] < 0 ||
            (size_t)options->readings[i] >= ingle_reading_option_count(reading)) {
            return false;
        }
    }
    return true;
}

static ingle_status refuse_null(struct ingle_report *report, size_t index)
{
    char sentence[REPORT_ERROR_TEXT_SIZE];
    struct text text = text_start(sentence, sizeof sentence);
    standards_tell_null(&text, index);
    return report_refuse(report, INGLE_ERROR_UNKNOWN_STANDARD, sentence);
}

static ingle_status take_arguments(struct check *check, const ingle_standard *const *standards,
                                   size_t count, const ingle_check_options *options)
{
    if (count == 0) {
        return INGLE_ERROR_NO_STANDARD;
    }
    if (standards == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    size_t first_null = standards_first_null(standards, count);
    if (first_null < count) {
        return refuse_null(check->report, first_null);
    }
    memset(&check->options, 0, sizeof check->options);
    ingle_status status = options == NULL
                              ? INGLE_OK
                              : struct_take(&check->options, sizeof check->options,
                                            sizeof check->options, options);
    bool known = check->options.least_basis == 0 ||
                 ingle_basis_name(check->options.least_basis) != NULL;
    return status == INGLE_OK && !(known && readings_are_known(&check->options))
               ? INGLE_ERROR_ARGUMENT
               : status;
}

ingle_status ingle_check(const ingle_survey *survey, const ingle_standard *const *standards,
                         size_t standard_count, const ingle_check_options *options,
                         ingle_report *report)
{
    if (survey == NULL || report == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct check check = {.report = report, .survey = survey};
    empty(report);
    report->survey = survey;
    ingle_status status = take_arguments(&check, standards, standard_count, options);
    if (status == INGLE_OK) {
        check.amendments = check.options.amendments;
        report->amendments = check.options.amendments;
        status = run(&check, standards, standard_count);
    }
    if (status != INGLE_OK && report->error_text[0] == '\0') {
        report_refuse(report, status, NULL);
    }
    return status;
}
