# SPDX-License-Identifier: MIT
"""Reads a drawing or plot back from its SVG: texts with their boxes, lines, and amounts."""

import dataclasses
import re
import xml.etree.ElementTree as ElementTree

import font

SVG = "{http://www.w3.org/2000/svg}"


@dataclasses.dataclass
class Box:
    """A rectangle on the sheet, in millimetres."""
    left: float
    top: float
    right: float
    bottom: float
    words: str = ""

    def hits(self, other):
        """Whether the two have more than an edge in common."""
        slack = 0.01
        return (self.left < other.right - slack and other.left < self.right - slack and
                self.top < other.bottom - slack and other.top < self.bottom - slack)


@dataclasses.dataclass
class Amount:
    """What a group with `data-value` draws."""
    name: str
    subject: str
    value: int
    words: str
    length: float  # from arrow to arrow, in millimetres on paper


def number(element, name):
    return float(element.get(name, "0"))


def text_box(element):
    """The box of a text, by the widths of its letters."""
    size = number(element, "font-size")
    words = element.text or ""
    width = font.width(words) * size
    x, y = number(element, "x"), number(element, "y")
    start = {"start": 0, "middle": width / 2, "end": width}[element.get("text-anchor", "start")]
    up, down = font.ASCENT * size, font.DESCENT * size
    if "rotate(-90" in element.get("transform", ""):
        return Box(x - up, y + start - width, x + down, y + start, words)
    return Box(x - start, y - up, x - start + width, y + down, words)


def points_of(element):
    return [tuple(float(part) for part in pair.split(","))
            for pair in element.get("points", "").split()]


class Picture:
    """A document, read."""

    def __init__(self, source):
        self.root = ElementTree.fromstring(source)
        _, _, self.width, self.height = (float(part) for part in
                                         self.root.get("viewBox").split())
        self.texts = [text_box(each) for each in self.root.iter(SVG + "text")]
        self.amounts = [self.amount(each) for each in self.root.iter(SVG + "g")
                        if each.get("data-value") is not None]

    def element_text(self, name):
        return self.root.find(SVG + name).text

    @staticmethod
    def amount(group):
        """Its arrows point at the ends of what it measures."""
        arrows = [points_of(each)[0] for each in group.iter(SVG + "polygon")
                  if each.get("class") == "arrow"]
        (x1, y1), (x2, y2) = arrows
        words = " ".join(each.text for each in group.iter(SVG + "text"))
        return Amount(group.get("data-name"), group.get("data-subject"),
                      int(group.get("data-value")), words, abs(x1 - x2) + abs(y1 - y2))

    def scale_of(self, group_words):
        """The number of the scale that a text names: 1:24 is 24."""
        found = re.search(r"\b1:(\d+)\b", group_words)
        return int(found.group(1)) if found else None

    def scales(self):
        """The sheet's scale, and that of its detail if there is one."""
        sheet = detail = None
        for each in self.texts:
            scale = self.scale_of(each.words)
            if scale is not None and each.words.startswith("1:"):
                sheet = scale
            elif scale is not None and each.words.startswith("Detail"):
                detail = scale
        return [scale for scale in (sheet, detail) if scale is not None]

    def corners(self):
        """Every point that something is drawn at."""
        for element in self.root.iter():
            kind = element.tag.removeprefix(SVG)
            if kind == "line":
                yield number(element, "x1"), number(element, "y1")
                yield number(element, "x2"), number(element, "y2")
            elif kind in ("polyline", "polygon"):
                yield from points_of(element)
            elif kind == "rect":
                yield number(element, "x"), number(element, "y")
                yield (number(element, "x") + number(element, "width"),
                       number(element, "y") + number(element, "height"))
            elif kind == "circle":
                radius = number(element, "r")
                yield number(element, "cx") - radius, number(element, "cy") - radius
                yield number(element, "cx") + radius, number(element, "cy") + radius
        for box in self.texts:
            yield box.left, box.top
            yield box.right, box.bottom

    def overlaps(self):
        """Pairs of texts that lie on each other."""
        for index, one in enumerate(self.texts):
            for other in self.texts[index + 1:]:
                if one.hits(other):
                    yield one.words, other.words

    def strays(self):
        """Points off the sheet."""
        slack = 0.01
        for x, y in self.corners():
            if not (-slack <= x <= self.width + slack and -slack <= y <= self.height + slack):
                yield x, y

    def crossed(self):
        """Texts of dimensions that a dimension line other than their own runs through."""
        lines = []
        for group in self.root.iter(SVG + "g"):
            if group.get("data-value") is None:
                continue
            line = list(group.iter(SVG + "line"))[-1]
            lines.append(Box(min(number(line, "x1"), number(line, "x2")),
                             min(number(line, "y1"), number(line, "y2")),
                             max(number(line, "x1"), number(line, "x2")) + 0.02,
                             max(number(line, "y1"), number(line, "y2")) + 0.02))
        for text in self.texts:
            for line in lines:
                if text.hits(line):
                    yield text.words
