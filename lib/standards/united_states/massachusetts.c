/* SPDX-License-Identifier: MIT */
/*
 * Massachusetts: gas logs under a damper. The clause and its edition were not seen.
 */
#include "standards/united_states/gas_rows.h"
#include "standards/publications.h"

#define REMOVED_OR_WELDED "A damper removed for good meets it as one welded fully open does."

static const struct ingle_rule rules[] = {
    {MATTER_DAMPER_REMOVED_OR_WELDED, "clause not seen", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_DAMPER_STATE_FIXED_OPEN},
     .when = {GAS_LOGS,
              UP_THE_CHIMNEY,
              {QUANTITY_DAMPER_STATE, IS_NOT, CHOICE_DAMPER_STATE_REMOVED}},
     .reading = REMOVED_OR_WELDED},
    {MATTER_DAMPER_REMOVED_OR_WELDED, "clause not seen", INGLE_BASIS_CITED, INGLE_IS,
     &formula_observed, .numbers = {CHOICE_DAMPER_STATE_REMOVED},
     .when = {GAS_LOGS,
              UP_THE_CHIMNEY,
              {QUANTITY_DAMPER_STATE, IS, CHOICE_DAMPER_STATE_REMOVED}},
     .reading = REMOVED_OR_WELDED},
};

static const struct ingle_standard editions[] = {
    {.id = "massachusetts-gas", .title = "Massachusetts gas rules", .place = "Massachusetts",
     .note = "Massachusetts gas rules, as cited: the clause was not seen and its edition is not "
             "stated.",
     .unit = UNIT_INCH, .rules = rules, .rule_count = COUNT_OF(rules)},
};

const struct publication publication_massachusetts = {editions, COUNT_OF(editions)};
