/* SPDX-License-Identifier: MIT */
/*
 * What all views of a fireplace share: what was measured and is required, what they put into the
 * picture, and the sheet around it.
 */
#ifndef INGLE_DRAWING_SCENE_H
#define INGLE_DRAWING_SCENE_H

#include "base/text.h"
#include "drawing/picture.h"
#include "drawing/sheet.h"

#include <ingle/draw.h>

enum { SCENE_WORDS = 160, SCENE_NOTE = 600 };

struct scene {
    const ingle_report *report;
    const ingle_survey *survey;
    ingle_sheet sheet;
    struct svg svg;
    struct picture picture, detail; /* the detail may stay empty; it has a scale of its own */
    struct picture *into;           /* which of them shapes, dimensions and marks go into */
    const char *detail_title;
    char left_out[SCENE_NOTE]; /* labels of what was not measured */
    char assumed[SCENE_NOTE];  /* what is drawn for orientation in a size nobody measured */
    char notes[MARKS_MOST + 2][SCENE_NOTE]; /* of the marks, and two more */
    size_t note_count;
    bool used_areas[AREA_COUNT]; /* what the key explains */
    bool used_lines[LINE_COUNT];
};

/* ---- what there is to draw ------------------------------------------------------------------ */

/* What was measured of a quantity; false where it was not. */
bool scene_has(const struct scene *scene, enum quantity_id quantity, size_t item, int64_t *value);

/* The same, and where it was not it is noted as left out. */
bool scene_needs(struct scene *scene, enum quantity_id quantity, size_t item, int64_t *value);

/* The same for what the rest rests on: `instead` is drawn for orientation, and it is noted. */
bool scene_takes(struct scene *scene, enum quantity_id quantity, int64_t instead, int64_t *value);

/* Notes that something is drawn in a size that nobody measured. */
void scene_assumes(struct scene *scene, const char *what);

/* What was measured, or else worked out by a finding from other measures. */
struct amount_told {
    bool known;
    enum told told;
    int64_t amount;
};

struct amount_told scene_measured(const struct scene *scene, enum quantity_id quantity,
                                  size_t item);

/* The most demanding amount of all findings on a quantity that ask for at least, or at most. */
struct amount_told scene_demand(const struct scene *scene, enum quantity_id quantity, size_t item,
                                ingle_relation relation);

/*
 * One of the numbers of a rule, by its name, as printed, by the first standard whose rule has such
 * a number and applies; false if there is none, or if an amendment changed it.
 */
bool scene_number(const struct scene *scene, const char *rule, const char *name, int64_t *value);

/* The gravest verdict on an item of a repeating group. */
ingle_verdict scene_verdict(const struct scene *scene, enum group_id group, size_t item);

/* ---- the picture ---------------------------------------------------------------------------- */

struct extent {
    int64_t left, top, right, bottom;
};

/* A shape whose corners are still to come; the key will explain its line and area. */
struct shape *scene_shape(struct scene *scene, enum line line, enum area area);

/* A rectangle; nothing where it has no size. */
void scene_rectangle(struct scene *scene, enum line line, enum area area, int64_t left,
                     int64_t top, int64_t right, int64_t bottom);
void scene_line(struct scene *scene, enum line line, int64_t x1, int64_t y1, int64_t x2,
                int64_t y2);

/* A dimension of an amount; nothing where it is not known. */
void scene_dimension(struct scene *scene, enum side side, enum quantity_id quantity, size_t item,
                     struct amount_told amount, struct place from, struct place to);

/* A dimension of a number of a rule. */
void scene_dimension_number(struct scene *scene, enum side side, enum told told, const char *rule,
                            const char *number, int64_t amount, struct place from,
                            struct place to);

/* How an amount is written on the drawing. */
void scene_words(const struct scene *scene, int64_t length, char *words, size_t size);

/* ---- items with a mark ---------------------------------------------------------------------- */

/* Starts the note of an item, which the mark of the same number names; NULL if all are taken. */
char *scene_mark(struct scene *scene, enum group_id group, size_t item, struct place target);

/* Adds to a note: `before`, an amount where it is known, `after`. */
void note_add(const struct scene *scene, char *note, const char *before, struct amount_told amount,
              const char *after);

/* Ends the note with what the verdicts on the item come to. */
void note_end(const struct scene *scene, char *note, enum group_id group, size_t item);

/* Notes how many items there was no room for. */
void scene_not_drawn(struct scene *scene, const char *what, size_t count);

/* ---- the sheet ------------------------------------------------------------------------------ */

/* Lays the picture out and writes the whole document. */
ingle_status scene_write(struct scene *scene, ingle_view view, ingle_write write, void *context);

/* The column of the key and the notes. */
void scene_put_column(struct scene *scene, int32_t left, int32_t top, int32_t width,
                      int32_t bottom);

/* ---- the views ------------------------------------------------------------------------------ */

/* Each fills the picture; false where nothing it could show was measured. */
bool draw_plan(struct scene *scene);
bool draw_elevation(struct scene *scene);
bool draw_section(struct scene *scene);
bool draw_roof(struct scene *scene);

static inline int64_t larger(int64_t one, int64_t other)
{
    return one > other ? one : other;
}

static inline int64_t smaller(int64_t one, int64_t other)
{
    return one < other ? one : other;
}

#endif
