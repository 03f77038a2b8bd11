/* SPDX-License-Identifier: MIT */
/*
 * The files of standards. A new publication is one file, one line here and one in standard.c.
 */
#ifndef INGLE_STANDARDS_PUBLICATIONS_H
#define INGLE_STANDARDS_PUBLICATIONS_H

#include "standards/rule.h"

extern const struct publication publication_irc;
extern const struct publication publication_common_practice;

#endif
