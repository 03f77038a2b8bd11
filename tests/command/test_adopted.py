# SPDX-License-Identifier: MIT
"""What holds beside the standards: a town's amendments, and how a publication is read."""

import os
import re
import tempfile
import unittest

from documents import (BAD_BYTES, BAD_TOWNS, EXAMPLE, FAILS, MEETS, TOWN, TOWN_CITATION, changed,
                       encoded)
from running import Run


def hearth_front(report):
    return next(each for each in report["findings"] if each["rule"] == "hearth-front")


class Amendments(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)

    def file(self, data, name="town.json"):
        path = os.path.join(self.folder.name, name)
        with open(path, "wb") as file:
            file.write(data if isinstance(data, bytes) else encoded(data))
        return path

    def judged(self, document, *towns):
        words = [word for number, town in enumerate(towns)
                 for word in ("--amendments", self.file(town, f"{number}.json"))]
        run = Run("check", *words, stdin=encoded(document))
        self.assertEqual((run.status, run.stderr), (0, b""))
        return hearth_front(run.document)

    def test_they_take_the_place_of_printed_numbers(self):
        # IRC 2021, R1001.10: 20 in from 6 ft2 on.
        self.assertEqual(self.judged(FAILS)["required"]["text"], "20 in")
        finding = self.judged(FAILS, TOWN)
        self.assertEqual(finding["required"]["text"], "24 in")
        self.assertEqual(finding["amendment"], TOWN_CITATION)
        self.assertIn(TOWN_CITATION, finding["citation"])

    def test_without_an_authority_the_citation_stands_alone(self):
        for town in (changed("/authority", None, TOWN), changed("/authority", "", TOWN)):
            self.assertEqual(self.judged(FAILS, town)["amendment"], "by-law 7-2")

    def test_the_survey_s_own_win(self):
        own = EXAMPLE["amendments"][0]
        document = changed("/amendments", [dict(own, set={"large": "30 in"})], FAILS)
        finding = self.judged(document, TOWN)
        self.assertEqual((finding["required"]["text"], finding["amendment"]),
                         ("30 in", own["citation"]))
        # What the survey does not amend is still the town's.
        document = changed("/amendments", [dict(own, set={"small": "30 in"})], FAILS)
        self.assertEqual(self.judged(document, TOWN)["required"]["text"], "24 in")

    def test_of_two_files_the_later_wins(self):
        other = changed("/amendments/0/set/large", 26,
                        changed("/amendments/0/citation", "order 9", TOWN))
        for towns, text in (((TOWN, other), "26 in"), ((other, TOWN), "24 in")):
            self.assertEqual(self.judged(FAILS, *towns)["required"]["text"], text)

    def test_the_unit_of_bare_numbers_is_the_file_s(self):
        town = changed("/unit", "mm", changed("/amendments/0/set/large", 508, TOWN))
        finding = self.judged(changed("/unit", "in", FAILS), town)
        self.assertEqual(finding["required"]["text"], "20 in")
        self.assertEqual(finding["amendment"], TOWN_CITATION)

    def test_other_standards_are_left_alone(self):
        report = Run("check", "--amendments", self.file(TOWN), "--standard", "irc-2018",
                     "--standard", "irc-2021", stdin=encoded(FAILS)).document
        required = {each["standard"]: each["required"]["text"] for each in report["findings"]
                    if each["rule"] == "hearth-front"}
        self.assertEqual(required, {"irc-2018": "20 in", "irc-2021": "24 in"})

    def test_they_hold_for_every_line_and_every_file(self):
        own = changed("/amendments", [dict(EXAMPLE["amendments"][0], set={"large": "30 in"})],
                      FAILS)
        town = self.file(TOWN)
        lines = b"\n".join(map(encoded, (FAILS, own, FAILS, {}, own, FAILS)))
        answers = Run("check", "--lines", "--amendments", town, stdin=lines).lines
        self.assertEqual([hearth_front(each)["required"]["text"] if "findings" in each else None
                          for each in answers],
                         ["24 in", "30 in", "24 in", None, "30 in", "24 in"])
        run = Run("check", "--amendments", town, self.file(FAILS, "a.json"),
                  self.file(FAILS, "b.json"))
        self.assertEqual(len(re.findall(rb'"amendment": "Town of Alderbrook, ', run.stdout)), 2)

    def test_an_amendment_that_was_refused_leaves_nothing(self):
        """Its first number is sound, and the next survey amends another one."""
        own = EXAMPLE["amendments"][0]
        refused = changed("/amendments", [dict(own, set={"large": "30 in", "small": "x"})], FAILS)
        other = changed("/amendments", [dict(own, set={"small": "10 in"})], FAILS)
        answers = Run("check", "--lines",
                      stdin=encoded(refused) + b"\n" + encoded(other)).lines
        self.assertEqual(answers[0]["error"]["code"], "number")
        self.assertEqual(hearth_front(answers[1])["required"]["text"], "20 in")

    def test_files_that_cannot_be_used(self):
        bad = [(name, data, code, None, "") for name, data, code, _ in BAD_BYTES
               if name not in ("1e400", "NUL in a text")]
        bad += [(name, encoded(document), code, at, word)
                for name, document, code, at, word in BAD_TOWNS]
        good = self.file(FAILS, "good.json")
        for name, data, code, at, word in bad:
            path = self.file(data, 'a "town".json')
            for more in ([], ["--lines"]):
                with self.subTest(name, more=more):
                    run = Run("check", *more, "--amendments", path, good)
                    self.assertEqual((run.status, run.stdout), (2, b""))
                    self.assertEqual(run.error["code"], code)
                    self.assertTrue(run.error["message"].startswith(path + ": "))
                    self.assertIn(word, run.error["message"])
                    self.assertIn("line", run.error)
                    self.assertIn("column", run.error)
                    if at is not None:
                        self.assertEqual(run.error["at"], at)

    def test_line_and_column_of_an_error(self):
        data = (b'{"unit": "in",\n "amendments": [\n  {"standard": "irc-2021", "rule": "x",\n'
                b'   "citation": "c", "set": {"large": 24}}]}')
        error = Run("check", "--amendments", self.file(data), stdin=encoded(FAILS)).error
        self.assertEqual((error["at"], error["line"], error["column"]),
                         ("/amendments/0/rule", 3, 36))

    def test_files_that_cannot_be_read(self):
        for name in (os.path.join(self.folder.name, "none.json"), self.folder.name):
            run = Run("check", "--amendments", name, stdin=encoded(FAILS))
            self.assertEqual((run.status, run.stdout), (3, b""))
            self.assertEqual(run.error["code"], "io")
            self.assertIn(name, run.error["message"])

    def test_a_file_that_is_too_long(self):
        path = self.file(encoded(TOWN).ljust((1 << 20) + 1))
        run = Run("check", "--amendments", path, stdin=encoded(FAILS))
        self.assertEqual((run.status, run.error["code"]), (2, "length"))
        path = self.file(encoded(TOWN).ljust(1 << 20))
        self.assertEqual(Run("check", "--amendments", path, stdin=encoded(FAILS)).status, 0)

    def test_an_empty_list_changes_nothing(self):
        run = Run("check", "--amendments", self.file({"amendments": []}), stdin=encoded(MEETS))
        self.assertEqual(run.stdout, Run("check", stdin=encoded(MEETS)).stdout)


# Ontario Building Code 2012, 9.22.5.1(2): a fire chamber floor more than 300 mm above the hearth
# needs 450 mm and 25 mm more for every 50 mm above 300 mm. 325 mm is half a step: 475 mm if a part
# counts as a step, 450 mm if it does not.
RAISED = {"standards": ["obc-2012"], "survey": {
    "appliance": {"kind": "masonry-fireplace"},
    "hearth": {"firebox-raise": "325 mm", "from-facing": "460 mm"}}}


class Readings(unittest.TestCase):
    def required(self, document, *words):
        run = Run("check", *words, stdin=encoded(document))
        self.assertEqual((run.status, run.stderr), (0, b""))
        finding, = [each for each in run.document["findings"]
                    if each["rule"] == "hearth-from-facing"]
        return finding["required"]["text"], finding["verdict"]

    def test_the_first_option_is_followed(self):
        self.assertEqual(self.required(RAISED), ("475 mm", "fails"))

    def test_a_document_chooses(self):
        for option, expected in (("round-up", ("475 mm", "fails")),
                                 ("whole-steps", ("450 mm", "meets"))):
            document = changed("/readings", {"hearth-steps": option}, RAISED)
            self.assertEqual(self.required(document), expected)

    def test_the_command_line_overrides(self):
        for chosen in ("round-up", "whole-steps"):
            document = changed("/readings", {"hearth-steps": chosen}, RAISED)
            self.assertEqual(self.required(document, "--reading", "hearth-steps=round-up"),
                             ("475 mm", "fails"))
            self.assertEqual(self.required(document, "--reading=hearth-steps=whole-steps"),
                             ("450 mm", "meets"))

    def test_the_last_of_several_counts(self):
        self.assertEqual(self.required(RAISED, "--reading", "hearth-steps=round-up", "--reading",
                                       "hearth-steps=whole-steps"), ("450 mm", "meets"))

    def test_a_reading_of_the_command_line_leaves_the_others_to_the_document(self):
        others = [each for each in Run("list", "readings").document if each["id"] != "hearth-steps"]
        document = changed("/readings", {"hearth-steps": "whole-steps"}, RAISED)
        self.assertTrue(others)
        for other in others:
            word = f"{other['id']}={other['options'][-1]['id']}"
            self.assertEqual(self.required(document, "--reading", word), ("450 mm", "meets"))

    def test_a_document_s_choice_ends_with_it(self):
        chosen = changed("/readings", {"hearth-steps": "whole-steps"}, RAISED)
        lines = b"\n".join(map(encoded, (RAISED, chosen, RAISED)))
        self.assertEqual([line["verdict"] == "fails" for line in
                          Run("check", "--lines", stdin=lines).lines], [True, False, True])

    def test_every_reading_and_option_is_taken(self):
        for reading in Run("list", "readings").document:
            for option in reading["options"]:
                word = f"{reading['id']}={option['id']}"
                self.assertEqual(Run("check", "--reading", word, stdin=encoded(FAILS)).status, 0)
                document = changed("/readings", {reading["id"]: option["id"]}, FAILS)
                self.assertEqual(Run("check", stdin=encoded(document)).status, 0)


class Catalogue(unittest.TestCase):
    """The readings, and the rules that follow one, tell of each other."""

    @classmethod
    def setUpClass(cls):
        cls.readings = Run("list", "readings").document
        cls.rules = Run("list", "rules").document

    def test_every_reading_has_options_and_rules(self):
        for reading in self.readings:
            with self.subTest(reading["id"]):
                self.assertEqual(list(reading), ["id", "label", "options", "rules"])
                self.assertGreater(len({option["id"] for option in reading["options"]}), 1)
                self.assertTrue(all(option["label"] for option in reading["options"]))
                self.assertTrue(reading["rules"])

    def test_rules_are_those_that_follow(self):
        for reading in self.readings:
            following = [(rule["standard"], rule["rule"]) for rule in self.rules
                         if rule.get("follows", {}).get("reading") == reading["id"]]
            self.assertEqual([(each["standard"], each["rule"]) for each in reading["rules"]],
                             list(dict.fromkeys(following)))

    def test_rules_follow_options_that_are_there_and_say_so(self):
        known = {reading["id"]: {option["id"] for option in reading["options"]}
                 for reading in self.readings}
        for rule in self.rules:
            if "follows" in rule:
                self.assertEqual(list(rule["follows"]), ["reading", "option"])
                self.assertIn(rule["follows"]["option"], known[rule["follows"]["reading"]])
                self.assertTrue(rule.get("reading"), rule["rule"])

    def test_readings_of_one_standard(self):
        for standard in Run("list", "standards").document:
            listed = Run("list", "readings", "--standard", standard["id"]).document
            expected = [dict(reading, rules=own) for reading in self.readings
                        if (own := [rule for rule in reading["rules"]
                                    if rule["standard"] == standard["id"]])]
            self.assertEqual(listed, expected)


if __name__ == "__main__":
    unittest.main()
