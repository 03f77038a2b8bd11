/* SPDX-License-Identifier: MIT */
#include "formulas/round.h"

#include "formulas/flue.h"
#include "measure/circle.h"

enum quantity_id round_diameter(enum quantity_id area)
{
    if (area == QUANTITY_COLLAR_AREA) {
        return QUANTITY_COLLAR_DIAMETER;
    }
    if (area == QUANTITY_AIR_AREA) {
        return QUANTITY_AIR_DIAMETER;
    }
    return area == QUANTITY_CONNECTOR_AREA ? QUANTITY_CONNECTOR_DIAMETER : QUANTITY_NONE;
}

/*
 * Two circles of one diameter have one area. Where the flue that is judged is a circle as well,
 * both are rounded alike, so that they compare as their diameters do.
 */
static enum rounding rounding_beside_flue(const struct calculation *calculation)
{
    int64_t stated;
    bool circles = calculation->judged == QUANTITY_FLUE_NET_AREA &&
                   !calculation_recorded(calculation, QUANTITY_FLUE_NET_AREA, &stated) &&
                   flue_source(calculation) == FLUE_FROM_DIAMETER;
    if (!circles) {
        return calculation->rounding;
    }
    return calculation->rounding == ROUND_UP ? ROUND_DOWN : ROUND_UP;
}

enum outcome round_area(struct calculation *calculation, enum quantity_id area, int64_t *value)
{
    int64_t diameter = 0;
    enum quantity_id across = round_diameter(area);
    enum outcome outcome = calculation_quantity(calculation, across, &diameter);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    if (!circle_area(diameter, rounding_beside_flue(calculation), value)) {
        calculation->at_fault = across;
        return OUTCOME_OVERFLOW;
    }
    RECORD_STEP(calculation, .label = quantities[area].label, .expression = "π/4 × {0} × {0}",
                .operands = {operand_quantity(calculation, across, diameter)},
                .result = operand_quantity(calculation, area, *value).amount, .has_result = true);
    return OUTCOME_DONE;
}

/* The diameter of the circle that an area is, where that is what it follows from. */
static bool is_circle(const struct calculation *calculation, enum quantity_id area,
                      int64_t *diameter)
{
    int64_t stated;
    if (calculation_recorded(calculation, area, &stated)) {
        return false;
    }
    if (area == QUANTITY_FLUE_NET_AREA) {
        return flue_source(calculation) == FLUE_FROM_DIAMETER &&
               calculation_recorded(calculation, QUANTITY_FLUE_DIAMETER, diameter);
    }
    enum quantity_id across = round_diameter(area);
    return across != QUANTITY_NONE && calculation_recorded(calculation, across, diameter);
}

enum rounding round_beside_judged(const struct calculation *calculation)
{
    int64_t diameter;
    if (!is_circle(calculation, calculation->judged, &diameter)) {
        return calculation->rounding;
    }
    return calculation->rounding == ROUND_UP ? ROUND_DOWN : ROUND_UP;
}

bool round_share(const struct calculation *calculation, enum quantity_id quantity, int64_t value,
                 int64_t ratio, int64_t *share)
{
    int64_t diameter;
    if (is_circle(calculation, quantity, &diameter)) {
        return circle_area_share(diameter, ratio, INGLE_RATIO_ONE,
                                 rounding_beside_flue(calculation), share);
    }
    return wide_multiply_divide((uint64_t)value, (uint64_t)ratio, INGLE_RATIO_ONE,
                                calculation->rounding, share, NULL);
}

bool round_inverse(int64_t area, int64_t *diameter)
{
    int64_t low = 0;
    int64_t high = UINT32_MAX;
    while (low < high) {
        int64_t middle = low + (high - low) / 2;
        int64_t has;
        /* What is beyond 63 bits is more than any area. */
        bool reaches = !circle_area(middle, ROUND_DOWN, &has) || has >= area;
        high = reaches ? middle : high;
        low = reaches ? low : middle + 1;
    }
    *diameter = low;
    return low < UINT32_MAX;
}
