"""What touch-off, stop and tool do to a countersink.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
The cone is set by where its tip ends up, and the tip is set by the touch-off. Touched on the
face, the tip goes to the same depth whatever the hole is, so an oversize hole leaves the
diameter at the face alone. Touched on the hole edge, the travel starts where the cone is as
wide as the hole, so the diameter at the face grows by as much as the hole is over size. A
resharpened tool has a wider nose: touched on the face its tip starts deeper in the tool, and
the same travel gives D = f + 2 T Z with the new nose f. Touched on the hole edge, the nose
plays no part.
"""

from dataclasses import dataclass, replace
from typing import Literal

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.seats.cones import Countersink, half_tangent

TouchOff = Literal["face", "hole edge"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """The least and the greatest a size can become.

    Parameters
    ----------
    least : float
        Lower limit [mm].
    greatest : float
        Upper limit [mm].

    Raises
    ------
    SeatworkError
        If the least is above the greatest.
    """

    least: float
    greatest: float

    def __post_init__(self) -> None:
        checks.signed_length(self.least, "lower limit")
        checks.signed_length(self.greatest, "upper limit")
        checks.not_larger(self.least, "lower limit", self.greatest, "upper limit")

    @property
    def middle(self) -> float:
        """Middle of the two [mm]."""
        return (self.least + self.greatest) / 2

    @property
    def spread(self) -> float:
        """Difference of the two [mm]."""
        return self.greatest - self.least


def diameter_error(*, depth_error: float, included_angle: float) -> float:
    """Find what an error of the depth stop does to the diameter at the face.

    Parameters
    ----------
    depth_error : float
        Error of the stop [mm], plus for too deep.
    included_angle : float
        Whole angle across the cone [deg].

    Returns
    -------
    float
        Change of the diameter, 2 T times the error [mm].

    Raises
    ------
    SeatworkError
        If the angle makes no cone.

    Examples
    --------
    One flat of a 20-thread stop nut, 82°:

    >>> diameter_error(depth_error=25.4 / 20 / 6, included_angle=82) / 25.4
    0.0145
    """
    checks.signed_length(depth_error, "depth error")
    return 2 * half_tangent(included_angle) * depth_error


def stop_band(*, diameter_tolerance: float, included_angle: float) -> float:
    """Find how closely the depth stop must hold for a tolerance on the diameter.

    Parameters
    ----------
    diameter_tolerance : float
        Plus-or-minus tolerance of the diameter at the face [mm].
    included_angle : float
        Whole angle across the cone [deg].

    Returns
    -------
    float
        Plus-or-minus band of the stop [mm].

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    >>> stop_band(diameter_tolerance=0.2, included_angle=90)
    0.1
    """
    checks.length_or_zero(diameter_tolerance, "diameter tolerance")
    return diameter_tolerance / 2 / half_tangent(included_angle)


def depth_limits(*, diameter: Limits, hole_diameter: Limits, included_angle: float) -> Limits:
    """Find the depth limits that the limits of both diameters allow, worst pairing.

    Parameters
    ----------
    diameter : Limits
        Limits of the diameter at the face [mm].
    hole_diameter : Limits
        Limits of the hole [mm].
    included_angle : float
        Whole angle across the cone [deg].

    Returns
    -------
    Limits
        Least depth: least seat on the greatest hole; greatest: the other way round [mm].

    Raises
    ------
    SeatworkError
        If the greatest hole is as wide as the least seat.

    Examples
    --------
    >>> depth_limits(diameter=Limits(least=12, greatest=12.2),
    ...              hole_diameter=Limits(least=6.6, greatest=6.8), included_angle=90)
    Limits(least=2.6, greatest=2.8)
    """
    shallow = Countersink(
        diameter=diameter.least,
        hole_diameter=hole_diameter.greatest,
        included_angle=included_angle,
    )
    deep = Countersink(
        diameter=diameter.greatest,
        hole_diameter=hole_diameter.least,
        included_angle=included_angle,
    )
    return Limits(least=shallow.depth, greatest=deep.depth)


def diameter_limits(*, travel: Limits, start_diameter: Limits, included_angle: float) -> Limits:
    """Find the limits of the diameter at the face that a travel can give.

    Parameters
    ----------
    travel : Limits
        Limits of the quill travel after the touch-off [mm].
    start_diameter : Limits
        Limits of the diameter that touched [mm]: the tool's nose on a solid face, the hole
        on its edge.
    included_angle : float
        Whole angle across the tool [deg].

    Returns
    -------
    Limits
        Start diameter + 2 T travel, least with least and greatest with greatest [mm].

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    >>> diameter_limits(travel=Limits(least=2.6, greatest=2.7),
    ...                 start_diameter=Limits(least=6.6, greatest=6.7), included_angle=90)
    Limits(least=11.8, greatest=12.1)
    """
    checks.length(travel.least, "travel")
    checks.length_or_zero(start_diameter.least, "diameter that touched")
    widening = 2 * half_tangent(included_angle)
    return Limits(
        least=start_diameter.least + widening * travel.least,
        greatest=start_diameter.greatest + widening * travel.greatest,
    )


def oversize_hole(seat: Countersink, *, hole_diameter: float, touched: TouchOff) -> Countersink:
    """Give the seat that the same stop setting cuts on a hole of another size.

    Parameters
    ----------
    seat : Countersink
        The seat the stop was set for.
    hole_diameter : float
        Diameter of the hole as drilled [mm].
    touched : str
        "face" if the stop was set from the face, "hole edge" if from the lips on the hole.

    Returns
    -------
    Countersink
        The seat as cut.

    Raises
    ------
    SeatworkError
        If the hole is as wide as the seat.

    Examples
    --------
    >>> seat = Countersink(diameter=12, hole_diameter=6.6, included_angle=90)
    >>> oversize_hole(seat, hole_diameter=6.8, touched="face").diameter
    12
    >>> oversize_hole(seat, hole_diameter=6.8, touched="hole edge").diameter
    12.2
    """
    if touched == "face":
        return replace(seat, hole_diameter=hole_diameter)
    _refuse_another_touch_off(touched)
    return Countersink.from_depth(
        depth=seat.depth, hole_diameter=hole_diameter, included_angle=seat.included_angle
    )


def resharpened_nose(
    seat: Countersink, *, nose_diameter: float, new_nose_diameter: float, touched: TouchOff
) -> Countersink:
    """Give the seat that the same travel cuts after the tool's nose was ground back.

    Parameters
    ----------
    seat : Countersink
        The seat the travel was set for.
    nose_diameter : float
        Flat at the nose before [mm].
    new_nose_diameter : float
        Flat at the nose now [mm].
    touched : str
        "face" if the nose was touched on a solid face, "hole edge" if the lips on the hole.

    Returns
    -------
    Countersink
        The seat as cut.

    Raises
    ------
    SeatworkError
        If a nose is wider than the seat.

    Examples
    --------
    >>> seat = Countersink(diameter=12.8778, hole_diameter=6.7564, included_angle=82)
    >>> resharpened_nose(seat, nose_diameter=1.524, new_nose_diameter=2.286,
    ...                  touched="face").diameter / 25.4
    0.537
    """
    checks.length_or_zero(new_nose_diameter, "nose diameter")
    travel = seat.travel_from_face(nose_diameter)
    if touched == "face":
        return replace(seat, diameter=new_nose_diameter + 2 * seat.tangent * travel)
    _refuse_another_touch_off(touched)
    checks.smaller(new_nose_diameter, "nose diameter", seat.hole_diameter, "hole diameter")
    return seat


def _refuse_another_touch_off(touched: str) -> None:
    if touched != "hole edge":
        raise SeatworkError(touched, "that is no way to touch off", 'say "face" or "hole edge"')
