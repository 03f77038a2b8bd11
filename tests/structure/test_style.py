#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""What every source file of the project has: its licence first, a readable length and width."""
import unittest

import source_tree

SOURCES = (".c", ".h", ".def", ".h.in", ".map", ".py", ".sh", "meson.build")
LONGEST_FILE = 700
WIDEST_LINE = 100
LICENCE = "SPDX-License-Identifier: MIT"


def has_licence(text):
    """Whether the licence stands in the first line, or in the second where `#!` is the first."""
    lines = text.splitlines()
    first = lines[1:2] if lines and lines[0].startswith("#!") else lines[:1]
    return bool(first) and LICENCE in first[0]


def wide_lines(text):
    """The numbers of the lines that are too wide; the row of a table cannot be broken."""
    return [number for number, line in enumerate(text.splitlines(), 1)
            if len(line) > WIDEST_LINE and not line.lstrip(" *#").startswith("|")]


class Style(unittest.TestCase):
    def test_every_source_starts_with_its_licence(self):
        for path in source_tree.files(".", *SOURCES):
            with self.subTest(source_tree.name_of(path)):
                self.assertTrue(has_licence(path.read_text(encoding="utf-8")))

    def test_no_file_is_too_long(self):
        for folder in ("lib", "include", "bindings"):
            for path in source_tree.files(folder, *SOURCES):
                if source_tree.name_of(path).startswith("lib/standards/"):
                    continue  # tables are as long as the publication's
                with self.subTest(source_tree.name_of(path)):
                    length = len(path.read_text(encoding="utf-8").splitlines())
                    self.assertLessEqual(length, LONGEST_FILE)

    def test_lines_are_plain(self):
        for path in source_tree.files(".", *SOURCES):
            text = path.read_text(encoding="utf-8")
            with self.subTest(source_tree.name_of(path)):
                self.assertNotIn("\t", text)
                self.assertNotIn("\r", text)
                self.assertTrue(text.endswith("\n"))
                self.assertEqual(wide_lines(text), [])

    def test_the_checks_themselves(self):
        self.assertTrue(has_licence("#!/bin/sh\n# %s\n" % LICENCE))
        self.assertFalse(has_licence("int a;\n/* %s */\n" % LICENCE))
        self.assertFalse(has_licence(""))
        self.assertEqual(wide_lines("a\n%s\n| %s |\n" % ("b" * 101, "c" * 101)), [2])


if __name__ == "__main__":
    unittest.main()
