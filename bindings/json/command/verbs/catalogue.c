/* SPDX-License-Identifier: MIT */
/*
 * The verbs `list` and `schema`.
 */
#include "command/verbs/verbs.h"

int verb_list(struct command *command)
{
    const ingle_json_options *json = &command->options.json;
    const ingle_standard *standard = json->standard_count > 0 ? json->standards[0] : NULL;
    return command_write_left(command, ingle_json_list(command->json, command->options.operands[0],
                                                       standard));
}

int verb_schema(struct command *command)
{
    return command_write_left(command,
                              ingle_json_schema(command->json, command->options.operands[0]));
}
