/* SPDX-License-Identifier: MIT */
#include "formulas/layers.h"

#include "measure/amounts.h"

/*
 * R = thickness in inches ÷ k. A ratio holds RATIO_PER_INCH_TOP / RATIO_PER_INCH_BOTTOM of its base
 * units for each nanometre, were it an inch.
 */
#define RATIO_PER_INCH_TOP INT64_C(180000)
#define RATIO_PER_INCH_BOTTOM INT64_C(127)
_Static_assert(INCHES(1) * RATIO_PER_INCH_TOP == INGLE_RATIO_ONE * RATIO_PER_INCH_BOTTOM,
               "one inch has to come out as one");

static void add_step(struct calculation *calculation, const char *expression,
                     enum quantity_id first, int64_t first_value, enum quantity_id second,
                     int64_t second_value, int64_t value)
{
    RECORD_STEP(calculation, .label = "R-value of the layer", .expression = expression,
                .operands = {operand_quantity(calculation, first, first_value),
                             operand_quantity(calculation, second, second_value)},
                .result = quantity_amount(QUANTITY_LAYER_R_VALUE, value), .has_result = true);
}

static enum outcome by_conductivity(struct calculation *calculation, int64_t thickness, int64_t k,
                                    int64_t *value)
{
    if (k == 0 || !wide_multiply_divide((uint64_t)thickness,
                                        (uint64_t)INGLE_RATIO_ONE * RATIO_PER_INCH_TOP,
                                        (uint64_t)k * RATIO_PER_INCH_BOTTOM, calculation->rounding,
                                        value, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    add_step(calculation, "{0} in inches ÷ {1}", QUANTITY_LAYER_THICKNESS, thickness,
             QUANTITY_LAYER_K, k, *value);
    return OUTCOME_DONE;
}

static enum outcome by_inches(struct calculation *calculation, int64_t thickness, int64_t per_inch,
                              int64_t *value)
{
    if (!wide_multiply_divide((uint64_t)thickness, (uint64_t)per_inch, INCHES(1),
                              calculation->rounding, value, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    add_step(calculation, "{0} in inches × {1}", QUANTITY_LAYER_THICKNESS, thickness,
             QUANTITY_LAYER_R_PER_INCH, per_inch, *value);
    return OUTCOME_DONE;
}

static const struct material *find_material(const struct calculation *calculation)
{
    int64_t material;
    if (!calculation_recorded(calculation, QUANTITY_LAYER_MATERIAL, &material)) {
        return NULL;
    }
    for (size_t i = 0; i < calculation->material_count; i++) {
        if ((int64_t)calculation->materials[i].material == material) {
            return &calculation->materials[i];
        }
    }
    return NULL;
}

/* By what the standard says of the material, for want of the product's own data. */
static enum outcome by_material(struct calculation *calculation, int64_t thickness, int64_t *value)
{
    const struct material *material = find_material(calculation);
    if (material == NULL) {
        return calculation_miss(calculation, QUANTITY_LAYER_R_VALUE);
    }
    RECORD_STEP(calculation, .label = "R-value of one inch", .expression = "of {0}",
                .remark = material->source,
                .operands = {operand_quantity(calculation, QUANTITY_LAYER_MATERIAL,
                                              (int64_t)material->material)},
                .result = quantity_amount(QUANTITY_LAYER_R_PER_INCH, material->r_per_inch),
                .has_result = true);
    return by_inches(calculation, thickness, material->r_per_inch, value);
}

static enum outcome by_conductance(struct calculation *calculation, int64_t c, int64_t *value)
{
    if (c == 0 || !wide_multiply_divide(INGLE_RATIO_ONE, INGLE_RATIO_ONE, (uint64_t)c,
                                        calculation->rounding, value, NULL)) {
        return OUTCOME_OVERFLOW;
    }
    add_step(calculation, "1 ÷ {0}", QUANTITY_LAYER_C, c, QUANTITY_LAYER_C, c, *value);
    return OUTCOME_DONE;
}

/* A layer's datum, at the end of its tolerance that is asked for; R rises with it, or falls. */
static bool datum(const struct calculation *calculation, enum quantity_id quantity, int rises,
                  int64_t *value)
{
    const struct record *record =
        survey_record(calculation->survey, quantity, calculation->item);
    if (!calculation_recorded(calculation, quantity, value)) {
        return false;
    }
    *value += record == NULL ? 0 : rises * calculation->layers_side * record->tolerance;
    *value = *value < 0 ? 0 : *value;
    return true;
}

enum outcome layer_r_value(struct calculation *calculation, int64_t *value)
{
    int64_t thickness;
    int64_t given;
    if (datum(calculation, QUANTITY_LAYER_C, -1, &given)) {
        return by_conductance(calculation, given, value);
    }
    if (!datum(calculation, QUANTITY_LAYER_THICKNESS, 1, &thickness)) {
        return calculation_miss(calculation, QUANTITY_LAYER_R_VALUE);
    }
    if (datum(calculation, QUANTITY_LAYER_K, -1, &given)) {
        return by_conductivity(calculation, thickness, given, value);
    }
    return datum(calculation, QUANTITY_LAYER_R_PER_INCH, 1, &given)
               ? by_inches(calculation, thickness, given, value)
               : by_material(calculation, thickness, value);
}

/* The layer at `item`, as recorded or as its data give it. */
static enum outcome layer_at(struct calculation *calculation, size_t item, int64_t *value)
{
    size_t judged_item = calculation->item;
    calculation->item = item;
    enum outcome outcome = datum(calculation, QUANTITY_LAYER_R_VALUE, 1, value)
                               ? OUTCOME_DONE
                               : layer_r_value(calculation, value);
    calculation->item = judged_item;
    return outcome;
}

/* A finding tells what is missing by the judged item, so the whole is named, not the layer. */
static enum outcome miss_whole(struct calculation *calculation, uint8_t missing_before)
{
    calculation->missing_count = missing_before;
    return calculation_miss(calculation, QUANTITY_FLOOR_R_VALUE);
}

enum outcome layers_r_value(struct calculation *calculation, int64_t *value)
{
    const struct item_list *layers = &calculation->survey->items[GROUP_LAYER];
    uint8_t missing_before = calculation->missing_count;
    int64_t sum = 0;
    for (size_t item = 0; item < layers->count; item++) {
        int64_t layer = 0;
        enum outcome outcome = layer_at(calculation, item, &layer);
        if (outcome == OUTCOME_MISSING) {
            return miss_whole(calculation, missing_before);
        }
        if (outcome != OUTCOME_DONE || !wide_add(sum, layer, &sum)) {
            calculation->at_fault = QUANTITY_LAYER_R_VALUE;
            return OUTCOME_OVERFLOW;
        }
        RECORD_STEP(calculation, .label = "R-value so far", .expression = "with {0}",
                    .operands = {operand_amount("layer.r-value",
                                                quantity_amount(QUANTITY_LAYER_R_VALUE, layer))},
                    .result = quantity_amount(QUANTITY_FLOOR_R_VALUE, sum), .has_result = true);
    }
    *value = sum;
    return layers->count > 0 ? OUTCOME_DONE : miss_whole(calculation, missing_before);
}
