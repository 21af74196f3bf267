"""The face a seat is cut into: flat, tilted, or round.

Lengths are millimeters, angles degrees. The hole's axis is the z axis, the surface meets it
at height zero, and heights are positive above that point.

Notes
-----
A cone of slope T = tan(A/2), of radius R at the height of that point, has radius R + T z at
height z. Its rim is where it meets the surface z = f, so in each direction a from the high
side (or from across the axis of a round face) the rim radius solves r = R + T f(r, a).

*Tilted* by phi: f = r tan(phi) cos a, so r = R/(1 - k cos a) with k = T tan(phi): an ellipse
with one focus on the axis. Across the axis it measures 2R/(1 - k² cos² a): least square to
the slope, 2R. The cone closes only while k < 1.

*Round*, radius p, outside: f = sqrt(p² - r² c²) - p with c = cos a; squared,

    (1 + T² c²) r² + 2 a r = R (2 T p - R),   a = T p - R,

and the root is written R (2Tp - R)/(a + sqrt(...)) so that it stays exact as p grows. Least
across the shaft, greatest along it, 2R. *Inside* a bore the sign of T p turns: b = T p + R,
r = R (2Tp + R)/(b + sqrt(...)); there the least lies along the bore, 2R.

So that the least diameter comes out as noted, R is half of it; only on a round outside it is
D/2 + T (p - sqrt(p² - D²/4)), deeper by the drop of the surface.
"""

from dataclasses import dataclass
from math import cos, radians, sqrt, tan
from typing import TYPE_CHECKING, Protocol, runtime_checkable

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Angle, Length
from seatwork.seats.spotfaces import STEEPEST

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray


CLOSES = 0.999
"""Greatest slope of a face against that of the cone [-]: beyond it the rim runs hundreds of
diameters up the face, and at 1 it never closes."""

ROUNDING = 1e-12
"""Share of a square within which a point counts as on the edge of a round face [-]."""


@runtime_checkable
class Surface(Protocol):
    """What ``rim`` and ``clean_up`` ask of a surface."""

    @property
    def direction(self) -> float:
        """Direction, seen along the hole, that `cosine` counts from [deg]."""

    def height(
        self, x: "NDArray[np.floating]", y: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        """Height above the point on the axis [mm], shape as broadcast."""

    def axis_radius(self, diameter: float, tangent: float) -> float:
        """Radius [mm] of the cone at the axis point if the least across is `diameter`."""

    def rim_radius(
        self, axis_radius: float, tangent: float, cosine: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        """Radius of the rim [mm] in the directions of `cosine`."""

    def first_touch(self, hole_radius: float) -> float:
        """Height of the highest point of the hole's edge [mm]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Flat:
    """A flat face, square to the hole."""

    @property
    def direction(self) -> float:
        """Any direction is like any other [deg]."""
        return 0.0

    def height(
        self, x: "NDArray[np.floating]", y: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        """Give zero everywhere [mm]."""
        return 0.0 * (x + y)

    def axis_radius(self, diameter: float, tangent: float) -> float:
        """Half the diameter [mm]."""
        return diameter / 2

    def rim_radius(
        self, axis_radius: float, tangent: float, cosine: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        """Give half the diameter, the same all round [mm]."""
        return axis_radius + 0.0 * cosine

    def first_touch(self, hole_radius: float) -> float:
        """Zero: the whole edge at once [mm]."""
        return 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Tilted:
    """A plane that is not square to the hole.

    Parameters
    ----------
    tilt : float
        Angle from square [deg], 0 to 80.
    direction : float
        Direction of its high side, seen along the hole [deg].

    Raises
    ------
    SeatworkError
        If the tilt is out of range.
    """

    tilt: float
    direction: float = 0.0

    def __post_init__(self) -> None:
        _refuse_no_direction(self.direction)
        if not (checks.is_number(self.tilt) and 0 <= self.tilt <= STEEPEST):
            raise SeatworkError(
                checks.shown(self.tilt, Angle),
                "the tilt of a face lies between 0 and {steepest}",
                "measure it from square to the hole",
                steepest=Angle(STEEPEST),
            )

    @property
    def slope(self) -> float:
        """Rise per unit of length toward the high side [-]."""
        return tan(radians(self.tilt))

    def height(
        self, x: "NDArray[np.floating]", y: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        """Height of the plane [mm]."""
        toward = radians(self.direction)
        return self.slope * (x * cos(toward) + y * cos(toward - radians(90)))

    def axis_radius(self, diameter: float, tangent: float) -> float:
        """Half the diameter: the least lies square to the slope [mm]."""
        return diameter / 2

    def rim_radius(
        self, axis_radius: float, tangent: float, cosine: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        """R/(1 - k cos a) [mm]."""
        steepness = tangent * self.slope
        if not steepness <= CLOSES:
            raise SeatworkError(
                Angle(self.tilt),
                "the face is as steep as the side of the cone, which never closes",
                "take a sharper included angle, or square the face first",
            )
        return axis_radius / (1 - steepness * cosine)

    def first_touch(self, hole_radius: float) -> float:
        """Give the height of the high side of the hole [mm]."""
        return hole_radius * self.slope


@dataclass(frozen=True, slots=True, kw_only=True)
class Round:
    """A round face with the hole through its axis: a shaft, a tube, or a bore from inside.

    Parameters
    ----------
    diameter : float
        Diameter of the shaft or bore [mm].
    inside : bool
        Whether the seat is cut from the inside of a bore.
    direction : float
        Direction across the shaft, square to its axis, seen along the hole [deg].

    Raises
    ------
    SeatworkError
        If the diameter is out of range.
    """

    diameter: float
    inside: bool = False
    direction: float = 0.0

    def __post_init__(self) -> None:
        _refuse_no_direction(self.direction)
        checks.length(self.diameter, "diameter of the round face")

    @property
    def radius(self) -> float:
        """Radius of the round face [mm]."""
        return self.diameter / 2

    def drop(self, distance: float) -> float:
        """Give how far the surface departs from flat at a distance across it [mm].

        Parameters
        ----------
        distance : float
            Distance from the hole's axis, across the shaft [mm].

        Returns
        -------
        float
            Sagitta, written so that it stays exact on large diameters [mm].

        Raises
        ------
        SeatworkError
            If the distance reaches beyond the face.

        Examples
        --------
        >>> Round(diameter=20).drop(6)
        2.0
        """
        checks.length_or_zero(distance, "reach of the cut")
        checks.not_larger(distance, "reach of the cut", self.radius, "radius of the round face")
        square = distance * distance
        return square / (self.radius + sqrt(self.radius * self.radius - square))

    def height(
        self, x: "NDArray[np.floating]", y: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        """Height of the round face [mm]; NaN beyond it."""
        import numpy as np

        toward = radians(self.direction)
        square = (x * cos(toward) + y * cos(toward - radians(90))) ** 2
        whole = self.radius**2
        left = np.maximum(whole - square, 0.0)
        if np.max(square) > whole:
            left = np.where(square > whole * (1 + ROUNDING), np.nan, left)
        drop = square / (self.radius + np.sqrt(left))
        return np.asarray(drop if self.inside else -drop)

    def axis_radius(self, diameter: float, tangent: float) -> float:
        """Half the diameter, outside plus what the cone loses on the drop [mm]."""
        drop = 0.0 if self.inside else self.drop(diameter / 2)
        return diameter / 2 + tangent * drop

    def rim_radius(
        self, axis_radius: float, tangent: float, cosine: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        """Solve the quadratic at the top of this module [mm]."""
        import numpy as np

        sign = 1.0 if self.inside else -1.0
        reach = tangent * self.radius
        middle = reach + sign * axis_radius
        lean = (tangent * cosine) ** 2
        inner = reach * reach * (1 + lean) - lean * middle * middle
        if not np.all(inner >= 0) or not (self.inside or axis_radius < reach + self.radius):
            raise SeatworkError(
                Length(2 * axis_radius),
                "a cone so wide runs out at the sides of the round face, {face}, and never closes",
                "cut a smaller seat, or take a sharper included angle",
                face=Length(self.diameter),
            )
        root = np.sqrt(inner)
        if middle > 0:
            return np.asarray(axis_radius * (2 * reach + sign * axis_radius) / (middle + root))
        return np.asarray((root - middle) / (1 + lean))

    def first_touch(self, hole_radius: float) -> float:
        """Outside along the crown, inside across the bore [mm]."""
        return self.drop(hole_radius) if self.inside else 0.0


def _refuse_no_direction(direction: float) -> None:
    if not (checks.is_number(direction) and -360 <= direction <= 360):
        raise SeatworkError(
            checks.shown(direction, Angle),
            "a direction lies between -360 and 360 degrees",
            "count it from the x axis, seen along the hole",
        )
