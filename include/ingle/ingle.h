/* SPDX-License-Identifier: MIT */
/**
 * @file
 * All of Ingle.
 */
#ifndef INGLE_INGLE_H
#define INGLE_INGLE_H

#include <ingle/api.h>
#include <ingle/assess.h>
#include <ingle/check.h>
#include <ingle/compare.h>
#include <ingle/draft.h>
#include <ingle/draft_relations.h>
#include <ingle/draw.h>
#include <ingle/exercise.h>
#include <ingle/explain.h>
#include <ingle/measure.h>
#include <ingle/memory.h>
#include <ingle/names.h>
#include <ingle/page.h>
#include <ingle/plot.h>
#include <ingle/range.h>
#include <ingle/solve.h>
#include <ingle/standards.h>
#include <ingle/status.h>
#include <ingle/survey.h>
#include <ingle/sweep.h>
#include <ingle/uncertainty.h>
#include <ingle/version.h>
#include <ingle/worksheet.h>

#endif
