/* SPDX-License-Identifier: MIT */
#include "pages/output.h"

#include <string.h>

ingle_status output_start(struct output *output, ingle_write write, void *context)
{
    output->write = write;
    output->context = context;
    output->status = INGLE_OK;
    output->used = 0;
    return write == NULL ? INGLE_ERROR_ARGUMENT : INGLE_OK;
}

void output_fail(struct output *output, ingle_status status)
{
    if (output->status == INGLE_OK) {
        output->status = status;
    }
}

static void flush(struct output *output)
{
    if (output->used > 0 && output->status == INGLE_OK &&
        output->write(output->context, output->piece, output->used) != 0) {
        output->status = INGLE_ERROR_IO;
    }
    output->used = 0;
}

void output_add_bytes(struct output *output, const char *text, size_t length)
{
    while (length > 0) {
        if (output->used == OUTPUT_PIECE) {
            flush(output);
        }
        size_t room = OUTPUT_PIECE - output->used;
        size_t taken = length < room ? length : room;
        memcpy(output->piece + output->used, text, taken);
        output->used += taken;
        text += taken;
        length -= taken;
    }
}

void output_add(struct output *output, const char *text)
{
    output_add_bytes(output, text, strlen(text));
}

void output_add_repeated(struct output *output, const char *text, size_t times)
{
    for (; times > 0; times--) {
        output_add(output, text);
    }
}

/* Controls that XML has no way to write: the replacement character stands for them. */
#define NO_CHARACTERS                                                                             \
    "\x01\x02\x03\x04\x05\x06\x07\x08\x0B\x0C\x0E\x0F\x10\x11\x12\x13\x14\x15\x16\x17\x18\x19" \
    "\x1A\x1B\x1C\x1D\x1E\x1F"

void output_add_escaped(struct output *output, const char *text)
{
    for (;;) {
        size_t plain = strcspn(text, "&<>\"'" NO_CHARACTERS);
        output_add_bytes(output, text, plain);
        text += plain;
        if (*text == '\0') {
            return;
        }
        output_add(output, *text == '&'   ? "&amp;"
                           : *text == '<' ? "&lt;"
                           : *text == '>' ? "&gt;"
                           : *text == '"' ? "&quot;"
                           : *text == '\'' ? "&#39;"
                                          : "\xEF\xBF\xBD");
        text++;
    }
}

ingle_status output_end(struct output *output)
{
    flush(output);
    return output->status;
}
