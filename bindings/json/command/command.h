/* SPDX-License-Identifier: MIT */
/*
 * What the verbs of `ingle` share: the options, the documents that come in, what goes out, and how
 * a failure is told.
 */
#ifndef INGLE_JSON_COMMAND_H
#define INGLE_JSON_COMMAND_H

#include "command/input.h"
#include "command/options.h"

/* What the exit status says; see the manual. */
enum exit_status { DONE = 0, GRAVE = 1, UNUSABLE = 2, BROKEN = 3 };

struct command {
    struct command_options options;
    ingle_json *json;
    struct input input;
};

/* Tells of a failure on standard error, as an error document; gives the exit status. */
int command_fail(struct command *command, ingle_status status, const char *message);

/* The same for the error document that json left; it names `file` unless that is `-` or NULL. */
int command_fail_in_file(struct command *command, ingle_status status, const char *file);

/* Tells that a file cannot be read, or opened. */
int command_fail_to_read(struct command *command, const char *file);

/* Keeps the amendments of all files that --amendments names; DONE or the exit status. */
int command_amend(struct command *command);

/* Opens the operands, or else standard input, one by one for `take`, until one fails. */
int command_each_file(struct command *command,
                      int (*take)(struct command *command, void *context, const char *file),
                      void *context);

/*
 * Reads the one survey document that the command line names, or standard input has, and judges it,
 * with the amendments that are named; DONE or the exit status.
 */
int command_read_survey(struct command *command);

/* The same, and makes a range of --quantity, --from, --to and --step. */
int command_read_range(struct command *command, ingle_range *range);

/* Complains of a --rule that no standard of the survey read has; DONE if one has it, or without. */
int command_find_rule(struct command *command);

/* What --format and --width ask of a page, text without it; false if --format asks for none. */
bool command_page(struct command *command, ingle_page *page);

/* An ingle_write to standard output. */
int32_t command_write(void *context, const char *text, size_t length);

/* Ends what was written after a call of the library; gives the exit status. */
int command_finish_call(struct command *command, ingle_status status, const char *error);

/* Writes the document that json left, or tells why there is none; gives the exit status. */
int command_write_left(struct command *command, ingle_status status);

/* Ends the output; gives the exit status, which is BROKEN if the output cannot be written. */
int command_finish(struct command *command, int exit_status);

#endif
