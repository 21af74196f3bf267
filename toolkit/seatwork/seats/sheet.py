"""Countersinks in sheet: how deep they may go, and what a knife edge does to the hole.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
A cone deeper than the sheet is thick has no hole below it any more: it comes out at the far
side with the diameter D - 2 T t, and the edge there is sharp. The hole has grown, and the
head bears on a rim without metal behind it. Turned round, with at most the share k of the
thickness t for the cone, the largest seat is D = d + 2 T k t.
"""

from dataclasses import dataclass

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.seats.cones import Countersink, half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class InSheet:
    """What a countersink leaves of a sheet.

    Parameters
    ----------
    seat : Countersink
        The seat as asked for.
    thickness : float
        Thickness of the sheet [mm].

    Raises
    ------
    SeatworkError
        If the sheet has no thickness.

    Examples
    --------
    >>> seat = Countersink(diameter=12, hole_diameter=6.6, included_angle=90)
    >>> found = InSheet(seat=seat, thickness=2)
    >>> found.knife_edge, found.far_diameter, found.land
    (True, 8.0, 0.0)
    """

    seat: Countersink
    thickness: float

    def __post_init__(self) -> None:
        checks.length(self.thickness, "thickness of the sheet")

    @property
    def knife_edge(self) -> bool:
        """Whether the cone reaches the far side, leaving no straight hole."""
        return not self.seat.depth < self.thickness

    @property
    def land(self) -> float:
        """Straight hole left below the cone [mm]."""
        return max(self.thickness - self.seat.depth, 0.0)

    @property
    def far_diameter(self) -> float:
        """Diameter of the opening at the far side [mm]."""
        return self.seat.diameter_at(self.thickness)

    @property
    def hole_growth(self) -> float:
        """How much wider than the drilled hole the far side has become [mm]."""
        return self.far_diameter - self.seat.hole_diameter

    @property
    def share(self) -> float:
        """Share of the thickness that the cone takes [-]; 1 or more is a knife edge."""
        return self.seat.depth / self.thickness


def largest_diameter(
    *, thickness: float, hole_diameter: float, included_angle: float, share: float
) -> float:
    """Find the largest seat a sheet may carry.

    Parameters
    ----------
    thickness : float
        Thickness of the sheet [mm].
    hole_diameter : float
        Diameter of the hole [mm].
    included_angle : float
        Whole angle across the cone [deg].
    share : float
        Greatest share of the thickness for the cone [-], above 0, at most 1.

    Returns
    -------
    float
        Diameter at the face, d + 2 T k t [mm].

    Raises
    ------
    SeatworkError
        If a size or the share is out of range.

    Examples
    --------
    >>> largest_diameter(thickness=3, hole_diameter=5, included_angle=90, share=2 / 3)
    9.0
    """
    checks.length(thickness, "thickness of the sheet")
    checks.length(hole_diameter, "hole diameter")
    if not (checks.is_number(share) and 0 < share <= 1):
        raise SeatworkError(
            share,
            "the share of the sheet given to the cone lies above 0, up to 1",
            "two thirds is a common limit",
        )
    return hole_diameter + 2 * half_tangent(included_angle) * share * thickness
