"""How a screw stands in any seat that can be cut, and what is wrong with it.

Lengths are millimeters, angles are included angles in degrees; the face is at height 0.

Notes
-----
A seat is cut as its numbers say, right or wrong. Then the screw is let down on its axis until
something carries it: the cone, a line of it, the floor, or the face where the head does not go
in. Where nothing carries it drops through; where its shank is thicker than the hole it does not
enter. A cone deeper than the part is thick is what is left of it: a cone through the part, whose
hole is the opening at the far side.
"""

from functools import singledispatch
from typing import Any

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.seats.chamfers import Chamfer
from seatwork.seats.cones import Countersink
from seatwork.seats.counterbores import Counterbore
from seatwork.seats.faults import Allowed, CapScrew, Fault, Standing
from seatwork.seats.heads import FLUSH, NECK_ROUNDING, Head, fit, state_of
from seatwork.seats.spotfaces import Spotface


def stands(
    screw: Head | CapScrew,
    seat: Countersink | Counterbore | Spotface | Chamfer,
    thickness: float,
    *,
    depth: float = 0.0,
    clean: float = 0.0,
    hole_diameter: float = 0.0,
    allowed: Allowed | None = None,
) -> Standing:
    """Find how a screw stands in a seat that was cut, right or wrong.

    Parameters
    ----------
    screw : Head or CapScrew
        A flat head for a countersink; a screw with a flat underside for every other seat.
    seat : Countersink, Counterbore, Spotface or Chamfer
        As it was cut.
    thickness : float
        Thickness of the part [mm]; under a spotface, of the low side before the cut.
    depth, clean : float
        Of a spotface: how far below first touch it was cut, and what cleans up all round [mm].
    hole_diameter : float
        Of the hole that a chamfer is cut on [mm].
    allowed : Allowed, optional
        What the shop takes for right.

    Returns
    -------
    Standing
        Where the head comes to rest, and all that is wrong.

    Raises
    ------
    SeatworkError
        If a size cannot be cut, or the screw's head is not made for such a seat.

    Examples
    --------
    A seat cut for its head, and the same in a sheet that it goes through:

    >>> head = Head(sharp_diameter=12, included_angle=90)
    >>> seat = Countersink(diameter=12, hole_diameter=6.6, included_angle=90)
    >>> stands(head, seat, 10).names, stands(head, seat, 2).names
    ((), ('knife edge',))
    """
    checks.length(thickness, "thickness of the part")
    checks.length_or_zero(depth, "depth of the spotface")
    checks.length_or_zero(clean, "depth that cleans up")
    flat, limits = isinstance(seat, Countersink), allowed or Allowed()
    if flat != isinstance(screw, Head):
        fault = "a countersink takes a flat head, and every other seat a flat underside"
        raise SeatworkError(type(screw).__name__, fault, "take the screw that the seat is for")
    if isinstance(seat, Spotface):
        return _on_spotface(seat, screw, thickness, (depth, clean), limits)
    if isinstance(seat, Chamfer):
        return _on_chamfer(seat.at_hole(hole_diameter), screw, thickness)
    return _in(seat, screw, thickness, limits)


@singledispatch
def _in(seat: Any, screw: Any, thickness: float, allowed: Allowed) -> Standing:
    raise SeatworkError(type(seat).__name__, "that is no seat for a screw", "give one that is")


@_in.register
def _in_countersink(seat: Countersink, head: Head, thickness: float, allowed: Allowed) -> Standing:
    cut, left = through(seat, thickness), thickness - seat.depth
    metal = _under_a_cone(cut, left, thickness, allowed)
    neck = head.neck_diameter
    if not head.edge > cut.hole_diameter:
        fault = Fault(name="drops through", amount=cut.hole_diameter - head.edge)
        return Standing(amount=None, bears_at=-thickness, left=left, faults=(fault, *metal))
    if neck is not None and neck > cut.hole_diameter + NECK_ROUNDING:
        fault = Fault(name="does not enter", amount=neck - cut.hole_diameter)
        return Standing(amount=None, bears_at=-cut.depth, left=left, faults=(fault, *metal))
    found = fit(head, cut)
    line = Fault(name="on a line", amount=found.contact_diameter)
    faults = (
        *_height(found.amount, allowed.below),
        *metal,
        *((line,) if found.contact != "cone" else ()),
    )
    return Standing(
        amount=found.amount, bears_at=-found.contact_depth, left=left, faults=faults, fit=found
    )


@_in.register
def _in_counterbore(
    seat: Counterbore, screw: CapScrew, thickness: float, allowed: Allowed
) -> Standing:
    left, wider = thickness - seat.depth, screw.head_diameter - seat.diameter
    metal: tuple[Fault, ...] = ()
    if left <= 0:
        metal = (Fault(name="broken through", amount=-left),)
    elif left < allowed.floor:
        metal = (Fault(name="thin", amount=left),)
    hole = seat.hole_diameter if left > 0 else seat.diameter
    stopped = _stopped(screw, hole)
    if stopped:
        carried = -seat.depth if stopped.name == "does not enter" else -thickness
        return Standing(amount=None, bears_at=carried, left=left, faults=(stopped, *metal))
    if wider > 0:
        faults = Fault(name="head too wide", amount=wider), *_height(screw.head_height, 0.0)
        return Standing(amount=screw.head_height, bears_at=0.0, left=left, faults=(*faults, *metal))
    amount, loose = screw.head_height - seat.depth, seat.diameter / screw.head_diameter
    rattles = (Fault(name="rattling", amount=-wider / 2),) if loose > allowed.loose else ()
    faults = (*_height(amount, allowed.sunk), *rattles, *metal)
    return Standing(amount=amount, bears_at=-seat.depth, left=left, faults=faults)


def _on_spotface(
    seat: Spotface, screw: Any, thickness: float, cut: tuple[float, float], allowed: Allowed
) -> Standing:
    """Let the head down on a spotface; it stands proud, which is right."""
    depth, clean = cut
    left = thickness - max(depth - clean, 0.0)
    stopped = _stopped(screw, seat.hole_diameter) if left > 0 else None
    if left <= 0:
        stopped = Fault(name="broken through", amount=-left)
    if stopped:
        return Standing(amount=None, bears_at=-depth, left=left, faults=(stopped,))
    faults: list[Fault] = []
    if clean > depth + FLUSH:
        faults.append(Fault(name="not clean", amount=clean - depth))
    if depth > clean + allowed.sunk:
        faults.append(Fault(name="too deep", amount=depth - clean))
    over, bears_at = (screw.head_diameter - seat.diameter) / 2, -depth
    if over > 0:  # it lies on the high side of the rough pad beyond the rim
        faults.append(Fault(name="overhangs", amount=over))
        bears_at = clean / seat.diameter * over
    amount = screw.head_height + bears_at
    return Standing(amount=amount, bears_at=bears_at, left=left, faults=tuple(faults))


def _on_chamfer(seat: Countersink, screw: Any, thickness: float) -> Standing:
    """Let the head down over a chamfered hole; it lies on the ring round the chamfer."""
    cut, left = through(seat, thickness), thickness - seat.depth
    metal = (Fault(name="knife edge", amount=cut.hole_diameter),) if left <= 0 else ()
    stopped = _stopped(screw, cut.hole_diameter)
    if stopped:
        return Standing(amount=None, bears_at=-cut.depth, left=left, faults=(stopped, *metal))
    wider = seat.diameter - screw.head_diameter
    sunk = max(wider, 0.0) / 2 / seat.tangent
    faults = (Fault(name="no bearing", amount=wider),) if wider >= 0 else ()
    amount = screw.head_height - sunk
    return Standing(amount=amount, bears_at=-sunk, left=left, faults=(*faults, *metal))


def through(seat: Countersink, thickness: float) -> Countersink:
    """Return a cone as the part leaves it: deeper than the part, its hole is the far opening.

    Parameters
    ----------
    seat : Countersink
        As cut.
    thickness : float
        Thickness of the part [mm].

    Examples
    --------
    >>> through(Countersink(diameter=12, hole_diameter=6.6, included_angle=90), 2).hole_diameter
    8.0
    """
    if seat.depth <= thickness:
        return seat
    return Countersink(
        diameter=seat.diameter,
        hole_diameter=seat.diameter_at(thickness),
        included_angle=seat.included_angle,
    )


def _under_a_cone(
    cut: Countersink, left: float, thickness: float, allowed: Allowed
) -> tuple[Fault, ...]:
    if left <= 0:
        return (Fault(name="knife edge", amount=cut.hole_diameter),)
    if cut.depth > allowed.share * thickness:
        return (Fault(name="thin", amount=left),)
    return ()


def _height(amount: float, below: float) -> tuple[Fault, ...]:
    """Find fault with where the top comes to lie [mm]."""
    if state_of(amount) == "proud":
        return (Fault(name="proud", amount=amount),)
    return (Fault(name="below", amount=-amount),) if -amount > below + FLUSH else ()


def _stopped(screw: CapScrew, hole: float) -> Fault | None:
    """Find out whether a screw neither enters its hole nor is carried by it [mm]."""
    if screw.diameter > hole:
        return Fault(name="does not enter", amount=screw.diameter - hole)
    if screw.head_diameter <= hole:
        return Fault(name="drops through", amount=hole - screw.head_diameter)
    return None
