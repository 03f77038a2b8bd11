/* SPDX-License-Identifier: MIT */
#include "formulas/derived.h"

#include "formulas/flue.h"
#include "formulas/layers.h"
#include "formulas/round.h"

/* RISE is a length times a slope. */
enum derivation_kind { PRODUCT, DIFFERENCE, LESSER, GREATER, RISE };

/* Each quantity that follows from two others. */
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
    {QUANTITY_HEARTH_FROM_FACING, QUANTITY_HEARTH_FRONT, QUANTITY_HEARTH_FACING,
     DIFFERENCE, "hearth in front of the facing"},
    {QUANTITY_OPENING_TOTAL_AREA, QUANTITY_OPENING_TOTAL_LENGTH, QUANTITY_OPENING_HEIGHT, PRODUCT,
     "area of all open sides"},
    {QUANTITY_FLUE_SHORTER_SIDE, QUANTITY_FLUE_WIDTH, QUANTITY_FLUE_DEPTH, LESSER,
     "shorter side of the flue"},
    {QUANTITY_FLUE_LONGER_SIDE, QUANTITY_FLUE_WIDTH, QUANTITY_FLUE_DEPTH, GREATER,
     "longer side of the flue"},
    {QUANTITY_NEARBY_RISE, QUANTITY_NEARBY_DISTANCE, QUANTITY_NEARBY_SLOPE, RISE,
     "rise of the roof plane"},
    {QUANTITY_NEARBY_TOP_ABOVE, QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, QUANTITY_NEARBY_RISE,
     DIFFERENCE, "height of the chimney's top above the part"},
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

static const char *const derivation_expressions[] = {
    [PRODUCT] = "{0} × {1}",
    [DIFFERENCE] = "{0} − {1}",
    [LESSER] = "the lesser of {0} and {1}",
    [GREATER] = "the greater of {0} and {1}",
    [RISE] = "{0} × {1}",
};

static bool derivation_value(enum derivation_kind kind, enum rounding rounding, int64_t first,
                             int64_t second, int64_t *value)
{
    switch (kind) {
    case PRODUCT:
        return wide_multiply(first, second, value);
    case DIFFERENCE:
        return wide_subtract(first, second, value);
    case LESSER:
        *value = first < second ? first : second;
        return true;
    case GREATER:
        *value = first > second ? first : second;
        return true;
    case RISE:
        return wide_multiply_divide((uint64_t)first, (uint64_t)second, INGLE_RATIO_ONE, rounding,
                                    value, NULL);
    }
    return false;
}

static void derivation_step(struct calculation *calculation, const struct derivation *derivation,
                            int64_t first, int64_t second, int64_t value)
{
    struct operand result = operand_quantity(calculation, derivation->quantity, value);
    RECORD_STEP(calculation, .label = derivation->label,
                .expression = derivation_expressions[derivation->kind],
                .operands = {operand_quantity(calculation, derivation->first, first),
                             operand_quantity(calculation, derivation->second, second)},
                .result = result.amount, .has_result = true);
}

static enum outcome derive_from_two(struct calculation *calculation,
                                    const struct derivation *derivation, int64_t *value)
{
    int64_t first = 0;
    int64_t second = 0;
    enum rounding rounding = calculation->rounding;
    enum outcome outcome = calculation_quantity(calculation, derivation->first, &first);
    /* What is taken away is rounded the other way. */
    if (derivation->kind == DIFFERENCE) {
        calculation->rounding = rounding == ROUND_UP ? ROUND_DOWN : ROUND_UP;
    }
    enum outcome other = calculation_quantity(calculation, derivation->second, &second);
    calculation->rounding = rounding;
    if (outcome != OUTCOME_DONE || other != OUTCOME_DONE) {
        return outcome != OUTCOME_DONE ? outcome : other;
    }
    if (!derivation_value(derivation->kind, rounding, first, second, value)) {
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
    if (quantity == QUANTITY_FLOOR_R_VALUE) {
        return layers_r_value(calculation, value);
    }
    if (round_diameter(quantity) != QUANTITY_NONE) {
        return round_area(calculation, quantity, value);
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
    if (round_diameter(derived) == quantity) {
        return round_inverse(value, at);
    }
    if (derivation == NULL ||
        (quantity != derivation->first && quantity != derivation->second) ||
        !calculation_recorded(
            calculation,
            quantity == derivation->first ? derivation->second : derivation->first, &other)) {
        return false;
    }
    switch (derivation->kind) {
    case PRODUCT:
        *at = other == 0 ? 0 : value / other;
        return other != 0;
    case DIFFERENCE:
        return quantity == derivation->first ? wide_add(value, other, at)
                                             : wide_subtract(other, value, at);
    case LESSER:
        *at = value;
        return other > value;
    case GREATER:
        *at = value;
        return other <= value;
    case RISE:
        return other > 0 && wide_multiply_divide((uint64_t)value, INGLE_RATIO_ONE, (uint64_t)other,
                                                 ROUND_DOWN, at, NULL);
    }
    return false;
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
    } else if (quantity == QUANTITY_FLOOR_R_VALUE) {
        add_one(dependences, quantity, direction); /* all layers at once: they are items */
    } else if (round_diameter(quantity) != QUANTITY_NONE) {
        add_one(dependences, round_diameter(quantity), direction);
    } else if (derivation != NULL) {
        int8_t opposite = (int8_t)-direction;
        dependences_add(dependences, calculation, derivation->first, direction);
        dependences_add(dependences, calculation, derivation->second,
                        derivation->kind == DIFFERENCE ? opposite : direction);
    }
}
