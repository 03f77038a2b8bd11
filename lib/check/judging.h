/* SPDX-License-Identifier: MIT */
/*
 * Judging one rule on one quantity of one item.
 */
#ifndef INGLE_CHECK_JUDGING_H
#define INGLE_CHECK_JUDGING_H

#include "check/report.h"

/* What stays the same during one check. */
struct check {
    struct ingle_report *report;
    const ingle_survey *survey;
    const ingle_amendments *amendments;
    ingle_check_options options;
    const ingle_standard *standard; /* that is being worked through */
    size_t first_finding;           /* of that standard */
    bool asked[QUANTITY_COUNT];     /* of which some rule that applies makes use */
};

/* Leaves a report empty but for an error of the call, told by its status or in a sentence. */
ingle_status report_refuse(struct ingle_report *report, ingle_status status, const char *sentence);

/* The item that a quantity is asked for: that of its group, where the group repeats. */
size_t item_for(enum quantity_id quantity, size_t item);

/* Adds the findings of a rule on one of its quantities; `item` may be ITEM_NONE. */
ingle_status judge_item(struct check *check, const struct ingle_rule *rule,
                        enum quantity_id judged, size_t item);

/*
 * The calculation of a rule that would ask at least nothing of a quantity: it says what the
 * quantity comes to, and its margin within which tolerances.
 */
struct calculation calculation_of(const struct check *check, enum quantity_id quantity,
                                  size_t item);

/* The calculation of a rule, with its numbers as amended and its place given up to a listing. */
struct calculation calculation_for(const struct check *check, const struct ingle_rule *rule,
                                   enum quantity_id judged, size_t item, const int64_t *numbers);

/*
 * The calculation that a finding of a report came from, to be run again: its numbers, which are
 * written to `numbers`, as they were amended, its reading, and no steps.
 */
struct calculation calculation_again(const struct ingle_finding *finding, int64_t *numbers);

#endif
