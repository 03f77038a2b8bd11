/* SPDX-License-Identifier: MIT */
/*
 * Doubles as decimals, whatever the locale: rounded to the nearest, without exponent. What is
 * written is finite and smaller in size than DECIMAL_LIMIT; anything else is written as `?`.
 */
#ifndef INGLE_DRAFT_DECIMAL_H
#define INGLE_DRAFT_DECIMAL_H

#include "base/text.h"

#define DECIMAL_LIMIT 1e15

/* With that many places after the point, 0 to 15, zeros at the end as well. */
void text_add_places(struct text *text, double value, unsigned places);

/* With at most that many significant digits, 1 to 15, and no zeros at the end. */
void text_add_significant(struct text *text, double value, unsigned digits);

#endif
