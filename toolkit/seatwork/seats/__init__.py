"""Seat geometry: countersinks, heads, counterbores, chamfers, spotfaces, gaging, stacks.

Floats in, floats and small frozen dataclasses out; lengths [mm], included angles [deg].
Every name of the room can be taken from here; its module is loaded when it is first asked
for, and numpy only by what works on arrays.
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

from seatwork.seats.chamfers import Chamfer
from seatwork.seats.cones import Countersink
from seatwork.seats.counterbores import Counterbore
from seatwork.seats.heads import Fit, Head, fit
from seatwork.seats.spotfaces import Spotface

if TYPE_CHECKING:
    from seatwork.seats.bolting import bearing_pressure, bending_stress
    from seatwork.seats.cleaning import clean_up
    from seatwork.seats.gaging import (
        angle_from_two_balls,
        ball_top,
        diameter_from_ball,
        protrusion,
    )
    from seatwork.seats.rims import rim
    from seatwork.seats.stack import rss, simulate, worst_case

__all__ = [
    "Chamfer",
    "Counterbore",
    "Countersink",
    "Fit",
    "Head",
    "Spotface",
    "angle_from_two_balls",
    "ball_top",
    "bearing_pressure",
    "bending_stress",
    "clean_up",
    "diameter_from_ball",
    "fit",
    "protrusion",
    "rim",
    "rss",
    "simulate",
    "worst_case",
]

_HOMES = {
    "angle_from_two_balls": "gaging",
    "ball_top": "gaging",
    "bearing_pressure": "bolting",
    "bending_stress": "bolting",
    "clean_up": "cleaning",
    "diameter_from_ball": "gaging",
    "protrusion": "gaging",
    "rim": "rims",
    "rss": "stack",
    "simulate": "stack",
    "worst_case": "stack",
}


def __getattr__(name: str) -> Any:
    if name not in _HOMES:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(f"{__name__}.{_HOMES[name]}"), name)
