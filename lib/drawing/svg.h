/* SPDX-License-Identifier: MIT */
/*
 * Drawings as SVG, in thousandths of a millimetre on paper, with the lines of ISO 128-2 and the
 * dimensions of ISO 129-1. What is drawn reads in black and white; colours come on top.
 */
#ifndef INGLE_DRAWING_SVG_H
#define INGLE_DRAWING_SVG_H

#include "pages/output.h"

#include <stdbool.h>
#include <stdint.h>

/* A place on paper: x to the right, y down. MM(3) is 3 mm. */
struct point {
    int32_t x, y;
};

#define MM(n) ((int32_t)((n) * 1000))

/* Kinds of line, by their numbers in ISO 128-2. */
enum line {
    LINE_NONE,      /* an area alone */
    LINE_OUTLINE,   /* 01.2 continuous, wide: visible edges */
    LINE_THIN,      /* 01.1 continuous, narrow: dimensions, leaders, hatching */
    LINE_HIDDEN,    /* 02.1 dashed, narrow: hidden edges */
    LINE_CENTRE,    /* 04.1 long dash and dot, narrow: axes */
    LINE_LIMIT,     /* 04.2 long dash and dot, wide: the edge of a zone that a rule sets */
    LINE_REQUIRED,  /* 05.1 long dash and two dots, narrow: what is not there but required */
    LINE_COUNT
};

/* Kinds of area. */
enum area {
    AREA_NONE,
    AREA_PAPER,     /* covers what lies below */
    AREA_MATERIAL,  /* cut masonry: hatching of narrow lines at 45 degrees */
    AREA_PRESENT,   /* what is there: a light tint */
    AREA_MISSING,   /* what is required and not there: crossed hatching */
    AREA_FORBIDDEN, /* a zone that nothing may be in: dense hatching */
    AREA_LIMITED,   /* a zone with a limit: hatching the other way */
    AREA_STONE,     /* trim that cannot burn: thin hatching upright */
    AREA_WOOD,      /* trim that can: a tint */
    AREA_PART,      /* a part of the building: a tint */
    AREA_FAILING,   /* trim that a rule forbids: a grid on the tint */
    AREA_COUNT
};

enum anchor {
    ANCHOR_START,
    ANCHOR_MIDDLE,
    ANCHOR_END
};

/* Heights of letters: of notes and dimensions, and of titles. */
enum { TEXT_SMALL = 2500, TEXT_USUAL = 3500, TEXT_TITLE = 5000 };

struct svg {
    struct output output;
    int32_t width, height;
};

/* Starts a drawing of a size, with its title and description for those who cannot see it. */
ingle_status svg_start(struct svg *svg, ingle_write write, void *context, int32_t width,
                       int32_t height, const char *title, const char *description);
ingle_status svg_end(struct svg *svg);

/* A group with a name of its own, for who reads the drawing back; `label` may be NULL. */
void svg_group(struct svg *svg, const char *name, const char *label);
void svg_group_end(struct svg *svg);

/*
 * The same for the drawing of an amount: it carries the pointer of the quantity and the amount in
 * base units, so that each dimension drawn can be compared with the report.
 */
void svg_amount_group(struct svg *svg, const char *name, const char *subject, int64_t value);

void svg_line(struct svg *svg, enum line line, struct point from, struct point to);
void svg_polyline(struct svg *svg, enum line line, const struct point *points, size_t count);
/* The same point by point, where there are too many to keep. */
void svg_polyline_start(struct svg *svg);
void svg_polyline_point(struct svg *svg, struct point point);
void svg_polyline_end(struct svg *svg, enum line line);
void svg_polygon(struct svg *svg, enum line line, enum area area, const struct point *points,
                 size_t count);
void svg_rectangle(struct svg *svg, enum line line, enum area area, struct point corner,
                   int32_t width, int32_t height);
/* An area alone, without an edge. */
void svg_area(struct svg *svg, enum area area, struct point corner, int32_t width, int32_t height);
void svg_circle(struct svg *svg, enum line line, enum area area, struct point centre,
                int32_t radius);
/* A small filled disc: a measured point. */
void svg_dot(struct svg *svg, struct point centre, int32_t radius);

/* A text with its baseline at a place; `height` is that of its capital letters. */
void svg_text(struct svg *svg, struct point at, enum anchor anchor, int32_t height,
              const char *text);
/* The same, turned to be read from the right, upwards. */
void svg_text_upwards(struct svg *svg, struct point at, enum anchor anchor, int32_t height,
                      const char *text);

/* How wide a text is at most, by its letters. */
int32_t svg_text_width(const char *text, int32_t height);

/* The same on a strip of paper of its own, so that no line runs through it; around its middle. */
void svg_text_over(struct svg *svg, struct point middle, bool upwards, const char *text);

/* Cuts a text in a buffer of some size, with an ellipsis, to what fits a width. */
void svg_fit_text(char *text, size_t size, int32_t width, int32_t height);

/* A blank at which no line is broken; who writes the line writes a blank for it. */
#define SVG_NO_BREAK '\x1F'

/* How many bytes of a text go on a line: up to the end of a word where there is one. */
size_t svg_line_length(const char *text, int32_t width, int32_t height);

/* A filled arrowhead whose point is at `tip`; (dx, dy) is the way it points, of length 1. */
enum { ARROW_LENGTH = 3000 };
void svg_arrow(struct svg *svg, struct point tip, int32_t dx, int32_t dy);

#endif
