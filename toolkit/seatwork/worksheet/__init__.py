"""Worksheets: the forms learners answer in, one line of code for each question."""

from seatwork.worksheet.desk import Desk, NotYet, model_sheet, sheet

__all__ = ["Desk", "NotYet", "model_sheet", "sheet"]
