/* SPDX-License-Identifier: MIT */
#include "base/memory.h"
#include "measure/amounts.h"
#include "survey/quantity.h"

#include <ingle/range.h>

/* What people can build and measure to. */
static int64_t usual_step(ingle_dimension dimension, bool metric)
{
    switch (dimension) {
    case INGLE_LENGTH:
        return metric ? MILLIMETRES(1) : INCHES_AND(0, 1, 16);
    case INGLE_AREA:
        return metric ? SQUARE_CENTIMETRES(1) : SQUARE_INCHES(1);
    case INGLE_ANGLE:
        return DEGREES(1);
    case INGLE_SLOPE:
        return SLOPE(1, 24);
    case INGLE_RATIO:
        return RATIO(1, 100);
    case INGLE_POWER:
        return metric ? KILOWATTS(1) / 2 : BTU_PER_HOUR(1000);
    case INGLE_VOLUME:
        return metric ? CUBIC_METRES(1) : CUBIC_FEET(10);
    default:
        return 1;
    }
}

/* The same, or twice or ten times as much until the range has no more values than it may. */
static int64_t step_for(const ingle_range *range)
{
    bool metric = range->metric != 0;
    int64_t step = usual_step(range->quantity->dimension, metric);
    while ((range->to - range->from) / step >= INGLE_RANGE_MOST) {
        step *= metric ? 10 : 2;
    }
    return step;
}

/* The whole of what a quantity can be. */
static void take_all(ingle_range *range)
{
    const ingle_quantity *quantity = range->quantity;
    range->from = quantity->least;
    range->to = quantity->most;
    if (quantity->dimension == INGLE_CHOICE) {
        range->from = 0;
        range->to = quantity->choice_count - 1;
    } else if (quantity->dimension == INGLE_FLAG) {
        range->from = 0;
        range->to = 1;
    }
}

static bool is_word(const ingle_quantity *quantity)
{
    return quantity->dimension == INGLE_CHOICE || quantity->dimension == INGLE_FLAG;
}

/* Moves the bounds to multiples of the step; gives the number of them, 0 for none. */
static uint64_t align(ingle_range *range)
{
    int64_t over = range->from % range->step;
    if (over > 0 && range->from > INT64_MAX - range->step) {
        return 0;
    }
    range->from += over > 0 ? range->step - over : 0;
    range->to -= range->to % range->step;
    return range->to < range->from
               ? 0
               : (uint64_t)((range->to - range->from) / range->step) + 1;
}

ingle_status ingle_range_settle(ingle_range *range, size_t *count)
{
    ingle_range settled;
    if (range == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status = struct_take(&settled, sizeof settled, sizeof settled, range);
    if (status != INGLE_OK) {
        return status;
    }
    if (settled.quantity == NULL) {
        return INGLE_ERROR_UNKNOWN_QUANTITY;
    }
    if (is_word(settled.quantity)) {
        take_all(&settled);
        settled.step = 1;
    } else if (settled.step < 0 || settled.to < settled.from) {
        return INGLE_ERROR_RANGE;
    } else if (settled.from == 0 && settled.to == 0) {
        take_all(&settled);
    }
    if (!is_word(settled.quantity) &&
        (settled.from < settled.quantity->least || settled.to > settled.quantity->most)) {
        return INGLE_ERROR_IMPLAUSIBLE;
    }
    if (settled.step == 0) {
        settled.step = step_for(&settled);
    }
    uint64_t values = align(&settled);
    if (values == 0 || values > INGLE_RANGE_MOST) {
        return INGLE_ERROR_RANGE;
    }
    settled.size = range->size;
    *range = settled;
    if (count != NULL) {
        *count = (size_t)values;
    }
    return INGLE_OK;
}
