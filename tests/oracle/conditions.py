# SPDX-License-Identifier: MIT
"""What is observed, recomputed from the publications' words. Where each is from:

- common practice, no publication: a panel is replaced where a crack is 1/16 in or wider (but the
  maker's own figure comes first) or where 1/4 in is worn away; missing material and gaps fail;
  loose creosote is cleaned from 1/8 in on and bars burning from 1/4 in on, glaze at any thickness;
  a removed damper bars solid fuel, a working one gas logs
- University of Missouri Extension, as reported: cleaning from 1/8 in on, or at any glaze; a look
  before the season and twice a month in use. G1735: cleaned no less than yearly
- IRC 2015 M1801.3.2: lining whole, flue free of obstruction and of combustible deposits
- IRC 2015 to 2024 R1004.5: gasketed doors only where the factory-built fireplace is listed for
  them
- NFPA 211, levels of inspection: 1 every year, 2 for a sale, another fuel, another kind of
  appliance, relining, an event, a chimney fire; 3 where a hidden hazard is suspected
- 16 CFR 1406.4: the maker states clearances and floor protection
"""
import rules
from amounts import IN
from observed import choice, every, judge, other, same, seen, under, amount
from rules import fixed

PRACTICE, MISSOURI = 'common-practice-us', 'missouri-extension'
G1735 = 'missouri-g1735'
INSPECTIONS, MAKERS = 'nfpa-211-inspections', 'cpsc-1406'
DOORS = ('irc-2015', 'irc-2018', 'irc-2021', 'irc-2024')


def reported(survey):
    """At 1/8 in of loose soot or any shiny, glazed deposit: whether hard flakes are one is read."""
    kind = choice(survey, 'creosote/kind')
    rows = creosote(survey, False)
    if survey.readings.get('shiny-deposit') == 'glaze-alone':
        return rows
    soft = under(survey, 'creosote-cleaning', 'creosote/thickness', IN // 8, same(kind, 'soft'))
    return [rows[0], soft, seen('creosote-shiny-flakes', 'creosote/kind', 'is-not', 'flaky', True,
                                survey)]


def creosote(survey, burning):
    kind = choice(survey, 'creosote/kind')
    loose = other(kind, 'none', 'glazed')
    rows = [seen('creosote-glaze', 'creosote/kind', 'is-not', 'glazed', True, survey),
            under(survey, 'creosote-cleaning', 'creosote/thickness', IN // 8, loose)]
    if burning:
        rows.append(under(survey, 'creosote-burning', 'creosote/thickness', IN // 4, loose))
    return rows


def burns_wood(survey):
    return same(choice(survey, 'appliance/fuel'), 'wood')


def burns_gas(survey):
    """Which appliance burns gas: none, unless gas is the fuel and it was not looked at."""
    fuel = choice(survey, 'appliance/fuel')
    return choice(survey, 'gas/appliance', None if fuel == 'gas' else 'none')


def looks(survey):
    key = 'creosote/looks-a-month'
    times = survey.choices.get(key)
    return [amount('creosote-looks', key, 'at-least', burns_wood(survey),
                   None if times is None else fixed(int(times)), fixed(2), 'count'),
            seen('creosote-before-season', 'creosote/before-season', 'is', 'yes',
                 burns_wood(survey), survey)]


def firebox(survey, kind):
    built = same(kind, 'factory-built-fireplace')
    gas = burns_gas(survey)
    crack = under(survey, 'panel-crack', 'panels/crack', IN // 16, built)
    labelled = survey.choices.get('listing/label', 'listed') == 'listed'
    if built and labelled and survey.has('listing/panel-crack'):
        # A maker states what it allows, that amount included.
        crack = crack._replace(required=survey.one('listing/panel-crack'), relation='at-most')
    rows = [crack,
            under(survey, 'panel-wear', 'panels/wear', IN // 4, built),
            seen('gas-pipe-entry', 'gas-pipe/entry', 'is', 'sealed',
                 other(gas, 'none', 'room-heater'), survey),
            seen('soot-outside', 'signs/soot', 'is', 'no', True, survey),
            seen('chimney-fire', 'signs/chimney-fire', 'is', 'no', True, survey),
            seen('smoke-chamber-edges', 'smoke-chamber/edges', 'is', 'no',
                 same(kind, 'masonry-fireplace'), survey)]
    for rule, key in (('panel-broken', 'panels/broken'), ('firebox-gaps', 'panels/mortar-gap'),
                      ('firebox-gaps', 'panels/lintel-gap'), ('flue-edges', 'flue/edges')):
        rows.append(seen(rule, key, 'is', 'no', built, survey))
    return rows


def damper_and_air(survey, kind):
    open_fire = other(kind, 'stove', 'pellet-stove', 'masonry-heater', 'insert')
    wood = same(choice(survey, 'appliance/fuel'), 'wood')
    logs = every(same(burns_gas(survey), 'log-set'),
                 same(choice(survey, 'gas/vent'), 'chimney'))
    state, duct = 'damper/state', 'air/duct-state'
    return [seen('damper-for-solid-fuel', state, 'is-not', 'removed', every(wood, open_fire),
                 survey),
            seen('damper-moves', state, 'is-not', 'stuck', open_fire, survey),
            seen('damper-for-gas', state, 'is-not', 'working', logs, survey),
            seen('air-duct-open', duct, 'is-not', 'blocked', open_fire, survey),
            seen('air-duct-connected', duct, 'is-not', 'missing', open_fire, survey)]


def scorching(survey, kind):
    no_stove = other(kind, 'stove', 'pellet-stove')
    if survey.trim is None:
        row = seen('trim-scorched', 'trim', 'is', 'no', no_stove, survey)
        return [row._replace(applies=None if row.applies else row.applies)]
    rows = []
    for piece in range(survey.trim):
        burns = same(choice(survey, f'trim/{piece}/combustible', 'yes'), 'yes')
        rows.append(seen('trim-scorched', f'trim/{piece}/scorched', 'is', 'no',
                         every(burns, no_stove), survey))
    return rows


def practice(survey):
    kind = choice(survey, 'appliance/kind')
    made = other(kind, 'masonry-fireplace', 'masonry-heater', 'steel-fireplace-unit')
    return (creosote(survey, True) + firebox(survey, kind) + damper_and_air(survey, kind)
            + scorching(survey, kind)
            + [seen('flue-lining', 'flue/lining', 'is', 'sound', True, survey),
               seen('listing-plate', 'listing/label', 'is', 'listed', made, survey)])


def flue_of_2015(survey):
    return [seen('flue-lining', 'flue/lining', 'is', 'sound', True, survey),
            seen('flue-obstructed', 'flue/obstructed', 'is', 'no', True, survey),
            seen('flue-deposits', 'creosote/kind', 'is', 'none', True, survey)]


def doors(survey):
    tight = same(choice(survey, 'glass-doors/kind', 'none'), 'gasketed')
    built = same(choice(survey, 'appliance/kind'), 'factory-built-fireplace')
    return [seen('glass-doors-listed', 'glass-doors/listed', 'is', 'yes', every(built, tight),
                 survey)]


def inspections(survey):
    key, level = 'inspection/level', survey.choices.get('inspection/level')
    level = None if level is None else fixed(int(level))

    def asks(rule, number, applies):
        return amount(rule, key, 'at-least', applies, level, fixed(number), 'count')

    def flag(name):
        return same(choice(survey, 'occasion/' + name, 'no'), 'yes')

    change = choice(survey, 'occasion/appliance-change', 'none')
    return [seen('inspection-within-year', 'inspection/within-year', 'is', 'yes', True, survey),
            asks('inspection-yearly', 1, True),
            asks('inspection-for-sale', 2, flag('sale')),
            asks('inspection-for-fuel', 2, flag('fuel-change')),
            asks('inspection-for-appliance', 2, same(change, 'other')),
            asks('inspection-for-relining', 2, flag('relining')),
            asks('inspection-after-event', 2, flag('event')),
            asks('inspection-after-fire', 2, same(choice(survey, 'signs/chimney-fire'), 'yes')),
            asks('inspection-opened-up', 3, flag('hidden-damage'))]


def rows(survey, standard):
    told = []
    if standard == PRACTICE:
        told += practice(survey)
    if standard == MISSOURI:
        told += reported(survey) + looks(survey)
    if standard == G1735:
        told.append(seen('creosote-cleaned-yearly', 'creosote/cleaned-in-year', 'is', 'yes',
                         burns_wood(survey), survey))
    if standard == 'irc-2015':
        told += flue_of_2015(survey)
    if standard in DOORS:
        told += doors(survey)
    if standard == INSPECTIONS:
        told += inspections(survey)
    if standard == MAKERS:
        kind = choice(survey, 'appliance/kind')
        told.append(seen('label-clearances', 'listing/clearances-stated', 'is', 'yes',
                         every(other(kind, 'masonry-fireplace', 'masonry-heater'),
                               same(choice(survey, 'appliance/fuel'), 'wood')), survey))
    return told


def findings(survey, standard):
    """All findings of the rows that are told here, those that do not apply included."""
    return [judge(row, survey, standard) for row in rows(survey, standard)]


rules.QUANTITIES.update({
    'panels.crack': 'length', 'panels.wear': 'length', 'creosote.thickness': 'length',
    'listing.panel-crack': 'length'})
