# SPDX-License-Identifier: MIT
"""The files of the project, and C text without what is not code."""
import os
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def files(folder, *suffixes):
    """The files below a folder of the project, build folders and hidden ones left out."""
    found = []
    for place, folders, names in os.walk(ROOT / folder):
        folders[:] = sorted(name for name in folders
                            if not name.startswith((".", "__"))
                            and not Path(place, name, "meson-private").exists())
        found += [Path(place, name) for name in sorted(names) if name.endswith(suffixes)]
    if not found:
        raise AssertionError("no %s below %s: the folder has moved" % (suffixes, folder))
    return found


def name_of(path):
    return path.relative_to(ROOT).as_posix()


def without_comments(text):
    """C text with its comments blanked, line by line as before."""
    pattern = r'("(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])*\')|/\*.*?\*/|//[^\n]*'

    def keep(match):
        return match.group(1) or re.sub(r"[^\n]", " ", match.group(0))

    return re.sub(pattern, keep, text, flags=re.DOTALL)


def without_texts(code):
    """C code, comments already gone, with its string and character constants emptied."""
    return re.sub(r'"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])*\'', '""', code)
