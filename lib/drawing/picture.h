/* SPDX-License-Identifier: MIT */
/*
 * What a view shows, in the thing's own space and before its scale is known: shapes, dimensions and
 * marks. Lengths are nanometres, x to the right and y downwards on the sheet.
 */
#ifndef INGLE_DRAWING_PICTURE_H
#define INGLE_DRAWING_PICTURE_H

#include "drawing/svg.h"
#include "survey/quantity.h"

struct place {
    int64_t x, y;
};

enum {
    SHAPE_CORNERS = 12,
    SHAPES_MOST = 160,
    DIMENSIONS_MOST = 48,
    DIMENSION_WORDS = 80,
    MARKS_MOST = 8
};

struct shape {
    enum line line;
    enum area area;
    bool open; /* a line from corner to corner, not an area */
    uint8_t count;
    struct place corners[SHAPE_CORNERS];
};

/* Where outside the shapes a dimension stands. */
enum side {
    SIDE_TOP,
    SIDE_BOTTOM,
    SIDE_LEFT,
    SIDE_RIGHT
};

/* What a dimension tells of its amount. */
enum told {
    TOLD_MEASURED,
    TOLD_DERIVED,  /* what a finding worked out from other measures */
    TOLD_REQUIRED, /* at least so much */
    TOLD_ALLOWED,  /* at most so much */
    TOLD_ZONE,     /* a number of a rule: how far a zone around the opening reaches */
    TOLD_REACH     /* a number of a rule: how far away something counts */
};

struct dimension {
    enum told told;
    enum side side;
    enum quantity_id quantity;
    size_t item;
    const char *rule, *number; /* of what is a number of a rule */
    int64_t amount;
    struct place from, to;
    char words[DIMENSION_WORDS];
    /* Set as it is laid out, on paper: */
    int32_t at;              /* the y of a level dimension line, the x of an upright one */
    int32_t least, most;     /* the ends of that line */
    struct point start, end; /* `from` and `to` */
    struct point middle;     /* of the text's baseline */
    bool inwards;            /* the arrows stand outside and point at each other */
};

/* A numbered circle above the shapes, with a leader to what it stands for. */
struct mark {
    unsigned number;
    struct place target;
    struct point at;
};

struct picture {
    struct shape shapes[SHAPES_MOST];
    struct dimension dimensions[DIMENSIONS_MOST];
    struct mark marks[MARKS_MOST];
    size_t shape_count, dimension_count, mark_count;
    bool overfull;
    int32_t scale; /* 1 : scale */
    struct point origin;
};

struct shape *picture_shape(struct picture *picture, enum line line, enum area area);
void shape_corner(struct shape *shape, int64_t x, int64_t y);

/* Lines in steps of the trade, for inches and feet: so much on paper to a foot. */
struct drawing_scale {
    int32_t scale;
    const char *trade;
};

/*
 * Chooses the largest scale at which all of it fits a field of paper, lays out its dimensions and
 * marks so that no text lies on another, and puts it in the middle of the field. False if no scale
 * will do.
 */
bool picture_lay_out(struct picture *picture, const struct drawing_scale *scales,
                     struct point corner, int32_t width, int32_t height);

struct point picture_point(const struct picture *picture, struct place place);

/* A dimension as ISO 129-1 has it, and a mark, where they were laid out. */
void dimension_draw(struct svg *svg, const struct dimension *dimension);
void mark_draw(struct svg *svg, const struct picture *picture, const struct mark *mark);

/* The room that dimensions take. */
enum {
    EXTENSION_GAP = 1000,  /* between the thing and its extension line */
    EXTENSION_PAST = 2000, /* past the dimension line */
    TEXT_CLEARANCE = 1000, /* between the dimension line and its text */
    MARK_RADIUS = 3000
};

#endif
