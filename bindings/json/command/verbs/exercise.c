/* SPDX-License-Identifier: MIT */
/*
 * The verb `exercise`: practice problems from a seed.
 */
#include "command/verbs/verbs.h"

#include <stdlib.h>
#include <string.h>

static const char *const parts[] = {"both", "problem", "answers"};

static ingle_exercise_part part_of(const struct command_options *options)
{
    const char *word = options->given[OPTION_PART];
    ingle_exercise_part part = INGLE_EXERCISE_BOTH;
    while (word != NULL && strcmp(word, parts[part]) != 0) {
        part++;
    }
    return part;
}

/* A whole number without sign; false where the word is none. */
static bool read_number(const char *word, uint64_t *number)
{
    char *end = NULL;
    size_t digits = strspn(word, "0123456789");
    if (digits == 0 || digits > 18 || word[digits] != '\0') {
        return false;
    }
    *number = strtoull(word, &end, 10);
    return true;
}

static int write_page(struct command *command, uint64_t seed, int32_t level,
                      const ingle_page *page)
{
    const ingle_json_options *options = &command->options.json;
    ingle_exercise *exercise = NULL;
    ingle_status status = ingle_exercise_new(NULL, &exercise);
    if (status == INGLE_OK) {
        status = ingle_exercise_make(exercise, seed, level, options->standards,
                                     options->standard_count);
    }
    if (status == INGLE_OK) {
        status = ingle_exercise_page(exercise, part_of(&command->options), page, command_write,
                                     NULL);
    }
    ingle_exercise_free(exercise);
    return command_finish_call(command, status, NULL);
}

int verb_exercise(struct command *command)
{
    const struct command_options *options = &command->options;
    const char *word = options->given[OPTION_SEED], *format = options->given[OPTION_FORMAT];
    uint64_t seed = 1, level = 1;
    ingle_page page;
    if (options->operand_count > 0) {
        return command_fail(command, INGLE_ERROR_USAGE,
                            "An exercise is made up: it takes no document.");
    }
    if (word != NULL && !read_number(word, &seed)) {
        return command_fail(command, INGLE_ERROR_USAGE,
                            "--seed takes a whole number of at most 18 digits.");
    }
    if (option_given(options, OPTION_LEVEL)) {
        read_number(options->given[OPTION_LEVEL], &level);
    }
    if (format != NULL && strcmp(format, "json") == 0) {
        return command_write_left(
            command, ingle_json_exercise(command->json, seed, (int32_t)level,
                                         options->json.standards, options->json.standard_count,
                                         part_of(options), options->json.unit));
    }
    command_page(command, &page);
    page.unit = options->json.unit;
    return write_page(command, seed, (int32_t)level, &page);
}
