# SPDX-License-Identifier: MIT
"""The trainer's bench in Python: the same bytes as the command, errors, and writing that fails."""

import copy
import ctypes
import gc
import json
import pathlib
import re
import threading
import unittest
import weakref
from unittest import mock

import documents
import ingle
from ingle import drawing, loading, prototypes, teaching, writing

ROOT = pathlib.Path(__file__).resolve().parents[2]
SHORT = {"id": "alder-lane_parlour", "standards": ["irc-2021"],
         "survey": {"appliance": {"kind": "masonry-fireplace"},
                    "opening": {"width": "36 in", "height": "24 in"},
                    "hearth": {"front": "19 15/16 in", "left": "12 in", "right": "11 in"}}}
TAPED = dict(SHORT, survey=dict(SHORT["survey"], opening={"width": "36 in", "height": "30 in"},
                                tape={"class": "class-ii", "graduation": "1/16 in"}))
DRAWN = {"standards": ["irc-2021"],
         "survey": dict(SHORT["survey"], flue={"diameter": "10 3/4 in", "above-hearth": "15 ft"})}
BUILT = ["irc-2000", "irc-2021", "sbc-1990s"]
TOWN = {"amendments": [{"standard": "irc-2021", "rule": "hearth-front",
                        "set": {"large": "24 in"}, "citation": "by-law 7-2"}]}
FORMATS = ("text", "markdown", "html")


def written(*words, given=SHORT, status=0):
    """What the command writes."""
    done = documents.command(*words, given="" if given is None else json.dumps(given))
    if done.returncode != status:
        raise AssertionError(f"{words}: {done.returncode}, {done.stderr.decode()}")
    return done.stdout.decode("utf-8")


HEIGHT = {"from_": "20 in", "to": "30 in", "step": "1 in"}
HEIGHT_WORDS = ["--quantity", "opening.height", "--from", "20 in", "--to", "30 in", "--step",
                "1 in"]
FRONT = {"with_": "hearth.front", "with_from": "16 in", "with_to": "20 in", "with_step": "1/2 in"}
FRONT_WORDS = ["--with", "hearth.front", "--with-from", "16 in", "--with-to", "20 in",
               "--with-step", "1/2 in"]


class LikeTheCommand(unittest.TestCase):
    def same(self, got, *words, given=SHORT):
        text = written(*words, given=given)
        self.assertEqual(got, text if isinstance(got, str) else json.loads(text))

    def test_explain(self):
        for format in FORMATS:
            self.same(ingle.explain(SHORT, format), "explain", "--format", format)
        for form in ("worked", "report", "brief"):
            self.same(ingle.explain(SHORT, form=form, least="fails", rule="hearth-front",
                                    width=40), "explain", "--form", form, "--least", "fails",
                      "--rule", "hearth-front", "--width", "40")
        self.assertTrue(ingle.explain(SHORT).startswith("Alder lane parlour\n====="))
        self.assertTrue(ingle.explain(SHORT, title="A & B").startswith("A & B\n====="))
        self.assertIn("<title>A &amp; B</title>", ingle.explain(SHORT, "html", title="A & B"))
        self.assertNotIn("\x1b", ingle.explain(SHORT))
        self.assertIn("\x1b[1;31mfails\x1b[0m", ingle.explain(SHORT, colour=True))

    def test_what_a_check_takes(self):
        self.same(ingle.explain(SHORT, unit="mm", standards=["irc-2000", "obc-2012"],
                                readings={"hearth-steps": "whole-steps"}),
                  "explain", "--unit", "mm", "--standard", "irc-2000", "--standard", "obc-2012",
                  "--reading", "hearth-steps=whole-steps")
        self.assertIn("24 in", ingle.explain(SHORT, amendments=TOWN))
        self.assertNotIn("24 in", ingle.explain(SHORT, rule="hearth-front", form="brief"))
        solved = ingle.solve(SHORT, "hearth.front", rule="hearth-front", amendments=TOWN)
        self.assertEqual(solved["works"][0]["from"]["text"], "24 in")
        # Amendments end with the call.
        self.assertEqual(ingle.solve(SHORT, "hearth.front", rule="hearth-front")["works"][0]
                         ["from"]["text"], "20 in")

    def test_solve(self):
        self.same(ingle.solve(SHORT, "opening.height", **HEIGHT), "solve", *HEIGHT_WORDS)
        self.same(ingle.solve(SHORT, "hearth.front", rule="hearth-front", strict=True), "solve",
                  "--quantity", "hearth.front", "--rule", "hearth-front", "--strict")
        self.same(ingle.solve(SHORT, "opening.height", **HEIGHT, **FRONT), "solve",
                  *HEIGHT_WORDS, *FRONT_WORDS)
        for format in FORMATS:
            self.same(ingle.solve_page(SHORT, "opening.height", format, **HEIGHT),
                      "solve", *HEIGHT_WORDS, "--format", format)
            self.same(ingle.solve_page(SHORT, "opening.height", format, **HEIGHT, **FRONT),
                      "solve", *HEIGHT_WORDS, *FRONT_WORDS, "--format", format)
        self.same(ingle.solve_plot(SHORT, "opening.height", **HEIGHT, **FRONT), "solve",
                  *HEIGHT_WORDS, *FRONT_WORDS, "--format", "svg")

    def test_sweep(self):
        self.same(ingle.sweep(SHORT, "opening.height", **HEIGHT), "sweep", *HEIGHT_WORDS)
        self.same(ingle.sweep(SHORT, "opening.height", **HEIGHT, unchanged=True,
                              rule="hearth-front"), "sweep", *HEIGHT_WORDS, "--all", "--rule",
                  "hearth-front")
        self.same(ingle.sweep_csv(SHORT, "opening.height", **HEIGHT), "sweep", *HEIGHT_WORDS,
                  "--format", "csv")
        self.same(ingle.sweep_plot(SHORT, "opening.height", **HEIGHT), "sweep", *HEIGHT_WORDS,
                  "--format", "svg")

    def test_compare(self):
        words = [word for each in BUILT for word in ("--standard", each)]
        self.same(ingle.compare(SHORT, BUILT), "compare", *words)
        self.same(ingle.compare(SHORT, unit="mm"), "compare", "--unit", "mm")
        for format in FORMATS:
            self.same(ingle.compare_page(SHORT, BUILT, format), "compare", *words, "--format",
                      format)

    def test_worksheet(self):
        words = ["--appliance", "stove", "--standard", "irc-2021"]
        stove = {"appliance": "stove", "standards": ["irc-2021"]}
        self.same(ingle.worksheet(**stove), "worksheet", *words, "--format", "json", given=None)
        self.same(ingle.worksheet(SHORT), "worksheet", "--format", "json")
        for format in FORMATS:
            self.same(ingle.worksheet_page(format=format, **stove), "worksheet", *words,
                      "--format", format, given=None)
            self.same(ingle.worksheet_page(SHORT, format), "worksheet", "--format", format)
        self.same(ingle.worksheet_page(fuel="wood", **stove), "worksheet", *words, "--fuel",
                  "wood", given=None)

    def test_exercise(self):
        words = ["--standard", "irc-2021", "--seed", "7", "--level", "3"]
        for part in ("both", "problem", "answers"):
            self.same(ingle.exercise(["irc-2021"], 7, 3, part=part), "exercise", *words,
                      "--part", part, "--format", "json", given=None)
            for format in FORMATS:
                self.same(ingle.exercise_page(["irc-2021"], 7, 3, format, part=part, unit="mm"),
                          "exercise", *words, "--part", part, "--format", format, "--unit", "mm",
                          given=None)
        self.assertEqual(list(ingle.levels), [1, 2, 3, 4])

    def test_draw(self):
        self.same(ingle.draw(SHORT), "draw")
        self.same(ingle.draw(SHORT, "plan", "mm"), "draw", "--unit", "mm")
        self.assertIn(">Other<", ingle.draw(SHORT, title="Other"))
        for view in ingle.views:
            with self.subTest(view):
                try:
                    self.assertIn("<svg", ingle.draw(SHORT, view))
                except ingle.IngleError as error:
                    self.assertEqual(error.code, "nothing-measured")

    def test_text_is_as_good_as_a_dict(self):
        for form in (json.dumps(SHORT), json.dumps(SHORT).encode()):
            self.assertEqual(ingle.explain(form), ingle.explain(SHORT))
            self.assertEqual(ingle.solve(form, "hearth.front"), ingle.solve(SHORT, "hearth.front"))
            self.assertEqual(ingle.worksheet(form), ingle.worksheet(SHORT))

    def test_documents_are_left_as_they_are(self):
        before = copy.deepcopy(SHORT)
        ingle.explain(SHORT), ingle.solve(SHORT, "hearth.front"), ingle.worksheet(SHORT)
        self.assertEqual(SHORT, before)


class Errors(unittest.TestCase):
    def refuse(self, code, call, *arguments, near="", **named):
        with self.subTest(code=code, arguments=arguments, named=named):
            with self.assertRaises(ingle.IngleError) as caught:
                call(*arguments, **named)
            self.assertEqual(caught.exception.code, code)
            self.assertIn(near, caught.exception.message)
            self.assertGreater(len(caught.exception.message), 10)
            return caught.exception

    def test_quantities_and_ranges(self):
        for call in (ingle.solve, ingle.sweep, ingle.solve_page, ingle.sweep_csv,
                     ingle.sweep_plot):
            self.refuse("unknown-quantity", call, SHORT, "hearth.frnt", near="front")
            self.refuse("range", call, SHORT, "hearth.front", from_="20 in", to="16 in",
                        near="hearth.front")
            self.refuse("range", call, SHORT, "hearth.front", from_="16 1/3 in",
                        to="16 1/3 in", step="1 in")
            self.refuse("range", call, SHORT, "hearth.front", step="0 in")
            self.refuse("range", call, SHORT, "hearth.front", step="-1 in")
            self.refuse("range", call, SHORT, "hearth.front", step="0.000001 in")
            self.refuse("implausible", call, SHORT, "hearth.front", from_="16 in", to="400 ft")
            self.refuse("unit-missing", call, SHORT, "hearth.front", from_="16")
            self.refuse("unknown-rule", call, SHORT, "hearth.front", rule="hearth-frnt",
                        near="hearth-front")
            self.refuse("no-standard", call, {"survey": SHORT["survey"]}, "hearth.front")
        self.refuse("range", ingle.solve, SHORT, "hearth.front", with_="hearth.front")
        self.refuse("argument", ingle.solve, SHORT, "hearth.front", with_from="16 in",
                    near="with_")

    def test_pages_and_drawings(self):
        for call in (lambda **named: ingle.explain(SHORT, **named),
                     lambda **named: ingle.solve_page(SHORT, "hearth.front", **named),
                     lambda **named: ingle.compare_page(SHORT, **named),
                     lambda **named: ingle.worksheet_page(SHORT, **named),
                     lambda **named: ingle.exercise_page("irc-2021", **named)):
            self.refuse("unknown-name", call, format="markdwn", near="markdown")
            self.refuse("argument", call, width=19, near="20")
            self.refuse("argument", call, width=1001)
            self.refuse("encoding", call, title="a\0b")
        self.refuse("unknown-name", ingle.explain, SHORT, least="fail", near="fails")
        self.refuse("unknown-name", ingle.explain, SHORT, form="breif", near="brief")
        self.refuse("unknown-rule", ingle.explain, SHORT, rule="hearth-frnt", near="hearth-front")
        self.refuse("unknown-rule", ingle.explain, SHORT, rule="furniture-distance")
        self.assertTrue(ingle.explain(SHORT, rule="furniture-distance",
                                      standards=["irc-2021", "common-practice-us"]))
        self.refuse("unknown-name", ingle.draw, SHORT, "pln", near="plan")
        self.refuse("nothing-measured", ingle.draw,
                    {"standards": ["irc-2021"], "survey": {}})
        self.refuse("nothing-measured", ingle.sweep_plot, {
            "standards": ["irc-2021"], "survey": {"appliance": {"kind": "masonry-fireplace"}}},
            "flue.height", from_="1 ft", to="2 ft", step="1 ft")

    def test_worksheets_and_exercises(self):
        self.refuse("argument", ingle.worksheet)
        self.refuse("argument", ingle.worksheet, SHORT, appliance="stove")
        self.refuse("argument", ingle.worksheet, SHORT, fuel="coal")
        self.refuse("no-standard", ingle.worksheet, appliance="stove")
        self.refuse("unknown-choice", ingle.worksheet, appliance="stoev",
                    standards=["irc-2021"], near="stove")
        for call in (ingle.exercise, ingle.exercise_page):
            self.refuse("argument", call, "irc-2021", -1)
            self.refuse("argument", call, "irc-2021", 2 ** 64)
            self.refuse("argument", call, "irc-2021", 1, 5)
            self.refuse("argument", call, "irc-2021", 1, 0)
            self.refuse("no-standard", call, [])
            self.refuse("unknown-standard", call, "irc2021", near="irc-2021")
            self.refuse("unknown-name", call, "irc-2021", part="half")

    def test_errors_of_documents_tell_the_place(self):
        wrong = dict(SHORT, survey={"opening": {"width": "36"}})
        for call in (ingle.explain, ingle.compare, ingle.worksheet, ingle.draw,
                     lambda document: ingle.solve(document, "hearth.front")):
            error = self.refuse("unit-missing", call, wrong)
            self.assertEqual((error.at, error.line), ("/survey/opening/width", None))
            error = self.refuse("unit-missing", call, json.dumps(wrong))
            self.assertEqual((error.at, error.line), ("/survey/opening/width", 1))
            # The reader serves again.
            self.assertTrue(call(SHORT))


class Writing(unittest.TestCase):
    def test_what_goes_wrong_within_comes_out(self):
        """The pieces of every call that writes: exceptions pass C by, and end the writing."""
        calls = [lambda: ingle.explain(SHORT), lambda: ingle.draw(SHORT),
                 lambda: ingle.solve_page(SHORT, "hearth.front"),
                 lambda: ingle.solve_page(SHORT, "opening.height", **HEIGHT, **FRONT),
                 lambda: ingle.solve_plot(SHORT, "opening.height", **HEIGHT, **FRONT),
                 lambda: ingle.sweep_csv(SHORT, "opening.height", **HEIGHT),
                 lambda: ingle.sweep_plot(SHORT, "opening.height", **HEIGHT),
                 lambda: ingle.compare_page(SHORT), lambda: ingle.worksheet_page(SHORT),
                 lambda: ingle.exercise_page("irc-2021"), lambda: ingle.assess(SHORT),
                 lambda: ingle.probability_plot(TAPED, "hearth-front"),
                 lambda: ingle.draft_page(DRAWN), lambda: ingle.draft_plot(DRAWN)]
        for number, call in enumerate(calls):
            for raised in (MemoryError, KeyboardInterrupt, ZeroDivisionError("in the middle")):
                took = []

                def take(text, length):
                    took.append(length)
                    raise raised

                with self.subTest(number), mock.patch.object(writing.ctypes, "string_at", take):
                    self.assertRaises(raised if isinstance(raised, type) else type(raised), call)
                self.assertEqual(len(took), 1)
            self.assertTrue(call())

    def test_a_callback_that_refuses_is_an_error_of_the_call(self):
        refuse = prototypes.ingle_write(lambda _context, _text, _length: 1)
        with ingle.document.asked(SHORT) as about:
            status = loading.library.ingle_explain(about.report, None, None, refuse, None)
        self.assertEqual(status, ingle.statuses["io"].number)

    def test_letters_parted_between_pieces(self):
        label = "Sims über dem Kamin ≥ " * 40
        survey = copy.deepcopy(SHORT)
        survey["survey"]["trim"] = [{"label": label, "side": "above", "combustible": True,
                                     "distance": "5 in", "projection": "2 in"}] * 20
        page = ingle.explain(survey, "html")
        self.assertGreater(page.count(label.strip()), 15)

    def test_nothing_is_kept(self):
        made = []
        real = writing._Gathering

        def gathering():
            made.append(weakref.ref(each := real()))
            return each

        with mock.patch.object(writing, "_Gathering", gathering):
            ingle.explain(SHORT)
        gc.collect()
        self.assertEqual([each() for each in made], [None])

    def test_threads(self):
        wrong, expected = [], {seed: ingle.exercise_page("irc-2021", seed, 3)
                               for seed in range(4)}

        def work(seed):
            for _ in range(20):
                if ingle.exercise_page("irc-2021", seed, 3) != expected[seed]:
                    wrong.append(seed)

        threads = [threading.Thread(target=work, args=(seed,)) for seed in expected]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(wrong, [])


class Numbers(unittest.TestCase):
    def test_words_have_the_numbers_of_the_headers(self):
        header = "".join((ROOT / "include/ingle" / f"{name}.h").read_text(encoding="utf-8")
                         for name in ("explain", "exercise", "page", "draw"))
        for known, prefix in ((teaching._FORMS, "EXPLAIN"), (teaching._PARTS, "EXERCISE"),
                              (writing.FORMATS, "PAGE"), (drawing._NUMBERS, "VIEW")):
            found = {word.lower(): int(number) for word, number in
                     re.findall(rf"INGLE_{prefix}_([A-Z]+) = (\d+)", header)}
            self.assertEqual(dict(known), found)

    def test_seeds_are_64_bits(self):
        most = ctypes.c_uint64(-1).value
        self.assertEqual(teaching.SEEDS, most + 1)
        self.assertEqual(ingle.exercise("irc-2021", most)["seed"], most)


if __name__ == "__main__":
    unittest.main()
