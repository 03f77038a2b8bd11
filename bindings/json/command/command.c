/* SPDX-License-Identifier: MIT */
#include "command/command.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>

/* ---- errors --------------------------------------------------------------------------------- */

static int exit_status_of(ingle_status status)
{
    return status == INGLE_ERROR_MEMORY || status == INGLE_ERROR_IO ? BROKEN : UNUSABLE;
}

/* A document's line ends are only between its values: without them it is one line. */
static void put_on_one_line(const char *text, const char *end)
{
    for (; text < end; text++) {
        if (*text != '\n') {
            fputc(*text, stderr);
            continue;
        }
        if (text[-1] == ',') {
            fputc(' ', stderr);
        }
        while (text + 1 < end && text[1] == ' ') {
            text++;
        }
    }
}

static void put_file_name(const char *file)
{
    struct complaint name = {.length = 0};
    complaint_add_word(&name, file);
    for (const char *at = name.text; *at != '\0'; at++) {
        if (*at == '"' || *at == '\\') {
            fputc('\\', stderr);
        }
        fputc(*at, stderr);
    }
    fputs(": ", stderr);
}

/* Writes the error document that was left, with the file's name before its message. */
int command_fail_in_file(struct command *command, ingle_status status, const char *file)
{
    static const char before_message[] = "\"message\": \"";
    size_t length;
    const char *text = ingle_json_text(command->json, &length);
    const char *end = text + length;
    const char *message = strstr(text, before_message);
    if (file != NULL && strcmp(file, "-") != 0 && message != NULL) {
        message += sizeof before_message - 1;
        put_on_one_line(text, message);
        put_file_name(file);
        text = message;
    }
    put_on_one_line(text, end);
    fputc('\n', stderr);
    return exit_status_of(status);
}

int command_fail(struct command *command, ingle_status status, const char *message)
{
    ingle_json_error(command->json, status, message);
    return command_fail_in_file(command, status, NULL);
}

int command_fail_to_read(struct command *command, const char *file)
{
    struct complaint complaint = {.length = 0};
    complaint_add(&complaint, strcmp(file, "-") == 0 ? "Standard input" : "This file");
    complaint_add(&complaint, " cannot be read: ");
    complaint_add(&complaint, strerror(command->input.error));
    complaint_add(&complaint, ".");
    ingle_json_error(command->json, INGLE_ERROR_IO, complaint.text);
    return command_fail_in_file(command, INGLE_ERROR_IO, file);
}

/* Ends the output. Who reads it may have gone away, and then there is nobody to tell. */
int command_finish(struct command *command, int exit_status)
{
    errno = 0;
    if (fflush(stdout) == 0 && !ferror(stdout)) {
        return exit_status;
    }
    if (errno != EPIPE) {
        command_fail(command, INGLE_ERROR_IO, "Standard output cannot be written.");
    }
    return BROKEN;
}

/* ---- input ---------------------------------------------------------------------------------- */

/* What one file's amendments change holds for all documents that are judged after. */
static int amend(struct command *command, const char *file)
{
    const char *document;
    size_t length;
    if (!input_open(&command->input, file)) {
        return command_fail_to_read(command, file);
    }
    int result = DONE;
    if (!input_document(&command->input, &document, &length)) {
        result = command_fail_to_read(command, file);
    } else {
        ingle_status status = ingle_json_amend(command->json, document, length);
        result = status < 0 ? command_fail_in_file(command, status, file) : DONE;
    }
    input_close(&command->input);
    return result;
}

int command_amend(struct command *command)
{
    const struct command_options *options = &command->options;
    int result = DONE;
    for (size_t i = 0; i < options->amendment_count && result == DONE; i++) {
        result = amend(command, options->amendments[i]);
    }
    return result;
}

int command_each_file(struct command *command,
                      int (*take)(struct command *command, void *context, const char *file),
                      void *context)
{
    static char standard_input[] = "-";
    char *alone[] = {standard_input};
    const struct command_options *options = &command->options;
    char **files = options->operand_count > 0 ? options->operands : alone;
    size_t count = options->operand_count > 0 ? options->operand_count : 1;
    int result = DONE;
    for (size_t i = 0; i < count && result == DONE; i++) {
        if (!input_open(&command->input, files[i])) {
            result = command_fail_to_read(command, files[i]);
        } else {
            result = take(command, context, files[i]);
            input_close(&command->input);
        }
    }
    return result;
}

static int read_survey(struct command *command, void *context, const char *file)
{
    const char *document;
    size_t length;
    (void)context;
    if (!input_document(&command->input, &document, &length)) {
        return command_fail_to_read(command, file);
    }
    ingle_status status =
        ingle_json_read(command->json, document, length, &command->options.json);
    return status < 0 ? command_fail_in_file(command, status, file) : DONE;
}

int command_read_survey(struct command *command)
{
    if (command->options.operand_count > 1) {
        return command_fail(command, INGLE_ERROR_USAGE, "One survey document is due at a time.");
    }
    if (!input_new(&command->input, ingle_json_longest())) {
        return command_fail(command, INGLE_ERROR_MEMORY, NULL);
    }
    int result = command_amend(command);
    if (result == DONE) {
        result = command_each_file(command, read_survey, NULL);
    }
    input_free(&command->input);
    return result;
}

int command_read_range(struct command *command, ingle_range *range)
{
    const struct command_options *options = &command->options;
    const char *path = options->given[OPTION_QUANTITY];
    if (path == NULL) {
        return command_fail(command, INGLE_ERROR_USAGE,
                            "The quantity is needed: --quantity PATH. See `ingle list "
                            "quantities`.");
    }
    int result = command_read_survey(command);
    if (result != DONE) {
        return result;
    }
    ingle_status status =
        ingle_json_range(command->json, path, options->given[OPTION_FROM],
                         options->given[OPTION_TO], options->given[OPTION_STEP], range);
    return status == INGLE_OK ? DONE : command_fail_in_file(command, status, NULL);
}

/* More rules than all standards have together. */
enum { RULES_MOST = 8192 };

int command_find_rule(struct command *command)
{
    const ingle_report *report = ingle_json_report(command->json);
    const char *rule = command->options.given[OPTION_RULE];
    const char *names[RULES_MOST];
    size_t count = 0;
    if (rule == NULL) {
        return DONE;
    }
    for (size_t i = 0; i < ingle_report_standard_count(report); i++) {
        const ingle_standard *standard = ingle_report_standard_at(report, i);
        for (size_t j = 0; j < ingle_standard_rule_count(standard) && count < RULES_MOST; j++) {
            names[count] = ingle_rule_id(ingle_standard_rule_at(standard, j));
            if (strcmp(names[count++], rule) == 0) {
                return DONE;
            }
        }
    }
    struct known_words known = {names, count, ""};
    struct complaint complaint = {.length = 0};
    complain_of_word(&complaint, "None of the standards has a rule", rule, &known,
                     "See `ingle list rules`.");
    return command_fail(command, INGLE_ERROR_UNKNOWN_RULE, complaint.text);
}

/* ---- output --------------------------------------------------------------------------------- */

int32_t command_write(void *context, const char *text, size_t length)
{
    (void)context;
    return fwrite(text, 1, length, stdout) == length ? 0 : 1;
}

int command_finish_call(struct command *command, ingle_status status, const char *error)
{
    if (status < 0 && status != INGLE_ERROR_IO) {
        return command_fail(command, status, error != NULL && error[0] != '\0' ? error : NULL);
    }
    return command_finish(command, status < 0 ? BROKEN : DONE);
}

int command_write_left(struct command *command, ingle_status status)
{
    if (status < 0) {
        return command_fail_in_file(command, status, NULL);
    }
    size_t length;
    const char *text = ingle_json_text(command->json, &length);
    fwrite(text, 1, length, stdout);
    return command_finish(command, DONE);
}
