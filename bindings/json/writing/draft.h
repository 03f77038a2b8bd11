/* SPDX-License-Identifier: MIT */
/*
 * The catalogue of the numbers that an estimate of the draft rests on.
 */
#ifndef INGLE_JSON_DRAFT_H
#define INGLE_JSON_DRAFT_H

#include "writing/write.h"

#include <ingle/standards.h>

/* They belong to no standard. */
void json_list_draft_numbers(struct json_writer *out, const ingle_standard *only);

#endif
