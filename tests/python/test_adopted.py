# SPDX-License-Identifier: MIT
"""A town's amendments and the readings of a call, by `ingle.check` and by the objects beneath."""

import json
import tempfile
import threading
import unittest

import documents
import ingle

# 36 in x 24 in is 6 ft2, from which R1001.10 of the IRC 2021 asks for 20 in in front.
SURVEY = {"standards": ["irc-2021"], "survey": {
    "appliance": {"kind": "masonry-fireplace"},
    "opening": {"width": "36 in", "height": "24 in"},
    "hearth": {"front": "21 in"}}}

ENTRY = {"standard": "irc-2021", "rule": "hearth-front", "set": {"large": "24 in"},
         "citation": "by-law 7-2"}
TOWN = {"authority": "Town of Alderbrook", "amendments": [ENTRY]}

# Ontario Building Code 2012, 9.22.5.1(2): raised more than 300 mm, 450 mm and 25 mm more for every
# 50 mm above. 325 mm is half a step: 475 mm, or 450 mm if only whole steps count.
RAISED = {"standards": ["obc-2012"], "survey": {
    "appliance": {"kind": "masonry-fireplace"},
    "hearth": {"firebox-raise": "325 mm", "from-facing": "460 mm"}}}


def front(report):
    finding = next(each for each in report["findings"] if each["rule"] == "hearth-front")
    return finding["required"]["text"], finding.get("amendment")


def facing(report):
    return next(each["required"]["text"] for each in report["findings"]
                if each["rule"] == "hearth-from-facing")


class Amendments(unittest.TestCase):
    CITED = ("24 in", "Town of Alderbrook, by-law 7-2")

    def test_every_form(self):
        text = json.dumps(TOWN)
        for form in (TOWN, text, text.encode()):
            self.assertEqual(front(ingle.check(SURVEY, amendments=form)), self.CITED)
            report = ingle.check_text(json.dumps(SURVEY), amendments=form)
            self.assertEqual(front(json.loads(report)), self.CITED)
        for entries in ([ENTRY], (ENTRY,)):
            self.assertEqual(front(ingle.check(SURVEY, amendments=entries)),
                             ("24 in", "by-law 7-2"))

    def test_they_hold_for_one_call(self):
        self.assertEqual(front(ingle.check(SURVEY, amendments=TOWN)), self.CITED)
        self.assertEqual(front(ingle.check(SURVEY)), ("20 in", None))
        for nothing in ([], {"amendments": []}, None):
            self.assertEqual(ingle.check(SURVEY, amendments=nothing), ingle.check(SURVEY))

    def test_they_are_gone_after_an_error(self):
        with self.assertRaises(ingle.IngleError):
            ingle.check({"survey": {}}, amendments=TOWN)
        with self.assertRaises(ingle.IngleError):
            ingle.check(SURVEY, amendments=[ENTRY, {}])
        self.assertEqual(front(ingle.check(SURVEY)), ("20 in", None))

    def test_the_survey_s_own_win(self):
        own = dict(SURVEY, amendments=[dict(ENTRY, set={"large": "30 in"}, citation="own")])
        self.assertEqual(front(ingle.check(own, amendments=TOWN)), ("30 in", "own"))

    def test_the_command_says_the_same(self):
        with tempfile.NamedTemporaryFile("w", suffix=".json") as file:
            json.dump(TOWN, file)
            file.flush()
            group = [document for document, _ in documents.generated(60)] + [SURVEY]
            answers = documents.command_reports(group, ["--amendments", file.name])
        for document, answer in zip(group, answers):
            self.assertEqual(ingle.check(document, amendments=TOWN), answer)

    def test_what_cannot_be_used(self):
        for form, code, at in (
                ([dict(ENTRY, rule="hearth-frnt")], "unknown-rule", "/amendments/0/rule"),
                ([dict(ENTRY, set={"large": 24})], "unit-missing", "/amendments/0/set/large"),
                ({"amendments": [ENTRY], "authorty": ""}, "unknown-name", "/authorty"),
                ({}, "missing-name", ""), ([1], "type", "/amendments/0")):
            with self.subTest(form), self.assertRaises(ingle.IngleError) as caught:
                ingle.check(SURVEY, amendments=form)
            error = caught.exception
            self.assertEqual((error.code, error.at, error.line, error.column),
                             (code, at, None, None))
            self.assertTrue(error.message.startswith("amendments: "))

    def test_texts_tell_line_and_column(self):
        for call, document in ((ingle.check, SURVEY), (ingle.check_text, json.dumps(SURVEY))):
            for form in ('{"amendments":\n  7}', b'{"amendments":\n  7}'):
                with self.assertRaises(ingle.IngleError) as caught:
                    call(document, amendments=form)
                error = caught.exception
                self.assertEqual((error.code, error.at, error.line, error.column),
                                 ("type", "/amendments", 2, 3))
        for form in ("", "{", "\ufeff{}", b"\xff", "\ud800"):
            with self.subTest(form), self.assertRaises(ingle.IngleError) as caught:
                ingle.check(SURVEY, amendments=form)
            self.assertEqual(caught.exception.line, 1)

    def test_an_error_in_the_survey_is_not_said_to_be_theirs(self):
        with self.assertRaises(ingle.IngleError) as caught:
            ingle.check_text('{"standards": ["irc-2021"],\n "survey": 1}', amendments=TOWN)
        error = caught.exception
        self.assertEqual((error.at, error.line, error.column), ("/survey", 2, 12))
        self.assertFalse(error.message.startswith("amendments"))

    def test_threads_do_not_see_each_other_s(self):
        wrong = []

        def judge(amendments, expected):
            for _ in range(200):
                if front(ingle.check(SURVEY, amendments=amendments, working=False)) != expected:
                    wrong.append(expected)

        threads = [threading.Thread(target=judge, args=arguments) for arguments in (
            (TOWN, self.CITED), (None, ("20 in", None)),
            ([dict(ENTRY, set={"large": "26 in"})], ("26 in", "by-law 7-2")))]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(wrong, [])


class Readings(unittest.TestCase):
    def test_of_documents_and_of_calls(self):
        whole = dict(RAISED, readings={"hearth-steps": "whole-steps"})
        self.assertEqual(facing(ingle.check(RAISED)), "475 mm")
        self.assertEqual(facing(ingle.check(whole)), "450 mm")
        for document in (RAISED, whole):
            for option, text in (("round-up", "475 mm"), ("whole-steps", "450 mm")):
                chosen = {"hearth-steps": option}
                self.assertEqual(facing(ingle.check(document, readings=chosen)), text)
                report = ingle.check_text(json.dumps(document), readings=chosen)
                self.assertEqual(facing(json.loads(report)), text)
        self.assertEqual(facing(ingle.check(whole, readings={})), "450 mm")
        self.assertEqual(ingle.check(RAISED, readings={"hearth-steps": "whole-steps"})["findings"],
                         documents.command_reports(
                             [RAISED], ["--reading", "hearth-steps=whole-steps"])[0]["findings"])

    def test_of_reports(self):
        survey = documents.survey_of(RAISED)
        for chosen, text in ((None, "475 mm"), ({}, "475 mm"),
                             ({"hearth-steps": "round-up"}, "475 mm"),
                             ({"hearth-steps": "whole-steps"}, "450 mm")):
            report = ingle.Report(survey, "obc-2012", readings=chosen)
            finding, = [each for each in report if each.rule.id == "hearth-from-facing"]
            self.assertEqual(finding.required.text("mm"), text)
            self.assertEqual(finding.rule.follows.reading, "hearth-steps")
            self.assertEqual(finding.rule.follows.option,
                             (chosen or {}).get("hearth-steps", "round-up"))
            self.assertEqual(finding.reading, finding.rule.reading)

    def test_what_cannot_be_chosen(self):
        survey = documents.survey_of(RAISED)
        for chosen, code, near in (({"hearth-step": "round-up"}, "unknown-name", "hearth-steps"),
                                   ({"hearth-steps": "whole-step"}, "unknown-choice",
                                    "whole-steps"),
                                   ({"colour": "red"}, "unknown-name", "")):
            for call in (lambda: ingle.check(RAISED, readings=chosen),
                         lambda: ingle.check_text(json.dumps(RAISED), readings=chosen),
                         lambda: ingle.Report(survey, "obc-2012", readings=chosen)):
                with self.subTest(chosen), self.assertRaises(ingle.IngleError) as caught:
                    call()
                self.assertEqual(caught.exception.code, code)
                self.assertIn(near, caught.exception.message)

    def test_every_option_makes_a_report(self):
        survey = documents.survey_of(SURVEY)
        for reading in ingle.readings.values():
            self.assertGreater(len(reading.options), 1)
            for option in reading.options:
                self.assertTrue(ingle.Report(survey, "irc-2021", readings={reading.id: option}))


if __name__ == "__main__":
    unittest.main()
