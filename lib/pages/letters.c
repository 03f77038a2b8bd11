/* SPDX-License-Identifier: MIT */
#include "pages/letters.h"

#include <stdbool.h>
#include <stdint.h>
#include <string.h>

struct letters {
    uint32_t first, last;
};

/* By blocks of Unicode rather than letter by letter, as terminals come near to it (UAX #11). */
static const struct letters wide[] = {
    {0x1100, 0x115F},   {0x231A, 0x231B},   {0x2329, 0x232A},   {0x23E9, 0x23EC},
    {0x2614, 0x2615},   {0x2648, 0x2653},   {0x26AA, 0x26AB},   {0x2705, 0x2705},
    {0x270A, 0x270B},   {0x2753, 0x2755},   {0x2795, 0x2797},   {0x2B1B, 0x2B1C},
    {0x2E80, 0x303E},   {0x3041, 0x3247},   {0x3250, 0x4DBF},   {0x4E00, 0xA4CF},
    {0xA960, 0xA97F},   {0xAC00, 0xD7A3},   {0xF900, 0xFAFF},   {0xFE10, 0xFE19},
    {0xFE30, 0xFE6F},   {0xFF01, 0xFF60},   {0xFFE0, 0xFFE6},   {0x1F300, 0x1F320},
    {0x1F32D, 0x1F335}, {0x1F337, 0x1F37C}, {0x1F37E, 0x1F393}, {0x1F3A0, 0x1F3CA},
    {0x1F3E0, 0x1F3F0}, {0x1F3F8, 0x1F43E}, {0x1F442, 0x1F4FC}, {0x1F4FF, 0x1F53D},
    {0x1F5FB, 0x1F64F}, {0x1F680, 0x1F6C5}, {0x1F90C, 0x1F93A}, {0x1F947, 0x1F9FF},
    {0x20000, 0x2FFFD}, {0x30000, 0x3FFFD},
};

static const struct letters over[] = {
    {0x0300, 0x036F}, {0x0483, 0x0489}, {0x0591, 0x05BD}, {0x0610, 0x061A}, {0x064B, 0x065F},
    {0x200B, 0x200F}, {0x20D0, 0x20F0}, {0xFE00, 0xFE0F}, {0xFE20, 0xFE2F},
};

static bool is_among(uint32_t letter, const struct letters *list, size_t count)
{
    size_t i = 0;
    while (i < count && letter > list[i].last) {
        i++;
    }
    return i < count && letter >= list[i].first;
}

/* The letter at the beginning of UTF-8, and how many bytes it has. */
static uint32_t letter_at(const char *text, size_t length, size_t *bytes)
{
    unsigned char lead = (unsigned char)text[0];
    uint32_t letter = lead < 0x80   ? lead
                      : lead < 0xE0 ? lead & 0x1Fu
                      : lead < 0xF0 ? lead & 0x0Fu
                                    : lead & 0x07u;
    size_t used = 1;
    while (used < length && ((unsigned char)text[used] & 0xC0) == 0x80) {
        letter = letter << 6 | ((unsigned char)text[used] & 0x3Fu);
        used++;
    }
    *bytes = used;
    return letter;
}

size_t letters_width(const char *text, size_t length)
{
    size_t width = 0, bytes;
    for (size_t at = 0; at < length; at += bytes) {
        uint32_t letter = letter_at(text + at, length - at, &bytes);
        width += is_among(letter, over, sizeof over / sizeof over[0])   ? 0
                 : is_among(letter, wide, sizeof wide / sizeof wide[0]) ? 2
                                                                        : 1;
    }
    return width;
}

/* ---- controls ------------------------------------------------------------------------------- */

/* C0, DEL and, in two bytes, C1: some terminals take orders from the latter, too. */
static bool is_control(const char *text)
{
    unsigned char first = (unsigned char)text[0];
    unsigned char second = first == 0xC2 ? (unsigned char)text[1] : 0;
    return first < 0x20 || first == 0x7F || (second >= 0x80 && second < 0xA0);
}

size_t letters_plain(const char *text)
{
    size_t length = 0;
    while (text[length] != '\0' && !is_control(text + length)) {
        length++;
    }
    return length;
}

const char *letters_control(const char *text, size_t *length)
{
    *length = (unsigned char)text[0] == 0xC2 ? 2 : 1;
    return strchr("\t\n\v\f\r", text[0]) != NULL ? " " : "\xEF\xBF\xBD";
}
