"""What a seat does to the bolt: bending from a seat out of square.

Lengths are millimeters, angles degrees, forces newtons, stresses MPa.

Notes
-----
*Bending, upper bound.* If the head takes on the tilt of its seat while the other end stays
straight, the grip L is bent through the angle theta. With the same moment all along it the
bolt bends to a circle of curvature theta/L, and the skin of a bolt of diameter d is stretched
by E d theta/(2 L).
"""

from math import atan, degrees, radians

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Angle
from seatwork.seats.bearing import Bearing, bearing_pressure

__all__ = [
    "CAUTION",
    "Bearing",
    "bearing_pressure",
    "bending_stress",
    "seat_tilt",
    "slope_angle",
]

STEEL_MODULUS = 205_000.0
"""Young's modulus of steel [MPa]; tables run from 200,000 to 210,000."""

STRUCTURAL_SLOPE = 1 / 20
"""Slope above which structural-steel practice asks for a beveled washer [-] (RCSC 6.1.1).
A rule for structural bolts in steelwork, not a measure of a flat seat."""

CAUTION = (
    "A teaching estimate: it leaves out threads, friction and the other end of the bolt."
    " The design code for the joint and the person answerable for it decide."
)


def slope_angle(slope: float) -> float:
    """Turn a slope, such as 1/20, into an angle.

    Parameters
    ----------
    slope : float
        Rise over run [-], zero or more.

    Returns
    -------
    float
        Angle [deg].

    Raises
    ------
    SeatworkError
        If the slope is below zero or no number.

    Examples
    --------
    >>> slope_angle(STRUCTURAL_SLOPE)
    2.862
    """
    checks.length_or_zero(slope, "slope")
    return degrees(atan(slope))


def seat_tilt(*, gap: float, across: float) -> float:
    """Find the tilt of a seat from a feeler gage under one side of the head.

    Parameters
    ----------
    gap : float
        Thickest feeler that goes under [mm].
    across : float
        Width of the head from the side that touches to the side that gaps [mm].

    Returns
    -------
    float
        Angle between head and seat [deg].

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    >>> seat_tilt(gap=0.381, across=19.05)
    1.15
    """
    checks.length_or_zero(gap, "gap")
    checks.length(across, "width of the head")
    return slope_angle(gap / across)


def bending_stress(
    *, tilt: float, diameter: float, grip: float, modulus: float = STEEL_MODULUS
) -> float:
    """Find the bending stress if the head follows a tilted seat fully: an upper bound.

    Parameters
    ----------
    tilt : float
        Angle between the seat and square [deg], 0 to 10.
    diameter : float
        Diameter of the shank [mm]; of the thread's root where thread is bent.
    grip : float
        Length that bends: head to first thread engaged [mm].
    modulus : float
        Young's modulus of the bolt [MPa].

    Returns
    -------
    float
        Greatest elastic bending stress, E d theta/(2 L) [MPa]; above the bolt's yield it
        means that the bolt takes a set.

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    >>> bending_stress(tilt=1, diameter=10, grip=40, modulus=205_000)
    447.2
    """
    _refuse_a_steep_seat(tilt)
    checks.length(diameter, "bolt diameter")
    checks.length(grip, "grip")
    checks.quantity(modulus, "modulus", "MPa")
    return modulus * diameter * radians(tilt) / (2 * grip)


def _refuse_a_steep_seat(tilt: float) -> None:
    if not (checks.is_number(tilt) and 0 <= tilt <= 10):
        raise SeatworkError(
            checks.shown(tilt, Angle),
            "the tilt of a seat lies between 0 and 10 degrees",
            "beyond that, machine the seat square first",
        )
