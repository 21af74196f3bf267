"""Inspection: measured parts held against their plan, with how sure the measuring is."""

from seatwork.doors import doors

NAMES = {
    "inspecting": "inspect inspect_file inspect_parts",
    "sheets": "Sheet read_sheet",
    "series": "histogram run_chart",
    "findings": "Inspection PartVerdict",
    "records": "Judged",
    "measured": "INSTRUMENTS Measured QUANTITIES",
    "blank": "write_blank",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
