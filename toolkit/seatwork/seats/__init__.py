"""Seat geometry: countersinks, heads, counterbores, chamfers, spotfaces, gaging, stacks.

Floats in, floats and small frozen dataclasses out; lengths [mm], included angles [deg].
What needs numpy is loaded when it is first asked for.
"""

from seatwork.seats.chamfers import Chamfer
from seatwork.seats.cones import Countersink
from seatwork.seats.counterbores import Counterbore
from seatwork.seats.heads import Fit, Head, fit
from seatwork.seats.spotfaces import Spotface

__all__ = ["Chamfer", "Counterbore", "Countersink", "Fit", "Head", "Spotface", "fit"]
