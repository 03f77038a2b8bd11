/* SPDX-License-Identifier: MIT */
/*
 * Seeks what would meet a rule by asking its own formula, so that no remedy can disagree with the
 * verdict: by halving over the graduations of the tape where the margin goes one way with the
 * quantity, and by trying every published liner.
 */
#include "base/memory.h"
#include "check/report.h"
#include "formulas/flue.h"
#include "measure/amounts.h"

/* The finest step a remedy is given in, in base units. */
static int64_t graduation(ingle_dimension dimension, bool metric)
{
    switch (dimension) {
    case INGLE_LENGTH:
        return metric ? MILLIMETRES(1) : INCHES_AND(0, 1, 16);
    case INGLE_AREA:
        return metric ? SQUARE_CENTIMETRES(1) : SQUARE_INCHES(1);
    case INGLE_ANGLE:
        return DEGREES(1);
    default:
        return 0;
    }
}

/* Whether the rule is met with a quantity at a value, wherever in the tolerances and readings. */
static bool meets_at(const struct calculation *calculation, enum quantity_id quantity,
                     int64_t value)
{
    struct calculation trial = *calculation;
    struct evaluation evaluation;
    calculation_try(&trial, quantity, value);
    uint8_t readings = 1;
    for (uint8_t reading = 0; reading < readings; reading++) {
        trial.reading = quantity == QUANTITY_FLUE_LINER ? reading : calculation->reading;
        struct bounds bounds = evaluation_bounds(&trial);
        if (bounds.outcome != OUTCOME_DONE || bounds.worst < 0) {
            return false;
        }
        if (quantity == QUANTITY_FLUE_LINER) {
            evaluate(&trial, &evaluation);
            readings = trial.reading_count;
        }
    }
    return true;
}

/*
 * The value nearest to `from`, in graduations, that meets the rule; 0 if none does. `direction` is
 * the way in which the margin rises.
 */
static int64_t seek(const struct calculation *calculation, enum quantity_id quantity, int64_t from,
                    int direction, int64_t step)
{
    const struct ingle_quantity *described = &quantities[quantity];
    int64_t near = direction > 0 ? from / step : (from + step - 1) / step;
    int64_t far = direction > 0 ? described->most / step
                                : (described->least + step - 1) / step;
    if (far < 1) {
        far = 1;
    }
    if ((far - near) * direction <= 0 || !meets_at(calculation, quantity, far * step)) {
        return 0;
    }
    while ((far - near) * direction > 1) {
        int64_t middle = near + (far - near) / 2;
        if (meets_at(calculation, quantity, middle * step)) {
            far = middle;
        } else {
            near = middle;
        }
    }
    return far * step;
}

static ingle_status add(struct ingle_report *report, size_t finding, enum quantity_id quantity,
                        int64_t from, int64_t to, int direction)
{
    if (!array_reserve(&report->allocator, (void **)&report->remedies, &report->remedy_capacity,
                       report->remedy_count, sizeof *report->remedies)) {
        return INGLE_ERROR_MEMORY;
    }
    report->remedies[report->remedy_count++] = (struct ingle_remedy){
        .report = report,
        .finding = finding,
        .quantity = quantity,
        .from = from,
        .to = to,
        .direction = (int8_t)direction,
    };
    report->findings[finding].remedy_count++;
    return INGLE_OK;
}

static ingle_status try_amount(struct ingle_report *report, size_t finding,
                               const struct calculation *calculation, enum quantity_id quantity,
                               bool metric)
{
    int64_t from = 0;
    int64_t step = graduation(quantities[quantity].dimension, metric);
    struct calculation trial = *calculation;
    calculation_restart(&trial);
    bool follows = !calculation_recorded(&trial, quantity, &from);
    if (step == 0 || calculation_quantity(&trial, quantity, &from) != OUTCOME_DONE) {
        return INGLE_OK;
    }
    /* What only follows from a quantity that has its remedy needs none of its own. */
    if (follows && quantity == calculation->judged &&
        report->findings[finding].remedy_count > 0) {
        return INGLE_OK;
    }
    calculation_try(&trial, quantity, from);
    int direction = margin_direction(&trial, quantity);
    if (direction == 0) {
        return INGLE_OK;
    }
    int64_t to = seek(calculation, quantity, from, direction, step);
    return to == 0 ? INGLE_OK : add(report, finding, quantity, from, to, direction);
}

/* The smallest published liner that would do, round for round and rectangular for the others. */
static ingle_status try_liners(struct ingle_report *report, size_t finding,
                               const struct calculation *calculation)
{
    int64_t value = -1;
    struct calculation trial = *calculation;
    trial.masked = QUANTITY_FLUE_NET_AREA;
    calculation_recorded(calculation, QUANTITY_FLUE_LINER, &value);
    const struct liner *now = flue_liner(calculation, value);
    int64_t shape;
    bool round = flue_source(calculation) == FLUE_FROM_DIAMETER ||
                 (calculation_recorded(calculation, QUANTITY_FLUE_SHAPE, &shape) &&
                  shape == CHOICE_FLUE_SHAPE_ROUND) ||
                 (now != NULL && now->depth == 0);
    const struct liner *best = NULL;
    for (size_t i = 0; i < calculation->liner_count; i++) {
        const struct liner *liner = &calculation->liners[i];
        if ((liner->depth == 0) == round && (best == NULL || liner->net_area < best->net_area) &&
            meets_at(&trial, QUANTITY_FLUE_LINER, (int64_t)liner->liner)) {
            best = liner;
        }
    }
    return best == NULL ? INGLE_OK
                        : add(report, finding, QUANTITY_FLUE_LINER, value, (int64_t)best->liner, 0);
}

ingle_status remedies_find(struct ingle_report *report, size_t finding,
                           const struct calculation *calculation, bool metric)
{
    enum matter_id matter = report->findings[finding].rule->matter;
    report->findings[finding].first_remedy = report->remedy_count;
    for (size_t i = 0; i < matter_change_count(matter); i++) {
        enum quantity_id quantity = matters[matter].changes[i];
        ingle_status status =
            quantity == QUANTITY_FLUE_LINER
                ? try_liners(report, finding, calculation)
                : try_amount(report, finding, calculation, quantity, metric);
        if (status != INGLE_OK) {
            return status;
        }
    }
    return INGLE_OK;
}
