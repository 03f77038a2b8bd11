/* SPDX-License-Identifier: MIT */
/*
 * The ways in which publications can be read, by number.
 */
#ifndef INGLE_STANDARDS_READINGS_H
#define INGLE_STANDARDS_READINGS_H

#include <stdint.h>

/* OPTION_HEARTH_STEPS_ROUND_UP is its number among the options of its reading. */
#define READING(name, id, label) enum option_##name {
#define OPTION(reading, name, id, label) OPTION_##reading##_##name,
#define READING_ENDS(name) OPTION_##name##_COUNT };
#include "standards/readings.def"
#undef READING
#undef OPTION
#undef READING_ENDS

/* 0 is no reading at all, so that most rows need not name one. */
enum reading_id {
    READING_NONE,
#define READING(name, id, label) READING_##name,
#define OPTION(reading, name, id, label)
#define READING_ENDS(name)
#include "standards/readings.def"
#undef READING
#undef OPTION
#undef READING_ENDS
    READING_END
};

/* The reading and the option that a row belongs to. */
struct followed {
    uint8_t reading; /* enum reading_id */
    uint8_t option;
};

#define FOLLOWS(reading, option) {READING_##reading, OPTION_##reading##_##option}

#endif
