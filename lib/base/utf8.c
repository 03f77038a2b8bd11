/* SPDX-License-Identifier: MIT */
#include "base/utf8.h"

/*
 * The table of well-formed sequences, RFC 3629 section 4: by the lead byte, how many bytes follow
 * and within which bounds the first of them lies. The others are 80 to BF. ASCII is left out.
 */
struct sequence {
    unsigned char first_lead, last_lead;
    unsigned char following;
    unsigned char lowest, highest;
};

static const struct sequence sequences[] = {
    {0xC2, 0xDF, 1, 0x80, 0xBF}, {0xE0, 0xE0, 2, 0xA0, 0xBF},
    {0xE1, 0xEC, 2, 0x80, 0xBF}, {0xED, 0xED, 2, 0x80, 0x9F}, {0xEE, 0xEF, 2, 0x80, 0xBF},
    {0xF0, 0xF0, 3, 0x90, 0xBF}, {0xF1, 0xF3, 3, 0x80, 0xBF}, {0xF4, 0xF4, 3, 0x80, 0x8F},
};

/* The length of the sound character at the start of `length` bytes; 0 if it is not sound. */
static size_t character_length(const unsigned char *bytes, size_t length)
{
    if (bytes[0] < 0x80) {
        return bytes[0] != 0 ? 1 : 0;
    }
    for (size_t i = 0; i < sizeof sequences / sizeof sequences[0]; i++) {
        const struct sequence *sequence = &sequences[i];
        if (bytes[0] < sequence->first_lead || bytes[0] > sequence->last_lead) {
            continue;
        }
        if (sequence->following >= length) {
            return 0;
        }
        for (size_t at = 1; at <= sequence->following; at++) {
            unsigned char lowest = at == 1 ? sequence->lowest : 0x80;
            unsigned char highest = at == 1 ? sequence->highest : 0xBF;
            if (bytes[at] < lowest || bytes[at] > highest) {
                return 0;
            }
        }
        return (size_t)sequence->following + 1;
    }
    return 0;
}

size_t utf8_sound_length(const char *text, size_t length)
{
    const unsigned char *bytes = (const unsigned char *)text;
    size_t at = 0;
    while (at < length) {
        size_t step = character_length(bytes + at, length - at);
        if (step == 0) {
            break;
        }
        at += step;
    }
    return at;
}
