/* SPDX-License-Identifier: MIT */
#include "command/help.h"

#include <string.h>

enum { PAGE_WIDTH = 79, WHAT_COLUMN = 21, VERB_COLUMN = 13, USAGE_WORDS_COLUMN = 32 };

/* Writes words from the column where the line stands, and goes on below at `indent`. */
static void put_wrapped(FILE *out, const char *text, size_t column, size_t indent)
{
    while (*text != '\0') {
        size_t length = strcspn(text, " ");
        if (column > indent && column + 1 + length > PAGE_WIDTH) {
            fprintf(out, "\n%*s", (int)indent, "");
            column = indent;
        } else if (column > indent) {
            fputc(' ', out);
            column++;
        }
        fwrite(text, 1, length, out);
        column += length;
        text += length;
        text += strspn(text, " ");
    }
    fputc('\n', out);
}

/* Writes the words in a row with bars between them; gives the bytes written. */
static size_t put_words(FILE *out, const char *const *words, size_t count)
{
    size_t length = 0;
    for (size_t i = 0; i < count; i++) {
        length += (size_t)fprintf(out, "%s%s", i > 0 ? "|" : "", words[i]);
    }
    return length;
}

/* Choices of the catalogue are told by it: there may be many. */
static size_t put_argument(FILE *out, const struct option_entry *option)
{
    struct argument_words words;
    if (option->argument == ARGUMENT_NONE) {
        return 0;
    }
    argument_words(option, &words);
    bool spelled_out = words.count > 0 && option->argument != ARGUMENT_CHOICE;
    fputc(' ', out);
    return 1 + (spelled_out ? put_words(out, words.words, words.count)
                            : (size_t)fprintf(out, "%s", argument_form(option)));
}

static void put_option(FILE *out, const struct option_entry *option)
{
    const char *lead = strcmp(option->name, "help") == 0 ? "-h, --" : "--";
    size_t column = (size_t)fprintf(out, "  %s%s", lead, option->name);
    column += put_argument(out, option);
    if (column + 2 > WHAT_COLUMN) {
        fputc('\n', out);
        column = 0;
    }
    fprintf(out, "%*s", (int)(WHAT_COLUMN - column), "");
    put_wrapped(out, option->what, WHAT_COLUMN, WHAT_COLUMN);
}

/* The same in as many lines as they take, from the column where the verbs stand. */
static void put_words_below(FILE *out, const char *const *words, size_t count)
{
    size_t column = PAGE_WIDTH;
    for (size_t i = 0; i < count; i++) {
        size_t length = strlen(words[i]) + (i + 1 < count ? 1 : 0);
        if (column + length > PAGE_WIDTH) {
            fprintf(out, "\n%*s", VERB_COLUMN, "");
            column = VERB_COLUMN;
        }
        fprintf(out, "%s%s", words[i], i + 1 < count ? "|" : "");
        column += length;
    }
}

/* On lines of their own below, if the row of words is long. */
static void put_choice(FILE *out, const char *const *words, size_t count)
{
    size_t length = count;
    for (size_t i = 0; i < count; i++) {
        length += strlen(words[i]);
    }
    if (USAGE_WORDS_COLUMN + length > PAGE_WIDTH) {
        put_words_below(out, words, count);
    } else {
        fputc(' ', out);
        put_words(out, words, count);
    }
}

static void put_usage(FILE *out, const struct verb_entry *verb)
{
    fprintf(out, "ingle %s [OPTION]...", verb->name);
    if (verb->words != NULL) {
        put_choice(out, verb->words, verb->word_count);
    } else {
        fprintf(out, " %s", verb->operand);
    }
    fputc('\n', out);
}

static void put_verbs(FILE *out)
{
    fputs("Usage: ", out);
    for (int i = 0; i < VERB_NONE; i++) {
        fputs(i > 0 ? "       " : "", out);
        put_usage(out, verb_at((enum command_verb)i));
    }
}

static void put_statuses(FILE *out)
{
    fputs("\nExit status: 0 when the job was done, whatever the verdicts; 1 only by --fail-on;\n"
          "2 when the input or the command line cannot be used (standard error tells why,\n"
          "as JSON); 3 when reading, writing or memory failed.\n",
          out);
}

void help_write(FILE *out, enum command_verb verb)
{
    if (verb == VERB_NONE) {
        put_verbs(out);
    } else {
        fputs("Usage: ", out);
        put_usage(out, verb_at(verb));
    }
    fputc('\n', out);
    put_wrapped(out, verb_at(verb)->purpose, 0, 0);
    fputs("\nOptions:\n", out);
    const struct option_entry *option;
    for (size_t i = 0; (option = option_at(i)) != NULL; i++) {
        if (option_belongs(option, verb)) {
            put_option(out, option);
        }
    }
    put_statuses(out);
    if (verb == VERB_NONE) {
        fputs("\n`ingle VERB --help` tells more of a verb, and `man ingle` of all.\n", out);
    }
}
