"""Screws, holes, drills, washers and the seats that lists give them, each with its source."""

from seatwork.hardware.centers import CenterDrill, center_drill
from seatwork.hardware.clearance import ClearanceHole, clearance_hole
from seatwork.hardware.counterbores import CounterboreSize, counterbore, series_meaning
from seatwork.hardware.countersinks import CountersinkSize, countersink, structural_countersink
from seatwork.hardware.drills import Drill, drill, drills, next_drill
from seatwork.hardware.edges import angle_tolerance, edge_tolerance
from seatwork.hardware.facts import Fact, Sourced, caution
from seatwork.hardware.hexagons import across_corners
from seatwork.hardware.limits import Limits, hole_limits
from seatwork.hardware.naming import screw
from seatwork.hardware.rivets import Rivet, rivet
from seatwork.hardware.screws import Gage, Screw
from seatwork.hardware.sheet import RuledLength, edge_distances, least_sheet
from seatwork.hardware.sizes import size
from seatwork.hardware.taps import TapDrill, TappedHoleChamfer, tap_drill, tapped_hole_chamfer
from seatwork.hardware.threads import Thread, thread
from seatwork.hardware.washers import Washer, washer
from seatwork.hardware.wrenches import WrenchSocket, wrench_socket

__all__ = [
    "CenterDrill",
    "ClearanceHole",
    "CounterboreSize",
    "CountersinkSize",
    "Drill",
    "Fact",
    "Gage",
    "Limits",
    "Rivet",
    "RuledLength",
    "Screw",
    "Sourced",
    "TapDrill",
    "TappedHoleChamfer",
    "Thread",
    "Washer",
    "WrenchSocket",
    "across_corners",
    "angle_tolerance",
    "caution",
    "center_drill",
    "clearance_hole",
    "counterbore",
    "countersink",
    "drill",
    "drills",
    "edge_distances",
    "edge_tolerance",
    "hole_limits",
    "least_sheet",
    "next_drill",
    "rivet",
    "screw",
    "series_meaning",
    "size",
    "structural_countersink",
    "tap_drill",
    "tapped_hole_chamfer",
    "thread",
    "washer",
    "wrench_socket",
]
