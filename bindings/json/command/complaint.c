/* SPDX-License-Identifier: MIT */
#include "command/complaint.h"

#include "strict/letters.h"

#include <ingle/names.h>

#include <string.h>

/* A word longer than this is cut. */
enum { WORD_MOST = 120 };

static void add_bytes(struct complaint *complaint, const char *bytes, size_t length)
{
    if (length < sizeof complaint->text - complaint->length) {
        memcpy(complaint->text + complaint->length, bytes, length);
        complaint->length += length;
        complaint->text[complaint->length] = '\0';
    }
}

void complaint_add(struct complaint *complaint, const char *text)
{
    add_bytes(complaint, text, strlen(text));
}

void complaint_add_word(struct complaint *complaint, const char *word)
{
    size_t start = complaint->length;
    const unsigned char *at = (const unsigned char *)word, *end = at + strlen(word);
    while (at < end) {
        size_t length = *at < 0x80 ? 1 : json_utf8_length(at, end);
        if (complaint->length + length > start + WORD_MOST) {
            complaint_add(complaint, "…");
            return;
        }
        if (length == 0 || *at < 0x20 || *at == 0x7F) {
            length = 1;
            complaint_add(complaint, "?");
        } else {
            add_bytes(complaint, (const char *)at, length);
        }
        at += length;
    }
}

ingle_status complain(struct complaint *complaint, const char *sentence)
{
    complaint->length = 0;
    complaint_add(complaint, sentence);
    return INGLE_ERROR_USAGE;
}

static void add_quoted(struct complaint *complaint, const char *mark, const char *word)
{
    complaint_add(complaint, *mark != '\0' ? mark : "\"");
    complaint_add_word(complaint, word);
    complaint_add(complaint, *mark != '\0' ? "" : "\"");
}

ingle_status complain_of_word(struct complaint *complaint, const char *opening, const char *word,
                              const struct known_words *known, const char *closing)
{
    const char *nearest = ingle_name_nearest(word, known->words, known->count);
    complain(complaint, opening);
    complaint_add(complaint, " ");
    add_quoted(complaint, known->mark, word);
    complaint_add(complaint, ".");
    if (nearest != NULL) {
        complaint_add(complaint, " Is ");
        add_quoted(complaint, known->mark, nearest);
        complaint_add(complaint, " meant?");
    } else if (*closing != '\0') {
        complaint_add(complaint, " ");
        complaint_add(complaint, closing);
    }
    return INGLE_ERROR_USAGE;
}
