/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Drawings to scale of what was surveyed and what the report requires, as SVG that reads in black
 * and white and prints on A4.
 */
#ifndef INGLE_DRAW_H
#define INGLE_DRAW_H

#include <ingle/api.h>
#include <ingle/check.h>
#include <ingle/page.h>
#include <ingle/plot.h>

#ifdef __cplusplus
extern "C" {
#endif

/** From where a fireplace is drawn. */
typedef int32_t ingle_view;

enum {
    /** From above: the opening, the hearth as it is and as required, what is missing. */
    INGLE_VIEW_PLAN = 0,
    /** From the room: the opening, the zones around it and each piece of trim. */
    INGLE_VIEW_ELEVATION = 1,
    /** Cut from front to back: firebox, hearth, mantel, throat, smoke chamber, flue, insert. */
    INGLE_VIEW_SECTION = 2,
    /** The chimney against the roof and what stands near it. */
    INGLE_VIEW_ROOF = 3
};

/** How many views there are; they count from 0. */
INGLE_API size_t ingle_view_count(void);

/** The name of a view: `plan`; NULL for a number that is none. */
INGLE_API const char *ingle_view_name(ingle_view view);

/** What a view shows, in a sentence; NULL for a number that is none. */
INGLE_API const char *ingle_view_text(ingle_view view);

/** The view of a name; -1 when there is none. */
INGLE_API ingle_view ingle_view_find(const char *name);

/**
 * Draws a view of a survey with what its report requires.
 *
 * A part that was not measured is left out, and the drawing says so. Where several standards
 * require something, the most demanding is drawn. Each dimension stands in a group that carries, as
 * `data-subject` and `data-value`, the JSON pointer of its quantity and the amount in nanometres;
 * its `data-name` is `measured`, `derived`, `required` or `allowed`. Where a dimension is a number
 * of a rule (`number`), its subject is the rule's id and the number's name:
 * `trim-projection/within`. What is only drawn for orientation has no dimension, and is listed.
 *
 * @param report a report on a survey
 * @param view from where
 * @param sheet how it looks; NULL for inches
 * @param write receives the SVG document
 * @param context handed to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO, INGLE_ERROR_ARGUMENT, INGLE_ERROR_NOTHING_MEASURED if what the
 *          view rests on was not measured, INGLE_ERROR_OVERFLOW if it is too large to be drawn,
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_draw(const ingle_report *report, ingle_view view,
                                  const ingle_sheet *sheet, ingle_write write, void *context);

#ifdef __cplusplus
}
#endif

#endif
