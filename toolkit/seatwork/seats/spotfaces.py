"""Spotfaces: a flat ring, square to its hole, cut just deep enough to clean up.

Lengths are millimeters, angles degrees.

Notes
-----
On a plane tilted by phi the cutter, of diameter D, touches the high side first; the low side
lies D tan(phi) lower, and that is the depth at which the ring is whole, half of it below the
face at the hole's axis. On a round face of radius p the cutter touches the crown first and
the farthest place lies one sagitta lower, p - sqrt(p² - D²/4), here written as
(D²/4)/(p + sqrt(...)) so that it stays exact on large faces. Rough pads: ``castings``.
"""

from dataclasses import dataclass
from math import pi, radians, sqrt, tan

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Angle

STEEPEST = 80.0
"""Greatest tilt taken [deg]; no cutter stands on a steeper face."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Spotface:
    """A spotface round a hole; its depth follows from the face it is cut on.

    Parameters
    ----------
    diameter : float
        Diameter of the spotface [mm].
    hole_diameter : float
        Diameter of the hole it is centered on [mm].

    Raises
    ------
    SeatworkError
        If the sizes cannot make a spotface; the sentence names the bad one.

    Examples
    --------
    >>> Spotface(diameter=31.75, hole_diameter=13.5).ring_width
    9.125
    """

    diameter: float
    hole_diameter: float

    def __str__(self) -> str:
        return f"spotface {self.diameter:.2f} mm on a {self.hole_diameter:.2f} mm hole"

    def __post_init__(self) -> None:
        checks.length(self.diameter, "spotface diameter")
        checks.length(self.hole_diameter, "hole diameter")
        checks.smaller(self.hole_diameter, "hole diameter", self.diameter, "spotface diameter")

    @property
    def ring_width(self) -> float:
        """Width of the flat from hole to edge [mm]."""
        return (self.diameter - self.hole_diameter) / 2

    @property
    def bearing_area(self) -> float:
        """Area of the flat round the hole [mm²]."""
        return pi * (self.diameter - self.hole_diameter) * (self.diameter + self.hole_diameter) / 4

    def clean_up_on_tilt(self, tilt: float) -> float:
        """Give the depth below first touch that cleans up on a tilted plane.

        Parameters
        ----------
        tilt : float
            Angle of the face from square to the hole [deg], 0 to 80.

        Returns
        -------
        float
            D tan(tilt), from the high side [mm]; half of it is the depth at the axis.

        Raises
        ------
        SeatworkError
            If the tilt is out of range.

        Examples
        --------
        >>> Spotface(diameter=31.75, hole_diameter=13.5).clean_up_on_tilt(3) / 25.4
        0.0655
        """
        if not (checks.is_number(tilt) and 0 <= tilt <= STEEPEST):
            raise SeatworkError(
                checks.shown(tilt, Angle),
                "the tilt of a face lies between 0 and {steepest}",
                "measure it from square to the hole",
                steepest=Angle(STEEPEST),
            )
        return self.diameter * tan(radians(tilt))

    def clean_up_on_round(self, face_diameter: float) -> float:
        """Give the depth below first touch that cleans up on a shaft or round boss.

        Parameters
        ----------
        face_diameter : float
            Diameter of the round face [mm], at least that of the spotface.

        Returns
        -------
        float
            Sagitta of the cutter's radius, from the crown [mm].

        Raises
        ------
        SeatworkError
            If the cutter is wider than the face.

        Examples
        --------
        >>> Spotface(diameter=12, hole_diameter=6).clean_up_on_round(20)
        2.0
        """
        checks.length(face_diameter, "diameter of the round face")
        checks.not_larger(self.diameter, "spotface", face_diameter, "round face")
        face, square = face_diameter / 2, self.diameter**2 / 4
        return square / (face + sqrt(face * face - square))
