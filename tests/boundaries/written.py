# SPDX-License-Identifier: MIT
"""Every way in which a survey document can write one exact amount.

An amount is a whole number of base units: nanometres, square nanometres, millionths of an
arcsecond. Each way names the unit it is written in, so that a test can tell which are covered.
"""
import re
from fractions import Fraction

INCH, FOOT = 25_400_000, 304_800_000
SQUARE_INCH, SQUARE_FOOT = INCH * INCH, FOOT * FOOT
CUBIC_INCH, CUBIC_FOOT = 16_387_064, 28_316_846_592
DEGREE = 3_600_000_000
BTU, KILOWATT, WATT = 105_505_585_262, 360_000_000_000_000, 360_000_000_000
RATIO_ONE = 36_000_000_000

# The radian holds no whole number of base units, so no amount can be written in it exactly.
INEXACT_UNITS = {"rad"}

RAW = re.compile(r'"@raw:([^@]*)@"')


def raw(number):
    """A JSON number of any length; finish() takes it out of its quotes."""
    return "@raw:%s@" % number


def finish(document_text):
    return RAW.sub(r"\1", document_text)


def decimal(value, exponent):
    """value / 10**exponent, exactly."""
    digits = str(value).rjust(exponent + 1, "0")
    return (digits[:-exponent] + "." + digits[-exponent:]).rstrip("0").rstrip(".")


def mixed(value, unit):
    """A whole number and a proper fraction of units: `19 25399999/25400000`."""
    whole, rest = divmod(value, unit)
    if not rest:
        return str(whole)
    return "%s%d/%d" % ("%d " % whole if whole else "", rest, unit)


def fraction(value, unit):
    return "%d/%d" % (value, unit)


def with_unit(value, unit):
    return {"value": value, "unit": unit}


def lengths(value):
    """(unit id, written, unit of the document or None) for each way."""
    feet, rest = divmod(value, FOOT)
    yield "in", fraction(value, INCH) + " in", None
    yield "in", mixed(value, INCH) + '"', None
    yield "in", mixed(value, INCH).replace(" ", "-") + " inches", None
    yield "in", with_unit(fraction(value, INCH), "[in_i]"), None
    yield "ft", fraction(value, FOOT) + " ft", None
    yield "ft", with_unit(fraction(value, FOOT), "[ft_i]"), None
    yield "ft", "%d ft %s in" % (feet, mixed(rest, INCH)), None
    yield "ft", "%d' %s\"" % (feet, mixed(rest, INCH)), None
    for unit, exponent in (("mm", 6), ("cm", 7), ("m", 9)):
        yield unit, "%s %s" % (decimal(value, exponent), unit), None
        yield unit, with_unit(raw(decimal(value, exponent)), unit), None
        yield unit, raw(decimal(value, exponent)), unit


def areas(value):
    yield "in2", fraction(value, SQUARE_INCH) + " in2", None
    yield "in2", mixed(value, SQUARE_INCH) + " sq in", None
    yield "in2", with_unit(fraction(value, SQUARE_INCH), "[sin_i]"), None
    yield "ft2", fraction(value, SQUARE_FOOT) + " ft2", None
    yield "ft2", mixed(value, SQUARE_FOOT) + " ft²", None
    yield "ft2", with_unit(fraction(value, SQUARE_FOOT), "[sft_i]"), None
    for unit, exponent in (("mm2", 12), ("cm2", 14), ("m2", 18)):
        yield unit, "%s %s" % (decimal(value, exponent), unit), None
        yield unit, with_unit(raw(decimal(value, exponent)), unit), None


def angles(value):
    yield "deg", fraction(value, DEGREE) + " deg", None
    yield "deg", mixed(value, DEGREE) + "°", None
    yield "deg", with_unit(fraction(value, DEGREE), "deg"), None


def powers(value):
    for unit, size in (("Btu/h", BTU), ("kW", KILOWATT), ("W", WATT)):
        yield unit, "%s %s" % (fraction(value, size), unit), None
        yield unit, "%s %s" % (mixed(value, size), unit), None
    yield "Btu/h", with_unit(fraction(value, BTU), "[Btu_IT]/h"), None


def volumes(value):
    for unit, size in (("ft3", CUBIC_FOOT), ("in3", CUBIC_INCH)):
        yield unit, "%s %s" % (fraction(value, size), unit), None
        yield unit, with_unit(mixed(value, size), unit), None
    yield "ft3", "%s cu ft" % mixed(value, CUBIC_FOOT), None
    for unit, exponent in (("L", 9), ("m3", 12)):
        yield unit, "%s %s" % (decimal(value, exponent), unit), None
        yield unit, with_unit(raw(decimal(value, exponent)), unit), None


def counts(value):
    yield "", str(value), None
    yield "", raw(value), None


WAYS = {"length": lengths, "area": areas, "angle": angles, "count": counts, "power": powers,
        "volume": volumes}


def units_of(dimension):
    """The ids of the units in which WAYS writes a dimension."""
    return {unit for unit, _, _ in WAYS[dimension](1) if unit}


def ways(value, dimension):
    """(unit id, written, unit of the document or None) for each way to write an amount."""
    if dimension in WAYS:
        yield from WAYS[dimension](value)
    else:
        yield None, fraction(value, RATIO_ONE), None


def plain(value, dimension):
    """One way, for amounts that are not the ones under test."""
    return next(ways(value, dimension))[1]


SIZES = {"in": INCH, "ft": FOOT, "in2": SQUARE_INCH, "ft2": SQUARE_FOOT, "°": DEGREE,
         "deg": DEGREE, "mm": 10 ** 6, "cm": 10 ** 7, "m": 10 ** 9, "mm2": 10 ** 12,
         "cm2": 10 ** 14, "m2": 10 ** 18, "Btu/h": BTU, "kW": KILOWATT,
         "in3": CUBIC_INCH, "ft3": CUBIC_FOOT, "L": 10 ** 9, "m3": 10 ** 12, None: RATIO_ONE}

METRIC = re.compile(r"(\d+(?:\.\d+)?) (mm|cm|m|mm2|cm2|m2|m3|L|kW)")


def read_number(number, dimension=None):
    """The base units of a number of a rule as a catalogue shows it: `6 ft2`, `45°`, `1/12`.

    Where its text is only near, its decimals are exact.
    """
    text = number if isinstance(number, str) else number["text"]
    if text.startswith("≈") or "." in text:
        exact = Fraction(str(number["value"])) * SIZES[number.get("unit")]
        if exact.denominator != 1:
            raise AssertionError("no whole number of base units: %r" % number)
        return int(exact)
    metric = METRIC.fullmatch(text)
    if metric:
        exact = Fraction(metric[1]) * SIZES[metric[2]]
        if exact.denominator != 1:
            raise AssertionError("no whole number of base units: %r" % text)
        return int(exact)
    match = re.fullmatch(r"(?:(\d+)(?: |$|(?=°)))?(?:(\d+)/(\d+) ?)?"
                         r"(in|ft|in2|ft2|in3|ft3|°|Btu/h)?", text)
    if not match or not text:
        raise AssertionError("no exact number: %r" % text)
    whole, above, below, unit = match.groups()
    size = 1 if dimension == "count" and unit is None else SIZES[unit]
    value = int(whole or 0) * size
    if above:
        part, left = divmod(int(above) * size, int(below))
        if left:
            raise AssertionError("no whole number of base units: %r" % text)
        value += part
    return value
