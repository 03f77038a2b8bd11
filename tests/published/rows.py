# SPDX-License-Identifier: MIT
"""Which row of a standard a finding came from, told from its report and what was recorded.

Several rows may share a rule's id: they differ by section, by reading, or by when they apply. When
they apply is asked here of the document, apart from the library.
"""
import json
import os
import subprocess

import amounts
import applies
import rules

# Areas that the diameter of what is round tells where they are not recorded.
ROUND = {"connector.area": "connector.diameter"}


def catalogue(name):
    done = subprocess.run([os.environ["INGLE_COMMAND"], "list", name], check=True, text=True,
                          encoding="utf-8", capture_output=True)
    return json.loads(done.stdout)


class Rows:
    """The rows of all standards; each is known by its place in `ingle list rules`."""

    def __init__(self):
        self.rules = catalogue("rules")
        self.quantities = {each["id"]: each for each in catalogue("quantities")}
        self.first_options = {each["id"]: each["options"][0]["id"]
                              for each in catalogue("readings")}
        self.places = {}
        for place, rule in enumerate(self.rules):
            self.places.setdefault((rule["standard"], rule["rule"]), []).append(place)

    def of(self, document, finding):
        """The places of the rows that a finding may have come from: one, where it can be told."""
        every = self.places[finding["standard"], finding["rule"]]
        if len(every) == 1:
            return every
        places = [place for place in every if self.is_alike(self.rules[place], finding)]
        told = {place: self.applies(self.rules[place], document, finding["subject"])
                for place in places}
        certain = [place for place in places if told[place]]
        return certain or [place for place in places if told[place] is not False]

    @staticmethod
    def is_alike(rule, finding):
        """Whether what a finding tells of its rule is so of this row."""
        if "by_listing" not in finding and rule["relation"] != finding["relation"]:
            return False
        reading = finding.get("reading", "")
        return (rule["section"], rule["basis"]) == (finding["section"], finding["basis"]) and (
            "reading" not in rule or rule["reading"] in reading)

    def applies(self, rule, document, subject):
        """Whether a row applies; None where the document does not tell."""
        answers = [self.holds(part, document, subject)
                   for part in applies.parts(rule, self.quantities)]
        if "follows" in rule:
            reading = rule["follows"]["reading"]
            chosen = document.get("readings", {}).get(reading, self.first_options[reading])
            answers.append(chosen == rule["follows"]["option"])
        return False if False in answers else None if None in answers else True

    def holds(self, part, document, subject):
        recorded = self.recorded(part.quantity, document, subject)
        across = recorded is None and self.recorded(ROUND.get(part.quantity), document, subject)
        if across:
            area = rules.circle(amounts.exact(across, "length", document.get("unit")))
            return applies.AMOUNT_TESTS[part.test][1](area, part.value)
        if recorded is None:
            return part.unknown
        if part.test is None:
            return part.admits({True: "yes", False: "no"}.get(recorded, recorded))
        amount = amounts.exact(recorded, self.quantities[part.quantity]["dimension"],
                               document.get("unit"))
        return applies.AMOUNT_TESTS[part.test][1](amount, part.value)

    def recorded(self, quantity, document, subject):
        """What a document has of a quantity, or what holds where nothing is recorded."""
        if quantity is None:
            return None
        group, name = quantity.split(".")
        holder = document["survey"].get(group, {})
        if isinstance(holder, list):
            steps = subject.split("/")
            if steps[2] != group:
                return None
            holder = holder[int(steps[3])]
        return holder.get(name, self.quantities[quantity].get("assumed"))
