/* SPDX-License-Identifier: MIT */
/*
 * The verb `explain`: a report as a worked solution.
 */
#include "command/verbs/verbs.h"

#include <string.h>

static ingle_explain_form form_of(const struct command_options *options)
{
    const char *word = options->given[OPTION_FORM];
    return word == NULL || strcmp(word, "worked") == 0 ? INGLE_EXPLAIN_WORKED
           : strcmp(word, "report") == 0               ? INGLE_EXPLAIN_REPORT
                                                       : INGLE_EXPLAIN_BRIEF;
}

int verb_explain(struct command *command)
{
    const struct command_options *options = &command->options;
    ingle_page page;
    ingle_explain_options how = {.size = sizeof how, .rule = options->given[OPTION_RULE],
                                 .form = form_of(options)};
    if (option_given(options, OPTION_LEAST)) {
        how.least = ingle_verdict_find(options->given[OPTION_LEAST]);
    }
    int result = command_read_survey(command);
    if (result != DONE) {
        return result;
    }
    result = command_find_rule(command);
    if (result != DONE) {
        return result;
    }
    command_page(command, &page);
    page.title = ingle_json_title(command->json);
    return command_finish_call(
        command,
        ingle_explain(ingle_json_report(command->json), &page, &how, command_write, NULL), NULL);
}
