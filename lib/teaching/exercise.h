/* SPDX-License-Identifier: MIT */
/*
 * An exercise as the files of this room see it.
 */
#ifndef INGLE_TEACHING_EXERCISE_H
#define INGLE_TEACHING_EXERCISE_H

#include "base/random.h"
#include "survey/quantity.h"

#include <ingle/exercise.h>

enum { EXERCISE_GIVEN = 48, EXERCISE_QUESTIONS = 12, EXERCISE_LEVELS = 4 };

/* Not every standard has a rule on every topic: so many fireplaces are tried. */
enum { EXERCISE_TURNS = 256 };

/* A measurement that the problem tells, in a unit of its own. */
struct given {
    enum quantity_id quantity;
    size_t item;
    const ingle_unit *unit; /* NULL for a choice */
};

struct ingle_exercise {
    ingle_allocator allocator;
    ingle_survey *survey;
    ingle_report *report;
    uint64_t seed;
    int32_t level;
    struct given given[EXERCISE_GIVEN];
    size_t given_count;
    size_t questions[EXERCISE_QUESTIONS]; /* findings of the report */
    size_t question_count;
};

/* While a fireplace is made up. */
struct inventing {
    ingle_exercise *exercise;
    struct random random;
    bool metric;
    bool mixed; /* measurements come in units of both kinds */
    ingle_status status;
};

/* Makes up the measurements of a fireplace for a level; `turn` tries another one. */
ingle_status exercise_invent(ingle_exercise *exercise, bool metric, uint32_t turn);

#endif
