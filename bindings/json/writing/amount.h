/* SPDX-License-Identifier: MIT */
/*
 * An amount as `{"value": 19.9375, "unit": "in", "text": "19 15/16 in"}`.
 */
#ifndef INGLE_JSON_AMOUNT_H
#define INGLE_JSON_AMOUNT_H

#include "writing/write.h"

#include <ingle/measure.h>

/* An amount of dimension INGLE_LENGTH to INGLE_COUNT; counts and ratios have no unit. */
void json_amount(struct json_writer *writer, const char *name, const ingle_amount *amount,
                 const ingle_format *format);

#endif
