"""What comes of a learner's own number: a seat beside the right one, or a sentence."""

from collections.abc import Callable
from dataclasses import dataclass
from math import inf
from typing import Any

from seatwork.drawings.views.beside_right import Bars, Beside
from seatwork.drawings.views.cut_shapes import CutSeat
from seatwork.errors import SeatworkError
from seatwork.quantities import INCH
from seatwork.seats import Countersink, Head
from seatwork.units import show_angle, show_length

WIDEST = 2.2
"""How many times as wide as the right seat one's own may be to be drawn [-]."""

THROUGH = 1.5
"""How many times as deep as the plate a cut may be to be drawn [-]."""

PLATES = {
    "inch": (1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1, 1.25, 1.5, 2, 3, 4, 6, 8),
    "metric": (3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 40, 50, 80, 100, 200),
}
"""Thicknesses of plate that a shop has, in the unit of the system."""

ROOM = 1.6
"""Plate over depth of the right seat, where the question names no plate [-]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnCut:
    """What comes of a learner's own number.

    Parameters
    ----------
    own : CutSeat or None
        The seat it cuts, with its screw; None where none is drawn.
    right : CutSeat or None
        The seat as asked for; None where it is not shown.
    said : str
        What the number means at the machine, or why it cannot be cut.
    pair : Beside or None
        What is drawn where no seat is: an amount, a head, a reading, beside the right one.
    """

    own: CutSeat | None = None
    right: CutSeat | None = None
    said: str = ""
    pair: Beside | None = None


Cutter = Callable[[Any, int, float], OwnCut]
"""Gives what a value of one part of a question cuts: question, number of the part, value."""


def thick(depth: float, system: str) -> float:
    """Return a plate with room for a seat so deep [mm]."""
    unit = INCH if system == "inch" else 1.0
    fitting = (size * unit for size in PLATES[system] if size * unit >= ROOM * depth)
    return next(fitting, ROOM * depth)


def beside(
    right: CutSeat, make: Callable[[], CutSeat | str], said: str, *, shown: bool = True
) -> OwnCut:
    """Return one's own seat beside the right one, or why it cannot be cut.

    Parameters
    ----------
    right : CutSeat
        As asked for.
    make : callable
        Makes one's own, or says in a sentence why not.
    said : str
        What the number means at the machine.
    shown : bool
        Whether the right seat may be shown.
    """
    try:
        own = make()
        if isinstance(own, str):
            return OwnCut(said=own)
        own.standing()
    except SeatworkError:
        return OwnCut(said="That cannot be cut: no tool makes a seat of such a size.")
    if own.across > WIDEST * right.across:
        wide = f"{own.across / right.across:.0f} times as wide as the screw wants it"
        return OwnCut(said=f"{said} It would be {wide}: it is not drawn.")
    return OwnCut(own=own, right=right if shown else None, said=said)


def cone_by_depth(
    right: Countersink, head: Head, depth: float, system: str, **plate: Any
) -> OwnCut:
    """Cut a countersink so deep, from the face to the edge of the hole [mm], for its head.

    Parameters
    ----------
    right : Countersink
        As asked for.
    head : Head
        What is let down into it.
    depth : float
        One's own depth [mm].
    system : {"inch", "metric"}
        What it is said in.
    **plate : object
        ``thickness`` of the plate, and ``allowed``.
    """
    thickness = plate.pop("thickness", None) or thick(right.depth, system)
    asked = CutSeat(screw=head, seat=right, thickness=thickness, **plate)

    def own() -> CutSeat | str:
        if not depth > 0:
            return "With no depth nothing is cut."
        if depth > THROUGH * thickness:
            deep, limit = (show_length(size, system) for size in (depth, thickness))
            return f"Yours is {deep} deep. The plate is {limit} thick: that cannot be cut."
        seat = Countersink.from_depth(
            depth=depth, hole_diameter=right.hole_diameter, included_angle=right.included_angle
        )
        return CutSeat(screw=head, seat=seat, thickness=thickness, **plate)

    deeper = depth > thickness
    said = f"{show_length(depth, system)} deep"
    if deeper:
        said += f", in a plate {show_length(thickness, system)} thick: the tip comes through."
        return beside(asked, own, f"Yours is {said}")
    wide = right.hole_diameter + 2 * right.tangent * max(depth, 0.0)
    return beside(asked, own, f"Yours is {said}, so ⌀{show_length(wide, system)} at the face.")


def cone_by_width(
    right: Countersink, head: Head, diameter: float, system: str, **plate: Any
) -> OwnCut:
    """Cut a countersink so wide at the face [mm], for its head; see `cone_by_depth`."""
    thickness = plate.pop("thickness", None) or thick(right.depth, system)
    asked = CutSeat(screw=head, seat=right, thickness=thickness, **plate)

    def own() -> CutSeat | str:
        if diameter <= right.hole_diameter:
            hole = show_length(right.hole_diameter, system)
            return f"No seat: it is no wider than the hole of {hole}, so nothing is cut."
        seat = Countersink(
            diameter=diameter,
            hole_diameter=right.hole_diameter,
            included_angle=right.included_angle,
        )
        return CutSeat(screw=head, seat=seat, thickness=thickness, **plate)

    return beside(asked, own, f"Yours is ⌀{show_length(diameter, system)} at the face.")


def cone_by_angle(
    right: Countersink, head: Head, angle: float, system: str, **plate: Any
) -> OwnCut:
    """Cut a countersink of another included angle [deg], as wide as the right one."""
    thickness = plate.pop("thickness", None) or thick(right.depth, system)
    asked = CutSeat(screw=head, seat=right, thickness=thickness, **plate)
    said = f"Yours is a cone of {show_angle(angle)} included."

    def own() -> CutSeat | str:
        if not 5 <= angle < 175:
            return f"No tool cuts a cone of {show_angle(angle)}."
        seat = Countersink(
            diameter=right.diameter, hole_diameter=right.hole_diameter, included_angle=angle
        )
        return CutSeat(screw=head, seat=seat, thickness=thickness, **plate)

    return beside(asked, own, said)


def held(part: CutSeat, amount: float, true: float, said: str) -> OwnCut:
    """Hold the head at the height that a learner says, and say what that would need [mm].

    Parameters
    ----------
    part : CutSeat
        Seat and head as they are.
    amount : float
        Height of the head's top above the face as the learner has it, minus below it [mm].
    true : float
        Where it comes to rest [mm].
    said : str
        What the number means.
    """
    if abs(amount) > max(part.thickness, part.head_across):
        return OwnCut(said=f"{said} That is farther than the whole screw: it is not drawn.")
    state = "in the air" if amount > true else "in the metal"
    own = CutSeat(
        screw=part.screw,
        seat=part.seat,
        thickness=part.thickness,
        held=(amount, state),
        allowed=part.allowed,
    )
    return OwnCut(own=own, said=said)


def words(said: str) -> OwnCut:
    """Say what a number means where no seat can be drawn."""
    return OwnCut(said=said)


def drawn(pair: Beside, said: str) -> OwnCut:
    """Draw what a number makes beside what the right one makes, where it can be seen."""
    return OwnCut(said=said, pair=pair if pair.fits() else None)


def bars(own: float, right: float, said: str) -> OwnCut:
    """Draw an amount as a bar beside the right one; both in one unit, not below zero."""
    return drawn(Bars(own=own, right=right), said)


def is_finite(value: float) -> bool:
    """Tell whether a value is a number that can be cut at all."""
    return -inf < value < inf
