/* SPDX-License-Identifier: MIT */
/* A source of memory that counts what is asked of it and given back, and that may run dry. */
#ifndef TESTS_MEMORY_COUNTED_H
#define TESTS_MEMORY_COUNTED_H

#include <ingle/memory.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>

#include <cmocka.h>

struct memory {
    size_t calls;   /* that asked for memory */
    size_t live;    /* blocks not given back */
    size_t fail_at; /* the call that gets nothing, from 1; 0 for none */
    bool fail_on;   /* all calls from there on get nothing */
    bool failed;    /* some call got nothing */
};

static void *memory_reallocate(void *context, void *block, size_t bytes)
{
    struct memory *memory = context;
    if (bytes == 0) {
        assert_non_null(block);
        memory->live--;
        free(block);
        return NULL;
    }
    memory->calls++;
    if (memory->fail_at != 0 && (memory->calls == memory->fail_at ||
                                 (memory->fail_on && memory->calls > memory->fail_at))) {
        memory->failed = true;
        return NULL;
    }
    void *given = realloc(block, bytes);
    assert_non_null(given);
    memory->live += block == NULL;
    return given;
}

static inline ingle_allocator memory_allocator(struct memory *memory)
{
    ingle_allocator allocator = {sizeof allocator, memory_reallocate, memory};
    return allocator;
}

#endif
