/* SPDX-License-Identifier: MIT */
#include "measure/scan.h"

#include <string.h>

/* Beside U+0020. */
static const char *const wide_spaces[] = {"\xC2\xA0", "\xE2\x80\x89", "\xE2\x80\xAF"};

/* The Unicode fractions, from the Number Forms block and Latin-1. */
static const struct {
    const char *mark;
    unsigned char numerator, denominator;
} fractions[] = {
    {"½", 1, 2}, {"¼", 1, 4}, {"¾", 3, 4}, {"⅛", 1, 8}, {"⅜", 3, 8},  {"⅝", 5, 8}, {"⅞", 7, 8},
    {"⅓", 1, 3}, {"⅔", 2, 3}, {"⅕", 1, 5}, {"⅖", 2, 5}, {"⅗", 3, 5},  {"⅘", 4, 5}, {"⅙", 1, 6},
    {"⅚", 5, 6}, {"⅐", 1, 7}, {"⅑", 1, 9}, {"⅒", 1, 10},
};

bool is_digit(char byte)
{
    return byte >= '0' && byte <= '9';
}

bool is_letter(char byte)
{
    return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z');
}

char scan_peek(const struct scan *scan)
{
    return scan->at < scan->length ? scan->text[scan->at] : '\0';
}

bool scan_take(struct scan *scan, const char *mark)
{
    size_t length = strlen(mark);
    if (length > scan->length - scan->at ||
        memcmp(scan->text + scan->at, mark, length) != 0) {
        return false;
    }
    scan->at += length;
    return true;
}

static bool scan_space(struct scan *scan)
{
    char next = scan_peek(scan);
    if (((unsigned char)next & 0x80) == 0) {
        scan->at += next == ' ' ? 1 : 0;
        return next == ' ';
    }
    for (size_t i = 0; i < sizeof wide_spaces / sizeof wide_spaces[0]; i++) {
        if (scan_take(scan, wide_spaces[i])) {
            return true;
        }
    }
    return false;
}

bool scan_spaces(struct scan *scan)
{
    size_t start = scan->at;
    while (scan_space(scan)) {
    }
    return scan->at > start;
}

size_t scan_digits(struct scan *scan)
{
    size_t start = scan->at;
    while (is_digit(scan_peek(scan))) {
        scan->at++;
    }
    return scan->at - start;
}

bool scan_fraction(struct scan *scan, unsigned *numerator, unsigned *denominator)
{
    if (((unsigned char)scan_peek(scan) & 0x80) == 0) {
        return false;
    }
    for (size_t i = 0; i < sizeof fractions / sizeof fractions[0]; i++) {
        if (scan_take(scan, fractions[i].mark)) {
            *numerator = fractions[i].numerator;
            *denominator = fractions[i].denominator;
            return true;
        }
    }
    return false;
}

bool scan_number_next(const struct scan *scan)
{
    struct scan ahead = *scan;
    unsigned numerator, denominator;
    return is_digit(scan_peek(scan)) || scan_peek(scan) == '.' ||
           scan_fraction(&ahead, &numerator, &denominator);
}
