"""The right triangle on one side of a cone, between two of its diameters.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
*Across* is half the difference of the two diameters, *down* the height between them, and the
angle between down and the slope is half the included angle:

    down = across / tan(A/2)

The three slips that learners make with it are the same division with one thing left whole: the
whole difference, the whole angle, or the whole cone down to its point.
"""

from dataclasses import dataclass
from math import radians, tan

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.seats.cones import half_tangent

SLIPS = ("whole difference", "whole angle", "to the point")
"""What is left whole in each slip."""

RIGHT_ANGLE = 90.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Triangle:
    """Across, half the angle and down, between two diameters of one cone.

    Parameters
    ----------
    wide, narrow : float
        The two diameters [mm]; the narrow one is 0 at the point of the cone.
    included_angle : float
        Whole angle across the cone [deg], 1 to 179.

    Raises
    ------
    SeatworkError
        If the sizes make no triangle; the sentence names the bad one.

    Examples
    --------
    >>> triangle = Triangle(wide=12.8778, narrow=6.7564, included_angle=82)
    >>> round(triangle.across / 25.4, 4), triangle.half_angle, round(triangle.down / 25.4, 3)
    (0.1205, 41.0, 0.139)
    """

    wide: float
    narrow: float
    included_angle: float

    def __post_init__(self) -> None:
        checks.length(self.wide, "wide diameter")
        checks.length_or_zero(self.narrow, "narrow diameter")
        checks.smaller(self.narrow, "narrow diameter", self.wide, "wide diameter")
        checks.included_angle(self.included_angle)

    def __str__(self) -> str:
        sizes = f"across {self.across:.2f} mm, down {self.down:.2f} mm"
        return f"{sizes}, half of {self.included_angle:g}°"

    @property
    def difference(self) -> float:
        """The wide diameter less the narrow one [mm]."""
        return self.wide - self.narrow

    @property
    def across(self) -> float:
        """Half the difference [mm]."""
        return self.difference / 2

    @property
    def half_angle(self) -> float:
        """Half the included angle [deg]."""
        return self.included_angle / 2

    @property
    def tangent(self) -> float:
        """Tangent of half the included angle [-]."""
        return half_tangent(self.included_angle)

    @property
    def down(self) -> float:
        """Height between the two diameters, across ÷ tangent [mm]."""
        return self.across / self.tangent

    @property
    def to_the_point(self) -> float:
        """Height from the wide diameter to the point of the cone [mm]."""
        return self.wide / 2 / self.tangent

    def slipped(self, slip: str) -> float | None:
        """Give what a slip finds for down.

        Parameters
        ----------
        slip : {"whole difference", "whole angle", "to the point"}
            What was left whole.

        Returns
        -------
        float or None
            The wrong height [mm]; None for the whole angle from 90° on, whose tangent has no end
            or is below zero.

        Raises
        ------
        SeatworkError
            If there is no such slip.

        Examples
        --------
        >>> triangle = Triangle(wide=12.8778, narrow=6.7564, included_angle=82)
        >>> [round(triangle.slipped(slip) / 25.4, 3) for slip in SLIPS]
        [0.277, 0.017, 0.292]
        """
        if slip == "whole difference":
            return self.difference / self.tangent
        if slip == "to the point":
            return self.to_the_point
        if slip != "whole angle":
            raise SeatworkError(slip, "no slip has that name", f"take one of {', '.join(SLIPS)}")
        if self.included_angle >= RIGHT_ANGLE:
            return None
        return self.across / tan(radians(self.included_angle))
