# SPDX-License-Identifier: MIT
"""Ingle: judges what was measured at a fireplace by the published rules.

The short way is ``ingle.check``, a survey document in and a report out, both as dicts. Beneath it
are the objects: a ``Survey`` is filled, a ``Report`` judges it and holds ``Finding`` objects with
exact amounts.

A finding says whether a number of a publication is met. It never says that something is safe.
"""

from __future__ import annotations

from .document import catalogue, check, check_text, schema
from .draft_estimate import DraftNumber, draft, draft_inputs, draft_numbers
from .errors import Catalogue, IngleError, Status, statuses
from .loading import version as __version__
from .measure import Amount, Unit, dimensions, units
from .report import Finding, Missing, Remedy, Report, Step, Verdict, verdicts
from .standards import (Amendments, Followed, Liner, Reading, Rule, Standard, Table, readings,
                        rules, standards)
from .survey import Quantity, Survey, quantities
from .uncertainty import (Assessment, Conformance, DecisionRule, Figure, GuardBand, LengthBudget,
                          MonteCarlo, Probability, UncertaintyStep, decision_rules, guard_bands,
                          probability_within)

__all__ = [
    "Amendments", "Amount", "Assessment", "Catalogue", "Conformance", "DecisionRule",
    "DraftNumber", "Figure", "Finding", "Followed", "GuardBand", "IngleError", "LengthBudget",
    "Liner", "Missing", "MonteCarlo", "Probability", "Quantity", "Reading", "Remedy", "Report",
    "Rule", "Standard", "Status", "Step", "Survey", "Table", "UncertaintyStep", "Unit", "Verdict",
    "__version__", "catalogue", "check", "check_text", "decision_rules", "dimensions", "draft",
    "draft_inputs", "draft_numbers", "guard_bands", "probability_within", "quantities", "readings",
    "rules", "schema", "standards", "statuses", "units", "verdicts",
]
