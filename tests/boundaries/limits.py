# SPDX-License-Identifier: MIT
"""Where each formula's limits lie, worked out independently of the library, and how to get there.

A probe is one quantity varied through three neighbouring amounts in a survey that is otherwise
fixed, with what must come out at each. Each number of a row has probes of its own.
"""
from fractions import Fraction
from typing import NamedTuple

from written import DEGREE, FOOT, INCH, KILOWATT, RATIO_ONE, SQUARE_INCH

MEETS, FAILS, NOT_APPLICABLE = "meets", "fails", None
OUTSIDE = "prints no value"  # what a finding says that is unmeasured for it

# Amounts for an input that has no limit of its own; the second makes rounding show.
INPUTS = {"length": (42 * INCH, 42 * INCH + 1), "area": (1080 * SQUARE_INCH,
                                                         1080 * SQUARE_INCH + 7),
          "ratio": (RATIO_ONE, RATIO_ONE + 1), "angle": (20 * DEGREE,), "count": (6,)}
SMALL_LENGTHS = (6 * INCH, 6 * INCH + 1)  # of what is never as large as those
SLOPES = (RATIO_ONE * 6 // 12, RATIO_ONE * 7 // 12)
SQUARE_METRE = 10 ** 18
PI = Fraction("3.14159265358979323846264338327950288")


class Probe(NamedTuple):
    """`numbers` are the names it covers; `expected` belongs to amount - 1, amount, amount + 1."""
    numbers: tuple
    fixed: dict
    varied: str
    amount: int
    expected: tuple


class Sight(NamedTuple):
    """A choice or flag that is seen: `expected` says what must come out for each of its values."""
    numbers: tuple
    fixed: dict
    varied: str
    expected: dict


def inputs(row):
    """Amounts for a row's input, within what is plausible of it."""
    usual = INPUTS[row.source_dimension]
    small = row.source_most is not None and usual[1] > row.source_most
    return SMALL_LENGTHS if small else usual


class Row(NamedTuple):
    """What the probes need of a rule: its relation, the quantity judged, its input, its numbers.

    `choices` are what the judged quantity can be seen to be, `source_choices` what the input can.
    """
    relation: str
    judged: str
    source: str
    source_dimension: str
    numbers: dict
    sources: tuple = ()
    choices: tuple = ()
    source_choices: tuple = ()
    table: tuple = None
    source_most: int = None


def times(row, amount, ratio):
    """amount * ratio on the strict side: up for what must be reached, down for what must not."""
    product = Fraction(amount * ratio, RATIO_ONE)
    down = product.numerator // product.denominator
    return down if row.relation == "at-most" or product == down else down + 1


def verdict(row, measured, required):
    if required is NOT_APPLICABLE:
        return NOT_APPLICABLE
    good = {"at-least": measured >= required, "at-most": measured <= required,
            "less-than": measured < required}[row.relation]
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


def within_scope(row):
    limit = row.numbers["limit"]
    yield Probe(("limit",), {}, row.judged, limit, (MEETS, MEETS, OUTSIDE))


def share(row):
    ratio = row.numbers["ratio"]
    for amount in inputs(row):
        yield around_judged(row, ("ratio",), {row.source: amount}, times(row, amount, ratio))
    even = inputs(row)[0]
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


def reduced_share(row):
    """Up to the least the input itself, then the least, then the share."""
    ratio, least = row.numbers["ratio"], row.numbers["least"]

    def required(amount):
        return min(amount, max(times(row, amount, ratio), least))

    even = least * RATIO_ONE // ratio  # from here on the share is the greater
    yield around_judged(row, ("least",), {row.source: least - INCH}, least - INCH)
    yield around_judged(row, ("least",), {row.source: even - INCH}, least)
    yield around_judged(row, ("ratio",), {row.source: even + INCH}, required(even + INCH))
    yield around_source(row, ("ratio", "least"), least, even, required)


def input_plus(row):
    more = row.numbers["more"]
    for amount in INPUTS[row.source_dimension]:
        yield around_judged(row, ("more",), {row.source: amount}, amount + more)
    amount = INPUTS[row.source_dimension][0]
    yield around_source(row, ("more",), amount + more, amount, lambda source: source + more)


def input_plus_or_least(row):
    more, least = row.numbers["more"], row.numbers["least"]
    even = least - more  # from here on the sum is the greater

    def required(source):
        return max(source + more, least)

    yield around_judged(row, ("least",), {row.source: even - 1}, least)
    yield around_judged(row, ("more",), {row.source: even + INCH}, required(even + INCH))
    yield around_source(row, ("more", "least"), least, even, required)


def input_and_share(row):
    """One input, and a ratio of the other."""
    whole, part = row.sources
    ratio = row.numbers["ratio"]

    def required(first, second):
        return first + times(row, second, ratio)

    first = INPUTS["area"][0]
    for second in (0, *INPUTS["area"]):
        yield around_judged(row, ("ratio",), {whole: first, part: second}, required(first, second))
    for varied, fixed_one in ((whole, part), (part, whole)):
        needed = required(first, first)
        yield Probe(("ratio",), {fixed_one: first, row.judged: needed}, varied, first,
                    tuple(verdict(row, needed, required(*(
                        (first + off, first) if varied == whole else (first, first + off))))
                          for off in (-1, 0, 1)))


def lesser_share(row):
    """The lesser of a ratio of one input and a ratio of the other."""
    by_name = dict(zip(("first", "second"), row.sources))

    for name, other in (("first", "second"), ("second", "first")):
        for amount in (3 * INCH, 3 * INCH + 1):
            share_of_it = times(row, amount, row.numbers[name])
            ample = 2 * share_of_it * RATIO_ONE // row.numbers[other]
            fixed_ones = {by_name[name]: amount, by_name[other]: ample}
            yield around_judged(row, (name,), fixed_ones, share_of_it)
        needed = times(row, 6 * INCH, row.numbers[name])
        ample = 2 * needed * RATIO_ONE // row.numbers[other]
        yield Probe((name,), {by_name[other]: ample, row.judged: needed}, by_name[name], 6 * INCH,
                    tuple(verdict(row, needed, times(row, 6 * INCH + off, row.numbers[name]))
                          for off in (-1, 0, 1)))


def input_or_most(row):
    most = row.numbers["most"]
    yield around_judged(row, (), {row.source: most - INCH}, most - INCH)
    yield around_judged(row, ("most",), {row.source: most + INCH}, most)
    yield around_source(row, ("most",), most - 1, most, lambda source: min(source, most))


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


def observed(row):
    state = row.numbers["state"]
    expected = {choice: MEETS if (choice == state) == (row.relation == "is") else FAILS
                for choice in row.choices}
    yield Sight(("state",), {}, row.judged, expected)


def by_listing(row):
    amount = INPUTS[row.source_dimension][0]
    yield around_judged(row, (), {row.source: amount}, amount)
    yield Probe((), {row.judged: amount}, row.source, amount,
                tuple(verdict(row, amount, amount + off) for off in (-1, 0, 1)))


def told_usual(amount):
    """What comes out where a listing decides that is not recorded, and what is usual is named."""
    return "by-listing, usually %d" % amount


def around_usual(row, numbers, fixed, usual):
    """Nothing is judged round what is usual: it is named, whatever was measured."""
    return Probe(numbers, fixed, row.judged, usual, 3 * (told_usual(usual),))


def listing_with_usual(row):
    yield around_usual(row, ("usual",), {}, row.numbers["usual"])
    yield from by_listing(row)


def listing_about_body(row):
    """A body's size, and the figures of its listing, each as often as it counts."""
    usual, times_over = row.numbers["usual"], row.numbers["times"]
    body, *listed = row.sources
    size, side = inputs(row)[0], 8 * INCH

    def required(more):
        return size + times(row, len(listed) * side + more, times_over)

    yield around_usual(row, ("usual",), {body: size}, size + usual)
    given = {body: size, **dict.fromkeys(listed, side)}
    yield around_judged(row, ("times",), given, required(0))
    for varied in listed:
        others = {name: value for name, value in given.items() if name != varied}
        yield Probe(("times",), {**others, row.judged: required(0)}, varied, side,
                    tuple(verdict(row, required(0), required(off)) for off in (-1, 0, 1)))
    yield Probe((), {**dict.fromkeys(listed, side), row.judged: required(0)}, body, size,
                tuple(verdict(row, required(0), required(0) + off) for off in (-1, 0, 1)))


def listing_or_usual(row):
    """A label that is looked for and not there leaves what is usual."""
    for label in ("no-label", "home-made"):
        yield around_judged(row, ("usual",), {"listing.label": label}, row.numbers["usual"])
    yield from by_listing(row)
    yield Sight((), {row.judged: row.numbers["usual"]}, "listing.label",
                {"listed": told_usual(row.numbers["usual"]), "no-label": MEETS, "home-made": MEETS})


def not_printed(row):
    """It has no limits: only when it applies can be tried."""
    return ()


def within(row):
    limit, distance = row.numbers["limit"], row.numbers["within"]
    for near in (0, distance):
        yield around_judged(row, ("limit",), {row.source: near}, limit)
    short = limit - 1 if row.relation == "at-least" else limit + 1
    yield around_source(row, ("within",), short, distance,
                        lambda amount: limit if amount <= distance else NOT_APPLICABLE)


def above_step(row):
    at, up_to, above = (row.numbers[name] for name in ("step", "up-to", "above"))

    def required(amount):
        return above if amount > at else up_to

    yield around_judged(row, ("up-to",), {row.source: at}, up_to)
    yield around_judged(row, ("above",), {row.source: at + 1}, above)
    yield around_source(row, ("step",), min(up_to, above), at, required)


def with_or_without(row):
    without, *others = row.source_choices
    yield around_judged(row, ("without",), {row.source: without}, row.numbers["without"])
    for other in others:
        yield around_judged(row, ("with",), {row.source: other}, row.numbers["with"])


def limit_and_projection(row):
    projecting, limit = row.numbers["projecting"], row.numbers["limit"]

    def required(projection):
        return limit + projection if projection > projecting else limit

    for projection in (0, projecting):
        yield around_judged(row, ("limit",), {row.source: projection}, limit)
    yield around_judged(row, ("limit",), {row.source: projecting + 1}, required(projecting + 1))
    yield around_source(row, ("projecting",), limit, projecting, required)


def rise_by_slope(row):
    along, slope = row.sources
    divisor = row.numbers["divisor"]

    def required(width, rise):
        return -(-width * rise // divisor)

    for width in INPUTS["length"]:
        for rise in SLOPES:
            yield around_judged(row, ("divisor",), {along: width, slope: rise},
                                required(width, rise))
    width, rise = INPUTS["length"][0], SLOPES[0]
    even = width * rise // divisor * divisor // rise
    yield Probe(("divisor",), {slope: rise, row.judged: required(even, rise)}, along, even,
                tuple(verdict(row, required(even, rise), required(even + off, rise))
                      for off in (-1, 0, 1)))


def by_height(row, gap):
    height, shorter, taller = (row.numbers[name] for name in ("height", "shorter", "taller"))
    area, tall = row.sources
    for opening in INPUTS["area"]:
        for name, at in (("shorter", height - 1), ("taller", height + 1)):
            yield around_judged(row, (name,), {area: opening, tall: at},
                                times(row, opening, row.numbers[name]))
    opening = INPUTS["area"][0]
    low, high = sorted((shorter, taller))
    few, many = times(row, opening, low), times(row, opening, high)
    at_height = OUTSIDE if gap else verdict(row, few, times(row, opening, taller))
    yield Probe(("height",), {row.judged: few, area: opening}, tall, height,
                (verdict(row, few, times(row, opening, shorter)), at_height,
                 verdict(row, few, times(row, opening, taller))))
    yield Probe(("shorter", "taller"), {tall: height + 1, row.judged: many}, area,
                opening * high // taller,
                tuple(verdict(row, many, times(row, opening * high // taller + off, taller))
                      for off in (-1, 0, 1)))


def share_by_height(row):
    yield from by_height(row, False)


def share_off_height(row):
    yield from by_height(row, True)


def share_with_least(row):
    for shape in ("round", "sided"):
        ratio, least = row.numbers[shape], row.numbers[shape + "-least"]
        seen = {"flue.shape": "round" if shape == "round" else "square"}
        even = least * RATIO_ONE // ratio  # from here on the share is the greater
        for opening in (even + 7, even + SQUARE_INCH):
            yield around_judged(row, (shape,), {**seen, row.source: opening},
                                times(row, opening, ratio))
        yield around_judged(row, (shape + "-least",), {**seen, row.source: even - SQUARE_INCH},
                            least)
        yield Probe((shape, shape + "-least"), {**seen, row.judged: least}, row.source, even,
                    tuple(verdict(row, least, max(least, times(row, even + off, ratio)))
                          for off in (-1, 0, 1)))


def area_for_each(row):
    each, per = row.numbers["each"], row.numbers["per"]

    def required(opening):
        return -(-opening * each // per)

    for opening in INPUTS["area"]:
        yield around_judged(row, ("each", "per"), {row.source: opening}, required(opening))
    yield around_source(row, ("each", "per"), required(7 * per), 7 * per, required)


def raised(row, at_trigger, begun):
    """A hearth that grows in steps with the height of the fire chamber above it."""
    trigger, level, raised_by, grows_from, every, more = (row.numbers[name] for name in (
        "trigger", "level", "raised", "from", "every", "more"))

    def required(raise_):
        if raise_ < trigger or (raise_ == trigger and not at_trigger):
            return level
        if raise_ <= grows_from:
            return raised_by
        steps, rest = divmod(raise_ - grows_from, every)
        return raised_by + more * (steps + (1 if begun and rest else 0))

    first = trigger if at_trigger else trigger + 1
    yield around_judged(row, ("level",), {row.source: first - 1}, level)
    yield around_judged(row, ("raised",), {row.source: first}, raised_by)
    yield around_judged(row, ("raised",), {row.source: grows_from}, raised_by)
    yield around_source(row, ("trigger",), level, trigger, required)
    for steps in (1, 2, 3):
        at = grows_from + every * steps
        yield around_judged(row, ("more",), {row.source: at}, raised_by + more * steps)
        yield around_source(row, ("every", "from"), required(at if begun else at - 1), at,
                            required)


def area_by_heat(row):
    """An area for each kilowatt, another for each above a heat output."""
    up_to, first, more = (row.numbers[name] for name in ("up-to", "first", "more"))

    def required(heat):
        area = Fraction(first * min(heat, up_to) + more * max(0, heat - up_to), KILOWATT)
        return -(-area.numerator // area.denominator)

    yield around_source(row, ("up-to", "first"), required(up_to), up_to, required)
    if first:
        yield around_judged(row, ("first",), {row.source: up_to - KILOWATT},
                            required(up_to - KILOWATT))
    for heat in (up_to + KILOWATT, up_to + 3 * KILOWATT + 7):
        yield around_judged(row, ("more",), {row.source: heat}, required(heat))


def volume_by_heat(row):
    """A volume for each so much heat, in proportion."""
    volume, per = row.numbers["volume"], row.numbers["heat"]

    def required(heat):
        return -(-volume * heat // per)

    for heat in (per, 7 * per, 10 * per):
        yield around_judged(row, ("volume",), {row.source: heat}, required(heat))
        yield around_source(row, ("heat",), required(heat), heat, required)


def circle(row):
    """The area of a circle, which is never whole: the next one up that is."""
    square = row.numbers["diameter"] ** 2
    yield around_judged(row, ("diameter",), {}, int(PI * square / 4) + 1)


def area_above_heat(row):
    """An area up to a heat output, and so much for each kilowatt above it."""
    up_to, area, more = (row.numbers[name] for name in ("up-to", "area", "more"))

    def required(heat):
        exact = area + Fraction(more * max(0, heat - up_to), KILOWATT)
        return -(-exact.numerator // exact.denominator)

    for heat in (up_to - KILOWATT, up_to):
        yield around_judged(row, ("area",), {row.source: heat}, area)
    yield around_source(row, ("up-to",), area, up_to, required)
    for heat in (up_to + KILOWATT, up_to + 3 * KILOWATT + 7):
        yield around_judged(row, ("more",), {row.source: heat}, required(heat))


def flow_by_area(row):
    each = row.numbers["each"]

    def required(area):
        return -(-area * each // SQUARE_METRE)

    for area in INPUTS["area"]:
        yield around_judged(row, ("each",), {row.source: area}, required(area))
    half = SQUARE_METRE // 2
    step = -(-SQUARE_METRE // each)  # one base unit of air
    yield around_judged(row, ("each",), {row.source: half + step}, required(half + step))


def within_by_heat(row):
    """A limit within a radius that grows with each step of heat begun, up to a greatest one."""
    limit, within_, up_to, every, more, most = (row.numbers[name] for name in (
        "limit", "within", "up-to", "every", "more", "most"))
    near, heat = row.sources

    def radius(heat):
        return min(within_ + more * max(0, -(-(heat - up_to) // every)), most)

    def required(distance, heat):
        return limit if distance <= radius(heat) else NOT_APPLICABLE

    yield around_judged(row, ("limit",), {near: within_, heat: up_to}, limit)
    for steps in (0, 1, 2, (most - within_) // more + 1):
        hot = up_to + every * steps
        yield Probe(("within", "more", "most"), {row.judged: limit - 1, heat: hot}, near,
                    radius(hot), tuple(verdict(row, limit - 1, required(radius(hot) + off, hot))
                                       for off in (-1, 0, 1)))
    for steps in (0, 1, 2):
        hot, far = up_to + every * steps, within_ + more * steps + 1
        yield Probe(("up-to", "every"), {row.judged: limit - 1, near: far}, heat, hot,
                    tuple(verdict(row, limit - 1, required(far, hot + off)) for off in (-1, 0, 1)))


FORMULAS = {
    "area-above-heat": area_above_heat,
    "flow-by-area": flow_by_area,
    "within-by-heat": within_by_heat,
    "input-plus-or-least": input_plus_or_least,
    "circle": circle,
    "area-by-heat": area_by_heat,
    "volume-by-heat": volume_by_heat,
    "raised-above-begun-steps": lambda row: raised(row, False, True),
    "raised-above-whole-steps": lambda row: raised(row, False, False),
    "raised-from-begun-steps": lambda row: raised(row, True, True),
    "raised-from-whole-steps": lambda row: raised(row, True, False),
    "fixed": fixed,
    "within-scope": within_scope,
    "share": share,
    "share-or-least": share_or_least,
    "reduced-share": reduced_share,
    "input-plus": input_plus,
    "input-or-most": input_or_most,
    "input-and-share": input_and_share,
    "lesser-share": lesser_share,
    "by-opening-area": by_opening_area,
    "by-firebox-raise": by_firebox_raise,
    "by-smoke-chamber-walls": by_smoke_chamber_walls,
    "projection-by-distance": projection_by_distance,
    "flue-share": flue_share,
    "observed": observed,
    "by-listing": by_listing,
    "listing-or-usual": listing_or_usual,
    "listing-with-usual": listing_with_usual,
    "listing-about-body": listing_about_body,
    "not-printed": not_printed,
    "within": within,
    "above-step": above_step,
    "with-or-without": with_or_without,
    "limit-and-projection": limit_and_projection,
    "rise-by-slope": rise_by_slope,
    "area-for-each": area_for_each,
    "share-by-height": share_by_height,
    "share-off-height": share_off_height,
    "share-with-least": share_with_least,
}
