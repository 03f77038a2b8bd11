/* SPDX-License-Identifier: MIT */
#include "writing/amount.h"

#include <stdio.h>
#include <string.h>

/* Longer than any amount of 64 bits in any unit. */
enum { AMOUNT_ROOM = 128 };

void json_amount(struct json_writer *writer, const char *name, const ingle_amount *amount,
                 const ingle_format *format)
{
    char room[AMOUNT_ROOM];
    const ingle_unit *unit = ingle_amount_unit(amount, format);
    json_open_object(writer, name);
    ingle_amount_decimal(amount, unit, room, sizeof room, NULL);
    json_digits(writer, "value", room);
    if (unit != NULL) {
        json_text(writer, "unit", ingle_unit_id(unit));
    }
    ingle_amount_format(amount, format, room, sizeof room, NULL);
    json_text(writer, "text", room);
    json_close_object(writer);
}

void json_amount_of(struct json_writer *writer, const char *name, const ingle_quantity *quantity,
                    const ingle_amount *amount, const ingle_format *format)
{
    if (amount->dimension != INGLE_CHOICE && amount->dimension != INGLE_FLAG) {
        json_amount(writer, name, amount, format);
        return;
    }
    json_open_object(writer, name);
    if (amount->dimension == INGLE_FLAG) {
        json_text(writer, "text", amount->value != 0 ? "yes" : "no");
    } else {
        json_text(writer, "text", ingle_quantity_choice_at(quantity, (size_t)amount->value));
    }
    json_close_object(writer);
}

void json_recorded(struct json_writer *writer, const ingle_quantity *quantity,
                   const ingle_amount *amount, int64_t tolerance, const ingle_format *format)
{
    char digits[AMOUNT_ROOM];
    const char *name = ingle_quantity_name(quantity);
    if (amount->dimension == INGLE_CHOICE) {
        json_text(writer, name, ingle_quantity_choice_at(quantity, (size_t)amount->value));
        return;
    }
    if (amount->dimension == INGLE_FLAG) {
        json_boolean(writer, name, amount->value != 0);
        return;
    }
    ingle_amount width = *amount;
    width.value = tolerance;
    const ingle_unit *unit = ingle_amount_unit(amount, format);
    json_open_object(writer, name);
    ingle_amount_decimal(amount, unit, digits, sizeof digits, NULL);
    json_digits(writer, "value", digits);
    if (unit != NULL) {
        json_text(writer, "unit", ingle_unit_id(unit));
    }
    if (tolerance > 0 && unit != NULL) {
        ingle_amount_decimal(&width, unit, digits, sizeof digits, NULL);
        size_t length = strlen(digits);
        snprintf(digits + length, sizeof digits - length, " %s", ingle_unit_id(unit));
        json_text(writer, "tolerance", digits);
    }
    json_close_object(writer);
}

size_t json_text_from(struct json_writer *writer, const char *name, json_source source,
                      const void *object, int32_t part, const ingle_format *format)
{
    size_t capacity, length;
    json_begin_text(writer, name);
    do {
        char *room = json_room(writer, &capacity);
        length = 0;
        source(object, part, format, room, capacity, &length);
    } while (!json_end_text(writer, length));
    return length;
}

ingle_status json_finding_text(const void *finding, int32_t part, const ingle_format *format,
                               char *buffer, size_t capacity, size_t *length)
{
    return ingle_finding_text(finding, part, format, buffer, capacity, length);
}
