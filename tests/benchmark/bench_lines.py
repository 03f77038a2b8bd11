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
        f'"opening": {{"width": "{inches(chance, 24, 48)}", '
        f'"height": "{inches(chance, 20, 40)}"}}, '
        f'"hearth": {{"front": "{inches(chance, 14, 24)}", "left": "{inches(chance, 6, 14)}", '
        f'"right": "{inches(chance, 6, 14)}"}}, '
        f'"trim": [{trim}], "flue": {{"liner": "{liner}"}}}}}}\n')


def run(arguments, path):
    """Seconds of one process that reads the file."""
    with open(path, 'rb') as source:
        start = time.perf_counter()
        subprocess.run(arguments, stdin=source, stdout=subprocess.DEVNULL, check=True)
        return time.perf_counter() - start


def peak_memory(arguments, path):
    """The most memory in KiB that one process has held, asked while it runs.

    What the system counts for a process that has ended includes this interpreter's own memory, from
    between fork and exec.
    """
    peak = 0
    with open(path, 'rb') as source:
        process = subprocess.Popen(arguments, stdin=source, stdout=subprocess.DEVNULL)
        while process.poll() is None:
            try:
                with open(f'/proc/{process.pid}/status', encoding='ascii') as status:
                    peak = max([peak] + [int(line.split()[1]) for line in status
                                         if line.startswith('VmHWM')])
            except OSError:
                break
            time.sleep(0.01)
    return peak


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
        start = statistics.median(run(check, one) for _ in range(21))
        peaks = peak_memory(check, many), peak_memory([YARDSTICK], many)
    checked = statistics.median(times['check'])
    copied = statistics.median(times['copy'])
    print(f'{SURVEYS} surveys of {size / SURVEYS:.0f} bytes')
    for what, took in (('json-c parses and prints', copied), ('ingle check --no-working', checked)):
        print(f'{what:26} {took:6.2f} s  {took / SURVEYS * 1e6:6.2f} us a survey'
              f'  x {took / copied:.2f}')
    print(f'peak memory                {peaks[0]} KiB; json-c {peaks[1]} KiB')
    print(f'start-up with one survey   {start * 1e3:.2f} ms')


if __name__ == '__main__':
    main()
