/* SPDX-License-Identifier: MIT */
/*
 * The fireplace cut from front to back. The foot of the masonry's face, at the level of the
 * firebox floor, is the origin; the room lies to the left.
 */
#include "drawing/pieces.h"

#include "measure/amounts.h"

/* What is drawn for orientation where it was not measured. */
#define USUAL_HEIGHT INCHES(28)
#define USUAL_DEPTH INCHES(20)
#define USUAL_WALL INCHES(8)
#define USUAL_BREAST INCHES(4)
#define USUAL_SLAB INCHES(4)
#define USUAL_THROAT INCHES(4)
#define USUAL_FLUE INCHES(8)

enum { DIMENSIONED_MOST = 2 };

/* A measure of the smoke's way, and the quantity that told it. */
struct measure {
    enum quantity_id quantity;
    bool known;
    int64_t amount;
};

struct section {
    struct measure height, depth, wall;
    struct measure throat, throat_depth; /* above the opening or its lintel; front to back */
    struct measure chamber, flue;
    struct measure slab;
    int64_t raise, top; /* of the hearth below the floor, of all masonry above it */
    struct zones zones;
    int64_t reach;   /* how far into the room mantels and their limits are drawn */
    int64_t mantels; /* how far above the opening they are; 0 where there are none */
};

/* ---- what there is -------------------------------------------------------------------------- */

static struct measure take_measure(struct scene *scene, enum quantity_id quantity, int64_t instead)
{
    struct measure measure = {.quantity = quantity};
    measure.known = scene_takes(scene, quantity, instead, &measure.amount);
    return measure;
}

/* The first of two quantities that was measured; the first is missed where neither was. */
static struct measure take_either(struct scene *scene, enum quantity_id one,
                                  enum quantity_id other)
{
    struct measure measure = {.quantity = one};
    measure.known = scene_has(scene, one, 0, &measure.amount);
    if (!measure.known && scene_has(scene, other, 0, &measure.amount)) {
        measure.known = true;
        measure.quantity = other;
    } else if (!measure.known) {
        scene_needs(scene, one, 0, &measure.amount);
    }
    return measure;
}

static void take_flue(struct scene *scene, struct section *view)
{
    view->flue = (struct measure){.quantity = QUANTITY_FLUE_DEPTH, .amount = USUAL_FLUE};
    view->flue.known = scene_has(scene, QUANTITY_FLUE_DEPTH, 0, &view->flue.amount);
    if (!view->flue.known && scene_has(scene, QUANTITY_FLUE_DIAMETER, 0, &view->flue.amount)) {
        view->flue = (struct measure){QUANTITY_FLUE_DIAMETER, true, view->flue.amount};
    } else if (!view->flue.known) {
        scene_assumes(scene, "depth of the flue");
    }
}

/* The smoke's way above the opening: each part rests on the one below it. */
static void take_smoke_way(struct scene *scene, struct section *view)
{
    view->throat = take_either(scene, QUANTITY_THROAT_HEIGHT, QUANTITY_THROAT_ABOVE_LINTEL);
    if (!view->throat.known) {
        return;
    }
    view->throat_depth = take_measure(scene, QUANTITY_THROAT_DEPTH, USUAL_THROAT);
    view->chamber.quantity = QUANTITY_SMOKE_CHAMBER_HEIGHT;
    view->chamber.known =
        scene_needs(scene, QUANTITY_SMOKE_CHAMBER_HEIGHT, 0, &view->chamber.amount);
    if (view->chamber.known) {
        take_flue(scene, view);
    }
}

static bool take(struct scene *scene, struct section *view)
{
    int64_t front, insert;
    *view = (struct section){.raise = 0};
    view->height = take_measure(scene, QUANTITY_OPENING_HEIGHT, USUAL_HEIGHT);
    view->depth = take_measure(scene, QUANTITY_FIREBOX_DEPTH, USUAL_DEPTH);
    view->wall = take_measure(scene, QUANTITY_FIREBOX_WALL_THICKNESS, USUAL_WALL);
    scene_assumes(scene, "course of the masonry");
    take_smoke_way(scene, view);
    view->slab = take_measure(scene, QUANTITY_HEARTH_EXTENSION_THICKNESS, USUAL_SLAB);
    scene_has(scene, QUANTITY_HEARTH_FIREBOX_RAISE, 0, &view->raise);
    zones_take(scene, &view->zones);
    bool has_hearth = scene_has(scene, QUANTITY_HEARTH_FRONT, 0, &front) ||
                      scene_has(scene, QUANTITY_HEARTH_FROM_FACING, 0, &front);
    return view->height.known || view->depth.known || view->throat.known || has_hearth ||
           scene_has(scene, QUANTITY_INSERT_PROJECTION, 0, &insert) ||
           scene_has(scene, QUANTITY_TRIM_PROJECTION, 0, &insert);
}

/* ---- places --------------------------------------------------------------------------------- */

static int64_t throat_level(const struct section *view)
{
    return view->height.amount + view->throat.amount;
}

static int64_t chamber_level(const struct section *view)
{
    return throat_level(view) + view->chamber.amount;
}

static int64_t throat_back(const struct section *view)
{
    return USUAL_BREAST + view->throat_depth.amount;
}

/* The flue stands over the middle of the firebox, but not before the breast's inner face. */
static int64_t flue_front(const struct section *view)
{
    int64_t middle = (USUAL_BREAST + larger(view->depth.amount, throat_back(view))) / 2;
    return larger(USUAL_BREAST, middle - view->flue.amount / 2);
}

static int64_t shelf_back(const struct section *view)
{
    int64_t back = larger(view->depth.amount, throat_back(view));
    return view->chamber.known ? larger(back, flue_front(view) + view->flue.amount) : back;
}

/* Where the masonry is cut off above: past the flue's beginning, and past every mantel. */
static int64_t top_of(const struct section *view)
{
    int64_t top = view->height.amount + USUAL_WALL;
    if (view->throat.known) {
        top = larger(top, throat_level(view) + USUAL_WALL / 2);
    }
    if (view->chamber.known) {
        top = larger(top, chamber_level(view) + larger(view->flue.amount * 2, USUAL_WALL));
    }
    return larger(top, view->height.amount + view->mantels);
}

/* ---- the masonry ---------------------------------------------------------------------------- */

static void put_breast(struct scene *scene, const struct section *view)
{
    int64_t inner = view->chamber.known ? flue_front(view) : USUAL_BREAST;
    struct shape *shape = scene_shape(scene, LINE_OUTLINE, AREA_MATERIAL);
    shape_corner(shape, 0, -view->height.amount);
    shape_corner(shape, USUAL_BREAST, -view->height.amount);
    if (view->throat.known) {
        shape_corner(shape, USUAL_BREAST, -throat_level(view));
    }
    if (view->chamber.known) {
        shape_corner(shape, inner, -chamber_level(view));
    }
    shape_corner(shape, inner, -view->top);
    shape_corner(shape, 0, -view->top);
}

/* The back wall leans forward to the throat; behind that lies the smoke shelf. */
static void put_back(struct scene *scene, const struct section *view)
{
    int64_t depth = view->depth.amount, shelf = shelf_back(view);
    int64_t outer = shelf + view->wall.amount;
    int64_t top = view->throat.known && !view->chamber.known ? throat_level(view) : view->top;
    struct shape *shape = scene_shape(scene, LINE_OUTLINE, AREA_MATERIAL);
    shape_corner(shape, depth, 0);
    if (view->throat.known) {
        shape_corner(shape, depth, -view->height.amount * 2 / 5);
        shape_corner(shape, throat_back(view), -throat_level(view));
    }
    if (view->chamber.known) {
        shape_corner(shape, shelf, -throat_level(view));
        shape_corner(shape, flue_front(view) + view->flue.amount, -chamber_level(view));
        shape_corner(shape, flue_front(view) + view->flue.amount, -top);
    }
    if (!view->throat.known) {
        shape_corner(shape, depth, -top);
    }
    shape_corner(shape, outer, -top);
    shape_corner(shape, outer, 0);
}

static void put_floor(struct scene *scene, const struct section *view)
{
    struct measure floor = take_measure(scene, QUANTITY_HEARTH_THICKNESS, USUAL_SLAB);
    int64_t outer = shelf_back(view) + view->wall.amount;
    scene_rectangle(scene, LINE_OUTLINE, AREA_MATERIAL, 0, 0, outer, floor.amount);
    if (floor.known) {
        scene_dimension(scene, SIDE_RIGHT, floor.quantity, 0,
                        scene_measured(scene, floor.quantity, 0), (struct place){outer, 0},
                        (struct place){outer, floor.amount});
        scene_dimension(scene, SIDE_RIGHT, floor.quantity, 0,
                        scene_demand(scene, floor.quantity, 0, INGLE_AT_LEAST),
                        (struct place){outer, 0},
                        (struct place){
                            outer,
                            scene_demand(scene, floor.quantity, 0, INGLE_AT_LEAST).amount});
    }
}

static void put_axis(struct scene *scene, const struct section *view)
{
    int64_t left = flue_front(view), width = view->flue.amount;
    scene_line(scene, LINE_CENTRE, left + width / 2, -chamber_level(view), left + width / 2,
               -view->top);
}

/* ---- hearth and insert ---------------------------------------------------------------------- */

static void put_hearth(struct scene *scene, const struct section *view)
{
    enum quantity_id quantity = QUANTITY_HEARTH_FRONT;
    int64_t facing = 0, bottom = view->raise + view->slab.amount;
    struct amount_told there = scene_measured(scene, quantity, 0);
    if (!there.known && scene_measured(scene, QUANTITY_HEARTH_FROM_FACING, 0).known) {
        quantity = QUANTITY_HEARTH_FROM_FACING;
        there = scene_measured(scene, quantity, 0);
        scene_has(scene, QUANTITY_HEARTH_FACING, 0, &facing);
    } else if (!there.known) {
        scene_needs(scene, quantity, 0, &there.amount);
    }
    struct amount_told asked = scene_demand(scene, quantity, 0, INGLE_AT_LEAST);
    struct place from = {-facing, bottom};
    scene_rectangle(scene, LINE_OUTLINE, AREA_PRESENT, -facing - there.amount, view->raise, 0,
                    bottom);
    if (asked.known) {
        scene_rectangle(scene, LINE_REQUIRED, there.known ? AREA_MISSING : AREA_NONE,
                        -facing - asked.amount, view->raise, -facing - there.amount, bottom);
    }
    scene_line(scene, LINE_OUTLINE, 0, 0, 0, bottom);
    scene_dimension(scene, SIDE_BOTTOM, quantity, 0, there, from,
                    (struct place){from.x - there.amount, bottom});
    scene_dimension(scene, SIDE_BOTTOM, quantity, 0, asked, from,
                    (struct place){from.x - asked.amount, bottom});
}

static void put_insert(struct scene *scene, const struct section *view)
{
    struct amount_told out = scene_measured(scene, QUANTITY_INSERT_PROJECTION, 0);
    struct amount_told hearth = scene_measured(scene, QUANTITY_INSERT_HEARTH_FRONT, 0);
    struct amount_told asked =
        scene_demand(scene, QUANTITY_INSERT_HEARTH_FRONT, 0, INGLE_AT_LEAST);
    struct place front = {-out.amount, 0};
    if (!out.known) {
        return;
    }
    scene_assumes(scene, "height and depth of the insert");
    scene_rectangle(scene, LINE_OUTLINE, AREA_PAPER, -out.amount, -view->height.amount * 4 / 5,
                    view->depth.amount * 9 / 10, 0);
    scene_dimension(scene, SIDE_BOTTOM, QUANTITY_INSERT_PROJECTION, 0, out, (struct place){0, 0},
                    front);
    scene_dimension(scene, SIDE_BOTTOM, QUANTITY_INSERT_HEARTH_FRONT, 0, hearth, front,
                    (struct place){front.x - hearth.amount, 0});
    scene_dimension(scene, SIDE_BOTTOM, QUANTITY_INSERT_HEARTH_FRONT, 0, asked, front,
                    (struct place){front.x - asked.amount, 0});
    if (hearth.known && asked.known) {
        scene_rectangle(scene, LINE_REQUIRED, AREA_MISSING, front.x - asked.amount, view->raise,
                        front.x - hearth.amount, view->raise + view->slab.amount);
    }
}

/* ---- mantels -------------------------------------------------------------------------------- */

static int64_t by_ratio(const struct zones *zones, int64_t distance)
{
    return distance / 1000 * (zones->ratio / 1000) / (INGLE_RATIO_ONE / 1000000);
}

/* What the limit keeps free: all of the zone, then ever less of it, then nothing. */
static void put_limited(struct scene *scene, const struct section *view)
{
    const struct zones *zones = &view->zones;
    int64_t height = view->height.amount, reach = view->reach;
    int64_t forbidden = zones->forbidden[CHOICE_TRIM_SIDE_ABOVE];
    int64_t begins = -height - forbidden, ends = -height - zones->within;
    if (forbidden > 0) {
        scene_rectangle(scene, LINE_NONE, AREA_FORBIDDEN, -reach, begins, 0, -height);
    }
    if (zones->within > forbidden) {
        struct shape *shape = scene_shape(scene, LINE_NONE, AREA_LIMITED);
        shape_corner(shape, -by_ratio(zones, forbidden), begins);
        shape_corner(shape, -by_ratio(zones, zones->within), ends);
        shape_corner(shape, -reach, ends);
        shape_corner(shape, -reach, begins);
    }
}

static void put_limit_line(struct scene *scene, const struct section *view)
{
    const struct zones *zones = &view->zones;
    int64_t forbidden = zones->forbidden[CHOICE_TRIM_SIDE_ABOVE];
    int64_t begins = -view->height.amount - forbidden;
    int64_t ends = -view->height.amount - zones->within;
    if (forbidden == 0) {
        return;
    }
    struct shape *line = scene_shape(scene, LINE_LIMIT, AREA_NONE);
    line->open = true;
    shape_corner(line, 0, begins);
    if (zones->within > forbidden) {
        shape_corner(line, -by_ratio(zones, forbidden), begins);
        shape_corner(line, -by_ratio(zones, zones->within), ends);
        shape_corner(line, -view->reach, ends);
    } else {
        shape_corner(line, -view->reach, begins);
    }
}

static void dimension_mantel(struct scene *scene, const struct section *view,
                             const struct piece *piece, int64_t top)
{
    int64_t height = view->height.amount, level = -height - piece->distance.amount;
    int64_t out = piece->projection.amount;
    scene_dimension(scene, SIDE_LEFT, piece->from, piece->item, piece->distance,
                    (struct place){0, -height}, (struct place){-out, level});
    if (piece->required.amount > piece->distance.amount) {
        scene_dimension(scene, SIDE_LEFT, piece->from, piece->item, piece->required,
                        (struct place){0, -height},
                        (struct place){0, -height - piece->required.amount});
    }
    scene_dimension(scene, SIDE_TOP, QUANTITY_TRIM_PROJECTION, piece->item, piece->projection,
                    (struct place){0, top}, (struct place){-out, top});
    scene_dimension(scene, SIDE_TOP, QUANTITY_TRIM_PROJECTION, piece->item, piece->allowed,
                    (struct place){0, top}, (struct place){-piece->allowed.amount, top});
}

/* A piece above the opening with its projection, or false. */
static bool take_mantel(struct scene *scene, size_t item, struct piece *piece)
{
    int64_t side, out;
    return scene_has(scene, QUANTITY_TRIM_SIDE, item, &side) && side == CHOICE_TRIM_SIDE_ABOVE &&
           scene_has(scene, QUANTITY_TRIM_DISTANCE, item, &out) &&
           scene_needs(scene, QUANTITY_TRIM_PROJECTION, item, &out) &&
           piece_take(scene, item, piece);
}

/* In the picture the pieces alone; in the detail what is measured and allowed of them, too. */
static void put_mantels(struct scene *scene, const struct section *view, bool in_detail)
{
    size_t count = ingle_survey_item_count(scene->survey, "trim"), drawn = 0, over = 0;
    int64_t thick = larger(view->height.amount / 14, INCHES(1));
    struct piece piece;
    for (size_t i = 0; i < count; i++) {
        if (!take_mantel(scene, i, &piece)) {
            continue;
        }
        int64_t level = -view->height.amount - piece.distance.amount;
        struct place middle = {-piece.projection.amount / 2, level - thick / 2};
        if (in_detail && !piece_mark(scene, &piece, middle)) {
            over++;
            continue;
        }
        scene_rectangle(scene, LINE_OUTLINE, piece.area, -piece.projection.amount, level - thick,
                        0, level);
        if (in_detail && drawn++ < DIMENSIONED_MOST) {
            dimension_mantel(scene, view, &piece, level - thick);
        }
    }
    scene_not_drawn(scene, " more pieces of trim are not marked", over);
}

/* The edge of the opening and the breast above it, with the mantels and their limit. */
static void put_detail(struct scene *scene, const struct section *view)
{
    int64_t breast = view->reach / 4, height = view->height.amount;
    if (view->mantels == 0) {
        return;
    }
    scene->into = &scene->detail;
    scene->detail_title = "Detail at the mantel";
    put_limited(scene, view);
    scene_rectangle(scene, LINE_OUTLINE, AREA_MATERIAL, 0, -height - view->mantels, breast,
                    -height);
    scene_assumes(scene, "thickness of the pieces of trim");
    put_mantels(scene, view, true);
    put_limit_line(scene, view);
    scene->into = &scene->picture;
}

/* How high and how far into the room the mantels reach. */
static void mantels_reach(struct scene *scene, struct section *view)
{
    size_t count = ingle_survey_item_count(scene->survey, "trim");
    int64_t far = by_ratio(&view->zones, view->zones.within);
    struct piece piece;
    for (size_t i = 0; i < count; i++) {
        if (take_mantel(scene, i, &piece)) {
            int64_t high = piece.distance.amount + view->height.amount / 7;
            view->mantels = larger(view->mantels, larger(high, view->zones.within + INCHES(2)));
            far = larger(far, larger(piece.projection.amount, piece.allowed.amount));
        }
    }
    view->reach = far + INCHES(2);
}

/* ---- dimensions ----------------------------------------------------------------------------- */

/* A measure and what is asked of it, from one place straight up or to the right. */
static void dimension_measure(struct scene *scene, enum side side, const struct measure *measure,
                              struct place from, int64_t dx, int64_t dy)
{
    const ingle_relation relations[] = {INGLE_AT_LEAST, INGLE_AT_MOST};
    if (!measure->known) {
        return;
    }
    scene_dimension(scene, side, measure->quantity, 0, scene_measured(scene, measure->quantity, 0),
                    from,
                    (struct place){from.x + dx * measure->amount, from.y + dy * measure->amount});
    for (size_t i = 0; i < 2; i++) {
        struct amount_told asked = scene_demand(scene, measure->quantity, 0, relations[i]);
        scene_dimension(scene, side, measure->quantity, 0, asked, from,
                        (struct place){from.x + dx * asked.amount, from.y + dy * asked.amount});
    }
}

static void put_dimensions(struct scene *scene, const struct section *view)
{
    int64_t height = view->height.amount;
    dimension_measure(scene, SIDE_RIGHT, &view->height, (struct place){0, 0}, 0, -1);
    dimension_measure(scene, SIDE_RIGHT, &view->throat, (struct place){USUAL_BREAST, -height}, 0,
                      -1);
    dimension_measure(scene, SIDE_RIGHT, &view->chamber,
                      (struct place){shelf_back(view), -throat_level(view)}, 0, -1);
    dimension_measure(scene, SIDE_BOTTOM, &view->depth, (struct place){0, 0}, 1, 0);
    dimension_measure(scene, SIDE_BOTTOM, &view->wall,
                      (struct place){shelf_back(view), 0}, 1, 0);
    dimension_measure(scene, SIDE_TOP, &view->throat_depth,
                      (struct place){USUAL_BREAST, -throat_level(view)}, 1, 0);
    dimension_measure(scene, SIDE_TOP, &view->flue,
                      (struct place){flue_front(view), -view->top}, 1, 0);
}

bool draw_section(struct scene *scene)
{
    struct section view;
    if (!take(scene, &view)) {
        return false;
    }
    mantels_reach(scene, &view);
    view.top = top_of(&view);
    put_breast(scene, &view);
    put_back(scene, &view);
    put_floor(scene, &view);
    if (view.chamber.known) {
        put_axis(scene, &view);
    }
    put_hearth(scene, &view);
    put_insert(scene, &view);
    put_mantels(scene, &view, false);
    put_detail(scene, &view);
    put_dimensions(scene, &view);
    return true;
}
