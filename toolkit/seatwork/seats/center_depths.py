"""How deep a center drill goes, and how far the point of a center reaches into its hole.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
The point of the drill makes a pilot hole about as long as it is wide, and the cone follows it.
From the touch of the pilot the tool travels the pilot's length and the depth of the cone,
(D - dp)/2T. The lathe's center rides on the cone; its sharp point would reach D/2T under the
face, and the pilot hole must go deeper than that, or the center bottoms and carries nothing.
"""

from seatwork import checks
from seatwork.seats.cones import half_tangent


def center_travel(
    *, mouth: float, pilot: float, pilot_length: float, included_angle: float
) -> float:
    """Find how far a center drill travels after its pilot touches.

    Parameters
    ----------
    mouth : float
        Diameter of the cone at the face [mm].
    pilot : float
        Diameter of the pilot [mm], under that of the mouth.
    pilot_length : float
        Length of the pilot before the cone begins [mm].
    included_angle : float
        Whole angle across the cone [deg].

    Returns
    -------
    float
        Travel [mm].

    Raises
    ------
    SeatworkError
        If the pilot is as wide as the mouth, or the angle makes no cone.

    Examples
    --------
    >>> center_travel(mouth=6.0, pilot=2.5, pilot_length=2.5, included_angle=90)
    4.25
    """
    checks.length(pilot, "pilot")
    checks.length(pilot_length, "length of the pilot")
    checks.smaller(pilot, "pilot", mouth, "mouth")
    return pilot_length + (mouth - pilot) / (2 * half_tangent(included_angle))


def point_reach(*, mouth: float, included_angle: float) -> float:
    """Find how far under the face the sharp point of a center of that angle reaches.

    Parameters
    ----------
    mouth : float
        Diameter of the cone at the face [mm].
    included_angle : float
        Whole angle across center and cone [deg].

    Returns
    -------
    float
        Depth of the point [mm].

    Raises
    ------
    SeatworkError
        If the mouth has no size, or the angle makes no cone.

    Examples
    --------
    >>> point_reach(mouth=6.0, included_angle=90)
    3.0
    """
    checks.length(mouth, "mouth")
    return mouth / (2 * half_tangent(included_angle))
