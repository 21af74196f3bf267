"""Measuring heads and seats with plates, rings and dial gages.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
*Plates and protrusion.* A head of sharp diameter Dh, dropped into a hole of diameter G with a
square edge, stands (Dh - G) / (2 tan a) above it: the smaller edge of the screw plays no part.

*Dial gages.* A plunger with a cone of angle g touches the rim of the seat if it is flatter
than the seat, and then reads its diameter truly; a steeper one goes down to the hole edge and
reads d + (D - d) tan(g/2) / tan(A/2).
"""

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.seats.cones import Countersink, half_tangent


def protrusion(sharp_diameter: float, gage_diameter: float, included_angle: float) -> float:
    """Find how far a head stands above a gage with a square-edged hole.

    Parameters
    ----------
    sharp_diameter : float
        Theoretical sharp diameter of the head [mm].
    gage_diameter : float
        Diameter of the gage's hole [mm].
    included_angle : float
        Whole angle across the head [deg].

    Returns
    -------
    float
        Height of the flat top above the gage [mm].

    Raises
    ------
    SeatworkError
        If the head falls through the gage.

    Examples
    --------
    >>> protrusion(12.8778, 10.7696, 80) / 25.4
    0.0495
    """
    checks.length(sharp_diameter, "theoretical sharp diameter")
    checks.length(gage_diameter, "gage diameter")
    checks.smaller(gage_diameter, "gage diameter", sharp_diameter, "theoretical sharp diameter")
    return (sharp_diameter - gage_diameter) / 2 / half_tangent(included_angle)


def sharp_from_protrusion(protrusion: float, gage_diameter: float, included_angle: float) -> float:
    """Find the theoretical sharp diameter of a head from what it stands above a gage.

    Parameters
    ----------
    protrusion : float
        Height of the flat top above the gage [mm].
    gage_diameter : float
        Diameter of the gage's hole [mm].
    included_angle : float
        Whole angle across the head [deg].

    Returns
    -------
    float
        Theoretical sharp diameter [mm].

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    >>> sharp_from_protrusion(1.0, 10.0, 90)
    12.0
    """
    checks.length(protrusion, "protrusion")
    checks.length(gage_diameter, "gage diameter")
    return gage_diameter + 2 * half_tangent(included_angle) * protrusion


def plate_hole(sharp_diameter: float, protrusion: float, included_angle: float) -> float:
    """Find the hole of a flat plate in which a head stands up by a given height.

    Parameters
    ----------
    sharp_diameter : float
        Theoretical sharp diameter of the head [mm].
    protrusion : float
        Height the head is to stand up [mm], such as that of a block laid beside it.
    included_angle : float
        Whole angle across the head [deg].

    Returns
    -------
    float
        Diameter of the hole in the plate, edge left square [mm].

    Raises
    ------
    SeatworkError
        If the head is not as high as that.

    Examples
    --------
    >>> plate_hole(12.0, 1.0, 90)
    10.0
    """
    checks.length(sharp_diameter, "theoretical sharp diameter")
    checks.length(protrusion, "protrusion")
    hole = sharp_diameter - 2 * half_tangent(included_angle) * protrusion
    if not hole > 0:
        raise SeatworkError(
            Length(protrusion),
            "the cone of the head is not as high as that",
            "take a lower block beside the head",
        )
    return hole


def dial_reading(seat: Countersink, gage_angle: float) -> float:
    """Find what a dial countersink gage shows on a seat.

    Parameters
    ----------
    seat : Countersink
        The seat.
    gage_angle : float
        Whole angle of the gage's conical plunger [deg].

    Returns
    -------
    float
        Diameter that the gage shows [mm]; the true one if the plunger is flatter than the
        seat, or of its angle.

    Raises
    ------
    SeatworkError
        If the angle makes no cone.

    Examples
    --------
    A 82° plunger on a 90° seat reads small:

    >>> dial_reading(Countersink(diameter=12, hole_diameter=6, included_angle=90), 82)
    11.216
    """
    plunger = half_tangent(gage_angle)
    if plunger >= seat.tangent:
        return seat.diameter
    return seat.hole_diameter + 2 * plunger * seat.depth
