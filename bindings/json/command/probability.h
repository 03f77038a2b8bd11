/* SPDX-License-Identifier: MIT */
/*
 * What the options on probability come to.
 */
#ifndef INGLE_JSON_COMMAND_PROBABILITY_H
#define INGLE_JSON_COMMAND_PROBABILITY_H

#include "command/options.h"

/* Settles them into the options for the reader and writer; INGLE_OK or INGLE_ERROR_USAGE. */
ingle_status probability_settle(struct command_options *options);

#endif
