"""Inspection: measured parts held against their plan, with how sure the measuring is."""

from seatwork.doors import doors

NAMES = {
    "inspecting": "inspect inspect_file inspect_parts",
    "readings": "Readings read_readings read_typed",
    "series": "histogram run_chart",
    "findings": "Inspection PartVerdict",
    "records": "Judged",
    "measured": "Measured",
    "blank": "write_blank",
}
"""The public names of each module."""

FORMER = {"Sheet": "Readings", "read_sheet": "read_readings"}
"""Names of version 0.1 and what answers for each; they go with the next version."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES, former=FORMER)
