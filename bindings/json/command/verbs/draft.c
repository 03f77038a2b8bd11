/* SPDX-License-Identifier: MIT */
/*
 * The verb `draft`: an estimate of how the fireplace draws.
 */
#include "command/verbs/verbs.h"

#include <string.h>

/* The options of figures stand in the order of the figures. */
static enum option_id option_of(ingle_draft_figure figure)
{
    return (enum option_id)(OPTION_OPENING_AREA + figure - INGLE_DRAFT_OPENING_AREA);
}

static int fail_with_word(struct command *command, ingle_status status, ingle_draft_figure figure,
                          const char *word)
{
    struct complaint complaint = {.length = 0};
    complaint_add(&complaint, "--");
    complaint_add(&complaint, ingle_draft_figure_id(figure));
    complaint_add(&complaint, " ");
    complaint_add_word(&complaint, word);
    complaint_add(&complaint, ": ");
    complaint_add(&complaint, ingle_status_text(status));
    return command_fail(command, status, complaint.text);
}

/* Puts in what the command line gives; DONE or the exit status. */
static int take_figures(struct command *command, ingle_draft_input *input)
{
    for (ingle_draft_figure figure = 1; ingle_draft_figure_is_input(figure); figure++) {
        const char *word = command->options.given[option_of(figure)];
        ingle_status status =
            word == NULL ? INGLE_OK
                         : ingle_draft_input_set_text(input, figure, word, strlen(word), NULL);
        if (status < 0) {
            return fail_with_word(command, status, figure, word);
        }
    }
    const char *inlet = command->options.given[OPTION_INLET];
    if (inlet != NULL) {
        input->inlet = strcmp(inlet, "sharp") == 0 ? INGLE_DRAFT_INLET_SHARP
                                                   : INGLE_DRAFT_INLET_ROUNDED;
    }
    return DONE;
}

static int write_plot(struct command *command, const ingle_draft *draft,
                      const ingle_draft_input *input)
{
    size_t count;
    const ingle_standard *const *standards = ingle_json_standards(command->json, &count);
    ingle_sheet sheet = {.size = sizeof sheet, .unit = ingle_json_draft_unit(command->json)};
    return command_finish_call(
        command, ingle_draft_plot(draft, input, standards[0], &sheet, command_write, NULL), NULL);
}

static int write_draft(struct command *command, const ingle_draft *draft,
                       const ingle_draft_input *input)
{
    ingle_page page;
    const char *format = command->options.given[OPTION_FORMAT];
    if (format != NULL && strcmp(format, "svg") == 0) {
        return write_plot(command, draft, input);
    }
    if (!command_page(command, &page)) {
        return command_write_left(command, ingle_json_draft(command->json, draft, NULL));
    }
    page.unit = ingle_json_draft_unit(command->json);
    return command_finish_call(command, ingle_draft_page(draft, &page, command_write, NULL), NULL);
}

static int estimate(struct command *command, ingle_draft_input *input)
{
    size_t count;
    ingle_draft *draft = NULL;
    const ingle_standard *const *standards = ingle_json_standards(command->json, &count);
    ingle_status status = ingle_draft_new(NULL, &draft);
    if (status == INGLE_OK) {
        status = ingle_draft_take_survey(draft, ingle_json_survey(command->json), standards, count,
                                         input);
    }
    if (status == INGLE_OK) {
        status = ingle_draft_estimate(draft, input);
    }
    int result = status == INGLE_OK
                     ? write_draft(command, draft, input)
                     : command_fail(command, status,
                                    draft != NULL ? ingle_draft_error_text(draft) : NULL);
    ingle_draft_free(draft);
    return result;
}

int verb_draft(struct command *command)
{
    ingle_draft_input input;
    ingle_draft_input_start(&input);
    int result = take_figures(command, &input);
    if (result == DONE) {
        result = command_read_survey(command);
    }
    return result == DONE ? estimate(command, &input) : result;
}
