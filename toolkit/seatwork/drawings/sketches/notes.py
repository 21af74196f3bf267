"""A print note on its leader, as a drawing has it, for questions."""

from seatwork.drawings.scene import Drawing, present_look
from seatwork.drawings.strokes.linework import arc
from seatwork.drawings.strokes.sketch import Sketch
from seatwork.drawings.strokes.symbols import SignedLine

CENTER, SEAT, HOLE = (300.0, 190.0), 90.0, 55.0


def note_on_leader(note: str) -> Drawing:
    """Draw a countersunk hole from above with its note, in the signs of prints.

    Parameters
    ----------
    note : str
        The note.

    Returns
    -------
    Drawing
        A view that is not to scale; its text is the note alone.
    """
    sketch = Sketch({}, present_look())
    x, y = CENTER
    sketch.edge(arc(CENTER, SEAT, 0.0, 360.0), arc(CENTER, HOLE, 0.0, 360.0))
    sketch.center((x - SEAT - 30.0, y), (x + SEAT + 30.0, y))
    sketch.center((x, y - SEAT - 30.0), (x, y + SEAT + 30.0))
    slant = 0.7071 * SEAT
    sketch.work.leader((x + 190.0, 330.0), (x + 150.0, 330.0), (x + slant, y + slant))
    SignedLine(sketch.axes, sketch.style, x=x + 202.0, y=321.0, runs=6).set(note)
    sketch.finish()
    return Drawing(sketch.figure, f"A countersunk hole from above. Its note: {note}")
