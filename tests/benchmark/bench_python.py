# SPDX-License-Identifier: MIT
"""Times the Python package against the same rules in plain Python, in one run.

The plain rules are hearth, trim and flue of one edition, on numbers that were read beforehand: what
somebody would write who needs no citation, no working and no other edition.
"""
import statistics
import time

import ingle

DOCUMENT = {
    'standards': ['irc-2021'],
    'survey': {
        'appliance': {'kind': 'masonry-fireplace', 'fuel': 'wood'},
        'opening': {'width': '36 in', 'height': '28 in'},
        'hearth': {'front': '18 in', 'left': '12 in', 'right': '10 in'},
        'trim': [{'side': 'above', 'distance': '9 in', 'projection': '1 1/2 in'}],
        'flue': {'liner': '8.5x13'},
    },
}
PLAIN = {'width': 36, 'height': 28, 'front': 18, 'left': 12, 'right': 10,
         'trim': [(9, 1.5)], 'flue': 76}


def plain(survey):
    area = survey['width'] * survey['height']
    front, side = (20, 12) if area >= 864 else (16, 8)
    findings = [
        {'rule': 'hearth-front', 'required': front, 'measured': survey['front'],
         'meets': survey['front'] >= front},
        {'rule': 'hearth-side', 'required': side, 'measured': survey['left'],
         'meets': survey['left'] >= side},
        {'rule': 'hearth-side', 'required': side, 'measured': survey['right'],
         'meets': survey['right'] >= side},
        {'rule': 'flue-area', 'required': area / 10, 'measured': survey['flue'],
         'meets': survey['flue'] >= area / 10},
    ]
    for distance, projection in survey['trim']:
        allowed = 0 if distance < 6 else distance / 8
        findings.append({'rule': 'trim-distance', 'required': 6, 'measured': distance,
                         'meets': distance >= 6})
        if distance <= 12:
            findings.append({'rule': 'trim-projection', 'required': allowed,
                             'measured': projection, 'meets': projection <= allowed})
    return findings


def seconds(call, times):
    rounds = []
    for _ in range(5):
        start = time.perf_counter()
        for _ in range(times):
            call()
        rounds.append((time.perf_counter() - start) / times)
    return statistics.median(rounds)


def make_objects():
    survey = ingle.Survey()
    survey.set('appliance.kind', 'masonry-fireplace')
    for path, text in (('opening.width', '36 in'), ('opening.height', '28 in'),
                       ('hearth.front', '18 in'), ('hearth.left', '12 in'),
                       ('hearth.right', '10 in'), ('flue.liner', '8.5x13')):
        survey.set(path, text)
    survey.add_item('trim')
    survey.set('trim[0].distance', '9 in')
    survey.set('trim[0].projection', '1 1/2 in')
    return survey


def judge(survey, standards):
    report = ingle.Report(survey, standards)
    return [finding.verdict for finding in report]


def main():
    survey = make_objects()
    standards = ['irc-2021']
    yardstick = seconds(lambda: plain(PLAIN), 20_000)
    rows = (('six rules in plain Python', yardstick),
            ('ingle.check, no working',
             seconds(lambda: ingle.check(DOCUMENT, working=False), 2000)),
            ('ingle.check', seconds(lambda: ingle.check(DOCUMENT), 1000)),
            ('Survey made and recorded', seconds(make_objects, 2000)),
            ('Report and its verdicts', seconds(lambda: judge(survey, standards), 2000)))
    for what, took in rows:
        print(f'{what:28} {took * 1e6:8.2f} us  x {took / yardstick:.1f}')


if __name__ == '__main__':
    main()
