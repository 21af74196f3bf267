"""The ring on which a head or washer bears, and the pressure on it.

Lengths are millimeters, forces newtons, stresses MPa.

Notes
-----
A part of the ring that lies beyond a chord is a segment of the outer disk less that of the
hole. A segment of radius r beyond a chord at x has the area r² acos(x/r) - x sqrt(r² - x²)
and, about the center, the first moment 2/3 (r² - x²)^(3/2); the chord that cuts off a given
area is found by halving.
"""

from dataclasses import dataclass
from math import acos, pi, sqrt

from seatwork import checks
from seatwork.errors import SeatworkError


@dataclass(frozen=True, slots=True, kw_only=True)
class Bearing:
    """The ring on which a head or washer bears.

    Parameters
    ----------
    outside_diameter : float
        Diameter of the bearing face [mm].
    hole_diameter : float
        Diameter of the hole under it [mm].

    Raises
    ------
    SeatworkError
        If the ring has no width.

    Examples
    --------
    >>> Bearing(outside_diameter=12.33, hole_diameter=9).area
    55.8
    """

    outside_diameter: float
    hole_diameter: float

    def __post_init__(self) -> None:
        checks.length(self.outside_diameter, "outside of the bearing face")
        checks.length(self.hole_diameter, "hole diameter")
        checks.smaller(
            self.hole_diameter,
            "hole diameter",
            self.outside_diameter,
            "outside of the bearing face",
        )

    @property
    def area(self) -> float:
        """Area of the ring [mm²]."""
        wide, narrow = self.outside_diameter, self.hole_diameter
        return pi / 4 * (wide - narrow) * (wide + narrow)

    def greatest_lever(self, area: float) -> float:
        """Find how far off center the ring can carry on `area` of it [mm].

        Parameters
        ----------
        area : float
            Area that carries [mm²], at most the whole ring.

        Returns
        -------
        float
            Distance from the axis to the centroid of that area, all at one side [mm].

        Raises
        ------
        SeatworkError
            If the whole ring is too small; the seat is then crushed all round.

        Examples
        --------
        >>> Bearing(outside_diameter=19, hole_diameter=13).greatest_lever(70)
        5.5
        """
        if not (checks.is_number(area) and 0 < area <= self.area):
            raise SeatworkError(
                f"{area:.4g} mm²" if checks.is_number(area) else area,
                "the whole ring is too small for this force, it is crushed all round",
                "put a washer under the head or lower the clamp force",
            )
        chord = self._chord_that_cuts_off(area)
        return (
            _moment(self.outside_diameter / 2, chord) - _moment(self.hole_diameter / 2, chord)
        ) / area

    def _chord_that_cuts_off(self, area: float) -> float:
        low, high = -self.outside_diameter / 2, self.outside_diameter / 2
        for _ in range(60):
            middle = (low + high) / 2
            cut = _segment(self.outside_diameter / 2, middle) - _segment(
                self.hole_diameter / 2, middle
            )
            low, high = (middle, high) if cut > area else (low, middle)
        return (low + high) / 2


def _segment(radius: float, chord: float) -> float:
    """Area of a disk beyond a chord [mm²]."""
    x = min(max(chord, -radius), radius)
    return radius * radius * acos(x / radius) - x * sqrt(radius * radius - x * x)


def _moment(radius: float, chord: float) -> float:
    """First moment of that area about the center [mm³]."""
    x = min(max(chord, -radius), radius)
    return 2 / 3 * float((radius * radius - x * x) ** 1.5)


def bearing_pressure(*, force: float, outside_diameter: float, hole_diameter: float) -> float:
    """Find the mean pressure under a head or a washer.

    Parameters
    ----------
    force : float
        Clamp force [N].
    outside_diameter : float
        Diameter of the bearing face [mm]; under a washer see ``washer_bearing``.
    hole_diameter : float
        Diameter of the hole [mm].

    Returns
    -------
    float
        Mean pressure on the ring [MPa]; compare with the seat's own strength, by your code.

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    >>> bearing_pressure(force=10_000, outside_diameter=12.33, hole_diameter=9)
    179.2
    """
    checks.quantity(force, "force", "N")
    return force / Bearing(outside_diameter=outside_diameter, hole_diameter=hole_diameter).area
