"""What the which-seat bench knows: which seat a screw wants on a face, its sizes, and why."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from typing import TypeVar

from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.views.which_seat_view import Fastener
from seatwork.errors import SeatworkError
from seatwork.hardware import tap_drill, tapped_hole_chamfer, washer
from seatwork.hardware.bores import BELOW, head_bore
from seatwork.hardware.job_list import Job, job, jobs
from seatwork.hardware.screws import Screw
from seatwork.quantities import INCH
from seatwork.seats import Counterbore, Countersink
from seatwork.shop.house.house_rules import rules

SEATS = ("countersink", "counterbore", "spotface", "chamfer")
ROUGH, FLAT = "rough, as cast", "milled flat and square"
STAND, SINK, THREAD = (
    "its head may stand above the face",
    "its head must not stand above the face",
    "a thread for it, cut in this hole",
)
"""What is wanted of a screw."""

SPOTFACE_DEPTH = INCH / 16
"""Depth drawn for a spotface [mm]; a real one goes only as deep as cleans up all round."""

ROOM = 3.0
"""Room round the washer, or round the head where no washer is listed [mm]: an example."""

FoundT = TypeVar("FoundT")


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """A screw on a face, what is wanted, and the answer.

    Parameters
    ----------
    answer : str
        The right one of the four seats.
    asked : str
        What is wanted.
    why : dict of str to str
        For each seat, why it is the one or why it would not do.
    fastener : Fastener
        The screw in outline.
    seat : Countersink or Counterbore
        The seat.
    hole_diameter : float
        The hole [mm].
    sizes : tuple of (str, float)
        Sizes with their names [mm].
    sources : tuple of str
        Where the sizes come from.
    rough : bool
        Whether the face is a rough casting.
    """

    answer: str
    asked: str
    why: dict[str, str]
    fastener: Fastener
    seat: Countersink | Counterbore
    hole_diameter: float
    sizes: tuple[tuple[str, float], ...]
    sources: tuple[str, ...]
    rough: bool = False


def screws() -> tuple[str, ...]:
    """Name the screws of the shop's list of jobs, each once."""
    named = (job(name) for name in jobs(lambda one: one.fastener is not None))
    return tuple(dict.fromkeys(one.called for one in named))


def asked_of(name: str) -> Job:
    """Find a screw, or the one of a job of the list.

    Raises
    ------
    SeatworkError
        If nothing is called so, or the job names no screw.
    """
    found = job(name)
    assert found.screw  # refuses a job without one
    return found


@lru_cache(maxsize=32)
def case(one: Job, face: str, wish: str) -> Case:
    """Give the seat that a screw wants on a face, by what is wanted of it.

    Raises
    ------
    SeatworkError
        If the lists lack a size that the seat needs.
    """
    if wish == THREAD:
        return _tapped(one)
    if one.flat:
        return _flat(one, rough=face == ROUGH, proud=wish == STAND)
    if wish == SINK:
        return _sunk(one, rough=face == ROUGH)
    return _pad(one) if face == ROUGH else _edge(one)


def _tapped(one: Job) -> Case:
    size = one.screw.thread
    edge, hole = tapped_hole_chamfer(size.name), tap_drill(size.name)
    return Case(
        answer="chamfer",
        asked="The first thread must not stand up as a burr, and the tap must find its way in.",
        why={
            "chamfer": "is cut at 90°, a little over the major diameter; it lets the tap start and "
            "keeps the first thread from standing up; cut it before the tap.",
            "countersink": "would be cut with the same tool, but a seat for a head is far wider.",
            "counterbore": "would take away the first threads.",
            "spotface": "is for the head of a screw; none sits on this face.",
        },
        fastener=Fastener(shank=size.diameter),
        seat=Countersink(
            diameter=edge.diameter, hole_diameter=hole.diameter, included_angle=edge.included_angle
        ),
        hole_diameter=hole.diameter,
        sizes=(
            ("tap drill", hole.diameter),
            ("major diameter", size.diameter),
            ("chamfer at the face", edge.diameter),
        ),
        sources=(
            fact_line(f"Tap drill {hole.name}", hole.source, hole.confirmed),
            fact_line("Chamfer", edge.source, edge.confirmed),
            *(rule_line(name) for name in edge.rules),
        ),
    )


def _flat(one: Job, *, rough: bool, proud: bool) -> Case:
    part, head, hole = one.screw, one.screw.head, one.hole
    angle = part.facts["seat_angle"].value
    seat = Countersink(
        diameter=head.sharp_diameter, hole_diameter=hole.diameter, included_angle=angle
    )
    return Case(
        answer="countersink",
        asked="The head is to bear all round; it may stand above the face."
        if proud
        else "Something slides over the part: nothing may stand proud.",
        why={
            "countersink": f"is the cone that this head has: same included angle, {angle:g}°, and "
            "as wide as the theoretical sharp diameter, so that the head is flush.",
            "counterbore": "has a flat floor: the cone would touch only the edge of the hole.",
            "spotface": "would leave the whole head above the face.",
            "chamfer": "is a small cone as well, but too small: the head would stand proud.",
        },
        fastener=Fastener(shank=part.thread.diameter, flat=head),
        seat=seat,
        hole_diameter=hole.diameter,
        sizes=(
            ("theoretical sharp diameter", head.sharp_diameter),
            ("hole", hole.diameter),
            ("depth, face to hole edge", seat.depth),
        ),
        sources=(
            fact_line(f"{part.name}, head", part.source, part.confirmed),
            fact_line("Its hole", hole.source, hole.confirmed),
        ),
        rough=rough,
    )


def _sunk(one: Job, *, rough: bool) -> Case:
    part, hole, size = one.screw, one.hole, head_bore(one.screw)
    fastener = _outline(part)
    return Case(
        answer="counterbore",
        asked="Something slides over the part: nothing may stand proud.",
        why={
            "counterbore": "has a flat floor and straight walls: the head goes in, and its flat "
            "underside bears all round.",
            "countersink": "is a cone; this head is flat below and would touch on a thin ring.",
            "spotface": "is only deep enough to clean up: the head would stand above the face.",
            "chamfer": "breaks an edge; the head would still stand above the face.",
        },
        fastener=fastener,
        seat=Counterbore(diameter=size.diameter, depth=size.depth, hole_diameter=hole.diameter),
        hole_diameter=hole.diameter,
        sizes=(
            ("head", fastener.diameter),
            ("hole", hole.diameter),
            ("counterbore", size.diameter),
            ("depth", size.depth),
        ),
        sources=(
            *_head_and_hole(one),
            fact_line(f"Counterbore, {size.basis}", size.source, size.confirmed),
            rule_line(BELOW),
        ),
        rough=rough,
    )


def _pad(one: Job) -> Case:
    part, hole, fastener = one.screw, one.hole, _outline(one.screw)
    size = part.thread.size if part.thread.system == "metric" else f"{part.thread.size} narrow"
    ring = _if_held(washer, size)
    across = (ring.outside_diameter if ring else fastener.diameter) + ROOM
    what = "spotface, washer and some room" if ring else "spotface, head and some room"
    rings = (fact_line(f"{ring.name}", ring.source, ring.confirmed),) if ring else ()
    return Case(
        answer="spotface",
        asked="The head is to sit flat on a rough casting; it may stand above the face.",
        why={
            "spotface": "cleans just enough of the pad to give the head a flat, square to the "
            "hole; on the rough pad it would sit uneven, and the bolt may bend or break.",
            "counterbore": "would sink the head, which nobody asked for, and takes metal from "
            "the flange; what tightens it would have to fit in as well.",
            "countersink": "is for a cone; a flat head underside would rest on a thin ring.",
            "chamfer": "only breaks the edge of the hole; the pad stays rough.",
        },
        fastener=fastener,
        seat=Counterbore(diameter=across, depth=SPOTFACE_DEPTH, hole_diameter=hole.diameter),
        hole_diameter=hole.diameter,
        rough=True,
        sizes=(*_plain_sizes(one), (what, across)),
        sources=(*_head_and_hole(one), *rings, f"Room of {ROOM:g} mm: an example, no source."),
    )


def _edge(one: Job) -> Case:
    hole, rule = one.hole, f"chamfer.{one.screw.thread.system}_leg"
    across = hole.diameter + 2 * rules().number(rule)
    return Case(
        answer="chamfer",
        asked="The face is milled flat and square to the hole; the head may stand above it.",
        why={
            "chamfer": "takes the burr off the hole, so that the head lies down flat; the face "
            "is a seat already, and nothing else is needed.",
            "spotface": "would make flat and square what is flat and square.",
            "counterbore": "would sink the head, which nobody asked for.",
            "countersink": "would take away the face that the head of this screw rests on.",
        },
        fastener=_outline(one.screw),
        seat=Countersink(diameter=across, hole_diameter=hole.diameter, included_angle=90.0),
        hole_diameter=hole.diameter,
        sizes=(*_plain_sizes(one), ("chamfer at the face", across)),
        sources=(*_head_and_hole(one), rule_line(rule)),
    )


def _outline(part: Screw) -> Fastener:
    """Draw a head that is flat underneath, across its corners or its round."""
    across = part.across_corners or part.head_diameter or part.thread.diameter
    return Fastener(shank=part.thread.diameter, diameter=across, height=part.head_height or 0.0)


def _plain_sizes(one: Job) -> tuple[tuple[str, float], ...]:
    head = "head across corners" if one.screw.across_flats else "head"
    return (head, _outline(one.screw).diameter), ("hole", one.hole.diameter)


def _head_and_hole(one: Job) -> tuple[str, str]:
    part, hole = one.screw, one.hole
    return (
        fact_line(f"{part.name}, head", part.source, part.confirmed),
        fact_line("Its hole", hole.source, hole.confirmed),
    )


def _if_held(find: Callable[[str], FoundT], asked: str) -> FoundT | None:
    """Return what a list has; None where it has no such row."""
    try:
        return find(asked)
    except SeatworkError:
        return None
