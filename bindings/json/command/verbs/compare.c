/* SPDX-License-Identifier: MIT */
/*
 * The verb `compare`: one survey by many standards.
 */
#include "command/verbs/verbs.h"

static int write_comparison(struct command *command, const ingle_comparison *comparison)
{
    ingle_page page;
    if (!command_page(command, &page)) {
        return command_write_left(command, ingle_json_comparison(command->json, comparison));
    }
    return command_finish_call(
        command, ingle_comparison_page(comparison, &page, command_write, NULL), NULL);
}

int verb_compare(struct command *command)
{
    ingle_comparison *comparison = NULL;
    int result = command_read_survey(command);
    if (result != DONE) {
        return result;
    }
    ingle_status status = ingle_comparison_new(NULL, &comparison);
    if (status == INGLE_OK) {
        status = ingle_compare(ingle_json_report(command->json), comparison);
    }
    result = status == INGLE_OK ? write_comparison(command, comparison)
                                : command_fail(command, status, NULL);
    ingle_comparison_free(comparison);
    return result;
}
