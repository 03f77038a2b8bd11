/* SPDX-License-Identifier: MIT */
/*
 * A local authority's changes to the numbers of rules.
 */
#ifndef INGLE_STANDARDS_AMENDMENTS_H
#define INGLE_STANDARDS_AMENDMENTS_H

#include "standards/rule.h"

/*
 * The numbers of a rule as amended: copies them into `numbers`, which has room for FORMULA_NUMBERS,
 * and returns where the last amendment comes from, or NULL if there is none.
 */
const char *amendments_apply(const ingle_amendments *amendments, const ingle_standard *standard,
                             const struct ingle_rule *rule, int64_t *numbers);

/* Whether there is any amendment of this standard. */
bool amendments_concern(const ingle_amendments *amendments, const ingle_standard *standard);

#endif
