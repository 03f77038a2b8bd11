# SPDX-License-Identifier: MIT
"""Judging a survey by standards: findings with their amounts, verdict, working and remedies.

A finding says whether a number of a publication is met. It never says that something is safe.
"""

from __future__ import annotations

import ctypes
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Dict, Iterable, Mapping, Optional, Tuple, Union, overload

from . import prototypes
from .errors import Catalogue, decoded, require, written
from .loading import Owned, library
from .measure import Amount, UnitLike, amount_format
from .standards import (Amendments, Rule, Standard, StandardLike, basis_number, reading_array,
                        rule_at, standard_array, standard_at)
from .survey import Quantity, Survey, quantity_at


@dataclass(frozen=True)
class Verdict:
    """One thing that a finding can come to."""

    #: Its name, as findings and documents have it: ``too-close``.
    id: str
    #: The greater number is the graver verdict.
    gravity: int
    #: What it means, in a sentence.
    text: str


def _verdicts() -> Dict[str, Verdict]:
    every = (Verdict(library.ingle_verdict_name(number).decode(), number,
                     library.ingle_verdict_text(number).decode())
             for number in range(library.ingle_verdict_count()))
    return {verdict.id: verdict for verdict in every}


#: Every verdict, by its name, the least grave first.
verdicts: Catalogue[Verdict] = Catalogue(_verdicts())

_VERDICT_NAMES = {verdict.gravity: verdict.id for verdict in verdicts.values()}


def _got(call: Any, pointer: int) -> Optional[Amount]:
    amount = prototypes.ingle_amount()
    return Amount.of_struct(amount) if call(pointer, ctypes.byref(amount)) else None


class _Part:
    """Something borrowed from a report, which it keeps alive."""

    __slots__ = ("_finding", "_pointer")

    def __init__(self, finding: Finding, pointer: int) -> None:
        self._finding = finding
        self._pointer = pointer

    def _written(self, call: Any, part: int, unit: Optional[UnitLike] = None,
                 denominator: int = 0) -> str:
        shown = self._finding.standard.unit if unit is None else unit
        return written(call, self._pointer, part, amount_format(shown, denominator))


class Step(_Part):
    """One step of the calculation behind a finding."""

    __slots__ = ()

    @property
    def label(self) -> str:
        """What it gives, in words."""
        return str(library.ingle_step_label(self._pointer).decode())

    @property
    def result(self) -> Optional[Amount]:
        """What it comes to; None for a step without amount."""
        return _got(library.ingle_step_result, self._pointer)

    @property
    def expression(self) -> str:
        """The calculation by names: ``opening.width × opening.height``."""
        return self._written(library.ingle_step_text, prototypes.INGLE_STEP_EXPRESSION)

    def substituted(self, unit: Optional[UnitLike] = None, denominator: int = 0) -> str:
        """The same with the amounts put in; in the standard's own unit if none is given."""
        return self._written(library.ingle_step_text, prototypes.INGLE_STEP_SUBSTITUTED, unit,
                             denominator)

    def sentence(self, unit: Optional[UnitLike] = None, denominator: int = 0) -> str:
        """All of it in a sentence; in the standard's own unit if none is given."""
        return self._written(library.ingle_step_text, prototypes.INGLE_STEP_SENTENCE, unit,
                             denominator)

    @property
    def remark(self) -> str:
        """More to say of it, such as the table it is from; empty if there is nothing."""
        return self._written(library.ingle_step_text, prototypes.INGLE_STEP_REMARK)

    def __repr__(self) -> str:
        return f"<step: {self.sentence()}>"


class Remedy(_Part):
    """One change that would meet the rule, all else as it is."""

    __slots__ = ()

    @property
    def quantity(self) -> Quantity:
        """The quantity to change."""
        return quantity_at(library.ingle_remedy_quantity(self._pointer))

    @property
    def amount(self) -> Amount:
        """What to change it to; of a choice, its index."""
        amount = prototypes.ingle_amount()
        library.ingle_remedy_amount(self._pointer, ctypes.byref(amount))
        return Amount.of_struct(amount)

    @property
    def value(self) -> Union[Amount, str, bool]:
        """What to change it to, in the form that ``Survey.set`` takes."""
        return self.quantity.value_of(self.amount)

    @property
    def subject(self) -> str:
        """The JSON pointer of what to change."""
        return self._written(library.ingle_remedy_text, prototypes.INGLE_REMEDY_SUBJECT)

    def sentence(self, unit: Optional[UnitLike] = None, denominator: int = 0) -> str:
        """What to do, in a sentence; in the standard's own unit if none is given."""
        return self._written(library.ingle_remedy_text, prototypes.INGLE_REMEDY_SENTENCE, unit,
                             denominator)

    def __repr__(self) -> str:
        return f"<remedy: {self.sentence()}>"


class Missing:
    """A quantity that findings lack."""

    __slots__ = ("_report", "_pointer")

    def __init__(self, report: Report, pointer: int) -> None:
        self._report = report
        self._pointer = pointer

    @property
    def quantity(self) -> Quantity:
        """Which quantity it is."""
        return quantity_at(library.ingle_missing_quantity(self._pointer))

    @property
    def subject(self) -> str:
        """The JSON pointer of what is missing."""
        return written(library.ingle_missing_subject_text, self._pointer)

    @property
    def label(self) -> str:
        """What is missing, in words; where a whole group was not looked at, the group's name."""
        return library.ingle_missing_label(self._pointer).decode()

    @property
    def how(self) -> str:
        """How it is measured; where a whole group was not looked at, how that is recorded."""
        return library.ingle_missing_how(self._pointer).decode()

    @property
    def rules(self) -> Tuple[str, ...]:
        """The ids of the rules that lack it, each once."""
        return tuple(library.ingle_missing_rule_at(self._pointer, i).decode()
                     for i in range(library.ingle_missing_rule_count(self._pointer)))

    def __repr__(self) -> str:
        return f"<missing: {self.subject}>"


class Unjudged:
    """Something recorded that rules judge, though none of the report's standards that applies."""

    __slots__ = ("_report", "_pointer")

    def __init__(self, report: Report, pointer: int) -> None:
        self._report = report
        self._pointer = pointer

    @property
    def quantity(self) -> Quantity:
        """Which quantity it is."""
        return quantity_at(library.ingle_unjudged_quantity(self._pointer))

    @property
    def subject(self) -> str:
        """Its JSON pointer."""
        return written(library.ingle_unjudged_subject_text, self._pointer)

    @property
    def standards(self) -> Tuple[Standard, ...]:
        """Standards of the same places that have a rule on it, of each the newest edition."""
        found = []
        while pointer := library.ingle_unjudged_standard_at(self._pointer, len(found)):
            found.append(standard_at(pointer))
        return tuple(found)

    def __repr__(self) -> str:
        return f"<unjudged: {self.subject}>"


class Finding:
    """One rule judged on one thing. It keeps its report alive."""

    __slots__ = ("_report", "_pointer")

    def __init__(self, report: Report, pointer: int) -> None:
        self._report = report
        self._pointer = pointer

    @property
    def standard(self) -> Standard:
        """The standard it was judged by."""
        return standard_at(library.ingle_finding_standard(self._pointer))

    @property
    def rule(self) -> Rule:
        """The rule it was judged by."""
        return rule_at(library.ingle_finding_rule(self._pointer))

    @property
    def section(self) -> str:
        """The section of the publication: that of its rule."""
        return self.rule.section

    @property
    def basis(self) -> str:
        """How the numbers of its rule are known: ``read``, ``cited`` and so on."""
        return self.rule.basis

    @property
    def verdict(self) -> str:
        """What it comes to: one of ``ingle.verdicts``."""
        return _VERDICT_NAMES[library.ingle_finding_verdict(self._pointer)]

    @property
    def relation(self) -> str:
        """How what is measured has to stand to what is required: ``at-least``."""
        return library.ingle_relation_name(library.ingle_finding_relation(self._pointer)).decode()

    @property
    def quantity(self) -> Quantity:
        """The quantity that was judged."""
        return quantity_at(library.ingle_finding_quantity(self._pointer))

    @property
    def item(self) -> int:
        """The index of the item that was judged, where its group repeats, else 0."""
        return int(library.ingle_finding_item(self._pointer))

    @property
    def amendment(self) -> Optional[str]:
        """Where an amendment of the rule's numbers comes from; None without one."""
        return decoded(library.ingle_finding_amendment(self._pointer))

    @property
    def reading(self) -> Optional[str]:
        """How the text was read where it can be read in more than one way."""
        return decoded(library.ingle_finding_reading(self._pointer))

    @property
    def measured(self) -> Optional[Amount]:
        """What was measured; None if it was not."""
        return _got(library.ingle_finding_measured, self._pointer)

    @property
    def required(self) -> Optional[Amount]:
        """What is required; None if it is not known."""
        return _got(library.ingle_finding_required, self._pointer)

    @property
    def margin(self) -> Optional[Amount]:
        """By how much the rule is met; negative is by how much it is missed."""
        return _got(library.ingle_finding_margin, self._pointer)

    @property
    def usual(self) -> Optional[Amount]:
        """What is usual, where a label decides that is not recorded; else None."""
        return _got(library.ingle_finding_usual, self._pointer)

    @property
    def by_listing(self) -> bool:
        """Whether what is required is the appliance's own listing's."""
        return bool(library.ingle_finding_by_listing(self._pointer))

    @property
    def mend(self) -> Optional[str]:
        """What puts it right, where no remedy is computed; None where one is, or nothing has to."""
        return decoded(library.ingle_finding_mend(self._pointer))

    @property
    def refer(self) -> Optional[str]:
        """Who should look next; None for nobody in particular."""
        return decoded(library.ingle_finding_refer(self._pointer))

    @property
    def inspection(self) -> Optional[str]:
        """Which inspection is called for, and why; None where none is."""
        return decoded(library.ingle_finding_inspection(self._pointer))

    @property
    def missing(self) -> Tuple[Quantity, ...]:
        """The quantities it lacks."""
        return tuple(quantity_at(library.ingle_finding_missing_at(self._pointer, i))
                     for i in range(library.ingle_finding_missing_count(self._pointer)))

    @property
    def missing_subjects(self) -> Tuple[str, ...]:
        """The JSON pointers of what it lacks."""
        return tuple(written(library.ingle_finding_missing_text, self._pointer, i)
                     for i in range(library.ingle_finding_missing_count(self._pointer)))

    @property
    def steps(self) -> Tuple[Step, ...]:
        """The calculation, in its order; empty if it was left out."""
        return tuple(Step(self, library.ingle_finding_step_at(self._pointer, i))
                     for i in range(library.ingle_finding_step_count(self._pointer)))

    @property
    def remedies(self) -> Tuple[Remedy, ...]:
        """Changes that would meet the rule, each by itself."""
        return tuple(Remedy(self, library.ingle_finding_remedy_at(self._pointer, i))
                     for i in range(library.ingle_finding_remedy_count(self._pointer)))

    @property
    def subject(self) -> str:
        """The JSON pointer of what was judged."""
        return self._text(prototypes.INGLE_FINDING_SUBJECT)

    @property
    def label(self) -> str:
        """What was judged, in words, with the item's label."""
        return self._text(prototypes.INGLE_FINDING_LABEL)

    @property
    def citation(self) -> str:
        """Publication, edition and section, and the amendment if there is one."""
        return self._text(prototypes.INGLE_FINDING_CITATION)

    def sentence(self, unit: Optional[UnitLike] = None, denominator: int = 0) -> str:
        """The verdict in a sentence; in the standard's own unit if none is given."""
        return self._text(prototypes.INGLE_FINDING_SENTENCE, unit, denominator)

    def caution(self, unit: Optional[UnitLike] = None, denominator: int = 0) -> str:
        """What is dangerous meanwhile, and what to know of the number; "" if nothing is."""
        return self._text(prototypes.INGLE_FINDING_CAUTION, unit, denominator)

    def _text(self, part: int, unit: Optional[UnitLike] = None, denominator: int = 0) -> str:
        shown = self.standard.unit if unit is None else unit
        return written(library.ingle_finding_text, self._pointer, part,
                       amount_format(shown, denominator))

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Finding):
            return NotImplemented
        return self._report is other._report and self._pointer == other._pointer

    def __hash__(self) -> int:
        return hash(self._pointer)

    def __repr__(self) -> str:
        return f"<finding: {self.rule.id} {self.verdict}: {self.sentence()}>"


class Report(Sequence):  # type: ignore[type-arg]
    """The findings of one check, a sequence in the order of the standards and their rules."""

    def __init__(self, survey: Survey, standards: Iterable[StandardLike], *,
                 amendments: Optional[Amendments] = None, working: bool = True,
                 remedies: bool = True, not_applicable: bool = False,
                 metric_remedies: bool = False,
                 readings: Optional[Mapping[str, str]] = None,
                 basis: Optional[str] = None) -> None:
        """Judge a survey by every rule of every standard that applies to it.

        :param standards: ids or ``Standard`` objects, in the order in which they are reported
        :param amendments: local changes to the numbers
        :param working: whether the steps of the calculations are kept
        :param remedies: whether remedies are sought
        :param not_applicable: whether rules that do not apply give findings too
        :param metric_remedies: whether remedies lie on the millimetre, not the sixteenth of an inch
        :param readings: the option to follow by the id of the reading; the first of
            ``ingle.readings[id].options`` where none is given
        :param basis: judges by no rule whose numbers are known less well than this; None by all
        """
        adopted = standard_array(standards)
        self._survey = survey.reading(self)
        self._amendments = None if amendments is None else amendments.reading(self)
        self._owned = Owned(library.ingle_report_new, library.ingle_report_free, None)
        options = prototypes.ingle_check_options(
            ctypes.sizeof(prototypes.ingle_check_options),
            None if self._amendments is None else self._amendments.pointer,
            not working, not remedies, not_applicable, metric_remedies)
        options.least_basis = basis_number(basis)
        if readings is not None:
            followed = reading_array(readings, 0)
            options.readings = followed
            options.reading_count = len(followed)
        status = library.ingle_check(self._survey.pointer, adopted, len(adopted),
                                     ctypes.byref(options), self._owned.pointer)
        if status < 0:
            subject = decoded(library.ingle_report_error_subject(self._owned.pointer))
            require(status, library.ingle_report_error_text(self._owned.pointer), subject or "")

    @property
    def pointer(self) -> int:
        """Its address, as calls of the library take it."""
        return int(self._owned.pointer or 0)

    @property
    def verdict(self) -> str:
        """The gravest verdict of all findings."""
        return _VERDICT_NAMES[library.ingle_report_verdict(self._owned.pointer)]

    @property
    def standards(self) -> Dict[str, str]:
        """The gravest verdict by each standard, by the standard's id."""
        return {standard_at(library.ingle_report_standard_at(self._owned.pointer, i)).id:
                _VERDICT_NAMES[library.ingle_report_standard_verdict(self._owned.pointer, i)]
                for i in range(library.ingle_report_standard_count(self._owned.pointer))}

    @property
    def notices(self) -> Tuple[str, ...]:
        """The cautions that belong to the whole report."""
        return tuple(library.ingle_report_notice_at(self._owned.pointer, i).decode()
                     for i in range(library.ingle_report_notice_count(self._owned.pointer)))

    @property
    def missing(self) -> Tuple[Missing, ...]:
        """The quantities that findings lack."""
        return tuple(Missing(self, library.ingle_report_missing_at(self._owned.pointer, i))
                     for i in range(library.ingle_report_missing_count(self._owned.pointer)))

    @property
    def unjudged(self) -> Tuple[Unjudged, ...]:
        """What was recorded and is judged by no rule of the standards named."""
        return tuple(Unjudged(self, library.ingle_report_unjudged_at(self._owned.pointer, i))
                     for i in range(library.ingle_report_unjudged_count(self._owned.pointer)))

    def __len__(self) -> int:
        return int(library.ingle_report_finding_count(self._owned.pointer))

    @overload
    def __getitem__(self, index: int) -> Finding: ...

    @overload
    def __getitem__(self, index: slice) -> Tuple[Finding, ...]: ...

    def __getitem__(self, index: Union[int, slice]) -> Union[Finding, Tuple[Finding, ...]]:
        at = range(len(self))[index]
        if isinstance(at, range):
            return tuple(self._finding(i) for i in at)
        return self._finding(at)

    def _finding(self, index: int) -> Finding:
        return Finding(self, library.ingle_report_finding_at(self._owned.pointer, index))

    def __repr__(self) -> str:
        return f"<report: {self.verdict}, {len(self)} findings>"
