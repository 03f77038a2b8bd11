# SPDX-License-Identifier: MIT
"""How sure findings are: what the tape leaves uncertain of each length, and the probability that a
rule is met. It stands beside the verdict and never changes it.
"""

from __future__ import annotations

import ctypes
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Dict, Optional, Tuple, Union, overload

from . import prototypes
from .errors import Catalogue, decoded, error_of, require, written
from .loading import Owned, library
from .measure import UnitLike, amount_format, dimensions, unit_pointer
from .report import Finding, Report
from .survey import Quantity, quantity_at
from .writing import gathered, sheet, title_text


@dataclass(frozen=True)
class DecisionRule:
    """A rule by which a margin is held against its uncertainty."""

    #: Its name: ``four-way``.
    id: str
    #: What it does, and where it is from.
    text: str


@dataclass(frozen=True)
class GuardBand:
    """A guard band that has a name."""

    #: Its name: ``ilac-g8-2009``.
    id: str
    #: How many expanded uncertainties U it is wide.
    factor: float
    #: What is printed of it.
    text: str


def _rules() -> Dict[str, DecisionRule]:
    every = (DecisionRule(library.ingle_decision_rule_name(number).decode(),
                          library.ingle_decision_rule_text(number).decode())
             for number in range(library.ingle_decision_rule_count()))
    return {rule.id: rule for rule in every}


def _bands() -> Dict[str, GuardBand]:
    every = (GuardBand(library.ingle_guard_band_name(index).decode(),
                       library.ingle_guard_band_factor(index),
                       library.ingle_guard_band_text(index).decode())
             for index in range(library.ingle_guard_band_count()))
    return {band.id: band for band in every}


#: Every decision rule, by its name.
decision_rules: Catalogue[DecisionRule] = Catalogue(_rules())

#: Every guard band that has a name: the rows of ILAC-G8:09/2019, Table 1.
guard_bands: Catalogue[GuardBand] = Catalogue(_bands())


@dataclass(frozen=True)
class Probability:
    """What is asked of probabilities."""

    #: The decision rule: one of ``ingle.decision_rules``. None is ``guarded`` where there is a
    #: guard band, else ``simple``.
    decision: Optional[str] = None
    #: The guard band in expanded uncertainties U, or a name of ``ingle.guard_bands``.
    guard_band: Union[float, str] = 0
    #: Monte Carlo trials for each finding; 0 for none.
    trials: int = 0
    #: What the trials start from: the same seed gives the same counts.
    seed: int = 1
    #: Whether each length was measured with a tape of its own.
    separate_tapes: bool = False

    def struct(self) -> prototypes.ingle_probability_options:
        """The same as the library takes it."""
        band = self.guard_band
        factor = guard_bands[band].factor if isinstance(band, str) else float(band)
        name = self.decision or ("guarded" if factor != 0 else "simple")
        if not (0 <= self.trials < 1 << 64 and 0 <= self.seed < 1 << 64):
            raise error_of("argument", "trials and seed are whole numbers of 64 bits")
        return prototypes.ingle_probability_options(
            ctypes.sizeof(prototypes.ingle_probability_options),
            library.ingle_decision_rule_find(decision_rules[name].id.encode()),
            self.separate_tapes, factor, self.trials, self.seed)


def probability_within(value: float, standard_uncertainty: float, *,
                       lower: Optional[float] = None, upper: Optional[float] = None) -> float:
    """The probability that what was measured lies within its limits (JCGM 106:2012, clause 7)."""
    probability = ctypes.c_double()
    limits = [None if limit is None else ctypes.byref(ctypes.c_double(limit))
              for limit in (lower, upper)]
    require(library.ingle_probability_within(value, standard_uncertainty, *limits,
                                             ctypes.byref(probability)))
    return probability.value


# ---- what belongs to an assessment ------------------------------------------------------------


@dataclass(frozen=True)
class Figure:
    """A number that is not exact, in base units of its dimension; a plain number counts ones."""

    value: float
    dimension: str

    def text(self, unit: Optional[UnitLike] = None) -> str:
        """It as people write it, to three digits; in inches if no unit is given."""
        number = dimensions.index(self.dimension) + prototypes.INGLE_LENGTH
        figure = prototypes.ingle_figure(self.value, number)
        return written(library.ingle_figure_format, ctypes.byref(figure), amount_format(unit))


def _figure(call: Any, pointer: int) -> Optional[Figure]:
    figure = prototypes.ingle_figure()
    if not call(pointer, ctypes.byref(figure)):
        return None
    return Figure(figure.value, dimensions[figure.dimension - prototypes.INGLE_LENGTH])


class _Part:
    """Something borrowed from an assessment, which it keeps alive."""

    __slots__ = ("_assessment", "_pointer")

    def __init__(self, assessment: Assessment, pointer: int) -> None:
        self._assessment = assessment
        self._pointer = pointer


class UncertaintyStep(_Part):
    """One step of a budget or of a probability."""

    __slots__ = ()

    @property
    def label(self) -> str:
        """What it gives, in words."""
        return str(library.ingle_uncertainty_step_label(self._pointer).decode())

    @property
    def about(self) -> Optional[str]:
        """The id of the quantity it is about; None if it is about none."""
        return decoded(library.ingle_uncertainty_step_about(self._pointer))

    @property
    def result(self) -> Optional[Figure]:
        """What it comes to."""
        return _figure(library.ingle_uncertainty_step_result, self._pointer)

    def sentence(self, unit: Optional[UnitLike] = None) -> str:
        """All of it in a sentence; in inches if no unit is given."""
        return written(library.ingle_uncertainty_step_text, self._pointer,
                       prototypes.INGLE_STEP_SENTENCE, amount_format(unit))


class LengthBudget(_Part):
    """What is uncertain of one recorded length."""

    __slots__ = ()

    @property
    def quantity(self) -> Quantity:
        """Which length it is."""
        return quantity_at(library.ingle_length_budget_quantity(self._pointer))

    @property
    def item(self) -> int:
        """The index of its item where its group repeats, else 0."""
        return int(library.ingle_length_budget_item(self._pointer))

    @property
    def standard_uncertainty(self) -> Optional[Figure]:
        """The standard uncertainty; None where nothing is published for such a length."""
        return _figure(library.ingle_length_budget_uncertainty, self._pointer)

    @property
    def steps(self) -> Tuple[UncertaintyStep, ...]:
        """The budget, part by part."""
        return tuple(
            UncertaintyStep(self._assessment,
                            library.ingle_length_budget_step_at(self._pointer, i))
            for i in range(library.ingle_length_budget_step_count(self._pointer)))


@dataclass(frozen=True)
class MonteCarlo:
    """What a Monte Carlo run came to."""

    #: How many trials there were, and in how many the rule was met.
    trials: int
    met: int
    #: In how many the publication prints no value; they do not count as met.
    outside: int
    #: The standard uncertainty of the margin, in base units.
    standard_uncertainty: float
    #: Whether it agrees with the first-order law.
    agrees: bool

    @property
    def probability(self) -> float:
        """In which share of the trials the rule was met."""
        return self.met / self.trials


class Conformance(_Part):
    """How sure one finding is."""

    __slots__ = ("finding",)

    def __init__(self, assessment: Assessment, pointer: int, finding: Finding) -> None:
        super().__init__(assessment, pointer)
        #: The finding it belongs to.
        self.finding = finding

    @property
    def probability(self) -> Optional[float]:
        """The probability that the rule is met; None where there is none."""
        value = ctypes.c_double()
        has = library.ingle_conformance_probability(self._pointer, ctypes.byref(value))
        return value.value if has else None

    @property
    def method(self) -> str:
        """How it was found: ``first-order``, ``monte-carlo``, or ``none``."""
        return str(library.ingle_method_name(
            library.ingle_conformance_method(self._pointer)).decode())

    @property
    def standard_uncertainty(self) -> Optional[Figure]:
        """The standard uncertainty of the margin; None where there is none."""
        return _figure(library.ingle_conformance_uncertainty, self._pointer)

    @property
    def decision(self) -> str:
        """What the decision rule comes to: ``conditional-pass``; ``none`` where there is none."""
        return str(library.ingle_decision_name(
            library.ingle_conformance_decision(self._pointer)).decode())

    @property
    def monte_carlo(self) -> Optional[MonteCarlo]:
        """What a Monte Carlo run came to; None where there was none."""
        run = prototypes.ingle_monte_carlo(ctypes.sizeof(prototypes.ingle_monte_carlo))
        if not library.ingle_conformance_monte_carlo(self._pointer, ctypes.byref(run)):
            return None
        return MonteCarlo(run.trials, run.met, run.outside, run.standard_uncertainty,
                          bool(run.agrees))

    @property
    def steps(self) -> Tuple[UncertaintyStep, ...]:
        """The steps that led to the probability."""
        return tuple(
            UncertaintyStep(self._assessment, library.ingle_conformance_step_at(self._pointer, i))
            for i in range(library.ingle_conformance_step_count(self._pointer)))

    def sentence(self, unit: Optional[UnitLike] = None) -> str:
        """Probability and decision in a sentence, or why there is none."""
        return self._text(prototypes.INGLE_CONFORMANCE_SENTENCE, unit)

    def caution(self, unit: Optional[UnitLike] = None) -> str:
        """What to know of it; "" if there is nothing."""
        return self._text(prototypes.INGLE_CONFORMANCE_CAUTION, unit)

    def plot(self, unit: Optional[UnitLike] = None, title: Optional[str] = None) -> str:
        """The probability against what is measured, with the limit of the rule, as SVG.

        :raises IngleError: if the margin has no standard uncertainty
        """
        shown = self.finding.standard.unit if unit is None else unit
        look = sheet(unit_pointer(shown), title_text(title))
        return gathered(library.ingle_probability_plot, self._pointer, ctypes.byref(look))

    def _text(self, part: int, unit: Optional[UnitLike]) -> str:
        shown = self.finding.standard.unit if unit is None else unit
        return written(library.ingle_conformance_text, self._pointer, part, amount_format(shown))

    def __repr__(self) -> str:
        return f"<conformance: {self.finding.rule.id}: {self.sentence()}>"


# ---- the assessment ---------------------------------------------------------------------------


class Assessment(Sequence):  # type: ignore[type-arg]
    """How sure the findings of a report are: a sequence with one for each, in their order."""

    def __init__(self, report: Report, probability: Optional[Probability] = None) -> None:
        """Find how sure each finding of a report is.

        :param probability: what is asked; simple acceptance without Monte Carlo if None
        """
        self._report = report
        self._owned = Owned(library.ingle_assessment_new, library.ingle_assessment_free, None)
        options = (probability or Probability()).struct()
        require(library.ingle_assess(report.pointer, ctypes.byref(options),
                                     self._owned.pointer))

    @property
    def missing(self) -> Tuple[Quantity, ...]:
        """What has to be recorded of the tape before there is any probability."""
        return tuple(
            quantity_at(library.ingle_assessment_missing_at(self._owned.pointer, i))
            for i in range(library.ingle_assessment_missing_count(self._owned.pointer)))

    @property
    def text(self) -> str:
        """What the assessment rests on, or lacks."""
        return str(library.ingle_assessment_text(self._owned.pointer).decode())

    @property
    def lengths(self) -> Tuple[LengthBudget, ...]:
        """The budget of every length that was measured with the tape."""
        return tuple(
            LengthBudget(self, library.ingle_assessment_length_at(self._owned.pointer, i))
            for i in range(library.ingle_assessment_length_count(self._owned.pointer)))

    def __len__(self) -> int:
        return int(library.ingle_assessment_count(self._owned.pointer))

    @overload
    def __getitem__(self, index: int) -> Conformance: ...

    @overload
    def __getitem__(self, index: slice) -> Tuple[Conformance, ...]: ...

    def __getitem__(self, index: Union[int, slice]) -> Union[Conformance,
                                                             Tuple[Conformance, ...]]:
        at = range(len(self))[index]
        if isinstance(at, range):
            return tuple(self._at(each) for each in at)
        return self._at(at)

    def _at(self, index: int) -> Conformance:
        return Conformance(self, library.ingle_assessment_at(self._owned.pointer, index),
                           self._report[index])
