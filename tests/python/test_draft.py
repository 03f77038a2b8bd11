# SPDX-License-Identifier: MIT
"""`ingle.draft` and `ingle draft`: what they say, that they say the same, and what they refuse."""

import json
import os
import pathlib
import re
import shlex
import subprocess
import unittest

import ingle

DOCUMENT = {"id": "alder-lane", "standards": ["irc-2021"], "survey": {
    "opening": {"width": "36 in", "height": "30 in"},
    "throat": {"area": "100 sq in"},
    "flue": {"diameter": "10 3/4 in", "above-hearth": "15 ft"}}}

SURVEY = {"opening.width": "36 in", "opening.height": "30 in", "throat.area": "100 sq in",
          "flue.diameter": "10 3/4 in", "flue.above-hearth": "15 ft"}


def command(*words, document=None):
    """What the command leaves: its document, or its error."""
    done = subprocess.run([os.environ["INGLE_COMMAND"], "draft", *words],
                          input=json.dumps(document or DOCUMENT).encode(), capture_output=True,
                          check=False)
    return json.loads(done.stdout if done.returncode == 0 else done.stderr)


def survey():
    made = ingle.Survey()
    for path, text in SURVEY.items():
        made.set(path, text)
    return made


class Estimate(unittest.TestCase):
    def test_the_velocity_is_that_of_the_equation(self):
        # V = (Af/Ao) sqrt(2 g H Θ / K) with the default set: derived.
        share = 10.75 ** 2 * 3.141592653589793 / 4 / 1080
        outdoor = (70 + 459.67) / 1.8
        theta = outdoor / (outdoor + 300 / 1.8)
        height = 15 * 0.3048
        losses = 2 + height / (10.75 * 0.0254) / 30
        expected = share * (2 * 9.80665 * height * theta * (1 - theta) / losses) ** 0.5
        results = ingle.draft(DOCUMENT, unit="m")["results"]
        self.assertAlmostEqual(results["frontal-velocity"]["value"], expected, 9)
        self.assertEqual(results["frontal-velocity"]["unit"], "m/s")
        results = ingle.draft(DOCUMENT)["results"]
        self.assertAlmostEqual(results["frontal-velocity"]["value"], expected / 0.3048, 8)
        self.assertEqual(results["frontal-velocity"]["text"], "0.784 ft/s")

    def test_command_document_and_survey_say_the_same(self):
        for figures, words in (({}, []), ({"rise": "150 F", "criterion": "0.6 ft/s"},
                                          ["--rise", "150 F", "--criterion", "0.6 ft/s"]),
                               ({"room_pressure": "-5 Pa", "inlet": "sharp"},
                                ["--room-pressure=-5 Pa", "--inlet", "sharp"])):
            with self.subTest(figures):
                said = ingle.draft(DOCUMENT, **figures)
                self.assertEqual(command(*words), said)
                self.assertEqual(ingle.draft(json.dumps(DOCUMENT), **figures), said)
                del said["id"]
                self.assertEqual(ingle.draft(survey(), standards=["irc-2021"], **figures), said)

    def test_what_is_said_of_each_figure(self):
        said = ingle.draft(DOCUMENT, height=7.0)
        self.assertEqual(list(said["inputs"])[:4],
                         ["opening-area", "flue-area", "hydraulic-diameter", "height"])
        self.assertEqual(said["inputs"]["opening-area"]["origin"],
                         "opening.width × opening.height")
        self.assertEqual(said["inputs"]["height"]["from"], "given")
        self.assertEqual(said["inputs"]["rise"]["from"], "default")
        self.assertEqual(said["inputs"]["rise"]["basis"], "from-memory")
        self.assertIn("ASHRAE", said["inputs"]["criterion"]["source"])
        self.assertEqual(said["standing"], "within-uncertainty")
        self.assertIs(said["claimable"], True)
        self.assertEqual(said["outside"], [])
        self.assertAlmostEqual(said["sensitivities"]["opening-area"], -1, 6)
        self.assertEqual(said["working"][0]["figure"], "mean-temperature")
        self.assertEqual(said["working"][0]["expression"], "To + dT")
        self.assertTrue(any("large fire" in notice for notice in said["notices"]))
        self.assertEqual(said["ingle"], ingle.__version__)

    def test_what_is_outside_is_said_and_still_given(self):
        said = ingle.draft(DOCUMENT, height=20.0)
        self.assertIs(said["claimable"], False)
        self.assertEqual(said["outside"][0]["figure"], "height")
        self.assertIn("frontal-velocity", said["results"])

    def test_no_draft(self):
        said = ingle.draft(DOCUMENT, room_pressure=-50)
        self.assertEqual((said["standing"], said["reached"]), ("no-draft", False))
        self.assertNotIn("frontal-velocity", said["results"])
        self.assertEqual(said["sensitivities"], {})

    def test_a_diameter_alone_is_a_round_flue(self):
        said = ingle.draft(DOCUMENT, hydraulic_diameter="12 in")
        self.assertAlmostEqual(said["inputs"]["flue-area"]["value"], 113.0973355, 6)

    def test_the_required_flue_put_in_reaches(self):
        said = ingle.draft(DOCUMENT, unit="m")
        diameter = said["results"]["required-diameter"]["value"] / 1000
        again = ingle.draft(DOCUMENT, hydraulic_diameter=diameter, unit="m")
        self.assertAlmostEqual(again["results"]["frontal-velocity"]["value"], 0.24384, 9)


class Written(unittest.TestCase):
    """Pages and plots: the bytes that the command writes, of documents and of surveys."""

    def written(self, *words, document=None):
        done = subprocess.run([os.environ["INGLE_COMMAND"], "draft", *words],
                              input=json.dumps(document or DOCUMENT).encode(), capture_output=True,
                              check=True)
        return done.stdout.decode("utf-8")

    def test_pages(self):
        for format_ in ("text", "markdown", "html"):
            with self.subTest(format_):
                self.assertEqual(ingle.draft_page(DOCUMENT, format_),
                                 self.written("--format", format_))
        self.assertEqual(ingle.draft_page(json.dumps(DOCUMENT), width=60, unit="m", rise="150 F"),
                         self.written("--format", "text", "--width", "60", "--unit", "m",
                                      "--rise", "150 F"))
        self.assertTrue(ingle.draft_page(DOCUMENT, title="A & B").startswith("A & B\n====="))

    def test_plots(self):
        self.assertEqual(ingle.draft_plot(DOCUMENT), self.written("--format", "svg"))
        self.assertEqual(ingle.draft_plot(DOCUMENT, unit="m", inlet="sharp", height="20 ft",
                                          standards=["common-practice-us"]),
                         self.written("--format", "svg", "--unit", "m", "--inlet", "sharp",
                                      "--height", "20 ft", "--standard", "common-practice-us"))
        metric = dict(DOCUMENT, unit="mm")
        self.assertEqual(ingle.draft_plot(metric), self.written("--format", "svg",
                                                                document=metric))
        self.assertIn("A &amp; B", ingle.draft_plot(DOCUMENT, title="A & B"))

    def test_surveys(self):
        """A survey knows no unit: the document's default is its standard's."""
        named = {"unit": ingle.standards["irc-2021"].unit, "standards": ["irc-2021"]}
        self.assertEqual(ingle.draft_plot(survey(), **named), ingle.draft_plot(DOCUMENT))
        self.assertEqual(ingle.draft_page(survey(), **named), ingle.draft_page(DOCUMENT))
        self.assertTrue(ingle.draft_plot(survey()).startswith("<svg"))

    def test_what_cannot_be(self):
        for call in (ingle.draft_page, ingle.draft_plot):
            with self.assertRaisesRegex(TypeError, "did you mean 'height'"):
                call(DOCUMENT, hight="20 ft")
            with self.assertRaisesRegex(ingle.IngleError, "lacks") as caught:
                call({"standards": ["irc-2021"], "survey": {}})
            self.assertIsNone(caught.exception.line)
            with self.assertRaises(ingle.IngleError) as caught:
                call("{")
            self.assertEqual((caught.exception.code, caught.exception.line), ("json", 1))
        with self.assertRaises(ingle.IngleError) as caught:
            ingle.draft_plot(DOCUMENT, room_pressure=-50)  # nothing drives a flow
        self.assertEqual(caught.exception.code, "nothing-measured")


class Guide(unittest.TestCase):
    """What docs/draft.md shows is what comes out."""

    TEXT = (pathlib.Path(__file__).resolve().parents[2] / "docs/draft.md").read_text(
        encoding="utf-8")

    def block(self, language):
        return re.search(rf"```{language}\n(.*?)```", self.TEXT, re.DOTALL)[1]

    def test_example(self):
        document = json.loads(self.block("json"))
        said = ingle.draft(document)
        self.assertEqual(said["sentence"], self.block("text").strip())
        self.assertEqual(said["results"]["standard-uncertainty"]["text"], "8.4 %")
        words = re.search(r"ingle draft (--.*) house", self.block("console"))[1]
        self.assertEqual(command(*shlex.split(words), document=document),
                         ingle.draft(document, rise="150 F", room_pressure="-2 Pa"))

    def test_range(self):
        numbers = ingle.draft_numbers
        claim = [numbers[f"claim-{name}"].value for name in (
            "opening-area-least", "opening-area-most", "hydraulic-diameter-least",
            "hydraulic-diameter-most", "height-least", "height-most")]
        self.assertEqual(claim, [0.15, 2.2, 0.10, 0.45, 3, 12])
        self.assertIn("0.15 to 2.2 m²", self.TEXT)
        self.assertIn("0.10 to 0.45 m", self.TEXT)
        self.assertIn("3 to 12 m", self.TEXT)


class Refusals(unittest.TestCase):
    def refused(self, code, at, document=DOCUMENT, **figures):
        with self.assertRaises(ingle.IngleError) as caught:
            ingle.draft(document, **figures)
        self.assertEqual((caught.exception.code, caught.exception.at), (code, at))
        return caught.exception

    def test_texts(self):
        self.assertEqual(self.refused("unit-missing", "rise", rise="300").position, 3)
        self.refused("unit-unknown", "rise", rise="300 Pa")
        self.refused("negative", "height", height="-3 m")

    def test_values(self):
        self.refused("implausible", "height", height=0)
        self.refused("number", "rise", rise=float("nan"))
        self.refused("number", "rise", rise=float("inf"))
        self.refused("contradiction", "hydraulic-diameter", hydraulic_diameter=0.5,
                     flue_area=0.01)
        with self.assertRaises(TypeError):
            ingle.draft(DOCUMENT, rise=True)
        with self.assertRaises(TypeError) as caught:
            ingle.draft(DOCUMENT, heigth=3.0)
        self.assertIn("'height'", str(caught.exception))
        with self.assertRaises(ValueError):
            ingle.draft(DOCUMENT, inlet="square")

    def test_documents(self):
        error = self.refused("missing-name", "", {"standards": ["irc-2021"], "survey": {}})
        self.assertIn("flue.above-hearth", error.message)
        self.refused("unknown-name", "/survey/openings",
                     {"standards": ["irc-2021"], "survey": {"openings": {}}})
        self.refused("missing-name", "", ingle.Survey())

    def test_the_command(self):
        for words, code, says in ((["--rise", "300"], "unit-missing", "--rise 300"),
                                  (["--rise", "9999 F"], "implausible", "from 1 K to"),
                                  (["--height", "0 ft"], "implausible", "0 or was not given"),
                                  (["--inlet", "round"], "usage", "rounded")):
            with self.subTest(words):
                error = command(*words)["error"]
                self.assertEqual(error["code"], code)
                self.assertIn(says, error["message"])


class Numbers(unittest.TestCase):
    def test_they_are_those_of_the_command(self):
        done = subprocess.run([os.environ["INGLE_COMMAND"], "list", "draft"], check=True,
                              capture_output=True)
        listed = json.loads(done.stdout)
        self.assertEqual([each["id"] for each in listed], list(ingle.draft_numbers))
        for each in listed:
            number = ingle.draft_numbers[each["id"]]
            self.assertAlmostEqual(number.value, each["value"], delta=1e-9 * abs(number.value))
            self.assertEqual((number.group, number.unit, number.source, number.basis),
                             (each["group"], each["unit"], each["source"], each["basis"]))
            self.assertEqual(number.range is None, "range" not in each)

    def test_names_of_inputs(self):
        self.assertEqual(len(ingle.draft_inputs), 15)
        self.assertIn("room_pressure", ingle.draft_inputs)


if __name__ == "__main__":
    unittest.main()
