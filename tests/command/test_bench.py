# SPDX-License-Identifier: MIT
"""Bad input to the verbs of the trainer's bench: a clear error each, status 2, nothing written."""

import json
import subprocess
import tempfile
import unittest

from documents import FAILS, TOWN, encoded
from running import COMMAND, Run

BARE = {"standards": ["irc-2021"], "survey": {"appliance": {"kind": "masonry-fireplace"}}}
VIEWS = ["plan", "elevation", "section", "roof"]


class BadInput(unittest.TestCase):
    def refused(self, code, *words, says="", document=FAILS, status=2):
        with self.subTest(words):
            run = Run(*words, stdin=encoded(document))
            self.assertEqual((run.status, run.stdout), (status, b""))
            self.assertEqual(run.error["code"], code)
            self.assertGreater(len(run.error["message"]), 20)
            self.assertIn(says, run.error["message"])

    def stepping(self, code, *words, says=""):
        for verb in ("solve", "sweep"):
            for format in ("json", "csv" if verb == "sweep" else "text"):
                self.refused(code, verb, "--format", format, *words, says=says)

    def test_quantities(self):
        self.stepping("usage", says="--quantity")
        self.stepping("unknown-quantity", "--quantity", "opening.hieght", says="opening.height")
        self.stepping("unknown-quantity", "--quantity", "opening")
        self.stepping("unknown-quantity", "--quantity", "")
        self.stepping("unknown-quantity", "--quantity", "trim[7].distance", says="trim")

    def test_ranges(self):
        front = ["--quantity", "hearth.front"]
        rises = "has to rise"
        # Reversed, and between two graduations, where there is no value.
        self.stepping("range", *front, "--from", "20 in", "--to", "16 in", says=rises)
        self.stepping("range", *front, "--from", "16 1/64 in", "--to", "16 1/32 in", says=rises)
        for step in ("0", "0 in", "0 mm", "-1 in", "-1/16 in"):
            document_unit = [] if " " in step else ["--unit", "in"]
            self.stepping("range", *front, *document_unit, "--step", step, says="above zero")
        # Some million steps and more.
        self.stepping("range", *front, "--step", "0.00001 in", says="too many")
        self.stepping("implausible", *front, "--from", "16 in", "--to", "9000 ft",
                      says="hearth.front")
        self.stepping("implausible", *front, "--from", "-1 in", says="hearth.front")

    def test_amounts(self):
        front = ["--quantity", "hearth.front"]
        for option in ("--from", "--to", "--step"):
            name = option[2:]
            self.stepping("unit-missing", *front, option, "16", says=name)
            self.stepping("unit-unknown", *front, option, "16 cubits", says=name)
            self.stepping("dimension", *front, option, "16 in2", says=name)
            self.stepping("empty", *front, option, "", says=name)
        self.refused("unit-missing", "solve", *front, "--with", "opening.height", "--with-step",
                     "1", says="step")

    def test_rules(self):
        for verb in ("solve", "sweep"):
            self.refused("unknown-rule", verb, "--quantity", "hearth.front", "--rule",
                         "hearth-frnt", says="hearth-front")

    def test_two_quantities(self):
        front = ["solve", "--quantity", "hearth.front"]
        self.refused("range", *front, "--with", "hearth.front")
        self.refused("unknown-quantity", *front, "--with", "opening.hieght", says="opening.height")
        self.refused("range", *front, "--with", "opening.height", "--with-from", "30 in",
                     "--with-to", "20 in", says="opening.height")
        self.refused("usage", *front, "--format", "svg", says="--with")

    def test_nothing_to_draw(self):
        for view in VIEWS:
            self.refused("nothing-measured", "draw", "--view", view, document=BARE,
                         says="measured")
        self.refused("usage", "draw", "--view", "elevaton", says="elevation")

    def test_nothing_to_plot(self):
        self.refused("nothing-measured", "sweep", "--quantity", "damper.area", "--format", "svg",
                     "--from", "10 in2", "--to", "20 in2", "--rule", "hearth-front",
                     document=BARE)
        self.refused("dimension", "sweep", "--quantity", "flue.shape", "--format", "svg")

    def test_looks(self):
        for verb, *words in (["explain"], ["solve", "--quantity", "hearth.front"], ["compare"],
                             ["worksheet"], ["exercise", "--standard", "irc-2021"]):
            self.refused("usage", verb, *words, "--format", "markdwn", says="markdown")
            self.refused("usage", verb, *words, "--format", "", says="--format")
            for width in ("0", "19", "1001", "-5", "wide", "", "80x"):
                self.refused("usage", verb, *words, "--width", width, says="--width")

    def test_worksheets(self):
        self.refused("no-standard", "worksheet", "--appliance", "stove")
        self.refused("usage", "worksheet", "--appliance", "stoev", "--standard", "irc-2021",
                     says="stove")
        self.refused("usage", "worksheet", "--appliance", "stove", "--standard", "irc-2021", "-",
                     says="--appliance")
        self.refused("usage", "worksheet", "--fuel", "wood", says="--appliance")

    def test_exercises(self):
        self.refused("no-standard", "exercise")
        standard = ["exercise", "--standard", "irc-2021"]
        for seed in ("", "-1", "1.5", "one", "9" * 19, "0x10", " 1"):
            self.refused("usage", *standard, "--seed", seed, says="--seed")
        for level in ("0", "5", "-1", ""):
            self.refused("usage", *standard, "--level", level)
        self.refused("usage", *standard, "--part", "problems", says="problem")
        self.refused("nothing-measured", "exercise", "--standard", "nfpa-211-inspections")
        self.refused("usage", *standard, "file.json")

    def test_documents(self):
        for verb, *words in (["explain"], ["draw"], ["solve", "--quantity", "hearth.front"],
                             ["sweep", "--quantity", "hearth.front"], ["compare"],
                             ["worksheet"]):
            for document, code in (({}, "missing-name"), ({"survey": {}}, "no-standard"),
                                   ([], "type"),
                                   (dict(FAILS, survey={"opening": {"width": "36"}}),
                                    "unit-missing")):
                self.refused(code, verb, *words, document=document)
            self.refused("io", verb, *words, "no-such-file.json", says="no-such-file.json",
                         status=3)

    def test_one_document_at_a_time(self):
        with tempfile.NamedTemporaryFile(suffix=".json") as file:
            file.write(encoded(FAILS))
            file.flush()
            for verb, *words in (["explain"], ["draw"], ["compare"], ["worksheet"]):
                self.refused("usage", verb, *words, file.name, file.name)

    def test_a_rule_that_is_not_there_is_not_explained(self):
        for words in (["explain"], ["assess"], ["assess", "--format", "svg"]):
            self.refused("unknown-rule", *words, "--rule", "hearth-frnt", says="hearth-front")


class Output(unittest.TestCase):
    def test_output_that_cannot_be_written(self):
        for verb, *words in (["explain"], ["draw"], ["solve", "--quantity", "hearth.front"],
                             ["sweep", "--quantity", "opening.height", "--format", "csv"],
                             ["compare", "--format", "text"], ["worksheet"],
                             ["exercise", "--standard", "irc-2021"]):
            with self.subTest(verb), open("/dev/full", "wb") as full:
                done = subprocess.run([COMMAND, verb, *words], input=encoded(FAILS), stdout=full,
                                      stderr=subprocess.PIPE, check=False)
                self.assertEqual(done.returncode, 3)
                self.assertEqual(json.loads(done.stderr)["error"]["code"], "io")

    def test_amendments_change_the_answer(self):
        with tempfile.NamedTemporaryFile(suffix=".json") as file:
            file.write(encoded(TOWN))
            file.flush()
            run = Run("solve", "--quantity", "hearth.front", "--rule", "hearth-front",
                      "--amendments", file.name, stdin=encoded(FAILS))
        self.assertEqual(run.document["works"][0]["from"]["text"], "24 in")


if __name__ == "__main__":
    unittest.main()
