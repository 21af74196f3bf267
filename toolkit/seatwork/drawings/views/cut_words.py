"""What is said of a seat as it was cut: short lines under it, and its text twin."""

from typing import Any

from seatwork.drawings.parts.words import CONTACT_LABEL, an
from seatwork.drawings.views.cut_shapes import CutSeat
from seatwork.quantities import Length
from seatwork.seats import Chamfer, Counterbore, Countersink, Head, Spotface
from seatwork.seats.faults import Standing
from seatwork.units import show_angle, show_both, show_length

KINDS = {
    Countersink: "Countersink",
    Counterbore: "Counterbore",
    Spotface: "Spotface",
    Chamfer: "Chamfer",
}


def lines_under(part: CutSeat, found: Standing, system: str, count: int) -> list[str]:
    """Say name, size and what is wrong in `count` short lines, the last ones blank."""
    faults = [fault.label(_shown(system)) for fault in found.faults]
    lines = [
        part.name or KINDS[type(part.seat)],
        size(part, system),
        *(faults or [_well(found, system)]),
    ]
    if len(lines) > count:
        lines = [*lines[: count - 1], f"and {len(lines) - count + 1} more faults"]
    return [*lines, *[""] * (count - len(lines))]


def size(part: CutSeat, system: str) -> str:
    """Say how wide a seat is, and its angle or its depth, in a short line."""
    if isinstance(part.seat, Countersink | Chamfer):
        angle = show_angle(part.seat.included_angle)
        return f"⌀ {show_both(part.across, system)}, {angle}"
    deep = part.depth if isinstance(part.seat, Spotface) else part.seat.depth
    return f"⌀ {show_length(part.across, system)}, {show_length(deep, system)} deep"


def told(part: CutSeat, found: Standing, system: str) -> str:
    """Tell a seat, its screw and how it stands, with all the numbers."""
    name = f"{part.name[0].upper()}{part.name[1:]}" if part.name else "As cut"
    thick = show_both(part.thickness, system)
    return (
        f"{name}: {_seat(part, system)} in a part {thick} thick, with {_screw(part, system)}. "
        + (found.explain(_shown(system)) if found.faults else f"It is {_well(found, system)}.")
    )


def _well(found: Standing, system: str) -> str:
    """Say how the head lies where nothing is wrong."""
    if found.state == "below":
        return f"{show_both(-(found.amount or 0.0), system)} below, as allowed"
    if found.fit is None:
        return "square on its seat"
    return f"{found.state}, on {CONTACT_LABEL[found.fit.contact][1]}"


def _seat(part: CutSeat, system: str) -> str:
    """Tell the seat's sizes."""
    seat: Any = part.seat
    hole = show_both(
        part.hole_diameter if isinstance(seat, Chamfer) else seat.hole_diameter, system
    )
    across = show_both(part.across, system)
    if isinstance(seat, Counterbore):
        deep = show_both(seat.depth, system)
        return f"a counterbore {across} across, {deep} deep, on a hole of {hole}"
    if isinstance(seat, Spotface):
        deep, clean = show_both(part.depth, system), show_both(part.clean, system)
        return (
            f"a spotface {across} across, {deep} below first touch where {clean} cleans up, on a "
            f"hole of {hole}"
        )
    kind, deep = KINDS[type(seat)].lower(), show_both(seat.depth, system)
    angle = show_angle(seat.included_angle)
    return f"{an(angle)} {kind}, {across} at the face, {deep} deep, on a hole of {hole}"


def _screw(part: CutSeat, system: str) -> str:
    screw = part.screw
    if isinstance(screw, Head):
        sharp = show_both(screw.sharp_diameter, system)
        return f"{an(show_angle(screw.included_angle))} head of {sharp} theoretical sharp diameter"
    head, high, shank = (
        show_both(value, system)
        for value in (screw.head_diameter, screw.head_height, screw.diameter)
    )
    return f"a head {head} across and {high} high on a shank of {shank}"


def _shown(system: str) -> Any:
    """Return what writes a length in both systems."""
    return lambda value: (
        show_both(float(value), system) if isinstance(value, Length) else str(value)
    )
