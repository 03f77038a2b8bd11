/* SPDX-License-Identifier: MIT */
/*
 * What every published relation does with what goes in and what comes out.
 */
#ifndef INGLE_DRAFT_RELATION_H
#define INGLE_DRAFT_RELATION_H

#include <ingle/status.h>

#include <stddef.h>

/* An argument of a relation and the least that has a sense; equal to it is refused if `above`. */
struct argument {
    double value;
    double least;
    double most;
    int above;
};

#define POSITIVE(value) {(value), 0.0, RELATION_LIMIT, 1}
#define NOT_NEGATIVE(value) {(value), 0.0, RELATION_LIMIT, 0}
#define OF_ANY_SIGN(value) {(value), -RELATION_LIMIT, RELATION_LIMIT, 0}
#define FROM_TO(value, least, most) {(value), (least), (most), 0}

/* Far beyond anything at a chimney. */
#define RELATION_LIMIT 1e15

ingle_status arguments_accept(const struct argument *arguments, size_t count);

#define ACCEPT(...)                                                                              \
    arguments_accept((const struct argument[]){__VA_ARGS__},                                     \
                     sizeof((const struct argument[]){__VA_ARGS__}) / sizeof(struct argument))

/* Gives what came out if the arguments were accepted and it is finite. */
ingle_status relation_give(ingle_status accepted, double result, double *out);

#endif
