"""Measuring seats with balls.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
A ball of radius r in a cone of half angle a touches on the circle of diameter
2 r cos a, and its center lies r / sin a above the cone's point. The point lies D / (2 tan a)
below the face, so the top of the ball stands

    r / sin a + r - D / (2 tan a)

above the face. Two balls differ in center height by (R - r) / sin a, which gives the angle
alone; the diameter drops out.
"""

from math import acos, asin, atan2, cos, degrees, hypot, radians, sin

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.seats.cones import Countersink, half_tangent


def ball_contact(*, ball_diameter: float, included_angle: float) -> float:
    """Find the diameter of the circle on which a ball touches a cone.

    Parameters
    ----------
    ball_diameter : float
        Diameter of the ball [mm].
    included_angle : float
        Whole angle across the cone [deg].

    Returns
    -------
    float
        Diameter of the contact circle [mm].

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    >>> ball_contact(ball_diameter=10, included_angle=60)
    8.66
    """
    checks.length(ball_diameter, "ball diameter")
    checks.included_angle(included_angle)
    return ball_diameter * cos(radians(included_angle / 2))


def ball_range(seat: Countersink) -> tuple[float, float]:
    """Find the balls that touch a seat between its hole and the face.

    Parameters
    ----------
    seat : Countersink
        The seat.

    Returns
    -------
    tuple of float
        Ball diameters above which it touches the cone, and up to which it does [mm].

    Examples
    --------
    >>> seat = Countersink(diameter=12.8778, hole_diameter=6.7564, included_angle=82)
    >>> [round(ball / 25.4, 3) for ball in ball_range(seat)]
    [0.352, 0.672]
    """
    touch = cos(radians(seat.included_angle / 2))
    return seat.hole_diameter / touch, seat.diameter / touch


def ball_top(ball_diameter: float, seat: Countersink) -> float:
    """Find how high the top of a ball stands above the face.

    Parameters
    ----------
    ball_diameter : float
        Diameter of the ball [mm].
    seat : Countersink
        The seat.

    Returns
    -------
    float
        Height of the ball's top above the face [mm]; minus below it.

    Raises
    ------
    SeatworkError
        If the ball does not touch the cone between hole and face.

    Examples
    --------
    >>> ball_top(12, Countersink(diameter=16, hole_diameter=6, included_angle=90))
    6.4853
    """
    checks.length(ball_diameter, "ball diameter")
    _refuse_a_ball_that_misses(ball_diameter, seat)
    return _center_height(ball_diameter, seat.included_angle) + ball_diameter / 2 - seat.apex_depth


def _center_height(ball_diameter: float, included_angle: float) -> float:
    """Height of the ball's center above the point of the cone [mm]."""
    return ball_diameter / 2 / sin(radians(included_angle / 2))


def _refuse_a_ball_that_misses(ball_diameter: float, seat: Countersink) -> None:
    smallest, largest = ball_range(seat)
    if not smallest < ball_diameter <= largest:
        where = "on the hole edge or falls through" if ball_diameter <= smallest else "on the rim"
        raise SeatworkError(
            Length(ball_diameter),
            f"the ball sits {where}, not on the cone",
            "take a ball above {smallest}, up to {largest}",
            smallest=Length(smallest),
            largest=Length(largest),
        )


def diameter_from_ball(ball_diameter: float, ball_top: float, included_angle: float) -> float:
    """Find the diameter of a seat at the face from one ball.

    Parameters
    ----------
    ball_diameter : float
        Diameter of the ball [mm].
    ball_top : float
        Height of the ball's top above the face [mm].
    included_angle : float
        Whole angle across the seat [deg], known from the tool or from two balls.

    Returns
    -------
    float
        Diameter at the face [mm].

    Raises
    ------
    SeatworkError
        If a ball with its top so high or low does not touch a cone below the face.

    Examples
    --------
    >>> diameter_from_ball(12, 6.4853, 90)
    16.0
    """
    checks.length(ball_diameter, "ball diameter")
    checks.signed_length(ball_top, "height of the ball")
    tangent = half_tangent(included_angle)
    apex_depth = _center_height(ball_diameter, included_angle) + ball_diameter / 2 - ball_top
    diameter = 2 * tangent * apex_depth
    contact = ball_contact(ball_diameter=ball_diameter, included_angle=included_angle)
    if not contact <= diameter * (1 + 1e-12):
        raise SeatworkError(
            Length(ball_top),
            "with its top so high the ball rests on the rim or above it",
            "take a smaller ball, or measure the height again",
        )
    return diameter


def angle_from_ball(ball_diameter: float, ball_top: float, diameter: float) -> float:
    """Find the included angle of a seat from one ball and the diameter at the face.

    Parameters
    ----------
    ball_diameter : float
        Diameter of the ball [mm].
    ball_top : float
        Height of the ball's top above the face [mm]; minus below it.
    diameter : float
        Diameter at the face [mm].

    Returns
    -------
    float
        Whole angle across the seat [deg].

    Raises
    ------
    SeatworkError
        If no cone of that diameter holds the ball so.

    Notes
    -----
    With the ball's center h above the face, r = h sin a + (D/2) cos a, a line at the distance r
    from the center; it is solved by one arc cosine.

    Examples
    --------
    >>> angle_from_ball(12, 6.4853, 16)
    90.0
    """
    checks.length(ball_diameter, "ball diameter")
    checks.signed_length(ball_top, "height of the ball")
    checks.length(diameter, "diameter at the face")
    radius, height = ball_diameter / 2, ball_top - ball_diameter / 2
    apart = hypot(height, diameter / 2)
    angle = 0.0
    if apart > radius:
        angle = 2 * degrees(atan2(height, diameter / 2) + acos(radius / apart))
    touches = 0 < angle < 180 and ball_contact(
        ball_diameter=ball_diameter, included_angle=angle
    ) <= diameter * (1 + 1e-12)
    if not touches:
        raise SeatworkError(
            Length(ball_top),
            "no cone of this diameter holds the ball so high or low",
            "measure the diameter and the ball again",
        )
    return angle


def angle_from_two_balls(
    small_diameter: float, large_diameter: float, small_top: float, large_top: float
) -> float:
    """Find the included angle of a cone from the heights of two balls.

    Parameters
    ----------
    small_diameter : float
        Diameter of the smaller ball [mm].
    large_diameter : float
        Diameter of the larger ball [mm].
    small_top : float
        Height of the smaller ball's top above the face or any other datum [mm].
    large_top : float
        Height of the larger ball's top above the same datum [mm].

    Returns
    -------
    float
        Whole angle across the cone [deg].

    Raises
    ------
    SeatworkError
        If the balls stand as no cone can hold them.

    Examples
    --------
    >>> angle_from_two_balls(9.525, 15.875, 0.0, 25.4 * 0.3155)
    82.0
    """
    checks.length(small_diameter, "diameter of the smaller ball")
    checks.length(large_diameter, "diameter of the larger ball")
    checks.smaller(small_diameter, "smaller ball", large_diameter, "larger ball")
    checks.signed_length(small_top, "height of the smaller ball")
    checks.signed_length(large_top, "height of the larger ball")
    growth = (large_diameter - small_diameter) / 2
    rise = large_top - small_top - growth
    if not rise > growth:
        raise SeatworkError(
            Length(large_top - small_top),
            "no cone holds two balls with tops so little apart",
            "see that each ball touches the cone, not hole edge or rim, and measure again",
        )
    angle = 2 * degrees(asin(growth / rise))
    checks.included_angle(angle, "angle these heights give")
    return angle
