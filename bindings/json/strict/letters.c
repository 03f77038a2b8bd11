/* SPDX-License-Identifier: MIT */
#include "strict/letters.h"

#include <string.h>

typedef unsigned char byte;

/* The Unicode Standard, table 3-7: only the second byte's range depends on the first. */
size_t json_utf8_length(const byte *at, const byte *end)
{
    byte lead = *at;
    size_t length = lead < 0xC2 ? 0 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : lead < 0xF5 ? 4 : 0;
    if (length == 0 || (size_t)(end - at) < length) {
        return 0;
    }
    byte least = lead == 0xE0 ? 0xA0 : lead == 0xF0 ? 0x90 : 0x80;
    byte most = lead == 0xED ? 0x9F : lead == 0xF4 ? 0x8F : 0xBF;
    if (at[1] < least || at[1] > most) {
        return 0;
    }
    for (size_t i = 2; i < length; i++) {
        if ((at[i] & 0xC0) != 0x80) {
            return 0;
        }
    }
    return length;
}

uint32_t json_code_point(const byte *at, size_t length)
{
    uint32_t point = at[0] & (0xFFu >> (length + 1));
    for (size_t i = 1; i < length; i++) {
        point = point << 6 | (at[i] & 0x3Fu);
    }
    return point;
}

int32_t json_hexadecimal(const byte *at, const byte *end)
{
    if (end - at < 4) {
        return -1;
    }
    int32_t value = 0;
    for (size_t i = 0; i < 4; i++) {
        byte lower = at[i] | 0x20;
        if (at[i] >= '0' && at[i] <= '9') {
            value = value * 16 + (at[i] - '0');
        } else if (lower >= 'a' && lower <= 'f') {
            value = value * 16 + (lower - 'a' + 10);
        } else {
            return -1;
        }
    }
    return value;
}

int32_t json_low_surrogate(const byte *at, const byte *end)
{
    if (end - at < 6 || at[0] != '\\' || at[1] != 'u') {
        return -1;
    }
    int32_t value = json_hexadecimal(at + 2, end);
    return value >= 0xDC00 && value <= 0xDFFF ? value : -1;
}

static size_t write_code_point(uint32_t point, byte out[4])
{
    if (point < 0x80) {
        out[0] = (byte)point;
        return 1;
    }
    size_t length = point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
    for (size_t i = length - 1; i > 0; i--) {
        out[i] = (byte)(0x80 | (point & 0x3F));
        point >>= 6;
    }
    out[0] = (byte)(0xF00u >> length | point);
    return length;
}

const byte *json_unescape(const byte *at, const byte *end, byte out[4], size_t *length)
{
    static const char letters[] = "bfnrt", meanings[] = "\b\f\n\r\t";
    *length = 1;
    if (*at != '\\') {
        out[0] = *at;
        return at + 1;
    }
    if (at[1] != 'u') {
        const char *letter = strchr(letters, at[1]);
        out[0] = letter != NULL ? (byte)meanings[letter - letters] : at[1];
        return at + 2;
    }
    uint32_t point = (uint32_t)json_hexadecimal(at + 2, end);
    at += 6;
    if (point >= 0xD800 && point <= 0xDBFF) {
        uint32_t low = (uint32_t)json_low_surrogate(at, end);
        point = 0x10000 + ((point - 0xD800) << 10) + (low - 0xDC00);
        at += 6;
    }
    *length = write_code_point(point, out);
    return at;
}
