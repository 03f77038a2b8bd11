#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Proves that run_cases.py fails where it has to: a runner that cannot fail proves nothing."""
import copy
import json
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

RUNNER = Path(__file__).with_name("run_cases.py")

# Code: IRC 2021 R1001.10: 20 in front of an opening of 6 ft2 or more.
GOOD = {
    "name": "a hearth one inch short",
    "source": {"publication": "IRC", "section": "R1001.10", "edition": "2021"},
    "kind": "derived",
    "document": {
        "standards": ["irc-2021"],
        "survey": {"appliance": {"kind": "masonry-fireplace"},
                   "opening": {"width": "36 in", "height": "24 in"},
                   "hearth": {"front": "19 in", "left": "12 in", "right": "12 in"}},
    },
    "expect": {
        "verdict": "fails",
        "findings": [
            {"rule": "hearth-front", "verdict": "fails", "measured": "19 in",
             "required": "20 in", "margin": "-1 in",
             "remedy": [{"change": "/survey/hearth/front", "to": "20 in"}]},
            {"rule": "hearth-side", "subject": "/survey/hearth/left", "verdict": "meets",
             "remedy": []},
        ],
        "absent": ["insert-hearth-front"],
        "unmeasured": ["/survey/firebox/depth"],
    },
}


class Runner(unittest.TestCase):
    def run_content(self, text):
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder, "cases.json")
            path.write_text(text, encoding="utf-8")
            return subprocess.run([sys.executable, str(RUNNER), str(path)], text=True,
                                  capture_output=True, check=False)

    def run_cases(self, *cases):
        return self.run_content(json.dumps({"title": "cases", "cases": cases}))

    def assert_fails(self, done, *words, counts="0 passed, 1 failed"):
        self.assertEqual(done.returncode, 1, done.stdout + done.stderr)
        self.assertEqual(done.stdout.splitlines()[-1], counts)
        for word in words:
            self.assertIn(word, done.stdout)

    def changed(self, change):
        case = copy.deepcopy(GOOD)
        change(case)
        return case

    def test_a_good_case_passes(self):
        done = self.run_cases(GOOD)
        self.assertEqual(done.stdout, "1 passed, 0 failed\n")
        self.assertEqual(done.returncode, 0)

    def test_wrong_expectations_fail(self):
        first = lambda case: case["expect"]["findings"][0]
        second = lambda case: case["expect"]["findings"][1]
        changes = {
            "verdict of the whole": lambda case: case["expect"].update(verdict="meets"),
            "verdict": lambda case: first(case).update(verdict="meets"),
            "measured": lambda case: first(case).update(measured="19.0 in"),
            "required": lambda case: first(case).update(required="16 in"),
            "margin": lambda case: first(case).update(margin="1 in"),
            "remedy": lambda case: first(case)["remedy"][0].update(to="21 in"),
            "no remedy": lambda case: first(case).update(remedy=[]),
            "a remedy where none is": lambda case: second(case).update(
                remedy=[{"change": "/survey/hearth/left", "to": "12 in"}]),
            "a rule that is not there": lambda case: first(case).update(rule="insert-hearth-front"),
            "two findings where one is due": lambda case: second(case).pop("subject"),
            "another subject": lambda case: first(case).update(subject="/survey/hearth/left"),
            "another standard": lambda case: first(case).update(standard="irc-2024"),
            "a reading where there is none": lambda case: first(case).update(reading="another"),
            "absent": lambda case: case["expect"].update(absent=["hearth-side"]),
            "unmeasured": lambda case: case["expect"].update(unmeasured=["/survey/hearth/front"]),
        }
        for name, change in changes.items():
            with self.subTest(name):
                self.assert_fails(self.run_cases(self.changed(change)), "FAILED", "expected")

    def test_unknown_words_fail(self):
        places = {
            "case": lambda case: case,
            "source": lambda case: case["source"],
            "expect": lambda case: case["expect"],
            "finding": lambda case: case["expect"]["findings"][0],
            "remedy": lambda case: case["expect"]["findings"][0]["remedy"][0],
        }
        for name, place in places.items():
            with self.subTest(name):
                case = self.changed(lambda case, place=place: place(case).update(requird="20 in"))
                self.assert_fails(self.run_cases(case), "unknown word 'requird'")
        done = self.run_content(json.dumps({"title": "cases", "case": [], "cases": [GOOD]}))
        self.assert_fails(done, "unknown word 'case'")

    def test_unusable_cases_fail(self):
        changes = {
            "'section' is missing": lambda case: case["source"].pop("section"),
            "unknown kind": lambda case: case.update(kind="rumour"),
            "unknown verdict": lambda case: case["expect"].update(verdict="passes"),
            "expects nothing of the finding":
                lambda case: case["expect"].update(findings=[{"rule": "hearth-front"}]),
            "expects nothing": lambda case: case.update(expect={"findings": []}),
            "has the wrong type": lambda case: case.update(note=7),
            "'expect' is missing": lambda case: case.pop("expect"),
            "ended with status 2": lambda case: case["document"].update(standards=["irc-1066"]),
        }
        for word, change in changes.items():
            with self.subTest(word):
                self.assert_fails(self.run_cases(self.changed(change)), word)

    def test_unusable_files_fail(self):
        self.assert_fails(self.run_content(""), "FAILED")
        self.assert_fails(self.run_content('{"title": "none", "cases": []}'), "no cases")
        self.assert_fails(self.run_content('{"title": "a", "title": "b", "cases": []}'), "twice")
        self.assert_fails(self.run_cases(GOOD, GOOD), "two cases are called")
        done = subprocess.run([sys.executable, str(RUNNER), "not-there.json"], text=True,
                              capture_output=True, check=False)
        self.assert_fails(done, "not-there.json")

    def test_a_disagreement_must_fail(self):
        wrong = self.changed(lambda case: case["expect"]["findings"][0].update(required="16 in"))
        wrong["disagrees"] = "The publication prints another number."
        self.assertEqual(self.run_cases(wrong).stdout, "1 passed, 0 failed\n")
        passing = self.changed(lambda case: case.update(disagrees="It does not."))
        self.assert_fails(self.run_cases(passing), "and passes")

    def test_a_disagreement_has_to_be_usable(self):
        broken = self.changed(lambda case: case["document"].update(standards=["irc-1066"]))
        broken["disagrees"] = "The publication prints another number."
        self.assert_fails(self.run_cases(broken), "ended with status 2")

    def test_other_editions_have_to_agree(self):
        """The abutting trim's clearance: 12 in until IRC 2021, 8 in since IRC 2024 (R1001.11)."""
        def trim(case):
            case["document"]["survey"]["trim"] = [{"place": "abutting", "lining-distance": "9 in"}]
            case["document"]["survey"]["opening"] = {"area": "5 ft2"}
            case["expect"] = {"findings": [{"standard": "irc-2021", "rule": "trim-abutting",
                                            "verdict": "fails", "required": "12 in"}]}
        same, differs = self.changed(trim), self.changed(trim)
        same["also"] = ["irc-2012", "irc-2018"]
        differs["also"] = ["irc-2012", "irc-2024"]
        self.assertEqual(self.run_cases(same).stdout, "1 passed, 0 failed\n")
        self.assert_fails(self.run_cases(differs), "irc-2024: standard irc-2024")

    def test_other_editions_have_to_be_usable(self):
        for word, also in (("stands twice", ["irc-2021"]), ("stands twice", ["irc-2018"] * 2),
                           ("irc-1066", ["irc-1066"]), ("texts are due", [2018])):
            with self.subTest(also):
                self.assert_fails(self.run_cases({**GOOD, "also": also}), word)
        many = self.changed(lambda case: case["document"]["standards"].append("irc-2018"))
        self.assert_fails(self.run_cases({**many, "also": ["irc-2015"]}), "one standard")

    def test_other_cases_go_on(self):
        wrong = self.changed(lambda case: case["expect"].update(verdict="meets"))
        wrong["name"] = "a wrong one"
        self.assert_fails(self.run_cases(wrong, GOOD), "a wrong one", counts="1 passed, 1 failed")


if __name__ == "__main__":
    unittest.main()
