# SPDX-License-Identifier: MIT
"""`ingle.check`, the objects beneath it and the `ingle` command: they have to say the same."""

import json
import unittest
from fractions import Fraction

import documents
import ingle


def corpus():
    """Documents by the arguments that they are judged with."""
    grouped = {}
    for source in (documents.published(), documents.examples(), documents.generated(400)):
        for document, arguments in source:
            grouped.setdefault(tuple(arguments), []).append(document)
    return grouped


def shown(value, unit):
    """An amount, or a state, as catalogues write it."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    return value if isinstance(value, str) else value.text(unit)


class SameAnswers(unittest.TestCase):
    maxDiff = 4000

    @classmethod
    def setUpClass(cls):
        cls.judged = []
        for arguments, group in corpus().items():
            for extra in ((), ("--all",), ("--unit", "mm", "--no-working")):
                words = arguments + tuple(word for word in extra if word not in arguments)
                if "--unit" in arguments and "--unit" in extra:
                    continue
                answers = documents.command_reports(group, words)
                cls.judged.extend((document, documents.options(words), answer)
                                  for document, answer in zip(group, answers))

    def test_there_is_something_to_compare(self):
        self.assertGreater(len(self.judged), 1000)
        verdicts = {finding["verdict"] for _, _, answer in self.judged
                    for finding in answer.get("findings", [])}
        self.assertGreaterEqual(verdicts, {"meets", "fails", "too-close", "unmeasured",
                                           "not-applicable"})

    def test_check_gives_what_the_command_gives(self):
        for document, options, answer in self.judged:
            with self.subTest(document=document, options=options):
                if "error" not in answer:
                    self.assertEqual(ingle.check(document, **options), answer)
                    continue
                with self.assertRaises(ingle.IngleError) as caught:
                    ingle.check(document, **options)
                error = caught.exception
                self.assertEqual((error.code, error.message, error.at),
                                 tuple(answer["error"][name] for name in ("code", "message", "at")))

    def test_objects_give_what_the_command_gives(self):
        for document, options, answer in self.judged:
            with self.subTest(document=document, options=options):
                if "error" in answer:
                    with self.assertRaises(ingle.IngleError) as caught:
                        documents.judged(document, **options)
                    self.assertEqual(caught.exception.code, answer["error"]["code"])
                    continue
                found = documents.judged(document, **options)
                if "id" in document:
                    found["id"] = document["id"]
                # A report document also says where an amount of its text was rounded.
                count = len(found["notices"])
                self.assertEqual(found, dict(answer, notices=answer["notices"][:count]))

    def test_text_is_that_of_the_command(self):
        for document in (each for each, _ in documents.generated(40)):
            text = json.dumps(document)
            done = documents.command("check", "-", given=text)
            self.assertEqual(done.returncode, 0, done.stderr)
            self.assertEqual(ingle.check_text(text), done.stdout.decode())
            self.assertEqual(ingle.check_text(text.encode()), done.stdout.decode())


class SameErrors(unittest.TestCase):
    TEXTS = ['', '{', '{"standards": ["irc-2021"], "survey": {}} x', '{"survey": NaN}', '[]',
             '{"survey": {}}', '{"standards": [], "survey": {}}', '{"standards": ["irc-2021"]}',
             '{"standards": ["irc-2021"], "survey": {"opening": {"width": 36}}}',
             '{"standards": ["irc-2021"],\n "survey": {"opening": {"width": "36 inn"}}}',
             '{"standards": ["irc-2021"], "survey": {"opening": {"widht": "36 in"}}}',
             '{"standards": ["irc-2021"], "survey": {"opening": {"width": "-36 in"}}}',
             '{"standards": ["irc-2021"], "survey": {"opening": {"width": "36,5 in"}}}',
             '{"standards": ["irc-2120"], "survey": {}}', '\ufeff{}', '{"a": "\\ud800"}',
             '{"id": 1, "id": 2}', '[' * 1000, '"' + 'x' * 2000000 + '"']

    def test_texts_that_cannot_be_used(self):
        for text in self.TEXTS:
            with self.subTest(text[:80]):
                done = documents.command("check", "-", given=text)
                self.assertEqual((done.returncode, done.stdout), (2, b""))
                expected = json.loads(done.stderr)["error"]
                with self.assertRaises(ingle.IngleError) as caught:
                    ingle.check_text(text)
                error = caught.exception
                self.assertEqual((error.code, error.message, error.at, error.line, error.column),
                                 tuple(expected.get(name) for name in
                                       ("code", "message", "at", "line", "column")))
                self.assertLess(error.status, 0)
                self.assertEqual(ingle.statuses[error.code].number, error.status)

    def test_bytes_that_are_no_text(self):
        for given in (b"\xff", b'{"id": "\xc0\x80"}', b"\0", b'{"id": "a\0b"}'):
            with self.subTest(given), self.assertRaises(ingle.IngleError):
                ingle.check_text(given)

    def test_what_dicts_can_hold_and_documents_cannot(self):
        for survey in ({"opening": {"width": float("nan")}}, {"opening": {"width": "\ud800"}},
                       {"opening": {"width": "36 in\0"}}, {"opening": {"width": 1e400}}):
            with self.subTest(survey), self.assertRaises(ingle.IngleError) as caught:
                ingle.check({"standards": ["irc-2021"], "unit": "in", "survey": survey})
            self.assertEqual((caught.exception.line, caught.exception.column), (None, None))
        with self.assertRaises(TypeError):
            ingle.check({"standards": ["irc-2021"], "survey": {"opening": object()}})

    def test_arguments_that_cannot_be_used(self):
        document = {"standards": ["irc-2021"], "survey": {}}
        for options, code in (({"standards": ["irc-2020x"]}, "unknown-standard"),
                              ({"unit": "furlong"}, "unit-unknown"),
                              ({"unit": "in2"}, "argument")):
            with self.subTest(options), self.assertRaises(ingle.IngleError) as caught:
                ingle.check(document, **options)
            self.assertEqual(caught.exception.code, code)

    def test_after_an_error_the_next_document_is_judged(self):
        good = {"standards": ["irc-2021"], "survey": {"hearth": {"thickness": "4 in"}}}
        before = ingle.check(good)
        for text in self.TEXTS:
            with self.assertRaises(ingle.IngleError):
                ingle.check_text(text)
            self.assertEqual(ingle.check(good), before)


class Catalogues(unittest.TestCase):
    def listed(self, *words):
        done = documents.command("list", *words)
        self.assertEqual(done.returncode, 0, done.stderr)
        return json.loads(done.stdout)

    def test_catalogues_are_those_of_the_command(self):
        for name in ("standards", "rules", "readings", "quantities", "units", "verdicts",
                     "statuses"):
            with self.subTest(name):
                self.assertEqual(ingle.catalogue(name), self.listed(name))
        for standard in ingle.standards:
            for name in ("rules", "readings"):
                self.assertEqual(ingle.catalogue(name, standard),
                                 self.listed(name, "--standard", standard))

    def test_schemas_are_those_of_the_command(self):
        for name in ("survey", "report", "amendments"):
            self.assertEqual(ingle.schema(name), json.loads(documents.command("schema",
                                                                              name).stdout))

    def test_a_catalogue_that_is_not_there(self):
        for call in (ingle.catalogue, ingle.schema):
            with self.assertRaises(ingle.IngleError) as caught:
                call("stoves")
            self.assertEqual(caught.exception.code, "unknown-name")

    def test_objects_hold_what_is_listed(self):
        self.assertEqual([(each.id, each.label, each.ucum, each.dimension, each.size,
                           list(each.names)) for each in ingle.units.values()],
                         [(each["id"], each["label"], each["ucum"], each["dimension"],
                           Fraction(each["numerator"], each["denominator"]), each["names"])
                          for each in self.listed("units")])
        self.assertEqual([(each.id, each.number, each.text) for each in ingle.statuses.values()],
                         [(each["code"], each["status"], each["text"])
                          for each in self.listed("statuses")])
        self.assertEqual(list(ingle.verdicts), [each["verdict"] for each in
                                                self.listed("verdicts")])

    def test_quantities_hold_what_is_listed(self):
        for each in self.listed("quantities"):
            with self.subTest(each["id"]):
                quantity = ingle.quantities[each["id"]]
                self.assertEqual((quantity.label, quantity.how, quantity.dimension),
                                 (each["label"], each["how"], each["dimension"]))
                self.assertEqual(quantity.repeats, each.get("repeats", False))
                self.assertEqual(quantity.assumed, each.get("assumed"))
                self.assertEqual(quantity.choices, {choice["id"]: choice["label"] for choice
                                                    in each.get("choices", [])})
                if "least" in each:
                    self.assertEqual((quantity.least.text(), quantity.most.text()),
                                     (each["least"]["text"], each["most"]["text"]))
        self.assertEqual(len(ingle.quantities), len(self.listed("quantities")))

    def test_readings_hold_what_is_listed(self):
        self.assertEqual([(each.id, each.label, each.options) for each in ingle.readings.values()],
                         [(each["id"], each["label"], {option["id"]: option["label"]
                                                       for option in each["options"]})
                          for each in self.listed("readings")])

    def test_standards_hold_what_is_listed(self):
        for each in self.listed("standards"):
            with self.subTest(each["id"]):
                standard = ingle.standards[each["id"]]
                self.assertEqual((standard.title, standard.edition, standard.place, standard.note,
                                  standard.unit.id, len(standard.rules)),
                                 (each["title"], each.get("edition", 0), each["place"],
                                  each["note"], each["unit"], each["rules"]))
                self.assertEqual([(row.liner, row.area.text(), row.table)
                                  for row in standard.liners],
                                 [(row["liner"], row["net_area"]["text"], row["table"])
                                  for row in each.get("liners", [])])
                self.check_rules(standard)

    def check_rules(self, standard):
        for rule, each in zip(standard.rules, self.listed("rules", "--standard", standard.id)):
            numbers = {name: shown(rule.quantities[0].value_of(amount), standard.unit)
                       for name, amount in rule.numbers.items()}
            self.assertEqual(
                (rule.id, rule.label, rule.section, rule.basis, rule.relation, rule.formula,
                 rule.formula_text, rule.condition, rule.reading, rule.since, rule.until,
                 [judged.id for judged in rule.quantities],
                 [source.id for source in rule.inputs], rule.caution, rule.mend, rule.refer,
                 rule.inspection, rule.listing and rule.listing.id, numbers),
                (each["rule"], each["label"], each["section"], each["basis"], each["relation"],
                 each["formula"], each["formula_text"], each["when"], each.get("reading"),
                 each.get("since", 0), each.get("until", 0), each["judges"], each.get("from", []),
                 each["caution"], each.get("mend"), each.get("refer"), each.get("inspection"),
                 each.get("listing"),
                 {name: number["text"] for name, number in each["numbers"].items()}))
            self.assertEqual(rule.follows and rule.follows._asdict(), each.get("follows"))
            self.assertIn(rule, ingle.rules[rule.id])


if __name__ == "__main__":
    unittest.main()
