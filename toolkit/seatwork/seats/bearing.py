"""The ring on which a head or washer bears, and the pressure on it.

Lengths are millimeters, forces newtons, stresses MPa.

Notes
-----
Plain statics: the force over the area of the ring, as if it were spread evenly. The real pressure
is highest at the hole.
"""

from dataclasses import dataclass
from math import pi

from seatwork import checks


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


def bearing_pressure(*, force: float, outside_diameter: float, hole_diameter: float) -> float:
    """Find the mean pressure under a head or a washer.

    Parameters
    ----------
    force : float
        Clamp force [N].
    outside_diameter : float
        Diameter of the bearing face [mm].
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
