"""Plates of the glossary: cutters. Sizes are for the picture alone."""

import numpy as np

from seatwork.drawings.strokes.linework import Point, Points, arc
from seatwork.drawings.strokes.sketch import Sketch

CONE = 41.0
"""Half the angle of the cutters as drawn [deg]."""


def _turned(points: list[Point], axis: float, base: float) -> Points:
    """Mirror an outline given right of the axis from the top down, and put it in its place."""
    right = np.array(points)
    whole = np.concatenate([right, right[::-1] * np.array([-1.0, 1.0])])
    return np.asarray(whole + np.array([axis, base]))


def _around(center: Point, radius: float, angle: float) -> Point:
    (x, y), _ = arc(center, radius, angle, angle + 1.0)[[0, -1]]
    return float(x), float(y)


def _end_view(sketch: Sketch, center: Point, radius: float, lips: int, lean: float) -> None:
    """Draw a cutter from its point: land, heel and gullet for each lip, and the nose."""
    step = 360.0 / lips
    outline: list[Points] = []
    for lip in range(lips):
        start = 90.0 - lip * step
        tip = _around(center, radius, start)
        root = _around(center, 0.34 * radius, start - lean)
        turn = np.radians(np.linspace(start, start - 0.62 * step, 31))
        reach = np.linspace(radius, 0.9 * radius, 31)
        land = np.column_stack([center[0] + reach * np.cos(turn), center[1] + reach * np.sin(turn)])
        heel = _around(center, 0.34 * radius, start - 0.8 * step)
        outline.append(np.vstack([[root, tip], land, [heel]]))
    sketch.steel(np.vstack(outline))
    sketch.thin(arc(center, 0.12 * radius, 0.0, 360.0))


def cutter(sketch: Sketch) -> str:
    """Draw a countersink cutter from the side and from its point."""
    axis, base = 300.0, 40.0
    half = 120.0
    high = 14.0 + (half - 14.0) * 1.15
    body = [(half, high + 60.0), (half, high), (14.0, 14.0), (14.0, 14.0)]
    shank = [(52.0, 375.0), (52.0, high + 60.0)]
    sketch.steel(_turned(shank, axis, base))
    sketch.steel(_turned(body, axis, base))
    gullet = [(-20.0, 14.0), (-58.0, high - 40.0), (-30.0, high + 60.0)]
    flute = np.array([(14.0, 14.0), (40.0, high + 60.0), *gullet[::-1]]) + np.array([axis, base])
    sketch.steel(flute, 3.2, plain=True)
    sketch.center((axis, 20.0), (axis, 425.0))
    sketch.label("shank", 200.0, 330.0, (axis - 55.0, 330.0), "right")
    sketch.label("flute", 150.0, 235.0, (axis - 20.0, 190.0), "right")
    sketch.label("lip", 150.0, 140.0, (axis - 40.0, base + 70.0), "right")
    sketch.label("nose", 150.0, 54.0, (axis - 16.0, base + 15.0), "right")
    _point(sketch, (840.0, 200.0), 150.0)
    return "A countersink cutter from the side, and its three lips seen from the point."


def _point(sketch: Sketch, center: Point, radius: float) -> None:
    lean = 32.0
    _end_view(sketch, center, radius, 3, lean)
    top = _around(center, radius, 90.0)
    sketch.hidden([center, _around(center, radius + 60.0, 90.0)], order=4.0)
    sketch.hidden(arc(center, radius, 0.0, 360.0), order=2.0)
    sketch.label("rake", 620.0, 378.0, (center[0] + 6.0, top[1] - 50.0), "right")
    sketch.label("relief", 1050.0, 340.0, _around(center, 0.975 * radius, 30.0))
    _turns(sketch, center, radius + 30.0, -40.0, 0.0)


def _turns(sketch: Sketch, center: Point, radius: float, start: float, end: float) -> None:
    """Show which way a tool turns, seen from its point."""
    sketch.thin(arc(center, radius, start, end))
    sketch.arrow(*(tuple(spot) for spot in arc(center, radius, end - 1.0, end + 6.0)[[0, -1]]))


def kinds(sketch: Sketch) -> str:
    """Draw four cutters, each from the side and from its point."""
    places = (
        (160.0, "single-flute cutter", 1), (480.0, "three-flute cutter", 3),
        (800.0, "cross-hole cutter", 0), (1120.0, "spot drill", 2),
    )  # fmt: skip
    for axis, term, lips in places:
        sketch.label(term, axis, 394.0, ha="center")
        wide = 62.0 if lips != 2 else 46.0
        high = wide * 1.15 if lips != 2 else wide
        base = 150.0
        body = [(wide, 308.0 - base), (wide, high), (0.0, 0.0)]
        sketch.steel(_turned(body, axis, base))
        _side(sketch, axis, base, wide, lips)
        center = (axis, 74.0)
        if lips:
            _end_view(sketch, center, wide, lips, 0.0 if lips == 3 else 24.0)
        else:
            sketch.steel(arc(center, wide, 0.0, 360.0))
            sketch.steel(_oval((axis - 22.0, 74.0), 20.0, 27.0, 0.0), 3.2, plain=True)
    return "Four cutters from the side, with the view of the point below each."


def _side(sketch: Sketch, axis: float, base: float, wide: float, lips: int) -> None:
    """Draw what tells one cutter from another when seen from the side."""
    if lips == 0:
        sketch.steel(_oval((axis - 14.0, base + 62.0), 22.0, 44.0, -35.0), 3.2, plain=True)
        return
    if lips == 2:
        for low in (46.0, 92.0):
            turn = [(axis + wide, base + low + 56.0), (axis - wide, base + low)]
            sketch.edge(turn)
        return
    open_to = 30.0 if lips == 1 else 12.0
    flute = [(axis, base + 2.0), (axis + open_to, base + 158.0), (axis - open_to, base + 158.0)]
    sketch.steel(flute, 3.2, plain=True)


def _oval(center: Point, across: float, along: float, turned: float) -> Points:
    turn = np.radians(np.linspace(0.0, 360.0, 61))
    lean = np.radians(turned)
    ring = np.column_stack([across * np.cos(turn), along * np.sin(turn)])
    spin = np.array([[np.cos(lean), -np.sin(lean)], [np.sin(lean), np.cos(lean)]])
    return np.asarray(ring @ spin.T + np.array(center))


def pilot(sketch: Sketch) -> str:
    """Draw a counterbore tool with a pilot and a taper shank, a stop cage, and an end mill."""
    _bore_tool(sketch, 330.0)
    _cage(sketch, 850.0)
    _end_mill(sketch, 1185.0)
    return "A counterbore tool with a removable pilot, a countersink in a stop cage, an end mill."


def _bore_tool(sketch: Sketch, axis: float) -> None:
    plate, top = 40.0, 130.0
    for sign in (-1.0, 1.0):
        near, far = axis + sign * 38.0, axis + sign * 170.0
        sketch.metal([(near, plate), (near, top), (far, top), (far, plate)])
        sketch.edge([(near, plate), (near, top), (far, top)])
    sketch.steel(_turned([(46.0, 425.0), (32.0, 262.0)], axis, 0.0))
    sketch.steel(_turned([(80.0, 262.0), (80.0, 150.0)], axis, 0.0))
    for across in (-48.0, 0.0, 48.0):
        sketch.edge([(axis + across, 152.0), (axis + across + 26.0, 260.0)])
    sketch.steel(_turned([(35.0, 150.0), (35.0, 74.0), (26.0, 64.0)], axis, 0.0), 3.2)
    sketch.hidden([(axis - 20.0, 150.0), (axis - 20.0, 240.0), (axis + 20.0, 240.0),
                   (axis + 20.0, 150.0)], order=4.0)  # fmt: skip
    sketch.label("taper shank", 210.0, 350.0, (axis - 42.0, 350.0), "right")
    sketch.label("removable pilot", 460.0, 252.0, (axis + 21.0, 200.0))
    sketch.label("pilot", 130.0, 176.0, (axis - 36.0, 112.0), "right")


def _cage(sketch: Sketch, axis: float) -> None:
    face = 90.0
    sketch.metal([(axis - 190.0, 40.0), (axis - 190.0, face), (axis + 190.0, face),
                  (axis + 190.0, 40.0)])  # fmt: skip
    sketch.edge([(axis - 190.0, face), (axis + 190.0, face)])
    for sign in (-1.0, 1.0):
        foot = [(108.0, face), (108.0, 250.0), (64.0, 290.0), (64.0, 330.0)]
        inner = [(44.0, 330.0), (44.0, 270.0), (84.0, 240.0), (84.0, face)]
        ring = np.array(foot + inner) * np.array([sign, 1.0]) + np.array([axis, 0.0])
        sketch.metal(ring, 2.0)
        sketch.edge(np.vstack([ring, ring[:1]]))
    sketch.steel(_turned([(26.0, 425.0), (26.0, 196.0)], axis, 0.0))
    sketch.steel(_turned([(66.0, 196.0), (66.0, 160.0), (8.0, 94.0)], axis, 0.0))
    sketch.label("stop cage", axis + 125.0, 300.0, (axis + 90.0, 268.0))


def _end_mill(sketch: Sketch, axis: float) -> None:
    """Draw the one without a guide: flat at its end, lips along its sides."""
    sketch.steel(_turned([(36.0, 300.0), (36.0, 190.0)], axis, 0.0))
    sketch.steel(_turned([(44.0, 190.0), (44.0, 50.0)], axis, 0.0))
    for low in (50.0, 100.0):
        sketch.edge([(axis - 44.0, low), (axis + 44.0, low + 88.0)])
    sketch.label("end mill", axis, 386.0, (axis, 304.0), "center")
