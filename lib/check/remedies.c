/* SPDX-License-Identifier: MIT */
/*
 * Seeks what would meet a rule by asking its own formula, so that no remedy can disagree with the
 * verdict: over the graduations of the tape where the margin goes one way with the quantity, and by
 * trying every published liner.
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
    case INGLE_POWER:
        return metric ? EXACT_QUOTIENT(KILOWATTS(1), 10) : BTU_PER_HOUR(100);
    case INGLE_VOLUME:
        return metric ? EXACT_QUOTIENT(CUBIC_METRES(1), 10) : CUBIC_FEET(1);
    case INGLE_COUNT:
        return 1;
    default:
        return 0;
    }
}

/* The margin with a quantity at a value, at the worst within tolerances; negative if unknown. */
static int64_t margin_at(const struct calculation *calculation, enum quantity_id quantity,
                         int64_t value)
{
    struct calculation trial = *calculation;
    calculation_try(&trial, quantity, value);
    struct bounds bounds = evaluation_bounds(&trial);
    return bounds.outcome == OUTCOME_DONE ? bounds.worst : INT64_MIN;
}

/* Two graduations between which the rule comes to be met, and the margins there. */
struct bracket {
    int64_t near, far; /* `far` meets, `near` does not */
    int64_t near_margin, far_margin;
};

/*
 * A graduation strictly between: where a straight line between the margins crosses zero, which most
 * margins are, or else the middle.
 */
static int64_t between(const struct bracket *bracket, bool by_line)
{
    int64_t gap = bracket->far > bracket->near ? bracket->far - bracket->near
                                               : bracket->near - bracket->far;
    int64_t offset = gap / 2;
    int64_t rise;
    int64_t fall;
    if (by_line && bracket->far_margin != MARGIN_UNLIMITED &&
        wide_subtract(0, bracket->near_margin, &fall) &&
        wide_subtract(bracket->far_margin, bracket->near_margin, &rise) &&
        wide_multiply_divide((uint64_t)gap, (uint64_t)fall, (uint64_t)rise, ROUND_UP, &offset,
                             NULL)) {
        offset = offset < 1 ? 1 : offset > gap - 1 ? gap - 1 : offset;
    }
    return bracket->far > bracket->near ? bracket->near + offset : bracket->near - offset;
}

/* Lines are given up for halving after this many tries, so that the search always ends soon. */
enum { TRIES_BY_LINE = 4 };

/*
 * The value nearest to `from`, in graduations, that meets the rule; 0 if none does. `direction` is
 * the way in which the margin rises.
 */
static int64_t seek(const struct calculation *calculation, enum quantity_id quantity, int64_t from,
                    int direction, int64_t step)
{
    const struct ingle_quantity *described = &quantities[quantity];
    int64_t least = (described->least + step - 1) / step;
    struct bracket bracket = {.near = direction > 0 ? from / step : (from + step - 1) / step,
                              .far = direction > 0 ? described->most / step
                                     : least < 1   ? 1
                                                   : least};
    if ((bracket.far - bracket.near) * direction <= 0) {
        return 0;
    }
    bracket.near_margin = margin_at(calculation, quantity, bracket.near * step);
    bracket.far_margin = margin_at(calculation, quantity, bracket.far * step);
    if (bracket.far_margin < 0) {
        return 0;
    }
    for (unsigned tries = 0; (bracket.far - bracket.near) * direction > 1; tries++) {
        int64_t middle = between(&bracket, tries < TRIES_BY_LINE);
        int64_t margin = margin_at(calculation, quantity, middle * step);
        if (margin >= 0) {
            bracket.far = middle;
            bracket.far_margin = margin;
        } else {
            bracket.near = middle;
            bracket.near_margin = margin;
        }
    }
    return bracket.far * step;
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
    /* What only follows from a quantity that has its remedy needs none of its own, and what
       follows from measures with tolerances is never known as well as a value on trial would be. */
    if (follows && ((quantity == calculation->judged &&
                     report->findings[finding].remedy_count > 0) ||
                    evaluation_spread(calculation, quantity))) {
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

/* Whether the rule is met with a liner, however its shape is read. */
static bool liner_meets(const struct calculation *calculation, const struct liner *liner)
{
    struct calculation trial = *calculation;
    struct evaluation evaluation;
    calculation_try(&trial, QUANTITY_FLUE_LINER, (int64_t)liner->liner);
    uint8_t readings = 1;
    for (trial.reading = 0; trial.reading < readings; trial.reading++) {
        struct bounds bounds = evaluation_bounds(&trial);
        if (bounds.outcome != OUTCOME_DONE || bounds.worst < 0) {
            return false;
        }
        evaluate(&trial, &evaluation);
        readings = trial.reading_count;
    }
    return true;
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
            liner_meets(&trial, liner)) {
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
