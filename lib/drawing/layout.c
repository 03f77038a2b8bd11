/* SPDX-License-Identifier: MIT */
/*
 * Finds each dimension its row: the nearest to the shapes in which neither its line nor its text
 * lies on what is there already. The whole of it then decides the scale.
 */
#include "drawing/picture.h"

#include <string.h>

enum {
    ROWS_MOST = 24,
    FIRST_ROW = 7500, /* from the shapes to the first row, and from row to row */
    NEXT_ROW = 7000,
    MARKS_ABOVE = 4500, /* between the shapes and the marks */
    MARKS_APART = 8000, /* from middle to middle */
    APART = 700,        /* between texts and what is next to them */
    ASCENT = TEXT_SMALL + 200,
    DESCENT = 900,
    HALF_ARROW = 500,
    BOXES_MOST = 4 * DIMENSIONS_MOST + MARKS_MOST,
    PAPER_MOST = 1000000000
};

struct box {
    int32_t left, top, right, bottom;
};

enum kind {
    BOX_TEXT,
    BOX_LINE,
    BOX_EXTENSION
};

struct layout {
    struct picture *picture;
    struct box shapes; /* around all shapes and marks */
    struct box whole;  /* around the dimensions, too */
    struct box boxes[BOXES_MOST];
    enum kind kinds[BOXES_MOST];
    size_t count;
};

static int32_t lesser(int32_t one, int32_t other)
{
    return one < other ? one : other;
}

static int32_t greater(int32_t one, int32_t other)
{
    return one > other ? one : other;
}

static void box_add(struct box *box, const struct box *more)
{
    box->left = lesser(box->left, more->left);
    box->top = lesser(box->top, more->top);
    box->right = greater(box->right, more->right);
    box->bottom = greater(box->bottom, more->bottom);
}

static bool hits(const struct box *one, const struct box *other, int32_t apart)
{
    return one->left < other->right + apart && other->left < one->right + apart &&
           one->top < other->bottom + apart && other->top < one->bottom + apart;
}

/* ---- what is there already ------------------------------------------------------------------ */

static void keep(struct layout *layout, const struct box *box, enum kind kind)
{
    layout->boxes[layout->count] = *box;
    layout->kinds[layout->count++] = kind;
    box_add(&layout->whole, box);
}

/* Texts keep clear of everything; dimension lines of each other; extension lines of texts. */
static bool is_free(const struct layout *layout, const struct box *box, enum kind kind, bool strict)
{
    for (size_t i = 0; i < layout->count; i++) {
        enum kind other = layout->kinds[i];
        bool text = kind == BOX_TEXT || other == BOX_TEXT;
        bool extension = kind == BOX_EXTENSION || other == BOX_EXTENSION;
        if ((extension && (!strict || !text)) || !hits(box, &layout->boxes[i], text ? APART : 0)) {
            continue;
        }
        return false;
    }
    return true;
}

/* ---- one dimension -------------------------------------------------------------------------- */

/* Where its text may stand: between the arrows, past the end of it, before its start. */
enum { BETWEEN, PAST_END, BEFORE_START, TEXT_PLACES };

struct trial {
    bool upright;
    int32_t at, from, to; /* across and along the dimension line */
    int32_t least, most, middle;
    bool inwards;
    struct box text, line, extensions[2];
};

static struct box box_along(bool upright, int32_t least, int32_t most, int32_t low, int32_t high)
{
    return upright ? (struct box){low, least, high, most} : (struct box){least, low, most, high};
}

static struct box extension_box(const struct trial *trial, int32_t along, int32_t thing)
{
    int32_t way = trial->at > thing ? 1 : -1;
    int32_t from = thing + way * EXTENSION_GAP, to = trial->at + way * EXTENSION_PAST;
    return box_along(trial->upright, along - 100, along + 100, lesser(from, to),
                     greater(from, to));
}

/* Lays the line and text out along the dimension; false where the text does not fit there. */
static bool lay_along(struct trial *trial, int place, int32_t width)
{
    int32_t low = lesser(trial->from, trial->to), high = greater(trial->from, trial->to);
    int32_t length = high - low;
    trial->inwards = length < 3 * ARROW_LENGTH;
    if (place == BETWEEN && length < width + 2 * ARROW_LENGTH + 2 * TEXT_CLEARANCE) {
        return false;
    }
    int32_t past = trial->inwards ? 2 * ARROW_LENGTH : 0;
    bool upper = place == PAST_END ? trial->to >= trial->from : trial->to < trial->from;
    int32_t tail = width + 2 * TEXT_CLEARANCE;
    trial->least = low - past;
    trial->most = high + past;
    trial->middle = (low + high) / 2;
    if (place != BETWEEN) {
        trial->middle = upper ? trial->most + tail / 2 : trial->least - tail / 2;
        trial->least -= upper ? 0 : tail;
        trial->most += upper ? tail : 0;
    }
    return true;
}

static void take_boxes(struct trial *trial, const struct dimension *dimension, int32_t width)
{
    bool upright = trial->upright;
    int32_t base = trial->at - TEXT_CLEARANCE;
    trial->text = box_along(upright, trial->middle - width / 2, trial->middle + width / 2,
                            base - ASCENT, base + DESCENT);
    trial->line = box_along(upright, trial->least, trial->most, trial->at - HALF_ARROW,
                            trial->at + HALF_ARROW);
    trial->extensions[0] = extension_box(
        trial, trial->from, upright ? dimension->start.x : dimension->start.y);
    trial->extensions[1] =
        extension_box(trial, trial->to, upright ? dimension->end.x : dimension->end.y);
}

/* Whether the extension lines still to come will miss it on their way to rows further out. */
static bool will_be_free(const struct layout *layout, const struct dimension *dimension,
                         const struct trial *trial)
{
    const struct picture *picture = layout->picture;
    size_t first = (size_t)(dimension - picture->dimensions) + 1;
    for (size_t i = first; i < picture->dimension_count; i++) {
        const struct dimension *later = &picture->dimensions[i];
        struct place ends[] = {later->from, later->to};
        for (size_t end = 0; end < 2 && later->side == dimension->side; end++) {
            struct point point = picture_point(picture, ends[end]);
            int32_t off = (trial->upright ? point.y : point.x) - trial->middle;
            int32_t half = trial->upright ? trial->text.bottom - trial->middle
                                          : trial->text.right - trial->middle;
            if (off < half + APART && -off < half + APART) {
                return false;
            }
        }
    }
    return true;
}

static bool trial_is_free(const struct layout *layout, const struct dimension *dimension,
                          const struct trial *trial, bool strict)
{
    return (!strict || will_be_free(layout, dimension, trial)) &&
           is_free(layout, &trial->text, BOX_TEXT, strict) &&
           is_free(layout, &trial->line, BOX_LINE, strict) &&
           is_free(layout, &trial->extensions[0], BOX_EXTENSION, strict) &&
           is_free(layout, &trial->extensions[1], BOX_EXTENSION, strict);
}

static void accept(struct layout *layout, struct dimension *dimension, const struct trial *trial)
{
    int32_t base = trial->at - TEXT_CLEARANCE;
    dimension->at = trial->at;
    dimension->least = trial->least;
    dimension->most = trial->most;
    dimension->inwards = trial->inwards;
    dimension->middle = trial->upright ? (struct point){base, trial->middle}
                                       : (struct point){trial->middle, base};
    keep(layout, &trial->text, BOX_TEXT);
    keep(layout, &trial->line, BOX_LINE);
    keep(layout, &trial->extensions[0], BOX_EXTENSION);
    keep(layout, &trial->extensions[1], BOX_EXTENSION);
}

static int32_t row_at(const struct layout *layout, enum side side, int32_t row)
{
    int32_t off = FIRST_ROW + row * NEXT_ROW;
    switch (side) {
    case SIDE_TOP: return layout->shapes.top - off + TEXT_CLEARANCE;
    case SIDE_BOTTOM: return layout->shapes.bottom + off;
    case SIDE_LEFT: return layout->shapes.left - off + TEXT_CLEARANCE;
    case SIDE_RIGHT: break;
    }
    return layout->shapes.right + off;
}

static bool seek_row(struct layout *layout, struct dimension *dimension, bool strict)
{
    int32_t width = svg_text_width(dimension->words, TEXT_SMALL);
    bool upright = dimension->side == SIDE_LEFT || dimension->side == SIDE_RIGHT;
    struct trial trial = {.upright = upright};
    trial.from = upright ? dimension->start.y : dimension->start.x;
    trial.to = upright ? dimension->end.y : dimension->end.x;
    for (int32_t row = 0; row < ROWS_MOST; row++) {
        trial.at = row_at(layout, dimension->side, row);
        for (int place = 0; place < TEXT_PLACES; place++) {
            if (!lay_along(&trial, place, width)) {
                continue;
            }
            take_boxes(&trial, dimension, width);
            if (trial_is_free(layout, dimension, &trial, strict)) {
                accept(layout, dimension, &trial);
                return true;
            }
        }
    }
    return false;
}

/* ---- marks ---------------------------------------------------------------------------------- */

/* Beside one another, each over its target or right of the mark before it. */
static void lay_marks(struct layout *layout)
{
    struct picture *picture = layout->picture;
    int32_t y = layout->shapes.top - MARKS_ABOVE - MARK_RADIUS, right = -PAPER_MOST;
    bool done[MARKS_MOST] = {false};
    for (size_t turn = 0; turn < picture->mark_count; turn++) {
        size_t next = MARKS_MOST;
        for (size_t i = 0; i < picture->mark_count; i++) {
            if (!done[i] && (next == MARKS_MOST ||
                             picture->marks[i].target.x < picture->marks[next].target.x)) {
                next = i;
            }
        }
        struct mark *mark = &picture->marks[next];
        done[next] = true;
        right = greater(picture_point(picture, mark->target).x, right + MARKS_APART);
        mark->at = (struct point){right, y};
        struct box box = {right - MARK_RADIUS, y - MARK_RADIUS, right + MARK_RADIUS,
                          y + MARK_RADIUS};
        keep(layout, &box, BOX_TEXT);
    }
    box_add(&layout->shapes, &layout->whole);
}

/* ---- the whole ------------------------------------------------------------------------------ */

/* A nanometre at 1 : 1 is a thousandth of a thousandth of a millimetre. */
struct point picture_point(const struct picture *picture, struct place place)
{
    int64_t unit = 1000 * (int64_t)picture->scale;
    return (struct point){picture->origin.x + (int32_t)(place.x / unit),
                          picture->origin.y + (int32_t)(place.y / unit)};
}

/* Whether everything has a place on paper of this scale, however far off the sheet. */
static bool is_drawable(const struct picture *picture)
{
    int64_t most = PAPER_MOST / 2 * (int64_t)picture->scale;
    for (size_t i = 0; i < picture->shape_count; i++) {
        const struct shape *shape = &picture->shapes[i];
        for (size_t k = 0; k < shape->count; k++) {
            struct place corner = shape->corners[k];
            if (corner.x > most || corner.x < -most || corner.y > most || corner.y < -most) {
                return false;
            }
        }
    }
    return true;
}

static void lay_shapes(struct layout *layout)
{
    layout->whole = (struct box){PAPER_MOST, PAPER_MOST, -PAPER_MOST, -PAPER_MOST};
    for (size_t i = 0; i < layout->picture->shape_count; i++) {
        const struct shape *shape = &layout->picture->shapes[i];
        for (size_t k = 0; k < shape->count; k++) {
            struct point point = picture_point(layout->picture, shape->corners[k]);
            box_add(&layout->whole, &(struct box){point.x, point.y, point.x, point.y});
        }
    }
    layout->shapes = layout->whole;
}

static bool lay_out_at(struct layout *layout, int32_t width, int32_t height)
{
    struct picture *picture = layout->picture;
    layout->count = 0;
    lay_shapes(layout);
    lay_marks(layout);
    for (size_t i = 0; i < picture->dimension_count; i++) {
        struct dimension *dimension = &picture->dimensions[i];
        dimension->start = picture_point(picture, dimension->from);
        dimension->end = picture_point(picture, dimension->to);
        if (!seek_row(layout, dimension, true) && !seek_row(layout, dimension, false)) {
            return false;
        }
    }
    return layout->whole.right - layout->whole.left <= width &&
           layout->whole.bottom - layout->whole.top <= height;
}

static void move(struct point *point, struct point by)
{
    point->x += by.x;
    point->y += by.y;
}

static void move_all(struct picture *picture, struct point by)
{
    picture->origin = by;
    for (size_t i = 0; i < picture->mark_count; i++) {
        move(&picture->marks[i].at, by);
    }
    for (size_t i = 0; i < picture->dimension_count; i++) {
        struct dimension *dimension = &picture->dimensions[i];
        bool upright = dimension->side == SIDE_LEFT || dimension->side == SIDE_RIGHT;
        dimension->at += upright ? by.x : by.y;
        dimension->least += upright ? by.y : by.x;
        dimension->most += upright ? by.y : by.x;
        move(&dimension->start, by);
        move(&dimension->end, by);
        move(&dimension->middle, by);
    }
}

bool picture_lay_out(struct picture *picture, const struct drawing_scale *scales,
                     struct point corner, int32_t width, int32_t height)
{
    struct layout layout = {.picture = picture};
    for (; scales->scale != 0; scales++) {
        picture->scale = scales->scale;
        picture->origin = (struct point){0, 0};
        if (is_drawable(picture) && lay_out_at(&layout, width, height)) {
            const struct box *whole = &layout.whole;
            move_all(picture, (struct point){
                                  corner.x + (width - whole->right + whole->left) / 2 - whole->left,
                                  corner.y + (height - whole->bottom + whole->top) / 2 -
                                      whole->top});
            return true;
        }
    }
    return false;
}

/* ---- its making ----------------------------------------------------------------------------- */

struct shape *picture_shape(struct picture *picture, enum line line, enum area area)
{
    if (picture->shape_count == SHAPES_MOST) {
        picture->overfull = true;
        picture->shape_count--;
    }
    struct shape *shape = &picture->shapes[picture->shape_count++];
    memset(shape, 0, sizeof *shape);
    shape->line = line;
    shape->area = area;
    return shape;
}

void shape_corner(struct shape *shape, int64_t x, int64_t y)
{
    if (shape->count < SHAPE_CORNERS) {
        shape->corners[shape->count++] = (struct place){x, y};
    }
}
