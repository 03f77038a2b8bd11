/* SPDX-License-Identifier: MIT */
/*
 * Formulas of any topic: a fixed limit, a share of another quantity, a limit that another quantity
 * switches, a limit beyond which nothing is printed.
 */
#include "formulas/derived.h"
#include "formulas/formula.h"
#include "formulas/round.h"

static enum outcome fixed_required(struct calculation *calculation, int64_t *required)
{
    *required = calculation->numbers[0];
    RECORD_STEP(calculation, .label = "required", .expression = "{0}",
                .operands = {operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_fixed = {
    .name = "fixed",
    .text = "What is required is `limit`, whatever the rest.",
    .numbers = {{"limit", AS_JUDGED, INGLE_SCALE_USUAL}},
    .required = fixed_required,
};

/* The input times the ratio that is the rule's first number. */
static enum outcome share_of_input(struct calculation *calculation, const char *label,
                                   int64_t *share)
{
    int64_t input = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &input);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    if (!round_share(calculation, calculation->inputs[0], input, calculation->numbers[0], share)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = label, .expression = "{0} × {1}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], input),
                             operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *share), .has_result = true);
    return OUTCOME_DONE;
}

static enum outcome share_required(struct calculation *calculation, int64_t *required)
{
    return share_of_input(calculation, "required", required);
}

const struct formula formula_share = {
    .name = "share",
    .text = "What is required is the rule's input times `ratio`.",
    .numbers = {{"ratio", INGLE_RATIO, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = share_required,
};

static enum outcome share_or_least_required(struct calculation *calculation, int64_t *required)
{
    int64_t share = 0;
    enum outcome outcome = share_of_input(calculation, "share", &share);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    int64_t least = calculation->numbers[1];
    *required = share > least ? share : least;
    RECORD_STEP(calculation, .label = "required", .expression = "the greater of {0} and {1}",
                .operands = {operand_amount("share", calculation_judged_amount(calculation, share)),
                             operand_number(calculation, 1)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_share_or_least = {
    .name = "share-or-least",
    .text = "What is required is the rule's input times `ratio`, and never less than `least`.",
    .numbers = {{"ratio", INGLE_RATIO, INGLE_SCALE_USUAL}, {"least", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = share_or_least_required,
};

/*
 * The same, but never more than the input itself: what is made easier is never made harder.
 */
static enum outcome reduced_share_required(struct calculation *calculation, int64_t *required)
{
    int64_t input = 0;
    enum outcome outcome = share_or_least_required(calculation, required);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    outcome = calculation_quantity(calculation, calculation->inputs[0], &input);
    if (outcome != OUTCOME_DONE || *required <= input) {
        return outcome;
    }
    *required = input;
    RECORD_STEP(calculation, .label = "required", .expression = "no more than {0}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], input)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_reduced_share = {
    .name = "reduced-share",
    .text = "What is required is the rule's input times `ratio`, never less than `least`, and "
            "never more than the input itself.",
    .numbers = {{"ratio", INGLE_RATIO, INGLE_SCALE_USUAL}, {"least", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = reduced_share_required,
};

static enum outcome input_plus_required(struct calculation *calculation, int64_t *required)
{
    int64_t input = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &input);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    if (!wide_add(input, calculation->numbers[0], required)) {
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = "required", .expression = "{0} + {1}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], input),
                             operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_input_plus = {
    .name = "input-plus",
    .text = "What is required is the rule's input and `more`.",
    .numbers = {{"more", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = input_plus_required,
};

/* Numbers of `input-plus-or-least`. */
enum { PLUS_MORE, PLUS_LEAST };

static enum outcome input_plus_or_least_required(struct calculation *calculation, int64_t *required)
{
    int64_t input = 0;
    int64_t sum;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &input);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    if (!wide_add(input, calculation->numbers[PLUS_MORE], &sum)) {
        return OUTCOME_OVERFLOW;
    }
    int64_t least = calculation->numbers[PLUS_LEAST];
    *required = sum > least ? sum : least;
    RECORD_STEP(calculation, .label = "required", .expression = "the greater of {0} + {1} and {2}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], input),
                             operand_number(calculation, PLUS_MORE),
                             operand_number(calculation, PLUS_LEAST)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_input_plus_or_least = {
    .name = "input-plus-or-least",
    .text = "What is required is the rule's input and `more`, and never less than `least`.",
    .numbers = {{"more", AS_JUDGED, INGLE_SCALE_USUAL}, {"least", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = input_plus_or_least_required,
};

static enum outcome input_or_most_required(struct calculation *calculation, int64_t *required)
{
    int64_t input = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &input);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    int64_t most = calculation->numbers[0];
    *required = input < most ? input : most;
    RECORD_STEP(calculation, .label = "required", .expression = "the lesser of {0} and {1}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], input),
                             operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_input_or_most = {
    .name = "input-or-most",
    .text = "What is required is the rule's input, but no more than `most`.",
    .numbers = {{"most", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = input_or_most_required,
};

/* Number of `within`: how near the input has to be for the rule to ask anything. */
enum { WITHIN_LIMIT, WITHIN_DISTANCE };

static enum outcome within_required(struct calculation *calculation, int64_t *required)
{
    int64_t distance = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &distance);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    bool near = distance <= calculation->numbers[WITHIN_DISTANCE];
    *required = calculation->numbers[WITHIN_LIMIT];
    RECORD_STEP(calculation, .label = "required",
                .expression = near ? "{0} ≤ {1}, so {2}" : "{0} > {1}, so nothing",
                .operands = {operand_quantity(calculation, calculation->inputs[0], distance),
                             operand_number(calculation, WITHIN_DISTANCE),
                             operand_number(calculation, WITHIN_LIMIT)},
                .result = calculation_judged_amount(calculation, *required), .has_result = near);
    return near ? OUTCOME_DONE : OUTCOME_UNLIMITED;
}

static size_t within_breakpoints(struct calculation *calculation, enum quantity_id quantity,
                                 int64_t *values)
{
    (void)quantity;
    values[0] = calculation->numbers[WITHIN_DISTANCE];
    values[1] = values[0] + 1;
    return 2;
}

const struct formula formula_within = {
    .name = "within",
    .text = "What is required is `limit` where the rule's input is `within` or less; beyond, this "
            "rule asks nothing.",
    .numbers = {{"limit", AS_JUDGED, INGLE_SCALE_USUAL},
                {"within", INGLE_LENGTH, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 0}},
    .driver_count = 1,
    .required = within_required,
    .breakpoints = within_breakpoints,
};

/* Numbers of `above-step`: where the step is, what holds up to it, and what holds above it. */
enum { STEP_ABOVE, UP_TO_STEP, ABOVE_STEP };

static enum outcome above_step_required(struct calculation *calculation, int64_t *required)
{
    int64_t input = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &input);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    unsigned chosen = input > calculation->numbers[STEP_ABOVE] ? ABOVE_STEP : UP_TO_STEP;
    *required = calculation->numbers[chosen];
    RECORD_STEP(calculation, .label = "required",
                .expression = chosen == ABOVE_STEP ? "{0} > {1}, so {2}" : "{0} ≤ {1}, so {2}",
                .operands = {operand_quantity(calculation, calculation->inputs[0], input),
                             operand_number(calculation, STEP_ABOVE),
                             operand_number(calculation, chosen)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

static size_t above_step_breakpoints(struct calculation *calculation, enum quantity_id quantity,
                                     int64_t *values)
{
    int64_t at;
    if (!derive_inverse(calculation, calculation->inputs[0], quantity,
                        calculation->numbers[STEP_ABOVE], &at)) {
        return 0;
    }
    values[0] = at;
    values[1] = at + 1;
    return 2;
}

const struct formula formula_above_step = {
    .name = "above-step",
    .text = "What is required is `up-to` where the rule's input is `step` or less, and `above` "
            "where it is more.",
    .numbers = {{"step", INGLE_LENGTH, INGLE_SCALE_USUAL},
                {"up-to", AS_JUDGED, INGLE_SCALE_USUAL},
                {"above", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 0}},
    .driver_count = 1,
    .required = above_step_required,
    .breakpoints = above_step_breakpoints,
};

/* A bound of what a section is about: beyond it nothing of the section is asked. */
static enum outcome within_scope_required(struct calculation *calculation, int64_t *required)
{
    int64_t input = 0;
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &input);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    bool within = input <= calculation->numbers[0];
    *required = calculation->numbers[0];
    RECORD_STEP(calculation, .label = "scope",
                .expression = within ? "{0} ≤ {1}" : "{0} > {1}, so nothing is printed for this",
                .operands = {operand_quantity(calculation, calculation->inputs[0], input),
                             operand_number(calculation, 0)},
                .result = calculation_judged_amount(calculation, *required), .has_result = within);
    return within ? OUTCOME_DONE : OUTCOME_OUTSIDE;
}

static size_t within_scope_breakpoints(struct calculation *calculation, enum quantity_id quantity,
                                       int64_t *values)
{
    (void)quantity;
    values[0] = calculation->numbers[0];
    values[1] = values[0] + 1;
    return 2;
}

const struct formula formula_within_scope = {
    .name = "within-scope",
    .text = "The rules are written for no more than `limit` of the rule's input, which is what is "
            "judged; of more the publication says nothing.",
    .numbers = {{"limit", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 0}},
    .driver_count = 1,
    .required = within_scope_required,
    .breakpoints = within_scope_breakpoints,
};
