/* SPDX-License-Identifier: MIT */
/*
 * What all views of a fireplace share: what was measured and is required, the scale, and the sheet
 * around the drawing.
 */
#ifndef INGLE_DRAWING_SCENE_H
#define INGLE_DRAWING_SCENE_H

#include "base/text.h"
#include "drawing/sheet.h"
#include "drawing/svg.h"
#include "survey/quantity.h"

#include <ingle/draw.h>

enum { SCENE_WORDS = 160, SCENE_NOTE = 600 };

/* The field of the sheet that is the drawing's, in thousandths of a millimetre. */
enum { FIELD_LEFT = 12000, FIELD_TOP = 24000, FIELD_RIGHT = 285000, FIELD_BOTTOM = 168000 };

/*
 * In the thing's own space lengths are nanometres, x to the right and y downwards on the sheet;
 * `origin` is where its (0, 0) lies on paper.
 */
struct scene {
    const ingle_report *report;
    const ingle_survey *survey;
    ingle_sheet sheet;
    struct svg svg;
    int32_t scale; /* 1 : scale */
    struct point origin;
    char left_out[SCENE_NOTE]; /* labels of what was not measured */
    bool used[AREA_COUNT];     /* the areas that the legend explains */
    bool required;             /* whether it explains required outlines */
};

/* ---- what there is to draw ------------------------------------------------------------------ */

/* What was measured of a quantity; false, and noted as left out, where it was not. */
bool scene_needs(struct scene *scene, enum quantity_id quantity, size_t item, int64_t *value);

/* The same without a note: for what is only drawn where it is there. */
bool scene_has(const struct scene *scene, enum quantity_id quantity, size_t item, int64_t *value);

/*
 * The most demanding finding of a rule on a quantity, by any of the standards; NULL where none
 * tells what is required.
 */
const ingle_finding *scene_finding(const struct scene *scene, const char *rule,
                                   enum quantity_id quantity, size_t item);
bool scene_required(const struct scene *scene, const char *rule, enum quantity_id quantity,
                    size_t item, int64_t *required);

/* One of the numbers of a finding's rule, by its name, as printed; false if it has none. */
bool scene_number(const ingle_finding *finding, const char *name, int64_t *value);

/* ---- to scale ------------------------------------------------------------------------------- */

/* What lies in the thing's space. */
struct extent {
    int64_t left, top, right, bottom;
};

void extent_add(struct extent *extent, int64_t x, int64_t y);

/*
 * Chooses the largest scale of ISO 5455 at which the extent fits the field with `margin` of paper
 * left all around for dimensions, and puts it in the middle. False if none is small enough.
 */
bool scene_fit(struct scene *scene, const struct extent *extent, int32_t margin);

int32_t scene_length(const struct scene *scene, int64_t length);
struct point scene_place(const struct scene *scene, int64_t x, int64_t y);

/* ---- drawing -------------------------------------------------------------------------------- */

/* An area with its edge, between two corners of the thing's space. */
void scene_rectangle(struct scene *scene, enum line line, enum area area, int64_t left,
                     int64_t top, int64_t right, int64_t bottom);
void scene_area(struct scene *scene, enum area area, int64_t left, int64_t top, int64_t right,
                int64_t bottom);
void scene_line(struct scene *scene, enum line line, int64_t x1, int64_t y1, int64_t x2,
                int64_t y2);

/* How an amount is written on the drawing. */
void scene_words(const struct scene *scene, int64_t length, char *words, size_t size);

/* What a dimension tells of its amount. */
enum told {
    TOLD_MEASURED,
    TOLD_REQUIRED
};

/*
 * A dimension of a measured or required amount, between two places of the thing's space; `at` is on
 * paper. The text goes beyond `to` where it does not fit between.
 */
void scene_dimension_level(struct scene *scene, enum told told, enum quantity_id quantity,
                           size_t item, int64_t amount, struct point from, struct point to,
                           int32_t at);
void scene_dimension_upright(struct scene *scene, enum told told, enum quantity_id quantity,
                             size_t item, int64_t amount, struct point from, struct point to,
                             int32_t at);

/* ---- the sheet ------------------------------------------------------------------------------ */

/* Starts and ends the document; between them a view draws. */
ingle_status scene_start(struct scene *scene, ingle_view view, ingle_write write, void *context);
ingle_status scene_end(struct scene *scene);

/* ---- the views ------------------------------------------------------------------------------ */

/*
 * Each sets the scale, then draws between scene_start() and scene_end(), which it calls itself.
 * INGLE_ERROR_NOTHING_MEASURED or INGLE_ERROR_OVERFLOW without having written anything.
 */
ingle_status draw_plan(struct scene *scene, ingle_write write, void *context);
ingle_status draw_elevation(struct scene *scene, ingle_write write, void *context);
ingle_status draw_section(struct scene *scene, ingle_write write, void *context);
ingle_status draw_roof(struct scene *scene, ingle_write write, void *context);

#endif
