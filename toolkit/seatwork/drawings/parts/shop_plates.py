"""Plates of the glossary: what gages a head in its seat, and how a part is laid out and held."""

import numpy as np

from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Point, Points, arc
from seatwork.drawings.strokes.sketch import Sketch
from seatwork.seats import Countersink, Head

FACE, FLOOR = 190.0, 40.0
"""Face and lower edge of the plates that are gaged [page units]."""


def _box(left: float, low: float, right: float, high: float) -> list[Point]:
    return [(left, low), (left, high), (right, high), (right, low)]


def heads(sketch: Sketch) -> str:
    """Draw a straightedge, an indicator and a pin on seats, and the two screws that are kept."""
    _straightedge(sketch, 190.0)
    _indicator(sketch, 530.0)
    _pin(sketch, 850.0)
    _kept(sketch, 1060.0)
    return (
        "A straightedge over a head, an indicator slid from the face over a head, a pin standing "
        "in a cone, and two marked screws."
    )


def _plate(sketch: Sketch, axis: float, seat: Countersink, half: float = 150.0) -> None:
    """Draw a plate with one seat, cut open."""
    wall = profiles.countersink_wall(seat, FLOOR - FACE)
    for side, sign in zip(profiles.left_and_right(wall), (-1.0, 1.0), strict=True):
        placed = side + np.array([axis, FACE])
        end = axis + sign * half
        sketch.metal([*placed, (end, FLOOR), (end, FACE)])
        sketch.edge([(end, FACE), *placed])


def _head(sketch: Sketch, axis: float, amount: float) -> None:
    seat = _seat(150.0)
    head = Head(sharp_diameter=146.0, included_angle=82.0, edge_diameter=138.0)
    points: Points = profiles.head_points(head, 58.0, amount, FLOOR - FACE)
    _plate(sketch, axis, seat)
    sketch.steel(points + np.array([axis, FACE]), 2.0)


def _seat(diameter: float) -> Countersink:
    return Countersink(diameter=diameter, hole_diameter=64.0, included_angle=82.0)


def _straightedge(sketch: Sketch, axis: float) -> None:
    _head(sketch, axis, -14.0)
    sketch.steel(_box(axis - 130.0, FACE, axis + 130.0, FACE + 46.0))
    sketch.label("straightedge", axis - 40.0, 310.0, (axis - 40.0, FACE + 49.0), "center")


def _indicator(sketch: Sketch, axis: float) -> None:
    _head(sketch, axis, 12.0)
    middle = (axis, 320.0)
    sketch.steel(_box(axis - 6.0, FACE + 14.0, axis + 6.0, 300.0), 2.8)
    sketch.steel(arc(middle, 46.0, 0.0, 360.0))
    sketch.edge([middle, (axis + 24.0, 346.0)], order=3.8)
    sketch.label("indicator", axis - 60.0, 386.0, (axis - 42.0, 346.0), "right")


def _pin(sketch: Sketch, axis: float) -> None:
    seat, wide = _seat(190.0), 110.0
    _plate(sketch, axis, seat)
    low = FACE - seat.lower_by((seat.diameter - wide) / 2)
    sketch.steel(_box(axis - wide / 2, low, axis + wide / 2, 300.0), 2.0)
    sketch.label("gage pin", axis, 370.0, (axis, 304.0), "center")


def _kept(sketch: Sketch, left: float) -> None:
    """Draw two screws, the taller and the smaller, each with its name."""
    for name, axis, sharp in (("go", left + 20.0, 116.0), ("no-go", left + 150.0, 100.0)):
        head = Head(sharp_diameter=sharp, included_angle=82.0, edge_diameter=sharp - 8.0)
        points = profiles.head_points(head, 44.0, 0.0, -130.0)
        sketch.steel(points + np.array([axis, FACE + 20.0]))
        sketch.label(name, axis, 300.0, (axis, FACE + 24.0), "center")


def holding(sketch: Sketch) -> str:
    """Draw a part on parallels under a strap, a punched mark in dye, and both sides of a plate."""
    _clamped(sketch)
    _laid_out(sketch, 640.0)
    _sides(sketch, 1130.0)
    return (
        "A part on two parallels under a strap clamp with its heel block, a center punch on a "
        "dyed face, and a plate seen from its near side with a seat on its far side."
    )


def _clamped(sketch: Sketch) -> None:
    sketch.steel(_box(40.0, 40.0, 500.0, 70.0), 2.0)
    for left in (200.0, 380.0):
        sketch.steel(_box(left, 70.0, left + 30.0, 130.0), 2.0)
    part = _box(170.0, 130.0, 440.0, 190.0)
    sketch.metal(part)
    sketch.edge([*part, part[0]])
    sketch.steel(_box(60.0, 70.0, 110.0, 192.0), 2.0)
    sketch.steel(_box(50.0, 192.0, 270.0, 218.0))
    sketch.steel(_box(150.0, 70.0, 166.0, 262.0), 2.5)
    sketch.steel(_box(138.0, 218.0, 178.0, 244.0))
    sketch.label("strap clamp", 230.0, 340.0, (230.0, 221.0), "center")
    sketch.label("parallel", 520.0, 112.0, (414.0, 100.0))


def _laid_out(sketch: Sketch, left: float) -> None:
    right, face, axis = left + 290.0, 120.0, left + 200.0
    plate = _box(left, 40.0, right, face)
    sketch.metal(plate)
    sketch.edge([*plate, plate[0]])
    sketch.steel(_box(left, face, right, face + 9.0), 2.0)
    top = face + 5.0
    punch = [(axis, top), (axis + 17.0, top + 32.0), (axis + 17.0, 300.0),
             (axis - 17.0, 300.0), (axis - 17.0, top + 32.0)]  # fmt: skip
    sketch.steel(punch)
    sketch.label("center punch", axis, 370.0, (axis, 303.0), "center")
    sketch.label("layout dye", left + 60.0, 220.0, (left + 60.0, face + 12.0), "center")


def _sides(sketch: Sketch, axis: float) -> None:
    face, back = 260.0, 130.0
    for sign in (-1.0, 1.0):
        wall = [(30.0, face), (30.0, back + 40.0), (65.0, back), (130.0, back), (130.0, face)]
        piece = [(axis + sign * x, y) for x, y in wall]
        sketch.metal(piece)
        sketch.edge([*piece, piece[0]])
    sketch.label("near side", axis, 345.0, (axis - 80.0, face + 3.0), "center")
    sketch.label("far side", axis, 55.0, (axis - 90.0, back - 3.0), "center")
