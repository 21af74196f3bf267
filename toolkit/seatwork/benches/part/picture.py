"""A planned note as a section: the hole, its seats on both faces, every size beside it."""

from seatwork import units
from seatwork.benches.part.found import SeatFound
from seatwork.drawings.strokes.hole_walls import CutHole, SeatCut
from seatwork.inspection.cuts import ACROSS, DEEP
from seatwork.plan import Plan, SeatPlan
from seatwork.plan.blind import FULL, TIP
from seatwork.plan.floors import AT_FLOOR, FROM_FLOOR
from seatwork.plan.rows import size_rows
from seatwork.seats import Counterbore, Countersink, Spotface
from seatwork.units import explain, show_angle, show_length

OPPOSITE = ("far", "back")
LEG = "leg along the face"


def picture_of(found: SeatFound, system: str) -> CutHole | None:
    """Return what is drawn of a note.

    Parameters
    ----------
    found : SeatFound
        The note with its plan.
    system : {"inch", "metric"}
        Units of the dimensions.

    Returns
    -------
    CutHole or None
        None where there is no one hole to draw: no plan, an edge, or several holes in one note.
    """
    plan = found.plan
    if plan is None or len(plan.callout.groups()) > 1:
        return None
    hole = _hole(plan)
    if hole is None:
        return None
    drawn = [seat for seat in plan.seats if seat.shape is not None]
    if drawn and drawn[0].kind == "center":
        drawn = drawn[:1]  # each end of the shaft has its own; they are alike
    seats = tuple(_cut(seat, system) for seat in drawn)
    blind, tip = (_first(plan, about) for about in (FULL, TIP))
    thick = units.length(found.seat.thickness) if found.seat.thickness else None
    count = max(seat.count for seat in plan.seats)
    return CutHole(
        heading=f"{found.seat.name}: {count} x" if count > 1 else found.seat.name,
        hole_diameter=hole,
        hole=f"hole ⌀ {show_length(hole, system)}",
        seats=seats,
        thickness=thick,
        thick=show_length(thick, system) if thick else "thickness not given",
        blind=blind,
        tip=tip,
        text=text_of(found, system),
    )


def text_of(found: SeatFound, system: str) -> str:
    """Return what came of a note, in a few sentences with every size."""
    note = " / ".join(found.seat.note.split("\n")) or "no note yet"
    if found.plan is None:
        why = explain(found.trouble, system) if found.trouble else "it holds nothing to cut."
        return f"{found.seat.name}. Print note: {note}. No plan: {why}"
    told = " ".join(
        f"{seat.place}: {'; '.join(str(row) for row in size_rows(seat.sizes, system))}."
        for seat in found.plan.seats
    )
    asked = "".join(f" Ask before cutting: {one}" for one in found.plan.questions)
    return f"{found.seat.name}. Print note: {note}. {told}{asked}"


def _hole(plan: Plan) -> float | None:
    """Return the hole that all seats lie on [mm]; None where there is none."""
    sizes = [size.value for seat in plan.seats if (size := seat.size("hole"))]
    sizes += [
        seat.shape.hole_diameter
        for seat in plan.seats
        if isinstance(seat.shape, Countersink | Counterbore | Spotface)
    ]
    return min(sizes, default=None)


def _first(plan: Plan, about: str) -> float | None:
    return next((size.value for one in plan.seats if (size := one.size(about))), None)


def _cut(seat: SeatPlan, system: str) -> SeatCut:
    assert seat.shape is not None
    across = next((size for name in (AT_FLOOR, *ACROSS) if (size := seat.size(name))), None)
    deep = next((size for name in DEEP if (size := seat.size(name))), None)
    own, leg = seat.size(FROM_FLOOR), seat.size(LEG)
    angle = seat.size("included angle")
    start = deep.value - own.value if deep and own else 0.0
    words = f"⌀ {show_length(across.value, system)}" if across else ""
    words = f"leg {show_length(leg.value, system)}" if leg and not across else words
    words += f" X {show_angle(angle.value)}" if words and angle else ""
    return SeatCut(
        shape=seat.shape,
        start=start,
        far=seat.side in OPPOSITE,
        across=words,
        deep=f"↧ {show_length(deep.value, system)}" if deep else "",
    )
