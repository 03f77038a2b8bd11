# SPDX-License-Identifier: MIT
"""Ingle: judges what was measured at a fireplace by the published rules.

The short way is ``ingle.check``, a survey document in and a report out, both as dicts. Beneath it
are the objects: a ``Survey`` is filled, a ``Report`` judges it and holds ``Finding`` objects with
exact amounts.

On a survey document, too: ``explain`` works its report out, ``solve`` finds the values that would
do, ``sweep`` leads a quantity through its values, ``compare`` sets standards side by side,
``worksheet`` tells what is still to be measured, ``draw`` draws it to scale, ``assess`` tells how
sure the findings are, and ``draft`` estimates how it draws. ``exercise`` makes up practice
problems.

A finding says whether a number of a publication is met. It never says that something is safe.
"""

from __future__ import annotations

from .document import catalogue, check, check_text, schema
from .draft_estimate import (DraftNumber, draft, draft_inputs, draft_numbers, draft_page,
                             draft_plot)
from .drawing import draw, probability_plot, views
from .errors import Catalogue, IngleError, Status, statuses
from .loading import version as __version__
from .measure import Amount, Unit, dimensions, units
from .report import Finding, Missing, Remedy, Report, Step, Unjudged, Verdict, verdicts
from .standards import (Amendments, Followed, Liner, Reading, Rule, Standard, Table, readings,
                        rules, standards)
from .survey import Quantity, Survey, quantities
from .teaching import assess, exercise, exercise_page, explain, levels, worksheet, worksheet_page
from .uncertainty import (Assessment, Conformance, DecisionRule, Figure, GuardBand, LengthBudget,
                          MonteCarlo, Probability, UncertaintyStep, decision_rules, guard_bands,
                          probability_within)
from .whatif import (compare, compare_page, solve, solve_page, solve_plot, sweep, sweep_csv,
                     sweep_plot)

__all__ = [
    "Amendments", "Amount", "Assessment", "Catalogue", "Conformance", "DecisionRule",
    "DraftNumber", "Figure", "Finding", "Followed", "GuardBand", "IngleError", "LengthBudget",
    "Liner", "Missing", "MonteCarlo", "Probability", "Quantity", "Reading", "Remedy", "Report",
    "Rule", "Standard", "Status", "Step", "Survey", "Table", "UncertaintyStep", "Unit", "Unjudged",
    "Verdict",
    "__version__", "assess", "catalogue", "check", "check_text", "compare", "compare_page",
    "decision_rules", "dimensions", "draft", "draft_inputs", "draft_numbers", "draft_page",
    "draft_plot", "draw", "exercise", "exercise_page", "explain", "guard_bands", "levels",
    "probability_plot", "probability_within", "quantities", "readings", "rules", "schema",
    "solve", "solve_page", "solve_plot", "standards", "statuses", "sweep", "sweep_csv",
    "sweep_plot", "units", "verdicts", "views", "worksheet", "worksheet_page",
]
