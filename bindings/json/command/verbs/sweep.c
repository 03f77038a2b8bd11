/* SPDX-License-Identifier: MIT */
/*
 * The verb `sweep`: what each rule says while a quantity is led through its values.
 */
#include "command/verbs/verbs.h"

#include <string.h>

static int write_sweep(struct command *command, const ingle_sweep *sweep)
{
    const char *format = command->options.given[OPTION_FORMAT];
    if (format == NULL || strcmp(format, "json") == 0) {
        return command_write_left(command, ingle_json_sweep(command->json, sweep));
    }
    if (strcmp(format, "svg") == 0) {
        ingle_sheet sheet = {.size = sizeof sheet, .unit = ingle_json_unit(command->json)};
        return command_finish_call(command,
                                   ingle_sweep_plot(sweep, &sheet, command_write, NULL), NULL);
    }
    ingle_format shown = {.size = sizeof shown, .unit = ingle_json_unit(command->json)};
    return command_finish_call(command, ingle_sweep_csv(sweep, &shown, command_write, NULL), NULL);
}

int verb_sweep(struct command *command)
{
    ingle_range range;
    ingle_sweep *sweep = NULL;
    size_t count;
    ingle_sweep_options options = {.size = sizeof options};
    options.rule = command->options.given[OPTION_RULE];
    options.with_unchanged = option_given(&command->options, OPTION_ALL);
    int result = command_read_range(command, &range);
    if (result != DONE) {
        return result;
    }
    const ingle_standard *const *standards = ingle_json_standards(command->json, &count);
    ingle_status status = ingle_sweep_new(NULL, &sweep);
    if (status == INGLE_OK) {
        status = ingle_sweep_run(ingle_json_survey(command->json), standards, count,
                                 ingle_json_how(command->json), &range, &options, sweep);
    }
    result = status == INGLE_OK
                 ? write_sweep(command, sweep)
                 : command_fail(command, status,
                                sweep != NULL ? ingle_sweep_error_text(sweep) : NULL);
    ingle_sweep_free(sweep);
    return result;
}
