"""Jobs of the cider mill for the cutters bench, and which of the shop's cutters it shows."""

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import TypeVar

from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop.choosing.choosing import Choice, Choices, Refusal
from seatwork.shop.choosing.fitting import Assembly, Seat
from seatwork.shop.lists.cutters import CONES
from seatwork.shop.shop import Shop
from seatwork.units import show_angle, show_length

JudgedT = TypeVar("JudgedT", Choice, Refusal)
LETTERS = "ABCDE"
FITTING, INCH = 3, 25.4
"""How many of the cutters shown fit, if so many do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """A place on the cider mill and the seat wanted there.

    Parameters
    ----------
    where : str
        In words that follow "for".
    seat : Countersink, Counterbore, Spotface or Chamfer
        What is to be cut.
    hole_diameter : float
        The hole [mm].
    material, machine : str
        Names in the shop's lists.
    thickness : float, optional
        Thickness of sheet [mm].
    """

    where: str
    seat: Seat
    hole_diameter: float
    material: str
    machine: str
    thickness: float | None = None


GUARD, HOPPER, CAP, PAD, SHEET = (
    "guard: edges of its holes",
    "hopper plate: flat heads",
    "bearing cap: socket heads",
    "frame pad: spotfaces",
    "guard bracket: 100° flat heads",
)
PLACES = {
    GUARD: Place(
        where="the hole edges of the sheet-metal guard",
        seat=Chamfer(leg=0.015 * INCH),
        hole_diameter=0.201 * INCH,
        material="sheet steel",
        machine="hand drill",
        thickness=0.048 * INCH,
    ),
    HOPPER: Place(
        where="the flat heads in the hopper plate",
        seat=Countersink(diameter=0.385 * INCH, hole_diameter=0.201 * INCH, included_angle=82.0),
        hole_diameter=0.201 * INCH,
        material="6061 aluminum",
        machine="bench drill press",
    ),
    CAP: Place(
        where="the socket heads in the bearing cap",
        seat=Counterbore(diameter=0.625 * INCH, depth=0.385 * INCH, hole_diameter=13 / 32 * INCH),
        hole_diameter=13 / 32 * INCH,
        material="gray iron",
        machine="bench drill press",
    ),
    PAD: Place(
        where="the spotfaces on the frame pads",
        seat=Spotface(diameter=1.25 * INCH, hole_diameter=17 / 32 * INCH),
        hole_diameter=17 / 32 * INCH,
        material="gray iron",
        machine="knee mill",
    ),
    SHEET: Place(
        where="the 100° flat heads in the guard bracket",
        seat=Countersink(diameter=0.385 * INCH, hole_diameter=0.201 * INCH, included_angle=100.0),
        hole_diameter=0.201 * INCH,
        material="sheet steel",
        machine="bench drill press",
        thickness=0.125 * INCH,
    ),
}


def seat_words(seat: Seat, hole_diameter: float, system: str) -> str:
    """Tell a seat in a few words, one unit system.

    Examples
    --------
    >>> seat_words(PLACES[HOPPER].seat, 5.1054, "inch")
    'countersink 82°, 0.385 in at the face, hole 0.201 in'
    """
    hole = f"hole {show_length(hole_diameter, system)}"
    if isinstance(seat, Chamfer):
        angle = show_angle(seat.included_angle)
        return f"chamfer {angle} included, leg {show_length(seat.leg, system)}, {hole}"
    across = show_length(seat.diameter, system)
    if isinstance(seat, Countersink):
        return f"countersink {show_angle(seat.included_angle)}, {across} at the face, {hole}"
    if isinstance(seat, Counterbore):
        return f"counterbore {across}, {show_length(seat.depth, system)} deep, {hole}"
    return f"spotface {across}, {hole}"


def lined_up(choices: Choices, seat: Seat, shop: Shop) -> tuple[Choice | Refusal, ...]:
    """Choose up to five cutters to show, in the order of the shop's list.

    Parameters
    ----------
    choices : Choices
        All of them, judged.
    seat : Countersink, Counterbore, Spotface or Chamfer
        What is to be cut.
    shop : Shop
        With the list.

    Returns
    -------
    tuple of Choice or Refusal
        The best, the next and the last that fit, and near ones that do not, each for another
        reason where there are such.
    """
    fitting = list(_once(choices.ranked, set()))
    shown: list[Choice | Refusal] = list(fitting)
    if len(fitting) > FITTING:
        shown = [*fitting[: FITTING - 1], fitting[-1]]
    names = {one.tool.cutter.name for one in fitting}
    near = [one for one in _once(choices.refused, names) if _same_sort(one.tool, seat)]
    near.sort(key=lambda one: _far(one.tool, seat))
    shown += _varied(near)[: len(LETTERS) - len(shown)]
    order = [cutter.name for cutter in shop.cutters]
    return tuple(sorted(shown, key=lambda one: order.index(one.tool.cutter.name)))


def _once(judged: Iterable[JudgedT], seen: set[str]) -> Iterator[JudgedT]:
    """Give the first of each cutter: a set with two holders is one cutter."""
    for one in judged:
        if one.tool.cutter.name not in seen:
            seen.add(one.tool.cutter.name)
            yield one


def _same_sort(tool: Assembly, seat: Seat) -> bool:
    return (tool.cutter.kind in CONES) == isinstance(seat, Countersink | Chamfer)


def _far(tool: Assembly, seat: Seat) -> tuple[float, float]:
    """How far a tool is from what is wanted: in angle, then in size."""
    angle = getattr(seat, "included_angle", 180.0)
    diameter = getattr(seat, "diameter", 0.0)
    off = abs((tool.cutter.included_angle or 180.0) - angle)
    return off, abs((tool.cutter.body_diameter or 0.0) - diameter)


def _varied(refused: list[Refusal]) -> list[Refusal]:
    """Put one of each kind of reason first."""
    met: Counter[str] = Counter()
    ranks = []
    for one in refused:
        reason = " ".join(w for w in one.sentence.split() if not any(c.isdigit() for c in w))
        ranks.append(met[reason])
        met[reason] += 1
    order = sorted(range(len(refused)), key=lambda place: (ranks[place], place))
    return [refused[place] for place in order]
