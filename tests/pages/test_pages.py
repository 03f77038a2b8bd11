#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Pages as they are written: against files kept here, and against what a page has to be.

    /usr/bin/python3 tests/pages/test_pages.py           # compares
    /usr/bin/python3 tests/pages/test_pages.py --write   # writes the files anew

INGLE_COMMAND names the `ingle` command.
"""

import json
import os
import pathlib
import pty
import re
import subprocess
import sys
import unittest
import xml.etree.ElementTree

COMMAND = os.environ["INGLE_COMMAND"]
ROOT = pathlib.Path(__file__).resolve().parents[2]
GOLDEN = pathlib.Path(__file__).resolve().parent / "golden"
HOUSE = ROOT / "docs" / "guide" / "curlew-lane.json"
GALLERY = ROOT / "examples" / "heron-weir" / "gallery.json"
SLOWEST = 60
RULE = ("--rule", "hearth-front")

PAGES = {
    "worked.txt": ("explain", *RULE, "--width", "60", HOUSE),
    "worked.html": ("explain", *RULE, "--format", "html", HOUSE),
    "worked.md": ("explain", *RULE, "--format", "markdown", HOUSE),
    "brief.txt": ("explain", "--form", "brief", "--width", "100", HOUSE),
    "solve.html": ("solve", "--quantity", "hearth.front", "--strict", "--format", "html", HOUSE),
    "compare.md": ("compare", "--standard", "irc-2012", "--standard", "irc-2024", "--format",
                   "markdown", HOUSE),
    "compare.txt": ("compare", "--standard", "irc-2012", "--standard", "irc-2024", "--format",
                    "text", "--width", "60", HOUSE),
    "exercise.html": ("exercise", "--standard", "irc-2021", "--seed", "3", "--level", "2",
                      "--format", "html"),
    "worksheet.html": ("worksheet", "--format", "html", HOUSE),
    "assess.md": ("assess", *RULE, "--format", "markdown", GALLERY),
}

REPORTED = (HOUSE, GALLERY, *sorted(ROOT.glob("examples/*/*.json")))

HOSTILE = 'shelf <b>&"\' *bold* `code` | [link](x) \\ _under_'


def ingle(*words, stdin=None, **environment):
    return subprocess.run([COMMAND, *map(str, words)], check=True, timeout=SLOWEST, input=stdin,
                          env={**os.environ, "COLUMNS": "79", **environment},
                          stdout=subprocess.PIPE).stdout.decode()


def listed(what):
    return json.loads(ingle("list", what))


GAS_LOGS = json.dumps({
    "standards": ["irc-2021", "common-practice-us"],
    "survey": {"appliance": {"kind": "masonry-fireplace", "fuel": "gas"},
               "gas": {"appliance": "log-set", "vent": "chimney"},
               "damper": {"state": "working"}}}).encode()


def hostile(label=HOSTILE):
    """A survey whose label is full of what formats take for markup, or is another."""
    document = json.loads(HOUSE.read_text(encoding="utf-8"))
    document["survey"]["trim"][0]["label"] = label
    return json.dumps(document).encode()


def has_terminals():
    """Whether this system gives out terminals: a bare container need not."""
    try:
        for end in pty.openpty():
            os.close(end)
    except OSError:
        return False
    return True


def on_a_terminal(*words, **environment):
    """What is written where standard output is a terminal."""
    leader, follower = pty.openpty()
    done = subprocess.Popen([COMMAND, *map(str, words)], stdout=follower, stdin=subprocess.DEVNULL,
                            env={**os.environ, "TERM": "xterm", **environment})
    os.close(follower)
    read = b""
    try:
        while piece := os.read(leader, 65536):
            read += piece
    except OSError:  # the other end is closed
        pass
    os.close(leader)
    done.wait(SLOWEST)
    return read.decode()


def luminance(colour):
    """Relative luminance as WCAG 2.1 defines it."""
    if len(colour) == 3:
        colour = "".join(2 * letter for letter in colour)
    parts = [int(colour[i:i + 2], 16) / 255 for i in (0, 2, 4)]
    linear = [part / 12.92 if part <= 0.03928 else ((part + 0.055) / 1.055) ** 2.4
              for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


class Pages(unittest.TestCase):
    def test_they_are_what_they_were(self):
        self.assertEqual({path.name for path in GOLDEN.iterdir()}, set(PAGES))
        for name, words in PAGES.items():
            with self.subTest(name):
                self.assertEqual(ingle(*words), (GOLDEN / name).read_text(encoding="utf-8"),
                                 f"run {__file__} --write and read the changes")

    def test_a_report_has_no_ids(self):
        """Whoever reads it knows neither the rows of the standards nor their names."""
        ids = {each["id"] for each in listed("standards") + listed("quantities")}
        ids |= {each["rule"] for each in listed("rules") if each["rule"].count("-") > 1}
        labels = " ".join(each["label"] for each in listed("rules"))
        ids = {each for each in ids if each not in labels}
        self.assertGreater(len(ids), 500)
        for survey in REPORTED:
            with self.subTest(survey.name):
                text = ingle("explain", "--form", "report", "--format", "markdown", survey)
                words = set(re.findall(r"[a-z0-9]+(?:[-.][a-z0-9]+)*", text))
                self.assertEqual(words & ids, set())
                self.assertNotRegex(text, r"(?<!`)`(?!`)|\b(?:in|ft|mm|cm|m)[23]\b")

    def test_a_report_says_once_what_to_do(self):
        """Two standards fail the same damper: the second sends back to what the first said."""
        text = ingle("explain", "--form", "report", "--format", "markdown", stdin=GAS_LOGS)
        self.assertEqual(text.count("which the rule does not allow"), 2)
        self.assertEqual(text.count("Shut by mistake, this damper"), 1)
        self.assertIn("as said above of damper above a gas appliance, by International Residential "
                      "Code\n", text)
        worked = ingle("explain", "--format", "markdown", stdin=GAS_LOGS)
        self.assertEqual(worked.count("Shut by mistake, this damper"), 2)

    def test_a_report_puts_the_numbers_in(self):
        """R1001.10: 16 in below 6 ft², 20 in from there; a town's 24 in in its place."""
        document = json.loads(HOUSE.read_text(encoding="utf-8"))
        document["survey"]["hearth"]["front"] = "10 in"
        plain, amended = (
            ingle("explain", *RULE, "--form", "report", stdin=json.dumps(each).encode())
            for each in (document, {**document, "amendments": [
                {"standard": "irc-2021", "rule": "hearth-front", "set": {"large": "24 in"},
                 "citation": "a by-law"}]}))
        self.assertIn("16 in for an opening smaller than 6 ft², and 20 in for one of 6 ft² or",
                      " ".join(plain.split()))
        self.assertIn("and 24 in for one of 6 ft² or larger", " ".join(amended.split()))

    def test_html_is_well_formed_and_asks_for_nothing_else(self):
        for name in PAGES:
            if name.endswith(".html"):
                text = (GOLDEN / name).read_text(encoding="utf-8")
                xml.etree.ElementTree.fromstring(text)
                self.assertNotRegex(text, r"(?:src|href)=")

    def test_lines_keep_to_the_width(self):
        for width in (40, 60, 100):
            for line in ingle("explain", "--width", width, HOUSE).splitlines():
                self.assertTrue(len(line) <= width or " " not in line.strip(), (width, line))

    def test_labels_cannot_break_out(self):
        text = ingle("explain", "--format", "html", stdin=hostile())
        root = xml.etree.ElementTree.fromstring(text)
        self.assertIn(HOSTILE.lower(), "".join(root.itertext()).lower())
        self.assertNotIn("<b>", text)
        text = ingle("explain", "--form", "report", "--format", "markdown", stdin=hostile())
        for part in (r"\*bold\*", r"\`code\`", r"\|", r"\[link\]", r"\<b\>", r"\_under\_"):
            self.assertIn(part, text)
        self.assertIn(HOSTILE, ingle("explain", "--width", "200", stdin=hostile()))

    def test_long_labels_are_whole(self):
        label = "über" * 300
        for words in (("explain",), ("explain", "--form", "brief"), ("explain", "--format", "html"),
                      ("compare", "--format", "markdown")):
            with self.subTest(words):
                self.assertIn(label, ingle(*words, stdin=hostile(label)).lower())

    @unittest.skipUnless(has_terminals(), "this system gives out no terminals")
    def test_colours_are_for_terminals_that_want_them(self):
        self.assertIn("\x1b[", on_a_terminal("explain", HOUSE, NO_COLOR=""))
        self.assertNotIn("\x1b[", on_a_terminal("explain", HOUSE, NO_COLOR="1"))
        self.assertNotIn("\x1b[", on_a_terminal("explain", HOUSE, TERM="dumb", NO_COLOR=""))
        self.assertNotIn("\x1b[", ingle("explain", HOUSE, NO_COLOR=""))

    def test_text_stands_out_from_its_ground(self):
        """WCAG 2.1, success criterion 1.4.3: 4.5 to 1, on white and on the ground of a block."""
        sheet = re.search(r"<style>(.*?)</style>", ingle(*PAGES["worked.html"]))[1]
        colours = set(re.findall(r"[{;]color:#([0-9a-f]+)", sheet))
        grounds = set(re.findall(r"background:#([0-9a-f]+)", sheet))
        self.assertGreaterEqual(len(colours), 4)
        for colour in colours:
            for ground in grounds:
                light, dark = luminance(ground), luminance(colour)
                self.assertGreaterEqual((light + 0.05) / (dark + 0.05), 4.5, (colour, ground))


def write():
    for name, words in PAGES.items():
        (GOLDEN / name).write_text(ingle(*words), encoding="utf-8")


if __name__ == "__main__":
    if "--write" in sys.argv:
        write()
    else:
        unittest.main()
