"""Printed matter: worksheets on paper, feedback, cards for the machine, sheets for the wall."""

from seatwork.doors import doors

NAMES = {
    "job": "job_card",
    "part": "part_card",
    "pages": "Pages",
    "row_table": "told",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
