# SPDX-License-Identifier: MIT
"""A Monte Carlo run counted once more, outside the library.

The draws are those of SplitMix64 (public domain); the rest is Python's whole numbers and fractions:
for each trial one share of the tape's error for all lengths, then for each length a reading and the
masonry, in the order in which the margin depends on them; and the rule as the code has it.
"""

import json
import os
import subprocess
import unittest
from fractions import Fraction

COMMAND = os.environ["INGLE_COMMAND"]
INCH = 25_400_000
WHOLE = 1 << 31
MASK = (1 << 64) - 1
PI = Fraction(31415926535897932384626433832795028841971, 10**40)


class SplitMix64:
    def __init__(self, seed):
        self.state = seed

    def next(self):
        self.state = (self.state + 0x9E3779B97F4A7C15) & MASK
        mixed = self.state
        mixed = ((mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9) & MASK
        mixed = ((mixed ^ (mixed >> 27)) * 0x94D049BB133111EB) & MASK
        return mixed ^ (mixed >> 31)

    def share(self):
        return 2 * (self.next() >> 33) + 1 - WHOLE


def quotient(number, by):
    """Towards nothing."""
    return -(-number // by) if number < 0 else number // by


def part(share, half_width):
    return quotient(share * half_width, WHOLE)


def count(lengths, tape, graduation, masonry, trials, seed, is_met, separate=False):
    random = SplitMix64(seed)
    met = 0
    for _ in range(trials):
        common = random.share()
        drawn = []
        for index, length in enumerate(lengths):
            if separate and index > 0:
                common = random.share()
            length += part(common, tape) + quotient(part(random.share(), graduation), 2)
            if masonry:
                length += part(random.share(), masonry)
            drawn.append(length)
        met += is_met(*drawn)
    return met


def counted(survey, rule, trials, seed, *words):
    document = {"standards": ["irc-2021"], "survey": {
        "appliance": {"kind": "masonry-fireplace"}, **survey}}
    done = subprocess.run(
        [COMMAND, "check", "--probability", "--monte-carlo", str(trials), "--seed", str(seed),
         *words], input=json.dumps(document).encode(), stdout=subprocess.PIPE, check=True)
    findings = json.loads(done.stdout)["findings"]
    return next(finding["probability"]["monte_carlo"]["met"] for finding in findings
                if finding["rule"] == rule)


CLASS_II_TO_A_METRE = 700_000  # 0.3 mm + 0.2 mm x 1 + 0.2 mm
TAPE = {"class": "class-ii", "graduation": "1/16 in"}


class Counts(unittest.TestCase):
    """IRC 2021 R1003.15.1, a round flue of 1/12; R1001.10, 20 in from 6 ft2 on, else 16 in."""

    def round_flue(self, sixteenths, trials, seed, masonry=0, separate=False):
        survey = {"opening": {"width": "36 in", "height": "30 in"},
                  "flue": {"diameter": f"{sixteenths}/16 in"},
                  "tape": {**TAPE, **({"irregularity": f"{masonry} mm"} if masonry else {})}}
        outside = count([INCH * sixteenths // 16, 36 * INCH, 30 * INCH], CLASS_II_TO_A_METRE,
                        INCH // 16, masonry * 10**6, trials, seed, lambda across, width, height:
                        3 * PI * across * across >= width * height, separate)
        self.assertEqual(counted(survey, "flue-area", trials, seed,
                                 *(["--separate-tapes"] if separate else [])), outside)
        return outside

    def test_a_round_flue(self):
        self.assertEqual(self.round_flue(171, 100000, 2024), 23315)
        self.round_flue(172, 20000, 5, masonry=3)
        self.round_flue(172, 20000, 6, separate=True)

    def test_a_hearth_at_the_step(self):
        survey = {"opening": {"width": "36 in", "height": "24 in"}, "hearth": {"front": "18 in"},
                  "tape": TAPE}
        outside = count([18 * INCH, 36 * INCH, 24 * INCH], CLASS_II_TO_A_METRE, INCH // 16, 0,
                        50000, 9, lambda front, width, height:
                        front >= (20 if width * height >= 864 * INCH * INCH else 16) * INCH)
        self.assertEqual(counted(survey, "hearth-front", 50000, 9), outside)


if __name__ == "__main__":
    unittest.main()
