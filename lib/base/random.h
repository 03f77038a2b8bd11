/* SPDX-License-Identifier: MIT */
/*
 * Numbers by chance that are the same on every machine: SplitMix64, which its author Sebastiano
 * Vigna has put in the public domain.
 */
#ifndef INGLE_BASE_RANDOM_H
#define INGLE_BASE_RANDOM_H

#include <stdint.h>

struct random {
    uint64_t state;
};

static inline uint64_t random_next(struct random *random)
{
    uint64_t z = random->state += UINT64_C(0x9E3779B97F4A7C15);
    z = (z ^ (z >> 30)) * UINT64_C(0xBF58476D1CE4E5B9);
    z = (z ^ (z >> 27)) * UINT64_C(0x94D049BB133111EB);
    return z ^ (z >> 31);
}

/* One of `count` numbers, from 0; the odds differ by less than one in 2^40 for any small count. */
static inline uint64_t random_below(struct random *random, uint64_t count)
{
    return random_next(random) % count;
}

#endif
