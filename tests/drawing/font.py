# SPDX-License-Identifier: MIT
"""How wide texts are, from the font file that the style sheet names first: DejaVu Sans."""

import functools
import pathlib
import struct

FONT = pathlib.Path("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf")
ASCENT, DESCENT = 0.76, 0.24  # of the letters drawn, in ems; accents are not in use


@functools.cache
def tables():
    """The font's bytes and where each of its tables begins (OpenType 1.9, "Table Directory")."""
    data = FONT.read_bytes()
    count = struct.unpack(">H", data[4:6])[0]
    places = {}
    for index in range(count):
        tag, _, offset, _ = struct.unpack(">4sLLL", data[12 + 16 * index:28 + 16 * index])
        places[tag.decode()] = offset
    return data, places


@functools.cache
def glyphs():
    """From characters to glyphs, by the font's "cmap" table of format 12."""
    data, places = tables()
    start = places["cmap"]
    found = {}
    for index in range(struct.unpack(">H", data[start + 2:start + 4])[0]):
        at = start + 4 + 8 * index
        offset = start + struct.unpack(">HHL", data[at:at + 8])[2]
        if struct.unpack(">H", data[offset:offset + 2])[0] != 12:
            continue
        for group in range(struct.unpack(">L", data[offset + 12:offset + 16])[0]):
            at = offset + 16 + 12 * group
            first, last, glyph = struct.unpack(">LLL", data[at:at + 12])
            found.update({code: glyph + code - first for code in range(first, last + 1)})
    return found


@functools.cache
def letter(character):
    """The advance width of a character, in ems."""
    data, places = tables()
    per_em = struct.unpack(">H", data[places["head"] + 18:places["head"] + 20])[0]
    count = struct.unpack(">H", data[places["hhea"] + 34:places["hhea"] + 36])[0]
    glyph = min(glyphs().get(ord(character), 0), count - 1)
    at = places["hmtx"] + 4 * glyph
    return struct.unpack(">H", data[at:at + 2])[0] / per_em


def width(text):
    """The width of a text on one line, in ems."""
    return sum(letter(character) for character in text)
