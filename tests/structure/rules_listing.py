#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Makes docs/rules.md from what `ingle list` tells of standards and rules.

Each rule, each row of a table and each liner is one line, so that a change of a number is one line
in a diff. Without arguments the listing is printed; --write puts it in its place. INGLE_COMMAND
names the `ingle` command; without it that of the build that tests/run makes is taken.
"""
import argparse
import decimal
import json
import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
LISTING = ROOT / "docs" / "rules.md"
HOW_TO_WRITE = "/usr/bin/python3 tests/structure/rules_listing.py --write"

HEAD = f"""# Every rule of every standard

Made from `ingle list standards` and `ingle list rules` by

    {HOW_TO_WRITE}

A test fails where it is not what they tell now. Numbers are in the unit that the publication
prints. Their basis is `read` in the text, `cited` by another source, `from-memory`, or
`common-practice`. A rule that gives way to the appliance's own listing names the quantity
that tells it.
"""

RULE_COLUMNS = ["rule", "section", "basis", "relation", "formula", "numbers", "condition",
                "editions", "reading", "listing"]


# ---- tables of Markdown -----------------------------------------------------------------------


def line(cells):
    """One row of a table: a cell is one line, and a bar in it does not end it."""
    return "| " + " | ".join(" ".join(cell.split()).replace("|", "\\|") for cell in cells) + " |"


def table(head, rows):
    return [line(head), line(["---"] * len(head)), *map(line, rows), ""]


# ---- rules ------------------------------------------------------------------------------------


def text_of(amount):
    """An amount as people read it; where that text is rounded, the exact decimals."""
    if amount is None:
        return ""
    rounded = amount["text"].startswith("≈")
    return f"{amount['value']} {amount.get('unit', '')}".rstrip() if rounded else amount["text"]


def formula_of(rule):
    sources = rule.get("from", [])
    return rule["formula"] + (f" of {', '.join(sources)}" if sources else "")


def numbers_of(rule):
    numbers = [f"{name} {text_of(amount)}" for name, amount in rule["numbers"].items()]
    return ", ".join(numbers + ([rule["table"]["name"]] if "table" in rule else []))


def editions_of(rule):
    since, until = rule.get("since"), rule.get("until")
    if since and until:
        return f"{since} to {until}"
    return f"since {since}" if since else f"until {until}" if until else ""


def reading_of(rule):
    follows = rule.get("follows")
    option = [f"`{follows['reading']}={follows['option']}`"] if follows else []
    return " ".join(option + [rule.get("reading", "")])


def row_of(rule):
    return [rule["rule"], rule["section"], rule["basis"], rule["relation"], formula_of(rule),
            numbers_of(rule), rule["when"], editions_of(rule), reading_of(rule),
            rule.get("listing", "")]


# ---- tables that are looked up ----------------------------------------------------------------


def looked_up(rules):
    """The tables of a standard, each once, with the rules that look their number up in it."""
    found = []
    for rule in rules:
        printed = rule.get("table")
        if printed is None:
            continue
        users = next((users for other, sources, users in found
                      if other == printed and sources == rule["from"]), None)
        if users is None:
            found.append((printed, rule["from"], [rule["rule"]]))
        elif rule["rule"] not in users:
            users.append(rule["rule"])
    return found


def table_lines(printed, sources, users):
    reading = f"Rows by {sources[0]}, {printed['row_reading']}"
    head = [sources[0], ""]
    if "columns" in printed:
        reading += f"; columns by {sources[1]}, {printed['column_reading']}"
        head = [sources[0], *map(text_of, printed["columns"])]
    rows = [[text_of(key), *map(text_of, cells)]
            for key, cells in zip(printed["rows"], printed["cells"])]
    return [f"### {printed['name']}: {', '.join(users)}", "", f"{reading}.", "",
            *table(head, rows)]


# ---- standards --------------------------------------------------------------------------------


def standard_lines(standard, rules):
    edition = f" {standard['edition']}" if "edition" in standard else ""
    lines = [f"## {standard['id']}", "", f"{standard['title']}{edition}. {standard['place']}. "
             f"Lengths are printed in `{standard['unit']}`.", "", standard["note"], ""]
    lines += table(RULE_COLUMNS, map(row_of, rules))
    for printed, sources, users in looked_up(rules):
        lines += table_lines(printed, sources, users)
    if standard.get("liners"):
        lines += ["### Net areas of flue liners", ""]
        lines += table(["liner", "net area", "table"],
                       [[liner["liner"], text_of(liner["net_area"]), liner["table"]]
                        for liner in standard["liners"]])
    if standard.get("materials"):
        lines += ["### R-values of materials, where a product's own data are not recorded", ""]
        lines += table(["material", "R-value of one inch"],
                       [[each["material"], text_of(each["r_per_inch"])]
                        for each in standard["materials"]])
    return lines


def listing(standards, rules):
    """The whole text, from the two catalogues."""
    lines = HEAD.splitlines() + [""]
    for standard in standards:
        lines += standard_lines(standard, [rule for rule in rules
                                           if rule["standard"] == standard["id"]])
    return "\n".join(lines).rstrip("\n") + "\n"


def command():
    build = ROOT / os.environ.get("INGLE_BUILD", "build-tests")
    return os.environ.get("INGLE_COMMAND", str(build / "bindings" / "json" / "ingle"))


def catalogue(name):
    done = subprocess.run([command(), "list", name], check=True, stdout=subprocess.PIPE)
    return json.loads(done.stdout, parse_float=decimal.Decimal)


def made_now():
    return listing(catalogue("standards"), catalogue("rules"))


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--write", action="store_true", help=f"write {LISTING.name} anew")
    if parser.parse_args().write:
        LISTING.write_text(made_now(), encoding="utf-8")
    else:
        sys.stdout.write(made_now())


if __name__ == "__main__":
    main()
