"""The which-seat bench: a screw on a face; which of the four seats, and why no other."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, ClassVar

from seatwork.benches.bank.which_seat_sums import (
    FLAT,
    ROUGH,
    SEATS,
    SINK,
    STAND,
    THREAD,
    Case,
    asked_of,
    case,
    screws,
)
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Pick, Switch
from seatwork.benches.build.measures import Measure
from seatwork.drawings.views.which_seat_view import SeatChoice, WhichSeatView
from seatwork.units import show_both

FIRST = "1/2-13 hex cap"


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """What the bench shows.

    Parameters
    ----------
    name, screw : str
        Size and face; the screw in full.
    case : Case
        With the answer.
    opened : bool
        Whether the answer is shown.
    """

    name: str
    screw: str
    case: Case
    opened: bool


class WhichSeat(Bench[Asked]):
    """Ask which of the four seats a screw wants on a face.

    Examples
    --------
    >>> WhichSeat().result.case.answer
    'spotface'
    >>> WhichSeat(screw="M6 csk socket").result.case.answer
    'countersink'
    """

    title = "Which seat?"
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="opened", label="Show the answer", back="Hide the answer", redraws=True),
        Pick(name="screw", label="Screw", listed=screws, known=asked_of, start=FIRST,
             others="another screw", redraws=True),
        Choice(name="face", label="Face", options=(ROUGH, FLAT), start=ROUGH, redraws=True),
        Choice(name="wish", label="Wanted", options=(STAND, SINK, THREAD), start=STAND,
               redraws=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Hide the answer again for another question."""
        return {"opened": False} if given.keys() & {"screw", "face", "wish"} else {}

    def shows(self, result: Asked) -> tuple[type[Any], Callable[[Asked, str], Any]]:
        """Show part and fastener, the four seats to choose from, then the one and why."""
        return WhichSeatView, _page

    def work_out(self, *, opened: bool, screw: str, face: str, wish: str) -> Asked:
        """Find the seat; another screw, face or wish is another question."""
        one = asked_of(screw)
        on = "a rough casting" if face == ROUGH else "a milled face"
        name = f"{one.screw.thread.name} screw on {on}"
        return Asked(name=name, screw=one.screw.name, case=case(one, face, wish), opened=opened)

    def measures(self, result: Asked) -> tuple[Measure, ...]:
        """Give the sizes once the answer is shown."""
        if not result.opened:
            return (Measure("Choose", "one of the four", kind="word"),)
        return tuple(Measure(name.capitalize(), size) for name, size in result.case.sizes)

    def sources(self, result: Asked) -> tuple[str, ...]:
        """Tell where the sizes come from, once they are shown."""
        text = "Which seat: common practice, no source."
        return (text, *result.case.sources) if result.opened else (text,)


def _page(result: Asked, system: str) -> SeatChoice:
    one = result.case
    lists: tuple[tuple[str, str], ...] = ((result.name, f"{result.screw}. {one.asked}"),)
    if result.opened:
        heading = f"{one.answer.capitalize()}"
        order = (one.answer, *(seat for seat in SEATS if seat != one.answer))
        named = {seat: seat.capitalize() for seat in order[1:]}
        titles = {one.answer: f"{one.answer.capitalize()}: yes"}
        titles |= {seat: f"{shown}: no" for seat, shown in named.items()}
        lists += tuple((titles[seat], f"It {one.why[seat]}") for seat in order)
        sizes = ", ".join(f"{name} {show_both(size, system)}" for name, size in one.sizes)
        sentence = " ".join(f"{title}. {words}" for title, words in lists[1:])
        text = f"{result.name}: {result.screw}. {one.asked} {sentence} Sizes: {sizes}."
    else:
        heading = "Which of the four seats does it want?"
        lists += (("Choose one", "countersink\ncounterbore\nspotface\nchamfer"),)
        text = f"{result.name}: {result.screw}. {one.asked} {heading} Countersink, counterbore, "
        text += "spotface, chamfer."
    return SeatChoice(
        heading=heading,
        fastener=one.fastener,
        seat=one.seat,
        hole_diameter=one.hole_diameter,
        rough=one.rough,
        lists=lists,
        opened=result.opened,
        text=text,
    )


which_seat = WhichSeat
