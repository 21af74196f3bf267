"""Entries: what a person typed for an answer, read and echoed without knowing the question.

Here lie the measures, the reader of numbers, and how a letter or an order of letters is
understood. Nothing here knows a right answer, so it may travel in a page that a learner takes home.
"""

from seatwork.doors import doors

NAMES = {
    "asked": "AskedChoice AskedNumber AskedOrder echo",
    "typed": "Typed read",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
