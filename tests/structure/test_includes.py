#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Holds the one direction of the rooms by reading the #include lines, and what a room may say.

A room rests on those before it in ROOMS, and the bindings on the published API alone. Standards
are data and have no arithmetic; formulas name no standard.
"""
import re
import unittest

import source_tree

ROOMS = ["base", "measure", "survey", "formulas", "standards", "check", "uncertainty", "pages",
         "whatif", "draft", "drawing", "teaching"]

# The public header of each room. The others belong to the base.
HEADER_ROOMS = {
    "measure.h": "measure", "survey.h": "survey", "standards.h": "standards", "check.h": "check",
    "uncertainty.h": "uncertainty",
    "page.h": "pages",
    "range.h": "whatif", "solve.h": "whatif", "sweep.h": "whatif", "compare.h": "whatif",
    "draft.h": "draft", "draft_relations.h": "draft",
    "plot.h": "drawing", "draw.h": "drawing",
    "explain.h": "teaching", "worksheet.h": "teaching", "exercise.h": "teaching",
    "assess.h": "teaching",
    "ingle.h": ROOMS[-1]}

C_HEADERS_IN_LIB = {"stddef.h", "stdint.h", "stdbool.h", "string.h", "stdlib.h", "limits.h"}

# Doubles are for what decides no verdict.
MATHEMATICS = {"draft", "uncertainty"}

C_LIBRARY = C_HEADERS_IN_LIB | {
    "assert.h", "ctype.h", "errno.h", "inttypes.h", "locale.h", "signal.h", "stdarg.h", "stdio.h",
    "time.h", "fcntl.h", "getopt.h", "poll.h", "sys/ioctl.h", "sys/stat.h", "sys/types.h",
    "unistd.h"}

PUBLICATION = re.compile(
    r"\b(?:irc|ibc|imc|ifgc|umc|upc|ubc|sbc|cabo|hud|nfpa|bia|usda|csa|ul|astm|fha|nbfu)\b"
    r"|\b(?:R|G|M)\d{3,4}\b|\b(?:irc|nfpa|bia|ibc)[-_ ]?\d|\b(?:19|20)\d\d\b", re.IGNORECASE)

# An operator between two numbers, or between a number and a unit macro: INCHES(3) / 8.
ARITHMETIC = re.compile(r"(?:\b\d[\w.]*|\))\s*[-+*/%]\s*(?:\d|[A-Z_]{2,}\s*\()")


def includes(text):
    """The included names of C text, with their brackets or quotes."""
    code = source_tree.without_comments(text)
    return re.findall(r'^[ \t]*#[ \t]*include[ \t]+(<[^>]+>|"[^"]+")', code, re.MULTILINE)


def reaches(room, other):
    return other in ROOMS and ROOMS.index(other) <= ROOMS.index(room)


def forbidden_in_lib(room, include):
    name = include[1:-1]
    if include.startswith('"'):
        return not reaches(room, name.split("/")[0])
    if name.startswith("ingle/"):
        return not reaches(room, HEADER_ROOMS.get(name[len("ingle/"):], "base"))
    return name not in C_HEADERS_IN_LIB and not (name == "math.h" and room in MATHEMATICS)


BINDING = source_tree.ROOT / "bindings/json"


def forbidden_in_binding(folder, include):
    name = include[1:-1]
    if name.startswith("ingle/") and include.startswith("<") or name == "ingle-json.h":
        return False
    if include.startswith('"'):
        return not (folder / name).is_file()
    return not name.startswith("json-c/") and name not in C_LIBRARY


def arithmetic(text):
    return ARITHMETIC.findall(source_tree.without_texts(source_tree.without_comments(text)))


class Includes(unittest.TestCase):
    def test_lib_includes_only_downwards(self):
        for path in source_tree.files("lib", ".c", ".h", ".def"):
            room = source_tree.name_of(path).split("/")[1]
            for include in includes(path.read_text(encoding="utf-8")):
                with self.subTest(file=source_tree.name_of(path), include=include):
                    self.assertIn(room, ROOMS)
                    self.assertFalse(forbidden_in_lib(room, include))

    def test_public_headers_include_only_downwards(self):
        for path in source_tree.files("include/ingle", ".h", ".h.in"):
            room = HEADER_ROOMS.get(path.name, "base")
            for include in includes(path.read_text(encoding="utf-8")):
                with self.subTest(file=source_tree.name_of(path), include=include):
                    self.assertTrue(include.startswith("<"), "installed, it has no own folder")
                    self.assertFalse(forbidden_in_lib(room, include))

    def test_every_public_header_is_in_ingle_h(self):
        whole = source_tree.ROOT / "include/ingle/ingle.h"
        named = {include[len("<ingle/"):-1]
                 for include in includes(whole.read_text(encoding="utf-8"))}
        there = {path.name.replace(".in", "")
                 for path in source_tree.files("include/ingle", ".h", ".h.in")}
        self.assertEqual(named, there - {"ingle.h"})

    def test_bindings_include_only_the_published_api(self):
        for path in source_tree.files("bindings", ".c", ".h"):
            for include in includes(path.read_text(encoding="utf-8")):
                with self.subTest(file=source_tree.name_of(path), include=include):
                    self.assertFalse(forbidden_in_binding(BINDING, include))

    def test_standards_have_no_arithmetic(self):
        for path in source_tree.files("lib/standards", ".c", ".h", ".def"):
            with self.subTest(file=source_tree.name_of(path)):
                self.assertEqual(arithmetic(path.read_text(encoding="utf-8")), [])

    def test_formulas_name_no_standard(self):
        for path in source_tree.files("lib/formulas", ".c", ".h", ".def"):
            with self.subTest(file=source_tree.name_of(path)):
                named = PUBLICATION.findall(path.read_text(encoding="utf-8"))
                self.assertEqual(named, [])


class TheChecksThemselves(unittest.TestCase):
    """What must be found is found."""

    def test_upward_and_foreign_includes(self):
        text = '#include "check/judge.h"\n  # include <stdio.h>\n/* #include <time.h> */\n'
        self.assertEqual(includes(text), ['"check/judge.h"', "<stdio.h>"])
        for include in ('"check/judge.h"', "<stdio.h>", "<ingle/check.h>", '"own.h"', "<json.h>"):
            self.assertTrue(forbidden_in_lib("survey", include), include)
        self.assertTrue(forbidden_in_lib("check", "<math.h>"))
        self.assertFalse(forbidden_in_lib("draft", "<math.h>"))
        for include in ('"survey/own.h"', '"base/text.h"', "<ingle/measure.h>", "<string.h>"):
            self.assertFalse(forbidden_in_lib("survey", include), include)

    def test_private_includes_in_bindings(self):
        folder = BINDING
        for include in ('"base/text.h"', '"../lib/base/text.h"', "<jansson.h>", '"missing.h"'):
            self.assertTrue(forbidden_in_binding(folder, include), include)
        for include in ("<ingle/ingle.h>", '"ingle-json.h"', "<json-c/json.h>", "<stdio.h>"):
            self.assertFalse(forbidden_in_binding(folder, include), include)

    def test_arithmetic(self):
        for text in ("INCHES(3) / 8", "x = 6 * 144", "12+8", "2 * INCHES(4)", "8 -1"):
            self.assertTrue(arithmetic(text), text)
        for text in ('"1/10"', "/* 6 * 144 */ 864", "{.least = -1}", "const int *p", "EIGHTHS(3)",
                     "F(1, 12), G(2)", "i + 1 < n"):
            self.assertFalse(arithmetic(text), text)

    def test_named_publications(self):
        for text in ("the IRC says", "R1001.10", "irc_2021", "NFPA 211", "since 2015"):
            self.assertTrue(PUBLICATION.findall(text), text)
        for text in ("circle", "INT64_C(2000000)", "1 UL", "the rule's numbers", "reading"):
            self.assertEqual(bool(PUBLICATION.findall(text)), text == "1 UL", text)


if __name__ == "__main__":
    unittest.main()
