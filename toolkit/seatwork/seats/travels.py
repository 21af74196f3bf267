"""How far the quill may travel for a seat with limits, on one hole and on every hole.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
Touched on the hole edge the seat is D = d + 2 T Z, so a hole that is a little over makes the
seat as much over. One travel keeps every seat inside its limits only from
(least seat - least hole)/2T to (greatest seat - greatest hole)/2T; where the holes differ by
more than the seats may, there is no such travel, and the touch belongs on the face.
"""

from seatwork import checks
from seatwork.seats.cones import half_tangent
from seatwork.seats.touching_off import Limits


def travel_limits(*, diameter: Limits, hole_diameter: float, included_angle: float) -> Limits:
    """Find the travels after the touch on the edge of one hole that keep the seat's limits.

    Parameters
    ----------
    diameter : Limits
        Limits of the diameter at the face [mm].
    hole_diameter : float
        The hole that is touched [mm]; 0 for the point of a tool on a solid face.
    included_angle : float
        Whole angle across the cone [deg].

    Returns
    -------
    Limits
        Least and greatest travel [mm].

    Raises
    ------
    SeatworkError
        If the hole is as wide as the least seat, or the angle makes no cone.

    Examples
    --------
    >>> travel_limits(diameter=Limits(least=12, greatest=12.2), hole_diameter=6.6,
    ...               included_angle=90)
    Limits(least=2.7, greatest=2.8)
    """
    checks.length_or_zero(hole_diameter, "hole diameter")
    checks.smaller(hole_diameter, "hole diameter", diameter.least, "least seat")
    widening = 2 * half_tangent(included_angle)
    return Limits(
        least=(diameter.least - hole_diameter) / widening,
        greatest=(diameter.greatest - hole_diameter) / widening,
    )


def travel_for_every_hole(
    *, diameter: Limits, hole_diameter: Limits, included_angle: float
) -> Limits | None:
    """Find the travels after the touch on the hole edge that hold on every hole in its limits.

    Parameters
    ----------
    diameter : Limits
        Limits of the diameter at the face [mm].
    hole_diameter : Limits
        Limits of the hole [mm].
    included_angle : float
        Whole angle across the cone [deg].

    Returns
    -------
    Limits or None
        Least and greatest travel [mm]; None where the holes differ by more than the seats may.

    Raises
    ------
    SeatworkError
        If the greatest hole is as wide as the least seat, or the angle makes no cone.

    Examples
    --------
    >>> travel_for_every_hole(diameter=Limits(least=12, greatest=12.2),
    ...                       hole_diameter=Limits(least=6.6, greatest=6.7), included_angle=90)
    Limits(least=2.7, greatest=2.75)
    """
    on_least, on_greatest = (
        travel_limits(diameter=diameter, hole_diameter=hole, included_angle=included_angle)
        for hole in (hole_diameter.least, hole_diameter.greatest)
    )
    if on_least.least > on_greatest.greatest:
        return None
    return Limits(least=on_least.least, greatest=on_greatest.greatest)
