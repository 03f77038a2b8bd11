/* SPDX-License-Identifier: MIT */
/*
 * What is required is looked up in a printed table. Nothing is read beyond its edges.
 */
#include "formulas/table.h"

#include "formulas/derived.h"
#include "formulas/formula.h"

enum { OUTSIDE_KEYS = -1 };

static bool covers(const struct table_keys *keys, size_t index, int64_t amount)
{
    switch (keys->reading) {
    case KEY_UP_TO:
        return amount <= keys->keys[index];
    case KEY_BELOW:
        return amount < keys->keys[index];
    case KEY_EXACT:
        return amount == keys->keys[index];
    case KEY_FROM:
    case KEY_INTERPOLATE:
        return amount >= keys->keys[index] &&
               (index + 1 == keys->count || amount < keys->keys[index + 1]);
    }
    return false;
}

/* The place of the key that belongs to an amount, or OUTSIDE_KEYS. */
static int find_key(const struct table_keys *keys, int64_t amount)
{
    bool upper = keys->reading == KEY_UP_TO || keys->reading == KEY_BELOW;
    if (keys->count == 0) {
        return 0;
    }
    if (upper && amount < keys->least) {
        return OUTSIDE_KEYS;
    }
    for (size_t i = 0; i < keys->count; i++) {
        if (covers(keys, i, amount)) {
            return (int)i;
        }
    }
    return OUTSIDE_KEYS;
}

static size_t column_count(const struct ingle_table *table)
{
    return table->columns.count == 0 ? 1 : table->columns.count;
}

static int64_t cell_at(const struct ingle_table *table, int row, int column)
{
    return table->cells[(size_t)row * column_count(table) + (size_t)column];
}

static enum outcome outside(struct calculation *calculation)
{
    RECORD_STEP(calculation, .label = "table", .expression = "no value is printed for this",
                .remark = calculation->table->name);
    return OUTCOME_OUTSIDE;
}

/* ---- the steps that name a row or column --------------------------------------------------- */

enum { ROWS, COLUMNS };

static const char *const key_expressions[][2] = {
    [KEY_UP_TO] = {"row for {0}, up to {1}", "column for {0}, up to {1}"},
    [KEY_BELOW] = {"row for {0}, under {1}", "column for {0}, under {1}"},
    [KEY_FROM] = {"row for {0}, from {1} on", "column for {0}, from {1} on"},
    [KEY_EXACT] = {"row for {0}, {1}", "column for {0}, {1}"},
};

static struct operand key_operand(const struct calculation *calculation, enum quantity_id input,
                                  const char *name, int64_t key)
{
    struct operand operand = operand_quantity(calculation, input, key);
    operand.name = name;
    return operand;
}

/* An input between two rows: its value lies on the line between theirs. */
static void line_step(struct calculation *calculation, int row, int64_t amount)
{
    const int64_t *keys = calculation->table->rows.keys;
    enum quantity_id input = calculation->inputs[0];
    RECORD_STEP(calculation, .label = "rows of the table", .remark = calculation->table->name,
                .expression = "rows for {0}, {1} and {2}",
                .operands = {operand_quantity(calculation, input, amount),
                             key_operand(calculation, input, "below it", keys[row]),
                             key_operand(calculation, input, "above it", keys[row + 1])});
}

/* Which row or column of the table an input belongs to. */
static void key_step(struct calculation *calculation, unsigned which, int place, int64_t amount)
{
    const struct table_keys *keys =
        which == ROWS ? &calculation->table->rows : &calculation->table->columns;
    enum quantity_id input = calculation->inputs[which];
    enum table_reading reading = keys->reading;
    if (keys->count == 0 || calculation->steps == NULL) {
        return;
    }
    if (reading == KEY_INTERPOLATE && amount != keys->keys[place]) {
        line_step(calculation, place, amount);
        return;
    }
    reading = reading == KEY_INTERPOLATE ? KEY_EXACT : reading;
    struct operand head = key_operand(
        calculation, input, reading == KEY_EXACT ? "its own" : "its head", keys->keys[place]);
    RECORD_STEP(calculation, .remark = calculation->table->name,
                .label = which == ROWS ? "row of the table" : "column of the table",
                .expression = key_expressions[reading][which],
                .operands = {operand_quantity(calculation, input, amount), head},
                .result = head.amount, .has_result = head.quantity == QUANTITY_NONE);
}

/* ---- a cell by row and column --------------------------------------------------------------- */

/* On the line between a row's cell and the next one's, to the strict side. */
static enum outcome interpolate(const struct calculation *calculation, int row, int column,
                                int64_t amount, int64_t *value)
{
    const struct ingle_table *table = calculation->table;
    const int64_t *keys = table->rows.keys;
    int64_t here = cell_at(table, row, column);
    *value = here;
    if (amount == keys[row] || here == NO_VALUE) {
        return here == NO_VALUE ? OUTCOME_OUTSIDE : OUTCOME_DONE;
    }
    if ((size_t)row + 1 == table->rows.count) {
        return OUTCOME_OUTSIDE;
    }
    int64_t next = cell_at(table, row + 1, column);
    int64_t rise;
    if (next == NO_VALUE || next < here ||
        !wide_multiply_divide((uint64_t)(next - here), (uint64_t)(amount - keys[row]),
                              (uint64_t)(keys[row + 1] - keys[row]), calculation->rounding, &rise,
                              NULL)) {
        return OUTCOME_OUTSIDE;
    }
    *value = here + rise;
    return OUTCOME_DONE;
}

static enum outcome table_inputs(struct calculation *calculation, int64_t *first, int64_t *second)
{
    enum outcome outcome = calculation_quantity(calculation, calculation->inputs[0], first);
    enum outcome other = OUTCOME_DONE;
    if (calculation->inputs[1] != QUANTITY_NONE) {
        other = calculation_quantity(calculation, calculation->inputs[1], second);
    }
    return outcome != OUTCOME_DONE ? outcome : other;
}

static enum outcome table_cell_required(struct calculation *calculation, int64_t *required)
{
    const struct ingle_table *table = calculation->table;
    int64_t first = 0;
    int64_t second = 0;
    enum outcome outcome = table_inputs(calculation, &first, &second);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    int row = find_key(&table->rows, first);
    int column = find_key(&table->columns, second);
    if (row == OUTSIDE_KEYS || column == OUTSIDE_KEYS) {
        return outside(calculation);
    }
    *required = cell_at(table, row, column);
    if (table->rows.reading == KEY_INTERPOLATE) {
        outcome = interpolate(calculation, row, column, first, required);
    }
    if (outcome != OUTCOME_DONE || *required == NO_VALUE) {
        return outside(calculation);
    }
    bool two = calculation->inputs[1] != QUANTITY_NONE;
    key_step(calculation, ROWS, row, first);
    if (two) {
        key_step(calculation, COLUMNS, column, second);
    }
    RECORD_STEP(
        calculation, .label = "required", .remark = table->name,
        .expression = two ? "table value for {0} and {1}" : "table value for {0}",
        .operands = {operand_quantity(calculation, calculation->inputs[0], first),
                     operand_quantity(calculation,
                                      two ? calculation->inputs[1] : calculation->inputs[0],
                                      two ? second : first)},
        .result = calculation_judged_amount(calculation, *required), .has_result = true);
    return OUTCOME_DONE;
}

/* ---- the column whose cell is enough -------------------------------------------------------- */

static enum outcome table_column_required(struct calculation *calculation, int64_t *required)
{
    const struct ingle_table *table = calculation->table;
    int64_t first = 0;
    int64_t second = 0;
    enum outcome outcome = table_inputs(calculation, &first, &second);
    if (outcome != OUTCOME_DONE) {
        return outcome;
    }
    int row = find_key(&table->rows, first);
    for (size_t column = 0; row != OUTSIDE_KEYS && column < table->columns.count; column++) {
        if (cell_at(table, row, (int)column) >= second) {
            *required = table->columns.keys[column];
            key_step(calculation, ROWS, row, first);
            RECORD_STEP(
                calculation, .label = "required", .remark = table->name,
                .expression = "first column whose value for {0} is {1} or more",
                .operands = {operand_quantity(calculation, calculation->inputs[0], first),
                             operand_quantity(calculation, calculation->inputs[1], second)},
                .result = calculation_judged_amount(calculation, *required), .has_result = true);
            return OUTCOME_DONE;
        }
    }
    return outside(calculation);
}

/* ---- where it jumps ------------------------------------------------------------------------- */

/* Adds where `quantity` brings `input` to a value and one past it. */
static size_t add_jump(const struct calculation *calculation, enum quantity_id input,
                       enum quantity_id quantity, int64_t value, int64_t *values, size_t count)
{
    int64_t at;
    if (count + 3 <= BREAKPOINTS && derive_inverse(calculation, input, quantity, value, &at)) {
        values[count++] = at - 1;
        values[count++] = at;
        values[count++] = at + 1;
    }
    return count;
}

static size_t table_breakpoints(struct calculation *calculation, enum quantity_id quantity,
                                int64_t *values)
{
    const struct ingle_table *table = calculation->table;
    size_t count = 0;
    for (size_t i = 0; i < table->rows.count; i++) {
        count = add_jump(calculation, calculation->inputs[0], quantity, table->rows.keys[i],
                         values, count);
    }
    for (size_t i = 0; i < table->columns.count && calculation->inputs[1] != QUANTITY_NONE; i++) {
        count = add_jump(calculation, calculation->inputs[1], quantity, table->columns.keys[i],
                         values, count);
    }
    return count;
}

static size_t table_column_breakpoints(struct calculation *calculation, enum quantity_id quantity,
                                       int64_t *values)
{
    const struct ingle_table *table = calculation->table;
    int64_t first = 0;
    size_t count = 0;
    for (size_t i = 0; i < table->rows.count; i++) {
        count = add_jump(calculation, calculation->inputs[0], quantity, table->rows.keys[i],
                         values, count);
    }
    int row = calculation_recorded(calculation, calculation->inputs[0], &first)
                  ? find_key(&table->rows, first)
                  : OUTSIDE_KEYS;
    for (size_t i = 0; row != OUTSIDE_KEYS && i < table->columns.count; i++) {
        count = add_jump(calculation, calculation->inputs[1], quantity,
                         cell_at(table, row, (int)i), values, count);
    }
    return count;
}

const struct formula formula_table_cell = {
    .name = "table-cell",
    .text = "What is required stands in the rule's table, in the row of the rule's first input and "
            "the column of the rule's second input.",
    .drivers = {{THE_INPUT, 0}, {SECOND_INPUT, 0}},
    .driver_count = 2,
    .required = table_cell_required,
    .breakpoints = table_breakpoints,
};

const struct formula formula_table_column = {
    .name = "table-column",
    .text = "What is required is the head of the first column of the rule's table whose value, in "
            "the row of the rule's first input, is the rule's second input or more.",
    .drivers = {{THE_INPUT, 0}, {SECOND_INPUT, 0}},
    .driver_count = 2,
    .required = table_column_required,
    .breakpoints = table_column_breakpoints,
};
