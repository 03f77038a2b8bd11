/* SPDX-License-Identifier: MIT */
/*
 * The verb `draw`: a view of the fireplace, to scale.
 */
#include "command/verbs/verbs.h"

int verb_draw(struct command *command)
{
    const char *word = command->options.given[OPTION_VIEW];
    ingle_view view = word == NULL ? INGLE_VIEW_PLAN : ingle_view_find(word);
    char title[COMMAND_TITLE];
    int result = command_read_survey(command);
    if (result != DONE) {
        return result;
    }
    ingle_sheet sheet = {.size = sizeof sheet, .unit = ingle_json_unit(command->json)};
    sheet.title = command_title(command, title);
    return command_finish_call(
        command, ingle_draw(ingle_json_report(command->json), view, &sheet, command_write, NULL),
        NULL);
}
