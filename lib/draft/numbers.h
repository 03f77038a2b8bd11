/* SPDX-License-Identifier: MIT */
/*
 * The numbers of numbers.def, by name.
 */
#ifndef INGLE_DRAFT_NUMBERS_H
#define INGLE_DRAFT_NUMBERS_H

#include <ingle/draft.h>

#include <stdbool.h>

enum number_id {
#define NUMBER(name, id, group, basis, value, unit, label, source, ...) NUMBER_##name,
#include "draft/numbers.def"
#undef NUMBER
    NUMBER_COUNT,
    NUMBER_NONE = NUMBER_COUNT
};

struct ingle_draft_number {
    const char *id;
    const char *group;
    const char *label;
    const char *unit;
    const char *source;
    const char *sign; /* in equations; NULL where it is written out */
    double value;
    double least;
    double most;
    bool ranged;
    ingle_basis basis; /* or one of those below */
};

/* What is known in another way than from a publication. */
enum { BASIS_DERIVED = -1, BASIS_ASSUMPTION = -2 };

extern const struct ingle_draft_number draft_numbers[NUMBER_COUNT];

/* The value of a number. */
double number_of(enum number_id id);

#endif
