# SPDX-License-Identifier: MIT
"""Made-up chimneys, walls, air supplies, factory-built units and heaters for the oracle's surveys.

Each measure lies at or about one of the amounts that the rules ask for.
"""
import generate
import rules
from amounts import DEGREE, FT, IN, IN2, RATIO_ONE

# Measures with the amounts they lie about; in inches where nothing else is said.
WALLS = {'firebox.wall-thickness': (8, 10), 'firebox.lining-thickness': (2,),
         'damper.height': (8,), 'smoke-chamber.wall-thickness': (6, 8),
         'fireplace.front-clearance': (2,), 'fireplace.side-clearance': (2,),
         'fireplace.back-clearance': (4,), 'fireplace.wall-contact-distance': (12,),
         'fireplace.fireblock-depth': (1,), 'footing.thickness': (12,), 'footing.projection': (6,)}
CHIMNEY = {'chimney.wall-nominal': (4,), 'chimney.flue-spacing': (4,),
           'chimney.joint-stagger': (4,), 'chimney.clearance': (1, 2),
           'chimney.wall-contact-distance': (8, 12), 'chimney.trim-distance': (8, 12),
           'chimney.corner-overlap': (1,), 'chimney.corbel-projection': (4, 6),
           'chimney.corbeled-wall': (8, 12), 'chimney.size-change-distance': (6,),
           'chimney.width': (30, 36)}
STOVES = {'chimney.liner-below-inlet': (8,), 'cleanout.above-base': (6,),
          'cleanout.below-inlet': (6,), 'cleanout.height': (6,)}
HEATERS = {'heater.clearance': (4, 36), 'heater.wall-thickness': (8,),
           'heater.channel-wall-thickness': (5,), 'heater.ceiling-clearance': (8,),
           'heater.floor-thickness': (4,)}
FLAGS = ('chimney.changes-size', 'chimney.listed-for-contact', 'chimney.in-masonry-wall',
         'chimney.trim-abuts', 'chimney.meets-ridge', 'fireplace.listed-for-contact',
         'fireplace.in-masonry-wall',
         'spark-arrestor.present', 'rain-cap.present', 'air.room-pressurized', 'air.duct-listed',
         'accessories.present', 'heater.ceiling-combustible')
SEEN = {'smoke-chamber.parged': (True, False), 'chimney.wall-solid': (True, False),
        'chimney.liner-spec': ('approved', 'listed', 'none'), 'cricket.present': (True, False),
        'accessories.by-listing': (True, False), 'air.intake-above-firebox': (True, False),
        'air.outlet-closable': (True, False), 'air.outlet-embers': (True, False),
        'factory.through-insulation': (True, False),
        'factory.hearth-distinguishable': (True, False),
        'flue.lining': ('sound', 'none', 'missing'), 'factory.manual-silent': (True, False),
        'listing.label': ('listed', 'no-label'),
        'air.intake-place': ('outdoors', 'ventilated-space', 'indoors'),
        'air.outlet-place': ('firebox', 'hearth-level', 'elsewhere'),
        'air.duct-state': ('connected', 'connected', 'missing', 'blocked')}
CHOSEN = {'firebox.lining': ('none', 'firebrick', 'other'),
          'smoke-chamber.lining': ('none', 'firebrick', 'clay'),
          'chimney.construction': ('masonry', 'factory-built'),
          'chimney.place': ('interior', 'exterior'),
          'chimney.liner': ('clay', 'listed-system', 'other', 'stainless'),
          'chimney.corbel': ('none', 'one-side', 'both-sides'),
          'chimney.flues': ('single', 'separate', 'touching')}
KINDS = ('factory-built-fireplace', 'factory-built-fireplace', 'steel-fireplace-unit',
         'steel-fireplace-unit', 'masonry-heater', 'masonry-heater', 'stove', 'stove',
         'pellet-stove')
SLOPES = ((12, 12), (8, 12), (6, 12), (4, 12), (3, 12), (7, 12), (5, 24), (1, 3))


def about(maker, measures):
    for path, limits in measures.items():
        maker.put(path, generate.near(maker.source, maker.source.one(limits) * IN))


def fine(maker, path, limits):
    """A measure of fractions of an inch."""
    maker.put(path, generate.near(maker.source, maker.source.one(limits), spread=IN // 4))


def slope(maker):
    rise, run = maker.source.one(SLOPES)
    return RATIO_ONE * rise // run


def choices(maker):
    source = maker.source
    for path in FLAGS:
        if source.chance(0.3):
            maker.choose(path, source.chance(0.5))
    for path, options in SEEN.items():
        maker.choose(path, source.one(options), 0.7)
    for path, options in CHOSEN.items():
        maker.choose(path, source.one(options), 0.4)


def roof(maker):
    source = maker.source
    height = generate.near(source, source.one((3, 4, 6)) * FT)
    maker.put('chimney.height-above-roof', height)
    maker.put('roof.slope', slope(maker))
    maker.put('cricket.height', generate.near(source, source.one((12, 15, 18)) * IN))
    if source.chance(0.2):
        return
    maker.groups['nearby'] = [nearby(maker, height) for _ in range(source.whole(0, 3))]


def nearby(maker, height):
    source, item = maker.source, {}
    part = {'distance': generate.near(source, source.one((5, 10, 10)) * FT)}
    way = source.one(('rise', 'rise', 'slope', 'slope', 'top-above'))
    if way == 'slope':
        part['slope'] = slope(maker)
    elif way == 'rise':
        part['rise'] = generate.near(source, max(0, height - 2 * FT))
    else:
        part['top-above'] = generate.near(source, 2 * FT)
    for name, value in part.items():
        if maker.full or source.chance(0.85):
            item[name] = maker.written(f'nearby.{name}', value)
    return item


def caps(maker):
    area = 4 * maker.net_area()
    if 'flue.diameter' in maker.exact:
        # Four times a circle's area lies up to 4 nm2 above four times the whole number below it.
        area = 4 * rules.circle(maker.exact['flue.diameter']) + maker.source.whole(0, 4)
    for path in ('spark-arrestor.net-area', 'rain-cap.net-area'):
        maker.put(path, min(generate.near_area(maker.source, area, IN2), 13000 * IN2))
    fine(maker, 'spark-arrestor.mesh', (3 * IN // 8, IN // 2))


def air(maker):
    source = maker.source
    if source.chance(0.5):
        maker.put('air.diameter', generate.near(source, source.one((11 * IN // 4, 3 * IN, 8 * IN,
                                                                    9 * IN)), spread=2 * IN))
    else:
        maker.put('air.area', generate.near_area(source, source.one((6, 55)) * IN2, IN2))
    fine(maker, 'air.screen-mesh', (IN // 4,))
    fine(maker, 'air.duct-clearance', (IN,))
    maker.put('air.duct-clearance-at', generate.near(source, 5 * FT))
    maker.put('air.outlet-distance', generate.near(source, 24 * IN))


def joints(maker):
    fine(maker, 'firebox.joint-width', (IN // 4,))
    fine(maker, 'smoke-chamber.lining-thickness', (2 * IN, 5 * IN // 8))
    maker.put('footing.frost-depth', maker.source.one((0, 30 * IN, 42 * IN)))
    maker.put('footing.depth', generate.near(maker.source, maker.source.one((12, 30, 42)) * IN))
    limit = 30 * DEGREE
    maker.put('flue.slope', limit + maker.source.one((0, 9, -9, DEGREE, -10 * DEGREE)))


def factory(maker):
    source = maker.source
    maker.put('flue.bends', source.whole(2, 6))
    maker.put('factory.shield-above-insulation', generate.near(source, 2 * IN))
    fine(maker, 'factory.shield-thickness', (187 * IN // 10000,))
    maker.put('listing.chimney-elbows', source.whole(2, 6), 0.5)
    maker.put('listing.chimney-offset', source.one((15, 30, 45)) * DEGREE, 0.5)
    for path in ('listing.hearth-front', 'listing.hearth-side'):
        maker.put(path, generate.near(source, 16 * IN), 0.5)
    maker.put('listing.heater-clearance', generate.near(source, 16 * IN))


def parts(maker):
    """All of a chimney and what goes with it, or now and then nothing of it."""
    if maker.source.chance(0.25):
        return
    about(maker, WALLS)
    about(maker, CHIMNEY)
    for part in (choices, roof, caps, air, joints):
        part(maker)


def other_kind(maker):
    """A survey of something that is neither masonry fireplace nor insert; its kind."""
    kind = maker.source.one(KINDS)
    maker.hearth()
    fine(maker, 'firebox.lining-thickness', (IN // 4,))
    maker.put('firebox.masonry-thickness', generate.near(maker.source, 4 * IN))
    about(maker, STOVES)
    about(maker, HEATERS)
    factory(maker)
    return kind


AMENDMENTS = {
    'chimney-height': {'limit': '4 ft'},
    'chimney-height-nearby': {'limit': '3 ft', 'within': '12 ft'},
    'chimney-clearance': {'with': '1 1/2 in', 'without': '3 in'},
    'cricket-height': {'divisor': '3'},
    'spark-arrestor-area': {'ratio': '5'},
    'air-area': {'limit': '7 in2'},
    'flue-slope': {'limit': '25 deg'},
    'factory-chimney-elbows': {'limit': '3'},
    'trim-side-clearance': {'projecting': '2 in', 'limit': '7 in'},
}
