# SPDX-License-Identifier: MIT
"""Where each formula's limits lie, worked out independently of the library, and how to get there.

A probe is one quantity varied through three neighbouring amounts in a survey that is otherwise
fixed, with what must come out at each. Each number of a row has probes of its own.
"""
from fractions import Fraction
from typing import NamedTuple

from written import FOOT, INCH, RATIO_ONE, SQUARE_INCH

MEETS, FAILS, NOT_APPLICABLE = "meets", "fails", None

# Amounts for an input that has no limit of its own; the second makes rounding show.
INPUTS = {"length": (42 * INCH, 42 * INCH + 1), "area": (1080 * SQUARE_INCH,
                                                         1080 * SQUARE_INCH + 7)}


class Probe(NamedTuple):
    """`numbers` are the names it covers; `expected` belongs to amount - 1, amount, amount + 1."""
    numbers: tuple
    fixed: dict
    varied: str
    amount: int
    expected: tuple


class Row(NamedTuple):
    """What the probes need of a rule: its relation, the quantity judged, its input, its numbers."""
    relation: str
    judged: str
    source: str
    source_dimension: str
    numbers: dict


def times(row, amount, ratio):
    """amount * ratio on the strict side: up for what must be reached, down for what must not."""
    product = Fraction(amount * ratio, RATIO_ONE)
    down = product.numerator // product.denominator
    return down if row.relation == "at-most" or product == down else down + 1


def verdict(row, measured, required):
    if required is NOT_APPLICABLE:
        return NOT_APPLICABLE
    good = measured >= required if row.relation == "at-least" else measured <= required
    return MEETS if good else FAILS


def around_judged(row, numbers, fixed, required):
    """The judged quantity at what is required, one base unit below and above."""
    return Probe(numbers, fixed, row.judged, required,
                 tuple(verdict(row, required + off, required) for off in (-1, 0, 1)))


def around_source(row, numbers, judged, amount, required):
    """The input at an amount, one base unit below and above; `required` is a function of it."""
    return Probe(numbers, {row.judged: judged}, row.source, amount,
                 tuple(verdict(row, judged, required(amount + off)) for off in (-1, 0, 1)))


# ---- each formula --------------------------------------------------------------------------------

def fixed(row):
    yield around_judged(row, ("limit",), {}, row.numbers["limit"])


def share(row):
    ratio = row.numbers["ratio"]
    for amount in INPUTS[row.source_dimension]:
        yield around_judged(row, ("ratio",), {row.source: amount}, times(row, amount, ratio))
    even = INPUTS[row.source_dimension][0]
    yield around_source(row, ("ratio",), times(row, even, ratio), even,
                        lambda amount: times(row, amount, ratio))


def share_or_least(row):
    ratio, least = row.numbers["ratio"], row.numbers["least"]

    def required(amount):
        return max(times(row, amount, ratio), least)

    even = least * RATIO_ONE // ratio  # from here on the share is the greater
    yield around_judged(row, ("least",), {row.source: even - INCH}, least)
    yield around_judged(row, ("ratio",), {row.source: even + INCH}, required(even + INCH))
    yield around_source(row, ("ratio", "least"), least, even, required)


def step(row, at, below, beyond):
    """Three numbers: where the step is, what is required below it, and from it on."""
    where = row.numbers[at]
    small, large = row.numbers[below], row.numbers[beyond]

    def required(amount):
        return large if amount >= where else small

    yield around_judged(row, (below,), {row.source: where - 1}, small)
    yield around_judged(row, (beyond,), {row.source: where}, large)
    yield around_source(row, (at,), min(small, large), where, required)


def by_opening_area(row):
    yield from step(row, "threshold", "small", "large")
    where, small = row.numbers["threshold"], row.numbers["small"]
    # The same by sides: their product is at the step, below and above it by one nanometre of width.
    height = next(inches * INCH for inches in (24, 30, 28, 20, 36)
                  if where % (inches * INCH) == 0)
    yield Probe(("threshold",), {row.judged: small, "opening.height": height}, "opening.width",
                where // height, (verdict(row, small, small),
                                  verdict(row, small, row.numbers["large"]),
                                  verdict(row, small, row.numbers["large"])))


def by_firebox_raise(row):
    yield from step(row, "raise", "ordinary", "raised")


def by_smoke_chamber_walls(row):
    for walls in ("smooth", "corbeled"):
        yield around_judged(row, (walls,), {row.source: walls}, row.numbers[walls])


def projection_by_distance(row):
    zone, within, ratio = (row.numbers[name] for name in ("zone", "within", "ratio"))

    def required(distance):
        if distance > within:
            return NOT_APPLICABLE
        return 0 if distance < zone else times(row, distance, ratio)

    for distance in (zone, zone + 3, within - 1, within):
        yield around_judged(row, ("ratio",), {row.source: distance}, required(distance))
    yield around_source(row, ("zone",), INCH // 2, zone, required)
    yield around_source(row, ("zone",), 1, zone, required)
    yield around_source(row, ("within",), FOOT, within, required)


def flue_share(row):
    side = 10 * INCH
    aspect = row.numbers["aspect"]
    shapes = {
        "round": {"flue.shape": "round"},
        "square": {"flue.shape": "square"},
        "rectangular": {"flue.width": side, "flue.depth": side * 3 // 2},
        "long": {"flue.width": side, "flue.depth": side * 3},
    }
    for name, shape in shapes.items():
        for amount in INPUTS["area"]:
            needed = times(row, amount, row.numbers[name])
            yield around_judged(row, (name,), {**shape, row.source: amount}, needed)
    area = INPUTS["area"][0]
    few = times(row, area, row.numbers["rectangular"])
    many = times(row, area, row.numbers["long"])
    for turned in (("flue.width", "flue.depth"), ("flue.depth", "flue.width")):
        yield Probe(("aspect",), {row.judged: few, row.source: area, turned[0]: side}, turned[1],
                    side * aspect // RATIO_ONE,
                    (verdict(row, few, few), verdict(row, few, many), verdict(row, few, many)))


FORMULAS = {
    "fixed": fixed,
    "share": share,
    "share-or-least": share_or_least,
    "by-opening-area": by_opening_area,
    "by-firebox-raise": by_firebox_raise,
    "by-smoke-chamber-walls": by_smoke_chamber_walls,
    "projection-by-distance": projection_by_distance,
    "flue-share": flue_share,
}
