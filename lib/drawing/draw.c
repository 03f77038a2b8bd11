/* SPDX-License-Identifier: MIT */
#include "check/report.h"
#include "drawing/scene.h"

#include <string.h>

static const struct {
    const char *name;
    const char *text;
    bool (*draw)(struct scene *scene);
} views[] = {
    [INGLE_VIEW_PLAN] = {"plan",
                         "The fireplace from above: the opening, the hearth as it is and as it is "
                         "required, and what is missing of it.",
                         draw_plan},
    [INGLE_VIEW_ELEVATION] = {"elevation",
                              "The fireplace from the room: the opening, the zones around it in "
                              "which trim is forbidden or limited, and each piece of trim.",
                              draw_elevation},
    [INGLE_VIEW_SECTION] = {"section",
                            "The fireplace cut from front to back: firebox, hearth, mantel, "
                            "throat, smoke chamber and flue.",
                            draw_section},
    [INGLE_VIEW_ROOF] = {"roof",
                         "The chimney against the roof: its height, what is required, and what "
                         "stands near it.",
                         draw_roof},
};

enum { VIEW_COUNT = sizeof views / sizeof views[0] };

size_t ingle_view_count(void)
{
    return VIEW_COUNT;
}

const char *ingle_view_name(ingle_view view)
{
    return view >= 0 && view < VIEW_COUNT ? views[view].name : NULL;
}

const char *ingle_view_text(ingle_view view)
{
    return view >= 0 && view < VIEW_COUNT ? views[view].text : NULL;
}

ingle_view ingle_view_find(const char *name)
{
    for (int32_t i = 0; name != NULL && i < VIEW_COUNT; i++) {
        if (strcmp(name, views[i].name) == 0) {
            return i;
        }
    }
    return -1;
}

ingle_status ingle_draw(const ingle_report *report, ingle_view view, const ingle_sheet *sheet,
                        ingle_write write, void *context)
{
    struct scene scene;
    if (report == NULL || report->survey == NULL || write == NULL || view < 0 ||
        view >= VIEW_COUNT) {
        return INGLE_ERROR_ARGUMENT;
    }
    memset(&scene, 0, sizeof scene);
    scene.report = report;
    scene.survey = report->survey;
    scene.into = &scene.picture;
    ingle_status status = sheet_take(&scene.sheet, sheet);
    if (status != INGLE_OK) {
        return status;
    }
    return views[view].draw(&scene) ? scene_write(&scene, view, write, context)
                                    : INGLE_ERROR_NOTHING_MEASURED;
}
