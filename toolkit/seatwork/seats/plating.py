"""What a plated skin takes off a hole and a cone.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
Plating of thickness p grows at right angles to each face. A hole loses 2 p in diameter. The wall
of a cone of included angle A moves in by p / cos(A/2), and the face above it rises by p, where
the cone is wider by p tan(A/2) on each side: its diameter at the face falls by
2 p (1 - sin(A/2)) / cos(A/2). A depth between two plated faces stays as it was.
"""

from math import cos, radians, sin

from seatwork import checks

HOLE_LOSS = 2.0
"""Diameter that a hole loses to plating, in thicknesses of it."""


def cone_loss(included_angle: float) -> float:
    """Return the diameter at the face that a cone loses to plating, in thicknesses of it.

    Parameters
    ----------
    included_angle : float
        Included angle of the cone [deg].

    Raises
    ------
    SeatworkError
        If the angle is none of a cone.

    Examples
    --------
    >>> round(cone_loss(90), 3)
    0.828
    """
    checks.included_angle(included_angle)
    half = radians(included_angle) / 2
    return 2 * (1 - sin(half)) / cos(half)
