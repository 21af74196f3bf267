"""Benches: live pictures with controls, each a function named after what it shows.

    from seatwork import benches
    benches.angles(cutter_angle=90)

Nothing is loaded before a bench is asked for.
"""

from importlib import import_module
from typing import Any

_MODULES = {
    "chatter": "chatter_bench",
    "angles": "angles_bench",
    "depth": "depth_bench",
    "note": "note_bench",
    "which_seat": "which_seat_bench",
    "edges": "edges_bench",
    "speeds": "speeds_bench",
    "flush": "flush_bench",
    "counterbore": "counterbore_bench",
    "cutters": "cutters_bench",
    "slips": "slips_bench",
    "gaging": "gaging_bench",
    "spotface": "spotface_bench",
}


def __getattr__(name: str) -> Any:
    if name in _MODULES:
        return getattr(import_module(f"seatwork.benches.{_MODULES[name]}"), name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def __dir__() -> list[str]:
    return sorted(_MODULES)
