"""Inspection: measured parts held against their plan, with how sure the measuring is."""

from seatwork.inspection.inspecting import inspect, inspect_file
from seatwork.inspection.measured import INSTRUMENTS, QUANTITIES, Measured
from seatwork.inspection.records import Inspection, Judged, PartVerdict
from seatwork.inspection.sheets import Sheet, read_sheet

__all__ = [
    "INSTRUMENTS",
    "QUANTITIES",
    "Inspection",
    "Judged",
    "Measured",
    "PartVerdict",
    "Sheet",
    "inspect",
    "inspect_file",
    "read_sheet",
]
