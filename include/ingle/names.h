/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Names that are nearly right.
 */
#ifndef INGLE_NAMES_H
#define INGLE_NAMES_H

#include <ingle/api.h>

#include <stddef.h>

#ifdef __cplusplus
extern "C" {
#endif

/**
 * The known name that a mistyped one most likely means.
 *
 * @param name what was written
 * @param known the names that could be meant
 * @param count how many they are
 * @returns one of `known`, or NULL if none is near.
 */
INGLE_API const char *ingle_name_nearest(const char *name, const char *const *known, size_t count);

#ifdef __cplusplus
}
#endif

#endif
