/* SPDX-License-Identifier: MIT */
/*
 * A sweep as CSV (RFC 4180).
 */
#include "whatif/sweep.h"

#include "base/text.h"
#include "pages/output.h"

#include <string.h>

static const char *const heads[] = {"value",    "unit",     "standard", "rule",
                                    "section",  "subject",  "verdict",  "relation",
                                    "required", "measured", "margin",   "unit of the rule"};

enum { FIELD_COUNT = sizeof heads / sizeof heads[0] };

/* A field with a comma, a quotation mark or a line's end in it stands between quotation marks. */
static void put_field(struct output *output, const char *text, bool first)
{
    output_add(output, first ? "" : ",");
    if (text == NULL || strpbrk(text, ",\"\r\n") == NULL) {
        output_add(output, text == NULL ? "" : text);
        return;
    }
    output_add(output, "\"");
    for (; *text != '\0'; text++) {
        output_add(output, *text == '"' ? "\"" : "");
        output_add_bytes(output, text, 1);
    }
    output_add(output, "\"");
}

static void put_header(struct output *output)
{
    for (size_t i = 0; i < FIELD_COUNT; i++) {
        put_field(output, heads[i], i == 0);
    }
    output_add(output, "\r\n");
}

/* An amount as a number in its unit; a choice or flag by its name. */
static void put_amount(struct output *output, const ingle_quantity *quantity,
                       const ingle_amount *amount, const ingle_format *format, bool first)
{
    char number[48] = "";
    if (amount->dimension == INGLE_CHOICE) {
        put_field(output, ingle_quantity_choice_at(quantity, (size_t)amount->value), first);
    } else if (amount->dimension == INGLE_FLAG) {
        put_field(output, amount->value != 0 ? "yes" : "no", first);
    } else {
        ingle_amount_decimal(amount, ingle_amount_unit(amount, format), number, sizeof number,
                             NULL);
        put_field(output, number, first);
    }
}

static void put_unit(struct output *output, const ingle_amount *amount, const ingle_format *format)
{
    const ingle_unit *unit = ingle_amount_unit(amount, format);
    put_field(output, unit == NULL ? "" : ingle_unit_id(unit), false);
}

static void put_known(struct output *output, bool known, const ingle_quantity *quantity,
                      const ingle_amount *amount, const ingle_format *format)
{
    if (known) {
        put_amount(output, quantity, amount, format, false);
    } else {
        put_field(output, "", false);
    }
}

/* The path of what a line judges. */
static void put_subject(struct output *output, const struct sweep_line *line)
{
    char path[96], digits[24];
    size_t start = sizeof digits - 1, item = line->item;
    if (!ingle_quantity_repeats(line->quantity) || item == SIZE_MAX) {
        put_field(output,
                  item == SIZE_MAX ? ingle_quantity_group(line->quantity)
                                   : ingle_quantity_id(line->quantity),
                  false);
        return;
    }
    digits[start] = '\0';
    do {
        digits[--start] = (char)('0' + item % 10);
        item /= 10;
    } while (item > 0);
    struct text text = text_start(path, sizeof path);
    text_add(&text, ingle_quantity_group(line->quantity));
    text_add(&text, "[");
    text_add(&text, digits + start);
    text_add(&text, "].");
    text_add(&text, ingle_quantity_name(line->quantity));
    put_field(output, path, false);
}

static void put_record(struct output *output, const ingle_sweep *sweep, size_t value, size_t place,
                       const ingle_format *format)
{
    const struct sweep_line *line = &sweep->lines[place];
    ingle_sweep_cell cell;
    ingle_amount at;
    ingle_sweep_cell_at(sweep, value, place, &cell);
    if (cell.rule == NULL) {
        return;
    }
    ingle_sweep_value_at(sweep, value, &at);
    put_amount(output, sweep->range.quantity, &at, format, true);
    put_unit(output, &at, format);
    put_field(output, ingle_standard_id(line->standard), false);
    put_field(output, ingle_rule_id(cell.rule), false);
    put_field(output, ingle_rule_section(cell.rule), false);
    put_subject(output, line);
    put_field(output, ingle_verdict_name(cell.verdict), false);
    put_field(output, ingle_relation_name(cell.relation), false);
    put_known(output, cell.has_required != 0, line->quantity, &cell.required, format);
    put_known(output, cell.has_measured != 0, line->quantity, &cell.measured, format);
    put_known(output, cell.has_margin != 0, line->quantity, &cell.margin, format);
    put_unit(output, &cell.margin, format);
    output_add(output, "\r\n");
}

ingle_status ingle_sweep_csv(const ingle_sweep *sweep, const ingle_format *format,
                             ingle_write write, void *context)
{
    struct output output;
    if (sweep == NULL || output_start(&output, write, context) != INGLE_OK) {
        return INGLE_ERROR_ARGUMENT;
    }
    put_header(&output);
    for (size_t value = 0; value < sweep->value_count; value++) {
        for (size_t line = 0; line < sweep->line_count; line++) {
            put_record(&output, sweep, value, line, format);
        }
    }
    return output_end(&output);
}
