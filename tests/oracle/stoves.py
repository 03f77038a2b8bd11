# SPDX-License-Identifier: MIT
"""The oracle for stoves and inserts, recomputed from the publications' numbers alone.

Written apart from the library, with exact fractions. Where each number is from:

- NFPA 211-2010 (cited): 12.4.5.1 flue 1 to 3 times the collar, 2 times where exposed; Table
  12.6.2.1, a third is left of 66 per cent; floor by open space; shielded connectors 6 and 9 in;
  pass-throughs A to E
- Univ./NASD 1254: 36 in, 12 in behind vented masonry, 18 in of pad all round
- IRC Table M1306.2, M1306.2.1 (12 in for solid fuel), shields 1 in off
- IMC 2015 Table 308.6, interpolated; 308.4.1
- New York City Mechanical Code 801.6, 801.7, 801.10.1, Tables 803.8 and 803.9(1); Administrative
  Code 27-848.08, 27-870
- Newburgh Heights 1343.09; OAC 3701-33-09; Missouri Weatherization Field Guide; Lorain's handout;
  North Hempstead 2-58; Red Lion 1982; FBC-M 905; Purdue FNR-100; IFGC 2009 501.7
- older NFPA texts: 18 in before, 12 in beside (cited); circulating 36 above, 24 before, 12 in
  beside and behind, radiant 36 (from memory)
- Norton 1430.02: 40 in2 for a stove; Lake Forest 1994: flue no less than the connector; Spring
  Garden Township: one appliance on a flue, lined; Massachusetts notice of 2006: alarms
- Massachusetts permit guidance; Maine 02-658 chapter 110 section 8
- 24 CFR 3280.709(g), from memory; common practice of the United States
"""
from collections import namedtuple
from fractions import Fraction
from itertools import product
from math import ceil, floor

import amounts
from amounts import FT, IN, IN2, NM_PER_MM, RATIO_ONE
from rules import PI_HIGH, PI_LOW

MM = NM_PER_MM
NFPA, NASD, IMC, IFGC = 'nfpa-211-2010', 'nasd-1254', 'imc-2015', 'ifgc-2009'
NYC, NYC_ROOM, HEIGHTS = 'nyc-mechanical', 'nyc-administrative', 'newburgh-heights-1343-09'
OHIO, MISSOURI, LORAIN = 'ohio-3701-33-09', 'missouri-guide', 'lorain'
HEMPSTEAD, RED_LION, FLORIDA = 'north-hempstead-2-58', 'red-lion-1982', 'florida-mechanical'
MAINE, MASSACHUSETTS = 'maine-02-658-110', 'massachusetts-stoves'
OLDER, NORTON, LAKE = 'nfpa-older-stoves', 'norton-oh-1981', 'lake-forest-1994'
GARDEN, ALARMS = 'spring-garden', 'massachusetts-alarms-2006'
PURDUE, HUD = 'purdue-fnr-100', 'hud-manufactured-home'
PRACTICE, IRC_2018 = 'common-practice-us', 'irc-2018'
IRC = ('irc-2012', 'irc-2015', IRC_2018, 'irc-2021', 'irc-2024')
STANDARDS = (NFPA, NASD, IMC, IFGC, NYC, NYC_ROOM, HEIGHTS, OHIO, MISSOURI, LORAIN, HEMPSTEAD,
             RED_LION, FLORIDA, MAINE, MASSACHUSETTS, PURDUE, HUD, PRACTICE, OLDER, NORTON, LAKE,
             GARDEN, ALARMS) + IRC

LENGTHS = '''
 connector/diameter connector/wall-clearance connector/ceiling-clearance connector/run
 connector/rise connector/first-rise connector/chimney-height connector/overlap connector/thickness
 collar/diameter
 flue/diameter stove/leg-height stove/width stove/depth floor/front floor/left floor/right
 floor/back floor/door-front floor/door-left floor/door-right floor/width floor/depth
 floor/thickness floor/beside-connector wall/clearance wall/unprotected wall/by-listing
 wall/air-space wall/edge-gap wall/beyond-shield pass-through/clearance
 pass-through/liner-thickness pass-through/insulation pass-through/diameter pass-through/length
 pass-through/opening insert/hearth-front insert/hearth-left insert/hearth-right
 insert/body-left insert/body-right insert/liner-diameter hearth/front hearth/left hearth/right
 hearth/extension-thickness chimney/clearance room/furniture listing/hearth-front
 listing/hearth-side listing/hearth-back listing/connector-clearance listing/chimney-clearance
 chimney/height-above-roof nearby/distance nearby/top-above
'''.split()
AREAS = 'flue/net-area listing/flue-area-least listing/flue-area-most'.split()
COUNTS = 'connector/elbows connector/screws connector/gauge'.split()
RATIOS = 'listing/pad-r'.split()
AMOUNTS = {**dict.fromkeys(LENGTHS, 'length'), **dict.fromkeys(AREAS, 'area'),
           **dict.fromkeys(COUNTS, 'count'), **dict.fromkeys(RATIOS, 'ratio'),
           'room/volume': 'volume'}
ASSUMED = {'stove/type': 'radiant', 'wall/surface': 'wall', 'wall/protection': 'none',
           'wall/corner': 'no', 'wall/in-front': 'no',
           'connector/kind': 'single-wall', 'connector/shield': 'none',
           'insert/in-factory-built': 'no'}
REPEATING = ('wall', 'nearby')

Rule = namedtuple('Rule', 'id keys relation when kind value source listing')
Finding = namedtuple('Finding', 'rule subject verdict required measured missing')


# ---- what a document records ---------------------------------------------------------------------

class Facts:
    def __init__(self, document):
        self.unit, survey = document.get('unit'), document['survey']
        self.lists = {group: survey.get(group) for group in REPEATING}
        self.layers = survey.get('layer')
        self.amounts, self.words = {}, {}
        for group, members in survey.items():
            for index, item in enumerate(members) if isinstance(members, list) else ():
                self.take(f'{group}/{index}', group, item)
            if isinstance(members, dict):
                self.take(group, group, members)

    def take(self, place, group, members):
        for name, value in members.items():
            dimension = AMOUNTS.get(f'{group}/{name}')
            if dimension == 'count':
                self.amounts[f'{place}/{name}'] = (value, 0)
            elif dimension:
                tolerance = amounts.read_tolerance(value, dimension, self.unit) or 0
                self.amounts[f'{place}/{name}'] = (amounts.read(value, dimension, self.unit),
                                                   tolerance)
            else:
                self.words[f'{place}/{name}'] = {True: 'yes', False: 'no'}.get(value, value) \
                    if isinstance(value, (bool, str)) else value

    def known(self, key, item):
        """What is recorded or assumed: an amount or a word; None for nothing."""
        place = located(key, item)
        if place in self.amounts:
            return self.amounts[place][0]
        if key == 'chimney/construction' and place not in self.words:
            return self.construction()
        return self.words.get(place, ASSUMED.get(key))

    def construction(self):
        """A stove's chimney is what its connector goes into; only a fireplace's is masonry."""
        what = self.words.get('appliance/kind')
        if what in ('stove', 'pellet-stove'):
            into = self.words.get('connector/into') or ''
            if into in ('masonry-chimney', 'fireplace-chimney'):
                return 'masonry'
            return 'factory-built' if into.startswith('factory-built') else None
        inside = what == 'insert' and self.words.get('insert/in-factory-built') == 'yes'
        return 'factory-built' if inside or what == 'factory-built-fireplace' else 'masonry'

    def box(self, key, item):
        value, tolerance = self.amounts[located(key, item)]
        return max(0, value - tolerance), value + tolerance

    def within(self, key, item):
        """What it may be: nothing, a word, or an amount and the ends of its tolerance."""
        value = self.known(key, item)
        if value is None:
            return ()
        return (value, *self.box(key, item)) if located(key, item) in self.amounts else (value,)

    def r_value(self):
        """The sum of the layers, exactly; None where one of them cannot be told."""
        values = [layer_value(layer) for layer in self.layers or ()]
        return None if not values or None in values else sum(values)


def layer_value(layer):
    def number(name):
        return Fraction(layer[name]) if name in layer else None

    if 'r-value' in layer:
        return number('r-value')
    if 'c' in layer:
        return 1 / number('c')
    if 'thickness' not in layer:
        return None
    inches = amounts.exact(layer['thickness'], 'length') / IN
    if 'k' in layer:
        return inches / number('k')
    return inches * number('r-per-inch') if 'r-per-inch' in layer else None


def located(key, item):
    group, name = key.split('/')
    return f'{group}/{item}/{name}' if group in REPEATING and item is not None else key


# ---- conditions ----------------------------------------------------------------------------------

def is_(key, *words):
    return key, lambda word: word in words


def isnt(key, *words):
    return key, lambda word: word not in words


def amount(key, test):
    return key, test


def kind(word):
    return is_('appliance/kind', word)


STOVE, INSERT, PELLET = kind('stove'), kind('insert'), kind('pellet-stove')
LISTED, UNLISTED = is_('listing/label', 'listed'), isnt('listing/label', 'listed')
HELD_OFF = isnt('wall/protection', 'none', 'masonry', 'board-over-batts', 'listed-assembly')
BARE, SHIELDED = is_('wall/protection', 'none'), isnt('wall/protection', 'none')
CEILING, WALL = is_('wall/surface', 'ceiling'), isnt('wall/surface', 'ceiling')
THROUGH = is_('connector/passes', 'wall')
NO_FLOOR = (isnt('floor/protection', 'listed-protector'),
            isnt('floor/protection', 'noncombustible-floor'))


def shield(word):
    return is_('wall/protection', word)


# ---- rules ---------------------------------------------------------------------------------------

SIDES = ('floor/front', 'floor/left', 'floor/right', 'floor/back')
CLEARANCES = ('connector/wall-clearance', 'connector/ceiling-clearance')


def make(rule, keys, relation, when, what, value=None, source=None, listing=None):
    keys = (keys,) if isinstance(keys, str) else keys
    return Rule(rule, keys, relation, when, what, value, source, listing)


def least(rule, keys, limit, *when, listing=None):
    return make(rule, keys, 'at-least', when, 'limit', limit, listing=listing)


def most(rule, keys, limit, *when):
    return make(rule, keys, 'at-most', when, 'limit', limit)


def seen(rule, key, word, *when):
    return make(rule, key, 'is', when, 'seen', word)


def not_seen(rule, key, word, *when):
    return make(rule, key, 'is-not', when, 'seen', word)


def plus(rule, key, source, more, *when):
    return make(rule, key, 'at-least', when, 'plus', more, source)


def clearance(limit, *when):
    return least('stove-clearance', 'wall/clearance', limit, *when, listing='wall/by-listing')


def reduced(what, value, *when):
    return make('stove-clearance-reduced', 'wall/clearance', 'at-least', when, what, value,
                'wall/unprotected', 'wall/by-listing')


def no_less_than_12(*when):
    return make('stove-clearance-least', 'wall/clearance', 'at-least', when, 'most', 12 * IN,
                'wall/unprotected', 'wall/by-listing')


def flue(times, *when):
    return make('insert-flue-area', 'flue/net-area', 'at-least', when, 'collar', times,
                'collar/diameter', 'listing/flue-area-least')


def flue_most(times, *when):
    return make('insert-flue-area-most', 'flue/net-area', 'at-most', when, 'collar', times,
                'collar/diameter', 'listing/flue-area-most')


def pipe(limit, *when, keys=CLEARANCES, rule='connector-clearance'):
    return least(rule, keys, limit, *when, listing='listing/connector-clearance')


def floor_by_legs(word, low, high, *when):
    return seen('floor-protection', 'floor/protection', word, STOVE, UNLISTED,
                amount('stove/leg-height', lambda legs: low <= legs < high), *when)


# What a dash or "none" leaves: all of it, for no reduction is allowed.
NOT_ALLOWED = (Fraction(1), 0)
# The percentage that is left, the least distance, of wall and ceiling: NFPA 211 Table 12.6.2.1.
NFPA_LEFT = {'masonry': ((Fraction(2, 3), 24), None),
             'board-over-batts': ((Fraction(1, 2), 18), (Fraction(2, 3), 24)),
             'masonry-vented': ((Fraction(1, 3), 12), None)}
VENTED = ('steel-over-batts', 'steel-vented', 'board-vented', 'double-steel-vented',
          'batts-between-steel')
for each in VENTED:
    NFPA_LEFT[each] = ((Fraction(1, 3), 12), (Fraction(1, 2), 18))

# Required 36, 18, 12, 9, 6 in: above and beside. IRC Table M1306.2.
USUAL = ((18, 9, 6, 5, 3), (12, 6, 4, 3, 3))
IRC_TABLE = {'masonry': (None, (24, 12, 9, 6, 5)),
             'board-over-batts': ((24, 12, 9, 6, 4), (18, 9, 6, 5, 3)),
             'steel-over-batts': USUAL, 'masonry-vented': (None, (12, 6, 6, 6, 6)),
             'steel-vented': (USUAL[0], (12, 6, 4, 3, 2)), 'board-vented': USUAL,
             'double-steel-vented': USUAL, 'batts-between-steel': USUAL}
# Required 36, 18, 9, 6 in. IMC Table 308.6.
IMC_USUAL = ((18, 9, 5, 3), (12, 6, 3, 3))
IMC_TABLE = {'steel-over-batts': IMC_USUAL, 'steel-vented': (IMC_USUAL[0], (12, 6, 3, 2)),
             'double-steel-vented': IMC_USUAL, 'batts-between-steel': IMC_USUAL,
             'board-over-batts': ((24, 12, 6, 4), (18, 9, 5, 3))}


def cells(heads, values):
    return {head * IN: value * IN for head, value in zip(heads, values)}


def nfpa_walls():
    for word, (wall, ceiling) in NFPA_LEFT.items():
        yield reduced('share', (wall[0], wall[1] * IN), STOVE, shield(word), WALL)
        whole, more = ceiling or NOT_ALLOWED
        yield reduced('share', (whole, more * IN), STOVE, shield(word), CEILING)


def nfpa_passes():
    def through(word):
        return STOVE, THROUGH, is_('pass-through/assembly', word)

    def at_least(what, word, limit):
        return least('pass-through-' + what[0], 'pass-through/' + what[1], limit, *through(word))

    gap, insulation = ('clearance', 'clearance'), ('insulation', 'insulation')
    return [not_seen('pass-through', 'pass-through/assembly', 'other', STOVE, THROUGH),
            at_least(gap, 'brick', 12 * IN), at_least(gap, 'chimney-length', 9 * IN),
            at_least(gap, 'vented-thimble', 6 * IN), at_least(gap, 'wide-chimney-length', 2 * IN),
            at_least(('liner', 'liner-thickness'), 'brick', 5 * IN // 8),
            at_least(insulation, 'chimney-length', IN),
            at_least(insulation, 'wide-chimney-length', IN),
            at_least(('length', 'length'), 'wide-chimney-length', 12 * IN),
            plus('pass-through-diameter', 'pass-through/diameter', 'connector/diameter', 4 * IN,
                 *through('vented-thimble')),
            most('connector-gauge', 'connector/gauge', 24, *through('vented-thimble')),
            plus('pass-through-diameter', 'pass-through/diameter', 'connector/diameter', 2 * IN,
                 *through('wide-chimney-length')),
            plus('pass-through-opening', 'pass-through/opening', 'pass-through/diameter', 12 * IN,
                 *through('vented-thimble'))]


def nfpa():
    rules = list(nfpa_walls()) + nfpa_passes()
    for who in ((INSERT,), (STOVE, is_('connector/into', 'fireplace-chimney'))):
        rules += [flue(1, *who), flue_most(3, *who, is_('insert/chimney-exposed', 'no')),
                  flue_most(2, *who, is_('insert/chimney-exposed', 'yes'))]
    shielded = (STOVE, is_('connector/shield', 'protected'))
    protector = NO_FLOOR[0]
    return rules + [
        seen('insert-reaches-liner', 'insert/reaches-liner', 'yes', INSERT),
        seen('insert-connector', 'insert/connector-stainless', 'yes', INSERT),
        floor_by_legs('solid-masonry-and-steel', 6 * IN, 10 ** 12, *NO_FLOOR,
                      isnt('floor/protection', 'hollow-masonry-and-steel')),
        floor_by_legs('hollow-masonry-and-steel', 2 * IN, 6 * IN, *NO_FLOOR),
        floor_by_legs('noncombustible-floor', 0, 2 * IN, protector),
        seen('shield-spacers', 'wall/spacers-combustible', 'no', STOVE, HELD_OFF),
        seen('shield-spacer-place', 'wall/spacer-behind-appliance', 'no', STOVE, HELD_OFF),
        pipe(6 * IN, *shielded, keys=CLEARANCES[0], rule='connector-clearance-shielded-wall'),
        pipe(9 * IN, *shielded, keys=CLEARANCES[1], rule='connector-clearance-shielded-ceiling'),
        not_seen('connector-hidden', 'connector/passes', 'hidden', STOVE)]


def nasd():
    pad = (STOVE, UNLISTED, *NO_FLOOR)
    return [clearance(36 * IN, STOVE, UNLISTED, BARE),
            least('stove-clearance-reduced', 'wall/clearance', 12 * IN, STOVE, UNLISTED,
                  shield('masonry-vented'), listing='wall/by-listing'),
            floor_by_legs('solid-masonry-and-steel', 6 * IN, 10 ** 12, *NO_FLOOR,
                          isnt('floor/protection', 'hollow-masonry-and-steel')),
            least('floor-protection-all-round', SIDES, 18 * IN, *pad),
            plus('floor-protection-width', 'floor/width', 'stove/width', 36 * IN, *pad),
            plus('floor-protection-depth', 'floor/depth', 'stove/depth', 36 * IN, *pad)]


def grid(table, heads, what):
    for word, columns in table.items():
        for place, values in zip((CEILING, WALL), columns):
            kind = (what, cells(heads, values)) if values else ('share', NOT_ALLOWED)
            yield reduced(*kind, STOVE, shield(word), place)


def residential():
    vented = (STOVE, HELD_OFF)
    return list(grid(IRC_TABLE, (36, 18, 12, 9, 6), 'exact')) + [
        no_less_than_12(STOVE, SHIELDED),
        least('shield-air-space', 'wall/air-space', IN, *vented),
        least('shield-edge-gap', 'wall/edge-gap', IN, *vented),
        not_seen('shield-open-edges', 'wall/open-edges', 'closed', *vented,
                 is_('wall/corner', 'no')),
        seen('shield-open-edges', 'wall/open-edges', 'bottom-and-top', *vented,
             is_('wall/corner', 'yes')),
        make('shield-extent', 'wall/beyond-shield', 'at-least',
             (STOVE, isnt('wall/protection', 'none', 'listed-assembly')), 'share',
             (Fraction(1), 0), 'wall/unprotected'),
        seen('shared-flue', 'stove/other-on-flue', 'no', STOVE)]


def mechanical():
    return list(grid(IMC_TABLE, (36, 18, 9, 6), 'line')) + [
        reduced('listing', None, STOVE, shield('listed-assembly')),
        no_less_than_12(STOVE, SHIELDED, isnt('wall/protection', 'listed-assembly'))]


def between(low, high, low_in=True, high_in=False):
    """A condition on the connector's diameter, in inches."""
    def test(across):
        above = across >= low * IN if low_in else across > low * IN
        return above and (across <= high * IN if high_in else across < high * IN)
    return amount('connector/diameter', test)


def new_york():
    solid, vent = isnt('connector/kind', 'vent'), is_('connector/kind', 'vent')

    def sheet(thousandths, size, *who):
        return least('connector-thickness', 'connector/thickness', thousandths * IN // 1000, *who,
                     size)

    rules = [seen('insert-seal', 'insert/sealed', 'yes', INSERT),
             seen('insert-access', 'insert/cleanable', 'yes', INSERT)]
    for who in (INSERT, STOVE):
        rules += [flue(1, who), flue_most(3, who)]
    return rules + [
        sheet(22, between(0, 5, True, True), STOVE, solid),
        sheet(28, between(5, 10, False, True), STOVE, solid),
        sheet(34, between(10, 16, False, True), STOVE, solid),
        sheet(64, between(16, 1000, False), STOVE, solid),
        sheet(19, between(0, 6), vent), sheet(23, between(6, 10), vent),
        sheet(29, between(10, 12, True, True), vent), sheet(34, between(14, 16, True, True), vent),
        sheet(56, between(16, 1000, False), vent)]


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
            gauge(16, between(16, 16, True, True))]


def across(low, high):
    """Whether a round connector has more than one area in in2, and less than another."""
    return lambda diameter: low * IN2 < PI_LOW * diameter ** 2 / 4 < high * IN2


# Administrative Code 27-870: no gauge is printed from 79 to 80 in2 and from 154 to 155 in2. No
# circle has exactly one of these areas.
NYC_GAUGES = ((24, across(-1, 79)), (22, across(80, 154)), (20, across(155, 200)),
              (16, across(200, 10 ** 6)))


def local(standard):
    label = ('listing-plate', 'listing/label', 'listed')
    shielded = is_('connector/shield', 'insulation-or-metal')
    thin = shield('thin-board-vented')
    return {
        OHIO: [least('floor-protection-all-round', SIDES, 18 * IN, STOVE),
               clearance(36 * IN, STOVE, is_('stove/type', 'radiant'), BARE),
               clearance(18 * IN, STOVE, is_('stove/type', 'circulating'), BARE),
               pipe(18 * IN, STOVE, is_('connector/kind', 'single-wall'))],
        MISSOURI: [clearance(36 * IN, STOVE, UNLISTED, BARE),
                   least('floor-protection-all-round', SIDES, 18 * IN, STOVE, UNLISTED),
                   least('floor-protection-before-body', 'floor/front', 18 * IN, STOVE, LISTED,
                         listing='listing/hearth-front'),
                   least('floor-protection-thickness', 'floor/thickness', IN, STOVE, LISTED)],
        LORAIN: [floor_by_legs('hollow-masonry-and-steel', 0, 2 * IN + 1, *NO_FLOOR),
                 floor_by_legs('solid-masonry-and-steel', 2 * IN + 1, 6 * IN + 1, *NO_FLOOR)],
        HEMPSTEAD: [pipe(18 * IN, STOVE, isnt('connector/shield', 'insulation-or-metal')),
                    pipe(9 * IN, STOVE, shielded)],
        RED_LION: [clearance(36 * IN, STOVE, BARE),
                   least('stove-clearance-reduced', 'wall/clearance', 18 * IN, STOVE, thin,
                         listing='wall/by-listing'),
                   least('shield-air-space', 'wall/air-space', IN, STOVE, thin),
                   least('stove-clearance-reduced', 'wall/clearance', 12 * IN, STOVE,
                         shield('masonry'), listing='wall/by-listing')],
        FLORIDA: [seen(*label, STOVE), seen(*label, INSERT)],
        MAINE: [seen(*label, STOVE), seen(*label, INSERT)],
        MASSACHUSETTS: [seen(*label, STOVE), seen(*label, INSERT), *(
            seen('label-clearances', 'listing/clearances-stated', 'yes', who)
            for who in (STOVE, INSERT))],
        OLDER: superseded(),
        NORTON: [least('flue-area-stove', 'flue/net-area', 40 * IN2, STOVE)],
        LAKE: [make('flue-area-connector', 'flue/net-area', 'at-least', (STOVE,), 'collar', 1,
                    'connector/diameter')],
        GARDEN: [seen('shared-flue', 'stove/other-on-flue', 'no', STOVE),
                 not_seen('flue-lined', 'flue/lining', 'none', STOVE,
                          is_('chimney/construction', 'masonry'))],
        ALARMS: [seen('co-alarm-in-home', 'alarms/co-in-home', 'yes', STOVE),
                 seen('smoke-alarm-in-home', 'alarms/smoke-in-home', 'yes', STOVE)],
        PURDUE: [clearance(36 * IN, STOVE, is_('stove/type', 'radiant'), BARE)],
        NYC_ROOM: [least('room-volume', 'room/volume', 300 * amounts.VOLUME['ft3'], STOVE),
                   seen('room-window', 'room/window', 'yes', STOVE),
                   seen('room-confined', 'room/confined', 'no', STOVE), seen(*label, STOVE),
                   *(most('connector-gauge', 'connector/gauge', number, STOVE,
                          amount('connector/diameter', size)) for number, size in NYC_GAUGES)],
        IFGC: [seen('insert-seal', 'insert/sealed', 'yes', INSERT),
               seen('insert-access', 'insert/cleanable', 'yes', INSERT),
               seen('insert-in-factory-built', 'insert/listed-for-fireplace', 'yes', INSERT,
                    is_('insert/in-factory-built', 'yes')),
               not_seen('connector-factory-built', 'connector/into', 'factory-built-fireplace',
                        STOVE)],
        HUD: manufactured(), PRACTICE: practice()}[standard]


def superseded():
    round_about = (STOVE, BARE, is_('stove/type', 'circulating'))
    return [least('floor-protection-before-body', 'floor/front', 18 * IN, STOVE,
                  listing='listing/hearth-front'),
            least('floor-protection-beside-body', ('floor/left', 'floor/right'), 12 * IN, STOVE,
                  listing='listing/hearth-side'),
            clearance(36 * IN, STOVE, BARE, is_('stove/type', 'radiant')),
            clearance(36 * IN, *round_about, CEILING),
            clearance(24 * IN, *round_about, WALL, is_('wall/in-front', 'yes')),
            clearance(12 * IN, *round_about, WALL, is_('wall/in-front', 'no'))]


DOOR = {'front': 'floor/door-front', 'sides': ('floor/door-left', 'floor/door-right')}
FRONT, SIDE, BACK = 'listing/hearth-front', 'listing/hearth-side', 'listing/hearth-back'


def manufactured():
    rules = [least('floor-protection-front', DOOR['front'], 16 * IN, STOVE, listing=FRONT),
             least('floor-protection-side', DOOR['sides'], 8 * IN, STOVE, listing=SIDE),
             least('floor-protection-thickness', 'floor/thickness', 3 * IN // 8, STOVE)]
    for who in (kind('factory-built-fireplace'), kind('masonry-fireplace')):
        rules += [least('hearth-front', 'hearth/front', 16 * IN, who),
                  least('hearth-side', ('hearth/left', 'hearth/right'), 8 * IN, who),
                  least('hearth-extension-thickness', 'hearth/extension-thickness', 3 * IN // 8,
                        who)]
    for who in (kind('factory-built-fireplace'), kind('masonry-fireplace'), STOVE):
        rules += [least('chimney-height', 'chimney/height-above-roof', 3 * FT, who),
                  make('chimney-height-nearby', 'nearby/top-above', 'at-least', (who,), 'within',
                       (2 * FT, 10 * FT), 'nearby/distance'),
                  seen('exterior-air', 'air/duct-state', 'connected', who)]
    return rules


def practice():
    listed = (STOVE, LISTED)
    collar = ((Fraction(1), 0), 'collar/diameter')
    horizontal = amount('connector/run', lambda run: run > 0)
    chimney = ('factory-chimney-air-space', 'chimney/clearance', 2 * IN)
    return [
        make('insert-liner-diameter', 'insert/liner-diameter', 'at-least', (INSERT,), 'share',
             *collar),
        make('insert-liner-diameter-most', 'insert/liner-diameter', 'at-most', (INSERT,), 'share',
             *collar),
        least('floor-protection-front', DOOR['front'], 16 * IN, *listed, listing=FRONT),
        least('floor-protection-side', DOOR['sides'], 8 * IN, *listed, listing=SIDE),
        least('floor-protection-behind-body', 'floor/back', 8 * IN, *listed, listing=BACK),
        plus('floor-protection-width', 'floor/width', 'stove/width', 16 * IN, *listed),
        plus('floor-protection-depth', 'floor/depth', 'stove/depth', 24 * IN, *listed),
        make('floor-r-value', 'floor/r-value', 'at-least', listed, 'listing', None,
             listing='listing/pad-r'),
        not_seen('floor-protection', 'floor/protection', 'none', *listed,
                 amount('listing/pad-r', lambda value: value <= 0)),
        seen('floor-protection-carpet', 'floor/on-carpet', 'no', STOVE),
        least('floor-protection-connector', 'floor/beside-connector', 2 * IN, STOVE, horizontal),
        least('floor-protection-connector', 'floor/beside-connector', 2 * IN, PELLET),
        make('connector-clearance', CLEARANCES, 'at-least',
             (STOVE, is_('connector/kind', 'listed-double-wall')), 'listing', None,
             listing='listing/connector-clearance'),
        most('connector-run', 'connector/run', 10 * FT, STOVE),
        least('connector-screws', 'connector/screws', 3, STOVE),
        least('connector-first-rise', 'connector/first-rise', 2 * FT, STOVE,
              amount('connector/elbows', lambda bends: bends >= 1)),
        seen('connector-male-end', 'connector/male-end-down', 'yes', STOVE),
        seen('connector-end', 'connector/past-liner', 'no', STOVE),
        least(*chimney, kind('factory-built-fireplace'), listing='listing/chimney-clearance'),
        least(*chimney, STOVE, is_('connector/into', 'factory-built-chimney'),
              listing='listing/chimney-clearance'),
        seen('factory-chimney-insulation', 'factory/insulation-touches', 'no',
             kind('factory-built-fireplace')),
        seen('factory-chimney-parts', 'factory/mixed-parts', 'no',
             kind('factory-built-fireplace')),
        least('floor-protection-before-body', 'floor/front', 6 * IN, PELLET, listing=FRONT),
        least('pellet-vent-clearance', CLEARANCES[0], 3 * IN, PELLET,
              listing='listing/connector-clearance'),
        least('furniture-distance', 'room/furniture', 3 * FT)]


def rules_of(standard):
    fixed = {NFPA: nfpa, NASD: nasd, IMC: mechanical, NYC: new_york, HEIGHTS: heights}
    if standard in fixed:
        return fixed[standard]()
    return residential() if standard in IRC else local(standard)


# ---- requirements --------------------------------------------------------------------------------

def on_line(table, value):
    """Between two heads on a straight line; nothing beyond the first and the last."""
    heads = sorted(table)
    for low, high in zip(heads, heads[1:]):
        if low <= value <= high:
            rise = Fraction(table[high] - table[low], high - low)
            return table[low] + rise * (value - low)
    return None


def required_at(rule, value):
    """What is required where the input is `value`; None where nothing is printed."""
    if rule.kind == 'share':
        return max(value * rule.value[0], rule.value[1])
    return {'limit': lambda: rule.value, 'plus': lambda: value + rule.value,
            'most': lambda: min(value, rule.value), 'listing': lambda: value,
            'exact': lambda: rule.value.get(value),
            'within': lambda: rule.value[0] if value <= rule.value[1] else None,
            'line': lambda: on_line(rule.value, value)}[rule.kind]()


def whole(rule, exact):
    return ceil(exact) if rule.relation == 'at-least' else floor(exact)


def holds(rule, measured, required):
    return measured >= required if rule.relation == 'at-least' else measured <= required


# ---- judging -------------------------------------------------------------------------------------

def effective(rule, facts, item):
    """The rule, or what the listing puts in its place where it says something."""
    if rule.listing and rule.kind != 'listing' and facts.known(rule.listing, item) is not None:
        return rule._replace(kind='listing', source=rule.listing)
    return rule._replace(source=rule.listing) if rule.kind == 'listing' else rule


def marks(rule):
    if rule.kind in ('exact', 'line'):
        return [head + off for head in rule.value for off in (-1, 0, 1)]
    return []


def corner_verdicts(rule, facts, item, key):
    low, high = facts.box(key, item)
    inputs = [None]
    if rule.source:
        box = facts.box(rule.source, item)
        inputs = {*box, *(mark for mark in marks(rule) if box[0] <= mark <= box[1])}
    for measured, value in product((low, high), inputs):
        required = required_at(rule, value)
        yield required is None or holds(rule, measured, whole(rule, required))


def judge_amount(rule, facts, item, key, subject):
    rule = effective(rule, facts, item)
    value = facts.known(rule.source, item) if rule.source else None
    measured = facts.known(key, item)
    if rule.source and value is None:
        verdict = 'by-listing' if rule.kind == 'listing' else 'unmeasured'
        return Finding(rule.id, subject, verdict, None, measured, rule.source)
    required = required_at(rule, value)
    if required is None:
        return Finding(rule.id, subject, 'not-applicable', None, measured, None)
    required = whole(rule, required)
    if measured is None:
        return Finding(rule.id, subject, 'unmeasured', required, None, key)
    good = {holds(rule, measured, required), *corner_verdicts(rule, facts, item, key)}
    verdict = 'too-close' if len(good) == 2 else 'meets' if good == {True} else 'fails'
    return Finding(rule.id, subject, verdict, required, measured, None)


def judge_flue(rule, facts, subject):
    """A flue's area against a round collar's. Two circles compare as their diameters."""
    stated = facts.known('listing/flue-area-' + ('least' if rule.relation == 'at-least' else
                                                 'most'), None) if rule.listing else None
    collar, across = facts.known(rule.source, None), facts.known('flue/diameter', None)
    area = facts.known('flue/net-area', None)
    measured = area if area is not None else across and PI_LOW * across ** 2 / 4
    if stated is None and collar is None:
        return Finding(rule.id, subject, 'unmeasured', None, measured, rule.source)
    required = stated if stated is not None else rule.value * PI_LOW * collar ** 2 / 4
    if measured is None:
        return Finding(rule.id, subject, 'unmeasured', required, None, 'flue')
    if stated is None and area is None:
        good = holds(rule, Fraction(across, collar) ** 2, rule.value)
    elif stated is None:
        sides = {holds(rule, area, rule.value * pi * collar ** 2 / 4) for pi in (PI_LOW, PI_HIGH)}
        assert len(sides) == 1
        good = sides.pop()
    else:
        good = holds(rule, measured, stated)
    return Finding(rule.id, subject, 'meets' if good else 'fails', required, measured, None)


def judge_least_area(rule, facts, subject):
    """A flue's area against a printed one; a round flue's is taken at its least."""
    across, measured = facts.known('flue/diameter', None), facts.known('flue/net-area', None)
    if measured is None and across is not None:
        measured = PI_LOW * across ** 2 / 4
    verdict = 'unmeasured' if measured is None else 'meets' if measured >= rule.value else 'fails'
    return Finding(rule.id, subject, verdict, rule.value, measured, None)


def judge_layers(rule, facts, subject):
    need, have = facts.known('listing/pad-r', None), facts.r_value()
    measured = None if have is None else floor(have * RATIO_ONE)
    if need is None:
        return Finding(rule.id, subject, 'by-listing', None, measured, rule.listing)
    if have is None:
        return Finding(rule.id, subject, 'unmeasured', need, None, 'floor/r-value')
    verdict = 'meets' if have * RATIO_ONE >= need else 'fails'
    return Finding(rule.id, subject, verdict, need, measured, None)


def judge_sight(rule, facts, item, key, subject):
    word = facts.known(key, item)
    if word is None:
        return Finding(rule.id, subject, 'unmeasured', rule.value, None, key)
    good = (word == rule.value) == (rule.relation == 'is')
    return Finding(rule.id, subject, 'meets' if good else 'fails', rule.value, word, None)


def judge_applying(rule, facts, item, key, subject):
    if rule.kind == 'seen':
        return judge_sight(rule, facts, item, key, subject)
    if rule.kind == 'collar':
        return judge_flue(rule, facts, subject)
    if rule.id == 'flue-area-stove':
        return judge_least_area(rule, facts, subject)
    if key == 'floor/r-value':
        return judge_layers(rule, facts, subject)
    found = judge_amount(rule, facts, item, key, subject)
    return None if (rule.kind, found.verdict) == ('within', 'not-applicable') else found


def judge(rule, facts, item, key):
    """One finding, or None where the rule does not apply."""
    group = key.split('/')[0]
    nobody_looked = group in REPEATING and item is None
    subject = '/survey/' + (group if nobody_looked else located(key, item))
    unknown, perhaps = None, False
    for asked, test in rule.when:
        if nobody_looked and asked.startswith(group + '/'):
            continue
        answers = {bool(test(value)) for value in facts.within(asked, item)}
        if answers == {False}:
            return None
        unknown = unknown if answers else asked
        perhaps |= len(answers) == 2
    if unknown or nobody_looked:
        return Finding(rule.id, subject, 'unmeasured', None, None, unknown or group)
    found = judge_applying(rule, facts, item, key, subject)
    if perhaps and found and found.verdict == 'fails':
        return found._replace(verdict='too-close')
    return found


def items_of(facts, key):
    items = facts.lists.get(key.split('/')[0])
    return [None] if items is None else range(len(items))


def findings(document, standard):
    """The findings of one standard about stoves and inserts, each different one once."""
    facts, found = Facts(document), []
    for rule in rules_of(standard):
        for key in rule.keys:
            for item in items_of(facts, key):
                finding = judge(rule, facts, item, key)
                if finding is not None and finding not in found:
                    found.append(finding)
    return found


def rule_ids(standard):
    return {rule.id for rule in rules_of(standard)}
