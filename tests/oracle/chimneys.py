# SPDX-License-Identifier: MIT
"""The oracle's rows for chimneys, their surroundings and air, walls, factory-built units, heaters.

Where each number is from (IRC 2012 to 2024, IBC 2012 to 2024, all alike unless an edition is named;
the sections of the IBC stand in brackets):

- R1001.2, R1003.2: footing 12 in thick, 6 in beyond the wall; below the frost, or 12 in below grade
- R1001.5 (2111.6): firebox walls 8 in lined, 10 in unlined; firebrick 2 in, its joints 1/4 in
- R1001.5.1 (2111.6.1): steel unit 1/4 in, walls 8 in, of which 4 in solid masonry
- R1001.7.1 (2111.8.1): damper 8 in above the opening; (2111.8): throat 8 in above the OPENING
- R1001.8 (2111.9): smoke chamber walls 8 in, 6 in lined with 2 in of firebrick or 5/8 in of clay
- R1001.11 (2111.12): clearance 2 in at front and sides, 4 in at the back; exception 2: 12 in
- (2111.12 exception 3): abutting trim 12 in; (exception 4): no trim within 6 in; above, within
  12 in an eighth of the distance; beside, the whole projection on top where that is more than
  1 1/2 in
- (2111.13): fireblocking 1 in deep
- R1001.13, from 2021: accessories by their listing
- R1002.5 (2112.5, from 2015): heater 36 in; exception 1: 4 in with walls of 8 in, channels of 5 in
  and 8 in to a combustible ceiling; exception 2: a listed one by its listing; firebox floor 4 in
- R1003.5: corbel half of the wall, from one side of a wall of 12 in; R1003.6: size changes 6 in
  from floor, ceiling or roof
- R1003.9 (2113.9): chimney 3 ft above the roof, 2 ft above what is within 10 ft
- R1003.9.2, R1003.9.3 (2113.9.2, 2113.9.3): arrestor and cap four times the flue; mesh 3/8 in to
  1/2 in
- R1003.10 (2113.10): walls 4 in nominal, solid; R1003.11: lined, with no parts of it missing, and
  by a kind that is named or is approved for 1,800 F; R1003.12 (2113.12): liner starts 8 in below
  the inlet (but a fireplace's), leans 30 degrees at most
- R1003.13 (2113.14): 4 in between flues, joints of touching ones staggered by 4 in
- R1003.17 (2113.18): cleanout within 6 in of the base, 6 in below the inlet, 6 in high
- R1003.18 (2113.19): 2 in inside, 1 in outside; exceptions by the edition table
- R1003.20: cricket where wider than 30 in and off the ridge (1503.5 in 2024: at its ridge side);
  its height a half of the width times the slope
- R1004.1, R1004.2: factory-built fireplace listed, hearth by its listing and seen
- R1005.7, of any factory-built chimney: offset 30 degrees, 4 elbows; R1005.9, in 2024: its manual
  comes first; R1005.8, from 2018: shield 2 in above insulation, 0.0187 in
- R1006 (2111.14): exterior air 6 to 55 in2 (listed fireplaces apart), from outdoors (IRC: or a
  ventilated space), intake not above the firebox (IRC from 2015: listed factory-built apart), mesh
  1/4 in; unlisted duct 1 in, within 5 ft (IRC); outlet, IRC from 2015: in the firebox or
  within 24 in of the opening, closable, no embers into hidden spaces
"""
from fractions import Fraction

import rules
from amounts import DEGREE, FT, IN, IN2, RATIO_ONE

IBC = ('ibc-2012', 'ibc-2015', 'ibc-2018', 'ibc-2021', 'ibc-2024')

NUMBERS = {
    'firebox-wall': {'with': 8 * IN, 'without': 10 * IN},
    'firebox-lining': {'limit': 2 * IN},
    'firebox-joint': {'limit': IN // 4},
    'steel-unit-lining': {'limit': IN // 4},
    'steel-unit-wall': {'limit': 8 * IN},
    'steel-unit-masonry': {'limit': 4 * IN},
    'throat-above-opening': {'limit': 8 * IN},
    'damper-height': {'limit': 8 * IN},
    'smoke-chamber-wall': {'with': 6 * IN, 'without': 8 * IN},
    'smoke-chamber-lining': {'limit': 2 * IN},
    'smoke-chamber-clay-lining': {'limit': 5 * IN // 8},
    'fireplace-clearance': {'limit': 2 * IN},
    'fireplace-clearance-back': {'limit': 4 * IN},
    'fireplace-wall-contact': {'limit': 12 * IN},
    'trim-side-clearance': {'projecting': 3 * IN // 2, 'limit': 6 * IN},
    'fireblock': {'limit': IN},
    'footing-thickness': {'limit': 12 * IN},
    'footing-projection': {'limit': 6 * IN},
    'footing-below-frost': {'ratio': Fraction(1)},
    'footing-below-grade': {'limit': 12 * IN},
    'chimney-height': {'limit': 3 * FT},
    'chimney-height-nearby': {'limit': 2 * FT, 'within': 10 * FT},
    'spark-arrestor-area': {'ratio': Fraction(4)},
    'spark-arrestor-mesh-most': {'limit': IN // 2},
    'spark-arrestor-mesh-least': {'limit': 3 * IN // 8},
    'rain-cap-area': {'ratio': Fraction(4)},
    'chimney-corbel': {'ratio': Fraction(1, 2)},
    'chimney-corbel-wall': {'limit': 12 * IN},
    'chimney-size-change': {'limit': 6 * IN},
    'chimney-wall-nominal': {'limit': 4 * IN},
    'liner-start': {'limit': 8 * IN},
    'flue-slope': {'limit': 30 * DEGREE},
    'flue-spacing': {'limit': 4 * IN},
    'liner-stagger': {'limit': 4 * IN},
    'cleanout-base': {'limit': 6 * IN},
    'cleanout-inlet': {'limit': 6 * IN},
    'cleanout-height': {'limit': 6 * IN},
    'chimney-clearance': {'with': IN, 'without': 2 * IN},
    'chimney-wall-contact': {'limit': 12 * IN},
    'chimney-trim-abutting': {'limit': 12 * IN},
    'chimney-corner-overlap': {'limit': IN},
    'cricket-height': {'divisor': Fraction(2)},
    'factory-chimney-offset': {'limit': 30 * DEGREE},
    'factory-chimney-elbows': {'limit': 4},
    'insulation-shield-height': {'limit': 2 * IN},
    'insulation-shield-steel': {'limit': 187 * IN // 10000},
    'heater-clearance': {'limit': 36 * IN},
    'thick-heater-clearance': {'limit': 4 * IN},
    'thick-heater-wall': {'limit': 8 * IN},
    'thick-heater-channel': {'limit': 5 * IN},
    'thick-heater-ceiling': {'limit': 8 * IN},
    'heater-floor': {'limit': 4 * IN},
    'air-area': {'limit': 6 * IN2},
    'air-area-most': {'limit': 55 * IN2},
    'air-intake-screen': {'limit': IN // 4},
    'air-duct-clearance': {'limit': IN, 'within': 5 * FT},
    'air-outlet-distance': {'limit': 24 * IN},
}
DIMENSIONS = {'air-area': 'area', 'air-area-most': 'area', 'flue-slope': 'angle',
              'factory-chimney-offset': 'angle', 'factory-chimney-elbows': 'count'}

QUANTITIES = {
    'firebox.wall-thickness': 'length', 'firebox.lining-thickness': 'length',
    'firebox.joint-width': 'length', 'firebox.masonry-thickness': 'length',
    'fireplace.front-clearance': 'length', 'fireplace.side-clearance': 'length',
    'fireplace.back-clearance': 'length', 'fireplace.wall-contact-distance': 'length',
    'fireplace.fireblock-depth': 'length', 'damper.height': 'length',
    'smoke-chamber.wall-thickness': 'length', 'smoke-chamber.lining-thickness': 'length',
    'chimney.height-above-roof': 'length', 'chimney.wall-nominal': 'length',
    'chimney.corbel-projection': 'length', 'chimney.corbeled-wall': 'length',
    'chimney.size-change-distance': 'length', 'chimney.width': 'length',
    'chimney.liner-below-inlet': 'length', 'flue.slope': 'angle',
    'flue.bends': 'count', 'chimney.flue-spacing': 'length', 'chimney.joint-stagger': 'length',
    'chimney.clearance': 'length', 'chimney.wall-contact-distance': 'length',
    'chimney.trim-distance': 'length', 'chimney.corner-overlap': 'length',
    'nearby.distance': 'length', 'nearby.slope': 'slope', 'nearby.rise': 'length',
    'nearby.top-above': 'length', 'spark-arrestor.net-area': 'area',
    'spark-arrestor.mesh': 'length', 'rain-cap.net-area': 'area', 'cleanout.above-base': 'length',
    'cleanout.below-inlet': 'length', 'cleanout.height': 'length', 'roof.slope': 'slope',
    'cricket.height': 'length', 'footing.thickness': 'length', 'footing.projection': 'length',
    'footing.depth': 'length', 'footing.frost-depth': 'length', 'air.diameter': 'length',
    'air.area': 'area', 'air.screen-mesh': 'length', 'air.duct-clearance': 'length',
    'air.duct-clearance-at': 'length', 'air.outlet-distance': 'length',
    'factory.shield-above-insulation': 'length', 'factory.shield-thickness': 'length',
    'heater.clearance': 'length', 'heater.wall-thickness': 'length',
    'heater.channel-wall-thickness': 'length', 'heater.ceiling-clearance': 'length',
    'heater.floor-thickness': 'length', 'listing.hearth-front': 'length',
    'listing.hearth-side': 'length', 'listing.heater-clearance': 'length',
    'listing.chimney-offset': 'angle',
    'listing.chimney-elbows': 'count',
}
# What is taken for granted where it is not recorded.
DEFAULTS = {
    'chimney/liner': 'clay', 'chimney/flues': 'single',
    'chimney/place': 'interior', 'chimney/meets-ridge': False,
    'chimney/listed-for-contact': False, 'chimney/in-masonry-wall': False,
    'chimney/changes-size': False, 'chimney/corbel': 'none', 'chimney/trim-abuts': False,
    'fireplace/listed-for-contact': False,
    'fireplace/in-masonry-wall': False, 'smoke-chamber/lining': 'none',
    'spark-arrestor/present': False, 'rain-cap/present': False, 'air/room-pressurized': False,
    'air/duct-listed': False, 'accessories/present': False, 'factory/manual-silent': False,
    'heater/ceiling-combustible': True,
}
# What fills a choice or flag that is missing, so that the rule is judged.
FILLING = {
    'firebox.lining': 'firebrick', 'smoke-chamber.parged': True, 'flue.lining': 'sound',
    'cricket.present': True, 'air.duct-state': 'connected', 'air.intake-place': 'outdoors',
    'air.intake-above-firebox': False, 'air.outlet-place': 'firebox',
    'air.outlet-closable': True, 'listing.label': 'listed',
    'factory.hearth-distinguishable': True, 'factory.through-insulation': True,
    'accessories.by-listing': True, 'trim.side': 'above', 'chimney.wall-solid': True,
    'chimney.liner-spec': 'approved', 'air.outlet-embers': False,
}


# ---- conditions -------------------------------------------------------------------------------

def being(key, *values):
    return key, lambda value: value in values


def not_being(key, *values):
    return key, lambda value: value not in values


KIND = 'appliance/kind'
MASONRY = (being(KIND, 'masonry-fireplace'),)
STEEL = (being(KIND, 'steel-fireplace-unit'), not_being('listing/label', 'listed'))
FACTORY = (being(KIND, 'factory-built-fireplace'),)
HEATER = (being(KIND, 'masonry-heater'),)
UNLISTED = (not_being('listing/label', 'listed'),)
PARTS = (being('chimney/construction', 'factory-built'),)
UNLISTED_HEATER = HEATER + (not_being('listing/label', 'listed'),)
BUILT = (being('chimney/construction', 'masonry'),)
CHIMNEY = BUILT + (not_being(KIND, 'factory-built-fireplace'),)
NO_FIREPLACE = BUILT + (not_being(KIND, 'masonry-fireplace', 'steel-fireplace-unit', 'insert',
                                  'factory-built-fireplace'),)
FIREPLACE = (not_being(KIND, 'stove', 'pellet-stove', 'masonry-heater', 'insert'),)
SUPPLIED = FIREPLACE + (being('air/duct-state', 'connected'),)
NO_FACTORY = (not_being(KIND, 'factory-built-fireplace'),)
FIREBRICK = MASONRY + (being('firebox/lining', 'firebrick'),)
IN_WALL = {group: (being(f'{group}/listed-for-contact', False),
                   being(f'{group}/in-masonry-wall', True)) for group in ('chimney', 'fireplace')}
FREE = {group: (being(f'{group}/listed-for-contact', False),
                being(f'{group}/in-masonry-wall', False)) for group in ('chimney', 'fireplace')}
# Exception 1: what is listed for contact is asked nothing by exception 3.
NO_CONTACT = (being('fireplace/listed-for-contact', False),)
ABUTTED = CHIMNEY + (being('chimney/listed-for-contact', False), being('chimney/trim-abuts', True))
WIDE = (('chimney/width', lambda value: value > 30 * IN),)


def construction(survey):
    """A fireplace's chimney is taken for masonry, a stove's for what its connector goes into."""
    kind = survey.choices.get(KIND)
    if kind in ('stove', 'pellet-stove'):
        into = survey.choices.get('connector/into') or ''
        if into in ('masonry-chimney', 'fireplace-chimney'):
            return 'masonry'
        return 'factory-built' if into.startswith('factory-built') else None
    inside = kind == 'insert' and survey.choices.get('insert/in-factory-built') in (True, 'yes')
    return 'factory-built' if inside or kind == 'factory-built-fireplace' else 'masonry'


class Asker:
    """Makes the rows of one standard on one survey."""

    def __init__(self, survey, numbers):
        self.survey, self.numbers = survey, numbers

    def row(self, rule, key, relation, required, conditions, dimension=None, measured=None,
            **more):
        name = '.'.join(part for part in key.split('/') if not part.isdigit())
        dimension = dimension or QUANTITIES.get(name) or rules.QUANTITIES[name]
        measured = measured or self.survey.one(key)
        made = rules.row(rule, key, relation, measured, required, dimension, **more)
        return rules.under(self.survey, conditions, made)

    def least(self, rule, key, conditions):
        return self.row(rule, key, 'at-least', rules.fixed(self.numbers[rule]['limit']), conditions)

    def most(self, rule, key, conditions):
        return self.row(rule, key, 'at-most', rules.fixed(self.numbers[rule]['limit']), conditions)

    def seen(self, rule, key, relation, state, conditions):
        value = rules.known(self.survey, key)
        measured = None if value is None else rules.fixed(value)
        return self.row(rule, key, relation, rules.fixed(state), conditions, 'state', measured)

    def either(self, rule, key, chosen_by, conditions):
        value = rules.known(self.survey, chosen_by)
        named = self.numbers[rule]
        required = None
        if value is not None:
            required = rules.fixed(named['without' if value in ('none', 'interior') else 'with'])
        return self.row(rule, key, 'at-least', required, conditions)

    def times_flue(self, rule, key, conditions):
        flue = rules.net_area(self.survey, rules.circle_as_requirement)
        return self.row(rule, key, 'at-least',
                        rules.scaled(flue, self.numbers[rule]['ratio']), conditions)

    def listed(self, rule, key, listing, conditions):
        label = self.survey.choices.get('listing/label', 'listed')
        return self.row(rule, key, 'at-least',
                        self.survey.one(listing) if label == 'listed' else None, conditions,
                        by_listing=True)

    def near(self, rule, key, distance, conditions, measured=None):
        """Asked only where the distance is no more than a number."""
        named = self.numbers[rule]
        required = None
        if self.survey.has(distance):
            required = rules.Expression((distance,), lambda point: named['limit']
                                        if point[distance] <= named['within'] else None)
        return self.row(rule, key, 'at-least', required, conditions, measured=measured)


# ---- rows of both codes -----------------------------------------------------------------------

def walls(ask):
    rows = [ask.either('firebox-wall', 'firebox/wall-thickness', 'firebox/lining', MASONRY),
            ask.least('firebox-lining', 'firebox/lining-thickness', FIREBRICK),
            ask.most('firebox-joint', 'firebox/joint-width', FIREBRICK),
            ask.least('steel-unit-lining', 'firebox/lining-thickness', STEEL),
            ask.least('steel-unit-wall', 'firebox/wall-thickness', STEEL),
            ask.least('steel-unit-masonry', 'firebox/masonry-thickness', STEEL),
            ask.least('damper-height', 'damper/height',
                      MASONRY + (not_being('damper/state', 'removed'),)),
            ask.either('smoke-chamber-wall', 'smoke-chamber/wall-thickness',
                       'smoke-chamber/lining', MASONRY),
            ask.seen('smoke-chamber-parging', 'smoke-chamber/parged', 'is', True, MASONRY)]
    for rule, lining in (('smoke-chamber-lining', 'firebrick'),
                         ('smoke-chamber-clay-lining', 'clay')):
        rows.append(ask.least(rule, 'smoke-chamber/lining-thickness',
                              MASONRY + (being('smoke-chamber/lining', lining),)))
    return rows


def clearances(ask):
    return [ask.least('fireplace-clearance', 'fireplace/front-clearance',
                      MASONRY + FREE['fireplace']),
            ask.least('fireplace-clearance', 'fireplace/side-clearance',
                      MASONRY + FREE['fireplace']),
            ask.least('fireplace-clearance-back', 'fireplace/back-clearance',
                      MASONRY + FREE['fireplace']),
            ask.least('fireplace-wall-contact', 'fireplace/wall-contact-distance',
                      MASONRY + IN_WALL['fireplace']),
            ask.either('chimney-clearance', 'chimney/clearance', 'chimney/place',
                       CHIMNEY + FREE['chimney']),
            ask.least('chimney-wall-contact', 'chimney/wall-contact-distance',
                      CHIMNEY + IN_WALL['chimney']),
            ask.least('chimney-trim-abutting', 'chimney/trim-distance', ABUTTED)]


def top_above(survey, item):
    """The chimney's top above a part: stated, or its height less the part's rise."""
    stated, rise = f'{item}/top-above', f'{item}/rise'
    height, distance, slope = 'chimney/height-above-roof', f'{item}/distance', f'{item}/slope'
    if survey.has(stated):
        return survey.one(stated)
    if survey.has(height, rise):
        return rules.Expression((height, rise), lambda point: point[height] - point[rise])
    if survey.has(height, distance, slope):
        return rules.Expression((height, distance, slope), lambda point: point[height]
                                - -(-point[distance] * point[slope] // RATIO_ONE))
    return None


def tops(ask):
    survey, cap = ask.survey, CHIMNEY + (being('rain-cap/present', True),)
    arrestor = CHIMNEY + (being('spark-arrestor/present', True),)
    rows = [ask.least('chimney-height', 'chimney/height-above-roof', CHIMNEY),
            ask.times_flue('spark-arrestor-area', 'spark-arrestor/net-area', arrestor),
            ask.most('spark-arrestor-mesh-most', 'spark-arrestor/mesh', arrestor),
            ask.least('spark-arrestor-mesh-least', 'spark-arrestor/mesh', arrestor),
            ask.times_flue('rain-cap-area', 'rain-cap/net-area', cap)]
    count = survey.lists.get('nearby')
    if count is None:
        rows.append(ask.row('chimney-height-nearby', 'nearby', 'at-least', None, CHIMNEY,
                            'length'))
    for index in range(count or 0):
        item = f'nearby/{index}'
        rows.append(ask.near('chimney-height-nearby', f'{item}/top-above', f'{item}/distance',
                             CHIMNEY, top_above(survey, item)))
    return rows


def linings(ask):
    stove = NO_FIREPLACE + (being('chimney/liner', 'clay'),)
    return [ask.least('chimney-wall-nominal', 'chimney/wall-nominal', CHIMNEY),
            ask.seen('chimney-wall-solid', 'chimney/wall-solid', 'is', True, CHIMNEY),
            ask.least('liner-start', 'chimney/liner-below-inlet', stove),
            ask.most('flue-slope', 'flue/slope', CHIMNEY + (being('chimney/liner', 'clay'),)),
            ask.least('flue-spacing', 'chimney/flue-spacing',
                      CHIMNEY + (being('chimney/flues', 'separate'),)),
            ask.least('liner-stagger', 'chimney/joint-stagger',
                      CHIMNEY + (being('chimney/flues', 'touching'),)),
            ask.most('cleanout-base', 'cleanout/above-base', NO_FIREPLACE),
            ask.least('cleanout-inlet', 'cleanout/below-inlet', NO_FIREPLACE),
            ask.least('cleanout-height', 'cleanout/height', NO_FIREPLACE)]


def heaters(ask):
    return [ask.least('heater-clearance', 'heater/clearance', UNLISTED_HEATER),
            ask.least('thick-heater-clearance', 'heater/clearance', UNLISTED_HEATER),
            ask.least('thick-heater-wall', 'heater/wall-thickness', UNLISTED_HEATER),
            ask.least('thick-heater-channel', 'heater/channel-wall-thickness', UNLISTED_HEATER),
            ask.least('thick-heater-ceiling', 'heater/ceiling-clearance',
                      UNLISTED_HEATER + (being('heater/ceiling-combustible', True),)),
            ask.listed('heater-clearance', 'heater/clearance', 'listing/heater-clearance',
                       HEATER + (being('listing/label', 'listed'),)),
            ask.least('heater-floor', 'heater/floor-thickness', HEATER)]


def duct_area(survey, relation):
    """The passageway's area: stated, or of a round duct by its diameter, on the strict side."""
    if survey.has('air/area') or not survey.has('air/diameter'):
        return survey.one('air/area')
    more = 1 if relation == 'at-most' else 0
    return rules.Expression(('air/diameter',),
                            lambda point: rules.circle(point['air/diameter']) + more)


def air(ask):
    rows = [ask.seen('exterior-air', 'air/duct-state', 'is', 'connected',
                     FIREPLACE + (being('air/room-pressurized', False),)),
            ask.most('air-intake-screen', 'air/screen-mesh', SUPPLIED)]
    for rule, relation in (('air-area', 'at-least'), ('air-area-most', 'at-most')):
        for who in (MASONRY + NO_CONTACT + SUPPLIED,
                    SUPPLIED + UNLISTED + (not_being(KIND, 'masonry-fireplace'),)):
            rows.append(ask.row(rule, 'air/area', relation,
                                rules.fixed(ask.numbers[rule]['limit']), who,
                                measured=duct_area(ask.survey, relation)))
    return rows


# ---- the residential code ---------------------------------------------------------------------

@rules.rows_for(*rules.IRC)
def residential(survey, numbers, standard):
    ask, edition = Asker(survey, numbers), int(standard[-4:])
    return (walls(ask) + clearances(ask) + tops(ask) + linings(ask) + heaters(ask) + air(ask)
            + shapes(ask) + footings(ask) + crickets(ask) + factory(ask, edition)
            + residential_air(ask, edition) + by_edition(ask, edition))


def by_edition(ask, edition):
    named = not_being('chimney/liner', 'clay', 'listed-system')
    rows = [ask.seen('flue-lined', 'flue/lining', 'is-not', 'none',
                     CHIMNEY + (not_being('flue/lining', 'missing'),)),
            ask.seen('flue-lined', 'flue/lining', 'is-not', 'missing',
                     CHIMNEY + (being('flue/lining', 'missing'),)),
            ask.seen('liner-specification', 'chimney/liner-spec', 'is-not', 'none',
                     CHIMNEY + (named,))]
    if edition == 2012:
        rows.append(ask.most('chimney-corner-overlap', 'chimney/corner-overlap', ABUTTED))
    if edition >= 2021:
        rows.append(ask.seen('fireplace-accessories', 'accessories/by-listing', 'is', True,
                             MASONRY + (being('accessories/present', True),)))
    return rows


def shapes(ask):
    half = ask.numbers['chimney-corbel']['ratio']
    return [ask.row('chimney-corbel', 'chimney/corbel-projection', 'at-most',
                    rules.scaled(ask.survey.one('chimney/corbeled-wall'), half),
                    CHIMNEY + (not_being('chimney/corbel', 'none'),
                               being('chimney/corbel-second-storey', False))),
            ask.least('chimney-corbel-wall', 'chimney/corbeled-wall',
                      CHIMNEY + (being('chimney/corbel', 'one-side'),)),
            ask.least('chimney-size-change', 'chimney/size-change-distance',
                      CHIMNEY + (being('chimney/changes-size', True),))]


def footings(ask):
    """Of a masonry chimney, or of a masonry fireplace under a factory-built one."""
    frost, rows = ask.survey.one('footing/frost-depth'), []
    for what in (CHIMNEY, MASONRY + PARTS):
        rows += [ask.least('footing-thickness', 'footing/thickness', what),
                 ask.least('footing-projection', 'footing/projection', what),
                 ask.row('footing-below-frost', 'footing/depth', 'at-least',
                         rules.scaled(frost, ask.numbers['footing-below-frost']['ratio']),
                         what + (('footing/frost-depth', lambda value: value > 0),)),
                 ask.least('footing-below-grade', 'footing/depth',
                           what + (being('footing/frost-depth', 0),))]
    return rows


def crickets(ask):
    survey = ask.survey
    off_ridge = CHIMNEY + WIDE + (being('chimney/meets-ridge', False),)
    divisor, height = ask.numbers['cricket-height']['divisor'], None
    if survey.has('chimney/width', 'roof/slope'):
        height = rules.Expression(('chimney/width', 'roof/slope'), lambda point: Fraction(
            point['chimney/width'] * point['roof/slope'], RATIO_ONE) / divisor)
    return [ask.seen('cricket', 'cricket/present', 'is', True, off_ridge),
            ask.row('cricket-height', 'cricket/height', 'at-least', height,
                    off_ridge + (being('cricket/present', True),))]


def factory(ask, edition):
    # What carries no label has no listing to read.
    labelled = FACTORY + (being('listing/label', 'listed'),)
    rows = [ask.seen('listing-plate', 'listing/label', 'is', 'listed', FACTORY),
            ask.listed('factory-hearth-front', 'hearth/front', 'listing/hearth-front', labelled),
            ask.listed('factory-hearth-side', 'hearth/left', 'listing/hearth-side', labelled),
            ask.listed('factory-hearth-side', 'hearth/right', 'listing/hearth-side', labelled),
            ask.seen('factory-hearth-seen', 'factory/hearth-distinguishable', 'is', True, FACTORY)]
    return rows + factory_chimney(ask, edition)


def factory_chimney(ask, edition):
    """Of any factory-built chimney, a stove's as well; from 2024 its manual comes first."""
    rows = []
    for rule, key, listing in (('factory-chimney-offset', 'flue/slope', 'chimney-offset'),
                               ('factory-chimney-elbows', 'flue/bends', 'chimney-elbows')):
        silent = () if edition < 2024 else (being('factory/manual-silent', True),)
        rows.append(ask.most(rule, key, PARTS + silent))
        if edition >= 2024:
            rows.append(ask.row(rule, key, 'at-most', ask.survey.one('listing/' + listing),
                                PARTS + (being('factory/manual-silent', False),),
                                by_listing=True))
    if edition >= 2018:
        insulated = PARTS + (being('factory/through-insulation', True),)
        rows += [ask.least('insulation-shield-height', 'factory/shield-above-insulation',
                           insulated),
                 ask.least('insulation-shield-steel', 'factory/shield-thickness', insulated)]
    return rows


def residential_air(ask, edition):
    unlisted = SUPPLIED + (being('air/duct-listed', False),)
    level = SUPPLIED if edition == 2012 else SUPPLIED + NO_FACTORY
    rows = [ask.seen('air-intake-place', 'air/intake-place', 'is-not', 'indoors', SUPPLIED),
            ask.seen('air-intake-height', 'air/intake-above-firebox', 'is', False, level),
            ask.near('air-duct-clearance', 'air/duct-clearance', 'air/duct-clearance-at',
                     unlisted)]
    if edition >= 2015:
        rows += [ask.seen('air-intake-height', 'air/intake-above-firebox', 'is', False,
                          FACTORY + UNLISTED + (being('air/duct-state', 'connected'),)),
                 ask.seen('air-outlet-place', 'air/outlet-place', 'is-not', 'elsewhere', SUPPLIED),
                 ask.most('air-outlet-distance', 'air/outlet-distance',
                          SUPPLIED + (being('air/outlet-place', 'hearth-level'),)),
                 ask.seen('air-outlet-closable', 'air/outlet-closable', 'is', True, SUPPLIED),
                 ask.seen('air-outlet-embers', 'air/outlet-embers', 'is', False, SUPPLIED)]
    return rows


# ---- the building code ------------------------------------------------------------------------

@rules.rows_for(*IBC)
def building(survey, numbers, standard):
    ask, edition = Asker(survey, numbers), int(standard[-4:])
    rows = (walls(ask) + clearances(ask) + tops(ask) + linings(ask) + air(ask)
            + [ask.least('throat-above-opening', 'throat/height', MASONRY),
               ask.least('fireblock', 'fireplace/fireblock-depth', MASONRY),
               ask.most('chimney-corner-overlap', 'chimney/corner-overlap', ABUTTED),
               ask.seen('air-intake-place', 'air/intake-place', 'is', 'outdoors', SUPPLIED),
               ask.seen('air-intake-height', 'air/intake-above-firebox', 'is', False, SUPPLIED)])
    if edition >= 2015:
        rows += heaters(ask)
    if edition == 2024:
        rows.append(ask.seen('cricket', 'cricket/present', 'is', True,
                             WIDE + (being('chimney/meets-ridge', False),)))
    return rows + alike(survey, numbers) + building_trim(ask)


def alike(survey, numbers):
    """What the building code asks of a masonry fireplace in the residential code's numbers."""
    rows = (rules.throat_rows(survey, numbers) + rules.rumford_rows(survey, numbers)
            + rules.chamber_rows(survey, numbers) + rules.hearth_rows(survey, numbers)
            + [rules.flue_row(survey, fraction, reading)
               for reading, fraction in rules.flue_fractions(survey, numbers['flue-area'])])
    return rules.of_masonry(survey, [each for each in rows if each.rule != 'throat-above-lintel'])


def building_trim(ask):
    rows = []
    if ask.survey.trim is None:
        return [ask.row(rule, 'trim', relation, None,
                        MASONRY + (NO_CONTACT if rule == 'trim-abutting' else ()), 'length')
                for rule, relation in (('trim-abutting', 'at-least'), ('trim-distance', 'at-least'),
                                       ('trim-projection', 'at-most'),
                                       ('trim-side-clearance', 'at-least'))]
    for index in range(ask.survey.trim):
        rows += piece(ask, f'trim/{index}')
    return rows


def piece(ask, item):
    burns = MASONRY + (being(f'{item}/combustible', True),)
    on_face = burns + (being(f'{item}/place', 'on-face'),)
    abutting = burns + (being(f'{item}/place', 'abutting'),)
    distance, projection = f'{item}/distance', f'{item}/projection'
    named, beside = ask.numbers['trim-side-clearance'], None
    if ask.survey.has(projection):
        beside = rules.Expression((projection,), lambda point: named['limit'] + (
            point[projection] if point[projection] > named['projecting'] else 0))
    return [ask.least('trim-abutting', f'{item}/lining-distance', abutting + NO_CONTACT),
            ask.least('trim-distance', distance, on_face),
            ask.row('trim-projection', projection, 'at-most',
                    rules.taper(ask.survey, ask.numbers['trim-projection'], distance),
                    on_face + (being(f'{item}/side', 'above'),)),
            ask.row('trim-side-clearance', distance, 'at-least', beside,
                    on_face + (not_being(f'{item}/side', 'above'),))]


# ---- what differs by edition ------------------------------------------------------------------

rules.NUMBERS.update(NUMBERS)
rules.DIMENSIONS.update(DIMENSIONS)
rules.QUANTITIES.update(QUANTITIES)
rules.DEFAULTS.update(DEFAULTS)
rules.FILLING.update(FILLING | {'chimney.construction': 'masonry'})
rules.TOLD['chimney/construction'] = construction
rules.MARKS.update({'nearby.distance': ('chimney-height-nearby', 'within'),
                    'air.duct-clearance-at': ('air-duct-clearance', 'within')})
rules.ORDINARY += ('heater-clearance',)
rules.EXCEPTION += ('thick-heater-clearance', 'thick-heater-wall', 'thick-heater-channel',
                    'thick-heater-ceiling')
for each_edition in ('2015', '2018', '2021', '2024'):
    rules.OTHER_NUMBERS.setdefault(f'irc-{each_edition}', {})['chimney-trim-abutting'] = {
        'limit': 8 * IN}
rules.OTHER_NUMBERS['irc-2024']['chimney-wall-contact'] = {'limit': 8 * IN}
