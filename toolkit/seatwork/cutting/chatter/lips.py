"""The lip of a seat cutter in the metal: how much of it cuts, and how its land rubs.

Diameters and widths are millimeters, process damping is N/m.

Notes
-----
Width and depth of cut are the side and the height of a cone. The wave that a land presses on is
pi D n / (60 f) long: the way of the lip in one period.
"""

from math import cos, inf, pi, radians, sin

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length


def lip_in_cut(*, diameter: float, hole_diameter: float, included_angle: float) -> float:
    """Length of lip in cut, the width of the chip.

    Parameters
    ----------
    diameter, hole_diameter : float
        Diameter reached, and hole it started from [mm].
    included_angle : float
        Full angle of the cutter [deg].

    Returns
    -------
    float
        Width of cut [mm].

    Raises
    ------
    SeatworkError
        If the sizes leave nothing to cut.

    Examples
    --------
    >>> lip_in_cut(diameter=12.0, hole_diameter=6.0, included_angle=82.0)
    4.57276
    """
    checks.cutter_angle(included_angle)
    if not 0 <= hole_diameter < diameter:
        raise SeatworkError(
            Length(diameter),
            "the cut is not wider than the hole, {hole}",
            "make the cut wider or the hole smaller",
            hole=Length(hole_diameter),
        )
    return (diameter - hole_diameter) / (2 * sin(radians(included_angle / 2)))


def depth_of_cut(*, width: float, included_angle: float) -> float:
    """Axial depth past first touch [mm] that puts a `width` [mm] of lip in cut.

    The side of the cone by the cosine of half its `included_angle` [deg].

    Examples
    --------
    >>> depth_of_cut(width=4.57276, included_angle=82.0)
    3.45111
    """
    checks.length(width, "width of cut")
    checks.cutter_angle(included_angle)
    return width * cos(radians(included_angle / 2))


def land_damping(*, indentation: float, wear_land: float) -> float:
    """Process damping of a worn lip.

    Parameters
    ----------
    indentation : float
        Indentation constant of the work [N/m3]; about 4e13 for steel and
        1.5e13 for 6061 aluminum (from memory, sources spread tenfold).
    wear_land : float
        Wear land on the flank [mm].

    Returns
    -------
    float
        Process damping C [N/m].

    Raises
    ------
    SeatworkError
        If a value is not above zero.

    Notes
    -----
    Trustworthy only while the wear land is under about a quarter of the wave
    the lip leaves; see `land_over_wave`.

    Examples
    --------
    >>> round(land_damping(indentation=4.1e13, wear_land=0.07))
    100450

    References
    ----------
    Small waves pressed by a flat land, C = Ksp w2/2 (Wu; Chiou and Liang;
    recalled, not read again).
    """
    checks.quantity(indentation, "indentation constant", "N/m3")
    checks.length(wear_land, "wear land")
    return indentation * (wear_land / 1000) ** 2 / 2


def land_over_wave(
    *, wear_land: float, frequency: float, spindle_speed: float, mean_diameter: float
) -> float:
    """Wear land over the length of the wave it presses on.

    Parameters
    ----------
    wear_land : float
        Wear land on the flank [mm].
    frequency : float
        Chatter frequency; its sign does not matter [Hz].
    spindle_speed : float
        Spindle speed [rev/min].
    mean_diameter : float
        Diameter midway along the lip in cut [mm].

    Returns
    -------
    float
        Ratio [-]; above about 0.25 the law of process damping is not to be trusted.

    Raises
    ------
    SeatworkError
        If a size is not above zero.

    Examples
    --------
    >>> cut = {"wear_land": 0.17, "frequency": 350.0, "mean_diameter": 9.0}
    >>> land_over_wave(spindle_speed=300.0, **cut)
    0.421
    """
    checks.length(wear_land, "wear land")
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    checks.length(mean_diameter, "mean diameter")
    if not abs(frequency) < inf:
        raise SeatworkError(f"{frequency:g} Hz", "the frequency is no number", "give a frequency")
    return wear_land * abs(frequency) * 60 / (pi * mean_diameter * spindle_speed)
