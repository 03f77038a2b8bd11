# SPDX-License-Identifier: MIT
"""The schemas of what the command answers, against all that it answers on the examples.

The outside judge is the jsonschema package, which knows JSON Schema 2020-12 and nothing of Ingle.
Of a schema that takes everything no document is wrong: so each kind of document is spoilt in many
places, and none of that may pass.
"""
import copy
import json
import pathlib
import random
import unittest

import jsonschema

from running import Run

ROOT = pathlib.Path(__file__).resolve().parents[2]
NAMES = ("survey", "report", "solution", "frontier", "sweep", "comparison", "exercise", "draft",
         "error")
SPOILT = 60
NOTHING = b'{"standards": ["irc-2021"], "survey": {}}'
# Of a length, or all that a choice or a flag can be.
RANGES = {"hearth.front": ("--from", "12 in", "--to", "24 in", "--step", "3 in"),
          "damper.state": (), "chimney.cap": (), "flue.obstructed": ()}


def surveys():
    """(file, text) of the survey documents that come with the project."""
    for folder in ("examples", "docs/guide"):
        for path in sorted((ROOT / folder).rglob("*.json")):
            yield path.name, path.read_bytes()


def places(part, above=()):
    """The path of every member and element of a document."""
    members = part.items() if isinstance(part, dict) else enumerate(part) \
        if isinstance(part, list) else ()
    for name, inner in members:
        yield above + (name,)
        yield from places(inner, above + (name,))


def at(document, path):
    for name in path:
        document = document[name]
    return document


def spoilt(document, path):
    """The document with one thing wrong at a place: another kind of value, or a member too many."""
    document = copy.deepcopy(document)
    holder, value = at(document, path[:-1]), at(document, path)
    if isinstance(value, dict):
        value["colour"] = "red"
    else:
        holder[path[-1]] = {"colour": "red"}
    return document


class Answers(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.schemas = {name: Run("schema", name).document for name in NAMES}
        cls.validators = {name: jsonschema.Draft202012Validator(schema)
                          for name, schema in cls.schemas.items()}

    def assert_valid(self, name, document):
        error = jsonschema.exceptions.best_match(self.validators[name].iter_errors(document))
        self.assertIsNone(error, f"{name}: {error}\n{json.dumps(document)[:1000]}")

    def answer(self, name, *words, stdin=b"", least=0):
        """What the command answers, which has to be valid, and to be an answer."""
        run = Run(*words, stdin=stdin)
        self.assertEqual(run.status, 0, (words, run.stderr))
        document = run.document
        self.assert_valid(name, document)
        self.assertGreaterEqual(len(list(places(document))), least)
        return document

    def assert_spoilt(self, name, document, leaving=()):
        """Nothing that is wrong anywhere in it passes."""
        found = [path for path in places(document) if path[0] not in leaving]
        for path in random.Random(name).sample(found, min(SPOILT, len(found))):
            self.assertFalse(self.validators[name].is_valid(spoilt(document, path)), (name, path))
        for member in self.schemas[name]["required"]:
            self.assertFalse(self.validators[name].is_valid(
                {each: part for each, part in document.items() if each != member}), member)
        self.assertFalse(self.validators[name].is_valid(document | {"colour": "red"}), name)

    def test_the_schemas_are_schemas(self):
        for name, schema in self.schemas.items():
            jsonschema.Draft202012Validator.check_schema(schema)
            self.assertEqual((schema["$id"], schema["additionalProperties"]),
                             (f"urn:ingle:{name}", False))
            for path in places(schema):
                if path[-1] == "$ref":
                    self.assertIn(at(schema, path),
                                  [f"#/$defs/{each}" for each in schema["$defs"]])

    def test_reports(self):
        for name, text in surveys():
            with self.subTest(name):
                self.answer("report", "check", "--all", "--probability", stdin=text)

    def test_solutions(self):
        for name, text in surveys():
            for quantity, span in RANGES.items():
                with self.subTest((name, quantity)):
                    self.answer("solution", "solve", "--quantity", quantity, *span, "--format",
                                "json", stdin=text)

    def test_a_solution_with_everything(self):
        found = self.answer("solution", "solve", "--quantity", "hearth.front", "--to", "24 in",
                            "--format", "json", stdin=dict(surveys())["nursery.json"])
        for member in ("surveyed", "nearest"):
            self.assertIn(member, found)
        self.assertIn("below", found["works"][0])
        self.assert_spoilt("solution", found)

    def test_frontiers(self):
        for name, text in surveys():
            with self.subTest(name):
                found = self.answer(
                    "frontier", "solve", "--quantity", "hearth.front", "--from", "12 in", "--to",
                    "24 in", "--step", "4 in", "--with", "opening.width", "--with-step", "20 in",
                    "--format", "json", stdin=text, least=30)
        self.assert_spoilt("frontier", found)

    def test_sweeps(self):
        for name, text in surveys():
            for quantity, span in RANGES.items():
                with self.subTest((name, quantity)):
                    found = self.answer("sweep", "sweep", "--quantity", quantity, *span, "--all",
                                        "--format", "json", stdin=text)
        self.assert_spoilt("sweep", found)

    def test_comparisons(self):
        standards = ("irc-2000", "irc-2021", "obc-2012", "common-practice-us")
        words = [word for each in standards for word in ("--standard", each)]
        for name, text in surveys():
            with self.subTest(name):
                found = self.answer("comparison", "compare", "--format", "json", *words,
                                    stdin=text)
                self.assertGreater(len(found["lines"]), 5)
        self.assert_spoilt("comparison", found)

    def test_worksheets_are_surveys(self):
        for name, text in surveys():
            with self.subTest(name):
                self.answer("survey", "worksheet", "--format", "json", stdin=text)
        for appliance in ("masonry-fireplace", "insert", "stove"):
            self.answer("survey", "worksheet", "--appliance", appliance, "--standard", "irc-2021",
                        "--format", "json")

    def test_exercises(self):
        for part in ("both", "problem", "answers"):
            for seed in ("0", "7", "999999999999999999"):
                for level in "1234":
                    found = self.answer("exercise", "exercise", "--seed", seed, "--level", level,
                                        "--part", part, "--standard", "irc-2021", "--format",
                                        "json")
            if "document" in found:
                self.assert_valid("survey", found["document"])
            self.assert_spoilt("exercise", found, leaving=("document",))
        both = self.answer("exercise", "exercise", "--seed", "3", "--standard", "irc-2021",
                           "--format", "json")
        for lacking in ({"document"}, {"questions"}, {"document", "questions", "answers"}):
            self.assertFalse(self.validators["exercise"].is_valid(
                {name: part for name, part in both.items() if name not in lacking}), lacking)

    def test_drafts(self):
        made = 0
        for name, text in surveys():
            run = Run("draft", stdin=text)
            if run.status == 0:
                made += 1
                self.assert_valid("draft", run.document)
            else:
                self.assert_valid("error", json.loads(run.stderr))
        self.assertGreater(made, 1)
        given = ("--opening-area", "6 ft2", "--flue-area", "120 in2",
                 "--hydraulic-diameter", "12 in", "--height", "16 ft")
        for more in ((), ("--rise", "100 F"), ("--room-pressure", "-40 Pa"), ("--unit", "m")):
            found = self.answer("draft", "draft", *given, *more, stdin=NOTHING)
            self.assert_spoilt("draft", found)

    def test_errors(self):
        for words, stdin in ((("check",), b"{"), (("check",), b'{"standards": [], "survey": {}}'),
                             (("chek",), b""), (("solve", "--quantity", "no.thing"), b"{}"),
                             (("check", "/nowhere/at-all.json"), b"")):
            run = Run(*words, stdin=stdin)
            self.assertNotEqual(run.status, 0)
            document = json.loads(run.stderr)
            self.assert_valid("error", document)
            self.assert_spoilt("error", document)
        for line in Run("check", "--lines", stdin=b"{\nnull\n[]\n").lines:
            self.assertIn("line", line)
            self.assert_valid("error", line)


if __name__ == "__main__":
    unittest.main()
