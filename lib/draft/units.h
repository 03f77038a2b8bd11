/* SPDX-License-Identifier: MIT */
/*
 * What the figures count, and the units in which it is read and shown.
 */
#ifndef INGLE_DRAFT_UNITS_H
#define INGLE_DRAFT_UNITS_H

#include "base/text.h"

#include <ingle/measure.h>

enum kind {
    KIND_PLAIN,
    KIND_SHARE,
    KIND_LOSS,
    KIND_WIDTH,  /* across a flue */
    KIND_HEIGHT, /* up a flue */
    KIND_FLUE_AREA,
    KIND_OPENING_AREA,
    KIND_SPEED,
    KIND_TEMPERATURE,
    KIND_RISE,
    KIND_PRESSURE,
    KIND_AIR_PRESSURE,
    KIND_DENSITY,
    KIND_MASS_FLOW,
    KIND_COUNT
};

/* How an amount in SI units is shown: amount / size + offset, with so many places. */
struct shown_unit {
    const char *name; /* NULL without one */
    double size;
    double offset;
    unsigned places;
};

enum unit_system { SYSTEM_SI, SYSTEM_INCH, SYSTEM_METRIC, SYSTEM_COUNT };

/* The units that a format stands for; inches for NULL. Refuses what no format is. */
ingle_status system_of(const ingle_format *format, enum unit_system *system);

const struct shown_unit *unit_shown(enum kind kind, enum unit_system system);

/* An amount in SI units as that unit has it. */
double amount_shown(double amount, const struct shown_unit *unit);

/* An amount and its unit, `0.787 ft/s`; in SI units with six digits, for what is put in. */
void text_add_shown(struct text *text, enum kind kind, enum unit_system system, double amount);

/* Reads an amount of a kind into SI units; the rest is as ingle_amount_parse() has it. */
ingle_status amount_read(enum kind kind, const char *text, size_t length, double *amount,
                         size_t *position);

#endif
