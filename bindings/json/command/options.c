/* SPDX-License-Identifier: MIT */
#include "command/options.h"

#include "command/probability.h"

#include <getopt.h>
#include <stdlib.h>
#include <string.h>

/* Long options return their number and this, so that they are told apart from short ones. */
enum { LONG = 256, OPTIONS_MOST = 48 };

/* ---- the arguments of options --------------------------------------------------------------- */

static ingle_status complain_of_standard(struct command_options *options, const char *id)
{
    const char **ids = malloc((ingle_standard_count() + 1) * sizeof *ids);
    if (ids == NULL) {
        return INGLE_ERROR_MEMORY;
    }
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        ids[i] = ingle_standard_id(ingle_standard_at(i));
    }
    struct known_words known = {ids, ingle_standard_count(), ""};
    ingle_status status = complain_of_word(&options->complaint, "No standard is called", id,
                                           &known, "See `ingle list standards`.");
    free(ids);
    return status;
}

static ingle_status take_standard(struct command_options *options, const char *id)
{
    ingle_json_options *json = &options->json;
    const ingle_standard *standard = ingle_standard_find(id);
    if (standard == NULL) {
        return complain_of_standard(options, id);
    }
    for (size_t i = 0; i < json->standard_count; i++) {
        if (options->standards[i] == standard) {
            return INGLE_OK;
        }
    }
    if (options->verb == VERB_LIST && json->standard_count > 0) {
        return complain(&options->complaint, "A list is of one standard or of all.");
    }
    options->standards[json->standard_count++] = standard;
    json->standards = options->standards;
    return INGLE_OK;
}

/* Looks for a word of some length; the count if there is none. */
static size_t find_word(const char *word, size_t length, const char *const *words, size_t count)
{
    size_t i = 0;
    while (i < count && (strlen(words[i]) != length || strncmp(words[i], word, length) != 0)) {
        i++;
    }
    return i;
}

/* The nearest reading is sought for the word before the `=`, as far as any of them is long. */
static ingle_status complain_of_reading(struct command_options *options, const char *word,
                                        size_t length, const struct known_words *known)
{
    char id[64] = "";
    memcpy(id, word, length < sizeof id ? length : sizeof id - 1);
    return complain_of_word(&options->complaint, "No reading is called", id, known,
                            "See `ingle list readings`.");
}

/* Takes `ID=OPTION`. */
static ingle_status take_reading(struct command_options *options, const char *word)
{
    const char *words[WORDS_MOST];
    size_t count = 0, length = strcspn(word, "=");
    for (; count < WORDS_MOST && count < ingle_reading_count(); count++) {
        words[count] = ingle_reading_id(ingle_reading_at(count));
    }
    struct known_words known = {words, count, ""};
    size_t index = find_word(word, length, words, count);
    if (index == count) {
        return complain_of_reading(options, word, length, &known);
    }
    if (word[length] == '\0') {
        return complain_of_word(&options->complaint, "An option is due, as ID=OPTION, after", word,
                                &(struct known_words){NULL, 0, ""}, "See `ingle list readings`.");
    }
    const ingle_reading *reading = ingle_reading_at(index);
    known.count = 0;
    for (; known.count < WORDS_MOST && known.count < ingle_reading_option_count(reading);
         known.count++) {
        words[known.count] = ingle_reading_option_at(reading, known.count);
    }
    const char *option = word + length + 1;
    size_t chosen = find_word(option, strlen(option), words, known.count);
    if (chosen == known.count) {
        return complain_of_word(&options->complaint, "This reading has no option", option, &known,
                                "See `ingle list readings`.");
    }
    options->readings[index] = (int32_t)chosen;
    options->json.readings = options->readings;
    options->json.reading_count = ingle_reading_count();
    return INGLE_OK;
}

static ingle_status take_amendments(struct command_options *options, const char *file)
{
    if (strcmp(file, "-") == 0) {
        return complain(&options->complaint,
                        "Amendments are read from a file: standard input is for surveys.");
    }
    options->amendments[options->amendment_count++] = file;
    return INGLE_OK;
}

static bool is_among(const char *word, const char *const *words, size_t count)
{
    return find_word(word, strlen(word), words, count) < count;
}

/* Whether a word is among those its option takes; complains if not. */
static bool is_choice(struct command_options *options, const struct option_entry *entry,
                      const char *word)
{
    struct argument_words words;
    struct complaint opening = {.length = 0}, closing = {.length = 0};
    argument_words(entry, &words);
    if (is_among(word, words.words, words.count)) {
        return true;
    }
    struct known_words known = {words.words, words.count, ""};
    complaint_add(&opening, "--");
    complaint_add(&opening, entry->name);
    complaint_add(&opening, " does not take");
    complaint_add(&closing, "See `ingle ");
    complaint_add(&closing, verb_at(options->verb)->name);
    complaint_add(&closing, " --help`.");
    complain_of_word(&options->complaint, opening.text, word, &known, closing.text);
    return false;
}

static void take_gravity(struct command_options *options, const char *word)
{
    ingle_verdict verdict = ingle_verdict_find(word);
    if (verdict < 0) {
        options->fail_on_error = true;
    } else if (options->fail_on == 0 || verdict < options->fail_on) {
        options->fail_on = verdict;
    }
}

/* What a line of text can be wide, in columns; include/ingle/page.h has the same bounds. */
enum { WIDTH_LEAST = 20, WIDTH_MOST = 1000 };

int32_t columns_in(const char *word)
{
    size_t digits = strspn(word, "0123456789");
    long columns = digits > 0 && digits < 5 && word[digits] == '\0' ? strtol(word, NULL, 10) : 0;
    return columns >= WIDTH_LEAST && columns <= WIDTH_MOST ? (int32_t)columns : 0;
}

static ingle_status take_width(struct command_options *options, const char *word)
{
    return columns_in(word) > 0
               ? INGLE_OK
               : complain(&options->complaint, "--width takes a number of columns, 20 to 1000.");
}

static ingle_status take_argument(struct command_options *options,
                                  const struct option_entry *entry, const char *word)
{
    switch (entry->argument) {
    case ARGUMENT_STANDARD:
        return take_standard(options, word);
    case ARGUMENT_READING:
        return take_reading(options, word);
    case ARGUMENT_FILE:
        return take_amendments(options, word);
    case ARGUMENT_COLUMNS:
        return take_width(options, word);
    case ARGUMENT_UNIT:
    case ARGUMENT_GRAVITY:
    case ARGUMENT_DECISION:
    case ARGUMENT_WORD:
    case ARGUMENT_CHOICE:
        return is_choice(options, entry, word) ? INGLE_OK : INGLE_ERROR_USAGE;
    case ARGUMENT_NONE:
    case ARGUMENT_TEXT:
        break;
    }
    return INGLE_OK;
}

static ingle_status take_option(struct command_options *options, const struct option_entry *entry,
                                const char *word)
{
    ingle_status status = take_argument(options, entry, word);
    if (status != INGLE_OK) {
        return status;
    }
    options->given[entry->id] = word != NULL ? word : entry->name;
    if (entry->argument == ARGUMENT_UNIT) {
        options->json.unit = ingle_unit_find(word);
    } else if (entry->argument == ARGUMENT_GRAVITY) {
        take_gravity(options, word);
    } else if (entry->id == OPTION_HELP) {
        options->request = REQUEST_HELP;
    } else if (entry->id == OPTION_VERSION) {
        options->request = REQUEST_VERSION;
    }
    return INGLE_OK;
}

bool option_given(const struct command_options *options, enum option_id id)
{
    return options->given[id] != NULL;
}

/* ---- options that cannot be taken ----------------------------------------------------------- */

struct option_list {
    struct option options[OPTIONS_MOST + 1];
    const struct option_entry *entries[OPTIONS_MOST];
    const char *names[OPTIONS_MOST];
    size_t count;
};

static struct option_list options_of(enum command_verb verb)
{
    struct option_list list = {.count = 0};
    const struct option_entry *entry;
    for (size_t i = 0; (entry = option_at(i)) != NULL && list.count < OPTIONS_MOST; i++) {
        if (option_belongs(entry, verb)) {
            int argument = entry->argument == ARGUMENT_NONE ? no_argument : required_argument;
            struct option option = {entry->name, argument, NULL, LONG + (int)list.count};
            list.entries[list.count] = entry;
            list.names[list.count] = entry->name;
            list.options[list.count++] = option;
        }
    }
    return list;
}

static ingle_status complain_of_letter(struct command_options *options, int letter)
{
    char word[2] = {(char)letter, '\0'};
    struct known_words none = {NULL, 0, "-"};
    return complain_of_word(&options->complaint, "There is no option", word, &none,
                            "Options have long names: see --help.");
}

static ingle_status complain_of_name(struct command_options *options, const char *word,
                                     const struct option_list *list)
{
    char name[64] = "";
    size_t length = strcspn(word + 2, "=");
    memcpy(name, word + 2, length < sizeof name ? length : sizeof name - 1);
    struct known_words known = {list->names, list->count, "--"};
    return complain_of_word(&options->complaint, "There is no option", name, &known,
                            "See --help.");
}

/* getopt_long() has found fault with the word before words[optind], or with the letter optopt. */
static ingle_status complain_of_option(struct command_options *options, int fault, char **words,
                                       const struct option_list *list)
{
    struct known_words none = {NULL, 0, ""};
    if (fault == ':') {
        return complain_of_word(&options->complaint, "An argument is due after", words[optind - 1],
                                &none, "");
    }
    if (optopt >= LONG) {
        return complain_of_word(&options->complaint, "No argument belongs to the option in",
                                words[optind - 1], &none, "");
    }
    if (optopt != 0) {
        return complain_of_letter(options, optopt);
    }
    return complain_of_name(options, words[optind - 1], list);
}

/* ---- the command line ----------------------------------------------------------------------- */

/* Takes the options of a verb; those of VERB_NONE end before the first word that is none. */
static ingle_status take_options(struct command_options *options, int count, char **words)
{
    struct option_list list = options_of(options->verb);
    const char *letters = options->verb == VERB_NONE ? "+:h" : ":h";
    ingle_status status = INGLE_OK;
    opterr = 0;
    optind = 0; /* starts afresh */
    while (status == INGLE_OK && options->request == REQUEST_VERB) {
        int letter = getopt_long(count, words, letters, list.options, NULL);
        if (letter == -1) {
            break;
        }
        if (letter == 'h') {
            options->request = REQUEST_HELP;
        } else if (letter == '?' || letter == ':') {
            status = complain_of_option(options, letter, words, &list);
        } else {
            status = take_option(options, list.entries[letter - LONG], optarg);
        }
    }
    return status;
}

static ingle_status take_verb(struct command_options *options, const char *word)
{
    const char *names[VERB_NONE];
    for (int i = 0; i < VERB_NONE; i++) {
        names[i] = verb_at((enum command_verb)i)->name;
        if (strcmp(word, names[i]) == 0) {
            options->verb = (enum command_verb)i;
            return INGLE_OK;
        }
    }
    struct known_words known = {names, VERB_NONE, ""};
    return complain_of_word(&options->complaint, "There is no verb", word, &known,
                            "See `ingle --help`.");
}

/* What comes with a verb besides options: any number of files, or one word that is known. */
static ingle_status take_operands(struct command_options *options, char **operands, size_t count)
{
    const struct verb_entry *verb = verb_at(options->verb);
    struct known_words known = {verb->words, verb->word_count, ""};
    struct known_words none = {NULL, 0, ""};
    options->operands = operands;
    options->operand_count = count;
    if (verb->words == NULL) {
        return INGLE_OK;
    }
    if (count == 0) {
        return complain(&options->complaint, verb->needs);
    }
    if (count > 1) {
        return complain_of_word(&options->complaint, "There is one word too many:", operands[1],
                                &none, "");
    }
    if (!is_among(operands[0], known.words, known.count)) {
        return complain_of_word(&options->complaint, verb->wrong, operands[0], &known,
                                "See --help.");
    }
    return INGLE_OK;
}

/* Room for the arguments of so many options. */
static bool make_room(struct command_options *options, size_t count)
{
    options->standards = calloc(count + 1, sizeof *options->standards);
    options->amendments = calloc(count + 1, sizeof *options->amendments);
    options->readings = calloc(ingle_reading_count() + 1, sizeof *options->readings);
    for (size_t i = 0; options->readings != NULL && i < ingle_reading_count(); i++) {
        options->readings[i] = -1;
    }
    return options->standards != NULL && options->amendments != NULL && options->readings != NULL;
}

/* What the options for the reader and writer come to. */
static void settle(struct command_options *options)
{
    options->json.one_line = option_given(options, OPTION_LINES);
    options->json.with_not_applicable = option_given(options, OPTION_ALL);
    options->json.without_working = option_given(options, OPTION_NO_WORKING);
    options->json.least_basis = ingle_basis_find(options->given[OPTION_BASIS]);
}

ingle_status options_read(struct command_options *options, int count, char **words)
{
    memset(options, 0, sizeof *options);
    options->verb = VERB_NONE;
    options->json.size = sizeof options->json;
    if (!make_room(options, (size_t)count)) {
        return INGLE_ERROR_MEMORY;
    }
    ingle_status status = take_options(options, count, words);
    if (status != INGLE_OK || options->request != REQUEST_VERB) {
        return status;
    }
    if (optind >= count) {
        return complain(&options->complaint,
                        "A verb is needed. See `ingle --help`.");
    }
    int verb = optind;
    status = take_verb(options, words[verb]);
    if (status == INGLE_OK) {
        status = take_options(options, count - verb, words + verb);
    }
    if (status != INGLE_OK || options->request != REQUEST_VERB) {
        return status;
    }
    settle(options);
    status = probability_settle(options);
    if (status != INGLE_OK) {
        return status;
    }
    int first = verb + optind;
    return take_operands(options, words + first, (size_t)(count - first));
}

void options_free(struct command_options *options)
{
    free(options->standards);
    free(options->amendments);
    free(options->readings);
    options->standards = NULL;
    options->amendments = NULL;
    options->readings = NULL;
}
