"""What a seat does to the bolt: bending from a seat out of square.

Lengths are millimeters, angles degrees, forces newtons, stresses MPa.

Notes
-----
*Bending, upper bound.* If the head takes on the tilt of its seat while the other end stays
straight, the grip L is bent through the angle theta. With the same moment all along it the
bolt bends to a circle of curvature theta/L, and the skin of a bolt of diameter d is stretched
by E d theta/(2 L).

*With the head bedding in.* Part of the angle is taken by the seat. Two things limit the
moment. (1) A round punch pressed on a large body turns by 3 (1 - nu²) M/(4 E a³) (contact of a
rigid disk on an elastic half space; textbook result, from memory), which adds its give to the
bolt's own, theta = M (L/(E I) + 3 (1 - nu²)/(4 Es a³)). (2) The seat cannot carry more than
its crushing pressure p; the clamp force F then needs an area F/p of the ring, and its moment
is greatest when that area lies all at one side, M = F e with e the distance of its centroid.
The smaller moment counts. Threads, friction, the other end and bedding of the surface finish
are left out; nothing here says that a joint is good. Design codes decide that.
"""

from dataclasses import dataclass
from math import atan, degrees, pi, radians

from seatwork import checks
from seatwork.errors import Angle, SeatworkError
from seatwork.seats.bearing import Bearing, bearing_pressure, washer_bearing

__all__ = [
    "CAUTION",
    "Bearing",
    "Bending",
    "bearing_pressure",
    "bedded_bending",
    "bending_stress",
    "seat_tilt",
    "slope_angle",
    "washer_bearing",
]

STEEL_MODULUS = 205_000.0
"""Young's modulus of steel [MPa]; tables run from 200,000 to 210,000."""

POISSON = 0.3
"""Poisson's ratio of steel and, near enough, of iron [-]."""

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


@dataclass(frozen=True, slots=True, kw_only=True)
class Bending:
    """Bending of a bolt on a seat out of square: an estimate for teaching.

    Parameters
    ----------
    upper_bound : float
        Stress if the head follows the seat fully [MPa].
    bedded : float
        Stress with the head bedding in [MPa]; never above the upper bound.
    limited_by : str
        "seat crushing" if the crushing pressure of the seat sets it, else "stiffness".
    """

    upper_bound: float
    bedded: float
    limited_by: str

    @property
    def caution(self) -> str:
        """What must be said beside the figures."""
        return CAUTION


def bedded_bending(
    bearing: Bearing,
    *,
    tilt: float,
    diameter: float,
    grip: float,
    clamp_force: float,
    seat_modulus: float,
    crushing_pressure: float,
    modulus: float = STEEL_MODULUS,
) -> Bending:
    """Estimate the bending stress with the head bedding into its seat.

    Parameters
    ----------
    bearing : Bearing
        The ring under the head.
    tilt : float
        Angle between the seat and square [deg], 0 to 10.
    diameter : float
        Diameter of the shank [mm].
    grip : float
        Length that bends [mm].
    clamp_force : float
        Force of the tightened bolt [N].
    seat_modulus : float
        Young's modulus of the seat's metal [MPa].
    crushing_pressure : float
        Pressure at which the seat is crushed [MPa].
    modulus : float
        Young's modulus of the bolt [MPa].

    Returns
    -------
    Bending
        Upper bound, bedded estimate, and what limits it.

    Raises
    ------
    SeatworkError
        If a size is out of range, or the clamp force crushes the whole ring.

    Notes
    -----
    Derivation and what is left out: top of this module.

    Examples
    --------
    1/2 in bolt, 1.5 in grip, 1°, on gray iron:

    >>> ring = Bearing(outside_diameter=19, hole_diameter=13.5)
    >>> found = bedded_bending(ring, tilt=1, diameter=12.7, grip=38.1, clamp_force=40_000,
    ...                        seat_modulus=100_000, crushing_pressure=850)
    >>> round(found.upper_bound), round(found.bedded), found.limited_by
    (596, 565, 'stiffness')
    """
    upper = bending_stress(tilt=tilt, diameter=diameter, grip=grip, modulus=modulus)
    for value, name, unit in (
        (clamp_force, "clamp force", "N"),
        (seat_modulus, "modulus of the seat", "MPa"),
        (crushing_pressure, "crushing pressure", "MPa"),
    ):
        checks.quantity(value, name, unit)
    section = pi * diameter**3 / 32
    own_give = grip / (modulus * section * diameter / 2)
    radius = bearing.outside_diameter / 2
    seat_give = 3 * (1 - POISSON**2) / (4 * seat_modulus * radius**3)
    stiff = upper * own_give / (own_give + seat_give)
    lever = bearing.greatest_lever(clamp_force / crushing_pressure)
    crushed = clamp_force * lever / section
    limited_by = "seat crushing" if crushed < stiff else "stiffness"
    return Bending(upper_bound=upper, bedded=min(stiff, crushed), limited_by=limited_by)
