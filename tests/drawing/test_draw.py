# SPDX-License-Identifier: MIT
"""Drawings read back: what they say is what was measured and is required, and all can be read.

INGLE_COMMAND names the `ingle` command. The surveys are those of examples/ and INVENTED made-up
ones. Widths of texts are those of the font's own tables, not the library's.
"""

import concurrent.futures
import functools
import json
import os
import pathlib
import subprocess
import sys
import tempfile
import unittest

ROOT = pathlib.Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tests" / "oracle"))

import amounts  # noqa: E402  (from tests/oracle)
import invent  # noqa: E402
import picture  # noqa: E402

COMMAND = os.environ["INGLE_COMMAND"]
VIEWS = ["plan", "elevation", "section", "roof"]
INVENTED = int(os.environ.get("INGLE_INVENTED", "300"))
MILLIMETRE = 1_000_000  # nanometres
# Places on the sheet are whole micrometres; either end of a length may be off by less than two.
PLACE = 0.004
ROUNDED = 25_400_000 // 32  # amounts between the graduations are written with a sign for that
NOTHING_SHOWN = 0.5  # the share of invented surveys that may lack what a view rests on


def run(*arguments, stdin=b""):
    return subprocess.run([COMMAND, *arguments], input=stdin, capture_output=True, check=False,
                          timeout=60)


class Case:
    """A survey, its report in millimetres, and its drawings."""

    def __init__(self, name, document, unit):
        self.name, self.unit = name, unit
        self.source = json.dumps(document).encode()
        self.survey = document["survey"]
        self.default = document.get("unit", "in")
        report = run("check", "--no-working", "--unit", "mm", stdin=self.source)
        self.findings = json.loads(report.stdout)["findings"] if report.returncode == 0 else None
        self.error = report.stderr.decode()
        self.drawings = {view: run("draw", "--view", view, "--unit", unit, stdin=self.source)
                         for view in VIEWS}

    def pictures(self):
        for view, done in self.drawings.items():
            if done.returncode == 0:
                yield view, picture.Picture(done.stdout)

    def recorded(self, subject):
        """What the survey records of a subject, in nanometres; None for nothing."""
        value = self.survey
        for part in subject.removeprefix("/survey/").split("/"):
            value = value[int(part)] if isinstance(value, list) else value.get(part)
            if value is None:
                return None
        return amounts.read(value, "length", self.default)

    def said(self, subject, field, relation=None):
        """What findings say of a subject: all that they measured or require, in nanometres."""
        return [round(finding[field]["value"] * MILLIMETRE) for finding in self.findings
                if finding.get("subject") == subject and field in finding and
                finding["verdict"] != "not-applicable" and
                (relation is None or finding["relation"] == relation)]


def in_unit(unit):
    """The document's own unit for half of the made-up surveys, another for the rest."""
    return ["in", "mm", "ft", "m"][unit % 4]


@functools.cache
def cases():
    documents = []
    for path in sorted((ROOT / "examples").rglob("*.json")):
        document = json.loads(path.read_text())
        documents += [(path.stem, document, "in"), (path.stem + " in mm", document, "mm")]
    for seed in range(INVENTED):
        document = invent.Survey(seed, invent.STANDARDS).document
        documents.append((document["id"], document, in_unit(seed)))
    with concurrent.futures.ThreadPoolExecutor() as pool:
        return list(pool.map(lambda each: Case(*each), documents))


@functools.cache
def rule_numbers():
    """By rule and name, the numbers in nanometres that any standard's rule has."""
    found = {}
    for rule in json.loads(run("list", "rules").stdout):
        for name, amount in rule.get("numbers", {}).items():
            try:
                value = amounts.read(amount["text"], "length")
            except amounts.AmountError:
                continue
            found.setdefault(f"{rule['rule']}/{name}", set()).add(value)
    return found


@functools.cache
def drawn():
    """Every drawing: whose it is, its view, and the picture read back."""
    return [(case, view, each) for case in cases() for view, each in case.pictures()]


class Drawing(unittest.TestCase):
    def test_surveys_are_judged(self):
        self.assertEqual([], [(case.name, case.error) for case in cases()
                              if case.findings is None])

    def test_views_are_drawn_or_say_why_not(self):
        for case in cases():
            for view, done in case.drawings.items():
                if done.returncode != 0:
                    self.assertEqual(2, done.returncode, (case.name, view, done.stderr))
                    self.assertEqual("nothing-measured",
                                     json.loads(done.stderr)["error"]["code"], (case.name, view))
                    self.assertEqual(b"", done.stdout)
        for view in VIEWS:
            shown = [case.drawings[view].returncode == 0 for case in cases()]
            self.assertGreater(sum(shown), NOTHING_SHOWN * len(shown), view)

    def test_nothing_measured(self):
        source = b'{"standards": ["irc-2021"], "survey": {"appliance": {"fuel": "wood"}}}'
        for view in VIEWS:
            done = run("draw", "--view", view, stdin=source)
            self.assertEqual(2, done.returncode)
            self.assertEqual("nothing-measured", json.loads(done.stderr)["error"]["code"])

    def test_measured_is_what_was_recorded(self):
        for case, view, each in drawn():
            for amount in each.amounts:
                if amount.name == "measured":
                    self.assertEqual(case.recorded(amount.subject), amount.value,
                                     (case.name, view, amount))

    def test_derived_is_what_a_finding_measured(self):
        found = 0
        for case, view, each in drawn():
            for amount in each.amounts:
                if amount.name == "derived":
                    found += 1
                    self.assertIsNone(case.recorded(amount.subject), (case.name, view, amount))
                    self.assert_near(amount.value, case.said(amount.subject, "measured")[0],
                                     (case.name, view, amount))
        self.assertGreater(found, 0)

    def test_required_is_the_most_demanding(self):
        for name, relation, hardest in [("required", "at-least", max),
                                        ("allowed", "at-most", min)]:
            found = 0
            for case, view, each in drawn():
                for amount in each.amounts:
                    if amount.name == name:
                        found += 1
                        asked = case.said(amount.subject, "required", relation)
                        self.assertTrue(asked, (case.name, view, amount))
                        self.assert_near(amount.value, hardest(asked), (case.name, view, amount))
            self.assertGreater(found, 0)

    def assert_near(self, one, other, about):
        """Reports give millimetres as decimals, so the last nanometre may differ."""
        self.assertLessEqual(abs(one - other), 1, (one, other, about))

    def test_numbers_are_those_of_a_rule(self):
        found = set()
        for case, view, each in drawn():
            for amount in each.amounts:
                if amount.name == "number":
                    found.add(amount.subject)
                    self.assertIn(amount.value, rule_numbers()[amount.subject],
                                  (case.name, view, amount))
        self.assertEqual({"trim-projection/zone", "trim-projection/within",
                          "chimney-height-nearby/within"}, found)

    def test_words_are_the_amount(self):
        for case, view, each in drawn():
            for amount in each.amounts:
                words = amount.words
                for extra in ("within ", " required", " allowed"):
                    words = words.replace(extra, "")
                sign = -1 if "-" in words else 1
                read = sign * amounts.read(words.replace("-", "").replace("≈ ", ""), "length",
                                           case.unit)
                most = ROUNDED if "≈" in words else 0
                self.assertLessEqual(abs(read - amount.value), most, (case.name, view, amount))

    def test_lengths_are_to_scale(self):
        for case, view, each in drawn():
            scales = each.scales()
            self.assertTrue(scales, (case.name, view))
            for amount in each.amounts:
                true = [abs(abs(amount.value) / MILLIMETRE / scale - amount.length) <= PLACE
                        for scale in scales]
                self.assertTrue(any(true), (case.name, view, scales, amount))

    def test_what_fails_is_drawn_as_missing(self):
        """A hearth that is too short in front has the missing part hatched in the plan."""
        seen = 0
        for case, view, each in drawn():
            subjects = {finding.get("subject") for finding in case.findings
                        if finding["verdict"] == "fails"}
            if view == "plan" and "/survey/hearth/front" in subjects:
                seen += 1
                hatched = [element for element in each.root.iter(picture.SVG + "polygon")
                           if element.get("class") == "missing"]
                self.assertTrue(hatched, case.name)
        self.assertGreater(seen, 0)

    def test_no_text_lies_on_another(self):
        for case, view, each in drawn():
            self.assertEqual([], list(each.overlaps()), (case.name, view))

    def test_no_dimension_line_crosses_a_text(self):
        for case, view, each in drawn():
            self.assertEqual([], list(each.crossed()), (case.name, view))

    def test_nothing_leaves_the_page(self):
        for case, view, each in drawn():
            self.assertEqual([], list(each.strays()), (case.name, view))

    def test_it_says_what_it_is(self):
        for case, view, each in drawn():
            self.assertTrue(each.element_text("title"), (case.name, view))
            self.assertTrue(each.element_text("desc"), (case.name, view))

    def test_it_is_drawn_alike_again(self):
        for case in cases()[:12]:
            for view in VIEWS:
                again = run("draw", "--view", view, "--unit", case.unit, stdin=case.source)
                self.assertEqual(case.drawings[view].stdout, again.stdout)

    def test_other_programs_read_it(self):
        """xmllint (libxml2) finds it well formed, and rsvg-convert (librsvg) renders it."""
        with tempfile.TemporaryDirectory() as folder:
            files = []
            for case in cases():
                for view, done in case.drawings.items():
                    if done.returncode == 0:
                        files.append(pathlib.Path(folder, f"{len(files)}.svg"))
                        files[-1].write_bytes(done.stdout)
            done = subprocess.run(["xmllint", "--noout", *map(str, files)], check=False,
                                  capture_output=True, timeout=120)
            self.assertEqual((0, b""), (done.returncode, done.stderr))
            pages = pathlib.Path(folder, "all.pdf")
            done = subprocess.run(["rsvg-convert", "-f", "pdf", "-o", str(pages),
                                   *map(str, files)], check=False, capture_output=True,
                                  timeout=300)
            self.assertEqual((0, b""), (done.returncode, done.stderr))
            self.assertTrue(pages.read_bytes().startswith(b"%PDF"))


if __name__ == "__main__":
    unittest.main()
