# SPDX-License-Identifier: MIT
"""What rules of Canada ask, written apart from the library as abroad_rules.py says.

Where each number is from:

- Ontario Building Code 2012: 9.21.1 to 9.21.5 (chimneys) with Tables 9.21.2.5.A and B (flues),
  9.22.1 to 9.22.10 (fireplaces), 9.20.5.2 and its Table A (lintels)
- National Building Code, 2023 Alberta Edition: Table 9.21.2.5.A; 9.21.4.7 to 9.21.4.9 (cited)
- British Columbia Building Code 2012: Table 9.21.2.5.A
- National Building Code of Canada, edition not stated: 9.22.3.1
- CAN/CSA-A405 5.3.6, CSA B365 and its Table 4 of 1991, CMHC guidance (all cited)
- common practice of Canada, no publication
"""
from fractions import Fraction
from math import ceil, floor

import rules
from abroad_rules import (BY_LISTING, CHIMNEY, INSERT, M2, MM, OR_UNKNOWN, OUTSIDE, STOVE, M, Rule,
                          at_least, at_most, in_scope, kind, kinds, share, state, usual,
                          usual_if_labelled, within)
from amounts import DEGREE, KILOWATT

# A liner of steel may be in a masonry fireplace.
OPEN = kinds('masonry-fireplace', 'steel-fireplace-unit')
ROUND = ('flue/shape', 'is', 'round')
SIDED = (('flue/shape', 'is not', 'round'), ('flue/shape', 'is not', 'oval'))
OVAL = ('flue/shape', 'is', 'oval')


def no_kind(*words):
    return tuple(('appliance/kind', 'is not', word) for word in words)


def yes(key):
    return (key, 'is', True)


def no(key):
    return (key, 'is', False)


# ---- tables and steps ----------------------------------------------------------------------------

UPPER = [Fraction(each) for each in ('0.150 0.250 0.350 0.500 0.650 0.800 1.00 1.20 1.40 1.60 1.80 '
                                     '2.00 2.20').split()]
HEIGHTS = [Fraction(each) for each in '4.5 5.9 8.9 12'.split()]
ROUND_FLUES = [line.split() for line in '''
110/170 100/160 90/150 90/150
150/210 130/190 130/190 120/180
180/240 160/220 150/210 140/200
220/280 200/260 190/250 170/230
260/320 230/290 220/280 200/260
290/350 260/320 240/300 220/280
330/390 290/350 270/330 250/310
360/420 320/380 300/360 270/330
390/450 350/410 330/390 300/360
420/480 380/440 350/410 320/380
none 400/460 370/430 340/400
none none 400/460 360/420
none none none 380/440'''.strip().splitlines()]
RECTANGULAR_FLUES = [line.split() for line in '''
200x200/200x200 100x200/100x200 100x200/100x200 100x200/100x200
200x200/200x200 200x200/200x200 200x200/200x200 200x200/200x200
200x300/200x300 200x200/200x300 200x200/200x200 200x200/200x200
300x300/300x300 200x300/200x300 200x300/200x300 200x200/200x300
300x300/300x400 300x300/300x300 300x300/300x300 200x300/200x300
300x400/300x400 300x300/300x400 300x300/300x300 300x300/300x300
400x400/400x400 300x400/300x400 300x400/300x400 300x300/300x300
400x400/400x400 400x400/400x400 300x400/300x400 300x400/300x400
none 400x400/400x400 400x400/400x400 300x400/300x400
none none 400x400/400x400 400x400/400x400
none none none 400x400/400x400
none none none 400x400/400x400'''.strip().splitlines()]


def row_of(area, rounded, count):
    """Which row an area in nm2 belongs to; rounding is to 3 decimals below 1.00 m2, else to 2."""
    exact = Fraction(area, M2)
    if rounded:
        digits = 1000 if exact < 1 else 100
        exact = Fraction(floor(exact * digits + Fraction(1, 2)), digits)
    return next((row for row, upper in enumerate(UPPER[:count]) if exact <= upper), None)


def column_of(height):
    if height < 3 * M:
        return None
    return next((place for place, most in enumerate(HEIGHTS) if height <= most * M), None)


def flue_cell(table, part, side, rounded):
    """A cell: `part` 0 for the least, 1 for the greatest; `side` 0 or 1 of a rectangular size."""
    def required(get):
        area, height = get.pair('opening/area', 'flue/height')
        row, column = row_of(area, rounded, len(table)), column_of(height)
        cell = 'none' if row is None or column is None else table[row][column]
        if cell == 'none':
            return OUTSIDE
        sides = sorted(int(each) for each in cell.split('/')[part].split('x'))
        return sides[side] * MM
    return required


def flue_rows(rule, key, relation, table, part, side, shape):
    gap = {False: 0, True: 1}
    for rounded, option in ((False, 'upper-limits'), (True, 'rounded')):
        marks = tuple(('opening/area', int((upper + gap[rounded] * Fraction(5, 10000 if upper < 1
                                                                             else 1000)) * M2))
                      for upper in UPPER[:len(table)])
        marks += tuple(('flue/height', int(most * M)) for most in [3, *HEIGHTS])
        yield Rule(rule, key, relation, flue_cell(table, part, side, rounded), (OPEN, *shape),
                   marks, option=('area-rows', option))


def round_flues():
    return [each for part, relation, more in ((0, 'at-least', ''), (1, 'at-most', '-most'))
            for each in flue_rows(f'flue-diameter{more}', 'flue/diameter', relation, ROUND_FLUES,
                                  part, 0, (ROUND,))]


def rectangular_flues():
    return [each for side, name in enumerate(('shorter', 'longer'))
            for part, relation, more in ((0, 'at-least', ''), (1, 'at-most', '-most'))
            for each in flue_rows(f'flue-{name}-side{more}', f'flue/{name}-side', relation,
                                  RECTANGULAR_FLUES, part, side, SIDED)]


def raised_hearth(rule, key, trigger_counts):
    """400; 450 when raised; above 300 a further 25 for every 50, begun or whole."""
    for option in ('round-up', 'whole-steps'):
        def required(get, option=option):
            raised = get('hearth/firebox-raise')
            if raised < 150 * MM or (raised == 150 * MM and not trigger_counts):
                return 400 * MM
            if raised <= 300 * MM:
                return 450 * MM
            steps = Fraction(raised - 300 * MM, 50 * MM)
            return (450 + 25 * (ceil if option == 'round-up' else floor)(steps)) * MM
        yield Rule(rule, key, 'at-least', required, (OPEN,), option=('hearth-steps', option))


ANGLES = (('1.2', 89, 89, '6.4'), ('1.5', 89, 89, '7.9'), ('1.8', 102, 89, '7.9'),
          ('2.1', 102, 89, '7.9'), ('2.4', 127, 89, '7.9'), ('2.7', 127, 89, '11'),
          ('3.0', 152, 102, '11'))


def angle_rows():
    for place, name in enumerate(('longer-leg', 'shorter-leg', 'angle-thickness'), 1):
        def required(get, place=place):
            span = get('opening/width')
            return next((Fraction(line[place]) * MM for line in ANGLES
                         if span <= Fraction(line[0]) * M), OUTSIDE)
        marks = tuple(('opening/width', int(Fraction(line[0]) * M)) for line in ANGLES)
        yield Rule(f'lintel-{name}', f'lintel/{name}', 'at-least', required,
                   (OPEN, ('lintel/steel-angle', 'is', True)), marks)


def mantel(get):
    return (300 if get('trim/projection') > 38 * MM else 150) * MM


def round_duct(get):
    """The area of a duct of 100 mm; a round one, known by its diameter, is rounded alike."""
    is_round = get.base('air/area') is None and get.base('air/diameter') is not None
    return (rules.circle if is_round else rules.circle_as_requirement)(100 * MM)


# ---- Ontario -------------------------------------------------------------------------------------

MASONRY = ('chimney/construction', 'is', 'masonry')
STOVES = kinds('stove', 'pellet-stove')
APPLIANCES = kinds('stove', 'pellet-stove', 'insert', 'masonry-heater')
INTERIOR, EXTERIOR = ('chimney/place', 'is', 'interior'), ('chimney/place', 'is', 'exterior')
FIREBRICK, STEEL = ('firebox/lining', 'is', 'firebrick'), ('firebox/lining', 'is', 'steel')
COMBUSTIBLE = yes('trim/combustible')
WARM_AIR = yes('warm-air/outlets')
SLAB, ON_FLOOR = no('hearth/on-combustible-floor'), yes('hearth/on-combustible-floor')
SEVERAL = ('chimney/flues', 'is not', 'single')
WOOD = ('appliance/fuel', 'is', 'wood')
FACTORY = kind('factory-built-fireplace')
FIREPLACE = (*no_kind('stove', 'pellet-stove', 'masonry-heater', 'insert'), WOOD)
DUCT = ('air/duct-state', 'is', 'connected')
# 9.21 is about chimneys up to 12 m and outputs up to 120 kW; of others none of it is asked.
SCOPE = (('flue/height', '<=' + OR_UNKNOWN, 12 * M),
         ('appliance/output', '<=' + OR_UNKNOWN, 120 * KILOWATT))
CHIMNEY_921 = (*CHIMNEY, *SCOPE)
SHARED = (APPLIANCES, MASONRY, *SCOPE, WOOD, yes('stove/other-on-flue'))
OWN_CHIMNEY = ('connector/into', 'is', 'masonry-chimney')
OLD_FIREPLACE = ('connector/into', 'is', 'fireplace-chimney')
STAINLESS = ('chimney/liner', 'is', 'stainless')
OUTSIDE_WALL = yes('fireplace/in-exterior-wall')
INSIDE_WALL = no('fireplace/in-exterior-wall')


def firebox_walls():
    chamber = yes('firebox/air-chamber')
    return [
        at_least('firebox-wall', 'firebox/wall-thickness', 190 * MM, OPEN, FIREBRICK,
                 ('firebox/lining-thickness', '<', 51 * MM)),
        at_least('firebox-wall', 'firebox/wall-thickness', 190 * MM, OPEN, STEEL,
                 no('firebox/air-chamber')),
        at_least('firebox-masonry', 'firebox/surround-thickness', 90 * MM, OPEN, STEEL, chamber,
                 no('firebox/hollow-units')),
        at_least('firebox-masonry', 'firebox/surround-thickness', 190 * MM, OPEN, STEEL, chamber,
                 yes('firebox/hollow-units')),
    ]


def sides(rule, keys, amount, *when):
    return [at_least(rule, key, amount, *when) for key in keys]


CHIMNEYS = [
    in_scope('chimney-within-scope', 'flue/height', 12 * M, *CHIMNEY),
    in_scope('output-within-scope', 'appliance/output', 120 * KILOWATT, APPLIANCES, MASONRY),
    share('flue-oval-sides', 'flue/shorter-side', 'flue/longer-side', '2/3', *CHIMNEY_921, OVAL),
    at_most('flue-slope', 'flue/slope', 45 * DEGREE, *CHIMNEY_921),
    state('shared-flue', 'stove/other-on-flue', 'is', False, OPEN, *SCOPE),
    state('connector-open-fireplace', 'connector/into', 'is-not', 'open-fireplace-flue', STOVES,
          *SCOPE),
    state('flue-shared-with-gas', 'flue/shared-with', 'is-not', 'gas', *SHARED),
    state('flue-shared-with-oil', 'flue/shared-with', 'is-not', 'oil', *SHARED,
          no('flue/listed-with-oil')),
    state('flue-lined', 'flue/lining', 'is-not', 'none', *CHIMNEY_921),
    at_least('liner-thickness', 'flue/liner-thickness', Fraction('15.9') * MM, *CHIMNEY_921,
             ('chimney/liner', 'is', 'clay')),
    at_least('liner-thickness', 'flue/liner-thickness', Fraction('0.3') * MM, *CHIMNEY_921,
             STAINLESS),
    *[state('stainless-liner-fuel', 'appliance/fuel', 'is', 'gas', *who, MASONRY, STAINLESS,
           *SCOPE)
      for who in ((OPEN,), (kind('masonry-heater'),), (STOVES, OWN_CHIMNEY))],
    at_least('liner-gap', 'flue/liner-gap', 10 * MM, *CHIMNEY_921),
    state('liner-gap-open', 'flue/liner-gap-filled', 'is', False, *CHIMNEY_921),
    at_least('liner-start', 'chimney/liner-below-inlet', 200 * MM,
             kinds('stove', 'pellet-stove', 'masonry-heater'), MASONRY, *SCOPE),
    at_least('liner-above-cap', 'cap/liner-above', 50 * MM, *CHIMNEY_921),
    at_most('liner-above-cap-most', 'cap/liner-above', 100 * MM, *CHIMNEY_921),
    at_least('chimney-height', 'chimney/height-above-roof', 900 * MM, *CHIMNEY_921),
    within('chimney-height-nearby', 'nearby/top-above', 600 * MM, 'nearby/distance', 3 * M,
           *CHIMNEY_921),
    state('chimney-bracing', 'outlet/stack-braced', 'is', True, *CHIMNEY_921,
          ('chimney/height-above-roof', '>', 3600 * MM)),
    state('chimney-bracing', 'outlet/stack-braced', 'is', True, *CHIMNEY_921,
          ('chimney/height-above-roof', '<=', 3600 * MM), ('outlet/stack-width', '<', 400 * MM)),
    at_least('cap-drip', 'cap/drip', 25 * MM, *CHIMNEY_921),
    *[state('cleanout-present', 'separation/has-cleanout', 'is', True, *who, MASONRY, *SCOPE)
      for who in ((STOVES, OWN_CHIMNEY), (kind('masonry-heater'),))],
    at_least('chimney-wall', 'chimney/wall-thickness', 70 * MM, *CHIMNEY_921),
    at_least('flue-spacing', 'chimney/flue-spacing', 70 * MM, *CHIMNEY_921, SEVERAL,
             no('chimney/firebrick-wythe')),
    at_least('flue-spacing', 'chimney/flue-spacing', 90 * MM, *CHIMNEY_921, SEVERAL,
             yes('chimney/firebrick-wythe')),
    at_least('separation-from-timber', 'separation/timber', 50 * MM, *CHIMNEY_921, INTERIOR),
    at_least('chimney-clearance', 'chimney/clearance', 12 * MM, *CHIMNEY_921, EXTERIOR),
    at_least('separation-of-finish', 'separation/finish', 12 * MM, *CHIMNEY_921),
    at_least('separation-from-cleanout', 'separation/cleanout', 150 * MM, *CHIMNEY_921,
             yes('separation/has-cleanout')),
    at_least('joist-bearing', 'separation/joist-masonry', 290 * MM, *CHIMNEY_921,
             yes('separation/joists-bear')),
]
AIR = [
    state('exterior-air', 'air/duct-state', 'is', 'connected', *FIREPLACE),
    Rule('air-duct-area', 'air/area', 'at-least', round_duct, (*FIREPLACE, DUCT)),
    state('air-intake-place', 'air/intake-place', 'is', 'outdoors', *FIREPLACE, DUCT),
    state('air-duct-noncombustible', 'air/duct-combustible', 'is', False, *FIREPLACE, DUCT),
    *[state(rule, key, 'is', True, *FIREPLACE, DUCT) for rule, key in (
        ('air-outlet-closable', 'air/outlet-closable'),
        ('air-damper-from-room', 'air/damper-from-room'),
        ('air-damper-shows-position', 'air/damper-shows-position'))],
]
ONTARIO = [
    *round_flues(), *rectangular_flues(), *CHIMNEYS, *AIR,
    state('firebox-lined', 'firebox/lining', 'is-not', 'none', OPEN),
    at_least('firebox-lining', 'firebox/lining-thickness', 50 * MM, OPEN, FIREBRICK),
    at_least('firebrick-floor', 'firebox/floor-lining-thickness', 25 * MM, OPEN, FIREBRICK),
    *firebox_walls(),
    at_least('firebox-depth', 'firebox/depth', 300 * MM, OPEN),
    *raised_hearth('hearth-from-facing', 'hearth/from-facing', False),
    *sides('hearth-side', ('hearth/left', 'hearth/right'), 200 * MM, OPEN),
    at_least('hearth-thickness', 'hearth/thickness', 100 * MM, OPEN, SLAB),
    at_least('hearth-edge-thickness', 'hearth/edge-thickness', 50 * MM, OPEN, SLAB),
    at_least('hearth-opening-above-floor', 'hearth/opening-above-floor', 200 * MM, OPEN, ON_FLOOR),
    state('damper-covers-throat', 'damper/covers-throat', 'is', True, OPEN),
    at_most('smoke-chamber-slope', 'smoke-chamber/slope', 45 * DEGREE, OPEN),
    at_least('smoke-chamber-wall', 'smoke-chamber/wall-thickness', 190 * MM, OPEN),
    at_least('smoke-chamber-exposed-back', 'smoke-chamber/exposed-back', 140 * MM, OPEN,
             yes('smoke-chamber/back-exposed')),
    state('listing-plate', 'listing/label', 'is', 'listed', FACTORY),
    at_least('factory-hearth-front', 'hearth/front', BY_LISTING, FACTORY),
    *sides('factory-hearth-side', ('hearth/left', 'hearth/right'), BY_LISTING, FACTORY),
    Rule('trim-distance', 'trim/distance', 'at-least', mantel,
         (OPEN, COMBUSTIBLE, ('trim/side', 'is', 'above')), (('trim/projection', 38 * MM),)),
    at_least('trim-distance', 'trim/distance', 150 * MM, OPEN, COMBUSTIBLE,
             ('trim/side', 'is not', 'above')),
    at_least('metal-through-face', 'separation/metal-at-face', 50 * MM, OPEN,
             yes('separation/metal-through-face')),
    *[at_least('framing-clearance', f'fireplace/{side}-clearance', most * MM, OPEN, place)
      for most, place in ((100, INSIDE_WALL), (50, OUTSIDE_WALL)) for side in ('back', 'side')],
    *[at_least('separation-from-smoke-chamber', 'separation/smoke-chamber', most * MM, OPEN, place)
      for most, place in ((50, INSIDE_WALL), (25, OUTSIDE_WALL))],
    at_least('warm-air-distance', 'warm-air/distance', 300 * MM, OPEN, WARM_AIR,
             ('warm-air/projection', '>=', 38 * MM)),
    at_least('warm-air-distance', 'warm-air/distance', 150 * MM, OPEN, WARM_AIR,
             ('warm-air/projection', '<', 38 * MM)),
    *[each for who in ((INSERT, no('insert/in-factory-built')), (STOVE, OLD_FIREPLACE))
      for each in (at_least('insert-smoke-chamber', 'smoke-chamber/wall-thickness', 190 * MM, *who),
                   state('insert-connection', 'insert/connection', 'is-not', 'none', *who))],
    *sides('lintel-bearing', ('lintel/left', 'lintel/right'), 150 * MM, OPEN, yes('lintel/steel')),
    *angle_rows(),
]

# ---- the others ----------------------------------------------------------------------------------

ALBERTA = [
    *round_flues(),
    state('cleanout-present', 'separation/has-cleanout', 'is', True, *CHIMNEY),
    at_least('chimney-wall', 'chimney/wall-thickness', 75 * MM, *CHIMNEY),
    at_least('flue-spacing', 'chimney/flue-spacing', 75 * MM, *CHIMNEY, SEVERAL,
             no('chimney/firebrick-wythe')),
]
UNITS = ('hearth/build', 'is', 'units')
CSA_A405 = [
    at_least('hearth-overall-depth', 'hearth/overall-depth', 700 * MM, OPEN),
    *raised_hearth('hearth-front', 'hearth/front', True),
    *sides('hearth-side', ('hearth/left', 'hearth/right'), 200 * MM, OPEN),
    at_least('hearth-thickness', 'hearth/thickness', 100 * MM, OPEN, SLAB),
    at_least('hearth-edge-thickness', 'hearth/edge-thickness', 50 * MM, OPEN, SLAB),
    at_least('hearth-opening-above-floor', 'hearth/opening-above-floor', 200 * MM, OPEN, ON_FLOOR),
    at_least('hearth-extension-thickness', 'hearth/extension-thickness', 50 * MM, OPEN, ON_FLOOR,
             ('hearth/build', 'is', 'one-piece')),
    at_least('hearth-extension-thickness', 'hearth/extension-thickness', 50 * MM, OPEN, ON_FLOOR,
             UNITS, ('hearth/unit-thickness', '<', 25 * MM)),
    at_least('hearth-sheet-metal', 'hearth/sheet-metal', Fraction('0.5') * MM, OPEN, ON_FLOOR,
             UNITS, ('hearth/unit-thickness', '>', 25 * MM)),
]
CMHC = [
    share('flue-area', 'flue/net-area', 'opening/area', '1/10', OPEN),
    at_least('flue-shorter-side', 'flue/shorter-side', 200 * MM, OPEN, *SIDED),
]
# Reductions of Table 4, in per cent: at the sides and rear, on top, where brick has none.
REDUCTIONS = {'sheet-metal': (67, 50), 'ceramic-tile': (50, 33), 'tile-on-sheet-metal': (67, 50),
              'brick': (50, None), 'brick-on-sheet-metal': (67, None)}
SHIELDED = ('wall/shield-face', 'is not', 'none')
B365_1991 = [
    *[share('stove-clearance-reduced', 'wall/clearance', 'wall/unprotected',
            Fraction(100 - percent, 100), STOVE, ('wall/shield-face', 'is', face),
            ('wall/surface', 'is', surface))
      for face, both in REDUCTIONS.items() for surface, percent in zip(('wall', 'ceiling'), both)
      if percent is not None],
    *[share('stove-clearance-reduced', 'wall/clearance', 'wall/unprotected', 1, STOVE,
            ('wall/shield-face', 'is', face), ('wall/surface', 'is', 'ceiling'))
      for face, both in REDUCTIONS.items() if both[1] is None],  # none: the whole clearance
    at_least('shield-air-space', 'wall/air-space', 21 * MM, STOVE, SHIELDED),
    *[at_least('shield-metal', 'wall/shield-metal', Fraction('0.33') * MM, STOVE,
               ('wall/shield-face', 'is', face))
      for face in REDUCTIONS if 'metal' in face],
]
B365 = [
    at_least('floor-protection-front', 'floor/door-front', 450 * MM, STOVE),
    *sides('floor-protection-beside-body', ('floor/left', 'floor/right'), 200 * MM, STOVE),
    at_least('floor-protection-behind-body', 'floor/back', 200 * MM, STOVE),
    at_least('space-before-door', 'stove/space-before-door', 1200 * MM, STOVE),
]
LISTED = ('listing/label', 'is', 'listed')
BARE = (('listing/label', 'is not', 'listed'), ('wall/shield-face', 'is', 'none'))
BEHIND = (STOVE, SHIELDED, ('wall/surface', 'is', 'wall'))
# What a shield takes off: practice has no figure.
NO_FIGURE = [Rule('stove-clearance-reduced', 'wall/clearance', 'at-least',
                  lambda get: OUTSIDE, (STOVE, BARE[0], SHIELDED))]
PRACTICE = [
    usual_if_labelled('insert-hearth-front', 'insert/hearth-front', 450 * MM, INSERT),
    *[usual_if_labelled('insert-body-side', key, 200 * MM, INSERT)
      for key in ('insert/body-left', 'insert/body-right')],
    usual('floor-protection-before-body', 'floor/front', 450 * MM, STOVE, LISTED),
    *[usual('floor-protection-beside-body', key, 200 * MM, STOVE, LISTED)
      for key in ('floor/left', 'floor/right')],
    usual('floor-protection-behind-body', 'floor/back', 200 * MM, STOVE, LISTED),
    *[at_least('stove-clearance', 'wall/clearance', most * MM, STOVE, *BARE,
               ('stove/type', 'is', made))
      for most, made in ((1200, 'radiant'), (900, 'circulating'))],
    *NO_FIGURE,
    at_least('shield-air-space', 'wall/air-space', 21 * MM, STOVE, SHIELDED),
    at_least('shield-bottom-gap', 'wall/bottom-gap', 25 * MM, *BEHIND),
    at_most('shield-bottom-gap-most', 'wall/bottom-gap', 75 * MM, *BEHIND),
    at_least('shield-past-sides', 'wall/shield-beside', 450 * MM, *BEHIND),
    at_least('shield-above-stove', 'wall/shield-above', 500 * MM, *BEHIND),
]

STANDARDS = {
    'obc-2012': ONTARIO, 'nbc-ab-2023': ALBERTA, 'bcbc-2012': round_flues(),
    'nbc-canada': firebox_walls(), 'csa-a405': CSA_A405, 'cmhc': CMHC, 'csa-b365': B365,
    'csa-b365-1991': B365_1991, 'common-practice-canada': PRACTICE,
}
