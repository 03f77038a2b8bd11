# SPDX-License-Identifier: MIT
"""The schemas that the command writes, against the documents that it takes and gives.

The outside judge is the jsonschema package, which knows JSON Schema 2020-12 and nothing of Ingle.
"""

import json
import pathlib
import tempfile
import unittest

import jsonschema

from documents import (BAD_BEYOND_SCHEMA, BAD_DOCUMENTS, BAD_TOWNS, EXAMPLE, FAILS, MEETS,
                       TOO_CLOSE, TOWN, UNMEASURED, changed, encoded)
from running import Run

EXAMPLES = pathlib.Path(__file__).resolve().parents[2] / "examples"
WIDTH = "/survey/opening/width"


def examples():
    """The survey documents that come with the project."""
    return [json.loads(path.read_text()) for path in sorted(EXAMPLES.rglob("*.json"))]


def with_unit(unit, value):
    """The contract's example with another unit of bare numbers, and one of them."""
    return changed("/unit", unit, changed(WIDTH, value))


# Documents that use what the contract allows.
GOOD = [
    EXAMPLE, FAILS, MEETS, TOO_CLOSE, UNMEASURED,
    {"standards": ["irc-2021"], "survey": {}},
    changed("/note", "Anything."),
    changed("/survey/note", "Anything."),
    changed("/survey/opening/note", "Anything."),
    changed("/survey/trim/0/note", "Anything."),
    changed("/survey/opening/height/note", "Anything."),
    changed("/amendments/0/note", "Anything."),
    changed("/survey/trim", []),
    changed("/survey/trim/0/combustible", False),
    changed("/survey/trim/0/label", None),
    changed("/amendments", []),
    changed("/amendments/0/set/large", 24),
    changed("/amendments/0/set/large", {"value": 24, "unit": "in"}),
    changed("/tolerance", 0.0625),
    changed("/tolerance", {"value": 2, "unit": "mm"}),
    changed("/standards", ["irc-2021", "irc-2024"]),
    changed("/readings", {}),
    {"standards": ["missouri-extension", "common-practice-us"], "survey": {
        "appliance": {"kind": "masonry-fireplace"},
        "creosote": {"kind": "glazed", "thickness": "1/64 in"}}},
    {"standards": ["common-practice-us"], "survey": {
        "appliance": {"kind": "stove"}, "listing": {"label": "listed"}}},
    changed("/readings", {"hearth-steps": "whole-steps", "note": "As the inspector reads it."}),
    with_unit("mm", 914), with_unit("cm", 91.4), with_unit("m", 0.914), with_unit("ft", 3),
    with_unit("in", {"value": 36}),
    with_unit("in", {"value": 36, "tolerance": 0.125}),
    with_unit("in", {"value": 36, "tolerance": "1/8 in"}),
    with_unit("in", {"value": "36 in", "tolerance": "1/8 in"}),
    with_unit("in", {"value": "36 1/2", "unit": "[in_i]"}),
    with_unit("in", {"value": "9.14e2", "unit": "mm", "tolerance": 2}),
    changed("/survey/opening/area", 864),
    changed("/survey/smoke-chamber", {"slope": "45°"}),
    changed("/survey/smoke-chamber", {"slope": {"value": 0.5, "unit": "rad", "tolerance": 0.01}}),
    changed("/survey/gas", {"input": "40000 Btu/h"}),
    changed("/survey/gas", {"input": {"value": 11.7, "unit": "kW", "tolerance": 0.1}}),
] + [changed(WIDTH, text) for text in (
    "36 in", "3' 0 1/2\"", "3 ft 1/2 in", "3ft4in", "15-15/16 in", "15 15/16\"", "12½ in",
    "12 ½ in", "½ ft", "36 in.", "36 inches", "3′ 4″", "914 mm", "91.4 cm", "0.914 m", "9.14e2 mm",
    "36 [in_i]", "  36  in  ", "36\u00a0in", "12 1⁄2 in")
] + [changed("/survey/flue/net-area", text) for text in (
    "127 in2", "127 sq in", "127 sq. in.", "127 in²", "0.9 ft2", "900 cm2", "0.08 m2", "0.08 m²",
    "127 [sin_i]", {"value": 127, "unit": "in2"}, {"value": 127, "unit": "[sin_i]"})]

# Documents of amendments that use what is allowed.
GOOD_TOWNS = [
    TOWN, {"amendments": []},
    {"amendments": changed("/amendments/0/set/large", "24 in", TOWN)["amendments"]},
    changed("/unit", None, changed("/amendments/0/set/large", {"value": 61, "unit": "cm"}, TOWN)),
    changed("/amendments/0/note", "Anything.", TOWN),
    changed("/amendments/0/set/note", "Anything.", TOWN),
    changed("/amendments/0/set/threshold", 850, TOWN),
]

# Documents that are wrong in ways that only a schema made with care finds.
WRONG = [document for _, document, *_ in BAD_DOCUMENTS] + [
    changed(WIDTH, {"value": "36 in", "unit": "in"}),
    changed(WIDTH, {"value": "36"}),
    changed(WIDTH, {"value": "36 in", "tolerance": 0.125}),
    changed(WIDTH, {"unit": "in"}),
    changed(WIDTH, {"value": 36, "unit": "in2"}),
    changed("/unit", None, changed("/tolerance", 0.0625)),
    changed("/unit", None, changed("/amendments/0/set/large", 24)),
    changed("/unit", None, changed("/survey/trim/0/distance", 10)),
    changed("/tolerance", {"value": 2, "unit": "mm", "tolerance": "1 mm"}),
    changed("/amendments/0/set/large", {"value": 2, "unit": "in", "tolerance": "1 in"}),
    changed("/amendments/0/set", {"note": "Nothing is set."}),
    changed("/survey/smoke-chamber", {"slope": 45}),
    changed("/survey/gas", {"input": 40000}),
    changed("/survey/gas", {"input": "40000"}),
    changed("/survey/gas", {"input": "40,000 Btu/h"}),
    changed("/survey/gas", {"input": {"value": "40000 Btu/h", "unit": "kW"}}),
    changed("/survey/flue/shape", 1),
    changed("/survey/trim/0", "shelf"),
    changed("/id", 7),
    changed("/id", "a\0b"),
]


class Schema(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.schemas = {name: Run("schema", name).document
                       for name in ("survey", "report", "amendments")}
        cls.survey = jsonschema.Draft202012Validator(cls.schemas["survey"])
        cls.report = jsonschema.Draft202012Validator(cls.schemas["report"])
        cls.town = jsonschema.Draft202012Validator(cls.schemas["amendments"])

    def assert_valid(self, validator, document):
        error = jsonschema.exceptions.best_match(validator.iter_errors(document))
        self.assertIsNone(error, f"{error}\n{json.dumps(document)[:2000]}")

    def judged(self, documents, *words):
        """The answers to documents, one a line."""
        data = b"".join(encoded(document) + b"\n" for document in documents)
        run = Run("check", "--lines", *words, stdin=data)
        self.assertEqual((run.status, run.stderr), (0, b""))
        self.assertEqual(len(run.lines), len(documents))
        return run.lines

    def test_the_schemas_are_schemas(self):
        for name, schema in self.schemas.items():
            jsonschema.Draft202012Validator.check_schema(schema)
            self.assertEqual(schema["$schema"], "https://json-schema.org/draft/2020-12/schema")
            self.assertEqual(schema["$id"], f"urn:ingle:{name}")
            self.assertEqual(schema["additionalProperties"], False)

    def test_every_reference_leads_somewhere(self):
        def references(part):
            if isinstance(part, dict):
                if isinstance(part.get("$ref"), str):
                    yield part["$ref"]
                part = list(part.values())
            if isinstance(part, list):
                for inner in part:
                    yield from references(inner)

        for schema in self.schemas.values():
            found = set(references(schema))
            self.assertLessEqual(found, {f"#/$defs/{name}" for name in schema["$defs"]})

    def test_good_documents(self):
        for document, answer in zip(GOOD, self.judged(GOOD)):
            self.assertNotIn("error", answer, json.dumps(document))
            self.assert_valid(self.survey, document)

    def test_wrong_documents_are_refused_by_both(self):
        for document, answer in zip(WRONG, self.judged(WRONG)):
            text = json.dumps(document)
            self.assertIn("error", answer, text)
            self.assertFalse(self.survey.is_valid(document), text)

    def amended_by(self, document):
        """What comes of a document as a file of amendments."""
        with tempfile.NamedTemporaryFile() as file:
            file.write(encoded(document))
            file.flush()
            return Run("check", "--amendments", file.name, stdin=encoded(FAILS))

    def test_amendments_of_a_town(self):
        for document in GOOD_TOWNS:
            self.assertEqual(self.amended_by(document).status, 0, json.dumps(document))
            self.assert_valid(self.town, document)

    def test_wrong_amendments_are_refused_by_both(self):
        for name, document, *_ in BAD_TOWNS:
            self.assertEqual(self.amended_by(document).status, 2, name)
            self.assertFalse(self.town.is_valid(document), name)

    def test_states_are_no_numbers_to_amend(self):
        states = [(rule, name) for rule in Run("list", "rules").document
                  for name, amount in rule["numbers"].items() if "value" not in amount]
        self.assertTrue(states)
        for rule, name in states[:20]:
            town = {"amendments": [{"standard": rule["standard"], "rule": rule["rule"],
                                    "set": {name: rule["numbers"][name]["text"]},
                                    "citation": "An invented by-law"}]}
            run = self.amended_by(town)
            self.assertEqual((run.status, run.error["code"], run.error["at"]),
                             (2, "unknown-number", f"/amendments/0/set/{name}"))
            self.assertFalse(self.town.is_valid(town))

    def test_every_reading_and_option(self):
        properties = self.schemas["survey"]["properties"]["readings"]["properties"]
        listed = {reading["id"]: [option["id"] for option in reading["options"]]
                  for reading in Run("list", "readings").document}
        self.assertEqual({name: part["enum"] for name, part in properties.items()
                          if name != "note"}, listed)

    def test_what_the_schema_leaves_to_the_command(self):
        documents = [document for _, document, *_ in BAD_BEYOND_SCHEMA]
        for document, answer in zip(documents, self.judged(documents)):
            self.assertIn("error", answer)
            self.assert_valid(self.survey, document)

    def test_examples(self):
        self.assertTrue(examples())
        for document in examples():
            self.assert_valid(self.survey, document)

    def test_reports(self):
        documents = GOOD + examples()
        choices = [[], ["--all"], ["--no-working"], ["--standard", "common-practice-us"]]
        choices += [["--unit", unit] for unit in ("in", "ft", "mm", "cm", "m")]
        for words in choices:
            for report in self.judged(documents, *words):
                self.assert_valid(self.report, report)

    def test_wrong_reports(self):
        good = Run("check", stdin=encoded(FAILS)).document
        self.assert_valid(self.report, good)
        for path in ("/verdict", "/findings", "/unmeasured", "/notices", "/ingle",
                     "/findings/0/citation", "/findings/0/sentence", "/findings/0/basis"):
            self.assertFalse(self.report.is_valid(changed(path, None, good)), path)
        for path, value in (("/verdict", "safe"), ("/findings/0/verdict", "passes"),
                            ("/findings/0/required", {"value": 20}), ("/more", 1),
                            ("/findings/0/subject", "hearth.front"),
                            ("/findings/0/required", {"text": "20 in", "unit": "in"}),
                            ("/findings/0/more", 1)):
            self.assertFalse(self.report.is_valid(changed(path, value, good)), path)

    def test_every_member_of_a_finding_occurs(self):
        """A member that no report has would be one that the schema invents."""
        documents = GOOD + examples()
        reports = self.judged(documents, "--all", "--probability")
        seen = {name for report in reports for finding in report["findings"] for name in finding}
        described = self.schemas["report"]["properties"]["findings"]["items"]["properties"]
        self.assertEqual(seen, set(described))

    def test_every_quantity_and_choice(self):
        properties = self.schemas["survey"]["properties"]["survey"]["properties"]
        for quantity in Run("list", "quantities").document:
            group, name = quantity["id"].split(".")
            part = properties[group]
            if quantity.get("repeats"):
                part = part["items"]
            described = part["properties"][name]
            self.assertEqual(described["title"], quantity["label"])
            self.assertEqual(described.get("enum"),
                             [choice["id"] for choice in quantity["choices"]]
                             if "choices" in quantity else None)

    def test_every_spelling_of_every_unit(self):
        where = {"length": ("opening", "width", "36"), "area": ("flue", "net-area", "127"),
                 "angle": ("smoke-chamber", "slope", "0.5"),
                 "power": ("gas", "input", "40000"),
                 "volume": ("room", "volume", "300")}
        documents = []
        for unit in Run("list", "units").document:
            for name in unit["names"] if unit["dimension"] in where else []:
                group, quantity, number = where[unit["dimension"]]
                if unit["numerator"] > 10 ** 9 and unit["dimension"] == "length":
                    number = "1"
                for amount in (f"{number} {name}", {"value": float(number), "unit": name}):
                    documents.append({"standards": ["irc-2021"],
                                      "survey": {group: {quantity: amount}}})
        self.assertGreater(len(documents), 100)
        refused = {"unit-unknown", "unit-missing", "dimension", "trailing-text", "type"}
        for document, answer in zip(documents, self.judged(documents)):
            self.assertNotIn(answer.get("error", {}).get("code"), refused, json.dumps(document))
            self.assert_valid(self.survey, document)

    def test_every_rule_and_number_can_be_amended(self):
        documents = []
        for rule in Run("list", "rules").document:
            for name, amount in rule["numbers"].items():
                if "value" not in amount:  # a state, which is no number
                    continue
                documents.append({
                    "standards": [rule["standard"]], "survey": {},
                    "amendments": [{"standard": rule["standard"], "rule": rule["rule"],
                                    "set": {name: amount["text"].removeprefix("≈ ")},
                                    "citation": "An invented by-law"}]})
        self.assertGreater(len(documents), 100)
        for document, answer in zip(documents, self.judged(documents)):
            self.assertNotIn("error", answer, json.dumps(document))
            self.assert_valid(self.survey, document)


if __name__ == "__main__":
    unittest.main()
