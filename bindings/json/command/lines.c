/* SPDX-License-Identifier: MIT */
#include "command/lines.h"

#include <stdio.h>

static void flush_output(void *context)
{
    (void)context;
    fflush(stdout);
}

/* The error document of the line, with the line's number put before its first member. */
static void put_error_line(const struct lines *lines)
{
    size_t length;
    const char *text = ingle_json_text(lines->json, &length);
    printf("{\"line\": %llu, ", lines->number);
    fwrite(text + 1, 1, length - 1, stdout);
}

static void put_report(const struct lines *lines)
{
    size_t length;
    const char *text = ingle_json_text(lines->json, &length);
    fwrite(text, 1, length, stdout);
}

static ingle_status answer(struct lines *lines, const char *line, size_t length)
{
    lines->number++;
    ingle_status status = ingle_json_check(lines->json, line, length, &lines->options->json);
    if (status == INGLE_ERROR_MEMORY) {
        return status;
    }
    if (status < 0) {
        lines->unusable = true;
        put_error_line(lines);
    } else {
        ingle_verdict verdict = ingle_json_verdict(lines->json);
        lines->gravest = verdict > lines->gravest ? verdict : lines->gravest;
        put_report(lines);
    }
    if (option_given(lines->options, OPTION_UNBUFFERED)) {
        fflush(stdout);
    }
    return ferror(stdout) ? INGLE_ERROR_IO : INGLE_OK;
}

ingle_status lines_answer(struct lines *lines)
{
    const char *line;
    size_t length;
    lines->input->before_waiting = flush_output;
    while (input_line(lines->input, &line, &length)) {
        ingle_status status = answer(lines, line, length);
        if (status != INGLE_OK) {
            return status;
        }
    }
    return lines->input->error != 0 ? INGLE_ERROR_IO : INGLE_OK;
}
