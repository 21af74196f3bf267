"""Marking: hand-outs, answer files and marks; data only, nothing handed in is ever run."""

from seatwork.doors import doors

NAMES = {
    "handing_out": "Handout hand_out",
    "marker": "Marked Marker mark",
    "sealing": "form_id form_secret seal_of",
    "sheets": "Item Sheet",
    "answers": "Answer AnswerFile",
    "why": "reasons",
    "learner_words": "feedback",
    "languages": "words_in",
    "outline": "coverage",
    "evenings": "Evening EveningCourse",
    "evening_filling": "evening_course",
    "slip_count": "SlipCount counted",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
