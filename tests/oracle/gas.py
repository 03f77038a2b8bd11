# SPDX-License-Identifier: MIT
"""The oracle for gas in fireplaces: what each rule asks, recomputed from the publications' numbers.

Written apart from the library, with exact fractions. Where each number is from:

- IRC G2420.5.1, IFGC 409.5.1 (cited without edition): shutoff valve in the same room, no more than
  6 ft away, upstream, with access
- IRC 2018 G2420.5.1 to G2420.5.3, IFGC 409.5.2, 409.5.3: valve in the firebox as the maker says; a
  remote valve with ready access, marked, of its own, and fixed piping to within 6 ft, of vented
  decorative appliances and room heaters, and so of no log lighter; at a manifold, any appliance's,
  with ready access, marked, no more than 50 ft away
- NFPA 54-2012 9.6.4 (CMC 1312.4, CPC 1211.5): valve with access, 6 ft; in the fireplace if listed
- NFPA 54-2012 7.7.2.2: no valve left, and the pipe capped, where solid fuel is burned
- NFPA 54-2012 10.6 (CMC 907.1 to 907.3): decorative appliances in vented fireplaces
- NFPA 54-2012 Table 10.6.2.3 (CMC Table 907.2; IRC G2453 from memory): permanent free opening
- IFGC 2024 602.1; IRC G2432: listed
- NFPA 54-2012 12.11.13, CMC 802.10.11, IFGC 2009 501.7: no open fireplace on the vent's flue; IFGC
  2009 501.7.1: access to it; 501.7.2: listed for a factory-built fireplace's flue; 501.7.3: the
  connector ends in the flue
- IRC R1004.4: unvented logs in factory-built fireplaces from 2015, in inserts from 2024
- IRC G2406.2: 6 000 Btu/h in a bathroom, 10 000 in a bedroom; G2445.3: 40 000
- IRC G2445.5 (from memory): 20 Btu/h for each cubic foot of room and rooms open to it; the fuel gas
  code's required volume: 50 ft3 for each 1 000 Btu/h
- UPC 1211.17 of 1994 and 1997: 4 ft; 1211.15, 1211.18: 3 ft, ahead of the union. UMC
  901.3, CABO 2431.1: pipe sealed
- California Energy Code 2013 150.0(e)1: doors; air intake, but on a slab off the outside walls;
  damper blocked open above gas logs, log lighters and decorative appliances where the mechanical
  code (for unlisted logs, Table 907.2) or the instructions require it. Massachusetts: damper
  removed or welded open
- IRC 2015 R315.3: carbon monoxide alarms. California Energy Code: air intake of 6 in2
- common practice: valve no more than 4 ft away, in reach, not in a cabinet
"""
import math
from collections import namedtuple
from fractions import Fraction
from itertools import product
from types import SimpleNamespace

import amounts
import rules as other_rules  # noqa: F401 - before chimneys.py, which it takes in
import chimneys
from amounts import FT

IRC = ('irc-2012', 'irc-2015', 'irc-2018', 'irc-2021', 'irc-2024')
IFGC, IFGC_2009 = ('ifgc-2018', 'ifgc-2024'), 'ifgc-2009'
NFPA, CALIFORNIA, MASSACHUSETTS = 'nfpa-54-2012', 'california-2013', 'massachusetts-gas'
UPC, UMC, CABO, COMMON = 'upc-older', 'umc-older', 'cabo-gas-older', 'common-practice-us'
STANDARDS = IRC + IFGC + (IFGC_2009, NFPA, CALIFORNIA, MASSACHUSETTS, UPC, UMC, CABO, COMMON)

HEIGHTS = (6, 8, 10, 15, 20, 30)
OPENINGS = (8, 13, 20, 29, 39, 51, 64)
INPUTS = ((7800, 14000, 23200, 34000, 46400, 62400, 80000),
          (8400, 15200, 25200, 37000, 50400, 68000, 86000),
          (9000, 16800, 27600, 40400, 55800, 74400, 96400),
          (9800, 18200, 30200, 44600, 62400, 84000, 108800),
          (10600, 20200, 32600, 50400, 68400, 94000, 122200),
          (11200, 21600, 36600, 55200, 76800, 105800, 138600))
BTU = amounts.BTU
FT3 = amounts.VOLUME['ft3']

AMOUNTS = {'gas/valve-distance': 'length', 'gas/fixed-pipe-end': 'length', 'gas/input': 'power',
           'gas/damper-opening': 'area', 'gas/chimney-height': 'length',
           'listing/damper-opening': 'area', 'air/area': 'area', 'gas/space': 'volume'}
ASSUMED = {'gas/appliance': 'none', 'gas/on-fireplace-flue': 'no',
           'insert/in-factory-built': 'no', 'air/on-inner-slab': 'no',
           'gas/in-manufactured-home': 'no'}

Rule = namedtuple('Rule', 'id key relation when kind value')
Finding = namedtuple('Finding', 'standard rule subject verdict relation required measured margin '
                                'dimension')


class Facts:
    """What a document records: amounts with half-widths, and what was seen as words."""

    def __init__(self, document):
        self.unit = document.get('unit')
        whole = document.get('tolerance')
        self.tolerance = amounts.read(whole, 'length', self.unit) if whole is not None else 0
        self.amounts, self.seen = {}, dict(ASSUMED)
        if document['survey'].get('appliance', {}).get('fuel') == 'gas':
            del self.seen['gas/appliance']  # something burns it
        for group, members in document['survey'].items():
            for name, value in members.items() if isinstance(members, dict) else ():
                self.record(f'{group}/{name}', value)
        if 'chimney/construction' not in self.seen:
            self.seen['chimney/construction'] = chimneys.construction(
                SimpleNamespace(choices=self.seen))
        self.seen.setdefault('room/sleeping', self.sleeps())

    def sleeps(self):
        """Where a gas appliance is tells it; of any other nobody is taken to sleep beside it."""
        if self.seen.get('gas/appliance') == 'none':
            return 'no'
        room = self.seen.get('gas/room')
        return room and ('no' if room == 'other' else 'yes')

    def record(self, key, value):
        dimension = AMOUNTS.get(key)
        if dimension is None:
            self.seen[key] = {True: 'yes', False: 'no'}.get(value, value) \
                if isinstance(value, (bool, str)) else None
            return
        tolerance = amounts.read_tolerance(value, dimension, self.unit)
        if tolerance is None:
            tolerance = self.tolerance if dimension == 'length' else 0
        self.amounts[key] = (amounts.read(value, dimension, self.unit), tolerance)

    def value(self, key):
        return self.amounts[key][0] if key in self.amounts else None

    def box(self, key):
        value, tolerance = self.amounts[key]
        return max(0, value - tolerance), value + tolerance


# ---- conditions: a key, and the words that it may have -------------------------------------------

def isnt(*words):
    return lambda word: word not in words


def is_(*words):
    return lambda word: word in words


ANY = ('gas/appliance', isnt('none'))
LOGS = ('gas/appliance', is_('log-set'))
NO_LIGHTER = ('gas/appliance', isnt('log-lighter'))
CHIMNEY = ('gas/vent', is_('chimney'))
UNVENTED = ('gas/vent', is_('unvented'))
IN_ROOM = ('gas/valve-place', is_('in-room'))
THERE = ('gas/valve-place', isnt('none'))
SMALL_ROOM = ('gas/room', is_('bedroom', 'bathroom'))
LISTED, UNLISTED = ('gas/listed', is_('yes')), ('gas/listed', is_('no'))


def kind(*words):
    return ('appliance/kind', is_(*words))


# ---- the rules of a standard ---------------------------------------------------------------------

def seen(rule, key, word, *when):
    return Rule(rule, key, 'is', when, 'seen', word)


def not_seen(rule, key, word, *when):
    return Rule(rule, key, 'is-not', when, 'seen', word)


def at_most(rule, key, limit, *when):
    return Rule(rule, key, 'at-most', when, 'limit', limit)


def volume(rule, feet, heat, *when):
    """So many cubic feet for each so many Btu/h."""
    return Rule(rule, 'gas/space', 'at-least', when, 'volume', Fraction(feet * FT3, heat * BTU))


def valve_nearby(*where):
    """Present, 6 ft, with access, upstream; `where` the valve has to be for the last three."""
    return [not_seen('gas-valve-present', 'gas/valve-place', 'none', ANY),
            at_most('gas-valve-distance', 'gas/valve-distance', 6 * FT, ANY, *where),
            not_seen('gas-valve-access', 'gas/valve-access', 'none', ANY, *where),
            seen('gas-valve-upstream', 'gas/valve-upstream', 'yes', ANY, *where)]


def valve_elsewhere():
    """A remote valve, which no log lighter may have; or one at a manifold."""
    remote, lighter = ('gas/valve-place', is_('remote')), ('gas/appliance', is_('log-lighter'))
    manifold = ('gas/valve-place', is_('manifold'))
    rules = [seen('gas-valve-place', 'gas/valve-place', 'in-room', lighter,
                  ('gas/valve-place', is_('in-room', 'remote'))),
             seen('gas-valve-sole', 'gas/valve-serves-others', 'no', ANY, NO_LIGHTER, remote),
             at_most('gas-fixed-piping', 'gas/fixed-pipe-end', 6 * FT, ANY, NO_LIGHTER, remote),
             at_most('gas-manifold-distance', 'gas/valve-distance', 50 * FT, ANY, manifold)]
    for place in ((ANY, NO_LIGHTER, remote), (ANY, manifold)):
        rules += [seen('gas-valve-ready-access', 'gas/valve-access', 'ready', *place),
                  seen('gas-valve-identified', 'gas/valve-identified', 'yes', *place)]
    return rules


def valve_in_firebox(who):
    return seen('gas-valve-in-firebox', 'gas/valve-by-listing', 'yes', who,
                ('gas/valve-place', is_('in-firebox')))


def openings():
    return [Rule('damper-open-area', 'gas/damper-opening', 'at-least', (LOGS, CHIMNEY, UNLISTED),
                 'table', None),
            Rule('damper-open-area-listed', 'gas/damper-opening', 'at-least',
                 (LOGS, CHIMNEY, LISTED), 'listing', 'listing/damper-opening')]


def sealed_off():
    return seen('gas-fireplace-sealed', 'gas/fireplace-sealed', 'yes', ANY,
                ('gas/on-fireplace-flue', is_('yes')))


def shared_flue():
    """A gas appliance on a fireplace's flue: access, listed for a factory-built one, or led in."""
    joined = (ANY, ('gas/on-fireplace-flue', is_('yes')))
    return [seen('gas-flue-access', 'gas/flue-access', 'yes', *joined),
            seen('gas-factory-built-flue', 'gas/listed-for-flue', 'yes', *joined,
                 ('chimney/construction', is_('factory-built'))),
            seen('gas-into-flue', 'gas/into-flue', 'yes', *joined,
                 ('chimney/construction', is_('masonry')))]


def shut_by_mistake(who, *more):
    return not_seen('damper-for-gas', 'damper/state', 'working', who, CHIMNEY, *more)


def residential(standard):
    year = int(standard[-4:])
    small = (ANY, NO_LIGHTER, UNVENTED)
    rules = valve_nearby(IN_ROOM) + openings() + [
        seen('gas-logs-listed', 'gas/listed', 'yes', LOGS), shut_by_mistake(LOGS),
        at_most('unvented-bathroom-input', 'gas/input', 6000 * BTU, *small,
                ('gas/room', is_('bathroom'))),
        at_most('unvented-bedroom-input', 'gas/input', 10000 * BTU, *small,
                ('gas/room', is_('bedroom'))),
        seen('unvented-mounting', 'gas/wall-mounted', 'yes', *small, SMALL_ROOM),
        seen('unvented-oxygen-shutoff', 'gas/oxygen-shutoff', 'yes', *small, SMALL_ROOM),
        seen('unvented-one', 'gas/more-heaters', 'no', *small, SMALL_ROOM),
        at_most('unvented-input', 'gas/input', 40000 * BTU, *small),
        volume('unvented-volume', 1, 20, *small),
        volume('gas-air-volume', 50, 1000, *small, SMALL_ROOM)]
    if year == 2018:
        rules += valve_elsewhere() + [valve_in_firebox(ANY)]
    if year == 2015:
        rules += [seen('co-alarm', 'alarms/co-near-bedrooms', 'yes'),
                  seen('co-alarm-in-bedroom', 'alarms/co-in-bedroom', 'yes',
                       ('room/sleeping', is_('yes')))]
    if year >= 2015:
        rules.append(seen('unvented-logs', 'gas/listed-in-fireplace', 'yes',
                          kind('factory-built-fireplace'), LOGS, UNVENTED))
    if year >= 2024:
        rules.append(seen('unvented-logs-insert', 'gas/listed-in-fireplace', 'yes',
                          kind('insert'), LOGS, UNVENTED))
    return rules


def fuel_gas(standard):
    rules = valve_nearby(IN_ROOM) + valve_elsewhere() + [
        shut_by_mistake(LOGS),
        seen('unvented-sole-heat', 'gas/sole-heat', 'no', ANY, NO_LIGHTER, UNVENTED),
        volume('gas-air-volume', 50, 1000, ANY, NO_LIGHTER, UNVENTED)]
    if standard == 'ifgc-2024':
        rules.append(seen('gas-logs-listed', 'gas/listed', 'yes', LOGS))
    return rules


def national(standard):
    vented = (LOGS, CHIMNEY)
    rules = valve_nearby(THERE) + openings() + [
        valve_in_firebox(LOGS), sealed_off(),
        seen('gas-open-pipe', 'gas/open-pipe', 'no', ('appliance/fuel', is_('wood')),
             ('gas/appliance', is_('none')),
             ('appliance/kind', isnt('stove', 'pellet-stove', 'masonry-heater'))),
        seen('gas-working-flue', 'gas/working-flue', 'yes', *vented),
        seen('gas-thermostat', 'gas/thermostat', 'no', *vented),
        seen('gas-screen', 'gas/screen', 'yes', *vented),
        seen('gas-manufactured-home', 'gas/listed-for-manufactured-home', 'yes', *vented,
             ('gas/in-manufactured-home', is_('yes'))),
        seen('gas-room', 'gas/room', 'other', *vented, UNLISTED),
        seen('gas-room-volume', 'gas/room-volume', 'yes', *vented, LISTED, SMALL_ROOM)]
    if standard == CALIFORNIA:
        fireplace = kind('masonry-fireplace', 'factory-built-fireplace', 'steel-fireplace-unit')
        by_maker = ('gas/damper-by-maker', is_('yes'))
        others = ('gas/appliance', is_('log-lighter', 'fireplace'))
        no_fire = ('gas/appliance', isnt('log-set', 'insert', 'log-lighter'))
        a_damper = ('damper/state', isnt('removed'))
        rules += [shut_by_mistake(LOGS, UNLISTED), shut_by_mistake(LOGS, LISTED, by_maker),
                  shut_by_mistake(others, by_maker),
                  seen('fireplace-doors', 'glass-doors/cover-opening', 'yes', fireplace),
                  seen('damper-control', 'damper/from-room', 'yes', fireplace, no_fire, a_damper),
                  not_seen('damper-present', 'damper/state', 'removed', fireplace, no_fire),
                  seen('damper-control', 'damper/from-room', 'yes', fireplace,
                       ('gas/appliance', is_('log-lighter')),
                       ('gas/damper-by-maker', is_('no')), a_damper),
                  seen('exterior-air', 'air/duct-state', 'connected', fireplace,
                       ('air/on-inner-slab', is_('no'))),
                  seen('air-damper', 'air/damper-tight', 'yes', fireplace,
                       ('air/duct-state', is_('connected'))),
                  Rule('air-area', 'air/area', 'at-least',
                       (fireplace, ('air/duct-state', is_('connected'))), 'limit',
                       6 * amounts.IN2)]
    return rules


def older(standard):
    if standard == UPC:
        fireplace = ('gas/appliance', isnt('room-heater'))
        heater = ('gas/appliance', is_('room-heater'))
        return [seen('gas-valve-place', 'gas/valve-place', 'in-room', ANY, fireplace),
                at_most('gas-valve-distance', 'gas/valve-distance', 4 * FT, ANY, fireplace, THERE),
                at_most('gas-heater-valve-distance', 'gas/valve-distance', 3 * FT, heater, THERE),
                not_seen('gas-valve-present', 'gas/valve-place', 'none', heater),
                seen('gas-valve-upstream', 'gas/valve-upstream', 'yes', heater, THERE)]
    if standard == MASSACHUSETTS:
        return [seen('damper-removed-or-welded', 'damper/state', 'fixed-open', LOGS, CHIMNEY,
                     ('damper/state', isnt('removed'))),
                seen('damper-removed-or-welded', 'damper/state', 'removed', LOGS, CHIMNEY,
                     ('damper/state', is_('removed')))]
    return [seen('gas-pipe-entry', 'gas-pipe/entry', 'sealed', ANY,
                 ('gas/appliance', isnt('room-heater')))]


def practice():
    return [at_most('gas-valve-distance', 'gas/valve-distance', 4 * FT, ANY, IN_ROOM),
            not_seen('gas-valve-access', 'gas/valve-access', 'none', ANY, THERE,
                     ('gas/valve-access', isnt('cabinet'))),
            not_seen('gas-valve-cabinet', 'gas/valve-access', 'cabinet', ANY, THERE)]


def rules_of(standard):
    """The rules about gas of a standard, those of other matters left out."""
    if standard in IRC:
        return residential(standard)
    if standard in IFGC:
        return fuel_gas(standard)
    if standard in (NFPA, CALIFORNIA):
        return national(standard)
    if standard == IFGC_2009:
        return shared_flue() + [
            sealed_off(), seen('insert-into-flue', 'insert/into-flue', 'yes', kind('insert'),
                               ('insert/in-factory-built', is_('no')))]
    if standard in (UPC, UMC, CABO, MASSACHUSETTS):
        return older(standard)
    return practice() if standard == COMMON else []


# ---- judging -------------------------------------------------------------------------------------

def opening_for(height, heat):
    """The lower row, the next larger opening; None where the table ends."""
    rows = [cells for least, cells in zip(HEIGHTS, INPUTS) if least * FT <= height]
    if not rows:
        return None
    return next((opening * amounts.IN2 for opening, most in zip(OPENINGS, rows[-1])
                 if heat <= most * BTU), None)


def met(rule, measured, required):
    if required is None:
        return 'unmeasured'
    good = measured >= required if rule.relation == 'at-least' else measured <= required
    return 'meets' if good else 'fails'


def spread(facts, key, marks=()):
    low, high = facts.box(key)
    return sorted({low, high} | {mark + off for mark in marks for off in (-1, 0, 1)
                                 if low <= mark + off <= high})


def demands(rule, facts):
    """Every requirement that there may be within the tolerances."""
    if rule.kind == 'limit':
        return [rule.value]
    if rule.kind == 'listing':
        return spread(facts, rule.value)
    if rule.kind == 'volume':
        return [math.ceil(heat * rule.value) for heat in spread(facts, 'gas/input')]
    heights = spread(facts, 'gas/chimney-height', [height * FT for height in HEIGHTS])
    inputs = spread(facts, 'gas/input', [cell * BTU for row in INPUTS for cell in row])
    return {opening_for(height, heat) for height, heat in product(heights, inputs)}


def required_of(rule, facts):
    """What is required as measured; 'missing' where something for it is not recorded."""
    if rule.kind == 'limit':
        return rule.value
    if rule.kind == 'listing':
        return facts.value(rule.value) if facts.value(rule.value) is not None else 'missing'
    height, heat = facts.value('gas/chimney-height'), facts.value('gas/input')
    if rule.kind == 'volume':
        return 'missing' if heat is None else math.ceil(heat * rule.value)
    return 'missing' if height is None or heat is None else opening_for(height, heat)


def judge_amount(rule, facts, finding):
    measured, required = facts.value(rule.key), required_of(rule, facts)
    finding = finding._replace(measured=measured)
    if required == 'missing':
        return finding._replace(verdict='by-listing' if rule.kind == 'listing' else 'unmeasured')
    if required is None:
        return finding._replace(verdict='unmeasured')
    finding = finding._replace(required=required)
    if measured is None:
        return finding._replace(verdict='unmeasured')
    margin = measured - required if rule.relation == 'at-least' else required - measured
    found = {met(rule, value, demand) for value in spread(facts, rule.key)
             for demand in demands(rule, facts)} | {met(rule, measured, required)}
    verdict = met(rule, measured, required)
    if 'fails' in found:
        verdict = 'fails' if found == {'fails'} else 'too-close'
    return finding._replace(verdict=verdict, margin=margin)


def judge_sight(rule, facts, finding):
    word = facts.seen.get(rule.key)
    finding = finding._replace(required=rule.value, measured=word)
    if word is None:
        return finding._replace(verdict='unmeasured')
    good = (word == rule.value) == (rule.relation == 'is')
    return finding._replace(verdict='meets' if good else 'fails')


def judge(rule, facts, standard):
    nothing = Finding(standard, rule.id, '/survey/' + rule.key, 'not-applicable', rule.relation,
                      None, None, None, AMOUNTS.get(rule.key))
    words = [(facts.seen.get(key), test) for key, test in rule.when]
    if any(word is not None and not test(word) for word, test in words):
        return nothing
    if any(word is None for word, _ in words):
        return nothing._replace(verdict='unmeasured')
    return (judge_sight if rule.kind == 'seen' else judge_amount)(rule, facts, nothing)


def findings(document, standard):
    """All findings about gas of one standard, those that do not apply included."""
    facts = Facts(document)
    return [judge(rule, facts, standard) for rule in rules_of(standard)]
