/* SPDX-License-Identifier: MIT */
/*
 * What a command line of `ingle` asks for.
 */
#ifndef INGLE_JSON_OPTIONS_H
#define INGLE_JSON_OPTIONS_H

#include "command/complaint.h"
#include "ingle-json.h"
#include "command/option_table.h"

#include <stdbool.h>
#include <stddef.h>

enum command_request {
    REQUEST_VERB,
    REQUEST_HELP, /* of the verb, or of the whole command for VERB_NONE */
    REQUEST_VERSION
};

struct command_options {
    enum command_request request;
    enum command_verb verb;
    ingle_json_options json;
    const ingle_standard **standards; /* where json.standards are kept */
    int32_t *readings;                /* and json.readings */
    const char **amendments;          /* the names of files, borrowed from the command line */
    size_t amendment_count;
    char **operands;                  /* files, or the word of the verb */
    size_t operand_count;
    ingle_verdict fail_on; /* the mildest verdict that makes the exit status 1; 0 for none */
    bool fail_on_error;
    ingle_probability_options probability; /* where json.probability points to, if anywhere */
    /* What the words of the line were, the last of each, for the verbs to look up. */
    const char *given[OPTION_COUNT]; /* the argument, or the option's name where it has none */
    struct complaint complaint; /* what is wrong, after INGLE_ERROR_USAGE */
};

/* Whether an option was given. */
bool option_given(const struct command_options *options, enum option_id id);

/* The columns that a word says, 20 to 1000; 0 where it says none. */
int32_t columns_in(const char *word);

/*
 * Reads the command line, whose words may come into another order. Returns INGLE_OK,
 * INGLE_ERROR_USAGE or INGLE_ERROR_MEMORY; the options are to be freed in each case.
 */
ingle_status options_read(struct command_options *options, int count, char **words);

void options_free(struct command_options *options);

#endif
