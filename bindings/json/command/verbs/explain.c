/* SPDX-License-Identifier: MIT */
/*
 * The verb `explain`: a report as a worked solution.
 */
#include "command/verbs/verbs.h"

#include <string.h>

/* More than all standards have together. */
enum { RULES_MOST = 8192 };

static ingle_explain_form form_of(const struct command_options *options)
{
    const char *word = options->given[OPTION_FORM];
    return word == NULL || strcmp(word, "worked") == 0 ? INGLE_EXPLAIN_WORKED
           : strcmp(word, "report") == 0               ? INGLE_EXPLAIN_REPORT
                                                       : INGLE_EXPLAIN_BRIEF;
}

/* Complains of a rule that none of the standards has; DONE where one has it. */
static int find_rule(struct command *command, const char *rule)
{
    const ingle_report *report = ingle_json_report(command->json);
    const char *names[RULES_MOST];
    size_t count = 0;
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

int verb_explain(struct command *command)
{
    const struct command_options *options = &command->options;
    ingle_page page;
    ingle_explain_options how = {.size = sizeof how, .rule = options->given[OPTION_RULE],
                                 .form = form_of(options)};
    if (option_given(options, OPTION_LEAST)) {
        how.least = ingle_verdict_find(options->given[OPTION_LEAST]);
    }
    int result = command_read_survey(command);
    if (result != DONE) {
        return result;
    }
    if (how.rule != NULL) {
        result = find_rule(command, how.rule);
    }
    if (result != DONE) {
        return result;
    }
    command_page(command, &page);
    page.title = ingle_json_title(command->json);
    return command_finish_call(
        command,
        ingle_explain(ingle_json_report(command->json), &page, &how, command_write, NULL), NULL);
}
