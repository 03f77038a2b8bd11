# SPDX-License-Identifier: MIT
"""Survey documents that the tests of the command share: good ones, and every kind of bad one."""

import copy
import json

# The document of the contract, with all its forms of amounts.
EXAMPLE = {
    "id": "alder-lane-living-room",
    "standards": ["irc-2021"],
    "unit": "in",
    "tolerance": "1/16 in",
    "survey": {
        "appliance": {"kind": "masonry-fireplace", "fuel": "wood"},
        "opening": {"width": "36 in",
                    "height": {"value": 24, "unit": "in", "tolerance": "1/8 in"}},
        "hearth": {"front": "19 15/16 in", "left": "12 in", "right": "12 in"},
        "trim": [{"label": "mantel shelf", "side": "above", "distance": "10 in",
                  "projection": "1 1/4 in"}],
        "flue": {"shape": "square", "liner": "13x13"},
    },
    "amendments": [{"standard": "irc-2021", "rule": "hearth-front", "set": {"large": "24 in"},
                    "citation": "Alder Lane by-law 7-2"}],
}


def hearth(front, tolerance=None):
    """A 36 in by 24 in opening, 6 ft2 exactly: IRC R1001.10 requires 20 in of hearth in front."""
    measured = {"value": front, "tolerance": tolerance} if tolerance else front
    return {"standards": ["irc-2021"], "survey": {
        "appliance": {"kind": "masonry-fireplace"},
        "opening": {"width": "36 in", "height": "24 in"},
        "hearth": {"front": measured}}}


FAILS = hearth("19 15/16 in")
TOO_CLOSE = hearth("20 in", "1/16 in")
UNMEASURED = hearth("20 in")


def encoded(document):
    """A document as bytes on one line."""
    return json.dumps(document, ensure_ascii=False).encode()


def changed(path, value, document=EXAMPLE):
    """A copy with the value at a JSON Pointer set; None takes it out."""
    copied = copy.deepcopy(document)
    *around, last = path.strip("/").split("/")
    place = copied
    for name in around:
        place = place[int(name)] if isinstance(place, list) else place[name]
    if value is None:
        del place[last]
    elif isinstance(place, list):
        place[int(last)] = value
    else:
        place[last] = value
    return copied


def with_room(volume):
    """A copy with a room of that volume."""
    return changed("/survey/room", {"volume": volume})


# Everything that is known of CSA A405, 5.3.6, for a hearth level with the fire chamber's floor, at
# the limits: 700 mm of hearth in all, 400 mm in front, 200 mm at the sides, a slab of 100 mm at its
# supports and 50 mm at its edge.
MEETS = {"standards": ["csa-a405"], "survey": {
    "appliance": {"kind": "masonry-fireplace"},
    "hearth": {"firebox-raise": "0 mm", "overall-depth": "700 mm", "front": "400 mm",
               "left": "200 mm", "right": "200 mm", "on-combustible-floor": False,
               "thickness": "100 mm", "edge-thickness": "50 mm"}}}


# Bytes that are no document: name, bytes, code of the error, its pointer (None: not held).
BAD_BYTES = [
    ("empty", b"", "json", None),
    ("spaces only", b"  \t ", "json", None),
    ("truncated", encoded(EXAMPLE)[:150], "json", None),
    ("truncated in a letter", '{"id": "Kamin ö'.encode()[:-1], "encoding", "/id"),
    ("too deep", b'{"survey": ' + b"[" * 40 + b"]" * 40 + b"}", "depth", None),
    ("very deep", b"[" * 100000, "depth", None),
    ("a name twice", b'{"survey": {}, "standards": ["irc-2021"], "survey": {}}',
     "duplicate-name", "/survey"),
    ("a name twice, once escaped",
     b'{"survey": {"opening": {"width": "36 in", "w\\u0069dth": "35 in"}}}',
     "duplicate-name", "/survey/opening/width"),
    ("NaN", b'{"unit": "in", "survey": {"opening": {"width": NaN}}}', "json",
     "/survey/opening/width"),
    ("Infinity", b'{"unit": "in", "survey": {"opening": {"width": -Infinity}}}', "json",
     "/survey/opening/width"),
    ("a number without end", b'{"unit": "in", "survey": {"opening": {"width": 1.}}}', "json",
     "/survey/opening/width"),
    ("a leading zero", b'{"unit": "in", "survey": {"opening": {"width": 036}}}', "json",
     "/survey/opening/width"),
    ("1e400", b'{"standards": ["irc-2021"], "unit": "in", "survey": {"opening": {"width": 1e400}}}',
     "overflow", "/survey/opening/width"),
    ("no UTF-8", b'{"id": "\xff", "survey": {}}', "encoding", "/id"),
    ("overlong UTF-8", b'{"id": "\xc0\x80", "survey": {}}', "encoding", "/id"),
    ("half a surrogate pair", b'{"id": "\\ud800", "survey": {}}', "encoding", "/id"),
    ("NUL in the bytes", b'{"id": "a\0b", "survey": {}}', "encoding", "/id"),
    ("NUL in a text", b'{"standards": ["irc-2021"], "id": "a\\u0000b", "survey": {}}', "encoding",
     "/id"),
    ("NUL in a name", b'{"i\\u0000d": "a", "survey": {}}', "encoding", None),
    ("a byte-order mark", b'\xef\xbb\xbf{"survey": {}}', "json", ""),
    ("a comma too many", b'{"survey": {},}', "json", None),
    ("a comment", b'{"survey": {} /* none */}', "json", None),
    ("something after the end", b'{"survey": {}} {}', "json", ""),
    ("a raw tab in a text", b'{"id": "a\tb", "survey": {}}', "json", "/id"),
    ("single quotes", b"{'survey': {}}", "json", None),
]

# Documents that are JSON and no surveys: name, document, code of the error, its pointer, and
# a word that the message has to have.
BAD_DOCUMENTS = [
    ("an array", [EXAMPLE], "type", "", ""),
    ("a text", "survey", "type", "", ""),
    ("null", None, "type", "", ""),
    ("no survey", {"standards": ["irc-2021"]}, "missing-name", "", "survey"),
    ("an unknown name", changed("/surveyor", "A"), "unknown-name", "/surveyor", ""),
    ("a near-miss name", changed("/standrads", []), "unknown-name", "/standrads", "standards"),
    ("an unknown group", changed("/survey/kitchen", {}), "unknown-name", "/survey/kitchen", ""),
    ("a near-miss group", changed("/survey/openning", {}), "unknown-name", "/survey/openning",
     "opening"),
    ("an unknown quantity", changed("/survey/opening/colour", "red"), "unknown-name",
     "/survey/opening/colour", ""),
    ("a near-miss quantity", changed("/survey/opening/widht", "36 in"), "unknown-name",
     "/survey/opening/widht", "width"),
    ("a near-miss quantity of an item", changed("/survey/trim/0/distence", "9 in"), "unknown-name",
     "/survey/trim/0/distence", "distance"),
    ("a near-miss choice", changed("/survey/flue/shape", "sqare"), "unknown-choice",
     "/survey/flue/shape", "square"),
    ("a label where none is", changed("/survey/opening/label", "A"), "unknown-name",
     "/survey/opening/label", ""),
    ("a near-miss member of an amount",
     changed("/survey/opening/width", {"value": 36, "unti": "in"}), "unknown-name",
     "/survey/opening/width/unti", "unit"),
    ("no unit in a text", changed("/survey/opening/width", "36"), "unit-missing",
     "/survey/opening/width", ""),
    ("no unit at all", changed("/unit", None, changed("/survey/opening/width", 36)),
     "unit-missing", "/survey/opening/width", ""),
    ("no unit in an object", changed("/unit", None, changed("/survey/opening/width",
                                                            {"value": 36})),
     "unit-missing", "/survey/opening/width/value", ""),
    ("no unit of a volume", with_room(300), "unit-missing", "/survey/room/volume", ""),
    ("no unit of a volume in a text", with_room("300"), "unit-missing", "/survey/room/volume", ""),
    ("a length for a volume", with_room("300 ft"), "dimension", "/survey/room/volume", ""),
    ("an unknown unit", changed("/survey/opening/width", "36 cubits"), "unit-unknown",
     "/survey/opening/width", ""),
    ("an unknown unit in an object", changed("/survey/opening/width", {"value": 3, "unit": "yd"}),
     "unit-unknown", "/survey/opening/width/unit", ""),
    ("an area for a length", changed("/survey/opening/width", "36 in2"), "dimension",
     "/survey/opening/width", ""),
    ("a length for an area", changed("/survey/flue/net-area", "36 in"), "dimension",
     "/survey/flue/net-area", ""),
    ("a negative amount", changed("/survey/hearth/front", "-20 in"), "negative",
     "/survey/hearth/front", ""),
    ("a negative number", changed("/survey/hearth/front", -20), "negative",
     "/survey/hearth/front", ""),
    ("a negative tolerance", changed("/tolerance", "-1/16 in"), "negative", "/tolerance", ""),
    ("a comma for the point", changed("/survey/opening/width", "36,5 in"), "comma",
     "/survey/opening/width", ""),
    ("an empty amount", changed("/survey/opening/width", ""), "empty", "/survey/opening/width", ""),
    ("a flag as a text", changed("/survey/trim/0/combustible", "yes"), "type",
     "/survey/trim/0/combustible", ""),
    ("an amount as a flag", changed("/survey/opening/width", True), "type",
     "/survey/opening/width", ""),
    ("an amount as null", changed("/survey/opening", {"width": None}), "type",
     "/survey/opening/width", ""),
    ("an amount as an array", changed("/survey/opening/width", ["36 in"]), "type",
     "/survey/opening/width", ""),
    ("a group as an array", changed("/survey/opening", []), "type", "/survey/opening", ""),
    ("items as an object", changed("/survey/trim", {}), "type", "/survey/trim", ""),
    ("standards as a text", changed("/standards", "irc-2021"), "type", "/standards", ""),
    ("an unknown standard", changed("/standards", ["irc-1066"]), "unknown-standard",
     "/standards/0", ""),
    ("a near-miss standard", changed("/standards", ["irc2021"]), "unknown-standard",
     "/standards/0", "irc-2021"),
    ("a standard twice", changed("/standards", ["irc-2021", "irc-2021"]), "duplicate-name",
     "/standards/1", ""),
    ("an empty list of standards", changed("/standards", []), "no-standard", "/standards", ""),
    ("an unknown unit of the document", changed("/unit", "yd"), "unit-unknown", "/unit", ""),
    ("an amendment to a rule that is not there", changed("/amendments/0/rule", "hearth-colour"),
     "unknown-rule", "/amendments/0/rule", ""),
    ("an amendment to a number that is not there",
     changed("/amendments/0/set", {"largest": "24 in"}), "unknown-number",
     "/amendments/0/set/largest", ""),
    ("an amendment to a standard that is not there",
     changed("/amendments/0/standard", "irc-1066"), "unknown-standard", "/amendments/0/standard",
     ""),
    ("an amendment without citation", changed("/amendments/0/citation", None), "missing-name",
     "/amendments/0", "citation"),
    ("an amendment with an empty citation", changed("/amendments/0/citation", ""), "no-citation",
     "/amendments/0/citation", "authority"),
    ("an amendment with a blank citation", changed("/amendments/0/citation", " \t\r\n"),
     "no-citation", "/amendments/0/citation", "authority"),
    ("an amendment that sets nothing", changed("/amendments/0/set", {}), "missing-name",
     "/amendments/0/set", ""),
    ("a note that is no text", changed("/note", 7), "type", "/note", ""),
    ("a near-miss reading", changed("/readings", {"hearth-step": "round-up"}), "unknown-name",
     "/readings/hearth-step", "hearth-steps"),
    ("an unknown reading", changed("/readings", {"colour": "red"}), "unknown-name",
     "/readings/colour", "hearth-steps"),
    ("a near-miss option", changed("/readings", {"hearth-steps": "whole-step"}), "unknown-choice",
     "/readings/hearth-steps", "whole-steps"),
    ("an unknown option", changed("/readings", {"hearth-steps": "red"}), "unknown-choice",
     "/readings/hearth-steps", "round-up and whole-steps"),
    ("an option by its number", changed("/readings", {"hearth-steps": 1}), "type",
     "/readings/hearth-steps", ""),
    ("readings as an array", changed("/readings", ["round-up"]), "type", "/readings", ""),
    ("the authority of a town's document", changed("/authority", "Town"), "unknown-name",
     "/authority", ""),
]

# A town's amendments: 6 ft2 and more need 24 in of hearth in front, not the 20 in of R1001.10.
TOWN = {
    "authority": "Town of Alderbrook",
    "note": "As of the last town meeting.",
    "unit": "in",
    "amendments": [{"standard": "irc-2021", "rule": "hearth-front", "set": {"large": 24},
                    "citation": "by-law 7-2"}],
}

# What stands of it in a finding.
TOWN_CITATION = "Town of Alderbrook, by-law 7-2"

# Documents that are JSON and no amendments, as BAD_DOCUMENTS.
BAD_TOWNS = [
    ("an array", TOWN["amendments"], "type", "", "amendments"),
    ("null", None, "type", "", ""),
    ("a survey", FAILS, "unknown-name", "/standards", ""),
    ("no amendments", {"authority": "Town of Alderbrook"}, "missing-name", "", "amendments"),
    ("a near-miss name", changed("/authorty", "Town", TOWN), "unknown-name", "/authorty",
     "authority"),
    ("an authority that is no text", changed("/authority", 7, TOWN), "type", "/authority", ""),
    ("a note that is no text", changed("/note", [], TOWN), "type", "/note", ""),
    ("NUL in the authority", changed("/authority", "a\0b", TOWN), "encoding", "/authority", ""),
    ("an unknown unit", changed("/unit", "inch", TOWN), "unit-unknown", "/unit", "mm"),
    ("amendments as an object", changed("/amendments", {}, TOWN), "type", "/amendments", ""),
    ("an amendment as a text", changed("/amendments/0", "by-law", TOWN), "type",
     "/amendments/0", ""),
    ("no unit for a bare number", changed("/unit", None, TOWN), "unit-missing",
     "/amendments/0/set/large", ""),
    ("a unit of another dimension", changed("/amendments/0/set/large", "24 in2", TOWN),
     "dimension", "/amendments/0/set/large", ""),
    ("a negative number", changed("/amendments/0/set/large", "-24 in", TOWN), "negative",
     "/amendments/0/set/large", ""),
    ("a tolerance", changed("/amendments/0/set/large", {"value": 24, "tolerance": 1}, TOWN),
     "unknown-name", "/amendments/0/set/large/tolerance", ""),
    ("a near-miss standard", changed("/amendments/0/standard", "irc2021", TOWN),
     "unknown-standard", "/amendments/0/standard", "irc-2021"),
    ("a near-miss rule", changed("/amendments/0/rule", "hearth-frnt", TOWN), "unknown-rule",
     "/amendments/0/rule", "hearth-front"),
    ("a near-miss number", changed("/amendments/0/set", {"lrge": 24}, TOWN), "unknown-number",
     "/amendments/0/set/lrge", "large"),
    ("a near-miss member", changed("/amendments/0/citaton", "by-law", TOWN), "unknown-name",
     "/amendments/0/citaton", "citation"),
    ("no citation", changed("/amendments/0/citation", None, TOWN), "missing-name",
     "/amendments/0", "citation"),
    ("an empty citation", changed("/amendments/0/citation", "", TOWN), "no-citation",
     "/amendments/0/citation", "authority"),
    ("a blank citation", changed("/amendments/0/citation", "  ", TOWN), "no-citation",
     "/amendments/0/citation", "authority"),
    ("a number of no such name", changed("/amendments/0/set", {"depth": 24}, TOWN),
     "unknown-number", "/amendments/0/set/depth", "threshold, small and large"),
    ("a state", {"amendments": [{"standard": "irc-2021", "rule": "damper-present",
                                 "set": {"state": "working"}, "citation": "by-law"}]},
     "unknown-number", "/amendments/0/set/state", "state and no number"),
    ("nothing that is set", changed("/amendments/0/set", {"note": "later"}, TOWN), "missing-name",
     "/amendments/0/set", ""),
]

# What the schema leaves to the command: the size of amounts, what stands between a text's number
# and its unit, and standards, which the command line may give.
BAD_BEYOND_SCHEMA = [
    ("an absurd amount", changed("/survey/opening/width", "36 ft"), "implausible",
     "/survey/opening/width", ""),
    ("an absurd tolerance", changed("/survey/opening/height/tolerance", "900 ft"), "implausible",
     "/survey/opening/height/tolerance", ""),
    ("an amount beyond 64 bits", changed("/survey/opening/width", "99999999999999999 in"),
     "overflow", "/survey/opening/width", ""),
    ("a number beyond 64 bits", changed("/survey/opening/width", 10 ** 40), "overflow",
     "/survey/opening/width", ""),
    ("a zero below the line", changed("/survey/opening/width", "36 1/0 in"), "zero-denominator",
     "/survey/opening/width", ""),
    ("no standards", changed("/standards", None), "no-standard", "", ""),
    ("trailing text", changed("/survey/opening/width", "36 in or 37 in"), "trailing-text",
     "/survey/opening/width", ""),
]
