/* SPDX-License-Identifier: MIT */
/*
 * The verbs of `ingle`, each in its file: they do their work and give the exit status.
 */
#ifndef INGLE_JSON_VERBS_H
#define INGLE_JSON_VERBS_H

#include "command/command.h"

int verb_check(struct command *command);
int verb_list(struct command *command);
int verb_schema(struct command *command);
int verb_assess(struct command *command);
int verb_draw(struct command *command);
int verb_explain(struct command *command);
int verb_solve(struct command *command);
int verb_sweep(struct command *command);
int verb_compare(struct command *command);
int verb_worksheet(struct command *command);
int verb_exercise(struct command *command);
int verb_draft(struct command *command);

#endif
