# SPDX-License-Identifier: MIT
"""Survey documents for the oracle: made up, of many kinds, the same ones for the same seed.

Amounts lie at the limits of the rules, one nanometre, one sixteenth of an inch and one millimetre
beside them, and anywhere between; each is written in one of the notations that say it exactly.
Only random.Random.random() is used, whose sequence Python promises to keep.
"""
import functools
import json
import random
import re
from decimal import Decimal, localcontext
from fractions import Fraction

import rules
from amounts import DEGREE, FT2, IN, IN2, NM_PER_MM, RATIO_ONE

SIXTEENTH = IN // 16
MM2 = NM_PER_MM ** 2
LINERS = list(rules.ROUND_LINERS) + list(rules.RECTANGULAR_LINERS)
TOLERANCES = ('1/16 in', '1/8 in', '1/2 in', '1 mm', '3 mm', '0.000001 mm')

# Plausible ranges of lib/survey/quantities.def that generated amounts have to keep.
SMALLEST = {'opening.width': 6 * IN, 'opening.height': 6 * IN, 'opening.area': 36 * IN2,
            'firebox.depth': IN, 'flue.diameter': IN, 'flue.width': IN, 'flue.depth': IN,
            'flue.net-area': IN2, 'air.diameter': IN // 4, 'chimney.width': IN,
            'connector.diameter': IN, 'connector.area': IN2, 'chimney.unit-height': IN,
            'chimney.unit-bed-depth': IN}
LARGEST_OPENING = 13500 * IN2

# Openings of exactly 6 ft2, in inches and in millimetres.
SIX_FEET = ((36 * IN, 24 * IN), (32 * IN, 27 * IN), (48 * IN, 18 * IN), (30 * IN, 144 * IN // 5),
            (27 * IN, 32 * IN), (40 * IN, 108 * IN // 5))
SIX_FEET_METRIC = ((914_400_000, 609_600_000), (762_000_000, 731_520_000),
                   (1_000_000_000, 557_418_240), (696_772_800, 800_000_000))

# Numbers that a made-up by-law changes, as text by rule.
AMENDMENTS = {
    'firebox-depth': {'limit': '18 in'},
    'throat-height': {'limit': '10 in'},
    'throat-depth': {'limit': '4 1/2 in'},
    'passage-area': {'ratio': '9/10'},
    'rumford-depth': {'least': '14 in', 'ratio': '3/8'},
    'rumford-throat-area': {'ratio': '1/15'},
    'lintel-bearing': {'limit': '150 mm'},
    'smoke-chamber-height': {'ratio': '0.75'},
    'smoke-chamber-slope': {'smooth': '40 deg', 'corbeled': '25°'},
    'hearth-thickness': {'limit': '6 in'},
    'hearth-extension-thickness': {'ordinary': '3 in', 'raised': '1/2 in', 'raise': '6 in'},
    'hearth-front': {'large': '24 in', 'small': '18 in', 'threshold': '5 ft2'},
    'hearth-side': {'large': '14 in', 'small': '10 in', 'threshold': '0.6 m2'},
    'trim-distance': {'limit': '8 in'},
    'trim-projection': {'zone': '8 in', 'within': '14 in', 'ratio': '1/6'},
    'flue-area': {'round': '1/11', 'rectangular': '1/9', 'long': '1/6', 'aspect': '3/2'},
    'insert-hearth-front': {'usual': '18 in'},
    'insert-hearth-side': {'usual': '10 in'},
}

# A firebox that is well within the ordinary rules, so that the others can be told from them.
GENEROUS = {'firebox.depth': 24 * IN, 'throat.height': 10 * IN, 'throat.depth': 6 * IN,
            'throat.area': 4000 * IN2, 'damper.area': 4000 * IN2, 'smoke-chamber.area': 4000 * IN2}


@functools.cache
def rules_of(standard):
    """The rules that a standard has."""
    return {each.rule for each in rules.check({'survey': {}}, standard)}


class Source:
    """Choices drawn from one seed."""

    def __init__(self, seed):
        self.random = random.Random(seed).random

    def whole(self, low, high):
        """A whole number from low to high, both included."""
        return low + min(high - low, int(self.random() * (high - low + 1)))

    def one(self, options):
        return options[self.whole(0, len(options) - 1)]

    def chance(self, share):
        return self.random() < share


# ---- amounts as text --------------------------------------------------------------------------

def decimal(value):
    """A fraction's decimals, or None where they do not end within 18 places."""
    bottom = value.denominator
    for prime in (2, 5):
        while bottom % prime == 0:
            bottom //= prime
    if bottom != 1:
        return None
    with localcontext() as context:
        context.prec = 60
        exact = Decimal(value.numerator) / Decimal(value.denominator)
    text = format(exact, 'f')
    return text if len(text.partition('.')[2]) <= 18 else None


def inch_fraction(nm, mark='in', gap=' ', joint=' '):
    """Whole inches and a fraction down to 1/64; None where that is not exact."""
    value = Fraction(nm, IN)
    if value.denominator not in (1, 2, 4, 8, 16, 32, 64):
        return None
    whole, rest = divmod(value, 1)
    part = f'{rest.numerator}/{rest.denominator}'
    vulgar = {'1/2': '½', '1/4': '¼', '3/4': '¾', '1/8': '⅛', '5/8': '⅝'}.get(part)
    if rest == 0:
        number = str(whole)
    elif joint == '½' and vulgar:
        number = (str(whole) if whole else '') + vulgar
    else:
        number = (str(whole) + (joint if joint in ' -' else ' ') if whole else '') + part
    return f'{number}{gap}{mark}'


def feet(nm, foot, inch, gap):
    inches = inch_fraction(nm % (12 * IN), inch, gap)
    return f'{nm // (12 * IN)}{foot} {inches}' if inches and nm >= 12 * IN else None


def in_unit(nm, size, mark):
    text = decimal(Fraction(nm, size))
    return f'{text} {mark}' if text is not None else None


LENGTH_NOTATIONS = (
    lambda nm: inch_fraction(nm), lambda nm: inch_fraction(nm, '"', ''),
    lambda nm: inch_fraction(nm, joint='-'), lambda nm: inch_fraction(nm, '″', '', '½'),
    lambda nm: inch_fraction(nm, '[in_i]'), lambda nm: feet(nm, "'", '"', ''),
    lambda nm: feet(nm, ' ft', 'in', ' '), lambda nm: feet(nm, '′', '″', ''),
    lambda nm: in_unit(nm, IN, 'in'), lambda nm: in_unit(nm, 12 * IN, 'ft'),
    lambda nm: in_unit(nm, NM_PER_MM, 'mm'), lambda nm: in_unit(nm, 10 * NM_PER_MM, 'cm'),
    lambda nm: in_unit(nm, 1000 * NM_PER_MM, 'm'),
)
AREA_NOTATIONS = (
    lambda area: in_unit(area, IN2, 'in2'), lambda area: in_unit(area, IN2, 'sq in'),
    lambda area: in_unit(area, FT2, 'ft2'), lambda area: in_unit(area, FT2, 'sq ft'),
    lambda area: in_unit(area, MM2, 'mm2'), lambda area: in_unit(area, 100 * MM2, 'cm2'),
    lambda area: in_unit(area, 10 ** 6 * MM2, 'm2'),
    lambda area: in_unit(area, 10 ** 6 * MM2, 'm²'),
)
ANGLE_NOTATIONS = (lambda angle: in_unit(angle, DEGREE, 'deg'),
                   lambda angle: in_unit(angle, DEGREE, '°'))
NOTATIONS = {'length': LENGTH_NOTATIONS, 'area': AREA_NOTATIONS, 'angle': ANGLE_NOTATIONS,
             'slope': (lambda slope: str(Fraction(slope, RATIO_ONE)),), 'count': (str,)}
OBJECT_UNITS = {'length': (('in', IN), ('[in_i]', IN), ('mm', NM_PER_MM), ('cm', 10 * NM_PER_MM),
                           ('m', 1000 * NM_PER_MM), ('ft', 12 * IN), ('[ft_i]', 12 * IN)),
                'area': (('in2', IN2), ('[sin_i]', IN2), ('ft2', FT2), ('[sft_i]', FT2),
                         ('mm2', MM2), ('cm2', 100 * MM2), ('m2', 10 ** 6 * MM2)),
                'angle': (('deg', DEGREE),)}


def exact_text(source, value, dimension):
    """An amount in one of the notations that say it exactly."""
    while True:
        text = source.one(NOTATIONS[dimension])(value)
        if text is not None:
            return text


def member(source, value, dimension, unit, tolerance):
    """An amount as a document may hold it: text, object, or bare number in the document's unit."""
    if dimension in ('slope', 'count'):
        return exact_text(source, value, dimension)
    if unit and dimension == 'length' and tolerance is None and source.chance(0.3):
        number = decimal(Fraction(value, {'in': IN, 'mm': NM_PER_MM, 'cm': 10 * NM_PER_MM}[unit]))
        if number is not None:
            return Decimal(number)
    if tolerance is None and source.chance(0.7):
        return exact_text(source, value, dimension)
    written = {}
    while not written:
        name, size = source.one(OBJECT_UNITS[dimension])
        number = decimal(Fraction(value, size))
        if number is not None:
            as_text = source.chance(0.2)
            written = {'value': number if as_text else Decimal(number), 'unit': name}
    if tolerance is not None:
        written['tolerance'] = tolerance
    return written


# ---- amounts near limits ----------------------------------------------------------------------

def near(source, limit, low=0, spread=6 * IN):
    """An amount at a limit, next to it by a step of some tape, or somewhere around it."""
    step = source.one((0, 1, SIXTEENTH, NM_PER_MM, SIXTEENTH // 4, 2 * NM_PER_MM, None, None))
    if step is not None:
        return max(low, limit + step * source.one((-1, 1)))
    grid = source.one((1, SIXTEENTH, NM_PER_MM, IN // 2))
    return max(low, limit // grid * grid + grid * source.whole(-(spread // grid), spread // grid))


def near_area(source, limit, low):
    step = source.one((0, 0, 1, IN2 // 16, MM2, IN2, 25 * IN2, None))
    if step is None:
        return max(low, IN2 * source.whole(low // IN2, 2 * limit // IN2 + 2))
    return max(low, limit + step * source.one((-1, 1)))


# ---- a survey ---------------------------------------------------------------------------------

class Maker:
    """Makes one document."""

    def __init__(self, seed, **habits):
        self.source = Source(seed)
        self.full = habits.get('full', self.source.chance(0.5))
        self.generous = self.source.chance(0.1)
        self.unit = self.source.one((None, None, 'in', 'mm', 'cm'))
        uncertain = habits.get('uncertain', self.source.chance(0.4))
        self.document_tolerance = (self.source.one(TOLERANCES)
                                   if uncertain and self.source.chance(0.7) else None)
        self.own_share = 0.3 if uncertain else 0
        self.groups, self.exact = {}, {}

    def put(self, path, value, share=None):
        """Records an amount, or now and then leaves it out."""
        if not self.source.chance(share if share is not None else (1 if self.full else 0.75)):
            return None
        group, name = path.split('.')
        if self.generous:
            value = GENEROUS.get(path, value)
        self.exact[path] = value = max(value, SMALLEST.get(path, 0))
        self.groups.setdefault(group, {})[name] = self.written(path, value)
        return value

    def written(self, path, value):
        dimension = rules.QUANTITIES[path]
        tolerance = None
        if self.source.chance(self.own_share):
            tolerance = {'length': self.source.one(TOLERANCES), 'angle': '1 deg',
                         'area': self.source.one(('1 in2', '0.25 in2', '100 mm2', '1 cm2'))
                         }.get(dimension)
        return member(self.source, value, dimension, self.unit, tolerance)

    def choose(self, path, choice, share=1):
        if self.source.chance(share):
            group, name = path.split('.')
            self.groups.setdefault(group, {})[name] = choice

    # ---- its parts ----------------------------------------------------------------------------

    def opening(self):
        one = self.source.one
        kind = one(('inches', 'metric', 'beside', 'area', 'usual', 'usual', 'usual'))
        if kind == 'area':
            self.put('opening.area', near_area(self.source, 6 * FT2, 36 * IN2))
            self.put('opening.width', near(self.source, 36 * IN), 0.3)
            return
        if kind == 'usual':
            width = IN // 4 * self.source.whole(80, 288)
            height = IN // 4 * self.source.whole(80, 180)
        else:
            width, height = one(SIX_FEET_METRIC if kind == 'metric' else SIX_FEET)
        if kind == 'beside':
            width, height = near(self.source, width), near(self.source, height)
        self.put('opening.width', width)
        self.put('opening.height', height)

    def opening_area(self):
        if 'opening.area' in self.exact:
            return self.exact['opening.area']
        return self.exact.get('opening.width', 36 * IN) * self.exact.get('opening.height', 30 * IN)

    def hearth(self):
        self.put('hearth.front', near(self.source, self.source.one((16, 20, 24, 18)) * IN))
        for side in ('left', 'right'):
            self.put(f'hearth.{side}', near(self.source, self.source.one((8, 12, 14, 10)) * IN))
        self.put('hearth.thickness', near(self.source, 4 * IN, spread=3 * IN))
        self.put('hearth.extension-thickness',
                 near(self.source, self.source.one((2 * IN, 3 * IN // 8)), spread=2 * IN))
        self.put('hearth.firebox-raise', near(self.source, 8 * IN), 0.4)

    def firebox(self):
        rumford = self.source.chance(0.3)
        if rumford:
            self.choose('firebox.design', 'rumford')
        else:
            self.choose('firebox.design', 'conventional', 0.3)
        third = self.exact.get('opening.width', 42 * IN) // 3
        self.put('firebox.depth', near(self.source, self.source.one(
            (20 * IN, 12 * IN, third, third + 1) if rumford else (20 * IN, 18 * IN))))
        self.put('throat.height', near(self.source, 8 * IN))
        self.put('throat.above-lintel', near(self.source, self.source.one((8, 12)) * IN))
        self.put('throat.depth', near(self.source, 4 * IN, spread=3 * IN))
        for side in ('left', 'right'):
            self.put(f'lintel.{side}', near(self.source, 4 * IN, spread=3 * IN))

    def chamber(self):
        self.put('smoke-chamber.height',
                 near(self.source, self.exact.get('opening.width', 36 * IN)))
        self.choose('smoke-chamber.walls', self.source.one(('smooth', 'corbeled')), 0.85)
        limit = self.source.one((45, 30)) * DEGREE
        self.put('smoke-chamber.slope',
                 limit + self.source.one((0, 9, -9, DEGREE // 2, -DEGREE // 2, 10 * DEGREE)))

    def trim(self):
        if self.source.chance(0.15):
            return
        self.groups['trim'] = [self.piece() for _ in range(self.source.whole(0, 5))]

    def piece(self):
        source, piece = self.source, {}
        if source.chance(0.5):
            piece['label'] = source.one(('mantel shelf', 'pilaster', 'frieze board'))
        if source.chance(0.6):
            piece['side'] = source.one(('above', 'left', 'right'))
        if source.chance(0.5):
            piece['place'] = source.one(('on-face', 'abutting'))
        if source.chance(0.4):
            piece['combustible'] = source.chance(0.8)
        distance = near(source, source.one((6, 8, 12)) * IN)
        if self.full or source.chance(0.85):
            piece['distance'] = self.written('trim.distance', distance)
        if self.full or source.chance(0.85):
            limit = source.one((0, distance // 8, 3 * IN // 4, 3 * IN // 2))
            piece['projection'] = self.written('trim.projection',
                                               near(source, limit, spread=2 * IN))
        if self.full or source.chance(0.7):
            piece['lining-distance'] = self.written('trim.lining-distance',
                                                    near(source, source.one((8, 12)) * IN))
        return piece

    def flue(self):
        way = self.source.one(('liner', 'liner', 'round', 'square', 'rectangle', 'two', 'two',
                               'stated', 'stated', 'shape', 'half'))
        getattr(self, 'flue_' + way)()

    def needed(self, fraction):
        """The side of a square of the area the flue needs, cut to a sixteenth of an inch."""
        area, side = int(self.opening_area() * fraction), SIXTEENTH
        while side * side < area:
            side += SIXTEENTH
        return side

    def flue_liner(self):
        liner = self.source.one(LINERS)
        self.choose('flue.liner', liner)
        self.choose('flue.shape', rules.liner_shape(liner), 0.4)
        if 'x' in liner and self.source.chance(0.3):
            # Measured inside as well, within the liner and of about another ratio.
            short, long = sorted(Fraction(side) for side in liner.split('x'))
            self.put('flue.width', int((short - Fraction(5, 4)) * IN), 1)
            self.put('flue.depth', near(self.source, int((long - Fraction(5, 4)) * IN)), 1)

    def flue_round(self):
        self.put('flue.diameter', near(self.source, self.needed(Fraction(1, 12)) * 9 // 8), 1)
        self.choose('flue.shape', 'round', 0.4)
        if self.source.chance(0.3):
            self.groups['opening'] = {}
            area = 12 * rules.circle(self.exact['flue.diameter'])
            self.put('opening.area', area + self.source.one((-1, 0, 1, 11, 12, 13)), 1)

    def flue_square(self):
        side = self.needed(Fraction(1, 10))
        side = side if self.source.chance(0.5) else near(self.source, side)
        self.groups.setdefault('flue', {})
        self.put('flue.width', side, 1)
        self.put('flue.depth', side, 1)
        self.choose('flue.shape', 'square', 0.4 if self.document_tolerance is None else 0)

    def flue_rectangle(self):
        self.put('flue.width', near(self.source, 8 * IN), 1)
        self.put('flue.depth', near(self.source, 15 * IN), 1)

    def flue_two(self):
        """Inside measures at two to one or beside it, of about the area that is needed."""
        short = self.needed(self.source.one((Fraction(1, 20), Fraction(1, 16))))
        long = near(self.source, 2 * short, spread=IN)
        if self.source.chance(0.5):
            short, long = long, short
        self.put('flue.width', short, 1)
        self.put('flue.depth', long, 1)
        if self.source.chance(0.2):
            self.put('flue.net-area', near_area(self.source, self.opening_area() // 8, IN2), 1)

    def flue_stated(self):
        shape = self.source.one(('round', 'square', 'rectangular', None))
        part = {'round': 12, 'square': 10}.get(shape, 8)
        area = self.opening_area() // part + self.source.one((0, 1))
        self.put('flue.net-area', near_area(self.source, area, IN2), 1)
        if shape:
            self.choose('flue.shape', shape)
        else:
            self.choose('flue.liner', self.source.one(LINERS))

    def flue_shape(self):
        self.choose('flue.shape', self.source.one(('round', 'square', 'rectangular')))

    def flue_half(self):
        self.put('flue.width', near(self.source, 8 * IN), 1)

    def passages(self):
        area = self.source.one((self.opening_area() // 20, self.opening_area() // 10,
                                sum(divmod(self.opening_area(), 20)), self.net_area()))
        if self.source.chance(0.6):
            self.put('throat.area', near_area(self.source, area, IN2))
        else:
            self.put('throat.width', near(self.source, 30 * IN))
        self.put('damper.area', near_area(self.source, area, IN2))
        self.put('smoke-chamber.area', near_area(self.source, area, IN2))

    def net_area(self):
        """About what the flue has, to set the passages beside it."""
        liner = self.groups.get('flue', {}).get('liner')
        if liner:
            return rules.liner_area(liner)
        if 'flue.diameter' in self.exact:
            return rules.circle(self.exact['flue.diameter']) + 1
        width, depth = (self.exact.get(f'flue.{side}', 9 * IN) for side in ('width', 'depth'))
        return width * depth

    def insert(self):
        self.put('hearth.front', near(self.source, 20 * IN))
        self.put('insert.projection', near(self.source, 4 * IN, spread=4 * IN))
        self.put('insert.hearth-front', near(self.source, 16 * IN), 0.4)
        for side in ('left', 'right'):
            self.put(f'insert.hearth-{side}', near(self.source, 8 * IN))
        label = self.source.one(('no-label', 'no-label', 'home-made', 'listed'))
        self.choose('listing.label', label, 0.9)
        for name, inches in (('front', 16), ('side', 8)):
            self.put(f'listing.hearth-{name}', near(self.source, inches * IN), 0.15)

    # ---- the whole ----------------------------------------------------------------------------

    def amendments(self, standards):
        made = []
        for rule, changes in AMENDMENTS.items():
            for standard in standards:
                if rule in rules_of(standard) and self.source.chance(0.2):
                    name = self.source.one(sorted(changes))
                    made.append({'standard': standard, 'rule': rule, 'set': {name: changes[name]},
                                 'citation': 'Alder Lane by-law 7-2'})
        return made

    def document(self, identity):
        insert, kind = self.source.chance(0.12), 'masonry-fireplace'
        if insert:
            kind = 'insert'
            self.insert()
            for part in (self.trim, self.flue):
                if self.source.chance(0.3):
                    part()
        elif self.source.chance(0.3):
            kind = generate_chimneys.other_kind(self)
        else:
            for part in (self.opening, self.hearth, self.firebox, self.chamber, self.trim,
                         self.flue, self.passages):
                part()
        generate_chimneys.parts(self)
        generate_chimney_parts.parts(self)
        self.choose('appliance.kind', kind, 0.98)
        self.choose('appliance.fuel', self.source.one(('wood', 'gas')), 0.5)
        codes = rules.IRC if self.source.chance(0.6) else rules.IBC
        standards = [rules.COMMON] if insert else [self.source.one(codes)]
        for other in rules.STANDARDS:
            if other not in standards and self.source.chance(0.12):
                standards.append(other)
        document = {'id': identity, 'standards': standards}
        if self.unit:
            document['unit'] = self.unit
        if self.document_tolerance:
            document['tolerance'] = self.document_tolerance
        document['survey'] = self.groups
        changes = self.amendments(standards) if self.source.chance(0.2) else []
        if changes:
            document['amendments'] = changes
        return document


def written(value):
    """JSON text that keeps every digit of a number."""
    return MARKED.sub(r'\1', json.dumps(value, ensure_ascii=False, default=marked))


MARKED = re.compile('"@number ([^@]*)@"')


def marked(value):
    """A number of any length as a text, which is taken out of its quotes."""
    if not isinstance(value, Decimal):
        raise TypeError(value)
    return f'@number {value:f}@'


def read(line):
    """JSON with its numbers exact."""
    return json.loads(line, parse_float=Decimal, parse_int=Decimal)


def lines(count, seed='ingle', **habits):
    """So many documents, one a line."""
    return [written(Maker(f'{seed} {index}', **habits).document(f'survey-{index}'))
            for index in range(count)]


# What other files make up of a survey.
import generate_chimney_parts  # noqa: E402
import generate_chimneys  # noqa: E402

AMENDMENTS.update(generate_chimneys.AMENDMENTS | generate_chimney_parts.AMENDMENTS)

if __name__ == '__main__':
    import sys
    for line in lines(int(sys.argv[1]) if len(sys.argv) > 1 else 10):
        print(line)
