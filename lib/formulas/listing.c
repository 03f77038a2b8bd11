/* SPDX-License-Identifier: MIT */
/*
 * What the appliance's own label or manual says.
 */
#include "formulas/formula.h"

static enum outcome by_listing_required(struct calculation *calculation, int64_t *required)
{
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

/* What carries no label has no listing to look up. */
static bool is_unlisted(const struct calculation *calculation)
{
    int64_t label;
    return calculation_recorded(calculation, QUANTITY_LISTING_LABEL, &label) &&
           label != CHOICE_LISTING_LABEL_LISTED;
}

static enum outcome listing_or_usual_required(struct calculation *calculation, int64_t *required)
{
    if (!is_unlisted(calculation)) {
        return by_listing_required(calculation, required);
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
static bool is_listed_apart(const struct calculation *calculation, enum quantity_id listing)
{
    int64_t protection;
    return listing == QUANTITY_LISTING_CONNECTOR_CLEARANCE ||
           listing == QUANTITY_LISTING_DAMPER_OPENING || listing == QUANTITY_LISTING_VENT_AREA ||
           listing == QUANTITY_LISTING_CHIMNEY_CLEARANCE ||
           (listing == QUANTITY_WALL_BY_LISTING &&
            calculation_recorded(calculation, QUANTITY_WALL_PROTECTION, &protection) &&
            protection == CHOICE_WALL_PROTECTION_LISTED_ASSEMBLY);
}

bool listing_speaks(const struct calculation *calculation, enum quantity_id listing)
{
    return !is_unlisted(calculation) || is_listed_apart(calculation, listing);
}
