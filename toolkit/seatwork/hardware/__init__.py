"""Screws, holes, drills, washers and the seats that lists give them, each with its source."""

from seatwork.hardware.clearance import ClearanceHole, clearance_hole
from seatwork.hardware.drills import Drill, drill, drills, next_drill
from seatwork.hardware.facts import Fact, caution
from seatwork.hardware.hexagons import across_corners
from seatwork.hardware.limits import Limits, hole_limits
from seatwork.hardware.naming import screw
from seatwork.hardware.screws import Gage, Screw
from seatwork.hardware.sizes import size
from seatwork.hardware.threads import Thread, thread

__all__ = [
    "ClearanceHole",
    "Drill",
    "Fact",
    "Gage",
    "Limits",
    "Screw",
    "Thread",
    "across_corners",
    "caution",
    "clearance_hole",
    "drill",
    "drills",
    "hole_limits",
    "next_drill",
    "screw",
    "size",
    "thread",
]
