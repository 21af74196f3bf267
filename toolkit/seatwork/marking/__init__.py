"""Marking: hand-outs, answer files and marks; data only, nothing handed in is ever run."""

from seatwork.marking.answers import Answer, AnswerFile
from seatwork.marking.sheets import Item, Sheet

__all__ = ["Answer", "AnswerFile", "Item", "Sheet"]
