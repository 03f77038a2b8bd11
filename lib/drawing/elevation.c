/* SPDX-License-Identifier: MIT */
/*
 * The fireplace from the room. The middle of the opening's bottom is the origin.
 */
#include "drawing/pieces.h"

#include "check/report.h"
#include "measure/amounts.h"

/* What is drawn for orientation where it was not measured. */
#define USUAL_WIDTH INCHES(36)
#define USUAL_HEIGHT INCHES(28)
#define USUAL_SLAB INCHES(2)
#define USUAL_LINTEL INCHES(3)

enum { DIMENSIONED_MOST = 4 };

struct elevation {
    int64_t half, height; /* of the opening */
    bool has_width, has_height;
    struct zones zones;
    struct amount_told lintel[2], bearing[2]; /* left and right, as it is and as required */
};

static bool take(struct scene *scene, struct elevation *view)
{
    size_t pieces = ingle_survey_item_count(scene->survey, "trim");
    *view = (struct elevation){.half = 0};
    view->has_width = scene_takes(scene, QUANTITY_OPENING_WIDTH, USUAL_WIDTH, &view->half);
    view->has_height = scene_takes(scene, QUANTITY_OPENING_HEIGHT, USUAL_HEIGHT, &view->height);
    view->half /= 2;
    zones_take(scene, &view->zones);
    for (size_t i = 0; i < 2; i++) {
        enum quantity_id end = i == 0 ? QUANTITY_LINTEL_LEFT : QUANTITY_LINTEL_RIGHT;
        view->lintel[i] = scene_measured(scene, end, 0);
        view->bearing[i] = scene_demand(scene, end, 0, INGLE_AT_LEAST);
    }
    return view->has_width || view->has_height || pieces > 0 || view->lintel[0].known ||
           view->lintel[1].known;
}

/* ---- the zones ------------------------------------------------------------------------------ */

/* What lies between two distances from the opening, from its bottom up around it. */
static void put_ring(struct scene *scene, const struct elevation *view, enum area area,
                     const int64_t from[3], const int64_t to[3])
{
    int64_t half = view->half, height = view->height;
    int64_t inner_left = -half - from[CHOICE_TRIM_SIDE_LEFT];
    int64_t inner_right = half + from[CHOICE_TRIM_SIDE_RIGHT];
    int64_t outer_left = -half - to[CHOICE_TRIM_SIDE_LEFT];
    int64_t outer_right = half + to[CHOICE_TRIM_SIDE_RIGHT];
    int64_t inner_top = -height - from[CHOICE_TRIM_SIDE_ABOVE];
    int64_t outer_top = -height - to[CHOICE_TRIM_SIDE_ABOVE];
    struct shape *shape = scene_shape(scene, LINE_NONE, area);
    shape_corner(shape, outer_left, 0);
    shape_corner(shape, outer_left, outer_top);
    shape_corner(shape, outer_right, outer_top);
    shape_corner(shape, outer_right, 0);
    shape_corner(shape, inner_right, 0);
    shape_corner(shape, inner_right, inner_top);
    shape_corner(shape, inner_left, inner_top);
    shape_corner(shape, inner_left, 0);
    shape = scene_shape(scene, LINE_LIMIT, AREA_NONE);
    shape->open = true;
    shape_corner(shape, outer_left, 0);
    shape_corner(shape, outer_left, outer_top);
    shape_corner(shape, outer_right, outer_top);
    shape_corner(shape, outer_right, 0);
}

static void put_zones(struct scene *scene, const struct elevation *view)
{
    static const int64_t none[3] = {0, 0, 0};
    const struct zones *zones = &view->zones;
    int64_t within[3];
    bool any = false;
    for (size_t side = 0; side < 3; side++) {
        within[side] = larger(zones->within, zones->forbidden[side]);
        any = any || zones->forbidden[side] > 0;
    }
    if (zones->within > 0) {
        put_ring(scene, view, AREA_LIMITED, zones->forbidden, within);
    }
    if (any) {
        put_ring(scene, view, AREA_FORBIDDEN, none, zones->forbidden);
    }
}

static void dimension_zones(struct scene *scene, const struct elevation *view)
{
    const struct zones *zones = &view->zones;
    int64_t above = zones->forbidden[CHOICE_TRIM_SIDE_ABOVE];
    size_t piece = zones->piece[CHOICE_TRIM_SIDE_ABOVE];
    struct place from = {-view->half, -view->height};
    struct place to = {from.x - above, from.y - above};
    if (above > 0 && piece == ITEM_NONE) {
        scene_dimension_number(scene, SIDE_LEFT, TOLD_ZONE, "trim-projection", "zone", above,
                               from, to);
    } else if (above > 0) {
        scene_dimension(scene, SIDE_LEFT, QUANTITY_TRIM_DISTANCE, piece,
                        scene_demand(scene, QUANTITY_TRIM_DISTANCE, piece, INGLE_AT_LEAST), from,
                        to);
    }
    if (zones->within > 0) {
        scene_dimension_number(scene, SIDE_LEFT, TOLD_ZONE, "trim-projection", "within",
                               zones->within, from,
                               (struct place){from.x - zones->within, from.y - zones->within});
    }
}

/* ---- opening, lintel, hearth ---------------------------------------------------------------- */

static void put_opening(struct scene *scene, const struct elevation *view)
{
    enum line line = view->has_width && view->has_height ? LINE_OUTLINE : LINE_HIDDEN;
    scene_rectangle(scene, line, AREA_PAPER, -view->half, -view->height, view->half, 0);
    if (view->has_width) {
        scene_dimension(scene, SIDE_BOTTOM, QUANTITY_OPENING_WIDTH, 0,
                        scene_measured(scene, QUANTITY_OPENING_WIDTH, 0),
                        (struct place){-view->half, 0}, (struct place){view->half, 0});
    }
    if (view->has_height) {
        scene_dimension(scene, SIDE_RIGHT, QUANTITY_OPENING_HEIGHT, 0,
                        scene_measured(scene, QUANTITY_OPENING_HEIGHT, 0),
                        (struct place){view->half, 0}, (struct place){view->half, -view->height});
    }
}

/* One end of the lintel; `way` is the side it bears on. */
static void put_bearing(struct scene *scene, const struct elevation *view, size_t end,
                        int64_t way)
{
    enum quantity_id quantity = end == 0 ? QUANTITY_LINTEL_LEFT : QUANTITY_LINTEL_RIGHT;
    int64_t there = view->lintel[end].amount, asked = view->bearing[end].amount;
    int64_t low = -view->height, edge = way * view->half;
    if (view->bearing[end].known && asked > there) {
        int64_t inner = edge + way * there, outer = edge + way * asked;
        scene_rectangle(scene, LINE_REQUIRED, AREA_MISSING, smaller(inner, outer),
                        low - USUAL_LINTEL, larger(inner, outer), low);
    }
    scene_dimension(scene, SIDE_TOP, quantity, 0, view->lintel[end], (struct place){edge, low},
                    (struct place){edge + way * there, low});
    scene_dimension(scene, SIDE_TOP, quantity, 0, view->bearing[end], (struct place){edge, low},
                    (struct place){edge + way * asked, low});
}

static void put_lintel(struct scene *scene, const struct elevation *view)
{
    int64_t left = view->half + view->lintel[0].amount;
    int64_t right = view->half + view->lintel[1].amount;
    if (!view->lintel[0].known && !view->lintel[1].known) {
        return;
    }
    scene_rectangle(scene, LINE_HIDDEN, AREA_NONE, -left, -view->height - USUAL_LINTEL, right,
                    -view->height);
    scene_assumes(scene, "height of the lintel");
    for (size_t end = 0; end < 2; end++) {
        if (view->lintel[end].known) {
            put_bearing(scene, view, end, end == 0 ? -1 : 1);
        }
    }
}

static void put_hearth(struct scene *scene, const struct elevation *view)
{
    int64_t raise = 0, left = 0, right = 0, slab;
    bool has_left = scene_has(scene, QUANTITY_HEARTH_LEFT, 0, &left);
    bool has_right = scene_has(scene, QUANTITY_HEARTH_RIGHT, 0, &right);
    bool has_raise = scene_has(scene, QUANTITY_HEARTH_FIREBOX_RAISE, 0, &raise);
    if (!has_left && !has_right && !has_raise) {
        return;
    }
    bool has_slab =
        scene_takes(scene, QUANTITY_HEARTH_EXTENSION_THICKNESS, USUAL_SLAB, &slab);
    left += view->half;
    right += view->half;
    scene_rectangle(scene, LINE_OUTLINE, AREA_PRESENT, -left, raise, right, raise + slab);
    if (raise > 0) {
        scene_line(scene, LINE_THIN, -view->half, 0, -view->half, raise);
        scene_line(scene, LINE_THIN, view->half, 0, view->half, raise);
        scene_dimension(scene, SIDE_LEFT, QUANTITY_HEARTH_FIREBOX_RAISE, 0,
                        scene_measured(scene, QUANTITY_HEARTH_FIREBOX_RAISE, 0),
                        (struct place){-left, 0}, (struct place){-left, raise});
    }
    if (has_slab) {
        scene_dimension(scene, SIDE_RIGHT, QUANTITY_HEARTH_EXTENSION_THICKNESS, 0,
                        scene_measured(scene, QUANTITY_HEARTH_EXTENSION_THICKNESS, 0),
                        (struct place){right, raise}, (struct place){right, raise + slab});
    }
}

/* ---- pieces of trim ------------------------------------------------------------------------- */

/* Above the opening a piece lies across it, beside it stands along it. */
static struct extent extent_of(const struct elevation *view, const struct piece *piece)
{
    int64_t half = view->half, height = view->height, off = piece->distance.amount;
    int64_t thick = larger(height / 14, INCHES(1)), over = half / 4;
    switch (piece->side) {
    case CHOICE_TRIM_SIDE_ABOVE:
        return (struct extent){-half - over, -height - off - thick, half + over, -height - off};
    case CHOICE_TRIM_SIDE_LEFT:
        return (struct extent){-half - off - thick * 3 / 2, -height, -half - off, 0};
    default:
        return (struct extent){half + off, -height, half + off + thick * 3 / 2, 0};
    }
}

static void dimension_piece(struct scene *scene, const struct elevation *view,
                            const struct piece *piece, const struct extent *extent)
{
    bool above = piece->side == CHOICE_TRIM_SIDE_ABOVE;
    bool left = piece->side == CHOICE_TRIM_SIDE_LEFT || (above && piece->item % 2 == 1);
    int64_t way = left ? -1 : 1;
    struct place from = {way * view->half, above ? -view->height : 0};
    const struct amount_told *amounts[] = {&piece->distance, &piece->required};
    for (size_t i = 0; i < 2; i++) {
        int64_t off = amounts[i]->amount;
        struct place to = above ? (struct place){left ? extent->left : extent->right, from.y - off}
                                : (struct place){from.x + way * off, 0};
        if (i == 0 || amounts[1]->amount > amounts[0]->amount) {
            scene_dimension(scene, above ? (left ? SIDE_LEFT : SIDE_RIGHT) : SIDE_BOTTOM,
                            piece->from, piece->item, *amounts[i], from, to);
        }
    }
}

/* Marks of pieces that lie over each other stand side by side. */
static struct place target_of(const struct elevation *view, const struct piece *piece,
                              const struct extent *extent)
{
    int64_t turn = (int64_t)(piece->item % MARKS_MOST) + 1;
    int64_t middle = extent->left / 2 + extent->right / 2;
    if (piece->side == CHOICE_TRIM_SIDE_ABOVE) {
        return (struct place){-view->half + 2 * view->half / (MARKS_MOST + 1) * turn,
                              extent->top / 2 + extent->bottom / 2};
    }
    return (struct place){middle, extent->top + (extent->bottom - extent->top) / 8};
}

static void put_pieces(struct scene *scene, const struct elevation *view)
{
    size_t count = ingle_survey_item_count(scene->survey, "trim"), drawn = 0, over = 0;
    struct piece piece;
    for (size_t i = 0; i < count; i++) {
        if (!piece_take(scene, i, &piece)) {
            continue;
        }
        struct extent extent = extent_of(view, &piece);
        if (!piece_mark(scene, &piece, target_of(view, &piece, &extent))) {
            over++;
            continue;
        }
        scene_rectangle(scene, LINE_OUTLINE, piece.area, extent.left, extent.top, extent.right,
                        extent.bottom);
        scene_assumes(scene, "length and thickness of the pieces of trim");
        if (drawn++ < DIMENSIONED_MOST) {
            dimension_piece(scene, view, &piece, &extent);
        }
    }
    scene_not_drawn(scene, " more pieces of trim are not drawn", over);
}

bool draw_elevation(struct scene *scene)
{
    struct elevation view;
    if (!take(scene, &view)) {
        return false;
    }
    put_zones(scene, &view);
    put_opening(scene, &view);
    put_hearth(scene, &view);
    put_lintel(scene, &view);
    put_pieces(scene, &view);
    dimension_zones(scene, &view);
    return true;
}
