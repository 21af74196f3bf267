"""The cutting plan: a note, a material and the shop's machine in, everything to do out."""

from seatwork.doors import doors

NAMES = {
    "examples": "example_parts example_readings",
    "making": "make make_plan",
    "part_files": "Part parts",
    "plans": "Plan SeatPlan",
    "records": "Assumed Check Given Operation Reading Setup Stop",
    "rows": "LB_IN Row Rows show_power show_torque",
}
"""The public names of each module."""

FORMER = {"plan_parts": "parts"}
"""Names of version 0.1 and what answers for each; they go with the next version."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES, former=FORMER)
