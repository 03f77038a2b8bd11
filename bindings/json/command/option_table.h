/* SPDX-License-Identifier: MIT */
/*
 * The verbs and options of `ingle`, each once: reading and help both take them from here.
 */
#ifndef INGLE_JSON_OPTION_TABLE_H
#define INGLE_JSON_OPTION_TABLE_H

#include <stdbool.h>
#include <stddef.h>

enum command_verb {
    VERB_CHECK,
    VERB_EXPLAIN,
    VERB_ASSESS,
    VERB_DRAW,
    VERB_SOLVE,
    VERB_SWEEP,
    VERB_COMPARE,
    VERB_WORKSHEET,
    VERB_EXERCISE,
    VERB_DRAFT,
    VERB_LIST,
    VERB_SCHEMA,
    VERB_NONE, /* the command without a verb */
    VERB_COUNT
};

/* One for each name, whichever verbs it belongs to. */
enum option_id {
    OPTION_LINES,
    OPTION_STANDARD,
    OPTION_AMENDMENTS,
    OPTION_READING,
    OPTION_BASIS,
    OPTION_ALL,
    OPTION_NO_WORKING,
    OPTION_UNIT,
    OPTION_FAIL_ON,
    OPTION_UNBUFFERED,
    OPTION_QUANTITY,
    OPTION_FROM,
    OPTION_TO,
    OPTION_STEP,
    OPTION_WITH,
    OPTION_WITH_FROM,
    OPTION_WITH_TO,
    OPTION_WITH_STEP,
    OPTION_RULE,
    OPTION_STRICT,
    OPTION_FORM,
    OPTION_LEAST,
    OPTION_VIEW,
    OPTION_APPLIANCE,
    OPTION_FUEL,
    OPTION_SEED,
    OPTION_LEVEL,
    OPTION_PART,
    OPTION_FORMAT,
    OPTION_WIDTH,
    /* In the order of ingle_draft_figure. */
    OPTION_OPENING_AREA,
    OPTION_FLUE_AREA,
    OPTION_HYDRAULIC_DIAMETER,
    OPTION_HEIGHT,
    OPTION_RISE,
    OPTION_OUTDOOR_TEMPERATURE,
    OPTION_ROOM_TEMPERATURE,
    OPTION_ROOM_PRESSURE,
    OPTION_AIR_PRESSURE,
    OPTION_INLET_LOSS,
    OPTION_FITTING_LOSS,
    OPTION_CAP_LOSS,
    OPTION_FRICTION_FACTOR,
    OPTION_CRITERION,
    OPTION_THROAT_AREA,
    OPTION_INLET,
    OPTION_PROBABILITY,
    OPTION_DECISION,
    OPTION_GUARD_BAND,
    OPTION_MONTE_CARLO,
    OPTION_SEPARATE_TAPES,
    OPTION_HELP,
    OPTION_VERSION,
    OPTION_COUNT
};

enum option_argument {
    ARGUMENT_NONE,
    ARGUMENT_STANDARD,
    ARGUMENT_READING,
    ARGUMENT_FILE,
    ARGUMENT_UNIT,
    ARGUMENT_GRAVITY,
    ARGUMENT_DECISION,
    ARGUMENT_WORD, /* one of the entry's own words */
    ARGUMENT_CHOICE, /* one of the choices of the quantity that is the entry's form */
    ARGUMENT_COLUMNS,
    ARGUMENT_TEXT  /* whatever the verb makes of it, shown as the entry's form */
};

struct option_entry {
    enum option_id id;
    const char *name; /* without its two hyphens */
    unsigned verbs;   /* a bit for each that takes it */
    enum option_argument argument;
    const char *what; /* what it does, as its help says */
    /* The words of ARGUMENT_WORD with bars between; the quantity; how ARGUMENT_TEXT is shown. */
    const char *form;
};

/* A bound on the words an option chooses from. */
enum { WORDS_MOST = 32, FORM_MOST = 128 };

/* One of all options, in the order of the help; NULL past the end. */
const struct option_entry *option_at(size_t index);

bool option_belongs(const struct option_entry *option, enum command_verb verb);

/* How the help shows an argument that it does not spell out: `ID`. */
const char *argument_form(const struct option_entry *option);

/* Words that an argument is chosen from, kept where they had to be taken apart. */
struct argument_words {
    const char *words[WORDS_MOST];
    size_t count; /* 0 where the help does not spell them out */
    char kept[FORM_MOST];
};

void argument_words(const struct option_entry *option, struct argument_words *words);

struct verb_entry {
    const char *name;
    const char *operand;      /* how the usage line shows what follows the options */
    const char *const *words; /* what the operand is chosen from; NULL for files */
    size_t word_count;
    const char *purpose;
    const char *needs; /* the complaint if the operand is missing */
    const char *wrong; /* the start of the complaint about another word */
};

const struct verb_entry *verb_at(enum command_verb verb);

#endif
