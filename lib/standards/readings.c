/* SPDX-License-Identifier: MIT */
#include "standards/readings.h"

#include <ingle/standards.h>

#include <string.h>

struct option {
    const char *id;
    const char *label;
};

#define READING(name, id, label) static const struct option options_##name[] = {
#define OPTION(reading, name, id, label) {id, label},
#define READING_ENDS(name) };
#include "standards/readings.def"
#undef READING
#undef OPTION
#undef READING_ENDS

struct ingle_reading {
    const char *id;
    const char *label;
    const struct option *options;
    size_t option_count;
};

static const struct ingle_reading readings[] = {
#define READING(name, id, label) {id, label, options_##name, OPTION_##name##_COUNT},
#define OPTION(reading, name, id, label)
#define READING_ENDS(name)
#include "standards/readings.def"
};

enum { READING_COUNT = sizeof readings / sizeof readings[0] };

size_t ingle_reading_count(void)
{
    return READING_COUNT;
}

const ingle_reading *ingle_reading_at(size_t index)
{
    return index < READING_COUNT ? &readings[index] : NULL;
}

const char *ingle_reading_id(const ingle_reading *reading)
{
    return reading->id;
}

const char *ingle_reading_label(const ingle_reading *reading)
{
    return reading->label;
}

size_t ingle_reading_option_count(const ingle_reading *reading)
{
    return reading->option_count;
}

const char *ingle_reading_option_at(const ingle_reading *reading, size_t index)
{
    return index < reading->option_count ? reading->options[index].id : NULL;
}

const char *ingle_reading_option_label(const ingle_reading *reading, size_t index)
{
    return index < reading->option_count ? reading->options[index].label : NULL;
}
