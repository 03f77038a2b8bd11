/* SPDX-License-Identifier: MIT */
/*
 * The fireplace from above. The middle of the opening, in the plane of the masonry's face, is the
 * origin; the room lies below it on the sheet.
 */
#include "drawing/scene.h"

#include "measure/amounts.h"

/* What is drawn for orientation where it was not measured. */
#define USUAL_WIDTH INCHES(36)
#define USUAL_WALL INCHES(8)

/* A part of the hearth, as it is and as required. */
struct part {
    enum quantity_id quantity;
    struct amount_told there, required;
};

struct plan {
    int64_t half; /* of the opening's width */
    int64_t depth, wall, facing;
    bool has_depth, has_insert;
    struct part front, left, right;
    struct part insert, insert_front, insert_left, insert_right;
    int64_t edge_left, edge_right; /* how far the hearth goes from the middle, where it is known */
    int64_t projection;
};

/* ---- what there is -------------------------------------------------------------------------- */

static struct part take_part(const struct scene *scene, enum quantity_id quantity)
{
    return (struct part){quantity, scene_measured(scene, quantity, 0),
                         scene_demand(scene, quantity, 0, INGLE_AT_LEAST)};
}

/* The hearth in front is measured from the opening or from the facing around it. */
static void take_front(struct scene *scene, struct plan *plan)
{
    int64_t front;
    plan->front = take_part(scene, QUANTITY_HEARTH_FRONT);
    struct part facing = take_part(scene, QUANTITY_HEARTH_FROM_FACING);
    if (!plan->front.there.known && facing.there.known) {
        plan->front = facing;
        scene_has(scene, QUANTITY_HEARTH_FACING, 0, &plan->facing);
    } else {
        scene_needs(scene, QUANTITY_HEARTH_FRONT, 0, &front);
    }
}

static void take_insert(struct scene *scene, struct plan *plan)
{
    plan->insert = take_part(scene, QUANTITY_INSERT_PROJECTION);
    plan->insert_front = take_part(scene, QUANTITY_INSERT_HEARTH_FRONT);
    plan->insert_left = take_part(scene, QUANTITY_INSERT_HEARTH_LEFT);
    plan->insert_right = take_part(scene, QUANTITY_INSERT_HEARTH_RIGHT);
    plan->has_insert = plan->insert.there.known || plan->insert_front.there.known ||
                       plan->insert_left.there.known || plan->insert_right.there.known;
    if (plan->has_insert) {
        scene_needs(scene, QUANTITY_INSERT_PROJECTION, 0, &plan->projection);
        scene_assumes(scene, "width of the insert and of its door");
    }
}

/* How far a side of the hearth goes; what is measured from an insert's door may tell. */
static int64_t edge_of(const struct plan *plan, const struct part *side, const struct part *insert)
{
    if (side->there.known) {
        return plan->half + side->there.amount;
    }
    return insert->there.known ? plan->half * 3 / 5 + insert->there.amount : 0;
}

static bool take(struct scene *scene, struct plan *plan)
{
    int64_t side;
    *plan = (struct plan){.wall = USUAL_WALL};
    plan->left = take_part(scene, QUANTITY_HEARTH_LEFT);
    plan->right = take_part(scene, QUANTITY_HEARTH_RIGHT);
    take_front(scene, plan);
    take_insert(scene, plan);
    bool has_width = scene_takes(scene, QUANTITY_OPENING_WIDTH, USUAL_WIDTH, &plan->half);
    plan->half /= 2;
    plan->has_depth = scene_needs(scene, QUANTITY_FIREBOX_DEPTH, 0, &plan->depth);
    scene_takes(scene, QUANTITY_FIREBOX_WALL_THICKNESS, USUAL_WALL, &plan->wall);
    if (!plan->insert_left.there.known) {
        scene_needs(scene, QUANTITY_HEARTH_LEFT, 0, &side);
    }
    if (!plan->insert_right.there.known) {
        scene_needs(scene, QUANTITY_HEARTH_RIGHT, 0, &side);
    }
    plan->edge_left = edge_of(plan, &plan->left, &plan->insert_left);
    plan->edge_right = edge_of(plan, &plan->right, &plan->insert_right);
    return has_width || plan->has_depth || plan->has_insert || plan->front.there.known ||
           plan->left.there.known || plan->right.there.known;
}

/* ---- the parts ------------------------------------------------------------------------------ */

static void put_masonry(struct scene *scene, const struct plan *plan)
{
    int64_t back = plan->has_depth ? plan->depth : larger(plan->wall, USUAL_WALL);
    int64_t outer = plan->half + plan->wall;
    if (plan->has_depth) {
        struct shape *shape = scene_shape(scene, LINE_OUTLINE, AREA_MATERIAL);
        shape_corner(shape, -outer, 0);
        shape_corner(shape, -outer, -back - plan->wall);
        shape_corner(shape, outer, -back - plan->wall);
        shape_corner(shape, outer, 0);
        shape_corner(shape, plan->half, 0);
        shape_corner(shape, plan->half, -back);
        shape_corner(shape, -plan->half, -back);
        shape_corner(shape, -plan->half, 0);
    } else {
        scene_rectangle(scene, LINE_OUTLINE, AREA_MATERIAL, -outer, -back, -plan->half, 0);
        scene_rectangle(scene, LINE_OUTLINE, AREA_MATERIAL, plan->half, -back, outer, 0);
    }
    scene_line(scene, LINE_THIN, -plan->half, 0, plan->half, 0);
}

/* Its edges are drawn where they are known. */
static void put_hearth(struct scene *scene, const struct plan *plan)
{
    int64_t left = plan->edge_left > 0 ? plan->edge_left : plan->half;
    int64_t right = plan->edge_right > 0 ? plan->edge_right : plan->half;
    int64_t front = plan->facing + plan->front.there.amount;
    if (!plan->front.there.known) {
        scene_line(scene, LINE_OUTLINE, -left, 0, right, 0);
        return;
    }
    scene_rectangle(scene, LINE_NONE, AREA_PRESENT, -left, 0, right, front);
    scene_line(scene, LINE_OUTLINE, -left, front, right, front);
    scene_line(scene, LINE_OUTLINE, -left, 0, right, 0);
    if (plan->edge_left > 0) {
        scene_line(scene, LINE_OUTLINE, -left, 0, -left, front);
    }
    if (plan->edge_right > 0) {
        scene_line(scene, LINE_OUTLINE, right, 0, right, front);
    }
}

/* How far to a side something is required: as the rule says, else as far as the hearth is. */
static int64_t required_edge(const struct plan *plan, const struct part *side, int64_t edge)
{
    return side->required.known ? plan->half + side->required.amount : larger(edge, plan->half);
}

/* What is required in front of something: the edge at which it starts is no part of it. */
static void put_outline(struct scene *scene, int64_t left, int64_t top, int64_t right,
                        int64_t bottom)
{
    struct shape *shape = scene_shape(scene, LINE_REQUIRED, AREA_NONE);
    shape->open = true;
    shape_corner(shape, left, top);
    shape_corner(shape, left, bottom);
    shape_corner(shape, right, bottom);
    shape_corner(shape, right, top);
}

static void put_required(struct scene *scene, const struct plan *plan)
{
    const struct part *sides[] = {&plan->left, &plan->right};
    int64_t front = plan->facing + larger(plan->front.required.amount, 0);
    if (!plan->front.required.known) {
        front = plan->front.there.known ? plan->facing + plan->front.there.amount : 0;
    }
    int64_t left = required_edge(plan, sides[0], plan->edge_left);
    int64_t right = required_edge(plan, sides[1], plan->edge_right);
    if (plan->front.required.known || sides[0]->required.known || sides[1]->required.known) {
        put_outline(scene, -left, 0, right, front);
    }
}

/* What is required and not there: a strip in front and one at each side. */
static void put_missing(struct scene *scene, const struct plan *plan)
{
    int64_t left = required_edge(plan, &plan->left, plan->edge_left);
    int64_t right = required_edge(plan, &plan->right, plan->edge_right);
    int64_t there = plan->facing + plan->front.there.amount;
    int64_t front = plan->facing + plan->front.required.amount;
    int64_t side = plan->front.required.known ? smaller(front, there) : there;
    if (!plan->front.there.known) {
        return;
    }
    if (plan->front.required.known) {
        scene_rectangle(scene, LINE_NONE, AREA_MISSING, -left, there, right, front);
    }
    if (plan->edge_left > 0 && plan->left.required.known) {
        scene_rectangle(scene, LINE_NONE, AREA_MISSING, -left, 0, -plan->edge_left, side);
    }
    if (plan->edge_right > 0 && plan->right.required.known) {
        scene_rectangle(scene, LINE_NONE, AREA_MISSING, plan->edge_right, 0, right, side);
    }
}

/* An insert and, in front of it and beside its door, what its hearth lacks. */
static void put_insert_missing(struct scene *scene, const struct plan *plan, int64_t half)
{
    int64_t front = plan->projection, hearth = plan->facing + plan->front.there.amount;
    const struct part *part = &plan->insert_front;
    int64_t left = plan->edge_left - plan->insert_left.there.amount;
    int64_t right = plan->edge_right - plan->insert_right.there.amount;
    if (part->required.known && part->there.known) {
        scene_rectangle(scene, LINE_NONE, AREA_MISSING, -half, front + part->there.amount, half,
                        front + part->required.amount);
    }
    if (plan->insert_left.required.known && plan->insert_left.there.known) {
        scene_rectangle(scene, LINE_NONE, AREA_MISSING, -left - plan->insert_left.required.amount,
                        front, -plan->edge_left, hearth);
    }
    if (plan->insert_right.required.known && plan->insert_right.there.known) {
        scene_rectangle(scene, LINE_NONE, AREA_MISSING, plan->edge_right, front,
                        right + plan->insert_right.required.amount, hearth);
    }
    if (part->required.known) {
        put_outline(scene, -half, front, half, front + part->required.amount);
    }
}

/* The insert with its fuel door, where the sides of its hearth are measured from it. */
static void put_insert(struct scene *scene, const struct plan *plan)
{
    int64_t half = plan->half * 4 / 5, door = half / 20, front = plan->projection;
    int64_t back = plan->has_depth ? plan->depth * 4 / 5 : plan->wall / 2;
    int64_t left = plan->edge_left - plan->insert_left.there.amount;
    int64_t right = plan->edge_right - plan->insert_right.there.amount;
    if (!plan->has_insert) {
        return;
    }
    put_insert_missing(scene, plan, half);
    scene_rectangle(scene, LINE_OUTLINE, AREA_PAPER, -half, -back, half, front);
    if (plan->insert_left.there.known && plan->insert_right.there.known && -left < right) {
        scene_rectangle(scene, LINE_OUTLINE, AREA_PAPER, -left, front - door, right, front);
    }
}

/* ---- dimensions ----------------------------------------------------------------------------- */

static void dimension_part(struct scene *scene, const struct part *part, enum side side,
                           struct place from, int64_t dx, int64_t dy)
{
    int64_t there = part->there.amount, required = part->required.amount;
    scene_dimension(scene, side, part->quantity, 0, part->there, from,
                    (struct place){from.x + dx * there, from.y + dy * there});
    scene_dimension(scene, side, part->quantity, 0, part->required, from,
                    (struct place){from.x + dx * required, from.y + dy * required});
}

static void dimension_firebox(struct scene *scene, const struct plan *plan)
{
    int64_t width;
    struct part wall = take_part(scene, QUANTITY_FIREBOX_WALL_THICKNESS);
    if (scene_has(scene, QUANTITY_OPENING_WIDTH, 0, &width)) {
        scene_dimension(scene, SIDE_TOP, QUANTITY_OPENING_WIDTH, 0,
                        (struct amount_told){true, TOLD_MEASURED, width},
                        (struct place){-plan->half, 0},
                        (struct place){-plan->half + width, 0});
    }
    if (plan->has_depth) {
        scene_dimension(scene, SIDE_LEFT, QUANTITY_FIREBOX_DEPTH, 0,
                        (struct amount_told){true, TOLD_MEASURED, plan->depth},
                        (struct place){-plan->half, 0},
                        (struct place){-plan->half, -plan->depth});
        scene_dimension(scene, SIDE_LEFT, wall.quantity, 0, wall.there,
                        (struct place){-plan->half, -plan->depth},
                        (struct place){-plan->half, -plan->depth - wall.there.amount});
    }
}

static void dimension_hearth(struct scene *scene, const struct plan *plan)
{
    int64_t front = plan->facing + plan->front.there.amount;
    dimension_part(scene, &plan->left, SIDE_BOTTOM, (struct place){-plan->half, front}, -1, 0);
    dimension_part(scene, &plan->right, SIDE_BOTTOM, (struct place){plan->half, front}, 1, 0);
    dimension_part(scene, &plan->front, SIDE_RIGHT,
                   (struct place){larger(plan->edge_right, plan->half), plan->facing}, 0, 1);
}

static void dimension_insert(struct scene *scene, const struct plan *plan)
{
    int64_t half = plan->half * 4 / 5, front = plan->projection;
    int64_t left = plan->edge_left - plan->insert_left.there.amount;
    int64_t right = plan->edge_right - plan->insert_right.there.amount;
    if (!plan->has_insert) {
        return;
    }
    dimension_part(scene, &plan->insert, SIDE_LEFT, (struct place){-half, 0}, 0, 1);
    dimension_part(scene, &plan->insert_front, SIDE_LEFT, (struct place){-half, front}, 0, 1);
    dimension_part(scene, &plan->insert_left, SIDE_BOTTOM, (struct place){-left, front}, -1, 0);
    dimension_part(scene, &plan->insert_right, SIDE_BOTTOM, (struct place){right, front}, 1, 0);
}

bool draw_plan(struct scene *scene)
{
    struct plan plan;
    if (!take(scene, &plan)) {
        return false;
    }
    put_masonry(scene, &plan);
    put_missing(scene, &plan);
    put_required(scene, &plan);
    put_hearth(scene, &plan);
    put_insert(scene, &plan);
    dimension_firebox(scene, &plan);
    dimension_hearth(scene, &plan);
    dimension_insert(scene, &plan);
    return true;
}
