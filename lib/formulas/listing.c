/* SPDX-License-Identifier: MIT */
/*
 * What the appliance's own label or manual says.
 */
#include "formulas/formula.h"
#include "formulas/round.h"

static enum outcome by_listing_required(struct calculation *calculation, int64_t *required)
{
    calculation->by_listing = true;
    if (!listing_speaks(calculation, calculation->inputs[0]) ||
        !calculation_recorded(calculation, calculation->inputs[0], required)) {
        calculation_miss(calculation, calculation->inputs[0]);
        return OUTCOME_LISTING;
    }
    RECORD_STEP(calculation, .label = "required", .expression = "{0}",
                .remark = "By the appliance's own listing.",
                .operands = {operand_quantity(calculation, calculation->inputs[0], *required)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_by_listing = {
    .name = "by-listing",
    .text = "What is required is what the appliance's own label or manual says.",
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = by_listing_required,
};

enum { USUAL };

/* A listing that is not recorded leaves what is usual to compare with, and nothing required. */
static enum outcome name_usual(struct calculation *calculation, int64_t usual)
{
    calculation->has_usual = true;
    calculation->usual = usual;
    return OUTCOME_LISTING;
}

static enum outcome listing_with_usual_required(struct calculation *calculation, int64_t *required)
{
    enum outcome outcome = by_listing_required(calculation, required);
    return outcome == OUTCOME_LISTING ? name_usual(calculation, calculation->numbers[USUAL])
                                      : outcome;
}

const struct formula formula_listing_with_usual = {
    .name = "listing-with-usual",
    .text = "What is required is what the appliance's own label or manual says. Where that is not "
            "recorded nothing is required, and `usual` is named to compare with.",
    .numbers = {{"usual", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = listing_with_usual_required,
};

/* What carries no label has no listing to look up. */
static bool is_unlisted(const struct calculation *calculation)
{
    int64_t label;
    return calculation_recorded(calculation, QUANTITY_LISTING_LABEL, &label) &&
           label != CHOICE_LISTING_LABEL_LISTED;
}

static enum outcome listing_or_usual_required(struct calculation *calculation, int64_t *required)
{
    int64_t listed;
    bool speaks = listing_speaks(calculation, calculation->inputs[0]);
    if (!is_unlisted(calculation) ||
        (speaks && calculation_recorded(calculation, calculation->inputs[0], &listed))) {
        return listing_with_usual_required(calculation, required);
    }
    *required = calculation->numbers[USUAL];
    RECORD_STEP(calculation, .label = "required", .expression = "{0}",
                .remark = "It carries no label, so what is usual is asked.",
                .operands = {operand_number(calculation, USUAL)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_listing_or_usual = {
    .name = "listing-or-usual",
    .text = "What is required is what the appliance's own label or manual says; of an appliance "
            "that carries no label, `usual`.",
    .numbers = {{"usual", AS_JUDGED, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}},
    .driver_count = 1,
    .required = listing_or_usual_required,
};

/* What another part's label states, or a maker without one. */
static const enum quantity_id listed_apart[] = {
    QUANTITY_LISTING_CONNECTOR_CLEARANCE, QUANTITY_LISTING_CHIMNEY_CLEARANCE,
    QUANTITY_LISTING_CHIMNEY_OFFSET,      QUANTITY_LISTING_CHIMNEY_ELBOWS,
    QUANTITY_LISTING_UNBRACED_HEIGHT,     QUANTITY_LISTING_FLUE_HEIGHT,
    QUANTITY_LISTING_FLUE_ABOVE_BASE,     QUANTITY_LISTING_VENT_AREA,
    QUANTITY_LISTING_DAMPER_OPENING,      QUANTITY_LISTING_GAS_BACK,
    QUANTITY_LISTING_GAS_SIDE,            QUANTITY_LISTING_GAS_TOP,
    QUANTITY_LISTING_GAS_HEARTH_FRONT,    QUANTITY_LISTING_GAS_HEARTH_SIDE,
    QUANTITY_LISTING_GAS_TRIM_DISTANCE,   QUANTITY_LISTING_GAS_TRIM_PROJECTION,
};

static bool is_listed_apart(const struct calculation *calculation, enum quantity_id listing)
{
    int64_t protection;
    for (size_t i = 0; i < sizeof listed_apart / sizeof listed_apart[0]; i++) {
        if (listed_apart[i] == listing) {
            return true;
        }
    }
    return listing == QUANTITY_WALL_BY_LISTING &&
           calculation_recorded(calculation, QUANTITY_WALL_PROTECTION, &protection) &&
           protection == CHOICE_WALL_PROTECTION_LISTED_ASSEMBLY;
}

bool listing_speaks(const struct calculation *calculation, enum quantity_id listing)
{
    return !is_unlisted(calculation) || is_listed_apart(calculation, listing);
}

/* ---- a pad about the whole appliance -------------------------------------------------------- */

/* Numbers of `listing-about-body`: what its pad is usually larger, and how often a side counts. */
enum { USUALLY_MORE, TIMES };

/* The sides that a listing states, added and counted as often as the rule says. */
static enum outcome listed_sides(struct calculation *calculation, int64_t *sides)
{
    int64_t sum = 0;
    bool lacking = false;
    for (size_t i = 1; i < INPUTS && calculation->inputs[i] != QUANTITY_NONE; i++) {
        int64_t side;
        if (!listing_speaks(calculation, calculation->inputs[i]) ||
            !calculation_recorded(calculation, calculation->inputs[i], &side)) {
            calculation_miss(calculation, calculation->inputs[i]);
            lacking = true;
        } else if (!wide_add(sum, side, &sum)) {
            return OUTCOME_OVERFLOW;
        }
    }
    if (lacking) {
        return OUTCOME_LISTING;
    }
    return round_share(calculation, calculation->inputs[1], sum, calculation->numbers[TIMES], sides)
               ? OUTCOME_DONE
               : OUTCOME_OVERFLOW;
}

static enum outcome listing_about_body_required(struct calculation *calculation, int64_t *required)
{
    int64_t body = 0;
    int64_t more = calculation->numbers[USUALLY_MORE];
    calculation->by_listing = true;
    enum outcome listed = listed_sides(calculation, &more);
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], &body);
    if (listed != OUTCOME_DONE && listed != OUTCOME_LISTING) {
        return listed;
    }
    if (outcome != OUTCOME_DONE) {
        return listed == OUTCOME_LISTING ? listed : outcome;
    }
    if (!wide_add(body, more, required)) {
        return OUTCOME_OVERFLOW;
    }
    if (listed == OUTCOME_LISTING) {
        return name_usual(calculation, *required);
    }
    RECORD_STEP(calculation, .label = "required", .expression = "{0} + {1}",
                .remark = "The pad that the appliance's own listing asks about it.",
                .operands = {operand_quantity(calculation, calculation->inputs[0], body),
                             operand_amount("by the listing",
                                            calculation_judged_amount(calculation, more))},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

const struct formula formula_listing_about_body = {
    .name = "listing-about-body",
    .text = "What is required is the rule's first input and, `times` over, what the appliance's "
            "own label or manual says of its other inputs. Where that is not recorded nothing is "
            "required, and the first input and `usual` are named to compare with.",
    .numbers = {{"usual", AS_JUDGED, INGLE_SCALE_USUAL}, {"times", INGLE_RATIO, INGLE_SCALE_USUAL}},
    .drivers = {{THE_INPUT, 1}, {SECOND_INPUT, 1}, {THIRD_INPUT, 1}},
    .driver_count = 3,
    .required = listing_about_body_required,
};
