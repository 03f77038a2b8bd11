/* SPDX-License-Identifier: MIT */
#include "survey/quantity.h"

static const struct {
    const char *id;
    const char *label;
} stops[STOP_COUNT] = {
#define STOP(name, id, label) {id, label},
#include "survey/visit.def"
#undef STOP
};

size_t ingle_stop_count(void)
{
    return STOP_COUNT;
}

const char *ingle_stop_id(size_t stop)
{
    return stop < STOP_COUNT ? stops[stop].id : NULL;
}

const char *ingle_stop_label(size_t stop)
{
    return stop < STOP_COUNT ? stops[stop].label : NULL;
}

size_t ingle_quantity_stop(const ingle_quantity *quantity)
{
    return groups[quantity->group].stop;
}
