# SPDX-License-Identifier: MIT
"""What rules of England, Ireland, Germany, France, Australia, New Zealand and the Philippines ask.

Written apart from the library, with exact fractions. Where each number is from:

- Approved Document J 2010: Tables 1 and 2, 2.2 to 2.8, Diagrams 17, 18, 21, 24 to 28, walls beside
  hearths (cited; from memory: bends, 1000 mm of Diagram 17 B, several open sides, airtight houses
  without stabiliser, Table 5, vents by width, prefabricated chambers, gather, 75 mm walls); NHBC
  6.8.6 to 6.8.9, 6.8.18, 6.8.22; NHBC 2011 Appendix 6.8-A; for the stack, the flue pipe and alarms
  common practice
- TGD J 2014 section 3; for what is taught in Ireland common practice
- Brandenburg FeuV 4(8); MuFeuV 8 (cited), radiation 80 cm (cited) and 40 cm (common practice), air
  360 and 540 m3 (cited); an old trade rule (from memory); 1. BImSchV 19(1) of 2010
- Arretes of 22 October 1969, art. 5, 6, 18, and 25 June 1980, CH 48; DTU 24.2 P1-1 5.1.1 (cited);
  handbooks (common practice)
- ABCB Housing Provisions 2022, 4.2.18, 12.4, 13.4.2; AS/NZS 2918:2001, 3.3, Tables 3.1, 3.2, Figure
  4.9 (cited); National Building Code of the Philippines, 1211
"""
from fractions import Fraction
from math import ceil

import rules
from abroad_rules import (ANY_FIRE, BY_LISTING, CHIMNEY, CLOSED, IF_KNOWN, INSERT, M2, MM, MM2,
                          NO_GAS, OPEN, OR_UNKNOWN, OUTLET, OUTSIDE, ROUND, SCREEN, SIDED, STOVE, M,
                          Rule, at_least, at_most, kind, kinds, layers, limit, share, state, within)
from amounts import DEGREE, KILOWATT, RATIO_ONE

# ---- England -------------------------------------------------------------------------------------

ONE_SIDE, MORE_SIDES = ('opening/exposure', 'is', 'front'), ('opening/exposure', 'is', 'more-sides')
NARROW, WIDE = ('opening/width', '<=', 500 * MM), ('opening/width', '>', 500 * MM)
LOW, HIGH = ('opening/height', '<=', 550 * MM), ('opening/height', '>', 550 * MM)
LARGE = ((WIDE, ONE_SIDE), (NARROW, HIGH, ONE_SIDE))
ORDINARY_ROOF = ('house/easily-ignited-roof', 'is', False)
THATCH = ('house/easily-ignited-roof', 'is', True)
NEAR, AWAY = ('outlet/to-ridge', '<=', 600 * MM), ('outlet/to-ridge', '>', 600 * MM)
RECESS, FREE = ('hearth/in-recess', 'is', True), ('hearth/in-recess', 'is', False)
PITCH = 'house/roof-pitch'
SLOPING = (PITCH, '>=' + OR_UNKNOWN, 10 * DEGREE)
FLAT_ROOF = (PITCH, '<' + IF_KNOWN, 10 * DEGREE)  # it has no ridge to be near
TABLE_2 = (kinds('stove', 'insert'), NO_GAS)  # pellets have lines of their own


def separations(*when, **more):
    """200 mm from the inside of the flue, or 40 mm from the outer face."""
    return [at_least('separation-from-flue', 'separation/from-flue', 200 * MM, *when,
                     role='ordinary of separations', **more),
            at_least('separation-from-chimney', 'chimney/clearance', 40 * MM, *when,
                     role='exception of separations', **more)]


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
                   (*CLOSED, ('flue/draught-stabiliser', 'is', stabiliser),
                    ('house/airtight', 'is', tight)))


def below_hearth(*when):
    return [at_least('hearth-timber-below', 'hearth/timber-below', 250 * MM, *when,
                     role='ordinary'),
            at_least('hearth-timber-air-space', 'hearth/timber-air-space', 50 * MM, *when,
                     role='exception')]


SMOKY, EXEMPT = (('stove/smoke-exempt', 'is', each) for each in (False, True))
GAS, SOLID = ('appliance/fuel', 'is', 'gas'), ('appliance/fuel', 'is not', 'gas')
FIRE = (OPEN, SOLID)
FIRES = ANY_FIRE[:1]  # with gas as well
OUTPUT = 'appliance/output'
NO_STOVE = ('appliance/kind', 'is not', 'stove')
CHIMNEY_VENT = ('gas/vent', 'is', 'chimney')
IN_REACH, OUT_OF_REACH = (('throat/can-be-measured', 'is', each) for each in (True, False))
HOT, COOL = (('listing/cool-hearth', 'is', each) for each in (False, True))
VENTS = {350: 14500, 400: 16500, 450: 18500, 500: 20500}


def gas(word):
    return ('gas/appliance', 'is', word)


def heat(comparison, kilowatts):
    return (OUTPUT, comparison, kilowatts * KILOWATT)


def circle(diameter, *when):
    return Rule('flue-area-least', 'flue/net-area', 'at-least',
                lambda get: rules.circle_as_requirement(diameter * MM), (*TABLE_2, *when, SIDED))


def stove_flues():
    for where in ((SMOKY,), (EXEMPT, heat('>', 20))):
        yield Rule('flue-diameter', 'flue/diameter', 'at-least', stove_flue(150, 175),
                   (*TABLE_2, *where, ROUND), OUTPUTS)
        yield Rule('flue-shorter-side', 'flue/shorter-side', 'at-least', stove_flue(125, 150),
                   (*TABLE_2, *where, SIDED), OUTPUTS)
        yield circle(150, *where, heat('<=', 30))
    small = (*TABLE_2, EXEMPT, heat('<=', 20))
    yield at_least('flue-diameter', 'flue/diameter', 125 * MM, *small, ROUND)
    for side, bends in ((100, ('flue/bends', '<=', 0)), (125, ('flue/bends', '>', 0))):
        yield at_least('flue-shorter-side', 'flue/shorter-side', side * MM, *small, bends, SIDED)
    yield circle(125, EXEMPT, heat('<=', 20))
    yield circle(175, heat('>', 30), heat('<=', 50))


def gas_fire_flues():
    for where in ((OPEN, gas('log-set'), ONE_SIDE), (NO_STOVE, gas('insert'), CHIMNEY_VENT)):
        yield at_least('flue-diameter', 'flue/diameter', 175 * MM, GAS, *where, NARROW, LOW, ROUND)
        yield at_least('flue-shorter-side', 'flue/shorter-side', 175 * MM, GAS, *where, NARROW, LOW,
                       SIDED)
    radiant = (NO_STOVE, GAS, gas('room-heater'), CHIMNEY_VENT)
    yield at_least('flue-diameter', 'flue/diameter', 125 * MM, *radiant, ROUND)
    yield at_least('flue-shorter-side', 'flue/shorter-side', 125 * MM, *radiant, SIDED)
    for where in LARGE:
        yield share('flue-area', 'flue/net-area', 'opening/area', '15/100', OPEN, GAS,
                    gas('log-set'), *where)
    yield share('flue-area', 'flue/net-area', 'opening/total-area', '15/100', OPEN, GAS,
                gas('log-set'), MORE_SIDES)


def recess(rule, part, thickness, construction, which=ANY_FIRE):
    return at_least(rule, f'recess/{part}-thickness', thickness * MM, *which, RECESS,
                    ('recess/construction', 'is', construction))


WALL_AT, HEARTH_AT = 'adjacent-wall/appliance-distance', 'adjacent-wall/hearth-distance'


def walls_beside():
    """Thickness by where hearth and fire stand, and how far up."""
    touching, apart = (HEARTH_AT, '<=', 0), (HEARTH_AT, '>', 0)
    near = (HEARTH_AT, '<=', 150 * MM)
    reach = (WALL_AT, '<=', 300 * MM)
    for thickness, *where in ((200, touching, (WALL_AT, '<=', 50 * MM)),
                              (75, touching, (WALL_AT, '>', 50 * MM), reach),
                              (75, apart, near)):
        yield at_least('adjacent-wall-thickness', 'adjacent-wall/thickness', thickness * MM, SOLID,
                       *where)
    yield at_least('adjacent-wall-above-appliance', 'adjacent-wall/above-appliance', 300 * MM,
                   SOLID, touching, reach)
    for where in ((touching, reach), (apart, near)):
        yield at_least('adjacent-wall-above-hearth', 'adjacent-wall/above-hearth', 1200 * MM, SOLID,
                       *where)


def by_maker(get):
    stated = get.base('listing/vent-area')
    return BY_LISTING if stated is None else stated


def vent_default(get):
    area = VENTS.get(Fraction(get('opening/width'), MM))
    return OUTSIDE if area is None else area * MM2


DOCUMENT_J = [
    at_least('flue-diameter', 'flue/diameter', 200 * MM, *FIRE, NARROW, LOW, ONE_SIDE, ROUND),
    at_least('flue-area', 'flue/net-area', 31416 * MM2, *FIRE, NARROW, LOW, ONE_SIDE, SIDED),
    at_least('flue-shorter-side', 'flue/shorter-side', 175 * MM, *FIRE, NARROW, LOW, ONE_SIDE,
             SIDED),
    *[share('flue-area', 'flue/net-area', 'opening/area', '15/100', *FIRE, *where)
      for where in LARGE],
    share('flue-area', 'flue/net-area', 'opening/total-area', '15/100', *FIRE, MORE_SIDES),
    *[at_least('flue-shorter-side', 'flue/shorter-side', 200 * MM, *FIRE, SIDED, *where)
      for where in (*LARGE, (MORE_SIDES,))],
    *stove_flues(), *gas_fire_flues(),
    *[at_least('flue-diameter', 'flue/diameter', most * MM, kind('pellet-stove'), ROUND,
               ('listing/small-pellet-flue', 'is', small)) for most, small in ((125, False),
                                                                               (100, True))],
    at_least('flue-height', 'flue/height', 4500 * MM, *FIRE),
    at_least('flue-height', 'flue/height', 4500 * MM, *CLOSED),
    at_most('flue-slope', 'flue/slope', 45 * DEGREE, *ANY_FIRE),
    at_most('flue-bends', 'flue/bends', 4, *ANY_FIRE),
    at_least('outlet-above-ridge', 'outlet/above-ridge', 600 * MM, OUTLET, ORDINARY_ROOF, SLOPING,
             NEAR),
    *[rule for where in ((SLOPING, AWAY), (FLAT_ROOF,)) for rule in (
        at_least('outlet-from-roof', 'outlet/from-roof', 2300 * MM, OUTLET, ORDINARY_ROOF, *where),
        at_least('outlet-above-roof', 'outlet/above-roof', 1000 * MM, OUTLET, ORDINARY_ROOF, *where,
                 role='ordinary of outlets'),
        state('outlet-reaches-ridge', 'outlet/reaches-ridge', 'is', True, OUTLET, ORDINARY_ROOF,
              *where, role='exception of outlets'))],
    at_least('outlet-above-window', 'window/outlet-above', 1000 * MM, OUTLET,
             ('window/distance', '<=', 2300 * MM)),
    at_least('outlet-above-window', 'window/outlet-above', 1000 * MM, OUTLET,
             ('window/distance', '>', 2300 * MM), ('window/outlet-below', 'is', True)),
    within('outlet-above-neighbour', 'neighbour/outlet-above', 600 * MM, 'neighbour/distance',
           2300 * MM, OUTLET),
    at_least('outlet-above-ridge', 'outlet/above-ridge', 600 * MM, OUTLET, THATCH, NEAR),
    at_least('outlet-above-roof', 'outlet/above-roof', 1800 * MM, OUTLET, THATCH),
    at_least('outlet-from-roof', 'outlet/from-roof', 2300 * MM, OUTLET, THATCH, AWAY),
    *[at_least(rule, f'hearth/{part}', least * MM, *which, RECESS)
      for which in (FIRE, CLOSED)
      for rule, part, least in (('hearth-front', 'front', 500), ('hearth-side', 'left', 150),
                                ('hearth-side', 'right', 150))],
    at_least('hearth-plan', 'hearth/plan-width', 840 * MM, NO_GAS, FREE),
    at_least('hearth-plan', 'hearth/plan-depth', 840 * MM, NO_GAS, FREE),
    at_least('hearth-thickness', 'hearth/thickness', 125 * MM, *FIRE),
    at_least('hearth-thickness', 'hearth/thickness', 125 * MM, *CLOSED, HOT),
    at_least('hearth-thickness', 'hearth/thickness', 12 * MM, *CLOSED, COOL),
    *below_hearth(*FIRE), *below_hearth(*CLOSED, HOT),
    at_least('hearth-clear-front', 'hearth/clear-front', 300 * MM, *FIRE),
    *[at_least('hearth-clear-front', 'hearth/clear-front', least * MM, *CLOSED,
               ('stove/doors-open', 'is', used)) for least, used in ((225, False), (300, True))],
    *[at_least(f'hearth-clear-{side}', f'hearth/clear-{side}', 150 * MM, *which,
               (f'hearth/{side}-to-wall', 'is', False))
      for which in (FIRE, CLOSED) for side in ('left', 'right')],
    at_least('hearth-clear-back', 'hearth/clear-back', 150 * MM, *CLOSED, FREE,
             ('hearth/back-to-wall', 'is', False)),
    *[state('hearth-edge-marked', 'hearth/edge-marked', 'is', True, *which)
      for which in (FIRE, CLOSED)],
    at_least('firebox-wall', 'firebox/wall-thickness', 200 * MM, *FIRE,
             ('recess/construction', 'is', 'solid')),
    *[recess(f'recess-{part}', part, 200, 'solid', CLOSED) for part in ('side', 'back')],
    *[recess(rule, part, thick, built) for built in ('back-to-back', 'cavity')
      for rule, part, thick in (('recess-side', 'side', 200), ('recess-back', 'back', 100))],
    *[recess(f'recess-{part}', part, thick, 'prefabricated')
      for part, thick in (('base', 50), ('side', 75), ('back', 100), ('top', 100))],
    state('gather', 'throat/gather', 'is', True, *FIRE),
    *walls_beside(),
    *separations(*CHIMNEY, NO_GAS),
    at_least('separation-from-fixings', 'separation/fixings', 50 * MM, *CHIMNEY, NO_GAS),
    share('room-vent-area', 'vent/area', 'throat/area', '1/2', *FIRE,
          ('throat/present', 'is', True), IN_REACH),
    Rule('room-vent-by-width', 'vent/area', 'at-least', vent_default,
         (*FIRE, ('throat/present', 'is', True), OUT_OF_REACH),
         tuple(('opening/width', width * MM) for width in VENTS)),
    share('room-vent-area', 'vent/area', 'flue/net-area', '1/2', *FIRE,
          ('throat/present', 'is', False)),
    Rule('room-vent-by-maker', 'vent/area', 'at-least', by_maker,
         (SOLID, ('listing/vent-area', '>' + IF_KNOWN, 0))),
    state('room-vent-place', 'vent/in-recess', 'is-not', True, SOLID),
    *vents(),
]
GAS_FIRE, NO_LOGS, NO_LIGHTER = (('gas/appliance', 'is not', each)
                                 for each in ('none', 'log-set', 'log-lighter'))
LOW_FLAME = ('gas/flame-raised', 'is', False)
BACK_BOILER = (GAS_FIRE, NO_LIGHTER, ('gas/back-boiler', 'is', True))
STACK = (*CHIMNEY, OUTLET)
NHBC_2020 = [
    at_least('flue-height', 'flue/height', 4500 * MM, OPEN),
    at_most('flue-slope', 'flue/slope', 45 * DEGREE, *FIRES, OUTLET),
    at_most('flue-bends', 'flue/bends', 2, *FIRES, OUTLET),
    *[at_least('chimney-wall', 'chimney/wall-thickness', least * MM, *STACK,
               ('house/flue-in-party-wall', 'is', shared))
      for least, shared in ((100, False), (200, True))],
    *separations(*STACK, option=('nhbc-separation', 'outer-face')),
    at_least('separation-from-flue', 'separation/from-flue', 200 * MM, *STACK,
             option=('nhbc-separation', 'scotland')),
    at_least('separation-from-fixings', 'separation/fixings', 50 * MM, *STACK),
]
NHBC_2022 = [*below_hearth(*FIRE), *below_hearth(*CLOSED, HOT)]
NHBC = [
    at_least('cap-projection', 'cap/projection', 50 * MM, *STACK),
    at_least('cap-drip', 'cap/drip', 30 * MM, *STACK),
    Rule('terminal-built-in', 'cap/terminal-built-in', 'at-least',
         lambda get: max(get('cap/terminal-length') / Fraction(4), 125 * MM),
         (*STACK, ('cap/terminal', 'is', True))),
    at_least('liner-above-cap', 'cap/liner-above', 20 * MM, *STACK, ('cap/terminal', 'is', False)),
    share('room-vent-area', 'vent/area', 'flue/net-area', '1/2', OPEN, NO_GAS,
          ('throat/present', 'is', False)),
    *[Rule('room-vent-area', 'vent/area', 'at-least', by_heat(first, 500, 'gas/input', 7),
           (GAS_FIRE, NO_LOGS, NO_LIGHTER, CHIMNEY_VENT, ('house/airtight', 'is', tight)))
      for first, tight in ((0, False), (500, True))],
    at_least('gas-hearth-thickness', 'hearth/thickness', 12 * MM, GAS_FIRE, NO_LIGHTER, LOW_FLAME,
             ('gas/back-boiler', 'is', False)),
    at_least('gas-base-thickness', 'hearth/thickness', 125 * MM, *BACK_BOILER, role='ordinary'),
    at_least('gas-base-on-supports', 'hearth/thickness', 25 * MM, *BACK_BOILER, role='exception'),
    at_least('gas-base-supports', 'gas/support-height', 25 * MM, *BACK_BOILER, role='exception'),
    *[at_least('gas-clearance', f'gas/{part}-clearance', 75 * MM, GAS_FIRE, NO_LOGS, NO_LIGHTER,
               ('gas/shielded', 'is', False)) for part in ('back', 'side', 'top')],
    *[at_least(rule, f'gas/hearth-{part}', least * MM, gas(fire), LOW_FLAME)
      for fire in ('log-set', 'insert')
      for rule, part, least in (('gas-hearth-front', 'front', 300),
                                ('gas-hearth-side', 'left', 150),
                                ('gas-hearth-side', 'right', 150))],
    state('hearth-edge-marked', 'hearth/edge-marked', 'is', True, *FIRES),
]
LOW_RATE = ('gas/low-clearance-rate', 'is', True)
NHBC_2011 = [
    share('room-vent-area', 'vent/area', 'throat/area', '1/2', OPEN,
          ('appliance/fuel', 'is', 'wood'), ('throat/present', 'is', True)),
    *[at_least('room-vent-area', 'vent/area', 10000 * MM2, GAS, gas('log-set'),
               ('throat/present', 'is', True), *where) for where in (
                   (('gas/low-clearance-rate', 'is', False),),
                   (LOW_RATE, ('gas/input', '>', 7 * KILOWATT)),
                   (LOW_RATE, ('gas/input', '<=', 7 * KILOWATT), ('house/airtight', 'is', True)))],
    share('room-vent-area', 'vent/area', 'flue/net-area', '1/2', GAS, gas('log-set'),
          ('throat/present', 'is', False)),
    at_least('room-vent-aperture', 'vent/aperture', 5 * MM, *FIRES),
    Rule('room-vent-area', 'vent/area', 'at-least', by_heat(0, 550),
         (*CLOSED, ('flue/draught-stabiliser', 'is', False), ('house/airtight', 'is', False))),
    Rule('room-vent-area', 'vent/area', 'at-least', by_heat(0, 500, 'gas/input', 7),
         (GAS, GAS_FIRE, NO_LOGS, NO_LIGHTER, CHIMNEY_VENT, ('house/airtight', 'is', False))),
]


def older_vent(get):
    return 550 * MM2 + Fraction(550 * MM2 * max(0, get(OUTPUT) - 6 * KILOWATT), KILOWATT)


NORTHERN_IRELAND = [Rule('room-vent-area', 'vent/area', 'at-least', older_vent, CLOSED,
                         ((OUTPUT, 6 * KILOWATT),))]
TGD_J = [at_most('gas-fire-input', 'gas/input', 15 * KILOWATT, gas(fire))
         for fire in ('log-set', 'insert')]
PRACTICE_IRELAND = [at_least('hearth-front', 'hearth/front', 500 * MM, OPEN),
                    at_most('opening-height-most', 'opening/height', 550 * MM, OPEN)]
PIPE_SHIELD, BARE_PIPE = (('separation/pipe-shield', 'is', each) for each in (True, False))
ALARM = ('co-alarm/place', 'is not', 'none')
PRACTICE_ENGLAND = [
    share('chimney-slenderness', 'chimney/height-above-roof', 'outlet/stack-width', '4.5', OPEN,
          relation='at-most'),
    share('separation-from-flue-pipe', 'separation/flue-pipe', 'separation/pipe-diameter', 3,
          STOVE, BARE_PIPE),
    *[share(rule, key, 'separation/pipe-diameter', '3/2', STOVE, PIPE_SHIELD) for rule, key in (
        ('flue-pipe-to-shield', 'separation/pipe-to-shield'),
        ('flue-pipe-shield-overlap', 'separation/pipe-shield-overlap'))],
    at_least('flue-pipe-shield-gap', 'separation/pipe-shield-gap', 12 * MM, STOVE, PIPE_SHIELD),
    state('co-alarm-in-room', 'co-alarm/place', 'is-not', 'none'),
    at_least('co-alarm-from-wall', 'co-alarm/from-wall', 300 * MM,
             ('co-alarm/place', 'is', 'ceiling')),
    at_least('co-alarm-below-ceiling', 'co-alarm/below-ceiling', 150 * MM,
             ('co-alarm/place', 'is', 'wall')),
    at_least('co-alarm-distance', 'co-alarm/distance', 1 * M, ALARM),
    at_most('co-alarm-distance-most', 'co-alarm/distance', 3 * M, ALARM),
]

# ---- Germany and France --------------------------------------------------------------------------

BOARDS = ('house/combustible-floor', 'is', True)
BRANDENBURG = [at_least(rule, key, least * MM, *which, BOARDS) for rule, key, least, which in (
    ('hearth-front', 'hearth/front', 500, FIRE), ('hearth-side', 'hearth/left', 300, FIRE),
    ('hearth-side', 'hearth/right', 300, FIRE),
    ('floor-protection-front', 'floor/door-front', 500, (STOVE,)),
    ('floor-protection-side', 'floor/door-left', 300, (STOVE,)),
    ('floor-protection-side', 'floor/door-right', 300, (STOVE,)))]


def above_floor(rule, key, more, least):
    return Rule(rule, key, 'at-least',
                lambda get: max(get('firebox/above-floor') + more * MM, least * MM), (OPEN, NO_GAS),
                (('firebox/above-floor', (least - more) * MM),))


TRADE_RULE = [above_floor('hearth-front', 'hearth/front', 300, 500),
              above_floor('hearth-side', 'hearth/left', 200, 300),
              above_floor('hearth-side', 'hearth/right', 200, 300)]
MUFFEUV = [
    *BRANDENBURG,
    at_least('separation-from-timber', 'separation/timber', 20 * MM, *CHIMNEY),
    at_least('separation-of-others', 'separation/others', 50 * MM, *CHIMNEY),
    *[at_least('separation-from-flue-pipe', 'separation/flue-pipe', least * MM, STOVE,
               ('separation/pipe-insulated', 'is', insulated))
      for least, insulated in ((200, False), (50, True))],
]


def radiation(least, shield):
    return [at_least('radiation-distance', 'radiation/distance', least * MM, which,
                     ('radiation/shield', 'is', shield)) for which in (OPEN, STOVE)]


STATES = [
    *radiation(800, False),
    *[Rule('air-supply', 'air/supply', 'at-least',
           lambda get, each=each: get('opening/area') * Fraction(each * RATIO_ONE, M2),
           (OPEN, NO_GAS, ('air/supply-shared', 'is', shared)))
      for each, shared in ((360, False), (540, True))],
]
PRACTICE_GERMANY = radiation(400, True)


def near_plant(get):
    """15 m, and 2 m more for each further 50 kW begun, up to 40 m."""
    distance, plant = get.pair('window/distance', 'appliance/output')
    further = max(0, ceil(Fraction(plant, 50 * KILOWATT)) - 1)
    return M if distance <= min(15 + 2 * further, 40) * M else None


BIMSCHV = [
    at_least('outlet-above-ridge', 'outlet/above-ridge', 400 * MM, OUTLET, role='ordinary'),
    at_least('outlet-off-roof', 'outlet/off-roof', 1 * M, OUTLET, (PITCH, '<=', 20 * DEGREE),
             role='exception'),
    at_least('outlet-from-roof', 'outlet/from-roof', 2300 * MM, OUTLET, (PITCH, '>', 20 * DEGREE),
             role='exception'),
    Rule('outlet-above-window', 'window/outlet-above', 'at-least', near_plant, (OUTLET,),
         (*[('window/distance', each * M) for each in (*range(15, 40, 2), 40)],
          *[('appliance/output', 50 * each * KILOWATT) for each in range(1, 14)])),
]
CAP, NO_CAP = (('outlet/anti-downdraught-cap', 'is', each) for each in (True, False))
NEAR_8_M, FLAT = ('nearby/distance', '<', 8 * M), (PITCH, '<', 15 * DEGREE)
ARRETE_1969 = [
    share('flue-sides-ratio', 'flue/longer-side', 'flue/shorter-side', '1.6', SIDED,
          relation='at-most'),
    state('flue-uniform', 'flue/uniform', 'is', True),
    state('flue-joint-in-floor', 'flue/joint-in-floor', 'is-not', True,
          ('flue/element-height', '>', 250 * MM)),
    *[at_least('chimney-height-nearby', 'nearby/top-above', 400 * MM, OUTLET, CAP,
               (PITCH, '>', 15 * DEGREE), NEAR_8_M, ('nearby/above-ridge', 'is', above), role=role)
      for above, role in ((True, None), (False, 'ordinary'))],
    at_least('chimney-height-nearby', 'nearby/top-above', 400 * MM, OUTLET, NO_CAP, NEAR_8_M),
    at_least('chimney-height-nearby', 'nearby/top-above', 400 * MM, OUTLET, CAP,
             (PITCH, '<=', 15 * DEGREE), NEAR_8_M),
    state('outlet-reaches-ridge', 'outlet/reaches-ridge', 'is', True, OUTLET, CAP,
          (PITCH, '>', 15 * DEGREE), role='exception'),
    at_least('outlet-above-roof', 'outlet/above-roof', 1200 * MM, OUTLET, FLAT),
    at_least('outlet-above-parapet', 'outlet/above-parapet', 1 * M, OUTLET, FLAT,
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
            lambda get: max(get('flue/net-area') / Fraction(4), 20000 * MM2), (OPEN, NO_GAS))]
HANDBOOKS = [at_least('flue-height', 'flue/height', 4500 * MM, OPEN),
             at_least('radiation-distance', 'radiation/distance', 800 * MM, OPEN),
             at_least('hood-thickness', 'hood/thickness', 2 * MM, OPEN, ('hood/metal', 'is', True))]

# ---- Australia, New Zealand, Philippines ---------------------------------------------------------

WALL = ('wall/surface', 'is', 'wall')
STABLE = ('footing/stable-site', 'is', True)
ABCB = [
    *[at_least(rule, key, most * MM, which) for which in (OPEN, INSERT)
      for rule, key, most in (('hearth-front', 'hearth/front', 300),
                              ('hearth-side', 'hearth/left', 150),
                              ('hearth-side', 'hearth/right', 150))],
    *[state('hearth-slopes-away', 'hearth/slopes-away', 'is', False, which)
      for which in (OPEN, INSERT)],
    *[at_least('hearth-timber-below', 'hearth/timber-below', 150 * MM, which)
      for which in (OPEN, INSERT)],
    state('insert-tested', 'insert/tested-as-heater', 'is', True, INSERT),
    state('insert-flue-skins', 'insert/double-skin-flue', 'is', True, INSERT),
    at_least('insert-flue-clearance', 'insert/flue-clearance', 50 * MM, INSERT),
    state('firebox-leaves', 'firebox/two-leaves', 'is', True, OPEN),
    state('firebox-block-leaf', 'firebox/block-inner-leaf', 'is-not', True, OPEN),
    at_least('firebox-unit-volume', 'firebox/unit-net-volume', RATIO_ONE * 3 // 4, OPEN),
    at_least('firebox-unit-thickness', 'firebox/unit-thickness', 100 * MM, OPEN),
    at_least('firebox-leaves-thickness', 'firebox/leaves-thickness', 180 * MM, OPEN),
    at_least('chimney-parging', 'chimney/parging', 10 * MM, OPEN),
    within('chimney-height-nearby', 'nearby/top-above', 300 * MM, 'nearby/distance', 3600 * MM,
           *FIRES, OUTLET),
    at_least('footing-free-projection', 'footing/free-projection', 300 * MM, OPEN, STABLE),
    *[at_least('footing-thickness', 'footing/thickness', thick * MM, OPEN, STABLE,
               ('house/storeys', 'is', storeys), ('footing/wall-height', '<=', high * MM))
      for thick, storeys, high in ((150, 'one', 4200), (200, 'two', 8000))],
    state('footing-mesh', 'footing/mesh-both-faces', 'is', True, OPEN, STABLE),
    state('footing-in-slab', 'footing/in-slab', 'is', True, OPEN, STABLE),
    at_least('shield-air-space', 'wall/air-space', 25 * MM, STOVE, SCREEN, WALL),
    at_least('shield-from-appliance', 'wall/shield-to-appliance', 50 * MM, STOVE, SCREEN, WALL),
    at_least('shield-above-appliance', 'wall/shield-above-appliance', 600 * MM, STOVE, SCREEN,
             WALL),
    at_least('shield-thickness', 'wall/shield-thickness', 90 * MM, STOVE, SCREEN, WALL,
             ('wall/shield-fire-rated', 'is', False)),
    at_least('stove-clearance', 'wall/clearance', 1200 * MM, STOVE, layers('none'), WALL),
    at_least('floor-protection-before-body', 'floor/front', 400 * MM, STOVE),
    at_least('floor-protection-beside-body', 'floor/left', 400 * MM, STOVE),
    at_least('floor-protection-beside-body', 'floor/right', 400 * MM, STOVE),
    state('damper-closes', 'damper/state', 'is', 'working', OPEN, NO_GAS),
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
          ('0.20', (layers('two'), (GAP, '>=', 12 * MM))),
          (1, (SCREEN, (GAP, '<', 12 * MM))))],
    at_least('outlet-above-ridge', 'outlet/above-ridge', 600 * MM, STOVE, RIDGE_3_M),
    at_least('outlet-above-roof', 'outlet/above-roof', 1000 * MM, STOVE, NO_RIDGE_3_M),
    at_least('outlet-from-roof', 'outlet/from-roof', 3 * M, STOVE, NO_RIDGE_3_M),
    state('floor-protection', 'floor/protection', 'is-not', 'none', STOVE),
    at_least('neighbour-clear', 'neighbour/clear', 3 * M, STOVE,
             ('neighbour/distance', '<=', 3 * M), ('neighbour/outlet-above', '<=', 0)),
]
PRACTICE_AUSTRALIA = [at_least('flue-exit-height', 'flue/above-floor-protector', 4600 * MM, STOVE)]
DWELLING, LOW_HEAT, MEDIUM_HEAT = (('chimney/heat-class', 'is', each)
                                   for each in ('residential', 'low', 'medium'))
PHILIPPINES = [
    *[at_least('chimney-wall', 'chimney/wall-thickness', least * MM, *where) for least, *where in (
        (100, *CHIMNEY, DWELLING, ('chimney/rubble-stone', 'is', False)),
        (300, *CHIMNEY, DWELLING, ('chimney/rubble-stone', 'is', True)),
        (200, LOW_HEAT), (200, MEDIUM_HEAT))],
    at_least('chimney-firebrick', 'chimney/firebrick-thickness', 100 * MM, MEDIUM_HEAT),
    state('chimney-tied-to-floors', 'chimney/tied-to-floors', 'is', True, *CHIMNEY),
]

STANDARDS = {
    'adj-2010': DOCUMENT_J, 'nhbc': NHBC, 'nhbc-2020': NHBC_2020,
    'nhbc-2022': NHBC_2022, 'nhbc-2011': NHBC_2011,
    'nhbc-northern-ireland-2011': NORTHERN_IRELAND, 'common-practice-england': PRACTICE_ENGLAND,
    'tgd-j-2014': TGD_J, 'common-practice-ireland': PRACTICE_IRELAND,
    'brandenburg-feuv': BRANDENBURG, 'muffeuv': MUFFEUV, 'feuv-germany': STATES,
    'common-practice-germany': PRACTICE_GERMANY, 'trade-rule-germany': TRADE_RULE,
    'bimschv-2010': BIMSCHV, 'arrete-1969': ARRETE_1969, 'arrete-1980': ARRETE_1980,
    'dtu-24-2': DTU, 'common-practice-europe': HANDBOOKS, 'abcb-2022': ABCB,
    'as-nzs-2918-2001': AS_NZS_2918, 'common-practice-australia': PRACTICE_AUSTRALIA,
    'nbc-philippines': PHILIPPINES,
}
