# SPDX-License-Identifier: MIT
"""What is local, older or of the trade in the oracle for stoves and inserts.

Where each number is from:

- New York City Administrative Code 27-848.08, 27-870
- Newburgh Heights 1343.09; OAC 3701-33-09; Missouri Weatherization Field Guide; Lorain's handout;
  North Hempstead 2-58; Red Lion 1982; FBC-M 905; Purdue FNR-100; IFGC 2009 501.7
- older NFPA texts: 18 in before, 12 in beside (cited); circulating 36 above, 24 before, 12 in
  beside and behind, radiant 36 (from memory)
- Norton 1430.02: 40 in2 for a stove, 28 for a small special one; Lake Forest 1994: flue no less
  than the connector; Spring
  Garden Township: one appliance on a flue, lined; Massachusetts notice of 2006: alarms
- Massachusetts permit guidance; Maine 02-658 chapter 110 section 8
- 24 CFR 3280.709(g), from memory; common practice of the United States
"""
from fractions import Fraction

import amounts
from amounts import FT, IN, IN2
from rules import PI_LOW
from stove_rules import (BACK, BURNS, CEILING, CLEARANCES, DOOR, FACTORY, FRONT, INSERT, LISTED,
                         NO_FLOOR, PELLET, SIDE, SIDES, STOVE, THROUGH, UNLISTED, WALL, about,
                         amount, between, by_label, by_listing, clearance, floor_by_legs, flue, is_,
                         isnt, kind, least, make, most, not_printed, not_seen, pipe, reduced, seen,
                         shield, usual, usual_if_labelled)

IFGC, NYC_ROOM, HEIGHTS = 'ifgc-2009', 'nyc-administrative', 'newburgh-heights-1343-09'
OHIO, MISSOURI, LORAIN = 'ohio-3701-33-09', 'missouri-guide', 'lorain'
HEMPSTEAD, RED_LION, FLORIDA = 'north-hempstead-2-58', 'red-lion-1982', 'florida-mechanical'
MAINE, MASSACHUSETTS = 'maine-02-658-110', 'massachusetts-stoves'
OLDER, NORTON, LAKE = 'nfpa-older-stoves', 'norton-oh-1981', 'lake-forest-1994'
GARDEN, ALARMS = 'spring-garden', 'massachusetts-alarms-2006'
PURDUE, HUD, PRACTICE = 'purdue-fnr-100', 'hud-manufactured-home', 'common-practice-us'


CAN_BURN = isnt('floor/protection', 'noncombustible-floor')
GAS, NO_GAS = is_('gas/appliance', 'room-heater'), isnt('gas/appliance', 'room-heater')


def heights():
    def gauge(number, size):
        return most('connector-gauge', 'connector/gauge', number, STOVE, size)

    def share(rule, key, relation, ratio, source, *when):
        return make(rule, key, relation, (STOVE, *when), 'share', (Fraction(ratio), 0), source)

    return [not_seen('connector-open-fireplace', 'connector/into', 'open-fireplace-flue', STOVE),
            pipe(18 * IN, STOVE, is_('connector/kind', 'single-wall')),
            share('pass-through-clearance', 'pass-through/clearance', 'at-least', 3,
                  'connector/diameter', THROUGH),
            share('connector-run', 'connector/run', 'at-most', Fraction(3, 4),
                  'connector/chimney-height'),
            most('connector-elbows', 'connector/elbows', 2, STOVE),
            share('connector-diameter', 'connector/diameter', 'at-least', 1, 'collar/diameter'),
            share('connector-rise', 'connector/rise', 'at-least', Fraction(1, 48),
                  'connector/run'),
            least('connector-overlap', 'connector/overlap', 2 * IN, STOVE),
            gauge(26, between(0, 6)), gauge(24, between(6, 10)),
            gauge(22, between(10, 12, True, True)), gauge(20, between(14, 16)),
            gauge(16, between(16, 16, True, True)),
            *(not_printed('connector-gauge', 'connector/gauge', STOVE, size)
              for size in (between(12, 14, False), between(16, 1000, False)))]


def across(low, high):
    """Whether a round connector has more than one area in in2, and less than another."""
    return lambda diameter: low * IN2 < PI_LOW * diameter ** 2 / 4 < high * IN2


# Administrative Code 27-870. No circle has exactly one of these areas.
NYC_GAUGES = ((24, across(-1, 79)), (22, across(80, 154)), (20, across(155, 200)),
              (16, across(200, 10 ** 6)))


def everywhere():
    """The rules of each standard, local codes first."""
    label = ('listing-plate', 'listing/label', 'listed')
    shielded = is_('connector/shield', 'insulation-or-metal')
    single = is_('connector/kind', 'single-wall')
    solid = (INSERT, isnt('gas/appliance', 'insert'))
    thin = shield('thin-board-vented')
    # Hollow masonry under steel is more than Lorain asks anywhere.
    less = isnt('floor/protection', 'hollow-masonry-and-steel')
    return {
        OHIO: [*(least('floor-protection-' + place, keys, 18 * IN, STOVE, CAN_BURN,
                       listing=listing)
                 for place, keys, listing in (
                     ('before-body', 'floor/front', FRONT),
                     ('beside-body', ('floor/left', 'floor/right'), SIDE),
                     ('behind-body', 'floor/back', BACK))),
               clearance(36 * IN, STOVE, is_('stove/type', 'radiant')),
               clearance(18 * IN, STOVE, is_('stove/type', 'circulating'), NO_GAS),
               clearance(6 * IN, STOVE, is_('stove/type', 'circulating'), GAS, WALL,
                         is_('wall/in-front', 'no')),
               pipe(18 * IN, STOVE, is_('connector/kind', 'single-wall'))],
        MISSOURI: [clearance(36 * IN, STOVE, UNLISTED), by_label(STOVE, LISTED),
                   least('floor-protection-all-round', SIDES, 18 * IN, STOVE, UNLISTED, CAN_BURN),
                   seen('floor-protection', 'floor/protection', 'hollow-masonry-and-top', STOVE,
                        UNLISTED, *NO_FLOOR),
                   least('floor-protection-top', 'floor/top-thickness', IN // 4, STOVE, UNLISTED,
                         is_('floor/protection', 'hollow-masonry-and-top')),
                   usual('floor-protection-before-body', 'floor/front', 18 * IN, STOVE, LISTED,
                         listing=FRONT),
                   usual('floor-protection-thickness', 'floor/thickness', IN, STOVE, LISTED,
                         listing='listing/pad-thickness')],
        LORAIN: [floor_by_legs('hollow-masonry', 0, 2 * IN + 1, *NO_FLOOR, less),
                 floor_by_legs('solid-masonry', 2 * IN + 1, 6 * IN + 1, *NO_FLOOR, less,
                               isnt('floor/protection', 'hollow-masonry',
                                    'solid-masonry-and-steel'))],
        HEMPSTEAD: [pipe(18 * IN, STOVE, single, isnt('connector/shield', 'insulation-or-metal')),
                    pipe(9 * IN, STOVE, single, shielded)],
        RED_LION: [clearance(36 * IN, STOVE, isnt('wall/protection', 'thin-board-vented',
                                                  'masonry')),
                   clearance(36 * IN, STOVE, shield('masonry'), CEILING),
                   least('stove-clearance-reduced', 'wall/clearance', 18 * IN, STOVE, thin,
                         listing='wall/by-listing'),
                   least('shield-air-space', 'wall/air-space', IN, STOVE, thin),
                   least('stove-clearance-reduced', 'wall/clearance', 12 * IN, STOVE,
                         shield('masonry'), WALL, listing='wall/by-listing')],
        FLORIDA: [seen(*label, STOVE), seen(*label, *solid)],
        MAINE: [seen(*label, STOVE), seen(*label, *solid)],
        MASSACHUSETTS: [seen(*label, STOVE), seen(*label, *solid), *(
            seen('label-clearances', 'listing/clearances-stated', 'yes', *who)
            for who in ((STOVE,), solid))],
        OLDER: superseded(),
        NORTON: [least('flue-area-stove', 'flue/net-area', area * IN2, STOVE,
                       is_('stove/small-special', small))
                 for area, small in ((40, 'no'), (28, 'yes'))],
        LAKE: [make('flue-area-connector', 'flue/net-area', 'at-least', (STOVE,), 'collar', 1,
                    'connector/diameter')],
        GARDEN: [seen('shared-flue', 'stove/other-on-flue', 'no', STOVE),
                 not_seen('flue-lined', 'flue/lining', 'none', STOVE,
                          is_('chimney/construction', 'masonry'))],
        ALARMS: [seen('co-alarm-in-home', 'alarms/co-in-home', 'yes', STOVE),
                 seen('smoke-alarm-in-home', 'alarms/smoke-in-home', 'yes', STOVE)],
        PURDUE: [clearance(36 * IN, STOVE, is_('stove/type', 'radiant'))],
        NYC_ROOM: [least('room-volume', 'room/volume', 300 * amounts.VOLUME['ft3'], STOVE),
                   seen('room-window', 'room/window', 'yes', STOVE),
                   seen('room-confined', 'room/confined', 'no', STOVE), seen(*label, STOVE),
                   *(most('connector-gauge', 'connector/gauge', number, STOVE,
                          amount('connector/diameter', size)) for number, size in NYC_GAUGES),
                   *(not_printed('connector-gauge', 'connector/gauge', STOVE,
                                 amount('connector/diameter', size))
                     for size in (across(79, 80), across(154, 155)))],
        IFGC: [seen('insert-seal', 'insert/sealed', 'yes', INSERT),
               seen('insert-access', 'insert/cleanable', 'yes', INSERT),
               seen('insert-in-factory-built', 'insert/listed-for-fireplace', 'yes', INSERT,
                    is_('insert/in-factory-built', 'yes')),
               seen('connector-factory-built', 'insert/listed-for-fireplace', 'yes', STOVE,
                    is_('connector/into', 'factory-built-fireplace'))],
        HEIGHTS: heights(), HUD: manufactured(), PRACTICE: practice()}


def superseded():
    round_about = (STOVE, is_('stove/type', 'circulating'))
    return [least('floor-protection-before-body', 'floor/front', 18 * IN, STOVE,
                  listing='listing/hearth-front'),
            least('floor-protection-beside-body', ('floor/left', 'floor/right'), 12 * IN, STOVE,
                  listing='listing/hearth-side'),
            clearance(36 * IN, STOVE, is_('stove/type', 'radiant')),
            clearance(36 * IN, *round_about, CEILING),
            clearance(24 * IN, *round_about, WALL, is_('wall/in-front', 'yes')),
            clearance(12 * IN, *round_about, WALL, is_('wall/in-front', 'no'))]


def manufactured():
    rules = [least('floor-protection-front', DOOR['front'], 16 * IN, STOVE, listing=FRONT),
             least('floor-protection-side', DOOR['sides'], 8 * IN, STOVE, listing=SIDE),
             least('floor-protection-thickness', 'floor/thickness', 3 * IN // 8, STOVE)]
    for who in (FACTORY, kind('masonry-fireplace')):
        rules += [least('hearth-front', 'hearth/front', 16 * IN, who),
                  least('hearth-side', ('hearth/left', 'hearth/right'), 8 * IN, who),
                  least('hearth-extension-thickness', 'hearth/extension-thickness', 3 * IN // 8,
                        who)]
    for who in (FACTORY, kind('masonry-fireplace'), STOVE):
        rules += [least('chimney-height', 'chimney/height-above-roof', 3 * FT, who),
                  make('chimney-height-nearby', 'nearby/top-above', 'at-least', (who,), 'within',
                       (2 * FT, 10 * FT), 'nearby/distance'),
                  seen('exterior-air', 'air/duct-state', 'connected', who)]
    return rules


# Common practice, no publication: the R-value of one inch where the product's own is not known.
MATERIALS = {'common-brick': Fraction('0.2'), 'face-brick': Fraction('0.111'),
             'cement-mortar': Fraction('0.2'), 'ceramic-tile': Fraction('0.08'),
             'slate': Fraction('0.1'), 'granite': Fraction('0.083')}


def gas_by_listing():
    """Of direct-vent appliances, inserts and log sets only the listing says what is kept clear."""
    logs, insert = is_('gas/appliance', 'log-set'), is_('gas/appliance', 'insert')
    direct = (is_('gas/vent', 'direct'), isnt('gas/appliance', 'none', 'log-set', 'insert'))
    for who in ((logs,), (insert,), direct):
        yield by_listing('trim-distance', 'trim/distance', 'listing/gas-trim-distance', *who,
                         BURNS)
        yield by_listing('trim-projection', 'trim/projection', 'listing/gas-trim-projection', *who,
                         BURNS, relation='at-most')
    for who in ((logs,), direct):
        yield by_listing('hearth-front', 'hearth/front', 'listing/gas-hearth-front', *who)
        yield by_listing('hearth-side', ('hearth/left', 'hearth/right'),
                         'listing/gas-hearth-side', *who)
    for who in ((insert,), direct):
        for side in ('back', 'side', 'top'):
            yield by_listing(f'gas-{side}-clearance', f'gas/{side}-clearance',
                             f'listing/gas-{side}-clearance', *who)


def heights_by_listing():
    """More than 5 ft above the roof, or 6: a brace; 12 ft from the outlet or 15 from the base."""
    unbraced = (is_('chimney/construction', 'factory-built'), is_('outlet/stack-braced', 'no'))
    for option, feet in (('five-feet', 5), ('six-feet', 6)):
        yield usual('factory-chimney-unbraced-height', 'chimney/height-above-roof', feet * FT,
                    is_('reading/brace-height', option), *unbraced,
                    listing='listing/unbraced-height', relation='at-most')
    yield usual('stove-flue-height', 'flue/height', 12 * FT, STOVE, listing='listing/flue-height')
    yield usual('stove-flue-above-base', 'flue/above-base', 15 * FT, STOVE,
                listing='listing/flue-above-base')


def practice():
    listed = (STOVE, LISTED)
    collar = ((Fraction(1), 0), 'collar/diameter')
    lined = (INSERT, is_('insert/connection', 'listed-liner'))
    horizontal = amount('connector/run', lambda run: run > 0)
    chimney = ('factory-chimney-air-space', 'chimney/clearance', 2 * IN)
    return [
        by_label(STOVE, LISTED),
        make('insert-liner-diameter', 'insert/liner-diameter', 'at-least', lined, 'share', *collar),
        make('insert-liner-diameter-most', 'insert/liner-diameter', 'at-most', lined, 'share',
             *collar),
        usual('floor-protection-front', DOOR['front'], 16 * IN, *listed, listing=FRONT),
        usual('floor-protection-side', DOOR['sides'], 8 * IN, *listed, listing=SIDE),
        usual('floor-protection-behind-body', 'floor/back', 8 * IN, *listed, listing=BACK),
        about('floor-protection-width', 'floor/width', 'stove/width', 16 * IN, 2, (SIDE,), *listed),
        about('floor-protection-depth', 'floor/depth', 'stove/depth', 24 * IN, 1, (FRONT, BACK),
              *listed),
        make('floor-r-value', 'floor/r-value', 'at-least', listed, 'listing', MATERIALS,
             listing='listing/pad-r'),
        not_seen('floor-protection', 'floor/protection', 'none', *listed,
                 amount('listing/pad-r', lambda value: value <= 0)),
        seen('floor-protection-carpet', 'floor/on-carpet', 'no', STOVE),
        usual_if_labelled('floor-protection-connector', 'floor/beside-connector', 2 * IN, STOVE,
                          horizontal, listing='listing/floor-beside-connector'),
        usual('floor-protection-connector', 'floor/beside-connector', 2 * IN, PELLET, LISTED,
              listing='listing/floor-beside-connector'),
        make('connector-clearance', CLEARANCES, 'at-least',
             (STOVE, is_('connector/kind', 'listed-double-wall')), 'listing', None,
             listing='listing/connector-clearance'),
        most('connector-run', 'connector/run', 10 * FT, STOVE),
        least('connector-screws', 'connector/screws', 3, STOVE),
        least('connector-first-rise', 'connector/first-rise', 2 * FT, STOVE,
              amount('connector/elbows', lambda bends: bends >= 1)),
        seen('connector-male-end', 'connector/male-end-down', 'yes', STOVE),
        seen('connector-end', 'connector/past-liner', 'no', STOVE),
        usual_if_labelled(*chimney, FACTORY, listing='listing/chimney-clearance'),
        usual('factory-hearth-front', 'hearth/front', 20 * IN, FACTORY, LISTED, listing=FRONT),
        usual('factory-hearth-side', ('hearth/left', 'hearth/right'), 12 * IN, FACTORY,
              LISTED, listing=SIDE),
        usual(*chimney, STOVE, is_('connector/into', 'factory-built-chimney'),
              listing='listing/chimney-clearance'),
        *(seen(rule, key, 'no', is_('chimney/construction', 'factory-built'))
          for rule, key in (('factory-chimney-insulation', 'factory/insulation-touches'),
                            ('factory-chimney-parts', 'factory/mixed-parts'))),
        usual('floor-protection-before-body', 'floor/front', 6 * IN, PELLET, LISTED,
              listing=FRONT),
        usual('pellet-vent-clearance', CLEARANCES[0], 3 * IN, PELLET,
              listing='listing/connector-clearance'),
        least('furniture-distance', 'room/furniture', 3 * FT), *gas_by_listing(),
        *heights_by_listing()]


RULES = everywhere()
