"""A sketch of a cone from above with the marks that chatter left, for questions."""

from math import cos, radians, sin

from seatwork.drawings.scene import Drawing, present_look
from seatwork.drawings.strokes.linework import arc
from seatwork.drawings.strokes.sketch import Sketch

MIDDLE, MOUTH, HOLE = (640.0, 215.0), 190.0, 70.0
"""Middle of the cone, and the radii of its mouth and its hole."""

SHORT, CROSS = 6.0, 40.0
"""How far a mark stays off both edges, and how far the center's cross reaches."""


def marked_cone(marks: int) -> Drawing:
    """Draw a countersink from above with its chatter marks, as many as were left.

    Parameters
    ----------
    marks : int
        Marks round the cone [1].
    """
    sketch = Sketch({}, present_look())
    x, y = MIDDLE
    sketch.steel(arc(MIDDLE, MOUTH, 0.0, 360.0))
    sketch.steel(arc(MIDDLE, HOLE, 0.0, 360.0), 3.2, plain=True)
    for number in range(marks):
        turn = radians(90.0 - 360.0 * number / marks)
        ends = [(x + r * cos(turn), y + r * sin(turn)) for r in (HOLE + SHORT, MOUTH - SHORT)]
        sketch.edge(ends)
    sketch.center((x - CROSS, y), (x + CROSS, y))
    sketch.center((x, y - CROSS), (x, y + CROSS))
    sketch.finish()
    text = f"A cone seen from above, not to scale, with {marks} marks evenly round it."
    return Drawing(sketch.figure, text)
