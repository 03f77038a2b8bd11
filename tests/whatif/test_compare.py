# SPDX-License-Identifier: MIT
"""`ingle compare` against single checks by each standard."""
import re
import unittest

from judging import asked, example, ran, reports

GRAVITY = [each['verdict'] for each in asked('list', 'verdicts')]
LIVING_ROOM = example('heron-weir/living-room.json')
# "Built in 1968, judged then and now": the oldest and the newest texts, and other countries'.
THEN_AND_NOW = ['cabo-1989', 'irc-2000', 'irc-2006', 'irc-2021', 'irc-2024']


def known(*wanted):
    ids = [each['id'] for each in asked('list', 'standards')]
    return [each for each in wanted if each in ids], ids


def line_key(finding):
    return finding['rule'], finding['subject']


def columns(document, standards):
    """What each standard alone finds: the first of the gravest on each thing."""
    found = []
    for standard in standards:
        alone = dict(document, standards=[standard],
                     amendments=[each for each in document.get('amendments', ())
                                 if each['standard'] == standard])
        report, = reports([alone], '--unit', 'mm')
        column = {}
        for finding in report['findings']:
            if finding['verdict'] == 'not-applicable':  # it gave way, and requires nothing
                continue
            before = column.get(line_key(finding))
            if before is None or (GRAVITY.index(finding['verdict'])
                                  > GRAVITY.index(before['verdict'])):
                column[line_key(finding)] = finding
        found.append((report['verdict'], column))
    return found


def change(before, after):
    if before is None or after is None:
        return 'none' if before is after else 'dropped' if after is None else 'added'
    if before['verdict'] != after['verdict']:
        return 'verdict'
    same = all(before.get(name) == after.get(name) for name in ('required', 'relation'))
    return 'none' if same else 'required'


def raised(text):
    """Units as pages write them."""
    return re.sub(r'\b(in|ft|mm|cm|m)([23])\b', lambda unit: unit[1] + '²³'[int(unit[2]) - 2],
                  text)


class Compare(unittest.TestCase):
    def hold(self, document, standards, *options):
        words = [word for each in standards for word in ('--standard', each)]
        answer = asked('compare', *words, '--unit', 'mm', *options, given=document)
        single = columns(document, standards)
        self.assertEqual([(each['id'], each['verdict']) for each in answer['standards']],
                         [(each, verdict) for each, (verdict, _) in zip(standards, single)])
        keys = {key for _, column in single for key in column}
        self.assertEqual({line_key(each) for each in answer['lines']}, keys)
        self.assertEqual(len(answer['lines']), len(keys))
        for line in answer['lines']:
            self.cells(line, [column.get(line_key(line)) for _, column in single])
        return answer

    def cells(self, line, findings):
        self.assertEqual(len(line['by']), len(findings))
        for place, (cell, finding) in enumerate(zip(line['by'], findings)):
            due = {name: finding[name] for name in ('section', 'verdict', 'relation', 'required')
                   if name in finding} if finding else {}
            got = {name: cell[name] for name in cell if name not in ('standard', 'change')}
            self.assertEqual(got, due, (line_key(line), cell['standard']))
            if place:
                self.assertEqual(cell['change'], change(findings[place - 1], finding))
            else:
                self.assertNotIn('change', cell)

    def test_editions(self):
        standards, _ = known(*THEN_AND_NOW)
        self.assertGreater(len(standards), 2)
        answer = self.hold(LIVING_ROOM, standards)
        changes = {cell.get('change') for line in answer['lines'] for cell in line['by']}
        self.assertLessEqual({'none', 'added'}, changes)

    def test_all_standards_at_once(self):
        _, every = known()
        answer = self.hold(example('heron-weir/parlour.json'), every)
        self.assertGreater(len(answer['standards']), 15)
        self.hold(example('thistle-end-farm/kitchen.json'), every)

    def test_every_kind_of_change(self):
        _, every = known()
        found, due = set(), {'none', 'added', 'dropped', 'required', 'verdict'}
        for name in ('living-room', 'nursery', 'study-insert', 'parlour'):
            document = {'survey': example(f'heron-weir/{name}.json')['survey']}
            for first, second in zip(every, every[1:]):
                answer = self.hold(document, [first, second])
                found |= {cell['change'] for line in answer['lines'] for cell in line['by'][1:]}
        self.assertEqual(found, due)

    def test_one_standard(self):
        answer = self.hold(LIVING_ROOM, ['irc-2021'])
        self.assertEqual(len(answer['standards']), 1)

    def test_the_documents_own(self):
        answer = asked('compare', given=LIVING_ROOM)
        self.assertEqual([each['id'] for each in answer['standards']], LIVING_ROOM['standards'])

    def test_pages(self):
        """The matrix has a row for each line of which something was measured."""
        standards, _ = known(*THEN_AND_NOW)
        words = [word for each in standards for word in ('--standard', each)]
        answer = asked('compare', *words, given=LIVING_ROOM)
        page = ran('compare', *words, '--format', 'markdown', given=LIVING_ROOM)
        for each in answer['standards']:
            self.assertIn(f'- `{each["id"]}` (', page)
        rows = [line for line in page.splitlines() if line.startswith('| ')][1:]
        told = [each for each in answer['lines']
                if any(cell.get('verdict', 'unmeasured') != 'unmeasured'
                       for cell in each['by'])]
        self.assertEqual(len([row for row in rows if not row.startswith('| ---')]), len(told))
        for line, row in zip(told, [row for row in rows if not row.startswith('| ---')]):
            cells = [each.strip() for each in row.strip('|').split(' | ')]
            self.assertIn(f'`{line["rule"]}`', cells)
            for cell, text in zip(line['by'], cells[2:]):
                verdict = cell.get('verdict')
                self.assertTrue(text == 'no rule held' if verdict is None else verdict in text)
                if 'required' in cell and 'unit' in cell['required']:
                    self.assertIn(raised(cell['required']['text']), text.replace('\\', ''))


if __name__ == '__main__':
    unittest.main()
