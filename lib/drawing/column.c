/* SPDX-License-Identifier: MIT */
/*
 * The column beside a drawing: the key to its areas and lines, the notes of its marks, and what was
 * left out or assumed.
 */
#include "drawing/scene.h"

#include <string.h>

enum { LINE_SPACING = 4300, ENTRY = 6500, SAMPLE_WIDTH = 14500, SAMPLE_HEIGHT = 4000, HANG = 5000 };

struct column {
    struct svg *svg;
    int32_t left, width;
    int32_t y; /* of the next line's top */
    int32_t bottom;
};

/* ---- texts ---------------------------------------------------------------------------------- */

static bool has_line(const struct column *column)
{
    return column->y + LINE_SPACING <= column->bottom;
}

/* One line, which ends in an ellipsis where it is the last there is room for and more follows. */
static void put_line(struct column *column, int32_t indent, const char *text, size_t length,
                     bool more)
{
    char line[SCENE_NOTE];
    struct text copy = text_start(line, sizeof line);
    text_add_bytes(&copy, text, length);
    for (char *blank = strchr(line, SVG_NO_BREAK); blank != NULL;
         blank = strchr(blank, SVG_NO_BREAK)) {
        *blank = ' ';
    }
    column->y += LINE_SPACING;
    if (more && !has_line(column)) {
        text_add(&copy, " …");
        svg_fit_text(line, sizeof line, column->width - indent, TEXT_SMALL);
    }
    svg_text(column->svg, (struct point){column->left + indent, column->y - 1000}, ANCHOR_START,
             TEXT_SMALL, line);
}

/* A text in as many lines as it takes; those after the first are indented. */
static void put_text(struct column *column, const char *text, int32_t hang)
{
    int32_t indent = 0;
    while (*text != '\0' && has_line(column)) {
        size_t length = svg_line_length(text, column->width - indent, TEXT_SMALL);
        const char *rest = text + length + (text[length] == ' ');
        put_line(column, indent, text, length, *rest != '\0');
        text = rest;
        indent = hang;
    }
}

static void put_heading(struct column *column, const char *words)
{
    column->y += 2000;
    if (has_line(column)) {
        put_line(column, 0, words, strlen(words), false);
        svg_line(column->svg, LINE_THIN, (struct point){column->left, column->y},
                 (struct point){column->left + column->width, column->y});
        column->y += 1000;
    }
}

/* ---- the key -------------------------------------------------------------------------------- */

static const char *const area_words[AREA_COUNT] = {
    [AREA_MATERIAL] = "masonry, cut",
    [AREA_PRESENT] = "as it is",
    [AREA_MISSING] = "required and missing",
    [AREA_FORBIDDEN] = "nothing that can burn",
    [AREA_LIMITED] = "projection is limited",
    [AREA_STONE] = "trim that cannot burn",
    [AREA_WOOD] = "trim that can burn",
    [AREA_FAILING] = "trim that does not meet a rule",
    [AREA_PART] = "part of the building nearby",
};

static const char *const line_words[LINE_COUNT] = {
    [LINE_HIDDEN] = "hidden, or for orientation",
    [LINE_CENTRE] = "axis",
    [LINE_LIMIT] = "edge of what a rule looks at",
    [LINE_REQUIRED] = "required",
};

static void put_entry_words(struct column *column, const char *words)
{
    svg_text(column->svg,
             (struct point){column->left + SAMPLE_WIDTH + 2000, column->y + SAMPLE_HEIGHT - 700},
             ANCHOR_START, TEXT_SMALL, words);
    column->y += ENTRY;
}

static void put_key(struct column *column, const struct scene *scene)
{
    for (int area = 0; area < AREA_COUNT; area++) {
        if (scene->used_areas[area] && area_words[area] != NULL) {
            svg_rectangle(column->svg, LINE_THIN, (enum area)area,
                          (struct point){column->left, column->y}, SAMPLE_WIDTH, SAMPLE_HEIGHT);
            put_entry_words(column, area_words[area]);
        }
    }
    for (int line = 0; line < LINE_COUNT; line++) {
        if (scene->used_lines[line] && line_words[line] != NULL) {
            int32_t y = column->y + SAMPLE_HEIGHT / 2;
            svg_line(column->svg, (enum line)line, (struct point){column->left, y},
                     (struct point){column->left + SAMPLE_WIDTH, y});
            put_entry_words(column, line_words[line]);
        }
    }
}

/* ---- the notes ------------------------------------------------------------------------------ */

static void put_list(struct column *column, const char *heading, const char *list)
{
    if (list[0] != '\0') {
        put_heading(column, heading);
        put_text(column, list, 0);
    }
}

void scene_put_column(struct scene *scene, int32_t left, int32_t top, int32_t width,
                      int32_t bottom)
{
    struct column column = {&scene->svg, left, width, top, bottom};
    svg_group(&scene->svg, "key", NULL);
    put_key(&column, scene);
    svg_group_end(&scene->svg);
    svg_group(&scene->svg, "notes", NULL);
    if (scene->note_count > 0) {
        put_heading(&column, "Marks");
    }
    for (size_t i = 0; i < scene->note_count; i++) {
        put_text(&column, scene->notes[i], HANG);
        column.y += 800;
    }
    put_list(&column, "Not measured, so left out", scene->left_out);
    put_list(&column, "Not measured, drawn for orientation", scene->assumed);
    svg_group_end(&scene->svg);
}
