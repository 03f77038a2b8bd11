# SPDX-License-Identifier: MIT
"""What rules of England, Germany, France, Australia, New Zealand and the Philippines ask.

Written apart from the library, with exact fractions. Where each number is from:

- Approved Document J 2010: Tables 1 and 2, 2.7, 2.8, Diagrams 17, 18, 21, 24 to 28 (cited; four
  bends, 1000 mm of Diagram 17 B, several open sides and airtight houses without stabiliser from
  memory); NHBC 6.8.6 to 6.8.9, 6.8.18, 6.8.22; NHBC 2011 Appendix 6.8-A; for the stack, the flue
  pipe and alarms common practice
- Brandenburg FeuV 4(8); MuFeuV 8 (cited), radiation 80 cm (cited) and 40 cm (common practice);
  1. BImSchV 19(1) of 2010
- Arretes of 22 October 1969, art. 6, 18, and 25 June 1980, CH 48; DTU 24.2 P1-1 5.1.1 (cited)
- ABCB Housing Provisions 2022, 12.4, 13.4.2; AS/NZS 2918:2001, 3.3, Tables 3.1, 3.2, Figure 4.9
  (cited); National Building Code of the Philippines, 1211
"""
from collections import namedtuple
from fractions import Fraction

import amounts
from amounts import DEGREE, KILOWATT

MM, M = amounts.NM_PER_MM, 1000 * amounts.NM_PER_MM
MM2, M2 = MM * MM, M * M

OUTSIDE = 'nothing is printed'
BY_LISTING = 'the listing decides'

# `when` are (key, comparison, value); `required` is a function of a reading of the survey, whose
# result is an amount, a state, None for no limit, OUTSIDE or BY_LISTING; `marks` are (key, amount)
# at which it steps.
Rule = namedtuple('Rule', 'id key relation required when marks role option',
                  defaults=((), (), None, None))
# The appliance's own listing comes before any rule on these matters: where its figure is recorded.
LISTINGS = {
    **dict.fromkeys(('insert-hearth-front', 'floor-protection-front', 'factory-hearth-front',
                     'floor-protection-before-body'), 'listing/hearth-front'),
    **dict.fromkeys(('insert-body-side', 'floor-protection-side', 'factory-hearth-side',
                     'floor-protection-beside-body'), 'listing/hearth-side'),
    'floor-protection-behind-body': 'listing/hearth-back',
    **dict.fromkeys(('stove-clearance', 'stove-clearance-reduced'), 'wall/by-listing'),
    'insert-smoke-chamber': 'listing/smoke-chamber-wall',
}


# ---- how rules are written -----------------------------------------------------------------------

def limit(amount):
    return lambda get: amount


def at_least(rule, key, amount, *when, **more):
    return Rule(rule, key, 'at-least', limit(amount), when, **more)


def at_most(rule, key, amount, *when, **more):
    return Rule(rule, key, 'at-most', limit(amount), when, **more)


def state(rule, key, relation, wanted, *when):
    return Rule(rule, key, relation, limit(wanted), when)


def share(rule, key, source, fraction, *when, relation='at-least'):
    return Rule(rule, key, relation, lambda get: get(source) * Fraction(fraction), when)


def within(rule, key, amount, source, reach, *when):
    return Rule(rule, key, 'at-least', lambda get: amount if get(source) <= reach else None, when,
                ((source, reach),))


def kind(word):
    return ('appliance/kind', 'is', word)


def layers(word):
    return ('wall/shield-layers', 'is', word)


OPEN, STOVE, INSERT = kind('masonry-fireplace'), kind('stove'), kind('insert')
SCREEN = ('wall/shield-layers', 'is not', 'none')
ROUND, SIDED = ('flue/shape', 'is', 'round'), ('flue/shape', 'is not', 'round')


# ---- England -------------------------------------------------------------------------------------

ONE_SIDE, MORE_SIDES = ('opening/exposure', 'is', 'front'), ('opening/exposure', 'is', 'more-sides')
NARROW, WIDE = ('opening/width', '<=', 500 * MM), ('opening/width', '>', 500 * MM)
LOW, HIGH = ('opening/height', '<=', 550 * MM), ('opening/height', '>', 550 * MM)
LARGE = ((WIDE, ONE_SIDE), (NARROW, HIGH, ONE_SIDE))
ORDINARY_ROOF = ('house/easily-ignited-roof', 'is', False)
THATCH = ('house/easily-ignited-roof', 'is', True)
NEAR, AWAY = ('outlet/to-ridge', '<=', 600 * MM), ('outlet/to-ridge', '>', 600 * MM)
RECESS, FREE = ('hearth/in-recess', 'is', True), ('hearth/in-recess', 'is', False)
NEAR_FLUE = ('separation/from-flue', '<', 200 * MM)


def by_heat(first, more, source='appliance/output', begins=5):
    """mm2 for each of the first kW, and for each kW above them."""
    def required(get):
        heat = get(source)
        low, high = min(heat, begins * KILOWATT), max(0, heat - begins * KILOWATT)
        return Fraction(first * MM2 * low + more * MM2 * high, KILOWATT)
    return required


def stove_flue(small, large):
    def required(get):
        heat = get('appliance/output')
        if heat > 50 * KILOWATT:
            return OUTSIDE
        return (small if heat <= 30 * KILOWATT else large) * MM
    return required


OUTPUTS = (('appliance/output', 30 * KILOWATT), ('appliance/output', 50 * KILOWATT))


def vents():
    for stabiliser, tight, first, more in ((True, False, 300, 850), (True, True, 850, 850),
                                           (False, False, 0, 550), (False, True, 550, 550)):
        yield Rule('room-vent-area', 'vent/area', 'at-least', by_heat(first, more),
                   (STOVE, ('flue/draught-stabiliser', 'is', stabiliser),
                    ('house/airtight', 'is', tight)))


def below_hearth():
    return [at_least('hearth-timber-below', 'hearth/timber-below', 250 * MM, OPEN, role='ordinary'),
            at_least('hearth-timber-air-space', 'hearth/timber-air-space', 50 * MM, OPEN,
                     role='exception')]


DOCUMENT_J = [
    at_least('flue-diameter', 'flue/diameter', 200 * MM, OPEN, NARROW, LOW, ONE_SIDE, ROUND),
    at_least('flue-area', 'flue/net-area', 31416 * MM2, OPEN, NARROW, LOW, ONE_SIDE, SIDED),
    at_least('flue-shorter-side', 'flue/shorter-side', 175 * MM, OPEN, NARROW, LOW, ONE_SIDE,
             SIDED),
    *[share('flue-area', 'flue/net-area', 'opening/area', '15/100', OPEN, *where)
      for where in LARGE],
    share('flue-area', 'flue/net-area', 'opening/total-area', '15/100', OPEN, MORE_SIDES),
    *[at_least('flue-shorter-side', 'flue/shorter-side', 200 * MM, OPEN, SIDED, *where)
      for where in (*LARGE, (MORE_SIDES,))],
    Rule('flue-diameter', 'flue/diameter', 'at-least', stove_flue(150, 175), (STOVE, ROUND),
         OUTPUTS),
    Rule('flue-shorter-side', 'flue/shorter-side', 'at-least', stove_flue(125, 150),
         (STOVE, SIDED), OUTPUTS),
    at_least('flue-diameter', 'flue/diameter', 125 * MM, kind('pellet-stove'), ROUND),
    at_least('flue-height', 'flue/height', 4500 * MM, OPEN),
    at_most('flue-bends', 'flue/bends', 4, OPEN),
    at_least('outlet-above-ridge', 'outlet/above-ridge', 600 * MM, ORDINARY_ROOF, NEAR),
    at_least('outlet-from-roof', 'outlet/from-roof', 2300 * MM, ORDINARY_ROOF, AWAY),
    at_least('outlet-above-roof', 'outlet/above-roof', 1000 * MM, ORDINARY_ROOF, AWAY,
             ('outlet/reaches-ridge', 'is', False)),
    within('outlet-above-window', 'window/outlet-above', 1000 * MM, 'window/distance', 2300 * MM),
    within('outlet-above-neighbour', 'neighbour/outlet-above', 600 * MM, 'neighbour/distance',
           2300 * MM),
    at_least('outlet-above-ridge', 'outlet/above-ridge', 600 * MM, THATCH, NEAR),
    at_least('outlet-above-roof', 'outlet/above-roof', 1800 * MM, THATCH),
    at_least('outlet-from-roof', 'outlet/from-roof', 2300 * MM, THATCH, AWAY),
    at_least('hearth-front', 'hearth/front', 500 * MM, OPEN, RECESS),
    at_least('hearth-side', 'hearth/left', 150 * MM, OPEN, RECESS),
    at_least('hearth-side', 'hearth/right', 150 * MM, OPEN, RECESS),
    at_least('hearth-plan', 'hearth/plan-width', 840 * MM, FREE),
    at_least('hearth-plan', 'hearth/plan-depth', 840 * MM, FREE),
    at_least('hearth-thickness', 'hearth/thickness', 125 * MM, OPEN),
    *below_hearth(),
    at_least('hearth-clear-front', 'hearth/clear-front', 300 * MM, OPEN),
    at_least('hearth-clear-front', 'hearth/clear-front', 225 * MM, STOVE),
    *[at_least('hearth-clear-side', f'hearth/clear-{side}', 150 * MM, which)
      for which in (OPEN, STOVE) for side in ('left', 'right')],
    state('hearth-edge-marked', 'hearth/edge-marked', 'is', True, OPEN),
    at_least('firebox-wall', 'firebox/wall-thickness', 200 * MM, OPEN),
    at_least('separation-from-chimney', 'chimney/clearance', 40 * MM, OPEN, NEAR_FLUE),
    share('room-vent-area', 'vent/area', 'throat/area', '1/2', OPEN,
          ('throat/present', 'is', True)),
    share('room-vent-area', 'vent/area', 'flue/net-area', '1/2', OPEN,
          ('throat/present', 'is', False)),
    *vents(),
]
NHBC = [
    at_least('flue-height', 'flue/height', 4500 * MM, OPEN),
    at_most('flue-slope', 'flue/slope', 45 * DEGREE, OPEN),
    at_most('flue-bends', 'flue/bends', 2, OPEN),
    at_least('chimney-wall', 'chimney/wall-thickness', 100 * MM, OPEN,
             ('house/flue-in-party-wall', 'is', False)),
    at_least('chimney-wall', 'chimney/wall-thickness', 200 * MM, OPEN,
             ('house/flue-in-party-wall', 'is', True)),
    at_least('separation-from-chimney', 'chimney/clearance', 40 * MM, OPEN, NEAR_FLUE),
    at_least('separation-from-fixings', 'separation/fixings', 50 * MM, OPEN),
    at_least('cap-projection', 'cap/projection', 50 * MM, OPEN),
    Rule('room-vent-area', 'vent/area', 'at-least', by_heat(0, 500, 'gas/input', 7),
         (*[('gas/appliance', 'is not', each) for each in ('none', 'log-set', 'log-lighter')],
          ('gas/vent', 'is', 'chimney'))),
    state('hearth-edge-marked', 'hearth/edge-marked', 'is', True, OPEN),
    *below_hearth(),
]
NHBC_2011 = [
    share('room-vent-area', 'vent/area', 'throat/area', '1/2', OPEN,
          ('appliance/fuel', 'is', 'wood'), ('throat/present', 'is', True)),
    at_least('room-vent-area', 'vent/area', 10000 * MM2, ('appliance/fuel', 'is', 'gas'),
             ('gas/appliance', 'is', 'log-set'), ('throat/present', 'is', True)),
    at_least('room-vent-aperture', 'vent/aperture', 5 * MM, OPEN),
]
ALARM = ('co-alarm/place', 'is not', 'none')
PRACTICE_ENGLAND = [
    share('chimney-slenderness', 'chimney/height-above-roof', 'outlet/stack-width', '4.5', OPEN,
          relation='at-most'),
    share('separation-from-flue-pipe', 'separation/flue-pipe', 'separation/pipe-diameter', 3,
          STOVE),
    state('co-alarm-in-room', 'co-alarm/place', 'is-not', 'none'),
    at_least('co-alarm-from-wall', 'co-alarm/from-wall', 300 * MM,
             ('co-alarm/place', 'is', 'ceiling')),
    at_least('co-alarm-below-ceiling', 'co-alarm/below-ceiling', 150 * MM,
             ('co-alarm/place', 'is', 'wall')),
    at_least('co-alarm-distance', 'co-alarm/distance', 1 * M, ALARM),
    at_most('co-alarm-distance-most', 'co-alarm/distance', 3 * M, ALARM),
]

# ---- Germany and France --------------------------------------------------------------------------

BRANDENBURG = [
    at_least('hearth-front', 'hearth/front', 500 * MM, OPEN),
    at_least('hearth-side', 'hearth/left', 300 * MM, OPEN),
    at_least('hearth-side', 'hearth/right', 300 * MM, OPEN),
]
MUFFEUV = [
    at_least('separation-from-timber', 'separation/timber', 20 * MM, OPEN),
    at_least('separation-from-chimney', 'chimney/clearance', 50 * MM, OPEN),
    at_least('separation-from-flue-pipe', 'separation/flue-pipe', 200 * MM, STOVE),
    at_least('radiation-distance', 'radiation/distance', 800 * MM, OPEN,
             ('radiation/shield', 'is', False)),
    at_least('radiation-distance', 'radiation/distance', 400 * MM, OPEN,
             ('radiation/shield', 'is', True)),
]
PITCH = 'house/roof-pitch'
BIMSCHV = [
    at_least('outlet-above-ridge', 'outlet/above-ridge', 400 * MM, role='ordinary'),
    at_least('outlet-off-roof', 'outlet/off-roof', 1 * M, (PITCH, '<=', 20 * DEGREE),
             role='exception'),
    at_least('outlet-from-roof', 'outlet/from-roof', 2300 * MM, (PITCH, '>', 20 * DEGREE),
             role='exception'),
    within('outlet-above-window', 'window/outlet-above', 1 * M, 'window/distance', 15 * M),
]
CAP, NO_CAP = (('outlet/anti-downdraught-cap', 'is', each) for each in (True, False))
NEAR_8_M, FLAT = ('nearby/distance', '<', 8 * M), (PITCH, '<', 15 * DEGREE)
ARRETE_1969 = [
    share('flue-sides-ratio', 'flue/longer-side', 'flue/shorter-side', '1.6', SIDED,
          relation='at-most'),
    at_least('chimney-height-nearby', 'nearby/top-above', 400 * MM, NO_CAP, NEAR_8_M),
    at_least('chimney-height-nearby', 'nearby/top-above', 400 * MM, CAP, (PITCH, '<=', 15 * DEGREE),
             NEAR_8_M),
    state('outlet-reaches-ridge', 'outlet/reaches-ridge', 'is', True, CAP,
          (PITCH, '>', 15 * DEGREE)),
    at_least('outlet-above-roof', 'outlet/above-roof', 1200 * MM, FLAT),
    at_least('outlet-above-parapet', 'outlet/above-parapet', 1 * M, FLAT,
             ('outlet/parapet', 'is', True)),
]
ARRETE_1980 = [
    at_least('floor-protection-front', 'floor/door-front', 300 * MM, STOVE),
    at_least('floor-protection-side', 'floor/door-left', 300 * MM, STOVE),
    at_least('floor-protection-side', 'floor/door-right', 300 * MM, STOVE),
    at_least('stove-clearance', 'wall/clearance', 500 * MM, STOVE, layers('none')),
    at_least('stove-clearance-reduced', 'wall/clearance', 250 * MM, STOVE, SCREEN),
    at_least('shield-air-space', 'wall/air-space', 50 * MM, STOVE, SCREEN),
]
DTU = [Rule('room-vent-area', 'vent/area', 'at-least',
            lambda get: max(get('flue/net-area') / Fraction(4), 20000 * MM2), (OPEN,))]

# ---- Australia, New Zealand, Philippines ---------------------------------------------------------

ABCB = [
    *[at_least(rule, key, most * MM, which) for which in (OPEN, INSERT)
      for rule, key, most in (('hearth-front', 'hearth/front', 300),
                              ('hearth-side', 'hearth/left', 150),
                              ('hearth-side', 'hearth/right', 150))],
    state('hearth-slopes-away', 'hearth/slopes-away', 'is', False, OPEN),
    at_least('hearth-timber-below', 'hearth/timber-below', 150 * MM, OPEN),
    at_least('firebox-masonry', 'firebox/masonry-thickness', 180 * MM, OPEN),
    at_least('chimney-parging', 'chimney/parging', 10 * MM, OPEN),
    within('chimney-height-nearby', 'nearby/top-above', 300 * MM, 'nearby/distance', 3600 * MM,
           OPEN),
    at_least('footing-projection', 'footing/projection', 300 * MM, OPEN),
    at_least('stove-clearance', 'wall/clearance', 1200 * MM, STOVE, layers('none')),
    at_least('floor-protection-before-body', 'floor/front', 400 * MM, STOVE),
    at_least('floor-protection-beside-body', 'floor/left', 400 * MM, STOVE),
    at_least('floor-protection-beside-body', 'floor/right', 400 * MM, STOVE),
    state('damper-closes', 'damper/state', 'is', 'working', OPEN),
]
RIDGE_3_M, NO_RIDGE_3_M = ('outlet/to-ridge', '<=', 3 * M), ('outlet/to-ridge', '>', 3 * M)
GAP = 'wall/air-space'


AS_NZS_2918 = [
    at_least('floor-protection-front', 'floor/door-front', 300 * MM, STOVE),
    at_least('floor-protection-side', 'floor/door-left', 200 * MM, STOVE),
    at_least('floor-protection-side', 'floor/door-right', 200 * MM, STOVE),
    *[share('stove-clearance-reduced', 'wall/clearance', 'wall/unprotected', factor, STOVE, *where)
      for factor, where in (
          ('0.40', (layers('one'), (GAP, '>=', 12 * MM), (GAP, '<', 25 * MM))),
          ('0.30', (layers('one'), (GAP, '>=', 25 * MM))),
          ('0.20', (layers('two'), (GAP, '>=', 12 * MM))))],
    at_least('outlet-above-ridge', 'outlet/above-ridge', 600 * MM, STOVE, RIDGE_3_M),
    at_least('outlet-above-roof', 'outlet/above-roof', 1000 * MM, STOVE, NO_RIDGE_3_M),
    at_least('outlet-from-roof', 'outlet/from-roof', 3 * M, STOVE, NO_RIDGE_3_M),
]
PHILIPPINES = [at_least('chimney-wall', 'chimney/wall-thickness', 100 * MM, OPEN)]

STANDARDS = {
    'adj-2010': DOCUMENT_J, 'nhbc-2020': NHBC, 'nhbc-2011': NHBC_2011,
    'common-practice-england': PRACTICE_ENGLAND,
    'brandenburg-feuv': BRANDENBURG, 'muffeuv': MUFFEUV, 'bimschv-2010': BIMSCHV,
    'arrete-1969': ARRETE_1969, 'arrete-1980': ARRETE_1980, 'dtu-24-2': DTU, 'abcb-2022': ABCB,
    'as-nzs-2918-2001': AS_NZS_2918, 'nbc-philippines': PHILIPPINES,
}
