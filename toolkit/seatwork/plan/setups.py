"""Setups: how the part is held, which face is up, what lies under it, where zero is.

A new setup begins wherever the part is turned over. Common practice, no source.
"""

from collections.abc import Iterator, Sequence

from seatwork.plan.blind import TIP
from seatwork.plan.order import Order
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Setup

TURN = "turn the part over"
THIN = 3.2  # mm; sheet rather than plate (common practice, no source)
SHEET = "clamped all round on a backing of scrap"
RAW = "raw casting on three points, each clamp over a support"
HELD = {
    "drill press": "in the vise on parallels, tapped down, the moving jaw's lift checked; vise "
    "bolted, or against a stop bar left of the column",
    "mill": "in the vise on parallels, tapped down, the moving jaw's lift checked; work stop set",
    "lathe": "in the chuck, short overhang; tool in the tailstock",
    "hand drill": "clamped flat to the bench; never held by hand",
}
THROUGH = "holes over the gap of the parallels: the drill must miss parallels and table"
BACKING = "scrap backing: the drill runs out into it, never into the bench"
CLEAR = "supports and clamps clear of the holes: the drill must miss supports and table"
TURNS = "nothing: the work turns"
BLIND = "parallels; no drill comes out below"
FREE = "the finished seats lie over the gap of the parallels, never on one"
LAYOUT = (
    "datum edges deburred; dye, scribe, prick, check with a rule, then center punch; spot "
    "drill before a twist drill"
)
MARK_FAR = "; scribe FS on the far face"
EDGES = "two datum edges, deburred and picked up; spot drill before a twist drill"
CENTERED = "on the spindle axis; end faced first"
DEPTH = "depth touched off on this face"
ANEW = {
    "mill": "the same edge on the fixed jaw; the coordinate along the part changes its sign; "
    "depth touched off anew on this face",
    "drill press": "each hole brought under the spindle anew; depth touched off anew on this face",
    "lathe": "on the spindle axis; depth touched off anew, both ends alike",
    "hand drill": "each hole by its pilot; cage set anew on scrap",
}


def setups_of(seats: Sequence[SeatPlan], order: Order) -> tuple[Setup, ...]:
    """Return the clampings a plan takes: one, and another where the part is turned over.

    Parameters
    ----------
    seats : sequence of SeatPlan
        Every seat of the note, in order.
    order : Order
        Material, machine and part.
    """
    first = tuple(dict.fromkeys(name for seat in seats for name in _steps(seat, turned=False)))
    second = tuple(dict.fromkeys(name for seat in seats for name in _steps(seat, turned=True)))
    found = [_setup(first, seats, order, turned=False)] if first else []
    return (*found, *([_setup(second, seats, order, turned=True)] if second else []))


def _steps(seat: SeatPlan, *, turned: bool) -> Iterator[str]:
    """Yield the operations of a seat before the part is turned over, or after."""
    at = before_turning(seat)
    yield from (step.name for step in (seat.operations[at:] if turned else seat.operations[:at]))


def before_turning(seat: SeatPlan) -> int:
    """Return how many operations of a seat come before the part is turned over.

    Parameters
    ----------
    seat : SeatPlan
        Of a plan; none of them come before where another seat of it has turned the part.
    """
    names = [step.name for step in seat.operations]
    if TURN in names:
        return names.index(TURN)
    return 0 if _far(seat) else len(names)


def _far(seat: SeatPlan) -> bool:
    """Tell whether a seat is cut after another has turned the part over."""
    laid_out = any(step.name == "lay out on the far face" for step in seat.operations)
    return seat.side == "far" and not laid_out


def _setup(
    steps: tuple[str, ...], seats: Sequence[SeatPlan], order: Order, *, turned: bool
) -> Setup:
    kind = order.machine.kind
    mirrored = "lay out on the far face" in steps
    ends, held = kind == "lathe", _held(seats, order)
    face = ("far end" if turned else "near end") if ends else _face(turned or mirrored)
    return Setup(
        face=face,
        held=held,
        under=_under(held, seats, turned=turned),
        zero=ANEW[kind] if turned else _zero(kind, seats),
        steps=steps,
        far_up=turned or mirrored,
    )


def _face(far: bool) -> str:
    return "far face up" if far else "near face up"


def _held(seats: Sequence[SeatPlan], order: Order) -> str:
    if order.machine.kind == "lathe":
        return HELD["lathe"]
    if order.thickness is not None and order.thickness <= THIN:
        return SHEET
    raw = "iron" in order.material.name and any(seat.kind == "spotface" for seat in seats)
    return RAW if raw else HELD[order.machine.kind]


def _under(held: str, seats: Sequence[SeatPlan], *, turned: bool) -> str:
    without_parallels = {
        HELD["lathe"]: TURNS,
        HELD["hand drill"]: BACKING,
        SHEET: BACKING,
        RAW: CLEAR,
    }
    if held in without_parallels:
        return without_parallels[held]
    if turned:
        return FREE
    drilled = [seat for seat in seats if _drills(seat)]
    return BLIND if all(seat.size(TIP) for seat in drilled) else THROUGH


def _drills(seat: SeatPlan) -> bool:
    return any(step.name == "drill" for step in seat.operations)


def _zero(kind: str, seats: Sequence[SeatPlan]) -> str:
    if kind == "lathe":
        return f"{CENTERED}; {DEPTH}"
    both = any(TURN in [step.name for step in seat.operations] for seat in seats)
    start = EDGES if kind == "mill" else LAYOUT
    return f"{start}{MARK_FAR if both else ''}; {DEPTH}"
