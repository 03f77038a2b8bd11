#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Holds the published cases to the standards: no row without a case that expects something of it.

A row counts as reached where a case expects a verdict or a requirement of a finding that comes
from it, and the finding judges by the row's own numbers: it is neither unmeasured nor left to a
listing. A row that only tells what listings usually ask is reached where a case expects to be told
it. A row that prints no number at all is reached where a case expects to be told so. Every
edition counts by itself. INGLE_COMMAND names the command.
"""
import json
import unittest
from decimal import Decimal
from pathlib import Path

import rows
import run_cases

# How many check values there are for masonry fireplaces (M-01 to M-47) and stoves (S-01 to S-34).
CHECK_VALUES = {"M": 47, "S": 34}
JUDGED = ("meets", "fails", "too-close")


def cases():
    """Every case that agrees with its publication, once for each edition that it names."""
    for path in sorted(Path(__file__).parent.glob("*.json")):
        for case in run_cases.read_file(path):
            if "disagrees" not in case:
                yield from run_cases.variants(case)


def judged(some):
    """(case, report) of each case; those with the same arguments are judged together."""
    by_arguments = {}
    for case in some:
        by_arguments.setdefault(tuple(case.get("arguments", ())), []).append(case)
    for alike in by_arguments.values():
        yield from zip(alike, run_cases.run_lines(alike))


def is_expected(finding, expect):
    """Whether a case says what a finding comes to or requires."""
    return any({"verdict", "required", "usual"} & each.keys()
               and all(finding.get(name) == each[name]
                       for name in ("standard", "rule", "subject", "reading") if name in each)
               and ("usual" in each or not tells_usual(finding))
               for each in expect["findings"])


def prints_nothing(rule):
    """Whether a row says of everything it applies to that the publication has no number."""
    if rule["formula"] == "not-printed":
        return True
    return "table" in rule and not any(cell for row in rule["table"]["cells"] for cell in row)


def tells_usual(finding):
    """Whether a finding leaves the matter to a listing and tells what is usual."""
    return finding["verdict"] == "by-listing" and "usual" in finding


def decides(finding, rule):
    """Whether a finding judges by the numbers of its row."""
    if prints_nothing(rule):
        return "prints no value" in finding["sentence"]
    if rule["formula"] in ("listing-with-usual", "listing-about-body"):
        return tells_usual(finding)
    return finding["verdict"] in JUDGED and (
        "by_listing" not in finding or rule["formula"] == "by-listing")


def reached(known, some):
    """(case, place of a row it reaches, or None where the row cannot be told) of each finding."""
    for case, report in judged(some):
        document = json.loads(json.dumps(case["document"]), parse_float=Decimal)
        for finding in report["findings"]:
            if is_expected(finding, case["expect"]):
                found = known.of(document, finding)
                if len(found) != 1:
                    yield case, None
                elif decides(finding, known.rules[found[0]]):
                    yield case, found[0]


def shown(rule):
    follows = rule.get("follows")
    return "%s %s, %s%s%s" % (rule["standard"], rule["rule"], rule["section"],
                              ", when " + rule["when"] if rule["when"] else "",
                              ", %(reading)s=%(option)s" % follows if follows else "")


class Coverage(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.known = rows.Rows()
        cls.reached = list(reached(cls.known, cases()))

    def lacking(self, reached_places):
        return [shown(rule) for place, rule in enumerate(self.known.rules)
                if place not in reached_places]

    def test_every_row_is_reached(self):
        lacking = self.lacking({place for _, place in self.reached})
        self.assertFalse(lacking, "no case reaches %d of %d rows:\n%s" % (
            len(lacking), len(self.known.rules), "\n".join(lacking)))

    def test_every_check_value_has_a_case(self):
        """The project's check values, by the ids that the names of their cases begin with."""
        names = " ".join(case["name"] for case in cases())
        due = ["M-%02d" % number for number in range(1, CHECK_VALUES["M"] + 1)]
        due += ["S-%02d" % number for number in range(1, CHECK_VALUES["S"] + 1)]
        self.assertEqual([each for each in due if each not in names], [])

    def test_the_row_of_every_finding_can_be_told(self):
        untold = {"%s, %s" % (case["name"], case["document"]["standards"])
                  for case, place in self.reached if place is None}
        self.assertFalse(untold, "the row of a finding cannot be told in\n" + "\n".join(untold))

    def test_a_row_without_its_cases_is_noticed(self):
        for place, rule in enumerate(self.known.rules):
            reaching = {case["name"] for case, there in self.reached if there == place}
            left = {there for case, there in self.reached if case["name"] not in reaching}
            self.assertIn(shown(rule), self.lacking(left))


if __name__ == "__main__":
    unittest.main()
