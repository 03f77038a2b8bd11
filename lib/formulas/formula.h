/* SPDX-License-Identifier: MIT */
/*
 * A formula: how a rule computes what is required. It names no standard and holds no number of one.
 *
 * To add one, write its descriptor in the file of its topic and declare it below.
 */
#ifndef INGLE_FORMULAS_FORMULA_H
#define INGLE_FORMULAS_FORMULA_H

#include "formulas/calculation.h"

enum { FORMULA_NUMBERS = 6, FORMULA_DRIVERS = 3, BREAKPOINTS = 96 };

/* The dimension of a number that is the judged quantity's own. */
#define AS_JUDGED ((ingle_dimension)0)

/* Stand in a driver for the rule's inputs. */
#define THE_INPUT QUANTITY_NONE
#define SECOND_INPUT ((enum quantity_id)(QUANTITY_NONE + 1))
#define THIRD_INPUT ((enum quantity_id)(QUANTITY_NONE + 2))

struct formula_number {
    const char *name; /* by which an amendment sets it; NULL ends the list */
    ingle_dimension dimension;
    ingle_scale scale;
};

/*
 * Which way the requirement goes when a quantity grows: +1 up, -1 down, 0 either way. Quantities
 * that others follow from need not be listed: the derivations know them.
 */
struct driver {
    enum quantity_id quantity;
    int8_t direction;
};

struct formula {
    const char *name;
    const char *text; /* what it does, in a sentence that uses the numbers' names */
    struct formula_number numbers[FORMULA_NUMBERS];
    struct driver drivers[FORMULA_DRIVERS];
    uint8_t driver_count;

    /* Computes what is required, on the strict side to one base unit. */
    enum outcome (*required)(struct calculation *calculation, int64_t *required);

    /*
     * For a quantity whose direction is 0: where along it the requirement may jump, all else as the
     * calculation has it. Writes at most BREAKPOINTS values and returns how many.
     */
    size_t (*breakpoints)(struct calculation *calculation, enum quantity_id quantity,
                          int64_t *values);
};

size_t formula_number_count(const struct formula *formula);

/* An amount of one of a formula's numbers, for a rule that judges a quantity. */
ingle_amount formula_number_amount(const struct formula *formula, unsigned number,
                                   enum quantity_id judged, int64_t value);

/* ---- the formulas, by their topic's file ---------------------------------------------------- */

/* general.c */
extern const struct formula formula_fixed;
extern const struct formula formula_share;
extern const struct formula formula_share_or_least;
extern const struct formula formula_reduced_share;
extern const struct formula formula_input_plus;
extern const struct formula formula_input_plus_or_least;
extern const struct formula formula_input_or_most;
extern const struct formula formula_within;
extern const struct formula formula_above_step;
extern const struct formula formula_within_scope;
/* two_inputs.c */
extern const struct formula formula_input_and_share;
extern const struct formula formula_lesser_share;
/* not_printed.c */
extern const struct formula formula_not_printed;
/* switched.c */
extern const struct formula formula_with_or_without;
/* observed.c */
extern const struct formula formula_observed;
/* listing.c */
extern const struct formula formula_by_listing;
extern const struct formula formula_listing_or_usual;
extern const struct formula formula_listing_with_usual;
extern const struct formula formula_listing_about_body;

/*
 * Whether a listing's figure, where it is recorded, can be the appliance's own: what carries no
 * label has none. Chimneys, pipes, wall assemblies and gas logs are listed apart from it.
 */
bool listing_speaks(const struct calculation *calculation, enum quantity_id listing);

/* table.c */
extern const struct formula formula_table_cell;
extern const struct formula formula_table_column;
/* hearth.c */
extern const struct formula formula_by_opening_area;
extern const struct formula formula_by_firebox_raise;
extern const struct formula formula_raised_above_begun_steps;
extern const struct formula formula_raised_above_whole_steps;
extern const struct formula formula_raised_from_begun_steps;
extern const struct formula formula_raised_from_whole_steps;
/* air.c */
extern const struct formula formula_area_by_heat;
extern const struct formula formula_volume_by_heat;
extern const struct formula formula_circle;
extern const struct formula formula_area_above_heat;
extern const struct formula formula_flow_by_area;
/* outlet.c */
extern const struct formula formula_within_by_heat;
/* smoke_chamber.c */
extern const struct formula formula_by_smoke_chamber_walls;
/* trim.c */
extern const struct formula formula_projection_by_distance;
extern const struct formula formula_limit_and_projection;
/* chimney.c */
extern const struct formula formula_rise_by_slope;
/* flue.c */
extern const struct formula formula_flue_share;
/* flue_minimum.c */
extern const struct formula formula_share_by_height;
extern const struct formula formula_share_off_height;
extern const struct formula formula_share_with_least;
extern const struct formula formula_area_for_each;

#endif
