"""Worksheets: the forms learners answer in, one line of code for each question."""

from seatwork.worksheet.desk import Desk, NotYet, from_paper, model_sheet, sheet

__all__ = ["Desk", "NotYet", "from_paper", "model_sheet", "sheet"]
