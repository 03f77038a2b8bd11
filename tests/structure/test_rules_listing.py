#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""docs/rules.md is the listing of all rules as they are now.

INGLE_COMMAND names the `ingle` command.
"""
import copy
import decimal
import difflib
import os
import subprocess
import sys
import unittest

import rules_listing

INCHES = {"value": 20, "unit": "in", "text": "20 in"}
STANDARD = {"id": "made-up", "title": "Made-up Code", "edition": 2020, "place": "Nowhere",
            "unit": "in", "note": "For this test.",
            "liners": [{"liner": "8x8", "net_area": {"text": "33 in2"}, "table": "Table 9"}]}
RULE = {"standard": "made-up", "rule": "hearth-front", "section": "R1", "basis": "read",
        "relation": "at-least", "formula": "fixed", "numbers": {"least": INCHES}, "when": "always"}
TABLE = {"name": "Table 2", "row_reading": "up-to", "rows": [{"text": "1 ft2"}, {"text": "2 ft2"}],
         "cells": [[{"text": "4 in"}], [None]]}
LOOKED_UP = {**RULE, "rule": "flue-diameter", "formula": "table-cell", "from": ["opening.area"],
             "numbers": {}, "table": TABLE}


def lines_of(standards, rules):
    return rules_listing.listing(standards, rules).splitlines()


class Listing(unittest.TestCase):
    def test_it_is_what_the_rules_are_now(self):
        committed = rules_listing.LISTING.read_text(encoding="utf-8")
        now = rules_listing.made_now()
        if committed != now:
            changed = list(difflib.unified_diff(committed.splitlines(), now.splitlines(),
                                                "docs/rules.md", "the rules as they are",
                                                lineterm="", n=0))
            self.fail("docs/rules.md is not what the rules are now. Read what has changed, then\n"
                      f"    {rules_listing.HOW_TO_WRITE}\n\n" + "\n".join(changed[:40]))

    def test_it_has_every_rule_table_and_liner(self):
        standards = rules_listing.catalogue("standards")
        rules = rules_listing.catalogue("rules")
        lines = lines_of(standards, rules)
        self.assertGreater(len(rules), 50)
        for rule in rules:
            self.assertIn(rules_listing.line(rules_listing.row_of(rule)), lines)
        self.assertEqual([line[3:] for line in lines if line.startswith("## ")],
                         [standard["id"] for standard in standards])
        liners = sum(len(standard.get(kind, [])) for standard in standards
                     for kind in ("liners", "materials"))
        rows = sum(len(printed["rows"]) for standard in standards for printed, *_ in
                   rules_listing.looked_up([rule for rule in rules
                                            if rule["standard"] == standard["id"]]))
        tables = sum(line.startswith("| ---") for line in lines)
        self.assertEqual(sum(line.startswith("|") for line in lines),
                         len(rules) + liners + rows + 2 * tables)


class TheScriptItself(unittest.TestCase):
    def changed_lines(self, change):
        before = [copy.deepcopy(STANDARD)], [copy.deepcopy(RULE), copy.deepcopy(LOOKED_UP)]
        after = copy.deepcopy(before)
        change(*after)
        return [line for line in difflib.ndiff(lines_of(*before), lines_of(*after))
                if line[0] in "+-"]

    def test_every_change_is_one_line(self):
        def number(standards, rules):
            rules[0]["numbers"]["least"]["text"] = "18 in"

        def cell(standards, rules):
            rules[1]["table"]["cells"][1][0] = {"text": "5 in"}

        def key(standards, rules):
            rules[1]["table"]["rows"][0]["text"] = "1.5 ft2"

        def liner(standards, rules):
            standards[0]["liners"][0]["net_area"]["text"] = "34 in2"

        for change, text in ((number, "18 in"), (cell, "5 in"), (key, "1.5 ft2"),
                             (liner, "34 in2")):
            before, after = self.changed_lines(change)
            self.assertTrue(before.startswith("- |") and after.startswith("+ |"), before)
            self.assertIn(text, after)

    def test_every_part_of_a_rule_is_told(self):
        more = {"section": "R2", "basis": "cited", "relation": "at-most", "formula": "stepped",
                "when": "trim.combustible is yes", "since": 2015, "until": 2018,
                "reading": "Read like this.", "listing": "listing.hearth-front",
                "from": ["opening.area"],
                "follows": {"reading": "hearth-steps", "option": "round-up"}}
        for name, value in more.items():
            with self.subTest(name):
                self.assertEqual(len(self.changed_lines(
                    lambda standards, rules: rules[0].__setitem__(name, value))), 2)

    def test_a_rounded_text_gives_way_to_exact_decimals(self):
        """A change that the text rounds away would not be seen."""
        value = decimal.Decimal("0.150500000000001")
        rounded = {"value": value, "unit": "m2", "text": "≈ 0.151 m2"}
        self.assertEqual(rules_listing.text_of(rounded), "0.150500000000001 m2")
        self.assertEqual(rules_listing.text_of({"value": 1, "unit": "m2", "text": "1 m2"}), "1 m2")
        self.assertEqual(rules_listing.text_of({"value": value, "text": "≈ 0.15"}),
                         "0.150500000000001")
        self.assertEqual(rules_listing.text_of({"text": "yes"}), "yes")

    def test_what_could_break_a_line(self):
        self.assertEqual(rules_listing.line(["a\nb", "c|d"]), "| a b | c\\|d |")

    def test_rules_share_a_table(self):
        other = {**LOOKED_UP, "rule": "flue-side"}
        lines = lines_of([STANDARD], [LOOKED_UP, other, LOOKED_UP])
        self.assertEqual([line for line in lines if line.startswith("### Table")],
                         ["### Table 2: flue-diameter, flue-side"])

    def test_it_prints_what_it_would_write(self):
        done = subprocess.run([sys.executable, rules_listing.__file__], check=True,
                              stdout=subprocess.PIPE, env={**os.environ, "PYTHONUTF8": "1"})
        self.assertEqual(done.stdout.decode(), rules_listing.made_now())


if __name__ == "__main__":
    unittest.main()
