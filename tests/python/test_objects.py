# SPDX-License-Identifier: MIT
"""The objects of the package: amounts, surveys, amendments, reports; their lives and threads."""

import ctypes
import ctypes.util
import gc
import json
import os
import pickle
import shutil
import subprocess
import sys
import tempfile
import threading
import unittest
import weakref
from decimal import Decimal
from fractions import Fraction

import ingle
from ingle import loading, prototypes
from ingle.loading import Owned

INCH = 25_400_000  # nanometres: the international inch is 25.4 mm exactly


def short_hearth():
    """A hearth that is short by 1/16 in: 36 in x 24 in is 6 ft2, so 20 in are due (R1001.10)."""
    survey = ingle.Survey()
    survey.set("appliance.kind", "masonry-fireplace")
    survey.set("opening.width", "36 in")
    survey.set("opening.height", "24 in")
    survey.set("hearth.front", "19 15/16 in")
    return survey


def found(report, rule):
    return next(each for each in report if each.rule.id == rule)


class Amounts(unittest.TestCase):
    def test_text_in_and_out(self):
        amount = ingle.Amount.parse("19 15/16 in")
        self.assertEqual(amount, ingle.Amount(319 * INCH // 16, "length"))
        self.assertEqual(amount.text(), "19 15/16 in")
        self.assertEqual(str(amount), "19 15/16 in")
        self.assertEqual(amount.text("mm"), "506.4125 mm")
        self.assertEqual(amount.decimal("in"), "19.9375")
        self.assertEqual(amount.unit("mm"), ingle.units["mm"])
        self.assertEqual(amount.text(denominator=1), "≈ 20 in")
        self.assertFalse(amount.rounded)

    def test_fractions_are_exact(self):
        self.assertEqual(ingle.Amount.parse("19 15/16 in").fraction("in"), Fraction(319, 16))
        self.assertEqual(ingle.Amount.parse("1 in").fraction(), INCH)
        self.assertEqual(ingle.Amount.parse("864 sq in", "area").fraction("ft2"), 6)
        self.assertEqual(ingle.Amount.parse("1/12", "ratio").ratio(), Fraction(1, 12))
        self.assertEqual(ingle.Amount.parse("7 in 12", "slope").ratio(), Fraction(7, 12))
        self.assertEqual(ingle.Amount.parse("12 kW", "power").fraction("W"), 12000)
        for wrong in (lambda: ingle.Amount.parse("1 in").fraction("ft2"),
                      lambda: ingle.Amount.parse("45 deg", "angle").fraction("mm")):
            with self.assertRaises(ingle.IngleError) as caught:
                wrong()
            self.assertEqual(caught.exception.code, "dimension")
        with self.assertRaises(ingle.IngleError):
            ingle.Amount.parse("1 in").ratio()

    def test_rounding_is_told(self):
        third = ingle.Amount.parse("1/3 in")
        self.assertTrue(third.rounded)
        self.assertEqual(third.value, round(Fraction(INCH, 3)))

    def test_bare_numbers_need_a_unit(self):
        self.assertEqual(ingle.Amount.parse("36", unit="in").value, 36 * INCH)
        with self.assertRaises(ingle.IngleError) as caught:
            ingle.Amount.parse("36")
        self.assertEqual(caught.exception.code, "unit-missing")
        self.assertIsNotNone(caught.exception.position)

    def test_errors_tell_the_place(self):
        for text, code in (("", "empty"), ("1/0 in", "zero-denominator"), ("1,5 in", "comma"),
                           ("1 in x", None), ("1 in2", None), ("9" * 30 + " in", "overflow"),
                           ("1 in\0", "encoding")):
            with self.subTest(text), self.assertRaises(ingle.IngleError) as caught:
                ingle.Amount.parse(text)
            if code is not None:
                self.assertEqual(caught.exception.code, code)

    def test_comparison_is_within_a_dimension(self):
        inch, foot = ingle.Amount.parse("1 in"), ingle.Amount.parse("1 ft")
        self.assertTrue(inch < foot <= foot and foot > inch >= inch)
        self.assertEqual(inch, ingle.Amount.parse("25.4 mm"))
        self.assertEqual(len({inch, ingle.Amount.parse("25.4 mm")}), 1)
        with self.assertRaises(TypeError):
            inch < ingle.Amount(1, "area")

    def test_amounts_that_cannot_be(self):
        for wrong, error in (((1.5, "length"), TypeError), ((True, "length"), TypeError),
                             ((1, "colour"), ValueError), ((2 ** 63, "length"),
                                                           ingle.IngleError)):
            with self.subTest(wrong), self.assertRaises(error):
                ingle.Amount(*wrong)

    def test_units_are_found_by_any_spelling(self):
        for unit in ingle.units.values():
            self.assertIs(ingle.Unit.find(unit.id), unit)
            # Units of two dimensions share a code: "%".
            self.assertEqual(ingle.Unit.find(unit.ucum).ucum, unit.ucum)
            self.assertLessEqual({unit.id, unit.ucum}, set(unit.names))
        self.assertEqual(ingle.units["in"].size, INCH)


class Surveys(unittest.TestCase):
    def test_what_is_set_is_there(self):
        survey = ingle.Survey()
        self.assertEqual(survey.set("opening.width", "36 in", "1/16 in").value, 36 * INCH)
        self.assertEqual(survey.get("opening.width"), ingle.Amount(36 * INCH, "length"))
        self.assertEqual(survey.tolerance("opening.width").value, INCH // 16)
        self.assertEqual(survey.set("flue.shape", "round"), "round")
        item = survey.add_item("trim", "mantel shelf")
        self.assertIs(survey.set(f"trim[{item}].combustible", "yes"), True)
        self.assertIs(survey.set(f"trim[{item}].combustible", False), False)
        self.assertEqual(survey.items("trim"), ("mantel shelf",))
        self.assertEqual(set(survey), {"opening.width", "flue.shape", "trim[0].combustible"})
        self.assertEqual(len(survey), 3)
        self.assertIn("flue.shape", survey)
        self.assertNotIn("flue.width", survey)
        self.assertIsNone(survey.tolerance("flue.shape"))

    def test_all_forms_of_a_value_are_alike(self):
        forms = [("36 1/2 in", None), (Decimal("36.5"), "in"), ("36.5", "in"),
                 (ingle.Amount.parse("36.5 in"), None), ("927.1 mm", None),
                 (Decimal("927.1"), ingle.units["mm"])]
        for value, unit in forms:
            with self.subTest(value):
                survey = ingle.Survey()
                survey.set("opening.width", value, unit=unit)
                self.assertEqual(survey.get("opening.width").value, 73 * INCH // 2)
        survey.set("opening.width", 36, 1, unit="in")
        self.assertEqual(survey.tolerance("opening.width").value, INCH)

    def test_rounding_is_told(self):
        survey = ingle.Survey()
        self.assertTrue(survey.set("opening.width", "36 1/3 in").rounded)
        self.assertFalse(survey.set("opening.width", "36 in").rounded)
        self.assertTrue(survey.set("opening.width", "36 1/3", unit="in").rounded)

    def test_every_quantity_can_be_set_and_taken_out(self):
        survey = ingle.Survey()
        for quantity in ingle.quantities.values():
            with self.subTest(quantity.id):
                if quantity.repeats and not survey.items(quantity.group):
                    survey.add_item(quantity.group)
                path = quantity.path()
                value = next(iter(quantity.choices), None) or (
                    True if quantity.dimension == "flag" else quantity.most)
                self.assertEqual(survey.set(path, value), value)
                self.assertEqual(survey.copy().get(path), value)
                survey.unset(path)
                self.assertNotIn(path, survey)
        self.assertEqual(len(survey), 0)

    def test_what_cannot_be_recorded(self):
        survey = short_hearth()
        survey.add_item("trim")
        before = list(survey)
        cases = [
            ("opening.width", "36", None, "unit-missing"), ("opening.width", 36, None,
                                                            "unit-missing"),
            ("opening.width", "36 in2", None, None), ("opening.width", "400 ft", None,
                                                      "implausible"),
            ("opening.width", "-1 in", None, "negative"), ("opening.widht", "36 in", None,
                                                           "unknown-quantity"),
            ("opening.width", "36 in", "x", None), ("opening.width", True, None, "dimension"),
            ("opening.width", ingle.Amount(1, "area"), None, "dimension"),
            ("flue.shape", "star", None, "unknown-choice"), ("trim[0].combustible", "maybe", None,
                                                             "unknown-choice"),
            ("trim[1].distance", "1 in", None, "argument"), ("trim[x].distance", "1 in", None,
                                                             "unknown-quantity"),
            ("opening.width", "36\0in", None, "encoding"), ("opening\0.width", "36 in", None,
                                                            "encoding"),
        ]
        for path, value, tolerance, code in cases:
            with self.subTest(path=path, value=value):
                with self.assertRaises(ingle.IngleError) as caught:
                    survey.set(path, value, tolerance)
                if code is not None:
                    self.assertEqual(caught.exception.code, code)
        self.assertEqual(list(survey), before)
        self.assertEqual(survey.get("opening.width").value, 36 * INCH)

    def test_unknown_paths_are_named_everywhere(self):
        survey = ingle.Survey()
        for call in (survey.get, survey.unset, survey.tolerance):
            with self.assertRaises(ingle.IngleError) as caught:
                call("opening.widht")
            self.assertEqual((caught.exception.code, caught.exception.at),
                             ("unknown-quantity", "opening.widht"))
            self.assertIn("opening.width", str(caught.exception))
        for call in (survey.add_item, survey.open_group):
            with self.assertRaises(ingle.IngleError):
                call("flues")

    def test_floats_are_refused(self):
        with self.assertRaisesRegex(TypeError, r"not float.*Decimal\(repr\(number\)\)"):
            ingle.Survey().set("opening.width", 36.5, unit="in")
        said = ingle.Survey().set("opening.width", Decimal(repr(36.5)), unit="in")
        self.assertEqual(said.fraction("in"), Fraction(73, 2))

    def test_floats_of_documents_are_what_they_print_as(self):
        for number, exact in ((19.9375, Fraction(319, 16)), (0.1 + 20, Fraction(201, 10)),
                              # To the nearest nanometre: 19.80000000000000071 in is no whole one.
                              (6.6 * 3, Fraction(198, 10))):
            report = ingle.check({"standards": ["irc-2021"], "unit": "in",
                                  "survey": {"appliance": {"kind": "masonry-fireplace"},
                                             "hearth": {"front": number}}})
            measured = next(each["measured"] for each in report["findings"]
                            if each["rule"] == "hearth-front")
            self.assertEqual(Fraction(str(measured["value"])), exact)

    def test_paths_are_read_as_the_library_reads_them(self):
        survey = ingle.Survey()
        survey.add_item("trim")
        survey.set("trim[0].distance", "10 in")
        survey.set("trim[0].projection", ingle.Amount.parse("1 in"))
        self.assertEqual(survey.get("trim[0].distance").value, 10 * INCH)
        self.assertEqual(survey.get("trim[0].projection").value, INCH)

    def test_clear_and_copy(self):
        survey = short_hearth()
        survey.add_item("trim", "shelf")
        survey.set("trim[0].distance", "10 in", "1/8 in")
        other = survey.copy()
        survey.clear()
        self.assertEqual((list(survey), survey.items("trim")), ([], ()))
        self.assertEqual(other.items("trim"), ("shelf",))
        self.assertEqual(other.tolerance("trim[0].distance").value, INCH // 8)
        self.assertEqual(len(other), 5)


    def test_a_copy_knows_that_somebody_looked(self):
        survey = short_hearth()
        looked = survey.copy()
        looked.open_group("trim")
        groups = [{each.quantity.group for each in ingle.Report(one, "irc-2021").missing}
                  for one in (survey, looked, looked.copy())]
        self.assertEqual(["trim" in each for each in groups], [True, False, False])


class Reports(unittest.TestCase):
    def test_a_short_hearth(self):
        report = ingle.Report(short_hearth(), ["irc-2021"])
        finding = found(report, "hearth-front")
        self.assertEqual((report.verdict, finding.verdict), ("fails", "fails"))
        self.assertEqual(finding.standard, ingle.standards["irc-2021"])
        self.assertEqual(finding.relation, "at-least")
        self.assertEqual(finding.quantity.id, "hearth.front")
        # R1001.10: 20 in where the opening is 6 ft2 or more.
        self.assertEqual(finding.required.fraction("in"), 20)
        self.assertEqual(finding.measured.fraction("in"), Fraction(319, 16))
        self.assertEqual(finding.margin.fraction("in"), Fraction(-1, 16))
        self.assertTrue(any(step.result is not None and step.result.dimension == "area"
                            and step.result.fraction("ft2") == 6 for step in finding.steps))
        self.assertEqual(finding.subject, "/survey/hearth/front")
        self.assertTrue(finding.label and finding.citation and finding.sentence())
        self.assertIn("mm", finding.sentence("mm"))
        self.assertIn("R1001.10", finding.citation)

    def test_a_remedy_meets_the_rule(self):
        survey = short_hearth()
        finding = found(ingle.Report(survey, "irc-2021"), "hearth-front")
        self.assertGreater(len(finding.remedies), 0)
        for remedy in finding.remedies:
            with self.subTest(remedy.subject):
                changed = survey.copy()
                changed.set(remedy.quantity.path(), remedy.value)
                again = found(ingle.Report(changed, "irc-2021"), "hearth-front")
                self.assertEqual(again.verdict, "meets")
        self.assertEqual(found(ingle.Report(survey, "irc-2021", remedies=False),
                               "hearth-front").remedies, ())
        self.assertEqual(found(ingle.Report(survey, "irc-2021", working=False),
                               "hearth-front").steps, ())

    def test_amendments(self):
        by_law = ingle.Amendments()
        by_law.set("irc-2021", "hearth-front", "large", "24 in", citation="By-law 7-2")
        report = ingle.Report(short_hearth(), ["irc-2021"], amendments=by_law)
        by_law.set("irc-2021", "hearth-front", "large", "30", unit="in", citation="By-law 8")
        finding = found(report, "hearth-front")
        self.assertEqual(finding.required.fraction("in"), 24)
        self.assertEqual(finding.amendment, "By-law 7-2")
        later = ingle.Report(short_hearth(), ["irc-2021"], amendments=by_law)
        self.assertEqual(found(later, "hearth-front").required.fraction("in"), 30)
        by_law.clear()
        none = ingle.Report(short_hearth(), ["irc-2021"], amendments=by_law)
        self.assertIsNone(found(none, "hearth-front").amendment)
        self.assertEqual(found(later, "hearth-front").amendment, "By-law 8")

    def test_amendments_that_cannot_be(self):
        by_law = ingle.Amendments()
        for words, code in ((("irc-2021", "hearth-fron", "large", "1 in"), "unknown-rule"),
                            (("irc-2021", "hearth-front", "huge", "1 in"), "unknown-number"),
                            (("irc-1021", "hearth-front", "large", "1 in"), "unknown-standard"),
                            (("irc-2021", "hearth-front", "large", "1"), "unit-missing")):
            with self.subTest(words), self.assertRaises(ingle.IngleError) as caught:
                by_law.set(*words, citation="By-law")
            self.assertEqual(caught.exception.code, code)
        with self.assertRaises(ingle.IngleError) as caught:
            by_law.set("irc-2021", "hearth-front", "large", "24 in", citation=" ")
        self.assertEqual(caught.exception.code, "no-citation")
        with self.assertRaisesRegex(ingle.IngleError, "state and no number"):
            by_law.set("irc-2021", "damper-present", "state", "removed", citation="By-law")
        with self.assertRaisesRegex(ingle.IngleError, "It has usual"):
            by_law.set("common-practice-us", "insert-hearth-front", "limit", "20 in",
                       citation="By-law")

    def test_a_finding_tells_its_section_and_basis(self):
        """As the document of the same report does, of every finding."""
        written = ingle.check({
            "standards": ["irc-2021", "common-practice-us"],
            "survey": {"appliance": {"kind": "masonry-fireplace"},
                       "opening": {"width": "36 in", "height": "24 in"},
                       "hearth": {"front": "19 15/16 in"}}}, working=False)["findings"]
        survey = ingle.Survey()
        for path, value in (("appliance.kind", "masonry-fireplace"), ("opening.width", "36 in"),
                            ("opening.height", "24 in"), ("hearth.front", "19 15/16 in")):
            survey.set(path, value)
        report = ingle.Report(survey, ["irc-2021", "common-practice-us"])
        self.assertEqual([(each.rule.id, each.section, each.basis) for each in report],
                         [(each["rule"], each["section"], each["basis"]) for each in written])

    def test_a_rule_tells_its_standards(self):
        for id_, rows in ingle.rules.items():
            for rule in rows:
                having = [each for each in ingle.standards.values() if rule in each.rules]
                self.assertEqual(rule.standards, tuple(having))
                for standard in having:
                    self.assertIn(standard.id, repr(rule))
        self.assertIn("hearth-front of irc-", repr(found(
            ingle.Report(short_hearth(), "irc-2021"), "hearth-front").rule))

    def test_a_standard_named_twice_is_adopted_once(self):
        survey = short_hearth()
        self.assertEqual(len(ingle.Report(survey, ["irc-2021", "irc-2021"])),
                         len(ingle.Report(survey, ["irc-2021"])))

    def test_documents_as_text(self):
        document = {"standards": ["irc-2021"], "survey": {"appliance": {"kind": "stoev"}}}
        for given, line in ((document, None), (json.dumps(document), 1),
                            (json.dumps(document).encode(), 1)):
            with self.assertRaisesRegex(ingle.IngleError, "did you mean stove") as caught:
                ingle.check(given)
            self.assertEqual(caught.exception.line, line)
        document["survey"]["appliance"]["kind"] = "stove"
        self.assertEqual(ingle.check(json.dumps(document)), ingle.check(document))
        document["survey"]["appliance"]["kind"] = "hearth"
        with self.assertRaisesRegex(ingle.IngleError, "no such choice; one of masonry-fireplace,"):
            ingle.check(document)

    def test_what_is_missing(self):
        survey = short_hearth()
        survey.unset("hearth.front")
        report = ingle.Report(survey, ["irc-2021"])
        finding = found(report, "hearth-front")
        self.assertEqual((finding.verdict, finding.measured, finding.margin),
                         ("unmeasured", None, None))
        self.assertEqual(finding.required.fraction("in"), 20)
        self.assertEqual([each.id for each in finding.missing], ["hearth.front"])
        missing = next(each for each in report.missing if each.quantity.id == "hearth.front")
        self.assertEqual(missing.subject, "/survey/hearth/front")
        self.assertIn("hearth-front", missing.rules)

    def test_items_that_are_not_there(self):
        survey = ingle.Survey()
        for path, code, says in (
                ("trim[0].distance", "argument", "trim has no item 0"),
                ("trim.distance", "unknown-quantity", r"write trim\[0\]\.distance"),
                ("trim[0].distanse", "unknown-quantity", r"mean trim\[0\]\.distance")):
            with self.subTest(path):
                with self.assertRaisesRegex(ingle.IngleError, says) as caught:
                    survey.set(path, "10 in")
                self.assertEqual((caught.exception.code, caught.exception.at), (code, path))

    def test_a_report_is_a_sequence(self):
        report = ingle.Report(short_hearth(), ["irc-2021", ingle.standards["irc-2024"]])
        self.assertEqual(len(list(report)), len(report))
        self.assertEqual(report[-1], report[len(report) - 1])
        self.assertEqual(report[:2], (report[0], report[1]))
        self.assertEqual(report.index(report[1]), 1)
        self.assertNotEqual(report[0], report[1])
        with self.assertRaises(IndexError):
            report[len(report)]

    def test_reports_that_cannot_be(self):
        survey = short_hearth()
        with self.assertRaises(ingle.IngleError) as caught:
            ingle.Report(survey, [])
        self.assertEqual(caught.exception.code, "no-standard")
        with self.assertRaises(ingle.IngleError) as caught:
            ingle.Report(survey, ["irc-2120"])
        self.assertEqual(caught.exception.code, "unknown-standard")
        survey.set("flue.shape", "round")
        survey.set("flue.liner", "13x13")
        with self.assertRaises(ingle.IngleError) as caught:
            ingle.Report(survey, ["irc-2021"])
        self.assertEqual(caught.exception.code, "contradiction")
        self.assertTrue(caught.exception.at.startswith("/survey/flue/"))


class Lives(unittest.TestCase):
    def test_a_report_stays_as_it_was(self):
        survey = short_hearth()
        survey.add_item("trim", "mantel shelf")
        survey.set("trim[0].distance", "10 in")
        survey.set("trim[0].projection", "9 in")
        report = ingle.Report(survey, ["irc-2021"])
        before = [(each.label, each.sentence(), each.subject) for each in report]
        survey.set("hearth.front", "30 in")
        survey.clear()
        self.assertEqual([(each.label, each.sentence(), each.subject) for each in report], before)
        self.assertTrue(any("mantel shelf" in label for label, _, _ in before))

    def test_borrowed_objects_keep_their_owners(self):
        survey = short_hearth()
        finding = found(ingle.Report(survey, ["irc-2021"]), "hearth-front")
        step, remedy = finding.steps[0], finding.remedies[0]
        expected = (finding.sentence(), step.sentence(), remedy.sentence())
        del survey
        for _ in range(3):
            gc.collect()
            churn = [short_hearth() for _ in range(200)]
            del churn
        self.assertEqual((finding.sentence(), step.sentence(), remedy.sentence()), expected)
        report = finding._report
        owner = weakref.ref(report)
        del finding, report
        gc.collect()
        self.assertIsNotNone(owner())
        self.assertEqual((step.sentence(), remedy.sentence()), expected[1:])
        del remedy
        gc.collect()
        self.assertIsNotNone(owner())
        del step
        gc.collect()
        self.assertIsNone(owner())

    def test_everything_is_freed_once(self):
        freed = []

        class Counted(Owned):
            def __init__(self):
                super().__init__(loading.library.ingle_survey_new, self.free, None)

            @staticmethod
            def free(pointer):
                freed.append(pointer)
                loading.library.ingle_survey_free(pointer)

        kept = Counted()
        pointer = kept.pointer
        del kept
        gc.collect()
        self.assertEqual(freed, [pointer])

    def test_changing_after_a_report_is_gone_needs_no_copy(self):
        survey = short_hearth()
        ingle.Report(survey, ["irc-2021"])
        gc.collect()
        owned = survey._owned
        survey.set("hearth.front", "30 in")
        self.assertIs(survey._owned, owned)

    def test_errors_can_be_pickled(self):
        with self.assertRaises(ingle.IngleError) as caught:
            ingle.check_text('{"survey": {}}')
        again = pickle.loads(pickle.dumps(caught.exception))
        self.assertEqual(vars(again), vars(caught.exception))


class Threads(unittest.TestCase):
    def test_each_thread_with_its_own_objects(self):
        expected = [each.sentence() for each in ingle.Report(short_hearth(), ["irc-2021"])]
        document = {"standards": ["irc-2021"], "survey": {"opening": {"width": "36 in"}}}
        answer = ingle.check(document)
        wrong = []

        def work():
            for _ in range(100):
                report = ingle.Report(short_hearth(), ["irc-2021"])
                if [each.sentence() for each in report] != expected:
                    wrong.append("objects")
                if ingle.check(document) != answer:
                    wrong.append("documents")
                try:
                    ingle.check_text("{")
                    wrong.append("no error")
                except ingle.IngleError as error:
                    if error.code != "json":
                        wrong.append(error.code)

        threads = [threading.Thread(target=work) for _ in range(4)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(wrong, [])


class Loading(unittest.TestCase):
    def run_with(self, code, **changes):
        environment = {name: value for name, value in os.environ.items()
                       if name not in ("INGLE_LIBRARY", "INGLE_JSON_LIBRARY")}
        environment.update(changes)
        return subprocess.run([sys.executable, "-c", code], env=environment, check=False,
                              stdout=subprocess.PIPE, stderr=subprocess.PIPE)

    def test_a_path_that_leads_nowhere(self):
        done = self.run_with("import ingle", INGLE_LIBRARY="/nowhere/libingle.so")
        self.assertEqual(done.returncode, 1)
        self.assertIn(b"ImportError: INGLE_LIBRARY", done.stderr)

    def test_a_library_that_is_another(self):
        done = self.run_with("import ingle", INGLE_LIBRARY=ctypes.util.find_library("c"))
        self.assertEqual(done.returncode, 1)
        self.assertIn(b"ImportError: The library found is not one", done.stderr)

    def test_a_build_tree_needs_one_path(self):
        done = self.run_with("import ingle; print(ingle.__version__)",
                             INGLE_LIBRARY=os.environ["INGLE_LIBRARY"])
        self.assertEqual(done.stdout.decode().strip(), ingle.__version__, done.stderr)

    def test_two_libraries_that_do_not_belong_together(self):
        with tempfile.TemporaryDirectory() as folder:
            other = shutil.copy(os.environ["INGLE_LIBRARY"], os.path.join(folder, "copy.so"))
            alone = ctypes.CDLL(other)
            with self.assertRaises(ImportError):
                loading._check_same(alone, loading.json_library)
        loading._check_same(loading.library, loading.json_library)

    def test_another_series_is_refused(self):
        with self.assertRaises(ImportError):
            series, loading.SERIES = loading.SERIES, "9.9"
            try:
                loading._check_version(loading.library)
            finally:
                loading.SERIES = series

    def test_a_struct_of_another_size_is_refused(self):
        class Shorter(ctypes.Structure):
            _fields_ = prototypes.ingle_format._fields_[:2]

        amount = prototypes.ingle_amount(0, prototypes.INGLE_LENGTH, 0)
        text = ctypes.create_string_buffer(64)

        def show(given):
            pointer = ctypes.cast(given, ctypes.POINTER(prototypes.ingle_format))
            return loading.library.ingle_amount_format(amount, pointer, text, 64, None)

        loading._check_struct(loading.library, prototypes.ingle_format, show)
        with self.assertRaises(ImportError):
            loading._check_struct(loading.library, Shorter, show)


if __name__ == "__main__":
    unittest.main()
