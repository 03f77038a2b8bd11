/* SPDX-License-Identifier: MIT */
/*
 * What the public can ask of the table that a rule looks its requirement up in.
 */
#include "formulas/table.h"

#include "standards/rule.h"

const char *ingle_rule_table(const ingle_rule *rule)
{
    return rule->table == NULL ? NULL : rule->table->name;
}

static const char *reading_name(const struct table_keys *keys)
{
    static const char *const names[] = {
        [KEY_UP_TO] = "up-to", [KEY_BELOW] = "below",           [KEY_FROM] = "from",
        [KEY_EXACT] = "exact", [KEY_INTERPOLATE] = "interpolate",
    };
    return keys->count == 0 ? NULL : names[keys->reading];
}

const char *ingle_rule_table_row_reading(const ingle_rule *rule)
{
    return rule->table == NULL ? NULL : reading_name(&rule->table->rows);
}

const char *ingle_rule_table_column_reading(const ingle_rule *rule)
{
    return rule->table == NULL ? NULL : reading_name(&rule->table->columns);
}

size_t ingle_rule_table_row_count(const ingle_rule *rule)
{
    return rule->table == NULL ? 0 : rule->table->rows.count;
}

size_t ingle_rule_table_column_count(const ingle_rule *rule)
{
    if (rule->table == NULL) {
        return 0;
    }
    return rule->table->columns.count == 0 ? 1 : rule->table->columns.count;
}

static ingle_status key_at(const struct table_keys *keys, size_t index, enum quantity_id quantity,
                           ingle_amount *key)
{
    if (index >= keys->count || key == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    *key = quantity_amount(quantity, keys->keys[index]);
    return INGLE_OK;
}

ingle_status ingle_rule_table_row_at(const ingle_rule *rule, size_t row, ingle_amount *key)
{
    return rule == NULL || rule->table == NULL
               ? INGLE_ERROR_ARGUMENT
               : key_at(&rule->table->rows, row, rule->inputs[0], key);
}

/* A formula that looks for a column requires its head; the cells are then its second input's. */
static enum quantity_id head_quantity(const ingle_rule *rule)
{
    return rule->formula == &formula_table_column ? matters[rule->matter].judged[0]
                                                  : rule->inputs[1];
}

static enum quantity_id cell_quantity(const ingle_rule *rule)
{
    return rule->formula == &formula_table_column ? rule->inputs[1]
                                                  : matters[rule->matter].judged[0];
}

ingle_status ingle_rule_table_column_at(const ingle_rule *rule, size_t column, ingle_amount *key)
{
    return rule == NULL || rule->table == NULL
               ? INGLE_ERROR_ARGUMENT
               : key_at(&rule->table->columns, column, head_quantity(rule), key);
}

ingle_status ingle_rule_table_cell_at(const ingle_rule *rule, size_t row, size_t column,
                                      ingle_amount *cell)
{
    if (rule == NULL || cell == NULL || row >= ingle_rule_table_row_count(rule) ||
        column >= ingle_rule_table_column_count(rule)) {
        return INGLE_ERROR_ARGUMENT;
    }
    int64_t value = rule->table->cells[row * ingle_rule_table_column_count(rule) + column];
    if (value == NO_VALUE) {
        return INGLE_ERROR_ARGUMENT;
    }
    *cell = quantity_amount(cell_quantity(rule), value);
    return INGLE_OK;
}
