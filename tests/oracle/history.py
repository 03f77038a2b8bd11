# SPDX-License-Identifier: MIT
"""Older rules, recomputed from the publications' numbers. Where each is from:

- Farmers' Bulletin 1230 (about 1921): 13 in2 of flue for each ft2 of opening; also said to be 1/10
- Farmers' Bulletin 1889 (1941): lined flue of a chimney of 22 ft and more 1/12, otherwise 1/10;
  hearth 16 in from the breast, 8 in at each side, 4 in thick there; mantel 8 in; walls 8 in, of
  stone 12 in
- National Board of Fire Underwriters (1950s): 20 in from the breast, 12 in at each side, hearth and
  support 6 in, for every opening
- Solon, Ohio: hearth 20 in, 16 in, 4 in thick; flue 45 in2; walls 6 1/2 in
- Norton, Ohio (1981): flue 70 in2; 1/12 above 22 ft, 1/10 below; exactly 22 ft not covered
- Uniform Building Code, Lake Forest, Illinois (1994): round 1/12, least 50 in2; other 1/10, least
  64 in2; unlined 1/8, least 100 in2 (UBC alone); chimney 14 ft above the damper (Lake Forest alone)
- Uniform Building Code, as a handout has it: damper 90 % of the flue, of 12 gauge; 2 in from the
  walls
- Wisconsin: as the UBC, but least 75 in2; hearth 4 in; linings that touch staggered by 7 in, as in
  Lake Forest
- Minimum Property Standards: 1/8 where the chimney is under 15 ft above the throat, else 1/10
- 16 in and 8 in, from 6 ft2 on 20 in and 12 in: IRC 2000, 2003, NFPA 211 (from the
  facing), Technical Notes 19 (1980) of the brick industry where the larger hearth is followed;
  Standard Building Code 16 in (from the facing) and 8 in under 6 ft2, larger openings not stated
- trim 6 in away, projecting an eighth of the distance within 12 in: IRC 2000, 2003, 2009, UBC,
  CABO, Technical Notes 19A (with a firestop 1 in deep), Florida 2023 (above; beside as the Standard
  Building Code); NFPA 211 and Standard Building Code: above 6 in, 12 in where it projects more
  than 1 1/2 in; Standard Building Code beside: 6 in, and the projection where it is more
- Technical Notes 19: walls 8 in, joints 1/4 in, air gap 1 in behind the brick
- IRC 2003 R1001.6: chimney 3 ft above the roof, 2 ft above any part of the building within 10 ft
"""
from fractions import Fraction

import chimneys
import rules
from amounts import FT, FT2, IN, IN2
from observed import OUTSIDE, amount, choice, every, judge, least, of, other, same, seen
from rules import Expression, fixed, net_area, scaled, stepped, taper

NET, FACING = 'flue/net-area', 'hearth/from-facing'
STANDARDS = ('usda-fb1230-1921', 'usda-fb1889-1941', 'nbfu-1950s', 'solon-oh', 'norton-oh-1981',
             'lake-forest-1994', 'wisconsin', 'ubc-1970s-1997', 'fha-mps', 'irc-2000', 'irc-2003',
             'irc-2009', 'cabo-1989-1995', 'sbc-1990s', 'bia-1980', 'bia-19a',
             'nfpa-211-fireplaces', 'florida-building-2023')


def area_row(survey, rule, required, applies, marks=None):
    """On the flue's net area, which no table of these publications gives for a named liner."""
    area = None if known_by_liner(survey) else net_area(survey)
    return amount(rule, NET, 'at-least', applies, area, required, 'area', marks)


def known_by_liner(survey):
    return not (survey.has(NET) or survey.has('flue/diameter')
                or survey.has('flue/width', 'flue/depth'))


def by_height(survey, key, height, shorter, taller, gap):
    def required(opening, tall):
        if gap and tall == height:
            return OUTSIDE
        return opening * (taller if tall >= height else shorter)

    return of((survey.opening(), survey.one(key)), required)


def with_least(survey, round_least, sided_least):
    opening = survey.opening()
    liner = choice(survey, 'flue/liner')
    shape = rules.liner_shape(liner) if liner else choice(survey, 'flue/shape')
    if survey.has('flue/diameter') or shape == 'round':
        part, lowest = Fraction(1, 12), round_least
    elif shape or survey.has('flue/width', 'flue/depth'):
        part, lowest = Fraction(1, 10), sided_least
    else:
        return None
    return of((opening,), lambda area: max(area * part, lowest))


def from_facing(survey):
    if survey.has(FACING):
        return survey.one(FACING)
    return of((survey.one('hearth/front'), survey.one('hearth/facing')),
              lambda front, facing: front - facing)


def flat_hearth(survey, front, side, applies, facing):
    rows = [least(survey, 'hearth-side', f'hearth/{where}', side, applies)
            for where in ('left', 'right')]
    if facing:
        rows.append(amount('hearth-from-facing', FACING, 'at-least', applies, from_facing(survey),
                           fixed(front)))
    else:
        rows.append(least(survey, 'hearth-front', 'hearth/front', front, applies))
    return rows


def stepped_hearth(survey, applies, facing=False, beyond=True):
    """16 and 8 in, from 6 ft2 on 20 and 12 in, or there nothing."""
    def size(small, large):
        return stepped(survey.opening(), 6 * FT2, small, large if beyond else OUTSIDE)

    front = size(16 * IN, 20 * IN)
    rows = [amount('hearth-side', f'hearth/{where}', 'at-least', applies,
                   survey.one(f'hearth/{where}'), size(8 * IN, 12 * IN))
            for where in ('left', 'right')]
    if facing:
        rows.append(amount('hearth-from-facing', FACING, 'at-least', applies, from_facing(survey),
                           front))
    else:
        rows.append(amount('hearth-front', 'hearth/front', 'at-least', applies,
                           survey.one('hearth/front'), front))
    return rows


def pieces(survey, applies):
    """(key, whether its rules apply) of each piece of trim on the face that can burn."""
    for piece in range(survey.trim or 0):
        key = f'trim/{piece}'
        yield key, every(applies, same(choice(survey, key + '/combustible', 'yes'), 'yes'),
                         same(choice(survey, key + '/place', 'on-face'), 'on-face'))


def taper_rows(survey, applies, limits=(('trim-distance', 6 * IN),), tapered=True):
    named = {'zone': 6 * IN, 'within': 12 * IN, 'ratio': Fraction(1, 8)}
    rows = []
    for key, applied in pieces(survey, applies):
        distance = key + '/distance'
        rows += [least(survey, rule, distance, limit, applied) for rule, limit in limits]
        if tapered:
            rows.append(amount('trim-projection', key + '/projection', 'at-most', applied,
                               survey.one(key + '/projection'), taper(survey, named, distance),
                               marks={distance: (6 * IN, 12 * IN)}))
    return rows


def flat_rows(survey, applies, beside):
    """Above 6 in, and 12 in where a piece projects further than 1 1/2 in; beside as told."""
    rows, edge = [], 3 * IN // 2
    for key, applied in pieces(survey, applies):
        side, distance = choice(survey, key + '/side'), survey.one(key + '/distance')
        out = survey.one(key + '/projection')
        above = of((out,), lambda far: 12 * IN if far > edge else 6 * IN)
        rows.append(amount('trim-distance', key + '/distance', 'at-least',
                           every(applied, same(side, 'above')), distance, above,
                           marks={key + '/projection': (edge,)}))
        rows.append(beside(survey, key, every(applied, other(side, 'above')), distance, out, edge))
    return rows


def beside_by_nfpa(survey, key, applies, distance, out, edge):
    return amount('trim-distance', key + '/distance', 'at-least', applies, distance,
                  fixed(6 * IN))


def beside_by_sbc(survey, key, applies, distance, out, edge):
    wide = of((out,), lambda far: 6 * IN + (far if far > edge else 0))
    return amount('trim-side-clearance', key + '/distance', 'at-least', applies, distance, wide,
                  marks={key + '/projection': (edge,)})


# ---- each publication ----------------------------------------------------------------------------

def bulletin_1921(survey, brick):
    tenth = survey.readings.get('flue-share-1921') == 'tenth'
    share = Fraction(1, 10) if tenth else Fraction(13, 144)
    return [area_row(survey, 'flue-area', scaled(survey.opening(), share), brick)]


def bulletin_1941(survey, brick):
    lining, key = choice(survey, 'flue/lining'), 'flue/above-hearth'
    lined = by_height(survey, key, 22 * FT, Fraction(1, 10), Fraction(1, 12), False)
    return (flat_hearth(survey, 16 * IN, 8 * IN, brick, True)
            + taper_rows(survey, brick, (('trim-distance', 8 * IN),), tapered=False)
            + [area_row(survey, 'flue-area', lined, every(brick, other(lining, 'none')),
                        {key: (22 * FT,)}),
               area_row(survey, 'flue-area', scaled(survey.opening(), Fraction(1, 10)),
                        every(brick, same(lining, 'none'))),
               least(survey, 'hearth-extension-thickness', 'hearth/extension-thickness', 4 * IN,
                     brick),
               *(least(survey, 'firebox-wall', 'firebox/wall-thickness', inches * IN,
                       every(brick, same(choice(survey, 'firebox/walls', 'brick'), built)))
                 for built, inches in (('brick', 8), ('stone', 12)))])


def nbfu(survey, brick):
    return (flat_hearth(survey, 20 * IN, 12 * IN, brick, True)
            + [least(survey, 'hearth-with-support', 'hearth/with-support', 6 * IN, brick)])


def solon(survey, brick):
    return (flat_hearth(survey, 20 * IN, 16 * IN, brick, False)
            + [least(survey, 'hearth-extension-thickness', 'hearth/extension-thickness', 4 * IN,
                     brick),
               area_row(survey, 'flue-area-least', fixed(45 * IN2), brick),
               least(survey, 'firebox-wall', 'firebox/wall-thickness', 13 * IN // 2, brick)])


def norton(survey, brick):
    key = 'flue/above-hearth'
    share = by_height(survey, key, 22 * FT, Fraction(1, 10), Fraction(1, 12), True)
    return [area_row(survey, 'flue-area-least', fixed(70 * IN2), brick),
            area_row(survey, 'flue-area', share, brick, {key: (22 * FT,)})]


def masonry_chimney(survey):
    return every(other(choice(survey, 'appliance/kind'), 'factory-built-fireplace'),
                 same(choice(survey, 'chimney/construction', 'masonry'), 'masonry'))


def stagger(survey):
    touching = same(choice(survey, 'chimney/flues', 'single'), 'touching')
    return least(survey, 'liner-stagger', 'chimney/joint-stagger', 7 * IN,
                 every(masonry_chimney(survey), touching))


def lake_forest(survey, brick):
    """The height is that of a fireplace or an appliance; where neither is told it is said once."""
    kind = choice(survey, 'appliance/kind')
    return [area_row(survey, 'flue-area', with_least(survey, 50 * IN2, 64 * IN2), brick),
            *(least(survey, 'chimney-above-damper', 'flue/above-damper', 14 * FT, applies)
              for applies in ((brick,) if kind is None else (brick, kind == 'stove'))),
            stagger(survey)]


def wisconsin(survey, brick):
    return [area_row(survey, 'flue-area', with_least(survey, 75 * IN2, 75 * IN2), brick),
            least(survey, 'hearth-thickness', 'hearth/thickness', 4 * IN, brick), stagger(survey)]


def ubc(survey, brick):
    lining = choice(survey, 'flue/lining')
    unlined = of((survey.opening(),), lambda area: max(area * Fraction(1, 8), 100 * IN2))
    flue = (None if known_by_liner(survey)
            else scaled(net_area(survey, rules.circle_as_requirement), Fraction(9, 10)))
    rows = [least(survey, rule, f'fireplace/{side}-clearance', 2 * IN, brick)
            for rule, side in (('fireplace-clearance', 'front'), ('fireplace-clearance', 'side'),
                               ('fireplace-clearance-back', 'back'))]
    return (rows + taper_rows(survey, brick)
            + [area_row(survey, 'flue-area', with_least(survey, 50 * IN2, 64 * IN2),
                        every(brick, other(lining, 'none'))),
               area_row(survey, 'flue-area', unlined, every(brick, same(lining, 'none'))),
               amount('damper-area', 'damper/area', 'at-least', brick, survey.one('damper/area'),
                      flue, 'area'),
               amount('damper-gauge', 'damper/gauge', 'at-most',
                      every(brick, other(choice(survey, 'damper/state'), 'removed')),
                      count_of(survey, 'damper/gauge'), fixed(12), 'count')])


def count_of(survey, key):
    value = survey.choices.get(key)
    return None if value is None else fixed(int(value))


def fha(survey, brick):
    key = 'flue/above-throat'
    share = by_height(survey, key, 15 * FT, Fraction(1, 8), Fraction(1, 10), False)
    return [area_row(survey, 'flue-area', share, brick, {key: (15 * FT,)})]


def hearth_and_taper(survey, brick):
    return stepped_hearth(survey, brick) + taper_rows(survey, brick)


def irc_2003(survey, brick):
    masonry = masonry_chimney(survey)
    return (hearth_and_taper(survey, brick)
            + [least(survey, 'chimney-height', 'chimney/height-above-roof', 3 * FT, masonry)]
            + nearby_rows(survey, masonry))


def nearby_rows(survey, masonry):
    """2 ft above every part within 10 ft."""
    rule, count = 'chimney-height-nearby', survey.lists.get('nearby')
    if count is None:
        return [amount(rule, 'nearby', 'at-least', None if masonry else masonry, None, None)]
    rows = []
    for index in range(count):
        distance, required = f'nearby/{index}/distance', None
        if survey.has(distance):
            required = Expression((distance,), lambda point, key=distance:
                                  2 * FT if point[key] <= 10 * FT else None)
        rows.append(amount(rule, f'nearby/{index}/top-above', 'at-least', masonry,
                           chimneys.top_above(survey, f'nearby/{index}'), required,
                           marks={distance: (10 * FT,)}))
    return rows


def sbc(survey, brick):
    return (stepped_hearth(survey, brick, facing=True, beyond=False)
            + flat_rows(survey, brick, beside_by_sbc))


def notes_19(survey, brick):
    joint = 'firebox/joint-width'
    by_area = survey.readings.get('bia-hearth') == 'by-area'
    return ((stepped_hearth(survey, brick) if by_area
             else flat_hearth(survey, 16 * IN, 8 * IN, brick, False))
            + [least(survey, 'firebox-wall', 'firebox/wall-thickness', 8 * IN, brick),
               least(survey, 'firebox-air-gap', 'firebox/air-gap', IN, brick),
               amount('firebox-joint', joint, 'at-most', brick, survey.one(joint),
                      fixed(IN // 4))])


def nfpa(survey, brick):
    return (stepped_hearth(survey, brick, facing=True)
            + [least(survey, 'hearth-extension-thickness', 'hearth/extension-thickness', 2 * IN,
                     brick),
               seen('hearth-beneath', 'hearth/covers-beneath', 'is', 'yes',
                    every(brick, same(choice(survey, 'hearth/overhung', 'no'), 'yes')), survey)]
            + flat_rows(survey, brick, beside_by_nfpa))


def notes_19a(survey, brick):
    return taper_rows(survey, brick) + [
        least(survey, 'fireblock', 'fireplace/fireblock-depth', IN, brick)]


def florida(survey, brick):
    """As the building code: the taper above, the whole projection on top beside."""
    named = {'zone': 6 * IN, 'within': 12 * IN, 'ratio': Fraction(1, 8)}
    rows, edge = [], 3 * IN // 2
    for key, applied in pieces(survey, brick):
        side, distance = choice(survey, key + '/side'), key + '/distance'
        out = survey.one(key + '/projection')
        rows += [least(survey, 'trim-distance', distance, 6 * IN, applied),
                 amount('trim-projection', key + '/projection', 'at-most',
                        every(applied, same(side, 'above')), out, taper(survey, named, distance),
                        marks={distance: (6 * IN, 12 * IN)}),
                 beside_by_sbc(survey, key, every(applied, other(side, 'above')),
                               survey.one(distance), out, edge)]
    return rows


ROWS = dict(zip(STANDARDS, (bulletin_1921, bulletin_1941, nbfu, solon, norton, lake_forest,
                            wisconsin, ubc, fha, hearth_and_taper, irc_2003, taper_rows,
                            taper_rows, sbc, notes_19, notes_19a, nfpa, florida)))


def rows(survey, standard):
    brick = same(choice(survey, 'appliance/kind'), 'masonry-fireplace')
    return ROWS[standard](survey, brick) if standard in ROWS else []


def findings(survey, standard):
    """All findings of an older standard, those that do not apply included."""
    return [judge(row, survey, standard) for row in rows(survey, standard)]


rules.QUANTITIES.update({
    'flue.above-hearth': 'length', 'flue.above-throat': 'length', 'flue.above-damper': 'length',
    'hearth.facing': 'length', 'hearth.from-facing': 'length', 'hearth.with-support': 'length',
    'firebox.wall-thickness': 'length', 'firebox.joint-width': 'length',
    'firebox.air-gap': 'length',
    'fireplace.front-clearance': 'length', 'fireplace.side-clearance': 'length',
    'fireplace.back-clearance': 'length', 'chimney.joint-stagger': 'length',
    'chimney.height-above-roof': 'length', 'fireplace.fireblock-depth': 'length'})
