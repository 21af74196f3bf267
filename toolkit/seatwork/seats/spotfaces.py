"""Spotfaces: a flat ring, square to its hole, cut just deep enough to clean up.

Lengths are millimeters.
"""

from dataclasses import dataclass
from math import pi

from seatwork.seats import checks


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
