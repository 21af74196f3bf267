"""What the cutters bench works out: the seat of a job, and which of the cutters it shows."""

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import TypeVar

from seatwork.errors import SeatworkError
from seatwork.hardware.bores import head_bore
from seatwork.hardware.job_list import Job, job, jobs
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop.choosing.choosing import Choice, Choices, Refusal
from seatwork.shop.choosing.fitting import Assembly, Seat
from seatwork.shop.lists.cutters import CONES
from seatwork.shop.shop import Shop
from seatwork.units import show_angle, show_length

JudgedT = TypeVar("JudgedT", Choice, Refusal)
LETTERS = "ABCDE"
FITTING = 3
"""How many of the cutters shown fit, if so many do."""


THICKEST_SHEET = 4.8
"""Thickness up to which a part is sheet to a cutter [mm]: about 3/16 in, an example."""

FITS = {
    "countersink": "the flat heads in the {part}",
    "counterbore": "the {head} heads in the {part}",
    "spotface": "the spotfaces on the {part}",
    "chamfer": "the edges of the holes in the {part}",
}
"""By seat what it is for, in words that follow "for"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """The seat that a job wants.

    Parameters
    ----------
    where : str
        In words that follow "for".
    seat : Countersink, Counterbore, Spotface or Chamfer
        What is to be cut.
    hole_diameter : float
        The hole [mm].
    bore : str
        What a counterbore rests on; blank for another seat.
    """

    where: str
    seat: Seat
    hole_diameter: float
    bore: str = ""


def seated_jobs() -> tuple[str, ...]:
    """Name the jobs of the list that say all of their seat; a hexagon's waits for its wrench."""
    return jobs(lambda one: _whole(one) and not (one.seat == "counterbore" and _hexagon(one)))


def wanted(name: str) -> Wanted:
    """Find the seat of a job of the list, or the one that any screw's head wants.

    Raises
    ------
    SeatworkError
        If nothing says how deep a counterbore is.
    """
    return _wanted(job(name))


@lru_cache(maxsize=16)
def _wanted(one: Job) -> Wanted:
    return Wanted(
        where=_where(one),
        seat=_seat(one),
        hole_diameter=one.hole.diameter,
        bore=head_bore(one.screw).basis if one.seat == "counterbore" else "",
    )


def _whole(one: Job) -> bool:
    try:
        return bool(_wanted(one))
    except SeatworkError:
        return False


def _hexagon(one: Job) -> bool:
    return one.fastener is not None and one.fastener.across_flats is not None


def _where(one: Job) -> str:
    part = one.part.partition(",")[0]
    if not part:
        return f"the {one.screw.name}"
    head = "hexagon" if _hexagon(one) else "socket"
    return FITS[one.seat].format(part=part, head=head)


def _seat(one: Job) -> Seat:
    hole, across = one.hole.diameter, one.across
    if one.seat == "chamfer":
        return Chamfer(leg=(across - hole) / 2)
    if one.seat == "spotface":
        return Spotface(diameter=across, hole_diameter=hole)
    if one.seat == "countersink":
        angle = one.screw.facts["seat_angle"].value
        return Countersink(diameter=across, hole_diameter=hole, included_angle=angle)
    depth = head_bore(one.screw).depth
    return Counterbore(diameter=across, depth=depth, hole_diameter=hole)


def seat_words(seat: Seat, hole_diameter: float, system: str) -> str:
    """Tell a seat in a few words, one unit system.

    Examples
    --------
    >>> held = wanted("#10 flat head 82° (hopper plate)")
    >>> seat_words(held.seat, held.hole_diameter, "inch")
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
