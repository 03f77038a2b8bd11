/* SPDX-License-Identifier: MIT */
#include "uncertainty/tape.h"

#include "measure/amounts.h"

#define MICROMETRES(n) (INT64_C(1000) * (n))
#define MILS(n) (INT64_C(25400) * (n)) /* thousandths of an inch */
#define YARD FEET(3)

/* ---- so much, and so much for each unit that is begun --------------------------------------- */

/*
 * Directive 2014/32/EU, Annex X (in Great Britain SI 2016/1153, Schedule 1I): ±(a + b L) mm, L
 * rounded up to the next whole metre, and c more where the length starts at an end face or hook.
 * SI 1986/1682, regulation 24: 0.6 mm and 0.4 mm for each metre, or 0.025 in and 0.015 in for each
 * yard, rounded up to whole yards; metres, of which it is not stated here, are rounded up alike.
 */
static const struct by_unit {
    int64_t fixed;
    int64_t for_each;
    int64_t unit;
    int64_t hook;
    const char *source;
} by_unit[CHOICE_TAPE_CLASS_COUNT] = {
    [CHOICE_TAPE_CLASS_CLASS_I] = {MICROMETRES(100), MICROMETRES(100), METRES(1), MICROMETRES(100),
                                   "Directive 2014/32/EU, Annex X, class I"},
    [CHOICE_TAPE_CLASS_CLASS_II] = {MICROMETRES(300), MICROMETRES(200), METRES(1),
                                    MICROMETRES(200), "Directive 2014/32/EU, Annex X, class II"},
    [CHOICE_TAPE_CLASS_CLASS_III] = {MICROMETRES(600), MICROMETRES(400), METRES(1),
                                     MICROMETRES(300), "Directive 2014/32/EU, Annex X, class III"},
    [CHOICE_TAPE_CLASS_UK_METRIC] = {MICROMETRES(600), MICROMETRES(400), METRES(1), 0,
                                     "UK SI 1986/1682, regulation 24"},
    [CHOICE_TAPE_CLASS_UK_IMPERIAL] = {MILS(25), MILS(15), YARD, 0,
                                       "UK SI 1986/1682, regulation 24"},
};

static void error_by_unit(const struct by_unit *row, bool at_hook, int64_t length,
                          struct tape_error *error)
{
    int64_t units = length / row->unit + (length % row->unit != 0);
    int64_t hook = at_hook ? row->hook : 0;
    *error = (struct tape_error){.whole = row->fixed + units * row->for_each + hook,
                                 .fixed = row->fixed,
                                 .for_each = row->for_each,
                                 .unit = row->unit,
                                 .units = units,
                                 .hook = hook,
                                 .source = row->source};
}

/* ---- a table by length ---------------------------------------------------------------------- */

/*
 * NIST Handbook 44, section 5.52, metal tapes, maintenance and acceptance. Known from a report that
 * cites it. Between two rows (more than 6 ft and less than 7 ft) the larger tolerance is taken.
 */
static const struct interval {
    int64_t up_to;
    int64_t tolerance;
} intervals[] = {
    {FEET(6), INCHES_AND(0, 1, 32)},  {FEET(30), INCHES_AND(0, 1, 16)},
    {FEET(55), INCHES_AND(0, 1, 8)},  {FEET(80), INCHES_AND(0, 3, 16)},
    {FEET(100), INCHES_AND(0, 1, 4)},
};

static bool error_by_table(int64_t length, struct tape_error *error)
{
    for (size_t i = 0; i < sizeof intervals / sizeof intervals[0]; i++) {
        if (length <= intervals[i].up_to) {
            *error = (struct tape_error){.whole = intervals[i].tolerance,
                                         .fixed = intervals[i].tolerance,
                                         .source = "NIST Handbook 44, section 5.52"};
            return true;
        }
    }
    return false;
}

bool tape_error(const struct tape *tape, int64_t length, struct tape_error *error)
{
    if (tape->tape_class == CHOICE_TAPE_CLASS_HANDBOOK_44) {
        return error_by_table(length, error);
    }
    error_by_unit(&by_unit[tape->tape_class], tape->at_hook, length, error);
    return true;
}
