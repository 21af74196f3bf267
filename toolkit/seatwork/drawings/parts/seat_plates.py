"""Plates of the glossary: seats, heads in them, and edges. Sizes are for the picture alone."""

import numpy as np

from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Points
from seatwork.drawings.strokes.metal import Window
from seatwork.drawings.strokes.sketch import Sketch
from seatwork.seats import Countersink, Head, fit

FACE, FLOOR = 300.0, 50.0


def _block(sketch: Sketch, wall: Points, left: float, right: float, floor: float = FLOOR) -> None:
    """Draw metal to both sides of a wall given right of the axis, highest point first."""
    for side, end in zip(profiles.left_and_right(wall), (left, right), strict=True):
        side = side + np.array([(left + right) / 2.0, 0.0])
        side = np.vstack([side, [(side[-1, 0], floor)]])
        sketch.metal([*side, (end, floor), (end, side[0, 1])])
        sketch.edge([(end, side[0, 1]), *side])


def _cone(scale: float, face: float) -> tuple[Countersink, Window]:
    """Give a seat of 82°, twice as wide as its hole, and the window that places it."""
    seat = Countersink(diameter=2.0, hole_diameter=1.0, included_angle=82.0)
    return seat, Window(axis=0.0, face=face, left=0, right=0, bottom=FLOOR, scale=scale)


def _wall(seat: Countersink, window: Window) -> Points:
    return np.asarray(window.to_page(profiles.countersink_wall(seat, window.deepest)))


def _shifted(points: Points, axis: float) -> Points:
    return np.asarray(points + np.array([axis, 0.0]))


def cone(sketch: Sketch) -> str:
    """Draw a countersunk hole with its sizes."""
    axis, scale = 640.0, 150.0
    seat, window = _cone(scale, FACE)
    wall = _wall(seat, window)
    _block(sketch, wall, 400.0, 880.0)
    sketch.center((axis, 30.0), (axis, 330.0))
    low = FACE - scale * seat.depth
    half = scale * seat.diameter / 2
    small = scale * seat.hole_diameter / 2
    sketch.work.extension((axis - half, FACE), (axis - half, FACE + 45.0))
    sketch.work.extension((axis + half, FACE), (axis + half, FACE + 45.0))
    sketch.work.dimension((axis - half, FACE + 45.0), (axis + half, FACE + 45.0))
    sketch.label("diameter at the face", axis, FACE + 88.0, ha="center")
    sketch.work.extension((axis + small, low), (920.0, low))
    sketch.work.extension((880.0, FACE), (920.0, FACE))
    sketch.work.dimension((920.0, low), (920.0, FACE))
    sketch.label("depth", 940.0, (FACE + low) / 2)
    apex = FACE - scale * seat.apex_depth
    sketch.thin([(axis - small, low), (axis, apex), (axis + small, low)])
    sketch.work.angle((axis, apex), 150.0, seat.included_angle / 2)
    sketch.label("included angle", 940.0, 115.0, (axis + 93.0, apex + 117.0))
    sketch.label("face", 340.0, 350.0, (430.0, FACE + 3.0), ha="right")
    middle = axis - (half + small) / 2
    sketch.label("countersink", 340.0, 262.0, (middle - 3.0, (FACE + low) / 2), ha="right")
    sketch.label("edge of the hole", 340.0, 172.0, (axis - small - 3.0, low), ha="right")
    sketch.label("hole", 340.0, 84.0, (axis - small - 3.0, 84.0), ha="right")
    return "Section of a countersunk hole."


def head(sketch: Sketch) -> str:
    """Draw a flat head above its seat."""
    axis, scale, face = 640.0, 130.0, 210.0
    seat, window = _cone(scale, face)
    _block(sketch, _wall(seat, window), 420.0, 860.0, 40.0)
    screw = Head(sharp_diameter=2.0, included_angle=82.0, edge_diameter=1.84)
    up = 0.93
    outline = profiles.head_outline(screw, seat, up, -0.9)
    corners = _shifted(window.to_page(np.asarray(outline.to_polygons()[0])), axis)
    sketch.steel(corners)
    sketch.center((axis, 24.0), (axis, 360.0))
    top = face + scale * up
    sharp, edge = scale * screw.sharp_diameter / 2, scale * screw.edge / 2
    rim = (axis + edge, top - scale * screw.rim_depth)
    sketch.hidden([rim, (axis + sharp, top), (axis + edge - 8.0, top)])
    for side in (-sharp, sharp):
        sketch.work.extension((axis + side, top), (axis + side, top + 34.0))
    sketch.work.dimension((axis - sharp, top + 34.0), (axis + sharp, top + 34.0))
    sketch.label("theoretical sharp", 840.0, top + 36.0, (axis + sharp + 8.0, top + 34.0))
    sketch.label("rim", 880.0, 262.0, (axis + edge + 3.0, top - 6.0))
    sketch.label("flat head", 380.0, 322.0, (axis - 62.0, top - 50.0), ha="right")
    middle = scale * (seat.diameter + seat.hole_diameter) / 4
    sketch.label(
        "seat", 380.0, 190.0, (axis - middle - 3.0, face - scale * seat.depth / 2), "right"
    )
    return "A flat head screw over the countersink it belongs in."


def flush(sketch: Sketch) -> str:
    """Draw three heads: above, level with and below the face."""
    screw = Head(sharp_diameter=2.0, included_angle=82.0, edge_diameter=1.9)
    for axis, term, diameter in (
        (230.0, "proud", 1.76), (640.0, "flush", 2.0), (1050.0, "below flush", 2.24),
    ):  # fmt: skip
        seat = Countersink(diameter=diameter, hole_diameter=1.0, included_angle=82.0)
        window = Window(axis=axis, face=270.0, left=0, right=0, bottom=60.0, scale=105.0)
        _block(sketch, _wall(seat, window) - [axis, 0.0], axis - 165.0, axis + 165.0, 60.0)
        outline = profiles.head_outline(screw, seat, fit(screw, seat).amount, -2.0)
        sketch.steel(window.to_page(np.asarray(outline.to_polygons()[0])))
        sketch.label(term, axis, 366.0, ha="center")
        sketch.hidden([(axis - 165.0, 270.0), (axis + 165.0, 270.0)])
    return "Three flat heads in section: above the face, level with it, and under it."


def bores(sketch: Sketch) -> str:
    """Draw a counterbore with its screw, and a spotface on a casting with bolt and socket."""
    _counterbore(sketch, 190.0)
    _spotface(sketch, 850.0)
    return "Section of a counterbore with a socket head cap screw, and of a spotface on a casting."


def _counterbore(sketch: Sketch, axis: float) -> None:
    wall = np.array([(78.0, 290.0), (78.0, 170.0), (34.0, 170.0), (34.0, 60.0)])
    _block(sketch, wall, axis - 130.0, axis + 130.0, 60.0)
    screw = np.array([(64.0, 280.0), (64.0, 170.0), (28.0, 170.0), (28.0, 40.0)])
    sketch.steel(_shifted(profiles.whole(screw), axis))
    sketch.hidden([(axis - 26, 280.0), (axis - 26, 220.0), (axis + 26, 220.0), (axis + 26, 280.0)])
    sketch.label("counterbore", axis, 366.0, (axis - 71.0, 284.0), ha="center")
    sketch.label("clearance hole", axis + 150.0, 88.0, (axis + 35.0, 88.0))
    sketch.label("hex socket", axis + 160.0, 390.0, (axis + 20.0, 262.0))


def _spotface(sketch: Sketch, axis: float) -> None:
    wall = np.array([(112.0, 210.0), (112.0, 190.0), (34.0, 190.0), (34.0, 60.0)])
    ends = np.linspace(112.0, 190.0, 14)
    bumps = 210.0 + 6.0 * np.sin(ends / 4.0)
    for sign in (-1.0, 1.0):
        rough = np.column_stack([axis + sign * ends, bumps])[::-1]
        side = _shifted(wall[1:] * np.array([sign, 1.0]), axis)
        outer = [(axis + sign * 240.0, 60.0), (axis + sign * 240.0, 120.0)]
        sketch.metal([*rough, *side, *outer, (axis + sign * 190.0, 120.0)])
        sketch.edge([outer[1], (axis + sign * 190.0, 120.0), *rough, *side])
    sketch.steel(_shifted(profiles.whole(np.array([(92.0, 206.0), (92.0, 190.0)])), axis))
    bolt = np.array([(60.0, 274.0), (60.0, 206.0), (28.0, 206.0), (28.0, 40.0)])
    sketch.steel(_shifted(profiles.whole(bolt), axis), 3.2)
    cup = np.array([(38.0, 400.0), (86.0, 340.0), (86.0, 218.0), (66.0, 218.0), (66.0, 292.0)])
    sketch.metal(_shifted(profiles.whole(cup), axis), 2.8)
    sketch.edge(_shifted(np.vstack([profiles.whole(cup), profiles.whole(cup)[:1]]), axis))
    sketch.label("wrench socket", axis + 190.0, 352.0, (axis + 88.0, 322.0))
    sketch.label("washer", axis + 190.0, 264.0, (axis + 92.0, 199.0))
    sketch.label("spotface", axis - 200.0, 320.0, (axis - 104.0, 192.0), ha="right")
    sketch.label("pad", axis + 262.0, 164.0, (axis + 192.0, 164.0))


def edges(sketch: Sketch) -> str:
    """Draw a burr, an edge break, a chamfer, a tap and a tapped hole."""
    _burr(sketch, 60.0)
    _chamfer(sketch, 400.0)
    _tap(sketch, 750.0)
    _tapped(sketch, 1050.0)
    return "An edge with a burr and a broken one, a chamfer, a tap, and a tapped hole in section."


def _burr(sketch: Sketch, left: float) -> None:
    right, top = left + 240.0, 250.0
    outline = [(left, 60.0), (left, top), (left - 8.0, top + 42.0), (left + 18.0, top)]
    outline += [(right - 16.0, top), (right, top - 16.0), (right, 60.0)]
    sketch.metal(outline)
    sketch.edge(outline)
    sketch.label("burr", left + 40.0, 366.0, (left + 2.0, top + 44.0), "center")
    sketch.label("edge break", right, 366.0, (right - 6.0, top - 4.0), "center")


def _chamfer(sketch: Sketch, left: float) -> None:
    right, top, leg = left + 200.0, 250.0, 54.0
    outline = [(left, 60.0), (left, top), (right - leg, top), (right, top - leg), (right, 60.0)]
    sketch.metal(outline)
    sketch.edge(outline)
    sketch.label("chamfer", right - 20.0, 366.0, (right - leg / 2, top - leg / 2 + 2.0), "center")


def _teeth(high: float, low: float) -> Points:
    """Give the profile of a thread right of its axis, from the top down."""
    heights = np.arange(high, low, -14.0)
    across = np.where(np.arange(heights.size) % 2 == 0, 66.0, 52.0)
    return np.column_stack([across, heights])


def _tap(sketch: Sketch, axis: float) -> None:
    right = np.vstack([[(24.0, 318.0), (24.0, 210.0)], _teeth(206.0, 90.0), [(34.0, 60.0)]])
    sketch.steel(_shifted(profiles.whole(right), axis))
    sketch.thin(
        [(axis - 8.0, 62.0), (axis - 8.0, 200.0)], [(axis + 14.0, 62.0), (axis + 14.0, 200.0)]
    )
    sketch.label("tap", axis, 376.0, None, "center")


def _tapped(sketch: Sketch, axis: float) -> None:
    top = 250.0
    wall = np.vstack([[(76.0, top)], _teeth(top - 20.0, 60.0), [(52.0, 60.0)]])
    _block(sketch, wall, axis - 180.0, axis + 180.0, 60.0)
    sketch.center((axis, 40.0), (axis, 280.0))
    sketch.label("tapped hole", axis + 40.0, 366.0, (axis + 66.0, 212.0), "center")
