/* SPDX-License-Identifier: MIT */
/*
 * The verb `draw`: a view of the fireplace, to scale.
 */
#include "command/verbs/verbs.h"

int verb_draw(struct command *command)
{
    const char *word = command->options.given[OPTION_VIEW];
    ingle_view view = word == NULL ? INGLE_VIEW_PLAN : ingle_view_find(word);
    int result = command_read_survey(command);
    if (result != DONE) {
        return result;
    }
    ingle_sheet sheet = {.size = sizeof sheet, .unit = ingle_json_unit(command->json)};
    sheet.title = ingle_json_title(command->json);
    return command_finish_call(
        command, ingle_draw(ingle_json_report(command->json), view, &sheet, command_write, NULL),
        NULL);
}
