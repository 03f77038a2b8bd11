#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Compares the size of every unit of the library with GNU units, by the unit's UCUM code.

Outside source: GNU units (the `units` program and its definitions). What a UCUM code means is
taken from the Unified Code for Units of Measure, version 2.1, tables 1, 3 and 6 to 8.

Usage: check_units.py PRINT_UNITS, the program that prints the library's units.
"""
import shutil
import subprocess
import sys
from fractions import Fraction

# UCUM code -> the same unit in the language of GNU units.
GNU = {
    "[in_i]": "inch", "[ft_i]": "foot", "mm": "mm", "cm": "cm", "m": "m",
    "[sin_i]": "inch^2", "[sft_i]": "foot^2", "mm2": "mm^2", "cm2": "cm^2", "m2": "m^2",
    "[Btu_IT]/h": "btu_IT/hour", "kW": "kW", "W": "W",
    "[cin_i]": "inch^3", "[cft_i]": "foot^3", "L": "liter", "m3": "m^3",
    "deg": "degree", "rad": "radian", "[in_i]/[ft_i]": "inch/foot", "%": "percent",
}

# Dimension -> its base unit, as include/ingle/measure.h promises it.
BASE = {
    "length": "nm", "area": "nm^2", "angle": "1e-6 arcsec",
    "slope": "1|36000000000", "ratio": "1|36000000000", "power": "1e-8 joule/hour",
    "volume": "1e-3 mm^3",
}

# No rational number of base units: compared to the precision of GNU units' own arithmetic.
IRRATIONAL = {"rad"}


def gnu_units(have, want, output):
    run = subprocess.run(["units", "-t", "-o", output, have, want], capture_output=True, text=True,
                         check=False)
    if run.returncode != 0:
        raise SystemExit(f"units cannot convert {have} to {want}: {run.stdout}{run.stderr}")
    return Fraction(run.stdout.strip())


def agrees(ucum, size, have, want):
    if ucum in IRRATIONAL:
        theirs = gnu_units(have, want, "%.17g")
        return abs(size - theirs) <= theirs / 10**15, theirs
    theirs = gnu_units(have, want, "%.15g")
    return size == theirs, theirs


def main(print_units):
    if shutil.which("units") is None:
        print("GNU units is not installed (Debian package: units)", file=sys.stderr)
        return 77
    lines = subprocess.run([print_units], capture_output=True, text=True, check=True).stdout
    wrong = 0
    seen = set()
    for line in lines.splitlines():
        unit, ucum, dimension, numerator, denominator = line.split("\t")
        size = Fraction(int(numerator), int(denominator))
        same, theirs = agrees(ucum, size, GNU[ucum], BASE[dimension])
        seen.add(ucum)
        if not same:
            wrong += 1
            print(f"{unit}: {size} base units here, {theirs} by GNU units", file=sys.stderr)
    for ucum in sorted(set(GNU) - seen):
        wrong += 1
        print(f"no unit has the UCUM code {ucum}", file=sys.stderr)
    print(f"{len(lines.splitlines())} units compared, {wrong} differences")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
