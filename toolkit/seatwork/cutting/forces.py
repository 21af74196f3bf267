"""Cutting forces of a seat: torque, thrust, power and removal rate.

Pressures are MPa (N/mm2), lengths millimetres, torque N m, thrust N, power W.
"""

from math import pi, radians, sin

from seatwork import checks


def torque(
    *, tangential_coefficient: float, feed: float, diameter: float, hole_diameter: float = 0.0
) -> float:
    """Torque of a cone, a counterbore or a drill.

    Parameters
    ----------
    tangential_coefficient : float
        Specific cutting force [MPa].
    feed : float
        Feed [mm/rev].
    diameter : float
        Largest diameter cutting [mm].
    hole_diameter : float
        Diameter of the hole; 0 when drilling from solid [mm].

    Returns
    -------
    float
        Torque [N m].

    Raises
    ------
    SeatworkError
        If the cut is not wider than the hole, or a value is not above zero.

    Notes
    -----
    Neither the included angle nor the number of flutes enters. A coefficient
    measured on thick chips errs low on thin ones: see `stall`.

    Examples
    --------
    >>> torque(tangential_coefficient=1920.98, feed=0.1, diameter=12.0, hole_diameter=6.0)
    2.593

    References
    ----------
    Force along the lip summed from hole to rim (check G3).
    """
    checks.quantity(tangential_coefficient, "specific cutting force", "MPa")
    checks.quantity(feed, "feed", "mm/rev")
    checks.cone_of_cut(diameter, hole_diameter)
    return tangential_coefficient * feed * (diameter**2 - hole_diameter**2) / 8000


def thrust(
    *,
    normal_coefficient: float,
    feed: float,
    diameter: float,
    hole_diameter: float = 0.0,
    included_angle: float = 180.0,
) -> float:
    """Thrust along the spindle.

    Parameters
    ----------
    normal_coefficient : float
        Normal force per area of chip [MPa].
    feed : float
        Feed [mm/rev].
    diameter, hole_diameter : float
        Largest and smallest diameter cutting [mm].
    included_angle : float
        Full angle of the cutter; 180 for a counterbore [deg].

    Returns
    -------
    float
        Thrust [N].

    Raises
    ------
    SeatworkError
        If the cut is not wider than the hole, or a value is outside its range.

    Notes
    -----
    The lips alone: no chisel edge, so for seats in a hole that is already there.

    Examples
    --------
    >>> cut = {"feed": 0.1, "diameter": 12.0, "hole_diameter": 6.0}
    >>> thrust(normal_coefficient=1345.09, included_angle=82.0, **cut)
    264.7

    References
    ----------
    Axial part of the normal force, Kn f (D-d) sin(a)/2 with a half the included angle.
    """
    checks.quantity(normal_coefficient, "normal coefficient", "MPa")
    checks.quantity(feed, "feed", "mm/rev")
    checks.cone_of_cut(diameter, hole_diameter)
    checks.cutter_angle(included_angle)
    half = radians(included_angle / 2)
    return normal_coefficient * feed * (diameter - hole_diameter) * sin(half) / 2


def power(*, torque: float, spindle_speed: float) -> float:
    """Power at the cutter.

    Parameters
    ----------
    torque : float
        Torque [N m].
    spindle_speed : float
        Spindle speed [rev/min].

    Returns
    -------
    float
        Power [W].

    Raises
    ------
    SeatworkError
        If a value is not above zero.

    Notes
    -----
    By definition: torque times angular speed.

    Examples
    --------
    >>> power(torque=2.5933, spindle_speed=300.0)
    81.5
    """
    checks.quantity(torque, "torque", "N m")
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    return 2 * pi * spindle_speed * torque / 60
