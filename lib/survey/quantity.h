/* SPDX-License-Identifier: MIT */
/*
 * The catalogue of quantities as the other rooms see it: by number.
 */
#ifndef INGLE_SURVEY_QUANTITY_H
#define INGLE_SURVEY_QUANTITY_H

#include <ingle/survey.h>

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* Each list of choices is an enum: CHOICE_FLUE_SHAPE_ROUND is its index among the shapes. */
#define CHOICES(list) enum choice_##list {
#define CHOICE(list, name, ...) CHOICE_##list##_##name,
#define CHOICES_END(list) CHOICE_##list##_COUNT };
#define GROUP(name, id, ...)
#define QUANTITY(group, name, id, dimension, ...)
#include "survey/quantities.def"
#undef CHOICES
#undef CHOICE
#undef CHOICES_END
#undef GROUP
#undef QUANTITY

#define CHOICES(list)
#define CHOICE(list, name, ...)
#define CHOICES_END(list)

enum group_id {
#define GROUP(name, id, ...) GROUP_##name,
#define QUANTITY(group, name, id, dimension, ...)
#include "survey/quantities.def"
#undef GROUP
#undef QUANTITY
    GROUP_COUNT
};

/*
 * QUANTITY_OPENING_WIDTH is its place in the catalogue, GROUP_OPENING_FIRST that of the group's
 * first; the second enumerator of a group takes its step back.
 */
enum quantity_id {
#define GROUP(name, id, ...) \
    GROUP_##name##_FIRST, GROUP_##name##_STEP_BACK = GROUP_##name##_FIRST - 1,
#define QUANTITY(group, name, id, dimension, ...) QUANTITY_##group##_##name,
#include "survey/quantities.def"
#undef GROUP
#undef QUANTITY
    QUANTITY_COUNT,
    QUANTITY_NONE = QUANTITY_COUNT
};

#undef CHOICES
#undef CHOICE
#undef CHOICES_END

enum stop_id {
#define STOP(name, id, label) STOP_##name,
#include "survey/visit.def"
#undef STOP
    STOP_COUNT
};

/*
 * What is judged by being seen has words of its own. `when` says that it is so, as a clause that
 * follows "we saw that"; `asks` is what a rule asks that wants just this, after "the rule asks",
 * and `bars` what one asks that wants anything else, with what it then leaves unjudged.
 */
struct choice {
    const char *id;
    const char *label;
    const char *when; /* NULL where no rule judges the list */
    const char *asks; /* NULL where no rule wants this choice */
    const char *bars; /* NULL where no rule forbids this choice */
};

struct group {
    const char *id;
    const char *how; /* how one that repeats is recorded as a whole */
    uint16_t first;  /* of its quantities in the catalogue */
    uint8_t stop;    /* enum stop_id: where on a visit it is measured */
    bool repeats;
};

struct ingle_quantity {
    const char *id; /* the group's, a dot, and its own name */
    const char *label;
    const char *how;
    const struct choice *choices;
    const char *increase; /* how a remedy begins that makes it larger; NULL if none does */
    const char *decrease; /* the same for smaller */
    /* Of a number on a scale, which counts nothing: what lies below and above a limit, and why. */
    const char *below;
    const char *above;
    const char *when[2];  /* a flag's clauses for no and yes, as of struct choice */
    const char *asks[2];
    int64_t least;
    int64_t most;
    ingle_dimension dimension;
    ingle_scale scale;
    uint8_t group; /* enum group_id */
    uint8_t choice_count;
    bool assumes; /* whether `assumed` is taken where nothing is recorded */
    int8_t assumed;
    bool without_tape; /* a length that is read, told or gauged, not measured with the tape */
};

extern const struct ingle_quantity quantities[QUANTITY_COUNT];
extern const struct group groups[GROUP_COUNT];

enum quantity_id quantity_id(const ingle_quantity *quantity);

/* An amount of a quantity. */
ingle_amount quantity_amount(enum quantity_id id, int64_t value);

/* The group of an id, or GROUP_COUNT. */
enum group_id group_find(const char *id);

/* How many quantities a group has. */
size_t group_size(enum group_id group);

#endif
