"""Pictures beside the words: one's own number cut beside the right seat, and the triangle."""

from dataclasses import dataclass, replace
from typing import Any

from seatwork.drawings.scene import Look
from seatwork.drawings.views.beside_right import beside_right
from seatwork.drawings.views.cut_seat import bare_seats
from seatwork.drawings.views.cut_shapes import CutSeat
from seatwork.errors import SeatworkError
from seatwork.marking.speaking import Voice
from seatwork.quantities import Length
from seatwork.questions.cuts.cone_triangle import triangle_at
from seatwork.questions.cuts.finding import own_cut, right_cut
from seatwork.questions.type.pictures import spoken
from seatwork.seats import Counterbore, Countersink
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


def own_figures(question: Any, part: int, typed: str, look: Look, voice: Voice) -> list[Figure]:
    """Cut a number as typed beside the right seat; no figure where nothing comes of it."""
    found = own_cut(question, part, typed)
    if found is None:
        return []
    said = voice.say(found.said)
    if found.pair is not None:
        asked, mine = beside_right(found.pair, look)
        right = _amount(asked, voice.say(ASKED), voice.words["form.right_amount"])
        return [right, _amount(mine, f"{said} {voice.say(DASHED)}", said)]
    if found.own is None:
        return [Figure(png=b"", kind="words", alt="", caption=said)]
    try:
        drawn = bare_seats(found.right, found.own, look)
    except SeatworkError:
        return [Figure(png=b"", kind="words", alt="", caption=said)]
    figures = []
    if found.right is not None:
        caption = f"{voice.words['form.right_seat']} {_state(found.right, voice)}".strip()
        figures.append(_cut((drawn[0][0], voice.say(drawn[0][1])), caption))
    lies = _lies(found.own, look.system, voice)
    as_asked = "" if _faults(found.own) else lies
    alt = f"{said} {voice.say(drawn[-1][1])} {as_asked}".strip()
    figures.append(_cut((drawn[-1][0], alt), f"{said} {lies}"))
    return figures


def right_figures(question: Any, part: int, look: Look, voice: Voice) -> list[Figure]:
    """Cut the right answer, with its screw let down."""
    found = right_cut(question, part)
    if found is None:
        return []
    said = voice.say(found.said)
    if found.pair is not None:
        (png,) = beside_right(found.pair, look, alone=True)
        return [_amount(png, found.said, said)]
    if found.own is None:
        return [Figure(png=b"", kind="words", alt="", caption=said)]
    own = replace(found.own, held=None)
    ((png, alt),) = bare_seats(None, own, look)
    return [_cut((png, voice.say(alt)), f"{said} {_state(own, voice)}")]


def triangle_figure(question: Any, step: int, look: Look, voice: Voice) -> list[Figure]:
    """Draw the triangle of a question, lit as far as a step; no figure where it has none."""
    drawing = spoken(triangle_at(question, step, look), voice.say)
    if drawing is None:
        return []
    png = drawing.trimmed_png(SHARPNESS)
    return [Figure(png=png, kind="triangle", alt=drawing.text, caption="")]


LIES = (Countersink, Counterbore)
"""Seats that a head lies in; it stands on the others."""

SHARPNESS = 0.75
"""Pixels of a triangle per page unit [-]."""


ASKED = "As it should be, without its size."
DASHED = "The right one is dashed."
"""What screen readers say of amounts beside each other."""


def _amount(png: bytes, alt: str, caption: str) -> Figure:
    return Figure(png=png, kind="cut", alt=alt, caption=caption)


def _cut(drawn: tuple[bytes, str], caption: str) -> Figure:
    return Figure(png=drawn[0], kind="cut", alt=drawn[1], caption=caption)


def _faults(part: CutSeat) -> tuple[Any, ...]:
    return part.standing().faults


def _lies(part: CutSeat, system: str, voice: Voice) -> str:
    """Say in a line what is wrong with a seat; where nothing is, that it was asked otherwise."""
    found = part.standing()
    if not found.faults:
        return voice.words["form.not_as_asked"]
    lines = "; ".join(fault.label(lambda size: _size(size, system)) for fault in found.faults)
    return voice.say(f"{lines[:1].upper()}{lines[1:]}.")


def _state(part: CutSeat, voice: Voice) -> str:
    """Say how the head lies; on a flat that it stands on, nothing is to be said."""
    state = part.standing().state
    key = {"flush": "form.lies_flush", "below": "form.lies_below", "proud": "form.lies_proud"}
    return voice.words[key[state]] if isinstance(part.seat, LIES) else ""


def _size(value: Any, system: str) -> str:
    return show_length(float(value), system) if isinstance(value, Length) else str(value)
