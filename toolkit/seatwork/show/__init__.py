"""Sentences with numbers for the lessons: one line asks, one answers, in both unit systems.

Sizes are typed as the shop writes them: ``".375 in"``, ``"#7"``, ``"6.6 mm"``. Each answer has
``code()``, the long way to the same number through the other rooms.
"""

from seatwork.doors import doors

NAMES = {
    "said": "Said",
    "sizes_said": "size",
    "cone_sums": "depth depth_factor depths travel triangle",
    "flat_heads": "fit",
    "head_lists": "diameters gage_spread head_height least_below on_gage pin",
    "hole_lists": "clearance_lists holes longest_screw pilot thread_chamfer",
    "edge_sums": "chamfer edge_limits least_sheet leg mouth rule",
    "under_heads": "counterbore fillet wrench_room",
    "stop_sums": "spot stop_error",
    "cuts": "shortcut speed step time",
    "force_sums": "note_of_marks power rake_saving torque",
    "castings": "bend clean_up flange_left",
    "notes_read": "read three_ways",
    "planned": "PlanSaid plan",
    "batches": "Batch measured",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
