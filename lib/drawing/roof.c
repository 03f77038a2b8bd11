/* SPDX-License-Identifier: MIT */
#include "drawing/scene.h"

ingle_status draw_roof(struct scene *scene, ingle_write write, void *context)
{
    (void)scene;
    (void)write;
    (void)context;
    return INGLE_ERROR_NOTHING_MEASURED;
}
