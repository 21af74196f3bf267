"""Chamfers and edge breaks: the small bevel along an edge or at the mouth of a hole.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
The leg is measured along the face, because that is what shows on the part: at a hole the
diameter grows by two legs. The depth is leg / tan(A/2), so both are equal only for a 90°
tool, whose sides stand at 45° each; ".03 X 45°" cut with an 82° tool is not that note.
"""

from dataclasses import dataclass
from math import radians, sin
from typing import Self

from seatwork import checks
from seatwork.seats.cones import Countersink, half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class Chamfer:
    """A chamfer, by its leg along the face and the included angle of the tool.

    Parameters
    ----------
    leg : float
        Width along the face [mm].
    included_angle : float
        Whole angle across the tool [deg], 1 to 179; 90 gives 45° on each side.

    Raises
    ------
    SeatworkError
        If the sizes cannot make a chamfer; the sentence names the bad one.

    Examples
    --------
    >>> Chamfer(leg=1).depth
    1.0
    """

    leg: float
    included_angle: float = 90.0

    def __str__(self) -> str:
        return f"chamfer {self.leg:.2f} mm along the face, {self.included_angle:g}° included"

    def __post_init__(self) -> None:
        checks.length(self.leg, "leg of the chamfer")
        checks.included_angle(self.included_angle)

    @classmethod
    def from_depth(cls, *, depth: float, included_angle: float = 90.0) -> Self:
        """Make the chamfer that a tool cuts when it goes `depth` below the edge [mm].

        Parameters
        ----------
        depth : float
            Depth of the cut below the edge [mm].
        included_angle : float
            Whole angle across the tool [deg].

        Returns
        -------
        Chamfer
            With leg T Z along the face.

        Raises
        ------
        SeatworkError
            If a size cannot make a chamfer.

        Examples
        --------
        The 82° tool run .03 in deep cuts a leg of .026 in only:

        >>> Chamfer.from_depth(depth=0.762, included_angle=82).leg / 25.4
        0.0261
        """
        checks.length(depth, "depth")
        leg = depth * half_tangent(included_angle)
        return cls(leg=leg, included_angle=included_angle)

    @property
    def depth(self) -> float:
        """Depth below the face [mm]."""
        return self.leg / half_tangent(self.included_angle)

    @property
    def slant_width(self) -> float:
        """Width of the bevel itself, measured along it [mm]."""
        return self.leg / sin(radians(self.included_angle / 2))

    def diameter_at(self, hole_diameter: float) -> float:
        """Give the diameter at the face of a chamfered hole, d + 2 legs [mm].

        Parameters
        ----------
        hole_diameter : float
            Diameter of the hole [mm].

        Returns
        -------
        float
            Diameter at the face [mm].

        Raises
        ------
        SeatworkError
            If the hole has no size.

        Examples
        --------
        >>> Chamfer(leg=0.508).diameter_at(6.7564) / 25.4
        0.306
        """
        checks.length(hole_diameter, "hole diameter")
        return hole_diameter + 2 * self.leg

    def at_hole(self, hole_diameter: float) -> Countersink:
        """Give the chamfer at a hole as a countersink.

        Parameters
        ----------
        hole_diameter : float
            Diameter of the hole [mm].

        Returns
        -------
        Countersink
            The same cone, by diameters.

        Raises
        ------
        SeatworkError
            If the hole has no size.
        """
        return Countersink(
            diameter=self.diameter_at(hole_diameter),
            hole_diameter=hole_diameter,
            included_angle=self.included_angle,
        )


def thread_chamfer(
    *,
    major_diameter: float,
    hole_diameter: float,
    over_major: float,
    included_angle: float = 90.0,
) -> Countersink:
    """Give the countersink cut at the mouth of a tapped hole, before the tap.

    Parameters
    ----------
    major_diameter : float
        Major diameter of the thread [mm].
    hole_diameter : float
        Diameter of the tap drill [mm].
    over_major : float
        How much wider than the major diameter the mouth is made [mm].
    included_angle : float
        Whole angle across the tool [deg].

    Returns
    -------
    Countersink
        The cone from the mouth to the tap-drill hole.

    Raises
    ------
    SeatworkError
        If the sizes make no chamfer.

    Examples
    --------
    3/8 thread on a 5/16 hole, .031 in over: .0468 in deep.

    >>> seat = thread_chamfer(major_diameter=9.525, hole_diameter=7.9375, over_major=0.7874)
    >>> seat.depth / 25.4
    0.0468
    """
    checks.length(major_diameter, "major diameter")
    checks.length_or_zero(over_major, "width over the major diameter")
    return Countersink(
        diameter=major_diameter + over_major,
        hole_diameter=hole_diameter,
        included_angle=included_angle,
    )
