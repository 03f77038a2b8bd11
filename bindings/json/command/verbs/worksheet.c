/* SPDX-License-Identifier: MIT */
/*
 * The verb `worksheet`: what has to be measured on a visit.
 */
#include "command/verbs/verbs.h"

#include <stdio.h>

/* A document of the appliance alone; its words are ids of the catalogue, with nothing to escape. */
static int read_appliance(struct command *command)
{
    char document[256];
    const struct command_options *options = &command->options;
    const char *fuel = options->given[OPTION_FUEL];
    int length = snprintf(document, sizeof document,
                          "{\"survey\": {\"appliance\": {\"kind\": \"%s\"%s%s%s}}}",
                          options->given[OPTION_APPLIANCE], fuel != NULL ? ", \"fuel\": \"" : "",
                          fuel != NULL ? fuel : "", fuel != NULL ? "\"" : "");
    if (options->operand_count > 0) {
        return command_fail(command, INGLE_ERROR_USAGE,
                            "--appliance takes the place of a survey document: one or the other.");
    }
    ingle_status status =
        ingle_json_read(command->json, document, (size_t)length, &options->json);
    return status < 0 ? command_fail_in_file(command, status, NULL) : DONE;
}

static int write_worksheet(struct command *command, const ingle_worksheet *worksheet)
{
    ingle_page page;
    if (!command_page(command, &page) && option_given(&command->options, OPTION_FORMAT)) {
        return command_write_left(command, ingle_json_worksheet(command->json, worksheet));
    }
    return command_finish_call(command,
                               ingle_worksheet_page(worksheet, &page, command_write, NULL), NULL);
}

int verb_worksheet(struct command *command)
{
    ingle_worksheet *worksheet = NULL;
    size_t count;
    if (option_given(&command->options, OPTION_FUEL) &&
        !option_given(&command->options, OPTION_APPLIANCE)) {
        return command_fail(command, INGLE_ERROR_USAGE, "--fuel belongs to --appliance.");
    }
    int result = option_given(&command->options, OPTION_APPLIANCE) ? read_appliance(command)
                                                                   : command_read_survey(command);
    if (result != DONE) {
        return result;
    }
    const ingle_standard *const *standards = ingle_json_standards(command->json, &count);
    ingle_status status = ingle_worksheet_new(NULL, &worksheet);
    if (status == INGLE_OK) {
        status = ingle_worksheet_make(ingle_json_survey(command->json), standards, count,
                                      ingle_json_how(command->json), worksheet);
    }
    result = status == INGLE_OK
                 ? write_worksheet(command, worksheet)
                 : command_fail(command, status,
                                worksheet != NULL ? ingle_worksheet_error_text(worksheet) : NULL);
    ingle_worksheet_free(worksheet);
    return result;
}
