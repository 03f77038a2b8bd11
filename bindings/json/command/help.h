/* SPDX-License-Identifier: MIT */
/*
 * The help of `ingle`, made from its table of options.
 */
#ifndef INGLE_JSON_HELP_H
#define INGLE_JSON_HELP_H

#include "command/option_table.h"

#include <stdio.h>

void help_write(FILE *out, enum command_verb verb);

#endif
