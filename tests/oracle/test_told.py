# SPDX-License-Identifier: MIT
"""The older rules and what is observed: the `ingle` command against history.py and conditions.py.

Rules of the same standards that other files recompute are left to their own tests.
"""
import unittest
from collections import Counter

import conditions
import generate
import generate_told
import history
import rules
from test_oracle import Case, same_amount, streamed

SURVEYS = 1500


def told(survey, standard):
    return conditions.findings(survey, standard) + history.findings(survey, standard)


def word_differs(expected, got):
    """Of a state that is seen, or a count."""
    for name in ('required', 'measured', 'margin'):
        want, have = getattr(expected, name), got.get(name)
        if (None if have is None else have['text']) != (None if want is None else str(want)):
            return f'{name} {have}, not {want}'
    return None


def amount_differs(expected, got):
    for name in ('required', 'measured', 'margin'):
        if not same_amount(got.get(name), getattr(expected, name), expected.dimension):
            return f'{name} {got.get(name)}, not {getattr(expected, name)} base units'
    return None


def differs(expected, got):
    """What of a finding is not as it must be, or None."""
    for name in ('verdict', 'relation'):
        if got[name] != getattr(expected, name):
            return f'{name} {got[name]}, not {getattr(expected, name)}'
    if expected.verdict == 'not-applicable':
        return None
    differ = word_differs if expected.dimension in ('state', 'count') else amount_differs
    return differ(expected, got)


class Told(Case):
    def compare(self, line, report, seen):
        document, problems = generate.read(line), []
        survey = rules.Survey(document)
        want = {}
        for standard in document['standards']:
            for each in told(survey, standard):
                want.setdefault((standard, each.rule, each.subject), []).append(each)
        have = {}
        for each in report.get('findings', ()):
            have.setdefault((each['standard'], each['rule'], each['subject']), []).append(each)
        if 'findings' not in report:
            return [str(report)]
        for key, rows in want.items():
            problems += self.compare_rows(key, rows, have.get(key, []), seen)
        known = {key[:2] for key in want}
        problems += [f'unexpected {key}' for key in have if key[:2] in known and key not in want]
        return problems

    def compare_rows(self, key, rows, got, seen):
        """Several rows of one rule may judge one subject; all but one then do not apply."""
        applied = [each for each in rows if each.verdict != 'not-applicable'] or rows[:1]
        came = [each for each in got if each['verdict'] != 'not-applicable'] or got[:1]
        if len(applied) != len(came):
            return [f'{key}: {len(came)} findings, not {len(applied)}: {came}']
        problems = []
        for expected, each in zip(applied, came):
            seen[key[0], key[1], expected.verdict] += 1
            fault = differs(expected, each)
            if fault:
                problems.append(f'{key}: {fault}\n    oracle {expected}\n    command {each}')
        return problems

    def compare_all(self, lines, standards):
        problems, seen = [], Counter()
        for line, report in zip(lines, streamed(lines, '--all')):
            found = self.compare(line, report, seen)
            problems += [f'document {line}\n  {each}' for each in found]
        self.report(problems)
        for standard, rule in {key[:2] for key in seen}:
            for verdict in ('meets', 'fails'):
                with self.subTest(standard=standard, rule=rule, verdict=verdict):
                    self.assertGreater(seen[standard, rule, verdict], 0)
        self.assertEqual({standard for standard, _, _ in seen}, set(standards))

    def test_older_rules(self):
        self.compare_all(generate_told.lines(SURVEYS, 'older'), history.STANDARDS)

    def test_what_is_observed(self):
        self.compare_all(generate_told.lines(SURVEYS // 2, 'observed'), generate_told.OBSERVED)


if __name__ == '__main__':
    unittest.main()
