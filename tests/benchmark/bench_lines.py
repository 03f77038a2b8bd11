# SPDX-License-Identifier: MIT
"""Times `ingle check --lines --no-working` against json-c parsing and printing the same input.

Both are whole processes over the same generated surveys, in turns; the medians' ratio is printed,
and the time of one survey (the start-up) and the peak memory of both.
"""
import os
import random
import statistics
import subprocess
import tempfile
import time

SURVEYS = 100_000
ROUNDS = 3
COMMAND = os.environ['INGLE_COMMAND']
YARDSTICK = os.environ['JSON_COPY']


def inches(chance, least, most):
    sixteenths = chance.randint(least * 16, most * 16)
    return f'{sixteenths // 16} {sixteenths % 16}/16 in'


def survey(number, chance):
    trim = ', '.join(
        f'{{"side": "above", "distance": "{inches(chance, 4, 16)}",'
        f' "projection": "{inches(chance, 0, 3)}"}}'
        for _ in range(chance.randint(0, 2)))
    liner = chance.choice(['8.5x13', '12x12', '13x13', 'round-10', '16x16'])
    return (
        f'{{"id": "survey-{number}", "standards": ["irc-2021"], "survey": '
        f'{{"appliance": {{"kind": "masonry-fireplace", "fuel": "wood"}}, '
        f'"opening": {{"width": "{inches(chance, 24, 48)}", "height": "{inches(chance, 20, 40)}"}}, '
        f'"hearth": {{"front": "{inches(chance, 14, 24)}", "left": "{inches(chance, 6, 14)}", '
        f'"right": "{inches(chance, 6, 14)}"}}, '
        f'"trim": [{trim}], "flue": {{"liner": "{liner}"}}}}}}\n')


def run(arguments, path):
    """Seconds of one process that reads the file, and its peak memory in KiB."""
    with open(path, 'rb') as source:
        start = time.perf_counter()
        process = subprocess.Popen(arguments, stdin=source, stdout=subprocess.DEVNULL)
        _, status, usage = os.wait4(process.pid, 0)
        took = time.perf_counter() - start
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0:
        raise SystemExit(f'{arguments[0]} ended with {process.returncode}')
    return took, usage.ru_maxrss


def main():
    chance = random.Random(1)
    check = [COMMAND, 'check', '--lines', '--no-working']
    with tempfile.TemporaryDirectory() as folder:
        many, one = os.path.join(folder, 'many'), os.path.join(folder, 'one')
        with open(many, 'w', encoding='utf-8') as out:
            out.writelines(survey(number, chance) for number in range(SURVEYS))
        with open(one, 'w', encoding='utf-8') as out:
            out.write(survey(0, chance))
        size = os.path.getsize(many)
        times = {'check': [], 'copy': []}
        for _ in range(ROUNDS):
            times['check'].append(run(check, many))
            times['copy'].append(run([YARDSTICK], many))
        start = statistics.median(run(check, one)[0] for _ in range(21))
    checked = statistics.median(took for took, _ in times['check'])
    copied = statistics.median(took for took, _ in times['copy'])
    print(f'{SURVEYS} surveys of {size / SURVEYS:.0f} bytes')
    print(f'json-c parses and prints    {copied:6.2f} s  {copied / SURVEYS * 1e6:6.2f} us a survey')
    print(f'ingle check --no-working    {checked:6.2f} s  {checked / SURVEYS * 1e6:6.2f} us a survey'
          f'  x {checked / copied:.2f}')
    print(f'peak memory                 {times["check"][0][1]} KiB; json-c {times["copy"][0][1]} KiB')
    print(f'start-up with one survey    {start * 1e3:.2f} ms')


if __name__ == '__main__':
    main()
