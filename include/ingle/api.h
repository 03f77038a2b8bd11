/* SPDX-License-Identifier: MIT */
/**
 * @file
 * How a public declaration is exported. Needed only by the other headers.
 */
#ifndef INGLE_API_H
#define INGLE_API_H

/** Marks a declaration that the shared library exports. */
#if defined(__GNUC__)
#define INGLE_API __attribute__((visibility("default")))
#else
#define INGLE_API
#endif

#endif
