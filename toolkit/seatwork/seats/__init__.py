"""Seat geometry: countersinks, heads, counterbores, chamfers, spotfaces, gaging, stacks.

Floats in, floats and small frozen dataclasses out; lengths [mm], included angles [deg].
Every name of the room can be taken from here; its module is loaded when it is first asked
for, and numpy only by what works on arrays.
"""

from seatwork.doors import doors

NAMES = {
    "heads": "Fit Head fit",
    "cones": "Countersink",
    "counterbores": "Counterbore",
    "spotfaces": "Spotface",
    "chamfers": "Chamfer",
    "rims": "rim",
    "cleaning": "clean_up",
    "gaging": "angle_from_two_balls ball_top diameter_from_ball",
    "head_gaging": "protrusion",
    "bolting": "bending_stress",
    "bearing": "bearing_pressure",
    "faults": "Allowed CapScrew Fault Standing",
    "standing": "stands",
    "stack": "rss simulate worst_case",
    "triangles": "Triangle",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
