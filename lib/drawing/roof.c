/* SPDX-License-Identifier: MIT */
/*
 * The chimney against the roof, seen along the ridge. The middle of the chimney, at the highest
 * point at which it goes through the roof, is the origin; the roof rises to the right.
 */
#include "drawing/scene.h"

#include "measure/amounts.h"

/* What is drawn for orientation where it was not measured. */
#define HALF_CHIMNEY INCHES(12)
#define USUAL_HEIGHT FEET(3)
#define USUAL_RUN FEET(6)
#define HALF_PART INCHES(6)
#define BELOW FEET(2) /* how far below the roof things are drawn */

/* Parts further away than this many times the distance that counts are not drawn. */
enum { FURTHEST = 2, DIMENSIONED_MOST = 3 };
#define FURTHEST_USUAL FEET(40)

struct roof {
    int64_t height;
    bool has_height, has_slope;
    struct amount_told required;
    int64_t slope;
    int64_t within; /* how far away parts count; 0 where no rule says */
    int64_t highest; /* of what is drawn */
};

/* A part of the building near the chimney; those of even number stand right of it. */
struct part {
    size_t item;
    int64_t way;
    struct amount_told distance, rise, above, required;
    int64_t level; /* above the roof at the chimney */
};

/* ---- what there is -------------------------------------------------------------------------- */

static bool take(struct scene *scene, struct roof *view)
{
    size_t parts = ingle_survey_item_count(scene->survey, "nearby");
    *view = (struct roof){.within = 0};
    view->has_height =
        scene_takes(scene, QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, USUAL_HEIGHT, &view->height);
    view->required = scene_demand(scene, QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, 0, INGLE_AT_LEAST);
    view->has_slope = scene_needs(scene, QUANTITY_ROOF_SLOPE, 0, &view->slope);
    scene_number(scene, "chimney-height-nearby", "within", &view->within);
    scene_assumes(scene, "width of the chimney");
    view->highest = larger(view->height, view->required.amount);
    return view->has_height || parts > 0 ||
           scene_has(scene, QUANTITY_CRICKET_HEIGHT, 0, &(int64_t){0});
}

/* How far a plane of some slope rises along a run, for the picture. */
static int64_t rise_of(int64_t run, int64_t slope)
{
    return run / 1000 * (slope / 1000000) / (INGLE_RATIO_ONE / 1000000000);
}

/* Its level: measured, or from the chimney's top, or along its slope; false if nothing tells it. */
static bool take_level(struct scene *scene, const struct roof *view, struct part *part)
{
    int64_t slope;
    part->rise = scene_measured(scene, QUANTITY_NEARBY_RISE, part->item);
    part->above = scene_measured(scene, QUANTITY_NEARBY_TOP_ABOVE, part->item);
    if (part->rise.known) {
        part->level = part->rise.amount;
    } else if (part->above.known) {
        part->level = view->height - part->above.amount;
    } else if (scene_has(scene, QUANTITY_NEARBY_SLOPE, part->item, &slope)) {
        part->level = rise_of(part->distance.amount, slope);
    } else {
        return scene_needs(scene, QUANTITY_NEARBY_RISE, part->item, &part->level);
    }
    return true;
}

static bool is_far(const struct roof *view, const struct part *part)
{
    int64_t most = view->within > 0 ? view->within * FURTHEST : FURTHEST_USUAL;
    return part->distance.amount > most || part->level > most || part->level < -most;
}

static bool take_part(struct scene *scene, const struct roof *view, size_t item,
                      struct part *part)
{
    int64_t distance;
    *part = (struct part){.item = item, .way = item % 2 == 0 ? 1 : -1};
    part->distance = scene_measured(scene, QUANTITY_NEARBY_DISTANCE, item);
    part->required = scene_demand(scene, QUANTITY_NEARBY_TOP_ABOVE, item, INGLE_AT_LEAST);
    return scene_needs(scene, QUANTITY_NEARBY_DISTANCE, item, &distance) &&
           take_level(scene, view, part);
}

/* How far to a side the roof is drawn: to the nearest part there. */
static int64_t run_of(struct scene *scene, const struct roof *view, int64_t way)
{
    size_t count = ingle_survey_item_count(scene->survey, "nearby");
    int64_t run = USUAL_RUN;
    struct part part;
    for (size_t i = 0; i < count; i++) {
        if (take_part(scene, view, i, &part) && part.way == way && !is_far(view, &part)) {
            run = smaller(run, part.distance.amount);
        }
    }
    return run;
}

/* ---- the roof and the chimney --------------------------------------------------------------- */

/* The run along which a plane of some slope rises so far, where it does within `most`. */
static int64_t run_to(int64_t rise, int64_t slope, int64_t most)
{
    int64_t whole = rise_of(most, slope);
    return whole <= rise ? most : most / 1000 * (rise / 1000) / (whole / 1000) * 1000;
}

/* On both sides of the chimney, as far as it stays near it; level where no slope was measured. */
static void put_roof(struct scene *scene, const struct roof *view)
{
    enum line line = view->has_slope ? LINE_OUTLINE : LINE_HIDDEN;
    int64_t up = run_to(larger(view->height, USUAL_HEIGHT), view->slope, run_of(scene, view, 1));
    int64_t across = run_to(BELOW, view->slope, 2 * HALF_CHIMNEY);
    int64_t down = run_to(BELOW, view->slope, run_of(scene, view, -1));
    int64_t near = rise_of(across, view->slope);
    scene_line(scene, line, HALF_CHIMNEY, 0, HALF_CHIMNEY + up, -rise_of(up, view->slope));
    scene_line(scene, line, -HALF_CHIMNEY, near, -HALF_CHIMNEY - down,
               near + rise_of(down, view->slope));
    if (!view->has_slope) {
        scene_assumes(scene, "roof, drawn level");
    }
}

static void note_slope(struct scene *scene, const struct roof *view)
{
    char words[DIMENSION_WORDS];
    ingle_amount slope = quantity_amount(QUANTITY_ROOF_SLOPE, view->slope);
    if (view->has_slope) {
        struct text text = text_start(scene->notes[scene->note_count++], SCENE_NOTE);
        ingle_amount_format(&slope, NULL, words, sizeof words, NULL);
        text_add(&text, "The roof's slope is ");
        text_add(&text, words);
    }
}

static void put_chimney(struct scene *scene, const struct roof *view)
{
    enum line line = view->has_height ? LINE_OUTLINE : LINE_HIDDEN;
    scene_rectangle(scene, line, AREA_PRESENT, -HALF_CHIMNEY, -view->height, HALF_CHIMNEY, BELOW);
    scene_line(scene, LINE_CENTRE, 0, -view->highest - INCHES(6), 0, BELOW);
    if (view->required.known) {
        scene_rectangle(scene, LINE_REQUIRED, AREA_NONE, -HALF_CHIMNEY - INCHES(2),
                        -view->required.amount, HALF_CHIMNEY + INCHES(2), 0);
    }
    if (view->has_height) {
        scene_dimension(scene, SIDE_LEFT, QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, 0,
                        scene_measured(scene, QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, 0),
                        (struct place){-HALF_CHIMNEY, 0},
                        (struct place){-HALF_CHIMNEY, -view->height});
    }
    scene_dimension(scene, SIDE_LEFT, QUANTITY_CHIMNEY_HEIGHT_ABOVE_ROOF, 0, view->required,
                    (struct place){-HALF_CHIMNEY, 0},
                    (struct place){-HALF_CHIMNEY, -view->required.amount});
}

/* What the chimney lacks to the highest top that anything requires. */
static void put_missing(struct scene *scene, const struct roof *view, int64_t top)
{
    if (view->has_height && top > view->height) {
        scene_rectangle(scene, LINE_NONE, AREA_MISSING, -HALF_CHIMNEY, -top, HALF_CHIMNEY,
                        -view->height);
    }
}

/* The cricket sheds water on the side that the roof rises to. */
static void put_cricket(struct scene *scene, const struct roof *view)
{
    struct amount_told height = scene_measured(scene, QUANTITY_CRICKET_HEIGHT, 0);
    struct amount_told asked = scene_demand(scene, QUANTITY_CRICKET_HEIGHT, 0, INGLE_AT_LEAST);
    struct place from = {HALF_CHIMNEY, 0};
    int64_t run = run_to(height.amount, view->slope, INCHES(24));
    if (!height.known) {
        return;
    }
    struct shape *shape = scene_shape(scene, LINE_OUTLINE, AREA_PART);
    shape_corner(shape, from.x, 0);
    shape_corner(shape, from.x, -height.amount);
    shape_corner(shape, from.x + run, -smaller(height.amount, rise_of(run, view->slope)));
    scene_dimension(scene, SIDE_RIGHT, QUANTITY_CRICKET_HEIGHT, 0, height, from,
                    (struct place){from.x, -height.amount});
    scene_dimension(scene, SIDE_RIGHT, QUANTITY_CRICKET_HEIGHT, 0, asked, from,
                    (struct place){from.x, -asked.amount});
}

/* ---- what stands near it -------------------------------------------------------------------- */

static void dimension_part(struct scene *scene, const struct roof *view, const struct part *part)
{
    enum side side = part->way > 0 ? SIDE_RIGHT : SIDE_LEFT;
    int64_t x = part->way * (HALF_CHIMNEY + part->distance.amount);
    int64_t level = -part->level;
    scene_dimension(scene, SIDE_BOTTOM, QUANTITY_NEARBY_DISTANCE, part->item, part->distance,
                    (struct place){part->way * HALF_CHIMNEY, BELOW}, (struct place){x, BELOW});
    scene_dimension(scene, side, QUANTITY_NEARBY_RISE, part->item, part->rise,
                    (struct place){x, 0}, (struct place){x, level});
    if (view->has_height) {
        scene_dimension(scene, side, QUANTITY_NEARBY_TOP_ABOVE, part->item, part->above,
                        (struct place){x, level}, (struct place){x, level - part->above.amount});
    }
    scene_dimension(scene, side, QUANTITY_NEARBY_TOP_ABOVE, part->item, part->required,
                    (struct place){x, level}, (struct place){x, level - part->required.amount});
}

/* The part, and over it the level that the chimney's top has to reach. */
static void put_part(struct scene *scene, const struct part *part)
{
    int64_t near = part->way * (HALF_CHIMNEY + part->distance.amount);
    int64_t far = near + part->way * 2 * HALF_PART;
    int64_t top = -part->level - part->required.amount;
    scene_rectangle(scene, LINE_OUTLINE, AREA_PART, smaller(near, far), -part->level,
                    larger(near, far), larger(BELOW, -part->level + HALF_PART));
    if (part->required.known) {
        scene_line(scene, LINE_REQUIRED, -part->way * HALF_CHIMNEY, top, far, top);
    }
}

static void note_part(struct scene *scene, char *note, const struct part *part)
{
    struct amount_told none = {.known = false};
    note_add(scene, note, ": ", part->distance, " away");
    note_add(scene, note, ", ", part->rise, " above the roof at the chimney");
    note_add(scene, note, "; the chimney's top is ", part->above.amount < 0 ? none : part->above,
             " above it");
    note_add(scene, note, ", where ", part->required, " is required");
    note_end(scene, note, GROUP_NEARBY, part->item);
}

static int64_t put_parts(struct scene *scene, struct roof *view)
{
    size_t count = ingle_survey_item_count(scene->survey, "nearby"), over = 0, drawn = 0;
    int64_t top = view->required.amount;
    struct part part;
    for (size_t i = 0; i < count; i++) {
        if (!take_part(scene, view, i, &part)) {
            continue;
        }
        int64_t x = part.way * (HALF_CHIMNEY + part.distance.amount + HALF_PART);
        char *note = is_far(view, &part)
                         ? NULL
                         : scene_mark(scene, GROUP_NEARBY, i, (struct place){x, -part.level});
        if (note == NULL) {
            over++;
            continue;
        }
        note_part(scene, note, &part);
        put_part(scene, &part);
        view->highest = larger(view->highest, part.level + part.required.amount);
        top = part.required.known ? larger(top, part.level + part.required.amount) : top;
        if (drawn++ < DIMENSIONED_MOST) {
            dimension_part(scene, view, &part);
        }
    }
    scene_assumes(scene, count > over ? "width of the parts nearby" : "width of the chimney");
    scene_not_drawn(scene, " more nearby, too many or too far away to be drawn", over);
    return top;
}

/* How far from the chimney, level, parts count. */
static void put_reach(struct scene *scene, const struct roof *view)
{
    int64_t x = HALF_CHIMNEY + view->within, top = -view->highest - INCHES(12);
    if (view->within == 0) {
        return;
    }
    if (ingle_survey_item_count(scene->survey, "nearby") > 1) {
        scene_line(scene, LINE_LIMIT, -x, top, -x, BELOW);
    }
    scene_line(scene, LINE_LIMIT, x, top, x, BELOW);
    scene_dimension_number(scene, SIDE_BOTTOM, TOLD_REACH, "chimney-height-nearby", "within",
                           view->within, (struct place){HALF_CHIMNEY, BELOW},
                           (struct place){x, BELOW});
}

bool draw_roof(struct scene *scene)
{
    struct roof view;
    if (!take(scene, &view)) {
        return false;
    }
    note_slope(scene, &view);
    put_roof(scene, &view);
    put_cricket(scene, &view);
    int64_t top = put_parts(scene, &view);
    put_chimney(scene, &view);
    put_missing(scene, &view, top);
    put_reach(scene, &view);
    return true;
}
