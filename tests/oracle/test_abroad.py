# SPDX-License-Identifier: MIT
"""The `ingle` command against the oracle for other countries, over thousands of made-up surveys.

INGLE_COMMAND is the command's path.
"""
import os
import subprocess
import unittest
from collections import Counter
from fractions import Fraction

import abroad
import abroad_rules
import amounts
import generate
import generate_abroad

SURVEYS = 3000
SHOWN = 4
PLACES = Fraction(1, 10 ** 9)


def run(lines):
    command = [os.environ['INGLE_COMMAND'], 'check', '--lines', '--no-working', '--unit', 'mm']
    done = subprocess.run(command, input='\n'.join(lines) + '\n', capture_output=True,
                          encoding='utf-8', check=False)
    if done.returncode != 0:
        raise AssertionError(f'{command} ended with {done.returncode}: {done.stderr[:2000]}')
    return [generate.read(line) for line in done.stdout.splitlines()]


def shown(amount, dimension):
    """An amount of a report, or of the oracle, to the places that a report has."""
    if amount is None or dimension == 'state':
        return None
    exact = Fraction(amount['value'] if isinstance(amount, dict) else amount)
    if not isinstance(amount, dict) and dimension != 'count':
        unit = {'length': 'mm', 'area': 'mm2', 'angle': 'deg', 'power': 'kW'}[dimension]
        exact = Fraction(amount, amounts.UNITS[dimension][unit])
    return round(exact / PLACES)


def due(finding):
    return (finding.rule, finding.subject, finding.relation, finding.verdict,
            *(shown(amount, finding.dimension)
              for amount in (finding.required, finding.measured, finding.margin)))


def told(finding, dimension):
    return (finding['rule'], finding['subject'], finding['relation'], finding['verdict'],
            *(shown(finding.get(name), dimension) for name in ('required', 'measured', 'margin')))


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
            for each in counted:
                if each[3:] == ('unmeasured', None, None, None):
                    counted[each] = 1
        problems += [f'{standard} not said: {each}' for each in want - have]
        problems += [f'{standard} only said: {each}' for each in have - want]
    return problems


class Abroad(unittest.TestCase):
    def test_every_finding(self):
        lines = generate_abroad.lines(SURVEYS)
        problems, verdicts = [], Counter()
        for line, report in zip(lines, run(lines), strict=True):
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
        for standard, rules in abroad_rules.STANDARDS.items():
            for rule in rules:
                for verdict in ('meets', 'fails'):
                    with self.subTest(standard=standard, rule=rule.id, verdict=verdict):
                        self.assertGreater(verdicts[standard, rule.id, verdict], 0)
        self.assertGreater(sum(count for (_, _, verdict), count in verdicts.items()
                               if verdict == 'too-close'), 50)
        self.assertGreater(sum(count for (_, _, verdict), count in verdicts.items()
                               if verdict == 'not-applicable'), 50)


if __name__ == '__main__':
    unittest.main()
