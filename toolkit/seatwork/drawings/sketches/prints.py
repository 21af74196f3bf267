"""A corner of a print for questions: a hole from above, its plate from the side, and its note.

The note stands there as on the print, in the signs of prints and without units. Nothing is cut
on the view from the side and nothing is to scale, so that no answer can be seen or measured.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import cos, radians, sin
from typing import Any

from seatwork.drawings.scene import Drawing, present_look
from seatwork.drawings.strokes.linework import arc
from seatwork.drawings.strokes.sketch import Sketch
from seatwork.drawings.strokes.style import POINTS
from seatwork.drawings.strokes.symbols import SignedLine, line_width

CENTER, SEAT, HOLE, THREAD = (185.0, 265.0), 76.0, 38.0, 50.0
LEFT, RIGHT, TOP, LOW = 55.0, 315.0, 385.0, 145.0
"""The plate from above."""

CIRCLE, SMALL = 82.0, 0.3
"""Radius of the circle of a pattern, and its holes against a single one [-]."""

FACE, UNDER = 105.0, 45.0
"""The plate from the side."""

SHELF, NOTE, END, LINES = 440.0, 462.0, 1262.0, 56.0
"""Where the leader turns, where the note starts and ends, and the height of a line of it."""

LARGE, SMALLEST = 27.0, 15.0
"""Type of the note [pt], and the smallest it may be set in."""

BLOCK = 740.0
"""Left side of the title block."""

SHAPES = ("seat", "far seat", "bore", "spotface", "hole", "thread", "pattern")


@dataclass(frozen=True, slots=True, kw_only=True)
class Print:
    """What stands on a corner of a print.

    Parameters
    ----------
    note : str
        The note; it is set in lines that break before a sign or after a comma.
    shape : str
        What the hole looks like from above: one of ``SHAPES``.
    block : sequence of str
        Lines of the title block, such as ``PLATE .625 THICK``.
    thickness : str
        Thickness of the plate as a print has it; none is shown if empty.
    chart : sequence of (str, str)
        Rows of a chart of drills beside the note, name and size.
    count : int
        How many holes a pattern shows, on a circle.
    """

    note: str
    shape: str = "seat"
    block: Sequence[str] = ()
    thickness: str = ""
    chart: Sequence[tuple[str, str]] = ()
    count: int = 4


def printed(question: Any) -> Drawing:
    """Draw the print that a question is about: its note, its plate and its title block.

    Parameters
    ----------
    question : PrintQuestion
        What is asked.
    """
    return print_of(
        Print(
            note=question.note(),
            shape=question.from_above(),
            block=question.block(),
            thickness=question.thick,
            chart=question.chart(),
            count=int(getattr(question, "count", 4)),
        )
    )


def signs_of(signs: Sequence[str]) -> Drawing:
    """Draw signs of prints large, each in a box with its number.

    Parameters
    ----------
    signs : sequence of str
        The signs in their order.
    """
    sketch = Sketch({}, present_look())
    wide, low, high = 190.0, 120.0, 330.0
    large = replace(sketch.style, sizes=replace(sketch.style.sizes, text=60.0))
    for number, sign in enumerate(signs):
        left = 70.0 + wide * number
        corners = [(left, low), (left + wide, low), (left + wide, high), (left, high), (left, low)]
        sketch.thin(corners)
        middle = left + wide / 2
        SignedLine(sketch.axes, large, x=middle, y=195.0, align="center", runs=2).set(sign)
        sketch.write(middle, low - 28.0, str(number + 1), ha="center")
    sketch.finish()
    return Drawing(sketch.figure, f"Six signs of prints, from left to right: {'  '.join(signs)}")


def print_of(shown: Print) -> Drawing:
    """Draw a corner of a print: the hole from above, the plate from the side, its note.

    Parameters
    ----------
    shown : Print
        What stands there.

    Returns
    -------
    Drawing
        A view that is not to scale; its text says the note, the plate and the title block.
    """
    sketch = Sketch({}, present_look())
    _from_above(sketch, shown.shape, shown.count)
    _from_the_side(sketch, shown.thickness)
    _note(sketch, shown)
    _block(sketch, shown.block)
    _chart(sketch, shown.chart)
    sketch.finish()
    return Drawing(sketch.figure, _text(shown))


def _text(shown: Print) -> str:
    told = [f"A corner of a print, not to scale. Its note: {shown.note}"]
    if shown.thickness:
        told.append(f"The plate is {shown.thickness} thick")
    if shown.block:
        told.append(f"Title block: {'; '.join(shown.block)}")
    if shown.chart:
        told.append(f"Chart: {', '.join(f'{name} is {size}' for name, size in shown.chart)}")
    return ". ".join(told)


def _from_above(sketch: Sketch, shape: str, count: int) -> None:
    """Draw the plate from above with its hole, or its pattern of holes on a circle."""
    corners = [(LEFT, LOW), (RIGHT, LOW), (RIGHT, TOP), (LEFT, TOP), (LEFT, LOW)]
    sketch.edge(corners)
    if shape != "pattern":
        _hole(sketch, CENTER, shape, 1.0)
        return
    for number in range(count):
        _hole(sketch, placed(number, count), "seat", SMALL)


def placed(number: int, count: int) -> tuple[float, float]:
    """Return the center of a hole of a pattern; the first is at the upper right."""
    turn = radians(45.0 + 360.0 / count * number)
    return CENTER[0] + CIRCLE * cos(turn), CENTER[1] + CIRCLE * sin(turn)


def _hole(sketch: Sketch, center: tuple[float, float], shape: str, scale: float) -> None:
    """Draw a hole from above; what lies on the far side is dashed, a thread is three quarters."""
    x, y = center
    seat, hole, reach = SEAT * scale, HOLE * scale, (SEAT + 20.0) * scale
    sketch.edge(arc(center, hole, 0.0, 360.0))
    if shape in ("seat", "bore", "spotface"):
        sketch.edge(arc(center, seat, 0.0, 360.0))
    elif shape == "far seat":
        sketch.hidden(arc(center, seat, 0.0, 360.0))
    elif shape == "thread":
        sketch.thin(arc(center, THREAD * scale, 100.0, 370.0))
    sketch.center((x - reach, y), (x + reach, y))
    sketch.center((x, y - reach), (x, y + reach))


def _from_the_side(sketch: Sketch, thickness: str) -> None:
    """Draw the plate from the side, with its thickness as a print has it."""
    sketch.edge([(LEFT, UNDER), (RIGHT, UNDER), (RIGHT, FACE), (LEFT, FACE), (LEFT, UNDER)])
    sketch.center((CENTER[0], FACE + 16.0), (CENTER[0], UNDER - 16.0))
    if thickness:
        for level in (UNDER, FACE):
            sketch.work.extension((RIGHT, level), (RIGHT + 34.0, level))
        sketch.work.dimension((RIGHT + 34.0, UNDER), (RIGHT + 34.0, FACE))
        sketch.write(RIGHT + 50.0, (UNDER + FACE) / 2, thickness, fontsize=22.0)


def _note(sketch: Sketch, shown: Print) -> None:
    """Set the note large, with a leader to the hole; smaller where it would not fit."""
    reach = {"seat": SEAT, "bore": SEAT, "spotface": SEAT, "far seat": SEAT, "thread": THREAD}
    radius = reach.get(shown.shape, HOLE) * 0.7071
    tip = (CENTER[0] + radius, CENTER[1] + radius)
    if shown.shape == "pattern":
        x, y = placed(0, shown.count)
        tip = (x + SEAT * SMALL * 0.7071, y + SEAT * SMALL * 0.7071)
    end = BLOCK - 20.0 if shown.chart else END
    size, lines = fitted(shown.note, end - NOTE)
    first = 365.0
    sketch.work.leader((SHELF, first + 10.0), (SHELF - 45.0, first + 10.0), tip)
    large = replace(sketch.style, sizes=replace(sketch.style.sizes, text=size))
    for number, line in enumerate(lines):
        level = first - number * LINES
        SignedLine(sketch.axes, large, x=NOTE, y=level, runs=8).set(line)


def fitted(note: str, width: float) -> tuple[float, list[str]]:
    """Return the type size of a note [pt] and its lines, none of them wider than `width`."""
    size = LARGE
    while True:
        lines = _broken(note, width / (size / POINTS))
        wide = max(line_width(line) for line in lines) * size / POINTS
        if (wide <= width and len(lines) <= 3) or size <= SMALLEST:
            return size, lines
        size -= 1.0


def _broken(note: str, width: float) -> list[str]:
    """Break a note before a sign of a cut or after a comma, where a line is full."""
    fields: list[str] = []
    for word in note.split(" "):
        opens = word[:1] in "⌵⌴/" or word in ("BOTH", "EACH", "FAR", "FOR", "THE") or not fields
        if opens or fields[-1].endswith(","):
            fields.append(word)
        else:
            fields[-1] += f" {word}"
    lines = [fields[0]]
    for field in fields[1:]:
        longer = f"{lines[-1]} {field}"
        if line_width(longer) <= width:
            lines[-1] = longer
        else:
            lines.append(field)
    return lines


def _block(sketch: Sketch, lines: Sequence[str]) -> None:
    """Draw the title block in the corner, a row for each line."""
    if not lines:
        return
    row, low = 40.0, 16.0
    top = low + row * len(lines)
    sketch.thin([(BLOCK, low), (END, low), (END, top), (BLOCK, top), (BLOCK, low)])
    for number, line in enumerate(lines):
        level = top - row * (number + 1)
        if number:
            sketch.thin([(BLOCK, level + row), (END, level + row)])
        sketch.write(BLOCK + 16.0, level + row / 2, line)


def _chart(sketch: Sketch, rows: Sequence[tuple[str, str]]) -> None:
    """Draw a chart of drills at the right side, a row for each."""
    if not rows:
        return
    row, top, middle = 48.0, 385.0, 1010.0
    low = top - row * len(rows)
    sketch.thin([(BLOCK, low), (END, low), (END, top), (BLOCK, top), (BLOCK, low)])
    sketch.thin([(middle, low), (middle, top)])
    for number, (name, size) in enumerate(rows):
        level = top - row * (number + 0.5)
        if number:
            sketch.thin([(BLOCK, level + row / 2), (END, level + row / 2)])
        sketch.write((BLOCK + middle) / 2, level, name, ha="center", fontsize=22.0)
        sketch.write((middle + END) / 2, level, size, ha="center", fontsize=22.0)
