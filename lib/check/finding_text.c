/* SPDX-License-Identifier: MIT */
/*
 * The words of findings, made only when somebody asks for them.
 */
#include "check/notices.h"
#include "check/report.h"
#include "check/words.h"

/* ---- what was judged ------------------------------------------------------------------------ */

static const struct matter *matter_of(const struct ingle_finding *finding)
{
    return &matters[finding->rule->matter];
}

static bool is_item(const struct ingle_finding *finding)
{
    return groups[quantities[finding->judged].group].repeats && finding->item != ITEM_NONE;
}

/* What people call the item, or else its number. */
static void add_item(struct text *text, const struct ingle_finding *finding)
{
    const char *group = groups[quantities[finding->judged].group].id;
    const char *label = ingle_survey_item_label(finding->report->survey, group, finding->item);
    if (label != NULL) {
        text_add(text, label);
    } else {
        text_add(text, group);
        text_add(text, " ");
        text_add_unsigned(text, finding->item + 1);
    }
    text_add(text, ": ");
}

/* The matter says more than the quantity, but several quantities of a matter are told apart. */
static void add_label(struct text *text, const struct ingle_finding *finding)
{
    if (is_item(finding)) {
        add_item(text, finding);
    }
    text_add(text, is_item(finding) || matter_judged_count(finding->rule->matter) > 1
                       ? quantities[finding->judged].label
                       : matter_of(finding)->label);
}

/* The beginning of a sentence; an item's own label stays as people write it. */
static void add_beginning(struct text *text, const struct ingle_finding *finding,
                          const char *words)
{
    if (is_item(finding)) {
        add_item(text, finding);
        text_add(text, words);
    } else {
        words_add_first(text, words);
    }
}

static void add_citation(struct text *text, const struct ingle_finding *finding)
{
    if (finding->by_listing) {
        text_add(text, "The appliance's own listing, in place of ");
    }
    text_add(text, finding->standard->title);
    if (finding->standard->edition != 0 && !rule_is_undated(finding->rule)) {
        text_add(text, " ");
        text_add_unsigned(text, (uint64_t)finding->standard->edition);
    }
    if (finding->standard->edition == 0 && finding->rule->basis == INGLE_BASIS_COMMON_PRACTICE) {
        text_add(text, " (");
        text_add(text, finding->standard->place);
        text_add(text, ")");
    } else {
        text_add(text, ", ");
        text_add(text, finding->rule->section);
    }
    if (finding->amendment != NULL) {
        text_add(text, ", as amended by ");
        text_add(text, finding->amendment);
    }
}

static ingle_amount amount_of(const struct ingle_finding *finding, int64_t value)
{
    return quantity_amount(finding->judged, value);
}

/* ---- what is seen --------------------------------------------------------------------------- */

static bool is_seen(const struct ingle_quantity *quantity)
{
    return quantity->dimension == INGLE_FLAG || quantity->dimension == INGLE_CHOICE;
}

/* The state as a clause; NULL where the catalogue has none. */
static const char *seen_clause(const struct ingle_quantity *quantity, int64_t value)
{
    return quantity->dimension == INGLE_FLAG ? quantity->when[value]
                                             : quantity->choices[value].when;
}

static void add_wish(struct text *text, const struct ingle_finding *finding)
{
    const struct ingle_quantity *quantity = &quantities[finding->judged];
    const char *wish = words_wish(quantity, finding->relation, finding->required);
    text_add(text, finding->relation == INGLE_IS ? "; the rule asks " : "; the rule only asks ");
    if (wish != NULL) {
        text_add(text, wish);
    } else {
        text_add(text, finding->relation == INGLE_IS ? "for: " : "for anything but: ");
        words_add_state(text, quantity, finding->required);
    }
}

/* What is seen has no margin: it is so, or it is not. */
static void add_observation(struct text *text, const struct ingle_finding *finding)
{
    const struct ingle_quantity *quantity = &quantities[finding->judged];
    const char *clause = seen_clause(quantity, finding->measured);
    bool same = finding->measured == finding->required;
    add_beginning(text, finding, clause != NULL ? clause : quantity->label);
    if (clause == NULL) {
        text_add(text, ": ");
        words_add_state(text, quantity, finding->measured);
    }
    if (same) {
        text_add(text, finding->relation == INGLE_IS ? ", as the rule asks"
                                                     : ", which the rule does not allow");
    } else {
        add_wish(text, finding);
    }
}

static bool is_observation(const struct ingle_finding *finding)
{
    return finding->relation == INGLE_IS || finding->relation == INGLE_IS_NOT;
}

/* ---- what is measured ----------------------------------------------------------------------- */

/* The limit itself is then too much. */
static bool asks_for_less(const struct ingle_finding *finding)
{
    return finding->relation == INGLE_LESS_THAN;
}

static bool asks_for_more(const struct ingle_finding *finding)
{
    return finding->relation == INGLE_AT_LEAST;
}

static bool is_counted(const struct ingle_quantity *quantity)
{
    return quantity->dimension == INGLE_COUNT && !words_on_scale(quantity);
}

/* `at least 3 are required` */
static void add_limit(struct words *words, const struct ingle_finding *finding)
{
    bool several = is_counted(&quantities[finding->judged]) && finding->required != 1;
    text_add(&words->text, asks_for_more(finding)   ? "at least "
                           : asks_for_less(finding) ? "only less than "
                                                    : "no more than ");
    words_add_amount(words, amount_of(finding, finding->required));
    text_add(&words->text, several ? " are " : " is ");
    text_add(&words->text, asks_for_more(finding) ? "required" : "allowed");
    text_add(&words->text, finding->by_listing          ? " by the listing"
                           : finding->amendment != NULL ? " as amended"
                                                        : "");
}

static const char *missed_words(const struct ingle_finding *finding)
{
    bool counted = is_counted(&quantities[finding->judged]);
    return asks_for_more(finding) ? (counted ? " too few" : " too little")
                                  : (counted ? " too many" : " too much");
}

/* On a scale nothing is to spare, and what is missed has words of its own. */
static void add_scale_margin(struct text *text, const struct ingle_finding *finding)
{
    const struct ingle_quantity *quantity = &quantities[finding->judged];
    const char *missed = asks_for_more(finding) ? quantity->below : quantity->above;
    if (finding->margin < 0 && missed != NULL) {
        text_add(text, ": ");
        text_add(text, missed);
    }
}

static void add_margin(struct words *words, const struct ingle_finding *finding)
{
    int64_t margin = finding->margin;
    if (margin == 0) {
        text_add(&words->text,
                 asks_for_less(finding) ? ": exactly that is too much" : ", exactly the limit");
        return;
    }
    if (words_on_scale(&quantities[finding->judged])) {
        add_scale_margin(&words->text, finding);
        return;
    }
    text_add(&words->text, ": ");
    words_add_amount(words, amount_of(finding, margin < 0 ? -margin : margin));
    text_add(&words->text, margin > 0 ? " to spare" : missed_words(finding));
}

static void add_judgement(struct words *words, const struct ingle_finding *finding)
{
    const struct ingle_quantity *quantity = &quantities[finding->judged];
    add_beginning(&words->text, finding, quantity->label);
    text_add(&words->text, ": ");
    words_add_amount(words, amount_of(finding, finding->measured));
    text_add(&words->text, words_on_scale(quantity)  ? " recorded"
                           : is_counted(quantity) ? " found"
                                                  : " measured");
    if (finding->has_required) {
        text_add(&words->text, ", ");
        add_limit(words, finding);
        add_margin(words, finding);
    }
    if (finding->verdict == INGLE_TOO_CLOSE && finding->turns_on == NULL) {
        text_add(&words->text, ". Within the tolerances of the measurements the rule may be met "
                               "or not");
    }
}

/* ---- what is not known ---------------------------------------------------------------------- */

static bool lacks_what_it_judges(const struct ingle_finding *finding)
{
    return finding->missing_count == 1 && finding->missing[0] == finding->judged;
}

static void add_missing_name(struct text *text, enum quantity_id id)
{
    const struct ingle_quantity *quantity = &quantities[id];
    const char *clause = quantity->dimension == INGLE_FLAG ? quantity->when[1] : NULL;
    text_add(text, clause != NULL ? "whether " : "");
    text_add(text, clause != NULL ? clause : quantity->label);
}

/* By their labels, parted so that a label may hold a comma. */
static void add_missing(struct text *text, const struct ingle_finding *finding)
{
    text_add(text, "not judged, since this is not recorded: ");
    for (size_t i = 0; i < finding->missing_count; i++) {
        text_add(text, i == 0 ? "" : "; ");
        add_missing_name(text, finding->missing[i]);
    }
}

/* What is seen is said as a question: its label alone would read as an answer. */
static void add_question(struct text *text, const struct ingle_finding *finding)
{
    const struct ingle_quantity *quantity = &quantities[finding->judged];
    const char *clause = quantity->dimension == INGLE_FLAG ? quantity->when[1] : NULL;
    if (clause != NULL) {
        add_beginning(text, finding, "whether ");
        text_add(text, clause);
    } else {
        add_beginning(text, finding,
                      finding->item == ITEM_NONE ? matter_of(finding)->label : quantity->label);
    }
}

static void add_unmeasured(struct words *words, const struct ingle_finding *finding)
{
    const struct ingle_quantity *quantity = &quantities[finding->judged];
    bool limit = finding->has_required && !is_seen(quantity);
    bool alone = lacks_what_it_judges(finding);
    add_question(&words->text, finding);
    text_add(&words->text, alone ? ": not recorded" : ": ");
    if (limit) {
        text_add(&words->text, alone ? "; " : "");
        add_limit(words, finding);
        text_add(&words->text, alone ? "" : "; ");
    }
    if (!alone) {
        add_missing(&words->text, finding);
    } else if (finding->has_required && finding->relation == INGLE_IS) {
        add_wish(&words->text, finding);
    }
}

static void add_look_up(struct words *words, const struct ingle_finding *finding)
{
    text_add(&words->text,
             "the appliance's own label or manual decides; look up what it says of this");
    if (finding->has_measured && !is_seen(&quantities[finding->judged])) {
        text_add(&words->text, ", and compare that with the ");
        words_add_amount(words, amount_of(finding, finding->measured));
        text_add(&words->text, " measured");
    }
    if (finding->has_usual) {
        text_add(&words->text,
                 finding->relation == INGLE_AT_LEAST ? ". At least " : ". No more than ");
        words_add_amount(words, amount_of(finding, finding->usual));
        text_add(&words->text, " is usual");
    }
}

/* Why nothing was judged, or nothing has to be. */
static void add_no_judgement(struct words *words, const struct ingle_finding *finding)
{
    add_beginning(&words->text, finding, quantities[finding->judged].label);
    text_add(&words->text, ": ");
    if (finding->replaced) {
        text_add(&words->text, finding->rule->role == ORDINARY
                                   ? "does not apply, since the exception is met"
                                   : "not needed, since the ordinary rule is met");
    } else if (finding->outside) {
        text_add(&words->text, "the publication prints no value for this, and none is made up");
    } else if (finding->verdict == INGLE_BY_LISTING) {
        add_look_up(words, finding);
    } else {
        text_add(&words->text, "the rule does not apply");
    }
}

/* An amount at which a rule begins to apply. */
static void add_turning(struct words *words, const struct ingle_finding *finding)
{
    const struct condition *condition = finding->turns_on;
    text_add(&words->text, ". It applies where ");
    text_add(&words->text, quantities[condition->quantity].label);
    text_add(&words->text, condition_words(condition->test));
    words_add_amount(words, quantity_amount(condition->quantity, condition->value));
    text_add(&words->text, "; within the tolerances of the measurements that may be so or not");
}

static void add_sentence(struct words *words, const struct ingle_finding *finding)
{
    if (finding->replaced || finding->outside || finding->verdict == INGLE_BY_LISTING ||
        finding->verdict == INGLE_NOT_APPLICABLE) {
        add_no_judgement(words, finding);
    } else if (finding->verdict == INGLE_UNMEASURED) {
        add_unmeasured(words, finding);
    } else if (is_observation(finding)) {
        add_observation(&words->text, finding);
    } else {
        add_judgement(words, finding);
    }
    if (finding->turns_on != NULL) {
        add_turning(words, finding);
    }
    text_add(&words->text, ".");
}

/* What was not judged is dangerous only if the rule turns out not to be met. */
static const char *reservation(ingle_verdict verdict)
{
    switch (verdict) {
    case INGLE_UNMEASURED:
        return "Not judged; what follows holds if the rule is not met. ";
    case INGLE_BY_LISTING:
        return "Not judged. Light nothing here until what the listing asks has been looked up; "
               "what follows holds if it is not met. ";
    default:
        return "";
    }
}

static void add_danger(struct text *text, const struct ingle_finding *finding)
{
    if (finding->verdict >= INGLE_UNMEASURED) {
        text_add(text, reservation(finding->verdict));
        text_add(text, finding_words(finding)->caution);
    }
}

static void add_caution(struct text *text, const struct ingle_finding *finding)
{
    const char *basis = basis_caution(finding->rule->basis);
    bool warn = finding->verdict >= INGLE_UNMEASURED;
    add_danger(text, finding);
    bool own = !finding->by_listing && finding->amendment == NULL;
    if (basis != NULL && finding->verdict != INGLE_NOT_APPLICABLE && own) {
        text_add(text, warn ? " " : "");
        text_add(text, basis);
    }
}

ingle_status ingle_finding_text(const ingle_finding *finding, ingle_finding_part part,
                                const ingle_format *format, char *buffer, size_t capacity,
                                size_t *length)
{
    if (finding == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct words words = {text_start(buffer, capacity), format, INGLE_OK};
    switch (part) {
    case INGLE_FINDING_SUBJECT:
        words_add_pointer(&words.text, finding->judged, finding->item);
        break;
    case INGLE_FINDING_LABEL:
        add_label(&words.text, finding);
        break;
    case INGLE_FINDING_CITATION:
        add_citation(&words.text, finding);
        break;
    case INGLE_FINDING_SENTENCE:
        add_sentence(&words, finding);
        break;
    case INGLE_FINDING_CAUTION:
        add_caution(&words.text, finding);
        break;
    case INGLE_FINDING_DANGER:
        add_danger(&words.text, finding);
        break;
    default:
        return INGLE_ERROR_ARGUMENT;
    }
    return words_end(&words, length);
}

ingle_status ingle_finding_missing_text(const ingle_finding *finding, size_t index, char *buffer,
                                        size_t capacity, size_t *length)
{
    if (finding == NULL || index >= finding->missing_count || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    words_add_pointer(&text, finding->missing[index], finding->item);
    return text_end(&text, length);
}

ingle_status ingle_missing_subject_text(const ingle_missing *missing, char *buffer,
                                        size_t capacity, size_t *length)
{
    if (missing == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    words_add_pointer(&text, missing->quantity, missing->item);
    return text_end(&text, length);
}
