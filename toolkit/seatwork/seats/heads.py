"""Flat heads, and how they sit in a countersink.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
Lay the head over the seat, both round the same axis, and look at one radius r. Measured down
from the top of the head, the head's cone there lies h(r) = (Dh/2 - r)/tan p deep; measured
down from the face, the seat lies s(r): (D/2 - r)/tan q between hole and rim, zero outside.
The head comes down until somewhere its cone meets the seat, so its top stands above the face
by

    S = greatest of h(r) - s(r),   d/2 <= r <= De/2.

Both are straight lines between the hole edge, the seat's rim and the head's own edge, so the
greatest value is at one of these three, and no search is needed. A steeper head (p < q) is
caught by the hole edge, a flatter one by the rim; with equal angles the whole cone carries.
The head's edge De matters: above it the metal is missing, so nothing there can touch.
"""

from dataclasses import dataclass
from math import radians, sin
from typing import Literal

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.seats.cones import Countersink, half_tangent

FLUSH = 0.005
"""Amounts up to this count as flush [mm]: half of 0.01 mm, the last place a reader is shown."""

BEDDED = 0.001
"""Gap between two cones that still carries [mm]: about the roughness of a turned head."""

NECK_ROUNDING = 0.05
"""How far a neck may exceed its hole before it is refused [mm]: table heights are printed to
.001 in, and that rounding alone moves the neck diameter by about 0.05 mm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Head:
    """A flat (countersunk) screw head.

    Parameters
    ----------
    sharp_diameter : float
        Theoretical sharp diameter: where the cone would meet the flat top [mm].
    included_angle : float
        Whole angle across the cone [deg], 1 to 179.
    edge_diameter : float, optional
        Diameter of the edge the screw really has [mm]; None for a theoretical sharp edge.
    height : float, optional
        From the flat top down to where the cone ends at the neck [mm]; None if not known.

    Raises
    ------
    SeatworkError
        If the sizes make no head; the sentence names the bad one.

    Examples
    --------
    >>> Head(sharp_diameter=13.44, included_angle=90, edge_diameter=11.34).rim_depth
    1.05
    """

    sharp_diameter: float
    included_angle: float
    edge_diameter: float | None = None
    height: float | None = None

    def __str__(self) -> str:
        return f"{self.included_angle:g}° head, {self.sharp_diameter:.2f} mm sharp"

    def __post_init__(self) -> None:
        checks.length(self.sharp_diameter, "theoretical sharp diameter")
        checks.included_angle(self.included_angle)
        if self.edge_diameter is not None:
            checks.length(self.edge_diameter, "edge diameter")
            checks.not_larger(
                self.edge_diameter,
                "edge diameter",
                self.sharp_diameter,
                "theoretical sharp diameter",
            )
        if self.height is not None:
            checks.length(self.height, "head height")
            self._refuse_a_height_without_cone(self.height)

    def _refuse_a_height_without_cone(self, height: float) -> None:
        if not self.rim_depth < height < self.apex_depth:
            raise SeatworkError(
                Length(height),
                "a head of this size and angle has a height between {rim}, its edge,"
                " and {apex}, its point",
                "look the height up again, or leave it out",
                rim=Length(self.rim_depth),
                apex=Length(self.apex_depth),
            )

    @property
    def tangent(self) -> float:
        """Radius gained per unit of height, tan of half the included angle [-]."""
        return half_tangent(self.included_angle)

    @property
    def edge(self) -> float:
        """Diameter of the edge: the real one where known, else the theoretical sharp one [mm]."""
        return self.sharp_diameter if self.edge_diameter is None else self.edge_diameter

    @property
    def rim_depth(self) -> float:
        """Depth of the edge below the flat top, zero for a sharp edge [mm]."""
        return (self.sharp_diameter - self.edge) / 2 / self.tangent

    @property
    def apex_depth(self) -> float:
        """Depth of the cone's point below the flat top [mm]."""
        return self.sharp_diameter / 2 / self.tangent

    @property
    def neck_diameter(self) -> float | None:
        """Diameter where the cone ends, None where the height is not known [mm]."""
        if self.height is None:
            return None
        return self.sharp_diameter - 2 * self.height * self.tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class Fit:
    """How a head sits in a seat.

    Parameters
    ----------
    amount : float
        Height of the head's flat top above the face [mm]; minus below it.
    state : str
        "proud", "flush" or "below".
    contact : str
        Where the head is carried: "cone" (all of the land), "rim" or "hole edge" (a line).
    contact_diameter : float
        Diameter of the contact line, of the upper end of the land for "cone" [mm].
    contact_depth : float
        Depth of that circle below the face [mm].
    inner_diameter : float
        Lower end of the land that carries [mm]; the contact diameter itself for a line.
    contact_width : float
        Width of the land that carries, along the cone [mm]; zero for a line.
    """

    amount: float
    state: Literal["proud", "flush", "below"]
    contact: Literal["cone", "rim", "hole edge"]
    contact_diameter: float
    contact_depth: float
    inner_diameter: float
    contact_width: float

    def __repr__(self) -> str:
        return f"<Fit {abs(self.amount):.3f} mm {self.state}, on the {self.contact}>"


def state_of(amount: float) -> Literal["proud", "flush", "below"]:
    """Name an amount above the face [mm]: "proud", "flush" (within FLUSH) or "below"."""
    if abs(amount) <= FLUSH:
        return "flush"
    return "proud" if amount > 0 else "below"


def fit(head: Head, seat: Countersink) -> Fit:
    """Find how a head sits in a countersink.

    Parameters
    ----------
    head : Head
        The screw's head.
    seat : Countersink
        The seat, on the same axis.

    Returns
    -------
    Fit
        Amount above the face, state, and where the head is carried.

    Raises
    ------
    SeatworkError
        If the head drops through the hole, or its neck does not enter it.

    Notes
    -----
    Three circles can carry: the hole edge, the seat's rim and the head's edge; see the
    derivation at the top of this module.

    Examples
    --------
    An M6 socket head of least edge, 90°, in a seat cut with an 82° tool:

    >>> head = Head(sharp_diameter=13.44, included_angle=90, edge_diameter=11.34)
    >>> seat = Countersink(diameter=13.44, hole_diameter=6.6, included_angle=82)
    >>> found = fit(head, seat)
    >>> found.amount, found.state, found.contact
    (-0.158, 'below', 'rim')
    """
    _refuse_a_head_that_cannot_sit(head, seat)
    inner, outer = seat.hole_diameter, min(head.edge, seat.diameter)
    on_hole_edge, on_rim = _rise(head, seat, inner), _rise(head, seat, outer)
    amount = max(on_hole_edge, on_rim)
    contact: Literal["cone", "rim", "hole edge"] = "rim" if on_rim > on_hole_edge else "hole edge"
    if abs(on_rim - on_hole_edge) <= BEDDED:
        contact = "cone"
    upper = inner if contact == "hole edge" else outer
    lower = outer if contact == "rim" else inner
    return Fit(
        amount=amount,
        state=state_of(amount),
        contact=contact,
        contact_diameter=upper,
        contact_depth=(seat.diameter - upper) / 2 / seat.tangent,
        inner_diameter=lower,
        contact_width=(upper - lower) / 2 / sin(radians(seat.included_angle / 2)),
    )


def _rise(head: Head, seat: Countersink, diameter: float) -> float:
    """Height of the top above the face if the cones meet at `diameter` [mm]."""
    head_depth = (head.sharp_diameter - diameter) / 2 / head.tangent
    seat_depth = (seat.diameter - diameter) / 2 / seat.tangent
    return head_depth - seat_depth


def _refuse_a_head_that_cannot_sit(head: Head, seat: Countersink) -> None:
    if not head.edge > seat.hole_diameter:
        raise SeatworkError(
            Length(head.edge),
            "a head no wider than its hole, {hole}, drops through",
            "take a larger screw or a smaller hole",
            hole=Length(seat.hole_diameter),
        )
    neck = head.neck_diameter
    if neck is not None and not neck <= seat.hole_diameter + NECK_ROUNDING:
        raise SeatworkError(
            Length(neck),
            "the head's neck does not enter the hole, {hole}",
            "take a larger hole; for a tapped hole give the thread's major diameter",
            hole=Length(seat.hole_diameter),
        )
