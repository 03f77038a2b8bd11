/* SPDX-License-Identifier: MIT */
/*
 * A report as the files of this room see it: findings, and what they share.
 */
#ifndef INGLE_CHECK_REPORT_H
#define INGLE_CHECK_REPORT_H

#include "check/evaluation.h"
#include "standards/amendments.h"
#include "standards/rule.h"

#include <ingle/check.h>

/* The item of a finding on a repeating group that nobody recorded. */
#define ITEM_NONE SIZE_MAX

struct ingle_finding {
    const ingle_report *report;
    const ingle_standard *standard;
    const struct ingle_rule *rule;
    const struct condition *turns_on; /* within the tolerances it may be so or not; else NULL */
    const char *amendment;
    const char *reading;
    enum quantity_id judged;
    size_t item;
    int64_t measured;
    int64_t required;
    int64_t margin;
    int64_t usual;
    size_t first_step;
    size_t step_count;
    size_t first_remedy;
    size_t remedy_count;
    enum quantity_id missing[MISSING];
    ingle_relation relation;
    ingle_verdict verdict;
    uint8_t missing_count;
    uint8_t reading_number;
    bool has_measured;
    bool has_required;
    bool has_margin;
    bool has_usual;
    bool by_listing; /* what is required is the listing's */
    bool outside;    /* the publication prints no value for this */
    bool replaced; /* it does not apply because an exception, or the ordinary rule, is met */
};

struct ingle_remedy {
    const ingle_report *report;
    size_t finding;
    enum quantity_id quantity;
    int64_t from; /* what it is now */
    int64_t to;
    int8_t direction; /* +1 more of it, -1 less, 0 another choice */
};

struct ingle_missing {
    const ingle_report *report;
    enum quantity_id quantity;
    size_t item; /* ITEM_NONE for a whole group */
    size_t first_lack;
    size_t last_lack;
};

/* A rule that lacks something; those that lack the same are a chain, in the order of findings. */
struct lack {
    enum matter_id matter;
    size_t next; /* LACK_END after the last */
};

#define LACK_END SIZE_MAX

/* Something recorded that no rule of the standards makes use of. */
struct ingle_unjudged {
    const ingle_report *report;
    enum quantity_id quantity;
    size_t item;
};

enum { NOTICES = 24, REPORT_ERROR_TEXT_SIZE = 320, REPORT_SUBJECT_SIZE = 80 };

struct ingle_report {
    ingle_allocator allocator;
    const ingle_survey *survey;
    const ingle_amendments *amendments;
    const ingle_standard **standards;
    size_t standard_count, standard_capacity;
    struct ingle_finding *findings;
    struct ingle_remedy *remedies;
    struct ingle_missing *missing;
    struct lack *lacks;
    struct ingle_unjudged *unjudged;
    size_t finding_count, finding_capacity;
    size_t remedy_count, remedy_capacity;
    size_t missing_count, missing_capacity;
    size_t lack_count, lack_capacity;
    size_t unjudged_count, unjudged_capacity;
    struct step_list steps;
    const char *notices[NOTICES];
    size_t notice_count;
    ingle_verdict verdict;
    char error_text[REPORT_ERROR_TEXT_SIZE];
    char error_subject[REPORT_SUBJECT_SIZE];
};

/* report.c: the matter whose words a finding gets. */
const struct matter *finding_words(const struct ingle_finding *finding);

/* report.c: what a rule that lacks something is about, by its place among them; NULL past them. */
const struct matter *missing_matter(const struct ingle_missing *missing, size_t index);

/* remedies.c: seeks the remedies of a finding and adds them to its report. */
ingle_status remedies_find(struct ingle_report *report, size_t finding,
                           const struct calculation *calculation, bool metric);

/* notices.c: the cautions that belong to the whole report. */
void notices_collect(struct ingle_report *report, const ingle_amendments *amendments);

#endif
