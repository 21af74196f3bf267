"""Marking: hand-outs, answer files and marks; data only, nothing handed in is ever run."""

from seatwork.marking.answers import Answer, AnswerFile
from seatwork.marking.handing_out import Handout, hand_out
from seatwork.marking.marker import Marked, Marker, mark
from seatwork.marking.sheets import Item, Sheet

__all__ = [
    "Answer",
    "AnswerFile",
    "Handout",
    "Item",
    "Marked",
    "Marker",
    "Sheet",
    "hand_out",
    "mark",
]
