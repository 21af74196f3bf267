"""Benches: live pictures with controls, each called by the name of what it shows.

    from seatwork import benches
    benches.angles(cutter_angle=90)

Nothing is loaded before a bench is asked for.
"""

from seatwork.doors import doors

NAMES = {
    "bank.angles_bench": "angles",
    "bank.chatter_bench": "chatter",
    "bank.counterbore_bench": "counterbore",
    "bank.cutters_bench": "cutters",
    "bank.depth_bench": "depth",
    "bank.edges_bench": "edges",
    "bank.flush_bench": "flush",
    "bank.gaging_bench": "gaging",
    "bank.note_bench": "note",
    "bank.on_the_hole_bench": "on_the_hole",
    "bank.slips_bench": "slips",
    "bank.speeds_bench": "speeds",
    "bank.spotface_bench": "spotface",
    "bank.triangle_bench": "triangle",
    "bank.which_seat_bench": "which_seat",
    "part.my_part": "my_part",
    "term.class_bench": "class_picture",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
