/* SPDX-License-Identifier: MIT */
/*
 * The verb `explain`: a report as a worked solution.
 */
#include "command/verbs/verbs.h"

#include <stdio.h>

/* A title from the document's id: `alder-lane-parlour` is headed `Alder lane parlour`. */
static const char *title_of(const struct command *command, char *title, size_t size)
{
    const char *id = ingle_json_id(command->json);
    if (id[0] == '\0') {
        return NULL;
    }
    snprintf(title, size, "%s", id);
    for (char *at = title; *at != '\0'; at++) {
        *at = *at == '-' || *at == '_' ? ' ' : *at;
    }
    if (title[0] >= 'a' && title[0] <= 'z') {
        title[0] = (char)(title[0] - 'a' + 'A');
    }
    return title;
}

int verb_explain(struct command *command)
{
    const struct command_options *options = &command->options;
    char title[256];
    ingle_page page;
    ingle_explain_options how = {.size = sizeof how, .rule = options->given[OPTION_RULE],
                                 .brief = option_given(options, OPTION_BRIEF)};
    if (option_given(options, OPTION_LEAST)) {
        how.least = ingle_verdict_find(options->given[OPTION_LEAST]);
    }
    int result = command_read_survey(command);
    if (result != DONE) {
        return result;
    }
    command_page(command, &page);
    page.title = title_of(command, title, sizeof title);
    return command_finish_call(
        command,
        ingle_explain(ingle_json_report(command->json), &page, &how, command_write, NULL), NULL);
}
