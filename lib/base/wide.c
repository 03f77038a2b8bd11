/* SPDX-License-Identifier: MIT */
#include "base/wide.h"

#include <stddef.h>

struct product {
    uint64_t high;
    uint64_t low;
};

static struct product multiply(uint64_t a, uint64_t b)
{
    const uint64_t half = UINT32_MAX;
    uint64_t a_low = a & half, a_high = a >> 32;
    uint64_t b_low = b & half, b_high = b >> 32;
    uint64_t low = a_low * b_low;
    uint64_t cross = a_high * b_low + (low >> 32);
    uint64_t middle = a_low * b_high + (cross & half);
    struct product product = {a_high * b_high + (cross >> 32) + (middle >> 32),
                              (middle << 32) | (low & half)};
    return product;
}

/* One digit of 32 bits of a long division: `rest` is less than `divisor`, whose top bit is set. */
static uint64_t divide_digit(uint64_t rest, uint64_t next, uint64_t divisor, uint64_t *remainder)
{
    uint64_t top = divisor >> 32;
    uint64_t low = divisor & UINT32_MAX;
    uint64_t digit = rest / top;
    uint64_t left = rest % top;
    while (digit > UINT32_MAX || digit * low > (left << 32 | next)) {
        digit--;
        left += top;
        if (left > UINT32_MAX) {
            break;
        }
    }
    *remainder = (rest << 32 | next) - digit * divisor; /* exact, modulo 2^64 */
    return digit;
}

/*
 * The quotient of a product whose high half is less than the divisor, so that it fits: long
 * division in two digits, after Knuth, The Art of Computer Programming, volume 2, 4.3.1,
 * algorithm D.
 */
static uint64_t divide(struct product product, uint64_t divisor, uint64_t *remainder)
{
    unsigned shift = 0;
    while ((divisor << shift) >> 63 == 0) {
        shift++;
    }
    uint64_t scaled = divisor << shift;
    uint64_t high = shift == 0 ? product.high
                               : product.high << shift | product.low >> (64 - shift);
    uint64_t low = product.low << shift;
    uint64_t rest;
    uint64_t first = divide_digit(high, low >> 32, scaled, &rest);
    uint64_t second = divide_digit(rest, low & UINT32_MAX, scaled, &rest);
    *remainder = rest >> shift;
    return first << 32 | second;
}

static bool rounds_up(uint64_t remainder, uint64_t divisor, enum rounding rounding)
{
    if (rounding == ROUND_NEAREST) {
        return remainder >= divisor - remainder;
    }
    return rounding == ROUND_UP && remainder > 0;
}

bool wide_multiply_divide(uint64_t a, uint64_t b, uint64_t c, enum rounding rounding,
                          int64_t *result, bool *exact)
{
    struct product product = multiply(a, b);
    if (c == 0 || product.high >= c) {
        return false;
    }
    uint64_t remainder = product.high == 0 ? product.low % c : 0;
    uint64_t quotient =
        product.high == 0 ? product.low / c : divide(product, c, &remainder);
    bool more = rounds_up(remainder, c, rounding);
    if (quotient > (uint64_t)INT64_MAX - (more ? 1 : 0)) {
        return false;
    }
    *result = (int64_t)(quotient + (more ? 1 : 0));
    if (exact != NULL) {
        *exact = remainder == 0;
    }
    return true;
}

bool wide_multiply(int64_t a, int64_t b, int64_t *result)
{
    uint64_t a_size = a < 0 ? 0 - (uint64_t)a : (uint64_t)a;
    uint64_t b_size = b < 0 ? 0 - (uint64_t)b : (uint64_t)b;
    struct product product = multiply(a_size, b_size);
    if (product.high != 0 || product.low > INT64_MAX) {
        return false;
    }
    *result = (a < 0) != (b < 0) ? -(int64_t)product.low : (int64_t)product.low;
    return true;
}

bool wide_add(int64_t a, int64_t b, int64_t *result)
{
    if ((b > 0 && a > INT64_MAX - b) || (b < 0 && a < INT64_MIN - b)) {
        return false;
    }
    *result = a + b;
    return true;
}

bool wide_subtract(int64_t a, int64_t b, int64_t *result)
{
    if ((b < 0 && a > INT64_MAX + b) || (b > 0 && a < INT64_MIN + b)) {
        return false;
    }
    *result = a - b;
    return true;
}
