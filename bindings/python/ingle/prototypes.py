# SPDX-License-Identifier: MIT
"""What the C headers declare, as ctypes needs it: constants, structs and functions.

Names are those of the headers. The tests read the headers and hold this file against them.
"""

from __future__ import annotations

import ctypes
from ctypes import (CFUNCTYPE, POINTER, c_char_p, c_double, c_int, c_int32, c_int64, c_size_t,
                    c_uint64, c_void_p)
from typing import Dict, List, Tuple

# Only those that no function of the library tells.
INGLE_LENGTH = 1
INGLE_CHOICE = 8
INGLE_FLAG = 9
INGLE_SCALE_USUAL = 0
INGLE_FINDING_SUBJECT = 1
INGLE_FINDING_LABEL = 2
INGLE_FINDING_CITATION = 3
INGLE_FINDING_SENTENCE = 4
INGLE_FINDING_CAUTION = 5
INGLE_STEP_EXPRESSION = 1
INGLE_STEP_SUBSTITUTED = 2
INGLE_STEP_SENTENCE = 3
INGLE_STEP_REMARK = 4
INGLE_REMEDY_SUBJECT = 1
INGLE_REMEDY_SENTENCE = 2
INGLE_DRAFT_INLET_GIVEN = 0
INGLE_DRAFT_INLET_SHARP = 1
INGLE_DRAFT_INLET_ROUNDED = 2
INGLE_CONFORMANCE_SENTENCE = 1
INGLE_CONFORMANCE_CAUTION = 2


class ingle_amount(ctypes.Structure):  # noqa: N801
    """An exact count of base units, what it counts, and how it is usually written."""

    _fields_ = [("value", c_int64), ("dimension", c_int32), ("scale", c_int32)]


class ingle_format(ctypes.Structure):  # noqa: N801
    """How amounts are shown."""

    _fields_ = [("size", c_size_t), ("unit", c_void_p), ("denominator", c_int32),
                ("raised", c_int32)]


class ingle_check_options(ctypes.Structure):  # noqa: N801
    """What a check does."""

    _fields_ = [("size", c_size_t), ("amendments", c_void_p), ("without_working", c_int32),
                ("without_remedies", c_int32), ("with_not_applicable", c_int32),
                ("metric_remedies", c_int32), ("readings", POINTER(c_int32)),
                ("reading_count", c_size_t), ("least_basis", c_int32), ("reserved", c_int32)]


class ingle_figure(ctypes.Structure):  # noqa: N801
    """A number that is not exact, and what it counts."""

    _fields_ = [("value", c_double), ("dimension", c_int32), ("reserved", c_int32)]


class ingle_probability_options(ctypes.Structure):  # noqa: N801
    """What an assessment does."""

    _fields_ = [("size", c_size_t), ("rule", c_int32), ("separate_tapes", c_int32),
                ("guard_factor", c_double), ("trials", c_uint64), ("seed", c_uint64)]


class ingle_monte_carlo(ctypes.Structure):  # noqa: N801
    """What a Monte Carlo run came to."""

    _fields_ = [("size", c_size_t), ("trials", c_uint64), ("met", c_uint64),
                ("outside", c_uint64), ("standard_uncertainty", c_double), ("agrees", c_int32),
                ("reserved", c_int32)]


class ingle_json_options(ctypes.Structure):  # noqa: N801
    """What reading and writing documents do."""

    _fields_ = [("size", c_size_t), ("standards", POINTER(c_void_p)), ("standard_count", c_size_t),
                ("unit", c_void_p), ("without_working", c_int32), ("with_not_applicable", c_int32),
                ("one_line", c_int32), ("least_basis", c_int32), ("readings", POINTER(c_int32)),
                ("reading_count", c_size_t),
                ("probability", POINTER(ingle_probability_options))]


class ingle_draft_input(ctypes.Structure):  # noqa: N801
    """What an estimate of the draft is made from."""

    _fields_ = [("size", c_size_t), ("opening_area", c_double), ("flue_area", c_double),
                ("hydraulic_diameter", c_double), ("height", c_double), ("rise", c_double),
                ("outdoor_temperature", c_double), ("room_temperature", c_double),
                ("room_pressure", c_double), ("air_pressure", c_double), ("inlet_loss", c_double),
                ("fitting_loss", c_double), ("cap_loss", c_double), ("friction_factor", c_double),
                ("criterion", c_double), ("throat_area", c_double), ("inlet", c_int32),
                ("circumstances", c_int32), ("given", c_int32), ("reserved", c_int32)]


class ingle_page(ctypes.Structure):  # noqa: N801
    """How a page of text looks."""

    _fields_ = [("size", c_size_t), ("format", c_int32), ("width", c_int32), ("colour", c_int32),
                ("reserved", c_int32), ("unit", c_void_p), ("title", c_char_p)]


class ingle_sheet(ctypes.Structure):  # noqa: N801
    """How a plot or drawing looks."""

    _fields_ = [("size", c_size_t), ("unit", c_void_p), ("title", c_char_p)]


class ingle_range(ctypes.Structure):  # noqa: N801
    """Which quantity takes which values."""

    _fields_ = [("size", c_size_t), ("quantity", c_void_p), ("item", c_size_t), ("from", c_int64),
                ("to", c_int64), ("step", c_int64), ("metric", c_int32), ("reserved", c_int32)]


class ingle_solve_options(ctypes.Structure):  # noqa: N801
    """What is asked of values that would do."""

    _fields_ = [("size", c_size_t), ("rule", c_char_p), ("strict", c_int32), ("reserved", c_int32)]


class ingle_sweep_options(ctypes.Structure):  # noqa: N801
    """What is asked of a sweep."""

    _fields_ = [("size", c_size_t), ("rule", c_char_p), ("with_unchanged", c_int32),
                ("reserved", c_int32)]


class ingle_explain_options(ctypes.Structure):  # noqa: N801
    """What is explained of a report."""

    _fields_ = [("size", c_size_t), ("form", c_int32), ("least", c_int32), ("rule", c_char_p)]


STRUCTS = (ingle_amount, ingle_format, ingle_check_options, ingle_figure,
           ingle_probability_options, ingle_monte_carlo, ingle_json_options, ingle_draft_input,
           ingle_page, ingle_sheet, ingle_range, ingle_solve_options, ingle_sweep_options,
           ingle_explain_options)

# What a text is written through. The text may hold NUL bytes or part a letter: an address and a
# length, not a C string.
ingle_write = CFUNCTYPE(c_int32, c_void_p, c_void_p, c_size_t)

Prototype = Tuple[object, List[object]]

# The end of the argument list of every call that writes text.
_BUFFER: List[object] = [c_char_p, c_size_t, POINTER(c_size_t)]
_TEXT: Prototype = (c_char_p, [c_void_p])
_COUNT: Prototype = (c_size_t, [])
_COUNT_OF: Prototype = (c_size_t, [c_void_p])
_AT: Prototype = (c_void_p, [c_size_t])
_AT_OF: Prototype = (c_void_p, [c_void_p, c_size_t])
_TEXT_AT_OF: Prototype = (c_char_p, [c_void_p, c_size_t])
_FIND: Prototype = (c_void_p, [c_char_p])
_POINTER_OF: Prototype = (c_void_p, [c_void_p])
_NUMBER_OF: Prototype = (c_int32, [c_void_p])
_NAME_OF_NUMBER: Prototype = (c_char_p, [c_int32])
_NEW: Prototype = (c_int32, [c_void_p, POINTER(c_void_p)])
_FREE: Prototype = (None, [c_void_p])
_GET_AMOUNT: Prototype = (c_int, [c_void_p, POINTER(ingle_amount)])
_GET_FIGURE: Prototype = (c_int, [c_void_p, POINTER(ingle_figure)])
_PART: Prototype = (c_int32, [c_void_p, c_int32, POINTER(ingle_format)] + _BUFFER)
_WRITE: List[object] = [ingle_write, c_void_p]
_PAGE: Prototype = (c_int32, [c_void_p, POINTER(ingle_page)] + _WRITE)
_SHEET: Prototype = (c_int32, [c_void_p, POINTER(ingle_sheet)] + _WRITE)
# The survey, the standards, and how they are checked.
_ASKED: List[object] = [c_void_p, POINTER(c_void_p), c_size_t, POINTER(ingle_check_options)]
_LEAVE: Prototype = (c_int32, [c_void_p, c_void_p])

LIBRARY_FUNCTIONS: Dict[str, Prototype] = {
    # version.h, status.h
    "ingle_version": (c_char_p, []),
    "ingle_status_name": _NAME_OF_NUMBER,
    "ingle_status_text": _NAME_OF_NUMBER,
    "ingle_status_count": _COUNT,
    "ingle_status_at": (c_int32, [c_size_t, POINTER(c_int32)]),
    # measure.h
    "ingle_dimension_name": _NAME_OF_NUMBER,
    "ingle_unit_count": _COUNT,
    "ingle_unit_at": _AT,
    "ingle_unit_find": _FIND,
    "ingle_unit_id": _TEXT,
    "ingle_unit_label": _TEXT,
    "ingle_unit_ucum": _TEXT,
    "ingle_unit_dimension": _NUMBER_OF,
    "ingle_unit_size": (None, [c_void_p, POINTER(c_int64), POINTER(c_int64)]),
    "ingle_unit_name_count": _COUNT_OF,
    "ingle_unit_name_at": _TEXT_AT_OF,
    "ingle_amount_parse": (c_int32, [c_char_p, c_size_t, c_int32, c_void_p, POINTER(ingle_amount),
                                     POINTER(c_size_t)]),
    "ingle_amount_format": (c_int32, [POINTER(ingle_amount), POINTER(ingle_format)] + _BUFFER),
    "ingle_amount_unit": (c_void_p, [POINTER(ingle_amount), POINTER(ingle_format)]),
    "ingle_amount_decimal": (c_int32, [POINTER(ingle_amount), c_void_p] + _BUFFER),
    # survey.h
    "ingle_quantity_count": _COUNT,
    "ingle_quantity_at": _AT,
    "ingle_quantity_id": _TEXT,
    "ingle_quantity_group": _TEXT,
    "ingle_quantity_name": _TEXT,
    "ingle_quantity_label": _TEXT,
    "ingle_quantity_how": _TEXT,
    "ingle_quantity_dimension": _NUMBER_OF,
    "ingle_quantity_repeats": (c_int, [c_void_p]),
    "ingle_quantity_range": (None, [c_void_p, POINTER(ingle_amount), POINTER(ingle_amount)]),
    "ingle_quantity_choice_count": _COUNT_OF,
    "ingle_quantity_choice_at": _TEXT_AT_OF,
    "ingle_quantity_choice_label": _TEXT_AT_OF,
    "ingle_quantity_assumed": _GET_AMOUNT,
    "ingle_name_nearest": (c_char_p, [c_char_p, POINTER(c_char_p), c_size_t]),
    "ingle_survey_new": _NEW,
    "ingle_survey_free": _FREE,
    "ingle_survey_clear": _FREE,
    "ingle_survey_open_group": (c_int32, [c_void_p, c_char_p]),
    "ingle_survey_add_item": (c_int32, [c_void_p, c_char_p, c_char_p, POINTER(c_size_t)]),
    "ingle_survey_item_count": (c_size_t, [c_void_p, c_char_p]),
    "ingle_survey_item_label": (c_char_p, [c_void_p, c_char_p, c_size_t]),
    "ingle_survey_record": (c_int32, [c_void_p, c_char_p, c_char_p, c_char_p]),
    "ingle_survey_copy": (c_int32, [c_void_p, c_void_p]),
    "ingle_survey_find": (c_int32, [c_void_p, c_char_p, POINTER(c_void_p), POINTER(c_size_t)]),
    "ingle_survey_set": (c_int32, [c_void_p, c_void_p, c_size_t, c_int64, c_int64]),
    "ingle_survey_unset": (c_int32, [c_void_p, c_void_p, c_size_t]),
    "ingle_survey_get": (c_int, [c_void_p, c_void_p, c_size_t, POINTER(ingle_amount),
                                 POINTER(c_int64)]),
    "ingle_survey_error_text": _TEXT,
    "ingle_survey_error_position": _COUNT_OF,
    # standards.h
    "ingle_standard_count": _COUNT,
    "ingle_standard_at": _AT,
    "ingle_standard_id": _TEXT,
    "ingle_standard_title": _TEXT,
    "ingle_standard_edition": _NUMBER_OF,
    "ingle_standard_place": _TEXT,
    "ingle_standard_note": _TEXT,
    "ingle_standard_unit": _POINTER_OF,
    "ingle_basis_find": (c_int32, [c_char_p]),
    "ingle_basis_name": _NAME_OF_NUMBER,
    "ingle_relation_name": _NAME_OF_NUMBER,
    "ingle_standard_rule_count": _COUNT_OF,
    "ingle_standard_rule_at": _AT_OF,
    "ingle_rule_id": _TEXT,
    "ingle_rule_label": _TEXT,
    "ingle_rule_section": _TEXT,
    "ingle_rule_basis": _NUMBER_OF,
    "ingle_rule_relation": _NUMBER_OF,
    "ingle_rule_quantity_count": _COUNT_OF,
    "ingle_rule_quantity_at": _AT_OF,
    "ingle_rule_input_count": _COUNT_OF,
    "ingle_rule_input_at": _AT_OF,
    "ingle_rule_caution": _TEXT,
    "ingle_rule_mend": _TEXT,
    "ingle_rule_refer": _TEXT,
    "ingle_rule_inspection": _TEXT,
    "ingle_rule_listing": _POINTER_OF,
    "ingle_rule_table": _TEXT,
    "ingle_rule_table_row_reading": _TEXT,
    "ingle_rule_table_column_reading": _TEXT,
    "ingle_rule_table_row_count": _COUNT_OF,
    "ingle_rule_table_column_count": _COUNT_OF,
    "ingle_rule_table_row_at": (c_int32, [c_void_p, c_size_t, POINTER(ingle_amount)]),
    "ingle_rule_table_column_at": (c_int32, [c_void_p, c_size_t, POINTER(ingle_amount)]),
    "ingle_rule_table_cell_at": (c_int32, [c_void_p, c_size_t, c_size_t, POINTER(ingle_amount)]),
    "ingle_rule_since": _NUMBER_OF,
    "ingle_rule_until": _NUMBER_OF,
    "ingle_rule_formula": _TEXT,
    "ingle_rule_formula_text": _TEXT,
    "ingle_rule_number_count": _COUNT_OF,
    "ingle_rule_number_name": _TEXT_AT_OF,
    "ingle_rule_number_at": (c_int32, [c_void_p, c_size_t, POINTER(ingle_amount)]),
    "ingle_rule_reading": _TEXT,
    "ingle_reading_count": _COUNT,
    "ingle_reading_at": _AT,
    "ingle_reading_id": _TEXT,
    "ingle_reading_label": _TEXT,
    "ingle_reading_option_count": _COUNT_OF,
    "ingle_reading_option_at": _TEXT_AT_OF,
    "ingle_reading_option_label": _TEXT_AT_OF,
    "ingle_rule_follows": (c_void_p, [c_void_p, POINTER(c_size_t)]),
    "ingle_rule_condition_text": (c_int32, [c_void_p] + _BUFFER),
    "ingle_standard_liner_count": _COUNT_OF,
    "ingle_standard_liner_at": (c_int32, [c_void_p, c_size_t, POINTER(c_char_p),
                                          POINTER(ingle_amount), POINTER(c_char_p)]),
    "ingle_amendments_new": _NEW,
    "ingle_amendments_free": _FREE,
    "ingle_amendments_clear": _FREE,
    "ingle_amendments_set_text": (c_int32, [c_void_p, c_void_p, c_char_p, c_char_p, c_char_p,
                                            c_size_t, c_void_p, c_char_p]),
    "ingle_amendments_error_text": _TEXT,
    "ingle_amendments_error_position": _COUNT_OF,
    # check.h
    "ingle_verdict_count": _COUNT,
    "ingle_verdict_name": _NAME_OF_NUMBER,
    "ingle_verdict_text": _NAME_OF_NUMBER,
    "ingle_report_new": _NEW,
    "ingle_report_free": _FREE,
    "ingle_check": (c_int32, [c_void_p, POINTER(c_void_p), c_size_t, POINTER(ingle_check_options),
                              c_void_p]),
    "ingle_report_error_text": _TEXT,
    "ingle_report_error_subject": _TEXT,
    "ingle_report_verdict": _NUMBER_OF,
    "ingle_report_finding_count": _COUNT_OF,
    "ingle_report_finding_at": _AT_OF,
    "ingle_report_notice_count": _COUNT_OF,
    "ingle_report_notice_at": _TEXT_AT_OF,
    "ingle_report_missing_count": _COUNT_OF,
    "ingle_report_missing_at": _AT_OF,
    "ingle_report_standard_count": _COUNT_OF,
    "ingle_report_standard_at": _AT_OF,
    "ingle_report_standard_verdict": (c_int32, [c_void_p, c_size_t]),
    "ingle_report_unjudged_count": _COUNT_OF,
    "ingle_report_unjudged_at": _AT_OF,
    "ingle_unjudged_quantity": _POINTER_OF,
    "ingle_unjudged_standard_at": _AT_OF,
    "ingle_unjudged_subject_text": (c_int32, [c_void_p] + _BUFFER),
    "ingle_missing_quantity": _POINTER_OF,
    "ingle_missing_rule_count": _COUNT_OF,
    "ingle_missing_rule_at": _TEXT_AT_OF,
    "ingle_finding_relation": _NUMBER_OF,
    "ingle_finding_by_listing": (c_int, [c_void_p]),
    "ingle_finding_missing_text": (c_int32, [c_void_p, c_size_t] + _BUFFER),
    "ingle_missing_label": (c_char_p, [c_void_p]),
    "ingle_missing_how": (c_char_p, [c_void_p]),
    "ingle_missing_subject_text": (c_int32, [c_void_p] + _BUFFER),
    "ingle_finding_standard": _POINTER_OF,
    "ingle_finding_rule": _POINTER_OF,
    "ingle_finding_verdict": _NUMBER_OF,
    "ingle_finding_quantity": _POINTER_OF,
    "ingle_finding_item": _COUNT_OF,
    "ingle_finding_amendment": _TEXT,
    "ingle_finding_inspection": _TEXT,
    "ingle_finding_mend": _TEXT,
    "ingle_finding_reading": _TEXT,
    "ingle_finding_measured": _GET_AMOUNT,
    "ingle_finding_required": _GET_AMOUNT,
    "ingle_finding_margin": _GET_AMOUNT,
    "ingle_finding_usual": _GET_AMOUNT,
    "ingle_finding_missing_count": _COUNT_OF,
    "ingle_finding_missing_at": _AT_OF,
    "ingle_finding_refer": _TEXT,
    "ingle_finding_text": _PART,
    "ingle_finding_step_count": _COUNT_OF,
    "ingle_finding_step_at": _AT_OF,
    "ingle_step_label": _TEXT,
    "ingle_step_result": _GET_AMOUNT,
    "ingle_step_text": _PART,
    "ingle_finding_remedy_count": _COUNT_OF,
    "ingle_finding_remedy_at": _AT_OF,
    "ingle_remedy_quantity": _POINTER_OF,
    "ingle_remedy_amount": (None, [c_void_p, POINTER(ingle_amount)]),
    "ingle_remedy_text": _PART,
    # draft.h
    "ingle_draft_number_count": _COUNT,
    "ingle_draft_number_at": _AT,
    "ingle_draft_number_id": _TEXT,
    "ingle_draft_number_group": _TEXT,
    "ingle_draft_number_label": _TEXT,
    "ingle_draft_number_value": (c_double, [c_void_p]),
    "ingle_draft_number_unit": _TEXT,
    "ingle_draft_number_range": (c_int, [c_void_p, POINTER(c_double), POINTER(c_double)]),
    "ingle_draft_number_source": _TEXT,
    "ingle_draft_number_basis": _TEXT,
    "ingle_draft_figure_count": _COUNT,
    "ingle_draft_figure_at": (c_int32, [c_size_t]),
    "ingle_draft_figure_id": _NAME_OF_NUMBER,
    "ingle_draft_figure_is_input": (c_int, [c_int32]),
    "ingle_draft_input_start": (c_int32, [POINTER(ingle_draft_input)]),
    "ingle_draft_input_set": (c_int32, [POINTER(ingle_draft_input), c_int32, c_double]),
    "ingle_draft_input_set_text": (c_int32, [POINTER(ingle_draft_input), c_int32, c_char_p,
                                             c_size_t, POINTER(c_size_t)]),
    "ingle_draft_velocity": (c_int32, [POINTER(ingle_draft_input), POINTER(c_double)]),
    "ingle_draft_new": _NEW,
    "ingle_draft_free": _FREE,
    "ingle_draft_take_survey": (c_int32, [c_void_p, c_void_p, POINTER(c_void_p), c_size_t,
                                          POINTER(ingle_draft_input)]),
    "ingle_draft_estimate": (c_int32, [c_void_p, POINTER(ingle_draft_input)]),
    "ingle_draft_page": _PAGE,
    "ingle_draft_error_text": _TEXT,
    "ingle_draft_error_figure": _NUMBER_OF,
    # uncertainty.h
    "ingle_figure_format": (c_int32, [POINTER(ingle_figure), POINTER(ingle_format)] + _BUFFER),
    "ingle_probability_within": (c_int32, [c_double, c_double, POINTER(c_double),
                                           POINTER(c_double), POINTER(c_double)]),
    "ingle_decision_rule_count": _COUNT,
    "ingle_decision_rule_name": _NAME_OF_NUMBER,
    "ingle_decision_rule_text": _NAME_OF_NUMBER,
    "ingle_decision_rule_find": (c_int32, [c_char_p]),
    "ingle_decision_name": _NAME_OF_NUMBER,
    "ingle_guard_band_count": _COUNT,
    "ingle_guard_band_name": (c_char_p, [c_size_t]),
    "ingle_guard_band_factor": (c_double, [c_size_t]),
    "ingle_guard_band_text": (c_char_p, [c_size_t]),
    "ingle_assessment_new": _NEW,
    "ingle_assessment_free": _FREE,
    "ingle_assess": (c_int32, [c_void_p, POINTER(ingle_probability_options), c_void_p]),
    "ingle_assessment_missing_count": _COUNT_OF,
    "ingle_assessment_missing_at": _AT_OF,
    "ingle_assessment_text": _TEXT,
    "ingle_assessment_length_count": _COUNT_OF,
    "ingle_assessment_length_at": _AT_OF,
    "ingle_assessment_count": _COUNT_OF,
    "ingle_assessment_at": _AT_OF,
    "ingle_uncertainty_step_label": _TEXT,
    "ingle_uncertainty_step_about": _TEXT,
    "ingle_uncertainty_step_result": _GET_FIGURE,
    "ingle_uncertainty_step_text": _PART,
    "ingle_length_budget_quantity": _POINTER_OF,
    "ingle_length_budget_item": _COUNT_OF,
    "ingle_length_budget_uncertainty": _GET_FIGURE,
    "ingle_length_budget_step_count": _COUNT_OF,
    "ingle_length_budget_step_at": _AT_OF,
    "ingle_method_name": _NAME_OF_NUMBER,
    "ingle_conformance_finding": _POINTER_OF,
    "ingle_conformance_method": _NUMBER_OF,
    "ingle_conformance_probability": (c_int, [c_void_p, POINTER(c_double)]),
    "ingle_conformance_uncertainty": _GET_FIGURE,
    "ingle_conformance_decision": _NUMBER_OF,
    "ingle_conformance_monte_carlo": (c_int, [c_void_p, POINTER(ingle_monte_carlo)]),
    "ingle_conformance_step_count": _COUNT_OF,
    "ingle_conformance_step_at": _AT_OF,
    "ingle_conformance_text": _PART,
    # page.h, explain.h
    "ingle_page_format_count": _COUNT,
    "ingle_page_format_name": _NAME_OF_NUMBER,
    "ingle_explain": (c_int32, [c_void_p, POINTER(ingle_page), POINTER(ingle_explain_options)]
                      + _WRITE),
    # assess.h
    "ingle_assessment_page": (c_int32, [c_void_p, POINTER(ingle_page), c_char_p] + _WRITE),
    # plot.h, beside the plots of the rooms below
    "ingle_probability_plot": _SHEET,
    "ingle_draft_plot": (c_int32, [c_void_p, POINTER(ingle_draft_input), c_void_p,
                                   POINTER(ingle_sheet)] + _WRITE),
    # range.h, solve.h
    "ingle_range_settle": (c_int32, [POINTER(ingle_range), POINTER(c_size_t)]),
    "ingle_solution_new": _NEW,
    "ingle_solution_free": _FREE,
    "ingle_solve": (c_int32, _ASKED + [POINTER(ingle_range), POINTER(ingle_solve_options),
                                       c_void_p]),
    "ingle_solution_error_text": _TEXT,
    "ingle_solution_page": _PAGE,
    "ingle_frontier_new": _NEW,
    "ingle_frontier_free": _FREE,
    "ingle_solve_with": (c_int32, _ASKED + [POINTER(ingle_range), POINTER(ingle_range),
                                            POINTER(ingle_solve_options), c_void_p]),
    "ingle_frontier_error_text": _TEXT,
    "ingle_frontier_page": _PAGE,
    "ingle_frontier_plot": _SHEET,
    # sweep.h
    "ingle_sweep_new": _NEW,
    "ingle_sweep_free": _FREE,
    "ingle_sweep_run": (c_int32, _ASKED + [POINTER(ingle_range), POINTER(ingle_sweep_options),
                                           c_void_p]),
    "ingle_sweep_error_text": _TEXT,
    "ingle_sweep_csv": (c_int32, [c_void_p, POINTER(ingle_format)] + _WRITE),
    "ingle_sweep_plot": _SHEET,
    # compare.h
    "ingle_comparison_new": _NEW,
    "ingle_comparison_free": _FREE,
    "ingle_compare": (c_int32, [c_void_p, c_void_p]),
    "ingle_comparison_page": _PAGE,
    # draw.h
    "ingle_view_count": _COUNT,
    "ingle_view_name": _NAME_OF_NUMBER,
    "ingle_view_text": _NAME_OF_NUMBER,
    "ingle_draw": (c_int32, [c_void_p, c_int32, POINTER(ingle_sheet)] + _WRITE),
    # worksheet.h
    "ingle_worksheet_new": _NEW,
    "ingle_worksheet_free": _FREE,
    "ingle_worksheet_make": (c_int32, _ASKED + [c_void_p]),
    "ingle_worksheet_error_text": _TEXT,
    "ingle_worksheet_page": _PAGE,
    # exercise.h
    "ingle_exercise_level_count": (c_int32, []),
    "ingle_exercise_level_text": _NAME_OF_NUMBER,
    "ingle_exercise_new": _NEW,
    "ingle_exercise_free": _FREE,
    "ingle_exercise_make": (c_int32, [c_void_p, c_uint64, c_int32, POINTER(c_void_p), c_size_t]),
    "ingle_exercise_page": (c_int32, [c_void_p, c_int32, POINTER(ingle_page)] + _WRITE),
}

JSON_FUNCTIONS: Dict[str, Prototype] = {
    "ingle_json_new": (c_int32, [POINTER(c_void_p)]),
    "ingle_json_free": _FREE,
    "ingle_json_check": (c_int32, [c_void_p, c_char_p, c_size_t, POINTER(ingle_json_options)]),
    "ingle_json_read": (c_int32, [c_void_p, c_char_p, c_size_t, POINTER(ingle_json_options)]),
    "ingle_json_survey": _POINTER_OF,
    "ingle_json_draft": (c_int32, [c_void_p, c_void_p, c_void_p]),
    "ingle_json_report": _POINTER_OF,
    "ingle_json_standards": (POINTER(c_void_p), [c_void_p, POINTER(c_size_t)]),
    "ingle_json_how": (POINTER(ingle_check_options), [c_void_p]),
    "ingle_json_draft_unit": _POINTER_OF,
    "ingle_json_unit": _POINTER_OF,
    "ingle_json_title": _TEXT,
    "ingle_json_range": (c_int32, [c_void_p, c_char_p, c_char_p, c_char_p, c_char_p,
                                   POINTER(ingle_range)]),
    "ingle_json_solution": _LEAVE,
    "ingle_json_frontier": _LEAVE,
    "ingle_json_sweep": _LEAVE,
    "ingle_json_comparison": _LEAVE,
    "ingle_json_worksheet": _LEAVE,
    "ingle_json_exercise": (c_int32, [c_void_p, c_uint64, c_int32, POINTER(c_void_p), c_size_t,
                                      c_int32, c_void_p]),
    "ingle_json_amend": (c_int32, [c_void_p, c_char_p, c_size_t]),
    "ingle_json_clear_amendments": _FREE,
    "ingle_json_list": (c_int32, [c_void_p, c_char_p, c_void_p]),
    "ingle_json_schema": (c_int32, [c_void_p, c_char_p]),
    "ingle_json_text": (c_char_p, [c_void_p, POINTER(c_size_t)]),
}


def declare(library: ctypes.CDLL, functions: Dict[str, Prototype]) -> None:
    """Give a loaded library's functions their types; AttributeError names one that is not there."""
    for name, (result, arguments) in functions.items():
        function = getattr(library, name)
        function.restype = result
        function.argtypes = arguments
