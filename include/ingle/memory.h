/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Where the library's memory comes from.
 */
#ifndef INGLE_MEMORY_H
#define INGLE_MEMORY_H

#include <ingle/api.h>

#include <stddef.h>

#ifdef __cplusplus
extern "C" {
#endif

/**
 * A source of memory. Every `_new` function takes one, or NULL for the C library's.
 *
 * The struct is copied; `context` has to outlive the objects made with it.
 */
typedef struct ingle_allocator {
    /** sizeof(ingle_allocator). */
    size_t size;
    /**
     * Like realloc(): `memory` NULL gives new memory, `bytes` 0 gives it back and returns NULL.
     * Returns NULL when memory cannot be had, and then leaves `memory` as it was.
     */
    void *(*reallocate)(void *context, void *memory, size_t bytes);
    /** Handed to `reallocate` as it is. */
    void *context;
} ingle_allocator;

#ifdef __cplusplus
}
#endif

#endif
