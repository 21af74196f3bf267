"""The drawings of the glossary, by name."""

from collections.abc import Callable, Mapping

from seatwork.drawings.parts import (
    edge_plate,
    machine_plates,
    seat_plates,
    shop_plates,
    tool_plates,
)
from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.strokes.sketch import Sketch
from seatwork.errors import SeatworkError

PLATES: dict[str, Callable[[Sketch], str]] = {
    "cone": seat_plates.cone,
    "head": seat_plates.head,
    "flush": seat_plates.flush,
    "bores": seat_plates.bores,
    "edges": seat_plates.edges,
    "shapes": edge_plate.shapes,
    "cutter": tool_plates.cutter,
    "kinds": tool_plates.kinds,
    "pilot": tool_plates.pilot,
    "press": machine_plates.press,
    "speed": machine_plates.speed,
    "marks": machine_plates.marks,
    "gaging": machine_plates.gaging,
    "heads": shop_plates.heads,
    "holding": shop_plates.holding,
    "centers": machine_plates.centers,
    "note": machine_plates.note,
}


def plate(name: str, words: Mapping[str, tuple[str, str]], look: Look | None = None) -> Drawing:
    """Draw one plate of the glossary.

    Parameters
    ----------
    name : str
        Which one.
    words : mapping of str to (str, str)
        For each term on it, by its English word: the bold line and the line below. A term
        that the plate does not show is left out.
    look : Look, optional
        Palette and size.

    Raises
    ------
    SeatworkError
        If there is no such plate.
    """
    if name not in PLATES:
        raise SeatworkError(name, "no drawing has that name", f"take one of {', '.join(PLATES)}")
    sketch = Sketch(words, look or Look())
    shows = PLATES[name](sketch)
    sketch.finish()
    named = [words[term] for term in words if term in sketch.shown]
    text = ", ".join(f"{first} ({second})" for first, second in named)
    return Drawing(sketch.figure, f"{shows} Named on it: {text}.")
