/* SPDX-License-Identifier: MIT */
/*
 * Whether a rule applies to what was surveyed.
 */
#ifndef INGLE_CHECK_CONDITIONS_H
#define INGLE_CHECK_CONDITIONS_H

#include "check/judging.h"

enum applies {
    APPLIES,
    APPLIES_PERHAPS, /* within the tolerances of the measures it may or may not */
    APPLIES_UNKNOWN, /* something that it asks was not recorded */
    DOES_NOT_APPLY
};

struct application {
    enum applies applies;
    enum quantity_id unknown;         /* what was not recorded */
    const struct condition *turns_on; /* what may be so or not; NULL where all is certain */
    int64_t least;                    /* between these lies what it asks */
    int64_t most;
};

/* Conditions on a repeating group are left out where there is no item to ask. */
struct application rule_application(const struct check *check, const struct ingle_rule *rule,
                                    size_t item);

#endif
