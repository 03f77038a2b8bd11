# SPDX-License-Identifier: MIT
"""An explained report says what the report says, and nothing else.

The page and the report come of different calls, in C and in the writer of JSON. Each finding of the
report has its part of the page, worked out, and all that stands there is held against it: the
verdict, what is required and measured and by how much, the source, each step, what would put it
right, and what is dangerous meanwhile. What was not measured is a list of its own. It is read as
HTML, since its parts can be told apart; that the other formats say the same is held by tests/pages.
"""
import collections
import itertools
import re
import unittest
import xml.etree.ElementTree

import generate
import generate_abroad
import generate_stoves
from surveyed import measured, ran, written_of

GENERATED = 12
NAMESPACE = ' xmlns="http://www.w3.org/1999/xhtml"'
CLASSES = {'fails': 'fails', 'meets': 'meets', 'not-applicable': None}
RELATIONS = {'at-least': 'at least ', 'at-most': 'no more than ', 'less-than': 'less than '}
# How a rule's numbers are known, in the page's words.
BASES = {'read': 'the text was read',
         'cited': 'as another source cites it; to be confirmed there',
         'from-memory': 'from memory; to be confirmed in the publication',
         'common-practice': 'advice, not code: there is no publication behind it'}
LISTED = "the appliance's own listing, as it was recorded"
UNLISTED = 'nothing is recorded of what the listing says'
AMENDED = 'the amendment, as it was recorded'
# Numbers on a scale, whose steps are no amounts: by how much they miss is not told.
SCALES = ('/survey/connector/gauge', '/survey/inspection/level')
# What is told of the rule and the quantity rather than of the finding.
CATALOGUE = ('How it is measured', 'How it is looked at', 'Rule')


# By quantity, the label of each choice.
CHOICES = {each['id']: {choice['id']: choice['label'] for choice in each.get('choices', ())}
           for each in ran(None, 'list', 'quantities')}


# A page raises the powers of units, a document writes them as they are read.
LEVEL = str.maketrans('²³', '23')


def text_of(element):
    return ''.join(element.itertext()).translate(LEVEL)


class Part:
    """What the page has on one finding."""

    def __init__(self, heading):
        self.heading = heading
        self.verdict = self.styles = self.sentence = None
        self.facts = collections.defaultdict(list)
        self.lines = []

    def take(self, element):
        if element.tag == 'p':
            self.sentence = text_of(element)
            self.verdict = self.sentence.split(':')[0]
            self.styles = [(word.get('class'), word.text) for word in element]
        elif element.tag == 'ul':
            for item in element.findall('li'):
                name = item.find('strong').text
                self.facts[name].append(text_of(item)[len(name) + 2:])
        elif element.tag == 'pre':
            self.lines += text_of(element).split('\n')
        else:
            raise AssertionError(element.tag)


class Page:
    """An explained report, taken apart."""

    def __init__(self, document, *words):
        html = written_of(document, 'explain', '--format', 'html', *words)
        html = re.sub(r'<!DOCTYPE[^>]*>', '', html)
        main = xml.etree.ElementTree.fromstring(html.replace(NAMESPACE, '')).find('body/main')
        self.parts, self.rows, self.lists = [], [], collections.defaultdict(list)
        self.summary = None
        part = head = None
        for element in main:
            if element.tag in ('h1', 'h2'):
                head, part = text_of(element), None
            elif element.tag == 'h3':
                part = Part(text_of(element))
                self.parts.append(part)
            elif element.tag == 'div':
                self.rows += [[text_of(cell) for cell in row] for row in element.iter('tr')][1:]
            elif part is not None:
                part.take(element)
            elif element.tag == 'p' and self.summary is None:
                self.summary = text_of(element)
            else:
                self.lists[head] += [text_of(item) for item in element.findall('li')]


def heading_of(finding):
    label = finding['label']
    first = label[0].upper() if 'a' <= label[0] <= 'z' else label[0]
    return f'{first}{label[1:]} ({finding["rule"]}, {finding["standard"]})'


def in_words(finding, name):
    """An amount of a finding; a choice by its label."""
    path = [each for each in finding['subject'].split('/')[2:] if not each.isdigit()]
    text = finding[name]['text']
    return CHOICES.get('.'.join(path), {}).get(text, text)


def row_due(finding):
    """What the table of a brief page has of a finding."""
    before = {'measured': '', 'required': RELATIONS.get(finding['relation'], '')}
    return [finding['verdict'], finding['label'],
            *(words + in_words(finding, name) if name in finding else ''
              for name, words in before.items()),
            f'{finding["section"]}, {finding["standard"]}'
            + (', by the listing' if finding.get('by_listing') or finding['verdict'] == 'by-listing'
               else '') + (', as amended' if 'amendment' in finding else '')]


def styles_due(verdict):
    """The class and the word that are marked in the line of a verdict."""
    style = CLASSES.get(verdict, 'open')
    return [] if style is None else [(style, verdict)]


def is_seen(finding):
    """Whether it is judged by what was seen, of which the sentence says all."""
    return finding['relation'] in ('is', 'is-not')


def basis_of(finding):
    if finding['verdict'] == 'by-listing':
        return UNLISTED
    if 'amendment' in finding and not finding.get('by_listing'):
        return AMENDED
    return LISTED if finding.get('by_listing') else BASES[finding['basis']]


def facts_due(finding):
    """What the page has to tell of a finding, by the names that it has there."""
    due = {'Source': f'{finding["citation"]} ({basis_of(finding)})'}
    if not is_seen(finding):
        for name in ('measured',) if finding['subject'] in SCALES else ('measured', 'margin'):
            if name in finding and 'value' in finding[name]:
                due[name.capitalize()] = finding[name]['text']
        if 'required' in finding:
            due['Required'] = RELATIONS[finding['relation']] + finding['required']['text']
    for name, member in (('How the text is read', 'reading'), ('Who should look next', 'refer'),
                         ('Inspection called for', 'inspection')):
        if member in finding:
            due[name] = finding[member].translate(LEVEL)
    found = {name: [text] for name, text in due.items()}
    right = [each['text'] for each in finding.get('remedy', ())]
    right += [finding[member] for member in ('mend',) if member in finding]
    return found | ({'To put it right': right} if right else {})


def line_due(step):
    """A step in a line: expression, what was put in unless that is the result, and the result."""
    result = step.get('result', {})
    shown = result['text'] if 'value' in result else None
    line = f'{step["step"]}: {step["expression"]}'
    if shown is None:
        line += f' is {step["substituted"]}'
    for text in dict.fromkeys(() if shown is None else (step['substituted'], shown)):
        line += f' {text}' if text.startswith('≈') else f' = {text}'
    return line + (f'. {step["remark"]}' if 'remark' in step else '')


class Explained(unittest.TestCase):
    maxDiff = None

    def setUp(self):
        self.known_by = {}

    def hold(self, finding, part):
        self.assertEqual(part.verdict, finding['verdict'])
        self.assertEqual(part.styles, styles_due(finding['verdict']))
        self.assertEqual(part.sentence, f'{finding["verdict"]}: {finding["sentence"]}')
        told = {name: texts for name, texts in part.facts.items() if name not in CATALOGUE}
        if 'Measured' in told:  # to what tolerance is in the survey alone
            told['Measured'] = [text.split(' ± ')[0] for text in told['Measured']]
        self.hold_caution(finding, told.pop('Meanwhile', ['']))
        self.assertEqual(told, facts_due(finding))
        self.assertEqual(part.lines, [] if is_seen(finding) else
                         [line_due(step) for step in finding.get('working', ())])

    def hold_caution(self, finding, told):
        """The page has what is dangerous; how the number is known stands with its source."""
        caution = finding.get('caution', '')
        self.assertEqual(len(told), 1)
        self.assertTrue(caution.startswith(told[0]), caution)
        self.assertEqual(told[0] == '', finding['verdict'] in ('meets', 'not-applicable'))
        rest = caution[len(told[0]):].strip()
        if rest:
            self.assertEqual(rest, self.known_by.setdefault(finding['basis'], rest))

    def hold_whole(self, report, page):
        counts = collections.Counter(each['verdict'] for each in report['findings'])
        for verdict, count in counts.items():
            self.assertRegex(page.summary, rf'[ ,]{count} {verdict}[,.]')
        counted, judged_by = page.summary.split(' Judged by ')
        self.assertEqual(counted.count(',') + 1, max(len(counts), 1))
        self.assertIn(f'Verdict of the whole: {report["verdict"]}. ', page.summary)
        alone = len(report['standards']) == 1
        self.assertEqual(judged_by.rstrip('.').split('; '), [
            each['standard'] if alone else f'{each["standard"]}: {each["verdict"]}'
            for each in report['standards']])
        # That a text is no whole number of base units is for whoever wrote the document.
        self.assertEqual(page.lists['Notices'], [
            each for each in report['notices'] if not each.endswith('the nearest one was taken.')])
        for line, each in itertools.zip_longest(page.lists['Not measured'], report['unmeasured']):
            with self.subTest(each['quantity']):
                self.hold_unmeasured(line, each, report['findings'])
        heading = 'Recorded, but judged by no rule of the standards named'
        self.assertEqual([line.split(' (')[1].split(')')[0] for line in page.lists[heading]],
                         [each['quantity'] for each in report['unjudged']])

    def hold_unmeasured(self, line, due, findings):
        """How to measure it, and before that what each standard would require of it."""
        label, rest = line.split(' (for ', 1)
        wanted = [each for each in findings
                  if each['verdict'] == 'unmeasured' and 'required' in each
                  and each['subject'] == due['quantity'] and each['missing'] == [due['quantity']]]
        self.assertEqual(label, due['label'].translate(LEVEL))
        self.assertTrue(rest.endswith(due['how'].translate(LEVEL)))
        told = rest.split('): ', 1)[1].removesuffix(due['how'].translate(LEVEL))
        self.assertEqual(told == '', not wanted, told)
        self.assertEqual(told.count('). '), len({(each['standard'], each['relation'])
                                                for each in wanted}), told)
        for each in wanted if len(wanted) == 1 and not is_seen(wanted[0]) else ():
            self.assertIn(each['required']['text'].translate(LEVEL), told)

    def hold_document(self, document):
        report, page = ran(document, 'check'), Page(document)
        due = collections.defaultdict(list)
        judged = [each for each in report['findings'] if each['verdict'] != 'unmeasured']
        for finding in judged:
            due[heading_of(finding)].append(finding)
        self.assertEqual(sorted(part.heading for part in page.parts),
                         sorted(map(heading_of, judged)))
        for part in page.parts:
            finding = due[part.heading].pop(0)
            with self.subTest(part.heading):
                self.hold(finding, part)
        self.hold_whole(report, page)
        return report

    def test_the_examples(self):
        told = collections.Counter()
        for name, document in measured():
            with self.subTest(name):
                for finding in self.hold_document(document)['findings']:
                    told.update(['seen' if is_seen(finding) else 'measured', finding['verdict']])
                    told.update(list(finding))
        for member in ('seen', 'measured', 'fails', 'meets', 'too-close', 'working', 'remedy',
                       'mend', 'caution', 'refer', 'amendment', 'inspection', 'by_listing'):
            self.assertGreater(told[member], 0, member)

    def test_a_brief_page_has_a_row_for_each(self):
        for name, document in measured():
            with self.subTest(name):
                rows = [[each.split(' ± ')[0] for each in row]
                        for row in Page(document, '--form', 'brief').rows]
                judged = [each for each in ran(document, 'check')['findings']
                          if each['verdict'] != 'unmeasured']
                self.assertEqual(sorted(row[:2] + row[4:] for row in rows), sorted(
                    row[:2] + row[4:] for row in map(row_due, judged)))
                for due in [row_due(each) for each in judged if not is_seen(each)]:
                    self.assertIn(due, rows)

    def hold_what_is_said_above(self, document):
        """What a report says once stands above where it is referred to, and says what to do."""
        above, found = {}, 0
        for part in Page(document, '--form', 'report').parts:
            label = part.heading.lower()
            for text in part.facts['What to do']:
                found += 1
                told = [each for name, each in above.items() if name.startswith(
                    text.removeprefix('as said above of ').split(', by ')[0].lower())]
                self.assertTrue(any('Meanwhile' in each.facts for each in told),
                                (part.heading, text))
            above[label] = part
        return found

    def test_what_is_said_once_stands_above(self):
        found = 0
        for maker in (generate, generate_stoves, generate_abroad):
            for line in maker.lines(GENERATED, seed='explained'):
                document = generate.read(line)
                with self.subTest(document['id']):
                    found += self.hold_what_is_said_above(document)
        self.assertGreater(found, 50)

    def test_generated_surveys(self):
        for maker in (generate, generate_stoves, generate_abroad):
            for line in maker.lines(GENERATED, seed='explained'):
                document = generate.read(line)
                with self.subTest(document['id']):
                    self.hold_document(document)


if __name__ == '__main__':
    unittest.main()
