/* SPDX-License-Identifier: MIT */
/*
 * What a tape may be off at a length, by its class: the maximum permissible error.
 */
#ifndef INGLE_UNCERTAINTY_TAPE_H
#define INGLE_UNCERTAINTY_TAPE_H

#include "survey/quantity.h"

/* A tape as a survey names it. */
struct tape {
    enum choice_TAPE_CLASS tape_class;
    bool at_hook;
    int64_t graduation;
    int64_t irregularity; /* of what was measured; 0 for none */
};

/* The maximum permissible error at a length, in nanometres, and what it is put together from. */
struct tape_error {
    int64_t whole;     /* half-width */
    int64_t fixed;     /* whatever the length */
    int64_t for_each;  /* each unit of length that is begun */
    int64_t unit;      /* that unit: the metre or the yard; 0 where a table gives the whole */
    int64_t units;     /* how many are begun */
    int64_t hook;      /* on top where the length starts at the hook or end face */
    const char *source;
};

/* False where nothing is published for a length like this. */
bool tape_error(const struct tape *tape, int64_t length, struct tape_error *error);

#endif
