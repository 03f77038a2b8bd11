# SPDX-License-Identifier: MIT
"""What the public headers declare, read from their text, to hold the Python package against it."""

import pathlib
import re

ROOT = pathlib.Path(__file__).resolve().parents[2]


def _text(paths):
    text = "\n".join(path.read_text(encoding="utf-8") for path in sorted(paths))
    return re.sub(r"/\*.*?\*/", " ", text, flags=re.S)


LIBRARY = _text((ROOT / "include" / "ingle").glob("*.h*"))
JSON = _text([ROOT / "bindings" / "json" / "ingle-json.h"])


def _declared(text):
    """A type and a name: `const char **liner` is ("const char **", "liner")."""
    matched = re.fullmatch(r"(.*?)(\w+)", " ".join(text.split()))
    kind = matched[1].strip()
    return re.sub(r"\s*\*", " *", kind).replace("* *", "**").replace("  ", " "), matched[2]


def functions(text):
    """Every exported function: its name, and its result's and its parameters' types."""
    found = {}
    for result, name, parameters in re.findall(
            r"INGLE_API\s+([\w\s*]+?)\b(ingle_\w+)\s*\(([^)]*)\)\s*;", text):
        kinds = [] if parameters.strip() == "void" else [
            _declared(each)[0] for each in parameters.split(",")]
        found[name] = (_declared(result + " x")[0], kinds)
    return found


def members(text, struct):
    """A struct's members: their types and names."""
    body = re.search(r"typedef struct %s \{(.*?)\}" % struct, text, re.S)[1]
    return [_declared(member) for member in body.split(";") if member.strip()]


def constants(text):
    """Every enumerator with its number."""
    return {name: int(number) for name, number in re.findall(r"\b(INGLE_\w+) = (-?\d+)", text)}
