"""Spindle speed from cutting speed, and back.

Diameters are millimetres, cutting speeds metres per minute, spindle speeds
revolutions per minute. The constant is exact, 1000/pi; the shop's short
constants live in `seatwork.cutting.shortcuts`.
"""

from math import pi

from seatwork import checks


def spindle_speed(*, cutting_speed: float, diameter: float) -> float:
    """Spindle speed that gives a cutting speed at a diameter.

    Parameters
    ----------
    cutting_speed : float
        Speed of the lip over the work [m/min].
    diameter : float
        Diameter at which that speed is wanted, as a rule the largest one cutting [mm].

    Returns
    -------
    float
        Spindle speed [rev/min].

    Raises
    ------
    SeatworkError
        If a value is not above zero.

    Notes
    -----
    Plain kinematics, good for any turning tool: one turn carries the lip pi times its diameter.

    Examples
    --------
    >>> spindle_speed(cutting_speed=25.0, diameter=12.0)
    663.1

    References
    ----------
    n = 1000 v/(pi D); worked example of 663 rev/min at a tool maker's page (check SPD-03).
    """
    checks.quantity(cutting_speed, "cutting speed", "m/min")
    checks.length(diameter, "cutting diameter")
    return 1000 * cutting_speed / (pi * diameter)


def cutting_speed(*, spindle_speed: float, diameter: float) -> float:
    """Cutting speed at a diameter of a turning tool.

    Parameters
    ----------
    spindle_speed : float
        Spindle speed [rev/min].
    diameter : float
        Diameter at which the speed is wanted [mm].

    Returns
    -------
    float
        Cutting speed [m/min].

    Raises
    ------
    SeatworkError
        If a value is not above zero.

    Examples
    --------
    >>> cutting_speed(spindle_speed=300.0, diameter=12.7)
    11.97

    References
    ----------
    The inverse of `spindle_speed`.
    """
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    checks.length(diameter, "cutting diameter")
    return pi * diameter * spindle_speed / 1000


def mean_diameter(*, diameter: float, hole_diameter: float) -> float:
    """Diameter midway along the lip in cut.

    Parameters
    ----------
    diameter : float
        Largest cutting diameter [mm].
    hole_diameter : float
        Smallest cutting diameter, the hole; 0 for a cut from solid [mm].

    Returns
    -------
    float
        Mean of the two [mm].

    Raises
    ------
    SeatworkError
        If the cut is not wider than the hole.

    Examples
    --------
    >>> mean_diameter(diameter=9.4, hole_diameter=4.5)
    6.95

    References
    ----------
    A drill maker's guide takes countersink speeds at this diameter
    (a tool maker's drill guide, p. 34; check SPD-20).
    """
    checks.cone_of_cut(diameter, hole_diameter)
    return (diameter + hole_diameter) / 2
