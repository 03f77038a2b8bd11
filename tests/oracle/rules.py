# SPDX-License-Identifier: MIT
"""The independent oracle: what each rule requires, recomputed with exact fractions.

Written from the publications' numbers alone, never from the library, so that a slip in the library
cannot be repeated here. Where each number is from:

- IRC 2012, 2015, 2018, 2021, 2024 (all alike unless an edition is named)
  - R1001.6: firebox 20 in deep; throat 8 in high, 4 in deep; passages no less than the flue
  - R1001.6 exception (Rumford): 12 in deep and a third of the opening's width; throat 12 in above
    the lintel and a twentieth of the opening; it takes the place of depth and throat alone: damper
    and smoke chamber stay no less than the flue, or, by the other reading, give way as well
  - R1001.7: lintel bears on 4 in at each end; throat 8 in above the lintel
  - R1001.8.1: smoke chamber no higher than the opening is wide; 45 degrees, 30 where corbeled
  - R1001.9.1: hearth 4 in thick
  - R1001.9.2: hearth extension 2 in thick; 3/8 in where the firebox is raised by 8 in
  - R1001.10, Table R1001.1 items B, C: hearth extension 16 in in front and 8 in at the sides; 20 in
    and 12 in from an opening of 6 ft2 on (864 in2, inclusive)
  - R1001.11 exception 3: abutting trim 12 in from the lining; in 2024 8 in, 12 in from 6 ft2 on;
    not asked of a fireplace listed for contact (exception 1)
  - R1001.11 exception 4: no trim within 6 in; within 12 in projection an eighth of the distance
  - R1003.15.1: flue of the opening 1/12 round, 1/10 square, 1/10 rectangular, 1/8 from 2:1 on; the
    base of the aspect ratio is not stated: of a named liner the nominal outside size is taken,
    and the liner of 4.5 x 8.5 in is read both ways: 1.89 outside, above 2 inside
  - Table R1003.14(1): net areas of round liners
  - Table R1003.14(2): net areas of rectangular liners
- common practice, no publication: the insert's label decides; without a label 16 in in front and
  8 in at each side; what is left in front is the hearth less the insert's projection

Tolerances are judged by search: every corner of the box of the measures, and every point at which
a rule steps (see `candidates`). Everything is whole base units: nm, nm2, millionths of an
arcsecond. Requirements are rounded to the stricter side; the area of a circle is rounded down where
it is what is there, and as any other requirement where it is what is required.
"""
from collections import namedtuple
from fractions import Fraction
from itertools import product
from math import ceil, floor

import amounts
from amounts import DEGREE, FT2, IN, IN2

IRC = ('irc-2012', 'irc-2015', 'irc-2018', 'irc-2021', 'irc-2024')
COMMON = 'common-practice-us'
STANDARDS = IRC + (COMMON,)
GRAVITY = ('not-applicable', 'meets', 'unmeasured', 'by-listing', 'too-close', 'fails')

# Every number as printed, by rule and by the name an amendment calls it.
NUMBERS = {
    'firebox-depth': {'limit': 20 * IN},
    'throat-height': {'limit': 8 * IN},
    'throat-depth': {'limit': 4 * IN},
    'passage-area': {'ratio': Fraction(1)},
    'rumford-passage': {'ratio': Fraction(1)},
    'rumford-depth': {'least': 12 * IN, 'ratio': Fraction(1, 3)},
    'rumford-throat-height': {'limit': 12 * IN},
    'rumford-throat-area': {'ratio': Fraction(1, 20)},
    'lintel-bearing': {'limit': 4 * IN},
    'throat-above-lintel': {'limit': 8 * IN},
    'smoke-chamber-height': {'ratio': Fraction(1)},
    'smoke-chamber-slope': {'smooth': 45 * DEGREE, 'corbeled': 30 * DEGREE},
    'hearth-thickness': {'limit': 4 * IN},
    'hearth-extension-thickness': {'ordinary': 2 * IN, 'raised': 3 * IN // 8, 'raise': 8 * IN},
    'hearth-front': {'small': 16 * IN, 'large': 20 * IN, 'threshold': 6 * FT2},
    'hearth-side': {'small': 8 * IN, 'large': 12 * IN, 'threshold': 6 * FT2},
    'trim-abutting': {'limit': 12 * IN},
    'trim-distance': {'limit': 6 * IN},
    'trim-projection': {'zone': 6 * IN, 'within': 12 * IN, 'ratio': Fraction(1, 8)},
    'flue-area': {'round': Fraction(1, 12), 'square': Fraction(1, 10),
                  'rectangular': Fraction(1, 10), 'long': Fraction(1, 8),
                  'aspect': Fraction(2)},
    'insert-hearth-front': {'usual': 16 * IN},
    'insert-hearth-side': {'usual': 8 * IN},
}
# Numbers of single standards that differ from those above.
OTHER_NUMBERS = {'irc-2024': {
    'trim-abutting': {'small': 8 * IN, 'large': 12 * IN, 'threshold': 6 * FT2}}}
# Dimensions of numbers called `limit` that are no lengths.
DIMENSIONS = {'smoke-chamber-slope': 'angle'}

# Table R1003.14(1): inside diameter, net area in in2.
ROUND_LINERS = {'round-6': 28, 'round-7': 38, 'round-8': 50, 'round-10': 78, 'round-10.75': 90,
                'round-12': 113, 'round-15': 176, 'round-18': 254}
# Table R1003.14(2): outside nominal size, net area in in2, in printed order.
RECTANGULAR_LINERS = {'4.5x8.5': 23, '4.5x13': 34, '8x8': 42, '8.5x8.5': 49, '8x12': 67,
                      '8.5x13': 76, '12x12': 102, '8.5x18': 101, '13x13': 127, '12x16': 131,
                      '13x18': 173, '16x16': 181, '16x20': 222, '18x18': 233, '20x20': 298,
                      '20x24': 335, '24x24': 431}
AMBIGUOUS = '4.5x8.5'

QUANTITIES = {
    'opening.width': 'length', 'opening.height': 'length', 'opening.area': 'area',
    'firebox.depth': 'length', 'throat.height': 'length', 'throat.above-lintel': 'length',
    'throat.depth': 'length', 'throat.width': 'length', 'throat.area': 'area',
    'damper.area': 'area', 'lintel.left': 'length', 'lintel.right': 'length',
    'smoke-chamber.height': 'length', 'smoke-chamber.slope': 'angle', 'smoke-chamber.area': 'area',
    'hearth.front': 'length', 'hearth.left': 'length', 'hearth.right': 'length',
    'hearth.thickness': 'length', 'hearth.extension-thickness': 'length',
    'hearth.firebox-raise': 'length', 'trim.distance': 'length', 'trim.projection': 'length',
    'trim.lining-distance': 'length', 'flue.diameter': 'length', 'flue.width': 'length',
    'flue.depth': 'length', 'flue.net-area': 'area', 'insert.projection': 'length',
    'insert.hearth-front': 'length', 'insert.hearth-left': 'length',
    'insert.hearth-right': 'length',
}

# What is taken for granted where it is not recorded, by key without items.
DEFAULTS = {'trim/place': 'on-face', 'trim/combustible': True}
# What other things that are recorded tell of one that is not: functions of a survey, by key.
TOLD = {}
# What a missing choice or flag may be filled with, so that its rule is judged.
FILLING = {'smoke-chamber.walls': 'smooth', 'flue.shape': 'round', 'flue.liner': '13x13'}
# Measures at whose amounts a rule steps: the rule, and the number that says where.
MARKS = {'trim.distance': ('trim-projection', 'zone', 'within'),
         'hearth.firebox-raise': ('hearth-extension-thickness', 'raise')}
# Whether a rule applies, where a condition holds at one end of the tolerances and not at the other.
PERHAPS = 'perhaps'
# What other files add: functions of a survey, its numbers and a standard that give rows, by
# standard; and functions of a survey and a standard that give findings.
ROWS, FINDINGS = {}, []

Finding = namedtuple('Finding', 'standard rule subject verdict relation required_exact required '
                                'measured margin reading dimension usual', defaults=(None,))
# A number that depends on measures: the measures' keys, and a function of their values.
Expression = namedtuple('Expression', 'keys value')
# One rule on one subject. `required` may come to None at a point: no limit there. `by_listing` is
# whether a listing decides, or what is then usual.
Row = namedtuple('Row', 'rule subject relation dimension applies measured required reading '
                        'by_listing', defaults=(False,))


class Contradiction(ValueError):
    """Two things recorded cannot both be so."""


# ---- the survey -------------------------------------------------------------------------------

class Survey:
    """What a document records, in base units: values with half-widths, choices, items."""

    def __init__(self, document):
        self.unit = document.get('unit')
        tolerance = document.get('tolerance')
        self.tolerance = (amounts.read(tolerance, 'length', self.unit)
                          if tolerance is not None else 0)
        self.values, self.choices, self.lists = {}, {}, {}
        self.readings = document.get('readings', {})
        for group, members in document['survey'].items():
            if isinstance(members, list):
                self.lists[group] = len(members)
                for index, item in enumerate(members):
                    self._record(group, f'/{index}', item)
            elif group != 'note':
                self._record(group, '', members)

    def _record(self, group, item, members):
        for name, value in members.items():
            key = f'{group}{item}/{name}'
            dimension = QUANTITIES.get(f'{group}.{name}')
            if dimension is None:
                self.choices[key] = value
                continue
            tolerance = amounts.read_tolerance(value, dimension, self.unit)
            if tolerance is None:
                tolerance = self.tolerance if dimension == 'length' else 0
            self.values[key] = (amounts.read(value, dimension, self.unit), tolerance)

    @property
    def trim(self):
        """How many pieces there are; None where nobody looked."""
        return self.lists.get('trim')

    def has(self, *keys):
        return all(key in self.values for key in keys)

    def one(self, key):
        """The measure itself as an expression, or None where it is not recorded."""
        return Expression((key,), lambda point: point[key]) if self.has(key) else None

    def point(self):
        return {key: value for key, (value, _) in self.values.items()}

    def box(self, key):
        value, tolerance = self.values[key]
        return max(0, value - tolerance), value + tolerance

    def rectangle(self, area, first, second):
        """A recorded area, else the product of two sides; None where neither is there."""
        if self.has(area):
            return self.one(area)
        if self.has(first, second):
            return Expression((first, second), lambda point: point[first] * point[second])
        return None

    def opening(self):
        return self.rectangle('opening/area', 'opening/width', 'opening/height')


def fixed(value):
    return Expression((), lambda point: value)


def scaled(expression, fraction):
    """A fraction of something measured; None where that is not there."""
    if expression is None:
        return None
    return Expression(expression.keys, lambda point: expression.value(point) * Fraction(fraction))


def stepped(expression, threshold, below, above):
    """One number under a threshold, another from it on."""
    if expression is None:
        return None
    return Expression(expression.keys,
                      lambda point: above if expression.value(point) >= threshold else below)


# ---- the flue ---------------------------------------------------------------------------------

def _pi_bounds(digits=60):
    """Two fractions that enclose pi, by Machin's formula."""
    one = 10 ** (digits + 10)

    def arctangent_of_inverse(x):
        total = term = one // x
        divisor, sign = 3, -1
        while term:
            term //= x * x
            total += sign * (term // divisor)
            divisor, sign = divisor + 2, -sign
        return total

    pi = 4 * (4 * arctangent_of_inverse(5) - arctangent_of_inverse(239))
    return Fraction(pi - 10 ** 6, one), Fraction(pi + 10 ** 6, one)


PI_LOW, PI_HIGH = _pi_bounds()


def circle(diameter):
    """The area of a circle in whole nm2, rounded down."""
    low, high = floor(PI_LOW * diameter ** 2 / 4), floor(PI_HIGH * diameter ** 2 / 4)
    assert low == high
    return low


def circle_as_requirement(diameter):
    """The same area where it is asked for: rounding it is left to the requirement, upwards."""
    return PI_HIGH * diameter ** 2 / 4


def liner_area(liner):
    return (ROUND_LINERS.get(liner) or RECTANGULAR_LINERS.get(liner)) * IN2


def liner_shape(liner):
    if liner in ROUND_LINERS:
        return 'round'
    width, depth = (Fraction(side) for side in liner.split('x'))
    return 'square' if width == depth else 'rectangular'


def net_area(survey, circle=circle):
    """The flue's net area: stated, by inside measures, or of the liner by the tables."""
    if survey.has('flue/net-area'):
        return survey.one('flue/net-area')
    if survey.has('flue/diameter'):
        return Expression(('flue/diameter',), lambda point: circle(point['flue/diameter']))
    if survey.has('flue/width', 'flue/depth'):
        return survey.rectangle('', 'flue/width', 'flue/depth')
    if 'flue/liner' in survey.choices:
        return fixed(liner_area(survey.choices['flue/liner']))
    return None


def _by_inside(point, numbers):
    short, long = sorted((point['flue/width'], point['flue/depth']))
    if short == long:
        return numbers['square']
    return numbers['long' if long >= numbers['aspect'] * short else 'rectangular']


def _by_outside(liner, numbers):
    short, long = sorted(Fraction(side) for side in liner.split('x'))
    if short == long:
        return numbers['square']
    return numbers['long' if long >= numbers['aspect'] * short else 'rectangular']


def flue_fractions(survey, numbers):
    """The fraction of the opening that the flue needs: a list of (reading, expression)."""
    shape, liner = survey.choices.get('flue/shape'), survey.choices.get('flue/liner')
    if liner and shape and liner_shape(liner) != shape:
        raise Contradiction(f'a {shape} flue with liner {liner}')
    if liner in ROUND_LINERS:
        return [(None, fixed(numbers['round']))]
    if liner == AMBIGUOUS:
        return [('outside', fixed(_by_outside(liner, numbers))),
                ('inside', fixed(numbers['long']))]
    if liner:
        return [(None, fixed(_by_outside(liner, numbers)))]
    if survey.has('flue/diameter'):
        return [(None, fixed(numbers['round']))]
    if survey.has('flue/width', 'flue/depth'):
        return [(None, Expression(('flue/width', 'flue/depth'),
                                  lambda point: _by_inside(point, numbers)))]
    if shape in ('round', 'square'):
        return [(None, fixed(numbers[shape]))]
    return [(None, None)]


# ---- the rows ---------------------------------------------------------------------------------

def numbers_of(document, standard):
    """The numbers of a standard with the document's amendments in them."""
    numbers = {rule: dict(named)
               for rule, named in (NUMBERS | OTHER_NUMBERS.get(standard, {})).items()}
    for amendment in document.get('amendments', ()):
        if amendment['standard'] != standard:
            continue
        for name, value in amendment['set'].items():
            known = numbers[amendment['rule']][name]
            dimension = number_dimension(amendment['rule'], name, known)
            exact = amounts.read(value, dimension, document.get('unit'))
            numbers[amendment['rule']][name] = (Fraction(exact, amounts.RATIO_ONE)
                                                if dimension == 'ratio' else exact)
    return numbers


def number_dimension(rule, name, value):
    if isinstance(value, Fraction):
        return 'ratio'
    if name == 'threshold':
        return 'area'
    return DIMENSIONS.get(rule, 'length')


def row(rule, key, relation, measured, required, dimension='length', applies=True, reading=None,
        by_listing=False):
    return Row(rule, '/survey/' + key, relation, dimension, applies, measured, required, reading,
               by_listing)


def rows_for(*standards):
    """Registers a function that gives rows of some standards."""
    def register(function):
        for standard in standards:
            ROWS.setdefault(standard, []).append(function)
        return function
    return register


def known(survey, key):
    """What is recorded of a key, or taken for granted; None where it is neither."""
    if key in survey.choices:
        value = survey.choices[key]
        return {'yes': True, 'no': False}.get(value, value)
    if survey.has(key):
        return survey.point()[key]
    plain = '/'.join(part for part in key.split('/') if not part.isdigit())
    return TOLD[plain](survey) if plain in TOLD else DEFAULTS.get(plain)


def within_tolerance(survey, key, test):
    """Whether a condition holds at every point, at none (False), or PERHAPS; None where unknown."""
    value = known(survey, key)
    if value is None:
        return None
    answers = {bool(test(each)) for each in
               ((value, *survey.box(key)) if key in survey.values else (value,))}
    return PERHAPS if len(answers) == 2 else answers.pop()


def under(survey, conditions, row):
    """A row under conditions, each a key and a test: one that fails settles it, else one that is
    unknown leaves it unmeasured, else one that may hold leaves it open whether the row applies."""
    answers = [within_tolerance(survey, key, test) for key, test in conditions]
    if False in answers:
        return row._replace(applies=False)
    if None in answers:
        return row._replace(measured=None, required=None, by_listing=False)
    return row._replace(applies=PERHAPS) if PERHAPS in answers else row


def masonry_rows(survey, numbers, standard):
    """The rows of the IRC in the publication's order, on this survey."""
    rows = (throat_rows(survey, numbers) + rumford_rows(survey, numbers)
            + chamber_rows(survey, numbers) + hearth_rows(survey, numbers))
    for index in range(survey.trim or 0):
        rows += trim_rows(survey, numbers, standard, f'trim/{index}')
    if survey.trim is None:
        rows += [row(rule, 'trim', relation, None, None,
                     applies=rule != 'trim-abutting' or not for_contact(survey))
                 for rule, relation in (('trim-abutting', 'at-least'),
                                        ('trim-distance', 'at-least'),
                                        ('trim-projection', 'at-most'))]
    return rows + [flue_row(survey, fraction, reading)
                   for reading, fraction in flue_fractions(survey, numbers['flue-area'])]


def for_contact(survey):
    """Exception 1: what is listed for contact needs no clearance, and so no exception 3 to it."""
    return known(survey, 'fireplace/listed-for-contact')


def least(survey, numbers, rule, key, **more):
    """A row that asks for a fixed least amount."""
    return row(rule, key, 'at-least', survey.one(key), fixed(numbers[rule]['limit']), **more)


def passages(survey):
    return (('throat/area', survey.rectangle('throat/area', 'throat/width', 'throat/depth')),
            ('damper/area', survey.one('damper/area')),
            ('smoke-chamber/area', survey.one('smoke-chamber/area')))


def throat_rows(survey, numbers):
    rows = [least(survey, numbers, 'firebox-depth', 'firebox/depth'),
            least(survey, numbers, 'throat-height', 'throat/height'),
            least(survey, numbers, 'throat-depth', 'throat/depth')]
    flue = scaled(net_area(survey, circle_as_requirement), numbers['passage-area']['ratio'])
    return rows + [row('passage-area', key, 'at-least', measured, flue, 'area')
                   for key, measured in passages(survey)]


def rumford_rows(survey, numbers):
    applies = survey.choices.get('firebox/design', 'conventional') == 'rumford'
    depth = numbers['rumford-depth']
    width = scaled(survey.one('opening/width'), depth['ratio'])
    deep = width and Expression(width.keys,
                                lambda point: max(depth['least'], width.value(point)))
    area = scaled(survey.opening(), numbers['rumford-throat-area']['ratio'])
    throat = passages(survey)[0][1]
    stay = survey.readings.get('rumford-passages', 'stay') == 'stay'
    flue = scaled(net_area(survey, circle_as_requirement), numbers['rumford-passage']['ratio'])
    more = [row('rumford-passage', key, 'at-least', measured, flue, 'area', applies=applies)
            for key, measured in passages(survey)[1:]] if stay else []
    return more + [
            row('rumford-depth', 'firebox/depth', 'at-least', survey.one('firebox/depth'), deep,
                applies=applies),
            least(survey, numbers, 'rumford-throat-height', 'throat/above-lintel',
                  applies=applies),
            row('rumford-throat-area', 'throat/area', 'at-least', throat, area, 'area',
                applies=applies)]


def chamber_rows(survey, numbers):
    slopes = numbers['smoke-chamber-slope']
    walls = survey.choices.get('smoke-chamber/walls')
    limit = fixed(slopes[walls]) if walls else None
    return [least(survey, numbers, 'lintel-bearing', 'lintel/left'),
            least(survey, numbers, 'lintel-bearing', 'lintel/right'),
            least(survey, numbers, 'throat-above-lintel', 'throat/above-lintel'),
            row('smoke-chamber-height', 'smoke-chamber/height', 'at-most',
                survey.one('smoke-chamber/height'),
                scaled(survey.one('opening/width'), numbers['smoke-chamber-height']['ratio'])),
            row('smoke-chamber-slope', 'smoke-chamber/slope', 'at-most',
                survey.one('smoke-chamber/slope'), limit, 'angle')]


def hearth_rows(survey, numbers):
    raised = numbers['hearth-extension-thickness']
    thickness = stepped(survey.one('hearth/firebox-raise'), raised['raise'], raised['ordinary'],
                        raised['raised']) or fixed(raised['ordinary'])
    rows = [least(survey, numbers, 'hearth-thickness', 'hearth/thickness'),
            row('hearth-extension-thickness', 'hearth/extension-thickness', 'at-least',
                survey.one('hearth/extension-thickness'), thickness)]
    for rule, key in (('hearth-front', 'hearth/front'), ('hearth-side', 'hearth/left'),
                      ('hearth-side', 'hearth/right')):
        rows.append(row(rule, key, 'at-least', survey.one(key), by_opening(survey, numbers[rule])))
    return rows


def by_opening(survey, named):
    return stepped(survey.opening(), named['threshold'], named['small'], named['large'])


def trim_rows(survey, numbers, standard, piece):
    combustible = survey.choices.get(piece + '/combustible', True) in (True, 'yes')
    abuts = survey.choices.get(piece + '/place', 'on-face') == 'abutting'
    distance, projection = piece + '/distance', piece + '/projection'
    edge = (by_opening(survey, numbers['trim-abutting']) if standard == 'irc-2024'
            else fixed(numbers['trim-abutting']['limit']))
    on_face = combustible and not abuts
    return [row('trim-abutting', piece + '/lining-distance', 'at-least',
                survey.one(piece + '/lining-distance'), edge,
                applies=combustible and abuts and not for_contact(survey)),
            least(survey, numbers, 'trim-distance', distance, applies=on_face),
            row('trim-projection', projection, 'at-most', survey.one(projection),
                taper(survey, numbers['trim-projection'], distance), applies=on_face)]


def taper(survey, named, key):
    """How far trim may project at its distance; None beyond the last distance that is limited."""
    if not survey.has(key):
        return None

    def limit(point):
        if point[key] > named['within']:
            return None
        return 0 if point[key] < named['zone'] else point[key] * named['ratio']

    return Expression((key,), limit)


def flue_row(survey, fraction, reading):
    opening, area = survey.opening(), net_area(survey)
    required = None
    if opening and fraction:
        required = Expression(opening.keys + fraction.keys, lambda point:
                              opening.value(point) * fraction.value(point))
    return row('flue-area', 'flue/net-area', 'at-least', area, required, 'area', reading=reading)


def of_insert(survey, numbers, rule, key, measured):
    """What the label states; where a label was looked for and is not there, what is usual."""
    usual = numbers[rule]['usual']
    required = survey.one('listing/' + rule.removeprefix('insert-'))
    if survey.choices.get('listing/label', 'listed') != 'listed':
        required = fixed(usual)
    return row(rule, key, 'at-least', measured, required, by_listing=usual)


def insert_rows(survey, numbers):
    front = survey.one('insert/hearth-front')
    if front is None and survey.has('hearth/front', 'insert/projection'):
        front = Expression(('hearth/front', 'insert/projection'),
                           lambda point: point['hearth/front'] - point['insert/projection'])
    return [of_insert(survey, numbers, 'insert-hearth-front', 'insert/hearth-front', front),
            *(of_insert(survey, numbers, 'insert-hearth-side', key, survey.one(key))
              for key in ('insert/hearth-left', 'insert/hearth-right'))]


# ---- judging ----------------------------------------------------------------------------------

def rounded(relation, exact):
    """A requirement in whole base units, rounded to the stricter side; a state as it is."""
    if relation in ('is', 'is-not'):
        return exact
    return ceil(exact) if relation == 'at-least' else floor(exact)


def outcome(row, point):
    """What the row comes to at one point of the box."""
    required = row.required.value(point)
    if required is None:
        return 'not-applicable'
    required, measured = rounded(row.relation, required), row.measured.value(point)
    met = {'at-least': lambda: measured >= required, 'at-most': lambda: measured <= required,
           'is': lambda: measured == required, 'is-not': lambda: measured != required}
    return 'meets' if met[row.relation]() else 'fails'


def steps(key, values, numbers):
    """Values at and next to those at which a rule steps in one measure."""
    name = '.'.join(part for part in key.split('/') if not part.isdigit())
    rule, *named = MARKS.get(name, (None,))
    marks = {numbers[rule][end] for end in named}
    return {mark + shift for mark in marks for shift in (-1, 0, 1)
            if values[0] <= mark + shift <= values[1]}


def aspect_points(boxes, aspect):
    """Pairs of flue width and depth at and next to where the fraction steps."""
    (wide, deep), pairs = (boxes['flue/width'], boxes['flue/depth']), set()

    def add(width, depth):
        if wide[0] <= width <= wide[1] and deep[0] <= depth <= deep[1]:
            pairs.add((width, depth))

    for ratio in (aspect, 1 / aspect, Fraction(1)):
        for shift in (-1, 0, 1):
            for depth in deep:
                add(floor(depth * ratio) + shift, depth)
                add(ceil(depth * ratio) + shift, depth)
            for width in wide:
                add(width, floor(width / ratio) + shift)
                add(width, ceil(width / ratio) + shift)
    return pairs


def candidates(row, survey, numbers):
    """Points of the box among which its worst and its best are.

    Between the points where a rule steps its margin goes one way in each measure, so the extremes
    lie at corners, or at a step.
    """
    keys = sorted(set(row.measured.keys + row.required.keys))
    boxes = {key: survey.box(key) for key in keys}
    spread = {key: sorted(set(box) | steps(key, box, numbers)) for key, box in boxes.items()}
    for values in product(*spread.values()):
        yield dict(zip(keys, values))
    if 'flue/width' in boxes and 'flue/depth' in boxes:
        rest = [key for key in keys if key not in ('flue/width', 'flue/depth')]
        for width, depth in aspect_points(boxes, numbers['flue-area']['aspect']):
            for values in product(*(boxes[key] for key in rest)):
                yield dict(zip(rest, values)) | {'flue/width': width, 'flue/depth': depth}


def verdict_of(row, survey, numbers):
    here = outcome(row, survey.point())
    found = {outcome(row, point) for point in candidates(row, survey, numbers)} | {here}
    if 'fails' in found:
        return 'fails' if found == {'fails'} else 'too-close'
    return here


def limited(row, survey, numbers):
    """Whether there is a limit anywhere within the tolerances."""
    asked = row._replace(measured=fixed(0))
    return any(row.required.value(point) is not None
               for point in candidates(asked, survey, numbers))


def judge(row, survey, numbers, standard):
    """One finding of one row."""
    nothing = Finding(standard, row.rule, row.subject, 'not-applicable', row.relation, None, None,
                      None, None, row.reading, row.dimension)
    if not row.applies:
        return nothing
    point = survey.point()
    exact = row.required.value(point) if row.required else None
    if row.required and exact is None and not row.measured and limited(row, survey, numbers):
        return nothing._replace(verdict='unmeasured')
    if row.required and exact is None and not (
            row.measured and verdict_of(row, survey, numbers) != 'not-applicable'):
        return nothing
    required = None if exact is None else rounded(row.relation, exact)
    measured = row.measured.value(point) if row.measured else None
    verdict, margin = 'unmeasured', None
    usual = None
    if row.by_listing and not row.required:
        verdict = 'by-listing'
        usual = None if row.by_listing is True else row.by_listing
    if row.measured and row.required:
        verdict = verdict_of(row, survey, numbers)
        if required is not None and row.dimension != 'state':
            margin = measured - required if row.relation == 'at-least' else required - measured
    if row.applies == PERHAPS and verdict == 'fails':
        verdict = 'too-close'
    return nothing._replace(verdict=verdict, required_exact=exact, required=required,
                            measured=measured, margin=margin, usual=usual)


ORDINARY = ('firebox-depth', 'throat-height', 'throat-depth', 'passage-area')
EXCEPTION = ('rumford-depth', 'rumford-throat-height', 'rumford-throat-area')


def settle(findings):
    """The ordinary rules or the exception's, whichever is met, the exception first."""
    asked = [each for each in findings if each.verdict != 'not-applicable']
    if {each.verdict for each in asked if each.rule in EXCEPTION} == {'meets'}:
        idle = ORDINARY
    elif {each.verdict for each in asked if each.rule in ORDINARY} == {'meets'}:
        idle = EXCEPTION
    else:
        return findings
    return [each._replace(verdict='not-applicable', required=None, required_exact=None,
                          measured=None, margin=None) if each.rule in idle else each
            for each in findings]


def of_kind(survey, rows, wanted):
    """Rows that ask something of one kind of appliance only."""
    kind = survey.choices.get('appliance/kind')
    if kind == wanted:
        return rows
    # Nothing is read where nothing is judged: of the two readings one row is left.
    return [each._replace(applies=each.applies and kind is None, measured=None, required=None,
                          reading=None, by_listing=False)
            for each in rows if each.reading != 'inside']


def of_masonry(survey, rows):
    return of_kind(survey, rows, 'masonry-fireplace')


def check(document, standard):
    """All findings of one standard on a document, those that do not apply included."""
    survey, numbers = Survey(document), numbers_of(document, standard)
    rows = []
    if standard in IRC:
        rows += of_masonry(survey, masonry_rows(survey, numbers, standard))
    if standard == COMMON:
        rows += of_kind(survey, insert_rows(survey, numbers), 'insert')
    for function in ROWS.get(standard, ()):
        rows += function(survey, numbers, standard)
    findings = [judge(each, survey, numbers, standard) for each in rows]
    for function in FINDINGS:
        findings += function(survey, standard)
    return settle(findings)


def overall(findings):
    """The gravest verdict."""
    return max((each.verdict for each in findings), key=GRAVITY.index, default='not-applicable')


# The rows that other files tell; each adds its numbers and quantities to those above.
import chimneys  # noqa: E402
import chimney_parts  # noqa: E402, F401

IBC = chimneys.IBC
STANDARDS += IBC
