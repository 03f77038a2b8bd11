/* SPDX-License-Identifier: MIT */
#include "formulas/calculation.h"

#include "formulas/derived.h"
#include "formulas/formula.h"

#include <string.h>

void calculation_restart(struct calculation *calculation)
{
    calculation->area_scale = INGLE_SCALE_USUAL;
    calculation->missing_count = 0;
    calculation->at_fault = QUANTITY_NONE;
    calculation->reading_count = 1;
    calculation->reading_text = NULL;
    calculation->by_listing = false;
    calculation->has_usual = false;
}

void calculation_try(struct calculation *calculation, enum quantity_id quantity, int64_t value)
{
    for (size_t i = 0; i < calculation->trial_count; i++) {
        if (calculation->trials[i].quantity == quantity) {
            calculation->trials[i].value = value;
            return;
        }
    }
    calculation->trials[calculation->trial_count++] = (struct trial){quantity, value};
}

bool calculation_tries(const struct calculation *calculation, enum quantity_id quantity)
{
    for (size_t i = 0; i < calculation->trial_count; i++) {
        if (calculation->trials[i].quantity == quantity) {
            return true;
        }
    }
    return false;
}

/* Items belong to the judged quantity's group; other groups that are asked for do not repeat. */
static size_t item_of(const struct calculation *calculation, enum quantity_id quantity)
{
    return groups[quantities[quantity].group].repeats ? calculation->item : 0;
}

bool calculation_recorded(const struct calculation *calculation, enum quantity_id quantity,
                          int64_t *value)
{
    for (size_t i = 0; i < calculation->trial_count; i++) {
        if (calculation->trials[i].quantity == quantity) {
            *value = calculation->trials[i].value;
            return true;
        }
    }
    return quantity != calculation->masked &&
           survey_value(calculation->survey, quantity, item_of(calculation, quantity), value);
}

enum outcome calculation_quantity(struct calculation *calculation, enum quantity_id quantity,
                                  int64_t *value)
{
    if (calculation_recorded(calculation, quantity, value)) {
        return OUTCOME_DONE;
    }
    return derive(calculation, quantity, value);
}

enum outcome calculation_miss(struct calculation *calculation, enum quantity_id quantity)
{
    for (size_t i = 0; i < calculation->missing_count; i++) {
        if (calculation->missing[i] == quantity) {
            return OUTCOME_MISSING;
        }
    }
    if (calculation->missing_count < MISSING) {
        calculation->missing[calculation->missing_count++] = quantity;
    }
    return OUTCOME_MISSING;
}

struct operand operand_quantity(const struct calculation *calculation, enum quantity_id quantity,
                                int64_t value)
{
    struct operand operand = {quantities[quantity].id, quantity_amount(quantity, value),
                              QUANTITY_NONE};
    if (operand.amount.dimension == INGLE_AREA) {
        operand.amount.scale = calculation->area_scale;
    }
    if (operand.amount.dimension == INGLE_CHOICE || operand.amount.dimension == INGLE_FLAG) {
        operand.quantity = quantity;
    }
    return operand;
}

struct operand operand_number(const struct calculation *calculation, unsigned number)
{
    struct operand operand = {calculation->formula->numbers[number].name,
                              formula_number_amount(calculation->formula, number,
                                                    calculation->judged,
                                                    calculation->numbers[number]),
                              QUANTITY_NONE};
    return operand;
}

struct operand operand_amount(const char *name, ingle_amount amount)
{
    struct operand operand = {name, amount, QUANTITY_NONE};
    return operand;
}

ingle_amount calculation_judged_amount(const struct calculation *calculation, int64_t value)
{
    return quantity_amount(calculation->judged, value);
}

size_t formula_number_count(const struct formula *formula)
{
    size_t count = 0;
    while (count < FORMULA_NUMBERS && formula->numbers[count].name != NULL) {
        count++;
    }
    return count;
}

ingle_amount formula_number_amount(const struct formula *formula, unsigned number,
                                   enum quantity_id judged, int64_t value)
{
    if (formula->numbers[number].dimension == AS_JUDGED) {
        return quantity_amount(judged, value);
    }
    ingle_amount amount = {value, formula->numbers[number].dimension,
                           formula->numbers[number].scale};
    return amount;
}
