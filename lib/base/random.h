/* SPDX-License-Identifier: MIT */
/*
 * Chance that comes out alike on every machine: SplitMix64, of G. L. Steele, D. Lea and C. H. Flood
 * (2014), in the form that S. Vigna put into the public domain (2015). Whole numbers only.
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

/* What one draw stands for: a share from -1 to 1, in 2^31ths. */
#define RANDOM_WHOLE (INT64_C(1) << 31)

/* An odd number between -RANDOM_WHOLE and RANDOM_WHOLE, all of them alike, none of them zero. */
static inline int64_t random_share(struct random *random)
{
    return 2 * (int64_t)(random_next(random) >> 33) + 1 - RANDOM_WHOLE;
}

/* A share of a half-width, which has to be below 2^32. */
static inline int64_t random_part(int64_t share, int64_t half_width)
{
    return share * half_width / RANDOM_WHOLE;
}

#endif
