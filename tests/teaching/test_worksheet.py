# SPDX-License-Identifier: MIT
"""A worksheet that is filled in comes to the survey that it was filled in from.

Somebody stands before a fireplace that an example or the oracle's generator measured, with nothing
but the worksheet of its appliance: writes down what is asked for and what is taken for granted
wrongly, makes the next worksheet of that, and goes on until none asks for more. What comes of it is
judged as the survey itself is, so that nothing was left out that makes a difference. The outside
reference is the survey.
"""
import collections
import copy
import json
import os
import re
import subprocess
import unittest

import generate
import generate_abroad
import generate_gas
import generate_stoves
from surveyed import COMMAND, measured, ran

GENERATED = 15

# What is asked for follows from these, too, where they were measured: a worksheet names the first
# of several ways to know something.
FROM = {
    'flue.liner': ('flue.net-area', 'flue.shape', 'flue.diameter', 'flue.width', 'flue.depth',
                   'flue.shorter-side'),
    'flue.shape': ('flue.diameter', 'flue.width', 'flue.depth'),
    'opening.width': ('opening.area',),
    'opening.height': ('opening.area',),
    'throat.width': ('throat.area',),
    'throat.depth': ('throat.area',),
    'nearby.slope': ('nearby.rise', 'nearby.top-above'),
    'nearby.rise': ('nearby.top-above',),
    'hearth.front': ('hearth.from-facing', 'hearth.facing', 'insert.hearth-front'),
    'insert.projection': ('insert.hearth-front',),
    'air.diameter': ('air.area',),
    'connector.area': ('connector.diameter',),
    'flue.width': ('flue.net-area', 'flue.longer-side', 'flue.shorter-side'),
    'outlet.above-ridge': ('outlet.from-roof',),
    'chimney.construction': ('connector.into', 'insert.in-factory-built'),
    'room.sleeping': ('gas.room', 'gas.appliance'),
    'insert.reaches-liner': ('insert.connection',),
    'outlet.reaches-ridge': ('outlet.above-ridge',),
    'window.outlet-below': ('window.outlet-above',),
}

# What no rule needs, though one may make use of it, and nobody is asked about: what lets an
# exception be used, and what the appliance's listing says, which takes the place of the rule.
EXCEPTIONS = re.compile(r'hearth\.firebox-raise|chimney\.place|wall\.by-listing'
                        r'|listing\.(?!label|clearances-stated).*')

# `name (choice, choice); word is taken for granted: how it is measured`, parted by ` | `.
ASKED = re.compile(r'(?:^| \| )([a-z0-9-]+)(?: \([^)]*\))?(?:; [a-z-]+ is taken for granted)?: ')
LIST = re.compile(r'"([a-z-]+)" is a list, of objects with: (.*)', re.DOTALL)


def worksheet(document):
    return ran(document, 'worksheet', '--format', 'json')


def asked(sheet):
    """(group, item, name) of what a worksheet asks for; the item is None of a list not begun."""
    for group, what in sheet['survey'].items():
        if group == 'note':
            for part in what.split(' || '):
                name, members = LIST.fullmatch(part).groups()
                yield from ((name, None, member) for member in ASKED.findall(members))
            continue
        for item, holder in enumerate(what if isinstance(what, list) else [what]):
            yield from ((group, item, name) for name in ASKED.findall(holder.get('note', '')))


def holder_of(survey, group, item):
    """The object that holds the quantities of a group or of one of its items; {} without one."""
    if not isinstance(survey.get(group, {}), list):
        return survey.setdefault(group, {})
    return survey[group][item] if item < len(survey[group]) else {}


def ways(group, name):
    """(group, name) of what tells of a quantity, itself included."""
    return [each.split('.') for each in (f'{group}.{name}', *FROM.get(f'{group}.{name}', ()))]


class Visit:
    """A worksheet that is being filled in, and what is there to be measured."""

    def __init__(self, there):
        self.there = copy.deepcopy(there['survey'])
        self.sheet = worksheet(there | {
            'survey': {'appliance': there['survey'].get('appliance', {})}})
        self.rounds = 0
        while self.fill():
            self.sheet = worksheet(self.sheet)
            self.rounds += 1

    def fill(self):
        """Writes what is asked for and is there into the worksheet; whether there was any."""
        before = copy.deepcopy(self.sheet['survey'])
        for group, item, name in list(asked(self.sheet)):
            if item is None:
                self.begin(group)
            else:
                self.measure(group, item, name)
        return self.sheet['survey'] != before

    def begin(self, group):
        if group in self.there:
            self.sheet['survey'].setdefault(
                group, [{name: each[name] for name in each if name == 'label'}
                        for each in self.there[group]])

    def measure(self, group, item, name):
        for other, each in ways(group, name):
            found = holder_of(self.there, other, item)
            if each in found:
                holder_of(self.sheet['survey'], other, item).setdefault(each, found[each])


def without_exceptions(document):
    """What a visit can come to; shown in the unit that the worksheet gives it for bare numbers."""
    document = {'unit': worksheet(document)['unit']} | copy.deepcopy(document)
    for group, what in document['survey'].items():
        for holder in what if isinstance(what, list) else [what]:
            for name in [name for name in holder if EXCEPTIONS.fullmatch(f'{group}.{name}')]:
                del holder[name]
    return document


def judged(document):
    report = ran(document, 'check')
    # What is written to the nearest base unit says so; the worksheet writes that base unit.
    report['notices'] = [each for each in report['notices'] if 'nearest' not in each]
    return report


def key(finding):
    return tuple(finding[name] for name in ('standard', 'rule', 'section', 'subject'))


def different(one, other):
    """The members of two reports that differ, and the findings by themselves."""
    apart = ('findings', 'unjudged')
    found = [name for name in one if name not in apart and one[name] != other.get(name)]
    # What no rule makes use of is not asked for.
    found += [each['quantity'] for each in other['unjudged'] if each not in one['unjudged']]
    return found + different_findings(one, other)


def different_findings(one, other, left_aside=()):
    """The findings that differ; those of verdicts that are left aside may be in either report."""
    one, other = ({key(each): each for each in report['findings']
                   if each['verdict'] not in left_aside} for report in (one, other))
    return [f'{each}: {one.get(each, {}).get("sentence")} / {other.get(each, {}).get("sentence")}'
            for each in sorted(one.keys() | other.keys()) if one.get(each) != other.get(each)]


class Worksheets(unittest.TestCase):
    maxDiff = None

    def test_the_examples(self):
        rounds = []
        for name, there in measured():
            with self.subTest(name):
                there = without_exceptions(there)
                visit = Visit(there)
                self.assertEqual(different(judged(there), judged(visit.sheet)), [])
                rounds.append(visit.rounds)
        self.assertGreater(len(rounds), 10)
        self.assertGreater(max(rounds), 2, 'what rules ask only when something else was found')

    def test_generated_surveys(self):
        """Where something is not there, what else a rule needs may not be asked for; nor is it
        where the label decides."""
        seen = collections.Counter()
        for line in [line for each in (generate, generate_gas, generate_stoves, generate_abroad)
                     for line in each.lines(GENERATED, seed='worksheet')]:
            there = without_exceptions(generate.read(line))
            with self.subTest(there['id']):
                report = judged(there)
                self.assertEqual(
                    different_findings(report, judged(Visit(there).sheet),
                                       ('unmeasured', 'by-listing')), [])
                seen.update(each['verdict'] for each in report['findings'])
        for verdict in ('meets', 'fails', 'too-close'):
            self.assertGreater(seen[verdict], 20, verdict)


class Fields(unittest.TestCase):
    """What stands in a worksheet beside what is asked for."""

    THERE = {
        'id': 'somewhere', 'standards': ['irc-2021', 'common-practice-us'], 'unit': 'in',
        'tolerance': '1/16 in', 'readings': {'hearth-steps': 'whole-steps'},
        'survey': {
            'appliance': {'kind': 'masonry-fireplace'},
            'opening': {'width': '914.4 mm', 'height': {'value': '24 in', 'tolerance': '0 in'}},
            'hearth': {'front': {'value': '500 mm', 'tolerance': '1 mm'}},
            'trim': [], 'nearby': [{'label': 'ridge'}]},
        'amendments': [{'standard': 'irc-2021', 'rule': 'hearth-front',
                        'set': {'large': '560 mm', 'threshold': '6 ft2'},
                        'citation': 'An invented by-law, 7-2'}]}

    def test_how_it_is_judged_stays(self):
        sheet = worksheet(self.THERE)
        for name in ('id', 'standards', 'unit', 'readings'):
            self.assertEqual(sheet[name], self.THERE[name])
        self.assertEqual(sheet['tolerance'], '0.0625 in')
        self.assertEqual([(each['rule'], each['citation'], each['set'])
                          for each in sheet['amendments']],
                         [('hearth-front', 'An invented by-law, 7-2',
                           {'large': {'value': 560, 'unit': 'mm'}}),
                          ('hearth-front', 'An invented by-law, 7-2',
                           {'threshold': {'value': 864, 'unit': 'in2'}})])
        self.assertEqual(different(judged(self.THERE), judged(sheet)), [])

    def test_what_was_recorded_is_exact(self):
        """25.4 mm are an inch: 36 in is written as such, 500 mm has no end in inches."""
        survey = worksheet(self.THERE)['survey']
        self.assertEqual(survey['opening']['width'], {'value': 36, 'unit': 'in'})
        self.assertEqual(survey['opening']['height'],
                         {'value': 24, 'unit': 'in', 'tolerance': '0 in'})
        self.assertEqual(survey['hearth']['front'],
                         {'value': 500, 'unit': 'mm', 'tolerance': '1 mm'})

    def test_a_list_that_is_empty_says_that_there_is_none(self):
        survey = worksheet(self.THERE)['survey']
        self.assertEqual(survey['trim'], [])
        self.assertEqual([each['label'] for each in survey['nearby']], ['ridge'])
        self.assertNotIn('"trim" is a list', survey.get('note', ''))

    def test_amendments_of_a_town_are_carried(self):
        """What is filled in later is judged by them though the town's document is not at hand."""
        there = {name: part for name, part in self.THERE.items() if name != 'amendments'}
        read, write = os.pipe()
        with os.fdopen(write, 'w') as file:
            json.dump({'authority': 'Town of Alderbrook', 'unit': 'in',
                       'amendments': self.THERE['amendments']}, file)
        town = f'/dev/fd/{read}'
        done = subprocess.run([COMMAND, 'worksheet', '--format', 'json', '--amendments', town],
                              input=json.dumps(there).encode(), capture_output=True, check=True,
                              pass_fds=(read,))
        os.close(read)
        sheet = json.loads(done.stdout)
        self.assertEqual({each['citation'] for each in sheet['amendments']},
                         {'Town of Alderbrook, An invented by-law, 7-2'})

    def test_each_item_is_told_what_is_taken_for_granted_of_it(self):
        there = copy.deepcopy(self.THERE)
        there['survey']['trim'] = [{'place': 'on-face', 'combustible': True}, {}]
        notes = [each['note'] for each in worksheet(there)['survey']['trim']]
        self.assertNotIn('taken for granted', notes[0])
        self.assertIn('place (on-face, abutting); on-face is taken for granted: ', notes[1])
        self.assertIn('combustible; true is taken for granted: ', notes[1])


if __name__ == '__main__':
    unittest.main()
