"""Benches: live pictures with controls, each called by the name of what it shows.

    from seatwork import benches
    benches.angles(cutter_angle=90)

Nothing is loaded before a bench is asked for.
"""

from seatwork.doors import doors

NAMES = {
    "angles_bench": "angles",
    "chatter_bench": "chatter",
    "counterbore_bench": "counterbore",
    "cutters_bench": "cutters",
    "depth_bench": "depth",
    "edges_bench": "edges",
    "flush_bench": "flush",
    "gaging_bench": "gaging",
    "note_bench": "note",
    "slips_bench": "slips",
    "speeds_bench": "speeds",
    "spotface_bench": "spotface",
    "which_seat_bench": "which_seat",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
