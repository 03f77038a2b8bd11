/* SPDX-License-Identifier: MIT */
/*
 * A plot: two axes in the units of the trade, and places between them.
 */
#ifndef INGLE_DRAWING_PLOT_H
#define INGLE_DRAWING_PLOT_H

#include "drawing/svg.h"

#include <ingle/measure.h>

struct plot_axis {
    const char *label;  /* what is on it, without its unit */
    int64_t least, most; /* base units of the dimension */
    ingle_dimension dimension; /* 0 for plain numbers in thousandths */
    ingle_scale scale;
    const ingle_unit *unit; /* of lengths, from which the others follow; NULL for inches */
};

struct plot {
    struct svg *svg;
    struct point corner; /* the top left one of the field between the axes */
    int32_t width, height;
    struct plot_axis across, up;
};

/* The axes with their ticks, numbers and labels, and a thin line at each tick. */
void plot_axes(const struct plot *plot);

/* Where an amount on each axis lies on paper; outside the field it lies on its edge. */
struct point plot_place(const struct plot *plot, int64_t across, int64_t up);
int32_t plot_across(const struct plot *plot, int64_t across);

/* An amount as an axis shows it, with its unit. */
void plot_words(const struct plot_axis *axis, int64_t value, char *words, size_t size);

/* What a line in the field stands for: a piece of it and its name, right of the field. */
void plot_key(const struct plot *plot, int32_t row, enum line line, const char *name);

/* Room that the numbers and labels take outside the field. */
enum { PLOT_LEFT = 34000, PLOT_BELOW = 15000, PLOT_RIGHT = 14000 };

#endif
