"""A plate of the glossary: how edges are measured, and where they go wrong."""

import numpy as np

from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.sketch import Sketch

TOP = 250.0


def shapes(sketch: Sketch) -> str:
    """Draw a chamfer with its leg, a knife edge in sheet, a wall with draft, and a thread."""
    _leg(sketch, 60.0)
    _knife(sketch, 500.0)
    _draft(sketch, 830.0)
    _thread(sketch, 1130.0)
    return (
        "A chamfer with its leg, a cone too deep for its sheet, a cast wall and its pad that lean "
        "from the way the pattern is pulled, and a thread."
    )


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
    """Draw a wall that lies along the pull of its pattern, and a pad that leans with it."""
    foot, top, lean, raised = 105.0, TOP, 36.0 / 145.0, 24.0

    def face(height: float) -> float:
        return axis + 50.0 - lean * (height - foot)

    pad = [(face(y) + out, y) for y, out in ((foot, raised), (220.0, raised), (220.0, 0.0))]
    right = [*pad, (face(top), top)]
    left = [(axis - 80.0 + lean * (top - foot), top), (axis - 80.0, foot)]
    base = [(axis - 130.0, foot), (axis - 130.0, 60.0), (axis + 130.0, 60.0), (axis + 130.0, foot)]
    sketch.metal([*right, *left, *base])
    sketch.edge([base[3], *right, *left, base[0]])
    sketch.hidden([pad[0], (pad[0][0], top + 10.0)])
    sketch.arrow((axis - 112.0, top), (axis - 112.0, foot + 14.0))
    sketch.label("draft", axis + 30.0, 366.0, (pad[0][0] - 11.0, 212.0), "center")


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
    crests = (heights[2], heights[4])
    for height in crests:
        sketch.work.extension((axis + 66.0, height), (axis + 108.0, height))
    sketch.work.dimension((axis + 100.0, crests[1]), (axis + 100.0, crests[0]))
    sketch.label("pitch", axis + 94.0, 62.0, (axis + 100.0, crests[1] - 46.0), "center")
