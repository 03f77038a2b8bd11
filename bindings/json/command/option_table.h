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
    VERB_LIST,
    VERB_SCHEMA,
    VERB_NONE, /* the command without a verb */
    VERB_COUNT
};

enum option_argument {
    ARGUMENT_NONE,
    ARGUMENT_STANDARD,
    ARGUMENT_READING,
    ARGUMENT_FILE,
    ARGUMENT_UNIT,
    ARGUMENT_GRAVITY
};

struct option_entry {
    const char *name; /* without its two hyphens */
    int letter;       /* what getopt_long() returns for it */
    unsigned verbs;   /* a bit for each that takes it */
    enum option_argument argument;
    const char *what; /* what it does, as its help says */
};

/* Bounds on the options there are, and on the words one of them chooses from. */
enum { OPTIONS_MOST = 16, WORDS_MOST = 32 };

/* One of all options, in the order of the help; NULL past the end. */
const struct option_entry *option_at(size_t index);

bool option_belongs(const struct option_entry *option, enum command_verb verb);

/* How the help shows an argument that it does not spell out: `ID`. */
const char *argument_form(enum option_argument argument);

/* What an option's argument is chosen from; 0 where the help does not spell it out. */
size_t argument_words(enum option_argument argument, const char *words[WORDS_MOST]);

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
