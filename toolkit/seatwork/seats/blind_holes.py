"""Blind drilled holes: the cone that the point leaves, and what is left under it.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
A print counts a hole's depth at its full diameter d. The point goes deeper by
h = d/(2 tan(P/2)), P the included angle of the point: .3004 d at 118°, .2071 d at 135°.
"""

from dataclasses import dataclass

from seatwork import checks
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class BlindHole:
    """A drilled hole that ends in the metal.

    Parameters
    ----------
    diameter : float
        Diameter of the drill [mm].
    depth : float
        Depth at full diameter, from the face [mm].
    point_angle : float
        Included angle of the drill's point [deg].

    Raises
    ------
    SeatworkError
        If a size makes no hole; the sentence names the bad one.

    Examples
    --------
    >>> hole = BlindHole(diameter=6.5278, depth=14.224, point_angle=118)
    >>> hole.point, hole.tip_depth
    (1.961, 16.185)
    """

    diameter: float
    depth: float
    point_angle: float

    def __post_init__(self) -> None:
        checks.length(self.diameter, "diameter of the drill")
        checks.length(self.depth, "depth at full diameter")
        checks.included_angle(self.point_angle)

    @classmethod
    def to_point(cls, *, depth: float, diameter: float, point_angle: float) -> "BlindHole":
        """Return the hole whose depth [mm] counts to the tip of the point."""
        point = point_length(diameter=diameter, point_angle=point_angle)
        checks.smaller(point, "length of the point", depth, "depth to the point")
        return cls(diameter=diameter, depth=depth - point, point_angle=point_angle)

    @property
    def point(self) -> float:
        """How much deeper than the full diameter the point goes [mm]."""
        return point_length(diameter=self.diameter, point_angle=self.point_angle)

    @property
    def tip_depth(self) -> float:
        """Depth of the tip, from the face [mm]."""
        return self.depth + self.point


def point_length(*, diameter: float, point_angle: float) -> float:
    """Return how long the point of a drill is.

    Parameters
    ----------
    diameter : float
        Diameter of the drill [mm].
    point_angle : float
        Included angle of its point [deg].

    Returns
    -------
    float
        Length of the point [mm].

    Examples
    --------
    >>> point_length(diameter=10.0, point_angle=90)
    5.0
    """
    return diameter / 2 / half_tangent(point_angle)
