/* SPDX-License-Identifier: MIT */
/*
 * What has to be said of a number by how it is known.
 */
#ifndef INGLE_CHECK_NOTICES_H
#define INGLE_CHECK_NOTICES_H

#include <ingle/standards.h>

/* A sentence for one finding; NULL where the text itself was read. */
const char *basis_caution(ingle_basis basis);

#endif
