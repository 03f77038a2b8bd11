/* SPDX-License-Identifier: MIT */
/*
 * The verb `solve`: which values of a quantity would do.
 */
#include "command/verbs/verbs.h"

#include <string.h>

static int write_solution(struct command *command, const ingle_solution *solution)
{
    ingle_page page;
    if (!command_page(command, &page)) {
        return command_write_left(command, ingle_json_solution(command->json, solution));
    }
    return command_finish_call(command, ingle_solution_page(solution, &page, command_write, NULL),
                               NULL);
}

static int solve(struct command *command, const ingle_range *range,
                 const ingle_solve_options *options)
{
    ingle_solution *solution = NULL;
    size_t count;
    const ingle_standard *const *standards = ingle_json_standards(command->json, &count);
    ingle_status status = ingle_solution_new(NULL, &solution);
    if (status == INGLE_OK) {
        status = ingle_solve(ingle_json_survey(command->json), standards, count,
                             ingle_json_how(command->json), range, options, solution);
    }
    int result = status == INGLE_OK
                     ? write_solution(command, solution)
                     : command_fail(command, status,
                                    solution != NULL ? ingle_solution_error_text(solution) : NULL);
    ingle_solution_free(solution);
    return result;
}

/* Whether a plot is asked for. */
static bool is_plot(const struct command *command)
{
    const char *format = command->options.given[OPTION_FORMAT];
    return format != NULL && strcmp(format, "svg") == 0;
}

static int write_frontier(struct command *command, const ingle_frontier *frontier)
{
    ingle_page page;
    if (is_plot(command)) {
        ingle_sheet sheet = {.size = sizeof sheet, .unit = ingle_json_unit(command->json)};
        return command_finish_call(
            command, ingle_frontier_plot(frontier, &sheet, command_write, NULL), NULL);
    }
    if (!command_page(command, &page)) {
        return command_write_left(command, ingle_json_frontier(command->json, frontier));
    }
    return command_finish_call(command, ingle_frontier_page(frontier, &page, command_write, NULL),
                               NULL);
}

static int solve_with(struct command *command, const ingle_range *range, const ingle_range *with,
                      const ingle_solve_options *options)
{
    ingle_frontier *frontier = NULL;
    size_t count;
    const ingle_standard *const *standards = ingle_json_standards(command->json, &count);
    ingle_status status = ingle_frontier_new(NULL, &frontier);
    if (status == INGLE_OK) {
        status = ingle_solve_with(ingle_json_survey(command->json), standards, count,
                                  ingle_json_how(command->json), range, with, options, frontier);
    }
    int result = status == INGLE_OK
                     ? write_frontier(command, frontier)
                     : command_fail(command, status,
                                    frontier != NULL ? ingle_frontier_error_text(frontier) : NULL);
    ingle_frontier_free(frontier);
    return result;
}

int verb_solve(struct command *command)
{
    const struct command_options *options = &command->options;
    ingle_range range, with;
    ingle_solve_options how = {.size = sizeof how, .rule = options->given[OPTION_RULE],
                               .strict = option_given(options, OPTION_STRICT)};
    int result = command_read_range(command, &range);
    if (result != DONE) {
        return result;
    }
    const char *other = options->given[OPTION_WITH];
    if (other == NULL && is_plot(command)) {
        return command_fail(command, INGLE_ERROR_USAGE,
                            "A plot needs another quantity: --with PATH.");
    }
    if (other == NULL) {
        return solve(command, &range, &how);
    }
    ingle_status status =
        ingle_json_range(command->json, other, options->given[OPTION_WITH_FROM],
                         options->given[OPTION_WITH_TO], options->given[OPTION_WITH_STEP], &with);
    return status == INGLE_OK ? solve_with(command, &range, &with, &how)
                              : command_fail_in_file(command, status, NULL);
}
