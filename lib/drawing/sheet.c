/* SPDX-License-Identifier: MIT */
#include "drawing/sheet.h"

#include "base/memory.h"

ingle_status sheet_take(ingle_sheet *taken, const ingle_sheet *given)
{
    ingle_status status = options_take(taken, sizeof *taken, given);
    if (taken->unit == NULL) {
        taken->unit = ingle_unit_find("in");
    }
    return status;
}
