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
from seatwork.seats.cones import Countersink


@dataclass(frozen=True, slots=True, kw_only=True)
class InSheetMetal:
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
    >>> found = InSheetMetal(seat=seat, thickness=2)
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
    def share(self) -> float:
        """Share of the thickness that the cone takes [-]; 1 or more is a knife edge."""
        return self.seat.depth / self.thickness
