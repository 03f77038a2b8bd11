# SPDX-License-Identifier: MIT
"""Compares the strict pass with Python's json module over mutated documents.

Usage: check_scan.py SCAN_STDIN

Both must accept the same documents, and for an accepted one the nodes' kinds, places, pointers and
source texts must be those that follow from what Python read. Python's module is first made as
strict as it can be: UTF-8 is decoded strictly, NaN and Infinity are refused, a name that comes
twice is noted. Known differences remain, and each has its status:

- duplicate-name: Python takes the last of two members of the same name. RFC 8259 says names SHOULD
  be unique; here they must be.
- encoding: Python keeps half a surrogate pair that is written as an escape. No UTF-8 text can hold
  it.
- encoding: Python takes \\u0000 in a member name. A name that C code reads would be cut there.
- depth: Python's limit is its stack.
"""
import json
import random
import subprocess
import sys

DEPTH_LIMIT = 6
DOCUMENTS = 40000
SEED = 8259
KINDS = ["object", "array", "string", "number", "true", "false", "null"]

SEEDS = [
    '{"standard":"a","unit":"in","opening":{"width":36.5,"height":-0,"depth":2E+1},"ok":true}',
    '[1,-0,0.5,1e5,1E-2,1.25e+10,"",null,true,false,[],{}]',
    '{"a":{"b":{"c":[1,[2,[3]]]}},"d":[[[[[0]]]]]}',
    '{"a/b":1,"m~n":2,"":3," ":4,"é":5,"\\u00e8":6,"\\"":7,"\\\\":8,"日本":9}',
    '"\\u0041\\ud83d\\ude00\\n\\r\\t\\b\\f\\/\\\\\\"\\u0000\\uffff"',
    '"Größe 日本 😀 \u007f\u0080\u07ff\u0800\uffff\U00010000\U0010ffff"',
    ' \t\r\n{ "a" : [ 1 , 2 ] ,\n "b" : { } ,\r\n "c" : [ ] } \n',
    '{"aa":1,"ab":1,"ac":1,"ba":1,"bb":1,"bc":1,"ca":1,"cb":1,"cc":1,"a":1,"b":1,"c":1,"\\u0064":1,'
    '"d\\u0061":1,"e":1,"f":1,"g":1,"h":1,"i":1,"j":1,"k":1}',
    '[{"a":1,"b":2},{"a":1,"b":2}]',
    '-12.5e-3', '0', '"a"', 'null', '[]', '{}',
]
TOKENS = [t.encode() for t in (
    '{ } [ ] , : " \\ / 0 1 9 - + . e E a b c '
    '\\u0061 \\u0000 \\ud800 \\udc00 \\ud83d\\ude00 \\n \\x '
    'true false null NaN Infinity -Infinity tru nul "a" "b" "a":1, "b":2 ,"a":1 ,1 [] {} [[[[ ]]]] '
    '00 01 1. .5 1e 0x1 // /**/ \' é 😀 \ufeff \u00a0 \u2028').split(' ')]
TOKENS += [b' ', b'\n', b'\t', b'\r', b'\x0c', b'\x0b', b'\0', b'\x1f', b'\x7f', b'\x80', b'\xbf',
           b'\xc0\x80', b'\xc3', b'\xe0\x80\x80', b'\xed\xa0\x80', b'\xed\x9f\xbf', b'\xf0\x80\x80',
           b'\xf4\x90\x80\x80', b'\xf5', b'\xff', b'\xef\xbb\xbf']
MEMBERS = [b'"a":1', b'"\\u0061":2', b'"new":[]', b'"\\u00e9":{}', b'"":""', b'"d\\u0000":0',
           b'"\\ud800":0', b'"k":1,"b":2', b'"a":{"a":1}', b'"~/":[{"/~":1}]', b'"\xc3\xa8":-0']


def mutate(chance, document):
    """The document with up to three changes."""
    for _ in range(chance.randint(0, 3)):
        at = chance.randint(0, len(document))
        end = min(len(document), at + chance.choice((1, 1, 1, 2, 4, 12)))
        change = chance.randrange(8)
        if change == 0:
            document = document[:at] + document[end:]
        elif change == 1:
            document = document[:at] + chance.choice(TOKENS) + document[at:]
        elif change == 2:
            document = document[:at] + chance.choice(TOKENS) + document[end:]
        elif change == 3:
            document = document[:end] + document[at:end] + document[end:]
        elif change == 4:
            document = document[:at] + bytes([chance.randrange(256)]) + document[end:]
        elif change == 5:
            members = chance.choice(MEMBERS)
            document = document[:at] + document[at:].replace(b'{', b'{' + members + b',', 1)
        elif change == 6:
            deeper = chance.randint(1, 3)
            document = b'[' * deeper + document + b']' * deeper
        elif chance.randrange(4) == 0:
            document = document[:at]
    return document


class Object(list):
    """An object as the list of its (name, value) pairs, which keeps names that come twice."""


def refuse(word):
    raise ValueError(word)


def parse(text):
    """What Python reads; a number is the bytes of its source text, which no other value is."""
    return json.loads(text, object_pairs_hook=Object, parse_constant=refuse,
                      parse_int=str.encode, parse_float=str.encode)


def is_utf8(text):
    return not any('\ud800' <= letter <= '\udfff' for letter in text)


def reasons(value, depth=0):
    """Why the strict pass must refuse what Python accepts: see the known differences."""
    if isinstance(value, str):
        return set() if is_utf8(value) else {'encoding'}
    if not isinstance(value, list):
        return set()
    found = {'depth'} if depth >= DEPTH_LIMIT else set()
    if isinstance(value, Object):
        names = [name for name, _ in value]
        if len(set(names)) < len(names):
            found.add('duplicate-name')
        if any('\0' in name or not is_utf8(name) for name in names):
            found.add('encoding')
        value = [member for _, member in value]
    return found.union(*(reasons(child, depth + 1) for child in value))


def kind(value):
    if value is None or isinstance(value, bool):
        return json.dumps(value)
    return {Object: 'object', list: 'array', str: 'string', bytes: 'number'}[type(value)]


def nodes(value, pointer='', parent=-1, first=0):
    """The nodes that the pass must report: (kind, parent, next, pointer, value) in its order."""
    found = [None]
    if isinstance(value, list):
        children = value if isinstance(value, Object) else enumerate(value)
        for name, child in children:
            step = str(name).replace('~', '~0').replace('/', '~1')
            found += nodes(child, pointer + '/' + step, first, first + len(found))
    found[0] = (kind(value), parent, first + len(found), pointer, value)
    return found


def due(document):
    """The statuses of which the pass must give one, and what Python read if it must accept."""
    try:
        value = parse(document.decode('utf-8'))
    except UnicodeDecodeError:
        return {'encoding', 'json', 'duplicate-name', 'depth'}, None
    except ValueError:
        return {'json', 'encoding', 'duplicate-name', 'depth'}, None
    refused = reasons(value)
    return (refused, None) if refused else ({'done'}, value)


def compare_nodes(document, value, lines):
    """What is wrong with the nodes of an accepted document, or None."""
    wanted = nodes(value)
    if len(lines) != len(wanted):
        return f'{len(lines)} nodes, not {len(wanted)}'
    for line, (kind_due, parent, after, pointer, read) in zip(lines, wanted):
        fields = line.split(' ')
        start, length = int(fields[1]), int(fields[2])
        got = (KINDS[int(fields[0])], int(fields[3]), int(fields[4]),
               bytes.fromhex(fields[5][1:]).decode())
        if got != (kind_due, parent, after, pointer):
            return f'{got} is not {(kind_due, parent, after, pointer)}'
        source = document[start:start + length]
        if source.strip() != source or parse(source.decode()) != read:
            return f'{pointer}: source {source!r} is not {read!r}'
    return None


def answers(program, documents):
    """For each document, its status and its nodes' lines."""
    framed = b''.join(b'%d\n%b' % (len(document), document) for document in documents)
    output = subprocess.run([program, str(DEPTH_LIMIT)], input=framed, stdout=subprocess.PIPE,
                            check=True).stdout.decode().splitlines()
    at = 0
    while at < len(output):
        status, count = output[at].split(' ')
        yield status, output[at + 1:at + 1 + int(count)]
        at += 1 + int(count)


def main():
    chance = random.Random(SEED)
    documents = [seed.encode() for seed in SEEDS]
    documents += [mutate(chance, chance.choice(documents)) for _ in range(DOCUMENTS)]
    given = list(answers(sys.argv[1], documents))
    seen, wrong = {}, 0
    if len(given) != len(documents):
        sys.exit(f'{len(given)} answers to {len(documents)} documents')
    for document, (status, lines) in zip(documents, given):
        wanted, value = due(document)
        fault = None if status in wanted else f'{status}, not {" or ".join(sorted(wanted))}'
        if fault is None and status == 'done':
            fault = compare_nodes(document, value, lines)
        if fault is not None:
            print(f'{document!r}: {fault}')
            wrong += 1
        seen[status] = seen.get(status, 0) + 1
    print(f'{len(documents)} documents:', ', '.join(f'{n} {s}' for s, n in sorted(seen.items())))
    # The comparison is worth something only if every outcome is met often enough.
    for status in ('done', 'json', 'encoding', 'duplicate-name', 'depth'):
        if seen.get(status, 0) < 50:
            print(f'{status} was met too seldom to have been compared')
            wrong += 1
    sys.exit(1 if wrong else 0)


if __name__ == '__main__':
    main()
