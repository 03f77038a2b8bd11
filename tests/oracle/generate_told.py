# SPDX-License-Identifier: MIT
"""Survey documents for the older rules and for what is observed, as generate.py makes them."""
import conditions
import generate
import generate_chimneys
import history
import rules
from amounts import FT, IN, IN2
from generate import near, near_area

KINDS = ('masonry-fireplace', 'insert', 'factory-built-fireplace', 'steel-fireplace-unit',
         'masonry-heater', 'stove', 'pellet-stove')
FLAGS = ('panels.broken', 'panels.mortar-gap', 'panels.lintel-gap', 'signs.soot',
         'signs.chimney-fire', 'smoke-chamber.edges', 'flue.edges', 'flue.obstructed',
         'glass-doors.listed', 'listing.clearances-stated', 'occasion.sale',
         'creosote.before-season', 'creosote.cleaned-in-year', 'inspection.within-year',
         'occasion.fuel-change', 'occasion.relining', 'occasion.event', 'occasion.hidden-damage')
CHOICES = {
    'appliance.fuel': ('wood', 'gas'),
    'damper.state': ('working', 'stuck', 'removed', 'fixed-open', 'blocked-open'),
    'air.duct-state': ('connected', 'blocked', 'missing', 'none'),
    'creosote.kind': ('none', 'soft', 'flaky', 'glazed'),
    'flue.lining': ('sound', 'cracked', 'missing', 'none'),
    'glass-doors.kind': ('none', 'loose', 'gasketed'),
    'gas.appliance': ('none', 'log-set', 'log-lighter', 'insert'),
    'gas-pipe.entry': ('sealed', 'gap'),
    'listing.label': ('listed', 'no-label', 'home-made'),
    'gas.vent': ('chimney', 'chimney', 'direct', 'unvented'),
    'occasion.appliance-change': ('none', 'same', 'other'),
}
OBSERVED = (conditions.PRACTICE, conditions.MISSOURI, conditions.G1735, conditions.INSPECTIONS,
            conditions.MAKERS, *conditions.DOORS)


SHINY = ('flakes-too', 'glaze-alone')
READINGS = {'flue-share-1921': ('per-square-foot', 'tenth'), 'bia-hearth': ('one-size', 'by-area')}


class Older(generate.Maker):
    """Documents of fireplaces that stand in old houses."""

    def piece(self):
        piece = super().piece()
        piece['side'] = self.source.one(('above', 'left', 'right'))
        if 'projection' in piece and self.source.chance(0.5):
            piece['projection'] = self.written('trim.projection', near(self.source, 3 * IN // 2))
        return piece

    def heights(self):
        self.put('flue.above-hearth', near(self.source, 22 * FT))
        self.put('flue.above-throat', near(self.source, 15 * FT))
        self.put('flue.above-damper', near(self.source, 14 * FT))
        self.put('chimney.height-above-roof', near(self.source, 3 * FT))
        self.put('chimney.joint-stagger', near(self.source, 7 * IN))
        self.choose('chimney.flues', self.source.one(('single', 'separate', 'touching')), 0.7)
        self.choose('chimney.construction', self.source.one(('masonry', 'factory-built')), 0.5)

    def masonry(self):
        self.put('hearth.facing', near(self.source, 3 * IN, spread=2 * IN))
        self.put('hearth.from-facing', near(self.source, self.source.one((16, 20)) * IN), 0.4)
        self.put('hearth.with-support', near(self.source, 6 * IN))
        self.put('firebox.wall-thickness',
                 near(self.source, self.source.one((8 * IN, 13 * IN // 2))))
        self.put('firebox.joint-width', near(self.source, IN // 4, spread=IN))
        if self.source.chance(0.5):
            self.put('hearth.extension-thickness', near(self.source, 4 * IN))
        self.put('firebox.air-gap', near(self.source, IN, spread=IN))
        self.choose('damper.gauge', self.source.one((11, 12, 13)), 0.8)
        self.choose('damper.state', self.source.one(('working', 'removed')), 0.8)
        for side in ('front', 'side', 'back'):
            self.put(f'fireplace.{side}-clearance', near(self.source, 2 * IN, spread=2 * IN))

    def parts(self):
        self.choose('firebox.walls', self.source.one(('brick', 'stone')), 0.6)
        self.choose('hearth.overhung', self.source.chance(0.7), 0.7)
        self.choose('hearth.covers-beneath', self.source.chance(0.5), 0.8)
        self.put('fireplace.fireblock-depth', near(self.source, IN, spread=IN))
        if self.source.chance(0.3):
            self.put('firebox.wall-thickness', near(self.source, 12 * IN))

    def small_flue(self):
        """A flue about as small as the least that some rules allow."""
        self.groups['opening'] = {}
        for path in ('opening.width', 'opening.height', 'opening.area'):
            self.exact.pop(path, None)
        self.put('opening.area', self.source.whole(300, 1200) * IN2, 1)
        least = self.source.one((45, 50, 64, 70, 75, 100)) * IN2
        self.put('flue.net-area', near_area(self.source, least, IN2), 1)
        self.choose('flue.shape', self.source.one(('round', 'square', 'rectangular')), 0.9)

    def damper_area(self):
        self.put('damper.area', near_area(self.source, self.net_area() * 9 // 10, IN2))

    def older(self, identity):
        self.opening()
        self.hearth()
        self.masonry()
        self.parts()
        self.groups['trim'] = [self.piece() for _ in range(self.source.whole(0, 3))]
        self.small_flue() if self.source.chance(0.4) else self.flue()
        self.heights()
        self.damper_area()
        self.choose('flue.lining', self.source.one(CHOICES['flue.lining']))
        self.choose('appliance.kind', 'masonry-fireplace', 0.95)
        if self.source.chance(0.8):
            self.groups['nearby'] = [generate_chimneys.nearby(self, 3 * FT)
                                     for _ in range(self.source.whole(0, 2))]
        first = self.source.one(history.STANDARDS)
        second = self.source.one(history.STANDARDS)
        if first == second == 'lake-forest-1994':  # its height is that of a stove as well
            self.groups['appliance'] = {'kind': 'stove'}
        document = self.finished(identity, [first] if first == second else [first, second])
        if self.source.chance(0.5):
            document['readings'] = {reading: self.source.one(options)
                                    for reading, options in READINGS.items()}
        return document

    def observed(self, identity):
        self.choose('appliance.kind', self.source.one(KINDS), 0.97)
        for path in FLAGS:
            self.choose(path, self.source.chance(0.4), 0.8)
        for path, options in CHOICES.items():
            self.choose(path, self.source.one(options), 0.85)
        self.put('panels.crack', near(self.source, IN // 16, spread=IN // 8))
        self.put('listing.panel-crack', near(self.source, IN // 8, spread=IN // 8), 0.2)
        self.put('panels.wear', near(self.source, IN // 4, spread=IN // 4))
        self.put('creosote.thickness',
                 near(self.source, self.source.one((IN // 8, IN // 4)), spread=IN // 4))
        self.choose('creosote.looks-a-month', str(self.source.whole(0, 4)), 0.85)
        if self.source.chance(0.85):
            self.choose('inspection.level', str(self.source.whole(0, 3)))
        if self.source.chance(0.8):
            self.groups['trim'] = [self.seen_piece() for _ in range(self.source.whole(0, 3))]
        document = self.finished(identity, list(OBSERVED))
        if self.source.chance(0.4):
            document['readings'] = {'shiny-deposit': self.source.one(SHINY)}
        return document

    def seen_piece(self):
        piece = {}
        if self.source.chance(0.5):
            piece['combustible'] = self.source.chance(0.7)
        if self.source.chance(0.8):
            piece['scorched'] = self.source.chance(0.4)
        return piece

    def finished(self, identity, standards):
        document = {'id': identity, 'standards': standards}
        if self.unit:
            document['unit'] = self.unit
        if self.document_tolerance:
            document['tolerance'] = self.document_tolerance
        document['survey'] = {name: group for name, group in self.groups.items()
                              if group or name in ('trim', 'nearby')}
        return document


def lines(count, what, **habits):
    """So many documents, one a line; `what` is older or observed."""
    return [generate.written(getattr(Older(f'{what} {index}', **habits), what)(f'{what}-{index}'))
            for index in range(count)]


assert set(rules.QUANTITIES) >= {'panels.crack', 'flue.above-hearth'}
