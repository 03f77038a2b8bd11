/* SPDX-License-Identifier: MIT */
/*
 * How sure findings are, as JSON.
 */
#ifndef INGLE_JSON_PROBABILITY_H
#define INGLE_JSON_PROBABILITY_H

#include "writing/write.h"

#include <ingle/ingle.h>

/* The member `probability` of a finding that has one, or should. */
void json_probability_write(struct json_writer *writer, const ingle_conformance *conformance,
                            bool with_working, const ingle_format *format);

/* The member `uncertainty` of a report: what the tape leaves of each length. */
void json_uncertainty_write(struct json_writer *writer, const ingle_assessment *assessment,
                            const ingle_probability_options *options, bool with_working,
                            const ingle_unit *unit);

#endif
