# SPDX-License-Identifier: MIT
"""The properties of examples/: their surveys are judged, their reports are what is given now.

    /usr/bin/python3 tests/examples/test_examples.py           # compares
    /usr/bin/python3 tests/examples/test_examples.py --write   # writes every report.md anew

INGLE_COMMAND names the `ingle` command. What a README says is to be noticed stands in its table
(survey, standard, rule, verdict), and each of these rows is looked up in what the command gives.
"""

import json
import os
import pathlib
import re
import subprocess
import sys
import unittest

COMMAND = os.environ["INGLE_COMMAND"]
EXAMPLES = pathlib.Path(__file__).resolve().parents[2] / "examples"
NOTICED = re.compile(r"^\| `([^`]+)` \| `([^`]+)` \| `([^`]+)` \| ([a-z-]+) \|$", re.MULTILINE)
LEAST_NOTICED = 5
STANDARDS_AT_ONCE = 5
SLOWEST = 60


def surveys():
    return sorted(EXAMPLES.rglob("*.json"))


def properties():
    """The folders that have a report; each of them has surveys and a story."""
    return sorted(path.parent for path in EXAMPLES.glob("*/report.md"))


def check(*arguments):
    """What `ingle check` writes; anything but success is an error here."""
    return subprocess.run([COMMAND, "check", *map(str, arguments)], check=True, timeout=SLOWEST,
                          stdout=subprocess.PIPE).stdout


def findings(survey, *options):
    return json.loads(check(*options, survey))["findings"]


def report(folder):
    """The report of a property, of all its surveys in the order of their names."""
    pages = [subprocess.run([COMMAND, "explain", "--form", "report", "--format", "markdown",
                             str(survey)], check=True, timeout=SLOWEST,
                            stdout=subprocess.PIPE).stdout.decode()
             for survey in sorted(folder.glob("*.json"))]
    return "\n".join(pages)


def raised(text):
    """Units as reports write them."""
    return re.sub(r"\b(in|ft|mm|cm|m)([23])\b", lambda unit: unit[1] + "²³"[int(unit[2]) - 2],
                  text)


def known_standards():
    done = subprocess.run([COMMAND, "list", "standards"], check=True, timeout=SLOWEST,
                          stdout=subprocess.PIPE)
    return {standard["id"] for standard in json.loads(done.stdout)}


def verdicts(found, standard, rule):
    return {finding["verdict"] for finding in found
            if (finding["standard"], finding["rule"]) == (standard, rule)}


class Examples(unittest.TestCase):
    """The surveys, the stories and the reports of examples/."""

    def test_every_survey_is_judged_by_known_standards(self):
        known = known_standards()
        self.assertTrue(surveys())
        for path in surveys():
            with self.subTest(path.relative_to(EXAMPLES)):
                self.assertTrue(findings(path))
                self.assertLessEqual(set(json.loads(path.read_text())["standards"]), known)

    def test_one_survey_names_five_standards(self):
        named = [len(json.loads(path.read_text())["standards"]) for path in surveys()]
        self.assertGreaterEqual(max(named), STANDARDS_AT_ONCE)

    def test_reports_are_what_is_given_now(self):
        self.assertTrue(properties())
        for folder in properties():
            with self.subTest(folder.name):
                self.assertEqual((folder / "report.md").read_text(encoding="utf-8"),
                                 report(folder), f"run {__file__} --write and read the changes")

    def test_what_the_stories_say_is_to_be_noticed(self):
        for folder in properties():
            noticed = NOTICED.findall((folder / "README.md").read_text(encoding="utf-8"))
            self.assertGreaterEqual(len(noticed), LEAST_NOTICED, folder.name)
            found = {path.name: findings(path) for path in folder.glob("*.json")}
            self.assertEqual(set(found), {survey for survey, *_ in noticed}, folder.name)
            for survey, standard, rule, verdict in noticed:
                with self.subTest(survey, standard=standard, rule=rule):
                    self.assertIn(verdict, verdicts(found[survey], standard, rule))

    def test_every_failing_finding_stands_in_the_report(self):
        """Against the documents, not against what wrote the report."""
        for folder in properties():
            text = (folder / "report.md").read_text(encoding="utf-8").replace("\\", "")
            for path in folder.glob("*.json"):
                for finding in findings(path):
                    if finding["verdict"] == "fails":
                        danger = finding["caution"].split(" What is asked here is ")[0]
                        for words in (finding["sentence"][1:], danger.rstrip(".")):
                            self.assertIn(raised(words), text, path.name)

    def test_the_reading_decides_about_the_hearth_of_osprey_landing(self):
        """OBC 2012, 9.22.5.1(2): half a step of 50 mm counts as a whole one, or not at all."""
        survey = EXAMPLES / "osprey-landing" / "winter-room.json"
        for option, verdict in (("round-up", "fails"), ("whole-steps", "meets")):
            found = findings(survey, "--reading", f"hearth-steps={option}")
            self.assertEqual(verdicts(found, "obc-2012", "hearth-from-facing"), {verdict}, option)


def write():
    """Writes the report of every property: every folder whose story tells of one."""
    for story in sorted(EXAMPLES.glob("*/README.md")):
        if "report.md" in story.read_text(encoding="utf-8"):
            (story.parent / "report.md").write_text(report(story.parent), encoding="utf-8")


if __name__ == "__main__":
    if sys.argv[1:] == ["--write"]:
        write()
    else:
        unittest.main()
