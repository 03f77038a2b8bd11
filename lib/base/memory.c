/* SPDX-License-Identifier: MIT */
#include "base/memory.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

/* No struct of this library comes near this size: a larger `size` is garbage. */
#define STRUCT_SIZE_CEILING 4096

ingle_status struct_take(void *known, size_t known_size, size_t first_size, const void *given)
{
    size_t given_size;
    memcpy(&given_size, given, sizeof given_size);
    if (given_size < first_size || given_size > STRUCT_SIZE_CEILING) {
        return INGLE_ERROR_STRUCT_SIZE;
    }
    const unsigned char *bytes = given;
    for (size_t i = known_size; i < given_size; i++) {
        if (bytes[i] != 0) {
            return INGLE_ERROR_STRUCT_NEWER;
        }
    }
    memset(known, 0, known_size);
    memcpy(known, given, given_size < known_size ? given_size : known_size);
    return INGLE_OK;
}

ingle_status options_take(void *taken, size_t size, const void *given)
{
    if (given != NULL) {
        return struct_take(taken, size, size, given);
    }
    memset(taken, 0, size);
    memcpy(taken, &size, sizeof size);
    return INGLE_OK;
}

static void *library_reallocate(void *context, void *memory, size_t bytes)
{
    (void)context;
    if (bytes == 0) {
        free(memory);
        return NULL;
    }
    return realloc(memory, bytes);
}

ingle_status allocator_take(ingle_allocator *taken, const ingle_allocator *given)
{
    if (given == NULL) {
        *taken = (ingle_allocator){sizeof *taken, library_reallocate, NULL};
        return INGLE_OK;
    }
    ingle_status status = struct_take(taken, sizeof *taken, sizeof *taken, given);
    if (status == INGLE_OK && taken->reallocate == NULL) {
        status = INGLE_ERROR_ARGUMENT;
    }
    return status;
}

void *allocator_new(const ingle_allocator *allocator, size_t bytes)
{
    void *memory = allocator->reallocate(allocator->context, NULL, bytes);
    if (memory != NULL) {
        memset(memory, 0, bytes);
    }
    return memory;
}

void *object_new(const ingle_allocator *given, size_t bytes, ingle_status *status)
{
    ingle_allocator taken;
    *status = allocator_take(&taken, given);
    if (*status != INGLE_OK) {
        return NULL;
    }
    void *object = allocator_new(&taken, bytes);
    if (object == NULL) {
        *status = INGLE_ERROR_MEMORY;
        return NULL;
    }
    memcpy(object, &taken, sizeof taken);
    return object;
}

void allocator_free(const ingle_allocator *allocator, void *memory)
{
    if (memory != NULL) {
        allocator->reallocate(allocator->context, memory, 0);
    }
}

char *allocator_copy(const ingle_allocator *allocator, const char *text, size_t length)
{
    char *copy = allocator_new(allocator, length + 1);
    if (copy != NULL) {
        memcpy(copy, text, length);
    }
    return copy;
}

bool array_reserve(const ingle_allocator *allocator, void **array, size_t *capacity, size_t count,
                   size_t element)
{
    if (count < *capacity) {
        return true;
    }
    size_t wanted = *capacity < 8 ? 8 : *capacity + *capacity / 2;
    if (wanted > SIZE_MAX / element) {
        return false;
    }
    void *grown = allocator->reallocate(allocator->context, *array, wanted * element);
    if (grown == NULL) {
        return false;
    }
    *array = grown;
    *capacity = wanted;
    return true;
}
