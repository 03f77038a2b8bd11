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

struct ingle_json {
    struct json_scan scan;
    struct json_tokener *tokener;
    struct json_reader reader;
    ingle_report *report;
    ingle_verdict verdict; /* of the last report */
    struct json_writer writer; /* with the document that the last call left */
};

#endif
