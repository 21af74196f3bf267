"""Countersinks: the cone cut at the mouth of a hole.

Lengths are millimeters, angles are included angles in degrees, numbers are plain floats.

Notes
-----
One side of a countersink, seen in section, is a right triangle. It is as high as the cone is
deep, Z, and as wide as half the difference of the diameters, (D - d)/2; the angle at its
point is half the included angle, A/2. So with T = tan(A/2)

    (D - d)/2 = Z T

and every size in this module is that line solved for something. Carried down to the point
(d = 0) it gives the apex depth D/(2T); with the flat nose f of a tool for d it gives the
travel after the nose touches a solid face.
"""

from dataclasses import dataclass
from functools import lru_cache
from math import atan, degrees, pi, radians, sin, tan
from typing import Self

from seatwork import checks


def half_tangent(included_angle: float) -> float:
    """Give T, the radius a cone gains per unit of depth.

    Parameters
    ----------
    included_angle : float
        Whole angle across the cone [deg], 1 to 179.

    Returns
    -------
    float
        tan of half the included angle [-].

    Raises
    ------
    SeatworkError
        If the angle makes no cone.

    Examples
    --------
    >>> half_tangent(82)
    0.8692867
    """
    checks.included_angle(included_angle)
    return _half_tangent(included_angle)


@lru_cache(maxsize=256)
def _half_tangent(included_angle: float) -> float:
    """Work T out once for each angle: a picture asks for the same few at every step."""
    return tan(radians(included_angle / 2))


@dataclass(frozen=True, slots=True, kw_only=True)
class Countersink:
    """A countersink in a flat face, square to its hole.

    Parameters
    ----------
    diameter : float
        Diameter of the cone at the face [mm].
    hole_diameter : float
        Diameter of the hole the cone runs into [mm].
    included_angle : float
        Whole angle across the cone [deg], 1 to 179.

    Raises
    ------
    SeatworkError
        If the sizes cannot make a cone; the sentence names the bad one.

    Examples
    --------
    >>> seat = Countersink(diameter=12.8778, hole_diameter=6.7564, included_angle=82)
    >>> seat.depth
    3.521
    """

    diameter: float
    hole_diameter: float
    included_angle: float

    def __str__(self) -> str:
        hole = f"{self.hole_diameter:.2f} mm hole, {self.depth:.2f} mm deep"
        return (
            f"{self.included_angle:g}° countersink, {self.diameter:.2f} mm at the face on a {hole}"
        )

    def __post_init__(self) -> None:
        checks.length(self.diameter, "diameter at the face")
        checks.length(self.hole_diameter, "hole diameter")
        checks.included_angle(self.included_angle)
        checks.smaller(self.hole_diameter, "hole diameter", self.diameter, "diameter at the face")

    @classmethod
    def from_depth(cls, *, depth: float, hole_diameter: float, included_angle: float) -> Self:
        """Make the countersink that is `depth` deep, from the face to the hole edge.

        Parameters
        ----------
        depth : float
            Depth from the face to the edge of the hole [mm].
        hole_diameter : float
            Diameter of the hole [mm].
        included_angle : float
            Whole angle across the cone [deg].

        Returns
        -------
        Countersink
            The seat, with diameter d + 2 T Z.

        Raises
        ------
        SeatworkError
            If a size cannot make a cone.

        Examples
        --------
        >>> Countersink.from_depth(depth=3.42, hole_diameter=6.6, included_angle=90).diameter
        13.44
        """
        checks.length(depth, "depth")
        checks.length(hole_diameter, "hole diameter")
        widening = 2 * depth * half_tangent(included_angle)
        return cls(
            diameter=hole_diameter + widening,
            hole_diameter=hole_diameter,
            included_angle=included_angle,
        )

    @property
    def tangent(self) -> float:
        """Radius gained per unit of depth, tan of half the included angle [-]."""
        return half_tangent(self.included_angle)

    def lower_by(self, across: float) -> float:
        """Give how far the cone runs down over a width toward the axis [mm].

        Parameters
        ----------
        across : float
            Width along a radius [mm], zero or more.

        Returns
        -------
        float
            Height of the cone over that width, across ÷ tangent [mm].

        Examples
        --------
        >>> seat = Countersink(diameter=12.0, hole_diameter=6.0, included_angle=90)
        >>> round(seat.lower_by(3.0), 3)
        3.0
        """
        return across / self.tangent

    @property
    def depth(self) -> float:
        """Depth from the face to the hole edge [mm]."""
        return (self.diameter - self.hole_diameter) / 2 / self.tangent

    @property
    def apex_depth(self) -> float:
        """Depth from the face to the point where the sides would meet [mm]."""
        return self.diameter / 2 / self.tangent

    @property
    def slant_width(self) -> float:
        """Width of the conical land, measured along it [mm]."""
        return (self.diameter - self.hole_diameter) / 2 / sin(radians(self.included_angle / 2))

    @property
    def volume(self) -> float:
        """Metal cut away around the hole, the hole itself left out [mm³]."""
        large, small = self.diameter / 2, self.hole_diameter / 2
        return pi * self.depth * ((large * large + large * small + small * small) / 3 - small**2)

    @property
    def bearing_area(self) -> float:
        """Area of the conical land itself [mm²]."""
        return pi * (self.diameter + self.hole_diameter) / 2 * self.slant_width

    @property
    def projected_area(self) -> float:
        """Area of the land seen along the axis [mm²]."""
        return pi * (self.diameter - self.hole_diameter) * (self.diameter + self.hole_diameter) / 4

    def diameter_at(self, depth: float) -> float:
        """Give the diameter at a depth below the face [mm].

        Parameters
        ----------
        depth : float
            Depth below the face [mm], zero to the depth of the cone and, in the hole, beyond.

        Returns
        -------
        float
            Diameter of the cone there, of the hole below the cone [mm].

        Raises
        ------
        SeatworkError
            If the depth is above the face or no number.

        Examples
        --------
        >>> Countersink(diameter=12, hole_diameter=6.6, included_angle=90).diameter_at(1)
        10.0
        """
        checks.length_or_zero(depth, "depth")
        return max(self.diameter - 2 * depth * self.tangent, self.hole_diameter)

    def travel_from_face(self, nose_diameter: float) -> float:
        """Give the quill travel after the tool's nose touches the solid face [mm].

        Parameters
        ----------
        nose_diameter : float
            Diameter of the flat at the tool's nose [mm]; zero for a sharp point.

        Returns
        -------
        float
            Travel to the full diameter at the face, (D - f)/(2T) [mm].

        Raises
        ------
        SeatworkError
            If the nose is as wide as the seat.

        Examples
        --------
        >>> seat = Countersink(diameter=12.8778, hole_diameter=6.7564, included_angle=82)
        >>> seat.travel_from_face(1.524) / 25.4
        0.2571
        """
        checks.length_or_zero(nose_diameter, "nose diameter")
        checks.smaller(nose_diameter, "nose diameter", self.diameter, "diameter at the face")
        return (self.diameter - nose_diameter) / 2 / self.tangent

    def travel_from_hole_edge(self) -> float:
        """Give the quill travel after the lips touch the edge of the hole [mm].

        Returns
        -------
        float
            Travel to the full diameter at the face: the depth of the cone [mm].

        Notes
        -----
        Holds for a nose smaller than the hole; the nose diameter then plays no part.
        """
        return self.depth


def included_angle(*, diameter: float, hole_diameter: float, depth: float) -> float:
    """Find the included angle from two diameters and the depth between them [deg].

    Parameters
    ----------
    diameter : float
        Diameter at the face [mm].
    hole_diameter : float
        Diameter of the hole [mm]; zero for a cone in solid metal, measured to its point.
    depth : float
        Depth from the one to the other [mm].

    Returns
    -------
    float
        Whole angle across the cone [deg].

    Raises
    ------
    SeatworkError
        If the sizes cannot make a cone.

    Examples
    --------
    >>> included_angle(diameter=12, hole_diameter=6.6, depth=2.7)
    90.0
    """
    checks.length(diameter, "diameter at the face")
    checks.length_or_zero(hole_diameter, "hole diameter")
    checks.smaller(hole_diameter, "hole diameter", diameter, "diameter at the face")
    checks.length(depth, "depth")
    angle = 2 * degrees(atan((diameter - hole_diameter) / 2 / depth))
    checks.included_angle(angle)
    return angle
