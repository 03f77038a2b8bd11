/* SPDX-License-Identifier: MIT */
/*
 * The sheet around a drawing: its border, its title and title block, and the picture in its field.
 */
#include "drawing/scene.h"
#include "survey/survey.h"

#include <string.h>

/* A4, lying. */
enum { SHEET_WIDTH = 297000, SHEET_HEIGHT = 210000, BORDER = 7000 };

enum { BLOCK_TOP = 192000, COLUMN_LEFT = 212000, COLUMN_RIGHT = 287000, PADDING = 3000 };

/* The field that is the picture's, below the title. */
enum { FIELD_LEFT = BORDER + PADDING, FIELD_TOP = 22000, DETAIL_WIDTH = 80000 };

/* Those of ISO 5455, and between them, as it leaves free, a few that are in use. */
static const struct drawing_scale iso_scales[] = {
    {1, NULL},   {2, NULL},   {5, NULL},   {10, NULL},  {15, NULL},  {20, NULL},   {25, NULL},
    {50, NULL},  {75, NULL},  {100, NULL}, {150, NULL}, {200, NULL}, {500, NULL},  {1000, NULL},
    {2000, NULL}, {5000, NULL}, {0, NULL}};

/* Those that rules divided for the trade carry. */
static const struct drawing_scale trade_scales[] = {{1, "full size"},
                                                    {2, "6 in to the foot"},
                                                    {4, "3 in to the foot"},
                                                    {8, "1 1/2 in to the foot"},
                                                    {12, "1 in to the foot"},
                                                    {16, "3/4 in to the foot"},
                                                    {24, "1/2 in to the foot"},
                                                    {32, "3/8 in to the foot"},
                                                    {48, "1/4 in to the foot"},
                                                    {64, "3/16 in to the foot"},
                                                    {96, "1/8 in to the foot"},
                                                    {192, "1/16 in to the foot"},
                                                    {384, "1/32 in to the foot"},
                                                    {600, "1 in to 50 ft"},
                                                    {1200, "1 in to 100 ft"},
                                                    {2400, "1 in to 200 ft"},
                                                    {0, NULL}};

static const struct drawing_scale *scales_of(const struct scene *scene)
{
    const char *unit = ingle_unit_id(scene->sheet.unit);
    return strcmp(unit, "in") == 0 || strcmp(unit, "ft") == 0 ? trade_scales : iso_scales;
}

static void add_scale(struct text *text, const struct scene *scene, const struct picture *picture)
{
    const struct drawing_scale *scale = scales_of(scene);
    while (scale->scale != 0 && scale->scale != picture->scale) {
        scale++;
    }
    text_add(text, "1:");
    text_add_unsigned(text, (uint64_t)picture->scale);
    if (scale->trade != NULL) {
        text_add(text, ", ");
        text_add(text, scale->trade);
    }
}

/* ---- the title block ------------------------------------------------------------------------ */

static void put_field(struct svg *svg, int32_t left, const char *name, const char *text)
{
    svg_line(svg, LINE_THIN, (struct point){left, BLOCK_TOP},
             (struct point){left, SHEET_HEIGHT - BORDER});
    svg_text(svg, (struct point){left + 2000, BLOCK_TOP + 3800}, ANCHOR_START, 1800, name);
    svg_text(svg, (struct point){left + 2000, BLOCK_TOP + 8300}, ANCHOR_START, TEXT_SMALL, text);
}

static void put_scale(struct scene *scene)
{
    char words[48];
    struct text text = text_start(words, sizeof words);
    add_scale(&text, scene, &scene->picture);
    put_field(&scene->svg, 40000, "scale, on A4", words);
}

static void put_block(struct scene *scene, ingle_view view)
{
    struct svg *svg = &scene->svg;
    svg_line(svg, LINE_OUTLINE, (struct point){BORDER, BLOCK_TOP},
             (struct point){SHEET_WIDTH - BORDER, BLOCK_TOP});
    put_field(svg, BORDER, "view", ingle_view_name(view));
    put_scale(scene);
    put_field(svg, 98000, "dimensions in", ingle_unit_label(scene->sheet.unit));
    put_field(svg, 134000, "what it is",
              "A picture of the findings, to scale. What has no dimension was not measured.");
}

static void put_title(struct scene *scene, ingle_view view)
{
    enum { WIDTH = COLUMN_LEFT - FIELD_LEFT - 2 * PADDING };
    char title[SCENE_NOTE];
    struct text text = text_start(title, sizeof title);
    text_add(&text, scene->sheet.title != NULL ? scene->sheet.title : ingle_view_name(view));
    svg_fit_text(title, sizeof title, WIDTH, TEXT_TITLE);
    svg_text(&scene->svg, (struct point){FIELD_LEFT + 2000, 16000}, ANCHOR_START, TEXT_TITLE,
             title);
}

/* ---- the picture ---------------------------------------------------------------------------- */

static void put_shape(struct scene *scene, const struct picture *picture,
                      const struct shape *shape)
{
    struct point points[SHAPE_CORNERS];
    for (size_t i = 0; i < shape->count; i++) {
        points[i] = picture_point(picture, shape->corners[i]);
    }
    if (shape->open) {
        svg_polyline(&scene->svg, shape->line, points, shape->count);
    } else {
        svg_polygon(&scene->svg, shape->line, shape->area, points, shape->count);
    }
}

static const char *const told_names[] = {
    [TOLD_MEASURED] = "measured", [TOLD_DERIVED] = "derived", [TOLD_REQUIRED] = "required",
    [TOLD_ALLOWED] = "allowed",   [TOLD_ZONE] = "number",     [TOLD_REACH] = "number"};

static void put_dimension(struct scene *scene, const struct dimension *dimension)
{
    char subject[SCENE_WORDS];
    struct text text = text_start(subject, sizeof subject);
    if (dimension->rule != NULL) {
        text_add(&text, dimension->rule);
        text_add(&text, "/");
        text_add(&text, dimension->number);
    } else {
        survey_add_pointer(&text, dimension->quantity, dimension->item);
    }
    svg_amount_group(&scene->svg, told_names[dimension->told], subject, dimension->amount);
    dimension_draw(&scene->svg, dimension);
    svg_group_end(&scene->svg);
}

/* The outer dimensions first: where their lines have to cross an inner text, it covers them. */
static void put_picture(struct scene *scene, const struct picture *picture)
{
    svg_group(&scene->svg, "picture", NULL);
    for (size_t i = 0; i < picture->shape_count; i++) {
        put_shape(scene, picture, &picture->shapes[i]);
    }
    svg_group_end(&scene->svg);
    for (size_t i = picture->dimension_count; i > 0; i--) {
        put_dimension(scene, &picture->dimensions[i - 1]);
    }
    svg_group(&scene->svg, "marks", NULL);
    for (size_t i = 0; i < picture->mark_count; i++) {
        mark_draw(&scene->svg, picture, &picture->marks[i]);
    }
    svg_group_end(&scene->svg);
}

/*
 * A detail has to be larger than the picture. Where its dimensions are too many for that those of
 * the first piece stay; the notes of the marks have them all.
 */
static bool lay_out_detail(struct scene *scene, struct point corner, int32_t width, int32_t height)
{
    enum { LARGER = 2, OF_A_PIECE = 4 };
    struct picture *detail = &scene->detail;
    while (!picture_lay_out(detail, scales_of(scene), corner, width, height) ||
           (detail->dimension_count > OF_A_PIECE &&
            detail->scale * LARGER > scene->picture.scale)) {
        if (detail->dimension_count == 0) {
            return false;
        }
        detail->dimension_count--;
    }
    return true;
}

/* A detail takes the left part of the field, with its title above it. */
static bool lay_out(struct scene *scene)
{
    enum {
        WIDTH = COLUMN_LEFT - 2 * PADDING - FIELD_LEFT,
        HEIGHT = BLOCK_TOP - PADDING - FIELD_TOP,
        DETAIL_HEAD = 8000
    };
    int32_t taken = scene->detail.shape_count > 0 ? DETAIL_WIDTH + PADDING : 0;
    if (scene->picture.overfull || scene->detail.overfull) {
        return false;
    }
    return picture_lay_out(&scene->picture, scales_of(scene),
                           (struct point){FIELD_LEFT + taken, FIELD_TOP}, WIDTH - taken, HEIGHT) &&
           (taken == 0 ||
            lay_out_detail(scene, (struct point){FIELD_LEFT, FIELD_TOP + DETAIL_HEAD},
                           DETAIL_WIDTH, HEIGHT - DETAIL_HEAD));
}

static void put_detail(struct scene *scene)
{
    char words[80];
    struct text text = text_start(words, sizeof words);
    if (scene->detail.shape_count == 0) {
        return;
    }
    text_add(&text, scene->detail_title);
    text_add(&text, ", ");
    add_scale(&text, scene, &scene->detail);
    svg_text(&scene->svg, (struct point){FIELD_LEFT + 2000, FIELD_TOP + 3000}, ANCHOR_START,
             TEXT_SMALL, words);
    put_picture(scene, &scene->detail);
}

/* ---- the document --------------------------------------------------------------------------- */

ingle_status scene_write(struct scene *scene, ingle_view view, ingle_write write, void *context)
{
    struct svg *svg = &scene->svg;
    const char *title = scene->sheet.title != NULL ? scene->sheet.title : ingle_view_name(view);
    if (!lay_out(scene)) {
        return INGLE_ERROR_OVERFLOW;
    }
    ingle_status status = svg_start(svg, write, context, SHEET_WIDTH, SHEET_HEIGHT, title,
                                    ingle_view_text(view));
    if (status != INGLE_OK) {
        return status;
    }
    svg_rectangle(svg, LINE_OUTLINE, AREA_NONE, (struct point){BORDER, BORDER},
                  SHEET_WIDTH - 2 * BORDER, SHEET_HEIGHT - 2 * BORDER);
    put_title(scene, view);
    put_block(scene, view);
    put_picture(scene, &scene->picture);
    put_detail(scene);
    svg_line(svg, LINE_THIN, (struct point){COLUMN_LEFT - PADDING, BORDER},
             (struct point){COLUMN_LEFT - PADDING, BLOCK_TOP});
    scene_put_column(scene, COLUMN_LEFT, BORDER + PADDING, COLUMN_RIGHT - COLUMN_LEFT, BLOCK_TOP);
    return svg_end(svg);
}
