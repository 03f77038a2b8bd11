/* SPDX-License-Identifier: MIT */
/*
 * JSON Lines: one survey a line in, one report a line out.
 */
#ifndef INGLE_JSON_LINES_H
#define INGLE_JSON_LINES_H

#include "command/input.h"
#include "command/options.h"

struct lines {
    const struct command_options *options;
    ingle_json *json;
    struct input *input;
    unsigned long long number; /* of the last line, counted through all files */
    ingle_verdict gravest;
    bool unusable; /* some line was answered with an error */
};

/*
 * Answers the lines of an open file on standard output. Returns INGLE_OK; INGLE_ERROR_IO if reading
 * (then input->error is set) or writing failed; or INGLE_ERROR_MEMORY.
 */
ingle_status lines_answer(struct lines *lines);

#endif
