"""What the shop does when it sings, in its own order, and what the model says to each."""

from dataclasses import dataclass

from seatwork.cutting.chatter.parts import NOTE
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.page_words import FOOT, SECOND, heading, word
from seatwork.drawings.strokes.style import page
from seatwork.drawings.view import View
from seatwork.units import show_both, show_spindle

LEFT, TOP, STEP = 110.0, 566.0, 88.0
QUIET = "quiet at every width looked at"


@dataclass(frozen=True, slots=True, kw_only=True)
class Cures:
    """The cures for one cut, with the widths they make quiet.

    Parameters
    ----------
    spindle_speed : float
        Of the cut [rev/min].
    now, stiffer, one_flute, other : float or None
        Width where chatter begins: as it is, twice as stiff, with one flute, on the other
        machine [mm]; None where none was found.
    quiet_below : float
        Critical speed [rev/min].
    cutter, other_machine : str
        In words; no other machine where none stays quiet any deeper.
    """

    spindle_speed: float
    now: float | None
    stiffer: float | None
    one_flute: float | None
    other: float | None
    quiet_below: float
    cutter: str
    other_machine: str


class CuresView(View[Cures]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : Cures
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        self._heading = heading(axes, self.style)
        self._heading.set_text("If it sings: what the shop does, in this order")
        self._second = word(axes, self.style, 640.0, SECOND)
        self._lines = []
        for number in range(6):
            y = TOP - number * STEP
            name = word(axes, self.style, LEFT, y, ha="left", fontweight="bold")
            line = word(axes, self.style, LEFT + 34.0, y - self.style.line_height, ha="left")
            self._lines.append((name, line))
        self._foot = word(axes, self.style, 640.0, FOOT)
        self._foot.set_text(f"An {NOTE}")
        return Drawing(figure, self.move(self.part))

    def move(self, part: Cures) -> str:
        """Show the cures of another cut; return the text."""
        system = self.look.system
        self._second.set_text(_second(part, system))
        for number, (line, cure) in enumerate(zip(self._lines, _cures(part, system), strict=True)):
            line[0].set_text(f"{number + 1}. {cure[0]}")
            line[1].set_text(cure[1])
        return text_of(part, system)


def _second(part: Cures, system: str) -> str:
    speed = show_spindle(part.spindle_speed)
    return f"{part.cutter} at {speed}: {_quiet(part.now, system)}"


def _quiet(width: float | None, system: str) -> str:
    return QUIET if width is None else f"quiet up to {show_both(width, system)} of lip in cut"


def _cures(part: Cures, system: str) -> tuple[tuple[str, str], ...]:
    """Each cure and what the model says to it."""
    return (
        ("Clamp the part; quill locked, little stick-out",
         f"model: twice as stiff, {_quiet(part.stiffer, system)}"),
        ("Slow down",
         f"model: below {show_spindle(part.quiet_below)} every width stays quiet"),
        ("Feed steadily, firm enough to make a chip",
         "not backed by the model: its limit ignores feed"),
        ("Fewer flutes, or a cross-hole cutter",
         f"model: one flute, {_quiet(part.one_flute, system)}"),
        ("Sharpen",
         "not backed by the model: a fresh lip rubs less and can sing more"),
        ("Another machine", _other(part, system)),
    )  # fmt: skip


def _other(part: Cures, system: str) -> str:
    if not part.other_machine:
        return "model: no other machine of the shop's list stays quiet any deeper"
    return f"model: {part.other_machine}, {_quiet(part.other, system)}"


def text_of(part: Cures, system: str) -> str:
    """Tell the cures in order, with what the model says to each."""
    each = " ".join(
        f"{number}. {name} ({line})."
        for number, (name, line) in enumerate(_cures(part, system), start=1)
    )
    return f"{_second(part, system)}. What the shop does, in this order: {each} An {NOTE}."
