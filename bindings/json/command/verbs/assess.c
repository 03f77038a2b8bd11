/* SPDX-License-Identifier: MIT */
/*
 * The verb `assess`: how sure the findings are.
 */
#include "command/verbs/verbs.h"

#include <string.h>

/* The first finding on the rule that can be plotted; NULL without one. */
static const ingle_conformance *find(const ingle_assessment *assessment, const char *rule)
{
    const ingle_conformance *conformance;
    for (size_t i = 0; (conformance = ingle_assessment_at(assessment, i)) != NULL; i++) {
        const ingle_finding *finding = ingle_conformance_finding(conformance);
        if (rule != NULL && strcmp(rule, ingle_rule_id(ingle_finding_rule(finding))) == 0) {
            return conformance;
        }
    }
    return NULL;
}

static int write_plot(struct command *command, const ingle_assessment *assessment)
{
    const ingle_conformance *conformance =
        find(assessment, command->options.given[OPTION_RULE]);
    ingle_sheet sheet = {.size = sizeof sheet, .unit = ingle_json_unit(command->json)};
    if (conformance == NULL) {
        return command_fail(command, INGLE_ERROR_USAGE,
                            "A plot needs --rule, and a finding on it.");
    }
    return command_finish_call(
        command, ingle_probability_plot(conformance, &sheet, command_write, NULL), NULL);
}

static int write_assessment(struct command *command, const ingle_assessment *assessment)
{
    const char *format = command->options.given[OPTION_FORMAT];
    ingle_page page;
    if (format != NULL && strcmp(format, "svg") == 0) {
        return write_plot(command, assessment);
    }
    command_page(command, &page);
    return command_finish_call(command,
                               ingle_assessment_page(assessment, &page,
                                                     command->options.given[OPTION_RULE],
                                                     command_write, NULL),
                               NULL);
}

int verb_assess(struct command *command)
{
    ingle_assessment *assessment = NULL;
    int result = command_read_survey(command);
    if (result != DONE) {
        return result;
    }
    result = command_find_rule(command);
    if (result != DONE) {
        return result;
    }
    ingle_status status = ingle_assessment_new(NULL, &assessment);
    if (status == INGLE_OK) {
        status = ingle_assess(ingle_json_report(command->json), &command->options.probability,
                              assessment);
    }
    result = status == INGLE_OK ? write_assessment(command, assessment)
                                : command_fail(command, status, NULL);
    ingle_assessment_free(assessment);
    return result;
}
