# SPDX-License-Identifier: MIT
"""Makes surveys up, plausible and extreme ones, to be drawn."""

import random

STANDARDS = ["irc-2021", "irc-2000", "ibc-2021", "sbc-1990s", "nfpa-211-fireplaces",
             "common-practice-us", "obc-2012", "abcb-2022", "usda-fb1889-1941"]
WORDS = ["mantel", "shelf", "left", "old", "oak", "pilaster", "main ridge", "dormer", "parapet",
         "Wandverkleidung", "bell\a", "étagère", "W" * 40,
         "panelling of the chimney breast & <all> \"of\" it"]


class Survey:
    """A document for the command, from one seed."""

    def __init__(self, seed, standards):
        self.source = random.Random(seed)
        self.extreme = seed % 3 == 0
        self.metric = seed % 4 == 1
        self.survey = {"appliance": {"kind": self.source.choice(
            ["masonry-fireplace", "masonry-fireplace", "insert"]), "fuel": "wood"}}
        self.document = {"id": f"invented-{seed}", "unit": "mm" if self.metric else "in",
                         "standards": self.source.sample(standards, self.source.randint(1, 3)),
                         "survey": self.survey}
        if seed % 7 == 0:
            self.document["id"] += "-with-a-name-that-goes-on" * 6
        self.fill()

    def label(self):
        return " ".join(self.source.choice(WORDS) for _ in range(self.source.randint(1, 4)))

    def length(self, least, most):
        """Inches; extreme ones are as often at an end of the range as between."""
        value = self.source.uniform(least, most)
        if self.extreme and self.source.random() < 0.5:
            value = self.source.choice([least, most])
        if self.metric:
            return f"{min(max(round(value * 25.4), -(-least * 254 // 10)), most * 254 // 10)} mm"
        return f"{round(value * 16)}/16 in"

    def put(self, group, name, usual, extreme, share=0.8):
        """A quantity of a group, in its usual range or in all of it; or not at all."""
        if self.source.random() < share:
            self.survey.setdefault(group, {})[name] = self.length(
                *(extreme if self.extreme else usual))

    def fill(self):
        wide = self.source.random() < 0.5  # no opening is as wide and as high as can be
        self.put("opening", "width", (18, 60), (6, 240 if wide else 96))
        self.put("opening", "height", (18, 42), (6, 58 if wide else 144))
        self.put("firebox", "depth", (10, 30), (1, 96))
        self.put("firebox", "wall-thickness", (4, 12), (0, 60), 0.4)
        self.put("throat", "height", (4, 12), (0, 96))
        self.put("throat", "above-lintel", (4, 12), (0, 96), 0.4)
        self.put("throat", "depth", (2, 6), (0, 60))
        self.put("smoke-chamber", "height", (12, 60), (0, 240))
        self.put("hearth", "front", (8, 30), (0, 240))
        self.put("hearth", "from-facing", (8, 30), (0, 100), 0.2)
        self.put("hearth", "left", (0, 16), (0, 240))
        self.put("hearth", "right", (0, 16), (0, 240))
        self.put("hearth", "thickness", (1, 8), (0, 60), 0.5)
        self.put("hearth", "extension-thickness", (0, 4), (0, 60), 0.5)
        self.put("hearth", "firebox-raise", (0, 16), (0, 96), 0.4)
        self.put("lintel", "left", (0, 8), (0, 60), 0.5)
        self.put("lintel", "right", (0, 8), (0, 60), 0.5)
        self.put("insert", "projection", (0, 12), (0, 96), 0.3)
        self.put("insert", "hearth-left", (0, 16), (0, 240), 0.3)
        self.put("insert", "hearth-right", (0, 16), (0, 240), 0.3)
        self.put("flue", "depth", (6, 16), (1, 96), 0.3)
        self.put("chimney", "height-above-roof", (12, 60), (0, 1200))
        self.put("chimney", "width", (16, 60), (1, 600), 0.5)
        self.put("cricket", "height", (4, 24), (0, 600), 0.3)
        if "cricket" in self.survey:
            self.survey["cricket"]["present"] = True
        if self.source.random() < 0.5:
            self.survey["roof"] = {"slope": self.source.choice(["0:12", "3:12", "6:12", "12:12",
                                                                "90:12"])}
        self.survey["trim"] = [self.piece() for _ in range(self.count())]
        self.survey["nearby"] = [self.part() for _ in range(self.count())]

    def count(self):
        return self.source.choice([0, 1, 2, 3, 12] if self.extreme else [0, 1, 1, 2, 3, 4])

    def piece(self):
        piece = {"side": self.source.choice(["above", "left", "right"])}
        if self.source.random() < 0.9:
            piece["label"] = self.label()
        if self.source.random() < 0.9:
            piece["distance"] = self.length(0, 240 if self.extreme else 16)
        if self.source.random() < 0.9:
            piece["projection"] = self.length(0, 96 if self.extreme else 10)
        if self.source.random() < 0.15:
            piece["combustible"] = False
        if self.source.random() < 0.1:
            piece.update({"place": "abutting", "lining-distance": self.length(0, 20)})
        return piece

    def part(self):
        part = {"label": self.label(), "distance": self.length(0, 4800 if self.extreme else 200)}
        if self.source.random() < 0.7:
            part["rise"] = self.length(0, 4800 if self.extreme else 60)
        return part
