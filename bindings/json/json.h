/* SPDX-License-Identifier: MIT */
/*
 * The object behind ingle-json.h: what reads, what judges, what writes, and the one document that
 * every call leaves.
 */
#ifndef INGLE_JSON_JSON_H
#define INGLE_JSON_JSON_H

#include "writing/error.h"
#include "ingle-json.h"
#include "reading/reader.h"
#include "strict/scan.h"
#include "writing/write.h"

#include <ingle/ingle.h>

struct json_tokener;

/* As much of a document's id as is kept when the document is not at hand any more. */
enum { JSON_ID_MOST = 127 };

struct ingle_json {
    struct json_scan scan;
    struct json_tokener *tokener;
    struct json_reader reader;
    ingle_report *report;
    ingle_assessment *assessment; /* of the last report, where one was asked for */
    ingle_verdict verdict; /* of the last report */

    /* Of the document that was read last, for who works on it further. */
    bool read;
    char id[JSON_ID_MOST + 1];
    char title[JSON_ID_MOST + 1]; /* the id as a heading has it */
    const ingle_standard *const *standards; /* those it was judged by */
    size_t standard_count;
    const ingle_unit *unit; /* NULL takes each standard's own */
    ingle_check_options how;
    ingle_probability_options probability; /* its size is 0 where none was asked for */

    struct json_writer writer; /* with the document that the last call left */
};

#endif
