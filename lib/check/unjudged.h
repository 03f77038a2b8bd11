/* SPDX-License-Identifier: MIT */
/*
 * What was recorded and is judged by no rule of the standards named.
 */
#ifndef INGLE_CHECK_UNJUDGED_H
#define INGLE_CHECK_UNJUDGED_H

#include "check/judging.h"

/* Notes all that a rule makes use of that applies, or may apply. */
void unjudged_take_rule(struct check *check, const struct ingle_rule *rule,
                        enum quantity_id judged, size_t item);

/* Lists what was recorded, is judged by some rule of any standard, and was not made use of. */
ingle_status unjudged_collect(struct check *check);

#endif
