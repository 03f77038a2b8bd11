/* SPDX-License-Identifier: MIT */
#include "formulas/derived.h"

#include "formulas/flue.h"

enum derivation_kind { PRODUCT, DIFFERENCE };

/* Each quantity that is the product or the difference of two others. */
static const struct derivation {
    enum quantity_id quantity;
    enum quantity_id first;
    enum quantity_id second;
    enum derivation_kind kind;
    const char *label;
} derivations[] = {
    {QUANTITY_OPENING_AREA, QUANTITY_OPENING_WIDTH, QUANTITY_OPENING_HEIGHT, PRODUCT,
     "opening area"},
    {QUANTITY_THROAT_AREA, QUANTITY_THROAT_WIDTH, QUANTITY_THROAT_DEPTH, PRODUCT, "throat area"},
    {QUANTITY_INSERT_HEARTH_FRONT, QUANTITY_HEARTH_FRONT, QUANTITY_INSERT_PROJECTION, DIFFERENCE,
     "hearth left in front of the insert"},
};

enum { DERIVATION_COUNT = sizeof derivations / sizeof derivations[0] };

static const struct derivation *derivation_of(enum quantity_id quantity)
{
    for (size_t i = 0; i < DERIVATION_COUNT; i++) {
        if (derivations[i].quantity == quantity) {
            return &derivations[i];
        }
    }
    return NULL;
}

static void derivation_step(struct calculation *calculation, const struct derivation *derivation,
                            int64_t first, int64_t second, int64_t value)
{
    struct operand result = operand_quantity(calculation, derivation->quantity, value);
    RECORD_STEP(calculation, .label = derivation->label,
                .expression = derivation->kind == PRODUCT ? "{0} × {1}" : "{0} − {1}",
                .operands = {operand_quantity(calculation, derivation->first, first),
                             operand_quantity(calculation, derivation->second, second)},
                .result = result.amount, .has_result = true);
}

static enum outcome derive_from_two(struct calculation *calculation,
                                    const struct derivation *derivation, int64_t *value)
{
    int64_t first = 0;
    int64_t second = 0;
    enum outcome outcome = calculation_quantity(calculation, derivation->first, &first);
    enum outcome other = calculation_quantity(calculation, derivation->second, &second);
    if (outcome != OUTCOME_DONE || other != OUTCOME_DONE) {
        return outcome != OUTCOME_DONE ? outcome : other;
    }
    bool fits = derivation->kind == PRODUCT ? wide_multiply(first, second, value)
                                            : wide_subtract(first, second, value);
    if (!fits) {
        calculation->at_fault = derivation->first;
        return OUTCOME_OVERFLOW;
    }
    if (calculation->steps != NULL) {
        derivation_step(calculation, derivation, first, second, *value);
    }
    return OUTCOME_DONE;
}

enum outcome derive(struct calculation *calculation, enum quantity_id quantity, int64_t *value)
{
    if (quantity == QUANTITY_FLUE_NET_AREA) {
        return flue_net_area(calculation, value);
    }
    const struct derivation *derivation = derivation_of(quantity);
    return derivation == NULL ? calculation_miss(calculation, quantity)
                              : derive_from_two(calculation, derivation, value);
}

bool derive_inverse(const struct calculation *calculation, enum quantity_id derived,
                    enum quantity_id quantity, int64_t value, int64_t *at)
{
    const struct derivation *derivation = derivation_of(derived);
    int64_t other;
    if (quantity == derived) {
        *at = value;
        return true;
    }
    if (derivation == NULL ||
        (quantity != derivation->first && quantity != derivation->second) ||
        !calculation_recorded(
            calculation,
            quantity == derivation->first ? derivation->second : derivation->first, &other)) {
        return false;
    }
    if (derivation->kind == PRODUCT) {
        *at = other == 0 ? 0 : value / other;
        return other != 0;
    }
    return quantity == derivation->first ? wide_add(value, other, at)
                                         : wide_subtract(other, value, at);
}

static void add_one(struct dependences *dependences, enum quantity_id quantity, int8_t direction)
{
    for (size_t i = 0; i < dependences->count; i++) {
        if (dependences->list[i].quantity == quantity) {
            if (dependences->list[i].direction != direction) {
                dependences->list[i].direction = 0;
            }
            return;
        }
    }
    if (dependences->count < DEPENDENCES) {
        dependences->list[dependences->count++] = (struct dependence){quantity, direction};
    }
}

static void add_flue(struct dependences *dependences, const struct calculation *calculation,
                     int8_t direction)
{
    switch (flue_source(calculation)) {
    case FLUE_FROM_DIAMETER:
        add_one(dependences, QUANTITY_FLUE_DIAMETER, direction);
        break;
    case FLUE_FROM_SIDES:
        add_one(dependences, QUANTITY_FLUE_WIDTH, direction);
        add_one(dependences, QUANTITY_FLUE_DEPTH, direction);
        break;
    case FLUE_FROM_LINER:
    case FLUE_FROM_SHAPE:
    case FLUE_FROM_NOTHING:
        break;
    }
}

void dependences_add(struct dependences *dependences, const struct calculation *calculation,
                     enum quantity_id quantity, int8_t direction)
{
    int64_t value;
    const struct derivation *derivation = derivation_of(quantity);
    if (calculation_recorded(calculation, quantity, &value)) {
        add_one(dependences, quantity, direction);
    } else if (quantity == QUANTITY_FLUE_NET_AREA) {
        add_flue(dependences, calculation, direction);
    } else if (derivation != NULL) {
        int8_t opposite = (int8_t)-direction;
        dependences_add(dependences, calculation, derivation->first, direction);
        dependences_add(dependences, calculation, derivation->second,
                        derivation->kind == PRODUCT ? direction : opposite);
    }
}
