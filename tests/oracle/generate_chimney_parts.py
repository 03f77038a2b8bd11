# SPDX-License-Identifier: MIT
"""Made-up smaller parts of fireplaces and chimneys for the oracle's surveys."""
import generate
import rules
from amounts import IN, IN2

SEEN = {'lintel.noncombustible': (True, False), 'hearth.support-noncombustible': (True, False),
        'hearth.form-left': (True, False), 'firebox.air-chamber-ducted': (True, False),
        'damper.ferrous': (True, False), 'damper.from-room': (True, False),
        'damper.state': ('working', 'working', 'stuck', 'removed', 'fixed-open', 'blocked-open'),
        'fireplace.space-fill': ('empty', 'noncombustible', 'combustible'),
        'chimney.space-fill': ('empty', 'noncombustible', 'combustible'),
        'chimney.cap': ('complete', 'lacking', 'none'),
        'spark-arrestor.wire': ('galvanized', 'stainless', 'lighter'),
        'chimney.liner-from-smoke-chamber': (True, False),
        'chimney.liner-past-walls': (True, False), 'chimney.liner-space-vents': (True, False),
        'chimney.pellet-flue': ('lined', 'listed-vent', 'other'),
        'cleanout.cover-noncombustible': (True, False)}
SOMETIMES = {'chimney.corbel-second-storey': (True, False), 'chimney.offset': (True, True, False),
             'chimney.one-wythe': (True, True, False),
             'gas.appliance': ('none', 'log-lighter', 'room-heater', 'insert', 'log-set'),
             'insert.in-factory-built': (True, False)}
# Of what few surveys ask about: recorded nearly always.
SELDOM = ('firebox.air-chamber-ducted', 'chimney.pellet-flue')
INTO = ('masonry-chimney', 'masonry-chimney', 'fireplace-chimney', 'open-fireplace-flue',
        'factory-built-chimney', 'factory-built-fireplace')


def near(maker, path, inches, spread=2):
    maker.put(path, generate.near(maker.source, int(inches * IN), spread=spread * IN // 2))


def connector(maker):
    """A connector about as wide as the flue, with others on it now and then."""
    source, flue = maker.source, maker.groups.get('flue', {})
    if source.chance(0.7):
        maker.choose('connector.into', source.one(INTO))
    if not flue.keys() & {'liner', 'diameter', 'width', 'depth', 'net-area', 'shape'}:
        way = source.one(('diameter', 'net-area', 'liner'))
        if way == 'diameter':
            near(maker, 'flue.diameter', source.one((6, 8, 10)))
        elif way == 'net-area':
            maker.put('flue.net-area', source.one((49, 50, 51, 75, 90, 113, 114)) * IN2)
        else:
            maker.choose('flue.liner', source.one(generate.LINERS))
    if 'flue.diameter' in maker.exact:
        across = maker.exact['flue.diameter'] + source.one((-IN, -1, 0, 0, 1, IN))
    else:
        across = source.one((6, 8, 10)) * IN
    if source.chance(0.6):
        maker.put('connector.diameter', max(IN, across))
    elif not flue or 'shape' in flue or 'liner' in flue:
        maker.put('connector.area', source.one((49, 50, 51, 78, 113)) * IN2)
    if source.chance(0.7):
        maker.choose('connector.several', source.chance(0.8))
        maker.put('connector.others-area', source.one((0, 28, 50, 79)) * IN2)


def parts(maker):
    """Nothing of it now and then, so that what is missing is said to be."""
    source = maker.source
    if source.chance(0.2):
        return
    for path, options in SEEN.items():
        maker.choose(path, source.one(options), 0.9 if path in SELDOM else 0.7)
    for path, options in SOMETIMES.items():
        maker.choose(path, source.one(options), 0.4)
    near(maker, 'chimney.unit-height', 2.25, 1)
    near(maker, 'chimney.unit-bed-depth', 3.625, 1)
    near(maker, 'chimney.corbel-course', source.one((1.125, 1.25)), 1)
    near(maker, 'chimney.flue-offset', 4)
    near(maker, 'chimney.wall-centre', 4)
    near(maker, 'flue.liner-thickness', 0.75, 1)
    near(maker, 'flue.liner-gap', 0.75, 1)
    connector(maker)


AMENDMENTS = {'chimney-corbel-course': {'first': '1/3', 'second': '1/4'},
              'chimney-offset': {'ratio': '1/2'}, 'liner-gap-most': {'ratio': '2'}}
assert set(AMENDMENTS) <= set(rules.NUMBERS)
