# SPDX-License-Identifier: MIT
"""Probabilities through the objects of the package and through its documents."""

import json
import math
import os
import statistics
import subprocess
import unittest

import ingle

NORMAL = statistics.NormalDist()

# Check value 19: a round flue of 10 3/4 in, of which 1/12 of 36 in x 30 in is required.
SURVEY = {"appliance.kind": "masonry-fireplace", "opening.width": "36 in",
          "opening.height": "30 in", "flue.diameter": "10 3/4 in"}
TAPE = {"tape.class": "class-ii", "tape.graduation": "1/16 in"}


def judged(**more):
    survey = ingle.Survey()
    for path, value in {**SURVEY, **TAPE, **more}.items():
        survey.set(path, value)
    return ingle.Report(survey, ["irc-2021"])


def conformance(assessment, rule="flue-area"):
    return next(each for each in assessment if each.finding.rule.id == rule)


class Objects(unittest.TestCase):
    def test_a_flue_against_its_share(self):
        report = judged()
        assessment = ingle.Assessment(report, ingle.Probability(separate_tapes=True))
        self.assertEqual(len(assessment), len(report))
        sure = conformance(assessment)
        self.assertAlmostEqual(sure.probability, 0.9662425, delta=2e-4)
        self.assertEqual((sure.method, sure.decision), ("first-order", "pass"))
        margin = sure.finding.margin.value / sure.standard_uncertainty.value
        self.assertAlmostEqual(sure.probability, NORMAL.cdf(margin), places=12)
        self.assertEqual(sure.standard_uncertainty.dimension, "area")
        self.assertIn("96.6 %", sure.sentence())
        self.assertEqual(sure.caution(), "")
        self.assertIsNone(sure.monte_carlo)
        self.assertEqual(sure.steps[0].about, "flue.diameter")
        self.assertAlmostEqual(sure.steps[-1].result.value, sure.probability)

    def test_budgets(self):
        lengths = ingle.Assessment(judged()).lengths
        self.assertEqual([(each.quantity.id, each.item) for each in lengths],
                         [("opening.width", 0), ("opening.height", 0), ("flue.diameter", 0)])
        for each in lengths:
            self.assertAlmostEqual(each.standard_uncertainty.value, 611020.7477, places=3)
            self.assertEqual(each.standard_uncertainty.text("mm"), "0.611 mm")
            self.assertEqual(len(each.steps), 4)
            self.assertIn("0.7 mm", each.steps[0].sentence("mm"))

    def test_decisions(self):
        report = judged()
        for asked, decision in ((ingle.Probability(guard_band=0.83, separate_tapes=True), "pass"),
                                (ingle.Probability(guard_band="ilac-g8-2009",
                                                   separate_tapes=True), "fail"),
                                (ingle.Probability("four-way", 1, separate_tapes=True),
                                 "conditional-pass")):
            sure = conformance(ingle.Assessment(report, asked))
            self.assertEqual(sure.decision, decision)
            self.assertEqual(sure.finding.verdict, "meets")

    def test_monte_carlo(self):
        run = conformance(ingle.Assessment(judged(), ingle.Probability(trials=20000))).monte_carlo
        self.assertEqual((run.trials, run.outside, run.agrees), (20000, 0, True))
        self.assertAlmostEqual(run.probability, run.met / 20000)
        self.assertGreater(run.standard_uncertainty, 0)

    def test_without_a_tape(self):
        survey = ingle.Survey()
        for path, value in SURVEY.items():
            survey.set(path, value)
        assessment = ingle.Assessment(ingle.Report(survey, ["irc-2021"]))
        self.assertEqual([each.id for each in assessment.missing],
                         ["tape.class", "tape.graduation"])
        self.assertIn("tape.class", assessment.text)
        sure = conformance(assessment)
        self.assertEqual((sure.probability, sure.standard_uncertainty, sure.method,
                          sure.decision), (None, None, "none", "none"))

    def test_slices_and_ends(self):
        assessment = ingle.Assessment(judged())
        self.assertEqual(len(assessment[1:3]), 2)
        self.assertRaises(IndexError, lambda: assessment[len(assessment)])

    def test_what_cannot_be_asked(self):
        report = judged()
        for asked in (ingle.Probability("four-way"), ingle.Probability("simple", 1),
                      ingle.Probability(guard_band=math.nan), ingle.Probability(trials=10**8),
                      ingle.Probability(seed=-1)):
            with self.assertRaises(ingle.IngleError):
                ingle.Assessment(report, asked)
        with self.assertRaises(KeyError):
            ingle.Assessment(report, ingle.Probability("five-way"))


class Functions(unittest.TestCase):
    def test_probability_within(self):
        """JCGM 106:2012, 7.3.3 and 7.4, from memory: 0.96, 0.99, 0.66."""
        self.assertAlmostEqual(ingle.probability_within(-5.484, 0.008, upper=-5.47), 0.959941,
                               places=6)
        self.assertAlmostEqual(ingle.probability_within(509.7, 8.6, lower=490), 0.989010, places=6)
        self.assertAlmostEqual(ingle.probability_within(13.6, 1.8, lower=12.5, upper=16.3),
                               0.662630, places=6)
        self.assertRaises(ingle.IngleError, ingle.probability_within, math.nan, 1, lower=0)
        self.assertRaises(ingle.IngleError, ingle.probability_within, 1, 1)

    def test_catalogues(self):
        self.assertEqual(list(ingle.decision_rules), ["simple", "guarded", "three-way",
                                                      "four-way"])
        self.assertEqual(ingle.guard_bands["three-sigma"].factor, 1.5)


class Documents(unittest.TestCase):
    DOCUMENT = {"standards": ["irc-2021"], "survey": {
        "appliance": {"kind": "masonry-fireplace"},
        "opening": {"width": "36 in", "height": "30 in"}, "flue": {"diameter": "10 3/4 in"},
        "tape": {"class": "class-ii", "graduation": "1/16 in"}}}

    def test_a_document_has_it_where_it_is_asked(self):
        report = ingle.check(self.DOCUMENT, probability=ingle.Probability("four-way", 1))
        sure = next(finding["probability"] for finding in report["findings"]
                    if finding["rule"] == "flue-area")
        self.assertAlmostEqual(sure["value"],
                               conformance(ingle.Assessment(judged())).probability, places=6)
        self.assertNotIn("uncertainty", ingle.check(self.DOCUMENT))

    def test_what_cannot_be_asked(self):
        with self.assertRaises(ingle.IngleError) as caught:
            ingle.check(self.DOCUMENT, probability=ingle.Probability("four-way"))
        self.assertEqual(caught.exception.code, "argument")

    def command(self, *words):
        done = subprocess.run([os.environ["INGLE_COMMAND"], "assess", *words],
                              input=json.dumps(self.DOCUMENT).encode(), capture_output=True,
                              check=True)
        return done.stdout.decode("utf-8")

    def test_a_page_is_the_command_s(self):
        for format_ in ("text", "markdown", "html"):
            self.assertEqual(ingle.assess(self.DOCUMENT, format_),
                             self.command("--format", format_))
        asked = ingle.Probability("four-way", 1, trials=2000, seed=7, separate_tapes=True)
        self.assertEqual(
            ingle.assess(json.dumps(self.DOCUMENT), rule="flue-area", probability=asked,
                         unit="mm", width=60),
            self.command("--rule", "flue-area", "--decision", "four-way", "--guard-band", "1",
                         "--monte-carlo", "2000", "--seed", "7", "--separate-tapes", "--unit", "mm",
                         "--width", "60"))
        self.assertTrue(ingle.assess(self.DOCUMENT, title="A & B").startswith("A & B\n====="))

    def test_a_plot_is_the_command_s(self):
        words = ["--format", "svg", "--rule", "flue-area"]
        plot = ingle.probability_plot(self.DOCUMENT, "flue-area")
        self.assertEqual(plot, self.command(*words))
        self.assertEqual(
            ingle.probability_plot(self.DOCUMENT, "flue-area", unit="mm",
                                   standards=["irc-2024"],
                                   probability=ingle.Probability("four-way", 1)),
            self.command(*words, "--unit", "mm", "--standard", "irc-2024", "--decision",
                         "four-way", "--guard-band", "1"))
        self.assertIn("A &amp; B", ingle.probability_plot(self.DOCUMENT, "flue-area",
                                                          title="A & B"))
        # That of the objects: of a survey that knows no unit, in the standard's.
        self.assertEqual(conformance(ingle.Assessment(judged())).plot("in"), plot)

    def test_what_cannot_be_written(self):
        bare = {"standards": ["irc-2021"], "survey": {"appliance": {"kind": "masonry-fireplace"}}}
        for code, call in (
                ("unknown-rule", lambda: ingle.assess(self.DOCUMENT, rule="flue-aera")),
                ("unknown-rule", lambda: ingle.probability_plot(self.DOCUMENT, "flue-aera")),
                # Without a finding on the rule, and without a tape.
                ("nothing-measured",
                 lambda: ingle.probability_plot(self.DOCUMENT, "trim-abutting")),
                ("nothing-measured", lambda: ingle.probability_plot(bare, "flue-area")),
                ("argument", lambda: ingle.assess(
                    self.DOCUMENT, probability=ingle.Probability("four-way"))),
                ("unknown-name", lambda: ingle.assess(self.DOCUMENT, "svg"))):
            with self.assertRaises(ingle.IngleError) as caught:
                call()
            self.assertEqual(caught.exception.code, code)
        with self.assertRaisesRegex(ingle.IngleError, "mean flue-area"):
            ingle.assess(self.DOCUMENT, rule="flue-aera")


if __name__ == "__main__":
    unittest.main()
