/* SPDX-License-Identifier: MIT */
/*
 * The `ingle` command.
 */
#include "command/help.h"
#include "command/lines.h"
#include "command/options.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* What the exit status says; see the manual. */
enum { DONE = 0, GRAVE = 1, UNUSABLE = 2, BROKEN = 3 };

enum { OUTPUT_ROOM = 1 << 18 };

struct command {
    struct command_options options;
    ingle_json *json;
    struct input input;
    char *reports; /* of documents, until all are judged */
    size_t reports_length, reports_capacity;
    ingle_verdict gravest;
};

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
static int fail_in_file(struct command *command, ingle_status status, const char *file)
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

static int fail(struct command *command, ingle_status status, const char *message)
{
    ingle_json_error(command->json, status, message);
    return fail_in_file(command, status, NULL);
}

static int fail_to_read(struct command *command, const char *file)
{
    struct complaint complaint = {.length = 0};
    complaint_add(&complaint, strcmp(file, "-") == 0 ? "Standard input" : "This file");
    complaint_add(&complaint, " cannot be read: ");
    complaint_add(&complaint, strerror(command->input.error));
    complaint_add(&complaint, ".");
    ingle_json_error(command->json, INGLE_ERROR_IO, complaint.text);
    return fail_in_file(command, INGLE_ERROR_IO, file);
}

/* Ends the output. Who reads it may have gone away, and then there is nobody to tell. */
static int finish_output(struct command *command, int exit_status)
{
    errno = 0;
    if (fflush(stdout) == 0 && !ferror(stdout)) {
        return exit_status;
    }
    if (errno != EPIPE) {
        fail(command, INGLE_ERROR_IO, "Standard output cannot be written.");
    }
    return BROKEN;
}

/* ---- check ---------------------------------------------------------------------------------- */

static bool keep_report(struct command *command)
{
    size_t length;
    const char *text = ingle_json_text(command->json, &length);
    if (command->reports_capacity - command->reports_length < length) {
        size_t capacity = (command->reports_length + length) * 2;
        char *grown = realloc(command->reports, capacity);
        if (grown == NULL) {
            return false;
        }
        command->reports = grown;
        command->reports_capacity = capacity;
    }
    memcpy(command->reports + command->reports_length, text, length);
    command->reports_length += length;
    return true;
}

static int check_document(struct command *command, const char *file)
{
    const char *document;
    size_t length;
    if (!input_document(&command->input, &document, &length)) {
        return fail_to_read(command, file);
    }
    ingle_status status =
        ingle_json_check(command->json, document, length, &command->options.json);
    if (status < 0) {
        return fail_in_file(command, status, file);
    }
    ingle_verdict verdict = ingle_json_verdict(command->json);
    command->gravest = verdict > command->gravest ? verdict : command->gravest;
    return keep_report(command) ? DONE : fail(command, INGLE_ERROR_MEMORY, NULL);
}

static int check_lines(struct command *command, struct lines *lines, const char *file)
{
    ingle_status status = lines_answer(lines);
    command->gravest = lines->gravest;
    if (status == INGLE_OK) {
        return DONE;
    }
    if (command->input.error != 0) {
        return finish_output(command, fail_to_read(command, file));
    }
    return status == INGLE_ERROR_IO ? finish_output(command, BROKEN)
                                    : finish_output(command, fail(command, status, NULL));
}

static int check_files(struct command *command, struct lines *lines)
{
    static char standard_input[] = "-";
    char *alone[] = {standard_input};
    const struct command_options *options = &command->options;
    char **files = options->operand_count > 0 ? options->operands : alone;
    size_t count = options->operand_count > 0 ? options->operand_count : 1;
    int result = DONE;
    for (size_t i = 0; i < count && result == DONE; i++) {
        if (!input_open(&command->input, files[i])) {
            result = fail_to_read(command, files[i]);
        } else {
            result = options->lines ? check_lines(command, lines, files[i])
                                    : check_document(command, files[i]);
            input_close(&command->input);
        }
    }
    return result;
}

/* What one file's amendments change holds for all documents that are judged after. */
static int amend(struct command *command, const char *file)
{
    const char *document;
    size_t length;
    if (!input_open(&command->input, file)) {
        return fail_to_read(command, file);
    }
    int result = DONE;
    if (!input_document(&command->input, &document, &length)) {
        result = fail_to_read(command, file);
    } else {
        ingle_status status = ingle_json_amend(command->json, document, length);
        result = status < 0 ? fail_in_file(command, status, file) : DONE;
    }
    input_close(&command->input);
    return result;
}

static int amend_and_check(struct command *command, struct lines *lines)
{
    const struct command_options *options = &command->options;
    for (size_t i = 0; i < options->amendment_count; i++) {
        int result = amend(command, options->amendments[i]);
        if (result != DONE) {
            return result;
        }
    }
    return check_files(command, lines);
}

static int check(struct command *command)
{
    struct lines lines = {&command->options, command->json, &command->input, 0, 0, false};
    if (!input_new(&command->input, ingle_json_longest())) {
        return fail(command, INGLE_ERROR_MEMORY, NULL);
    }
    int result = amend_and_check(command, &lines);
    input_free(&command->input);
    if (result != DONE) {
        return finish_output(command, result);
    }
    if (command->reports_length > 0) {
        fwrite(command->reports, 1, command->reports_length, stdout);
    }
    const struct command_options *options = &command->options;
    bool grave = options->fail_on != 0 && command->gravest >= options->fail_on;
    bool unusable = options->fail_on_error && lines.unusable;
    return finish_output(command, grave || unusable ? GRAVE : DONE);
}

/* ---- the other verbs ------------------------------------------------------------------------ */

static int write_text(struct command *command, ingle_status status)
{
    if (status < 0) {
        return fail_in_file(command, status, NULL);
    }
    size_t length;
    const char *text = ingle_json_text(command->json, &length);
    fwrite(text, 1, length, stdout);
    return finish_output(command, DONE);
}

static int list(struct command *command)
{
    const ingle_json_options *json = &command->options.json;
    const ingle_standard *standard = json->standard_count > 0 ? json->standards[0] : NULL;
    return write_text(command,
                      ingle_json_list(command->json, command->options.operands[0], standard));
}

static int schema(struct command *command)
{
    return write_text(command, ingle_json_schema(command->json, command->options.operands[0]));
}

static int run(struct command *command)
{
    if (command->options.request == REQUEST_HELP) {
        help_write(stdout, command->options.verb);
        return finish_output(command, DONE);
    }
    if (command->options.request == REQUEST_VERSION) {
        printf("ingle %s\n", ingle_version());
        return finish_output(command, DONE);
    }
    switch (command->options.verb) {
    case VERB_CHECK:
        return check(command);
    case VERB_LIST:
        return list(command);
    case VERB_SCHEMA:
        return schema(command);
    case VERB_NONE:
    case VERB_COUNT:
        break;
    }
    return UNUSABLE;
}

int main(int count, char **words)
{
    static struct command command;
    static char output[OUTPUT_ROOM];
    setvbuf(stdout, output, _IOFBF, sizeof output);
    setvbuf(stderr, NULL, _IOLBF, BUFSIZ);
    if (ingle_json_new(&command.json) != INGLE_OK) {
        fprintf(stderr, "{\"error\": {\"code\": \"%s\", \"message\": \"%s\", \"at\": \"\"}}\n",
                ingle_status_name(INGLE_ERROR_MEMORY), ingle_status_text(INGLE_ERROR_MEMORY));
        return BROKEN;
    }
    ingle_status status = options_read(&command.options, count, words);
    int result = status == INGLE_OK
                     ? run(&command)
                     : fail(&command, status,
                            status == INGLE_ERROR_USAGE ? command.options.complaint.text : NULL);
    options_free(&command.options);
    ingle_json_free(command.json);
    free(command.reports);
    return result;
}
