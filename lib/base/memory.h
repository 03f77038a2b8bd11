/* SPDX-License-Identifier: MIT */
/*
 * Memory through the caller's allocator, or the C library's.
 */
#ifndef INGLE_BASE_MEMORY_H
#define INGLE_BASE_MEMORY_H

#include <ingle/memory.h>
#include <ingle/status.h>

#include <stdbool.h>
#include <stddef.h>

/*
 * Copies what the caller has of a struct that starts with its size into `known`, whose
 * `known_size` bytes are zeroed first. `first_size` is the size of the struct's first release.
 */
ingle_status struct_take(void *known, size_t known_size, size_t first_size, const void *given);

/*
 * Takes a caller's options, of which there has been one release: a struct that is all zeros but for
 * its size where `given` is NULL.
 */
ingle_status options_take(void *taken, size_t size, const void *given);

/* Takes a caller's allocator, or the C library's for NULL. */
ingle_status allocator_take(ingle_allocator *taken, const ingle_allocator *given);

/* New zeroed memory, or NULL. */
void *allocator_new(const ingle_allocator *allocator, size_t bytes);

/*
 * A new zeroed object whose first member is the allocator that it comes from: a caller's, or the C
 * library's for NULL. Returns NULL without one, and `status` tells why.
 */
void *object_new(const ingle_allocator *given, size_t bytes, ingle_status *status);

void allocator_free(const ingle_allocator *allocator, void *memory);

/* A copy of `length` bytes and a NUL, or NULL. */
char *allocator_copy(const ingle_allocator *allocator, const char *text, size_t length);

/*
 * Makes room for one more element in an array that holds `count` of `element` bytes each, growing
 * it by half when it is full. Returns false, and leaves the array as it was, without memory.
 */
bool array_reserve(const ingle_allocator *allocator, void **array, size_t *capacity, size_t count,
                   size_t element);

#endif
