"""Counterbores: the flat-bottomed bore that takes a screw head, washer or wrench socket.

Lengths are millimeters.
"""

from dataclasses import dataclass
from math import pi

from seatwork.seats import checks


@dataclass(frozen=True, slots=True, kw_only=True)
class Counterbore:
    """A counterbore square to its hole.

    Parameters
    ----------
    diameter : float
        Diameter of the counterbore [mm].
    depth : float
        Depth from the face to its floor [mm].
    hole_diameter : float
        Diameter of the hole it is centered on [mm].

    Raises
    ------
    SeatworkError
        If the sizes cannot make a counterbore; the sentence names the bad one.

    Examples
    --------
    >>> Counterbore(diameter=11, depth=6.4, hole_diameter=6.6).ring_width
    2.2
    """

    diameter: float
    depth: float
    hole_diameter: float

    def __post_init__(self) -> None:
        checks.length(self.diameter, "counterbore diameter")
        checks.length(self.depth, "counterbore depth")
        checks.length(self.hole_diameter, "hole diameter")
        checks.smaller(self.hole_diameter, "hole diameter", self.diameter, "counterbore diameter")

    @property
    def ring_width(self) -> float:
        """Width of the floor from hole to wall [mm]."""
        return (self.diameter - self.hole_diameter) / 2

    @property
    def floor_area(self) -> float:
        """Area of the floor round the hole [mm²]."""
        return pi * (self.diameter - self.hole_diameter) * (self.diameter + self.hole_diameter) / 4

    @property
    def volume(self) -> float:
        """Metal cut away round the hole [mm³]."""
        return self.floor_area * self.depth
