"""Center seats: the cone that a lathe center runs in.

Lengths are millimeters, angles are included angles in degrees, force newtons.

Notes
-----
A center drill cuts a pilot hole and a cone in one go; the cone may not be taken to the full
body of the drill, where it would end in a cylinder and lose its guard. In a tube there is no
pilot: the cone is cut on the existing bore, so its land runs from bore to mouth and the wall
left at the mouth is (outside - mouth)/2. A center of another angle than the seat's touches on
a ring only: a steeper one at the small end, a flatter one at the mouth; the ring wears, and
at the other end of the land, w wide, the two stand w sin(half the difference) apart.
"""

from dataclasses import dataclass
from math import radians, sin
from typing import Literal

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.seats.cones import Countersink

ANGLE = 60.0
"""Included angle of lathe centers and their seats [deg] (common practice, no source)."""

SAME_ANGLE = 0.05
"""Angles this close count as the same [deg]: tighter than any grinder's protractor is read."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CenterSeat:
    """The seat of a lathe center, in bar or on the bore of a tube.

    Parameters
    ----------
    cone : Countersink
        The cone; its hole is the center drill's pilot hole or the bore of the tube.
    outside_diameter : float
        Diameter of the bar or tube at its end [mm].

    Raises
    ------
    SeatworkError
        If the mouth is as wide as the end of the bar.

    Examples
    --------
    Pipe 1.315 / 1.049 in with a 60° mouth 1/16 in deep:

    >>> cone = Countersink.from_depth(depth=1.5875, hole_diameter=26.6446, included_angle=60)
    >>> seat = CenterSeat(cone=cone, outside_diameter=33.401)
    >>> seat.cone.diameter / 25.4, seat.wall_at_mouth / 25.4
    (1.121, 0.097)
    """

    cone: Countersink
    outside_diameter: float

    def __post_init__(self) -> None:
        checks.length(self.outside_diameter, "outside diameter")
        checks.smaller(
            self.cone.diameter,
            "mouth of the center seat",
            self.outside_diameter,
            "outside diameter",
        )

    @property
    def land(self) -> float:
        """Width of the conical land [mm]."""
        return self.cone.slant_width

    @property
    def wall_at_mouth(self) -> float:
        """Wall left between the mouth and the outside [mm]."""
        return (self.outside_diameter - self.cone.diameter) / 2

    def contact(self, center_angle: float = ANGLE) -> "CenterContact":
        """Find where a center touches.

        Parameters
        ----------
        center_angle : float
            Whole angle of the center [deg].

        Returns
        -------
        CenterContact
            The circles between which it is carried.

        Raises
        ------
        SeatworkError
            If the angle makes no cone.

        Examples
        --------
        >>> cone = Countersink(diameter=10, hole_diameter=4, included_angle=82)
        >>> found = CenterSeat(cone=cone, outside_diameter=25).contact()
        >>> found.where, found.gap
        ('hole edge', 0.873)
        """
        checks.included_angle(center_angle, "angle of the center")
        off = center_angle - self.cone.included_angle
        gap = self.land * sin(radians(abs(off) / 2))
        inner, outer = self.cone.hole_diameter, self.cone.diameter
        where: Literal["cone", "rim", "hole edge"] = "cone"
        if off < -SAME_ANGLE:
            where, outer = "hole edge", inner
        elif off > SAME_ANGLE:
            where, inner = "rim", outer
        return CenterContact(where=where, inner_diameter=inner, outer_diameter=outer, gap=gap)


@dataclass(frozen=True, slots=True, kw_only=True)
class CenterContact:
    """Where a center is carried.

    Parameters
    ----------
    where : str
        "cone" for the whole land, "rim" for a ring at the mouth, "hole edge" for one below.
    inner_diameter : float
        Small end of the contact [mm].
    outer_diameter : float
        Large end of the contact [mm]; the same for a ring.
    gap : float
        Opening, square to the seat, at the end that does not touch [mm]: what bluing shows.
    """

    where: Literal["cone", "rim", "hole edge"]
    inner_diameter: float
    outer_diameter: float
    gap: float

    @property
    def mean_diameter(self) -> float:
        """Middle of the contact [mm]."""
        return (self.inner_diameter + self.outer_diameter) / 2


@dataclass(frozen=True, slots=True, kw_only=True)
class CenterDrill:
    """A center drill: pilot, 60° cone, body.

    Parameters
    ----------
    body_diameter : float
        Diameter of the body [mm].
    pilot_diameter : float
        Diameter of the pilot [mm].
    pilot_length : float
        Length of the pilot [mm].
    included_angle : float
        Whole angle of the cone [deg].

    Raises
    ------
    SeatworkError
        If the sizes make no center drill.

    Examples
    --------
    A #3 center drill, mouth .200 in:

    >>> drill = CenterDrill(body_diameter=6.35, pilot_diameter=2.778125, pilot_length=2.78)
    >>> drill.cone(5.08).depth / 25.4
    0.0785
    """

    body_diameter: float
    pilot_diameter: float
    pilot_length: float
    included_angle: float = ANGLE

    def __post_init__(self) -> None:
        checks.length(self.pilot_length, "pilot length")
        Countersink(
            diameter=self.body_diameter,
            hole_diameter=self.pilot_diameter,
            included_angle=self.included_angle,
        )

    def cone(self, mouth_diameter: float) -> Countersink:
        """Give the cone with a mouth of `mouth_diameter`.

        Parameters
        ----------
        mouth_diameter : float
            Diameter at the face [mm], above the pilot and below the body.

        Returns
        -------
        Countersink
            The cone; its depth is below the face, the pilot hole goes on below it.

        Raises
        ------
        SeatworkError
            If the mouth reaches the body: then the drill has gone too far.
        """
        checks.length(mouth_diameter, "mouth of the center seat")
        if mouth_diameter >= self.body_diameter:
            raise SeatworkError(
                Length(mouth_diameter),
                "the cone ends at the body of the drill, {body}",
                "stop earlier, or take the next larger center drill",
                body=Length(self.body_diameter),
            )
        return Countersink(
            diameter=mouth_diameter,
            hole_diameter=self.pilot_diameter,
            included_angle=self.included_angle,
        )

    def travel(self, mouth_diameter: float) -> float:
        """Give the travel after the pilot's tip touches the end of the bar.

        Parameters
        ----------
        mouth_diameter : float
            Diameter at the face [mm].

        Returns
        -------
        float
            Pilot length and cone depth together [mm].

        Raises
        ------
        SeatworkError
            If the mouth reaches the body.

        Examples
        --------
        >>> CenterDrill(body_diameter=6.35, pilot_diameter=2.78, pilot_length=2.8).travel(5)
        4.72
        """
        return self.pilot_length + self.cone(mouth_diameter).depth
