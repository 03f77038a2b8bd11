/* SPDX-License-Identifier: MIT */
/*
 * Sentences on words from the command line, which may be bytes of any kind and length.
 */
#ifndef INGLE_JSON_COMPLAINT_H
#define INGLE_JSON_COMPLAINT_H

#include <ingle/status.h>

#include <stddef.h>

/* A sentence; always sound UTF-8 that ends in NUL. */
struct complaint {
    char text[512];
    size_t length;
};

/* Adds text as it is. */
void complaint_add(struct complaint *complaint, const char *text);

/* Adds a word; what is no UTF-8 or cannot be printed in it becomes `?`, and its excess `…`. */
void complaint_add_word(struct complaint *complaint, const char *word);

/* What a word could have been. */
struct known_words {
    const char *const *words;
    size_t count;
    const char *mark; /* what stands before each on the command line: `--` or nothing */
};

/*
 * `opening "word".`, and then the nearest known word, or the closing sentence if none is near.
 * Returns INGLE_ERROR_USAGE, as complain() does.
 */
ingle_status complain_of_word(struct complaint *complaint, const char *opening, const char *word,
                              const struct known_words *known, const char *closing);

/* One sentence as it is. */
ingle_status complain(struct complaint *complaint, const char *sentence);

#endif
