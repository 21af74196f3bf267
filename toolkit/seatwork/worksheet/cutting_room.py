"""Pictures beside the words: one's own number cut beside the right seat, and the triangle."""

from dataclasses import dataclass, replace
from typing import Any

from seatwork.drawings.scene import Look
from seatwork.drawings.views.cut_seat import bare_seats
from seatwork.drawings.views.cut_shapes import CutSeat
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.questions.cuts.cone_triangle import triangle_at
from seatwork.questions.cuts.finding import own_cut, right_cut
from seatwork.seats import Counterbore, Countersink
from seatwork.shop import wording
from seatwork.units import show_length


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure:
    """A picture beside the words: a PNG file, and what the page knows of it."""

    png: bytes
    kind: str
    alt: str
    caption: str

    @property
    def shown(self) -> dict[str, str]:
        """What travels beside the picture."""
        return {"kind": self.kind, "alt": self.alt, "caption": self.caption}


def own_figures(question: Any, part: int, typed: str, look: Look) -> list[Figure]:
    """Cut a number as typed beside the right seat; no figure where nothing comes of it."""
    found = own_cut(question, part, typed)
    if found is None:
        return []
    if found.own is None:
        return [Figure(png=b"", kind="words", alt="", caption=found.said)]
    try:
        drawn = bare_seats(found.right, found.own, look)
    except SeatworkError:
        return [Figure(png=b"", kind="words", alt="", caption=found.said)]
    words = wording()
    figures = []
    if found.right is not None:
        figures.append(_cut(drawn[0], f"{words['form.right_seat']} {_state(found.right)}".strip()))
    lies = _lies(found.own, look.system)
    own = drawn[-1][0], f"{found.said} {drawn[-1][1]} {lies if not _faults(found.own) else ''}"
    figures.append(_cut((own[0], own[1].strip()), f"{found.said} {lies}"))
    return figures


def right_figures(question: Any, part: int, look: Look) -> list[Figure]:
    """Cut the right answer, with its screw let down."""
    found = right_cut(question, part)
    if found is None or found.own is None:
        return [Figure(png=b"", kind="words", alt="", caption=found.said)] if found else []
    own = replace(found.own, held=None)
    ((png, alt),) = bare_seats(None, own, look)
    return [_cut((png, alt), f"{found.said} {_lies(own, look.system, right=True)}")]


def triangle_figure(question: Any, step: int, look: Look) -> list[Figure]:
    """Draw the triangle of a question, lit as far as a step; no figure where it has none."""
    drawing = triangle_at(question, step, look)
    if drawing is None:
        return []
    png = drawing.trimmed_png(SHARPNESS)
    return [Figure(png=png, kind="triangle", alt=drawing.text, caption="")]


LIES = (Countersink, Counterbore)
"""Seats that a head lies in; it stands on the others."""

SHARPNESS = 0.75
"""Pixels of a triangle per page unit [-]."""


def _cut(drawn: tuple[bytes, str], caption: str) -> Figure:
    return Figure(png=drawn[0], kind="cut", alt=drawn[1], caption=caption)


def _faults(part: CutSeat) -> tuple[Any, ...]:
    return part.standing().faults


def _lies(part: CutSeat, system: str, *, right: bool = False) -> str:
    """Say in a line what is wrong with a seat; where nothing is, that it was asked otherwise."""
    found, words = part.standing(), wording()
    if right:
        return _state(part)
    if not found.faults:
        return words["form.not_as_asked"]
    lines = "; ".join(fault.label(lambda size: _size(size, system)) for fault in found.faults)
    return f"{lines[:1].upper()}{lines[1:]}."


def _state(part: CutSeat) -> str:
    """Say how the head lies; on a flat that it stands on, nothing is to be said."""
    state = part.standing().state
    key = {"flush": "form.lies_flush", "below": "form.lies_below", "proud": "form.lies_proud"}
    return wording()[key[state]] if isinstance(part.seat, LIES) else ""


def _size(value: Any, system: str) -> str:
    return show_length(float(value), system) if isinstance(value, Length) else str(value)
