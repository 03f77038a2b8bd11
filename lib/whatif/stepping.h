/* SPDX-License-Identifier: MIT */
/*
 * Leads one quantity through its values, and judges the survey at each.
 */
#ifndef INGLE_WHATIF_STEPPING_H
#define INGLE_WHATIF_STEPPING_H

#include <ingle/check.h>
#include <ingle/memory.h>
#include <ingle/range.h>

#include <stdbool.h>

enum { WHATIF_ERROR_TEXT_SIZE = 320 };

/* What is asked: all but the range. */
struct question {
    const ingle_survey *survey;
    const ingle_standard *const *standards;
    size_t standard_count;
    const ingle_check_options *check; /* NULL for none */
    const char *rule;                 /* NULL for all */
};

struct stepping {
    struct question question;
    ingle_check_options how;
    ingle_range range; /* settled */
    size_t count;
    ingle_survey *survey; /* a copy, in which the value is set */
    ingle_report *report; /* at the value; empty where it unjudged what is recorded */
    bool unjudged; /* the value contradicts what is recorded, or is too large to reckon with */
    char *error_text; /* the owner's, of WHATIF_ERROR_TEXT_SIZE */
};

/*
 * Settles the range, sees that the rule is there and that the survey as it is can be judged; the
 * report is then that of the survey as it is. To be ended whatever this returns.
 */
ingle_status stepping_start(struct stepping *stepping, const ingle_allocator *allocator,
                            const struct question *question, const ingle_range *range,
                            char *error_text);
void stepping_end(struct stepping *stepping);

/* The value at a place. */
ingle_amount stepping_value(const struct stepping *stepping, size_t index);

/* Sets the quantity to a value, with the tolerance that it was recorded with. */
ingle_status stepping_set(struct stepping *stepping, int64_t value);

/* Judges the survey with the quantity at a value. */
ingle_status stepping_judge(struct stepping *stepping, int64_t value);

/* Whether a finding is on the rule that is asked for. */
bool stepping_asks(const struct stepping *stepping, const ingle_finding *finding);

/* Puts the sentence of a status, and of what it is about, where the owner keeps it. */
ingle_status stepping_refuse(char *error_text, ingle_status status, const char *about);

#endif
