# SPDX-License-Identifier: MIT
"""The codes of the oracle for stoves and inserts: NFPA 211, IRC, IMC, New York City, and NASD 1254.

Where each number is from:

- NFPA 211-2010 (cited): 12.4.5.1 flue 1 to 3 times the collar, 2 times where exposed; Table
  12.6.2.1, a third is left of 66 per cent, none of thinner board; floor by open space; shielded
  connectors 6 (or half of 18) and 9 in; pass-throughs A to E
- Univ./NASD 1254: 36 in, 12 in from a wall behind vented masonry, 18 in of pad all round
- IRC Table M1306.2, whose heads are what is required without protection; M1306.2.1 (12 in for
  solid fuel); shields 1 in off
- IMC 2015 Table 308.6, interpolated, steel 1 in off, its brick rows not legible; 308.4.1
- IMC 2018 chapter 8, as New Jersey adopted it: cleanout 6 in high and 6 in below the inlet,
  linings; IMC 2006 805 (cited): Type HT
- New York City Mechanical Code 801.6, 801.7, 801.10.1, 804.3.8, Tables 803.8 and 803.9(1)
- ASTM E1509, scope: a pellet stove's clearances and pad are those of its label
"""
from fractions import Fraction

from amounts import IN
from stove_rules import (BACK, CEILING, CLEARANCES, FRONT, HELD_OFF, INSERT, LISTED, NOT_ALLOWED,
                         NO_FLOOR, PELLET, SHIELDED, SIDE, SIDES, STOVE, THROUGH, UNLISTED, WALL,
                         bare, between, by_listing, clearance, floor_by_legs, flue, flue_most, is_,
                         isnt, kind, least, make, most, no_less_than_12, not_printed, not_reduced,
                         not_seen, option, pipe, plus, reduced, seen, shield)

NFPA, NASD, IMC, NYC = 'nfpa-211-2010', 'nasd-1254', 'imc-2015', 'nyc-mechanical'
IMC_2006, IMC_2018, E1509 = 'imc-2006', 'imc-2018', 'astm-e1509'
IRC = ('irc-2012', 'irc-2015', 'irc-2018', 'irc-2021', 'irc-2024')

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
        yield from at_least_or_as_bare(wall, shield(word), WALL)
        if ceiling:
            yield from at_least_or_as_bare(ceiling, shield(word), CEILING)
        else:
            yield not_reduced(shield(word), CEILING)


def at_least_or_as_bare(left, *when):
    """The table's least distance, and whether it asks for more than the bare surface does."""
    share, least_of_all = left[0], left[1] * IN
    for what, way in (('shielded', 'as-bare'), ('share', 'stands')):
        yield option(reduced(what, (share, least_of_all), STOVE, *when), 'shield-minimum', way)


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
    solid = (INSERT, isnt('gas/appliance', 'insert'))
    for who in (solid, (STOVE, is_('connector/into', 'fireplace-chimney'))):
        rules += [flue(1, *who), flue_most(3, *who, is_('insert/chimney-exposed', 'no')),
                  flue_most(2, *who, is_('insert/chimney-exposed', 'yes'))]
    shielded = (STOVE, is_('connector/shield', 'protected'))
    protector = NO_FLOOR[0]
    return rules + [
        *(seen(rule, key, 'yes', *who)
          for who in (solid, (STOVE, is_('connector/into', 'fireplace-chimney')))
          for rule, key in (('insert-reaches-liner', 'insert/reaches-liner'),
                            ('insert-connector', 'insert/connector-stainless'))),
        floor_by_legs('solid-masonry-and-steel', 6 * IN, 10 ** 12, *NO_FLOOR,
                      isnt('floor/protection', 'hollow-masonry-and-steel')),
        floor_by_legs('hollow-masonry-and-steel', 2 * IN, 6 * IN, *NO_FLOOR),
        floor_by_legs('noncombustible-floor', 0, 2 * IN, protector),
        seen('shield-spacers', 'wall/spacers-combustible', 'no', STOVE, HELD_OFF),
        seen('shield-spacer-place', 'wall/spacer-behind-appliance', 'no', STOVE, HELD_OFF),
        not_reduced(shield('thin-board-vented')), bare(),
        *(option(pipe(left * IN, *shielded, keys=CLEARANCES[0],
                      rule='connector-clearance-shielded-wall'), 'pipe-reduction', way)
          for left, way in ((9, 'half'), (6, 'two-thirds'))),
        pipe(9 * IN, *shielded, keys=CLEARANCES[1], rule='connector-clearance-shielded-ceiling'),
        not_seen('connector-hidden', 'connector/passes', 'hidden', STOVE)]


def nasd():
    pad = (STOVE, UNLISTED, *NO_FLOOR)
    return [clearance(36 * IN, STOVE, UNLISTED, isnt('wall/protection', 'masonry-vented')),
            clearance(36 * IN, STOVE, UNLISTED, shield('masonry-vented'), CEILING),
            least('stove-clearance-reduced', 'wall/clearance', 12 * IN, STOVE, UNLISTED,
                  shield('masonry-vented'), WALL, listing='wall/by-listing'),
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
        not_reduced(shield('thin-board-vented')), bare(),
        reduced('listing', None, STOVE, shield('listed-assembly')),
        no_less_than_12(STOVE, SHIELDED, isnt('wall/protection', 'listed-assembly')),
        least('shield-air-space', 'wall/air-space', IN, *vented),
        least('shield-edge-gap', 'wall/edge-gap', IN, *vented),
        not_seen('shield-open-edges', 'wall/open-edges', 'closed', *vented, WALL,
                 is_('wall/corner', 'no')),
        seen('shield-open-edges', 'wall/open-edges', 'bottom-and-top', *vented, WALL,
             is_('wall/corner', 'yes')),
        make('shield-extent', 'wall/beyond-shield', 'at-least',
             (STOVE, isnt('wall/protection', 'none', 'listed-assembly')), 'share',
             (Fraction(1), 0), 'wall/unprotected'),
        *(seen('shared-flue', 'stove/other-on-flue', 'no', *who)
          for who in ((STOVE,), (PELLET,), (INSERT, isnt('gas/appliance', 'insert'))))]


def mechanical():
    unread = ('masonry', 'masonry-vented', 'board-vented', 'thin-board-vented')
    held_off = [word for word in IMC_TABLE if word != 'board-over-batts']
    return list(grid(IMC_TABLE, (36, 18, 9, 6), 'line')) + [
        *(make('stove-clearance-reduced', 'wall/clearance', 'at-least', (STOVE, shield(word)),
               'not-printed', listing='wall/by-listing') for word in unread), bare(),
        *(least('shield-air-space', 'wall/air-space', IN, STOVE, shield(word))
          for word in held_off),
        reduced('listing', None, STOVE, shield('listed-assembly')),
        no_less_than_12(STOVE, SHIELDED, isnt('wall/protection', 'listed-assembly'))]


def new_york():
    solid, vent = isnt('connector/kind', 'vent'), is_('connector/kind', 'vent')

    def sheet(thousandths, size, *who):
        return least('connector-thickness', 'connector/thickness', thousandths * IN // 1000, *who,
                     size)

    rules = [seen(rule, key, 'yes', *who)
             for who in ((INSERT,), (STOVE, is_('connector/into', 'fireplace-chimney')))
             for rule, key in (('insert-seal', 'insert/sealed'),
                               ('insert-access', 'insert/cleanable'))]
    alone = is_('connector/several', 'no')
    for who in ((INSERT, isnt('gas/appliance', 'insert')), (STOVE,)):
        rules += [flue(1, who[0], alone), flue_most(3, *who, alone)]
    fan = (is_('flue/draft-fan', 'yes'), isnt('appliance/kind', 'pellet-stove'))
    return rules + [
        seen('detector-with-draft-fan', 'alarms/smoke-and-co-in-room', 'yes', *fan),
        seen('detector-battery-backup', 'alarms/battery-backup', 'yes', *fan),
        seen('detector-failure-warning', 'alarms/warns-of-failure', 'yes', *fan),
        sheet(22, between(0, 5, True, True), STOVE, solid),
        sheet(28, between(5, 10, False, True), STOVE, solid),
        sheet(34, between(10, 16, False, True), STOVE, solid),
        sheet(64, between(16, 1000, False), STOVE, solid),
        sheet(19, between(0, 6), vent), sheet(23, between(6, 10), vent),
        sheet(29, between(10, 12, True, True), vent), sheet(34, between(14, 16, True, True), vent),
        sheet(56, between(16, 1000, False), vent),
        not_printed('connector-thickness', 'connector/thickness', vent, between(12, 14, False))]


def chimneys_2018():
    masonry = is_('chimney/construction', 'masonry')
    cleaned = (isnt('appliance/kind', 'masonry-fireplace', 'steel-fireplace-unit', 'insert',
                    'factory-built-fireplace'), masonry)
    return [least('cleanout-inlet', 'cleanout/below-inlet', 6 * IN, *cleaned),
            least('cleanout-height', 'cleanout/height', 6 * IN, *cleaned),
            not_seen('liner-specification', 'chimney/liner-spec', 'none', masonry,
                     isnt('appliance/kind', 'factory-built-fireplace'))]


def chimneys_2006():
    return [seen('factory-chimney-type-ht', 'factory/type-ht', 'yes', STOVE,
                 is_('connector/into', 'factory-built-chimney'))]


def pellets():
    return [by_listing('stove-clearance', 'wall/clearance', 'wall/by-listing', PELLET, LISTED),
            by_listing('floor-protection-before-body', 'floor/front', FRONT, PELLET, LISTED),
            by_listing('floor-protection-beside-body', ('floor/left', 'floor/right'), SIDE, PELLET,
                       LISTED),
            by_listing('floor-protection-behind-body', 'floor/back', BACK, PELLET, LISTED),
            by_listing('floor-r-value', 'floor/r-value', 'listing/pad-r', PELLET, LISTED)]


RULES = {IMC_2006: chimneys_2006(), IMC_2018: chimneys_2018(), E1509: pellets(), NFPA: nfpa(),
         NASD: nasd(), IMC: mechanical(), NYC: new_york(),
         **dict.fromkeys(IRC, residential())}
