/* SPDX-License-Identifier: MIT */
/*
 * Numbers that are not exact, as text.
 */
#ifndef INGLE_UNCERTAINTY_FIGURE_H
#define INGLE_UNCERTAINTY_FIGURE_H

#include "base/text.h"

#include <ingle/uncertainty.h>

ingle_figure figure_of(double value, ingle_dimension dimension);
ingle_figure figure_plain(double value);

/* Writes a number in plain decimals, no zeros at its end; one that is not finite as 0. */
void text_add_number(struct text *text, double number, int significant, int most_places);

/* Writes a figure for people. */
void text_add_figure(struct text *text, const ingle_figure *figure, const ingle_format *format);

/* Writes a probability as people say it: `83.4 %`, `more than 99.9 %`. */
void text_add_percent(struct text *text, double probability);

#endif
