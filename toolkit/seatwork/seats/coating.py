"""What paint, powder or plating in a seat does to the head.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
A coat of thickness c, laid square to the cone, moves the cone's surface by c; along the axis
that is c / sin(A/2). The face, coated as well, comes up by its own coat, so the head rises by
c / sin(A/2) less the coat on the face.
"""

from math import radians, sin

from seatwork import checks
from seatwork.seats.cones import half_tangent


def coating_rise(*, seat_coat: float, face_coat: float, included_angle: float) -> float:
    """Find how much higher above the face a head stands after coating.

    Parameters
    ----------
    seat_coat : float
        Thickness of the coat on the cone [mm].
    face_coat : float
        Thickness of the coat on the face [mm]; zero if the face was masked.
    included_angle : float
        Whole angle across the cone [deg].

    Returns
    -------
    float
        Rise of the head's top against the coated face [mm]; minus if it sinks.

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    Powder coat of .003 in on both, then with the face masked, 82°:

    >>> coating_rise(seat_coat=0.0762, face_coat=0.0762, included_angle=82) / 25.4
    0.0016
    >>> coating_rise(seat_coat=0.0762, face_coat=0, included_angle=82) / 25.4
    0.0046
    """
    checks.length_or_zero(seat_coat, "coat in the seat")
    checks.length_or_zero(face_coat, "coat on the face")
    checks.included_angle(included_angle)
    return seat_coat / sin(radians(included_angle / 2)) - face_coat


def diameter_for_coating(
    *, diameter: float, seat_coat: float, face_coat: float, included_angle: float
) -> float:
    """Find the diameter to cut so that the coated seat takes the same head at the same height.

    Parameters
    ----------
    diameter : float
        Diameter at the face that suits the head uncoated [mm].
    seat_coat : float
        Thickness of the coat on the cone [mm].
    face_coat : float
        Thickness of the coat on the face [mm].
    included_angle : float
        Whole angle across the cone [deg].

    Returns
    -------
    float
        Diameter at the face to cut, before coating [mm].

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    >>> diameter_for_coating(diameter=12, seat_coat=0.1, face_coat=0, included_angle=90)
    12.283
    """
    checks.length(diameter, "diameter at the face")
    rise = coating_rise(seat_coat=seat_coat, face_coat=face_coat, included_angle=included_angle)
    return diameter + 2 * half_tangent(included_angle) * rise
