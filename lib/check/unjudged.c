/* SPDX-License-Identifier: MIT */
#include "check/unjudged.h"

#include "base/memory.h"
#include "base/text.h"
#include "check/words.h"

#include <string.h>

/* ---- what rules make use of ----------------------------------------------------------------- */

/* The quantity, and those it follows from here. */
static void take(struct check *check, enum quantity_id quantity, size_t item)
{
    if (check->asked[quantity]) {
        return;
    }
    struct dependences dependences = {.count = 0};
    size_t asked = item_for(quantity, item);
    struct calculation calculation =
        calculation_of(check, quantity, asked == ITEM_NONE ? 0 : asked);
    dependences_add(&dependences, &calculation, quantity, 1);
    check->asked[quantity] = true;
    for (size_t i = 0; i < dependences.count; i++) {
        check->asked[dependences.list[i].quantity] = true;
    }
}

void unjudged_take_rule(struct check *check, const struct ingle_rule *rule,
                        enum quantity_id judged, size_t item)
{
    take(check, judged, item);
    for (size_t i = 0; i < RULE_CONDITIONS && rule->when[i].test != 0; i++) {
        take(check, rule->when[i].quantity, item);
    }
    for (size_t i = 0; i < INPUTS && rule->inputs[i] != 0; i++) {
        take(check, rule->inputs[i], item);
    }
    if (matters[rule->matter].listing != 0) {
        take(check, matters[rule->matter].listing, item);
    }
}

/* ---- what is left --------------------------------------------------------------------------- */

static bool matter_judges(const struct matter *matter, enum quantity_id quantity)
{
    for (size_t i = 0; i < matter_judged_count((enum matter_id)(matter - matters)); i++) {
        if (matter->judged[i] == quantity) {
            return true;
        }
    }
    return false;
}

/* What the appliance is says which rules apply, and is no finding of its own. */
static bool is_ever_judged(enum quantity_id quantity)
{
    if (quantities[quantity].group == GROUP_APPLIANCE) {
        return false;
    }
    for (size_t i = 0; i < MATTER_COUNT; i++) {
        if (matter_judges(&matters[i], quantity)) {
            return true;
        }
    }
    return false;
}

/* Little is recorded of all there is, so that is asked first. */
static ingle_status list_recorded(struct ingle_report *report, enum quantity_id quantity,
                                  size_t item)
{
    const struct record *record = survey_record(report->survey, quantity, item);
    if (record == NULL || !record->recorded || !is_ever_judged(quantity)) {
        return INGLE_OK;
    }
    if (!array_reserve(&report->allocator, (void **)&report->unjudged, &report->unjudged_capacity,
                       report->unjudged_count, sizeof *report->unjudged)) {
        return INGLE_ERROR_MEMORY;
    }
    report->unjudged[report->unjudged_count++] = (struct ingle_unjudged){report, quantity, item};
    return INGLE_OK;
}

static size_t item_count(const ingle_survey *survey, enum quantity_id quantity)
{
    uint8_t group = quantities[quantity].group;
    return groups[group].repeats ? survey->items[group].count : 1;
}

ingle_status unjudged_collect(struct check *check)
{
    for (size_t i = 0; i < QUANTITY_COUNT; i++) {
        enum quantity_id quantity = (enum quantity_id)i;
        size_t items = check->asked[i] ? 0 : item_count(check->survey, quantity);
        for (size_t item = 0; item < items; item++) {
            if (list_recorded(check->report, quantity, item) != INGLE_OK) {
                return INGLE_ERROR_MEMORY;
            }
        }
    }
    return INGLE_OK;
}

/* ---- what is asked of it -------------------------------------------------------------------- */

size_t ingle_report_unjudged_count(const ingle_report *report)
{
    return report->unjudged_count;
}

const ingle_unjudged *ingle_report_unjudged_at(const ingle_report *report, size_t index)
{
    return index < report->unjudged_count ? &report->unjudged[index] : NULL;
}

const ingle_quantity *ingle_unjudged_quantity(const ingle_unjudged *unjudged)
{
    return &quantities[unjudged->quantity];
}

ingle_status ingle_unjudged_subject_text(const ingle_unjudged *unjudged, char *buffer,
                                         size_t capacity, size_t *length)
{
    if (unjudged == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    words_add_pointer(&text, unjudged->quantity, unjudged->item);
    return text_end(&text, length);
}

/* ---- where rules on it are ------------------------------------------------------------------ */

static bool same_place(const ingle_standard *first, const ingle_standard *second)
{
    return strcmp(first->place, second->place) == 0;
}

static bool same_publication(const ingle_standard *first, const ingle_standard *second)
{
    return strcmp(first->title, second->title) == 0 && same_place(first, second);
}

/* One of the same places, but of no publication that the report was judged by. */
static bool is_further(const ingle_report *report, const ingle_standard *standard)
{
    bool near = false;
    for (size_t i = 0; i < report->standard_count; i++) {
        if (same_publication(report->standards[i], standard)) {
            return false;
        }
        near = near || same_place(report->standards[i], standard);
    }
    return near;
}

static bool standard_judges(const ingle_standard *standard, enum quantity_id quantity)
{
    for (size_t i = 0; i < standard->rule_count; i++) {
        const struct ingle_rule *rule = &standard->rules[i];
        if (rule_in_edition(rule, standard->edition) &&
            matter_judges(&matters[rule->matter], quantity)) {
            return true;
        }
    }
    return false;
}

static bool is_newest(const ingle_standard *standard)
{
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        const ingle_standard *other = ingle_standard_at(i);
        if (same_publication(other, standard) && other->edition > standard->edition) {
            return false;
        }
    }
    return true;
}

const ingle_standard *ingle_unjudged_standard_at(const ingle_unjudged *unjudged, size_t index)
{
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        const ingle_standard *standard = ingle_standard_at(i);
        if (is_further(unjudged->report, standard) &&
            standard_judges(standard, unjudged->quantity) && is_newest(standard) &&
            index-- == 0) {
            return standard;
        }
    }
    return NULL;
}
