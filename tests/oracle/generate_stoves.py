# SPDX-License-Identifier: MIT
"""Made-up surveys of stoves and inserts for the oracle, the same ones for the same seed.

Amounts lie at the limits of the rules, one base unit, one sixteenth of an inch or one millimetre
beside them, and anywhere between.
"""
import amounts
import generate
import stove_facts
import stoves
from amounts import FT, IN, IN2
from rules import circle
from stove_facts import READINGS

MM = amounts.NM_PER_MM
WORDS = {
    'listing.label': ('listed',) * 3 + ('no-label', 'home-made'),
    'stove.type': ('radiant', 'circulating'),
    'flue.lining': ('sound', 'none'),
    'chimney.construction': ('masonry', 'masonry', 'factory-built'),
    'floor.protection': ('none', 'ember', 'solid-masonry-and-steel', 'hollow-masonry-and-steel',
                         'noncombustible-floor', 'listed-protector', 'hollow-masonry-and-top',
                         'solid-masonry', 'hollow-masonry'),
    'gas.appliance': ('none', 'none', 'none', 'room-heater', 'insert'),
    'insert.connection': ('none', 'listed-liner', 'listed-liner', 'sealed'),
    'connector.kind': ('single-wall', 'single-wall', 'listed-double-wall', 'vent'),
    'connector.into': ('masonry-chimney', 'fireplace-chimney', 'fireplace-chimney',
                       'open-fireplace-flue', 'factory-built-chimney', 'factory-built-fireplace'),
    'connector.passes': ('nothing', 'wall', 'wall', 'hidden'),
    'connector.shield': ('none', 'protected', 'insulation-or-metal'),
    'pass-through.assembly': ('brick', 'chimney-length', 'vented-thimble', 'wide-chimney-length',
                              'listed', 'other'),
    'air.duct-state': ('connected', 'connected', 'blocked', 'missing', 'none'),
    'gas.appliance': ('none', 'none', 'none', 'log-set', 'insert', 'fireplace', 'room-heater'),
    'gas.vent': ('chimney', 'direct', 'direct', 'unvented'),
    'chimney.liner-spec': ('clay', 'listed', 'approved', 'none'),
}
FLAGS = ('insert.chimney-exposed', 'insert.reaches-liner', 'insert.connector-stainless',
         'insert.sealed', 'insert.cleanable', 'insert.in-factory-built',
         'insert.listed-for-fireplace', 'room.window', 'room.confined', 'floor.on-carpet',
         'connector.past-liner', 'stove.other-on-flue', 'listing.clearances-stated',
         'factory.insulation-touches', 'factory.mixed-parts', 'connector.male-end-down',
         'alarms.co-in-home', 'alarms.smoke-in-home', 'alarms.smoke-and-co-in-room',
         'alarms.battery-backup', 'alarms.warns-of-failure', 'flue.draft-fan', 'factory.type-ht',
         'outlet.stack-braced', 'connector.several', 'stove.small-special')
COUNTS = {'connector.elbows': (1, 2, 3), 'connector.screws': (2, 3, 4),
          'room.volume': ('299 ft3', '300 cu ft', '8.495053977599 m3', '8.4950539776 m3'),
          'connector.gauge': (16, 17, 20, 21, 22, 23, 24, 25, 26, 27)}
KINDS = ('stove',) * 7 + ('insert',) * 3 + ('pellet-stove',) * 3 + (
    'factory-built-fireplace', 'factory-built-fireplace', 'masonry-fireplace', 'masonry-heater')
# The limits of each length, in inches; some in millimetres.
LIMITS = {
    'connector.diameter': (5, 6, 7, 8, 10, 12, 13, 14, 16, 18),
    'connector.wall-clearance': (3, 6, 9, 18), 'connector.ceiling-clearance': (6, 9, 18),
    'connector.run': (72, 120, 144), 'connector.first-rise': (24,),
    'connector.overlap': (2,), 'collar.diameter': (6, 8),
    'stove.leg-height': (2, 6), 'stove.width': (22, 24), 'stove.depth': (20, 24),
    'floor.beside-connector': (2,), 'floor.door-front': (16,), 'floor.door-left': (8,),
    'floor.door-right': (8,), 'floor.width': (38, 40, 60), 'floor.depth': (44, 48, 56),
    'pass-through.clearance': (2, 6, 9, 12, 18, 24), 'pass-through.insulation': (1,),
    'pass-through.diameter': (8, 9, 10, 12), 'pass-through.length': (12,),
    'pass-through.opening': (20, 22), 'hearth.front': (16,), 'hearth.left': (8,),
    'hearth.right': (8,), 'chimney.clearance': (2,), 'room.furniture': (36,),
    'insert.liner-diameter': (6, 8), 'cleanout.below-inlet': (6,), 'cleanout.height': (6,),
    'flue.height': (144,), 'flue.above-base': (180,), 'gas.back-clearance': (1,),
    'gas.side-clearance': (1,), 'gas.top-clearance': (12,)}
METRIC = {'floor.front': (450,), 'floor.left': (200,), 'floor.right': (200,), 'floor.back': (200,),
          'insert.hearth-front': (450,), 'insert.body-left': (200,), 'insert.body-right': (200,)}
ALSO = {'floor.front': (6, 18), 'floor.left': (18,), 'floor.right': (18,), 'floor.back': (8, 18)}
LISTED = {'listing.hearth-front': (16, 18), 'listing.hearth-side': (6, 8),
          'listing.hearth-back': (6, 8), 'listing.floor-beside-connector': (2,),
          'listing.pad-thickness': (1,), 'listing.connector-clearance': (3, 6, 9),
          'listing.chimney-clearance': (1, 2), 'listing.unbraced-height': (36, 60),
          'listing.flue-height': (144,), 'listing.flue-above-base': (180,),
          'listing.gas-back-clearance': (1,), 'listing.gas-side-clearance': (1,),
          'listing.gas-top-clearance': (12,), 'listing.gas-trim-distance': (6, 12),
          'listing.gas-trim-projection': (2,), 'listing.gas-hearth-front': (16,),
          'listing.gas-hearth-side': (8,)}
SHEETS = (19, 22, 23, 28, 29, 34, 56, 64)
PROTECTIONS = ('none', 'masonry', 'board-over-batts', 'masonry-vented', 'steel-over-batts',
               'steel-vented', 'board-vented', 'double-steel-vented', 'batts-between-steel',
               'thin-board-vented', 'listed-assembly')
SURFACES = ('wall', 'ceiling')
CIRCLES = ('collar.diameter', 'connector.diameter', 'flue.diameter')

LIMITED = ('limit', 'usual', 'usual-if-labelled')
RULES = [(standard, rule) for standard in stoves.STANDARDS for rule in stoves.rules_of(standard)]


def seen_at(path):
    """What can be seen of a thing; nothing of an amount."""
    if path in FLAGS:
        return (False, True)
    return {'appliance.kind': KINDS, 'wall.protection': PROTECTIONS, 'wall.surface': SURFACES,
            **WORDS}.get(path, ())


class Maker:
    """Makes one document."""

    def __init__(self, seed, uncertain):
        self.source = generate.Source(seed)
        self.full = self.source.chance(0.6)
        self.uncertain = uncertain and self.source.chance(0.5)
        self.groups = {}

    def put(self, path, value, share=0.8):
        if self.full or self.source.chance(share):
            group, name = path.split('.')
            self.groups.setdefault(group, {})[name] = value

    def written(self, path, value, dimension='length'):
        text = generate.exact_text(self.source, value, dimension)
        if self.uncertain and path not in CIRCLES and self.source.chance(0.5):
            return {'value': text, 'tolerance': self.source.one(('1/16 in', '1/2 in', '3 mm'))}
        return text

    def near(self, mark):
        """At a mark, in base units, or beside it by a step of some tape."""
        step = self.source.one((0, 0, 0, 1, IN // 16, MM, IN))
        return max(0, mark + step * self.source.one((-1, 1)))

    def length(self, path, marks, share=0.8):
        value = self.near(self.source.one(marks))
        self.put(path, self.written(path, value), share)
        return value

    def lengths(self):
        for path, inches in LIMITS.items():
            self.length(path, [each * IN for each in inches])
        for path, millimetres in METRIC.items():
            marks = [each * MM for each in millimetres] + [each * IN for each in
                                                           ALSO.get(path, ())]
            self.length(path, marks)
        for path, inches in LISTED.items():
            if self.source.chance(0.2):
                self.length(path, [each * IN for each in inches])
        for path, eighths in (('floor.thickness', (3, 8)), ('floor.top-thickness', (2,)),
                              ('pass-through.liner-thickness', (5,)),
                              ('hearth.extension-thickness', (3,))):
            self.length(path, [each * IN // 8 for each in eighths])
        sheet = self.source.one(SHEETS) * IN // 1000 + self.source.one((-1, 0, 0, 1))
        self.put('connector.thickness', self.written('connector.thickness', sheet))
        self.length('connector.chimney-height', (16 * FT, 8 * FT))
        self.length('connector.rise', (3 * IN // 2, 5 * IN // 2, 3 * IN))

    def flue(self):
        collar = self.source.one((6, 6, 8)) * IN
        self.put('collar.diameter', self.written('collar.diameter', collar))
        if self.source.chance(0.4):
            across = collar + self.source.one((-1, 0, 0, 1, IN, 4 * IN, 5 * IN))
            self.put('flue.diameter', self.written('flue.diameter', across), 0.9)
        else:
            area = self.source.one((1, 2, 3)) * circle(collar)
            area = self.source.one((area - 9, area + 9, 49 * IN2, 84 * IN2, 121 * IN2, 28 * IN2,
                                    40 * IN2))
            self.put('flue.net-area', generate.exact_text(self.source, area, 'area'), 0.9)
        for name in ('least', 'most'):
            if self.source.chance(0.1):
                area = generate.exact_text(self.source, self.source.one((49, 84)) * IN2, 'area')
                self.put('listing.flue-area-' + name, area)

    def wall(self):
        source, wall = self.source, {'protection': self.source.one(PROTECTIONS)}
        if source.chance(0.2):
            del wall['protection']
        if source.chance(0.7):
            wall['surface'] = source.one(SURFACES)
        unprotected = source.one((36, 36, 18, 12, 9, 6, 27, 15, 10, 48, 5, 24)) * IN
        clearance = source.one((36, 24, 18, 16, 12, 9, 6, 5, 4, 3, 2)) * IN
        if source.chance(0.3):
            clearance = unprotected // source.one((1, 2, 3, 4))
        for name, value in (('unprotected', source.one((unprotected, unprotected,
                                                        self.near(unprotected)))),
                            ('clearance', self.near(source.one((clearance, 1200 * MM, 900 * MM,
                                                                clearance, clearance)))),
                            ('air-space', self.near(source.one((IN, 21 * MM)))),
                            ('edge-gap', self.near(IN)),
                            ('beyond-shield', self.near(unprotected))):
            if self.full or source.chance(0.8):
                wall[name] = self.written('wall.' + name, value)
        if source.chance(0.15):
            wall['by-listing'] = self.written('wall.by-listing', self.near(clearance))
        for name, words in (('open-edges', ('bottom-and-top', 'side-and-top', 'closed')),
                            ('corner', (True, False)), ('in-front', (True, False)),
                            ('spacers-combustible', (True, False)),
                            ('spacer-behind-appliance', (True, False))):
            if self.full or source.chance(0.7):
                wall[name] = source.one(words)
        return wall

    def layer(self):
        source = self.source
        way = source.one(('k', 'k', 'r-per-inch', 'c', 'r-value', None))
        layer = {'thickness': generate.exact_text(source, source.one((4, 8, 16, 36)) * IN // 8,
                                                  'length')}
        if source.chance(0.5):
            layer['material'] = source.one(('other', 'common-brick', 'face-brick', 'cement-mortar',
                                            'ceramic-tile', 'slate', 'granite'))
        if way:
            layer[way] = source.one(('0.84', '5', '0.2', '1.92', '4', '0.45'))
        if source.chance(0.3):
            layer['thickness'] = {'value': layer['thickness'], 'tolerance': '1/16 in'}
        return layer

    def roof(self):
        """The chimney's top, and what stands near it; a part's distance is always recorded."""
        self.length('chimney.height-above-roof', (3 * FT, 5 * FT, 6 * FT))
        if self.source.chance(0.8):
            self.groups['nearby'] = [self.part() for _ in range(self.source.whole(0, 2))]

    def part(self):
        distance = generate.exact_text(self.source, self.near(10 * FT), 'length')
        part = {'distance': distance}
        if self.source.chance(0.9):
            part['top-above'] = self.written('nearby.top-above', self.near(2 * FT))
        return part

    def mantel(self):
        distance = self.near(self.source.one((6, 12)) * IN)
        piece = {'distance': self.written('trim.distance', distance),
                 'projection': self.written('trim.projection', self.near(2 * IN))}
        if self.source.chance(0.4):
            piece['combustible'] = self.source.chance(0.7)
        return piece

    def pad(self):
        if self.source.chance(0.7):
            self.groups['layer'] = [self.layer() for _ in range(self.source.whole(0, 3))]
        if self.source.chance(0.7):
            self.put('listing.pad-r', self.source.one(('0', '0', '0', '1.19', '0.595', '0.8', '2',
                                                       '5.5')))

    def fit(self, key, test):
        """Records something seen by which a condition holds."""
        group, name = key.split('/')
        if group == 'reading':
            return
        fitting = [word for word in seen_at(f'{group}.{name}')
                   if test({True: 'yes', False: 'no'}.get(word, word))]
        for holder in self.holders(group) if fitting else ():
            holder[name] = self.source.one(fitting)

    def holders(self, group):
        held = self.groups.setdefault(group, [{}] if group in stove_facts.REPEATING else {})
        return held if isinstance(held, list) else [held]

    def aim(self, rule, turn):
        """Makes a rule apply that chance would seldom bring about, and leads to its limit, by turns
        to the one side of it and to the other."""
        for key, test in rule.when:
            self.fit(key, test)
        if rule.listing == 'listing/pad-r':
            self.groups['listing'] = {'label': 'listed', 'pad-r': self.source.one(('0.595', '5.5'))}
            self.groups['layer'] = [{'thickness': '1 in', 'k': '0.84'}]
        limit = rule.value if rule.kind in LIMITED else self.source.one((1, 6, 12)) * IN
        listing = rule.kind.startswith('usual') or rule.kind == 'listing'
        if listing and self.source.chance(0.95):
            self.groups.setdefault('listing', {})['label'] = 'listed'
        if rule.listing == 'listing/pad-r':
            self.groups.setdefault('listing', {})['pad-r'] = ('0.1', '9')[turn % 2]
            self.groups['layer'] = [self.layer() | {'k': '5'}]
        elif listing and self.source.chance(0.95):
            group, name = rule.listing.split('/')
            for holder in self.holders(group):
                holder[name] = generate.exact_text(self.source, limit, 'length')
        for key in rule.keys if rule.kind in (*LIMITED, 'listing') else ():
            group, name = key.split('/')
            step = (-1) ** turn * self.source.one((1, IN // 16, limit // 4, limit // 2))
            for holder in self.holders(group) if stove_facts.AMOUNTS.get(key) == 'length' else ():
                holder[name] = generate.exact_text(self.source, max(0, limit + step), 'length')

    def document(self, place):
        source = self.source
        self.put('appliance.kind', source.one(KINDS), 0.95)
        for path, words in WORDS.items():
            self.put(path, source.one(words))
        for path in FLAGS:
            self.put(path, source.chance(0.5))
        for path, numbers in COUNTS.items():
            self.put(path, source.one(numbers))
        self.lengths()
        self.flue()
        self.pad()
        self.roof()
        if source.chance(0.9):
            self.groups['wall'] = [self.wall() for _ in range(source.whole(0, 4))]
        if source.chance(0.7):
            self.groups['trim'] = [self.mantel() for _ in range(source.whole(0, 2))]
        first, rule = RULES[place % len(RULES)]
        standards = [first]
        standards += [each for each in stoves.STANDARDS
                      if each not in standards and source.chance(0.2)]
        if source.chance(0.85):
            self.aim(rule, place // len(RULES))
        document = {'id': f'stove-{place}', 'standards': standards, 'survey': self.groups}
        readings = {name: source.one(options) for name, options in READINGS.items()
                    if source.chance(0.4)}
        readings.update({key.split('/')[1]: way for key, test in rule.when
                         for way in READINGS.get(key.split('/')[1], ()) if test(way)})
        if readings:
            document['readings'] = readings
        return document


def lines(count, seed='stoves', uncertain=True):
    """So many documents, one a line."""
    return [generate.written(Maker(f'{seed} {index}', uncertain).document(index))
            for index in range(count)]
