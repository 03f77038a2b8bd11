/* SPDX-License-Identifier: MIT */
/*
 * The `ingle` command: from the command line to its verb.
 */
#include "command/help.h"
#include "command/verbs/verbs.h"

#include <stdio.h>

enum { OUTPUT_ROOM = 1 << 18 };

static int (*const verbs[VERB_NONE])(struct command *command) = {
    [VERB_CHECK] = verb_check,
    [VERB_EXPLAIN] = verb_explain,
    [VERB_ASSESS] = verb_assess,
    [VERB_DRAW] = verb_draw,
    [VERB_SOLVE] = verb_solve,
    [VERB_SWEEP] = verb_sweep,
    [VERB_COMPARE] = verb_compare,
    [VERB_WORKSHEET] = verb_worksheet,
    [VERB_EXERCISE] = verb_exercise,
    [VERB_DRAFT] = verb_draft,
    [VERB_LIST] = verb_list,
    [VERB_SCHEMA] = verb_schema,
};

static int run(struct command *command)
{
    if (command->options.request == REQUEST_HELP) {
        help_write(stdout, command->options.verb);
        return command_finish(command, DONE);
    }
    if (command->options.request == REQUEST_VERSION) {
        printf("ingle %s\n", ingle_version());
        return command_finish(command, DONE);
    }
    return verbs[command->options.verb](command);
}

int main(int count, char **words)
{
    static struct command command;
    static char output[OUTPUT_ROOM];
    setvbuf(stdout, output, _IOFBF, sizeof output);
    setvbuf(stderr, NULL, _IOLBF, BUFSIZ);
    if (ingle_json_new(&command.json) != INGLE_OK) {
        fprintf(stderr, "{\"error\": {\"code\": \"%s\", \"message\": \"%s\", \"at\": \"\"}}\n",
                ingle_status_name(INGLE_ERROR_MEMORY), ingle_status_text(INGLE_ERROR_MEMORY));
        return BROKEN;
    }
    ingle_status status = options_read(&command.options, count, words);
    int result = status == INGLE_OK
                     ? run(&command)
                     : command_fail(&command, status,
                            status == INGLE_ERROR_USAGE ? command.options.complaint.text : NULL);
    options_free(&command.options);
    ingle_json_free(command.json);
    return result;
}
