"""The which-seat bench: a part and a fastener; which of the four seats, and why no other."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from typing import Any, ClassVar

from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Switch
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.which_seat_view import Fastener, SeatChoice, WhichSeatView
from seatwork.hardware import (
    clearance_hole,
    listed_counterbore,
    screw,
    tap_drill,
    tapped_hole_chamfer,
    thread,
    washer,
)
from seatwork.quantities import INCH
from seatwork.seats import Counterbore, Countersink
from seatwork.units import show_both

SEATS = ("countersink", "counterbore", "spotface", "chamfer")
PAD, BAR, HOPPER, TAPPED, MILLED = (
    "rough frame pad, 1/2 hex cap screw",
    "crank bearing cap, 3/8 socket head cap screw",
    "hopper plate, #10 flat head screw",
    "frame, hole to be tapped 1/4-20",
    "milled frame face, 1/2 hex cap screw",
)
SPOTFACE_DEPTH = INCH / 16
"""Depth drawn for a spotface [mm]; a real one goes only as deep as cleans up all round."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """A part, its fastener, and the answer.

    Parameters
    ----------
    answer : str
        The right one of the four seats.
    asked : str
        What is wanted of the part.
    why : dict of str to str
        For each seat, why it is the one or why it would not do.
    fastener : Fastener
        The screw in outline.
    seat : Countersink or Counterbore
        The seat.
    hole_diameter : float
        The hole [mm].
    rough : bool
        Whether the face is a rough casting.
    sizes : tuple of (str, float)
        Sizes with their names [mm].
    sources : tuple of str
        Where the sizes come from.
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


def _hex(rough: bool) -> Case:
    part, ring = screw("1/2-13 hex cap"), washer("1/2 narrow")
    hole = clearance_hole(part.thread)
    across, height = part.facts["across_corners"].value, part.facts["height"].value
    sources = (
        fact_line(f"{part.name}, head", part.source, part.confirmed),
        fact_line("Hole, normal fit", hole.source, hole.confirmed),
        fact_line("Narrow washer, outside diameter", ring.source, ring.confirmed),
    )
    sizes = (("head across corners", across), ("hole", hole.diameter))
    fastener = Fastener(shank=part.thread.diameter, diameter=across, height=height)
    if rough:
        return Case(
            answer="spotface",
            asked="The head is to sit flat on a rough casting; it may stand above the face.",
            why={
                "spotface": "cleans just enough of the pad to give the head a flat, square to the "
                "hole; on the rough pad it would sit uneven, and the bolt may bend or break.",
                "counterbore": "would sink the head, which nobody asked for, and takes metal from "
                "the flange; a wrench socket would have to fit in as well.",
                "countersink": "is for a cone; a flat head underside would rest on a thin ring.",
                "chamfer": "only breaks the edge of the hole; the pad stays rough.",
            },
            fastener=fastener,
            seat=Counterbore(
                diameter=ring.outside_diameter + 3.0,
                depth=SPOTFACE_DEPTH,
                hole_diameter=hole.diameter,
            ),
            hole_diameter=hole.diameter,
            rough=True,
            sizes=(*sizes, ("spotface, washer and some room", ring.outside_diameter + 3.0)),
            sources=(*sources, "Room of 3 mm round the washer: an example, no source."),
        )
    leg = INCH / 32
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
        fastener=fastener,
        seat=Countersink(
            diameter=hole.diameter + 2 * leg, hole_diameter=hole.diameter, included_angle=90.0
        ),
        hole_diameter=hole.diameter,
        sizes=(*sizes, ("chamfer at the face", hole.diameter + 2 * leg)),
        sources=(*sources[:2], rule_line("chamfer.inch_leg")),
    )


def _socket() -> Case:
    part = screw("3/8-16 SHCS")
    size, hole = listed_counterbore(part), clearance_hole(part.thread)
    return Case(
        answer="counterbore",
        asked="The head is to lie below the face, so that the crank clears it.",
        why={
            "counterbore": "has a flat floor and straight walls: the cylinder of the head goes "
            "in, and its flat underside bears all round.",
            "countersink": "is a cone; this head is flat below and would touch on a thin ring.",
            "spotface": "is only deep enough to clean up: the head would stand above the face.",
            "chamfer": "breaks an edge; the head would still stand above the face.",
        },
        fastener=Fastener(
            shank=part.thread.diameter,
            diameter=part.facts["head_diameter"].value,
            height=part.facts["height"].value,
        ),
        seat=Counterbore(diameter=size.diameter, depth=size.depth, hole_diameter=hole.diameter),
        hole_diameter=hole.diameter,
        sizes=(
            ("head", part.facts["head_diameter"].value),
            ("hole", hole.diameter),
            ("counterbore", size.diameter),
            ("depth", size.depth),
        ),
        sources=(
            fact_line(f"{part.name}, head", part.source, part.confirmed),
            fact_line("Hole, normal fit", hole.source, hole.confirmed),
            fact_line("Counterbore", size.source, size.confirmed),
            rule_line("counterbore.inch_below_face"),
        ),
    )


def _flat() -> Case:
    part = screw("#10-24 flat head machine screw")
    hole, head = clearance_hole(part.thread), part.head
    seat = Countersink(
        diameter=head.sharp_diameter,
        hole_diameter=hole.diameter,
        included_angle=part.facts["seat_angle"].value,
    )
    return Case(
        answer="countersink",
        asked="Apples slide over the plate: nothing may stand proud.",
        why={
            "countersink": "is the cone that this head has: same included angle, 82°, and as "
            "wide as the theoretical sharp diameter, so that the head is flush.",
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
            fact_line(f"{part.name}, {part.title}", part.source, part.confirmed),
            fact_line("Hole, normal fit", hole.source, hole.confirmed),
        ),
    )


def _tapped() -> Case:
    edge, hole = tapped_hole_chamfer("1/4-20"), tap_drill("1/4-20")
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
        fastener=Fastener(shank=thread("1/4-20").diameter),
        seat=Countersink(
            diameter=edge.diameter,
            hole_diameter=hole.diameter,
            included_angle=edge.included_angle,
        ),
        hole_diameter=hole.diameter,
        sizes=(
            ("tap drill", hole.diameter),
            ("major diameter", thread("1/4-20").diameter),
            ("chamfer at the face", edge.diameter),
        ),
        sources=(
            fact_line(f"Tap drill {hole.name}", hole.source, hole.confirmed),
            fact_line("Chamfer", edge.source, edge.confirmed),
            *(rule_line(name) for name in edge.rules),
        ),
    )


MADE: dict[str, Callable[[], Case]] = {
    PAD: lambda: _hex(rough=True),
    BAR: _socket,
    HOPPER: _flat,
    TAPPED: _tapped,
    MILLED: lambda: _hex(rough=False),
}


@cache
def case(name: str) -> Case:
    """Give a case by its name."""
    return MADE[name]()


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """What the bench shows.

    Parameters
    ----------
    name : str
        Part and fastener.
    case : Case
        With the answer.
    opened : bool
        Whether the answer is shown.
    """

    name: str
    case: Case
    opened: bool


class WhichSeat(Bench[Asked]):
    """Ask which of the four seats a part and its fastener want.

    Examples
    --------
    >>> WhichSeat().result.case.answer
    'spotface'
    """

    title = "Which seat?"
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="opened", label="Show the answer", back="Hide the answer", redraws=True),
        Choice(name="part", label="Part", options=tuple(MADE), start=PAD, redraws=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Hide the answer again for another part."""
        return {"opened": False} if "part" in given else {}

    def shows(self, result: Asked) -> tuple[type[Any], Callable[[Asked, str], Any]]:
        """Show part and fastener, the four seats to choose from, then the one and why."""
        return WhichSeatView, _page

    def work_out(self, *, opened: bool, part: str) -> Asked:
        """Find the part; picking another one is another question."""
        return Asked(name=part, case=case(part), opened=opened)

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
    lists: tuple[tuple[str, str], ...] = ((result.name[0].upper() + result.name[1:], one.asked),)
    if result.opened:
        heading = f"{one.answer.capitalize()}"
        order = (one.answer, *(seat for seat in SEATS if seat != one.answer))
        named = {seat: seat.capitalize() for seat in order[1:]}
        titles = {one.answer: f"{one.answer.capitalize()}: yes"}
        titles |= {seat: f"{shown}: no" for seat, shown in named.items()}
        lists += tuple((titles[seat], f"It {one.why[seat]}") for seat in order)
        sizes = ", ".join(f"{name} {show_both(size, system)}" for name, size in one.sizes)
        sentence = " ".join(f"{title}. {words}" for title, words in lists[1:])
        text = f"{result.name}. {one.asked} {sentence} Sizes: {sizes}."
    else:
        heading = "Which of the four seats does it want?"
        lists += (("Choose one", "countersink\ncounterbore\nspotface\nchamfer"),)
        text = f"{result.name}. {one.asked} {heading} Countersink, counterbore, spotface, chamfer."
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
