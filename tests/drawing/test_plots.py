# SPDX-License-Identifier: MIT
"""Plots read back: no text lies on another, nothing leaves the page, other programs read them.

INGLE_COMMAND names the `ingle` command. Every length of a few surveys is swept, and pairs of them
are solved for together, in several units and over short and long ranges.
"""

import concurrent.futures
import functools
import json
import os
import pathlib
import subprocess
import tempfile
import unittest

import picture

ROOT = pathlib.Path(__file__).resolve().parents[2]
COMMAND = os.environ["INGLE_COMMAND"]
MANY = ["irc-2021", "ibc-2021", "sbc-1990s", "nfpa-211-fireplaces", "common-practice-us",
        "obc-2012", "abcb-2022", "usda-fb1889-1941"]
SURVEYS = ["heron-weir/living-room", "larkspur-school/great-room", "osprey-landing/winter-room"]
# From a hand's breadth to a building: ticks from sixteenths to feet.
RANGES = [("20 in", "21 in", "1/16 in"), ("6 in", "96 in", "1 in"), ("8 ft", "60 ft", "1 ft"),
          ("600 mm", "1400 mm", "10 mm")]
SWEPT = ["opening.width", "opening.height", "hearth.front", "trim[0].distance",
         "trim[0].projection", "chimney.height-above-roof", "nearby[0].distance", "flue.net-area",
         "flue.slope", "hearth.firebox-raise"]
OTHER_RANGES = {"flue.net-area": ("40 in2", "240 in2", "1 in2"),
                "flue.slope": ("0 deg", "45 deg", "1 deg")}
PAIRS = [("trim[0].projection", "trim[0].distance"), ("opening.height", "opening.width"),
         ("hearth.front", "opening.width"), ("chimney.height-above-roof", "nearby[0].distance")]
UNITS = ["in", "mm", "ft", "m"]


def run(*arguments):
    return subprocess.run([COMMAND, *arguments], capture_output=True, check=False, timeout=120)


def survey(name):
    return str(ROOT / "examples" / f"{name}.json")


def sweeps():
    """Arguments of sweeps; a quantity that the survey lacks is refused, and left out."""
    turn = 0
    for name in SURVEYS:
        for quantity in SWEPT:
            for low, high, step in RANGES:
                turn += 1
                low, high, step = OTHER_RANGES.get(quantity, (low, high, step))
                standards = MANY if turn % 3 == 0 else [MANY[turn % 8]]
                yield ["sweep", "--quantity", quantity, "--format", "svg", "--unit",
                       UNITS[turn % 4], *(["--all"] if turn % 2 else []),
                       "--from", low, "--to", high, "--step", step,
                       *[part for each in standards for part in ("--standard", each)],
                       survey(name)]


def frontiers():
    turn = 0
    for name in SURVEYS:
        for quantity, other in PAIRS:
            for low, high, step in RANGES:
                turn += 1
                with_low, with_high, with_step = RANGES[turn % len(RANGES)]
                yield ["solve", "--quantity", quantity, "--with", other, "--format", "svg",
                       "--from", low, "--to", high, "--step", step, "--with-from", with_low,
                       "--with-to", with_high, "--with-step", with_step,
                       "--unit", UNITS[turn % 3], survey(name)]


def estimates():
    """Plots of the draft, and of how sure a finding is."""
    for name in [*SURVEYS, "heron-weir/gallery"]:
        for unit in UNITS:
            yield ["draft", "--format", "svg", "--unit", unit, survey(name)]
            for rule in ("hearth-front", "firebox-depth", "trim-distance"):
                yield ["assess", "--rule", rule, "--format", "svg", "--unit", unit, survey(name)]


def wanted():
    return [*sweeps(), *frontiers(), *estimates()]


@functools.cache
def plots():
    """The arguments of each plot, what the command wrote, and that read back."""
    all_of_them = wanted()
    with concurrent.futures.ThreadPoolExecutor() as pool:
        done = list(pool.map(lambda each: run(*each), all_of_them))
    return [(" ".join(arguments), each.stdout, picture.Picture(each.stdout))
            for arguments, each in zip(all_of_them, done) if each.returncode == 0]


class Plots(unittest.TestCase):
    def test_most_are_plotted(self):
        self.assertGreater(len(plots()), len(wanted()) // 3)
        for verb in ("sweep", "solve", "draft", "assess"):
            self.assertTrue([each for each, _, _ in plots() if each.startswith(verb)], verb)

    def test_refusals_say_why(self):
        for each in wanted()[::7]:
            done = run(*each)
            if done.returncode != 0:
                self.assertEqual(2, done.returncode, each)
                self.assertIn(json.loads(done.stderr)["error"]["code"],
                              ("nothing-measured", "implausible", "unknown-quantity", "range",
                               "dimension", "reference", "missing-name", "usage"), each)

    def test_no_text_lies_on_another(self):
        for name, _, each in plots():
            with self.subTest(name):
                self.assertEqual([], list(each.overlaps()))

    def test_nothing_leaves_the_page(self):
        for name, _, each in plots():
            with self.subTest(name):
                self.assertEqual([], list(each.strays()))

    def test_they_say_what_they_are(self):
        for name, _, each in plots():
            self.assertTrue(each.element_text("title"), name)
            self.assertTrue(each.element_text("desc"), name)

    def test_other_programs_read_them(self):
        """xmllint (libxml2) finds them well formed, and rsvg-convert (librsvg) renders them."""
        with tempfile.TemporaryDirectory() as folder:
            files = []
            for _, source, _ in plots():
                files.append(str(pathlib.Path(folder, f"{len(files)}.svg")))
                pathlib.Path(files[-1]).write_bytes(source)
            for command in (["xmllint", "--noout"],
                            ["rsvg-convert", "-f", "pdf", "-o", str(pathlib.Path(folder, "x"))]):
                done = subprocess.run([*command, *files], check=False, capture_output=True,
                                      timeout=300)
                self.assertEqual((0, b""), (done.returncode, done.stderr))


if __name__ == "__main__":
    unittest.main()
