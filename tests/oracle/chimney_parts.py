# SPDX-License-Identifier: MIT
"""The oracle's rows for the smaller parts of fireplaces and chimneys, beside those of chimneys.py.

Where each is from (IRC 2012 to 2024, IBC 2012 to 2024, all alike unless an edition is named; the
sections of the IBC stand in brackets):

- R1001.5.1 (2111.6.1): a steel unit's air chamber is ducted indoors
- R1001.7 (2111.8): the lintel cannot burn; R1001.7.1 (2111.8.1): a ferrous damper that opens and
  closes, worked from the room, asked where no gas logs or gas insert stand in the fireplace
- R1001.9: the hearth's support cannot burn, no form is left under it
- R1001.11, R1003.18 (2111.12, 2113.19): the air space is not filled, fireblocking apart; in IRC
  2024 a fireplace's may be filled with what cannot burn
- R1003.5: corbel on a second storey as much as the wall; a course half the unit's height or a third
  of its bed, the lesser
- R1003.7: one wythe, clay lining: the flue is offset no further than to the wall's centre
- R1003.9.1: cap; R1003.9.2 (2113.9.2): arrestor's wire 19 gage galvanized or 24 gage stainless
- R1003.11.4, read in 2018: pellet appliance on a lined flue or a listed vent
- R1003.12 (2113.12): a fireplace's liner from the smoke chamber on, past the walls, its space no
  more than its thickness; R1003.12.2: the space vents nothing else
- R1003.14: flue no less than the connector (2113.15: and half of the others)
- R1003.17 (2113.18): the cleanout's cover cannot burn
- R903.2.2: cricket at the ridge side of any chimney wider than 30 in
"""
from fractions import Fraction

import chimneys
import rules
from chimneys import (BUILT, CHIMNEY, FREE, KIND, MASONRY, NO_FIREPLACE, STEEL, WIDE, Asker, being,
                      not_being)

RATIOS = {'chimney-corbel-second-storey': {'ratio': Fraction(1)},
          'chimney-corbel-course': {'first': Fraction(1, 2), 'second': Fraction(1, 3)},
          'chimney-offset': {'ratio': Fraction(1)}, 'liner-gap-most': {'ratio': Fraction(1)},
          'flue-area-connector': {'ratio': Fraction(1)},
          'flue-area-connectors': {'ratio': Fraction(1, 2)}}
QUANTITIES = {
    'chimney.corbel-course': 'length', 'chimney.unit-height': 'length',
    'chimney.unit-bed-depth': 'length', 'chimney.flue-offset': 'length',
    'chimney.wall-centre': 'length', 'flue.liner-gap': 'length', 'flue.liner-thickness': 'length',
    'connector.diameter': 'length', 'connector.area': 'area', 'connector.others-area': 'area'}
DEFAULTS = {'chimney/corbel-second-storey': False, 'chimney/offset': False,
            'connector/several': False, 'chimney/one-wythe': True}
FILLING = {
    'fireplace.space-fill': 'empty', 'chimney.space-fill': 'empty', 'chimney.cap': 'complete',
    'damper.state': 'working', 'damper.ferrous': True, 'damper.from-room': True,
    'lintel.noncombustible': True, 'hearth.support-noncombustible': True,
    'hearth.form-left': False, 'firebox.air-chamber-ducted': True,
    'spark-arrestor.wire': 'stainless', 'chimney.liner-from-smoke-chamber': True,
    'chimney.liner-past-walls': True, 'chimney.liner-space-vents': False,
    'chimney.pellet-flue': 'lined', 'cleanout.cover-noncombustible': True,
    'gas.appliance': 'none'}

CLAY = (being('chimney/liner', 'clay'),)
NO_GAS_FIRE = (not_being('gas/appliance', 'log-set', 'insert'),)
A_DAMPER = MASONRY + NO_GAS_FIRE + (not_being('damper/state', 'removed'),)
CLOSED = NO_FIREPLACE + (not_being(KIND, 'masonry-heater'),)


def gas_appliance(survey):
    """None, unless gas is the fuel: then something burns it."""
    return None if survey.choices.get('appliance/fuel') == 'gas' else 'none'


def scaled_row(ask, rule, key, source, conditions):
    return ask.row(rule, key, 'at-most',
                   rules.scaled(ask.survey.one(source), ask.numbers[rule]['ratio']), conditions)


def alike(ask):
    """What both codes ask."""
    arrestor = CHIMNEY + (being('spark-arrestor/present', True),)
    return [ask.seen('lintel-material', 'lintel/noncombustible', 'is', True, MASONRY),
            ask.seen('steel-unit-air', 'firebox/air-chamber-ducted', 'is', True, STEEL),
            ask.seen('damper-present', 'damper/state', 'is-not', 'removed', MASONRY + NO_GAS_FIRE),
            ask.seen('damper-metal', 'damper/ferrous', 'is', True, A_DAMPER),
            ask.seen('damper-control', 'damper/from-room', 'is', True, A_DAMPER),
            ask.seen('damper-operable', 'damper/state', 'is', 'working', A_DAMPER),
            ask.seen('spark-arrestor-wire', 'spark-arrestor/wire', 'is-not', 'lighter', arrestor),
            ask.seen('liner-from-smoke-chamber', 'chimney/liner-from-smoke-chamber', 'is', True,
                     MASONRY + BUILT + CLAY),
            ask.seen('liner-top', 'chimney/liner-past-walls', 'is', True, CHIMNEY + CLAY),
            scaled_row(ask, 'liner-gap-most', 'flue/liner-gap', 'flue/liner-thickness',
                       CHIMNEY + CLAY),
            ask.seen('cleanout-cover', 'cleanout/cover-noncombustible', 'is', True, NO_FIREPLACE),
            ask.seen('chimney-space-fill', 'chimney/space-fill', 'is', 'empty',
                     CHIMNEY + FREE['chimney'])]


def connector_area(survey, beside_circle):
    """Stated, or of a circle; beside a flue that is one too, both are cut down alike."""
    if survey.has('connector/area') or not survey.has('connector/diameter'):
        return survey.one('connector/area')
    circle = rules.circle if beside_circle else rules.circle_as_requirement
    return rules.Expression(('connector/diameter',),
                            lambda point: circle(point['connector/diameter']))


def flue_for_connector(ask, *several):
    """Against one connector alone, as the residential code has it of any number of them."""
    survey = ask.survey
    round_flue = not survey.has('flue/net-area') and survey.has('flue/diameter')
    return ask.row('flue-area-connector', 'flue/net-area', 'at-least',
                   rules.scaled(connector_area(survey, round_flue),
                                ask.numbers['flue-area-connector']['ratio']),
                   CLOSED + several, 'area', rules.net_area(survey))


def flue_for_connectors(ask):
    """The largest connector and half of the others."""
    survey, required = ask.survey, None
    first, more = connector_area(survey, False), survey.one('connector/others-area')
    if not survey.has('flue/net-area') and survey.has('flue/diameter'):
        first = connector_area(survey, True)
    if first and more:
        ratio = ask.numbers['flue-area-connectors']['ratio']
        required = rules.Expression(first.keys + more.keys, lambda point: first.value(point)
                                    + ratio * more.value(point))
    return ask.row('flue-area-connectors', 'flue/net-area', 'at-least', required,
                   CLOSED + (being('connector/several', True),), 'area', rules.net_area(survey))


def courses(ask):
    survey, named = ask.survey, ask.numbers['chimney-corbel-course']
    sizes, lesser = ('chimney/unit-height', 'chimney/unit-bed-depth'), None
    if survey.has(*sizes):
        lesser = rules.Expression(sizes, lambda point: min(point[sizes[0]] * named['first'],
                                                           point[sizes[1]] * named['second']))
    corbeled = CHIMNEY + (not_being('chimney/corbel', 'none'),)
    upper = being('chimney/corbel-second-storey', True)
    leaning = CHIMNEY + CLAY + (being('chimney/offset', True), being('chimney/one-wythe', True))
    return [ask.row('chimney-corbel-course', 'chimney/corbel-course', 'at-most', lesser, corbeled),
            scaled_row(ask, 'chimney-corbel-second-storey', 'chimney/corbel-projection',
                       'chimney/corbeled-wall', corbeled + (upper,)),
            scaled_row(ask, 'chimney-offset', 'chimney/flue-offset', 'chimney/wall-centre',
                       leaning)]


@rules.rows_for(*rules.IRC)
def residential(survey, numbers, standard):
    ask, edition = Asker(survey, numbers), int(standard[-4:])
    around, fill = MASONRY + FREE['fireplace'], 'fireplace/space-fill'
    space = (ask.seen('fireplace-space-fill', fill, 'is-not', 'combustible', around)
             if edition == 2024 else ask.seen('fireplace-space-fill', fill, 'is', 'empty', around))
    factory = (being('chimney/construction', 'factory-built'),
               being('chimney/meets-ridge', False)) + WIDE
    rows = alike(ask) + courses(ask) + [
        space, flue_for_connector(ask),
        ask.seen('hearth-support', 'hearth/support-noncombustible', 'is', True, MASONRY),
        ask.seen('hearth-form', 'hearth/form-left', 'is', False, MASONRY),
        ask.seen('chimney-cap', 'chimney/cap', 'is', 'complete', CHIMNEY),
        ask.seen('liner-space', 'chimney/liner-space-vents', 'is', False,
                 CHIMNEY + (not_being('flue/lining', 'none'),)),
        ask.seen('cricket-other-chimney', 'cricket/present', 'is', True, factory)]
    if edition == 2018:
        rows.append(ask.seen('pellet-flue', 'chimney/pellet-flue', 'is-not', 'other',
                             BUILT + (being(KIND, 'pellet-stove'),)))
    return rows


@rules.rows_for(*chimneys.IBC)
def building(survey, numbers, standard):
    ask = Asker(survey, numbers)
    return alike(ask) + [
        ask.seen('fireplace-space-fill', 'fireplace/space-fill', 'is', 'empty',
                 MASONRY + FREE['fireplace']),
        flue_for_connector(ask, being('connector/several', False)), flue_for_connectors(ask)]


rules.NUMBERS.update(RATIOS)
rules.QUANTITIES.update(QUANTITIES)
rules.DEFAULTS.update(DEFAULTS)
rules.FILLING.update(FILLING)
rules.TOLD['gas/appliance'] = gas_appliance
