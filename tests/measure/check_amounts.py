#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Compares thousands of amounts read by the library with exact fractions.

Outside source: the `fractions` module of Python's standard library. The sizes of the units are
those of the international inch (25.4 mm exactly, since 1959) and of the SI.

Usage: check_amounts.py READ_AMOUNTS, the program that reads amounts from lines.
"""
import math
import random
import subprocess
import sys
from fractions import Fraction

LARGEST = 2**63 - 1
INCH = Fraction(25_400_000)
ONE = 36_000_000_000
BTU = Fraction(105505585262)  # in 1e-8 J in an hour: 1055.05585262 J by the International Table
CUBIC_INCH = Fraction(254**3)  # in 1e-3 mm3: 0.1 mm is a base unit's edge
KILOWATT = Fraction(3_600_000) * 10**8

# dimension -> its number in the API, the unit of its decimals, and its units in base units
DIMENSIONS = {
    "length": (1, INCH, {"in": INCH, "ft": 12 * INCH, "mm": Fraction(10**6), "cm": Fraction(10**7),
                         "m": Fraction(10**9)}),
    "area": (2, INCH**2, {"in2": INCH**2, "ft2": (12 * INCH)**2, "mm2": Fraction(10**12),
                          "cm2": Fraction(10**14), "m2": Fraction(10**18)}),
    "angle": (3, Fraction(3600 * 10**6), {"deg": Fraction(3600 * 10**6)}),
    "slope": (4, Fraction(ONE, 12), {"": Fraction(ONE), "%": Fraction(ONE, 100),
                                     "in/ft": Fraction(ONE, 12)}),
    "ratio": (5, Fraction(ONE), {"": Fraction(ONE), "%": Fraction(ONE, 100)}),
    "power": (6, BTU, {"Btu/h": BTU, "BTUH": BTU, "kW": KILOWATT, "W": KILOWATT / 1000}),
    "volume": (10, 12**3 * CUBIC_INCH, {"in3": CUBIC_INCH, "ft3": 12**3 * CUBIC_INCH,
                                        "L": Fraction(10**9), "m3": Fraction(10**12)}),
}


def nearest(value):
    """The nearest whole number, halves away from zero."""
    size = math.floor(abs(value) + Fraction(1, 2))
    return -size if value < 0 else size


def some_digits(pick, most):
    return "".join(pick.choice("0123456789") for _ in range(pick.randint(1, most)))


def some_decimal(pick):
    text = some_digits(pick, pick.choice([2, 4, 12]))
    if pick.random() < 0.7:
        text += "." + some_digits(pick, pick.choice([3, 9, 30]))
    if pick.random() < 0.3:
        text += pick.choice("eE") + str(pick.randint(-25, 12))
    return text, Fraction(text)


def some_fraction(pick):
    below = pick.choice([2, 4, 8, 16, 32, 64, 3, 7, 10, 12, pick.randint(1, 10**6)])
    above = pick.randint(0, 3 * below)
    return f"{above}/{below}", Fraction(above, below)


def some_mixed(pick):
    below = pick.choice([2, 4, 8, 16, 32, 64, 3, 7, 10**9 + 7])
    above = pick.randrange(below)
    whole = pick.randint(0, 400)
    return f"{whole}{pick.choice(' -')}{above}/{below}", whole + Fraction(above, below)


def some_number(pick):
    return pick.choice([some_decimal, some_fraction, some_mixed])(pick)


def is_short(value):
    """Whether it is within what the library promises to take on either side of a colon."""
    return value.numerator < 10**9 and value.denominator < 10**9


def some_amount(pick):
    dimension = pick.choice(list(DIMENSIONS))
    number, _, units = DIMENSIONS[dimension]
    unit = pick.choice(list(units))
    text, value = some_number(pick)
    kind = pick.random()
    if dimension == "length" and kind < 0.3:
        feet = pick.randint(0, 60)
        text, value = f"{feet} ft {text} in", (12 * feet + value) * INCH
    elif dimension in ("slope", "ratio") and kind < 0.5:
        below_text, below = some_decimal(pick)
        if below == 0 or not (is_short(value) and is_short(below)):
            return some_amount(pick)
        text, value = f"{text}:{below_text}", value / below * ONE
    else:
        text, value = f"{text} {unit}".rstrip(), value * units[unit]
    if pick.random() < 0.2:
        text, value = "-" + text, -value
    return dimension, number, text, value


def expected(dimension, value):
    if abs(nearest(value)) > LARGEST:
        return "overflow", 0
    return ("done" if value.denominator == 1 else "rounded"), nearest(value)


def main(read_amounts):
    pick = random.Random(1959)
    amounts = [some_amount(pick) for _ in range(20_000)]
    lines = "".join(f"{number}\t{text}\n" for _, number, text, _ in amounts)
    answers = subprocess.run([read_amounts], input=lines, capture_output=True, text=True,
                             check=True).stdout.splitlines()
    assert len(answers) == len(amounts)
    wrong = 0
    seen = {"done": 0, "rounded": 0, "overflow": 0}
    for (dimension, _, text, exact), answer in zip(amounts, answers):
        status, value, decimal = answer.split("\t")
        due_status, due_value = expected(dimension, exact)
        due_decimal = Fraction(nearest(due_value / DIMENSIONS[dimension][1] * 10**9), 10**9)
        if (status, int(value), Fraction(decimal)) != (due_status, due_value, due_decimal):
            wrong += 1
            print(f"{text} ({dimension}): {answer!r}, due are {due_status} {due_value} "
                  f"{due_decimal}", file=sys.stderr)
        else:
            seen[status] += 1
    print(f"{len(amounts)} amounts compared, {wrong} differences: {seen}")
    return 0 if wrong == 0 and min(seen.values()) > 100 else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
