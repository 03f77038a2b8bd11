/* SPDX-License-Identifier: MIT */
#include "writing/amount.h"

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
