# SPDX-License-Identifier: MIT
"""Exercises: their answers are recomputed by the oracle, which knows nothing of the library.

The oracle reads the problem's own document, as somebody who solves it does, and judges it by the
publications that its rules.py and its like name.
"""
import collections
import hashlib
import json
import os
import re
import subprocess
import unittest
from fractions import Fraction

import amounts
import everything
import generate
import ingle
from test_oracle import PLACES, Case

SEEDS = 1000
COMMAND = os.environ['INGLE_COMMAND']


def can_be_asked(standard, level):
    try:
        ingle.exercise([standard], 1, level, part='problem')
    except ingle.IngleError as error:
        assert error.code == 'nothing-measured', error
        return False
    return True


# The levels at which a standard has something to ask; those on stoves and gas alone have none.
ASKED = [(each, level) for each in ingle.standards for level in ingle.levels
         if can_be_asked(each, level)]
SEVERAL = [['irc-2000', 'irc-2021'], ['irc-2003', 'irc-2024', 'irc-2018'],
           ['obc-2012', 'irc-2021'], ['irc-2021', 'common-practice-us']]


def raised(text):
    """Units as pages write them."""
    return re.sub(r'\b(in|ft|mm|cm|m)([23])\b', lambda unit: unit[1] + '²³'[int(unit[2]) - 2],
                  text)


def problem_of(seed):
    """Standards, seed and level: one standard after the other, and now and then several."""
    level = seed // 4 % len(ingle.levels) + 1
    if seed % 4 == 0:
        return SEVERAL[seed // 16 % len(SEVERAL)], seed, level
    if seed % 4 == 1:
        standard, level = ASKED[seed // 4 % len(ASKED)]
        return [standard], seed, level
    return [('irc-2021', 'irc-2000')[seed % 2]], seed, level


def made(seed, **named):
    """An exercise, with its numbers as the oracle reads them."""
    return generate.read(json.dumps(ingle.exercise(*problem_of(seed), **named)))


def same_amount(shown, value):
    """Whether an answer's amount is this number of base units, to the places that it shows."""
    if 'unit' not in shown:
        return shown['value'] == value
    size = next(units[shown['unit']] for units in amounts.UNITS.values() if shown['unit'] in units)
    return abs(Fraction(shown['value']) - Fraction(value, size)) <= PLACES / 2


def differences(due, answer):
    """What of an answer is not what the oracle finds, in words."""
    found = []
    if answer['verdict'] != due.verdict:
        found.append(f'verdict {answer["verdict"]}, not {due.verdict}')
    for name in ('required', 'measured', 'margin'):
        value = getattr(due, name, None)
        if value is not None and not same_amount(answer[name], value):
            found.append(f'{name} {answer[name]}, not {value} base units')
    if due.required is None:
        found.append('nothing is required')
    return found


class Answers(Case):
    def expected(self, document):
        """What the oracle finds, by standard, rule and subject."""
        found = {}
        for standard in document['standards']:
            for each in everything.findings(document, standard):
                if each.verdict != 'not-applicable':
                    found.setdefault((standard, each.rule, each.subject), []).append(each)
        return found

    def check(self, exercise, seen, name):
        expected, problems = self.expected(exercise['document']), []
        for answer in exercise['answers']:
            key = answer['standard'], answer['rule'], answer['subject']
            due = expected.get(key, [])
            if all(differences(each, answer) for each in due):
                told = '; '.join(differences(due[0], answer)) if due else 'no such finding'
                problems.append(f'{name}, {key}: {told}\n  {json.dumps(answer, default=str)}\n'
                                f'  {generate.written(exercise["document"])}')
            seen[answer['verdict']] += 1
            seen['exactly'] += answer['margin']['value'] == 0
        return problems

    def test_a_thousand_seeds(self):
        seen, problems = collections.Counter(), []
        for seed in range(SEEDS):
            problems += self.check(made(seed), seen, f'seed {seed}')
        self.report(problems)
        self.assertEqual(set(seen) - {'exactly'}, {'fails', 'meets'})
        for name in ('fails', 'meets', 'exactly'):
            self.assertGreater(seen[name], SEEDS // 20, name)

    def test_every_level_of_every_standard(self):
        problems, levels, seen = [], collections.Counter(), collections.Counter()
        for standard, level in ASKED:
            exercise = generate.read(json.dumps(ingle.exercise([standard], 2, level)))
            levels[level] += len(exercise['questions'])
            problems += self.check(exercise, seen, f'{standard}, level {level}')
        self.report(problems)
        self.assertGreater(len(ASKED), 80)
        self.assertLess(levels[1], levels[2])
        self.assertLess(levels[2], levels[3])

    def test_no_seed_is_without_a_problem(self):
        for seed in range(100):
            for standard, level in ASKED:
                self.assertTrue(ingle.exercise([standard], seed, level, part='problem'))


class Questions(unittest.TestCase):
    def test_each_is_answered_in_full(self):
        for seed in range(0, SEEDS, 5):
            exercise = made(seed)
            self.assertTrue(exercise['questions'])
            keys = [[each[name] for name in ('standard', 'rule', 'subject', 'label')]
                    for each in exercise['questions']]
            self.assertEqual(keys, [[each[name] for name in ('standard', 'rule', 'subject',
                                                             'label')]
                                    for each in exercise['answers']])
            self.assertEqual(len(keys), len(set(map(tuple, keys))))
            for answer in exercise['answers']:
                for name in ('required', 'measured', 'margin', 'citation', 'sentence', 'working',
                             'section'):
                    self.assertTrue(answer.get(name), (seed, answer['rule'], name))

    def test_what_fails_can_be_put_right(self):
        """Of what a tape can change there is a remedy; some rules have none to offer."""
        failing = [answer for seed in range(0, SEEDS, 5) for answer in made(seed)['answers']
                   if answer['verdict'] == 'fails']
        self.assertGreater(len(failing), 100)
        self.assertGreater(sum('remedy' in each for each in failing), len(failing) * 9 // 10)

    def test_all_standards_are_asked_about(self):
        """One rule after the other, each by all the editions that have it."""
        for standards in SEVERAL[:2]:
            for level in ingle.levels:
                together = 0
                for seed in range(20):
                    asked = [each['standard'] for each in
                             ingle.exercise(standards, seed, level)['questions']]
                    together += asked[:2] == standards[:2]
                self.assertGreater(together, 1 if level == 1 else 19, (standards, level))

    def test_the_problem_does_not_tell(self):
        for seed in range(0, 60, 7):
            problem = made(seed, part='problem')
            self.assertNotIn('answers', problem)
            self.assertEqual(problem['document'], made(seed)['document'])
            page = ingle.exercise_page(*problem_of(seed), part='problem')
            for word in ('fails', 'meets', 'Answers', 'margin'):
                self.assertNotIn(word, page)
            answers = made(seed, part='answers')
            self.assertNotIn('document', answers)
            self.assertEqual(answers['answers'], made(seed)['answers'])

    def test_pages_have_what_the_document_has(self):
        """What was measured, each question, and of each answer its sentence and citation."""
        for seed in range(0, 80, 3):
            exercise = ingle.exercise(*problem_of(seed))
            page = ' '.join(ingle.exercise_page(*problem_of(seed), width=1000).split())
            problem, answers = page.split(' *** ')
            for number, question in enumerate(exercise['questions'], 1):
                self.assertIn(f'{number}. {question["label"]}, by ', problem)
            for answer in exercise['answers']:
                for name in ('sentence', 'citation'):
                    self.assertIn(raised(answer[name]), answers)
            # The document of the problem gives the very answers.
            report = ingle.check(exercise['document'])
            found = {(each['standard'], each['rule'], each['subject']): each
                     for each in report['findings']}
            for answer in exercise['answers']:
                self.assertEqual(found[answer['standard'], answer['rule'], answer['subject']],
                                 answer)

    def test_traps(self):
        """The last level has what it says: exact limits, units of both kinds, inserts."""
        seen = collections.Counter()
        for seed in range(200):
            exercise = ingle.exercise(['irc-2021', 'common-practice-us'], seed, 4)
            survey = exercise['document']['survey']
            units = {each['unit'] for group in survey.values()
                     for item in (group if isinstance(group, list) else [group])
                     for each in item.values() if isinstance(each, dict)}
            seen['mixed'] += 'mm' in units and bool(units & {'in', 'ft'})
            seen['insert'] += survey['appliance']['kind'] == 'insert'
            seen['exact'] += any(answer['margin']['value'] == 0 for answer in exercise['answers'])
            seen['just short'] += any(answer['margin']['text'] == '-1/16 in'
                                      for answer in exercise['answers'])
        for name in ('mixed', 'insert', 'exact', 'just short'):
            self.assertGreater(seen[name], 20, name)


class Seeds(unittest.TestCase):
    def test_the_same_seed_gives_the_same_bytes(self):
        """In this process and in others, whatever was made before."""
        first = {seed: ingle.exercise_page('irc-2021', seed, 4) for seed in range(20)}
        for seed in reversed(range(20)):
            self.assertEqual(ingle.exercise_page('irc-2021', seed, 4), first[seed])
        for seed in (0, 7, 19):
            done = subprocess.run([COMMAND, 'exercise', '--standard', 'irc-2021', '--seed',
                                   str(seed), '--level', '4'], capture_output=True, check=True)
            self.assertEqual(done.stdout.decode('utf-8'), first[seed])

    def test_other_seeds_give_other_problems(self):
        for level in ingle.levels:
            problems = {json.dumps(ingle.exercise('irc-2021', seed, level, part='problem')
                                   ['document']) for seed in range(200)}
            self.assertGreater(len(problems), 190, level)

    def test_problems_stay_what_they_were(self):
        """On every machine: what was measured depends on the seed alone, and is written down."""
        told = ''.join(json.dumps(ingle.exercise('irc-2021', seed, level)['document'])
                       for seed in (0, 1, 2, 2 ** 64 - 1) for level in ingle.levels)
        self.assertEqual(hashlib.sha256(told.encode()).hexdigest(), TOLD)


# Changed rules change which problems can be asked; then it is written anew.
TOLD = '9ba7bedc6d8e7fceac93eca35ead32ef7691c66f698ba25de6416d4f69a0cf2d'


if __name__ == '__main__':
    unittest.main()
