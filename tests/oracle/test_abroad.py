# SPDX-License-Identifier: MIT
"""The `ingle` command against the oracle for other countries, over thousands of made-up surveys.

INGLE_COMMAND is the command's path.
"""
import os
import subprocess
import unittest
from collections import Counter
from fractions import Fraction
from math import floor

import abroad
import amounts
import canada_rules
import generate
import generate_abroad

SURVEYS = 9000
BATCH = 100
SHOWN = 4
PLACES = Fraction(1, 10 ** 9)


def run(lines):
    command = [os.environ['INGLE_COMMAND'], 'check', '--lines', '--no-working', '--unit', 'mm']
    done = subprocess.run(command, input='\n'.join(lines) + '\n', capture_output=True,
                          encoding='utf-8', check=False)
    if done.returncode != 0:
        raise AssertionError(f'{command} ended with {done.returncode}: {done.stderr[:2000]}')
    return [generate.read(line) for line in done.stdout.split('\n')[:-1]]


def streamed(lines):
    """The same in batches: thousands of reports at once would fill the memory."""
    for start in range(0, len(lines), BATCH):
        yield from run(lines[start:start + BATCH])


def shown(amount, dimension):
    """An amount of a report, or of the oracle, to the places that a report has."""
    if amount is None or dimension == 'state':
        return None
    exact = Fraction(amount['value'] if isinstance(amount, dict) else amount)
    if not isinstance(amount, dict) and dimension != 'count':
        units = {'length': 'mm', 'area': 'mm2', 'angle': 'deg', 'power': 'kW'}
        exact = Fraction(amount, amounts.RATIO_ONE if dimension == 'ratio'
                         else amounts.UNITS[dimension][units[dimension]])
    halves_up = floor(abs(exact) / PLACES + Fraction(1, 2))
    return halves_up if exact >= 0 else -halves_up


def due(finding):
    return (finding.rule, finding.subject, finding.relation, finding.verdict,
            *(shown(amount, finding.dimension) for amount in (
                finding.required, finding.measured, finding.margin, finding.usual)))


def told(finding, dimension):
    return (finding['rule'], finding['subject'], finding['relation'], finding['verdict'],
            *(shown(finding.get(name), dimension)
              for name in ('required', 'measured', 'margin', 'usual')))


def compare(document, report):
    """What of a report the oracle does not say, and the other way round."""
    if 'findings' not in report:
        return [f'no findings: {report}']
    problems = []
    for standard in document['standards']:
        wanted = abroad.findings(document, standard)
        kinds = {(each.rule, each.subject): each.dimension for each in wanted}
        have = Counter(told(each, kinds.get((each['rule'], each['subject']), 'state'))
                       for each in report['findings'] if each['standard'] == standard)
        want = Counter(due(each) for each in wanted)
        for counted in (have, want):  # rows that lack the same are said once
            said = Counter(each[:2] for each in counted if each[3] == 'unmeasured')
            for each in list(counted):
                if each[3:] == ('unmeasured', None, None, None, None):
                    counted[each] = 1 if said[each[:2]] == 1 else 0
            counted += Counter()
        problems += [f'{standard} not said: {each}' for each in want - have]
        problems += [f'{standard} only said: {each}' for each in have - want]
    return problems


def due_verdicts(rule):
    """What every rule comes to somewhere: one that prints no figure is never met nor missed, and
    what a section is about cannot be failed."""
    if any(rule is each for each in canada_rules.NO_FIGURE):
        return ('unmeasured',)
    return ('meets', 'unmeasured' if rule.id.endswith('-within-scope') else 'fails')


class Abroad(unittest.TestCase):
    def test_every_finding(self):
        lines = generate_abroad.lines(SURVEYS)
        problems, verdicts = [], Counter()
        for line, report in zip(lines, streamed(lines), strict=True):
            for finding in report.get('findings', ()):
                verdicts[finding['standard'], finding['rule'], finding['verdict']] += 1
            found = compare(generate.read(line), report)
            if found:
                problems.append(f'document {line}\n  ' + '\n  '.join(found))
        if problems:
            self.fail(f'{len(problems)} of {len(lines)} differ, the first of them:\n'
                      + '\n\n'.join(problems[:SHOWN]))
        self.assert_reached(verdicts)

    def assert_reached(self, verdicts):
        """Every rule was met and not met, somewhere."""
        for standard, rules in abroad.STANDARDS.items():
            for rule in rules:
                for verdict in due_verdicts(rule):
                    with self.subTest(standard=standard, rule=rule.id, verdict=verdict):
                        self.assertGreater(verdicts[standard, rule.id, verdict], 0)
        self.assertGreater(sum(count for (_, _, verdict), count in verdicts.items()
                               if verdict == 'too-close'), 50)


def catalogue(name):
    done = subprocess.run([os.environ['INGLE_COMMAND'], 'list', name], check=True,
                          capture_output=True, encoding='utf-8')
    return generate.read(done.stdout)


class Canada(unittest.TestCase):
    """All findings of a standard that is told are compared. What the oracle does not tell would go
    unnoticed, so for Canada nothing may be left out."""

    def test_every_standard_is_told(self):
        known = {each['id'] for each in catalogue('standards') if each['place'].endswith('Canada')}
        self.assertEqual(known, set(canada_rules.STANDARDS))

    def test_every_rule_is_told(self):
        told_rules = {(standard, rule.id, rule.relation, rule.key.replace('/', '.'))
                      for standard, rules in canada_rules.STANDARDS.items() for rule in rules}
        known = {(each['standard'], each['rule'], each['relation'], judged)
                 for each in catalogue('rules') for judged in each['judges']
                 if each['standard'] in canada_rules.STANDARDS}
        self.assertEqual(known, told_rules)

    def test_every_row_is_met_and_failed(self):
        """By the oracle, whose rows are those of the library: a rule may have several. Those that
        print no figure are unmeasured."""
        rows = {id(rule): (standard, number, rule.id) for standard in canada_rules.STANDARDS
                for number, rule in enumerate(abroad.STANDARDS[standard])}
        seen = set()
        for document in map(generate.read, generate_abroad.lines(SURVEYS)):
            for standard in set(document['standards']) & set(canada_rules.STANDARDS):
                seen |= {(rows[id(rule)], finding.verdict)
                         for rule, finding in abroad.judged(document, standard)}
        due_rows = {((standard, number, rule.id), verdict)
                    for standard in canada_rules.STANDARDS
                    for number, rule in enumerate(abroad.STANDARDS[standard])
                    for verdict in due_verdicts(rule)}
        self.assertEqual(due_rows - seen, set())


if __name__ == '__main__':
    unittest.main()
