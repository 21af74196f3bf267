"""A plate of the glossary: how edges are measured, and where they go wrong."""

import numpy as np

from seatwork.drawings import profiles
from seatwork.drawings.sketch import Sketch

TOP = 250.0


def shapes(sketch: Sketch) -> str:
    """Draw a chamfer with its leg, a knife edge in sheet, a pad with draft, and a thread."""
    _leg(sketch, 60.0)
    _knife(sketch, 500.0)
    _draft(sketch, 830.0)
    _thread(sketch, 1130.0)
    return "A chamfer with its leg, a cone too deep for its sheet, a leaning pad, and a thread."


def _leg(sketch: Sketch, left: float) -> None:
    right, leg = left + 200.0, 84.0
    outline = [(left, 60.0), (left, TOP), (right - leg, TOP), (right, TOP - leg), (right, 60.0)]
    sketch.metal(outline)
    sketch.edge(outline)
    sketch.work.extension((right - leg, TOP), (right - leg, TOP + 40.0))
    sketch.work.extension((right, TOP - leg), (right, TOP + 40.0))
    sketch.work.dimension((right - leg, TOP + 40.0), (right, TOP + 40.0))
    sketch.label("leg along the face", right - leg / 2, TOP + 116.0, None, "center")
    sketch.label("bevel", right + 36.0, 110.0, (right - leg / 2 + 2.0, TOP - leg / 2 + 2.0))


def _knife(sketch: Sketch, axis: float) -> None:
    low, wide, narrow = TOP - 64.0, 100.0, 44.0
    for sign in (-1.0, 1.0):
        near, rim, end = axis + sign * narrow, axis + sign * wide, axis + sign * 150.0
        sketch.metal([(near, low), (rim, TOP), (end, TOP), (end, low)])
        sketch.edge([(end, low), (near, low), (rim, TOP), (end, TOP)])
    sketch.center((axis, low - 30.0), (axis, TOP + 24.0))
    sketch.label("knife edge", axis, 366.0, (axis + narrow, low + 10.0), "center")


def _draft(sketch: Sketch, axis: float) -> None:
    lean = 22.0
    pad = [(axis - 90.0, TOP - lean), (axis + 90.0, TOP + lean)]
    foot = [(axis + 100.0, 130.0), (axis + 130.0, 130.0), (axis + 130.0, 60.0)]
    left = [(axis - 130.0, 60.0), (axis - 130.0, 130.0), (axis - 100.0, 130.0)]
    sketch.metal([*left, *pad, *foot])
    sketch.edge([*left[1:], *pad, *foot[:2]])
    sketch.hidden([pad[0], (axis + 100.0, TOP - lean)])
    sketch.label("draft", axis, 366.0, (axis + 50.0, TOP + 2.0), "center")


def _thread(sketch: Sketch, axis: float) -> None:
    heights = np.arange(TOP, 100.0, -14.0)
    across = np.where(np.arange(heights.size) % 2 == 0, 66.0, 52.0)
    screw = np.column_stack([across, heights])
    sketch.steel(profiles.whole(screw) + np.array([axis, 0.0]))
    sketch.center((axis, 80.0), (axis, TOP + 20.0))
    for side in (-66.0, 66.0):
        sketch.work.extension((axis + side, TOP), (axis + side, TOP + 46.0))
    sketch.work.dimension((axis - 66.0, TOP + 46.0), (axis + 66.0, TOP + 46.0))
    sketch.label("major diameter", axis, 366.0, None, "center")
