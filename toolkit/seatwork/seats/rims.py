"""The rim of a countersink or chamfer on a flat, tilted or round face, all the way round.

Lengths are millimeters, angles degrees. The formulas are derived in ``surfaces``.
"""

from dataclasses import dataclass
from math import radians, sin
from typing import TYPE_CHECKING

from seatwork import checks
from seatwork.seats.cones import Countersink, half_tangent
from seatwork.seats.surfaces import Surface

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

POINTS = 720
"""Points round the rim: every half degree, with the four main directions among them."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Rim:
    """The rim of a seat, point by point.

    Parameters
    ----------
    directions : numpy.ndarray
        Shape (n,): directions from the axis, seen along the hole [deg].
    radius : numpy.ndarray
        Shape (n,): distance of the rim from the axis [mm]; that of the hole where the cone
        does not cut.
    height : numpy.ndarray
        Shape (n,): height of the rim above the surface at the axis [mm].
    width : numpy.ndarray
        Shape (n,): width of the land along the cone [mm]; zero where it does not cut.
    depth : float
        Depth of the hole edge below the surface at the axis [mm].
    travel_from_hole_edge : float
        Quill travel after the lips first touch the edge of the hole [mm].
    """

    directions: "NDArray[np.floating]"
    radius: "NDArray[np.floating]"
    height: "NDArray[np.floating]"
    width: "NDArray[np.floating]"
    depth: float
    travel_from_hole_edge: float

    @property
    def diameter(self) -> "NDArray[np.floating]":
        """Diameter across the axis in each direction, seen along the hole [mm], shape (n,)."""
        half = len(self.radius) // 2
        across = self.radius[:half] + self.radius[half:]
        return across[_twice(half)]

    @property
    def least_diameter(self) -> float:
        """Least diameter across the axis [mm]."""
        return float(self.diameter.min())

    @property
    def greatest_diameter(self) -> float:
        """Greatest diameter across the axis [mm]."""
        return float(self.diameter.max())

    @property
    def least_width(self) -> float:
        """Narrowest place of the land [mm]."""
        return float(self.width.min())

    @property
    def greatest_width(self) -> float:
        """Widest place of the land [mm]."""
        return float(self.width.max())

    @property
    def complete(self) -> bool:
        """Whether the cone cuts all the way round."""
        return self.least_width > 0


def _twice(half: int) -> "NDArray[np.intp]":
    import numpy as np

    return np.arange(2 * half) % half


def rim(seat: Countersink, surface: Surface, *, points: int = POINTS) -> Rim:
    """Find the rim of a seat whose diameter is the least across it.

    Parameters
    ----------
    seat : Countersink
        The seat as noted; its diameter is the least across the rim. For a chamfer give
        ``chamfer.at_hole(hole_diameter)``.
    surface : Flat, Tilted or Round
        The face it is cut into.
    points : int
        Points round the rim; made a multiple of four.

    Returns
    -------
    Rim
        Radius, height and width all round, and the depth that gives this diameter.

    Raises
    ------
    SeatworkError
        If the cone does not close on this face.

    Examples
    --------
    A 90° seat noted 8 mm on a shaft of 20 mm: 8 across it, more along it.

    >>> from seatwork.seats.surfaces import Round
    >>> seat = Countersink(diameter=8, hole_diameter=5, included_angle=90)
    >>> found = rim(seat, Round(diameter=20))
    >>> found.least_diameter, found.greatest_diameter, found.depth
    (8.0, 9.670, 2.335)
    """
    axis_radius = surface.axis_radius(seat.diameter, seat.tangent)
    return _rim(axis_radius, seat.hole_diameter, seat.included_angle, surface, points)


def _rim(
    axis_radius: float, hole_diameter: float, included_angle: float, surface: Surface, points: int
) -> Rim:
    import numpy as np

    checks.count(points, "number of points")
    count = 4 * max(1, round(points / 4))
    turn = np.arange(count) * (360.0 / count)
    directions = turn + surface.direction
    tangent, hole_radius = half_tangent(included_angle), hole_diameter / 2
    cone = surface.rim_radius(axis_radius, tangent, _cosine(turn))
    radius = np.maximum(cone, hole_radius)
    angle = np.radians(directions)
    depth = (axis_radius - hole_radius) / tangent
    return Rim(
        directions=directions,
        radius=radius,
        height=surface.height(radius * np.cos(angle), radius * np.sin(angle)),
        width=(radius - hole_radius) / sin(radians(included_angle / 2)),
        depth=depth,
        travel_from_hole_edge=depth + surface.first_touch(hole_radius),
    )


def _cosine(turn: "NDArray[np.floating]") -> "NDArray[np.floating]":
    """Cosine with the quarter turns exact, so that the extremes are met exactly."""
    import numpy as np

    cosine: NDArray[np.floating] = np.cos(np.radians(turn))
    cosine[turn % 180 == 90] = 0.0
    return cosine
