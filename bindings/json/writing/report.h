/* SPDX-License-Identifier: MIT */
/*
 * A report as JSON, written straight from the findings.
 */
#ifndef INGLE_JSON_REPORT_H
#define INGLE_JSON_REPORT_H

#include "reading/reader.h"
#include "writing/write.h"

#include <ingle/ingle.h>

struct json_report {
    const ingle_report *report;
    const struct json_reader *document; /* what was judged */
    const ingle_unit *unit;             /* of lengths as shown; NULL takes each standard's own */
    const ingle_assessment *assessment; /* how sure the findings are; NULL leaves that out */
    const ingle_probability_options *probability; /* what was asked of it */
    bool with_working;
};

/* Writes a finding; `unit` NULL takes its standard's own. */
void json_finding_write(struct json_writer *writer, const ingle_finding *finding,
                        const ingle_unit *unit);

/* Writes the whole document; false if memory failed. */
bool json_report_write(const struct json_report *report, struct json_writer *writer,
                       bool one_line);

#endif
