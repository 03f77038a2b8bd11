/* SPDX-License-Identifier: MIT */
/*
 * The fireplace from above. The middle of the opening, in the plane of the masonry's face, is the
 * origin; the room lies below it on the sheet.
 */
#include "drawing/scene.h"

#include "measure/amounts.h"

enum { MARGIN = 34000, ROW = 9000 };

/* Masonry beside and behind the firebox, which is drawn for orientation alone. */
#define JAMB INCHES(8)

/* A hearth extension, as it is and as required; 0 where it is not known. */
struct side {
    enum quantity_id quantity;
    const char *rule;
    int64_t there, required;
};

struct plan {
    int64_t half; /* of the opening's width */
    int64_t depth;
    struct side front, left, right;
    int64_t insert; /* how far an insert stands out */
    bool has_depth, has_hearth;
};

/* ---- what there is -------------------------------------------------------------------------- */

static void take_side(struct scene *scene, struct side *side, enum quantity_id quantity,
                      const char *rule)
{
    *side = (struct side){quantity, rule, 0, 0};
    scene_needs(scene, quantity, 0, &side->there);
    scene_required(scene, rule, quantity, 0, &side->required);
}

static bool take(struct scene *scene, struct plan *plan)
{
    int64_t width;
    if (!scene_has(scene, QUANTITY_OPENING_WIDTH, 0, &width)) {
        return false;
    }
    *plan = (struct plan){.half = width / 2};
    plan->has_depth = scene_needs(scene, QUANTITY_FIREBOX_DEPTH, 0, &plan->depth);
    take_side(scene, &plan->front, QUANTITY_HEARTH_FRONT, "hearth-front");
    take_side(scene, &plan->left, QUANTITY_HEARTH_LEFT, "hearth-side");
    take_side(scene, &plan->right, QUANTITY_HEARTH_RIGHT, "hearth-side");
    scene_has(scene, QUANTITY_INSERT_PROJECTION, 0, &plan->insert);
    plan->has_hearth = plan->front.there > 0;
    return true;
}

static int64_t larger(int64_t one, int64_t other)
{
    return one > other ? one : other;
}

static struct extent extent_of(const struct plan *plan)
{
    struct extent extent = {0, 0, 0, 0};
    int64_t left = larger(larger(plan->left.there, plan->left.required), JAMB);
    int64_t right = larger(larger(plan->right.there, plan->right.required), JAMB);
    extent_add(&extent, -plan->half - left, -plan->depth - (plan->has_depth ? JAMB : 0));
    extent_add(&extent, plan->half + right, larger(plan->front.there, plan->front.required));
    extent_add(&extent, 0, plan->insert);
    return extent;
}

/* ---- the parts ------------------------------------------------------------------------------ */

static void put_masonry(struct scene *scene, const struct plan *plan)
{
    int64_t back = plan->has_depth ? plan->depth : JAMB;
    scene_rectangle(scene, LINE_OUTLINE, AREA_MATERIAL, -plan->half - JAMB, -back, -plan->half, 0);
    scene_rectangle(scene, LINE_OUTLINE, AREA_MATERIAL, plan->half, -back, plan->half + JAMB, 0);
    if (plan->has_depth) {
        scene_rectangle(scene, LINE_OUTLINE, AREA_MATERIAL, -plan->half - JAMB, -back - JAMB,
                        plan->half + JAMB, -back);
    }
    scene_line(scene, LINE_THIN, -plan->half, 0, plan->half, 0);
}

static void put_hearth(struct scene *scene, const struct plan *plan)
{
    if (plan->has_hearth) {
        scene_rectangle(scene, LINE_OUTLINE, AREA_PRESENT, -plan->half - plan->left.there, 0,
                        plan->half + plan->right.there, plan->front.there);
    }
}

/* What is required and not there: a strip in front and one at each side. */
static void put_missing(struct scene *scene, const struct plan *plan)
{
    int64_t left = -plan->half - plan->left.required;
    int64_t right = plan->half + plan->right.required;
    int64_t front = plan->front.required;
    int64_t there = plan->front.there < front ? plan->front.there : front;
    if (front == 0) {
        return;
    }
    scene_area(scene, AREA_MISSING, left, there, right, front);
    scene_area(scene, AREA_MISSING, left, 0, -plan->half - plan->left.there, there);
    scene_area(scene, AREA_MISSING, plan->half + plan->right.there, 0, right, there);
    scene_rectangle(scene, LINE_REQUIRED, AREA_NONE, left, 0, right, front);
}

static void put_insert(struct scene *scene, const struct plan *plan)
{
    if (plan->insert > 0) {
        scene_rectangle(scene, LINE_OUTLINE, AREA_PAPER, -plan->half * 4 / 5, 0,
                        plan->half * 4 / 5, plan->insert);
    }
}

/* ---- dimensions ----------------------------------------------------------------------------- */

/* One of the sides, below the hearth: what is there in one row, what is required in the next. */
static void dimension_side(struct scene *scene, const struct plan *plan, const struct side *side,
                           int32_t sign, int32_t at)
{
    int64_t front = plan->front.there;
    int64_t outer = larger(front, plan->front.required);
    struct point edge = scene_place(scene, sign * plan->half, front);
    if (side->there > 0) {
        scene_dimension_level(scene, TOLD_MEASURED, side->quantity, 0, side->there, edge,
                              scene_place(scene, sign * (plan->half + side->there), front), at);
    }
    if (side->required > 0) {
        edge = scene_place(scene, sign * plan->half, outer);
        scene_dimension_level(scene, TOLD_REQUIRED, side->quantity, 0, side->required, edge,
                              scene_place(scene, sign * (plan->half + side->required), outer),
                              at + ROW);
    }
}

static void dimension_front(struct scene *scene, const struct plan *plan)
{
    int64_t right = plan->half + larger(plan->right.there, plan->right.required);
    int32_t at = scene_place(scene, right, 0).x + ROW;
    if (plan->front.there > 0) {
        int64_t x = plan->half + plan->right.there;
        scene_dimension_upright(scene, TOLD_MEASURED, plan->front.quantity, 0, plan->front.there,
                                scene_place(scene, x, 0),
                                scene_place(scene, x, plan->front.there), at);
    }
    if (plan->front.required > 0) {
        int64_t x = plan->half + plan->right.required;
        scene_dimension_upright(scene, TOLD_REQUIRED, plan->front.quantity, 0,
                                plan->front.required, scene_place(scene, x, 0),
                                scene_place(scene, x, plan->front.required), at + ROW);
    }
}

static void dimension_firebox(struct scene *scene, const struct plan *plan)
{
    int64_t back = plan->has_depth ? -plan->depth - JAMB : -JAMB;
    int32_t above = scene_place(scene, 0, back).y - ROW;
    scene_dimension_level(scene, TOLD_MEASURED, QUANTITY_OPENING_WIDTH, 0, 2 * plan->half,
                          scene_place(scene, -plan->half, 0), scene_place(scene, plan->half, 0),
                          above);
    if (plan->has_depth) {
        int32_t at = scene_place(scene, -plan->half - JAMB, 0).x - ROW;
        scene_dimension_upright(scene, TOLD_MEASURED, QUANTITY_FIREBOX_DEPTH, 0, plan->depth,
                                scene_place(scene, -plan->half, 0),
                                scene_place(scene, -plan->half, -plan->depth), at);
    }
}

static void dimension_insert(struct scene *scene, const struct plan *plan)
{
    if (plan->insert > 0) {
        int32_t at = scene_place(scene, 0, 0).x;
        scene_dimension_upright(scene, TOLD_MEASURED, QUANTITY_INSERT_PROJECTION, 0, plan->insert,
                                scene_place(scene, 0, 0), scene_place(scene, 0, plan->insert), at);
    }
}

static void put_dimensions(struct scene *scene, const struct plan *plan)
{
    int64_t front = larger(plan->front.there, plan->front.required);
    int32_t below = scene_place(scene, 0, front).y + ROW;
    dimension_firebox(scene, plan);
    dimension_side(scene, plan, &plan->left, -1, below);
    dimension_side(scene, plan, &plan->right, 1, below);
    dimension_front(scene, plan);
    dimension_insert(scene, plan);
}

ingle_status draw_plan(struct scene *scene, ingle_write write, void *context)
{
    struct plan plan;
    if (!take(scene, &plan)) {
        return INGLE_ERROR_NOTHING_MEASURED;
    }
    struct extent extent = extent_of(&plan);
    if (!scene_fit(scene, &extent, MARGIN)) {
        return INGLE_ERROR_OVERFLOW;
    }
    ingle_status status = scene_start(scene, INGLE_VIEW_PLAN, write, context);
    if (status != INGLE_OK) {
        return status;
    }
    put_masonry(scene, &plan);
    put_hearth(scene, &plan);
    put_missing(scene, &plan);
    put_insert(scene, &plan);
    put_dimensions(scene, &plan);
    return scene_end(scene);
}
