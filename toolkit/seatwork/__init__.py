"""A teaching workbook and widget kit for cutting seats for fasteners.

Everyday names stand here; each room has the rest: ``sw.seats``, ``sw.cutting`` ... Nothing is
loaded before it is asked for.

Examples
--------
>>> import seatwork as sw
>>> sw.screw("#10-32 flat head").name
'#10-32 flat head machine screw, 82°'
"""

from seatwork.doors import doors

__version__ = "0.2.0"

ROOMS = (
    "benches cards cutting drawings entries hardware inspection marking notes picks plan questions"
    " record seats shop show tables takehome units worksheet"
)
NAMES = {
    "errors": "SeatworkError",
    "notes": "read write",
    "hardware": "clearance_hole drill screw washer",
    "seats": "Chamfer Counterbore Countersink Head Spotface fit",
    "plan": "make_plan",
    "inspection": "inspect",
    "cards": "job_card",
    "picks": "pick",
    "worksheet": "sheet",
    "shop": "rules",
}
"""The everyday names, by the room each lives in."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES, rooms=ROOMS)
