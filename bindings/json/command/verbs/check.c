/* SPDX-License-Identifier: MIT */
/*
 * The verb `check`: survey documents in, reports out.
 */
#include "command/lines.h"
#include "command/verbs/verbs.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* The reports of documents are held until all are judged: nothing comes out if one is unusable. */
struct checking {
    struct lines lines;
    char *reports;
    size_t length, capacity;
    ingle_verdict gravest;
};

static bool keep_report(struct command *command, struct checking *checking)
{
    size_t length;
    const char *text = ingle_json_text(command->json, &length);
    if (checking->capacity - checking->length < length) {
        size_t capacity = (checking->length + length) * 2;
        char *grown = realloc(checking->reports, capacity);
        if (grown == NULL) {
            return false;
        }
        checking->reports = grown;
        checking->capacity = capacity;
    }
    memcpy(checking->reports + checking->length, text, length);
    checking->length += length;
    return true;
}

static int check_document(struct command *command, struct checking *checking, const char *file)
{
    const char *document;
    size_t length;
    if (!input_document(&command->input, &document, &length)) {
        return command_fail_to_read(command, file);
    }
    ingle_status status =
        ingle_json_check(command->json, document, length, &command->options.json);
    if (status < 0) {
        return command_fail_in_file(command, status, file);
    }
    ingle_verdict verdict = ingle_json_verdict(command->json);
    checking->gravest = verdict > checking->gravest ? verdict : checking->gravest;
    return keep_report(command, checking) ? DONE
                                          : command_fail(command, INGLE_ERROR_MEMORY, NULL);
}

static int check_lines(struct command *command, struct checking *checking, const char *file)
{
    ingle_status status = lines_answer(&checking->lines);
    checking->gravest = checking->lines.gravest;
    if (status == INGLE_OK) {
        return DONE;
    }
    if (command->input.error != 0) {
        return command_finish(command, command_fail_to_read(command, file));
    }
    return command_finish(command, status == INGLE_ERROR_IO ? BROKEN
                                                            : command_fail(command, status, NULL));
}

static int check_file(struct command *command, void *context, const char *file)
{
    return option_given(&command->options, OPTION_LINES) ? check_lines(command, context, file)
                                                         : check_document(command, context, file);
}

int verb_check(struct command *command)
{
    const struct command_options *options = &command->options;
    struct checking checking = {.lines = {options, command->json, &command->input, 0, 0, false}};
    if (!input_new(&command->input, ingle_json_longest())) {
        return command_fail(command, INGLE_ERROR_MEMORY, NULL);
    }
    int result = command_amend(command);
    if (result == DONE) {
        result = command_each_file(command, check_file, &checking);
    }
    input_free(&command->input);
    if (result == DONE) {
        if (checking.length > 0) {
            fwrite(checking.reports, 1, checking.length, stdout);
        }
        bool grave = options->fail_on != 0 && checking.gravest >= options->fail_on;
        bool unusable = options->fail_on_error && checking.lines.unusable;
        result = grave || unusable ? GRAVE : DONE;
    }
    free(checking.reports);
    return command_finish(command, result);
}
