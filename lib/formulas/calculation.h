/* SPDX-License-Identifier: MIT */
/*
 * One calculation: where a formula gets its amounts from and where its steps go.
 *
 * A formula asks for quantities by name. What it gets may be what was recorded, what is assumed,
 * what follows from other quantities, or a value on trial: a corner of the tolerances, a remedy
 * that is being sought. It cannot tell, so it cannot treat them differently.
 */
#ifndef INGLE_FORMULAS_CALCULATION_H
#define INGLE_FORMULAS_CALCULATION_H

#include "base/wide.h"
#include "formulas/steps.h"
#include "survey/survey.h"

/* How a calculation, or a part of it, ended. */
enum outcome {
    OUTCOME_DONE,
    OUTCOME_MISSING,      /* something was not recorded; `missing` says what */
    OUTCOME_UNLIMITED,    /* the rule sets no limit here */
    OUTCOME_OUTSIDE,      /* the publication prints no value for this */
    OUTCOME_LISTING,      /* the appliance's listing decides, and it is not recorded */
    OUTCOME_OVERFLOW,     /* the amounts are too large to be exact; `at_fault` may say which */
    OUTCOME_CONTRADICTION /* two things recorded cannot both be so: `at_fault` and `against` */
};

/* A row of a standard's liner tables. */
struct liner {
    const char *table;
    enum choice_FLUE_LINER liner;
    int64_t width; /* nominal; the inside diameter of a round one */
    int64_t depth; /* nominal; 0 for a round one */
    int64_t net_area;
    bool long_inside; /* its inside reaches the aspect ratio that its nominal size does not */
};

/* What a standard says of one inch of a material, where the product's own data are not known. */
struct material {
    enum choice_LAYER_MATERIAL material;
    int64_t r_per_inch;
    const char *source; /* what the working says of where it is from */
};

enum { TRIALS = 8, MISSING = 4, INPUTS = 3 };

/* How measured has to stand to required; the numbers are those of ingle_relation. */
enum relation {
    RELATION_AT_LEAST = 1,
    RELATION_AT_MOST,
    RELATION_IS,
    RELATION_IS_NOT,
    RELATION_LESS_THAN
};

struct trial {
    enum quantity_id quantity;
    int64_t value;
};

struct calculation {
    /* Given. */
    const ingle_survey *survey;
    size_t item; /* of the repeating group that is judged */
    const struct liner *liners;
    size_t liner_count;
    const struct material *materials;
    size_t material_count;
    const int64_t *numbers; /* of the rule, as amended */
    const struct formula *formula;
    enum quantity_id judged;
    enum quantity_id inputs[INPUTS]; /* what the requirement is computed from; QUANTITY_NONE ends */
    enum relation relation;
    const struct ingle_table *table; /* for formulas that look something up */
    uint8_t reading; /* which reading to follow, from 0 */
    struct step_list *steps; /* NULL to record none */
    struct trial trials[TRIALS];
    uint8_t trial_count;
    int8_t layers_side; /* which end of their tolerances layers are at: -1 least R, +1 most R */
    enum quantity_id masked; /* left out of what was recorded; QUANTITY_NONE for nothing */

    /* The state of the calculation. */
    enum rounding rounding; /* the strict side of what is being computed */
    ingle_scale area_scale; /* how areas are shown in the steps */

    /* What came out beside the result. */
    enum quantity_id missing[MISSING];
    uint8_t missing_count;
    enum quantity_id at_fault; /* what contradicts, or is too large; QUANTITY_NONE if nothing */
    enum quantity_id against;  /* of a contradiction, the other side */
    uint8_t reading_count;
    const char *reading_text; /* the reading followed, where there are several; else NULL */
    bool by_listing; /* what is required is what a listing says */
    bool has_usual;
    int64_t usual; /* what is usual, where a listing decides that is not recorded */
};

/* Empties what a calculation holds of a run before, trials apart. */
void calculation_restart(struct calculation *calculation);

/* Puts a value on trial in place of what was recorded. */
void calculation_try(struct calculation *calculation, enum quantity_id quantity, int64_t value);

bool calculation_tries(const struct calculation *calculation, enum quantity_id quantity);

/* What is on trial, recorded or assumed for a quantity; false where there is none. */
bool calculation_recorded(const struct calculation *calculation, enum quantity_id quantity,
                          int64_t *value);

/* The same, or else what follows from other quantities; notes what is missing. */
enum outcome calculation_quantity(struct calculation *calculation, enum quantity_id quantity,
                                  int64_t *value);

/* Notes that a quantity is missing, once. */
enum outcome calculation_miss(struct calculation *calculation, enum quantity_id quantity);

/* ---- operands and steps --------------------------------------------------------------------- */

struct operand operand_quantity(const struct calculation *calculation, enum quantity_id quantity,
                                int64_t value);
struct operand operand_number(const struct calculation *calculation, unsigned number);
struct operand operand_amount(const char *name, ingle_amount amount);

/*
 * Records a step, given as the fields of a struct ingle_step, if steps are recorded; if not,
 * nothing of it is even made.
 */
#define RECORD_STEP(calculation, ...)                                                    \
    do {                                                                                 \
        if ((calculation)->steps != NULL) {                                              \
            step_list_add((calculation)->steps, &(struct ingle_step){__VA_ARGS__});      \
        }                                                                                \
    } while (0)

/* An amount of the judged quantity's kind. */
ingle_amount calculation_judged_amount(const struct calculation *calculation, int64_t value);

#endif
