"""Printed matter: worksheets on paper, feedback, cards for the machine, pages for the wall."""

from seatwork.doors import doors

NAMES = {
    "coupons": "coupon_set",
    "evening_cuts": "bench_sheets",
    "evening_sheet": "evening_pages",
    "feedback": "feedback_page",
    "formulas": "formula_page",
    "gages": "gage_page",
    "glossary": "glossary_page",
    "inspected": "inspection_page",
    "job": "job_card",
    "pages": "Pages",
    "paper": "answer_key learner_pages on_paper print_class",
    "part": "part_card",
    "profile": "seat_profile",
    "row_table": "told",
    "station": "demonstration",
}
"""The public names of each module."""

FORMER = {
    "feedback_sheet": "feedback_page",
    "formula_sheet": "formula_page",
    "gage_sheet": "gage_page",
    "glossary_sheet": "glossary_page",
    "inspection_sheet": "inspection_page",
    "learner_sheet": "learner_pages",
}
"""Names of the version before, and those that answer for them in this one."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES, former=FORMER)
