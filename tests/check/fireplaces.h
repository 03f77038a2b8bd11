/* SPDX-License-Identifier: MIT */
/* What the tests of this room share: surveyed fireplaces. */
#ifndef TESTS_CHECK_FIREPLACES_H
#define TESTS_CHECK_FIREPLACES_H

#include "../memory/counted.h"

#include <ingle/ingle.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

/* ---- surveys -------------------------------------------------------------------------------- */

/* Path, text and tolerance; a NULL path ends a list. */
struct entry {
    const char *path;
    const char *text;
    const char *tolerance;
};

static inline void record_entries(ingle_survey *survey, const struct entry *entries)
{
    for (; entries->path != NULL; entries++) {
        ingle_status status =
            ingle_survey_record(survey, entries->path, entries->text, entries->tolerance);
        if (status < 0) {
            print_error("%s: %s\n", entries->path, ingle_survey_error_text(survey));
        }
        assert_true(status >= 0);
    }
}

/*
 * A fireplace that meets every rule of the residential code that it can meet, most of them at their
 * very limit: R1001.6 to R1001.11 and R1003.15.1. Its flue is a 13x13 liner, 127 in2 by Table
 * R1003.14(2); its opening is 864 in2, so a tenth of it is less.
 */
static const struct entry at_the_limits[] = {
    {"appliance.kind", "masonry-fireplace", NULL},
    {"opening.width", "36 in", NULL},
    {"opening.height", "24 in", NULL},
    {"firebox.depth", "20 in", NULL},
    {"throat.height", "8 in", NULL},
    {"throat.above-lintel", "8 in", NULL},
    {"throat.depth", "4 in", NULL},
    {"throat.width", "32 in", NULL},
    {"damper.area", "127 in2", NULL},
    {"lintel.left", "4 in", NULL},
    {"lintel.right", "4 in", NULL},
    {"smoke-chamber.height", "36 in", NULL},
    {"smoke-chamber.walls", "smooth", NULL},
    {"smoke-chamber.slope", "45 deg", NULL},
    {"smoke-chamber.area", "127 in2", NULL},
    {"hearth.front", "20 in", NULL},
    {"hearth.left", "12 in", NULL},
    {"hearth.right", "12 in", NULL},
    {"hearth.thickness", "4 in", NULL},
    {"hearth.extension-thickness", "2 in", NULL},
    {"flue.liner", "13x13", NULL},
    {"firebox.lining", "firebrick", NULL},
    {"firebox.wall-thickness", "8 in", NULL},
    {"firebox.lining-thickness", "2 in", NULL},
    {"firebox.joint-width", "1/4 in", NULL},
    {"fireplace.front-clearance", "2 in", NULL},
    {"fireplace.side-clearance", "2 in", NULL},
    {"fireplace.back-clearance", "4 in", NULL},
    {"damper.height", "8 in", NULL},
    {"damper.state", "working", NULL},
    {"damper.ferrous", "yes", NULL},
    {"damper.from-room", "yes", NULL},
    {"lintel.noncombustible", "yes", NULL},
    {"hearth.support-noncombustible", "yes", NULL},
    {"hearth.form-left", "no", NULL},
    {"fireplace.space-fill", "empty", NULL},
    {"chimney.space-fill", "empty", NULL},
    {"chimney.cap", "complete", NULL},
    {"chimney.liner-from-smoke-chamber", "yes", NULL},
    {"chimney.liner-past-walls", "yes", NULL},
    {"chimney.liner-space-vents", "no", NULL},
    {"flue.liner-thickness", "5/8 in", NULL},
    {"flue.liner-gap", "5/8 in", NULL},
    {"smoke-chamber.wall-thickness", "8 in", NULL},
    {"smoke-chamber.parged", "yes", NULL},
    {"footing.thickness", "12 in", NULL},
    {"footing.projection", "6 in", NULL},
    {"footing.frost-depth", "42 in", NULL},
    {"footing.depth", "42 in", NULL},
    {"chimney.height-above-roof", "3 ft", NULL},
    {"chimney.wall-nominal", "4 in", NULL},
    {"chimney.wall-solid", "yes", NULL},
    {"chimney.width", "30 in", NULL},
    {"chimney.clearance", "2 in", NULL},
    {"flue.lining", "sound", NULL},
    {"flue.slope", "30 deg", NULL},
    {"flue.obstructed", "no", NULL},
    {"creosote.kind", "none", NULL},
    {"alarms.co-near-bedrooms", "yes", NULL},
    {"air.duct-state", "connected", NULL},
    {"air.area", "6 in2", NULL},
    {"air.intake-place", "outdoors", NULL},
    {"air.intake-above-firebox", "no", NULL},
    {"air.screen-mesh", "1/4 in", NULL},
    {"air.duct-listed", "yes", NULL},
    {"air.outlet-place", "firebox", NULL},
    {"air.outlet-closable", "yes", NULL},
    {"air.outlet-embers", "no", NULL},
    {NULL, NULL, NULL},
};

static inline void survey_at_the_limits(ingle_survey *survey)
{
    record_entries(survey, at_the_limits);
    assert_int_equal(ingle_survey_add_item(survey, "trim", "mantel shelf", NULL), INGLE_OK);
    static const struct entry trim[] = {{"trim[0].distance", "8 in", NULL},
                                        {"trim[0].projection", "1 in", NULL},
                                        {NULL, NULL, NULL}};
    record_entries(survey, trim);
    assert_int_equal(ingle_survey_add_item(survey, "nearby", "ridge", NULL), INGLE_OK);
    static const struct entry nearby[] = {{"nearby[0].distance", "10 ft", NULL},
                                          {"nearby[0].rise", "1 ft", NULL},
                                          {NULL, NULL, NULL}};
    record_entries(survey, nearby);
}

#endif
