/* SPDX-License-Identifier: MIT */
#include "command/probability.h"

#include <stdlib.h>
#include <string.h>

/* Where no seed is given: any one would do, and this one is the same every time. */
#define USUAL_SEED 1

static ingle_status complain_of(struct command_options *options, const char *opening,
                                const char *word, const char *closing)
{
    struct known_words none = {NULL, 0, ""};
    return complain_of_word(&options->complaint, opening, word, &none, closing);
}

/* Takes digits alone, up to a bound. */
static bool take_count(const char *word, uint64_t most, uint64_t *count)
{
    uint64_t number = 0;
    for (const char *at = word; *at != '\0'; at++) {
        if (*at < '0' || *at > '9') {
            return false;
        }
        uint64_t digit = (uint64_t)(*at - '0');
        if (number > most / 10 || (number == most / 10 && digit > most % 10)) {
            return false;
        }
        number = number * 10 + digit;
    }
    *count = number;
    return word[0] != '\0';
}

/* ---- the guard band -------------------------------------------------------------------------- */

static bool take_factor(const char *word, double *factor)
{
    char *end;
    if (word[0] == '\0' || strspn(word, "-.0123456789") != strlen(word)) {
        return false;
    }
    *factor = strtod(word, &end);
    return *end == '\0';
}

static ingle_status take_band(struct command_options *options, const char *word)
{
    const char *names[WORDS_MOST];
    size_t count = 0;
    for (; count < WORDS_MOST && count < ingle_guard_band_count(); count++) {
        names[count] = ingle_guard_band_name(count);
        if (strcmp(names[count], word) == 0) {
            options->probability.guard_factor = ingle_guard_band_factor(count);
            return INGLE_OK;
        }
    }
    struct known_words known = {names, count, ""};
    return take_factor(word, &options->probability.guard_factor)
               ? INGLE_OK
               : complain_of_word(&options->complaint,
                                  "--guard-band takes a number of U, or a name of ILAC-G8, not",
                                  word, &known, "See `ingle check --help`.");
}

/* ---- all of them ----------------------------------------------------------------------------- */

/* The options that say how, and so need the one that says that. */
static const char *first_without(const struct command_options *options)
{
    static const enum option_id ids[] = {OPTION_DECISION, OPTION_GUARD_BAND, OPTION_MONTE_CARLO,
                                         OPTION_SEED, OPTION_SEPARATE_TAPES};
    static const char *const names[] = {"--decision", "--guard-band", "--monte-carlo", "--seed",
                                        "--separate-tapes"};
    for (size_t i = 0; i < sizeof ids / sizeof ids[0]; i++) {
        if (option_given(options, ids[i])) {
            return names[i];
        }
    }
    return NULL;
}

static ingle_status take_decision(struct command_options *options)
{
    ingle_probability_options *probability = &options->probability;
    const char *rule = options->given[OPTION_DECISION];
    const char *band = options->given[OPTION_GUARD_BAND];
    ingle_decision ignored;
    ingle_status status = band == NULL ? INGLE_OK : take_band(options, band);
    if (status != INGLE_OK) {
        return status;
    }
    if (rule != NULL) {
        probability->rule = ingle_decision_rule_find(rule);
    } else if (probability->guard_factor != 0) {
        probability->rule = INGLE_RULE_GUARDED;
    }
    if (ingle_decide(probability->rule, probability->guard_factor, 0, 0, &ignored) == INGLE_OK) {
        return INGLE_OK;
    }
    return complain(&options->complaint,
                    probability->rule == INGLE_RULE_SIMPLE
                        ? "The decision rule `simple` has no guard band."
                        : "This decision rule needs --guard-band, a number of U from 0 to 100, 0 "
                          "left out; only `guarded` takes one below 0.");
}

static ingle_status take_run(struct command_options *options)
{
    const char *trials = options->given[OPTION_MONTE_CARLO];
    const char *seed = options->given[OPTION_SEED];
    options->probability.seed = USUAL_SEED;
    if (trials != NULL &&
        (!take_count(trials, ingle_most_trials(), &options->probability.trials) ||
         options->probability.trials == 0)) {
        return complain_of(options, "--monte-carlo takes a number of trials, not", trials,
                           "From 1 to 10000000.");
    }
    if (seed != NULL && !take_count(seed, UINT64_MAX, &options->probability.seed)) {
        return complain_of(options, "--seed takes a whole number, not", seed, "");
    }
    return INGLE_OK;
}

ingle_status probability_settle(struct command_options *options)
{
    const char *without = options->verb == VERB_CHECK ? first_without(options) : NULL;
    if (!option_given(options, OPTION_PROBABILITY) && options->verb != VERB_ASSESS) {
        return without == NULL
                   ? INGLE_OK
                   : complain_of(options, "--probability is needed with", without, "");
    }
    options->probability.size = sizeof options->probability;
    options->probability.separate_tapes = option_given(options, OPTION_SEPARATE_TAPES);
    if (options->verb != VERB_ASSESS) {
        options->json.probability = &options->probability;
    }
    ingle_status status = take_decision(options);
    return status == INGLE_OK ? take_run(options) : status;
}
