/* SPDX-License-Identifier: MIT */
/*
 * How pages of text look: as the options ask, and the terminal.
 */
#include "command/command.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <unistd.h>

/* The columns that --width, the environment or the terminal has; 0 for none that can be used. */
static int32_t width_of(const struct command_options *options)
{
    struct winsize size;
    const char *word = options->given[OPTION_WIDTH];
    if (word == NULL) {
        word = getenv("COLUMNS");
    }
    if (word != NULL) {
        return columns_in(word);
    }
    return isatty(STDOUT_FILENO) && ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 &&
                   size.ws_col >= 20 && size.ws_col <= 1000
               ? size.ws_col
               : 0;
}

/* Colours are for terminals, unless their user has asked for none (see no-color.org). */
static bool may_colour(void)
{
    const char *none = getenv("NO_COLOR");
    const char *terminal = getenv("TERM");
    return isatty(STDOUT_FILENO) && (none == NULL || none[0] == '\0') &&
           (terminal == NULL || strcmp(terminal, "dumb") != 0);
}

bool command_page(struct command *command, ingle_page *page)
{
    const struct command_options *options = &command->options;
    const char *word = options->given[OPTION_FORMAT];
    ingle_page_format format = ingle_page_format_find(word);
    bool is_page = format >= 0;
    *page = (ingle_page){.size = sizeof *page, .format = is_page ? format : INGLE_PAGE_TEXT};
    page->width = width_of(options);
    page->colour = may_colour();
    page->unit = ingle_json_unit(command->json);
    return is_page;
}
