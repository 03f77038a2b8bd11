#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The statuses of status.h are those that the library lists, with the same numbers, each once.

INGLE_COMMAND names the `ingle` command.
"""
import json
import os
import re
import subprocess
import unittest

import source_tree


def enumerators(text):
    """The (document name, number) pairs of a header's status enumerators."""
    code = source_tree.without_comments(text)
    pairs = re.findall(r"\bINGLE_(?:ERROR_)?(\w+)\s*=\s*(-?\d+)", code)
    return [("done" if name == "OK" else name.lower().replace("_", "-"), int(number))
            for name, number in pairs]


class Statuses(unittest.TestCase):
    def setUp(self):
        header = source_tree.ROOT / "include/ingle/status.h"
        self.text = header.read_text(encoding="utf-8")
        self.in_header = enumerators(self.text)

    def test_the_library_lists_those_of_the_header(self):
        done = subprocess.run([os.environ["INGLE_COMMAND"], "list", "statuses"], check=True,
                              text=True, encoding="utf-8", capture_output=True)
        listed = json.loads(done.stdout)
        self.assertEqual([(status["code"], status["status"]) for status in listed],
                         self.in_header)
        for status in listed:
            self.assertRegex(status["text"], r"^[A-Z].*\.$")

    def test_names_and_numbers_are_unique(self):
        names, numbers = zip(*self.in_header)
        self.assertGreater(len(names), 30)
        self.assertEqual(len(set(names)), len(names))
        self.assertEqual(len(set(numbers)), len(numbers))

    def test_signs_say_what_they_have_to(self):
        code = source_tree.without_comments(self.text)
        for name, number in re.findall(r"\b(INGLE_\w+)\s*=\s*(-?\d+)", code):
            with self.subTest(name):
                self.assertEqual(name.startswith("INGLE_ERROR_"), int(number) < 0)

    def test_every_enumerator_has_a_number(self):
        body = source_tree.without_comments(self.text).split("enum {")[1].split("}")[0]
        names = re.findall(r"\bINGLE_\w+", body)
        self.assertEqual(len(names), len(self.in_header), "one has no number of its own")


if __name__ == "__main__":
    unittest.main()
