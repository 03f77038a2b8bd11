/* SPDX-License-Identifier: MIT */
/*
 * The sheet around a drawing: its border, its title, the legend, and what was left out.
 */
#include "drawing/scene.h"

#include <string.h>

/* A4, lying. */
enum { SHEET_WIDTH = 297000, SHEET_HEIGHT = 210000, BORDER = 7000 };

enum { BLOCK_TOP = 193000, NOTES_TOP = 172000, LINE_SPACING = 4500 };

static const char *title_of(const struct scene *scene, ingle_view view)
{
    return scene->sheet.title != NULL ? scene->sheet.title : ingle_view_name(view);
}

/* ---- the title block ------------------------------------------------------------------------ */

static void put_field(struct svg *svg, int32_t left, const char *name, const char *text)
{
    svg_line(svg, LINE_THIN, (struct point){left, BLOCK_TOP},
             (struct point){left, SHEET_HEIGHT - BORDER});
    svg_text(svg, (struct point){left + 2000, BLOCK_TOP + 3800}, ANCHOR_START, 1800, name);
    svg_text(svg, (struct point){left + 2000, BLOCK_TOP + 8300}, ANCHOR_START, TEXT_SMALL, text);
}

static void put_block(struct scene *scene, ingle_view view)
{
    struct svg *svg = &scene->svg;
    char scale[24];
    struct text text = text_start(scale, sizeof scale);
    text_add(&text, "1:");
    text_add_unsigned(&text, (uint64_t)scene->scale);
    svg_line(svg, LINE_OUTLINE, (struct point){BORDER, BLOCK_TOP},
             (struct point){SHEET_WIDTH - BORDER, BLOCK_TOP});
    put_field(svg, BORDER, "view", ingle_view_name(view));
    put_field(svg, 52000, "scale, on A4", scale);
    put_field(svg, 82000, "dimensions in", ingle_unit_label(scene->sheet.unit));
    put_field(svg, 122000, "what it is",
              "A picture of the findings, to scale. What has no dimension was not measured.");
}

/* ---- the legend ----------------------------------------------------------------------------- */

static const char *const area_words[AREA_COUNT] = {
    [AREA_MATERIAL] = "masonry, cut",
    [AREA_PRESENT] = "there",
    [AREA_MISSING] = "required and missing",
    [AREA_FORBIDDEN] = "nothing that can burn here",
    [AREA_LIMITED] = "projection limited here",
};

static int32_t put_entry(struct svg *svg, int32_t left, enum line line, enum area area,
                         const char *words)
{
    struct point corner = {left, NOTES_TOP};
    svg_rectangle(svg, line, area, corner, 8000, 4000);
    svg_text(svg, (struct point){left + 9500, NOTES_TOP + 3200}, ANCHOR_START, TEXT_SMALL, words);
    return left + 9500 + svg_text_width(words, TEXT_SMALL) + 5000;
}

static void put_legend(struct scene *scene)
{
    int32_t left = FIELD_LEFT;
    svg_group(&scene->svg, "legend", NULL);
    for (int area = AREA_MATERIAL; area < AREA_COUNT; area++) {
        if (scene->used[area] && area_words[area] != NULL) {
            left = put_entry(&scene->svg, left, LINE_THIN, (enum area)area, area_words[area]);
        }
    }
    if (scene->required) {
        put_entry(&scene->svg, left, LINE_REQUIRED, AREA_NONE, "required");
    }
    svg_group_end(&scene->svg);
}

/* ---- what was left out ---------------------------------------------------------------------- */

/* The bytes of a text that go on a line of some width, up to the end of a word. */
static size_t line_length(const char *text, int32_t width)
{
    char start[SCENE_NOTE];
    size_t fits = 0, length = strlen(text);
    for (size_t end = strcspn(text, " "); end <= length; end += 1 + strcspn(text + end + 1, " ")) {
        memcpy(start, text, end);
        start[end] = '\0';
        if (svg_text_width(start, TEXT_SMALL) > width && fits > 0) {
            return fits;
        }
        fits = end;
        if (end == length) {
            break;
        }
    }
    return fits;
}

static void put_left_out(struct scene *scene)
{
    enum { LINES_MOST = 3 };
    char note[SCENE_NOTE], line[SCENE_NOTE];
    struct text text = text_start(note, sizeof note);
    if (scene->left_out[0] == '\0') {
        return;
    }
    text_add(&text, "Left out, since it was not measured: ");
    text_add(&text, scene->left_out);
    text_add(&text, ".");
    const char *rest = note;
    svg_group(&scene->svg, "left-out", NULL);
    for (int32_t i = 0; i < LINES_MOST && *rest != '\0'; i++) {
        size_t length = line_length(rest, FIELD_RIGHT - FIELD_LEFT);
        memcpy(line, rest, length);
        line[length] = '\0';
        svg_text(&scene->svg,
                 (struct point){FIELD_LEFT, NOTES_TOP + 8500 + i * LINE_SPACING}, ANCHOR_START,
                 TEXT_SMALL, line);
        rest += length + (rest[length] == ' ');
    }
    svg_group_end(&scene->svg);
}

/* ---- the document --------------------------------------------------------------------------- */

ingle_status scene_start(struct scene *scene, ingle_view view, ingle_write write, void *context)
{
    ingle_status status = svg_start(&scene->svg, write, context, SHEET_WIDTH, SHEET_HEIGHT,
                                    title_of(scene, view), ingle_view_text(view));
    if (status != INGLE_OK) {
        return status;
    }
    svg_rectangle(&scene->svg, LINE_OUTLINE, AREA_NONE, (struct point){BORDER, BORDER},
                  SHEET_WIDTH - 2 * BORDER, SHEET_HEIGHT - 2 * BORDER);
    svg_text(&scene->svg, (struct point){FIELD_LEFT, 16000}, ANCHOR_START, TEXT_TITLE,
             title_of(scene, view));
    put_block(scene, view);
    return INGLE_OK;
}

ingle_status scene_end(struct scene *scene)
{
    put_legend(scene);
    put_left_out(scene);
    return svg_end(&scene->svg);
}
