/* SPDX-License-Identifier: MIT */
/*
 * The shape of the rows that the files of standards are made of.
 */
#ifndef INGLE_STANDARDS_RULE_H
#define INGLE_STANDARDS_RULE_H

#include "formulas/formula.h"
#include "measure/units.h"
#include "standards/matters.h"
#include "standards/readings.h"

#include <ingle/standards.h>

enum { RULE_CONDITIONS = 10 };

/* The value of `ONE_OF` is a sum of `CHOICE_BIT`s. */
enum condition_test { IS = 1, IS_NOT, AT_LEAST, MORE_THAN, AT_MOST, LESS_THAN, ONE_OF };

#define CHOICE_BIT(choice) (INT64_C(1) << (choice))

/* What a condition comes to of something that is not known: it is asked for unless this is said. */
enum when_unknown { ASKED_FOR, OR_UNKNOWN, IF_KNOWN };

/* Something that has to be so for a rule to apply. */
struct condition {
    enum quantity_id quantity;
    enum condition_test test; /* 0 ends the list */
    int64_t value;
    enum when_unknown unknown;
};

/* What a test says of a quantity and a value, between blanks: ` is more than `. */
const char *condition_words(enum condition_test test);

/*
 * Rules of which an exception may take the place: where all of the exception are met, the ordinary
 * ones do not apply; where all ordinary ones are met, or none asks anything, the exception is not
 * needed.
 */
enum rule_role { PLAIN, ORDINARY, EXCEPTION };

struct ingle_rule {
    enum matter_id matter;
    const char *section;
    ingle_basis basis;
    ingle_relation relation;
    const struct formula *formula;
    enum quantity_id inputs[INPUTS]; /* what the requirement is computed from; 0 ends the list */
    int64_t numbers[FORMULA_NUMBERS]; /* as printed, in the order of the formula's names */
    struct condition when[RULE_CONDITIONS];
    const struct ingle_table *table; /* for formulas that look something up */
    struct followed follows;   /* the row is only for this way of reading; {0} for all */
    const char *reading; /* how the text is read where it leaves that open */
    enum rule_role role;
    uint8_t exception; /* to which of its standard's exceptions its role belongs, from 0 */
    uint16_t since; /* first edition with this row; 0 for the first known */
    uint16_t until; /* last edition with this row; 0 for the newest known */
};

/* Whether the section says that its edition is not known: a year beside it would contradict it. */
bool rule_is_undated(const struct ingle_rule *rule);

struct ingle_standard {
    const char *id;
    const char *title;
    const char *place;
    const char *note;
    enum unit_place unit; /* of length, as printed */
    int32_t edition;
    const struct ingle_rule *rules; /* of all editions */
    size_t rule_count;
    const struct liner *liners;
    size_t liner_count;
    const struct material *materials;
    size_t material_count;
};

/* Whether a row belongs to an edition. */
bool rule_in_edition(const struct ingle_rule *rule, int32_t edition);

/* The index of the first of some standards that is NULL; their count if none is. */
size_t standards_first_null(const ingle_standard *const *standards, size_t count);

/* Says that the standard of an index is none. */
struct text;
void standards_tell_null(struct text *text, size_t index);

/* Whether one of some standards has a rule of this id; offers `nearest` those that they have. */
struct nearest;
bool standards_have_rule(const ingle_standard *const *standards, size_t count, const char *id,
                         struct nearest *nearest);

/* The standards of a publication's file. */
struct publication {
    const struct ingle_standard *editions;
    size_t count;
};

#define COUNT_OF(array) (sizeof(array) / sizeof(array)[0])

#endif
