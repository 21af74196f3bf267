"""Screws, holes, drills, washers and the seats that lists give them, each with its source."""

from seatwork.doors import doors

NAMES = {
    "naming": "screw",
    "sizes": "size",
    "clearance": "ClearanceHole clearance_hole",
    "drill_list": "Drill drill drills next_drill",
    "taps": "TapDrill TappedHoleChamfer share_of_thread tap_drill tapped_hole_chamfer",
    "tap_leads": "TapRoom tap_room",
    "washers": "Washer washer",
    "wrenches": "WrenchSocket wrench_socket",
    "centers": "CenterDrill center_drill",
    "counterbores": "CounterboreSize listed_counterbore",
    "countersinks": "CountersinkSize listed_countersink",
    "threads": "Thread thread",
    "rivets": "Rivet rivet",
    "sheet_metal": "edge_distances least_thickness",
    "edges": "edge_tolerance",
    "limits": "Limits hole_limits",
    "hexagons": "across_corners",
    "fillets": "fillet_clearance",
    "screws": "Gage Screw",
    "facts": "Fact",
    "job_list": "Job job jobs",
}
"""The public names of each module."""

FORMER = {
    "counterbore": "listed_counterbore",
    "countersink": "listed_countersink",
    "least_sheet": "least_thickness",
}
"""Names of version 0.1 and what answers for each; they go with the next version."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES, former=FORMER)
