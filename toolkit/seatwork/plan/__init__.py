"""The cutting plan: a note, a material and the shop's machine in, everything to do out."""

from seatwork.doors import doors

NAMES = {
    "making": "make make_plan",
    "part_files": "Part plan_parts",
    "records": "Check Given Operation Plan Reading SeatPlan Stop",
    "telling": "Row",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
