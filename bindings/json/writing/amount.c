/* SPDX-License-Identifier: MIT */
#include "writing/amount.h"

#include <inttypes.h>
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

/* The unit that a format shows it in; the millimetre's kin where decimals of that are not exact. */
static const ingle_unit *exact_unit(const ingle_amount *amount, const ingle_format *format)
{
    const ingle_unit *shown = ingle_amount_unit(amount, format);
    ingle_format metric = {.size = sizeof metric, .unit = ingle_unit_find("mm")};
    const ingle_unit *other = ingle_amount_unit(amount, &metric);
    bool rounded = ingle_amount_decimal(amount, shown, NULL, 0, NULL) == INGLE_ROUNDED;
    return rounded && ingle_amount_decimal(amount, other, NULL, 0, NULL) != INGLE_ROUNDED ? other
                                                                                         : shown;
}

static uint64_t common_divisor(uint64_t a, uint64_t b)
{
    while (b != 0) {
        uint64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

/* Where decimals would not be exact: `1/6`. False where they are, or for less than nothing. */
static bool write_fraction(const ingle_amount *amount, const ingle_unit *unit, char *text,
                           size_t size)
{
    ingle_amount one = {.value = 0};
    if (amount->value < 0 ||
        ingle_amount_decimal(amount, unit, NULL, 0, NULL) != INGLE_ROUNDED ||
        ingle_amount_parse("1", 1, amount->dimension, unit, &one, NULL) != INGLE_OK) {
        return false;
    }
    uint64_t above = (uint64_t)amount->value, below = (uint64_t)one.value;
    uint64_t divisor = common_divisor(above, below);
    snprintf(text, size, "%" PRIu64 "/%" PRIu64, above / divisor, below / divisor);
    return true;
}

/* `0.0625 in` */
static void write_width(struct json_writer *writer, const ingle_amount *width,
                        const ingle_format *format)
{
    char text[AMOUNT_ROOM];
    const ingle_unit *unit = exact_unit(width, format);
    if (!write_fraction(width, unit, text, sizeof text)) {
        ingle_amount_decimal(width, unit, text, sizeof text, NULL);
    }
    if (unit != NULL) {
        size_t length = strlen(text);
        snprintf(text + length, sizeof text - length, " %s", ingle_unit_id(unit));
    }
    json_text(writer, "tolerance", text);
}

void json_tolerance(struct json_writer *writer, int64_t tolerance, const ingle_format *format)
{
    ingle_amount width = {tolerance, INGLE_LENGTH, INGLE_SCALE_USUAL};
    write_width(writer, &width, format);
}

void json_measure(struct json_writer *writer, const char *name, const ingle_amount *amount,
                  const ingle_amount *tolerance, const ingle_format *format)
{
    char digits[AMOUNT_ROOM];
    const ingle_unit *unit = exact_unit(amount, format);
    json_open_object(writer, name);
    if (write_fraction(amount, unit, digits, sizeof digits)) {
        json_text(writer, "value", digits);
    } else {
        ingle_amount_decimal(amount, unit, digits, sizeof digits, NULL);
        json_digits(writer, "value", digits);
    }
    if (unit != NULL) {
        json_text(writer, "unit", ingle_unit_id(unit));
    }
    if (tolerance != NULL) {
        write_width(writer, tolerance, format);
    }
    json_close_object(writer);
}

/* A choice or a flag, by its name; false for an amount. */
static bool write_state(struct json_writer *writer, const ingle_quantity *quantity,
                        const ingle_amount *amount)
{
    const char *name = ingle_quantity_name(quantity);
    if (amount->dimension == INGLE_CHOICE) {
        json_text(writer, name, ingle_quantity_choice_at(quantity, (size_t)amount->value));
    } else if (amount->dimension == INGLE_FLAG) {
        json_boolean(writer, name, amount->value != 0);
    } else {
        return false;
    }
    return true;
}

void json_recorded(struct json_writer *writer, const ingle_quantity *quantity,
                   const ingle_amount *amount, int64_t tolerance, int64_t usual,
                   const ingle_format *format)
{
    if (!write_state(writer, quantity, amount)) {
        ingle_amount width = *amount;
        width.value = tolerance;
        bool own = tolerance != (amount->dimension == INGLE_LENGTH ? usual : 0);
        json_measure(writer, ingle_quantity_name(quantity), amount, own ? &width : NULL, format);
    }
}

void json_told(struct json_writer *writer, const ingle_quantity *quantity,
               const ingle_amount *amount, const ingle_unit *unit)
{
    char digits[AMOUNT_ROOM];
    if (write_state(writer, quantity, amount)) {
        return;
    }
    json_open_object(writer, ingle_quantity_name(quantity));
    ingle_amount_decimal(amount, unit, digits, sizeof digits, NULL);
    json_digits(writer, "value", digits);
    if (unit != NULL) {
        json_text(writer, "unit", ingle_unit_id(unit));
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
