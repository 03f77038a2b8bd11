# SPDX-License-Identifier: MIT
"""How the oracle for stoves and inserts writes a rule down: when it applies, what it asks."""
from collections import namedtuple
from fractions import Fraction

from amounts import IN

Rule = namedtuple('Rule', 'id keys relation when kind value source listing')


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
FACTORY = kind('factory-built-fireplace')
LISTED, UNLISTED = is_('listing/label', 'listed'), isnt('listing/label', 'listed')
HELD_OFF = isnt('wall/protection', 'none', 'masonry', 'board-over-batts', 'listed-assembly')
BARE, SHIELDED = is_('wall/protection', 'none'), isnt('wall/protection', 'none')
CEILING, WALL = is_('wall/surface', 'ceiling'), isnt('wall/surface', 'ceiling')
BURNS = is_('trim/combustible', 'yes')
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


def usual(rule, keys, limit, *when, listing, relation='at-least'):
    """The listing decides; where it is not recorded, the limit is what is usual."""
    return make(rule, keys, relation, when, 'usual', limit, listing=listing)


def usual_if_labelled(rule, keys, limit, *when, listing):
    """The same of what has a label; of what has none the limit is required."""
    return make(rule, keys, 'at-least', when, 'usual-if-labelled', limit, listing=listing)


def by_listing(rule, keys, listing, *when, relation='at-least'):
    return make(rule, keys, relation, when, 'listing', None, listing=listing)


def about(rule, key, body, more, times, listed, *when):
    """A body's size, and the figures of its listing, each so many times; usually so much more."""
    return make(rule, key, 'at-least', when, 'about', (more, times, listed), body)


def not_printed(rule, keys, *when):
    """Nothing is printed where it applies."""
    return make(rule, keys, 'at-most', when, 'not-printed')


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


def by_label(*when):
    return make('stove-clearance', 'wall/clearance', 'at-least', when, 'listing', None,
                listing='wall/by-listing')


def reduced(what, value, *when):
    return make('stove-clearance-reduced', 'wall/clearance', 'at-least', when, what, value,
                'wall/unprotected', 'wall/by-listing')


def option(rule, reading, way):
    """A rule that belongs to one way of a reading."""
    return rule._replace(when=(is_('reading/' + reading, way), *rule.when))


def bare(*when):
    """Nothing is taken off what is required without protection."""
    return make('stove-clearance', 'wall/clearance', 'at-least', (STOVE, BARE, *when), 'share',
                NOT_ALLOWED, 'wall/unprotected', 'wall/by-listing')


def not_reduced(*when):
    return reduced('share', NOT_ALLOWED, STOVE, *when)


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


DOOR = {'front': 'floor/door-front', 'sides': ('floor/door-left', 'floor/door-right')}
FRONT, SIDE, BACK = 'listing/hearth-front', 'listing/hearth-side', 'listing/hearth-back'


def between(low, high, low_in=True, high_in=False):
    """A condition on the connector's diameter, in inches."""
    def test(across):
        above = across >= low * IN if low_in else across > low * IN
        return above and (across <= high * IN if high_in else across < high * IN)
    return amount('connector/diameter', test)
