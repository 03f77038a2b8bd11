/* SPDX-License-Identifier: MIT */
/*
 * The options that all plots and drawings share.
 */
#ifndef INGLE_DRAWING_SHEET_H
#define INGLE_DRAWING_SHEET_H

#include <ingle/plot.h>

/* Takes a caller's sheet, or that of one without wishes for NULL; the unit is then the inch. */
ingle_status sheet_take(ingle_sheet *taken, const ingle_sheet *given);

#endif
